//! The words for units and days, in three ways of writing.

use thiserror::Error;

/// Words for units and for days, from `knowledge/words/units.toml` and `knowledge/words/days.toml`.
#[derive(Debug, Clone, Default)]
pub struct Words {}

/// A words file that cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum NotWords {
    #[error("{file}: {why}")]
    Toml { file: &'static str, why: String },
}

impl Words {
    /// Reads the text of the two files.
    ///
    /// # Errors
    /// [`NotWords`] when a text is not TOML of the expected form or names an unknown unit.
    pub fn parse(_units: &str, _days: &str) -> Result<Self, NotWords> {
        Ok(Self {})
    }
}
