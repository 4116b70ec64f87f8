//! The surface layer that the sun dries (FAO-56, chapter 7).
//!
//! Water that roots take from this layer (Tew of eq. 77) and run-off are left out.

use crate::quantity::{Fraction, Length, WaterDepth};

/// A surface layer: what it can lose at all, and how much of that the sun takes at full speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EvaporationLayer {
    /// TEW
    total: WaterDepth,
    /// REW, never more than TEW
    readily: WaterDepth,
}

/// One day's water in and evaporation out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SurfaceDay {
    pub rain: WaterDepth,
    /// Depth over the whole ground.
    pub irrigation: WaterDepth,
    /// fw: the part of the ground that irrigation wets.
    pub wetted: Fraction,
    /// E, over the whole ground.
    pub evaporation: WaterDepth,
    /// few: the part of the ground it comes from.
    pub exposed_and_wetted: Fraction,
}

/// The layer at the end of a day, and what passed through it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SurfaceEnd {
    /// De
    pub depletion: WaterDepth,
    /// DPe, water that went on below
    pub percolation: WaterDepth,
    /// Evaporation that the layer no longer held (eq. 77 holds De at TEW).
    pub beyond: WaterDepth,
}

impl EvaporationLayer {
    /// A layer of this depth and mix. TEW by FAO-56 eq. 73; REW from table 19 or a measurement.
    #[must_use]
    pub fn new(
        field_capacity: Fraction,
        wilting_point: Fraction,
        depth: Length,
        readily_evaporable: WaterDepth,
    ) -> Self {
        let water = field_capacity.as_of_one() - 0.5 * wilting_point.as_of_one();
        Self::holding(WaterDepth::millimetres(1000.0 * water * depth.as_metres()), readily_evaporable)
    }

    /// A layer with a known TEW and REW.
    #[must_use]
    pub fn holding(total: WaterDepth, readily: WaterDepth) -> Self {
        Self { total, readily: readily.min(total) }
    }

    /// TEW.
    #[must_use]
    pub const fn total(&self) -> WaterDepth {
        self.total
    }

    /// Kr, how freely the layer still evaporates at a depletion: 1 up to REW, then falling to 0 at TEW.
    /// FAO-56 eq. 74.
    #[must_use]
    pub fn reduction(&self, depletion: WaterDepth) -> f64 {
        if depletion <= self.readily {
            1.0
        } else if self.total > self.readily {
            ((self.total - depletion) / (self.total - self.readily)).clamp(0.0, 1.0)
        } else {
            0.0
        }
    }

    /// Ke, the evaporation coefficient. FAO-56 eq. 71.
    #[must_use]
    pub fn coefficient(&self, depletion: WaterDepth, highest: f64, basal: f64, exposed_and_wetted: Fraction) -> f64 {
        let energy_left = self.reduction(depletion) * (highest - basal);
        energy_left.min(exposed_and_wetted.as_of_one() * highest).max(0.0)
    }

    /// The layer after a day. FAO-56 eq. 77 and 79, flows worked out before the store; water comes early in
    /// the day.
    #[must_use]
    pub fn after(&self, depletion: WaterDepth, day: &SurfaceDay) -> SurfaceEnd {
        let none = WaterDepth::default();
        let inflow = if day.irrigation > none { day.rain + day.irrigation / day.wetted.as_of_one() } else { day.rain };
        let drawn = day.evaporation / day.exposed_and_wetted.as_of_one();
        let short = (depletion - inflow).max(none) + drawn;
        let held = short.min(self.total);
        SurfaceEnd { depletion: held, percolation: (inflow - depletion).max(none), beyond: short - held }
    }
}
