//! Where the texts come from: the copy inside the binary, or a folder.

use super::names::InThree;
use super::problem::Problem;
use include_dir::{Dir, include_dir};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use thiserror::Error;

static EMBEDDED: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/knowledge");

/// The texts of a knowledge base, by path below its folder (`crops/spinach.toml`).
#[derive(Debug, Clone, Default)]
pub struct Files {
    texts: BTreeMap<String, String>,
}

/// A folder that cannot be read.
#[derive(Debug, Error)]
#[error("cannot read {path}: {why}; a folder of knowledge files with `crops/` and `sources.toml` was expected")]
pub struct Unreadable {
    pub path: PathBuf,
    pub why: std::io::Error,
}

impl Files {
    /// The files the binary was built with.
    #[must_use]
    pub fn embedded() -> Self {
        let mut texts = BTreeMap::new();
        gather(&EMBEDDED, &mut texts);
        Self { texts }
    }

    /// The files of a folder.
    ///
    /// # Errors
    /// [`Unreadable`] when the folder or a file in it cannot be read, is no UTF-8, or has no `sources.toml`.
    pub fn folder(folder: &Path) -> Result<Self, Unreadable> {
        let mut texts = BTreeMap::new();
        walk(folder, folder, &mut texts)?;
        if !texts.contains_key("sources.toml") {
            let why = std::io::Error::new(std::io::ErrorKind::NotFound, "no sources.toml in it");
            return Err(Unreadable { path: folder.into(), why });
        }
        Ok(Self { texts })
    }

    /// Files given as text: for tests.
    #[must_use]
    pub fn of(texts: impl IntoIterator<Item = (String, String)>) -> Self {
        Self { texts: texts.into_iter().collect() }
    }

    /// The text of one file.
    #[must_use]
    pub fn text(&self, path: &str) -> Option<&str> {
        self.texts.get(path).map(String::as_str)
    }

    /// The files of one folder with an ending, in order of their names.
    pub fn within<'a>(&'a self, folder: &str, ending: &'a str) -> impl Iterator<Item = (&'a str, &'a str)> {
        let prefix = format!("{folder}/");
        self.texts
            .iter()
            .filter(move |(path, _)| path.starts_with(&prefix) && path.ends_with(ending))
            .map(|(path, text)| (path.as_str(), text.as_str()))
    }

    /// The phrases of each language.
    pub(super) fn phrases(&self, problems: &mut Vec<Problem>) -> InThree<String> {
        let mut get = |path: &str| {
            self.text(path).map(str::to_owned).unwrap_or_else(|| {
                problems.push(Problem::at(path, "", 0..0, "this file of phrases is missing"));
                String::new()
            })
        };
        InThree { en: get("wording/en.ftl"), hi: get("wording/hi.ftl"), hi_latn: get("wording/hi-Latn.ftl") }
    }

    /// A hash over names and texts, the same on every machine.
    #[must_use]
    pub fn fingerprint(&self) -> u64 {
        hash(self.texts.iter().flat_map(|(path, text)| [path.as_bytes(), text.as_bytes()]))
    }
}

/// A hash over bytes and the borders between their parts, eight at a time: multiplied and turned, so that each bit
/// reaches all others. For finding what changed or was damaged; no guard against ill will.
pub(super) fn hash<'b>(parts: impl IntoIterator<Item = &'b [u8]>) -> u64 {
    let mix = |hash: u64, word: u64| (hash ^ word).wrapping_mul(0x9e37_79b9_7f4a_7c15).rotate_left(29);
    let mut hash = 0;
    for part in parts {
        let (words, rest) = part.as_chunks::<8>();
        hash = words.iter().fold(mix(hash, part.len() as u64), |hash, word| mix(hash, u64::from_le_bytes(*word)));
        hash = rest.iter().fold(hash, |hash, byte| mix(hash, u64::from(*byte)));
    }
    mix(hash, 0)
}

fn gather(folder: &Dir<'_>, texts: &mut BTreeMap<String, String>) {
    for file in folder.files() {
        if let (Some(path), Some(text)) = (file.path().to_str(), file.contents_utf8()) {
            texts.insert(path.replace('\\', "/"), text.to_owned());
        }
    }
    for inner in folder.dirs() {
        gather(inner, texts);
    }
}

#[expect(clippy::disallowed_methods, reason = "the knowledge room reads its own folder")]
fn walk(root: &Path, folder: &Path, texts: &mut BTreeMap<String, String>) -> Result<(), Unreadable> {
    let refuse = |path: &Path| {
        let path = path.to_owned();
        move |why| Unreadable { path, why }
    };
    for entry in std::fs::read_dir(folder).map_err(refuse(folder))? {
        let path = entry.map_err(refuse(folder))?.path();
        if path.is_dir() {
            walk(root, &path, texts)?;
        } else if path.extension().is_some_and(|ending| ["toml", "md", "ftl"].iter().any(|known| ending == *known)) {
            let text = std::fs::read_to_string(&path).map_err(refuse(&path))?;
            let name = path.strip_prefix(root).unwrap_or(&path).to_string_lossy().replace('\\', "/");
            texts.insert(name, text);
        }
    }
    Ok(())
}
