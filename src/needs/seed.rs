//! How much seed a sowing takes.

use super::space::{area_places, box_places};
use crate::knowledge::{Crop, Microgreen, Sowing};
use crate::quantity::{Area, Estimate, Length, Mass};

/// What is to be sown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sown {
    /// So many plants are wanted.
    Plants(f64),
    /// A box of this length and width, at the crop's spacing.
    Box(Length, Length),
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
/// germination decides.
#[must_use]
pub fn seed_need(crop: &Crop, sowing: &Sowing, sown: Sown) -> SeedNeed {
    let spacing = &crop.bed.spacing.is;
    // Closer plants are more plants.
    let plants = match sown {
        Sown::Plants(count) => Estimate::exactly(count),
        Sown::Box(length, width) => {
            let most = |spacing| f64::from(box_places(length, width, spacing).most());
            let squares = |spacing| f64::from(box_places(length, width, spacing).in_squares());
            Estimate::spanning(squares(spacing.value()), [squares(spacing.high()), most(spacing.low())])
        }
        Sown::Ground(area) => {
            let count = |spacing| area_places(area, spacing).floor().max(1.0);
            Estimate::spanning(count(spacing.value()), [count(spacing.high()), count(spacing.low())])
        }
        Sown::Row(length) => {
            let count = |spacing| f64::from(box_places(length, spacing, spacing).square.0);
            Estimate::spanning(count(spacing.value()), [count(spacing.high()), count(spacing.low())])
        }
    };
    let (laid, comes_up) = (&sowing.seeds_per_plant.is, sowing.germination.is.map(|share| share.as_of_one()));
    let for_each = |laid: f64, comes_up: f64| laid.max(1.0 / comes_up.max(0.05));
    let seeds = Estimate::spanning(
        (plants.value() * for_each(laid.value(), comes_up.value())).ceil(),
        [
            (plants.low() * for_each(laid.low(), comes_up.high())).ceil(),
            (plants.high() * for_each(laid.high(), comes_up.low())).ceil(),
        ],
    );
    let each = &sowing.thousand_seeds_g.is;
    let grams = |seeds: f64, thousand: f64| Mass::grams(seeds * thousand / 1000.0);
    let grams = Estimate::spanning(
        grams(seeds.value(), each.value()),
        [grams(seeds.low(), each.low()), grams(seeds.high(), each.high())],
    );
    SeedNeed { plants: Some(plants), seeds: Some(seeds), grams }
}

/// Seed strewn over a sprouting tray.
#[must_use]
pub fn tray_seed(microgreen: &Microgreen, sowing: Option<&Sowing>, area: Area) -> SeedNeed {
    let grams = microgreen.seed_g_per_m2.is.map(|density| Mass::grams(density * area.as_square_metres()));
    let seeds = sowing.map(|sowing| {
        let each = &sowing.thousand_seeds_g.is;
        let count = |grams: Mass, thousand: f64| (grams.as_grams() / thousand * 1000.0).round();
        // Heavier seed is fewer seeds.
        Estimate::spanning(
            count(grams.value(), each.value()),
            [count(grams.low(), each.high()), count(grams.high(), each.low())],
        )
    });
    SeedNeed { plants: None, seeds, grams }
}
