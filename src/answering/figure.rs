//! A named result.

use crate::garden::BedId;
use crate::quantity::{Estimate, Quantity};
use chrono::{NaiveDate, NaiveTime};

/// One figure of an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    pub name: String,
    pub is: FigureValue,
    /// Where several beds are answered: which one.
    pub bed: Option<BedId>,
    /// Where several crops are answered: which one.
    pub crop: Option<String>,
}

/// What a figure is.
#[derive(Debug, Clone, PartialEq)]
pub enum FigureValue {
    Number {
        is: Estimate<f64>,
        unit: &'static str,
    },
    Date(Estimate<NaiveDate>),
    /// A clock time of the site.
    Time(NaiveTime),
    /// A list or an object.
    Structure(serde_json::Value),
}

impl Figure {
    /// A number in a unit.
    #[must_use]
    pub fn number(name: impl Into<String>, is: Estimate<f64>, unit: &'static str) -> Self {
        Self { name: name.into(), is: FigureValue::Number { is, unit }, bed: None, crop: None }
    }

    /// A quantity in its base unit.
    #[must_use]
    pub fn quantity<Q: Quantity>(name: impl Into<String>, is: &Estimate<Q>) -> Self {
        Self::number(name, is.map(Quantity::base), Q::UNIT)
    }

    /// A date.
    #[must_use]
    pub fn date(name: impl Into<String>, is: Estimate<NaiveDate>) -> Self {
        Self { name: name.into(), is: FigureValue::Date(is), bed: None, crop: None }
    }

    /// A clock time.
    #[must_use]
    pub fn time(name: impl Into<String>, is: NaiveTime) -> Self {
        Self { name: name.into(), is: FigureValue::Time(is), bed: None, crop: None }
    }

    /// The same figure, told to be of one bed.
    #[must_use]
    pub fn of_bed(mut self, bed: Option<&BedId>) -> Self {
        self.bed = bed.cloned();
        self
    }

    /// The same figure, told to be of one crop.
    #[must_use]
    pub fn of_crop(mut self, crop: Option<&str>) -> Self {
        self.crop = crop.map(str::to_owned);
        self
    }
}
