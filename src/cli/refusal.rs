//! What a command could not do, shown with the place and what was expected.

use crate::desk::NoHouse;
use crate::garden::{self, StoreError};
use crate::knowledge;
use miette::{Diagnostic, GraphicalReportHandler, GraphicalTheme, LabeledSpan, MietteDiagnostic, NamedSource};
use std::io::IsTerminal;
use std::path::Path;

/// One or more reasons, ready to be shown.
#[derive(Debug)]
pub enum Refusal {
    /// A single clear line.
    Plain(String),
    /// Problems of knowledge files, with their texts.
    Knowledge(Vec<(knowledge::Problem, String)>),
    /// Problems of a garden file.
    Garden(Vec<garden::Problem>),
}

impl Refusal {
    pub fn plain(text: impl std::fmt::Display) -> Self {
        Self::Plain(text.to_string())
    }

    /// A file that cannot be read or written.
    pub fn file(what: &str, path: &Path, fault: &std::io::Error) -> Self {
        Self::Plain(format!("cannot {what} {}: {fault}", path.display()))
    }

    /// The problems of a house that could not be opened.
    pub fn of_house(fault: NoHouse, files: &knowledge::Files) -> Self {
        match fault {
            NoHouse::Problems(problems) => {
                let text = |problem: &knowledge::Problem| files.text(&problem.file).unwrap_or_default().to_owned();
                Self::Knowledge(problems.into_iter().map(|problem| (problem.clone(), text(&problem))).collect())
            }
            fault @ NoHouse::Index(_) => Self::plain(fault),
        }
    }

    /// Writes it to stderr.
    pub fn show(&self) {
        match self {
            Self::Plain(line) => eprintln!("rooftend: {line}"),
            Self::Knowledge(problems) => {
                for (problem, text) in problems {
                    report(&diagnostic(problem, text));
                }
            }
            Self::Garden(problems) => problems.iter().for_each(|problem| report(problem)),
        }
    }
}

fn report(problem: &dyn Diagnostic) {
    let coloured = std::io::stderr().is_terminal() && std::env::var_os("NO_COLOR").is_none();
    let theme = if coloured { GraphicalTheme::unicode() } else { GraphicalTheme::unicode_nocolor() };
    let mut shown = String::new();
    let handler = GraphicalReportHandler::new_themed(theme).with_width(100);
    if handler.render_report(&mut shown, problem).is_ok() {
        eprint!("{shown}");
    }
}

/// A problem of a knowledge file as miette shows it.
struct Placed {
    inner: MietteDiagnostic,
    source: NamedSource<String>,
}

fn diagnostic(problem: &knowledge::Problem, text: &str) -> Placed {
    let (start, end) = problem.at;
    let label = LabeledSpan::at(start..end, format!("line {}, column {}", problem.line, problem.column));
    Placed {
        inner: MietteDiagnostic::new(problem.to_string()).with_label(label),
        source: NamedSource::new(&problem.file, text.to_owned()),
    }
}

impl std::fmt::Debug for Placed {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.inner.fmt(f)
    }
}

impl std::fmt::Display for Placed {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.inner.fmt(f)
    }
}

impl std::error::Error for Placed {}

impl Diagnostic for Placed {
    fn source_code(&self) -> Option<&dyn miette::SourceCode> {
        Some(&self.source)
    }
    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        self.inner.labels()
    }
}

impl From<StoreError> for Refusal {
    fn from(fault: StoreError) -> Self {
        Self::plain(fault)
    }
}
