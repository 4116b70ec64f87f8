//! What the days ahead bring that a roof has to be made ready for: heat, cold, heavy rain, wind, hot walls, bolting.
//!
//! An alert has a key that stays the same while its days come nearer; what was told is noted under it, so that one
//! event is told once, and again only when it has become worse.

mod beds;
mod sky;

pub use sky::{heat_index_of, work_is_dangerous};

use super::due::Plot;
use crate::garden::{BedId, SiteId};
use crate::quantity::Temperature;
use crate::weather::{Day, Origin, Weather};
use chrono::{Days, NaiveDate};

/// A forecast is looked at so far ahead, today the first: beyond it says little of a single day (judgement).
const AHEAD_DAYS: usize = 5;
/// An event that stops for so many days and comes again is the same (judgement).
const PAUSE_DAYS: i64 = 3;
/// What is told once a season is not told again within so many days.
const SEASON_DAYS: i64 = 150;

/// What comes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum What {
    /// By the India Meteorological Department's criterion for plains.
    HeatWave,
    /// By its classes of a day's rain.
    HeavyRain,
    /// By the Beaufort scale.
    StrongWind,
    /// A night below what a crop that stands bears.
    ColdNight,
    /// The sun on thin walls heats roots.
    HotWalls,
    /// The first week past what a crop that runs to flower bears.
    Bolting,
    /// The rains are near: drains.
    Rains,
}

impl What {
    /// Its word in keys and figures.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::HeatWave => "heat-wave",
            Self::HeavyRain => "heavy-rain",
            Self::StrongWind => "strong-wind",
            Self::ColdNight => "cold-night",
            Self::HotWalls => "hot-walls",
            Self::Bolting => "bolting",
            Self::Rains => "rains",
        }
    }

    /// Days between two of the same kind within which they are one event.
    const fn pause(self) -> i64 {
        match self {
            Self::HeatWave | Self::HeavyRain | Self::StrongWind | Self::ColdNight => PAUSE_DAYS,
            Self::HotWalls | Self::Rains => SEASON_DAYS,
            // Its key names the sowing.
            Self::Bolting => i64::MAX,
        }
    }
}

/// One event at one site.
#[derive(Debug, Clone, PartialEq)]
pub struct Alert {
    pub what: What,
    /// 1, and more the worse it is.
    pub grade: u8,
    pub site: SiteId,
    pub from: NaiveDate,
    pub until: NaiveDate,
    /// The worst of it.
    pub peak: Peak,
    /// The beds it is about; none for what concerns the whole roof.
    pub beds: Vec<BedId>,
    /// The crops it is about.
    pub crops: Vec<String>,
    /// Tells one event from another of its kind where the days do not: the day of sowing.
    pub start: Option<NaiveDate>,
}

/// How bad it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Peak {
    /// The hottest day, and what is usual for it.
    Hot { tmax: Temperature, usual: Temperature },
    /// The coldest night.
    Cold { tmin: Temperature },
    /// mm in the wettest day.
    Rain { millimetres: f64 },
    /// The windiest day's mean at 2 m, m/s.
    Wind { metres_per_second: f64 },
    /// The mean daily maximum of the week, and the crop's limit.
    Week { tmax: Temperature, limit: Temperature },
    /// The day is longer than the crop bears, h.
    LongDay { limit_h: f64 },
    /// The first month of the rains, 1 to 12.
    Month(u32),
}

impl Alert {
    /// The event without how bad it is: the same for all its days and grades.
    #[must_use]
    pub fn event(&self) -> String {
        let mut key = format!("{}|{}", self.site, self.what.word());
        for more in self.crops.iter().filter(|_| self.what == What::Bolting) {
            key.push('|');
            key.push_str(more);
        }
        if let Some(start) = self.start {
            key.push_str(&format!("|{start}"));
        }
        key
    }

    /// The event as bad as it is: what is told once.
    #[must_use]
    pub fn key(&self) -> String {
        format!("{}|{}", self.event(), self.grade)
    }

    /// Whether it goes on with an event of the same key that was told to last over these days.
    #[must_use]
    pub fn goes_on(&self, from: NaiveDate, until: NaiveDate) -> bool {
        let pause = self.what.pause();
        (self.from - until).num_days() <= pause && (from - self.until).num_days() <= pause
    }
}

/// All that comes to one site, the worst for people first. `plots` are its beds.
#[must_use]
pub fn alerts(site: &SiteId, weather: &Weather<'_>, today: NaiveDate, plots: &[Plot<'_>]) -> Vec<Alert> {
    let days = foretold(weather, today);
    let roof = Roof { site, weather, today, days: &days };
    let mut all: Vec<Alert> = sky::alerts(&roof).chain(beds::alerts(&roof, plots)).collect();
    all.sort_by(|a, b| (a.what, a.from, &a.crops).cmp(&(b.what, b.from, &b.crops)));
    all
}

/// Whether a forecast says anything of the days ahead.
#[must_use]
pub fn is_foretold(weather: &Weather<'_>, today: NaiveDate) -> bool {
    !foretold(weather, today).is_empty()
}

/// A site under its sky.
struct Roof<'a> {
    site: &'a SiteId,
    weather: &'a Weather<'a>,
    today: NaiveDate,
    /// The days ahead that a forecast knows.
    days: &'a [Day],
}

impl Roof<'_> {
    /// The days that pass a test, from the first to the last of them. None where there is none.
    fn spell(&self, test: impl Fn(&Day) -> bool) -> Option<Vec<Day>> {
        let first = self.days.iter().position(&test)?;
        let last = self.days.iter().rposition(&test)?;
        self.days.get(first..=last).map(<[Day]>::to_vec)
    }

    fn alert(&self, what: What, grade: u8, days: &[Day], peak: Peak) -> Option<Alert> {
        Some(Alert {
            what,
            grade,
            site: self.site.clone(),
            from: days.first()?.date,
            until: days.last()?.date,
            peak,
            beds: Vec::new(),
            crops: Vec::new(),
            start: None,
        })
    }
}

/// The days ahead but for usual ones: those tell of no event.
fn foretold(weather: &Weather<'_>, today: NaiveDate) -> Vec<Day> {
    let until = today.checked_add_days(Days::new(AHEAD_DAYS as u64)).unwrap_or(today);
    weather
        .from(today)
        .take_while(|day| day.date < until)
        .filter(|day| !matches!(day.origin, Origin::Normals))
        .collect()
}

#[cfg(test)]
mod tests;
