//! How a crop's coefficient, height and cover run through its season (FAO-56, chapters 6 and 7).

use crate::agronomy::maths::powf;
use crate::quantity::{Fraction, Length, WindSpeed};

/// Lengths of the four growth stages in days (FAO-56 table 11).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StageDays {
    pub initial: f64,
    pub development: f64,
    pub mid: f64,
    pub late: f64,
}

/// Where in its season a crop stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    Initial,
    Development,
    Mid,
    Late,
    /// The four stages are over.
    Past,
}

impl StageDays {
    /// The stage on a day, counted from 0 at sowing or planting.
    #[must_use]
    pub fn stage(&self, day: f64) -> Stage {
        let until_development = self.initial + self.development;
        let until_mid = until_development + self.mid;
        match day {
            day if day <= self.initial => Stage::Initial,
            day if day < until_development => Stage::Development,
            day if day <= until_mid => Stage::Mid,
            day if day <= until_mid + self.late => Stage::Late,
            _ => Stage::Past,
        }
    }

    #[must_use]
    pub fn total(&self) -> f64 {
        self.initial + self.development + self.mid + self.late
    }
}

/// A coefficient's three table values (Kc of FAO-56 table 12 or Kcb of table 17; no unit).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coefficients {
    pub initial: f64,
    pub mid: f64,
    pub end: f64,
}

impl Coefficients {
    /// The coefficient on a day, counted from 0. FAO-56 eq. 66: level, a straight rise, level, a straight
    /// way to the end value. After the season it stays at the end value.
    #[must_use]
    pub fn on_day(&self, stages: &StageDays, day: f64) -> f64 {
        match stages.stage(day) {
            Stage::Initial => self.initial,
            Stage::Development => {
                self.initial + (day - stages.initial) / stages.development * (self.mid - self.initial)
            }
            Stage::Mid => self.mid,
            Stage::Late => {
                let since = day - (stages.initial + stages.development + stages.mid);
                self.mid + since / stages.late * (self.end - self.mid)
            }
            Stage::Past => self.end,
        }
    }

    /// How far a coefficient has come from its initial to its mid value, 0 to 1. Height and root depth
    /// are taken to follow it: a convention of this house.
    #[must_use]
    pub fn growth(&self, coefficient: f64) -> Fraction {
        let rise = self.mid - self.initial;
        Fraction::of_one(if rise > 0.0 { ((coefficient - self.initial) / rise).clamp(0.0, 1.0) } else { 1.0 })
    }
}

/// A length between its initial and greatest value at a growth of 0 to 1.
#[must_use]
pub fn grown(initial: Length, greatest: Length, growth: Fraction) -> Length {
    initial + (greatest - initial) * growth.as_of_one()
}

/// The air around a crop that its table values do not know of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Climate {
    pub wind_2m: WindSpeed,
    /// Lowest relative humidity of the day.
    pub humidity_min: Fraction,
}

impl Climate {
    /// The term that eq. 62, 65, 70 and 72 share. Wind counts from 1 to 6 m/s, humidity from 20 to 80 %.
    fn adjustment(&self, height: Length) -> f64 {
        let wind = self.wind_2m.as_metres_per_second().clamp(1.0, 6.0);
        let humidity = self.humidity_min.as_percent().clamp(20.0, 80.0);
        (0.04 * (wind - 2.0) - 0.004 * (humidity - 45.0)) * powf(height.as_metres().max(0.0) / 3.0, 0.3)
    }
}

/// A mid or end coefficient of the tables in another climate. FAO-56 eq. 62 (Kc mid), 65 (Kc end) and
/// 70 (Kcb); values below 0.45 stay as they are, as eq. 65 and 70 say.
#[must_use]
pub fn adjusted_to_climate(table_value: f64, climate: &Climate, height: Length) -> f64 {
    if table_value < 0.45 { table_value } else { table_value + climate.adjustment(height) }
}

/// Kc max: the most that evapotranspiration can be over a cropped surface. FAO-56 eq. 72.
#[must_use]
pub fn highest_coefficient(climate: &Climate, height: Length, basal: f64) -> f64 {
    (1.2 + climate.adjustment(height)).max(basal + 0.05)
}

/// The part of the ground that leaves cover, 0 to 0.99. FAO-56 eq. 76; `bare` is Kc min, the
/// coefficient of dry bare ground.
#[must_use]
pub fn cover(basal: f64, bare: f64, highest: f64, height: Length) -> Fraction {
    let share = ((basal - bare).max(0.0) / (highest - bare).max(0.01)).min(1.0);
    Fraction::of_one(powf(share, 1.0 + 0.5 * height.as_metres()).clamp(0.0, 0.99))
}

/// The part of the ground that is both wetted and open to the sun, 0.01 to 1. FAO-56 eq. 75.
#[must_use]
pub fn exposed_and_wetted(cover: Fraction, wetted: Fraction) -> Fraction {
    Fraction::of_one(cover.rest().min(wetted).as_of_one().clamp(0.01, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(day: f64, stage: Stage, coefficient: f64) {
        // Stage lengths and values of FAO-56 example 28 (dry bean).
        let stages = StageDays { initial: 25.0, development: 25.0, mid: 30.0, late: 20.0 };
        let values = Coefficients { initial: 0.15, mid: 1.19, end: 0.35 };
        assert_eq!(stages.stage(day), stage, "day {day}");
        assert!((values.on_day(&stages, day) - coefficient).abs() < 1e-9, "day {day}");
    }

    #[test]
    fn runs_through_the_season() {
        case(0.0, Stage::Initial, 0.15);
        case(25.0, Stage::Initial, 0.15);
        case(37.5, Stage::Development, f64::midpoint(0.15, 1.19));
        case(50.0, Stage::Mid, 1.19);
        case(80.0, Stage::Mid, 1.19);
        case(90.0, Stage::Late, f64::midpoint(1.19, 0.35));
        case(100.0, Stage::Late, 0.35);
        case(101.0, Stage::Past, 0.35);
    }

    #[test]
    fn a_stage_without_days_is_stepped_over() {
        let stages = StageDays { initial: 10.0, development: 0.0, mid: 5.0, late: 0.0 };
        let values = Coefficients { initial: 0.2, mid: 1.0, end: 0.5 };
        let course: Vec<f64> = [10.0, 11.0, 15.0, 16.0].iter().map(|&day| values.on_day(&stages, day)).collect();
        assert_eq!(course, [0.2, 1.0, 1.0, 0.5]);
    }
}
