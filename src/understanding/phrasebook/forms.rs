//! The forms in which the words of a text are compared.

use super::By;
use crate::script::{Language, Script, Text, Token, index_word};

/// The forms in which a text's words are compared, a word a token; empty where a token has none.
#[derive(Debug, Clone)]
pub struct Forms {
    pub(super) stem: TwoForms,
    pub(super) whole: TwoForms,
    /// As written, in normal form.
    pub(super) written: Vec<String>,
    /// The text is English.
    pub(super) english: bool,
}

#[derive(Debug, Clone)]
pub(super) struct TwoForms {
    pub(super) english: Vec<String>,
    pub(super) hindi: Vec<String>,
}

impl Forms {
    /// The forms of every token of a text; a token of Devanagari has no English form.
    #[must_use]
    pub fn of(text: &Text) -> Self {
        let all = |by| TwoForms {
            english: text.tokens.iter().map(|token| form(token, Language::En, by)).collect(),
            hindi: text.tokens.iter().map(|token| form(token, Language::HiLatn, by)).collect(),
        };
        let written = text.tokens.iter().map(|token| token.normal.clone()).collect();
        let english = text.language == Language::En;
        Self { stem: all(By::Stem), whole: all(By::Whole), written, english }
    }

    pub(super) fn by(&self, by: By) -> &TwoForms {
        match by {
            By::Stem => &self.stem,
            By::Whole => &self.whole,
        }
    }

    /// A token as it is written, in normal form.
    #[must_use]
    pub fn written(&self, position: usize) -> &str {
        self.written.get(position).map_or("", String::as_str)
    }

    /// The stems by which the words of a language are compared; empty where a token has none.
    #[must_use]
    pub(in crate::understanding) fn stems(&self, english: bool) -> &[String] {
        if english { &self.stem.english } else { &self.stem.hindi }
    }

    /// Whether phrases of this language fit the text.
    pub(in crate::understanding) const fn fits(&self, english: bool) -> bool {
        !english || self.english
    }

    /// How many tokens there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.stem.english.len()
    }
}

pub(super) fn form(token: &Token, language: Language, by: By) -> String {
    match (token.script, by) {
        (Script::Devanagari, _) if language == Language::En => String::new(),
        (Script::Latin, By::Whole) if language == Language::En => token.normal.clone(),
        (Script::Latin | Script::Devanagari, By::Whole) => token.sound.clone(),
        _ => index_word(token, language).unwrap_or_default(),
    }
}
