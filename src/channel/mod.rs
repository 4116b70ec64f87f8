//! One file a channel: what comes in becomes a message, a reply becomes what that channel can show.
//!
//! **Never here:** crops, dates, figures.

pub mod counts;
pub mod local;
pub mod monitor;
pub mod telegram;
pub mod terminal;
