//! How far a message leans on the one before: an answer about a trouble, the same question of something else.

use super::leans::is_mark;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::knowledge::{DayWord, Kind, Point};
use crate::quantity::Unit;
use crate::script::{Language, Text, index_word, index_words_as, numbers};
use crate::understanding::follow_up::Says;
use crate::understanding::kind::Verdict;
use crate::understanding::quantities::Said;

/// A message that is as good as one of the ways of asking says all, however it begins.
const HAS_A_KIND_OF_ITS_OWN: f64 = 0.75;

/// A correction has at most so many tokens.
const CORRECTION: usize = 12;

/// A message of so few tokens without a subject leans on what was said before.
const SHORT: usize = 6;

impl Found {
    /// The reading of an answer to a question about a trouble: a sign that was offered or another, none of them,
    /// or not known. Anything longer is a message of its own.
    pub(super) fn answers_about_trouble(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        reading: &Reading,
        before: &Reading,
    ) -> Option<Reading> {
        /// An answer has at most so many tokens.
        const LONGEST: usize = 12;
        /// So sure a reading of another kind is a question of its own (judgement).
        const OTHER: f64 = 0.85;
        /// Less sure of its kind than this, what tells and asks nothing answers the question (judgement).
        const UNSURE: f64 = 0.8;
        /// A description has at least so many telling words (judgement).
        const LEAST_ALIKE: usize = 2;
        let says = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        // "At night": words of one of the signs that were asked about.
        let close = self.near_what_was_offered(text, reader, before);
        // "Yesterday only", "my maid told me": no matter of its own, and no sign either.
        let unsure = !self.asks && self.did.is_none() && reading.sureness < UNSURE;
        let adrift = (reading.kind == Kind::None && reading.sureness < OTHER || unsure)
            && !self.of_others()
            && text.tokens.len() <= SHORT
            && close.is_none();
        let none = says(Told::NoneOfThese) && self.signs.is_empty();
        // "No insects visible" denies one thing, not all that was asked about.
        let denies_one = none && close.is_none() && self.words_beside(text, &Told::NoneOfThese) > 1;
        // More of the same trouble that holds no sign: "since three days".
        let more = reading.kind == Kind::Trouble && self.signs.is_empty() && !self.asks && self.did.is_none();
        let unknown = says(Told::Point(Point::NotKnown)) || adrift || denies_one || more && close.is_none();
        let (yes, none) = (says(Told::Yes), none && !denies_one && close.is_none());
        let waits = before.kind == Kind::Trouble && before.asked > 0;
        let nth = self.nth().and_then(|place| before.offered.get(place - 1)).filter(|_| self.signs.is_empty());
        let named = nth.is_some() || !self.signs.is_empty() || !reading.crops.is_empty() || !reading.beds.is_empty();
        // What is seen on another plant, or asked about something else, is no answer.
        let other_plant = (!self.signs.is_empty() || self.asks)
            && !before.crops.is_empty()
            && !reading.crops.is_empty()
            && reading.crops.iter().all(|crop| !before.crops.contains(crop));
        let other_matter =
            self.asks && self.signs.is_empty() && reading.kind != Kind::Trouble && reading.sureness > OTHER;
        if other_plant || other_matter {
            return None;
        }
        if !waits || text.tokens.len() > LONGEST || !(named || yes || none || unknown || close.is_some()) {
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
        seen.extend(close.filter(|_| self.signs.is_empty()));
        now.denied.extend(self.denied.iter().filter(|sign| !before.denied.contains(sign)).cloned());
        if yes && seen.is_empty() && before.offered.len() == 1 {
            seen.clone_from(&before.offered);
        }
        for sign in seen {
            if !now.signs.contains(&sign) {
                now.signs.push(sign);
            }
        }
        // Few words are like a trouble by chance.
        let tells = !adrift && self.telling_words(text, reader).len() >= LEAST_ALIKE;
        for (trouble, share) in self.like.iter().filter(|_| tells) {
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

    /// The one sign among those asked about that has the telling words of a short answer in its name.
    fn near_what_was_offered(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<String> {
        let said = self.telling_words(text, reader);
        if said.is_empty() || text.tokens.len() > SHORT {
            return None;
        }
        let has_all = |id: &&String| {
            let Some(sign) = reader.known.signs.get(*id) else { return false };
            let of = |(language, names): (Language, &Vec<String>)| {
                let words: Vec<String> = names.iter().flat_map(|name| index_words_as(name, language)).collect();
                said.iter().all(|word| words.contains(word))
            };
            sign.names.each().into_iter().any(of)
        };
        let mut close = before.offered.iter().filter(has_all);
        let first = close.next()?;
        close.next().is_none().then(|| first.clone())
    }

    /// The words that tell something: neither empty nor everyday ones, no numbers, no days.
    fn telling_words(&self, text: &Text, reader: &Reader<'_>) -> Vec<String> {
        let dated = |at: usize| self.days.iter().any(|day| day.span.contains(&at));
        let timed = |at: usize| reader.known.words.spans.at(text, at).is_some();
        let counted = numbers(text);
        let silent = |at: &usize| {
            let empty = is_mark(text, *at) || self.is_empty_word(*at) || dated(*at) || timed(*at);
            empty || counted.iter().any(|number| number.span.contains(at))
        };
        let left = (0..text.tokens.len()).filter(|at| !silent(at)).filter_map(|at| text.tokens.get(at));
        left.filter(|token| !reader.known.ordinary.is(&token.normal))
            .filter_map(|token| index_word(token, text.language))
            .collect()
    }

    /// How many words stand beside those of a meaning, the empty ones left out.
    fn words_beside(&self, text: &Text, what: &Told) -> usize {
        let within = |at: usize| self.told.iter().any(|hit| hit.meaning == *what && hit.span.contains(&at));
        (0..text.tokens.len()).filter(|at| !within(*at) && !is_mark(text, *at) && !self.is_empty_word(*at)).count()
    }

    /// Whether the message says its kind, and what it is about.
    pub(super) fn says(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        before: &Reading,
        (kind, verdict): (Kind, Verdict),
    ) -> Says {
        let nearness = verdict.nearness;
        /// So few words of care are about what was spoken of.
        const FEW: usize = 4;
        /// So short a question that names nothing is about what was spoken of.
        const UNNAMED: usize = 9;
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
        if self.keeps_to(text, reader, before, verdict) {
            return Says::NoKind;
        }
        // "What is due" needs no subject: nothing of what was said before is asked again.
        let ties = self.begins_with(text, &Told::FollowUp);
        let near = if self.days.is_empty() { HAS_A_KIND } else { HAS_A_KIND_OF_ITS_OWN };
        if kind == Kind::Due && before.kind != Kind::Due && !ties && self.names.is_empty() && nearness >= near {
            return Says::All;
        }
        let open = (0..text.tokens.len()).filter(|position| !covered(*position)).count();
        // "For how many weeks does it stay up": of what was spoken of, and near to nothing else.
        let of_it = self.told.iter().any(|hit| hit.meaning == Told::Pronoun) && self.did.is_none();
        let computed = !matches!(before.kind, Kind::None | Kind::Person | Kind::Care | Kind::Record | Kind::Trouble);
        if of_it && bare && computed && self.days.is_empty() && nearness < HAS_A_KIND && kind == Kind::Due {
            return Says::NoKind;
        }
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
        // "I only have 75 %" after a net was spoken of.
        let percent = |said: &Said| said.written.unit == Unit::Percent;
        let share = self.names.is_empty() && self.quantities.said.iter().any(percent);
        if before.kind == Kind::Shade && share && text.tokens.len() <= CORRECTION && nearness < HAS_A_KIND_OF_ITS_OWN {
            return Says::NoKind;
        }
        // "Ok thanks" says nothing and asks nothing.
        let says_something = self.told.iter().any(|hit| !matches!(hit.meaning, Told::Filler | Told::FollowUp));
        let idle = bare && self.days.is_empty() && !says_something && !self.asks;
        if open == 0 && !idle || (ties && nearness < HAS_A_KIND && !self.names.is_empty()) {
            return Says::NoKind;
        }
        // A size is enough where no crop is needed.
        let measured = !(self.quantities.dimensions.is_empty() && self.quantities.bare.is_empty());
        let sized = matches!(kind, Kind::Mix | Kind::Build | Kind::Load) && measured;
        let subject = sized || self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::OwnBed(_)));
        // The same sort of question again, with nothing it is about, is about the same.
        let all = self.told.iter().any(|hit| hit.meaning == Told::All);
        let same = kind == before.kind && kind != Kind::Sow && !all;
        let ends = self.told.iter().any(|hit| hit.meaning == Told::FollowUp && hit.span.end == text.tokens.len());
        let leans = same || ends || self.told.iter().any(|hit| hit.meaning == Told::Pronoun);
        // "Removed it on Sunday": of the one bed spoken of.
        let of_that = kind == Kind::Record && leans && before.beds.len() == 1 && text.tokens.len() <= CORRECTION;
        let telling = (0..text.tokens.len()).filter(|at| !self.is_empty_word(*at)).count();
        // "And stake or cage?", "how do I get rid of them".
        let care = kind == Kind::Care && (ties || leans || telling <= FEW) && !all;
        let needs_subject =
            of_that || care || !matches!(kind, Kind::None | Kind::Person | Kind::Care | Kind::Due | Kind::Record);
        // Seed and room for nothing named, in a size that is: of what was spoken of.
        let of_what = matches!(kind, Kind::Seed | Kind::Space | Kind::Water) && measured && !before.crops.is_empty();
        if needs_subject && !subject && (ties || leans || of_what || telling <= UNNAMED) {
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
