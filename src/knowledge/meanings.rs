//! Words of one meaning: what is learned of one counts for all, in any of the three languages.

use super::files::Files;
use super::names::Names;
use super::problem::Problem;
use crate::script::{Language, Script, Text, Token, index_word, near};
use rustc_hash::FxHashMap;
use serde::Deserialize;
use std::collections::BTreeMap;

/// The lists of `words/meanings.toml`, ready to be found in a text.
#[derive(Debug, Clone, Default)]
pub struct Meanings {
    names: Vec<String>,
    /// As spelled: tense and number count.
    spelled: Book,
    /// By stem, and by sound.
    english: Book,
    hindi: Book,
}

#[derive(Debug, Clone, Default)]
struct Book {
    /// Phrases by their first word, the longest first.
    phrases: FxHashMap<String, Vec<(Vec<String>, usize)>>,
    /// Phrases of one word, long enough for a slip, by their first letter, in the order of the alphabet.
    singles: FxHashMap<char, BTreeMap<String, usize>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawMeanings {
    meanings: Vec<RawMeaning>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawMeaning {
    meaning: String,
    words: Names,
}

/// Marks a meaning among the words of a message; no word begins with it.
pub const MEANING: &str = "=";

/// Whether a word with a slip of the finger in it still means what it nearly is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Slips {
    Forgiven,
    Refused,
}

/// Shorter words are not taken for one another's slips.
const SHORTEST_SLIP: usize = 5;

impl Meanings {
    /// The meanings of a text, in order, each with [`MEANING`] before its name.
    #[must_use]
    pub fn of(&self, tokens: &[Token], language: Language, slips: Slips) -> Vec<String> {
        let spelled: Vec<String> = tokens.iter().map(|token| token.normal.clone()).collect();
        let stems: Vec<String> = tokens.iter().map(|token| index_word(token, language).unwrap_or_default()).collect();
        let by_stem = if language == Language::En { &self.english } else { &self.hindi };
        let mut found = Vec::new();
        let mut at = 0;
        while at < tokens.len() {
            let hit = longest(&self.spelled, &spelled, at).max(longest(by_stem, &stems, at));
            let slipped = || Some((1, nearly(by_stem, tokens.get(at)?, stems.get(at)?)?));
            let hit = hit.or_else(|| if slips == Slips::Forgiven { slipped() } else { None });
            let Some((length, meaning)) = hit else {
                at += 1;
                continue;
            };
            found.extend(self.names.get(meaning).map(|name| format!("{MEANING}{name}")));
            at += length;
        }
        found
    }

    fn add(&mut self, phrase: &str, language: Language, meaning: usize) {
        let tokens = Text::read_as(phrase, language).tokens;
        let stems = |language| -> Vec<String> {
            tokens.iter().map(|token| index_word(token, language).unwrap_or_default()).collect()
        };
        insert(&mut self.spelled, tokens.iter().map(|token| token.normal.clone()).collect(), meaning);
        // People mix English words into Hindi: those are known by their sound as well.
        insert(&mut self.hindi, stems(Language::HiLatn), meaning);
        if language == Language::En {
            insert(&mut self.english, stems(Language::En), meaning);
        }
    }
}

/// The first meaning of a phrase stays.
fn insert(book: &mut Book, words: Vec<String>, meaning: usize) {
    let Some(first) = words.first().filter(|first| !first.is_empty()) else { return };
    let phrases = book.phrases.entry(first.clone()).or_default();
    if phrases.iter().all(|(known, _)| *known != words) {
        if let ([only], Some(letter)) = (words.as_slice(), first.chars().next())
            && only.chars().count() >= SHORTEST_SLIP
        {
            book.singles.entry(letter).or_default().insert(only.clone(), meaning);
        }
        phrases.push((words, meaning));
        phrases.sort_by_key(|(words, _)| std::cmp::Reverse(words.len()));
    }
}

fn longest(book: &Book, words: &[String], at: usize) -> Option<(usize, usize)> {
    let phrases = book.phrases.get(words.get(at)?)?;
    let (phrase, meaning) =
        phrases.iter().find(|(phrase, _)| words.get(at..at + phrase.len()).is_some_and(|said| said == phrase))?;
    Some((phrase.len(), *meaning))
}

/// The meaning of a single word with a slip of the finger in it; people rarely miss the first letter.
fn nearly(book: &Book, token: &Token, stem: &str) -> Option<usize> {
    if token.script != Script::Latin || stem.chars().count() < SHORTEST_SLIP {
        return None;
    }
    let alike = book.singles.get(&stem.chars().next()?)?;
    let slips = alike.iter().filter_map(|(known, meaning)| Some((near(known, stem)?, *meaning)));
    slips.min_by_key(|(slips, _)| *slips).map(|(_, meaning)| meaning)
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Meanings {
    const FILE: &str = "words/meanings.toml";
    let Some(text) = files.text(FILE) else { return Meanings::default() };
    let raw: RawMeanings = match toml::from_str(text) {
        Ok(raw) => raw,
        Err(refusal) => {
            problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
            return Meanings::default();
        }
    };
    let mut all = Meanings::default();
    for (number, raw) in raw.meanings.iter().enumerate() {
        all.names.push(raw.meaning.clone());
        for (language, phrases) in raw.words.each() {
            // Hindi stands before English where both sound alike.
            if language != Language::En {
                phrases.iter().for_each(|phrase| all.add(phrase, language, number));
            }
        }
    }
    for (number, raw) in raw.meanings.iter().enumerate() {
        raw.words.en.iter().for_each(|phrase| all.add(phrase, Language::En, number));
    }
    all
}
