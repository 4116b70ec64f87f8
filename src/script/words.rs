//! The words an index keeps of a text.

use super::text::Text;

/// The words of a text as an index keeps them: light stems for English, sound keys for Hindi.
#[must_use]
pub fn index_words(text: &str) -> Vec<String> {
    Text::read(text).tokens.into_iter().map(|token| token.normal).collect()
}
