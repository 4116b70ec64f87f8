//! What is due: needs and rules of care → jobs with their days → the order of a round.
//!
//! The same sums that answer a question name a job's day, so that an answer and a reminder can't disagree.
//!
//! **Never here:** I/O, the clock, words for people.

pub mod alerts;
pub mod due;
pub mod moves;
pub mod reminders;
pub mod round;
pub mod visits;
pub mod year;
