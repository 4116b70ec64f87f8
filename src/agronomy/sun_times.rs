//! Sunrise, solar noon and sunset as clock times.

use crate::agronomy::maths::{asin, cos, sin, tan};
use chrono::{DateTime, NaiveDate, TimeDelta, Utc};

/// Altitude of the sun's centre at rise and set: refraction and half the disc, degrees.
const RISE_ALTITUDE_DEG: f64 = -0.8333;
/// Bisections of half a day: 43 200 s / 2²⁴ is far below a second.
const BISECTIONS: usize = 24;

/// The sun's turn around one solar noon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SunTimes {
    pub noon: DateTime<Utc>,
    /// The rise before that noon; none in polar day or night.
    pub sunrise: Option<DateTime<Utc>>,
    /// The set after that noon; none in polar day or night.
    pub sunset: Option<DateTime<Utc>>,
}

/// Sunrise and sunset beside the solar noon that belongs to a local date, at sea level over a flat
/// horizon, with the sun's centre at −0.8333°. Longitude in degrees, east positive. None where the date
/// is beyond the calendar.
///
/// Position of the sun by the low-accuracy series of Meeus, Astronomical Algorithms, chapter 25, and the
/// equation of time of chapter 28, as NOAA's solar calculator uses them (about 0.01°). The events are
/// found by bisection between noon and the midnights beside it, so that the declination is that of the
/// event itself.
#[must_use]
pub fn sun_times(latitude_deg: f64, longitude_deg: f64, local_date: NaiveDate) -> Option<SunTimes> {
    let midday = local_date.and_hms_opt(12, 0, 0)?.and_utc();
    let sky = Sky { latitude: latitude_deg.to_radians(), longitude_deg, midday };
    let noon = sky.solar_noon(-longitude_deg * 4.0 * 60.0);
    let half_day = 43_200.0;
    Some(SunTimes {
        noon: sky.clock(noon)?,
        sunrise: sky.crossing(noon - half_day, noon).and_then(|at| sky.clock(at)),
        sunset: sky.crossing(noon + half_day, noon).and_then(|at| sky.clock(at)),
    })
}

/// Times in here are seconds after 12:00 UTC of the date.
struct Sky {
    latitude: f64,
    longitude_deg: f64,
    midday: DateTime<Utc>,
}

impl Sky {
    fn clock(&self, seconds: f64) -> Option<DateTime<Utc>> {
        self.midday.checked_add_signed(TimeDelta::milliseconds((seconds * 1000.0).round() as i64))
    }

    fn solar_noon(&self, mean_noon: f64) -> f64 {
        // The equation of time moves by less than 30 s in a day: twice is enough.
        (0..2).fold(mean_noon, |at, _| mean_noon - 60.0 * self.sun(at).equation_of_time_min)
    }

    /// Where the sun crosses the altitude of rise and set, between a midnight and noon.
    fn crossing(&self, midnight: f64, noon: f64) -> Option<f64> {
        if self.above(midnight) || !self.above(noon) {
            return None;
        }
        let (mut dark, mut light) = (midnight, noon);
        for _ in 0..BISECTIONS {
            let middle = f64::midpoint(dark, light);
            if self.above(middle) {
                light = middle;
            } else {
                dark = middle;
            }
        }
        Some(f64::midpoint(dark, light))
    }

    fn above(&self, at: f64) -> bool {
        let sun = self.sun(at);
        let minutes_after_noon = at / 60.0 + sun.equation_of_time_min + 4.0 * self.longitude_deg;
        let hour_angle = (minutes_after_noon / 4.0).to_radians();
        let sine_of_altitude =
            sin(self.latitude) * sin(sun.declination) + cos(self.latitude) * cos(sun.declination) * cos(hour_angle);
        sine_of_altitude > sin(RISE_ALTITUDE_DEG.to_radians())
    }

    fn sun(&self, at: f64) -> Sun {
        let days_since_epoch = (self.midday.timestamp() as f64 + at) / 86_400.0 - 10_957.5;
        Sun::after(days_since_epoch)
    }
}

struct Sun {
    /// radians
    declination: f64,
    equation_of_time_min: f64,
}

impl Sun {
    /// Days after 2000-01-01 12:00 UTC. Meeus chapters 22, 25 and 28.
    fn after(days: f64) -> Self {
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
}
