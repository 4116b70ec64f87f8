//! Whether a week is past what a crop stands.

use crate::agronomy::thermal_time::DayTemperatures;
use crate::knowledge::{Beyond, Crop, Fact};
use crate::quantity::{Temperature, TemperatureDifference};
use crate::weather::Day;

/// A crop past one of its limits.
#[derive(Debug, Clone, PartialEq)]
pub enum PastLimit {
    /// Mean daily maximum of the week, the limit, and what happens beyond.
    Hot { mean_tmax: Temperature, limit: Fact<Temperature>, beyond: Beyond },
    /// Mean daily minimum of the week, and the limit.
    Cold { mean_tmin: Temperature, limit: Fact<Temperature> },
}

/// Compares a week with a crop's limits; none where it stands the week, or no day is known.
#[must_use]
pub fn past_limit(crop: &Crop, days: &[Day]) -> Option<PastLimit> {
    let mean_tmax = mean(days.iter().map(|day| day.tmax))?;
    let mean_tmin = mean(days.iter().map(|day| day.tmin))?;
    if mean_tmax > crop.heat.day_limit.value() {
        return Some(PastLimit::Hot { mean_tmax, limit: crop.heat.day_limit.clone(), beyond: crop.heat.beyond });
    }
    (mean_tmin < crop.heat.cold_limit.value())
        .then(|| PastLimit::Cold { mean_tmin, limit: crop.heat.cold_limit.clone() })
}

/// The mean of some temperatures; none of none.
pub fn mean(temperatures: impl Iterator<Item = Temperature>) -> Option<Temperature> {
    let zero = Temperature::celsius(0.0);
    let (sum, count) = temperatures.fold((0.0, 0.0), |(sum, n), t| (sum + (t - zero).as_kelvins(), n + 1.0));
    (count > 0.0).then(|| zero + TemperatureDifference::kelvins(sum / count))
}

/// A day's two temperatures, for thermal time.
pub fn temperatures(day: &Day) -> DayTemperatures {
    DayTemperatures { tmax: day.tmax, tmin: day.tmin }
}
