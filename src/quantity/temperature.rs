//! Temperatures, differences between them, and thermal time. A difference is not a temperature:
//! 10 °C is 50 °F, but a rise of 10 °C is 18 °F.

use super::kind::Quantity;
use super::kind::quantity;

/// An air or mix temperature, held in degrees Celsius.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Quantity for Temperature {
    const WHAT: &'static str = "temperature";
    const UNIT: &'static str = "°C";
    const LOWEST: f64 = -60.0;
    /// The hottest air ever measured is near 57 °C; above 60 °C a file is wrong.
    const HIGHEST: f64 = 60.0;
    fn from_base(value: f64) -> Self {
        Self(value)
    }
    fn base(self) -> f64 {
        self.0
    }
}

quantity!(
    /// A difference of two temperatures, held in kelvins (= Celsius degrees).
    TemperatureDifference, "temperature difference", "K", -120.0 ..= 120.0
);
quantity!(
    /// Temperature above a base, summed over days, held in degree days (°C d).
    ThermalTime, "thermal time", "°C d", 0.0 ..= 20_000.0
);

impl Temperature {
    #[must_use]
    pub const fn celsius(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_celsius(self) -> f64 {
        self.0
    }
    /// The middle of two temperatures.
    #[must_use]
    pub fn middle(self, other: Self) -> Self {
        Self(f64::midpoint(self.0, other.0))
    }
}

impl std::ops::Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}

impl std::ops::Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, rise: TemperatureDifference) -> Self {
        Self(self.0 + rise.0)
    }
}

impl TemperatureDifference {
    #[must_use]
    pub const fn kelvins(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_kelvins(self) -> f64 {
        self.0
    }
    /// This difference held for a number of days.
    #[must_use]
    pub fn for_days(self, days: f64) -> ThermalTime {
        ThermalTime(self.0 * days)
    }
}

impl ThermalTime {
    #[must_use]
    pub const fn degree_days(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_degree_days(self) -> f64 {
        self.0
    }
}
