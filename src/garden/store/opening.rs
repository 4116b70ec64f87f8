//! Opening the embedded store: its version, its seal, and every record once.

use super::error::StoreError;
use super::holder;
use super::record::{Kind, Record};
use super::seal::Seal;
use super::sled::{SEAL, Trees, failed};
use sled::Db;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// The version of the layout below; a store of a later one is left alone.
const VERSION: u64 = 1;
const VERSION_KEY: &str = "version";
/// Memory for pages, in bytes as they are on the disk; held they take more. A crew's garden is
/// small, and what else there is (marks of answers, numbers of updates) is hardly ever read again.
const CACHE_BYTES: u64 = 16 * 1024 * 1024;
/// How long to wait for this very process to let go of a store that it has just closed.
const LETTING_GO: Duration = Duration::from_millis(500);

/// Where the database keeps its files.
pub(super) fn files(folder: &Path) -> PathBuf {
    folder.join("garden")
}

/// Opens the database and looks at all of it.
pub(super) fn open_sound(folder: &Path) -> Result<(Db, Trees), StoreError> {
    let db = open_database(folder)?;
    check_version(&db, folder)?;
    let trees = Trees::open(&db).map_err(|error| broken(folder, "the store's trees", &error))?;
    check_records(&trees, folder)?;
    Ok((db, trees))
}

fn open_database(folder: &Path) -> Result<Db, StoreError> {
    let config = sled::Config::new().path(files(folder)).cache_capacity(CACHE_BYTES).flush_every_ms(None);
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
                return Err(unwritable(folder, &error));
            }
            Err(error) => return Err(broken(folder, "the store's files", &error)),
        }
    }
}

/// Looks at the version before anything else is touched; a store that has none is begun here.
fn check_version(db: &Db, folder: &Path) -> Result<(), StoreError> {
    let version = db.get(VERSION_KEY).map_err(|error| broken(folder, VERSION_KEY, &error))?;
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
            let (key, value) = pair.map_err(|error| broken(folder, kind.word(), &error))?;
            decode(*kind, &key, &value, folder)?;
            seen.add(*kind, &key, &value);
        }
    }
    let about = trees.all().first().ok_or(StoreError::Closed)?;
    let sealed = about.get(SEAL).map_err(|error| broken(folder, SEAL, &error))?;
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
pub(super) fn decode(kind: Kind, key: &[u8], value: &[u8], folder: &Path) -> Result<Record, StoreError> {
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

/// Damage that the database itself found.
fn broken(folder: &Path, place: &str, error: &sled::Error) -> StoreError {
    match error {
        sled::Error::Corruption { .. } => damaged(folder, place, "they hold what cannot be read back"),
        other => damaged(folder, place, &other.to_string()),
    }
}

pub(super) fn unwritable(folder: &Path, error: &std::io::Error) -> StoreError {
    StoreError::Unwritable { folder: folder.into(), reason: error.kind().to_string() }
}
