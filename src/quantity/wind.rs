//! Wind.

use super::kind::quantity;

quantity!(
    /// Wind speed, held in m/s.
    WindSpeed, "wind speed", "m/s", 0.0 ..= 60.0
);

impl WindSpeed {
    #[must_use]
    pub const fn metres_per_second(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_metres_per_second(self) -> f64 {
        self.0
    }
}
