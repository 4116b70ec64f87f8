//! How words lean towards kinds of message: multinomial logistic regression over the ways of asking.
//!
//! Retrieval finds the nearest single phrasing; this weighs every word, every pair of neighbours and every run of
//! three letters by how it tells the kinds apart, so that a message no phrasing is near to still leans somewhere, and
//! a word with a slip in it still counts. Features are weighed by rarity and brought to length 1 (as for text
//! classifiers in Rennie et al. 2003, from memory); the weights are found by stochastic gradient descent with step
//! sizes of their own (AdaGrad: Duchi, Hazan and Singer 2011, from memory), in a fixed order: the same files give the
//! same weights.

use super::asking::Kind;
use std::collections::HashMap;

/// Rounds over all phrases, and the length of a first step (looked for on messages beside the ways of asking: more
/// rounds change nothing).
const ROUNDS: usize = 3;
const STEP: f32 = 0.3;
/// A gradient less than this moves nothing.
const LEAST_GRADIENT: f32 = 1e-3;
/// What a run of letters counts against a word.
const LETTERS_COUNT: f32 = 0.5;

/// The weights of each feature for each kind.
#[derive(Debug, Clone, Default)]
pub struct Habit {
    kinds: Vec<Kind>,
    features: HashMap<String, (usize, f32)>,
    /// A row of as many weights as there are kinds for each feature.
    weights: Vec<f32>,
}

/// A message as features: row and value, of length 1.
type Weighed = Vec<(usize, f32)>;

impl Habit {
    /// Learns from the ways of asking.
    pub fn of<'a>(ways: impl Iterator<Item = (Kind, &'a [String])> + Clone) -> Self {
        let mut kinds: Vec<Kind> = ways.clone().map(|(kind, _)| kind).collect();
        kinds.sort();
        kinds.dedup();
        let counted: Vec<(usize, HashMap<String, f32>)> =
            ways.filter_map(|(kind, words)| Some((kinds.binary_search(&kind).ok()?, counted(words)))).collect();
        let mut standing_in: HashMap<&str, f32> = HashMap::new();
        for (_, features) in &counted {
            for feature in features.keys() {
                *standing_in.entry(feature).or_default() += 1.0;
            }
        }
        let total = counted.len() as f32;
        let mut names: Vec<(&str, f32)> = standing_in.into_iter().collect();
        // In the order of the alphabet: the order of a map differs from run to run.
        names.sort_by(|a, b| a.0.cmp(b.0));
        let features = names
            .into_iter()
            .enumerate()
            .map(|(row, (name, count))| (name.to_owned(), (row, libm::logf((1.0 + total) / (1.0 + count)) + 1.0)))
            .collect();
        let mut habit = Self { kinds, features, weights: Vec::new() };
        habit.weights = vec![0.0; habit.features.len() * habit.kinds.len()];
        let examples: Vec<(usize, Weighed)> =
            counted.into_iter().map(|(kind, features)| (kind, habit.weighed(features))).collect();
        habit.learn(&examples);
        habit
    }

    fn learn(&mut self, examples: &[(usize, Weighed)]) {
        let mut gone = vec![1e-6_f32; self.weights.len()];
        let order = shuffled(examples.len());
        for _ in 0..ROUNDS {
            for (kind, features) in order.iter().filter_map(|place| examples.get(*place)) {
                let mut shares = self.shares_of(features);
                if let Some(own) = shares.get_mut(*kind) {
                    *own -= 1.0;
                }
                for (row, value) in features {
                    let from = row * self.kinds.len();
                    let cells = self.weights.iter_mut().zip(&mut gone).skip(from).zip(&shares);
                    for ((weight, gone), share) in cells {
                        let gradient = share * value;
                        if gradient.abs() > LEAST_GRADIENT {
                            *gone += gradient * gradient;
                            *weight -= STEP * gradient / gone.sqrt();
                        }
                    }
                }
            }
        }
    }

    /// The share of each kind, in the order of `kinds`.
    fn shares_of(&self, features: &Weighed) -> Vec<f32> {
        let mut scores = vec![0.0_f32; self.kinds.len()];
        for (row, value) in features {
            let from = row * self.kinds.len();
            let weights = self.weights.get(from..from + self.kinds.len()).unwrap_or_default();
            for (score, weight) in scores.iter_mut().zip(weights) {
                *score += value * weight;
            }
        }
        let most = scores.iter().copied().fold(f32::NEG_INFINITY, f32::max);
        scores.iter_mut().for_each(|score| *score = libm::expf(*score - most));
        let sum: f32 = scores.iter().sum();
        scores.iter_mut().for_each(|score| *score /= sum);
        scores
    }

    /// Known features, weighed by rarity, the whole brought to length 1; in the order of their rows.
    fn weighed(&self, features: HashMap<String, f32>) -> Weighed {
        let mut all: Weighed = features
            .into_iter()
            .filter_map(|(feature, count)| {
                let (row, rarity) = self.features.get(&feature)?;
                let letters = if feature.starts_with(LETTERS) { LETTERS_COUNT } else { 1.0 };
                Some((*row, (1.0 + libm::logf(count.max(1.0))) * rarity * letters))
            })
            .collect();
        all.sort_unstable_by_key(|(row, _)| *row);
        let length = all.iter().map(|(_, value)| value * value).sum::<f32>().sqrt();
        if length > 0.0 {
            all.iter_mut().for_each(|(_, value)| *value /= length);
        }
        all
    }

    /// The share of each kind, adding up to 1; nothing where no word is known.
    #[must_use]
    pub fn shares(&self, words: &[String]) -> Vec<(Kind, f64)> {
        let features = self.weighed(counted(words));
        if features.is_empty() {
            return Vec::new();
        }
        self.kinds.iter().copied().zip(self.shares_of(&features).into_iter().map(f64::from)).collect()
    }
}

/// Marks a run of letters among the features; no word begins with it.
const LETTERS: char = '#';

/// Words, pairs of neighbours with the borders of the message, and runs of three letters, with their counts. Class
/// words are no letters.
fn counted(words: &[String]) -> HashMap<String, f32> {
    let mut counts = HashMap::new();
    let mut add = |feature: String| *counts.entry(feature).or_insert(0.0) += 1.0;
    for word in words {
        add(word.clone());
        if word.starts_with("class") {
            continue;
        }
        let letters: Vec<char> = format!("<{word}>").chars().collect();
        for run in letters.windows(3) {
            add(std::iter::once(LETTERS).chain(run.iter().copied()).collect());
        }
    }
    let bordered: Vec<&str> =
        std::iter::once("^").chain(words.iter().map(String::as_str)).chain(std::iter::once("$")).collect();
    for pair in bordered.windows(2) {
        add(pair.join(" "));
    }
    counts
}

/// All places below `count`, mixed the same way each time (steps of a linear congruence).
fn shuffled(count: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..count).collect();
    let mut state: u64 = 1;
    for place in (1..count).rev() {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        order.swap(place, (state >> 33) as usize % (place + 1));
    }
    order
}
