//! A reading and facts → an answer: figures, working, sources, cautions. One file for each kind of
//! message; total: what is unsure, missing or not ours is an answer too.
//!
//! An answer says what is to be said as [`Line`]s (the name of a phrase and its values), so that the
//! same answer can be put into any language.
//!
//! **Never here:** I/O, the clock, text in a language.

mod alerts;
mod alerts_told;
mod answer;
mod bed_today;
mod bed_told;
mod bed_wait;
mod build;
mod care;
mod due;
mod due_missed;
mod due_round;
mod emergency;
mod facts;
mod feed;
mod feed_bed;
mod feed_nitrogen;
mod figure;
mod general;
mod groups;
mod handed_over;
mod harvest;
mod hint;
mod last_done;
mod line;
mod load;
mod load_working;
mod mix;
mod mix_swollen;
mod moves;
mod new_bed;
mod no_figures;
mod none;
mod own_beds;
mod plots;
mod record;
mod refused;
pub mod reminder;
mod seed;
mod shade;
mod shade_working;
mod shown;
mod sky_told;
mod sow;
mod sow_crop;
mod sow_list;
mod sow_working;
mod space;
mod spray;
mod spray_product;
mod spray_time;
mod subject;
mod table;
mod topic;
mod trouble;
pub mod visit;
mod wants;
mod water;
mod water_asked;
mod water_away;
mod water_bed;
mod water_now;
mod water_salt;
mod water_table;
mod water_working;
mod weather_said;
mod which_kind;
mod year;
mod year_table;
mod year_told;

pub use alerts::{alerts_of_site, told as alerts_told};
pub use answer::{Answer, Outcome, answer, called};
pub use bed_today::{BedToday, bed_today};
pub use bed_told::bed_told;
pub use due::of_days;
pub use facts::{BedFacts, Facts, SiteFacts};
pub use figure::{Figure, FigureValue};
pub use line::{Line, Said};
pub use shown::{QuantityShown, ReadingShown};
pub use sky_told::{site_told_of, told_days};
pub use table::{
    DueJob, DueTable, PlanTable, Rim, Table, Turn, USUAL_CAN, WaterDay, WaterTable, YearKind, YearRow, YearSpan,
    YearTable,
};
