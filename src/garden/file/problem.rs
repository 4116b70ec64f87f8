//! What is wrong with a file that a person wrote, and where.

use miette::{Diagnostic, LabeledSpan, NamedSource, SourceCode};
use std::fmt::{Display, Formatter};
use std::ops::Range;
use std::sync::Arc;

/// The text of a file with its name, shared by its problems.
#[derive(Debug, Clone)]
pub struct Source(Arc<NamedSource<String>>);

impl Source {
    #[must_use]
    pub fn new(file: &str, text: &str) -> Self {
        Self(Arc::new(NamedSource::new(file, text.to_owned())))
    }

    fn text(&self) -> &str {
        self.0.inner()
    }

    /// A problem of the text at `span` (bytes).
    #[must_use]
    pub fn problem(&self, span: Range<usize>, message: String, expected: String) -> Problem {
        let text = self.text();
        let before = text.get(..span.start).unwrap_or(text);
        let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
        Problem {
            line: before.matches('\n').count() + 1,
            column: before.get(line_start..).unwrap_or_default().chars().count() + 1,
            found: text.get(span.clone()).unwrap_or_default().to_owned(),
            source: self.clone(),
            span,
            message,
            expected,
        }
    }
}

/// One thing wrong with a file.
#[derive(Debug, Clone)]
pub struct Problem {
    /// What was found, in plain words.
    pub message: String,
    /// What was expected instead.
    pub expected: String,
    /// From 1.
    pub line: usize,
    /// From 1, in characters.
    pub column: usize,
    /// The offending text.
    pub found: String,
    /// Where it stands, in bytes.
    pub span: Range<usize>,
    source: Source,
}

impl Problem {
    #[must_use]
    pub fn file(&self) -> &str {
        self.source.0.name()
    }
}

impl Display for Problem {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}:{}:{}: {}; expected: {}", self.file(), self.line, self.column, self.message, self.expected)
    }
}

impl std::error::Error for Problem {}

impl Diagnostic for Problem {
    fn help<'a>(&'a self) -> Option<Box<dyn Display + 'a>> {
        Some(Box::new(format!("expected: {}", self.expected)))
    }

    fn source_code(&self) -> Option<&dyn SourceCode> {
        Some(&*self.source.0)
    }

    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        let label = LabeledSpan::new_with_span(Some("here".into()), self.span.clone());
        Some(Box::new(std::iter::once(label)))
    }
}
