//! What a bed is, as its sums see it: measures, sun, net, mix, and who grows in it.

use crate::agronomy::vessel::{Measures, Vessel};
use crate::garden::{Bed, BedKind, RainExposure, Shape, Sides, Start};
use crate::knowledge::{Crop, GrownFor, Mix};
use crate::quantity::{Fraction, Length};
use crate::weather::Weather;
use chrono::NaiveDate;

/// A crop that stands in a bed.
#[derive(Debug, Clone, Copy)]
pub struct Standing<'a> {
    pub crop: &'a Crop,
    pub microgreen: bool,
    /// Unknown: taken as established.
    pub start: Option<Start>,
    pub plants: Option<u32>,
}

/// One bed under its own sky.
#[derive(Debug, Clone)]
pub struct Surroundings<'a> {
    pub bed: &'a Bed,
    pub mix: &'a Mix,
    pub standing: Vec<Standing<'a>>,
    pub weather: Weather<'a>,
    /// Hours of direct sun on a clear day.
    pub sun_hours: f64,
    pub today: NaiveDate,
}

impl Surroundings<'_> {
    /// Inside measures up to the brim.
    #[must_use]
    pub fn vessel(&self) -> Vessel {
        vessel(&self.bed.shape)
    }

    /// Measures of the mix itself, a rim below the edge.
    #[must_use]
    pub fn filled(&self) -> Measures {
        self.vessel().filled_below(self.mix.properties.rim.value()).measures()
    }

    /// The part of the rain that falls into the bed.
    #[must_use]
    pub fn rain_caught(&self) -> f64 {
        match self.bed.rain_counted() {
            RainExposure::Open => 1.0,
            RainExposure::Part => 0.5,
            RainExposure::None => 0.0,
        }
    }

    /// What the sides lose, as a part of the reference rate over the area of the sides: low, usual, high.
    /// No source: a judgement. A lining slows a slatted side; open cloth dries freely.
    #[must_use]
    pub fn side_drying(&self) -> (f64, f64, f64) {
        match self.bed.sides_counted() {
            Sides::Solid => (0.0, 0.0, 0.02),
            Sides::Slatted => (0.02, 0.06, 0.12),
            Sides::Cloth => (0.10, 0.25, 0.45),
        }
    }

    /// How far the leaves reach beyond the top of a basket, pot or bag when grown: ground covered over top
    /// area. A box or tray is hemmed in by its own edge plants and counts as 1.
    #[must_use]
    pub fn leaf_spread(&self) -> f64 {
        let top = self.filled().top.as_square_metres();
        if matches!(self.bed.kind, BedKind::Box | BedKind::Tray) || top <= 0.0 {
            return 1.0;
        }
        let covered: f64 = self
            .standing
            .iter()
            .filter(|standing| !standing.microgreen)
            .map(|standing| {
                let spacing = standing.crop.bed.spacing.value().as_metres();
                let usual = match standing.crop.grown_for {
                    GrownFor::Fruit | GrownFor::Pod | GrownFor::Head => 1.0,
                    _ => (top / (spacing * spacing)).max(1.0),
                };
                standing.plants.map_or(usual, f64::from) * spacing * spacing
            })
            .sum();
        (covered / top).clamp(1.0, MOST_LEAF_SPREAD)
    }

    /// The share of light that a net leaves.
    #[must_use]
    pub fn under_net(&self) -> Fraction {
        self.bed.net_counted().rest()
    }
}

/// Leaves do not reach further than this beyond a vessel's top (judgement: a staked plant shades itself).
const MOST_LEAF_SPREAD: f64 = 4.0;

/// The vessel of a shape.
#[must_use]
pub fn vessel(shape: &Shape) -> Vessel {
    match *shape {
        Shape::Box { length, width, depth } => {
            Vessel::Box { length: length.quantity(), width: width.quantity(), depth: depth.quantity() }
        }
        Shape::Round { diameter, depth } => {
            Vessel::Round { top: diameter.quantity(), bottom: None, depth: depth.quantity() }
        }
        Shape::Bag { volume, depth: Some(depth) } => {
            let depth: Length = depth.quantity();
            let square_metres = volume.quantity().as_litres() / 1000.0 / depth.as_metres().max(0.01);
            let top = Length::metres(2.0 * libm::sqrt(square_metres / std::f64::consts::PI));
            Vessel::Round { top, bottom: None, depth }
        }
        Shape::Bag { volume, depth: None } => Vessel::Bag { volume: volume.quantity() },
    }
}
