//! The files beside the embedded store: who holds it, and where it was last backed up to.

#![expect(clippy::disallowed_methods, reason = "the store keeps its own folder")]

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

fn holder(folder: &Path) -> PathBuf {
    folder.join("holder")
}

fn last_backup(folder: &Path) -> PathBuf {
    folder.join("last-backup")
}

/// Notes this process as the holder of the store.
pub fn take(folder: &Path) -> io::Result<()> {
    fs::write(holder(folder), format!("{}\n", std::process::id()))
}

/// Notes that nobody holds it; the file stays as a sign that there was a store.
pub fn leave(folder: &Path) -> io::Result<()> {
    fs::write(holder(folder), "")
}

/// Was there ever a store in this folder?
pub fn was_there(folder: &Path) -> bool {
    holder(folder).exists()
}

/// The process that noted itself as the holder.
pub fn who(folder: &Path) -> Option<u32> {
    fs::read_to_string(holder(folder)).ok()?.trim().parse().ok()
}

/// Notes in the store's folder where it was backed up to, for the day on which it is damaged.
///
/// # Errors
/// When the note cannot be written.
pub fn note_backup(folder: &Path, file: &Path) -> io::Result<()> {
    fs::write(last_backup(folder), format!("{}\n", std::path::absolute(file)?.display()))
}

/// Where to look for a backup, in words.
pub fn where_backed_up(folder: &Path) -> String {
    match fs::read_to_string(last_backup(folder)) {
        Ok(file) => format!("its last backup is {}; restore that into an empty folder", file.trim()),
        Err(_) => "no backup of it was noted here; look for a backup file or an export".into(),
    }
}
