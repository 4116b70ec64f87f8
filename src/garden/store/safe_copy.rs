//! A copy of the store's files, taken before they are opened. The database mends and shortens its files
//! as it opens them, also those that it then refuses; a store that is refused must stay as it was.

#![expect(clippy::disallowed_methods, reason = "the store keeps its own folder")]

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

const NAME: &str = "before-opening-";

/// The copy; dropped, it is taken away.
pub struct SafeCopy {
    files: PathBuf,
    copy: PathBuf,
}

impl SafeCopy {
    /// Copies the database's files, if there are any yet, to a place beside them.
    pub fn of(files: &Path) -> io::Result<Self> {
        let copy = files.with_file_name(format!("{NAME}{}", std::process::id()));
        remove(&copy)?;
        let safe = Self { files: files.into(), copy };
        if files.exists() {
            copy_folder(files, &safe.copy)?;
        }
        Ok(safe)
    }

    /// Puts the files back as they were.
    pub fn put_back(self) -> io::Result<()> {
        if !self.copy.exists() {
            return Ok(());
        }
        let changed = self.copy.with_extension("changed");
        fs::rename(&self.files, &changed)?;
        fs::rename(&self.copy, &self.files)?;
        fs::remove_dir_all(changed)
    }

    /// Takes away the copies of processes that were killed while they opened the store.
    pub fn remove_strays(&self) -> io::Result<()> {
        let Some(folder) = self.files.parent() else { return Ok(()) };
        for entry in fs::read_dir(folder)? {
            let entry = entry?;
            if entry.file_name().to_string_lossy().starts_with(NAME) {
                remove(&entry.path())?;
            }
        }
        Ok(())
    }
}

impl Drop for SafeCopy {
    fn drop(&mut self) {
        // A stray copy does no harm: the next opening takes it away.
        let _ = remove(&self.copy);
    }
}

fn remove(folder: &Path) -> io::Result<()> {
    match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

fn copy_folder(from: &Path, to: &Path) -> io::Result<()> {
    fs::create_dir(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            copy_folder(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), target)?;
        }
    }
    Ok(())
}
