//! What of an answer can be drawn or listed: its figures in the order of days or of places, in no language yet.

use super::line::{Line, Said};
use crate::garden::{BedId, SiteId};
use crate::quantity::{Estimate, Fraction, Length, Temperature, Volume, WaterDepth};
use chrono::{NaiveDate, NaiveTime};

/// One table of an answer.
#[derive(Debug, Clone, PartialEq)]
pub enum Table {
    Water(WaterTable),
    Plan(PlanTable),
    Due(DueTable),
    Year(YearTable),
}

/// The can of a site that names none: the usual one of this trade (common practice).
pub const USUAL_CAN: Volume = Volume::litres(10.0);

/// A part of the day in which water is given.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Turn {
    Morning,
    Noon,
    Evening,
}

impl Turn {
    /// Its word, as phrases know it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Morning => "morning",
            Self::Noon => "noon",
            Self::Evening => "evening",
        }
    }

    /// The hour that is told (common practice: early, late, and where it must be at noon in the shade).
    #[must_use]
    pub fn hour(self) -> NaiveTime {
        let hour = match self {
            Self::Morning => 7,
            Self::Noon => 12,
            Self::Evening => 18,
        };
        NaiveTime::from_hms_opt(hour, 0, 0).unwrap_or_default()
    }
}

/// A bed's week of water.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterTable {
    /// None for a bed that was described or assumed.
    pub id: Option<BedId>,
    pub bed: Said,
    /// How often and how much, as the answer tells it.
    pub told: Line,
    /// What the finger checks; none where nothing is watered.
    pub check: Option<Line>,
    /// The name of the rhythm, as phrases know it.
    pub rhythm: &'static str,
    /// One watering; none where none is due.
    pub turn: Option<Estimate<Volume>>,
    pub days: Vec<WaterDay>,
    /// The site's watering can, where it is known.
    pub can: Option<Volume>,
}

/// One of its days.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterDay {
    pub date: NaiveDate,
    pub litres: Estimate<Volume>,
    pub tmax: Temperature,
    /// Expected rain, under the open sky.
    pub rain: WaterDepth,
    pub rain_chance: Option<Fraction>,
    /// A usual day rather than a forecast.
    pub usual: bool,
    /// When to water on it.
    pub turns: Vec<Turn>,
}

/// Where plants stand in a bed.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanTable {
    pub bed: Said,
    pub crop: Said,
    /// How many, as the answer tells it.
    pub told: Line,
    pub rim: Rim,
    /// Of a box from its corner, along its length and its width; of a round one from its middle.
    pub plants: Vec<(Length, Length)>,
    pub gap: Length,
    /// Plants along the length and along the width of a box.
    pub rows: Option<(u32, u32)>,
}

/// The inside measures of a bed, each with the words for it.
#[derive(Debug, Clone, PartialEq)]
pub enum Rim {
    Box { length: (Length, Said), width: (Length, Said) },
    Round { across: (Length, Said) },
}

/// Jobs that are due, in the order to go round.
#[derive(Debug, Clone, PartialEq)]
pub struct DueTable {
    pub first: NaiveDate,
    pub last: NaiveDate,
    pub jobs: Vec<DueJob>,
}

/// One of them.
#[derive(Debug, Clone, PartialEq)]
pub struct DueJob {
    pub date: NaiveDate,
    pub bed: BedId,
    pub site: SiteId,
    pub site_name: String,
    /// The word of the job, as phrases know it.
    pub job: &'static str,
    /// A crop, a material, `up` or `down`.
    pub what: Option<String>,
    /// The same in a reply; none for a net.
    pub what_said: Option<Said>,
    /// By its rhythm alone it was due on this earlier day.
    pub since: Option<NaiveDate>,
}

/// The twelve months of a site.
#[derive(Debug, Clone, PartialEq)]
pub struct YearTable {
    /// What it is of.
    pub told: Line,
    /// The first day of the first month.
    pub first: NaiveDate,
    pub today: NaiveDate,
    pub rows: Vec<YearRow>,
    /// Waterings a week of the bed that stands for all, a number a month; empty where none is told.
    pub waterings: Vec<Option<f64>>,
}

/// A row of the year: a crop, the net, the feeds.
#[derive(Debug, Clone, PartialEq)]
pub struct YearRow {
    pub name: Said,
    pub spans: Vec<YearSpan>,
}

/// From its first to its last day, both in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct YearSpan {
    pub from: NaiveDate,
    pub until: NaiveDate,
    pub kind: YearKind,
}

/// What a span means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum YearKind {
    /// It may be sown or planted.
    GoesIn,
    /// It is picked.
    Picking,
    /// A net hangs.
    Net,
    /// Feeds are halved or rest.
    FeedLess,
    /// The rains: drains are kept clear.
    Rains,
}

impl YearKind {
    /// Its word, as phrases know it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::GoesIn => "goes-in",
            Self::Picking => "picking",
            Self::Net => "net",
            Self::FeedLess => "feed-less",
            Self::Rains => "rains",
        }
    }
}
