//! What a gardener may read and mend: the files of `knowledge/`, read into typed facts.
//!
//! **Never here:** a sum, a sentence.

mod words;

pub use words::{NotWords, Words};
