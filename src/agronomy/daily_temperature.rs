//! The air's temperature at any hour of a day.

use crate::agronomy::maths::{exp, sin};
use crate::quantity::Temperature;
use std::f64::consts::PI;

/// Lag of the maximum after noon, h: parameter a for air at 1.5 m (Parton and Logan 1981, table 1).
const MAXIMUM_LAG_H: f64 = 1.86;
/// Coefficient of the fall at night, parameter b.
const NIGHT_FALL: f64 = 2.20;
/// Lag of the minimum after sunrise, h, parameter c: it comes ten minutes before.
const MINIMUM_LAG_H: f64 = -0.17;

/// One day, from its minimum near sunrise to the next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DailyCurve {
    pub tmax: Temperature,
    pub tmin: Temperature,
    /// The minimum of the day after, towards which the night falls.
    pub next_tmin: Temperature,
    /// On the clock of the answer, h.
    pub sunrise_h: f64,
    pub sunset_h: f64,
}

impl DailyCurve {
    /// Air temperature at an hour of the same clock, from about sunrise (earlier hours take the minimum) to the
    /// next minimum.
    ///
    /// Parton and Logan 1981, Agricultural Meteorology 23: 205-216: by day a cut sine, by night an exponential
    /// fall. Their night curve does not quite reach the minimum; the displacement of Kimball and Bellamy 1986
    /// (Energy in Agriculture 5: 185-197) closes the gap. The paper's abstract was seen; equations and parameters
    /// were seen in programs and manuals that cite its table 1. Mean absolute error there 1.2 to 2.6 K.
    #[must_use]
    pub fn air_temperature(&self, hour: f64) -> Temperature {
        let (tmax, tmin) = (self.tmax.as_celsius(), self.tmin.as_celsius());
        let daylight = self.sunset_h - self.sunrise_h;
        let lowest_at = self.sunrise_h + MINIMUM_LAG_H;
        let by_day = |hour: f64| {
            let turn = PI * (hour - lowest_at) / (daylight + 2.0 * MAXIMUM_LAG_H);
            tmin + (tmax - tmin) * sin(turn)
        };
        if hour <= lowest_at {
            return self.tmin;
        }
        if hour <= self.sunset_h {
            return Temperature::celsius(by_day(hour));
        }
        let at_sunset = by_day(self.sunset_h);
        let night = 24.0 - daylight + MINIMUM_LAG_H;
        let next = self.next_tmin.as_celsius();
        let below = (at_sunset - next) / (exp(NIGHT_FALL) - 1.0);
        let fallen = exp(-NIGHT_FALL * (hour - self.sunset_h).min(night) / night);
        Temperature::celsius(next - below + (at_sunset - next + below) * fallen)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn day(tmax: f64, tmin: f64, next_tmin: f64, sunrise_h: f64, sunset_h: f64) -> DailyCurve {
        let celsius = Temperature::celsius;
        DailyCurve { tmax: celsius(tmax), tmin: celsius(tmin), next_tmin: celsius(next_tmin), sunrise_h, sunset_h }
    }

    #[track_caller]
    fn case(curve: &DailyCurve, hour: f64, expected: f64) {
        let got = curve.air_temperature(hour).as_celsius();
        assert!((got - expected).abs() < 1e-9, "{hour}: {got}");
    }

    #[test]
    fn lies_on_its_ends() {
        let curve = day(43.0, 29.0, 28.0, 5.5, 18.75);
        case(&curve, 5.5 - 0.17, 29.0);
        // The crest stands a + c after the middle of the day: a quarter turn of the sine.
        case(&curve, 5.5 + 13.25 / 2.0 + 1.86 - 0.17, 43.0);
        case(&curve, 24.0 + 5.5 - 0.17, 28.0);
        // A third of a half turn after the minimum: sin 30° = 1/2, so half-way up.
        case(&curve, 5.5 - 0.17 + (13.25 + 2.0 * 1.86) / 6.0, 36.0);
    }

    proptest! {
        #[test]
        fn never_leaves_its_range(tmin in 0.0..30.0f64, rise in 1.0..20.0f64, next in -4.0..0.5f64, hour in 4.0..29.0f64) {
            let curve = day(tmin + rise, tmin, tmin + next, 6.0, 18.0);
            let got = curve.air_temperature(hour).as_celsius();
            prop_assert!(got <= tmin + rise + 1e-9 && got >= tmin.min(tmin + next) - 1e-9, "{got}");
        }

        #[test]
        fn has_no_jump(tmin in 0.0..30.0f64, rise in 1.0..20.0f64, hour in 5.9..29.0f64) {
            let curve = day(tmin + rise, tmin, tmin, 6.0, 18.0);
            let step = curve.air_temperature(hour + 0.001) - curve.air_temperature(hour);
            prop_assert!(step.as_kelvins().abs() < 0.001 * rise, "{step:?}");
        }
    }
}
