//! A store that a running process holds, reached through the socket in its folder: one request a line, one answer a line.

use super::Store;
use super::error::StoreError;
use super::record::{Change, Kind, Record};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::io::{BufRead, BufReader, Write};
use std::os::unix::net::UnixStream;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

/// The socket of a folder.
#[must_use]
pub fn socket(folder: &Path) -> PathBuf {
    folder.join("rooftend.sock")
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Request {
    Record { kind: Kind, key: String },
    Records { kind: Kind, prefix: String },
    Write { changes: Vec<Sent> },
}

/// A change on the wire.
#[derive(Serialize, Deserialize)]
struct Sent {
    removes: bool,
    kind: Kind,
    record: Value,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Answer {
    Records(Vec<Value>),
    Written,
    Failed(String),
}

/// The caller's end.
pub struct RemoteStore {
    line: Mutex<BufReader<UnixStream>>,
}

impl RemoteStore {
    /// The store of a folder, where a process holds it and answers.
    #[must_use]
    pub fn reach(folder: &Path) -> Option<Self> {
        let stream = UnixStream::connect(socket(folder)).ok()?;
        Some(Self { line: Mutex::new(BufReader::new(stream)) })
    }

    fn ask(&self, request: &Request) -> Result<Answer, StoreError> {
        let mut text = serde_json::to_string(request).map_err(failed)?;
        text.push('\n');
        let mut line = self.line.lock().unwrap_or_else(PoisonError::into_inner);
        line.get_mut().write_all(text.as_bytes()).map_err(failed)?;
        let mut answer = String::new();
        if line.read_line(&mut answer).map_err(failed)? == 0 {
            return Err(StoreError::Closed);
        }
        match serde_json::from_str(&answer).map_err(failed)? {
            Answer::Failed(what) => Err(StoreError::Failed(what)),
            answer => Ok(answer),
        }
    }

    fn list(&self, kind: Kind, request: &Request) -> Result<Vec<Record>, StoreError> {
        match self.ask(request)? {
            Answer::Records(values) => values.iter().map(|value| record(kind, value)).collect(),
            Answer::Written | Answer::Failed(_) => Err(StoreError::Failed("an answer of another kind".into())),
        }
    }
}

impl Store for RemoteStore {
    fn record(&self, kind: Kind, key: &str) -> Result<Option<Record>, StoreError> {
        Ok(self.list(kind, &Request::Record { kind, key: key.into() })?.into_iter().next())
    }

    fn records(&self, kind: Kind, prefix: &str) -> Result<Vec<Record>, StoreError> {
        self.list(kind, &Request::Records { kind, prefix: prefix.into() })
    }

    fn write(&self, changes: Vec<Change>) -> Result<(), StoreError> {
        let sent = |change: &Change| {
            let record = change.record();
            Ok(Sent { removes: matches!(change, Change::Remove(_)), kind: record.kind(), record: json(record)? })
        };
        let changes = changes.iter().map(sent).collect::<Result<_, StoreError>>()?;
        self.ask(&Request::Write { changes }).map(drop)
    }
}

/// The holder's end: one line of a caller, answered.
#[must_use]
pub fn answer(store: &dyn Store, line: &str) -> String {
    let answer = carry_out(store, line).unwrap_or_else(|fault| Answer::Failed(fault.to_string()));
    serde_json::to_string(&answer).unwrap_or_else(|_| "{\"failed\":\"the answer could not be written\"}".into())
}

fn carry_out(store: &dyn Store, line: &str) -> Result<Answer, StoreError> {
    let records = |all: Vec<Record>| all.iter().map(json).collect::<Result<_, _>>().map(Answer::Records);
    match serde_json::from_str(line).map_err(failed)? {
        Request::Record { kind, key } => records(store.record(kind, &key)?.into_iter().collect()),
        Request::Records { kind, prefix } => records(store.records(kind, &prefix)?),
        Request::Write { changes } => {
            let change = |sent: &Sent| {
                let record = record(sent.kind, &sent.record)?;
                Ok(if sent.removes { Change::Remove(record) } else { Change::Put(record) })
            };
            store.write(changes.iter().map(change).collect::<Result<_, StoreError>>()?)?;
            Ok(Answer::Written)
        }
    }
}

fn json(record: &Record) -> Result<Value, StoreError> {
    serde_json::from_slice(&record.to_json().map_err(failed)?).map_err(failed)
}

fn record(kind: Kind, value: &Value) -> Result<Record, StoreError> {
    Record::from_json(kind, &serde_json::to_vec(value).map_err(failed)?).map_err(failed)
}

fn failed(fault: impl std::fmt::Display) -> StoreError {
    StoreError::Failed(fault.to_string())
}
