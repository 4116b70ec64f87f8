//! What is to be said: a phrase and its values, in no language yet.

use crate::garden::BedId;
use crate::knowledge::{InThree, SourceRef};
use crate::quantity::{Area, Estimate, Length, Mass, RoofLoad, Temperature, Volume, WaterDepth, Written};
use chrono::{NaiveDate, NaiveTime};

/// One phrase with its values.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// A key of the files of phrases.
    pub phrase: &'static str,
    pub values: Vec<(&'static str, Said)>,
}

/// A value of a phrase; how it is rounded and written is decided by wording.
#[derive(Debug, Clone, PartialEq)]
pub enum Said {
    /// With its range.
    Volume(Estimate<Volume>),
    /// One amount to pour, its range left to other lines.
    About(Estimate<Volume>),
    Mass(Estimate<Mass>),
    Depth(Estimate<WaterDepth>),
    Area(Area),
    Length(Length),
    Temperature(Temperature),
    Percent(f64),
    /// A pure number with so many decimals.
    Number(f64, usize),
    /// A span of pure numbers.
    Span(Estimate<f64>, usize),
    Count(i64),
    Day(NaiveDate),
    Days(Estimate<NaiveDate>),
    Hours(f64),
    Crop(String),
    Material(String),
    Mix(String),
    Place(String),
    Bed(BedId),
    /// A size as the person wrote it.
    Size(Vec<Written>),
    /// A text of the knowledge base.
    Text(InThree<String>),
    /// One of the phrase's own variants.
    Key(&'static str),
    Source(SourceRef),
    /// A person's own words.
    Quoted(String),
    /// Another phrase inside this one.
    Line(Box<Line>),
    /// An end of a season: a day without its weekday.
    SeasonDay(NaiveDate),
    /// The same with its year: one that lies in another year than the asking.
    SeasonDayOfYear(NaiveDate),
    /// Several, joined as the language joins them.
    List(Vec<Said>),
    /// Spread over an area, with its range.
    Load(Estimate<RoofLoad>),
    /// A clock time.
    Clock(NaiveTime),
    /// An amount that must not be exceeded: its high end is rounded down.
    Dose(Estimate<Volume>),
    /// A weight that may be reached: rounded up.
    UpTo(Mass),
}

impl Line {
    /// A phrase without values.
    #[must_use]
    pub const fn new(phrase: &'static str) -> Self {
        Self { phrase, values: Vec::new() }
    }

    /// The same phrase with one more value.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: Said) -> Self {
        self.values.push((name, value));
        self
    }
}
