//! `import`, `export`, `backup`, `restore`.

use super::arguments::Arguments;
use super::ask::print;
use super::front::{folder, knowledge, read_text, store, system_clock, write_file};
use super::refusal::Refusal;
use crate::garden::backup::{back_up, restore as fill};
use crate::garden::import::import as put;
use crate::garden::store::note_backup;
use crate::garden::{KnownIds, read_garden, write_garden};
use chrono::Utc;
use std::path::Path;
use std::process::ExitCode;

/// A garden file into the store, all of it or nothing.
pub fn import(file: &Path, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let known = knowledge(arguments)?;
    let text = read_text(file)?;
    let store = store(arguments)?;
    let (crops, mixes, materials) = (known.crop_ids(), known.mix_ids(), known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden(&file.display().to_string(), &text, &ids, &store.whole()?).map_err(Refusal::Garden)?;
    let imported = put(store.as_ref(), garden)?;
    let new: Vec<String> = imported.new.iter().map(|(kind, count)| format!("{count} {}", kind.word())).collect();
    let new = if new.is_empty() { "nothing new".to_owned() } else { format!("new: {}", new.join(", ")) };
    print(&format!("{new}; {} unchanged", imported.unchanged))?;
    for (kind, key) in &imported.replaced {
        print(&format!("replaced in {}: {key}", kind.word()))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// The store's garden as a garden file.
pub fn export(file: &Path, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let store = store(arguments)?;
    let text = write_garden(&store.whole()?);
    write_file(file, text.as_bytes())?;
    print(&format!("written: {}", file.display()))?;
    Ok(ExitCode::SUCCESS)
}

/// Everything in the store to one file.
pub fn backup(file: &Path, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let folder = folder(arguments)?;
    let store = store(arguments)?;
    let count = back_up(store.as_ref(), file, system_clock().with_timezone(&Utc)).map_err(Refusal::plain)?;
    note_backup(&folder, file).map_err(|fault| Refusal::file("note the backup in", &folder, &fault))?;
    print(&format!("{count} records saved to {}", file.display()))?;
    Ok(ExitCode::SUCCESS)
}

/// A backup into an empty store.
pub fn restore(file: &Path, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let store = store(arguments)?;
    let count = fill(store.as_ref(), file).map_err(Refusal::plain)?;
    print(&format!("{count} records restored from {}", file.display()))?;
    Ok(ExitCode::SUCCESS)
}
