//! Whether harm is meant: to a person, to an animal that is no pest of a bed, to the plants of others, or to oneself.
//!
//! Nothing of it is answered, whatever plant or product is named beside it. What is told as happened is an accident, what
//! is feared or denied is care: neither is meant here. The words stand in `knowledge/words/ill-will.toml`; here is how they
//! must stand together.

mod english;
mod hindi;

use crate::knowledge::{IllWillWords, Phrases, WordList};
use crate::script::{Language, Text, Token};

/// What is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IllWill {
    /// Someone, an animal or a neighbour's plants are to be harmed.
    ToOthers,
    /// The one who writes does not want to live.
    ToOneself,
}

/// What harm a message means, if any.
#[must_use]
pub fn told(text: &Text, words: &IllWillWords) -> Option<IllWill> {
    let said = Said { words: &text.tokens };
    let (english, hindi) = (english::Rules { said, of: &words.english }, hindi::Rules { said, of: &words.hindi });
    if english.to_oneself() || hindi.to_oneself() {
        return Some(IllWill::ToOneself);
    }
    let meant = match text.language {
        Language::En => english.to_others(),
        _ => hindi.to_others() || english.to_others(),
    };
    meant.then_some(IllWill::ToOthers)
}

/// The words of a message as they are looked at here. Past the ends of a message stands nothing.
#[derive(Clone, Copy)]
struct Said<'t> {
    words: &'t [Token],
}

impl<'t> Said<'t> {
    fn places(self) -> std::ops::Range<usize> {
        0..self.words.len()
    }

    fn word(self, at: usize) -> &'t str {
        self.words.get(at).map_or("", |word| word.normal.as_str())
    }

    /// The word that stands so many places before.
    fn before(self, at: usize, by: usize) -> &'t str {
        at.checked_sub(by).map_or("", |place| self.word(place))
    }

    /// Whether one of a few words of grammar stands there.
    fn is(self, at: usize, few: &[&str]) -> bool {
        few.contains(&self.word(at))
    }

    fn any_is(self, few: &[&str]) -> bool {
        self.places().any(|at| self.is(at, few))
    }

    /// Whether a word of a list stands there.
    fn of(self, at: usize, list: &impl WordList) -> bool {
        self.words.get(at).is_some_and(|word| list.has(word))
    }

    fn any_of(self, list: &impl WordList) -> bool {
        self.words.iter().any(|word| list.has(word))
    }

    fn has(self, phrases: &Phrases) -> bool {
        phrases.stand_in(self.words)
    }

    /// Whether a mark ends the sentence there.
    fn ends(self, at: usize) -> bool {
        self.is(at, &[".", "?", "!", ";"])
    }

    /// The places before one, the nearest first, within its sentence.
    fn back(self, at: usize, most: usize) -> impl Iterator<Item = usize> {
        (0..at).rev().take(most).take_while(move |place| !self.ends(*place))
    }

    /// The places from one on, within its sentence.
    fn on(self, from: usize, most: usize) -> impl Iterator<Item = usize> {
        (from..self.words.len()).take(most).take_while(move |place| !self.ends(*place))
    }

    /// Whether a word of a list stands before, so near.
    fn back_of(self, at: usize, most: usize, list: &impl WordList) -> bool {
        self.back(at, most).any(|place| self.of(place, list))
    }

    fn back_is(self, at: usize, most: usize, few: &[&str]) -> bool {
        self.back(at, most).any(|place| self.is(place, few))
    }

    /// Whether a word of a list stands there or after, so near.
    fn on_of(self, from: usize, most: usize, list: &impl WordList) -> bool {
        self.on(from, most).any(|place| self.of(place, list))
    }

    fn on_is(self, from: usize, most: usize, few: &[&str]) -> bool {
        self.on(from, most).any(|place| self.is(place, few))
    }
}

#[cfg(test)]
mod tests;
