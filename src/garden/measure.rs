//! A measure as a person wrote it, with the quantity that it says.

use crate::quantity::{Length, NotWritten, Quantity, Volume, Written};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt::{Display, Formatter};
use thiserror::Error;

/// A quantity that files write with its unit.
pub trait Measurable: Quantity {
    /// How one is written, for refusals.
    const EXAMPLE: &'static str;
    /// The quantity that is written, if it is one of this kind.
    fn of(written: Written) -> Option<Self>;
}

impl Measurable for Length {
    const EXAMPLE: &'static str = "4 ft";
    fn of(written: Written) -> Option<Self> {
        written.length()
    }
}

impl Measurable for Volume {
    const EXAMPLE: &'static str = "20 L";
    fn of(written: Written) -> Option<Self> {
        written.volume()
    }
}

/// A text that is no such measure.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum NotMeasured {
    #[error(transparent)]
    NotWritten(#[from] NotWritten),
    #[error("\"{found}\" is no {what}; one like \"{example}\" expected")]
    WrongKind { found: String, what: &'static str, example: &'static str },
    #[error("\"{found}\" is out of bounds; more than 0 and at most {highest} {unit} expected")]
    OutOfBounds { found: String, highest: f64, unit: &'static str },
}

/// A quantity in the unit that a person chose, so that an export gives back what was written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measure<Q> {
    written: Written,
    quantity: Q,
}

impl<Q: Measurable> Measure<Q> {
    /// Reads `"4 ft"`.
    ///
    /// # Errors
    /// [`NotMeasured`] when it is no quantity of this kind, is nothing, or is more than `Q::HIGHEST`.
    pub fn read(text: &str) -> Result<Self, NotMeasured> {
        Self::of(Written::read(text, Q::EXAMPLE)?)
    }

    /// Takes what has been read already.
    ///
    /// # Errors
    /// As [`Measure::read`].
    pub fn of(written: Written) -> Result<Self, NotMeasured> {
        let found = written.to_string();
        let Some(quantity) = Q::of(written) else {
            return Err(NotMeasured::WrongKind { found, what: Q::WHAT, example: Q::EXAMPLE });
        };
        if quantity.base() > 0.0 && Q::checked(quantity.base()).is_ok() {
            Ok(Self { written, quantity })
        } else {
            Err(NotMeasured::OutOfBounds { found, highest: Q::HIGHEST, unit: Q::UNIT })
        }
    }
}

impl<Q: Copy> Measure<Q> {
    #[must_use]
    pub const fn quantity(self) -> Q {
        self.quantity
    }
    /// The number and unit that the person wrote.
    #[must_use]
    pub const fn written(self) -> Written {
        self.written
    }
}

impl<Q> Display for Measure<Q> {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        self.written.fmt(f)
    }
}

impl<Q> Serialize for Measure<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.written)
    }
}

impl<'de, Q: Measurable> Deserialize<'de> for Measure<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        Self::read(&text).map_err(serde::de::Error::custom)
    }
}

/// An optional amount of any kind, for `#[serde(with)]`.
pub(super) mod amount {
    use super::{Deserialize, Deserializer, Serializer, Written};

    #[allow(clippy::ref_option, reason = "serde hands over a reference to the field")]
    pub fn serialize<S: Serializer>(amount: &Option<Written>, serializer: S) -> Result<S::Ok, S::Error> {
        match amount {
            Some(written) => serializer.collect_str(written),
            None => serializer.serialize_none(),
        }
    }

    pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<Written>, D::Error> {
        let text = Option::<String>::deserialize(deserializer)?;
        text.map(|text| Written::read(&text, "10 ml")).transpose().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got = Measure::<Length>::read(text).map_or_else(|refusal| refusal.to_string(), |m| m.to_string());
        assert_eq!(got, expected);
    }

    #[test]
    fn reads_and_refuses() {
        case("4 ft", "4 ft");
        case("1.2m", "1.2 m");
        case("40 L", "\"40 L\" is no length; one like \"4 ft\" expected");
        case("0 ft", "\"0 ft\" is out of bounds; more than 0 and at most 200 m expected");
        case("700 ft", "\"700 ft\" is out of bounds; more than 0 and at most 200 m expected");
    }
}
