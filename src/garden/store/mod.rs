//! The [`Store`]: reads by person, site and bed, and writes that are acknowledged only when they last.

mod error;
mod garden;
mod holder;
mod memory;
mod opening;
mod overlay;
mod record;
#[cfg(unix)]
pub mod remote;
mod safe_copy;
mod seal;
mod sled;
mod stamps;
mod writer;

pub use error::StoreError;
pub use garden::Garden;
pub use holder::note_backup;
pub use overlay::Overlay;
pub use record::{Change, Kind, Record};
pub(super) use record::{Fingerprint, fingerprint};
pub use sled::SledStore;
pub use stamps::Stamp;

use super::bed::Bed;
use super::conversation::Conversation;
use super::filed::Filed;
use super::id::{BedId, PersonId, SiteId};
use super::job::JobDone;
use super::moved::Move;
use super::person::Person;
use super::planting::Planting;
use super::question::Question;
use super::seen::Seen;
use super::site::Site;

/// Where a garden is kept. A store gives three things (one record, the records whose keys begin
/// alike, a write); the reads below follow from them, and a store that can do better may override them.
///
/// # Errors
/// Every read and write can fail with a [`StoreError`].
pub trait Store: Send + Sync {
    /// One record by its key.
    fn record(&self, kind: Kind, key: &str) -> Result<Option<Record>, StoreError>;

    /// The records whose keys begin with `prefix`, in the order of their keys; all for an empty one.
    fn records(&self, kind: Kind, prefix: &str) -> Result<Vec<Record>, StoreError>;

    /// The same one after the other, for what may be too much to hold at once.
    fn each(
        &self,
        kind: Kind,
        prefix: &str,
        work: &mut dyn FnMut(Record) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        self.records(kind, prefix)?.into_iter().try_for_each(work)
    }

    /// Makes all of the changes or none; returns only when they would survive a crash.
    fn write(&self, changes: Vec<Change>) -> Result<(), StoreError>;

    fn person(&self, id: &PersonId) -> Result<Option<Person>, StoreError> {
        Ok(self.record(Kind::Person, id.as_str())?.and_then(Record::person))
    }

    fn people(&self) -> Result<Vec<Person>, StoreError> {
        Ok(self.records(Kind::Person, "")?.into_iter().filter_map(Record::person).collect())
    }

    fn site(&self, id: &SiteId) -> Result<Option<Site>, StoreError> {
        Ok(self.record(Kind::Site, id.as_str())?.and_then(Record::site))
    }

    fn sites(&self) -> Result<Vec<Site>, StoreError> {
        Ok(self.records(Kind::Site, "")?.into_iter().filter_map(Record::site).collect())
    }

    fn bed(&self, id: &BedId) -> Result<Option<Bed>, StoreError> {
        Ok(self.record(Kind::Bed, &id.to_string())?.and_then(Record::bed))
    }

    fn beds_of_site(&self, site: &SiteId) -> Result<Vec<Bed>, StoreError> {
        Ok(self.records(Kind::Bed, &format!("{site}/"))?.into_iter().filter_map(Record::bed).collect())
    }

    /// In the order in which they began.
    fn plantings_of_bed(&self, bed: &BedId) -> Result<Vec<Planting>, StoreError> {
        Ok(self.records(Kind::Planting, &of_bed(bed))?.into_iter().filter_map(Record::planting).collect())
    }

    /// Oldest first.
    fn jobs_of_bed(&self, bed: &BedId) -> Result<Vec<JobDone>, StoreError> {
        Ok(self.records(Kind::Job, &of_bed(bed))?.into_iter().filter_map(Record::job).collect())
    }

    /// Oldest first.
    fn seen_of_bed(&self, bed: &BedId) -> Result<Vec<Seen>, StoreError> {
        Ok(self.records(Kind::Seen, &of_bed(bed))?.into_iter().filter_map(Record::seen).collect())
    }

    /// The jobs of a bed that people moved to another day.
    fn moves_of_bed(&self, bed: &BedId) -> Result<Vec<Move>, StoreError> {
        Ok(self.records(Kind::Move, &of_bed(bed))?.into_iter().filter_map(Record::moved).collect())
    }

    /// The questions that wait, oldest first.
    fn questions(&self) -> Result<Vec<Question>, StoreError> {
        Ok(self.records(Kind::Question, "")?.into_iter().filter_map(Record::question).collect())
    }

    fn conversation(&self, person: &PersonId) -> Result<Option<Conversation>, StoreError> {
        Ok(self.record(Kind::Conversation, person.as_str())?.and_then(Record::conversation))
    }

    fn filed(&self, drawer: &str, key: &str) -> Result<Option<Filed>, StoreError> {
        Ok(self.record(Kind::Filed, &format!("{drawer}|{key}"))?.and_then(Record::filed))
    }

    /// The slips of one drawer, in the order of their keys.
    fn drawer(&self, drawer: &str) -> Result<Vec<Filed>, StoreError> {
        Ok(self.records(Kind::Filed, &format!("{drawer}|"))?.into_iter().filter_map(Record::filed).collect())
    }

    /// How the slips of a drawer stand whose keys begin with the first part of this one (up to a bar). What was read
    /// after a stamp was taken holds as long as the stamp is the same; none where a store cannot tell.
    fn stamp(&self, _drawer: &str, _key: &str) -> Option<Stamp> {
        None
    }

    /// The same for all records of a kind.
    fn stamp_of(&self, _kind: Kind) -> Option<Stamp> {
        None
    }

    /// Everything, for an export or a backup.
    fn whole(&self) -> Result<Garden, StoreError> {
        let mut garden = Garden::default();
        for kind in Kind::ALL {
            for record in self.records(*kind, "")? {
                garden.add(record);
            }
        }
        Ok(garden)
    }
}

/// What the keys of a bed's plantings, jobs and looks begin with.
fn of_bed(bed: &BedId) -> String {
    format!("{bed}|")
}

#[cfg(test)]
mod tests;
