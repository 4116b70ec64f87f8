//! Days counted from today, and runs of days.

use super::{DayFound, Reader, day_number};
use crate::knowledge::{Sign, TimeUnit};
use crate::script::{Number, Token};
use crate::understanding::tense::Tense;
use chrono::{Datelike, Days, Months, NaiveDate};
use std::ops::Range;

impl Reader<'_> {
    /// `3 weeks ago`, `2 din baad`, `in 3 days`.
    pub(super) fn counted(&self, at: usize) -> Option<DayFound> {
        let lead = self.sign(Sign::Within, at).unwrap_or(0);
        let start = at + lead;
        let (count, end) = match self.number_at(start) {
            Some(number) => (number.value, number.span.end),
            None if matches!(self.text.normal(start), "a" | "an") => (1.0, start + 1),
            None => return None,
        };
        let (unit, length) = self.words.spans.at(self.text, end)?;
        let end = end + length;
        if lead == 0 && self.before(Sign::Repeating, at) {
            return None;
        }
        if let Some(both) = self.weeks_and_days(count, unit, at, end) {
            return Some(both);
        }
        let ago = self.sign(Sign::Ago, end).or_else(|| self.is_before_now(at..end).then_some(1));
        if let Some(length) = ago {
            return self.away(count, unit, false).map(|day| Self::single(day, at..end + length));
        }
        let later = self.sign(Sign::Later, end);
        let span = at..end + later.unwrap_or(0);
        let from_now = later.is_some() || (lead > 0 && !matches!(self.text.normal(end), "of" | "old"));
        if !from_now || self.told(&span) == Some(Tense::Done) {
            return None;
        }
        self.away(count, unit, true).map(|day| Self::single(day, span))
    }

    /// "Fed it 2 days before": nothing follows that it was before, and it was done.
    fn is_before_now(&self, span: Range<usize>) -> bool {
        let after = self.text.tokens.get(span.end + 1);
        let ends = after.is_none_or(|next| !next.is_word() && next.number.is_none());
        self.text.normal(span.end) == "before" && ends && self.told_done(&span)
    }

    /// `2 weeks and 3 days ago`.
    fn weeks_and_days(&self, weeks: f64, unit: TimeUnit, at: usize, end: usize) -> Option<DayFound> {
        let joined = usize::from(matches!(self.text.normal(end), "and" | "n" | "&" | "aur" | "और"));
        let days = self.number_at(end + joined).filter(|_| unit == TimeUnit::Week)?;
        let Some((TimeUnit::Day, length)) = self.words.spans.at(self.text, days.span.end) else { return None };
        let end = days.span.end + length;
        let (length, ahead) = match (self.sign(Sign::Ago, end), self.sign(Sign::Later, end)) {
            (Some(length), _) => (length, false),
            (None, Some(length)) => (length, true),
            (None, None) => return None,
        };
        let day = self.away(weeks.mul_add(7.0, days.value), TimeUnit::Day, ahead)?;
        Some(Self::single(day, at..end + length))
    }

    fn away(&self, count: f64, unit: TimeUnit, ahead: bool) -> Option<NaiveDate> {
        if !(0.0..=1000.0).contains(&count) {
            return None;
        }
        // A half week or month is meant to the day, as near as whole days go.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 0 and 365 000")]
        let days = |each: f64| (count * each).round() as u64;
        let whole = count.fract() == 0.0;
        let days = match unit {
            TimeUnit::Minute | TimeUnit::Hour => return None,
            TimeUnit::Day => days(1.0),
            TimeUnit::Week => days(7.0),
            TimeUnit::Month | TimeUnit::Year if whole => {
                let each = if unit == TimeUnit::Month { 1.0 } else { 12.0 };
                let months = Months::new(u32::try_from(days(each)).ok()?);
                return if ahead {
                    self.today.checked_add_months(months)
                } else {
                    self.today.checked_sub_months(months)
                };
            }
            TimeUnit::Month => days(30.4),
            TimeUnit::Year => days(365.25),
        };
        let days = Days::new(days);
        if ahead { self.today.checked_add_days(days) } else { self.today.checked_sub_days(days) }
    }

    /// `for 6 days`, `se 6 din`, `subah se bahar hu 6 din` after a day make a run of it.
    pub(super) fn with_length(&self, day: DayFound) -> DayFound {
        /// As far behind "from then" the days may stand, with being away between.
        const APART: usize = 4;
        let at = day.span.end + self.words.parts_of_day.at(self.text, day.span.end).map_or(0, |(_, length)| length);
        let run = || {
            if !matches!(self.text.normal(at), "for" | "se" | "से") {
                return None;
            }
            let away = (at + 2..at + 2 + APART).find(|place| self.number_at(*place).is_some());
            let away = away.filter(|place| self.goes_away(at + 1) && self.is_one_clause(at + 1..*place));
            let number = self.number_at(at + 1).or_else(|| self.number_at(away?))?;
            let (unit, length) = self.words.spans.at(self.text, number.span.end)?;
            let end = number.span.end + length;
            if self.sign(Sign::Ago, end).is_some() || self.sign(Sign::Later, end).is_some() {
                return None;
            }
            let each = match unit {
                TimeUnit::Day => 1.0,
                TimeUnit::Week => 7.0,
                _ => return None,
            };
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 1 and 200")]
            let days = Some(number.value * each).filter(|days| (1.0..=200.0).contains(days))?.round() as u64;
            let last = day.first.checked_add_days(Days::new(days.saturating_sub(1)))?;
            Some(DayFound { first: day.first, last, span: day.span.start..end })
        };
        run().unwrap_or(day)
    }

    /// `21 se 25 tareekh`, `19th to 21st`, `21 se 25 tak bahar`: both are of that month.
    pub(super) fn run_of_month(&self, at: usize, first: &Number) -> Option<DayFound> {
        let day = day_number(first.value)?;
        let end = self.after_ordinal(first.span.end);
        let start = end + self.sign(Sign::Through, end)?;
        let second = self.number_at(start)?;
        let last_day = day_number(second.value).filter(|last| *last > day)?;
        let closed = self.after_ordinal(second.span.end);
        let ordinals = end > first.span.end && closed > second.span.end && self.sign(Sign::Label, closed).is_none();
        let until = matches!(self.text.normal(closed), "tak" | "तक") && self.is_out(closed + 1);
        if ordinals || until {
            let first = self.nearest_in_a_month(day, &(at..end))?;
            return Some(DayFound { first, last: first.with_day(last_day)?, span: at..closed + usize::from(until) });
        }
        let last = self.day_of_month(start)?;
        Some(DayFound { first: last.first.with_day(day)?, last: last.last, span: at..last.span.end })
    }

    /// Someone is out of town, said close behind.
    fn is_out(&self, from: usize) -> bool {
        const APART: usize = 3;
        const OUT: [&str; 8] = ["bahar", "baahar", "gaon", "gaanv", "chhutti", "बाहर", "गांव", "छुट्टी"];
        (from..from + APART).any(|at| OUT.contains(&self.text.normal(at)))
    }

    fn is_one_clause(&self, mut span: Range<usize>) -> bool {
        span.all(|at| self.text.tokens.get(at).is_some_and(Token::is_word))
    }

    /// "25 ko gaon ja rahe hain": the day on which someone leaves or comes back.
    pub(super) fn goes_away(&self, from: usize) -> bool {
        const APART: usize = 5;
        const GOES: [&str; 20] = [
            "gaon",
            "gaanv",
            "bahar",
            "baahar",
            "ja",
            "jaa",
            "jana",
            "jaana",
            "jaenge",
            "jayenge",
            "nikal",
            "niklenge",
            "lautenge",
            "wapas",
            "गांव",
            "बाहर",
            "जा",
            "जाना",
            "निकल",
            "लौटेंगे",
        ];
        let ends = |at: &usize| !matches!(self.text.normal(*at), "," | "." | "?" | ";" | "।");
        (from..from + APART).take_while(ends).any(|at| GOES.contains(&self.text.normal(at)))
    }
}
