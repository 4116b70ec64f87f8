//! Hours of direct sun between two hours of the clock.

use crate::agronomy::sun_times::sun_times;
use chrono::{NaiveDate, NaiveDateTime, TimeDelta};
use chrono_tz::Tz;

/// Hours of sun on a clear day at a place, from an hour of its clock, else from sunrise, until another, else until
/// sunset. None where the sun does not rise or set that day, or the span is empty.
///
/// Sunrise and sunset are those of `sun_times` (Meeus; over a flat horizon at sea level) on that date: at another time of
/// the year the same words mean other hours.
#[must_use]
pub fn sun_hours_between(
    (latitude_deg, longitude_deg): (f64, f64),
    zone: Tz,
    date: NaiveDate,
    (from_h, until_h): (Option<f64>, Option<f64>),
) -> Option<f64> {
    let sun = sun_times(latitude_deg, longitude_deg, date)?;
    let local = |at: chrono::DateTime<chrono::Utc>| hours_of(at.with_timezone(&zone).naive_local(), date);
    let (rise, set) = (local(sun.sunrise?), local(sun.sunset?));
    let from = from_h.unwrap_or(rise).max(rise);
    let until = until_h.unwrap_or(set).min(set);
    (until > from).then_some(until - from)
}

/// Hours after the midnight of a date.
fn hours_of(at: NaiveDateTime, date: NaiveDate) -> f64 {
    let since: TimeDelta = at - date.and_hms_opt(0, 0, 0).unwrap_or(at);
    since.num_seconds() as f64 / 3600.0
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Rise and set of row 004 of `tests/published/daylength.csv` (NREL's algorithm): 26.6239° N, 72.5822° E, 10 November
    /// 2026, 01:25:05 and 12:21:45 UTC, that is 06:55:05 and 17:51:45 in India.
    #[test]
    fn between_rise_and_set_of_a_published_row() {
        let day = "2026-11-10".parse().unwrap();
        let hours = |from, until| sun_hours_between((26.6239, 72.5822), Tz::Asia__Kolkata, day, (from, until));
        let near = |got: Option<f64>, expected: f64| {
            assert!((got.unwrap() - expected).abs() < 0.02, "{got:?} against {expected}");
        };
        let (rise, set) = (6.0 + 55.08 / 60.0, 17.0 + 51.75 / 60.0);
        near(hours(None, Some(14.0)), 14.0 - rise);
        near(hours(Some(10.0), Some(14.0)), 4.0);
        near(hours(Some(10.0), None), set - 10.0);
        near(hours(None, None), set - rise);
        assert_eq!(hours(Some(15.0), Some(14.0)), None);
        assert_eq!(hours(None, Some(5.0)), None);
    }
}
