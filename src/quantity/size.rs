//! Lengths, areas, volumes and masses: what a tape, a bucket and a scale give.

use super::kind::quantity;

quantity!(
    /// A length, held in metres.
    Length, "length", "m", 0.0 ..= 200.0
);
quantity!(
    /// An area, held in square metres.
    Area, "area", "m2", 0.0 ..= 10_000.0
);
quantity!(
    /// A volume, held in litres.
    Volume, "volume", "L", 0.0 ..= 1_000_000.0
);
quantity!(
    /// A mass, held in kilograms.
    Mass, "weight", "kg", 0.0 ..= 1_000_000.0
);

/// International foot, exactly 0.3048 m (1959 agreement).
const METRES_PER_FOOT: f64 = 0.3048;

impl Length {
    #[must_use]
    pub const fn metres(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub fn centimetres(value: f64) -> Self {
        Self(value / 100.0)
    }
    #[must_use]
    pub fn millimetres(value: f64) -> Self {
        Self(value / 1000.0)
    }
    #[must_use]
    pub fn feet(value: f64) -> Self {
        Self(value * METRES_PER_FOOT)
    }
    #[must_use]
    pub fn inches(value: f64) -> Self {
        Self(value * METRES_PER_FOOT / 12.0)
    }
    #[must_use]
    pub const fn as_metres(self) -> f64 {
        self.0
    }
    #[must_use]
    pub fn as_centimetres(self) -> f64 {
        self.0 * 100.0
    }
    #[must_use]
    pub fn as_feet(self) -> f64 {
        self.0 / METRES_PER_FOOT
    }
    #[must_use]
    pub fn as_inches(self) -> f64 {
        self.0 * 12.0 / METRES_PER_FOOT
    }
}

impl std::ops::Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area(self.0 * other.0)
    }
}

impl Area {
    #[must_use]
    pub const fn square_metres(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub fn square_feet(value: f64) -> Self {
        Self(value * METRES_PER_FOOT * METRES_PER_FOOT)
    }
    #[must_use]
    pub const fn as_square_metres(self) -> f64 {
        self.0
    }
}

impl std::ops::Mul<Length> for Area {
    type Output = Volume;
    /// 1 m² × 1 m = 1000 L.
    fn mul(self, height: Length) -> Volume {
        Volume(self.0 * height.0 * 1000.0)
    }
}

impl Volume {
    #[must_use]
    pub const fn litres(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub fn millilitres(value: f64) -> Self {
        Self(value / 1000.0)
    }
    #[must_use]
    pub const fn as_litres(self) -> f64 {
        self.0
    }
    #[must_use]
    pub fn as_millilitres(self) -> f64 {
        self.0 * 1000.0
    }
}

impl Mass {
    #[must_use]
    pub const fn kilograms(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub fn grams(value: f64) -> Self {
        Self(value / 1000.0)
    }
    #[must_use]
    pub const fn as_kilograms(self) -> f64 {
        self.0
    }
    #[must_use]
    pub fn as_grams(self) -> f64 {
        self.0 * 1000.0
    }
}
