//! Putting a garden into a store that may hold some of it already.

use super::store::{Change, Garden, Kind, Record, Store, StoreError};

/// What an import did.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Imported {
    /// How many records of each kind came new.
    pub new: Vec<(Kind, usize)>,
    /// The records that took the place of another with the same key.
    pub replaced: Vec<(Kind, String)>,
    /// How many were there already, the same.
    pub unchanged: usize,
}

/// Merges a garden into the store, all of it or nothing: a record with a known key takes the other's
/// place, one that is the same already is not doubled, and what the garden does not name stays.
///
/// # Errors
/// When the store cannot be read or written.
pub fn import(store: &dyn Store, garden: Garden) -> Result<Imported, StoreError> {
    let mut imported = Imported::default();
    let mut changes = Vec::new();
    for record in garden.into_records() {
        let (kind, key) = (record.kind(), record.key());
        match store.record(kind, &key)? {
            Some(there) if there == record => {
                imported.unchanged += 1;
                continue;
            }
            Some(_) => imported.replaced.push((kind, key)),
            None => imported.count(&record),
        }
        changes.push(Change::Put(record));
    }
    store.write(changes)?;
    Ok(imported)
}

impl Imported {
    fn count(&mut self, record: &Record) {
        let kind = record.kind();
        match self.new.iter_mut().find(|(of, _)| *of == kind) {
            Some((_, count)) => *count += 1,
            None => self.new.push((kind, 1)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::store::Overlay;
    use crate::garden::{BedId, JobDone, JobKind, Person, PersonId, Role};

    fn person(id: &str, name: &str) -> Person {
        let id = PersonId::new(id).unwrap();
        Person { id, name: name.into(), role: Role::Owner, sites: vec![], speaks: None }
    }

    fn watered(on: &str) -> JobDone {
        let (bed, on) = (BedId::new("roof/box").unwrap(), on.parse().unwrap());
        JobDone { bed, job: JobKind::Water, on, what: None, amount: None }
    }

    #[test]
    fn merges_and_says_what_it_replaced() {
        let store = Overlay::in_memory();
        let first =
            Garden { people: vec![person("asha", "Asha")], jobs: vec![watered("2026-05-01")], ..Garden::default() };
        let imported = import(&store, first.clone()).unwrap();
        assert_eq!(imported.new, [(Kind::Person, 1), (Kind::Job, 1)]);
        assert_eq!(import(&store, first).unwrap(), Imported { unchanged: 2, ..Imported::default() });

        let second = Garden {
            people: vec![person("asha", "Asha D"), person("ravi", "Ravi")],
            jobs: vec![watered("2026-05-01"), watered("2026-05-01T18:00")],
            ..Garden::default()
        };
        let imported = import(&store, second).unwrap();
        assert_eq!(imported.new, [(Kind::Person, 1), (Kind::Job, 1)]);
        assert_eq!(imported.replaced, [(Kind::Person, "asha".to_owned())]);
        assert_eq!(imported.unchanged, 1);
        assert_eq!(store.people().unwrap(), [person("asha", "Asha D"), person("ravi", "Ravi")]);
        assert_eq!(store.jobs_of_bed(&BedId::new("roof/box").unwrap()).unwrap().len(), 2);
    }
}
