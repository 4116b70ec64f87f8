//! How long a sowing takes to come up.

use crate::quantity::{Estimate, Temperature, TemperatureDifference, ThermalTime};

/// Where the base temperature is in doubt and the mix lies within that doubt, no upper end can be
/// foretold; a range then ends here. After so long a seed is taken as lost.
pub const LONGEST_WAIT_DAYS: f64 = 60.0;

/// Days from sowing to emergence in moist mix at a constant temperature: the thermal-time sum over what
/// the mix is warmer than the base.
///
/// S = T_sum / (T − T_base), the linear model of Bierhuizen and Wagenvoort 1974, Scientia Horticulturae
/// 2: 213-219 (from memory). It knows no temperature that is too hot; the caller does.
///
/// None at or below the base's best value. `low` and `high` are the corners of the doubtful inputs; a
/// high end beyond [`LONGEST_WAIT_DAYS`], or without bound because the temperature lies at or below the
/// base's own high end, is cut to that number of days (but never below the value).
#[must_use]
pub fn days_to_emergence(
    mix: Temperature,
    base: Estimate<Temperature>,
    sum: Estimate<ThermalTime>,
) -> Option<Estimate<f64>> {
    let value = days(mix, base.value(), sum.value())?;
    let low = days(mix, base.low(), sum.low())?;
    let high = days(mix, base.high(), sum.high()).map_or(LONGEST_WAIT_DAYS, |days| days.min(LONGEST_WAIT_DAYS));
    Some(Estimate::spanning(value, [low, high.max(value)]))
}

fn days(mix: Temperature, base: Temperature, sum: ThermalTime) -> Option<f64> {
    let warmth: TemperatureDifference = mix - base;
    (warmth > TemperatureDifference::default()).then(|| sum / warmth.for_days(1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(mix: f64, expected: Option<(f64, f64, f64)>) {
        let base = Estimate::between(8.0, 10.0, 12.0).unwrap().map(Temperature::celsius);
        let sum = Estimate::between(60.0, 80.0, 100.0).unwrap().map(ThermalTime::degree_days);
        let got = days_to_emergence(Temperature::celsius(mix), base, sum);
        assert_eq!(got.map(|days| (days.low(), days.value(), days.high())), expected, "{mix} °C");
    }

    #[test]
    fn corners_of_the_doubt() {
        case(10.0, None);
        case(5.0, None);
        case(20.0, Some((5.0, 8.0, 12.5)));
        case(18.0, Some((6.0, 10.0, 100.0 / 6.0)));
        // The mix is within the doubt of the base, then so little above it that the wait has no sense.
        case(12.0, Some((15.0, 40.0, 60.0)));
        case(13.0, Some((12.0, 80.0 / 3.0, 60.0)));
        case(11.0, Some((20.0, 80.0, 80.0)));
    }
}
