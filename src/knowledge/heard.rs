//! Messages as they may be sent, from which the kinds are learned: they are never searched and never shown.

use super::asking::Kind;
use super::files::Files;
use super::harm::Emergency;
use super::problem::Problem;
use crate::script::Language;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use toml::Spanned;

/// What messages are told apart by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Matter {
    pub kind: Kind,
    /// It leaves unsaid what it is about: the kind is the likeliest.
    pub says_too_little: bool,
    /// Someone is hurt; the kind is none.
    pub hurt: Option<Emergency>,
}

impl Matter {
    /// Of a kind, and nothing more is told.
    #[must_use]
    pub const fn of(kind: Kind) -> Self {
        Self { kind, says_too_little: false, hurt: None }
    }
}

/// One message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Heard {
    pub matter: Matter,
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

/// Messages in which someone is hurt, and by what.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHurt {
    hurt: Emergency,
    en: Vec<Spanned<String>>,
    hi: Vec<Spanned<String>>,
    #[serde(rename = "hi-Latn")]
    hi_latn: Vec<Spanned<String>>,
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

/// Reads the folder of messages, a file for each kind, and the folder of those in which someone is hurt, a file for each
/// way of being so.
pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Vec<Heard> {
    let mut all = Vec::new();
    let mut seen: BTreeMap<String, Matter> = BTreeMap::new();
    for (file, text) in files.within("heard", ".toml") {
        let Some(raw) = parsed::<RawHeard>(file, text, problems) else { continue };
        let plain = each(Matter::of(raw.kind), raw.en, raw.hi, raw.hi_latn);
        let unsaid = Matter { says_too_little: true, ..Matter::of(raw.kind) };
        let too_little = raw.too_little.into_iter().flat_map(|said| each(unsaid, said.en, said.hi, said.hi_latn));
        take(file, text, plain.chain(too_little), &mut seen, &mut all, problems);
    }
    for (file, text) in files.within("hurt", ".toml") {
        let Some(raw) = parsed::<RawHurt>(file, text, problems) else { continue };
        let hurt = Matter { hurt: Some(raw.hurt), ..Matter::of(Kind::None) };
        take(file, text, each(hurt, raw.en, raw.hi, raw.hi_latn), &mut seen, &mut all, problems);
    }
    all
}

fn parsed<T: DeserializeOwned>(file: &str, text: &str, problems: &mut Vec<Problem>) -> Option<T> {
    let refused = |refusal: toml::de::Error| {
        problems.push(Problem::at(file, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
    };
    toml::from_str(text).map_err(refused).ok()
}

/// Takes up the messages of a file; one that stands under two kinds is a problem.
fn take(
    file: &str,
    text: &str,
    messages: impl Iterator<Item = (Matter, Language, Spanned<String>)>,
    seen: &mut BTreeMap<String, Matter>,
    all: &mut Vec<Heard>,
    problems: &mut Vec<Problem>,
) {
    for (matter, language, phrase) in messages {
        let span = phrase.span();
        let phrase = phrase.into_inner();
        let other = |before: &Matter| (before.kind, before.hurt) != (matter.kind, matter.hurt);
        if let Some(before) = seen.insert(phrase.to_lowercase(), matter).filter(other) {
            let message = format!("\"{phrase}\" stands under two kinds: {matter:?} and {before:?}");
            problems.push(Problem::at(file, text, span, message));
        }
        all.push(Heard { matter, language, phrase });
    }
}

fn each(
    matter: Matter,
    en: Phrases,
    hi: Phrases,
    hi_latn: Phrases,
) -> impl Iterator<Item = (Matter, Language, Spanned<String>)> {
    let lists = [(Language::En, en), (Language::Hi, hi), (Language::HiLatn, hi_latn)];
    lists.into_iter().flat_map(move |(language, list)| list.into_iter().map(move |said| (matter, language, said)))
}
