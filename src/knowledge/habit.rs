//! How words lean towards kinds of message: naive Bayes over the ways of asking.
//!
//! Retrieval finds the nearest single phrasing; this weighs every word by how usual it is for each kind, so
//! that a message no phrasing is near to still leans somewhere. Multinomial naive Bayes on words and pairs
//! of neighbouring words, weighed by rarity (Rennie et al. 2003, Tackling the poor assumptions of naive
//! Bayes text classifiers, sections on transformed frequencies and lengths; from memory).

use super::asking::Kind;
use std::collections::HashMap;

/// Added to every count, so that an unseen word rules no kind out (chosen on the development messages
/// among 0.1, 0.3 and 1).
const SMOOTHING: f64 = 0.3;

/// The leaning of each word and pair.
#[derive(Debug, Clone, Default)]
pub struct Habit {
    kinds: Vec<Kind>,
    /// Rarity, and the logarithm of the word's share in each kind.
    words: HashMap<String, (f64, Vec<f64>)>,
}

impl Habit {
    /// Counts the ways of asking.
    pub fn of<'a>(ways: impl Iterator<Item = (Kind, &'a [String])> + Clone) -> Self {
        let mut kinds: Vec<Kind> = ways.clone().map(|(kind, _)| kind).collect();
        kinds.sort();
        kinds.dedup();
        let total = ways.clone().count() as f64;
        let mut standing_in: HashMap<String, f64> = HashMap::new();
        for (_, words) in ways.clone() {
            for (feature, _) in counted(words) {
                *standing_in.entry(feature).or_default() += 1.0;
            }
        }
        let rarity = |count: f64| libm::log((1.0 + total) / (1.0 + count)) + 1.0;
        let mut sums: HashMap<String, Vec<f64>> = HashMap::new();
        let mut totals = vec![0.0; kinds.len()];
        for (kind, words) in ways {
            let Ok(column) = kinds.binary_search(&kind) else { continue };
            for (feature, weight) in weighed(words, |feature| rarity(standing_in.get(feature).copied().unwrap_or(0.0)))
            {
                let sum = sums.entry(feature).or_insert_with(|| vec![0.0; kinds.len()]);
                if let (Some(cell), Some(all)) = (sum.get_mut(column), totals.get_mut(column)) {
                    *cell += weight;
                    *all += weight;
                }
            }
        }
        let vocabulary = sums.len() as f64;
        let words = sums.into_iter().map(|(feature, sum)| {
            let shares = sum
                .iter()
                .zip(&totals)
                .map(|(weight, all)| libm::log((weight + SMOOTHING) / (all + SMOOTHING * vocabulary)))
                .collect();
            let rare = rarity(standing_in.get(&feature).copied().unwrap_or(0.0));
            (feature, (rare, shares))
        });
        Self { words: words.collect(), kinds }
    }

    /// The share of each kind, adding up to 1; nothing where no word is known.
    #[must_use]
    pub fn shares(&self, words: &[String]) -> Vec<(Kind, f64)> {
        /// A message's weights are brought to length 1; the logarithms then want sharpening to shares.
        const SHARPNESS: f64 = 3.0;
        let known: Vec<(String, f64)> =
            weighed(words, |feature| self.words.get(feature).map_or(0.0, |(rare, _)| *rare));
        let mut scores = vec![0.0; self.kinds.len()];
        for (feature, weight) in known.iter().filter(|(_, weight)| *weight > 0.0) {
            let Some((_, shares)) = self.words.get(feature) else { continue };
            for (score, share) in scores.iter_mut().zip(shares) {
                *score += weight * share * SHARPNESS;
            }
        }
        let most = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        if known.iter().all(|(_, weight)| *weight <= 0.0) || !most.is_finite() {
            return Vec::new();
        }
        let lifted: Vec<f64> = scores.iter().map(|score| libm::exp(score - most)).collect();
        let sum: f64 = lifted.iter().sum();
        self.kinds.iter().copied().zip(lifted.into_iter().map(|share| share / sum)).collect()
    }
}

/// Words and pairs of neighbours with their counts, in the order of the alphabet.
fn counted(words: &[String]) -> std::collections::BTreeMap<String, f64> {
    let mut counts = std::collections::BTreeMap::new();
    for word in words {
        *counts.entry(word.clone()).or_default() += 1.0;
    }
    for pair in words.windows(2) {
        *counts.entry(pair.join(" ")).or_default() += 1.0;
    }
    counts
}

/// The same, with counts damped, weighed by rarity, and the whole brought to length 1.
fn weighed(words: &[String], rarity: impl Fn(&str) -> f64) -> Vec<(String, f64)> {
    let mut all: Vec<(String, f64)> = counted(words)
        .into_iter()
        .map(|(feature, count)| {
            let weight = (1.0 + libm::log(count)) * rarity(&feature);
            (feature, weight)
        })
        .collect();
    let length = libm::sqrt(all.iter().map(|(_, weight)| weight * weight).sum());
    if length > 0.0 {
        all.iter_mut().for_each(|(_, weight)| *weight /= length);
    }
    all
}
