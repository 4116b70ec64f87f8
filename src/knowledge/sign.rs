//! The vocabulary of signs: what one sees of a trouble, in words that people use for it.

use super::files::Files;
use super::names::{InThree, Names};
use super::raw::Reader;
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

/// One thing that can be seen.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Symptom {
    pub id: String,
    pub part: Part,
    /// The wider sign that it is one of: "old leaves yellow first" is a "leaves yellow".
    pub is_a: Option<String>,
    /// Short enough for a button.
    pub label: InThree<String>,
    /// The question that asks for it.
    pub ask: InThree<String>,
    /// Phrases that people use for it.
    pub names: Names,
}

/// Where it is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    Leaf,
    Stem,
    Root,
    Flower,
    Fruit,
    Seedling,
    WholePlant,
    Mix,
}

/// A label longer than this does not fit on a button.
const LONGEST_LABEL: usize = 40;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Signs {
    #[serde(default)]
    signs: Vec<Spanned<Symptom>>,
}

pub fn read(files: &Files, reader: &mut Reader<'_>) -> BTreeMap<String, Symptom> {
    const FILE: &str = "signs.toml";
    let Some(text) = files.text(FILE) else { return BTreeMap::new() };
    reader.open(FILE, text);
    let list = match toml::from_str::<Signs>(text) {
        Ok(list) => list.signs,
        Err(refusal) => {
            reader.problem(refusal.span().unwrap_or(0..0), refusal.message().trim().to_owned());
            return BTreeMap::new();
        }
    };
    let mut all = BTreeMap::new();
    for sign in list {
        let span = sign.span();
        let sign = sign.into_inner();
        for (language, label) in sign.label.each() {
            let length = label.chars().count();
            if length == 0 || length > LONGEST_LABEL {
                let tag = language.tag();
                reader.problem(
                    span.clone(),
                    format!(
                        "the label of \"{}\" in {tag} has {length} letters, 1 to {LONGEST_LABEL} expected",
                        sign.id
                    ),
                );
            }
        }
        if sign.names.each().iter().any(|(_, names)| names.is_empty()) {
            reader.problem(span.clone(), format!("sign \"{}\" lacks a name in one of the languages", sign.id));
        }
        if let Some(before) = all.insert(sign.id.clone(), sign) {
            reader.problem(span, format!("sign \"{}\" stands twice", before.id));
        }
    }
    all
}
