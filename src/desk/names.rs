//! The names of everybody, kept from one message to the next: read anew only where people or sites have changed.

use crate::garden::{Kind, Stamp, Store, StoreError};
use crate::knowledge::Ordinary;
use crate::understanding::Everyone;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// What was gathered, with how the people and the sites of the store stood then.
struct Kept {
    stamps: [Stamp; 2],
    everyone: Arc<Everyone>,
}

/// Serves all messages of a program; the store asked last is remembered.
#[derive(Default)]
pub(super) struct Names {
    kept: Mutex<Option<Kept>>,
}

impl Names {
    /// The names as they were gathered before, if they still stand so; else as they are read now.
    pub(super) fn of(&self, store: &dyn Store, ordinary: &Ordinary) -> Result<Arc<Everyone>, StoreError> {
        // Taken before anything is read: a write in between makes the names old at once, not new for ever.
        let stamps = store.stamp_of(Kind::Person).zip(store.stamp_of(Kind::Site)).map(<[Stamp; 2]>::from);
        let kept = self.kept().as_ref().filter(|kept| Some(kept.stamps) == stamps).map(|kept| kept.everyone.clone());
        if let Some(everyone) = kept {
            return Ok(everyone);
        }
        let everyone = Arc::new(Everyone::of(&store.people()?, &store.sites()?, ordinary));
        if let Some(stamps) = stamps {
            *self.kept() = Some(Kept { stamps, everyone: everyone.clone() });
        }
        Ok(everyone)
    }

    fn kept(&self) -> MutexGuard<'_, Option<Kept>> {
        // Nothing is left half kept by a panic: it is one assignment.
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
