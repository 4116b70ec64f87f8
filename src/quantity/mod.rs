//! Lengths, areas, volumes, masses, water depths, temperatures and their differences, thermal time,
//! radiation, wind, pressure, fractions, loads: one type each, one constructor per unit, and
//! [`Estimate`], a figure with its range.
//!
//! **Never here:** a formula of the trade. Only products that mean something exist
//! (`WaterDepth × Area = Volume`); everything else is done in plain `f64` inside one equation,
//! unwrapped in its first lines and wrapped in its last.

mod estimate;
mod fraction;
mod kind;
mod load;
mod pressure;
mod radiation;
mod size;
mod temperature;
mod water_depth;
mod wind;
mod written;

pub use estimate::{Estimate, NotOrdered};
pub use fraction::Fraction;
pub use kind::{OutOfBounds, Quantity};
pub use load::RoofLoad;
pub use pressure::Pressure;
pub use radiation::Radiation;
pub use size::{Area, Length, Mass, Volume};
pub use temperature::{Temperature, TemperatureDifference, ThermalTime};
pub use water_depth::WaterDepth;
pub use wind::WindSpeed;
pub use written::{NotWritten, Unit, UnitOf, Written};
