//! A site's days: what was said there, what a service or a file foretells, what is kept of days gone by, else the
//! normals of its nearest listed place; which one it was, and how old. Providers fetch; all else here is pure.
//!
//! **Never here:** what a crop needs.

pub mod aridity;
pub mod cell;
pub mod daily;
mod day;
pub mod kept;
mod normals;
pub mod past_line;
pub mod row;
pub mod schedule;
pub mod source;
pub mod step;
mod tables;
mod told;
mod wet_days;

pub use day::{Day, Origin};
pub use source::Service;
pub use source::file::Forecast;
pub use tables::{Foretold, SiteDays, Weather, reaches};
pub use told::Told;
