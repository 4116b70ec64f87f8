//! Days gone by as one line of text. A season of them is read for one answer: whole numbers are read several times
//! faster than rows of JSON.
//!
//! A day is its values parted by commas, days are parted by semicolons. Numbers are thousandths of the unit of
//! [`DayRow`]; what is not known is left empty.

use super::kept::{PastDay, Was};
use super::row::DayRow;
use super::source::Service;
use chrono::{DateTime, Datelike, NaiveDate};
use serde::{Deserialize, Deserializer, Serializer};
use std::fmt::Write;

/// A row and a line are to a thousandth.
const THOUSANDTHS: f64 = 1_000.0;

/// Days as they are kept: a line, or rows as older versions wrote them.
#[derive(Deserialize)]
#[serde(untagged)]
enum Kept {
    Line(String),
    Rows(Vec<PastDay>),
}

/// # Errors
/// As its writer.
pub fn serialize<S: Serializer>(days: &[PastDay], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(&line(days))
}

/// # Errors
/// What is neither rows nor a line, and a line with a day in it that is none.
pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<PastDay>, D::Error> {
    match Kept::deserialize(deserializer)? {
        Kept::Rows(days) => Ok(days),
        Kept::Line(line) => read(&line).ok_or_else(|| serde::de::Error::custom("a line of days expected")),
    }
}

fn line(days: &[PastDay]) -> String {
    let mut line = String::new();
    for (place, PastDay { day, was, by, made }) in days.iter().enumerate() {
        if place > 0 {
            line.push(';');
        }
        let (by, was) = (code(*by), if *was == Was::Observed { 'o' } else { 'k' });
        // Writing to a text does not fail.
        let _ = write!(line, "{},{was}{by},{}", day.date.num_days_from_ce(), made.timestamp());
        let ends = [Some(day.tmax_c), Some(day.tmin_c)];
        let rest = [day.rh_mean_percent, day.wind_2m_m_s, day.solar_mj_m2, day.sunshine_h, day.rain_mm];
        for value in ends.into_iter().chain(rest) {
            line.push(',');
            if let Some(value) = value {
                let _ = write!(line, "{}", (value * THOUSANDTHS).round() as i64);
            }
        }
    }
    line
}

fn read(line: &str) -> Option<Vec<PastDay>> {
    if line.is_empty() {
        return Some(Vec::new());
    }
    line.split(';').map(day).collect()
}

fn day(text: &str) -> Option<PastDay> {
    let mut parts = text.split(',');
    let date = NaiveDate::from_num_days_from_ce_opt(parts.next()?.parse().ok()?)?;
    let mut how = parts.next()?.chars();
    let was = match how.next()? {
        'o' => Was::Observed,
        'k' => Was::Kept,
        _ => return None,
    };
    let by = service(how.next()?)?;
    let made = DateTime::from_timestamp(parts.next()?.parse().ok()?, 0)?;
    let mut value = || match parts.next()? {
        "" => Some(None),
        text => Some(Some(text.parse::<i64>().ok()? as f64 / THOUSANDTHS)),
    };
    let (tmax_c, tmin_c) = (value()??, value()??);
    let day = DayRow {
        date,
        tmax_c,
        tmin_c,
        rh_mean_percent: value()?,
        wind_2m_m_s: value()?,
        solar_mj_m2: value()?,
        sunshine_h: value()?,
        rain_mm: value()?,
        // How likely rain was is no longer of use.
        rain_chance: None,
    };
    parts.next().is_none().then_some(PastDay { day, was, by, made })
}

const fn code(by: Service) -> char {
    match by {
        Service::File => 'f',
        Service::MetNorway => 'm',
        Service::OpenMeteo => 'p',
    }
}

const fn service(code: char) -> Option<Service> {
    match code {
        'f' => Some(Service::File),
        'm' => Some(Service::MetNorway),
        'p' => Some(Service::OpenMeteo),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn thousandths(from: i64, until: i64) -> impl Strategy<Value = f64> {
        (from..until).prop_map(|value| value as f64 / THOUSANDTHS)
    }

    fn past() -> impl Strategy<Value = PastDay> {
        let maybe = || proptest::option::of(thousandths(0, 100_000));
        let ends = (thousandths(-20_000, 30_000), thousandths(0, 20_000));
        let rest = (maybe(), maybe(), maybe(), maybe(), maybe());
        let how =
            (any::<bool>(), proptest::sample::select(vec![Service::File, Service::MetNorway, Service::OpenMeteo]));
        (0..4_000_u64, ends, rest, how, 0..2_000_000_000_i64).prop_map(|(day, (tmin_c, more), rest, how, made)| {
            let date = NaiveDate::from_ymd_opt(2020, 1, 1).unwrap() + chrono::Days::new(day);
            let (rh_mean_percent, wind_2m_m_s, solar_mj_m2, sunshine_h, rain_mm) = rest;
            let tmax_c = ((tmin_c + more) * THOUSANDTHS).round() / THOUSANDTHS;
            let row = DayRow {
                date,
                tmax_c,
                tmin_c,
                rh_mean_percent,
                wind_2m_m_s,
                solar_mj_m2,
                sunshine_h,
                rain_mm,
                rain_chance: None,
            };
            let was = if how.0 { Was::Observed } else { Was::Kept };
            PastDay { day: row, was, by: how.1, made: DateTime::from_timestamp(made, 0).unwrap() }
        })
    }

    proptest! {
        #[test]
        fn what_is_written_is_read(days in proptest::collection::vec(past(), 0..40)) {
            prop_assert_eq!(read(&line(&days)), Some(days));
        }

        #[test]
        fn no_text_brings_it_down(text in "[0-9,;okmpf-]{0,60}") {
            let _ = read(&text);
        }
    }

    #[derive(Debug, PartialEq, serde::Serialize, Deserialize)]
    struct Month {
        #[serde(with = "super")]
        days: Vec<PastDay>,
    }

    #[test]
    fn rows_of_older_versions_are_read() {
        let rows = r#"{"days":[[739389,43.1,29.0,32.0,2.1,null,null,0.5,true,"met-norway",1779000000]]}"#;
        let month: Month = serde_json::from_str(rows).unwrap();
        let written = serde_json::to_string(&month).unwrap();
        assert_eq!(written, r#"{"days":"739389,om,1779000000,43100,29000,32000,2100,,,500"}"#);
        assert_eq!(serde_json::from_str::<Month>(&written).unwrap(), month);
        assert_eq!((month.days[0].was, month.days[0].by), (Was::Observed, Service::MetNorway));
    }

    #[test]
    fn a_line_that_is_none_is_refused() {
        for days in ["739389", "739389,om,1779000000,43100,29000,,,,", "739389,xm,0,1,1,,,,,", "739389,om,0,1,1,,,,,,"]
        {
            assert_eq!(read(days), None, "{days}");
        }
    }
}
