//! "Let me talk to someone"; and what can't be worked out here.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use crate::knowledge::Kind;

/// A person of the crew is asked for.
pub fn person(_facts: &Facts<'_>) -> Answer {
    Answer::hand_over(Line::new("handed-over-person"))
}

/// A kind of question that no sum here answers: better left to the crew than guessed.
pub fn not_computed(kind: Kind) -> Answer {
    let key = match kind {
        Kind::Sow => "sow",
        Kind::Shade => "shade",
        Kind::Spray => "spray",
        Kind::Feed => "feed",
        Kind::Load => "load",
        Kind::Space => "space",
        Kind::Seed => "seed",
        Kind::Trouble => "trouble",
        Kind::Due => "due",
        _ => "other",
    };
    let mut answer = Answer::hand_over(Line::new("handed-over-kind").with("kind", Said::Key(key)));
    match kind {
        Kind::Load => answer.cautions.push(Line::new("caution-load")),
        Kind::Spray => answer.cautions.push(Line::new("caution-spray")),
        _ => {}
    }
    answer
}

/// The knowledge base has no good answer.
pub fn not_known() -> Answer {
    Answer::hand_over(Line::new("handed-over-unknown"))
}
