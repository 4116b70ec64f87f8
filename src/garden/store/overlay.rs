//! A store over another: reads fall through, writes stay in memory.

use super::error::StoreError;
use super::record::{Change, Kind, Record};
use super::stamps::{Stamp, head};
use super::{Store, memory::NOTHING};
use std::collections::BTreeMap;
use std::ops::Bound;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// What was changed, the last change of each record.
type Changed = BTreeMap<(Kind, String), Change>;

/// What a run without consequences writes to.
pub struct Overlay<'a> {
    below: &'a dyn Store,
    changed: Mutex<Changed>,
}

impl<'a> Overlay<'a> {
    #[must_use]
    pub fn over(below: &'a dyn Store) -> Self {
        Self { below, changed: Mutex::default() }
    }

    /// What was changed so far, to be written elsewhere in one go.
    #[must_use]
    pub fn changes(&self) -> Vec<Change> {
        self.changed().values().cloned().collect()
    }

    fn changed(&self) -> MutexGuard<'_, Changed> {
        // No change is left half made by a panic: each is one insert.
        self.changed.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Overlay<'static> {
    /// A store of its own in memory, empty at first.
    #[must_use]
    pub fn in_memory() -> Self {
        Self::over(&NOTHING)
    }
}

impl Store for Overlay<'_> {
    fn record(&self, kind: Kind, key: &str) -> Result<Option<Record>, StoreError> {
        let changed = self.changed().get(&(kind, key.to_owned())).cloned();
        match changed {
            Some(Change::Put(record)) => Ok(Some(record)),
            Some(Change::Remove(_)) => Ok(None),
            None => self.below.record(kind, key),
        }
    }

    fn records(&self, kind: Kind, prefix: &str) -> Result<Vec<Record>, StoreError> {
        let below = self.below.records(kind, prefix)?;
        let changed = self.changed();
        let from = Bound::Included((kind, prefix.to_owned()));
        let like = |((of_kind, key), _): &(&(Kind, String), &Change)| *of_kind == kind && key.starts_with(prefix);
        let mut own = changed.range((from, Bound::Unbounded)).take_while(like).peekable();
        // Years of records are not sorted again for nothing.
        if own.peek().is_none() {
            return Ok(below);
        }
        let mut merged: BTreeMap<String, Record> = below.into_iter().map(|record| (record.key(), record)).collect();
        for ((_, key), change) in own {
            match change {
                Change::Put(record) => merged.insert(key.clone(), record.clone()),
                Change::Remove(_) => merged.remove(key),
            };
        }
        Ok(merged.into_values().collect())
    }

    fn stamp(&self, drawer: &str, key: &str) -> Option<Stamp> {
        let key = format!("{drawer}|{key}");
        let head = head(&key);
        let from = Bound::Included((Kind::Filed, head.to_owned()));
        let like = |((kind, key), _): (&(Kind, String), &Change)| *kind == Kind::Filed && key.starts_with(head);
        let own = self.changed().range((from, Bound::Unbounded)).next().is_some_and(like);
        // What lies here alone is not counted.
        if own { None } else { self.below.stamp(drawer, key.get(drawer.len() + 1..)?) }
    }

    fn stamp_of(&self, kind: Kind) -> Option<Stamp> {
        let from = Bound::Included((kind, String::new()));
        let own = self.changed().range((from, Bound::Unbounded)).next().is_some_and(|((of, _), _)| *of == kind);
        // What lies here alone is not counted.
        if own { None } else { self.below.stamp_of(kind) }
    }

    fn write(&self, changes: Vec<Change>) -> Result<(), StoreError> {
        let mut changed = self.changed();
        for change in changes {
            let key = (change.record().kind(), change.record().key());
            changed.insert(key, change);
        }
        Ok(())
    }
}
