//! The water that roots can reach (FAO-56, chapter 8).

use crate::quantity::{Fraction, Length, WaterDepth};

/// TAW: what a root zone holds between field capacity and wilting point. FAO-56 eq. 82.
#[must_use]
pub fn total_available(field_capacity: Fraction, wilting_point: Fraction, root_depth: Length) -> WaterDepth {
    let water = field_capacity.as_of_one() - wilting_point.as_of_one();
    WaterDepth::millimetres(1000.0 * water.max(0.0) * root_depth.as_metres())
}

/// RAW: the part of TAW that roots take without stress. FAO-56 eq. 83.
#[must_use]
pub fn readily_available(total: WaterDepth, depletion_fraction: Fraction) -> WaterDepth {
    total * depletion_fraction.as_of_one()
}

/// p on a day of another evapotranspiration than 5 mm: p + 0.04 (5 − ETc), 0.1 to 0.8. FAO-56 table 22,
/// footnote.
#[must_use]
pub fn depletion_fraction_at(table_value: Fraction, crop_et: WaterDepth) -> Fraction {
    let moved = table_value.as_of_one() + 0.04 * (5.0 - crop_et.as_millimetres());
    Fraction::of_one(moved.clamp(0.1, 0.8))
}

/// Ks: how far the crop still transpires at a depletion, 0 to 1. FAO-56 eq. 84.
#[must_use]
pub fn stress(depletion: WaterDepth, total: WaterDepth, readily: WaterDepth) -> Fraction {
    if depletion <= readily {
        return Fraction::WHOLE;
    }
    let left = if total > readily { (total - depletion) / (total - readily) } else { 0.0 };
    Fraction::of_one(left.clamp(0.0, 1.0))
}

/// When in a day its water comes: it decides what runs through.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Arrival {
    /// Early: what the zone cannot hold runs through before the day's loss (FAO-56 example 38).
    Early,
    /// Along with the loss: FAO-56 eq. 88 as printed.
    WithTheLoss,
}

/// One day's water in and loss out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RootDay {
    pub rain: WaterDepth,
    pub irrigation: WaterDepth,
    /// ETc with stress
    pub loss: WaterDepth,
    pub arrival: Arrival,
}

/// The root zone at the end of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RootEnd {
    /// Dr
    pub depletion: WaterDepth,
    /// DP
    pub percolation: WaterDepth,
    /// Loss that the zone no longer held (eq. 86 holds Dr between 0 and TAW).
    pub beyond: WaterDepth,
}

/// The root zone after a day. FAO-56 eq. 85 to 88, without capillary rise and run-off; flows worked out
/// before the store.
#[must_use]
pub fn after(depletion: WaterDepth, total: WaterDepth, day: &RootDay) -> RootEnd {
    let none = WaterDepth::default();
    let inflow = day.rain + day.irrigation;
    // What is short before and after the surplus has run through; never a difference of near equals.
    let (surplus, short) = match day.arrival {
        Arrival::Early => (inflow - depletion, (depletion - inflow).max(none) + day.loss),
        Arrival::WithTheLoss => (inflow - day.loss - depletion, (depletion + day.loss - inflow).max(none)),
    };
    let held = short.min(total);
    RootEnd { depletion: held, percolation: surplus.max(none), beyond: short - held }
}
