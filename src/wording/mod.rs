//! An answer → a reply in English, Hindi or romanised Hindi, from one file of phrases a language.
//!
//! Rounding is done here and goes outward: what is shown contains what was computed.
//!
//! **Never here:** figures of its own, a sum.

mod check;
mod phrases;
mod reply;
mod rounding;
mod shown;

pub use check::problems_of_phrases;
pub use phrases::Phrases;
pub use reply::{Manner, Reply, digits_of, filled, reply, simple};
pub use shown::Speaker;
