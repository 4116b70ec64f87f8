//! A forecast's own steps, an hour or several long, before they are days of anyone's clock.

use crate::quantity::{Fraction, Quantity, Temperature, WaterDepth, WindSpeed};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// One step: the air at its beginning, and what falls and shines until its end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    pub at: DateTime<Utc>,
    /// How long it stands for, h; 0 where a document ends with it.
    pub hours: f64,
    pub temperature: Temperature,
    pub humidity: Option<Fraction>,
    /// At 2 m above ground.
    pub wind_2m: Option<WindSpeed>,
    /// The expected amount over the step.
    pub rain: Option<WaterDepth>,
    pub rain_chance: Option<Fraction>,
    /// Mean global radiation over the step, W/m².
    pub solar_w_m2: Option<f64>,
}

/// More than falls on flat ground outside the air at noon, W/m²: the solar constant (FAO-56 chapter 3, 1 367 W/m²).
const MOST_SOLAR_W_M2: f64 = 1_367.0;

impl Step {
    /// When it ends.
    #[must_use]
    pub fn end(&self) -> DateTime<Utc> {
        self.at + TimeDelta::seconds((self.hours * 3600.0).round() as i64)
    }

    /// How much of it lies between two moments, h.
    #[must_use]
    pub fn within(&self, from: DateTime<Utc>, until: DateTime<Utc>) -> f64 {
        let (from, until) = (from.max(self.at), until.min(self.end()));
        ((until - from).num_seconds() as f64 / 3600.0).max(0.0)
    }

    /// The same, ended sooner: what falls and how long it lasts are cut alike.
    #[must_use]
    fn until(self, end: DateTime<Utc>) -> Self {
        let hours = self.within(self.at, end);
        let share = if self.hours > 0.0 { hours / self.hours } else { 1.0 };
        Self { hours, rain: self.rain.map(|rain| rain * share), ..self }
    }
}

/// New steps over old ones: of the old only the hours before the new begin, and none that ended before `since`.
///
/// A service tells of the hours to come only; today's morning is known from what it told before.
#[must_use]
pub fn merged(old: &[Step], new: &[Step], since: DateTime<Utc>) -> Vec<Step> {
    let Some(first) = new.first() else { return old.to_vec() };
    let before = old.iter().filter(|step| step.at < first.at && step.end() > since);
    before.map(|step| step.until(first.at)).chain(new.iter().copied()).collect()
}

/// Radiation that can reach the ground.
///
/// # Errors
/// When it is less than nothing or more than the sun gives.
pub fn solar(w_m2: f64) -> Result<f64, String> {
    if (0.0..=MOST_SOLAR_W_M2).contains(&w_m2) {
        return Ok(w_m2);
    }
    Err(format!("radiation {w_m2} W/m2 was given, 0 to {MOST_SOLAR_W_M2} W/m2 expected"))
}

/// A step as the store keeps it, in the order of [`Step`]'s fields: seconds since 1970, h, °C, part of one, m/s, mm,
/// part of one, W/m².
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StepRow(i64, f64, f64, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>);

impl StepRow {
    /// A step as it is written.
    #[must_use]
    pub fn of(step: &Step) -> Self {
        Self(
            step.at.timestamp(),
            step.hours,
            step.temperature.as_celsius(),
            step.humidity.map(Fraction::as_of_one),
            step.wind_2m.map(WindSpeed::as_metres_per_second),
            step.rain.map(WaterDepth::as_millimetres),
            step.rain_chance.map(Fraction::as_of_one),
            step.solar_w_m2,
        )
    }

    /// The step; none where what was written is none.
    #[must_use]
    pub fn step(self) -> Option<Step> {
        Some(Step {
            at: DateTime::from_timestamp(self.0, 0)?,
            hours: Some(self.1).filter(|hours| (0.0..=24.0).contains(hours))?,
            temperature: Temperature::checked(self.2).ok()?,
            humidity: self.3.map(Fraction::of_one),
            wind_2m: self.4.map(WindSpeed::metres_per_second),
            rain: self.5.map(WaterDepth::millimetres),
            rain_chance: self.6.map(Fraction::of_one),
            solar_w_m2: self.7,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn step(at: &str, hours: f64, celsius: f64, rain_mm: f64) -> Step {
        Step {
            at: at.parse().unwrap(),
            hours,
            temperature: Temperature::celsius(celsius),
            humidity: None,
            wind_2m: None,
            rain: Some(WaterDepth::millimetres(rain_mm)),
            rain_chance: None,
            solar_w_m2: None,
        }
    }

    #[test]
    fn the_morning_stays_when_the_afternoon_is_told_anew() {
        let old = [step("2026-05-18T00:00:00Z", 6.0, 29.0, 6.0), step("2026-05-18T06:00:00Z", 6.0, 40.0, 0.0)];
        let new = [step("2026-05-18T04:00:00Z", 1.0, 36.0, 0.0), step("2026-05-18T05:00:00Z", 1.0, 38.0, 0.5)];
        let since = "2026-05-17T18:30:00Z".parse().unwrap();
        let all = merged(&old, &new, since);
        let cut = step("2026-05-18T00:00:00Z", 4.0, 29.0, 4.0);
        assert_eq!(all, [cut, new[0], new[1]]);
        assert_eq!(merged(&old, &new, "2026-05-18T06:00:00Z".parse().unwrap()), new);
        assert_eq!(merged(&old, &[], since), old);
    }

    #[test]
    fn reads_back_what_was_written() {
        let whole = Step {
            humidity: Some(Fraction::of_one(0.32)),
            wind_2m: Some(WindSpeed::metres_per_second(1.3)),
            rain_chance: Some(Fraction::of_one(0.1)),
            solar_w_m2: Some(640.0),
            ..step("2026-05-18T04:00:00Z", 1.0, 36.5, 0.25)
        };
        let text = serde_json::to_string(&StepRow::of(&whole)).unwrap();
        assert_eq!(serde_json::from_str::<StepRow>(&text).unwrap().step(), Some(whole));
    }
}
