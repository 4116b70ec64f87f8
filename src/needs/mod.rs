//! What one bed needs: water, harvest window, mix, parts; each figure a range, with its working.
//!
//! Everything here is a pure function of a bed, its crops and the days ahead, so that an answer and a
//! reminder that rest on the same sum can't disagree.
//!
//! **Never here:** I/O, the clock, words for people.

pub mod build;
pub mod feed;
pub mod harvest;
pub mod heat;
pub mod mix;
pub mod spray;
pub mod surroundings;
pub mod swing;
pub mod water;
pub mod water_day;
