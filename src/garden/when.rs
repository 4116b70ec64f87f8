//! A day, or a clock time on it, as a record of work carries it.

use chrono::{NaiveDate, NaiveDateTime, NaiveTime};
use serde::{Deserialize, Serialize};
use std::fmt::{Display, Formatter};
use std::str::FromStr;
use thiserror::Error;

/// When something was done or seen, on the site's own clock.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum When {
    Day(NaiveDate),
    Moment(NaiveDateTime),
}

/// A text that is no day as files write it.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{0}\" is no day; one like \"2026-05-13\", or with a clock time \"2026-05-13T18:00\", expected")]
pub struct NotADay(pub String);

impl When {
    #[must_use]
    pub const fn date(self) -> NaiveDate {
        match self {
            Self::Day(date) => date,
            Self::Moment(moment) => moment.date(),
        }
    }

    /// The clock time, where one was given.
    #[must_use]
    pub const fn time(self) -> Option<NaiveTime> {
        match self {
            Self::Day(_) => None,
            Self::Moment(moment) => Some(moment.time()),
        }
    }

    /// Has it come by `now` (the site's clock)? A day has come from its first minute.
    #[must_use]
    pub fn has_come(self, now: NaiveDateTime) -> bool {
        match self {
            Self::Day(date) => date <= now.date(),
            Self::Moment(moment) => moment <= now,
        }
    }
}

impl Display for When {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Day(date) => write!(f, "{date}"),
            Self::Moment(moment) if moment.format("%S").to_string() == "00" => {
                write!(f, "{}", moment.format("%Y-%m-%dT%H:%M"))
            }
            Self::Moment(moment) => write!(f, "{}", moment.format("%Y-%m-%dT%H:%M:%S")),
        }
    }
}

impl FromStr for When {
    type Err = NotADay;
    fn from_str(text: &str) -> Result<Self, NotADay> {
        if let Some(when) = as_written(text) {
            return Ok(when);
        }
        if text.len() == 10 {
            return NaiveDate::parse_from_str(text, "%Y-%m-%d").map(Self::Day).map_err(|_| NotADay(text.into()));
        }
        ["%Y-%m-%dT%H:%M", "%Y-%m-%dT%H:%M:%S"]
            .into_iter()
            .find_map(|form| NaiveDateTime::parse_from_str(text, form).ok())
            .map(Self::Moment)
            .ok_or_else(|| NotADay(text.into()))
    }
}

/// A day or a minute as records write it, read by its places: years of records are read for an answer, and a form that
/// is worked through each time takes several times as long.
fn as_written(text: &str) -> Option<When> {
    let number = |from: usize, to: usize| {
        let digits = text.get(from..to).filter(|part| part.bytes().all(|byte| byte.is_ascii_digit()))?;
        digits.parse::<u32>().ok()
    };
    let mark = |at: usize, mark: u8| text.as_bytes().get(at) == Some(&mark);
    if !(mark(4, b'-') && mark(7, b'-')) {
        return None;
    }
    let day = NaiveDate::from_ymd_opt(i32::try_from(number(0, 4)?).ok()?, number(5, 7)?, number(8, 10)?)?;
    match text.len() {
        10 => Some(When::Day(day)),
        16 if mark(10, b'T') && mark(13, b':') => {
            day.and_hms_opt(number(11, 13)?, number(14, 16)?, 0).map(When::Moment)
        }
        _ => None,
    }
}

impl TryFrom<String> for When {
    type Error = NotADay;
    fn try_from(text: String) -> Result<Self, NotADay> {
        text.parse()
    }
}

impl From<When> for String {
    fn from(when: When) -> Self {
        when.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got = text.parse::<When>().map_or_else(|refusal| refusal.to_string(), |when| when.to_string());
        assert_eq!(got, expected);
    }

    #[test]
    fn reads_and_refuses() {
        case("2026-05-13", "2026-05-13");
        case("2026-05-13T18:00", "2026-05-13T18:00");
        case("2026-05-13T18:00:30", "2026-05-13T18:00:30");
        let expected = "is no day; one like \"2026-05-13\", or with a clock time \"2026-05-13T18:00\", expected";
        case("2026-02-30", &format!("\"2026-02-30\" {expected}"));
        case("13-05-2026", &format!("\"13-05-2026\" {expected}"));
        case("2026-05-13T25:00", &format!("\"2026-05-13T25:00\" {expected}"));
        case("2026-5-3", &format!("\"2026-5-3\" {expected}"));
        case("", &format!("\"\" {expected}"));
        case("2026-05-13 18:00", &format!("\"2026-05-13 18:00\" {expected}"));
        case("2026-05-13T18:61", &format!("\"2026-05-13T18:61\" {expected}"));
    }

    #[test]
    fn a_day_has_come_from_its_first_minute() {
        let now: NaiveDateTime = "2026-05-13T08:00:00".parse().unwrap();
        assert!("2026-05-13".parse::<When>().unwrap().has_come(now));
        assert!(!"2026-05-13T08:01".parse::<When>().unwrap().has_come(now));
        assert!(!"2026-05-14".parse::<When>().unwrap().has_come(now));
    }
}
