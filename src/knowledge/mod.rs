//! What a gardener may read and mend: the files of `knowledge/`, read into typed facts.
//!
//! **Never here:** a sum, a sentence.

mod lexicon;
mod words;

pub use lexicon::Lexicon;
pub use words::{DayWord, NotWords, Sign, TimeUnit, Words};
