//! Words of a message that change its answer without being names.

use crate::knowledge::Names;
use crate::script::{Language, index_words_as};
use crate::understanding::Reading;

/// Whether all words of one of these phrases are among those of the message, be they ever so common.
#[must_use]
pub fn has_words(reading: &Reading, phrases: &Names) -> bool {
    let english = phrases.en.iter().map(|phrase| (phrase, Language::En));
    let hindi = phrases.hi.iter().chain(&phrases.hi_latn).map(|phrase| (phrase, Language::HiLatn));
    english.chain(hindi).any(|(phrase, language)| {
        let words = index_words_as(phrase, language);
        !words.is_empty() && words.iter().all(|word| reading.all_words.contains(word))
    })
}

/// Whether one of these phrases is said: its words in this order, others between them.
#[must_use]
pub fn says(reading: &Reading, phrases: &Names) -> bool {
    let english = phrases.en.iter().map(|phrase| (phrase, Language::En));
    let hindi = phrases.hi.iter().chain(&phrases.hi_latn).map(|phrase| (phrase, Language::HiLatn));
    english.chain(hindi).any(|(phrase, language)| {
        let mut said = reading.search.iter();
        let words = index_words_as(phrase, language);
        !words.is_empty() && words.iter().all(|word| said.any(|other| other == word))
    })
}
