//! Plants that people know by name and that no file here is about.

use super::files::Files;
use super::names::Names;
use super::problem::Problem;
use serde::Deserialize;

/// The plants of `other-plants.toml`.
#[derive(Debug, Clone, Default, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OtherPlants {
    /// Words after which the name before them is of a stuff: a peel, a cake, a wood.
    pub stuff: Names,
    /// Crops, by id, that are spoken of as a stuff as well.
    pub as_stuff: Vec<String>,
    /// The words after which they are.
    pub made: Names,
    pub plants: Vec<OtherPlant>,
}

/// One of them, with what it is called.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OtherPlant {
    pub id: String,
    pub names: Names,
}

/// Reads the list; a plant that lacks a name in one language is a problem, and so is one that is a crop here.
pub fn read(files: &Files, is_crop: impl Fn(&str) -> bool, problems: &mut Vec<Problem>) -> OtherPlants {
    const FILE: &str = "other-plants.toml";
    let Some(text) = files.text(FILE) else { return OtherPlants::default() };
    let list = toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        OtherPlants::default()
    });
    for plant in &list.plants {
        if plant.names.each().iter().any(|(_, names)| names.is_empty()) {
            let said = format!("\"{}\": names in all three languages expected", plant.id);
            problems.push(Problem::at(FILE, text, 0..0, said));
        }
        if is_crop(&plant.id) {
            problems.push(Problem::at(FILE, text, 0..0, format!("\"{}\" is a crop here", plant.id)));
        }
    }
    list
}
