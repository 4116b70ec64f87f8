//! From text to checked facts: what the files of every kind share.

use super::fact::{Fact, SourceRef};
use super::files::Files;
use super::problem::Problem;
use super::source::{Source, Worth};
use crate::quantity::{Estimate, Quantity};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::ops::Range;
use toml::Spanned;

/// A number as it stands in a file.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawNumber {
    value: f64,
    low: Option<f64>,
    high: Option<f64>,
    from: String,
    #[serde(default)]
    read: bool,
    #[serde(default, rename = "note")]
    _note: Option<String>,
}

/// A number with the place where it stands.
pub type RawFact = Spanned<RawNumber>;

/// Turns the files of one folder into things, and keeps the problems.
pub struct Reader<'a> {
    sources: &'a BTreeMap<String, Source>,
    noted: Noted,
    file: String,
    text: String,
}

/// What is noted while files are read.
#[derive(Debug, Default)]
pub struct Noted {
    pub problems: Vec<Problem>,
    /// How many facts were taken, and how many of them were read in their source.
    pub facts: usize,
    pub facts_read: usize,
}

impl Noted {
    /// Adds what was noted about another part, and hands that part on.
    pub fn and<T>(&mut self, (part, other): (T, Self)) -> T {
        self.problems.extend(other.problems);
        self.facts += other.facts;
        self.facts_read += other.facts_read;
        part
    }
}

impl<'a> Reader<'a> {
    pub fn new(sources: &'a BTreeMap<String, Source>) -> Self {
        Self { sources, noted: Noted::default(), file: String::new(), text: String::new() }
    }

    pub fn into_noted(self) -> Noted {
        self.noted
    }

    /// Opens one file: problems are then placed in it.
    pub fn open(&mut self, file: &str, text: &str) {
        file.clone_into(&mut self.file);
        text.clone_into(&mut self.text);
    }

    /// Reads every file of a folder; the file is called after its `id`.
    pub fn folder<R: DeserializeOwned, T>(
        &mut self,
        files: &Files,
        folder: &str,
        make: fn(&mut Self, R) -> Option<(String, T)>,
    ) -> BTreeMap<String, T> {
        let mut all = BTreeMap::new();
        for (file, text) in files.within(folder, ".toml") {
            self.open(file, text);
            let Some(raw) = self.parse::<R>(text, 0) else { continue };
            let Some((id, thing)) = make(self, raw) else { continue };
            self.called(&id, ".toml");
            all.insert(id, thing);
        }
        all
    }

    /// Reads every article: a front matter in TOML between `+++` lines, then its text.
    pub fn articles<R: DeserializeOwned, T>(
        &mut self,
        files: &Files,
        make: fn(&mut Self, R, &str) -> Option<(String, T)>,
    ) -> BTreeMap<String, T> {
        let mut all = BTreeMap::new();
        for (file, text) in files.within("articles", ".md") {
            self.open(file, text);
            let parts = text.strip_prefix("+++\n").and_then(|rest| rest.split_once("\n+++\n"));
            let Some((front, body)) = parts else {
                self.problem(0..3, "an article opens with its facts between two lines `+++`");
                continue;
            };
            let Some(raw) = self.parse::<R>(front, 4) else { continue };
            let Some((id, thing)) = make(self, raw, body.trim()) else { continue };
            self.called(&id, ".md");
            all.insert(id, thing);
        }
        all
    }

    fn parse<R: DeserializeOwned>(&mut self, text: &str, offset: usize) -> Option<R> {
        match toml::from_str(text) {
            Ok(raw) => Some(raw),
            Err(refusal) => {
                let span = refusal.span().unwrap_or(0..0);
                self.problem(span.start + offset..span.end + offset, refusal.message().trim().to_owned());
                None
            }
        }
    }

    fn called(&mut self, id: &str, ending: &str) {
        let name = self.file.rsplit('/').next().unwrap_or_default();
        if name != format!("{id}{ending}") {
            let message = format!("the file is called {name}, its id is \"{id}\"; both must be the same");
            self.problem(0..0, message);
        }
    }

    /// Notes a problem at a stretch of the open file.
    pub fn problem(&mut self, span: Range<usize>, message: impl Into<String>) {
        self.noted.problems.push(Problem::at(&self.file, &self.text, span, message));
    }

    /// A checked quantity: known source, ordered range, plausible bounds, `read` only for what can be read.
    pub fn fact<Q: Quantity>(&mut self, raw: &RawFact, wrap: fn(f64) -> Q) -> Option<Fact<Q>> {
        let bounds = |value: f64| Q::checked(wrap(value).base()).map(|_| ()).map_err(|refusal| refusal.to_string());
        let fact = self.checked(raw, bounds)?;
        Some(Fact { is: fact.is.map(wrap), source: fact.source, read: fact.read })
    }

    /// A count or a pure number with its own bounds; `what` names it in a refusal.
    pub fn number(&mut self, raw: &RawFact, what: &str, lowest: f64, highest: f64) -> Option<Fact<f64>> {
        self.checked(raw, |value| {
            let inside = (lowest..=highest).contains(&value);
            inside.then_some(()).ok_or_else(|| format!("{what} {value} was given, {lowest} to {highest} expected"))
        })
    }

    fn checked(&mut self, raw: &RawFact, bounds: impl Fn(f64) -> Result<(), String>) -> Option<Fact<f64>> {
        let (span, number) = (raw.span(), raw.get_ref());
        let (low, high) = match (number.low, number.high) {
            (None, None) => (number.value, number.value),
            (Some(low), Some(high)) => (low, high),
            _ => {
                self.problem(span, "low and high go together");
                return None;
            }
        };
        if let Some(refusal) = [low, number.value, high].into_iter().find_map(|end| bounds(end).err()) {
            self.problem(span, refusal);
            return None;
        }
        let Ok(is) = Estimate::between(low, number.value, high) else {
            let message = format!("low {low}, value {}, high {high}: low ≤ value ≤ high expected", number.value);
            self.problem(span, message);
            return None;
        };
        let source = self.source(span.clone(), &number.from)?;
        let published = self.sources.get(&source.id).is_some_and(|source| source.worth == Worth::Published);
        if number.read && !published {
            self.problem(span, format!("`read = true` needs a published source; \"{}\" is none", source.id));
            return None;
        }
        self.noted.facts += 1;
        self.noted.facts_read += usize::from(number.read);
        Some(Fact { is, source, read: number.read })
    }

    /// What a source is worth, where it is known.
    pub fn worth(&self, id: &str) -> Option<Worth> {
        self.sources.get(id).map(|source| source.worth)
    }

    /// A source that `sources.toml` knows.
    pub fn source(&mut self, span: Range<usize>, from: &str) -> Option<SourceRef> {
        let source = SourceRef::read(from);
        if self.sources.contains_key(&source.id) {
            return Some(source);
        }
        let near = nearest(&source.id, self.sources.keys().map(String::as_str));
        self.problem(span, format!("source \"{}\" is not in sources.toml{near}", source.id));
        None
    }
}

/// `; did you mean "…"?` where a known id is close.
pub fn nearest<'a>(given: &str, known: impl Iterator<Item = &'a str>) -> String {
    known
        .map(|id| (strsim::damerau_levenshtein(given, id), id))
        .min()
        .filter(|(distance, id)| *distance <= 3.min(id.len() / 2))
        .map_or_else(String::new, |(_, id)| format!("; did you mean \"{id}\"?"))
}

/// Nothing said is fine; said wrongly is not.
#[expect(clippy::option_option, reason = "unsaid, wrong and right are three things")]
pub fn said<T>(read: Option<Option<T>>) -> Option<Option<T>> {
    match read {
        None => Some(None),
        Some(None) => None,
        Some(right) => Some(right),
    }
}
