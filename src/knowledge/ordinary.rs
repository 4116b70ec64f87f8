//! Everyday words: none of them is a name with a slip of the finger in it.

use super::files::Files;
use super::names::InThree;
use super::problem::Problem;
use crate::script::{Language, Text, index_word};
use rustc_hash::FxHashSet;

/// The words of `words/ordinary.toml`, as written and in the forms in which words are compared.
#[derive(Debug, Clone, Default)]
pub struct Ordinary {
    written: FxHashSet<String>,
    english: FxHashSet<String>,
    hindi: FxHashSet<String>,
}

impl Ordinary {
    /// Whether a word in normal form is an everyday word as it is spelled.
    #[must_use]
    pub fn is(&self, normal: &str) -> bool {
        self.written.contains(normal)
    }

    /// All of them as they are spelled, in normal form.
    pub fn written(&self) -> impl Iterator<Item = &str> {
        self.written.iter().map(String::as_str)
    }

    /// Whether the stem or sound of a name is that of an everyday word: the name must then be spelled as it is.
    #[must_use]
    pub fn sounds_like(&self, form: &str) -> bool {
        self.english.contains(form) || self.hindi.contains(form) || self.written.contains(form)
    }
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Ordinary {
    const FILE: &str = "words/ordinary.toml";
    let Some(text) = files.text(FILE) else { return Ordinary::default() };
    let lists: InThree<String> = match toml::from_str(text) {
        Ok(lists) => lists,
        Err(refusal) => {
            problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
            return Ordinary::default();
        }
    };
    let mut all = Ordinary::default();
    for (language, list) in lists.each() {
        let forms = if language == Language::En { &mut all.english } else { &mut all.hindi };
        for word in list.split_whitespace() {
            for token in Text::read_as(word, language).tokens.iter().filter(|token| token.is_word()) {
                forms.extend(index_word(token, language));
                all.written.insert(token.normal.clone());
            }
        }
    }
    all
}
