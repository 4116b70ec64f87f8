//! Words with which people describe what they see on a plant.

use super::files::Files;
use super::names::Names;
use super::problem::Problem;
use serde::Deserialize;

/// The words of `words/looks.toml`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Looks {
    /// Words that say nothing in a description.
    pub empty: Names,
    pub looks: Vec<LookWords>,
}

/// Words of one meaning.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LookWords {
    pub look: String,
    /// One searches for it, and may say that it is not there.
    #[serde(default)]
    pub sought: bool,
    /// A word of it by itself is a description.
    #[serde(default)]
    pub alone: bool,
    pub words: Names,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Looks {
    const FILE: &str = "words/looks.toml";
    let text = files.text(FILE).unwrap_or_default();
    toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        Looks::default()
    })
}
