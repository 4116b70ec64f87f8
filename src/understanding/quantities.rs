//! Quantities, counts, durations and temperatures said in a text.

use crate::knowledge::Words;
use crate::quantity::Written;
use crate::script::Text;
use std::ops::Range;

/// Everything measured that a text says. All spans are ranges of token indices.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Quantities {
    /// Each length, area, volume, weight, percent and strength, in its own unit, in order.
    pub said: Vec<Said>,
    pub dimensions: Vec<Dimensions>,
    pub counts: Vec<Count>,
    pub durations: Vec<Duration>,
    pub temperatures: Vec<Degrees>,
}

/// One quantity, as said.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    pub written: Written,
    pub span: Range<usize>,
}

/// The measures of one thing: `4 x 2 ft, 8 in deep`, `12 inch pot`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Dimensions {
    pub length: Option<Written>,
    pub width: Option<Written>,
    /// Depth or height.
    pub depth: Option<Written>,
    pub diameter: Option<Written>,
    pub span: Range<usize>,
}

/// A bare number of things.
#[derive(Debug, Clone, PartialEq)]
pub struct Count {
    pub value: f64,
    pub span: Range<usize>,
    /// Index of the token that names what is counted, if one follows.
    pub of: Option<usize>,
}

/// A time that something takes.
#[derive(Debug, Clone, PartialEq)]
pub struct Duration {
    pub value: f64,
    pub unit: DurationUnit,
    pub span: Range<usize>,
}

/// The unit of a [`Duration`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum DurationUnit {
    Minute,
    Hour,
    Day,
    Week,
    Month,
    Year,
}

/// A temperature, degrees Celsius.
#[derive(Debug, Clone, PartialEq)]
pub struct Degrees {
    pub celsius: f64,
    pub span: Range<usize>,
}

/// Reads all quantities of a text.
#[must_use]
pub fn read(_text: &Text, _words: &Words) -> Quantities {
    Quantities::default()
}
