//! One thing in three languages.

use crate::script::Language;
use serde::Deserialize;

/// The same thing for English, Hindi in Devanagari, and Hindi in Roman letters.
#[derive(Debug, Clone, Default, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InThree<T> {
    pub en: T,
    pub hi: T,
    #[serde(rename = "hi-Latn")]
    pub hi_latn: T,
}

impl<T> InThree<T> {
    /// What belongs to a language.
    #[must_use]
    pub fn of(&self, language: Language) -> &T {
        match language {
            Language::En => &self.en,
            Language::Hi => &self.hi,
            Language::HiLatn => &self.hi_latn,
        }
    }

    /// All three, in the order of the files.
    pub fn each(&self) -> [(Language, &T); 3] {
        [(Language::En, &self.en), (Language::Hi, &self.hi), (Language::HiLatn, &self.hi_latn)]
    }
}

/// What a thing is called; the first of each language is used in replies.
pub type Names = InThree<Vec<String>>;

impl Names {
    /// The name used in replies.
    #[must_use]
    pub fn first(&self, language: Language) -> &str {
        self.of(language).first().or_else(|| self.en.first()).map_or("", String::as_str)
    }

    /// The first name of each language.
    #[must_use]
    pub fn first_of_each(&self) -> InThree<String> {
        let first = |list: &[String]| list.first().cloned().unwrap_or_default();
        InThree { en: first(&self.en), hi: first(&self.hi), hi_latn: first(&self.hi_latn) }
    }

    /// Every name in every language.
    pub fn all(&self) -> impl Iterator<Item = &str> {
        self.en.iter().chain(&self.hi).chain(&self.hi_latn).map(String::as_str)
    }
}
