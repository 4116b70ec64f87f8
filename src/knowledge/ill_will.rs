//! Words of harm that is meant; what each list holds is said in the file.

use super::files::Files;
use super::problem::Problem;
use super::word_lists::{Phrases, Sounded, Spelled};
use serde::Deserialize;

/// The lists of `words/ill-will.toml`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct IllWillWords {
    pub english: EnglishIllWill,
    pub hindi: HindiIllWill,
}

/// Words of English.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct EnglishIllWill {
    pub people: Spelled,
    pub animals: Spelled,
    pub harm: Spelled,
    pub spoil: Spelled,
    pub ill: Spelled,
    pub poisons: Spelled,
    pub food: Spelled,
    pub mixes: Spelled,
    pub theirs: Spelled,
    pub planted: Spelled,
    pub denied: Spelled,
    pub happened: Spelled,
    pub secretly: Spelled,
    pub without: Phrases,
    pub no_wish: Spelled,
    pub asker: Spelled,
    pub it: Spelled,
    pub on_them: Spelled,
    pub links: Spelled,
    pub trails: Spelled,
    pub before_theirs: Spelled,
    pub dies: Spelled,
    pub rivals: Spelled,
    pub foes: Spelled,
    pub away: Phrases,
    pub own_death: Phrases,
}

/// Words of Hindi in either script.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct HindiIllWill {
    pub someone: Sounded,
    pub them: Spelled,
    pub kill: Sounded,
    pub to_do: Spelled,
    pub done: Spelled,
    pub made: Sounded,
    pub poisons: Sounded,
    pub give: Spelled,
    pub mix: Spelled,
    pub food: Spelled,
    pub happened: Spelled,
    pub others: Sounded,
    pub others_own: Spelled,
    pub of: Spelled,
    pub planted: Spelled,
    pub spoil: Spelled,
    pub spoilt: Spelled,
    pub denied: Spelled,
    pub unknown: Spelled,
    pub fed: Spelled,
    pub ended: Spelled,
    pub hidden: Spelled,
    pub ends: Spelled,
    pub care: Spelled,
    pub suicide: Sounded,
    pub own_death: Phrases,
    pub saves: Spelled,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> IllWillWords {
    const FILE: &str = "words/ill-will.toml";
    let text = files.text(FILE).unwrap_or_default();
    toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        IllWillWords::default()
    })
}
