//! What the crew's garden holds: people, sites, beds, plantings, jobs done, what was seen, questions
//! waiting and conversations; who may see and do what; the garden file that a person writes; backups;
//! and [`Store`], with the embedded store below it.
//!
//! **Never here:** a rule of care, a figure, or a sentence for the people who ask (refusals of files
//! and of the store are for the person at the command line).

pub mod backup;
mod bed;
mod conversation;
pub mod file;
mod filed;
mod id;
pub mod import;
mod job;
mod measure;
mod moved;
mod person;
mod planting;
mod question;
pub mod rights;
mod seen;
mod site;
pub mod store;
mod told_weather;
mod when;
mod word;

pub use bed::{Assumed, Bed, BedKind, Depth, RainExposure, Shape, Sides, Sun, USUAL_NET_PERCENT};
pub use conversation::Conversation;
pub use file::{KnownIds, Problem, read_garden, write_garden};
pub use filed::{Filed, Slip};
pub use id::{BedId, NotAnId, PersonId, QuestionId, SiteId};
pub use job::{JobDone, JobKind};
pub use measure::{Measurable, Measure, NotMeasured};
pub use moved::Move;
pub use person::{Person, Role, Speaks};
pub use planting::{Planting, Start, standing};
pub use question::Question;
pub use seen::{Seen, SeenKind};
pub use site::{Site, Wall};
pub use store::{Change, Garden, Kind, Overlay, Record, SledStore, Stamp, Store, StoreError, note_backup};
pub use told_weather::ToldWeather;
pub use when::{NotADay, When};
