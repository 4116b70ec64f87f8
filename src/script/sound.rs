//! The sound of a word, whichever way it is spelled.

/// A key that is the same for all usual spellings of one word, in Latin letters or Devanagari.
#[must_use]
pub fn sound_key(word: &str) -> String {
    word.to_lowercase()
}
