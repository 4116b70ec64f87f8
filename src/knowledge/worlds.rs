//! How people talk of what is no garden: the kitchen, the phone, the body, the pets, the fields, money, feasts.

use super::asking::Kind;
use super::files::Files;
use super::names::Names;
use super::point::Point;
use super::problem::Problem;
use serde::Deserialize;

/// The words of `words/worlds.toml`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Worlds {
    pub words: Vec<WorldWords>,
    pub groups: Vec<WorldGroup>,
    pub told: Vec<WorldTold>,
}

/// Words and phrases of one class.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorldWords {
    pub class: String,
    pub words: Names,
}

/// Several classes and marks under one name.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorldGroup {
    pub group: String,
    pub of: Vec<String>,
}

/// What tells that a message is of another world.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorldTold {
    /// Each a class, a group or a mark, or several of which one is enough: `pet|fish`. All must be there, each in words
    /// of its own.
    pub all: Vec<String>,
    /// Classes, groups and marks that make it a matter of a garden again, said in other words than those above.
    #[serde(default)]
    pub unless: Vec<String>,
    /// What such a message is: no garden's matter, where no other kind is given.
    #[serde(default)]
    pub kind: Kind,
    /// What it says beside its kind. Where that is the danger of a product, it is heard before all else.
    pub point: Option<Point>,
    /// It stands whatever the other words are usual for: what the law forbids, the body, orders, where people live.
    #[serde(default)]
    pub whatever: bool,
}

/// What a message holds beside words of a class, as `words/worlds.toml` names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Mark {
    Crop,
    OtherPlant,
    OwnBed,
    BedKind,
    Material,
    Mix,
    Trouble,
    /// A sign on a plant was described.
    OnPlant,
    /// Work of sowing, planting, cutting or picking is named or told.
    Grow,
    Pick,
    Net,
    Water,
    Feed,
    Spray,
    /// A measure is said.
    Size,
    Asks,
    /// Work done is told, or something seen.
    Told,
    /// A word that ends as the makers' names of poisons do: "-phos", "-thrin".
    Chemical,
}

impl Mark {
    const ALL: [(&'static str, Self); 18] = [
        ("@crop", Self::Crop),
        ("@other-plant", Self::OtherPlant),
        ("@own-bed", Self::OwnBed),
        ("@bed-kind", Self::BedKind),
        ("@material", Self::Material),
        ("@mix", Self::Mix),
        ("@trouble", Self::Trouble),
        ("@on-plant", Self::OnPlant),
        ("@grow", Self::Grow),
        ("@pick", Self::Pick),
        ("@net", Self::Net),
        ("@water", Self::Water),
        ("@feed", Self::Feed),
        ("@spray", Self::Spray),
        ("@size", Self::Size),
        ("@asks", Self::Asks),
        ("@told", Self::Told),
        ("@chemical", Self::Chemical),
    ];

    /// The mark that the file calls so.
    #[must_use]
    pub fn with_name(name: &str) -> Option<Self> {
        Self::ALL.iter().find(|(known, _)| *known == name).map(|(_, mark)| *mark)
    }
}

impl Worlds {
    /// The classes and marks that a slot of the file stands for: `pet|ours`.
    pub fn within<'a>(&'a self, slot: &'a str) -> impl Iterator<Item = &'a str> {
        slot.split('|').flat_map(|name| match self.groups.iter().find(|group| group.group == name) {
            Some(group) => group.of.iter().map(String::as_str).collect(),
            None => vec![name],
        })
    }
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Worlds {
    const FILE: &str = "words/worlds.toml";
    let Some(text) = files.text(FILE) else { return Worlds::default() };
    let worlds: Worlds = toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        Worlds::default()
    });
    let known = |name: &str| Mark::with_name(name).is_some() || worlds.words.iter().any(|words| words.class == name);
    let slots = worlds.told.iter().flat_map(|told| told.all.iter().chain(&told.unless));
    for name in slots.flat_map(|slot| worlds.within(slot)).filter(|name| !known(name)) {
        problems.push(Problem::at(FILE, text, 0..0, format!("\"{name}\" is no class of words and no mark here")));
    }
    worlds
}
