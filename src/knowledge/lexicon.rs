//! Words and phrases that carry one kind of meaning, found in a text by their normal form or sound.

use crate::script::{Script, Text, sound_key};
use rustc_hash::FxHashMap;
use serde::Deserialize;

/// Sounds shorter than this meet by chance; such words are found as they are spelled only.
const SHORTEST_SOUND: usize = 4;

/// Words of one meaning, by language, as a words file lists them.
#[derive(Debug, Clone, Default, Deserialize)]
pub(super) struct Listed {
    #[serde(default)]
    pub en: Vec<String>,
    #[serde(default)]
    pub hi: Vec<String>,
    #[serde(default, rename = "hi-Latn")]
    pub hi_latn: Vec<String>,
}

/// Phrases with a meaning each.
#[derive(Debug, Clone)]
pub struct Lexicon<T> {
    /// Phrases by their first word, the longest first.
    phrases: FxHashMap<String, Vec<(Vec<String>, T)>>,
    /// Single words of Hindi by their sound.
    sounds: FxHashMap<String, T>,
}

impl<T> Default for Lexicon<T> {
    fn default() -> Self {
        Self { phrases: FxHashMap::default(), sounds: FxHashMap::default() }
    }
}

impl<T: Copy> Lexicon<T> {
    /// The meaning of the longest phrase that begins at this token, and how many tokens it takes.
    #[must_use]
    pub fn at(&self, text: &Text, token: usize) -> Option<(T, usize)> {
        let first = text.tokens.get(token)?;
        let spelled = self.phrases.get(&first.normal).and_then(|phrases| {
            phrases.iter().find_map(|(phrase, meaning)| Some((*meaning, length_of(phrase, text, token)?)))
        });
        if spelled.is_some() || !first.is_word() || self.sounds.is_empty() {
            return spelled;
        }
        if first.sound.len() < SHORTEST_SOUND {
            return None;
        }
        self.sounds.get(&first.sound).map(|meaning| (*meaning, 1))
    }

    /// How many tokens a phrase of this lexicon takes there; `None` when none begins there.
    #[must_use]
    pub fn length_at(&self, text: &Text, token: usize) -> Option<usize> {
        self.at(text, token).map(|(_, length)| length)
    }

    /// The words of all phrases.
    pub(super) fn words(&self) -> impl Iterator<Item = &str> {
        let phrases = self.phrases.values().flatten();
        phrases.flat_map(|(phrase, _)| phrase.iter().map(String::as_str))
    }

    pub(super) fn add(&mut self, listed: &Listed, meaning: T) {
        for phrase in listed.en.iter().chain(&listed.hi).chain(&listed.hi_latn) {
            self.add_phrase(phrase, meaning);
        }
        for word in listed.hi.iter().chain(&listed.hi_latn).filter(|word| !word.contains(' ')) {
            let sound = sound_key(word);
            if sound.len() >= SHORTEST_SOUND {
                self.sounds.entry(sound).or_insert(meaning);
            }
        }
    }

    pub(super) fn add_phrase(&mut self, phrase: &str, meaning: T) {
        let words: Vec<String> = Text::read(phrase).tokens.into_iter().map(|token| token.normal).collect();
        let Some(first) = words.first() else { return };
        let phrases = self.phrases.entry(first.clone()).or_default();
        if phrases.iter().all(|(known, _)| *known != words) {
            phrases.push((words, meaning));
            phrases.sort_by_key(|(words, _)| std::cmp::Reverse(words.len()));
        }
    }
}

/// How many tokens this phrase takes there; a full stop may follow a word that is cut short (`sq. ft`).
fn length_of(phrase: &[String], text: &Text, token: usize) -> Option<usize> {
    let mut at = token;
    for (place, word) in phrase.iter().enumerate() {
        if place > 0 && text.normal(at) == "." && word != "." {
            at += 1;
        }
        let found = text.tokens.get(at).filter(|found| found.normal == *word)?;
        // The 2 of `m2` stands close to the letter, and is not the number of a measure that follows.
        if place > 0 && word == "2" && found.text != "²" {
            let close = text.tokens.get(at.wrapping_sub(1)).is_some_and(|before| before.touches(found));
            let goes_on = text.tokens.get(at + 1).is_some_and(|after| {
                found.touches(after) && matches!(after.script, Script::Latin | Script::Devanagari)
            });
            if !close || goes_on {
                return None;
            }
        }
        at += 1;
    }
    Some(at - token)
}
