//! What is wrong with a file, and where.

use serde::Serialize;
use std::ops::Range;

/// One thing wrong in one file.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Problem {
    /// The file, as a path below the knowledge folder.
    pub file: String,
    /// Counted from 1.
    pub line: usize,
    /// Counted from 1, in characters.
    pub column: usize,
    /// What was found, what was expected.
    pub message: String,
    /// The text at fault as bytes of the file, for an underline.
    #[serde(skip)]
    pub at: (usize, usize),
}

impl Problem {
    /// A problem at a stretch of a file's text.
    #[must_use]
    pub fn at(file: &str, text: &str, span: Range<usize>, message: impl Into<String>) -> Self {
        let start = span.start.min(text.len());
        let before = text.get(..start).unwrap_or_default();
        let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
        Self {
            file: file.to_owned(),
            line: before.matches('\n').count() + 1,
            column: before.get(line_start..).unwrap_or_default().chars().count() + 1,
            message: message.into(),
            at: (start, span.end.clamp(start, text.len())),
        }
    }
}

impl std::fmt::Display for Problem {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}:{}:{}: {}", self.file, self.line, self.column, self.message)
    }
}
