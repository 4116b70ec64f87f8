//! What a person at a site said of a day's weather, laid over what is known otherwise.

use super::day::Day;
use crate::quantity::{Fraction, OutOfBounds, Quantity, Temperature, TemperatureDifference, WaterDepth};
use chrono::NaiveDate;

/// From minimum to maximum of a day that is far from what was expected of it, K: such a day is mostly an overcast one
/// (judgement).
const NARROW_K: f64 = 5.0;

/// What was said of one day; the rest of it stays as it was known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Told {
    pub date: NaiveDate,
    pub tmax: Option<Temperature>,
    pub tmin: Option<Temperature>,
    /// What fell or is to fall that day; nothing for "no rain".
    pub rain: Option<WaterDepth>,
}

impl Told {
    /// Takes what was said in °C and mm.
    ///
    /// # Errors
    /// A value no weather has, a minimum above its maximum, nothing said at all.
    pub fn checked(
        date: NaiveDate,
        tmax_c: Option<f64>,
        tmin_c: Option<f64>,
        rain_mm: Option<f64>,
    ) -> Result<Self, String> {
        let told = |refusal: OutOfBounds| format!("{date}: {refusal}");
        if let (Some(tmax), Some(tmin)) = (tmax_c, tmin_c)
            && tmin > tmax
        {
            return Err(format!("{date}: minimum {tmin} °C above maximum {tmax} °C"));
        }
        if tmax_c.is_none() && tmin_c.is_none() && rain_mm.is_none() {
            return Err(format!("{date}: nothing was said; a temperature or rain expected"));
        }
        Ok(Self {
            date,
            tmax: tmax_c.map(Temperature::checked).transpose().map_err(told)?,
            tmin: tmin_c.map(Temperature::checked).transpose().map_err(told)?,
            rain: rain_mm.map(WaterDepth::checked).transpose().map_err(told)?,
        })
    }

    /// What was said later, over what was said before.
    #[must_use]
    pub fn after(self, before: Self) -> Self {
        Self {
            date: self.date,
            tmax: self.tmax.or(before.tmax),
            tmin: self.tmin.or(before.tmin),
            rain: self.rain.or(before.rain),
        }
    }

    /// The day with what was said of it. None where the rest of it is not known.
    ///
    /// Where only one end of the temperature was said and it lies beyond the other, the other stands 5 K from it.
    #[must_use]
    pub fn over(&self, day: Option<Day>) -> Option<Day> {
        let mut day = day?;
        let narrow = TemperatureDifference::kelvins;
        match (self.tmax, self.tmin) {
            (Some(tmax), Some(tmin)) => (day.tmax, day.tmin) = (tmax, tmin),
            (Some(tmax), None) => {
                day.tmax = tmax;
                if day.tmin > tmax {
                    day.tmin = tmax + narrow(-NARROW_K);
                }
            }
            (None, Some(tmin)) => {
                day.tmin = tmin;
                if day.tmax < tmin {
                    day.tmax = tmin + narrow(NARROW_K);
                }
            }
            (None, None) => {}
        }
        if let Some(rain) = self.rain {
            day.rain = Some(rain);
            day.rain_chance = Some(if rain > WaterDepth::default() { Fraction::WHOLE } else { Fraction::NONE });
        }
        Some(day)
    }
}
