//! How a phrase is compared, and how it has to be spelled where its sound alone would meet other words.

use super::By;
use super::forms::{Forms, form};
use crate::knowledge::Ordinary;
use crate::script::{Language, Text};

/// How a phrase has to be spelled.
#[derive(Debug, Clone, Default, PartialEq)]
pub(in crate::understanding) struct Spelling {
    /// The spellings of a phrase of one word whose sound is too short to tell, or is that of an everyday word;
    /// empty where any spelling will do.
    pub(super) spelled: Vec<String>,
    /// Its sounds with all vowels, bent by number and case, where it is short and no everyday word: `kheere`.
    sounds: Vec<String>,
}

impl Spelling {
    /// Whether a phrase that begins at this token is spelled so. `fits` says that the language of the text is the
    /// phrase's: `kale` is black in Hindi, an everyday word there is no English name.
    pub(in crate::understanding) fn is_that(
        &self,
        forms: &Forms,
        start: usize,
        fits: bool,
        is_itself: impl Fn(&str) -> bool,
    ) -> bool {
        let heard = || forms.whole.hindi.get(start).is_some_and(|sound| self.sounds.contains(sound));
        // "Pani" is "paani", however plainly it is a word of its own.
        let alike = |said: &String| {
            let mut begin_alike = self.spelled.iter().filter(|spelled| begins(spelled) == begins(said)).peekable();
            // Few words begin as this one does: the others need no look.
            begin_alike.peek().is_some() && {
                let said = plain_vowels(said);
                begin_alike.any(|spelled| plain_vowels(spelled) == said)
            }
        };
        let as_said = |said: &String| self.spelled.contains(said) || (!is_itself(said) || alike(said)) && heard();
        self.spelled.is_empty() || fits && forms.written.get(start).is_some_and(as_said)
    }
}

/// The first letter, where it may be long or short: what begins otherwise has another plain spelling.
fn begins(word: &str) -> Option<char> {
    word.chars().next().map(|first| match first {
        'e' => 'i',
        'o' => 'u',
        'w' => 'v',
        'z' => 'j',
        other => other,
    })
}

/// A spelling in which a vowel is long or short, and a nasal end is written or not.
fn plain_vowels(word: &str) -> String {
    const SAME: [(&str, &str); 7] =
        [("aa", "a"), ("ee", "i"), ("ii", "i"), ("oo", "u"), ("uu", "u"), ("w", "v"), ("z", "j")];
    let plain = SAME.iter().fold(word.to_owned(), |word, (long, short)| word.replace(long, short));
    match plain.strip_suffix('n') {
        Some(open) if open.ends_with(['a', 'e', 'i', 'o', 'u']) => open.to_owned(),
        _ => plain,
    }
}

/// A phrase's words as they are compared, empty where a token has none, and how it has to be spelled.
pub(in crate::understanding) fn compared(
    phrase: &str,
    language: Language,
    by: By,
    ordinary: &Ordinary,
) -> (Vec<String>, Spelling) {
    let text = Text::read_as(phrase, language);
    let words: Vec<String> = text.tokens.iter().map(|token| form(token, language, by)).collect();
    let english = language == Language::En;
    let short = |word: &str| !english && word.chars().count() < SHORTEST_SOUND;
    let everyday = |word: &str| by == By::Stem && ordinary.sounds_like(word);
    let mut spelling = Spelling::default();
    if let ([word], [token]) = (words.as_slice(), text.tokens.as_slice()) {
        if short(word) || everyday(word) {
            let endings = ["s", "es"].iter().filter(|_| english).map(|ending| format!("{}{ending}", token.normal));
            spelling.spelled = std::iter::once(token.normal.clone()).chain(endings).collect();
        }
        if short(word) && !everyday(word) {
            spelling.sounds = bent(&token.sound);
        }
    }
    (words, spelling)
}

/// Sounds shorter than this meet by chance: `rai` is not `rain`.
const SHORTEST_SOUND: usize = 4;

/// A Hindi word's sound, and how it sounds in the plural and before a postposition.
fn bent(sound: &str) -> Vec<String> {
    let mut all = vec![sound.to_owned()];
    match sound.strip_suffix('a') {
        Some(stem) => all.extend(["e", "o"].map(|ending| format!("{stem}{ending}"))),
        None => all.extend(["e", "o"].map(|ending| format!("{sound}{ending}"))),
    }
    all
}
