//! Where the sun stands, and what walls hide of it.

use crate::table::{Row, near, rows};
use chrono::{DateTime, Utc};
use rooftend::agronomy::sun_position::sun_position;
use rooftend::garden::{Measure, Wall};
use rooftend::needs::sun_by_walls::sun_hours;

/// The angle between two places in the sky, degrees: a bearing near the zenith means little by itself.
fn apart(from: (f64, f64), to: (f64, f64)) -> f64 {
    let unit = |(elevation, azimuth): (f64, f64)| {
        let (e, a) = (elevation.to_radians(), azimuth.to_radians());
        [e.cos() * a.sin(), e.cos() * a.cos(), e.sin()]
    };
    let (from, to) = (unit(from), unit(to));
    let chord: f64 = from.iter().zip(to).map(|(a, b)| (a - b).powi(2)).sum();
    (2.0 * (chord.sqrt() / 2.0).asin()).to_degrees()
}

/// 0.02° where one library counts the sun's parallax (0.0024°) and the series is good to 0.01°.
#[test]
fn places_of_the_sun() {
    let rows = rows("sun_position.csv");
    assert_eq!(rows.len(), 100);
    for row in &rows {
        let at: DateTime<Utc> = row.text("at_utc").parse().unwrap();
        let got = sun_position(row.number("lat_deg"), row.number("lon_deg"), at);
        let got = (got.elevation_deg, got.azimuth_deg);
        let expected = (row.number("elevation_pvlib_deg"), row.number("azimuth_pvlib_deg"));
        near(apart(got, expected), 0.0, 0.02, row.text("id"));
    }
}

fn wall(row: &Row, columns: [&str; 3]) -> Option<Wall> {
    let length = |column: &str| Measure::read(&format!("{} m", row.text(column))).unwrap();
    let bearing_deg = row.text(columns[0]).parse().ok()?;
    Some(Wall { bearing_deg, height: length(columns[1]), distance: length(columns[2]) })
}

/// Counted minute by minute; a step of ours is 2 minutes at each of up to six comings and goings.
#[test]
fn hours_of_sun_between_walls() {
    let rows = rows("sun_by_walls.csv");
    assert_eq!(rows.len(), 60);
    for row in &rows {
        let first = wall(row, ["bearing_deg", "height_m", "distance_m"]);
        let second = wall(row, ["bearing_2_deg", "height_2_m", "distance_2_m"]);
        let walls: Vec<Wall> = first.into_iter().chain(second).collect();
        let got = sun_hours(row.number("lat_deg"), &walls, row.text("date_local").parse().unwrap());
        near(got, row.number("sun_h"), 0.1, row.text("id"));
    }
}
