//! The sources that numbers name.

use super::files::Files;
use super::problem::Problem;
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

/// What a number from a source is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Worth {
    /// A document that can be opened.
    Published,
    /// A rule of the trade without a source.
    CommonPractice,
    /// Remembered, not looked up.
    Memory,
}

/// One entry of `sources.toml`.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Source {
    pub id: String,
    pub title: String,
    #[serde(rename = "kind")]
    pub worth: Worth,
    pub by: Option<String>,
    pub year: Option<i32>,
    pub note: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Sources {
    sources: Vec<Spanned<Source>>,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> BTreeMap<String, Source> {
    const FILE: &str = "sources.toml";
    let text = files.text(FILE).unwrap_or_default();
    let mut all = BTreeMap::new();
    match toml::from_str::<Sources>(text) {
        Ok(list) => {
            for source in list.sources {
                let span = source.span();
                let source = source.into_inner();
                if let Some(before) = all.insert(source.id.clone(), source) {
                    problems.push(Problem::at(FILE, text, span, format!("source \"{}\" stands twice", before.id)));
                }
            }
        }
        Err(refusal) => {
            problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        }
    }
    all
}
