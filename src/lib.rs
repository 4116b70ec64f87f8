//! **rooftend**: a messaging assistant for a crew that builds and looks after kitchen gardens on roofs.
//!
//! The house has rooms on floors; a room may know only rooms below it (the table stands in
//! DEVELOPERS.md, and a test holds the code to it). In reading order, ground floor first:

/// A reading makes thousands of short strings: a third of its time went into the system's allocator.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

pub mod quantity;
pub mod script;

pub mod agronomy;

pub mod knowledge;

pub mod weather;

pub mod garden;

pub mod needs;

pub mod planning;

pub mod understanding;

pub mod answering;

pub mod wording;

pub mod drawing;

pub mod desk;

pub mod channel;

pub mod cli;
