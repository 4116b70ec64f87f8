//! What must not be grown and eaten as shoots, with the reason.

use super::fact::SourceRef;
use super::files::Files;
use super::names::{InThree, Names};
use super::raw::Reader;
use super::source::Worth;
use serde::Deserialize;
use toml::Spanned;

/// Seed whose shoots are not eaten.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RefusedShoot {
    pub id: String,
    /// The crop of the knowledge base that it is, where it is one.
    pub crop: Option<String>,
    pub names: Names,
    /// What in it does harm.
    pub reason: InThree<String>,
    pub source: SourceRef,
    pub read: bool,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default)]
    refused: Vec<Spanned<Raw>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Raw {
    id: String,
    crop: Option<String>,
    #[serde(default)]
    names: Names,
    reason: InThree<String>,
    from: String,
    #[serde(default)]
    read: bool,
}

pub fn read(files: &Files, reader: &mut Reader<'_>) -> Vec<RefusedShoot> {
    const FILE: &str = "refused.toml";
    let Some(text) = files.text(FILE) else { return Vec::new() };
    reader.open(FILE, text);
    match toml::from_str::<List>(text) {
        Ok(list) => list.refused.into_iter().filter_map(|raw| refused(reader, raw)).collect(),
        Err(refusal) => {
            reader.problem(refusal.span().unwrap_or(0..0), refusal.message().trim().to_owned());
            Vec::new()
        }
    }
}

fn refused(reader: &mut Reader<'_>, raw: Spanned<Raw>) -> Option<RefusedShoot> {
    let span = raw.span();
    let raw = raw.into_inner();
    let source = reader.source(span.clone(), &raw.from)?;
    if raw.read && reader.worth(&source.id) != Some(Worth::Published) {
        reader.problem(span, format!("`read = true` needs a published source; \"{}\" is none", source.id));
        return None;
    }
    if raw.crop.is_none() && raw.names.each().iter().any(|(_, names)| names.is_empty()) {
        reader.problem(span, format!("\"{}\" is no crop of the base: names in all three languages expected", raw.id));
        return None;
    }
    Some(RefusedShoot { id: raw.id, crop: raw.crop, names: raw.names, reason: raw.reason, source, read: raw.read })
}
