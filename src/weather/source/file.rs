//! The file provider: a forecast as JSON.

use crate::knowledge::Problem;
use crate::weather::day::{Day, Origin};
use crate::weather::row::DayRow;
use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::Deserialize;
use std::collections::BTreeMap;

/// A forecast for one position.
#[derive(Debug, Clone, PartialEq)]
pub struct Forecast {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    pub timezone: chrono_tz::Tz,
    pub issued: Option<DateTime<FixedOffset>>,
    days: BTreeMap<NaiveDate, Day>,
}

#[derive(Deserialize)]
struct RawForecast {
    latitude: f64,
    longitude: f64,
    elevation_m: f64,
    timezone: String,
    issued: Option<DateTime<FixedOffset>>,
    days: Vec<DayRow>,
}

impl Forecast {
    /// Reads a forecast file's text; `name` stands in the problem.
    ///
    /// # Errors
    /// A [`Problem`] with the place: not JSON of the expected form, a value no weather has, a minimum above
    /// its maximum, a day twice, no day at all.
    pub fn read(name: &str, text: &str) -> Result<Self, Problem> {
        let raw: RawForecast = serde_json::from_str(text).map_err(|refusal| {
            let at = offset(text, refusal.line(), refusal.column());
            Problem::at(name, text, at..at + 1, plain(&refusal))
        })?;
        let refuse = |needle: &str, message: String| {
            let start = text.find(needle).unwrap_or(0);
            Problem::at(name, text, start..start + needle.len(), message)
        };
        let timezone = raw.timezone.parse().map_err(|_| {
            let message = format!("time zone \"{}\" is not known; one like \"Asia/Kolkata\" expected", raw.timezone);
            refuse(&raw.timezone, message)
        })?;
        if !((-90.0..=90.0).contains(&raw.latitude) && (-180.0..=180.0).contains(&raw.longitude)) {
            let message = format!(
                "latitude {} and longitude {} were given, -90 to 90 and -180 to 180 expected",
                raw.latitude, raw.longitude
            );
            return Err(refuse("\"latitude\"", message));
        }
        if !(-450.0..=6_000.0).contains(&raw.elevation_m) {
            let message = format!("elevation {} m was given, -450 to 6000 m expected", raw.elevation_m);
            return Err(refuse("\"elevation_m\"", message));
        }
        let mut days = BTreeMap::new();
        for day in &raw.days {
            let shown = day.date.to_string();
            let read = day.day(Origin::Forecast).map_err(|why| refuse(&shown, format!("{shown}: {why}")))?;
            if days.insert(day.date, read).is_some() {
                return Err(refuse(&shown, format!("the day {shown} stands twice")));
            }
        }
        if days.is_empty() {
            return Err(refuse("\"days\"", "no day is given; at least one expected".to_owned()));
        }
        Ok(Self {
            latitude_deg: raw.latitude,
            longitude_deg: raw.longitude,
            elevation_m: raw.elevation_m,
            timezone,
            issued: raw.issued,
            days,
        })
    }

    /// The weather of one day, if the forecast has it.
    #[must_use]
    pub fn on(&self, date: NaiveDate) -> Option<Day> {
        self.days.get(&date).copied()
    }

    /// Its days, in their order.
    pub fn days(&self) -> impl Iterator<Item = &Day> {
        self.days.values()
    }

    /// The first day of the forecast.
    #[must_use]
    pub fn first_day(&self) -> Option<NaiveDate> {
        self.days.keys().next().copied()
    }
}

/// The refusal without its own line and column, which the problem carries.
fn plain(refusal: &serde_json::Error) -> String {
    let text = refusal.to_string();
    let message = text.split(" at line ").next().unwrap_or(&text);
    let hint = if refusal.is_eof() { "; the file is cut short" } else { "" };
    format!("{message}{hint}; a forecast with latitude, longitude, elevation_m, timezone and days expected")
}

fn offset(text: &str, line: usize, column: usize) -> usize {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    (start + column.saturating_sub(1)).min(text.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str =
        r#"{"latitude": 21.15, "longitude": 79.09, "elevation_m": 310, "timezone": "Asia/Kolkata", "days": ["#;

    #[track_caller]
    fn case(days: &str, expected: &str) {
        let got = match Forecast::read("f.json", &format!("{HEAD}{days}]}}")) {
            Ok(forecast) => format!("{} days", forecast.days.len()),
            Err(problem) => problem.message,
        };
        assert_eq!(got, expected, "{days}");
    }

    #[test]
    fn takes_what_weather_can_be_and_no_more() {
        case(r#"{"date":"2026-05-18","tmax_c":43,"tmin_c":29}"#, "1 days");
        case("", "no day is given; at least one expected");
        case(r#"{"date":"2026-05-18","tmax_c":29,"tmin_c":43}"#, "2026-05-18: minimum 43 °C above maximum 29 °C");
        case(
            r#"{"date":"2026-05-18","tmax_c":70,"tmin_c":29}"#,
            "2026-05-18: temperature 70 °C was given, -60 to 60 °C expected",
        );
        case(
            r#"{"date":"2026-05-18","tmax_c":43,"tmin_c":29},{"date":"2026-05-18","tmax_c":43,"tmin_c":29}"#,
            "the day 2026-05-18 stands twice",
        );
    }

    #[test]
    fn a_cut_file_is_refused_with_its_place() {
        let problem = Forecast::read("f.json", &HEAD[..40]).unwrap_err();
        assert_eq!((problem.line, problem.column), (1, 40));
        assert!(problem.message.contains("the file is cut short"), "{}", problem.message);
    }
}
