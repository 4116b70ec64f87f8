//! What a message that follows another is usual for: by its own words, by the kind of the one before and by the rules,
//! weighed against one another.

use super::follows::{Follows, asks_weight_of_it};
use super::{Found, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
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
/// What is asked of the work that was told: after a feed, of feeding.
const OF_THE_WORK: f64 = 1.5;
/// So many words are few, and so many are many.
const FEW: usize = 4;
const MANY: usize = 9;
/// No kind is rarer than this.
const RAREST: f64 = 1e-4;
/// So much of a message that is told and of the roof or for a person (judgement: what may be dangerous is heard sooner).
const SPEAKS_UP: f64 = 0.6;
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
        let words = text.tokens.iter().filter(|token| token.is_word()).count();
        // The wait after a spray that was told stands.
        let waits = follows.kind == Some(Kind::Spray) && before.did == Some(JobKind::Spray);
        if waits || asks_weight_of_it(text, before) || self.is_left_to_the_rules(text, reader, before, keeps, words) {
            return follows;
        }
        // A crack in the slab, water that runs into the flat below, someone who is to call: never passed over for what was
        // spoken of.
        let sized = !self.quantities.said.is_empty() || !self.quantities.dimensions.is_empty();
        let speaks_up = |kind: Kind| {
            !(kind == Kind::Load && sized) && own.0.iter().any(|(of, share)| *of == kind && *share >= SPEAKS_UP)
        };
        let up = [Kind::Load, Kind::Person].into_iter().find(|kind| speaks_up(*kind) && ruled != *kind);
        if let Some(up) = up.filter(|_| !self.asks && self.did.is_none()) {
            return Follows { kind: Some(up), says: Says::All };
        }
        // "After six in the evening is better for me": when someone is to call.
        if before.kind == Kind::Person && !self.asks && self.names_no_matter() {
            return Follows { kind: None, says: Says::NoKind };
        }
        let work = self.did.is_some() || self.saw().is_some();
        let Some((most, share)) = self.shares_after(before, ruled, words, own) else { return follows };
        if most == ruled || share < PLAIN {
            return follows;
        }
        match most {
            Kind::None => Follows { kind: Some(Kind::None), says: Says::All },
            // Work that it tells itself is noted as it stands.
            Kind::Record if work => Follows { kind: Some(most), says: self.left_out_of(text, reader, before, most) },
            stays if stays == before.kind => Follows { kind: None, says: Says::NoKind },
            other => Follows { kind: Some(other), says: self.left_out_of(text, reader, before, other) },
        }
    }

    /// What other people have, what is corrected, and what the rules say of the few words that are there.
    fn is_left_to_the_rules(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        before: &Reading,
        keeps: bool,
        words: usize,
    ) -> bool {
        let undone = self.told.iter().any(|hit| matches!(hit.meaning, Told::Undo | Told::NotOurs));
        // "Not water, spacing" says itself what is meant.
        let denies = self.says_not() && words <= FEW;
        // "After the rains set in?", "the other one", and names alone: the same is asked.
        let season = self.season().is_some() && !self.names_crop();
        let same = self.told.iter().any(|hit| matches!(hit.meaning, Told::OtherOne | Told::Same | Told::Condition));
        let names_alone = self.did.is_none() && self.open_words(text, reader).is_empty();
        // "Just spraying" after what is due: that of it.
        let of_due = before.kind == Kind::Due && words <= FEW && !self.asks && self.names.is_empty();
        let keeps = keeps && (season || same || names_alone || of_due);
        self.of_others() || self.corrects(text) || undone || denies || keeps || self.says_point(Point::SowingDepth)
    }

    /// No plant, bed, stuff, trouble or work.
    fn names_no_matter(&self) -> bool {
        self.names.is_empty() && self.signs.is_empty() && self.topic_words.is_empty() && self.did.is_none()
    }

    /// The likeliest kind, and its share.
    fn shares_after(&self, before: &Reading, ruled: Kind, words: usize, own: &Leaning) -> Option<(Kind, f64)> {
        let count = |holds: bool, weight: f64| if holds { weight } else { 0.0 };
        let stays =
            STAYS + count(words <= FEW, STAYS_SHORT) + count(words >= MANY, STAYS_LONG) + count(self.asks, STAYS_ASKED);
        let supposed = self.told.iter().any(|hit| hit.meaning == Told::Condition);
        let worked = before.did.filter(|_| before.kind == Kind::Record && (self.asks || supposed)).and_then(asked_of);
        let score = |kind: Kind, share: f64| {
            OWN_WORDS * libm::log(share.max(RAREST))
                + count(kind == before.kind, stays)
                + count(kind == ruled, RULED)
                + count(kind == Kind::None, NO_MATTER)
                + count(kind == Kind::Record && before.kind == Kind::Record && !self.asks, WORK_GOES_ON)
                + count(worked == Some(kind), OF_THE_WORK)
        };
        let weighed: Vec<(Kind, f64)> =
            own.0.iter().map(|&(kind, share)| (kind, libm::exp(score(kind, share)))).collect();
        let all: f64 = weighed.iter().map(|(_, weight)| weight).sum();
        let (kind, weight) = weighed.into_iter().max_by(|a, b| a.1.total_cmp(&b.1))?;
        Some((kind, weight / all))
    }
}

/// What kind of question is asked of work like this.
const fn asked_of(job: JobKind) -> Option<Kind> {
    Some(match job {
        JobKind::Water => Kind::Water,
        JobKind::Feed => Kind::Feed,
        JobKind::Spray => Kind::Spray,
        JobKind::Pick => Kind::Harvest,
        JobKind::Net => Kind::Shade,
        JobKind::Sow | JobKind::Plant | JobKind::Prune => Kind::Care,
        JobKind::Mix | JobKind::TopUp => Kind::Mix,
        _ => return None,
    })
}
