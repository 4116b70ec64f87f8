//! Thermal time along a run of days, and the morning on which a sum is full: when a crop is first picked, for every answer.

use crate::agronomy::thermal_time::{DayTemperatures, Thresholds, thermal_time};
use crate::quantity::ThermalTime;

/// Degree days gathered before each day of a run, and after the last.
#[derive(Debug, Clone)]
pub struct Gathered {
    before: Vec<f64>,
}

/// A hair of floating point is no reason for another day.
const HAIR: f64 = 1e-9;

impl Gathered {
    /// Along some days.
    #[must_use]
    pub fn over(days: impl Iterator<Item = DayTemperatures>, thresholds: Thresholds) -> Self {
        let mut sum = 0.0;
        let mut before = vec![sum];
        before.extend(days.map(|day| {
            sum += thermal_time(day, thresholds).as_degree_days();
            sum
        }));
        Self { before }
    }

    /// The place of the day whose morning is nearest to when a sum is full that begins with the morning of another;
    /// none where the days end before it is.
    #[must_use]
    pub fn reached(&self, from: usize, sum: ThermalTime) -> Option<usize> {
        let wanted = self.before.get(from)? + sum.as_degree_days() - HAIR;
        let place = self.before.partition_point(|gathered| *gathered < wanted).max(from + 1);
        let (before, after) = (self.before.get(place - 1)?, self.before.get(place)?);
        Some(nearest(place, wanted, *before, *after))
    }
}

/// The same from the first day on, with no day looked at beyond that morning: most crops are ready long before the days
/// known end.
#[must_use]
pub fn full_after(
    days: impl Iterator<Item = DayTemperatures>,
    thresholds: Thresholds,
    sum: ThermalTime,
) -> Option<usize> {
    let wanted = sum.as_degree_days() - HAIR;
    let mut before = 0.0;
    for (passed, day) in days.enumerate() {
        let after = before + thermal_time(day, thresholds).as_degree_days();
        if after >= wanted {
            return Some(nearest(passed + 1, wanted, before, after));
        }
        before = after;
    }
    None
}

/// The morning after the day on which a sum is full, or the one before it, whichever is nearer.
fn nearest(after_day: usize, wanted: f64, before: f64, after: f64) -> usize {
    let late = wanted - before >= (after - before) / 2.0;
    if late && wanted > before { after_day } else { after_day - 1 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Temperature;

    #[track_caller]
    fn case(from: usize, sum: f64, expected: Option<usize>) {
        let celsius = Temperature::celsius;
        let days = std::iter::repeat_n(DayTemperatures { tmax: celsius(25.0), tmin: celsius(15.0) }, 5);
        let (thresholds, sum) = (Thresholds { base: celsius(10.0), upper: None }, ThermalTime::degree_days(sum));
        assert_eq!(Gathered::over(days.clone(), thresholds).reached(from, sum), expected, "{from} {sum:?}");
        if from == 0 {
            assert_eq!(full_after(days, thresholds, sum), expected, "{sum:?}");
        }
    }

    /// Ten degree days a day.
    #[test]
    fn a_sum_is_full_by_the_nearest_morning() {
        case(0, 0.0, Some(0));
        case(0, 10.0, Some(1));
        case(0, 13.0, Some(1));
        case(0, 17.0, Some(2));
        case(0, 50.0, Some(5));
        case(0, 51.0, None);
        case(3, 14.0, Some(4));
        case(3, 16.0, Some(5));
        case(2, 0.0, Some(2));
        case(9, 1.0, None);
    }
}
