//! The one thread that writes to the embedded store. It takes what is waiting, applies each request in
//! a transaction, flushes once, and only then answers them all.

use super::error::StoreError;
use super::record::{Change, Kind, Record};
use super::seal::Seal;
use super::sled::{SEAL, Trees};
use super::stamps::Stamps;
use sled::Transactional;
use sled::transaction::{ConflictableTransactionError, ConflictableTransactionResult, TransactionalTree};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, SyncSender, channel, sync_channel};
use std::thread::JoinHandle;

/// The most requests that wait for one flush.
const BATCH: usize = 256;

struct Request {
    changes: Vec<Ready>,
    answer: SyncSender<Result<(), StoreError>>,
}

/// A change ready for the trees: `None` takes the record away.
struct Ready {
    kind: Kind,
    key: String,
    value: Option<Vec<u8>>,
}

/// The way to the writing thread. Dropping it waits until what was sent has been written.
pub struct Writer {
    requests: Option<Sender<Request>>,
    thread: Option<JoinHandle<()>>,
}

impl Writer {
    pub fn start(trees: Trees, stamps: Arc<Stamps>) -> Result<Self, StoreError> {
        let (requests, waiting) = channel();
        let thread = std::thread::Builder::new()
            .name("store-writer".into())
            .spawn(move || run(&trees, &stamps, &waiting))
            .map_err(|error| StoreError::Failed(error.to_string()))?;
        Ok(Self { requests: Some(requests), thread: Some(thread) })
    }

    /// Returns when the changes are on the disk.
    pub fn write(&self, changes: &[Change]) -> Result<(), StoreError> {
        let changes = changes.iter().map(ready).collect::<Result<_, _>>()?;
        let (answer, answered) = sync_channel(1);
        let requests = self.requests.as_ref().ok_or(StoreError::Closed)?;
        requests.send(Request { changes, answer }).map_err(|_| StoreError::Closed)?;
        answered.recv().map_err(|_| StoreError::Closed)?
    }
}

impl Drop for Writer {
    fn drop(&mut self) {
        drop(self.requests.take());
        if let Some(thread) = self.thread.take() {
            // A writer that panicked has answered nobody, so nobody relies on it.
            let _ = thread.join();
        }
    }
}

fn ready(change: &Change) -> Result<Ready, StoreError> {
    let record = change.record();
    let value = match change {
        Change::Put(record) => Some(Record::to_json(record).map_err(|error| StoreError::Failed(error.to_string()))?),
        Change::Remove(_) => None,
    };
    Ok(Ready { kind: record.kind(), key: record.key(), value })
}

fn run(trees: &Trees, stamps: &Stamps, waiting: &Receiver<Request>) {
    while let Ok(first) = waiting.recv() {
        let mut batch = vec![first];
        batch.extend(waiting.try_iter().take(BATCH - 1));
        let results: Vec<_> = batch.iter().map(|request| apply(trees, &request.changes)).collect();
        let written = batch.iter().flat_map(|request| &request.changes);
        written.for_each(|change| stamps.written(change.kind, &change.key));
        let flushed = trees.flush();
        for (request, result) in batch.into_iter().zip(results) {
            // Whoever no longer waits for the answer does not need it.
            let _ = request.answer.send(result.and_then(|()| flushed.clone()));
        }
    }
}

fn apply(trees: &Trees, changes: &[Ready]) -> Result<(), StoreError> {
    let made = trees.all().transaction(|all: &Vec<TransactionalTree>| {
        let about = all.first().ok_or_else(no_tree)?;
        let mut seal = about.get(SEAL)?.and_then(|bytes| Seal::read(&bytes)).unwrap_or_default();
        for change in changes {
            let tree = all.get(Trees::place(change.kind)).ok_or_else(no_tree)?;
            make(tree, change, &mut seal)?;
        }
        about.insert(SEAL, &seal.bytes())?;
        Ok(())
    });
    made.map_err(|error| StoreError::Failed(error.to_string()))
}

fn make(tree: &TransactionalTree, change: &Ready, seal: &mut Seal) -> ConflictableTransactionResult<(), sled::Error> {
    let key = change.key.as_bytes();
    let before = match &change.value {
        Some(value) => tree.insert(key, value.as_slice())?,
        None => tree.remove(key)?,
    };
    if let Some(before) = before {
        seal.remove(change.kind, key, &before);
    }
    if let Some(value) = &change.value {
        seal.add(change.kind, key, value);
    }
    Ok(())
}

fn no_tree() -> ConflictableTransactionError<sled::Error> {
    ConflictableTransactionError::Abort(sled::Error::Unsupported("a tree is missing".into()))
}
