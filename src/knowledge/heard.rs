//! Messages as they may be sent, from which the kinds are learned: they are never searched and never shown.

use super::asking::Kind;
use super::files::Files;
use super::problem::Problem;
use crate::script::Language;
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

/// One message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Heard {
    /// None: it leaves unsaid what it is about.
    pub kind: Option<Kind>,
    pub language: Language,
    /// With names as their class in braces, beds, stuff and troubles with their words behind it.
    pub phrase: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHeard {
    kind: Option<Kind>,
    en: Vec<Spanned<String>>,
    hi: Vec<Spanned<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: Vec<Spanned<String>>,
}

/// Reads the folder of messages: a file for each kind, and one without a kind for those that say too little.
pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Vec<Heard> {
    let mut all = Vec::new();
    let mut seen: BTreeMap<String, Option<Kind>> = BTreeMap::new();
    for (file, text) in files.within("heard", ".toml") {
        let raw: RawHeard = match toml::from_str(text) {
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
            all.push(Heard { kind: raw.kind, language, phrase });
        }
    }
    all
}
