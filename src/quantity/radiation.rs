//! Radiation received over a day.

use super::kind::quantity;

quantity!(
    /// Energy received on a surface in a day, held in MJ m⁻² d⁻¹.
    Radiation, "radiation", "MJ/m2/day", 0.0 ..= 50.0
);

impl Radiation {
    #[must_use]
    pub const fn megajoules_per_square_metre(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_megajoules_per_square_metre(self) -> f64 {
        self.0
    }
}
