//! The ids that a garden file may name, and the nearest of them to a misspelt one.

use std::collections::BTreeSet;

/// The ids of the knowledge base.
#[derive(Debug, Clone, Copy)]
pub struct KnownIds<'a> {
    pub crops: &'a BTreeSet<String>,
    pub mixes: &'a BTreeSet<String>,
    pub materials: &'a BTreeSet<String>,
}

/// How alike two words must be to ask whether one was meant (Jaro-Winkler, 0 to 1).
const ALIKE: f64 = 0.76;

/// The known word that the one found may have been meant for.
pub fn nearest<'a>(found: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    known
        .into_iter()
        .map(|word| (strsim::jaro_winkler(&found.to_lowercase(), word), word))
        .filter(|(likeness, _)| *likeness >= ALIKE)
        .max_by(|(one, _), (other, _)| one.total_cmp(other))
        .map(|(_, word)| word)
}

/// What was expected instead of the word found: its kind, with the nearest of its words, or all of a few.
pub fn expected_one_of(found: &str, what: &str, known: &[&str]) -> String {
    /// More than this many are not listed.
    const MOST: usize = 20;
    match nearest(found, known.iter().copied()) {
        Some(near) => format!("{what}; did you mean \"{near}\"?"),
        None if known.len() > MOST || known.is_empty() => what.to_owned(),
        None => format!("{what}: {}", known.join(", ")),
    }
}
