//! Beds: a box, basket, tray, pot or bag, and what counts where nothing was said.

use super::id::BedId;
use super::job::{JobDone, JobKind};
use super::measure::Measure;
use super::site::Site;
use super::word::words;
use crate::quantity::{Area, Fraction, Length, Unit, Volume};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

words!(
    BedKind { Box = "box", Basket = "basket", Tray = "tray", Pot = "pot", Bag = "bag" }
);

words!(
    /// What the sides let through.
    Sides { Slatted = "slatted", Solid = "solid", Cloth = "cloth" }
);

words!(
    /// How much of the rain falls on the bed.
    RainExposure { Open = "open", Part = "part", None = "none" }
);

words!(
    /// A key of the bed file that was left out, so that the usual value counts and answers say so.
    Assumed { Mix = "mix", Sides = "sides", SunHours = "sun_hours", Rain = "rain", Net = "net_percent", Mulch = "mulch" }
);

/// An inside depth; the mix stands a rim lower.
pub type Depth = Measure<Length>;

/// Inside measures.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Shape {
    Box {
        length: Measure<Length>,
        width: Measure<Length>,
        depth: Depth,
    },
    Round {
        diameter: Measure<Length>,
        depth: Depth,
    },
    /// A bag known by what it holds; how deep it stands may be unsaid.
    Bag {
        volume: Measure<Volume>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        depth: Option<Depth>,
    },
}

/// How much direct sun a bed gets on a clear day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sun {
    /// Hours a day that a person stated.
    Stated(f64),
    /// To be computed from the walls of the site.
    FromWalls,
    /// Hours a day that count where nothing was said.
    Assumed(f64),
}

/// A net as the work on record left it, with the light it cuts in percent where that is known.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Net {
    Up(Option<f64>),
    Down,
}

/// A bed as a person described it. `mix` to `mulch` may be left out; the accessors give what counts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Bed {
    pub id: BedId,
    /// What people call it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub names: Vec<String>,
    pub kind: BedKind,
    pub shape: Shape,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mix: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mix_added: Option<NaiveDate>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sides: Option<Sides>,
    /// Hours of direct sun on a clear day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sun_hours: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain: Option<RainExposure>,
    /// Light cut by the net over it, in percent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub net_percent: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mulch: Option<bool>,
}

/// Hours of direct sun that count for a bed left bare (the garden file's stated convention).
const USUAL_SUN_HOURS: f64 = 6.0;
/// What a net cuts that went up with no word of which (common practice: the lighter of the usual nets).
pub const USUAL_NET_PERCENT: f64 = 35.0;
/// The mix that counts for a bed left bare (the garden file's stated convention).
const USUAL_MIX: &str = "house";

impl Bed {
    /// A bed of which only kind and size were said.
    #[must_use]
    pub const fn bare(id: BedId, kind: BedKind, shape: Shape) -> Self {
        Self {
            id,
            names: Vec::new(),
            kind,
            shape,
            mix: None,
            mix_added: None,
            sides: None,
            sun_hours: None,
            rain: None,
            net_percent: None,
            mulch: None,
        }
    }

    /// The mix that counts.
    #[must_use]
    pub fn mix_counted(&self) -> &str {
        self.mix.as_deref().unwrap_or(USUAL_MIX)
    }

    /// The sides that count: box and basket slatted, tray, pot and bag solid where unsaid.
    #[must_use]
    pub fn sides_counted(&self) -> Sides {
        self.sides.unwrap_or(match self.kind {
            BedKind::Box | BedKind::Basket => Sides::Slatted,
            BedKind::Tray | BedKind::Pot | BedKind::Bag => Sides::Solid,
        })
    }

    /// The sun that counts; unsaid, it is to be computed where the site has walls.
    #[must_use]
    pub fn sun_counted(&self, site: &Site) -> Sun {
        match self.sun_hours {
            Some(hours) => Sun::Stated(hours),
            None if site.walls.is_empty() => Sun::Assumed(USUAL_SUN_HOURS),
            None => Sun::FromWalls,
        }
    }

    #[must_use]
    pub fn rain_counted(&self) -> RainExposure {
        self.rain.unwrap_or(RainExposure::Open)
    }

    /// The part of the light that the net takes.
    #[must_use]
    pub fn net_counted(&self) -> Fraction {
        Fraction::percent(self.net_percent.unwrap_or(0.0))
    }

    #[must_use]
    pub fn mulch_counted(&self) -> bool {
        self.mulch.unwrap_or(false)
    }

    /// The bed as the work on record has left it: the latest net that went up or came down decides, the latest new mix
    /// too. `jobs` are those up to now, of any order; `is_mix` knows the ids of mixes.
    #[must_use]
    pub fn as_worked(self, jobs: &[JobDone], is_mix: impl Fn(&str) -> bool) -> Self {
        let net_percent = match self.net_on_record(jobs) {
            Some(Net::Up(percent)) => Some(percent.unwrap_or(USUAL_NET_PERCENT)),
            Some(Net::Down) => Some(0.0),
            None => self.net_percent,
        };
        let mixed = self.latest(jobs, JobKind::Mix);
        let mixed = mixed.filter(|job| self.mix_added.is_none_or(|added| added < job.on.date()));
        let mix = mixed.and_then(|job| job.what.clone()).filter(|mix| is_mix(mix)).or(self.mix.clone());
        let mix_added = mixed.map(|job| job.on.date()).or(self.mix_added);
        Self { net_percent, mix, mix_added, ..self }
    }

    /// Whether a net went up of which nobody said how much light it cuts.
    #[must_use]
    pub fn net_unrated(&self, jobs: &[JobDone]) -> bool {
        self.net_on_record(jobs) == Some(Net::Up(None))
    }

    /// The net by the latest job; none where no job tells of one.
    fn net_on_record(&self, jobs: &[JobDone]) -> Option<Net> {
        let job = self.latest(jobs, JobKind::Net)?;
        match job.what.as_deref()? {
            "down" => Some(Net::Down),
            "up" => {
                let said = job.amount.filter(|amount| amount.unit == Unit::Percent).map(|amount| amount.value);
                Some(Net::Up(said.or(self.net_percent.filter(|percent| *percent > 0.0))))
            }
            _ => None,
        }
    }

    fn latest<'j>(&self, jobs: &'j [JobDone], kind: JobKind) -> Option<&'j JobDone> {
        let of_kind = jobs.iter().filter(|job| job.job == kind && job.bed == self.id);
        of_kind.max_by_key(|job| (job.on.date(), job.on.time().unwrap_or_default()))
    }

    /// What counts here without having been said.
    #[must_use]
    pub fn assumed(&self, site: &Site) -> Vec<Assumed> {
        let unsaid = [
            (Assumed::Mix, self.mix.is_none()),
            (Assumed::Sides, self.sides.is_none()),
            (Assumed::SunHours, matches!(self.sun_counted(site), Sun::Assumed(_))),
            (Assumed::Rain, self.rain.is_none()),
            (Assumed::Net, self.net_percent.is_none()),
            (Assumed::Mulch, self.mulch.is_none()),
        ];
        unsaid.into_iter().filter_map(|(what, unsaid)| unsaid.then_some(what)).collect()
    }
}

impl Shape {
    /// The inside area seen from above, unless only the volume of a bag is known.
    #[must_use]
    pub fn area(&self) -> Option<Area> {
        match self {
            Self::Box { length, width, .. } => Some(length.quantity() * width.quantity()),
            Self::Round { diameter, .. } => {
                let radius = diameter.quantity() / 2.0;
                Some((radius * radius) * std::f64::consts::PI)
            }
            Self::Bag { volume, depth } => depth.map(|depth| {
                let cubic_metres = volume.quantity().as_litres() / 1000.0;
                Area::square_metres(cubic_metres / depth.quantity().as_metres())
            }),
        }
    }

    /// The inside depth, unless only the volume of a bag is known.
    #[must_use]
    pub fn depth(&self) -> Option<Length> {
        match self {
            Self::Box { depth, .. } | Self::Round { depth, .. } => Some(depth.quantity()),
            Self::Bag { depth, .. } => depth.map(Measure::quantity),
        }
    }

    /// The inside volume, to the brim.
    #[must_use]
    pub fn volume(&self) -> Volume {
        match self {
            Self::Box { length, width, depth } => length.quantity() * width.quantity() * depth.quantity(),
            Self::Round { diameter, depth } => {
                let radius = diameter.quantity() / 2.0;
                (radius * radius) * std::f64::consts::PI * depth.quantity()
            }
            Self::Bag { volume, .. } => volume.quantity(),
        }
    }
}
