//! The embedded store, one process's: a tree for each kind of record, keys as text, records as JSON.

use super::Store;
use super::error::StoreError;
use super::holder;
use super::opening::{decode, files, open_sound, unwritable};
use super::record::{Change, Kind, Record};
use super::safe_copy::SafeCopy;
use super::stamps::{Stamp, Stamps};
use super::writer::Writer;
use sled::{Db, Tree};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The key of the [`Seal`].
pub(super) const SEAL: &str = "seal";

/// The trees: first the one about the store itself, then one for each kind.
#[derive(Clone)]
pub(super) struct Trees(Vec<Tree>);

impl Trees {
    pub(super) fn open(db: &Db) -> Result<Self, sled::Error> {
        let about: Tree = (**db).clone();
        let kinds = Kind::ALL.iter().map(|kind| db.open_tree(kind.word()));
        Ok(Self(std::iter::once(Ok(about)).chain(kinds).collect::<Result<_, _>>()?))
    }

    pub(super) fn all(&self) -> &[Tree] {
        &self.0
    }

    /// Where the tree of a kind stands among all.
    pub(super) fn place(kind: Kind) -> usize {
        Kind::ALL.iter().position(|one| *one == kind).map_or(0, |place| place + 1)
    }

    pub(super) fn of(&self, kind: Kind) -> Result<&Tree, StoreError> {
        self.0.get(Self::place(kind)).ok_or_else(|| StoreError::Failed(format!("there is no tree {kind}")))
    }

    /// One flush serves all trees: they share a log.
    pub(super) fn flush(&self) -> Result<(), StoreError> {
        let about = self.0.first().ok_or(StoreError::Closed)?;
        about.flush().map(drop).map_err(failed)
    }
}

/// A store in a folder, held until it is dropped.
pub struct SledStore {
    folder: PathBuf,
    trees: Trees,
    // Its thread ends before the database is closed: fields drop in this order.
    writer: Option<Writer>,
    stamps: Arc<Stamps>,
    _db: Db,
}

impl SledStore {
    /// Opens the store of a folder, or begins one, and reads every record once to see that it is whole.
    ///
    /// # Errors
    /// [`StoreError::Held`] by another process, [`StoreError::Newer`], [`StoreError::Damaged`],
    /// [`StoreError::Unwritable`].
    pub fn open(folder: &Path) -> Result<Self, StoreError> {
        let unwritable = |error| unwritable(folder, &error);
        fs::create_dir_all(folder).map_err(unwritable)?;
        let safe_copy = SafeCopy::of(&files(folder));
        let opened = open_sound(folder);
        if let Err(held @ StoreError::Held { .. }) = opened {
            return Err(held);
        }
        let safe_copy = safe_copy.map_err(unwritable)?;
        let (db, trees) = match opened {
            Ok(opened) => opened,
            Err(refusal) => {
                safe_copy.put_back().map_err(unwritable)?;
                return Err(refusal);
            }
        };
        safe_copy.remove_strays().map_err(unwritable)?;
        holder::take(folder).map_err(unwritable)?;
        let stamps = Arc::new(Stamps::new());
        let writer = Writer::start(trees.clone(), stamps.clone())?;
        Ok(Self { folder: folder.into(), trees, writer: Some(writer), stamps, _db: db })
    }

    fn decode(&self, kind: Kind, key: &[u8], value: &[u8]) -> Result<Record, StoreError> {
        decode(kind, key, value, &self.folder)
    }
}

impl Store for SledStore {
    fn record(&self, kind: Kind, key: &str) -> Result<Option<Record>, StoreError> {
        let value = self.trees.of(kind)?.get(key).map_err(failed)?;
        value.map(|value| self.decode(kind, key.as_bytes(), &value)).transpose()
    }

    fn records(&self, kind: Kind, prefix: &str) -> Result<Vec<Record>, StoreError> {
        let found = self.trees.of(kind)?.scan_prefix(prefix);
        found
            .map(|pair| {
                let (key, value) = pair.map_err(failed)?;
                self.decode(kind, &key, &value)
            })
            .collect()
    }

    fn stamp(&self, drawer: &str, key: &str) -> Option<Stamp> {
        Some(self.stamps.of(&format!("{drawer}|{key}")))
    }

    fn stamp_of(&self, kind: Kind) -> Option<Stamp> {
        Some(self.stamps.of_kind(kind))
    }

    fn each(
        &self,
        kind: Kind,
        prefix: &str,
        work: &mut dyn FnMut(Record) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        for pair in self.trees.of(kind)?.scan_prefix(prefix) {
            let (key, value) = pair.map_err(failed)?;
            work(self.decode(kind, &key, &value)?)?;
        }
        Ok(())
    }

    fn write(&self, changes: Vec<Change>) -> Result<(), StoreError> {
        self.writer.as_ref().ok_or(StoreError::Closed)?.write(&changes)
    }
}

impl Drop for SledStore {
    fn drop(&mut self) {
        self.writer = None;
        // Only a courtesy to the next one who is refused: the lock itself is the database's.
        let _ = holder::leave(&self.folder);
    }
}

pub(super) fn failed(error: sled::Error) -> StoreError {
    StoreError::Failed(error.to_string())
}
