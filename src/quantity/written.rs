//! How people write a quantity in a file or a message: `4 ft`, `12 in`, `40 L`, `2 kg`.

use super::size::{Area, Length, Mass, Volume};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// A unit that a person may write.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Unit {
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
    SquareMetre,
    SquareFoot,
    Millilitre,
    Litre,
    Gram,
    Kilogram,
    Percent,
    MillilitrePerLitre,
    GramPerLitre,
    KilonewtonPerSquareMetre,
}

/// What a unit measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UnitOf {
    Length,
    Area,
    Volume,
    Mass,
    Other,
}

impl Unit {
    /// All units, with their symbols.
    pub const ALL: [Self; 15] = [
        Self::Millimetre,
        Self::Centimetre,
        Self::Metre,
        Self::Inch,
        Self::Foot,
        Self::SquareMetre,
        Self::SquareFoot,
        Self::Millilitre,
        Self::Litre,
        Self::Gram,
        Self::Kilogram,
        Self::Percent,
        Self::MillilitrePerLitre,
        Self::GramPerLitre,
        Self::KilonewtonPerSquareMetre,
    ];

    /// The symbol used in files and JSON.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::SquareMetre => "m2",
            Self::SquareFoot => "ft2",
            Self::Millilitre => "ml",
            Self::Litre => "L",
            Self::Gram => "g",
            Self::Kilogram => "kg",
            Self::Percent => "percent",
            Self::MillilitrePerLitre => "ml/L",
            Self::GramPerLitre => "g/L",
            Self::KilonewtonPerSquareMetre => "kN/m2",
        }
    }

    /// The unit with this symbol.
    #[must_use]
    pub fn with_symbol(symbol: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|unit| unit.symbol() == symbol)
    }

    #[must_use]
    pub const fn measures(self) -> UnitOf {
        match self {
            Self::Millimetre | Self::Centimetre | Self::Metre | Self::Inch | Self::Foot => UnitOf::Length,
            Self::SquareMetre | Self::SquareFoot => UnitOf::Area,
            Self::Millilitre | Self::Litre => UnitOf::Volume,
            Self::Gram | Self::Kilogram => UnitOf::Mass,
            _ => UnitOf::Other,
        }
    }
}

/// A number with the unit it was written in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Written {
    pub value: f64,
    pub unit: Unit,
}

/// A text that is not a quantity as files write it.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NotWritten {
    #[error("\"{0}\" has no unit; write it like \"{1}\"")]
    NoUnit(String, &'static str),
    #[error("\"{0}\" has no number; write it like \"{1}\"")]
    NoNumber(String, &'static str),
    #[error("unit \"{0}\" is not known; {1} expected{near}", near = near(.2))]
    UnknownUnit(String, &'static str, Option<&'static str>),
    #[error("\"{0}\" is no {1}; {2} expected")]
    WrongKind(String, &'static str, &'static str),
}

fn near(symbol: &Option<&'static str>) -> String {
    symbol.map_or_else(String::new, |symbol| format!("; did you mean \"{symbol}\"?"))
}

impl Written {
    /// Reads `"4 ft"`: one number, one unit symbol, a space between them or none.
    ///
    /// # Errors
    /// [`NotWritten`] naming what was found and what was expected; `example` shows the right form.
    pub fn read(text: &str, example: &'static str) -> Result<Self, NotWritten> {
        let text = text.trim();
        let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(text.len());
        let (number, symbol) = (&text[..end], text[end..].trim());
        let value: f64 = number.parse().map_err(|_| NotWritten::NoNumber(text.into(), example))?;
        if symbol.is_empty() {
            return Err(NotWritten::NoUnit(text.into(), example));
        }
        let unit = Unit::with_symbol(symbol).ok_or_else(|| {
            let near = Unit::ALL.into_iter().map(Unit::symbol).find(|known| {
                symbol.to_lowercase().starts_with(&known.to_lowercase()) && known.len() > 1
                    || known.eq_ignore_ascii_case(symbol)
            });
            NotWritten::UnknownUnit(symbol.into(), "mm, cm, m, in, ft, ml, L, g or kg", near)
        })?;
        Ok(Self { value, unit })
    }

    /// The length it says, if it says one.
    #[must_use]
    pub fn length(self) -> Option<Length> {
        Some(match self.unit {
            Unit::Millimetre => Length::millimetres(self.value),
            Unit::Centimetre => Length::centimetres(self.value),
            Unit::Metre => Length::metres(self.value),
            Unit::Inch => Length::inches(self.value),
            Unit::Foot => Length::feet(self.value),
            _ => return None,
        })
    }

    /// The area it says, if it says one.
    #[must_use]
    pub fn area(self) -> Option<Area> {
        Some(match self.unit {
            Unit::SquareMetre => Area::square_metres(self.value),
            Unit::SquareFoot => Area::square_feet(self.value),
            _ => return None,
        })
    }

    /// The volume it says, if it says one.
    #[must_use]
    pub fn volume(self) -> Option<Volume> {
        Some(match self.unit {
            Unit::Millilitre => Volume::millilitres(self.value),
            Unit::Litre => Volume::litres(self.value),
            _ => return None,
        })
    }

    /// The mass it says, if it says one.
    #[must_use]
    pub fn mass(self) -> Option<Mass> {
        Some(match self.unit {
            Unit::Gram => Mass::grams(self.value),
            Unit::Kilogram => Mass::kilograms(self.value),
            _ => return None,
        })
    }
}

impl std::fmt::Display for Written {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} {}", self.value, self.unit.symbol())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got = match Written::read(text, "12 in") {
            Ok(written) => written.to_string(),
            Err(refusal) => refusal.to_string(),
        };
        assert_eq!(got, expected, "{text}");
    }

    #[test]
    fn reads_and_refuses() {
        case("4 ft", "4 ft");
        case("1.2m", "1.2 m");
        case("40 L", "40 L");
        case("12", "\"12\" has no unit; write it like \"12 in\"");
        case("ft", "\"ft\" has no number; write it like \"12 in\"");
        case("12 inc", "unit \"inc\" is not known; mm, cm, m, in, ft, ml, L, g or kg expected; did you mean \"in\"?");
        case("3 ells", "unit \"ells\" is not known; mm, cm, m, in, ft, ml, L, g or kg expected");
        case("-3 ft", "\"-3 ft\" has no number; write it like \"12 in\"");
    }

    #[test]
    fn ten_degrees_of_feet_and_inches() {
        let foot = Written::read("1 ft", "").unwrap().length().unwrap();
        let inches = Written::read("12 in", "").unwrap().length().unwrap();
        assert!((foot / inches - 1.0).abs() < 1e-12);
    }
}
