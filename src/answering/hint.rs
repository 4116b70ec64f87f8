//! Words of a message that change its answer without being names.

use crate::knowledge::Names;
use crate::script::{Language, index_words_as};
use crate::understanding::Reading;

/// Whether all words of one of these phrases are among those of the message, be they ever so common.
#[must_use]
pub fn has_words(reading: &Reading, phrases: &Names) -> bool {
    words_of_each(phrases).any(|words| words.iter().all(|word| reading.all_words.contains(word)))
}

/// Whether one of these phrases is said: its words in this order, others between them.
#[must_use]
pub fn says(reading: &Reading, phrases: &Names) -> bool {
    words_of_each(phrases).any(|words| {
        let mut said = reading.search.iter();
        words.iter().all(|word| said.any(|other| other == word))
    })
}

/// The words of each phrase that has any, as they are compared.
fn words_of_each(phrases: &Names) -> impl Iterator<Item = Vec<String>> {
    let english = phrases.en.iter().map(|phrase| (phrase, Language::En));
    let hindi = phrases.hi.iter().chain(&phrases.hi_latn).map(|phrase| (phrase, Language::HiLatn));
    let words = english.chain(hindi).map(|(phrase, language)| index_words_as(phrase, language));
    words.filter(|words| !words.is_empty())
}
