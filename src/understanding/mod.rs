//! What a message means: a text and the names this person may mean → a [`Reading`]: kind, names,
//! quantities, days, what a follow-up refers to, and how sure.
//!
//! One way of reading for three languages: words are compared by their stems (English) or their sounds
//! (Hindi in either script); what people say for a thing stands in the knowledge base.
//!
//! **Never here:** an answer, a figure of the trade, I/O, the clock.

mod about;
mod asker;
mod calendar;
pub mod dates;
mod dimensions;
mod emergencies;
mod everyone;
mod follow_up;
mod gazetteer;
mod ill_will;
mod kind;
mod likeness;
mod own_beds;
mod parts;
mod phrasebook;
pub mod quantities;
mod read;
mod reading;
mod sky;
mod spelled;
pub mod sun_clock;
mod symptoms;
mod tense;
mod worlds;

pub use asker::{Asker, OwnBed};
pub use everyone::Everyone;
pub use gazetteer::Gazetteer;
pub use parts::read;
pub use read::{Reader, classed, classed_beside};
pub use reading::{InVessels, Measured, Reading, SkyTold};
