//! What every quantity has in common: a name for people, plausible bounds, and plain arithmetic.

use thiserror::Error;

/// A physical quantity held in one base unit.
///
/// `LOWEST` and `HIGHEST` are plausible bounds in the base unit. They are checked at the edges of
/// the house only ([`Quantity::checked`]); a sum in the middle may leave them.
pub trait Quantity: Copy + PartialOrd + std::fmt::Debug {
    /// What it is called in a refusal ("wind speed").
    const WHAT: &'static str;
    /// The base unit as it is written.
    const UNIT: &'static str;
    /// Lowest plausible value, in the base unit.
    const LOWEST: f64;
    /// Highest plausible value, in the base unit.
    const HIGHEST: f64;

    /// From a number in the base unit.
    fn from_base(value: f64) -> Self;
    /// The number in the base unit.
    fn base(self) -> f64;

    /// Accepts a number from outside, in the base unit.
    ///
    /// # Errors
    /// [`OutOfBounds`] when it is not finite or lies outside the plausible bounds.
    fn checked(value: f64) -> Result<Self, OutOfBounds> {
        if value.is_finite() && (Self::LOWEST..=Self::HIGHEST).contains(&value) {
            Ok(Self::from_base(value))
        } else {
            Err(OutOfBounds {
                what: Self::WHAT,
                unit: Self::UNIT,
                given: value,
                lowest: Self::LOWEST,
                highest: Self::HIGHEST,
            })
        }
    }
}

/// A number from outside that no such thing can have.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{what} {given} {unit} was given, {lowest} to {highest} {unit} expected")]
pub struct OutOfBounds {
    pub what: &'static str,
    pub unit: &'static str,
    pub given: f64,
    pub lowest: f64,
    pub highest: f64,
}

/// Writes one quantity type: its struct, its bounds, and the arithmetic that keeps its kind.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $what:literal, $unit:literal, $lowest:literal ..= $highest:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $crate::quantity::Quantity for $name {
            const WHAT: &'static str = $what;
            const UNIT: &'static str = $unit;
            const LOWEST: f64 = $lowest;
            const HIGHEST: f64 = $highest;
            fn from_base(value: f64) -> Self {
                Self(value)
            }
            fn base(self) -> f64 {
                self.0
            }
        }

        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl std::ops::Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl std::ops::Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl std::ops::Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl std::ops::Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }

        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(iter: I) -> Self {
                Self(iter.map(|q| q.0).sum())
            }
        }

        impl $name {
            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }
            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }
        }
    };
}
pub(crate) use quantity;
