//! Thermal time: how warm, for how long.

use crate::agronomy::maths::{asin, cos};
use crate::quantity::{Temperature, ThermalTime};
use std::f64::consts::{FRAC_PI_2, PI};

/// One day's highest and lowest temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayTemperatures {
    pub tmax: Temperature,
    pub tmin: Temperature,
}

/// The temperatures between which a crop's clock runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thresholds {
    /// Nothing happens below.
    pub base: Temperature,
    /// Above, it goes no faster (a horizontal cut-off).
    pub upper: Option<Temperature>,
}

/// One day's thermal time, with the day's temperature taken as a sine between its lowest and highest.
///
/// Baskerville and Emin 1969, Ecology 50: 514-517, closed form of one sine a day; the horizontal upper
/// cut-off as in Allen 1976, Environmental Entomology 5: 388-396: what lies above the upper threshold is
/// taken off again. Both from memory; checked by summing the sine itself.
#[must_use]
pub fn thermal_time(day: DayTemperatures, thresholds: Thresholds) -> ThermalTime {
    let above_base = degree_days_above(day, thresholds.base);
    let above_upper = match thresholds.upper {
        Some(upper) => degree_days_above(day, upper),
        None => 0.0,
    };
    ThermalTime::degree_days((above_base - above_upper).max(0.0))
}

/// Days, with the part of the last one, until the days' thermal time reaches a sum; none where the days
/// given run out first.
#[must_use]
pub fn days_to_reach(
    days: impl IntoIterator<Item = DayTemperatures>,
    thresholds: Thresholds,
    sum: ThermalTime,
) -> Option<f64> {
    let none = ThermalTime::default();
    if sum <= none {
        return Some(0.0);
    }
    let mut reached = none;
    let mut whole_days = 0.0;
    for day in days {
        let gain = thermal_time(day, thresholds);
        if reached + gain >= sum {
            return Some(whole_days + (sum - reached) / gain);
        }
        reached = reached + gain;
        whole_days += 1.0;
    }
    None
}

fn degree_days_above(day: DayTemperatures, threshold: Temperature) -> f64 {
    let above = (day.tmax.middle(day.tmin) - threshold).as_kelvins();
    if day.tmin >= threshold {
        above
    } else if day.tmax <= threshold {
        0.0
    } else {
        let amplitude = (day.tmax - day.tmin).as_kelvins() / 2.0;
        let crossing = asin((-above / amplitude).clamp(-1.0, 1.0));
        (above * (FRAC_PI_2 - crossing) + amplitude * cos(crossing)) / PI
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The sine summed minute by minute, with no closed form.
    fn summed(tmax: f64, tmin: f64, base: f64, upper: Option<f64>) -> f64 {
        let minutes = 1440;
        let sum: f64 = (0..minutes)
            .map(|minute| {
                let turn = (f64::from(minute) + 0.5) / f64::from(minutes) * std::f64::consts::TAU;
                let warm = f64::midpoint(tmax, tmin) + (tmax - tmin) / 2.0 * turn.sin();
                (warm.min(upper.unwrap_or(f64::INFINITY)) - base).max(0.0)
            })
            .sum();
        sum / f64::from(minutes)
    }

    #[track_caller]
    fn case(tmax: f64, tmin: f64, base: f64, upper: Option<f64>) {
        let day = DayTemperatures { tmax: Temperature::celsius(tmax), tmin: Temperature::celsius(tmin) };
        let thresholds = Thresholds { base: Temperature::celsius(base), upper: upper.map(Temperature::celsius) };
        let got = thermal_time(day, thresholds).as_degree_days();
        assert!((got - summed(tmax, tmin, base, upper)).abs() < 1e-3, "{tmax} {tmin} {base} {upper:?}: {got}");
    }

    #[test]
    fn agrees_with_the_sine_itself() {
        case(30.0, 20.0, 10.0, None);
        case(30.0, 5.0, 10.0, None);
        case(9.0, 2.0, 10.0, None);
        case(20.0, 20.0, 10.0, Some(30.0));
        case(40.0, 26.0, 10.0, Some(35.0));
        case(42.0, 8.0, 10.0, Some(30.0));
        case(44.0, 36.0, 10.0, Some(30.0));
    }

    #[test]
    fn a_sum_is_reached_within_a_day() {
        let day = DayTemperatures { tmax: Temperature::celsius(25.0), tmin: Temperature::celsius(15.0) };
        let thresholds = Thresholds { base: Temperature::celsius(10.0), upper: None };
        let reach = |sum, days| days_to_reach(std::iter::repeat_n(day, days), thresholds, sum);
        assert_eq!(reach(ThermalTime::degree_days(25.0), 5), Some(2.5));
        assert_eq!(reach(ThermalTime::degree_days(60.0), 5), None);
        assert_eq!(reach(ThermalTime::degree_days(0.0), 0), Some(0.0));
    }
}
