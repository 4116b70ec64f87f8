//! Where the sun stands: its height over the horizon and its bearing.

use crate::agronomy::maths::{asin, atan2, cos, sin, tan};
use chrono::{DateTime, NaiveDate, Utc};

/// The place of the sun's centre in the sky, without refraction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// Degrees over a flat horizon, negative at night.
    pub elevation_deg: f64,
    /// Degrees clockwise from north, 0 to 360.
    pub azimuth_deg: f64,
}

/// The sun's place at a moment. Longitude in degrees, east positive.
///
/// Low-accuracy series of Meeus, Astronomical Algorithms, chapters 22, 25 and 28 (about 0.01°); altitude and
/// azimuth by his eq. 13.5 and 13.6, the azimuth turned to count from north.
#[must_use]
pub fn sun_position(latitude_deg: f64, longitude_deg: f64, at: DateTime<Utc>) -> SunPosition {
    let sun = Sun::after(days_since_epoch(at.timestamp() as f64));
    let second_of_day = at.timestamp().rem_euclid(86_400) as f64;
    let minutes_after_noon = second_of_day / 60.0 - 720.0 + sun.equation_of_time_min + 4.0 * longitude_deg;
    sun.seen_from(latitude_deg, (minutes_after_noon / 4.0).to_radians())
}

/// The sun's places in the course of one day, a step of so many minutes apart, from midnight to midnight by
/// the sun's own clock, each in the middle of its step. The declination is that of 12:00 UTC: over one day it
/// moves by less than 0.4°.
pub fn course_of_day(latitude_deg: f64, date: NaiveDate, step_min: f64) -> impl Iterator<Item = SunPosition> {
    let midday = date.and_hms_opt(12, 0, 0).unwrap_or_default().and_utc();
    let sun = Sun::after(days_since_epoch(midday.timestamp() as f64));
    let steps = (1440.0 / step_min).round().max(1.0) as u32;
    (0..steps).map(move |step| {
        let day_share = (f64::from(step) + 0.5) / f64::from(steps);
        sun.seen_from(latitude_deg, (day_share * 360.0 - 180.0).to_radians())
    })
}

/// Days after 2000-01-01 12:00 UTC.
fn days_since_epoch(unix_seconds: f64) -> f64 {
    unix_seconds / 86_400.0 - 10_957.5
}

/// The sun as seen from the earth's middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sun {
    /// radians
    pub declination: f64,
    pub equation_of_time_min: f64,
}

impl Sun {
    /// Days after 2000-01-01 12:00 UTC. Meeus chapters 22, 25 and 28.
    pub fn after(days: f64) -> Self {
        let t = days / 36_525.0;
        let mean_longitude = (280.466_46 + t * (36_000.769_83 + t * 0.000_303_2)).to_radians();
        let anomaly = (357.529_11 + t * (35_999.050_29 - t * 0.000_153_7)).to_radians();
        let eccentricity = 0.016_708_634 - t * (0.000_042_037 + t * 0.000_000_126_7);
        let centre = sin(anomaly) * (1.914_602 - t * (0.004_817 + t * 0.000_014))
            + sin(2.0 * anomaly) * (0.019_993 - t * 0.000_101)
            + sin(3.0 * anomaly) * 0.000_289;
        let node = (125.04 - 1_934.136 * t).to_radians();
        let longitude = mean_longitude + (centre - 0.005_69 - 0.004_78 * sin(node)).to_radians();
        let mean_obliquity = 23.439_291 - t * (0.013_004_2 + t * (1.64e-7 - t * 5.04e-7));
        let obliquity = (mean_obliquity + 0.002_56 * cos(node)).to_radians();
        let y = tan(obliquity / 2.0) * tan(obliquity / 2.0);
        let equation_of_time = y * sin(2.0 * mean_longitude) - 2.0 * eccentricity * sin(anomaly)
            + 4.0 * eccentricity * y * sin(anomaly) * cos(2.0 * mean_longitude)
            - 0.5 * y * y * sin(4.0 * mean_longitude)
            - 1.25 * eccentricity * eccentricity * sin(2.0 * anomaly);
        Self {
            declination: asin(sin(obliquity) * sin(longitude)),
            equation_of_time_min: 4.0 * equation_of_time.to_degrees(),
        }
    }

    /// Meeus eq. 13.5 and 13.6; the hour angle in radians, 0 at solar noon, negative before.
    fn seen_from(&self, latitude_deg: f64, hour_angle: f64) -> SunPosition {
        let latitude = latitude_deg.to_radians();
        let sine = sin(latitude) * sin(self.declination) + cos(latitude) * cos(self.declination) * cos(hour_angle);
        let from_south =
            atan2(sin(hour_angle), cos(hour_angle) * sin(latitude) - tan(self.declination) * cos(latitude));
        SunPosition {
            elevation_deg: asin(sine.clamp(-1.0, 1.0)).to_degrees(),
            azimuth_deg: (from_south.to_degrees() + 180.0).rem_euclid(360.0),
        }
    }
}
