//! Whether harm is meant: to a person, to an animal that is no pest of a bed, to the plants of others, or to oneself.
//!
//! Nothing of it is answered, whatever plant or product is named beside it. What is told as happened is an accident, what
//! is feared or denied is care: neither is meant here.

mod english;
mod hindi;

use crate::script::{Language, Text, sound_key};
use std::collections::HashSet;

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
pub fn told(text: &Text) -> Option<IllWill> {
    let said = Said::read(text);
    if english::to_oneself(&said) || hindi::to_oneself(&said) {
        return Some(IllWill::ToOneself);
    }
    let meant = match text.language {
        Language::En => english::to_others(&said),
        _ => hindi::to_others(&said) || english::to_others(&said),
    };
    meant.then_some(IllWill::ToOthers)
}

/// The words of a message as they are looked at here.
struct Said<'t> {
    words: Vec<&'t str>,
    sounds: Vec<String>,
}

/// Sounds shorter than this meet by chance.
const SHORTEST_SOUND: usize = 4;

/// Words of Hindi in either script.
struct Sounds {
    spelled: HashSet<&'static str>,
    /// Those long enough to tell.
    sounds: HashSet<String>,
}

impl Sounds {
    fn of(words: &'static str) -> Self {
        let long = |sound: &String| sound.chars().count() >= SHORTEST_SOUND;
        Self {
            spelled: words.split_ascii_whitespace().collect(),
            sounds: words.split_ascii_whitespace().map(sound_key).filter(long).collect(),
        }
    }
}

impl<'t> Said<'t> {
    fn read(text: &'t Text) -> Self {
        let words: Vec<&str> = text.tokens.iter().map(|token| token.normal.as_str()).collect();
        let sounds = words.iter().map(|word| sound_key(word)).collect();
        Self { words, sounds }
    }

    fn word(&self, at: usize) -> &str {
        self.words.get(at).copied().unwrap_or_default()
    }

    /// As it is spelled.
    fn is(&self, at: usize, list: &[&str]) -> bool {
        at < self.words.len() && list.contains(&self.word(at))
    }

    /// As it is spelled or, where its sound is long enough to tell, as it sounds.
    fn sounds(&self, at: usize, list: &Sounds) -> bool {
        self.words.get(at).is_some_and(|word| list.spelled.contains(word))
            || self.sounds.get(at).is_some_and(|sound| list.sounds.contains(sound))
    }

    /// The same of a list of words parted by spaces.
    fn of(&self, at: usize, list: &str) -> bool {
        at < self.words.len() && list.split_ascii_whitespace().any(|word| word == self.word(at))
    }

    fn any_of(&self, list: &str) -> bool {
        (0..self.words.len()).any(|at| self.of(at, list))
    }

    fn any(&self, list: &[&str]) -> bool {
        (0..self.words.len()).any(|at| self.is(at, list))
    }

    fn any_sound(&self, list: &Sounds) -> bool {
        (0..self.words.len()).any(|at| self.sounds(at, list))
    }

    /// Whether a mark ends the sentence there.
    fn ends(&self, at: usize) -> bool {
        self.is(at, &[".", "?", "!", "।", ";"])
    }

    /// The places before one, the nearest first, within its sentence.
    fn back(&self, at: usize, most: usize) -> impl Iterator<Item = usize> + '_ {
        (0..at).rev().take(most).take_while(|place| !self.ends(*place))
    }

    /// The places from one on, within its sentence.
    fn on(&self, from: usize, most: usize) -> impl Iterator<Item = usize> + '_ {
        (from..self.words.len()).take(most).take_while(|place| !self.ends(*place))
    }

    /// Whether these words stand there side by side.
    fn phrase(&self, phrase: &str) -> bool {
        let wanted: Vec<&str> = phrase.split(' ').collect();
        self.words.windows(wanted.len()).any(|words| words == wanted.as_slice())
    }

    fn any_phrase(&self, phrases: &[&str]) -> bool {
        phrases.iter().any(|phrase| self.phrase(phrase))
    }
}

#[cfg(test)]
mod tests;
