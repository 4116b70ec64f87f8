//! Hours of direct sun that walls leave to a bed.

use crate::agronomy::maths::{cos, tan};
use crate::agronomy::sun_position::{SunPosition, course_of_day};
use crate::garden::Wall;
use chrono::{Datelike, NaiveDate};

/// Minutes between two looks at the sun.
const STEP_MIN: f64 = 2.0;

/// Hours of direct sun on a clear day: the sun is over the horizon and over every wall.
///
/// A wall is taken as straight and without end, square to its bearing: from the bed its top stands at
/// `atan(height × cos(azimuth − bearing) / distance)`. A real wall ends, so a bed has this much sun or more.
/// The distance is that from the middle of the bed.
#[must_use]
pub fn sun_hours(latitude_deg: f64, walls: &[Wall], date: NaiveDate) -> f64 {
    let lit = course_of_day(latitude_deg, date, STEP_MIN)
        .filter(|sun| sun.elevation_deg > 0.0 && walls.iter().all(|wall| clears(*sun, wall)))
        .count();
    lit as f64 * STEP_MIN / 60.0
}

/// The same in the middle of each month of a year, January first.
#[must_use]
pub fn sun_hours_by_month(latitude_deg: f64, walls: &[Wall], year: i32) -> [f64; 12] {
    let first = NaiveDate::from_ymd_opt(year, 1, 15).unwrap_or_default();
    std::array::from_fn(|month| {
        let middle = first.with_month(month as u32 + 1).unwrap_or(first);
        sun_hours(latitude_deg, walls, middle)
    })
}

/// Whether the sun stands over a wall, or behind the bed as seen from it.
fn clears(sun: SunPosition, wall: &Wall) -> bool {
    let towards = cos((sun.azimuth_deg - wall.bearing_deg).to_radians());
    let distance = wall.distance.quantity().as_metres();
    if towards <= 0.0 {
        return true;
    }
    tan(sun.elevation_deg.to_radians()) * distance > wall.height.quantity().as_metres() * towards
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::agronomy::sun::SunDay;
    use crate::garden::Measure;

    fn wall(bearing_deg: f64, height: &str, distance: &str) -> Wall {
        let read = |text| Measure::read(text).unwrap();
        Wall { bearing_deg, height: read(height), distance: read(distance) }
    }

    /// At the equator at an equinox the sun goes from east to west through the zenith: a west wall as high
    /// as it is far hides it below 45°, that is for the last 3 of 12 hours.
    #[test]
    fn straight_up_and_down() {
        let equinox = "2026-03-20".parse().unwrap();
        let hours = |walls: &[Wall]| sun_hours(0.0, walls, equinox);
        let case = |walls: &[Wall], expected: f64| {
            assert!((hours(walls) - expected).abs() < 0.1, "{} for {expected}", hours(walls));
        };
        case(&[], 12.0);
        case(&[wall(270.0, "2 m", "2 m")], 9.0);
        case(&[wall(270.0, "2 m", "2 m"), wall(90.0, "2 m", "2 m")], 6.0);
        case(&[wall(270.0, "1.732 m", "1 m")], 8.0);
    }

    #[test]
    fn no_wall_is_the_whole_day() {
        for (latitude, date) in [(21.15, "2026-05-18"), (28.6, "2026-12-21"), (-31.4, "2026-06-21")] {
            let date: NaiveDate = date.parse().unwrap();
            let whole = SunDay::new(latitude, u16::try_from(date.ordinal()).unwrap()).daylight_hours();
            let got = sun_hours(latitude, &[], date);
            assert!((got - whole).abs() < 0.15, "{latitude} {date}: {got} for {whole}");
        }
    }

    proptest::proptest! {
        #[test]
        fn a_higher_or_nearer_wall_never_gives_more_sun(
            latitude in -50.0..50.0_f64, bearing in 0.0..360.0_f64, day in 1_u32..365, height in 50_u32..500, more in 1_u32..300,
        ) {
            let date = NaiveDate::from_yo_opt(2026, day).unwrap();
            let at = |height: u32, distance: u32| {
                sun_hours(latitude, &[wall(bearing, &format!("{height} cm"), &format!("{distance} cm"))], date)
            };
            let one = at(height, 200);
            proptest::prop_assert!(at(height + more, 200) <= one);
            proptest::prop_assert!(at(height, 200 - more.min(190)) <= one);
            proptest::prop_assert!(one <= sun_hours(latitude, &[], date));
        }
    }
}
