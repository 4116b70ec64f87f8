//! Days told by another day, or by what is to happen on them.

use super::{DayFound, Reader, day_number, shifted};
use crate::script::Token;
use crate::understanding::tense::Tense;
use chrono::{Datelike, Days, NaiveDate};
use std::ops::Range;

impl Reader<'_> {
    /// "Garlic on Wednesday, onion the day after", "uske agle din": counted from the day named before.
    pub(super) fn day_beside(&self, at: usize, before: Option<&DayFound>) -> Option<DayFound> {
        const AFTER: [&[&str]; 9] = [
            &["the", "day", "after"],
            &["the", "next", "day"],
            &["next", "day"],
            &["following", "day"],
            &["agle", "din"],
            &["agle", "hi", "din"],
            &["dusre", "din"],
            &["अगले", "दिन"],
            &["दूसरे", "दिन"],
        ];
        const BEFORE: [&[&str]; 3] =
            [&["the", "day", "before", "that"], &["usse", "pehle", "din"], &["the", "day", "before"]];
        let before = before?;
        let says = |phrase: &&&[&str]| phrase.iter().enumerate().all(|(on, word)| self.text.normal(at + on) == *word);
        // "The day after tomorrow" is counted from today, "the day after sowing" from no day.
        let ends = |end: usize| self.text.tokens.get(end).is_none_or(|next| !next.is_word() || self.is_a_joint(end));
        let said = |phrases: &[&'static [&'static str]]| {
            let length = phrases.iter().find(says).map(|phrase| phrase.len())?;
            (ends(at + length) || self.text.language != crate::script::Language::En).then_some(at..at + length)
        };
        let counted = |span: Range<usize>, day: Option<NaiveDate>| Some(Self::single(day?, span));
        // "On 23 May instead of 22": of the same month.
        let word = |back: usize| at.checked_sub(back).map_or("", |place| self.text.normal(place));
        let instead = word(1) == "of" && word(2) == "instead";
        if let Some(number) = self.number_at(at).filter(|_| instead) {
            let end = self.after_ordinal(number.span.end);
            let ends = self.text.tokens.get(end).is_none_or(|next| !next.is_word());
            let day = day_number(number.value).filter(|_| ends)?;
            return counted(at..end, before.first.with_day(day));
        }
        // "For the 23rd and 24th": both of that month.
        let joined = at == before.span.end + 1 && matches!(word(1), "and" | "&" | "or") && before.first == before.last;
        if let Some(number) = self.number_at(at).filter(|_| joined) {
            let end = self.after_ordinal(number.span.end);
            let day = day_number(number.value).and_then(|day| before.first.with_day(day));
            if let Some(day) = day.filter(|day| end > number.span.end && *day > before.first) {
                return counted(at..end, Some(day));
            }
        }
        if let Some(run_out) = self.end_of_run(at, before) {
            return Some(run_out);
        }
        match (said(&AFTER), said(&BEFORE)) {
            (Some(span), _) => counted(span, before.last.checked_add_days(Days::new(1))),
            (None, Some(span)) => counted(span, before.first.checked_sub_days(Days::new(1))),
            (None, None) => None,
        }
    }

    /// "Kal se 24 tak", "from tomorrow to the 24th": a run that ends on that day of the month.
    fn end_of_run(&self, at: usize, before: &DayFound) -> Option<DayFound> {
        let number = self.number_at(at)?;
        let day = day_number(number.value)?;
        let the = usize::from(at > 0 && self.text.normal(at - 1) == "the");
        let runs = [at, at - the].into_iter().any(|start| self.runs_through(before.span.end, start));
        if before.first != before.last || !runs {
            return None;
        }
        let end = self.after_ordinal(number.span.end);
        let from = before.span.start.checked_sub(1).is_some_and(|from| self.text.normal(from) == "from");
        let counted = self.words.spans.at(self.text, end).is_some()
            || matches!(self.text.normal(end), "am" | "pm" | "baje" | ":" | "oclock");
        let until = matches!(self.text.normal(end), "tak" | "तक");
        if counted || !(until || end > number.span.end || from) {
            return None;
        }
        let months = (0..=2).filter_map(|months| shifted(before.first.with_day(1)?, months)?.with_day(day));
        let last = months.into_iter().find(|last| *last > before.first)?;
        Some(Self::single(last, at..end + usize::from(until)))
    }

    /// "Between Monday and Thursday", "between 11 and 17 May": a run from the one to the other.
    pub(super) fn lies_between(&self, first: &Range<usize>, second: &Range<usize>) -> bool {
        let and = second.start == first.end + 1 && self.text.normal(first.end) == "and";
        and && self.stands_after_between(first.start)
    }

    pub(super) fn stands_after_between(&self, at: usize) -> bool {
        let word = |back: usize| at.checked_sub(back).map_or("", |place| self.text.normal(place));
        word(1) == "between" || word(1) == "the" && word(2) == "between"
    }

    /// "Guests on Saturday", "budh ko mehman": what people are asked to has not been, unless a verb says that it was; and
    /// "it's been up from 3 April" has.
    pub(super) fn expected(&self, day: &Range<usize>) -> Option<Tense> {
        const EXPECTED: [&str; 24] = [
            "lunch",
            "dinner",
            "function",
            "birthday",
            "ceremony",
            "जन्मदिन",
            "guest",
            "guests",
            "party",
            "wedding",
            "puja",
            "pooja",
            "visitors",
            "inspection",
            "mehman",
            "mehmaan",
            "shaadi",
            "shadi",
            "daawat",
            "dawat",
            "मेहमान",
            "शादी",
            "पूजा",
            "दावत",
        ];
        let ends = |at: &usize| matches!(self.text.normal(*at), "," | "." | "?" | "!" | ";" | ":" | "।");
        let from = (0..day.start).rev().find(ends).map_or(0, |at| at + 1);
        let to = (day.end..self.text.tokens.len()).find(ends).unwrap_or(self.text.tokens.len());
        let says = |words: &[&str]| (from..to).any(|at| words.contains(&self.text.normal(at)));
        let done = (from..to).any(|at| self.words.is_done(self.text, at));
        if says(&EXPECTED) && !done {
            return Some(Tense::ToCome);
        }
        // "Picking on Sunday, fine or no".
        const FINE: [&str; 12] =
            ["fine", "ok", "okay", "safe", "possible", "theek", "thik", "chalega", "sahi", "ठीक", "चलेगा", "सही"];
        let asked = self.text.tokens.iter().any(|token| token.normal == "?" || token.normal == "no");
        if says(&FINE) && !done && asked {
            return Some(Tense::ToCome);
        }
        // "Budhvar se patte peele hain": since then. Who goes away from a day goes then.
        let se = matches!(self.text.normal(day.end), "se" | "से");
        let is =
            to.checked_sub(1).is_some_and(|last| matches!(self.text.normal(last), "hai" | "hain" | "h" | "है" | "हैं"));
        const ABOUT_TO: [&str; 6] = ["wala", "wali", "wale", "वाला", "वाली", "वाले"];
        let to_come = (from..to).any(|at| self.words.is_to_come(self.text, at)) || self.goes_away(day.end);
        let to_come = to_come || says(&ABOUT_TO);
        // "Kal se patton mein lakeerein": what shows since a day is told without a verb.
        let tells = (from..to).any(|at| self.words.is_done(self.text, at));
        const PARTS: [&str; 21] = [
            "patta",
            "patte",
            "patti",
            "patto",
            "patton",
            "pattiyan",
            "pattiyon",
            "phool",
            "phul",
            "phal",
            "fal",
            "tana",
            "tane",
            "पत्ता",
            "पत्ते",
            "पत्तों",
            "पत्तियाँ",
            "पत्तियों",
            "फूल",
            "फल",
            "तने",
        ];
        let shows = se && !tells && !to_come && says(&PARTS);
        if se && self.goes_away(day.end) && !tells {
            return Some(Tense::ToCome);
        }
        if shows || se && is && !to_come {
            return Some(Tense::Done);
        }
        let since = day.start.checked_sub(1).is_some_and(|from| self.text.normal(from) == "from");
        (since && (from..day.start).any(|at| self.text.normal(at) == "been")).then_some(Tense::Done)
    }

    /// "29 ko mitti bharunga", "gamle badle gaye 13 ko": a day of the month by the verb that stands after it, or before it
    /// at the end.
    pub(super) fn has_its_verb_apart(&self, day: u32, end: usize) -> bool {
        /// Fewer may be so many plants.
        const NO_COUNT: u32 = 10;
        const APART: usize = 4;
        let ends =
            |at: usize| self.text.tokens.get(at).is_none_or(|mark: &Token| !mark.is_word() && mark.number.is_none());
        let to_come =
            (end + 1..=end + APART).take_while(|at| !ends(*at)).any(|at| self.words.is_to_come(self.text, at));
        day >= NO_COUNT && (to_come || self.past && ends(end + 1))
    }
}
