//! How words are cut short on a phone, and what they are then read as.

use super::files::Files;
use super::problem::Problem;
use rustc_hash::{FxHashMap, FxHashSet};
use serde::Deserialize;
use std::collections::BTreeMap;

/// The lists of `words/short-forms.toml`.
#[derive(Debug, Clone, Default)]
pub struct ShortForms {
    /// What a short form is read as in any language, in English, in romanised Hindi.
    pub any: FxHashMap<String, String>,
    pub english: FxHashMap<String, String>,
    pub hindi: FxHashMap<String, String>,
    /// Before these a "2" is a "to"; before the others only after one of certain words.
    pub to_verbs: FxHashSet<String>,
    pub to_things: FxHashSet<String>,
    pub to_after: FxHashSet<String>,
    /// Before these a "4" is a "for".
    pub for_before: FxHashSet<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Raw {
    any: BTreeMap<String, Vec<String>>,
    en: BTreeMap<String, Vec<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: BTreeMap<String, Vec<String>>,
    to: RawTo,
    #[serde(rename = "for")]
    for_: RawFor,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawTo {
    verbs: FxHashSet<String>,
    things: FxHashSet<String>,
    after: FxHashSet<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawFor {
    before: FxHashSet<String>,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> ShortForms {
    const FILE: &str = "words/short-forms.toml";
    let Some(text) = files.text(FILE) else { return ShortForms::default() };
    let raw: Raw = match toml::from_str(text) {
        Ok(raw) => raw,
        Err(refusal) => {
            problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
            return ShortForms::default();
        }
    };
    let mut twice = |list: BTreeMap<String, Vec<String>>| {
        let mut all = FxHashMap::default();
        for (whole, shorts) in list {
            for short in shorts {
                if let Some(other) = all.insert(short.clone(), whole.clone()).filter(|other| *other != whole) {
                    let start = text.find(&format!("\"{short}\"")).unwrap_or(0);
                    let message = format!("\"{short}\" is read as \"{other}\" and as \"{whole}\"");
                    problems.push(Problem::at(FILE, text, start..start + short.len(), message));
                }
            }
        }
        all
    };
    ShortForms {
        any: twice(raw.any),
        english: twice(raw.en),
        hindi: twice(raw.hi_latn),
        to_verbs: raw.to.verbs,
        to_things: raw.to.things,
        to_after: raw.to.after,
        for_before: raw.for_.before,
    }
}
