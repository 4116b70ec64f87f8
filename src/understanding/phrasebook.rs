//! Sequences of words that mean something, found in a text: by stem for English, by sound for Hindi.

mod forms;
mod slips;
mod spelling;

use crate::knowledge::{Names, Ordinary};
use crate::script::{Language, near};
use rustc_hash::{FxHashMap, FxHashSet};
use slips::{SHORTEST_SLIP, nearest, nearly_a_pair};
use std::collections::BTreeSet;
use std::ops::Range;
use std::sync::Arc;

pub use forms::Forms;
pub(super) use spelling::{Spelling, compared};

/// How words are compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum By {
    /// `tomatoes` is `tomato`; गमलों is गमला.
    Stem,
    /// Tense and number count: `watered` is not `water`.
    Whole,
}

/// A list of phrases, each with its meaning.
#[derive(Debug, Clone)]
pub struct Phrasebook<T> {
    by: By,
    ordinary: Ordinary,
    /// Words that are none but themselves: what sounds short and is spelled so is no other word.
    themselves: Arc<FxHashSet<String>>,
    english: Phrases<T>,
    hindi: Phrases<T>,
}

/// The phrases of one language, by their first words.
#[derive(Debug, Clone)]
struct Phrases<T> {
    by_first: FxHashMap<String, Vec<Entry<T>>>,
    /// The words of phrases of one word, long enough for a slip, by their first letter.
    singles: FxHashMap<char, BTreeSet<String>>,
    /// The first words of phrases of two, by the second.
    firsts: FxHashMap<String, BTreeSet<String>>,
}

impl<T> Default for Phrases<T> {
    fn default() -> Self {
        Self { by_first: FxHashMap::default(), singles: FxHashMap::default(), firsts: FxHashMap::default() }
    }
}

impl<T> Phrases<T> {
    fn get(&self, first: &str) -> Option<&Vec<Entry<T>>> {
        self.by_first.get(first)
    }

    fn add(&mut self, entry: Entry<T>) {
        match entry.words.as_slice() {
            [only] if only.chars().count() >= SHORTEST_SLIP => {
                let letter = only.chars().next().unwrap_or_default();
                self.singles.entry(letter).or_default().insert(only.clone());
            }
            [first, second] => {
                self.firsts.entry(second.clone()).or_default().insert(first.clone());
            }
            _ => {}
        }
        if let Some(first) = entry.words.first() {
            self.by_first.entry(first.clone()).or_default().push(entry);
        }
    }
}

/// One phrase in the form in which it is compared.
#[derive(Debug, Clone)]
struct Entry<T> {
    words: Vec<String>,
    /// As it is spelled.
    written: String,
    spelling: Spelling,
    meaning: T,
}

/// A phrase found in a text.
#[derive(Debug, Clone, PartialEq)]
pub struct Hit<T> {
    /// Range of token indices.
    pub span: Range<usize>,
    pub meaning: T,
    /// False where a word was only nearly the same.
    pub exact: bool,
}

impl<T: Clone> Phrasebook<T> {
    /// An empty list.
    #[must_use]
    pub fn new(by: By, ordinary: &Ordinary) -> Self {
        let themselves = Arc::default();
        Self { by, ordinary: ordinary.clone(), themselves, english: Phrases::default(), hindi: Phrases::default() }
    }

    /// The same where these words are none but themselves: "ke" is no "khaye", "ne" is no "na".
    #[must_use]
    pub fn knowing(self, themselves: &Arc<FxHashSet<String>>) -> Self {
        Self { themselves: Arc::clone(themselves), ..self }
    }

    /// Adds every name of a thing.
    pub fn add(&mut self, names: &Names, meaning: &T) {
        for name in &names.en {
            self.add_phrase(name, Language::En, meaning);
        }
        for name in names.hi.iter().chain(&names.hi_latn) {
            self.add_phrase(name, Language::HiLatn, meaning);
        }
    }

    /// Adds one phrase.
    pub fn add_phrase(&mut self, phrase: &str, language: Language, meaning: &T) {
        let (words, spelling) = compared(phrase, language, self.by, &self.ordinary);
        let map = if language == Language::En { &mut self.english } else { &mut self.hindi };
        // A word of another script has no form here: a phrase with one would match any such word.
        if words.iter().any(String::is_empty) {
            return;
        }
        map.add(Entry { words, written: phrase.to_lowercase(), spelling, meaning: meaning.clone() });
    }

    /// Everything found, the longest first where two overlap, in the order of the text.
    #[must_use]
    pub fn find(&self, forms: &Forms) -> Vec<Hit<T>> {
        without_overlaps(self.find_all(forms))
    }

    /// Everything found, overlapping or not.
    #[must_use]
    pub fn find_all(&self, forms: &Forms) -> Vec<Hit<T>> {
        let (all_forms, english) = (forms, forms.english);
        let forms = forms.by(self.by);
        let mut all = Vec::new();
        for start in 0..forms.english.len() {
            // An everyday word of English is no Hindi name in an English text: a heat wave that "began" is no "baigan".
            let everyday = english && self.ordinary.is(all_forms.written(start));
            let maps = [(&self.english, &forms.english, english, false), (&self.hindi, &forms.hindi, true, everyday)];
            for (map, words, fits, no_name) in maps {
                let Some(phrases) = words.get(start).and_then(|word| map.get(word)) else { continue };
                // "मूंग" sounds as "मुनगा" does: what is spelled so comes first.
                let as_written = |entry: &&Entry<T>| entry.written == all_forms.written(start);
                let others = phrases.iter().filter(|entry| !as_written(entry));
                for entry in
                    phrases.iter().filter(as_written).chain(others).filter(|entry| !no_name || entry.words.len() > 1)
                {
                    let end = start + entry.words.len();
                    let as_spelled = entry.spelling.is_that(all_forms, start, fits, |said| {
                        self.ordinary.is(said) || self.themselves.contains(said)
                    });
                    if as_spelled && words.get(start..end).is_some_and(|said| said == entry.words) {
                        all.push(Hit { span: start..end, meaning: entry.meaning.clone(), exact: true });
                    }
                }
            }
        }
        all
    }

    /// Phrases whose words come in their order with at most `apart` others between two of them, none of which denies.
    #[must_use]
    pub fn find_loosely(&self, forms: &Forms, apart: usize) -> Vec<Hit<T>> {
        let (written, forms) = (&forms.written, forms.by(self.by));
        let mut all = Vec::new();
        for (map, words) in [(&self.english, &forms.english), (&self.hindi, &forms.hindi)] {
            for start in 0..words.len() {
                for entry in words.get(start).and_then(|word| map.get(word)).into_iter().flatten() {
                    let mut end = start + 1;
                    let fits = entry.words.iter().skip(1).all(|wanted| {
                        let next = (end..words.len().min(end + apart + 1)).find(|at| words.get(*at) == Some(wanted));
                        let denied = |from: usize, to: usize| {
                            written
                                .get(from..to)
                                .is_some_and(|between| between.iter().any(|w| NOT.contains(&w.as_str())))
                        };
                        let found = next.filter(|next| !denied(end, *next));
                        end = found.map_or(end, |next| next + 1);
                        found.is_some()
                    });
                    if fits {
                        all.push(Hit { span: start..end, meaning: entry.meaning.clone(), exact: true });
                    }
                }
            }
        }
        all
    }

    /// One-word phrases that are nearly a token's word, where `open` says that the token is still free.
    #[must_use]
    pub fn find_near(&self, forms: &Forms, open: impl Fn(usize) -> bool) -> Vec<Hit<T>> {
        self.find_near_of(forms, open, |_| true)
    }

    /// The same among the phrases of wanted meanings alone.
    #[must_use]
    pub fn find_near_of(
        &self,
        forms: &Forms,
        open: impl Fn(usize) -> bool,
        wanted: impl Fn(&T) -> bool,
    ) -> Vec<Hit<T>> {
        let (written, english) = (&forms.written, forms.english);
        let forms = forms.by(self.by);
        let mut all = Vec::new();
        for position in (0..forms.english.len()).filter(|position| open(*position)) {
            // A slip in a sound is two steps from an English word: "indeed" is no endive. Its letters must be near as well.
            let spelled = |entry: &Entry<T>| {
                !english || written.get(position).is_some_and(|said| near(&entry.written, said).is_some())
            };
            let any = |_: &Entry<T>| true;
            let by_stem = forms.english.get(position).and_then(|word| nearest(&self.english, word, &wanted, any));
            let by_sound = forms.hindi.get(position).and_then(|word| nearest(&self.hindi, word, &wanted, spelled));
            let best = [by_stem, by_sound].into_iter().flatten().min_by_key(|(slips, _)| *slips);
            let pair = [(&self.english, &forms.english), (&self.hindi, &forms.hindi)]
                .into_iter()
                .find_map(|(map, words)| nearly_a_pair(map, words, position))
                .filter(|hit| wanted(&hit.meaning));
            if let Some(hit) = pair {
                all.push(hit);
            } else if let Some((_, meaning)) = best {
                all.push(Hit { span: position..position + 1, meaning, exact: false });
            }
        }
        all
    }
}

/// Words between those of a phrase that is said loosely turn it round.
const NOT: [&str; 7] = ["not", "no", "never", "nahi", "nhi", "nahin", "नहीं"];

/// The longest of those that overlap, the first where they are alike; in the order of the text.
pub(super) fn without_overlaps<T>(mut all: Vec<Hit<T>>) -> Vec<Hit<T>> {
    all.sort_by_key(|hit| (std::cmp::Reverse(hit.span.len()), hit.span.start));
    let mut kept: Vec<Hit<T>> = Vec::new();
    for hit in all {
        if kept.iter().all(|other| hit.span.end <= other.span.start || other.span.end <= hit.span.start) {
            kept.push(hit);
        }
    }
    kept.sort_by_key(|hit| hit.span.start);
    kept
}
