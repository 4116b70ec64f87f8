//! The year ahead of a roof, month by month: what goes in, when nets hang, when feeds are halved, how the waterings
//! change, before which rains the drains are cleared.

use crate::knowledge::{Crop, Place};
use crate::needs::feed::HALF_ABOVE;
use crate::needs::loss_factor::LossFactor;
use crate::needs::season::{Seasons, Way, seasons};
use crate::needs::shade::hot_spells;
use crate::needs::surroundings::Surroundings;
use crate::needs::water::week_at_best;
use crate::needs::year::Year;
use crate::quantity::{Temperature, WaterDepth};
use chrono::{Datelike, Months, NaiveDate};

/// So many months are told, that of today the first.
pub const MONTHS: u32 = 12;
/// A month with so much rain and more brings days on which a clogged drain drowns a box (judgement: a month of the
/// rains proper, not of a few showers).
const RAINY_MONTH: WaterDepth = WaterDepth::millimetres(100.0);
/// Weeks above call for a net over most of a roof (common practice, no source: tomatoes and chillies want one from 33
/// to 35 °C, tender greens sooner, okra and amaranth from 40).
pub const NET_ABOVE: Temperature = Temperature::celsius(35.0);
/// The week from this day stands for its month.
const MIDDLE: u32 = 12;

/// What a roof's year is reckoned from.
#[derive(Debug, Clone)]
pub struct Roof<'k, 'a> {
    pub year: &'a Year,
    pub today: NaiveDate,
    /// The crops that its beds have sun and depth for; the lower the rank, the sooner it is told.
    pub crops: Vec<(&'k Crop, Way, usize)>,
    /// One bed, grown over, that stands for all.
    pub typical: Option<Surroundings<'a>>,
    /// Usual months.
    pub place: Option<&'a Place>,
}

/// A crop with its times of the year.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice<'a> {
    pub crop: &'a Crop,
    pub seasons: Seasons,
}

/// One month.
#[derive(Debug, Clone, PartialEq)]
pub struct MonthAhead {
    /// Its first day.
    pub first: NaiveDate,
    /// Choices whose time begins in it; in the first month those that are open now or open within it.
    pub begins: Vec<usize>,
    /// Choices whose time ends in it.
    pub ends: Vec<usize>,
    /// Choices whose time began before and lasts beyond it.
    pub goes_on: Vec<usize>,
    /// A net goes up on this day: today where it is due already.
    pub net_up: Option<NaiveDate>,
    pub net_down: Option<NaiveDate>,
    /// Feeds are halved from this day on (today where they are now), or are full again from it.
    pub feed_halved: Option<NaiveDate>,
    pub feed_full: Option<NaiveDate>,
    /// Waterings a week of the bed that stands for all.
    pub waterings: Option<f64>,
    /// The rains begin in it: before them the drains are cleared.
    pub drains: bool,
}

/// The months of a year, and the choices that they count.
#[derive(Debug, Clone, PartialEq)]
pub struct YearAhead<'a> {
    /// Told in this order: those within their limits first, by rank, then by how far they stay from their limits.
    pub choices: Vec<Choice<'a>>,
    pub months: Vec<MonthAhead>,
}

/// The year from today. Every crop is looked at in the same weeks, which are summed once.
#[must_use]
pub fn year_ahead<'k>(roof: &Roof<'k, '_>) -> YearAhead<'k> {
    let choices = choices(roof);
    let nets = hot_spells(roof.year, NET_ABOVE);
    let halved = hot_spells(roof.year, HALF_ABOVE);
    type Spells = [(NaiveDate, NaiveDate)];
    let starts = |spells: &Spells, month: &Span| spells.iter().map(|spell| spell.0).find(|day| month.holds(*day));
    let stops = |spells: &Spells, month: &Span| spells.iter().map(|spell| spell.1).find(|day| month.holds(*day));
    let months = (0..MONTHS).filter_map(|ahead| Span::ahead(roof.today, ahead)).map(|month| {
        let begins = which(&choices, |from, _| month.holds(from.max(roof.today)));
        let others =
            |places: Vec<usize>| -> Vec<usize> { places.into_iter().filter(|place| !begins.contains(place)).collect() };
        MonthAhead {
            first: month.first,
            ends: others(which(&choices, |_, until| month.holds(until))),
            goes_on: others(which(&choices, |from, until| from < month.first && until > month.last)),
            net_up: starts(&nets, &month),
            net_down: stops(&nets, &month),
            feed_halved: starts(&halved, &month),
            feed_full: stops(&halved, &month),
            waterings: waterings(roof, &month),
            drains: roof.place.is_some_and(|place| rains_begin(place, month.first)),
            begins,
        }
    });
    YearAhead { months: months.collect(), choices }
}

/// A month, its first day to its last.
struct Span {
    first: NaiveDate,
    last: NaiveDate,
}

impl Span {
    fn ahead(today: NaiveDate, months: u32) -> Option<Self> {
        let first = today.with_day(1)?.checked_add_months(Months::new(months))?;
        Some(Self { first, last: first.checked_add_months(Months::new(1))?.pred_opt()? })
    }

    fn holds(&self, day: NaiveDate) -> bool {
        self.first <= day && day <= self.last
    }
}

fn choices<'k>(roof: &Roof<'k, '_>) -> Vec<Choice<'k>> {
    let mut ranked: Vec<(usize, f64, Choice<'k>)> = roof
        .crops
        .iter()
        .map(|(crop, way, rank)| {
            let seasons = seasons(crop, *way, roof.year);
            let margin = seasons.margins_k.iter().copied().fold(f64::MIN, f64::max);
            (*rank, margin, Choice { crop, seasons })
        })
        .filter(|(_, _, choice)| !choice.seasons.windows.is_empty())
        .collect();
    ranked.sort_by(|(rank_a, margin_a, a), (rank_b, margin_b, b)| {
        let order = (a.seasons.marginal, rank_a).cmp(&(b.seasons.marginal, rank_b));
        order.then(margin_b.total_cmp(margin_a)).then(a.crop.id.cmp(&b.crop.id))
    });
    ranked.into_iter().map(|(_, _, choice)| choice).collect()
}

/// The choices with a time that passes a test on its first and last day; what goes in the whole year is told apart.
fn which(choices: &[Choice<'_>], test: impl Fn(NaiveDate, NaiveDate) -> bool) -> Vec<usize> {
    let passes = |choice: &Choice<'_>| {
        let mut windows = choice.seasons.windows.iter();
        !choice.seasons.whole_year && windows.any(|window| test(window.from.value(), window.until.value()))
    };
    choices.iter().enumerate().filter(|(_, choice)| passes(choice)).map(|(place, _)| place).collect()
}

fn waterings(roof: &Roof<'_, '_>, month: &Span) -> Option<f64> {
    let typical = roof.typical.as_ref()?;
    let today = month.first.with_day(MIDDLE)?.max(roof.today);
    Some(week_at_best(&Surroundings { today, ..typical.clone() }, &LossFactor::UNSEEN)?.rhythm)
}

/// The month of a day is rainy and the one before is not.
#[must_use]
pub fn rains_begin(place: &Place, day: NaiveDate) -> bool {
    let rainy = |month: u32| {
        let normal = place.months.get(month as usize % 12);
        normal.and_then(|normal| normal.rain).is_some_and(|rain| rain >= RAINY_MONTH)
    };
    rainy(day.month0()) && !rainy(day.month0() + 11)
}
