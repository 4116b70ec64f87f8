//! What can go wrong with a store.

use std::path::PathBuf;
use thiserror::Error;

/// A store that cannot be read or written. Whatever it says, the store is as it was.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum StoreError {
    #[error("{folder} is in use by {holder}; stop that first, or give another folder", folder = folder.display(), holder = holder(*by))]
    Held { folder: PathBuf, by: Option<u32> },
    #[error(
        "{folder} was written by a newer rooftend (its store is of version {found}, this one knows {known}); nothing was \
         changed; use the newer rooftend",
        folder = folder.display()
    )]
    Newer { folder: PathBuf, found: u64, known: u64 },
    #[error("{folder} is damaged: {place}: {what}; nothing was changed; {backup}", folder = folder.display())]
    Damaged { folder: PathBuf, place: String, what: String, backup: String },
    #[error("{folder} cannot be written: {reason}; give a folder that can", folder = folder.display())]
    Unwritable { folder: PathBuf, reason: String },
    #[error("the store could not be read or written: {0}")]
    Failed(String),
    #[error("the store has been closed")]
    Closed,
}

fn holder(by: Option<u32>) -> String {
    by.map_or_else(|| "another process".into(), |pid| format!("process {pid}"))
}
