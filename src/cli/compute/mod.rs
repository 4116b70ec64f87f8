//! `compute`: the published sums by themselves, a table in and the same table out with the results
//! appended. Columns that a sum does not know are kept as they are; nothing is written before every row
//! has been worked out.
//!
//! **Never here:** a sum, or a figure of a crop.

mod daylight;
mod emergence;
mod error;
mod reference_et;
mod table;
mod water_balance;
mod weather_row;

pub use daylight::daylight;
pub use emergence::emergence;
pub use error::ComputeError;
pub use reference_et::reference_et;
pub use water_balance::water_balance;

#[cfg(test)]
mod tests;
