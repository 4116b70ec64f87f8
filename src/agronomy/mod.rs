//! The published sums, one process a file, as pure functions: air and its vapour, the sun over a
//! place, reference evapotranspiration, crop coefficients, the drying surface, the root zone, the
//! day-by-day balance, thermal time, emergence, what a vessel holds, and how hot air feels.
//!
//! "FAO-56" is FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes, Smith; 1998); its equation
//! numbers stand beside each function.
//!
//! **Never here:** the project's records, a crop's figures, the clock, any reading or writing.

pub mod atmosphere;
pub mod crop_coefficient;
pub mod daily_temperature;
pub mod emergence;
pub mod evaporation_layer;
pub mod heat_index;
pub mod maths;
pub mod reference_et;
pub mod root_zone;
pub mod sun;
pub mod sun_position;
pub mod sun_times;
pub mod thermal_time;
pub mod vessel;
pub mod water_balance;

#[cfg(test)]
mod properties;
