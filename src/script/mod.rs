//! Text as people write it: normal form, Devanagari and Latin letters, numerals and number words,
//! the key of a word's sound, and the words an index keeps.
//!
//! **Never here:** what a word means.

mod hindi_numbers;
mod language;
mod letters;
mod near;
mod number_words;
mod numbers;
mod skeleton;
mod sound;
mod text;
mod token;
mod words;

pub use language::{Language, language};
pub use near::near;
pub use numbers::{Number, numbers};
pub use skeleton::{consonants, is_left_of, skeleton};
pub use sound::sound_key;
pub use text::{LONGEST_READ, Text};
pub use token::{Script, Token};
pub use words::{index_word, index_words, index_words_as};
