//! Text as people write it: normal form, Devanagari and Latin letters, numerals and number words,
//! the key of a word's sound, and the words an index keeps.
//!
//! **Never here:** what a word means.

mod language;
mod near;
mod sound;
mod text;
mod token;
mod words;

pub use language::{Language, language};
pub use near::near;
pub use sound::sound_key;
pub use text::Text;
pub use token::{Script, Token};
pub use words::index_words;
