//! Ways of asking: example phrasings of each kind of message.

use super::files::Files;
use super::problem::Problem;
use crate::script::Language;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use toml::Spanned;

/// The kinds of message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    Water,
    Harvest,
    Sow,
    Shade,
    Spray,
    Feed,
    Mix,
    Build,
    Load,
    Space,
    Seed,
    Trouble,
    Care,
    Due,
    Record,
    Person,
    #[default]
    None,
}

/// One phrasing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WayOfAsking {
    pub kind: Kind,
    pub language: Language,
    /// With names replaced by their class in braces: `how much water does {crop} need`.
    pub phrase: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawAsking {
    kind: Kind,
    en: Vec<Spanned<String>>,
    hi: Vec<Spanned<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: Vec<Spanned<String>>,
}

/// Reads the phrasings.
pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Vec<WayOfAsking> {
    let mut all = Vec::new();
    let mut seen: BTreeMap<String, Kind> = BTreeMap::new();
    for (file, text) in files.within("asking", ".toml") {
        let raw: RawAsking = match toml::from_str(text) {
            Ok(raw) => raw,
            Err(refusal) => {
                problems.push(Problem::at(file, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
                continue;
            }
        };
        let lists = [(Language::En, raw.en), (Language::Hi, raw.hi), (Language::HiLatn, raw.hi_latn)];
        for (language, phrase) in lists.into_iter().flat_map(|(l, list)| list.into_iter().map(move |p| (l, p))) {
            let span = phrase.span();
            let phrase = phrase.into_inner();
            if let Some(kind) = seen.insert(phrase.to_lowercase(), raw.kind).filter(|kind| *kind != raw.kind) {
                let message = format!("\"{phrase}\" stands under two kinds: {kind:?} and {:?}", raw.kind);
                problems.push(Problem::at(file, text, span, message));
            }
            all.push(WayOfAsking { kind: raw.kind, language, phrase });
        }
    }
    all
}
