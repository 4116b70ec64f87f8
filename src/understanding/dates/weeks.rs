//! Weekdays beside another day, and of the week before or after this one.

use super::{DayFound, Reader};
use crate::knowledge::{DayWord, Sign, TimeUnit};
use chrono::{Datelike, Days, NaiveDate, Weekday};

impl Reader<'_> {
    /// "We leave on Friday, back Monday": of two days to come the second comes after the first, unless they are a
    /// choice.
    pub(super) fn after_the_one_before(&self, day: DayFound, before: Option<&DayFound>) -> DayFound {
        let at = day.span.start;
        let bare = matches!(self.words.days.at(self.text, at), Some((DayWord::Weekday(_), _)));
        let choice = at
            .checked_sub(1)
            .is_some_and(|joint| matches!(self.text.normal(joint), "or" | "and" | "&" | "ya" | "या" | "aur" | "और"));
        let pointed =
            self.before(Sign::This, at) || self.before(Sign::Last, at) || self.runs_through(at.saturating_sub(1), at);
        let follows = before
            .is_some_and(|before| before.first > self.today && day.first >= self.today && day.last < before.first);
        if !(bare && follows) || choice || pointed {
            return day;
        }
        let week = |day: NaiveDate| day.checked_add_days(Days::new(7)).unwrap_or(day);
        DayFound { first: week(day.first), last: week(day.last), ..day }
    }

    /// "Thursday next week", "Monday to Thursday next week": that weekday of the week before or after this one.
    pub(super) fn of_near_week(&self, weekday: Weekday, end: usize) -> Option<i64> {
        let through = self.sign(Sign::Through, end).map(|length| end + length);
        let second = through.and_then(|at| match self.words.days.at(self.text, at)? {
            (DayWord::Weekday(_) | DayWord::ShortWeekday(_), length) => Some(at + length),
            _ => None,
        });
        [Some(end), second].into_iter().flatten().find_map(|at| {
            let (weeks, length) = [(Sign::Last, -7_i64), (Sign::Next, 7)]
                .into_iter()
                .find_map(|(sign, weeks)| Some((weeks, self.sign(sign, at)?)))?;
            let week = matches!(self.words.spans.at(self.text, at + length), Some((TimeUnit::Week, _)));
            let from_monday =
                i64::from(weekday.num_days_from_monday()) - i64::from(self.today.weekday().num_days_from_monday());
            week.then_some(weeks + from_monday)
        })
    }
}
