//! A reading and facts → an answer: figures, working, sources, cautions. One file for each kind of
//! message; total: what is unsure, missing or not ours is an answer too.
//!
//! An answer says what is to be said as [`Line`]s (the name of a phrase and its values), so that the
//! same answer can be put into any language.
//!
//! **Never here:** I/O, the clock, text in a language.

mod answer;
mod build;
mod care;
mod due;
mod emergency;
mod facts;
mod feed;
mod feed_bed;
mod feed_nitrogen;
mod figure;
mod handed_over;
mod harvest;
mod hint;
mod line;
mod load;
mod load_working;
mod mix;
mod moves;
mod new_bed;
mod none;
mod plots;
mod record;
mod refused;
pub mod reminder;
mod seed;
mod shade;
mod shade_working;
mod shown;
mod sow;
mod sow_crop;
mod sow_list;
mod sow_working;
mod space;
mod spray;
mod spray_product;
mod spray_time;
mod subject;
mod trouble;
mod water;
mod water_away;
mod water_bed;
mod water_now;
mod water_salt;
mod water_working;

pub use answer::{Answer, Outcome, answer};
pub use due::of_days;
pub use facts::{BedFacts, Facts, SiteFacts};
pub use figure::{Figure, FigureValue};
pub use line::{Line, Said};
pub use shown::{QuantityShown, ReadingShown};
