//! One day's weather as it is known.

use crate::quantity::{Fraction, Radiation, Temperature, WaterDepth, WindSpeed};
use chrono::NaiveDate;

/// One day at one place. What is not known is left out, never guessed here.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Day {
    pub date: NaiveDate,
    pub tmax: Temperature,
    pub tmin: Temperature,
    pub humidity_mean: Option<Fraction>,
    /// At 2 m above ground.
    pub wind_2m: Option<WindSpeed>,
    /// Global radiation on open ground.
    pub solar: Option<Radiation>,
    /// Bright sunshine, h.
    pub sunshine_h: Option<f64>,
    /// The expected amount.
    pub rain: Option<WaterDepth>,
    pub rain_chance: Option<Fraction>,
    pub origin: Origin,
}

/// Where a day's weather comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    Forecast,
    /// A day that has passed, as the last forecast before its end had it.
    Kept,
    /// A day that has passed, as its source had it afterwards: measured or analysed.
    Observed,
    /// A person at the site said something of it; what they did not say is of the day below.
    Told,
    /// Monthly normals: a usual day of that time of the year.
    Normals,
}
