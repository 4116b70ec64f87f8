//! A day as it is written: in a forecast file and in the store alike.

use super::day::{Day, Origin};
use crate::quantity::{Fraction, OutOfBounds, Quantity, Radiation, Temperature, WaterDepth, WindSpeed};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// One day in plain numbers, their units in their names; what is not known is left out.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct DayRow {
    pub date: NaiveDate,
    pub tmax_c: f64,
    pub tmin_c: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rh_mean_percent: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind_2m_m_s: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub solar_mj_m2: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sunshine_h: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain_mm: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain_chance: Option<f64>,
}

impl DayRow {
    /// The day it says, if weather can be so.
    ///
    /// # Errors
    /// What contradicts: a minimum above its maximum, a value no weather has.
    pub fn day(&self, origin: Origin) -> Result<Day, String> {
        if self.tmin_c > self.tmax_c {
            return Err(format!("minimum {} °C above maximum {} °C", self.tmin_c, self.tmax_c));
        }
        let told = |refusal: OutOfBounds| refusal.to_string();
        if let Some(hours) = self.sunshine_h.filter(|hours| !(0.0..=24.0).contains(hours)) {
            return Err(format!("sunshine {hours} h was given, 0 to 24 h expected"));
        }
        Ok(Day {
            date: self.date,
            tmax: Temperature::checked(self.tmax_c).map_err(told)?,
            tmin: Temperature::checked(self.tmin_c).map_err(told)?,
            humidity_mean: self.rh_mean_percent.map(|rh| Fraction::checked(rh / 100.0)).transpose().map_err(told)?,
            wind_2m: self.wind_2m_m_s.map(WindSpeed::checked).transpose().map_err(told)?,
            solar: self.solar_mj_m2.map(Radiation::checked).transpose().map_err(told)?,
            sunshine_h: self.sunshine_h,
            rain: self.rain_mm.map(WaterDepth::checked).transpose().map_err(told)?,
            rain_chance: self.rain_chance.map(Fraction::checked).transpose().map_err(told)?,
            origin,
        })
    }

    /// A day as it is written, to a thousandth of each unit, which no forecast knows; where it comes from is kept beside it.
    #[must_use]
    pub fn of(day: &Day) -> Self {
        let fine = |value: f64| (value * 1_000.0).round() / 1_000.0;
        Self {
            date: day.date,
            tmax_c: fine(day.tmax.as_celsius()),
            tmin_c: fine(day.tmin.as_celsius()),
            rh_mean_percent: day.humidity_mean.map(Fraction::as_percent).map(fine),
            wind_2m_m_s: day.wind_2m.map(WindSpeed::as_metres_per_second).map(fine),
            solar_mj_m2: day.solar.map(Radiation::as_megajoules_per_square_metre).map(fine),
            sunshine_h: day.sunshine_h.map(fine),
            rain_mm: day.rain.map(WaterDepth::as_millimetres).map(fine),
            rain_chance: day.rain_chance.map(Fraction::as_of_one).map(fine),
        }
    }
}
