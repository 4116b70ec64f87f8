//! How far a description is like each trouble, where no phrase of a sign may fit it.

use super::symptoms::Meaning;
use crate::knowledge::{Knowledge, Often};
use crate::script::Language;
use rustc_hash::FxHashMap;
use std::collections::BTreeSet;

/// The telling words of all troubles.
#[derive(Debug, Clone, Default)]
pub(super) struct Likeness {
    /// Of each trouble, how well each word speaks for it, 0 to 1.
    troubles: Vec<(String, FxHashMap<Meaning, f64>)>,
    /// How much each word tells: the rarer among the troubles, the more.
    telling: FxHashMap<Meaning, f64>,
}

/// A description that tells so little is half a description, in nats (judgement).
const FEW_NATS: f64 = 5.0;

/// A word of the text that says what one sees (judgement); one of a sign counts by how often that is seen.
const OF_TEXT: f64 = 0.8;

const fn of_sign(seen: Often) -> f64 {
    match seen {
        Often::NearlyAlways => 1.0,
        Often::Often => 0.8,
        Often::Sometimes => 0.4,
        Often::Seldom => 0.15,
    }
}

impl Likeness {
    /// Gathers what the files say of each trouble. `words` gives the meanings of a text.
    pub(super) fn of(known: &Knowledge, words: &dyn Fn(&str, Language) -> Vec<Meaning>) -> Self {
        let mut of_signs: FxHashMap<&str, BTreeSet<Meaning>> = FxHashMap::default();
        for sign in known.signs.values() {
            let mut all = BTreeSet::new();
            for (language, names) in sign.names.each() {
                for name in names.iter().chain([sign.label.of(language)]) {
                    all.extend(words(name, language));
                }
            }
            of_signs.insert(&sign.id, all);
        }
        let mut book = Self::default();
        for trouble in known.troubles.values() {
            let mut bag: FxHashMap<Meaning, f64> = FxHashMap::default();
            let mut put = |meaning: Meaning, weight: f64| {
                let before = bag.entry(meaning).or_default();
                *before = before.max(weight);
            };
            for (language, text) in trouble.signs.each() {
                words(text, language).into_iter().for_each(|meaning| put(meaning, OF_TEXT));
            }
            for evidence in &trouble.evidence {
                let weight = of_sign(evidence.seen);
                let all = of_signs.get(evidence.sign.as_str()).into_iter().flatten();
                all.for_each(|meaning| put(*meaning, weight));
            }
            book.troubles.push((trouble.id.clone(), bag));
        }
        let count = book.troubles.len() as f64;
        let mut spread: FxHashMap<Meaning, f64> = FxHashMap::default();
        for (_, bag) in &book.troubles {
            for (meaning, weight) in bag {
                *spread.entry(*meaning).or_default() += weight;
            }
        }
        let rare = |spread: f64| libm::log((count + 1.0) / (spread + 0.5));
        book.telling = spread.into_iter().map(|(meaning, spread)| (meaning, rare(spread))).collect();
        book
    }

    /// The troubles that these words are like, likest first: the share of what they tell that speaks for it.
    pub(super) fn to(&self, words: &[Vec<Meaning>]) -> Vec<(String, f64)> {
        // A word may have several meanings, and is said once.
        let mut said: Vec<(&[Meaning], f64)> = Vec::new();
        for meanings in words {
            let known = meanings.iter().filter_map(|meaning| self.telling.get(meaning)).copied();
            let tells = known.fold(0.0, f64::max);
            if tells > 0.0 && !said.iter().any(|(other, _)| *other == meanings.as_slice()) {
                said.push((meanings.as_slice(), tells));
            }
        }
        let all: f64 = said.iter().map(|(_, tells)| tells).sum();
        // So few words as "it has spots" are like many troubles.
        let all = all + FEW_NATS;
        if said.is_empty() {
            return Vec::new();
        }
        let mut like: Vec<(String, f64)> = self
            .troubles
            .iter()
            .map(|(id, bag)| {
                let speaks = |meanings: &[Meaning]| {
                    meanings.iter().filter_map(|meaning| bag.get(meaning)).copied().fold(0.0, f64::max)
                };
                let share = said.iter().map(|(meanings, tells)| tells * speaks(meanings)).sum::<f64>() / all;
                (id.clone(), share)
            })
            .filter(|(_, share)| *share > 0.0)
            .collect();
        like.sort_by(|a, b| b.1.total_cmp(&a.1).then_with(|| a.0.cmp(&b.0)));
        like
    }
}
