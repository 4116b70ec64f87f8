//! The air: its pressure, the vapour it can hold and the vapour it holds, and the wind near the ground
//! (FAO-56, chapter 3).

use crate::agronomy::maths::{exp, ln, powf};
use crate::quantity::{Fraction, Pressure, Temperature, WindSpeed};

/// Air pressure at an elevation in metres above the sea. FAO-56 eq. 7.
#[must_use]
pub fn air_pressure(elevation_m: f64) -> Pressure {
    Pressure::kilopascals(101.3 * powf((293.0 - 0.0065 * elevation_m) / 293.0, 5.26))
}

/// Psychrometric constant, kPa/K. FAO-56 eq. 8.
#[must_use]
pub fn psychrometric_constant_kpa_per_k(air_pressure: Pressure) -> f64 {
    0.665e-3 * air_pressure.as_kilopascals()
}

/// Saturation vapour pressure e°(T). FAO-56 eq. 11.
#[must_use]
#[inline]
pub fn saturation_pressure(air: Temperature) -> Pressure {
    let t = air.as_celsius();
    Pressure::kilopascals(0.6108 * exp(17.27 * t / (t + 237.3)))
}

/// Mean saturation vapour pressure of a day, from e°(Tmax) and e°(Tmin). FAO-56 eq. 12.
#[must_use]
#[inline]
pub fn mean_saturation_pressure(at_tmax: Pressure, at_tmin: Pressure) -> Pressure {
    (at_tmax + at_tmin) / 2.0
}

/// Slope of the saturation vapour pressure curve, kPa/K. FAO-56 eq. 13.
#[must_use]
#[inline]
pub fn saturation_slope_kpa_per_k(air: Temperature) -> f64 {
    let from_pole = air.as_celsius() + 237.3;
    4098.0 * saturation_pressure(air).as_kilopascals() / (from_pole * from_pole)
}

/// Vapour pressure from the dew point. FAO-56 eq. 14; with the lowest temperature of the day for the
/// dew point it is eq. 48, the way where no humidity was measured. In dry places the dew point lies
/// below the lowest temperature, and eq. 48 then foretells too little evapotranspiration.
#[must_use]
#[inline]
pub fn vapour_pressure_from_dew_point(dew_point: Temperature) -> Pressure {
    saturation_pressure(dew_point)
}

/// Vapour pressure from the day's highest and lowest relative humidity. FAO-56 eq. 17.
#[must_use]
#[inline]
pub fn vapour_pressure_from_extremes(
    at_tmax: Pressure,
    at_tmin: Pressure,
    humidity_max: Fraction,
    humidity_min: Fraction,
) -> Pressure {
    (at_tmin * humidity_max.as_of_one() + at_tmax * humidity_min.as_of_one()) / 2.0
}

/// Vapour pressure from the day's highest relative humidity alone. FAO-56 eq. 18.
#[must_use]
#[inline]
pub fn vapour_pressure_from_highest(at_tmin: Pressure, humidity_max: Fraction) -> Pressure {
    at_tmin * humidity_max.as_of_one()
}

/// Vapour pressure from the day's mean relative humidity. FAO-56 eq. 19.
#[must_use]
#[inline]
pub fn vapour_pressure_from_mean(at_tmax: Pressure, at_tmin: Pressure, humidity_mean: Fraction) -> Pressure {
    mean_saturation_pressure(at_tmax, at_tmin) * humidity_mean.as_of_one()
}

/// Wind at 2 m above grass from wind measured at another height in metres. FAO-56 eq. 47.
///
/// The logarithm has no meaning close to the ground: below 0.5 m there is no answer.
#[must_use]
pub fn wind_at_two_metres(measured: WindSpeed, height_m: f64) -> Option<WindSpeed> {
    (height_m >= 0.5).then(|| measured * (4.87 / ln(67.8 * height_m - 5.42)))
}
