//! When a crop can go in: the days from which it gets to its harvest before heat, cold or long days end it.

mod ahead;
mod bounds;
mod growth;

use growth::{Growth, drawn, end_of};

pub use ahead::{Seasons, seasons};

use super::year::Year;
use crate::agronomy::emergence::days_to_emergence;
use crate::knowledge::{Beyond, CountedFrom, Crop, Fact, PlantedAs};
use crate::quantity::{Estimate, Temperature};
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
/// A young tree that has got through so many days has taken hold (common practice, no source).
const TAKES_HOLD_DAYS: usize = 60;
/// Until then it stands so much less heat than a grown one (judgement: a sapling in its first weeks has few roots).
const TENDER_K: f64 = 4.0;
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
        (false, CountedFrom::Planting, Some(_)) if !crop.stands_for_years() => Way::Seedbed,
        (false, CountedFrom::Planting, _) => Way::Planted,
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
