//! What one bed needs: water, harvest window, mix, parts; each figure a range, with its working.
//!
//! Everything here is a pure function of a bed, its crops and the days ahead, so that an answer and a
//! reminder that rest on the same sum can't disagree.
//!
//! **Never here:** I/O, the clock, words for people.

pub mod build;
pub mod day_course;
pub mod diagnosis;
pub mod dry_down;
pub mod feed;
pub mod feed_day;
pub mod gathered;
pub mod harvest;
pub mod heat;
pub mod layout;
pub mod load;
pub mod looks;
pub mod loss_factor;
pub mod mix;
pub mod salt;
pub mod season;
pub mod seed;
pub mod shade;
pub mod showers;
pub mod space;
pub mod spray;
pub mod stage;
pub mod sun_by_walls;
pub mod sun_span;
pub mod surroundings;
pub mod swing;
pub mod water;
pub mod water_day;
pub mod water_doubts;
pub mod year;
