//! Days counted from today, and runs of days.

use super::{DayFound, Reader};
use crate::knowledge::{Sign, TimeUnit};
use crate::understanding::tense::Tense;
use chrono::{Days, Months, NaiveDate};

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
        if let Some(length) = self.sign(Sign::Ago, end) {
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

    /// `for 6 days`, `se 6 din` after a day make a run of it.
    pub(super) fn with_length(&self, day: DayFound) -> DayFound {
        let at = day.span.end;
        let run = || {
            if !matches!(self.text.normal(at), "for" | "se" | "से") {
                return None;
            }
            let number = self.number_at(at + 1)?;
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
}
