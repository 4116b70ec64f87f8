//! `compute daylight`.

use super::error::ComputeError;
use super::table::Table;
use super::weather_row::latitude_deg;
use crate::agronomy::sun::SunDay;
use crate::agronomy::sun_times::sun_times;
use chrono::{DateTime, Datelike, SecondsFormat, TimeDelta, Utc};
use std::io::{Read, Write};

/// Hours of daylight, sunrise and sunset of every row; an empty cell where the sun does not rise or set.
///
/// # Errors
/// [`ComputeError`] naming row and column; nothing is written then.
pub fn daylight(input: impl Read, output: impl Write) -> Result<(), ComputeError> {
    let table = Table::read(input)?;
    table.must_have("latitude_deg", "degrees, north positive")?;
    table.must_have("longitude_deg", "degrees, east positive")?;
    table.must_have("date", "a date like 2026-05-18")?;
    table.append(
        ["daylight_h", "sunrise_utc", "sunset_utc"],
        |row| {
            let latitude = latitude_deg(row)?;
            let longitude = row.needed_number("longitude_deg", -180.0, 180.0, "degrees")?;
            let date = row.needed_date("date")?;
            let hours = SunDay::new(latitude, date.ordinal() as u16).daylight_hours();
            let times = sun_times(latitude, longitude, date);
            let clock = |event: Option<DateTime<Utc>>| event.map(to_second).unwrap_or_default();
            Ok([
                hours.to_string(),
                clock(times.and_then(|times| times.sunrise)),
                clock(times.and_then(|times| times.sunset)),
            ])
        },
        output,
    )
}

fn to_second(event: DateTime<Utc>) -> String {
    (event + TimeDelta::milliseconds(500)).to_rfc3339_opts(SecondsFormat::Secs, true)
}
