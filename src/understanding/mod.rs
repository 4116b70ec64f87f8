//! What a message means: quantities, dates.
//!
//! **Never here:** an answer.

pub mod dates;
pub mod quantities;
