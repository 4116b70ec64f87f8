//! What is in the knowledge base, and whether its links hold.

use super::Knowledge;
use super::files::Files;
use super::problem::Problem;
use super::raw::nearest;
use serde::Serialize;
use std::collections::BTreeMap;

/// The counts that `check` tells.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Census {
    pub crops: usize,
    pub microgreens: usize,
    pub troubles: usize,
    pub materials: usize,
    pub mixes: usize,
    pub articles: usize,
    pub places: usize,
    pub ways_of_asking: usize,
    pub names: BTreeMap<&'static str, usize>,
    pub facts: usize,
    pub facts_read_in_their_source: usize,
}

impl Knowledge {
    /// Counts what is here.
    #[must_use]
    pub fn census(&self) -> Census {
        let all_names = (self.crops.values().map(|crop| &crop.names))
            .chain(self.materials.values().map(|material| &material.names))
            .chain(self.mixes.values().map(|mix| &mix.names))
            .chain(self.troubles.values().map(|trouble| &trouble.names))
            .chain(self.places.iter().map(|place| &place.names));
        let mut names = BTreeMap::new();
        for name in all_names {
            for (language, list) in name.each() {
                *names.entry(language.tag()).or_default() += list.len();
            }
        }
        Census {
            crops: self.crops.len(),
            microgreens: self.crops.values().filter(|crop| crop.microgreen.is_some()).count(),
            troubles: self.troubles.len(),
            materials: self.materials.len(),
            mixes: self.mixes.len(),
            articles: self.articles.len(),
            places: self.places.len(),
            ways_of_asking: self.ways_of_asking.len(),
            names,
            facts: self.facts,
            facts_read_in_their_source: self.facts_read,
        }
    }
}

/// Every id that names another thing must name one; every name must mean one thing.
pub fn links(known: &Knowledge, files: &Files, problems: &mut Vec<Problem>) {
    let mut at = |file: String, id: &str, message: String| {
        let text = files.text(&file).unwrap_or_default();
        let start = text.find(&format!("\"{id}\"")).map_or(0, |quote| quote + 1);
        problems.push(Problem::at(&file, text, start..start + id.len(), message));
    };
    for mix in known.mixes.values() {
        let materials = mix.components.iter().map(|c| &c.material).chain(mix.additions.iter().map(|a| &a.material));
        for material in materials.filter(|id| !known.materials.contains_key(*id)) {
            let near = nearest(material, known.materials.keys().map(String::as_str));
            at(format!("mixes/{}.toml", mix.id), material, format!("material \"{material}\" is not known{near}"));
        }
    }
    let with_crops = (known.troubles.values().map(|t| (format!("troubles/{}.toml", t.id), &t.crops)))
        .chain(known.articles.values().map(|a| (format!("articles/{}.md", a.id), &a.crops)));
    for (file, crops) in with_crops {
        for crop in crops.iter().filter(|id| !known.crops.contains_key(*id)) {
            let near = nearest(crop, known.crops.keys().map(String::as_str));
            at(file.clone(), crop, format!("crop \"{crop}\" is not known{near}"));
        }
    }
    let mut meanings: BTreeMap<&str, String> = BTreeMap::new();
    let named = (known.crops.values().map(|c| (format!("crops/{}.toml", c.id), &c.names)))
        .chain(known.materials.values().map(|m| (format!("materials/{}.toml", m.id), &m.names)))
        .chain(known.mixes.values().map(|m| (format!("mixes/{}.toml", m.id), &m.names)))
        .chain(known.troubles.values().map(|t| (format!("troubles/{}.toml", t.id), &t.names)));
    for (file, names) in named {
        for (language, list) in names.each() {
            if list.is_empty() {
                at(file.clone(), "", format!("a name in {} is missing", language.tag()));
            }
        }
        for name in names.all() {
            if let Some(other) = meanings.insert(name, file.clone()).filter(|other| *other != file) {
                at(file.clone(), name, format!("the name \"{name}\" also stands in {other}; a name means one thing"));
            }
        }
    }
}
