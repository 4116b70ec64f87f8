//! Whether a crop wants a net, from when until when, how dense, and what light and water that leaves.

use super::surroundings::Surroundings;
use super::water::water_week;
use super::year::Year;
use crate::agronomy::sun::{SunDay, light_at_bed, solar_from_sunshine, solar_from_temperature};
use crate::knowledge::{Crop, Fact, SourceRef};
use crate::quantity::{Estimate, Fraction, Radiation, Temperature, TemperatureDifference};
use crate::weather::{Day, Weather};
use chrono::{Datelike, NaiveDate};

/// The part of global radiation's energy that plants can use (McCree 1972; 0.45 to 0.50, from memory).
const USABLE_PART: f64 = 0.45;
/// Photons per energy of that light in daylight, mol/MJ (McCree 1972, table of daylight, from memory).
const PHOTONS_MOL_MJ: f64 = 4.57;
/// A usual week may be this far from the week that comes (judgement).
const WEEK_DOUBT_K: f64 = 1.5;
/// Where a crop's own threshold is not known: a net is due this far below its heat limit (judgement).
const BELOW_LIMIT_K: f64 = 2.0;
/// A few such days are no season for a net.
const SHORTEST_DAYS: usize = 7;
const YEAR_DAYS: usize = 365;
const WEEK_DAYS: usize = 7;

/// What a net is to do for a crop.
#[derive(Debug, Clone, PartialEq)]
pub struct NetNeed {
    /// Light to cut; none where no week calls for a net.
    pub cut: Option<Estimate<Fraction>>,
    /// From the day asked, where it is due already.
    pub from: Option<Estimate<NaiveDate>>,
    /// None where weeks call for one the whole year round.
    pub until: Option<Estimate<NaiveDate>>,
    pub due: bool,
    /// The week that decides: that of the day where it is due, else the first that is.
    pub mean_tmax: Temperature,
    /// Weeks above call for a net.
    pub above: Temperature,
    /// Where that is from; none where it was taken from the heat limit.
    pub above_source: Option<SourceRef>,
    pub cut_source: Option<SourceRef>,
    /// The week is past what the crop stands: a net does not cool the air.
    pub past_limit: bool,
}

/// The need for a net in the year from the day that `year` was made around.
#[must_use]
pub fn net_need(crop: &Crop, year: &Year) -> Option<NetNeed> {
    let limit = &crop.heat.day_limit;
    let above = net_above(crop);
    let today = year.today();
    let (first, last) = match run(year, today, above.value()) {
        Some(run) => run,
        None => {
            let week = year.week(today)?;
            return Some(NetNeed {
                cut: None,
                from: None,
                until: None,
                due: false,
                mean_tmax: week.tmax,
                above: above.value(),
                above_source: crop.net.as_ref().map(|net| net.above.source.clone()),
                cut_source: None,
                past_limit: false,
            });
        }
    };
    let doubt = TemperatureDifference::kelvins(WEEK_DOUBT_K);
    let lower = least(above.low(), above.value() + TemperatureDifference::kelvins(-WEEK_DOUBT_K));
    let upper = most(above.high(), above.value() + doubt);
    let wider = runs_over(year, today, lower, first, last);
    let narrower = run(year, first, upper).filter(|(start, _)| *start <= last);
    let date = |place: usize| year.date(place);
    let from = Estimate::spanning(date(first), [date(wider.0), date(narrower.map_or(first, |(start, _)| start))]);
    let until =
        Estimate::spanning(date(last + 1), [date(narrower.map_or(last, |(_, end)| end) + 1), date(wider.1 + 1)]);
    let week = year.week(first)?;
    let hottest = (first..=last.min(first + 2 * WEEK_DAYS)).filter_map(|place| year.week(place)).map(|week| week.tmax);
    let hottest = hottest.fold(week.tmax, most);
    let due = first == today;
    Some(NetNeed {
        cut: Some(crop.net.as_ref().map_or_else(|| by_excess(hottest, limit), |net| net.cut.is)),
        from: Some(if due { Estimate::exactly(date(first)) } else { from }),
        until: (last < year.today() + YEAR_DAYS).then_some(until),
        due,
        mean_tmax: week.tmax,
        above: above.value(),
        above_source: crop.net.as_ref().map(|net| net.above.source.clone()),
        cut_source: crop.net.as_ref().map(|net| net.cut.source.clone()),
        past_limit: due && week.tmax > limit.value(),
    })
}

/// All runs of weeks above a temperature in the year from the day that `year` was made around: the first day, and
/// the first day after it.
#[must_use]
pub fn hot_spells(year: &Year, above: Temperature) -> Vec<(NaiveDate, NaiveDate)> {
    let mut spells = Vec::new();
    let mut at = year.today();
    while let Some((first, last)) = run(year, at, above) {
        spells.push((year.date(first), year.date(last + 1)));
        at = last + 1;
    }
    spells
}

/// The temperature whose weeks call for a net over a crop.
#[must_use]
pub fn net_above(crop: &Crop) -> Estimate<Temperature> {
    crop.net.as_ref().map_or_else(
        || crop.heat.day_limit.is.map(|limit| limit + TemperatureDifference::kelvins(-BELOW_LIMIT_K)),
        |net| net.above.is,
    )
}

/// The first run of weeks above a temperature that holds a day or comes after it, within a year.
fn run(year: &Year, from: usize, above: Temperature) -> Option<(usize, usize)> {
    let hot = |place: &usize| year.week(*place).is_some_and(|week| week.tmax > above);
    let end = year.today() + YEAR_DAYS;
    let mut at = from;
    while at <= end {
        let first = (at..=end).find(hot)?;
        let last = (first..=end).take_while(hot).last().unwrap_or(first);
        if last - first + 1 >= SHORTEST_DAYS {
            return Some((first, last));
        }
        at = last + 1;
    }
    None
}

/// A run drawn out to both sides as long as weeks stay above a lower temperature.
fn runs_over(year: &Year, today: usize, above: Temperature, first: usize, last: usize) -> (usize, usize) {
    let hot = |place: &usize| year.week(*place).is_some_and(|week| week.tmax > above);
    let start = (today..first).rev().take_while(hot).last().unwrap_or(first);
    let end = (last + 1..=today + YEAR_DAYS).take_while(hot).last().unwrap_or(last);
    (start, end)
}

/// Light to cut where the crop's own figure is not known: by how far the hottest weeks are past its limit
/// (common practice: a third suits vegetables, half in the worst heat).
fn by_excess(hottest: Temperature, limit: &Fact<Temperature>) -> Estimate<Fraction> {
    const WORST_K: f64 = 5.0;
    let percent = Fraction::percent;
    if (hottest - limit.value()).as_kelvins() > WORST_K {
        Estimate::spanning(percent(50.0), [percent(35.0), percent(50.0)])
    } else {
        Estimate::spanning(percent(35.0), [percent(30.0), percent(50.0)])
    }
}

fn least(a: Temperature, b: Temperature) -> Temperature {
    if a < b { a } else { b }
}

fn most(a: Temperature, b: Temperature) -> Temperature {
    if a > b { a } else { b }
}

/// Light that plants can use at a bed without a net, over the week from a day, mol m⁻² d⁻¹: global radiation ×
/// usable part × photons, times the share that reaches the bed. None where no day is known.
///
/// Radiation that was not measured comes from sunshine (FAO-56 eq. 35), else from the range of temperature
/// (eq. 50).
#[must_use]
pub fn daily_light_mol_m2(weather: &Weather<'_>, sun_hours: f64, from: NaiveDate) -> Option<Estimate<f64>> {
    let days: Vec<Estimate<f64>> =
        weather.from(from).take(WEEK_DAYS).filter_map(|day| light_of(&day, weather.latitude_deg, sun_hours)).collect();
    if days.is_empty() {
        return None;
    }
    let mean = |end: fn(&Estimate<f64>) -> f64| days.iter().map(end).sum::<f64>() / days.len() as f64;
    Some(Estimate::spanning(mean(Estimate::value), [mean(Estimate::low), mean(Estimate::high)]))
}

fn light_of(day: &Day, latitude_deg: f64, sun_hours: f64) -> Option<Estimate<f64>> {
    let day_of_year = u16::try_from(day.date.ordinal()).ok()?;
    let sun = SunDay::new(latitude_deg, day_of_year);
    let outside: Radiation = sun.extraterrestrial();
    let solar = day.solar.unwrap_or_else(|| match day.sunshine_h {
        Some(hours) => solar_from_sunshine(outside, hours, sun.daylight_hours()),
        None => solar_from_temperature(outside, day.tmax, day.tmin),
    });
    let open = solar.as_megajoules_per_square_metre() * USABLE_PART * PHOTONS_MOL_MJ;
    Some(light_at_bed(sun_hours, latitude_deg, day_of_year, solar).map(|share| open * share.as_of_one()))
}

/// The densest net that leaves a crop its least light; none of the light where even the open bed has too
/// little.
#[must_use]
pub fn densest(light_mol_m2: f64, least_mol_m2: f64) -> Fraction {
    if light_mol_m2 <= 0.0 {
        return Fraction::NONE;
    }
    Fraction::of_one((1.0 - least_mol_m2 / light_mol_m2).clamp(0.0, 1.0))
}

/// The water of a bed's week under a net, as a share of the same without one. None where no week is known.
#[must_use]
pub fn water_under_net(bed: &Surroundings<'_>, cut: Fraction) -> Option<Fraction> {
    let under = |percent: f64| {
        let mut netted = bed.bed.clone();
        netted.net_percent = Some(percent);
        let week = water_week(&Surroundings { bed: &netted, ..bed.clone() })?;
        Some(week.loss_per_day.value().as_millimetres())
    };
    let (open, netted) = (under(0.0)?, under(cut.as_percent())?);
    (open > 0.0).then(|| Fraction::of_one((netted / open).clamp(0.0, 1.0)))
}

/// What wind presses on a closed surface, newtons on each square metre: q = ½ρv². Air of a hot roof, 1.15 kg/m³.
/// A net lets a part through; with a gust, this is the careful end.
#[must_use]
pub fn wind_pressure_n_m2(gust_km_h: f64) -> f64 {
    const AIR_KG_M3: f64 = 1.15;
    let metres_a_second = gust_km_h / 3.6;
    0.5 * AIR_KG_M3 * metres_a_second * metres_a_second
}
