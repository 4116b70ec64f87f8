//! How much seed a sowing takes.

use super::space::{area_places, box_places};
use super::swing::{Doubt, swing};
use crate::knowledge::{Crop, Microgreen, Sowing};
use crate::quantity::{Area, Estimate, Length, Mass};

/// What is to be sown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sown {
    /// So many plants are wanted, or have room.
    Plants(Estimate<f64>),
    /// Ground of no known shape.
    Ground(Area),
    /// One row of this length.
    Row(Length),
}

/// Seeds and their weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeedNeed {
    /// Plants that are to stand in the end; none on a sprouting tray, where each shoot is cut.
    pub plants: Option<Estimate<f64>>,
    /// Left out where the weight of a seed is not known.
    pub seeds: Option<Estimate<f64>>,
    pub grams: Estimate<Mass>,
}

/// Seed of a crop sown in its place or in a seedbed: plants at the crop's spacing, seeds laid for each, each of
/// the weight of the thousand-seed weight. Where fewer seeds are laid than germination leaves standing, the
/// germination decides. The doubts are taken as independent.
#[must_use]
pub fn seed_need(crop: &Crop, sowing: &Sowing, sown: Sown) -> SeedNeed {
    let plants = plants(crop, sown);
    let (laid, each) = (&sowing.seeds_per_plant.is, &sowing.thousand_seeds_g.is);
    let comes_up = sowing.germination.is.map(|share| share.as_of_one());
    let best = Inputs {
        plants: plants.value(),
        laid: laid.value(),
        comes_up: comes_up.value(),
        thousand_g: each.value(),
        whole: sowing.planted_as.is_some(),
    };
    let doubts = [
        moved(&best, |inputs| &mut inputs.plants, &plants),
        moved(&best, |inputs| &mut inputs.laid, laid),
        moved(&best, |inputs| &mut inputs.comes_up, &comes_up),
        moved(&best, |inputs| &mut inputs.thousand_g, each),
    ];
    let seeds = swing(&best, &doubts, Inputs::seeds).is.map(|seeds| seeds.max(1.0).ceil());
    let grams = swing(&best, &doubts, Inputs::grams).is.map(|grams| Mass::grams(grams.max(0.0)));
    SeedNeed { plants: Some(plants), seeds: Some(seeds), grams }
}

/// One run of the sum.
#[derive(Debug, Clone, Copy)]
struct Inputs {
    plants: f64,
    laid: f64,
    comes_up: f64,
    thousand_g: f64,
    /// Pieces are bought whole; seed is poured.
    whole: bool,
}

impl Inputs {
    fn seeds(&self) -> f64 {
        /// A lot of which fewer come up is not worth sowing.
        const WORST_LOT: f64 = 0.05;
        let seeds = self.plants * self.laid.max(1.0 / self.comes_up.max(WORST_LOT));
        if self.whole { seeds.ceil() } else { seeds }
    }

    fn grams(&self) -> f64 {
        self.seeds() * self.thousand_g / 1000.0
    }
}

fn moved(best: &Inputs, of: impl Fn(&mut Inputs) -> &mut f64, is: &Estimate<f64>) -> Doubt<(), Inputs> {
    let at = |value: f64| {
        let mut inputs = *best;
        *of(&mut inputs) = value;
        inputs
    };
    Doubt { name: (), at_low: at(is.low()), at_high: at(is.high()) }
}

/// Plants that are to stand; closer plants are more.
fn plants(crop: &Crop, sown: Sown) -> Estimate<f64> {
    let spacing = &crop.bed.spacing.is;
    match sown {
        Sown::Plants(plants) => plants,
        Sown::Ground(area) => {
            let count = |spacing| area_places(area, spacing).floor().max(1.0);
            Estimate::spanning(count(spacing.value()), [count(spacing.high()), count(spacing.low())])
        }
        Sown::Row(length) => {
            let count = |spacing| f64::from(box_places(length, spacing, spacing).square.0);
            Estimate::spanning(count(spacing.value()), [count(spacing.high()), count(spacing.low())])
        }
    }
}

/// Seed strewn over a sprouting tray.
#[must_use]
pub fn tray_seed(microgreen: &Microgreen, sowing: Option<&Sowing>, area: Area) -> SeedNeed {
    let density = &microgreen.seed_g_per_m2.is;
    let grams = density.map(|density| Mass::grams(density * area.as_square_metres()));
    let seeds = sowing.map(|sowing| {
        let each = &sowing.thousand_seeds_g.is;
        let best = (density.value(), each.value());
        let doubts = [
            Doubt { name: (), at_low: (density.low(), best.1), at_high: (density.high(), best.1) },
            // Heavier seed is fewer seeds.
            Doubt { name: (), at_low: (best.0, each.high()), at_high: (best.0, each.low()) },
        ];
        let count = swing(&best, &doubts, |(density, each)| density * area.as_square_metres() / each * 1000.0);
        count.is.map(|seeds| seeds.max(0.0).round())
    });
    SeedNeed { plants: None, seeds, grams }
}
