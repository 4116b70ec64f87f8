//! How far a message leans on the one before: an answer about a trouble, the same question of something else.

use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::knowledge::{DayWord, Kind, Point};
use crate::script::Text;
use crate::understanding::follow_up::Says;

/// A message that is as good as one of the ways of asking says all, however it begins.
const HAS_A_KIND_OF_ITS_OWN: f64 = 0.75;

/// A correction has at most so many tokens.
const CORRECTION: usize = 12;

/// A message of so few tokens without a subject leans on what was said before.
const SHORT: usize = 6;

impl Found {
    /// The reading of an answer to a question about a trouble: a sign that was offered or another, none of them,
    /// or not known. Anything longer is a message of its own.
    pub(super) fn answers_about_trouble(&self, text: &Text, reading: &Reading, before: &Reading) -> Option<Reading> {
        /// An answer has at most so many tokens.
        const LONGEST: usize = 12;
        /// So sure a reading of another kind is a question of its own (judgement).
        const OTHER: f64 = 0.85;
        let says = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        let unknown = says(Told::Point(Point::NotKnown));
        let (yes, none) = (says(Told::Yes), says(Told::NoneOfThese) && self.signs.is_empty());
        let waits = before.kind == Kind::Trouble && before.asked > 0;
        let nth = self.nth().and_then(|place| before.offered.get(place - 1)).filter(|_| self.signs.is_empty());
        let named = nth.is_some() || !self.signs.is_empty() || !reading.crops.is_empty() || !reading.beds.is_empty();
        // What is seen on another plant, or asked about something else, is no answer.
        let other_plant = !self.signs.is_empty()
            && !before.crops.is_empty()
            && !reading.crops.is_empty()
            && reading.crops.iter().all(|crop| !before.crops.contains(crop));
        let other_matter =
            self.asks && self.signs.is_empty() && reading.kind != Kind::Trouble && reading.sureness > OTHER;
        if other_plant || other_matter {
            return None;
        }
        if !waits || text.tokens.len() > LONGEST || !(named || yes || none || unknown) {
            return None;
        }
        let mut now = before.clone();
        now.language = reading.language;
        now.devanagari_digits = reading.devanagari_digits;
        now.follow_up = true;
        now.why = reading.why;
        now.none_of_these = none && !before.offered.is_empty();
        if !reading.crops.is_empty() {
            now.crops.clone_from(&reading.crops);
            now.beds.clone_from(&reading.beds);
            now.beds_named = reading.beds_named;
        } else if !reading.beds.is_empty() {
            now.beds.clone_from(&reading.beds);
            now.beds_named = reading.beds_named;
        }
        let mut seen = self.signs.clone();
        seen.extend(nth.cloned());
        if yes && seen.is_empty() && before.offered.len() == 1 {
            seen.clone_from(&before.offered);
        }
        for sign in seen {
            if !now.signs.contains(&sign) {
                now.signs.push(sign);
            }
        }
        for (trouble, share) in &self.like {
            match now.like.iter_mut().find(|(known, _)| known == trouble) {
                Some(known) => known.1 = known.1.max(*share),
                None => now.like.push((trouble.clone(), *share)),
            }
        }
        if !unknown {
            let passed = before.offered.iter().filter(|sign| !now.signs.contains(sign)).cloned();
            now.denied.extend(passed.collect::<Vec<_>>());
        }
        now.offered.clear();
        Some(now)
    }

    /// Whether the message says its kind, and what it is about.
    pub(super) fn says(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        before: &Reading,
        (kind, nearness): (Kind, f64),
    ) -> Says {
        /// A message nearer than this to a way of asking has a kind of its own.
        const HAS_A_KIND: f64 = 0.45;
        // "How many days?" asks on; a question with a thing in it has a kind of its own.
        let bare = self.names.is_empty() && self.quantities.said.is_empty() && self.quantities.dimensions.is_empty();
        let covered = |position: usize| {
            let named = self.names.iter().any(|hit| hit.span.contains(&position));
            let sized = self.quantities.said.iter().any(|said| said.span.contains(&position))
                || self.quantities.dimensions.iter().any(|found| found.span.contains(&position));
            let dated = self.days.iter().any(|day| day.span.contains(&position))
                || self.is_of_a_day(text, position)
                || matches!(reader.known.words.days.at(text, position), Some((DayWord::Month(_), _)));
            let empty = self.told.iter().any(|hit| {
                let steers = matches!(
                    hit.meaning,
                    Told::Filler
                        | Told::FollowUp
                        | Told::Why
                        | Told::Same
                        | Told::Correction
                        | Told::OtherOne
                        | Told::All
                        | Told::Yes
                        | Told::Season(_)
                );
                let asks = matches!(hit.meaning, Told::Question | Told::Point(Point::Time | Point::Strength));
                let product = matches!(hit.meaning, Told::Point(point) if point.tells_product());
                hit.span.contains(&position) && (steers || product || bare && asks)
            });
            let mark = text.tokens.get(position).is_none_or(|token| !token.normal.chars().any(char::is_alphanumeric));
            named || sized || dated || empty || mark
        };
        // What is not ours stays so, however it begins.
        if self.of_others() {
            return Says::All;
        }
        // "What is due" needs no subject: nothing of what was said before is asked again.
        let ties = self.begins_with(text, &Told::FollowUp);
        let near = if self.days.is_empty() { HAS_A_KIND } else { HAS_A_KIND_OF_ITS_OWN };
        if kind == Kind::Due && before.kind != Kind::Due && !ties && self.names.is_empty() && nearness >= near {
            return Says::All;
        }
        let open = (0..text.tokens.len()).filter(|position| !covered(*position)).count();
        // "What about …" keeps the kind, whatever follows it.
        let keeps = self.told.iter().any(|hit| {
            hit.meaning == Told::FollowUp
                && hit.span.start == 0
                && hit.span.len() > 1
                && nearness < HAS_A_KIND_OF_ITS_OWN
        });
        if keeps || self.changes_only(text, reader, before, nearness) {
            return Says::NoKind;
        }
        let sized_or_named = !bare || !self.days.is_empty();
        // "No, 6 ft x 3 ft", "and if only 8 inches deep?": what was asked before, of something else.
        let changes = self.corrects() && text.tokens.len() <= CORRECTION && sized_or_named && self.did.is_none();
        let other_size =
            ties && self.names.is_empty() && !self.quantities.dimensions.is_empty() && nearness < HAS_A_KIND;
        if (changes && !self.asks || other_size) && before.kind != Kind::Record {
            return Says::NoKind;
        }
        // What is in a bottle is only told in answer to a question.
        if text.tokens.len() <= SHORT && self.points().any(Point::tells_product) {
            return Says::NoKind;
        }
        // "Ok thanks" says nothing and asks nothing.
        let says_something = self.told.iter().any(|hit| !matches!(hit.meaning, Told::Filler | Told::FollowUp));
        let idle = bare && self.days.is_empty() && !says_something && !self.asks;
        if open == 0 && !idle || (ties && nearness < HAS_A_KIND && !self.names.is_empty()) {
            return Says::NoKind;
        }
        // A size is enough where no crop is needed.
        let measured = !self.quantities.dimensions.is_empty();
        let sized = matches!(kind, Kind::Mix | Kind::Build | Kind::Load) && measured;
        let subject = sized || self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::OwnBed(_)));
        // The same sort of question again, with nothing it is about, is about the same.
        let all = self.told.iter().any(|hit| hit.meaning == Told::All);
        let same = kind == before.kind && kind != Kind::Sow && !all;
        let ends = self.told.iter().any(|hit| hit.meaning == Told::FollowUp && hit.span.end == text.tokens.len());
        let leans = same || ends || self.told.iter().any(|hit| hit.meaning == Told::Pronoun);
        // "Removed it on Sunday": of the one bed spoken of.
        let of_that = kind == Kind::Record && leans && before.beds.len() == 1 && text.tokens.len() <= CORRECTION;
        let needs_subject =
            of_that || !matches!(kind, Kind::None | Kind::Person | Kind::Care | Kind::Due | Kind::Record);
        // Seed and room for nothing named, in a size that is: of what was spoken of.
        let of_what = matches!(kind, Kind::Seed | Kind::Space | Kind::Water) && measured && !before.crops.is_empty();
        let telling = (0..text.tokens.len()).filter(|at| !self.is_empty_word(*at)).count();
        if needs_subject && !subject && (ties || leans || of_what || telling <= SHORT) {
            return Says::NoSubject;
        }
        let inside = self.told.iter().any(|hit| hit.meaning == Told::Inside);
        let placed = measured || self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        if needs_subject && inside && !placed { Says::NoPlace } else { Says::All }
    }

    /// "On" of "on Friday", "the day after".
    fn is_of_a_day(&self, text: &Text, position: usize) -> bool {
        const BEFORE: [&str; 3] = ["on", "by", "for"];
        let after = |hit: &Hit<Told>| hit.meaning == Told::DayAfter && hit.span.contains(&position);
        let before = BEFORE.contains(&text.normal(position));
        before && self.days.iter().any(|day| day.span.start == position + 1) || self.told.iter().any(after)
    }
}
