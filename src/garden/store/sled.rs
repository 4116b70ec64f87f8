//! The embedded store, one process's: a tree for each kind of record, keys as text, records as JSON.

use super::Store;
use super::error::StoreError;
use super::holder;
use super::record::{Change, Kind, Record};
use super::seal::Seal;
use super::writer::Writer;
use sled::{Db, Tree};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// The version of the layout below; a store of a later one is left alone.
const VERSION: u64 = 1;
const VERSION_KEY: &str = "version";
/// The key of the [`Seal`].
pub(super) const SEAL: &str = "seal";
/// Memory for pages, in bytes: a crew's garden is small.
const CACHE_BYTES: u64 = 64 * 1024 * 1024;
/// How long to wait for this very process to let go of a store that it has just closed.
const LETTING_GO: Duration = Duration::from_millis(500);

/// The trees: first the one about the store itself, then one for each kind.
#[derive(Clone)]
pub(super) struct Trees(Vec<Tree>);

impl Trees {
    fn open(db: &Db) -> Result<Self, sled::Error> {
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

    fn of(&self, kind: Kind) -> Result<&Tree, StoreError> {
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
    _db: Db,
}

impl SledStore {
    /// Opens the store of a folder, or begins one, and reads every record once to see that it is whole.
    ///
    /// # Errors
    /// [`StoreError::Held`] by another process, [`StoreError::Newer`], [`StoreError::Damaged`],
    /// [`StoreError::Unwritable`].
    pub fn open(folder: &Path) -> Result<Self, StoreError> {
        let unwritable =
            |error: std::io::Error| StoreError::Unwritable { folder: folder.into(), reason: error.kind().to_string() };
        fs::create_dir_all(folder).map_err(unwritable)?;
        let db = open_database(folder)?;
        check_version(&db, folder)?;
        let trees = Trees::open(&db).map_err(|error| damaged(folder, "the store's trees", &error.to_string()))?;
        check_records(&trees, folder)?;
        holder::take(folder).map_err(unwritable)?;
        let writer = Writer::start(trees.clone())?;
        Ok(Self { folder: folder.into(), trees, writer: Some(writer), _db: db })
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

fn open_database(folder: &Path) -> Result<Db, StoreError> {
    let config = sled::Config::new().path(folder.join("garden")).cache_capacity(CACHE_BYTES).flush_every_ms(None);
    let begun = Instant::now();
    loop {
        match config.open() {
            Ok(db) => return Ok(db),
            Err(sled::Error::Io(error)) if error.to_string().contains("could not acquire lock") => {
                let by = holder::who(folder);
                let own = by.is_none() || by == Some(std::process::id());
                if !own || begun.elapsed() > LETTING_GO {
                    return Err(StoreError::Held { folder: folder.into(), by });
                }
                std::thread::sleep(Duration::from_millis(10));
            }
            Err(sled::Error::Io(error)) if error.kind() != std::io::ErrorKind::Other => {
                return Err(StoreError::Unwritable { folder: folder.into(), reason: error.kind().to_string() });
            }
            Err(error) => return Err(damaged(folder, "the store's files", &error.to_string())),
        }
    }
}

/// Looks at the version before anything else is touched; a store that has none is begun here.
fn check_version(db: &Db, folder: &Path) -> Result<(), StoreError> {
    let version = db.get(VERSION_KEY).map_err(|error| damaged(folder, VERSION_KEY, &error.to_string()))?;
    let Some(version) = version else {
        if holder::was_there(folder) {
            return Err(damaged(folder, VERSION_KEY, "it is missing, though there has been a store here"));
        }
        db.insert(VERSION_KEY, VERSION.to_string().as_bytes()).map_err(failed)?;
        db.insert(SEAL, &Seal::default().bytes()).map_err(failed)?;
        return db.flush().map(drop).map_err(failed);
    };
    match std::str::from_utf8(&version).ok().and_then(|text| text.parse::<u64>().ok()) {
        Some(found) if found > VERSION => Err(StoreError::Newer { folder: folder.into(), found, known: VERSION }),
        Some(_) => Ok(()),
        None => Err(damaged(folder, VERSION_KEY, "it is no number")),
    }
}

fn check_records(trees: &Trees, folder: &Path) -> Result<(), StoreError> {
    let mut seen = Seal::default();
    for kind in Kind::ALL {
        for pair in trees.of(*kind)?.iter() {
            let (key, value) = pair.map_err(|error| damaged(folder, kind.word(), &error.to_string()))?;
            decode(*kind, &key, &value, folder)?;
            seen.add(*kind, &key, &value);
        }
    }
    let about = trees.all().first().ok_or(StoreError::Closed)?;
    let sealed = about.get(SEAL).map_err(|error| damaged(folder, SEAL, &error.to_string()))?;
    match sealed.and_then(|bytes| Seal::read(&bytes)) {
        Some(sealed) if sealed == seen => Ok(()),
        Some(sealed) => {
            let what = format!("{} records were written, {} are there", sealed.records, seen.records);
            let altered = "a record is not as it was written".to_owned();
            Err(damaged(folder, SEAL, &if sealed.records == seen.records { altered } else { what }))
        }
        None => Err(damaged(folder, SEAL, "it is missing")),
    }
}

/// Reads a stored record and holds it to its key.
fn decode(kind: Kind, key: &[u8], value: &[u8], folder: &Path) -> Result<Record, StoreError> {
    let place = || format!("{kind}, key \"{}\"", String::from_utf8_lossy(key));
    let record = Record::from_json(kind, value).map_err(|error| damaged(folder, &place(), &error.to_string()))?;
    if record.key().as_bytes() == key {
        Ok(record)
    } else {
        Err(damaged(folder, &place(), &format!("it holds the record of \"{}\"", record.key())))
    }
}

fn damaged(folder: &Path, place: &str, what: &str) -> StoreError {
    let backup = holder::where_backed_up(folder);
    StoreError::Damaged { folder: folder.into(), place: place.into(), what: what.into(), backup }
}

fn failed(error: sled::Error) -> StoreError {
    StoreError::Failed(error.to_string())
}
