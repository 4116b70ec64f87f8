//! Which of the three ways of writing a text uses.

use super::token::Token;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Language {
    /// English.
    En,
    /// Hindi in Devanagari.
    Hi,
    /// Hindi in Latin letters.
    HiLatn,
}

impl Language {
    /// The tag of BCP 47.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::Hi => "hi",
            Self::HiLatn => "hi-Latn",
        }
    }
}

/// The language of these tokens; English when nothing tells.
#[must_use]
pub fn language(_tokens: &[Token]) -> Language {
    Language::En
}
