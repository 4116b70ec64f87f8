//! A site's days: from a forecast file, else from the normals of its nearest listed place; which one it
//! was, and how old.
//!
//! **Never here:** what a crop needs.

pub mod aridity;
mod day;
mod normals;
pub mod source;
mod tables;
mod told;
mod wet_days;

pub use day::{Day, Origin};
pub use source::file::Forecast;
pub use tables::Weather;
pub use told::Told;
