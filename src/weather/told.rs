//! What a person at a site said of a day's weather, laid over what is known otherwise.

use super::day::{Day, Origin};
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
    /// Where only one end of the temperature was said and it lies beyond the other, the other stands [`NARROW_K`] from it.
    #[must_use]
    pub fn over(&self, day: Option<Day>) -> Option<Day> {
        let below = day.or_else(|| {
            Some(Day {
                date: self.date,
                tmax: self.tmax?,
                tmin: self.tmin?,
                humidity_mean: None,
                wind_2m: None,
                solar: None,
                sunshine_h: None,
                rain: None,
                rain_chance: None,
                origin: Origin::Told,
            })
        })?;
        let narrow = TemperatureDifference::kelvins;
        let mut day = Day { origin: Origin::Told, ..below };
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::weather::row::DayRow;

    fn below() -> Day {
        let text =
            r#"{"date":"2026-05-18","tmax_c":40,"tmin_c":27,"rh_mean_percent":30,"rain_mm":3,"rain_chance":0.4}"#;
        serde_json::from_str::<DayRow>(text).unwrap().day(Origin::Normals).unwrap()
    }

    #[track_caller]
    fn case(tmax: Option<f64>, tmin: Option<f64>, rain: Option<f64>, (high, low, mm): (f64, f64, f64)) {
        let told = Told::checked(below().date, tmax, tmin, rain).unwrap();
        let day = told.over(Some(below())).unwrap();
        let got = (day.tmax.as_celsius(), day.tmin.as_celsius(), day.rain.unwrap().as_millimetres());
        assert_eq!((got, day.origin), ((high, low, mm), Origin::Told));
        assert_eq!(day.humidity_mean, below().humidity_mean, "what was not said stays");
    }

    #[test]
    fn only_what_was_said_changes() {
        case(Some(43.0), Some(29.0), Some(0.0), (43.0, 29.0, 0.0));
        case(None, None, Some(20.0), (40.0, 27.0, 20.0));
        case(Some(43.0), None, None, (43.0, 27.0, 3.0));
        case(Some(25.0), None, None, (25.0, 20.0, 3.0));
        case(None, Some(41.0), None, (46.0, 41.0, 3.0));
    }

    #[test]
    fn a_day_of_which_nothing_else_is_known() {
        let date = below().date;
        assert_eq!(Told::checked(date, None, None, Some(20.0)).unwrap().over(None), None);
        assert!(Told::checked(date, Some(43.0), Some(29.0), None).unwrap().over(None).is_some());
    }

    #[test]
    fn nonsense_is_refused() {
        let date = below().date;
        let refusal = |tmax, tmin, rain| Told::checked(date, tmax, tmin, rain).unwrap_err();
        assert_eq!(refusal(Some(29.0), Some(43.0), None), "2026-05-18: minimum 43 °C above maximum 29 °C");
        assert_eq!(refusal(Some(143.0), None, None), "2026-05-18: temperature 143 °C was given, -60 to 60 °C expected");
        assert!(refusal(None, None, None).contains("nothing was said"));
        assert!(refusal(None, None, Some(-1.0)).contains("depth of water -1 mm"));
    }
}
