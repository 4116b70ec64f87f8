//! How words lean towards kinds of message: multinomial logistic regression over the ways of asking and over whole
//! messages as they may be sent.
//!
//! Retrieval finds the nearest single phrasing; this weighs every word, every pair of neighbours and every run of
//! three letters by how it tells the kinds apart, so that a message no phrasing is near to still leans somewhere, and
//! a word with a slip in it still counts. Features are weighed by rarity and brought to length 1 (as for text
//! classifiers in Rennie et al. 2003, from memory); the weights are found by stochastic gradient descent with step
//! sizes of their own (AdaGrad: Duchi, Hazan and Singer 2011, from memory), in a fixed order: the same files give the
//! same weights.

use super::meanings::MEANING;
use super::pack::{Packed, Ranked, Unpacking};
use rustc_hash::FxHashMap;

/// Rounds over all phrases, and the length of a first step (looked for on messages beside the ways of asking: more
/// rounds change nothing).
const ROUNDS: usize = 6;
const STEP: f32 = 0.3;
/// The square of gradients that each weight begins with. With next to none the first example of a feature would move
/// its weights by a whole step, whatever it weighs, and what is learned would hang on the order (measured: of 1 980
/// messages 28 are read as another kind after another order with 1e-6, 6 with this).
const GONE_BEFORE: f32 = 0.05;
/// A feature that stands in one example alone tells nothing of others.
const MET_OFTEN: f32 = 2.0;
/// A gradient less than this moves nothing.
const LEAST_GRADIENT: f32 = 1e-3;
/// What a run of letters counts against a word.
const LETTERS_COUNT: f32 = 0.5;
/// What a whole message counts against a way of asking (looked for on messages beside both).
const HEARD_COUNT: f32 = 2.0;
/// What a meaning counts against a word.
const MEANINGS_COUNT: f32 = 0.5;

/// The weights of each feature for each kind: a kind of message, or whatever else messages are told apart by.
#[derive(Debug, Clone, Default)]
pub struct Habit<K> {
    kinds: Vec<K>,
    features: Ranked,
    /// How rare each feature is.
    rarities: Vec<f32>,
    /// A row of as many weights as there are kinds for each feature.
    weights: Vec<f32>,
}

/// A message as features: row and value (while they are counted, number and count), of length 1.
type Weighed = Vec<(usize, f32)>;

impl<K: Copy + Ord> Habit<K> {
    /// Learns from the ways of asking, and from whole messages.
    pub fn of(ways: &[(K, Vec<String>)], heard: &[(K, Vec<String>)]) -> Self {
        let kinds = kinds_of(ways.iter().chain(heard).map(|(kind, _)| *kind));
        // Each feature gets a number when it is first met, and its row by the alphabet when all are known.
        let mut numbers: FxHashMap<String, usize> = FxHashMap::default();
        let mut standing_in: Vec<f32> = Vec::new();
        let mut counted: Vec<(usize, f32, Weighed)> = Vec::new();
        let ways = ways.iter().map(|way| (way, 1.0));
        for ((kind, words), counts_for) in ways.chain(heard.iter().map(|heard| (heard, HEARD_COUNT))) {
            let Ok(kind) = kinds.binary_search(kind) else { continue };
            let mut met: Vec<usize> = Vec::new();
            each_feature(words, |feature| {
                met.push(numbers.get(feature).copied().unwrap_or_else(|| {
                    numbers.insert(feature.to_owned(), numbers.len());
                    numbers.len() - 1
                }));
            });
            let counts = counts(met);
            standing_in.resize(numbers.len(), 0.0);
            for (number, _) in &counts {
                if let Some(standing_in) = standing_in.get_mut(*number) {
                    *standing_in += 1.0;
                }
            }
            counted.push((kind, counts_for, counts));
        }
        let total = counted.len() as f32;
        let often = |number: usize| standing_in.get(number).is_some_and(|count| *count >= MET_OFTEN);
        let mut names: Vec<(&str, usize)> = numbers
            .iter()
            .filter(|(_, number)| often(**number))
            .map(|(name, number)| (name.as_str(), *number))
            .collect();
        names.sort_unstable();
        let mut rows = vec![None; numbers.len()];
        let mut rarities = Vec::with_capacity(names.len());
        for (row, (_, number)) in names.iter().enumerate() {
            let count = standing_in.get(*number).copied().unwrap_or_default();
            rarities.push(libm::logf((1.0 + total) / (1.0 + count)) + 1.0);
            if let Some(its) = rows.get_mut(*number) {
                *its = Some(row);
            }
        }
        let features = Ranked::of(names.into_iter().map(|(name, _)| name));
        let weights = vec![0.0; features.len() * kinds.len()];
        let mut habit = Self { kinds, features, rarities, weights };
        let examples: Vec<(usize, f32, Weighed)> = counted
            .into_iter()
            .map(|(kind, counts_for, counts)| {
                let by_row = counts.into_iter().filter_map(|(number, count)| Some(((*rows.get(number)?)?, count)));
                (kind, counts_for, habit.weighed(by_row.collect()))
            })
            .collect();
        habit.learn(&examples);
        habit
    }

    fn learn(&mut self, examples: &[(usize, f32, Weighed)]) {
        let mut gone = vec![GONE_BEFORE; self.weights.len()];
        let order = shuffled(examples.len());
        let mut shares = Vec::new();
        for _ in 0..ROUNDS {
            for (kind, counts_for, features) in order.iter().filter_map(|place| examples.get(*place)) {
                self.shares_of(features, &mut shares);
                if let Some(own) = shares.get_mut(*kind) {
                    *own -= 1.0;
                }
                // No value is above 1: where the share is so small, no gradient is large enough, whatever the feature.
                let moved: Vec<(usize, f32)> = shares
                    .iter()
                    .copied()
                    .enumerate()
                    .filter(|(_, share)| share.abs() > LEAST_GRADIENT / 2.0)
                    .collect();
                for (row, value) in features {
                    let from = row * self.kinds.len();
                    for (kind, share) in &moved {
                        let gradient = counts_for * share * value;
                        if gradient.abs() > LEAST_GRADIENT
                            && let Some(gone) = gone.get_mut(from + kind)
                            && let Some(weight) = self.weights.get_mut(from + kind)
                        {
                            *gone += gradient * gradient;
                            *weight -= STEP * gradient / gone.sqrt();
                        }
                    }
                }
            }
        }
    }

    /// The share of each kind, in the order of `kinds`.
    fn shares_of(&self, features: &Weighed, scores: &mut Vec<f32>) {
        scores.clear();
        scores.resize(self.kinds.len(), 0.0);
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
    }

    /// Rows with their counts, weighed by rarity, the whole brought to length 1; in the order of the rows.
    fn weighed(&self, mut counts: Vec<(usize, f32)>) -> Weighed {
        counts.sort_unstable_by_key(|(row, _)| *row);
        let letters = self.features.starting_with(LETTERS);
        let meant = self.features.starting_with(MEANING);
        for (row, value) in &mut counts {
            let counts = if letters.contains(row) {
                LETTERS_COUNT
            } else if meant.contains(row) {
                MEANINGS_COUNT
            } else {
                1.0
            };
            let rarity = self.rarities.get(*row).copied().unwrap_or_default();
            *value = (1.0 + libm::logf(value.max(1.0))) * rarity * counts;
        }
        let length = counts.iter().map(|(_, value)| value * value).sum::<f32>().sqrt();
        if length > 0.0 {
            counts.iter_mut().for_each(|(_, value)| *value /= length);
        }
        counts
    }

    /// The share of each kind, adding up to 1; nothing where no word is known.
    #[must_use]
    pub fn shares(&self, words: &[String]) -> Vec<(K, f64)> {
        let mut met = Vec::new();
        each_feature(words, |feature| met.extend(self.features.place(feature)));
        if met.is_empty() {
            return Vec::new();
        }
        let mut shares = Vec::new();
        self.shares_of(&self.weighed(counts(met)), &mut shares);
        self.kinds.iter().copied().zip(shares.into_iter().map(f64::from)).collect()
    }

    pub fn pack(&self, packed: &mut Packed) {
        self.features.pack(packed);
        packed.weights(&self.rarities);
        packed.weights(&self.weights);
    }

    /// What was learned from ways of asking of these kinds.
    pub fn unpack(from: &mut Unpacking<'_>, kinds: impl Iterator<Item = K>) -> Option<Self> {
        let (kinds, features) = (kinds_of(kinds), Ranked::unpack(from)?);
        let (rarities, weights) = (from.weights()?, from.weights()?);
        let fits = rarities.len() == features.len() && weights.len() == features.len() * kinds.len();
        fits.then_some(Self { kinds, features, rarities, weights })
    }
}

/// Different kinds, in order.
fn kinds_of<K: Ord>(kinds: impl Iterator<Item = K>) -> Vec<K> {
    let mut kinds: Vec<K> = kinds.collect();
    kinds.sort_unstable();
    kinds.dedup();
    kinds
}

/// Marks a run of letters among the features; no word begins with it.
const LETTERS: &str = "#";

/// Marks a word as it is written; no word begins with it.
pub const WRITTEN: &str = "~";

/// Tells words, pairs of neighbours with the borders of the message, runs of three letters, meanings, and pairs of
/// meanings in their order, whatever stands between them. Class words are no letters; meanings, then words as
/// written, stand at the end.
fn each_feature(words: &[String], mut tell: impl FnMut(&str)) {
    let mut feature = String::new();
    let marked = |word: &String| word.starts_with(MEANING) || word.starts_with(WRITTEN);
    let (words, meanings) = words.split_at(words.iter().position(marked).unwrap_or(words.len()));
    let (meanings, written) =
        meanings.split_at(meanings.iter().position(|word| word.starts_with(WRITTEN)).unwrap_or(meanings.len()));
    written.iter().for_each(|word| tell(word));
    for (place, meaning) in meanings.iter().enumerate() {
        tell(meaning);
        for later in meanings.iter().skip(place + 1).filter(|later| *later != meaning) {
            feature.clear();
            feature.extend([meaning.as_str(), later]);
            tell(&feature);
        }
    }
    for word in words {
        tell(word);
        if word.starts_with("class") {
            continue;
        }
        let letters: Vec<char> = std::iter::once('<').chain(word.chars()).chain(std::iter::once('>')).collect();
        for run in letters.windows(3) {
            feature.clear();
            feature.push_str(LETTERS);
            feature.extend(run);
            tell(&feature);
        }
    }
    let mut before = "^";
    for word in words.iter().map(String::as_str).chain(std::iter::once("$")) {
        feature.clear();
        feature.extend([before, " ", word]);
        tell(&feature);
        before = word;
    }
}

/// How often each number stands there, in order.
fn counts(mut numbers: Vec<usize>) -> Vec<(usize, f32)> {
    numbers.sort_unstable();
    numbers.chunk_by(|a, b| a == b).filter_map(|same| Some((*same.first()?, same.len() as f32))).collect()
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
