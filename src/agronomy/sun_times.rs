//! Sunrise, solar noon and sunset as clock times.

use crate::agronomy::maths::{cos, sin};
use crate::agronomy::sun_position::Sun;
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
