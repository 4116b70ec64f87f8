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
    pub kind: Kind,
    /// It leaves unsaid what it is about: the kind is the likeliest.
    pub says_too_little: bool,
    pub language: Language,
    /// With names as their class in braces, beds, stuff and troubles with their words behind it.
    pub phrase: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHeard {
    kind: Kind,
    en: Vec<Spanned<String>>,
    hi: Vec<Spanned<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: Vec<Spanned<String>>,
    #[serde(rename = "too-little")]
    too_little: Option<TooLittle>,
}

/// Messages that leave unsaid what they are about.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct TooLittle {
    en: Vec<Spanned<String>>,
    hi: Vec<Spanned<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: Vec<Spanned<String>>,
}

type Phrases = Vec<Spanned<String>>;

/// Reads the folder of messages, a file for each kind.
pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Vec<Heard> {
    let mut all = Vec::new();
    let mut seen: BTreeMap<String, Kind> = BTreeMap::new();
    for (file, text) in files.within("heard", ".toml") {
        let raw: RawHeard = match toml::from_str(text) {
            Ok(raw) => raw,
            Err(refusal) => {
                problems.push(Problem::at(file, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
                continue;
            }
        };
        let plain = each(false, raw.en, raw.hi, raw.hi_latn);
        let too_little = raw.too_little.into_iter().flat_map(|said| each(true, said.en, said.hi, said.hi_latn));
        for (says_too_little, language, phrase) in plain.chain(too_little) {
            let span = phrase.span();
            let phrase = phrase.into_inner();
            if let Some(kind) = seen.insert(phrase.to_lowercase(), raw.kind).filter(|kind| *kind != raw.kind) {
                let message = format!("\"{phrase}\" stands under two kinds: {kind:?} and {:?}", raw.kind);
                problems.push(Problem::at(file, text, span, message));
            }
            all.push(Heard { kind: raw.kind, says_too_little, language, phrase });
        }
    }
    all
}

fn each(
    too_little: bool,
    en: Phrases,
    hi: Phrases,
    hi_latn: Phrases,
) -> impl Iterator<Item = (bool, Language, Spanned<String>)> {
    let lists = [(Language::En, en), (Language::Hi, hi), (Language::HiLatn, hi_latn)];
    lists.into_iter().flat_map(move |(language, list)| list.into_iter().map(move |said| (too_little, language, said)))
}
