//! Days named in a text.

use crate::knowledge::Words;
use crate::script::Text;
use chrono::NaiveDate;
use std::ops::Range;

/// A day, or a run of days, named in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayFound {
    pub first: NaiveDate,
    /// The same as `first` for a single day.
    pub last: NaiveDate,
    /// Range of token indices.
    pub span: Range<usize>,
}

/// Reads all days named in a text, given today's date; `past` says that a job done is told, which
/// decides where the text itself does not (a bare weekday, `kal`, a day without a year).
#[must_use]
pub fn read(_text: &Text, _words: &Words, _today: NaiveDate, _past: bool) -> Vec<DayFound> {
    Vec::new()
}
