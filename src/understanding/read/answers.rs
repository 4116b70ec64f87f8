//! An answer to a question about a trouble: a sign that was offered or another, none of them, or not known.

use super::leans::is_mark;
use super::{Found, Reader, Reading, Told};
use crate::knowledge::{Kind, Point};
use crate::script::{Language, Text, index_word, index_words_as, numbers};

/// An answer of so few tokens holds nothing else.
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
        let other_plant = (!self.signs.is_empty() || self.asks || self.did.is_some())
            && !before.crops.is_empty()
            && !reading.crops.is_empty()
            && reading.crops.iter().all(|crop| !before.crops.contains(crop));
        let other_matter =
            self.asks && self.signs.is_empty() && reading.kind != Kind::Trouble && reading.sureness > OTHER;
        // "Put spinach in the east box on Sunday": work of a named bed, and nothing of what is seen.
        let work = reading.kind == Kind::Record && self.did.is_some() && reading.beds_named && self.signs.is_empty();
        // A crack in the roof, someone who is to come: told, and plainly no sign.
        let elsewhere = matches!(reading.kind, Kind::Load | Kind::Person) && reading.sureness > OTHER && !none && !yes;
        let other_matter = other_matter || elsewhere && self.signs.is_empty();
        if other_plant || other_matter || work && !self.asks {
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
    pub(super) fn telling_words(&self, text: &Text, reader: &Reader<'_>) -> Vec<String> {
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
}
