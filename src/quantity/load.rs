//! Loads on a roof.

use super::kind::quantity;
use super::size::{Area, Mass};

quantity!(
    /// A load spread over an area, held in kN/m².
    RoofLoad, "load", "kN/m2", 0.0 ..= 100.0
);

/// Standard acceleration of gravity, 9.80665 m/s² (CGPM 1901).
const STANDARD_GRAVITY_M_S2: f64 = 9.806_65;

impl RoofLoad {
    #[must_use]
    pub const fn kilonewtons_per_square_metre(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_kilonewtons_per_square_metre(self) -> f64 {
        self.0
    }
    /// A mass resting on an area, under standard gravity.
    #[must_use]
    pub fn of(mass: Mass, area: Area) -> Self {
        Self(mass.as_kilograms() * STANDARD_GRAVITY_M_S2 / 1000.0 / area.as_square_metres())
    }
}
