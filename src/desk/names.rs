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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::{Change, Overlay, Person, PersonId, Role, SledStore};

    fn meera(name: &str) -> Change {
        let id = PersonId::new("meera").unwrap();
        Change::put(Person { id, name: name.into(), role: Role::Client, sites: vec![], speaks: None })
    }

    #[test]
    fn names_are_gathered_anew_when_someone_changes_and_only_then() {
        let folder = tempfile::tempdir().unwrap();
        let store = SledStore::open(folder.path()).unwrap();
        let (names, ordinary) = (Names::default(), Ordinary::default());
        store.write(vec![meera("Meera")]).unwrap();
        let first = names.of(&store, &ordinary).unwrap();
        assert!(Arc::ptr_eq(&first, &names.of(&store, &ordinary).unwrap()));
        let sheet = Overlay::over(&store);
        assert!(Arc::ptr_eq(&first, &names.of(&sheet, &ordinary).unwrap()), "nothing was written to the sheet");
        sheet.write(vec![meera("Meera K")]).unwrap();
        assert!(!Arc::ptr_eq(&first, &names.of(&sheet, &ordinary).unwrap()), "the sheet has another name");
        assert!(Arc::ptr_eq(&first, &names.of(&store, &ordinary).unwrap()), "the store has not");
        store.write(sheet.changes()).unwrap();
        assert!(!Arc::ptr_eq(&first, &names.of(&store, &ordinary).unwrap()));
    }
}
