//! Pressures: of the air, and of the vapour in it.

use super::kind::quantity;

quantity!(
    /// A pressure, held in kilopascals.
    Pressure, "pressure", "kPa", 0.0 ..= 120.0
);

impl Pressure {
    #[must_use]
    pub const fn kilopascals(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_kilopascals(self) -> f64 {
        self.0
    }
}
