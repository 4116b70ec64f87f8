//! How people say that a person or a pet is hurt.

use super::files::Files;
use super::names::Names;
use super::problem::Problem;
use serde::{Deserialize, Serialize};

/// The words of `words/harm.toml`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Harm {
    pub words: Vec<HarmWords>,
    pub told: Vec<HarmTold>,
}

/// So many classes of words are told apart.
pub const MOST_CLASSES: usize = 128;

/// Single words of one class.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HarmWords {
    pub class: String,
    pub words: Names,
}

/// What happened, as classes that stand close together.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HarmTold {
    pub what: Emergency,
    /// Each a class, or several of which one is enough: `person|pet`.
    pub all: Vec<String>,
    /// So many other words may stand between.
    #[serde(default = "usually_apart")]
    pub apart: usize,
    /// The whole message has at most so many telling words.
    pub most: Option<usize>,
    /// Classes of which the message has none.
    #[serde(default)]
    pub without: Vec<String>,
}

const fn usually_apart() -> usize {
    4
}

/// What happened to someone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Emergency {
    /// Something that may be poison went into the mouth.
    Swallowed,
    /// A spray or a dust was breathed in, or someone is ill after it.
    Breathed,
    /// A product came over the skin or the clothes.
    Skin,
    Eye,
    Bite,
    Heat,
    Fall,
    /// By electricity.
    Shock,
    Cut,
    Burn,
    /// Something heavy fell on someone; a sprain, a broken bone.
    Blow,
    /// Something stands in the throat, the nose or an ear.
    Choked,
    /// Someone does not want to live.
    Despair,
    /// Nobody is hurt yet: what grows by itself and may be poison is to be eaten.
    WouldEat,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Harm {
    const FILE: &str = "words/harm.toml";
    let text = files.text(FILE).unwrap_or_default();
    let harm = toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        Harm::default()
    });
    if harm.words.len() > MOST_CLASSES {
        let many = harm.words.len();
        problems.push(Problem::at(
            FILE,
            text,
            0..0,
            format!("{many} classes of words; at most {MOST_CLASSES} are told apart"),
        ));
    }
    let known = |class: &str| harm.words.iter().any(|words| words.class == class);
    let named = harm.told.iter().flat_map(|told| told.all.iter().flat_map(|slot| slot.split('|')).chain(without(told)));
    for class in named.filter(|class| !known(class)) {
        problems.push(Problem::at(FILE, text, 0..0, format!("\"{class}\" is no class of words here")));
    }
    harm
}

fn without(told: &HarmTold) -> impl Iterator<Item = &str> {
    told.without.iter().map(String::as_str)
}
