//! A text, read once: its tokens, its language, which digits it used.

use super::language::{Language, language};
use super::token::{Script, Token};

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
        let mut tokens = Vec::new();
        for word in original.split_whitespace().take(LONGEST_READ) {
            let start = word.as_ptr() as usize - original.as_ptr() as usize;
            tokens.push(Token {
                text: word.into(),
                normal: word.to_lowercase(),
                span: start..start + word.len(),
                script: Script::Latin,
                number: word.parse().ok(),
            });
        }
        let language = language(&tokens);
        Self { original: original.into(), tokens, language, devanagari_digits: false, cut: false }
    }
}
