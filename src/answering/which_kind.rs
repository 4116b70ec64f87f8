//! What is asked is not sure: the two likeliest things are offered, before a person is troubled.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use super::{record, trouble};
use crate::knowledge::Kind;
use crate::understanding::Reading;

/// "How much water, or what feed?"; none where one of the two is nothing that can be asked so.
pub fn ask(reading: &Reading) -> Option<Answer> {
    let first = key(reading.kind)?;
    // Of one thing alone there is nothing to choose.
    let second = key(reading.perhaps.filter(|perhaps| *perhaps != reading.kind)?)?;
    let choice = |kind| Line::new("choice-kind").with("kind", Said::Key(kind));
    let said = |kind| Said::Line(Box::new(choice(kind)));
    let question = Line::new("ask-which-kind").with("first", said(first)).with("second", said(second));
    let choices = vec![choice(first), choice(second), Line::new("choice-person")];
    Some(Answer { offered_kinds: offered(reading), ..Answer::ask(question, choices) })
}

/// What a message is about that leaves it unsaid.
pub fn of_what(reading: &Reading, facts: &Facts<'_>) -> Answer {
    match reading.kind {
        Kind::Record => record::what_was_done(reading, facts),
        Kind::Trouble => trouble::answer(reading, facts),
        _ => ask(reading).unwrap_or_else(|| Answer::ask(Line::new("ask-of-what"), vec![Line::new("choice-person")])),
    }
}

/// The kinds offered, in their order.
fn offered(reading: &Reading) -> Vec<Kind> {
    std::iter::once(reading.kind).chain(reading.perhaps).collect()
}

const fn key(kind: Kind) -> Option<&'static str> {
    Some(match kind {
        Kind::Water => "water",
        Kind::Harvest => "harvest",
        Kind::Sow => "sow",
        Kind::Shade => "shade",
        Kind::Spray => "spray",
        Kind::Feed => "feed",
        Kind::Mix => "mix",
        Kind::Build => "build",
        Kind::Load => "load",
        Kind::Space => "space",
        Kind::Seed => "seed",
        Kind::Trouble => "trouble",
        Kind::Due => "due",
        Kind::Care | Kind::Record | Kind::Person | Kind::None => return None,
    })
}
