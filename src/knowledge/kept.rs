//! What was derived from the knowledge base, kept in one file from run to run.
//!
//! The file says by what it was made: it counts for the same files, read by the same program, only. It may be missing,
//! damaged or impossible to write; then everything is derived again, and nobody is told.

use super::files::hash;
use include_dir::{Dir, include_dir};
use std::path::Path;

/// How the file is laid out.
const FORMAT: u64 = 1;
const OPENING: &[u8; 8] = b"rooftend";
const NAME: &str = "derived";

/// The rooms that read and derive: a change of their text makes stale what was derived before, with no number to be
/// remembered.
static DERIVING: [Dir<'_>; 2] =
    [include_dir!("$CARGO_MANIFEST_DIR/src/script"), include_dir!("$CARGO_MANIFEST_DIR/src/knowledge")];

/// What a kept file must be of, for these knowledge files.
fn mark(fingerprint: u64) -> u64 {
    let mut all = vec![env!("CARGO_PKG_VERSION").as_bytes(), tantivy::version_string().as_bytes()];
    all.extend(DERIVING.iter().flat_map(|room| room.files().map(include_dir::File::contents)));
    let numbers = [fingerprint.to_le_bytes(), FORMAT.to_le_bytes()];
    all.extend(numbers.iter().map(<[u8; 8]>::as_slice));
    hash(all)
}

/// What is kept in this folder for these files, when it is whole.
#[expect(clippy::disallowed_methods, reason = "the knowledge room reads what it kept")]
pub fn taken_up<T>(folder: &Path, fingerprint: u64, make: impl FnOnce(&[u8]) -> Option<T>) -> Option<T> {
    let file = std::fs::read(folder.join(NAME)).ok()?;
    let rest = file.strip_prefix(OPENING)?;
    let (of, rest) = rest.split_first_chunk::<8>()?;
    let (check, bytes) = rest.split_first_chunk::<8>()?;
    let right = u64::from_le_bytes(*of) == mark(fingerprint) && u64::from_le_bytes(*check) == hash([bytes]);
    right.then(|| make(bytes)).flatten()
}

/// Keeps what was derived. The file appears whole or not at all: it is written beside its place and moved there.
#[expect(clippy::disallowed_methods, reason = "the knowledge room writes what it keeps")]
pub fn keep(folder: &Path, fingerprint: u64, bytes: &[u8]) -> std::io::Result<()> {
    std::fs::create_dir_all(folder)?;
    let beside = folder.join(format!("{NAME}.{}", std::process::id()));
    let file = [OPENING.as_slice(), &mark(fingerprint).to_le_bytes(), &hash([bytes]).to_le_bytes(), bytes].concat();
    std::fs::write(&beside, file).and_then(|()| std::fs::rename(&beside, folder.join(NAME))).inspect_err(|_| {
        // What is left of a try is of no use; where even this fails, it lies there.
        let _ = std::fs::remove_file(&beside);
    })
}
