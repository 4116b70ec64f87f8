//! What a message means: quantities, dates.
//!
//! **Never here:** an answer.

mod calendar;
pub mod dates;
mod dimensions;
pub mod quantities;
mod tense;
