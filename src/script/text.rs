//! A text, read once: its tokens, its language, which digits it used.

use super::language::{Language, language, language_told};
use super::token::{Script, Token, cut, has_devanagari_digits};

/// How much of a text is read, in characters; the rest is kept but not looked at.
pub const LONGEST_READ: usize = 2_000;

/// A text and what its letters say.
#[derive(Debug, Clone, PartialEq)]
pub struct Text {
    pub original: String,
    pub tokens: Vec<Token>,
    pub language: Language,
    /// Whether it was written with Devanagari digits.
    pub devanagari_digits: bool,
    /// Whether it was longer than [`LONGEST_READ`] characters, so that its end was not read.
    pub cut: bool,
}

impl Text {
    /// Reads any text; never fails.
    #[must_use]
    pub fn read(original: &str) -> Self {
        let mut text = Self::read_as(original, Language::En);
        text.language = language(&text.tokens);
        text
    }

    /// Reads a text that follows another in a conversation: where its own words tell no language, as "4 x 3 ft" does not,
    /// it is in that of the one before, in the letters that it has.
    #[must_use]
    pub fn read_after(original: &str, before: Language) -> Self {
        /// So many letters make a word; fewer are a unit or a sign.
        const WORD: usize = 4;
        let mut text = Self::read_as(original, Language::En);
        let latin = |token: &Token| token.script == Script::Latin && token.normal.chars().count() >= WORD;
        text.language = match language_told(&text.tokens) {
            Some(told) => told,
            None if before == Language::Hi && text.tokens.iter().any(latin) => Language::HiLatn,
            None => before,
        };
        text
    }

    /// Reads a text whose language is known.
    #[must_use]
    pub fn read_as(original: &str, language: Language) -> Self {
        let end = original.char_indices().nth(LONGEST_READ).map(|(byte, _)| byte);
        let read = end.and_then(|end| original.get(..end)).unwrap_or(original);
        Self {
            original: original.into(),
            devanagari_digits: has_devanagari_digits(read),
            tokens: cut(read),
            language,
            cut: end.is_some(),
        }
    }

    /// The normal form of the token there; empty past the end, so that a rule may look ahead.
    #[must_use]
    pub fn normal(&self, token: usize) -> &str {
        self.tokens.get(token).map_or("", |token| token.normal.as_str())
    }
}

#[cfg(test)]
mod tests {
    use super::{LONGEST_READ, Text};
    use crate::script::{index_words, numbers, sound_key};
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn any_text_is_read(text in "\\PC{0,300}|[\\x00-\\x1f a-z0-9.,/'\"½१२टमाड\u{93c}\u{94d}\u{200d}🌱]{0,300}") {
            let read = Text::read(&text);
            for token in &read.tokens {
                prop_assert_eq!(text.get(token.span.clone()), Some(token.text.as_str()));
                let _ = sound_key(&token.text);
            }
            for number in numbers(&read) {
                prop_assert!(number.value.is_finite() && number.span.end <= read.tokens.len());
            }
            let _ = index_words(&text);
        }
    }

    #[test]
    fn a_long_text_is_cut() {
        for piece in ["ab ", "9", "टमाटर ", "🌱", "'", "1,1"] {
            let text = piece.repeat(100_000 / piece.len());
            let read = Text::read(&text);
            assert!(read.cut && read.tokens.len() <= LONGEST_READ, "{piece}");
        }
        assert!(!Text::read("short").cut);
    }

    #[test]
    fn digits_are_remembered() {
        assert!(Text::read("२ फुट").devanagari_digits);
        assert!(!Text::read("2 फुट").devanagari_digits);
    }
}
