//! One conversation from end to end: who speaks, what they may see, what was said before; fetches what the
//! answer needs, files what it records.
//!
//! **Never here:** formulas, wording.

mod fetch;
mod house;
mod names;
pub mod reception;
pub mod sky;
mod talk;
mod told_sky;

pub use house::{House, NoHouse};
pub use talk::{Desk, Looked, Message};
