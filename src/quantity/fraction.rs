//! Parts of a whole.

use super::kind::quantity;

quantity!(
    /// A part of a whole, held as 0 to 1.
    Fraction, "fraction", "", 0.0 ..= 1.0
);

impl Fraction {
    /// Nothing of it.
    pub const NONE: Self = Self(0.0);
    /// All of it.
    pub const WHOLE: Self = Self(1.0);

    #[must_use]
    pub const fn of_one(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub fn percent(value: f64) -> Self {
        Self(value / 100.0)
    }
    #[must_use]
    pub const fn as_of_one(self) -> f64 {
        self.0
    }
    #[must_use]
    pub fn as_percent(self) -> f64 {
        self.0 * 100.0
    }
    /// What is left of the whole.
    #[must_use]
    pub fn rest(self) -> Self {
        Self(1.0 - self.0)
    }
}
