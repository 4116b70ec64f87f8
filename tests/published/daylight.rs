//! Day length and clock times of rise, noon and set.

use crate::table::{near, rows};
use chrono::{DateTime, Utc};
use rooftend::agronomy::sun::SunDay;
use rooftend::agronomy::sun_times::sun_times;

#[test]
fn hours_of_daylight() {
    let rows = rows("daylength.csv");
    assert_eq!(rows.len(), 150);
    for row in &rows {
        let sun = SunDay::new(row.number("lat_deg"), row.day_of_year("doy"));
        near(sun.daylight_hours(), row.number("daylight_fao56_h"), row.number("tol_fao56_h"), row.text("id"));
    }
}

#[test]
fn clock_times_of_the_sun() {
    let rows = rows("daylength.csv");
    assert_eq!(rows.len(), 150);
    for row in &rows {
        let id = row.text("id");
        let date = row.text("date_local").parse().unwrap();
        let got = sun_times(row.number("lat_deg"), row.number("lon_deg"), date).unwrap();
        let case = |got: Option<DateTime<Utc>>, column: &str| {
            let expected: DateTime<Utc> = row.text(column).parse().unwrap();
            let off = (got.unwrap() - expected).as_seconds_f64();
            near(off, 0.0, row.number("tol_sun_s"), &format!("{id} {column}"));
        };
        case(got.sunrise, "sunrise_utc");
        case(Some(got.noon), "solar_noon_utc");
        case(got.sunset, "sunset_utc");
    }
}
