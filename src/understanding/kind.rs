//! What kind of message it is: the nearest ways of asking vote, the names and the grammar weigh in.

use super::about::About;
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
    /// Signs of trouble described, and whether one is on a plant.
    pub signs: usize,
    pub on_plant: bool,
    pub crop: bool,
    /// The share of its telling words that no way of asking about growing has, 0 to 1.
    pub strange: f64,
    /// What another person has is asked for.
    pub of_others: bool,
    /// What the body wants or the law forbids is named.
    pub not_ours: bool,
    /// A word for picking stands beside a sowing.
    pub picking: bool,
    /// A sowing or planting is told as the ground of a question.
    pub started: bool,
    /// A month is named without a day: "is June ok for it".
    pub month: bool,
    /// A share is said that only a net has where no mix and no material is named: "50 or 75 % for tomato".
    pub cut: bool,
    pub sprays: About,
    pub feeds: About,
}

/// The likeliest kind, the next one, and how sure.
#[derive(Debug, Clone, Copy)]
pub struct Verdict {
    pub kind: Kind,
    pub sureness: f64,
    /// The next likeliest kind that can be asked for.
    pub perhaps: Option<Kind>,
    /// How near the nearest way of asking of that kind is, 0 to 1.
    pub nearness: f64,
}

/// How usual the words of a message are for each kind, as shares of 1.
#[derive(Debug, Clone)]
pub struct Leaning(pub Vec<(Kind, f64)>);

impl Leaning {
    /// Words that are next to never said of no garden, enough of them.
    #[must_use]
    pub fn is_of_a_garden(&self, words: usize) -> bool {
        let none = self.0.iter().find(|(kind, _)| *kind == Kind::None);
        words >= ENOUGH && none.is_some_and(|(_, share)| *share < NO_OTHER_WORLD)
    }

    /// Words that are usual for greetings, thanks and other worlds.
    #[must_use]
    pub fn is_no_matter(&self) -> bool {
        const USUALLY: f64 = 0.5;
        self.0.iter().any(|(kind, share)| *kind == Kind::None && *share > USUALLY)
    }

    /// The kind that speaks against this one, and its share: where what the words are usual for is plain, and this is
    /// not it.
    #[must_use]
    pub fn against(&self, kind: Kind, words: usize, evidence: Evidence, stands: bool) -> Option<(Kind, f64)> {
        let (usual, share) = self.0.iter().copied().max_by(|a, b| a.1.total_cmp(&b.1))?;
        let its = self.0.iter().find(|(of, _)| *of == kind).map_or(0.0, |(_, share)| *share);
        // Where nothing was done or seen, or it is the ground of a question, there is nothing to note.
        let notes = usual != Kind::Record || evidence.told && !evidence.asks;
        // What the law forbids is not told in any words.
        let refused = kind == Kind::None && evidence.not_ours;
        // Who asks of a garden is turned away more seldom than told of another matter of it.
        let least = if usual == Kind::None { SURELY } else { PLAIN };
        let plain = if stands {
            share > OUTRIGHT && its < NEXT_TO_NEVER && kind != Kind::Record
        } else {
            share > least && its < SELDOM
        };
        let plain = plain && words >= ENOUGH;
        (usual != kind && plain && notes && !refused).then_some((usual, share))
    }
}

/// A kind with more than this share is plainly the usual one, and one below that is seldom said so (looked for on
/// messages that nothing was learned from: of 33 whose kind was changed by it 14 had been right, and 29 were then).
const PLAIN: f64 = 0.5;
const SELDOM: f64 = 0.2;

/// What is as usual as this for one kind and next to never said of another is of the first, though a rule that stands
/// says otherwise (looked for on 2 050 messages, none of them learned from: such rules were wrong in five of eleven, the
/// usual kind in none).
const OUTRIGHT: f64 = 0.9;
const NEXT_TO_NEVER: f64 = 0.05;

/// So much of a message that is none of ours.
const SURELY: f64 = 0.75;

/// Less than this of one that is ours, whatever words of other worlds it holds (looked for on eight sets of messages: all
/// that were none of ours had more than 0.6, most that were ours and taken for none had less than 0.05).
const NO_OTHER_WORLD: f64 = 0.08;

/// Fewer words than this lean somewhere by chance (judgement).
const ENOUGH: usize = 4;

/// How many of the nearest ways of asking are looked at.
const LOOKED_AT: usize = 40;

/// Decides between the kinds by the words of a message, and by how usual they are for each.
pub fn decide(index: &Index, words: &[String], habit: &Leaning, evidence: Evidence) -> Verdict {
    let mut near: BTreeMap<Kind, f64> = BTreeMap::new();
    for found in index.ways_of_asking(words, LOOKED_AT) {
        let nearest = near.entry(found.what).or_default();
        *nearest = nearest.max(found.score);
    }
    let mut scores: Vec<(Kind, f64, f64)> = habit
        .0
        .iter()
        .map(|&(kind, share)| {
            let nearness = near.get(&kind).copied().unwrap_or_default();
            (kind, share + NEAREST_COUNTS * nearness + leaning(kind, evidence), nearness)
        })
        .collect();
    scores.sort_by(|a, b| b.1.total_cmp(&a.1));
    let Some(&(kind, best, nearness)) = scores.first() else {
        return Verdict { kind: Kind::None, sureness: 0.0, perhaps: None, nearness: 0.0 };
    };
    let second = scores.get(1).map_or(0.0, |(_, score, _)| *score);
    let margin = (best - second).clamp(0.0, 1.0);
    let telling = words.iter().filter(|word| word.chars().any(char::is_alphabetic)).count().max(1) as f64;
    let unknown =
        words.iter().filter(|word| word.chars().any(char::is_alphabetic) && !index.knows(word)).count() as f64;
    let told = kind == Kind::Record && evidence.told && !evidence.asks;
    let described = kind == Kind::Trouble && (evidence.on_plant || evidence.trouble && evidence.crop);
    let of_others = kind == Kind::None && evidence.of_others;
    let sureness = sureness(margin, nearness, unknown / telling, told || of_others, described);
    let vague = |kind: &Kind| matches!(kind, Kind::None | Kind::Person | Kind::Care | Kind::Record);
    let perhaps = scores.iter().skip(1).map(|(kind, ..)| *kind).find(|kind| !vague(kind));
    Verdict { kind, sureness, perhaps, nearness }
}

/// How often a reading with these signs was right: a logistic curve first fitted to 330 labelled messages (the
/// development set and `tests/reading/messages.jsonl`, follow-ups left out), with a step for plain statements of
/// work and one for signs that were described. DEVELOPERS.md has the table of what it gave and what was right.
fn sureness(margin: f64, nearness: f64, unknown_share: f64, told: bool, described: bool) -> f64 {
    let step = if told { 1.2 } else { 0.0 } + if described { 2.0 } else { 0.0 };
    let sum = -0.6 + 3.6 * margin + 2.2 * nearness - 3.5 * unknown_share + step;
    (1.0 / (1.0 + libm::exp(-sum))).clamp(0.01, 0.99)
}

/// What the nearest single way of asking counts, against the leaning of all words.
const NEAREST_COUNTS: f64 = 0.5;

/// What the names and the grammar say for or against a kind, in units of nearness.
fn leaning(kind: Kind, evidence: Evidence) -> f64 {
    let asked = evidence.sprays == About::Asked || evidence.feeds == About::Asked;
    match kind {
        // Whoever asks what may be eaten after a spray must not be told when the crop is ripe.
        Kind::Spray if evidence.sprays == About::Asked => 0.60,
        Kind::Feed if evidence.feeds == About::Asked => 0.60,
        Kind::Spray if evidence.sprays == About::Named => 0.10,
        Kind::Feed if evidence.feeds == About::Named => 0.25,
        Kind::Record | Kind::Harvest if asked => -0.40,
        Kind::Seed | Kind::Space if evidence.sprays != About::Not || evidence.feeds != About::Not => -0.30,
        Kind::Harvest if evidence.started && evidence.picking => 0.90,
        Kind::Harvest if evidence.started => 0.30,
        Kind::Record | Kind::Sow if evidence.started => -0.25,
        Kind::Sow if evidence.month && !evidence.told && evidence.sizes + evidence.signs == 0 && !evidence.picking => {
            0.30
        }
        Kind::Shade if evidence.cut && !evidence.told => 0.50,
        Kind::Record if evidence.told && !evidence.asks => 0.45,
        Kind::Record if evidence.told => 0.0,
        // Who asks and tells of nothing done or seen has nothing to note.
        Kind::Record if evidence.asks => -0.70,
        Kind::Record => -0.35,
        _ if evidence.told && !evidence.asks => -0.10,
        Kind::Trouble if evidence.on_plant && evidence.signs > 1 => 0.35,
        Kind::Trouble if evidence.on_plant => 0.25,
        Kind::Trouble if evidence.trouble => 0.30,
        // What a box is built of does not hang on what will grow in it.
        Kind::Build if evidence.crop => -0.20,
        Kind::None if evidence.of_others => 1.0,
        // Growing words make chatter less likely, their absence more; strange words make it likelier.
        Kind::None if evidence.strange >= 0.5 && evidence.signs == 0 => {
            evidence.strange * if evidence.names + evidence.sizes == 0 { 1.0 } else { 0.3 }
        }
        Kind::None if evidence.names + evidence.sizes == 0 => 0.08,
        Kind::None => -0.08,
        _ => 0.0,
    }
}
