//! Days named in a text.

mod beside;
mod spans;
mod weeks;

use super::calendar::{self, numeric_at, whole_at};
use super::tense::{Tense, bound, chosen, tense};
use crate::knowledge::{DayWord, Sign, TimeUnit, Words};
use crate::script::{Language, Number, Text, Token, numbers};
use chrono::{Datelike, Days, Months, NaiveDate, TimeDelta, Weekday};
use std::ops::Range;

/// A day, or a run of days, named in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayFound {
    pub first: NaiveDate,
    /// The same as `first` for a single day.
    pub last: NaiveDate,
    /// Range of token indices.
    pub span: Range<usize>,
}

/// Reads all days named in a text, given today's date; `past` says that a job done is told, which
/// decides where the text itself does not (a bare weekday, `kal`, a day without a year).
///
/// A week, a month or a season names no day. A day and month without a year is the last such day
/// when something done is told, else the nearest.
#[must_use]
pub fn read(text: &Text, words: &Words, today: NaiveDate, past: bool) -> Vec<DayFound> {
    let numbers = numbers(text);
    let reader = Reader { text, words, today, past, numbers: &numbers };
    let mut found: Vec<DayFound> = Vec::new();
    let mut at = 0;
    while at < text.tokens.len() {
        let Some(day) = reader.day_beside(at, found.last()).or_else(|| reader.day_at(at)) else {
            at += 1;
            continue;
        };
        let day = reader.after_the_one_before(reader.with_length(day), found.last());
        at = day.span.end.max(at + 1);
        match found.last_mut() {
            Some(before)
                if reader.runs_through(before.span.end, day.span.start)
                    || reader.lies_between(&before.span, &day.span) =>
            {
                // A weekday named second is that of the week after, a day of the month that of the month after.
                let earlier = before.first == before.last && day.last < before.first;
                let later = [day.last.checked_add_days(Days::new(7)), day.last.checked_add_months(Months::new(1))];
                let fits = |last: &NaiveDate| *last >= before.first;
                let last = if earlier { later.into_iter().flatten().find(fits) } else { Some(day.last) };
                // "We're out from 23 May till 30 May": both are of one year.
                let next_year = before.first.checked_add_months(Months::new(12));
                if let Some(first) = next_year.filter(|first| last.is_some_and(|last| *first <= last)) {
                    before.first = first;
                }
                match last {
                    Some(last) if last >= before.first && last - before.first < TimeDelta::days(200) => {
                        before.last = last;
                        before.span.end = day.span.end;
                    }
                    _ => found.push(day),
                }
            }
            _ => found.push(day),
        }
    }
    found
}

struct Reader<'a> {
    text: &'a Text,
    words: &'a Words,
    today: NaiveDate,
    past: bool,
    numbers: &'a [Number],
}

impl Reader<'_> {
    fn day_at(&self, at: usize) -> Option<DayFound> {
        self.numeric(at)
            .or_else(|| self.counted_from_today(at))
            .or_else(|| self.day_of_named_month(at))
            .or_else(|| self.worded_day_of_named_month(at))
            .or_else(|| self.named_month_and_day(at))
            .or_else(|| self.day_of_near_month(at))
            .or_else(|| self.counted(at))
            .or_else(|| self.day_of_month(at))
            .or_else(|| self.word(at))
            .or_else(|| self.weekend(at))
    }

    fn sign(&self, sign: Sign, at: usize) -> Option<usize> {
        self.words.sign(sign, self.text, at)
    }

    /// Whether a word of this sign ends just before this token.
    fn before(&self, sign: Sign, at: usize) -> bool {
        (1..=3).any(|length| at >= length && self.sign(sign, at - length) == Some(length))
    }

    fn number_at(&self, at: usize) -> Option<&Number> {
        let place = self.numbers.binary_search_by_key(&at, |number| number.span.start).ok()?;
        self.numbers.get(place)
    }

    fn told(&self, span: &Range<usize>) -> Option<Tense> {
        chosen(self.text, self.words, span)
            .or_else(|| bound(self.text, self.words, span))
            .or_else(|| self.expected(span))
            .or_else(|| tense(self.text, self.words, span))
    }

    fn told_done(&self, span: &Range<usize>) -> bool {
        self.told(span).map_or(self.past, |tense| tense == Tense::Done)
    }

    fn single(day: NaiveDate, span: Range<usize>) -> DayFound {
        DayFound { first: day, last: day, span }
    }

    /// `8/4`, `8/4/26`, `2026-05-04`.
    fn numeric(&self, at: usize) -> Option<DayFound> {
        let (written, length) = numeric_at(self.text, at)?;
        let span = at..at + length;
        if written.year.is_none() {
            let after = span.end;
            let unit = self.words.units.at(self.text, after).is_some() && !self.is_inside(after);
            let measure = unit || self.sign(Sign::Thing, after).is_some();
            let fraction = matches!((written.day, written.month), (1, 2..=4) | (2, 3) | (3, 4));
            let meant = self.before(Sign::On, at) || self.sign(Sign::Marked, after).is_some();
            let round_the_clock = written.day == 24 && written.month == 7;
            if measure || (fraction && !meant) || (round_the_clock && !meant) {
                return None;
            }
        }
        self.on(written, span)
    }

    /// "16/5 in tray 4", "on 14th in the basket": where, and no inches.
    fn is_inside(&self, at: usize) -> bool {
        let next = self.text.tokens.get(at + 1).is_some_and(Token::is_word);
        self.text.normal(at) == "in"
            && next
            && !matches!(self.text.normal(at + 1), "x" | "by" | "deep" | "wide" | "tall" | "high")
    }

    /// `20 april`, `20th of april 2026`, `22 to 28 may`.
    fn day_of_named_month(&self, at: usize) -> Option<DayFound> {
        let number = self.number_at(at)?;
        let day = day_number(number.value)?;
        let mut next = self.after_ordinal(number.span.end);
        if let Some(length) = self.sign(Sign::Through, next)
            && let Some(second) = self.number_at(next + length)
            && let Some(last_day) = day_number(second.value).filter(|last| *last > day)
            && let Some((month, year, end)) = self.month_at(self.after_ordinal(second.span.end))
        {
            let span = at..end;
            let first = self.on(calendar::Written { day, month, year }, span.clone())?;
            let last = first.first.with_day(last_day)?;
            return Some(DayFound { first: first.first, last, span });
        }
        // "the 5th and 12th may": both are of that month.
        if matches!(self.text.normal(next), "and" | "&" | "," | "or" | "aur" | "और" | "ya" | "या")
            && (next > number.span.end
                || self.before(Sign::On, at)
                || self.stands_after_between(at)
                || at.checked_sub(1).is_some_and(|of| self.text.normal(of) == "for"))
            && let Some(second) = self.number_at(next + 1)
            && day_number(second.value).is_some()
            && let Some((month, year, _)) = self.month_at(self.after_ordinal(second.span.end))
        {
            return self.on(calendar::Written { day, month, year }, at..next);
        }
        if matches!(self.text.normal(next), "of" | "-" | "/" | "ki") && self.month_at(next + 1).is_some() {
            next += 1;
        }
        let (month, year, end) = self.month_at(next)?;
        let ambiguous = self.text.normal(next) == "may" && self.text.tokens.get(next).is_some_and(|t| t.text != "May");
        if ambiguous && self.sign(Sign::NotMonth, next + 1).is_some() {
            return None;
        }
        self.on(calendar::Written { day, month, year }, at..end)
    }

    /// `first of june`, `पहली जून`.
    fn worded_day_of_named_month(&self, at: usize) -> Option<DayFound> {
        let (day, length) = self.words.ordinals.at(self.text, at)?;
        let of = usize::from(matches!(self.text.normal(at + length), "of" | "ki" | "की"));
        let (month, year, end) = self.month_at(at + length + of)?;
        self.on(calendar::Written { day, month, year }, at..end)
    }

    /// `next month 5th`, `pichhle mahine ki 20 ko`, `5th of next month`.
    fn day_of_near_month(&self, at: usize) -> Option<DayFound> {
        if let Some((months, end)) = self.near_month(at) {
            let end = end + usize::from(matches!(self.text.normal(end), "on" | "ki" | "ke" | "की" | "के" | ","));
            let end = end + usize::from(self.text.normal(end) == "the");
            let number = self.number_at(end)?;
            let day = day_number(number.value)?;
            let after = number.span.end;
            let length = self.sign(Sign::OfMonth, after).or_else(|| self.sign(Sign::Marked, after))?;
            return self.in_month(months, day, at..after + length);
        }
        let ordinal = || {
            let (day, length) = self.words.ordinals.at(self.text, at)?;
            Some((day, at + length, at))
        };
        let number = || {
            let number = self.number_at(at)?;
            Some((day_number(number.value)?, self.after_ordinal(number.span.end), number.span.end))
        };
        let (day, next, end) = number().or_else(ordinal)?;
        let of = usize::from(matches!(self.text.normal(next), "of" | "," | "in"));
        if next + of == end {
            return None;
        }
        let (months, end) = self.near_month(next + of)?;
        self.in_month(months, day, at..end)
    }

    /// The last, this or the next month named there, counted from this one, and where its words end.
    fn near_month(&self, at: usize) -> Option<(i32, usize)> {
        let (months, length) = [(Sign::Last, -1), (Sign::This, 0), (Sign::Next, 1)]
            .into_iter()
            .find_map(|(sign, months)| Some((months, self.sign(sign, at)?)))?;
        let (unit, word) = self.words.spans.at(self.text, at + length)?;
        (unit == TimeUnit::Month).then_some((months, at + length + word))
    }

    fn in_month(&self, months: i32, day: u32, span: Range<usize>) -> Option<DayFound> {
        let day = shifted(self.today.with_day(1)?, months)?.with_day(day)?;
        Some(Self::single(day, span))
    }

    /// `aaj se 5 din baad`, `today plus 5 days` in Hindi order: one day, not two.
    fn counted_from_today(&self, at: usize) -> Option<DayFound> {
        let Some((DayWord::Relative(0), length)) = self.words.days.at(self.text, at) else { return None };
        let from = at + length;
        if !matches!(self.text.normal(from), "se" | "से" | "from") {
            return None;
        }
        let counted = self.counted(from + 1)?;
        Some(DayFound { span: at..counted.span.end, ..counted })
    }

    /// `april 20`, `April 20th, 2026`.
    fn named_month_and_day(&self, at: usize) -> Option<DayFound> {
        let Some((DayWord::Month(month), length)) = self.words.days.at(self.text, at) else { return None };
        let day = whole_at(self.text, at + length).filter(|day| (1..=31).contains(day))?;
        let end = self.after_ordinal(at + length + 1);
        let counted = self.words.units.at(self.text, end).is_some()
            || self.words.spans.at(self.text, end).is_some()
            || self.sign(Sign::Thing, end).is_some()
            || self.sign(Sign::Times, end).is_some()
            || matches!(self.text.normal(end), "." | ":" | "/" | "-")
                && whole_at(self.text, end + 1).is_some()
                && calendar::close(self.text, end - 1, 2);
        if counted {
            return None;
        }
        let (year, end) = self.year_at(end);
        self.on(calendar::Written { day, month, year }, at..end)
    }

    /// The month named there, the year after it, and where they end.
    fn month_at(&self, at: usize) -> Option<(u32, Option<i32>, usize)> {
        let Some((DayWord::Month(month), length)) = self.words.days.at(self.text, at) else { return None };
        let (year, end) = self.year_at(at + length);
        Some((month, year, end))
    }

    /// A year of four digits, or of two right after a mark or an apostrophe.
    fn year_at(&self, at: usize) -> (Option<i32>, usize) {
        let marked = usize::from(matches!(self.text.normal(at), "," | "-" | "/" | "'"));
        let read = whole_at(self.text, at + marked).filter(|number| {
            *number >= 1900 || (marked == 1 && self.text.normal(at) != "," && (20..=99).contains(number))
        });
        match read.and_then(calendar::year) {
            Some(year) => (Some(year), at + marked + 1),
            None => (None, at),
        }
    }

    fn after_ordinal(&self, at: usize) -> usize {
        if matches!(self.text.normal(at), "th" | "st" | "nd" | "rd") { at + 1 } else { at }
    }

    /// `on the 4th`, `4 tarikh ko`.
    fn day_of_month(&self, at: usize) -> Option<DayFound> {
        let number = self.number_at(at)?;
        let day = day_number(number.value)?;
        let end = number.span.end;
        if let Some(run) = self.run_of_month(at, number) {
            return Some(run);
        }
        // "Podina 12 ko kata tha": before its verb.
        let verb = (end + 1..=end + 2).any(|place| self.words.is_done(self.text, place)) || self.goes_away(end + 1);
        let length = match self.sign(Sign::OfMonth, end) {
            Some(length) => length,
            None if matches!(self.text.normal(end), "ko" | "को")
                && (verb || self.has_its_verb_apart(day, end))
                && (at > 0 || self.goes_away(end + 1) || self.has_its_verb_apart(day, end))
                && number.span.len() == 1 =>
            {
                1
            }
            None => return None,
        };
        let bare = self.sign(Sign::OfMonth, end).is_none();
        let ordinal = matches!(self.text.normal(end), "th" | "st" | "nd" | "rd");
        // "On the 5th floor" names no day; "on the 5th we sowed", "on 5th in the tray" and "the 22nd till the 26th" do.
        let next = end + length;
        let labelled = self.sign(Sign::Label, next).is_some();
        let dated = at >= 2 && self.text.normal(at - 2) == "on" && self.text.normal(at - 1) == "the" && !labelled;
        let floor = self.text.tokens.get(next).is_some_and(Token::is_word)
            && self.sign(Sign::Marked, next).is_none()
            && self.sign(Sign::Through, next).is_none()
            && self.words.parts_of_day.at(self.text, next).is_none()
            && !self.is_a_joint(next)
            && !dated;
        // "Okra, east box, 15th": by itself in a message that tells of work.
        let ends =
            |place: usize| self.text.tokens.get(place).is_none_or(|mark| !mark.is_word() && mark.number.is_none());
        let sorry = matches!(self.text.normal(next), "sorry" | "actually" | "not" | "nahi" | "pls" | "please" | "plz");
        // "No, the 11th", "make that the 9th pls".
        let the = at.checked_sub(1).is_some_and(|the| self.text.normal(the) == "the") && (ends(next) || sorry);
        let alone = self.past && (the || at.checked_sub(1).is_none_or(ends) && (ends(next) || at == 0 && sorry));
        // "Neem done on all tomatoes 13th", "picked okra 14th 500 g".
        let closes = self.past && (ends(next) || self.text.tokens.get(next).is_some_and(|next| next.number.is_some()));
        let marked = self.sign(Sign::Marked, next).is_some();
        let meant = bare || self.before(Sign::On, at) && !floor || marked || alone || closes;
        if ordinal && !meant {
            return None;
        }
        let span = at..end + length;
        self.nearest_in_a_month(day, &span).map(|day| Self::single(day, span))
    }

    /// The day of the month, in the month that fits the tense of what is told.
    fn nearest_in_a_month(&self, day: u32, span: &Range<usize>) -> Option<NaiveDate> {
        let candidates = (-2_i32..=2).filter_map(|months| shifted(self.today.with_day(1)?, months)?.with_day(day));
        self.nearest(candidates, self.told_done(span))
    }

    /// Words that go on with a sentence: what stands before them is no part of what is named after them.
    fn is_a_joint(&self, at: usize) -> bool {
        const JOINTS: [&str; 14] =
            ["in", "into", "for", "with", "at", "and", "but", "so", "or", "then", "because", "when", "is", "was"];
        JOINTS.contains(&self.text.normal(at))
    }

    /// A day written with its month; without a year the one that fits the tense.
    fn on(&self, written: calendar::Written, span: Range<usize>) -> Option<DayFound> {
        let calendar::Written { day, month, year } = written;
        if let Some(year) = year {
            return NaiveDate::from_ymd_opt(year, month, day).map(|day| Self::single(day, span));
        }
        let done = self.told_done(&span);
        let this_year = self.today.year();
        // A 29 February may lie four years back.
        let years = (this_year - 4)..=(this_year + 4);
        let candidates = years.filter_map(|year| NaiveDate::from_ymd_opt(year, month, day));
        self.nearest(candidates, done).map(|day| Self::single(day, span))
    }

    fn nearest(&self, candidates: impl Iterator<Item = NaiveDate>, done: bool) -> Option<NaiveDate> {
        /// Nothing told as done: a day further back than this is meant to come.
        const LOOKED_BACK_DAYS: i64 = 120;
        let fits = |day: &NaiveDate| {
            let ahead = (*day - self.today).num_days();
            if done { ahead <= 0 } else { ahead >= -LOOKED_BACK_DAYS }
        };
        candidates.filter(fits).min_by_key(|day| (*day - self.today).num_days().abs())
    }

    /// `today`, `kal`, `last friday`, `friday`.
    fn word(&self, at: usize) -> Option<DayFound> {
        let (word, length) = self.words.days.at(self.text, at)?;
        let span = at..at + length;
        if let DayWord::Weekday(weekday) | DayWord::ShortWeekday(weekday) = word
            && let Some(day) = self.weekday_of_month(weekday, at, span.end)
        {
            return Some(day);
        }
        let shift = |days: i64| self.today.checked_add_signed(TimeDelta::try_days(days)?);
        let day = match word {
            DayWord::Relative(days) => shift(days)?,
            DayWord::Either(days) => shift(if self.told_done(&span) { -days } else { days })?,
            DayWord::Weekday(weekday) => self.weekday(weekday, &span)?,
            DayWord::ShortWeekday(weekday) => {
                let before = at.checked_sub(1).map_or("", |before| self.text.normal(before));
                let after = self.text.normal(span.end);
                let listed = self.stands_beside_a_weekday(&span) || self.of_near_week(weekday, span.end).is_some();
                let sure =
                    matches!(before, "on" | "last" | "next" | "this" | "coming" | "due" | "come" | "visit" | "over")
                        || matches!(after, "ko" | "को")
                        || self.words.parts_of_day.at(self.text, span.end).is_some()
                        || listed;
                // "for sun" in lower case may be the light.
                let capital = self.text.tokens.get(at).is_some_and(|token| token.text.starts_with(char::is_uppercase));
                let likely = matches!(before, "for" | "by" | "till" | "until" | "before" | "from" | "since");
                // "Sun neem oil on it" at the beginning of a clause.
                let first = weekday != Weekday::Sun || self.words.is_done(self.text, span.end);
                let begins = capital
                    && at.checked_sub(1).map_or(first, |mark| {
                        self.text.tokens.get(mark).is_some_and(|mark| !mark.is_word() && mark.number.is_none())
                    });
                // "Picked 900 gm bhindi sat", "client wants to pick wed": a clause ends with its day. Water "that sat" did not.
                let last = self.text.tokens.get(span.end).is_none_or(|mark| !mark.is_word() && mark.number.is_none());
                let verb =
                    matches!(before, "has" | "have" | "had" | "it" | "just" | "water" | "that" | "which" | "was");
                let ends = weekday != Weekday::Sun && self.text.language == Language::En && last && !verb && at > 1;
                if !sure && !begins && !ends && !(likely && (capital || weekday != Weekday::Sun)) {
                    return None;
                }
                self.weekday(weekday, &span)?
            }
            DayWord::Month(_) => return None,
        };
        Some(Self::single(day, span))
    }

    /// Whether one word between two days makes them the ends of a run.
    fn runs_through(&self, end: usize, start: usize) -> bool {
        start > end && self.sign(Sign::Through, end) == Some(start - end)
    }
}

fn day_number(value: f64) -> Option<u32> {
    if value.fract() != 0.0 {
        return None;
    }
    (1..=31).find(|day| f64::from(*day) == value)
}

fn shifted(day: NaiveDate, months: i32) -> Option<NaiveDate> {
    let by = Months::new(months.unsigned_abs());
    if months < 0 { day.checked_sub_months(by) } else { day.checked_add_months(by) }
}
