//! Weekdays beside another day, and of the week before or after this one.

use super::{DayFound, Reader, day_number, shifted};
use crate::knowledge::{DayWord, Sign, TimeUnit};
use chrono::{Datelike, Days, NaiveDate, TimeDelta, Weekday};
use std::ops::Range;

impl Reader<'_> {
    /// "Sunday 10th", "sat 16th": the weekday and its day of the month tell one day.
    pub(super) fn weekday_of_month(&self, weekday: Weekday, at: usize, end: usize) -> Option<DayFound> {
        let number = self.number_at(end)?;
        let close = self.after_ordinal(number.span.end);
        let day = day_number(number.value).filter(|_| close > number.span.end)?;
        let months = (-2_i32..=2).filter_map(|months| shifted(self.today.with_day(1)?, months)?.with_day(day));
        let span = at..close;
        self.nearest(months.filter(|day| day.weekday() == weekday), self.told_done(&span))
            .map(|day| Self::single(day, span))
    }

    pub(super) fn weekday(&self, weekday: Weekday, span: &Range<usize>) -> Option<NaiveDate> {
        const SINCE: usize = 5;
        let ahead = i64::from(weekday.days_since(self.today.weekday()));
        let last = if ahead == 0 { -7 } else { ahead - 7 };
        // "Since Thursday", "since that rain on Thursday"; "since we leave on Friday" is a reason.
        let word = |at: usize| self.text.normal(at);
        let since = (0..span.start).rev().take(SINCE).any(|at| {
            let event = matches!(word(at + 1), "that" | "the" | "this" | "last") && word(span.start - 1) == "on";
            word(at) == "since" && (at + 1 == span.start || event)
        });
        // "This Saturday gone".
        let since = since || matches!(self.text.normal(span.end), "gone" | "gaya" | "beeta");
        let days = if let Some(days) = self.of_near_week(weekday, span.end) {
            days
        } else if since || self.before(Sign::Last, span.start) {
            last
        } else if self.before(Sign::This, span.start) {
            ahead
        } else if self.before(Sign::Next, span.start) {
            if ahead == 0 { 7 } else { ahead }
        } else if self.told_done(span) && !self.is_next_turn(span) {
            last
        } else {
            ahead
        };
        self.today.checked_add_signed(TimeDelta::try_days(days)?)
    }

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
        // "Before 15 January; seedlings go in on Sunday" is this one, and so is what hangs on an "if".
        let near = before.is_some_and(|before| before.first - day.first < TimeDelta::days(7));
        let supposed = (0..at).any(|if_| matches!(self.text.normal(if_), "if" | "agar" | "अगर"));
        let follows = follows && near && !supposed;
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

    /// "Sprayed Saturday, again Wednesday?": the second day of the same is to come, unless its own verb says that it was.
    pub(super) fn is_next_turn(&self, span: &Range<usize>) -> bool {
        const APART: usize = 3;
        const AGAIN: [&str; 9] = ["again", "phir", "fir", "dobara", "dubara", "agla", "agli", "फिर", "दोबारा"];
        let from = span.start.saturating_sub(APART);
        let again = (from..span.start).rev().find(|at| AGAIN.contains(&self.text.normal(*at)));
        let clause = |at: &usize| !matches!(self.text.normal(*at), "." | "," | ";" | "?" | "।");
        let done = |at: usize| self.words.is_done(self.text, at);
        let told = |again: usize| {
            let before = (0..again).rev().take_while(clause).any(done);
            before || (span.end..self.text.tokens.len()).take_while(clause).any(done)
        };
        again.is_some_and(|again| !told(again))
    }

    /// "This weekend", "on the weekend", "पिछले वीकेंड": its Saturday and Sunday. "Every weekend" names no day.
    pub(super) fn weekend(&self, at: usize) -> Option<DayFound> {
        let span = at..at + self.sign(Sign::Weekend, at)?;
        if self.before(Sign::Repeating, at) {
            return None;
        }
        let into = i64::from(self.today.weekday().num_days_from_monday());
        let saturday = i64::from(Weekday::Sat.num_days_from_monday()) - into;
        let word = |back: usize| at.checked_sub(back).map_or("", |place| self.text.normal(place));
        let since = word(1) == "since" || word(1) == "the" && word(2) == "since";
        let over = since || self.before(Sign::Last, at) || self.told_done(&span) && !self.before(Sign::This, at);
        // On its Saturday and Sunday the weekend is this one, unless the next or the last is meant.
        let running = saturday <= 0;
        let days = match (over, running) {
            (true, _) => saturday - 7,
            (false, true) if self.before(Sign::Next, at) => saturday + 7,
            (false, _) => saturday,
        };
        let first = self.today.checked_add_signed(TimeDelta::try_days(days)?)?;
        Some(DayFound { first, last: first.checked_add_days(Days::new(1))?, span })
    }

    /// "Wed and thurs", "sat n sun", "fri to sun": the other day makes it one.
    pub(super) fn stands_beside_a_weekday(&self, span: &Range<usize>) -> bool {
        let joins = |at: usize| {
            matches!(
                self.text.normal(at),
                "and" | "or" | "&" | "n" | "," | "aur" | "ya" | "to" | "till" | "-" | "–" | "se" | "से"
            )
        };
        let weekday = |at: usize| {
            matches!(self.words.days.at(self.text, at), Some((DayWord::Weekday(_) | DayWord::ShortWeekday(_), _)))
        };
        joins(span.end) && weekday(span.end + 1) || span.start >= 2 && joins(span.start - 1) && weekday(span.start - 2)
    }
}
