//! How hot humid air feels to a person in the shade: the heat index.

use super::atmosphere::{mean_saturation_pressure, saturation_pressure};
use super::maths::sqrt;
use crate::quantity::{Fraction, Temperature};

/// The heat index in the shade and a light wind: the regression of Rothfusz (National Weather Service Technical
/// Attachment SR 90-23, 1990) with its adjustments for dry and for very humid air, and below 80 °F the simpler formula,
/// as the Weather Prediction Center prints them. Good to 1.3 °F within the data it was fitted to; in full sun it feels
/// up to 15 °F hotter.
#[must_use]
pub fn heat_index(air: Temperature, humidity: Fraction) -> Temperature {
    let (t, rh) = (air.as_celsius() * 1.8 + 32.0, humidity.as_percent());
    let simple = 0.5 * (t + 61.0 + (t - 68.0) * 1.2 + rh * 0.094);
    let felt = if (simple + t) / 2.0 < 80.0 { simple } else { regression(t, rh) + adjustment(t, rh) };
    Temperature::celsius((felt - 32.0) / 1.8)
}

fn regression(t: f64, rh: f64) -> f64 {
    -42.379 + 2.049_015_23 * t + 10.143_331_27 * rh
        - 0.224_755_41 * t * rh
        - 0.006_837_83 * t * t
        - 0.054_817_17 * rh * rh
        + 0.001_228_74 * t * t * rh
        + 0.000_852_82 * t * rh * rh
        - 0.000_001_99 * t * t * rh * rh
}

fn adjustment(t: f64, rh: f64) -> f64 {
    if rh < 13.0 && (80.0..=112.0).contains(&t) {
        return -(13.0 - rh) / 4.0 * sqrt((17.0 - (t - 95.0).abs()) / 17.0);
    }
    if rh > 85.0 && (80.0..=87.0).contains(&t) {
        return (rh - 85.0) / 10.0 * (87.0 - t) / 5.0;
    }
    0.0
}

/// Relative humidity at the hottest hour, where the vapour of a day stays the same: FAO-56 eq. 19 solved for it.
#[must_use]
pub fn humidity_at_tmax(tmax: Temperature, tmin: Temperature, humidity_mean: Fraction) -> Fraction {
    let (hot, cool) = (saturation_pressure(tmax), saturation_pressure(tmin));
    let vapour = mean_saturation_pressure(hot, cool) * humidity_mean.as_of_one();
    Fraction::of_one((vapour / hot).clamp(0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(air_f: f64, humidity_percent: f64, expected_f: f64) {
        let air = Temperature::celsius((air_f - 32.0) / 1.8);
        let got = heat_index(air, Fraction::percent(humidity_percent)).as_celsius() * 1.8 + 32.0;
        assert!((got - expected_f).abs() <= 1.3, "{air_f} °F, {humidity_percent} %: {got}, the chart has {expected_f}");
    }

    /// The weather service's chart, as reprinted: whole degrees Fahrenheit.
    #[test]
    fn as_the_printed_chart() {
        case(80.0, 40.0, 80.0);
        case(90.0, 60.0, 100.0);
        case(90.0, 100.0, 132.0);
        case(86.0, 90.0, 105.0);
        case(82.0, 95.0, 93.0);
        case(96.0, 65.0, 121.0);
        case(100.0, 40.0, 109.0);
        case(104.0, 55.0, 137.0);
        case(110.0, 40.0, 136.0);
    }

    #[test]
    fn dry_air_feels_cooler_than_it_is() {
        let air = Temperature::celsius(42.0);
        assert!(heat_index(air, Fraction::percent(8.0)) < air);
        assert!(heat_index(air, Fraction::percent(30.0)) > air);
    }

    #[test]
    fn the_hot_hour_is_the_driest() {
        let (tmax, tmin) = (Temperature::celsius(43.0), Temperature::celsius(29.0));
        let noon = humidity_at_tmax(tmax, tmin, Fraction::percent(30.0));
        assert!(noon < Fraction::percent(30.0) && noon > Fraction::percent(15.0), "{noon:?}");
    }
}
