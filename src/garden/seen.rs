//! What a person saw of a bed's water.

use super::id::BedId;
use super::when::When;
use super::word::words;
use serde::{Deserialize, Serialize};

words!(
    SeenKind {
        /// The mix was still wet when it should have been dry.
        StillWet = "still-wet",
        /// The mix was dry before its time.
        DryEarly = "dry-early",
        /// Water ran out below.
        RanThrough = "ran-through",
    }
);

/// One look at a bed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Seen {
    pub bed: BedId,
    pub on: When,
    pub what: SeenKind,
}
