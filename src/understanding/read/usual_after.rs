//! What a message that follows another is usual for: by its own words, by the kind of the one before and by the rules,
//! weighed against one another.

use super::follows::Follows;
use super::{Found, Reader, Reading, Told};
use crate::knowledge::Kind;
use crate::script::Text;
use crate::understanding::follow_up::Says;
use crate::understanding::kind::Leaning;

/// The weights of a logistic regression over the kinds, fitted to the 1 003 messages of `tests/reading/follow-ups.jsonl`
/// that no earlier step answers (invented pairs of messages), and rounded. Of 400 messages beside them, whose writers
/// knew neither, 30 got their kind by it and 3 lost it.
const OWN_WORDS: f64 = 1.15;
/// The kind of the message before.
const STAYS: f64 = 3.9;
/// … in few words; in many, which are a remark on what was answered; in a question.
const STAYS_SHORT: f64 = 1.1;
const STAYS_LONG: f64 = 0.9;
const STAYS_ASKED: f64 = -2.0;
/// The kind that the rules say.
const RULED: f64 = 0.75;
const NO_MATTER: f64 = -2.0;
/// What is told after work was told.
const WORK_GOES_ON: f64 = 0.4;
/// So many words are few, and so many are many.
const FEW: usize = 4;
const MANY: usize = 9;
/// No kind is rarer than this.
const RAREST: f64 = 1e-4;
/// A kind with more than this share is taken, whatever the rules say.
const PLAIN: f64 = 0.65;

impl Found {
    /// What follows as its words and what was said before are usual for, where that is plain and the rules say another
    /// kind.
    pub(super) fn usual_after(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        (kind, before): (Kind, &Reading),
        follows: Follows,
        own: &Leaning,
    ) -> Follows {
        let keeps = follows.kind.is_none() && follows.says == Says::NoKind;
        let ruled = if keeps { before.kind } else { follows.kind.unwrap_or(kind) };
        let other = self.of_others()
            || self.corrects(text)
            || self.told.iter().any(|hit| matches!(hit.meaning, Told::Undo | Told::NotOurs));
        let words = text.tokens.iter().filter(|token| token.is_word()).count();
        let Some((most, share)) = self.shares_after(before.kind, ruled, words, own) else { return follows };
        if most == ruled || share < PLAIN || other {
            return follows;
        }
        match most {
            Kind::None => Follows { kind: Some(Kind::None), says: Says::All },
            stays if stays == before.kind => Follows { kind: None, says: Says::NoKind },
            other => Follows { kind: Some(other), says: self.left_out_of(text, reader, before, other) },
        }
    }

    /// The likeliest kind, and its share.
    fn shares_after(&self, before: Kind, ruled: Kind, words: usize, own: &Leaning) -> Option<(Kind, f64)> {
        let count = |holds: bool, weight: f64| if holds { weight } else { 0.0 };
        let stays =
            STAYS + count(words <= FEW, STAYS_SHORT) + count(words >= MANY, STAYS_LONG) + count(self.asks, STAYS_ASKED);
        let score = |kind: Kind, share: f64| {
            OWN_WORDS * libm::log(share.max(RAREST))
                + count(kind == before, stays)
                + count(kind == ruled, RULED)
                + count(kind == Kind::None, NO_MATTER)
                + count(kind == Kind::Record && before == Kind::Record && !self.asks, WORK_GOES_ON)
        };
        let weighed: Vec<(Kind, f64)> =
            own.0.iter().map(|&(kind, share)| (kind, libm::exp(score(kind, share)))).collect();
        let all: f64 = weighed.iter().map(|(_, weight)| weight).sum();
        let (kind, weight) = weighed.into_iter().max_by(|a, b| a.1.total_cmp(&b.1))?;
        Some((kind, weight / all))
    }
}
