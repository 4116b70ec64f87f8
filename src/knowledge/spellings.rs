//! The words of the knowledge base as they are spelled, by their skeletons: what a word without its vowels may be.

use super::Knowledge;
use super::names::Names;
use super::pack::{Packed, Ranked, Unpacking};
use crate::script::Language;
use crate::script::{Script, Text, consonants, index_word, is_left_of, skeleton};
use std::collections::BTreeMap;

/// Latin words with how often they are said.
#[derive(Debug, Clone, Default)]
pub struct Spellings {
    /// The skeleton and the word, with a mark between, in order.
    words: Ranked,
    counts: Vec<u32>,
}

/// Between a skeleton and its word; no word has it.
const BETWEEN: char = ' ';

/// A word with fewer consonants is left of too many others.
const LEAST_CONSONANTS: usize = 3;

/// A name counts as a word that is said so often: people ask about things by name (judgement).
const OF_A_NAME: u32 = 60;

/// A crop is spoken of more than anything else (judgement).
const OF_A_CROP: u32 = 600;

/// The first must be said so many times as often as the next that it could be (judgement).
const CLEARLY: u32 = 4;

/// A word said so often in the ways of asking is a word, and no slip (judgement).
const COMMON: u32 = 3;

impl Spellings {
    /// Gathers the words of the ways of asking, of names and of the days.
    pub(super) fn of(known: &Knowledge) -> Self {
        let mut counts: BTreeMap<String, u32> = BTreeMap::new();
        let mut add = |phrase: &str, often: u32| {
            for token in Text::read_as(phrase, Language::En).tokens {
                if let Some(bones) = skeleton(&token.normal).filter(|_| token.script == Script::Latin) {
                    *counts.entry(format!("{bones}{BETWEEN}{}", token.normal)).or_default() += often;
                }
            }
        };
        for way in known.ways_of_asking.iter().filter(|way| way.language != Language::Hi) {
            for (place, piece) in way.phrase.split(['{', '}']).enumerate() {
                if place % 2 == 0 {
                    add(piece, 1);
                }
            }
        }
        for crop in known.crops.values() {
            crop.names.en.iter().chain(&crop.names.hi_latn).for_each(|name| add(name, OF_A_CROP));
            // "Pudine", "kaddu ke": before a postposition.
            let bent = crop.names.hi_latn.iter().filter_map(|name| Some(format!("{}e", name.strip_suffix('a')?)));
            bent.for_each(|name| add(&name, OF_A_CROP));
        }
        let names = (known.materials.values().map(|material| &material.names))
            .chain(known.mixes.values().map(|mix| &mix.names))
            .chain(known.troubles.values().map(|trouble| &trouble.names))
            .chain(known.talk.beds.iter().map(|bed| &bed.words))
            .chain(known.other_plants.plants.iter().map(|plant| &plant.names));
        let latin = |names: &'_ Names| names.en.iter().chain(&names.hi_latn).cloned().collect::<Vec<_>>();
        names.flat_map(latin).for_each(|name| add(&name, OF_A_NAME));
        known.words.days.words().chain(known.words.units.words()).for_each(|word| add(word, OF_A_NAME));
        Self { words: Ranked::of(counts.keys().map(String::as_str)), counts: counts.into_values().collect() }
    }

    fn count(&self, place: usize) -> u32 {
        self.counts.get(place).copied().unwrap_or_default()
    }

    /// Whether a word in normal form is said often enough to be one.
    #[must_use]
    pub fn is_common(&self, word: &str) -> bool {
        let place = skeleton(word).and_then(|bones| self.words.place(&format!("{bones}{BETWEEN}{word}")));
        place.is_some_and(|place| self.count(place) >= COMMON)
    }

    /// The word that this one is with vowels left out, where it is clearly one.
    #[must_use]
    pub fn spelled_out(&self, word: &str) -> Option<&str> {
        if consonants(word) < LEAST_CONSONANTS {
            return None;
        }
        let start = format!("{}{BETWEEN}", skeleton(word)?);
        // Forms that are compared as one are one: `khad` and `khaad`.
        let mut groups: BTreeMap<String, (u32, usize)> = BTreeMap::new();
        for place in self.words.starting_with(&start) {
            let whole = self.words.at(place).get(start.len()..)?;
            if !is_left_of(word, whole) {
                continue;
            }
            let token = Text::read_as(whole, Language::HiLatn).tokens.into_iter().next()?;
            let (count, best) = groups.entry(index_word(&token, Language::HiLatn)?).or_insert((0, place));
            *count += self.count(place);
            if self.count(place) > self.count(*best) {
                *best = place;
            }
        }
        let mut found: Vec<(u32, usize)> = groups.into_values().collect();
        found.sort_by_key(|(count, place)| (std::cmp::Reverse(*count), *place));
        let (count, place) = *found.first()?;
        let clear = found.get(1).is_none_or(|(next, _)| count >= CLEARLY * next);
        (clear && count >= COMMON).then(|| self.words.at(place).get(start.len()..)).flatten()
    }

    pub(super) fn pack(&self, packed: &mut Packed) {
        self.words.pack(packed);
        packed.numbers(&self.counts);
    }

    pub(super) fn unpack(from: &mut Unpacking<'_>) -> Option<Self> {
        let (words, counts) = (Ranked::unpack(from)?, from.numbers()?);
        (words.len() == counts.len()).then_some(Self { words, counts })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::Files;

    #[test]
    fn a_word_without_its_vowels_is_spelled_out() {
        let (known, _) = Knowledge::read(&Files::embedded());
        let spellings = Spellings::of(&known);
        let out = |word: &str| spellings.spelled_out(word).unwrap_or("-").to_owned();
        for (short, whole) in [
            ("tomto", "tomato"),
            ("cucmbr", "cucumber"),
            ("brinjl", "brinjal"),
            ("ktna", "kitna"),
            ("watr", "water"),
            ("redy", "ready"),
            ("tmatr", "tamatar"),
        ] {
            assert_eq!(out(short), whole);
        }
        // Two consonants are left of too many words, and what is no word here stays.
        for word in ["ok", "wl", "xqzt"] {
            assert_eq!(out(word), "-");
        }
        assert!(spellings.is_common("water") && !spellings.is_common("tomto"));
    }
}
