//! When a crop can go in: the days from which it gets to its harvest before heat, cold or long days end it.

mod ahead;
mod bounds;

pub use ahead::{Seasons, seasons};

use super::gathered::Gathered;
use super::year::Year;
use crate::agronomy::emergence::days_to_emergence;
use crate::agronomy::thermal_time::Thresholds;
use crate::knowledge::{Beyond, CountedFrom, Crop, Fact, PlantedAs};
use crate::quantity::{Estimate, Temperature, TemperatureDifference};
use chrono::NaiveDate;

/// A crop has to stand at least so long after its first pick (or as long as it is picked, where that is less).
const WORTH_PICKING_DAYS: f64 = 14.0;
/// Days in a seedbed before saplings go out: least, usual, most (common practice, no source).
pub const NURSERY_DAYS: (u64, u64, u64) = (25, 30, 35);
/// A window that opens within so many days opens soon; one that closed within as many is just missed.
const NEAR_DAYS: usize = 30;
/// What stands against a day within so many days of it is felt as being so now.
const PRESENT_DAYS: i64 = 13;
/// A year is looked ahead.
const YEAR_DAYS: usize = 365;
/// A window that is still open then is followed for so long.
const LOOKED_BEYOND_DAYS: usize = 120;
/// A few fitting days between unfit ones are chance, not a window.
const SHORTEST_WINDOW_DAYS: usize = 14;
/// A usual week may be this far from the week that comes (judgement, as for a harvest).
const WEEK_DOUBT_K: f64 = 1.5;
/// An end of a window is not moved further than this by its doubt.
const FURTHEST_DOUBT_DAYS: usize = 60;
/// What heat does to flowers or to old leaves it does not do to young plants; they stand so much more (judgement:
/// cold-season greens are sown while the days are still hotter than they will bear when grown).
pub const YOUNG_STANDS_K: f64 = 5.0;
/// From flower to first fruit (common practice, no source; less for pods).
const FLOWER_TO_FRUIT_DAYS: usize = 30;
/// A tray that takes longer moulds before it is ready (judgement).
const LONGEST_TRAY_DAYS: usize = 30;
/// Limits eased by their doubt.
const EASED: f64 = -1.0;

/// How a crop goes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// Seed where it is to stand.
    InBed,
    /// Seed in a seedbed, saplings into the bed after [`NURSERY_DAYS`].
    Seedbed,
    /// Saplings into the bed.
    Planted,
    /// Living pieces where they are to stand: cloves, tubers, cuttings.
    Pieces(PlantedAs),
    /// Seed on a sprouting tray.
    Tray,
}

/// Whether a day suits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fits {
    Yes,
    /// It will within 30 days.
    Soon,
    /// It did within the last 30.
    Late,
    No,
}

impl Fits {
    /// As the answer contract writes it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::Soon => "soon",
            Self::Late => "late",
            Self::No => "no",
        }
    }
}

/// What stands against a day, and when it first does.
#[derive(Debug, Clone, PartialEq)]
pub enum Hindrance {
    /// Mean daily maximum of the week.
    Hot { on: NaiveDate, mean_tmax: Temperature, limit: Fact<Temperature>, beyond: Beyond },
    /// Mean daily minimum of the week.
    Cold { on: NaiveDate, mean_tmin: Temperature, limit: Fact<Temperature> },
    /// Hours from sunrise to sunset.
    LongDay { on: NaiveDate, day_h: f64, limit: Fact<f64> },
    /// Seed: mean of the week against the ceiling of emergence.
    SeedHot { on: NaiveDate, mean: Temperature, limit: Fact<Temperature> },
    /// Seed: the same against the base.
    SeedCold { on: NaiveDate, mean: Temperature, limit: Fact<Temperature> },
    /// It would not come to its first pick within the year.
    Slow { on: NaiveDate },
}

impl Hindrance {
    /// The first day of the week it was seen in.
    #[must_use]
    pub const fn on(&self) -> NaiveDate {
        match self {
            Self::Hot { on, .. }
            | Self::Cold { on, .. }
            | Self::LongDay { on, .. }
            | Self::SeedHot { on, .. }
            | Self::SeedCold { on, .. }
            | Self::Slow { on } => *on,
        }
    }
}

/// A stretch of days; its ends are in doubt by what usual weather and limits are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    pub from: Estimate<NaiveDate>,
    pub until: Estimate<NaiveDate>,
    /// No day of the year is unfit: then it runs from the day asked about, for a year.
    pub whole_year: bool,
}

/// What a sowing on the day asked about would come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    pub way: Way,
    pub fits: Fits,
    /// The nearest window that holds the day or comes after it.
    pub window: Option<Window>,
    /// A later window of the year that is at least twice as long.
    pub main: Option<Window>,
    /// No time of the year keeps within its limits; this one only just exceeds them.
    pub marginal: bool,
    /// Why the day itself does not suit; where that lies weeks ahead, what keeps the window from opening sooner.
    pub hindrance: Option<Hindrance>,
    /// The hindrance is that of the day before the window opens.
    pub before_opening: bool,
    /// The first pick of what goes in on the day.
    pub first_pick: Option<NaiveDate>,
    /// What ends it before its picking is over.
    pub ended_by: Option<Hindrance>,
    /// How far the worst week stays from the nearer limit, K; negative beyond it.
    pub margin_k: f64,
}

impl Outlook {
    /// When the work is done: on the day asked about where it suits, else when the window opens.
    #[must_use]
    pub fn work_on(&self, day: NaiveDate) -> Option<NaiveDate> {
        match self.fits {
            Fits::Yes => Some(day),
            Fits::Soon | Fits::Late | Fits::No => self.window.map(|window| window.from.value()),
        }
    }
}

/// The outlook of a crop put in on the day a year was made around.
#[must_use]
pub fn outlook(crop: &Crop, way: Way, year: &Year) -> Outlook {
    let growth = Growth::of(crop, way, year);
    let today = year.today();
    let (strict, fits) = growth.times();
    let marginal = strict < 0.0;
    let window = fits.iter().copied().find(|(_, last)| *last >= today);
    let length = |(first, last): (usize, usize)| last - first.max(today) + 1;
    let main = fits.iter().copied().filter(|(_, last)| *last >= today).max_by_key(|run| length(*run));
    let main = main.filter(|main| window.is_some_and(|window| length(*main) >= 2 * length(window)));
    let verdict = ahead::fits(&fits, today);
    let bed_day = today + growth.nursery();
    let first_pick = growth.first_pick(bed_day);
    let ended_by = first_pick.and_then(|pick| {
        let end = pick + crop.harvest.picking_days.value() as usize;
        (way != Way::Tray).then(|| growth.limit(bed_day, (pick, end), strict)).flatten()
    });
    let (hindrance, before_opening) = match (verdict, window) {
        (Fits::Yes, _) => (None, false),
        (Fits::Soon | Fits::No, Some((first, _))) => {
            let now = growth.hindrance(today, strict);
            let far = now.as_ref().is_some_and(|now| (now.on() - year.date(today)).num_days() > PRESENT_DAYS);
            let opens = if far { growth.hindrance(first.saturating_sub(1), strict) } else { None };
            let before = opens.is_some();
            (opens.or(now), before)
        }
        _ => (growth.hindrance(today, strict), false),
    };
    Outlook {
        way,
        fits: verdict,
        marginal,
        main: main.map(|window| growth.doubted(window, strict)),
        window: window.map(|window| growth.doubted(window, strict)),
        hindrance,
        before_opening,
        first_pick: first_pick.map(|day| year.date(day)),
        ended_by,
        margin_k: growth.margin(bed_day),
    }
}

/// How a crop goes in where nothing else was said.
#[must_use]
pub fn usual_way(crop: &Crop, microgreen: bool) -> Way {
    if let Some(piece) = crop.sowing.as_ref().and_then(|sowing| sowing.planted_as).filter(|_| !microgreen) {
        return Way::Pieces(piece);
    }
    match (microgreen && crop.microgreen.is_some(), crop.harvest.counted_from, &crop.sowing) {
        (true, _, _) => Way::Tray,
        (false, CountedFrom::Sowing, _) => Way::InBed,
        (false, CountedFrom::Planting, Some(_)) => Way::Seedbed,
        (false, CountedFrom::Planting, None) => Way::Planted,
    }
}

/// Days until seed or pieces show, at the mean of the week from a place of the year. None where it is too hot for them.
#[must_use]
pub fn emergence_days(crop: &Crop, year: &Year, place: usize) -> Option<Estimate<f64>> {
    let emergence = &crop.emergence;
    let mean = year.week(place)?.mean();
    if mean > emergence.ceiling.value() {
        return None;
    }
    // Pieces lie for weeks: there the optimum, above which nothing goes faster, makes a difference.
    let pieces = crop.sowing.as_ref().is_some_and(|sowing| sowing.planted_as.is_some());
    let optimum = emergence.optimum.value();
    let felt = if pieces && mean > optimum { optimum } else { mean };
    days_to_emergence(felt, emergence.base.is, emergence.thermal_time.is)
}

/// Unbroken runs of fitting days, first and last place, that are long enough to count.
fn windows(fits: &[bool]) -> Vec<(usize, usize)> {
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for day in (0..fits.len()).filter(|day| fits.get(*day) == Some(&true)) {
        match runs.last_mut() {
            Some((_, last)) if *last + 1 == day => *last = day,
            _ => runs.push((day, day)),
        }
    }
    runs.retain(|(first, last)| last - first + 1 >= SHORTEST_WINDOW_DAYS);
    runs
}

/// A crop's way through a year.
struct Growth<'a> {
    crop: &'a Crop,
    way: Way,
    year: &'a Year,
    gathered: Gathered,
}

impl<'a> Growth<'a> {
    fn of(crop: &'a Crop, way: Way, year: &'a Year) -> Self {
        let (base, upper) = match (&crop.microgreen, way) {
            (Some(tray), Way::Tray) => (tray.base.value(), tray.upper.value()),
            _ => (crop.heat.base.value(), crop.heat.upper.value()),
        };
        Self { crop, way, year, gathered: year.gathered(Thresholds { base, upper: Some(upper) }) }
    }

    fn nursery(&self) -> usize {
        if self.way == Way::Seedbed { NURSERY_DAYS.1 as usize } else { 0 }
    }

    fn first_pick(&self, bed_day: usize) -> Option<usize> {
        let sum = match (&self.crop.microgreen, self.way) {
            (Some(tray), Way::Tray) => tray.thermal_time.value(),
            _ => self.crop.harvest.first.value(),
        };
        self.gathered.reached(bed_day, sum)
    }

    /// What stands against a day, the limits drawn in by so many times their doubt.
    fn hindrance(&self, day: usize, strict: f64) -> Option<Hindrance> {
        if self.comes_up()
            && let Some(seed) = self.seed(day, strict)
        {
            return Some(seed);
        }
        let bed_day = day + self.nursery();
        let slow = || Hindrance::Slow { on: self.year.date(day) };
        let Some(pick) = self.first_pick(bed_day).filter(|pick| pick - bed_day <= YEAR_DAYS) else {
            return Some(slow());
        };
        if self.way == Way::Tray {
            return (pick - day > LONGEST_TRAY_DAYS).then(slow);
        }
        self.limit(bed_day, (pick, pick + self.worth_picking()), strict)
    }

    /// Whether seed or a resting piece has to come up.
    fn comes_up(&self) -> bool {
        match self.way {
            Way::Planted => false,
            Way::Pieces(piece) => piece.rests(),
            Way::InBed | Way::Seedbed | Way::Tray => true,
        }
    }

    /// It has to stand for so many days from its first pick.
    fn worth_picking(&self) -> usize {
        self.crop.harvest.picking_days.value().min(WORTH_PICKING_DAYS) as usize
    }

    fn seed(&self, day: usize, strict: f64) -> Option<Hindrance> {
        let week = self.year.week(day)?;
        let (mean, on) = (week.mean(), self.year.date(day));
        let emergence = &self.crop.emergence;
        let (base, ceiling) = (&emergence.base, &emergence.ceiling);
        if mean > drawn(ceiling, -strict) {
            return Some(Hindrance::SeedHot { on, mean, limit: ceiling.clone() });
        }
        (mean < drawn(base, strict)).then(|| Hindrance::SeedCold { on, mean, limit: base.clone() })
    }

    /// From when air bears on it: a piece that rests in the mix has no leaves until it shoots.
    fn leaves_from(&self, bed_day: usize) -> usize {
        match self.way {
            Way::Pieces(piece) if piece.rests() => {
                let days = emergence_days(self.crop, self.year, bed_day);
                bed_day + days.map_or(0, |days| days.value() as usize)
            }
            _ => bed_day,
        }
    }

    /// Until when a plant that is first picked on a day is young for what heat does to it.
    fn young_until(&self, from: usize, pick: usize) -> usize {
        let growing = pick.saturating_sub(from);
        match self.crop.heat.beyond {
            Beyond::DropsFlowers => from + growing.saturating_sub(FLOWER_TO_FRUIT_DAYS),
            Beyond::Bolts | Beyond::TurnsBitter => {
                from + (self.crop.stages.initial_days.value() as usize).min(growing / 2)
            }
            Beyond::Stops | Beyond::Scorches => from,
        }
    }

    /// The heat limit of a week: a young plant's, else the grown one's.
    fn hot(&self, week: usize, young_until: usize, strict: f64) -> Temperature {
        let young = if week < young_until { YOUNG_STANDS_K } else { 0.0 };
        drawn(&self.crop.heat.day_limit, -strict) + TemperatureDifference::kelvins(young)
    }

    /// The first week from a day until the end of picking that is past a limit.
    fn limit(&self, from: usize, (pick, until): (usize, usize), strict: f64) -> Option<Hindrance> {
        let heat = &self.crop.heat;
        let young_until = self.young_until(from, pick);
        let cold = drawn(&heat.cold_limit, strict);
        let long = self.crop.season.as_ref().and_then(|season| season.bolts_above_day_h.as_ref());
        self.year.weeks_within(self.leaves_from(from), until).find_map(|(place, week)| {
            let on = self.year.date(place);
            if week.tmax > self.hot(place, young_until, strict) {
                let limit = heat.day_limit.clone();
                return Some(Hindrance::Hot { on, mean_tmax: week.tmax, limit, beyond: heat.beyond });
            }
            if week.tmin < cold {
                return Some(Hindrance::Cold { on, mean_tmin: week.tmin, limit: heat.cold_limit.clone() });
            }
            // Long days call out the flower of a plant that has leaves.
            let limit = long.filter(|limit| place >= young_until && week.day_h > end_of(limit, -strict))?;
            Some(Hindrance::LongDay { on, day_h: week.day_h, limit: limit.clone() })
        })
    }

    /// The ends that stricter and easier limits give.
    fn doubted(&self, (first, last): (usize, usize), strict: f64) -> Window {
        let whole_year = first <= self.year.today() && last >= self.year.today() + YEAR_DAYS;
        let low = first.saturating_sub(FURTHEST_DOUBT_DAYS);
        let high = last + FURTHEST_DOUBT_DAYS;
        let date = |place: usize| self.year.date(place);
        if whole_year {
            let today = self.year.today();
            let (from, until) = (date(today), date(today + YEAR_DAYS - 1));
            return Window { from: Estimate::exactly(from), until: Estimate::exactly(until), whole_year };
        }
        let (easier, stricter) = (self.bounds(strict + EASED), self.bounds(strict + 1.0));
        let eased = |day: &usize| self.suits(*day, &easier);
        let kept = |day: &usize| self.suits(*day, &stricter);
        // Easier limits: as far as the days go on fitting without a break.
        let easier_from = (low..first).rev().take_while(eased).last();
        let easier_until = (last + 1..=high).take_while(eased).last();
        let (from, until) = (date(first), date(last));
        let later = (first..=last).find(kept).map_or(until, date);
        let sooner = (first..=last).rfind(kept).map_or(from, date);
        Window {
            from: Estimate::spanning(from, [easier_from.map_or(from, date), later]),
            until: Estimate::spanning(until, [sooner, easier_until.map_or(until, date)]),
            whole_year,
        }
    }

    /// How far the worst week of a stand stays from the nearer limit, K.
    fn margin(&self, bed_day: usize) -> f64 {
        if self.way == Way::Tray {
            let ceiling = self.crop.emergence.ceiling.value();
            return self.year.week(bed_day).map_or(0.0, |week| (ceiling - week.mean()).as_kelvins());
        }
        let Some(pick) = self.first_pick(bed_day) else { return f64::MIN };
        let heat = &self.crop.heat;
        let young_until = self.young_until(bed_day, pick);
        self.year.weeks_within(self.leaves_from(bed_day), pick + self.worth_picking()).fold(
            f64::MAX,
            |least, (place, week)| {
                let from_heat = (self.hot(place, young_until, 0.0) - week.tmax).as_kelvins();
                let from_cold = (week.tmin - heat.cold_limit.value()).as_kelvins();
                least.min(from_heat).min(from_cold)
            },
        )
    }
}

/// A limit moved up (`by` above 0) or down by its doubt: the farther of its own range and what a usual week
/// may be off.
fn drawn(limit: &Fact<Temperature>, by: f64) -> Temperature {
    let moved = limit.value() + TemperatureDifference::kelvins(WEEK_DOUBT_K * by);
    match by {
        by if by > 0.0 && limit.is.high() > moved => limit.is.high(),
        by if by < 0.0 && limit.is.low() < moved => limit.is.low(),
        _ => moved,
    }
}

/// The end of a number's own range, above for `by` over 0.
fn end_of(limit: &Fact<f64>, by: f64) -> f64 {
    match by {
        by if by > 0.0 => limit.is.high(),
        by if by < 0.0 => limit.is.low(),
        _ => limit.value(),
    }
}
