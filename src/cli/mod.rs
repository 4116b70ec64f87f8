//! The command line: reads what was typed, builds the parts, hands them over.
//!
//! **Never here:** any decision about care.

pub mod compute;
