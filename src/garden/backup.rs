//! A backup: all that a store holds in one file of JSON lines, a header and then a line for each
//! record. The header carries their number and a checksum, so that a cut or altered file is refused.

#![expect(clippy::disallowed_methods, reason = "a backup is a file")]

use super::store::{Change, Fingerprint, Garden, Kind, Record, Store, StoreError, fingerprint};
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use std::fs::{self, File};
use std::io::{self, BufRead, BufReader, BufWriter, Write};
use std::path::{Path, PathBuf};
use thiserror::Error;

const FORMAT: &str = "rooftend backup";
const VERSION: u64 = 1;

/// A backup that cannot be made or restored. Neither the store nor the file was changed.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum BackupError {
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error("{file} cannot be read or written: {reason}", file = file.display())]
    File { file: PathBuf, reason: String },
    #[error("{file} is no whole backup: {what}; nothing was restored; use another backup", file = file.display())]
    Damaged { file: PathBuf, what: String },
    #[error("{file} was made by a newer rooftend (version {found}, this one knows {VERSION}); use the newer one", file = file.display())]
    Newer { file: PathBuf, found: u64 },
    #[error("the store is not empty: it holds {0} records; restore into an empty folder")]
    NotEmpty(usize),
}

#[derive(Serialize, Deserialize)]
struct Header {
    format: String,
    version: u64,
    made: DateTime<Utc>,
    records: usize,
    checksum: String,
}

#[derive(Serialize, Deserialize)]
struct Line {
    kind: Kind,
    record: serde_json::Value,
}

/// Writes all that the store holds to a file, which appears whole or not at all; returns how many
/// records it holds. `made` is the time now.
///
/// # Errors
/// When the store cannot be read or the file cannot be written.
pub fn back_up(store: &dyn Store, file: &Path, made: DateTime<Utc>) -> Result<usize, BackupError> {
    let part = beside(file, "part").map_err(|error| unusable(file, &error))?;
    let body = beside(file, "body").map_err(|error| unusable(file, &error))?;
    let written = write_body(store, file, &body).and_then(|records| {
        let whole = write_whole(&body, &part, records, made).and_then(|()| fs::rename(&part, file));
        whole.map(|()| records).map_err(|error| unusable(file, &error))
    });
    for left in [&body, &part] {
        // The second was renamed, or never made; the error that counts is the one returned.
        let _ = fs::remove_file(left);
    }
    written
}

/// Puts a backup into an empty store, all of it or nothing; returns how many records it held.
///
/// # Errors
/// When the store is not empty, or the file cannot be read, is damaged, or is of a newer version.
pub fn restore(store: &dyn Store, file: &Path) -> Result<usize, BackupError> {
    let mut there = 0;
    for kind in Kind::ALL {
        store.each(*kind, "", &mut |_| {
            there += 1;
            Ok(())
        })?;
    }
    if there > 0 {
        return Err(BackupError::NotEmpty(there));
    }
    let bytes = fs::read(file).map_err(|error| unusable(file, &error))?;
    let records = records_of(&bytes, file)?;
    let count = records.len();
    store.write(records.into_iter().map(Change::Put).collect())?;
    Ok(count)
}

/// What a backup holds, without restoring it.
///
/// # Errors
/// As [`restore`].
pub fn read_backup(file: &Path) -> Result<Garden, BackupError> {
    let bytes = fs::read(file).map_err(|error| unusable(file, &error))?;
    let mut garden = Garden::default();
    records_of(&bytes, file)?.into_iter().for_each(|record| garden.add(record));
    Ok(garden)
}

/// The records, a line each, to a file: a store may hold more than fits the memory. Returns their number.
fn write_body(store: &dyn Store, file: &Path, body: &Path) -> Result<usize, BackupError> {
    let unusable = |error: io::Error| unusable(file, &error);
    let mut out = BufWriter::new(File::create(body).map_err(unusable)?);
    let (mut records, mut fault) = (0, None);
    let failed = |error: serde_json::Error| StoreError::Failed(error.to_string());
    for kind in Kind::ALL {
        store
            .each(*kind, "", &mut |record| {
                let value = serde_json::from_slice(&record.to_json().map_err(failed)?).map_err(failed)?;
                let line = serde_json::to_string(&Line { kind: *kind, record: value }).map_err(failed)?;
                records += 1;
                writeln!(out, "{line}").map_err(|error| {
                    let told = StoreError::Failed(error.to_string());
                    fault = Some(error);
                    told
                })
            })
            .map_err(|error| fault.take().map_or(BackupError::Store(error), unusable))?;
    }
    out.flush().map_err(unusable)?;
    Ok(records)
}

/// The header before the body, which is looked at for its checksum.
fn write_whole(body: &Path, part: &Path, records: usize, made: DateTime<Utc>) -> io::Result<()> {
    let mut hash = Fingerprint::default();
    hash.part(fs::metadata(body)?.len());
    let mut bytes = BufReader::new(File::open(body)?);
    loop {
        let read = bytes.fill_buf()?;
        if read.is_empty() {
            break;
        }
        hash.bytes(read);
        let count = read.len();
        bytes.consume(count);
    }
    let (format, checksum) = (FORMAT.to_owned(), format!("{:016x}", hash.0));
    let header = Header { format, version: VERSION, made, records, checksum };
    let mut out = File::create(part)?;
    writeln!(out, "{}", serde_json::to_string(&header)?)?;
    io::copy(&mut File::open(body)?, &mut out)?;
    out.sync_all()
}

/// A file beside this one, for as long as it is not whole: a crash leaves the old file or the new one.
fn beside(file: &Path, ending: &str) -> io::Result<PathBuf> {
    let mut name = file.file_name().ok_or(io::ErrorKind::InvalidInput)?.to_owned();
    name.push(".");
    name.push(ending);
    Ok(file.with_file_name(name))
}

fn records_of(bytes: &[u8], file: &Path) -> Result<Vec<Record>, BackupError> {
    let damaged = |what: String| BackupError::Damaged { file: file.into(), what };
    let end = bytes.iter().position(|byte| *byte == b'\n').unwrap_or(bytes.len());
    let (header, body) = bytes.split_at_checked(end).unwrap_or((bytes, &[]));
    let body = body.strip_prefix(b"\n").unwrap_or(body);
    let header: Header =
        serde_json::from_slice(header).map_err(|_| damaged("its first line is no header of a backup".into()))?;
    if header.format != FORMAT {
        return Err(damaged(format!("its first line names the format \"{}\"", header.format)));
    }
    if header.version > VERSION {
        return Err(BackupError::Newer { file: file.into(), found: header.version });
    }
    if header.checksum != checksum(body) {
        let lines = body.split(|byte| *byte == b'\n').filter(|line| !line.is_empty()).count();
        return Err(damaged(if lines == header.records {
            "its checksum does not fit what it holds".into()
        } else {
            format!("{} records were written, {lines} are there", header.records)
        }));
    }
    let mut records = Vec::new();
    for (number, line) in body.split(|byte| *byte == b'\n').filter(|line| !line.is_empty()).enumerate() {
        let record = record_of(line).map_err(|error| damaged(format!("line {}: {error}", number + 2)))?;
        records.push(record);
    }
    Ok(records)
}

fn record_of(line: &[u8]) -> Result<Record, serde_json::Error> {
    let line: Line = serde_json::from_slice(line)?;
    Record::from_json(line.kind, &serde_json::to_vec(&line.record)?)
}

fn checksum(body: &[u8]) -> String {
    format!("{:016x}", fingerprint(&[body]))
}

fn unusable(file: &Path, error: &io::Error) -> BackupError {
    BackupError::File { file: file.into(), reason: error.kind().to_string() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::store::Overlay;
    use crate::garden::{BedId, Conversation, Filed, JobKind, Move, Person, PersonId, Question, Role};

    fn made() -> DateTime<Utc> {
        "2026-05-18T02:30:00Z".parse().unwrap()
    }

    fn filled() -> Overlay<'static> {
        let store = Overlay::in_memory();
        let id = PersonId::new("meera").unwrap();
        let person =
            Person { id: id.clone(), name: "मीरा".into(), role: Role::Client, sites: vec![], speaks: None };
        let question = Question::asked(Some(id.clone()), made(), "why?\n\"so\"", None).unwrap();
        let conversation = Conversation { person: id, at: made(), state: serde_json::json!({"kind": "water"}) };
        let filed = Filed { drawer: "updates".into(), key: "17".into(), value: serde_json::json!([1, 2.5]) };
        let moved = Move {
            bed: BedId::new("roof/box").unwrap(),
            job: JobKind::Spray,
            what: None,
            to: "2026-05-22".parse().unwrap(),
            by: None,
            at: made(),
            after: None,
        };
        let changes = [Change::put(person), Change::put(question), Change::put(conversation), Change::put(filed)];
        store.write(changes.into_iter().chain([Change::put(moved)]).collect()).unwrap();
        store
    }

    #[test]
    fn gives_back_everything() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("garden.backup");
        let store = filled();
        assert_eq!(back_up(&store, &file, made()), Ok(5));
        let other = Overlay::in_memory();
        assert_eq!(restore(&other, &file), Ok(5));
        assert_eq!(other.whole().unwrap(), store.whole().unwrap());
        assert_eq!(read_backup(&file).unwrap(), store.whole().unwrap());
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "no part is left behind");
        let again = restore(&other, &file).unwrap_err().to_string();
        assert_eq!(again, "the store is not empty: it holds 5 records; restore into an empty folder");
    }

    #[track_caller]
    fn case(spoil: impl Fn(&str) -> String, expected: &str) {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("b");
        back_up(&filled(), &file, made()).unwrap();
        fs::write(&file, spoil(&fs::read_to_string(&file).unwrap())).unwrap();
        let store = Overlay::in_memory();
        let refusal = restore(&store, &file).unwrap_err().to_string();
        let whole = expected.replace("FILE", &file.display().to_string());
        assert_eq!(refusal, whole);
        assert_eq!(store.whole().unwrap(), Garden::default());
    }

    #[test]
    fn a_spoilt_file_is_refused_whole() {
        let damaged = |what: &str| format!("FILE is no whole backup: {what}; nothing was restored; use another backup");
        case(|_| String::new(), &damaged("its first line is no header of a backup"));
        case(|text| text[..20].into(), &damaged("its first line is no header of a backup"));
        case(|text| text.replacen("rooftend backup", "tar", 1), &damaged("its first line names the format \"tar\""));
        case(|text| text.replace("meera", "marta"), &damaged("its checksum does not fit what it holds"));
        case(|text| text[..text.len() - 9].into(), &damaged("its checksum does not fit what it holds"));
        let cut = |text: &str| text.lines().take(3).map(|line| format!("{line}\n")).collect();
        case(cut, &damaged("5 records were written, 2 are there"));
        case(
            |text| text.replacen("\"version\":1", "\"version\":2", 1),
            "FILE was made by a newer rooftend (version 2, this one knows 1); use the newer one",
        );
    }

    #[test]
    fn a_file_that_is_not_there() {
        let refusal = restore(&Overlay::in_memory(), Path::new("nowhere/b")).unwrap_err().to_string();
        assert_eq!(refusal, "nowhere/b cannot be read or written: entity not found");
    }
}
