//! What kind of message it is: the nearest ways of asking vote, the names and the grammar weigh in.

use crate::knowledge::{Index, Kind};
use std::collections::BTreeMap;

/// Evidence beside the wording.
#[derive(Debug, Clone, Copy, Default)]
pub struct Evidence {
    /// A word says that something was done or seen.
    pub told: bool,
    /// A word or a mark asks.
    pub asks: bool,
    pub names: usize,
    pub sizes: usize,
    pub trouble: bool,
}

/// The likeliest kind, the next one, and how sure.
#[derive(Debug, Clone, Copy)]
pub struct Verdict {
    pub kind: Kind,
    pub sureness: f64,
    /// How near the nearest way of asking of that kind is, 0 to 1.
    pub nearness: f64,
}

/// How many of the nearest ways of asking are looked at.
const LOOKED_AT: usize = 40;

/// Decides between the kinds.
pub fn decide(index: &Index, words: &[String], evidence: Evidence) -> Verdict {
    let mut near: BTreeMap<Kind, f64> = BTreeMap::new();
    for found in index.ways_of_asking(words, LOOKED_AT) {
        let nearest = near.entry(found.what).or_default();
        *nearest = nearest.max(found.score);
    }
    let mut scores: Vec<(Kind, f64, f64)> = index
        .leaning(words)
        .into_iter()
        .map(|(kind, share)| {
            let nearness = near.get(&kind).copied().unwrap_or_default();
            (kind, share + NEAREST_COUNTS * nearness + leaning(kind, evidence), nearness)
        })
        .collect();
    scores.sort_by(|a, b| b.1.total_cmp(&a.1));
    let Some(&(kind, best, nearness)) = scores.first() else {
        return Verdict { kind: Kind::None, sureness: 0.0, nearness: 0.0 };
    };
    let second = scores.get(1).map_or(0.0, |(_, score, _)| *score);
    let margin = (best - second).clamp(0.0, 1.0);
    // Near in wording, and ahead of the next kind: both are needed. The curve is a judgement until it is
    // calibrated on data.
    let sureness = (0.25 + 0.75 * nearness.min(1.0)) * (0.55 + 0.45 * (margin * 3.0).min(1.0));
    Verdict { kind, sureness: sureness.clamp(0.0, 0.99), nearness }
}

/// What the nearest single way of asking counts, against the leaning of all words.
const NEAREST_COUNTS: f64 = 0.5;

/// What the names and the grammar say for or against a kind, in units of nearness.
fn leaning(kind: Kind, evidence: Evidence) -> f64 {
    match kind {
        Kind::Record if evidence.told && !evidence.asks => 0.45,
        Kind::Record if evidence.told => 0.0,
        Kind::Record => -0.35,
        _ if evidence.told && !evidence.asks => -0.10,
        Kind::Trouble if evidence.trouble => 0.15,
        // Growing words make chatter less likely, their absence more.
        Kind::None if evidence.names + evidence.sizes == 0 => 0.08,
        Kind::None => -0.08,
        _ => 0.0,
    }
}
