//! Beds: a box, basket, tray, pot or bag, and what counts where nothing was said.

use super::id::BedId;
use super::measure::Measure;
use super::site::Site;
use super::word::words;
use crate::quantity::{Area, Fraction, Length, Volume};
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
