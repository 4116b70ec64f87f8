//! What the asker may mean by a name: her own beds, and what was said before.

use super::reading::Reading;
use crate::garden::{BedId, BedKind, SiteId};

/// Who asks, as far as the meaning of a message depends on it.
#[derive(Debug, Clone, Default)]
pub struct Asker {
    /// Only beds this person may see.
    pub beds: Vec<OwnBed>,
    /// The sites she may see, with what they are called.
    pub sites: Vec<(SiteId, String)>,
    /// What other people are called whose sites she may see, with those sites.
    pub people: Vec<(String, Vec<SiteId>)>,
    /// What people and sites are called that she may not see: to be known as such, and never told of.
    pub others: Vec<String>,
    /// What her last message in this conversation was taken to mean.
    pub before: Option<Reading>,
}

/// A bed the asker may name.
#[derive(Debug, Clone)]
pub struct OwnBed {
    pub id: BedId,
    pub kind: BedKind,
    pub names: Vec<String>,
    /// What stands in it: crop id, and whether as a microgreen.
    pub crops: Vec<(String, bool)>,
}

impl OwnBed {
    /// Whether this crop stands here.
    #[must_use]
    pub fn has(&self, crop: &str) -> bool {
        self.crops.iter().any(|(standing, _)| standing == crop)
    }
}
