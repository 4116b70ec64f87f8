//! What is in the knowledge base, and whether its links hold.

use super::Knowledge;
use super::files::Files;
use super::problem::Problem;
use super::raw::nearest;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// The counts that `check` tells.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Census {
    pub crops: usize,
    pub microgreens: usize,
    pub troubles: usize,
    pub signs: usize,
    pub refused_shoots: usize,
    pub materials: usize,
    pub mixes: usize,
    pub articles: usize,
    pub places: usize,
    pub ways_of_asking: usize,
    pub heard_messages: usize,
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
            .chain(self.signs.values().map(|sign| &sign.names))
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
            signs: self.signs.len(),
            refused_shoots: self.refused_shoots.len(),
            materials: self.materials.len(),
            mixes: self.mixes.len(),
            articles: self.articles.len(),
            places: self.places.len(),
            ways_of_asking: self.ways_of_asking.len(),
            heard_messages: self.heard.len(),
            names,
            facts: self.facts,
            facts_read_in_their_source: self.facts_read,
        }
    }
}

/// Problems, each placed at the first quoted mention of an id or name in its file.
struct Placing<'a> {
    files: &'a Files,
    problems: &'a mut Vec<Problem>,
}

impl Placing<'_> {
    fn at(&mut self, file: &str, id: &str, message: String) {
        let text = self.files.text(file).unwrap_or_default();
        let start = text.find(&format!("\"{id}\"")).map_or(0, |quote| quote + 1);
        self.problems.push(Problem::at(file, text, start..start + id.len(), message));
    }

    /// Notes each id that none of the known ones is.
    fn unknown<'i>(
        &mut self,
        file: &str,
        what: &str,
        ids: impl IntoIterator<Item = &'i String>,
        known: &BTreeSet<&str>,
    ) {
        for id in ids {
            if !known.contains(id.as_str()) {
                let near = nearest(id, known.iter().copied());
                self.at(file, id, format!("{what} \"{id}\" is not known{near}"));
            }
        }
    }
}

/// Every id that names another thing must name one; every name must mean one thing.
pub fn links(known: &Knowledge, files: &Files, problems: &mut Vec<Problem>) {
    let mut placing = Placing { files, problems };
    let crops: BTreeSet<&str> = known.crops.keys().map(String::as_str).collect();
    let troubles: BTreeSet<&str> = known.troubles.keys().map(String::as_str).collect();
    let materials: BTreeSet<&str> = known.materials.keys().map(String::as_str).collect();
    let signs: BTreeSet<&str> = known.signs.keys().map(String::as_str).collect();
    let jobs: BTreeSet<&str> = known.talk.jobs.iter().map(|words| words.job.as_str()).collect();
    for crop in known.crops.values() {
        let file = format!("crops/{}.toml", crop.id);
        placing.unknown(&file, "crop", crop.neighbours.iter().map(|other| &other.crop), &crops);
    }
    for mix in known.mixes.values() {
        let named = mix.components.iter().map(|c| &c.material).chain(mix.additions.iter().map(|a| &a.material));
        placing.unknown(&format!("mixes/{}.toml", mix.id), "material", named, &materials);
    }
    for trouble in known.troubles.values() {
        let file = format!("troubles/{}.toml", trouble.id);
        placing.unknown(&file, "crop", &trouble.crops, &crops);
        let named = trouble.evidence.iter().map(|evidence| &evidence.sign).chain(&trouble.against);
        placing.unknown(&file, "sign", named, &signs);
        placing.unknown(&file, "material", trouble.remedies.iter().map(|remedy| &remedy.material), &materials);
        placing.unknown(&file, "trouble", &trouble.comes_with, &troubles);
        placing.unknown(&file, "job", trouble.after.iter().chain(&trouble.without), &jobs);
        if trouble.evidence.is_empty() {
            placing.at(&file, &trouble.id, "signs as `[[evidence]]` are missing".to_owned());
        }
    }
    for article in known.articles.values() {
        placing.unknown(&format!("articles/{}.md", article.id), "crop", &article.crops, &crops);
    }
    placing.unknown(
        "refused.toml",
        "crop",
        known.refused_shoots.iter().filter_map(|shoot| shoot.crop.as_ref()),
        &crops,
    );
    placing.unknown("signs.toml", "sign", known.signs.values().filter_map(|sign| sign.is_a.as_ref()), &signs);
    let mut place_ids = BTreeSet::new();
    for place in &known.places {
        if !place_ids.insert(place.id.as_str()) {
            placing.at("places.toml", &place.id, format!("place \"{}\" stands twice", place.id));
        }
    }
    names(known, &mut placing);
}

/// Each thing is named in three languages, and a name means one thing.
fn names(known: &Knowledge, placing: &mut Placing<'_>) {
    let mut meanings: BTreeMap<&str, (String, &str)> = BTreeMap::new();
    let named = (known.crops.values().map(|c| (format!("crops/{}.toml", c.id), c.id.as_str(), &c.names)))
        .chain(known.materials.values().map(|m| (format!("materials/{}.toml", m.id), m.id.as_str(), &m.names)))
        .chain(known.mixes.values().map(|m| (format!("mixes/{}.toml", m.id), m.id.as_str(), &m.names)))
        .chain(known.troubles.values().map(|t| (format!("troubles/{}.toml", t.id), t.id.as_str(), &t.names)))
        .chain(known.places.iter().map(|p| ("places.toml".to_owned(), p.id.as_str(), &p.names)));
    for (file, id, names) in named {
        for (language, list) in names.each() {
            if list.is_empty() {
                placing.at(&file, id, format!("a name in {} is missing", language.tag()));
            }
        }
        for name in names.all() {
            let before = meanings.insert(name, (file.clone(), id));
            if let Some((other, _)) = before.filter(|(_, owner)| *owner != id) {
                placing.at(&file, name, format!("the name \"{name}\" also stands in {other}; a name means one thing"));
            }
        }
    }
    let mut phrases: BTreeMap<&str, &str> = BTreeMap::new();
    for sign in known.signs.values() {
        for name in sign.names.all() {
            if let Some(other) = phrases.insert(name, &sign.id).filter(|other| *other != sign.id) {
                placing.at("signs.toml", name, format!("\"{name}\" is also a name of the sign \"{other}\""));
            }
        }
    }
}

/// An article whose title or topics name a danger must carry a caution, and none may lack its text.
pub fn dangers(known: &Knowledge, files: &Files, problems: &mut Vec<Problem>) {
    let mut placing = Placing { files, problems };
    for article in known.articles.values() {
        let file = format!("articles/{}.md", article.id);
        let said: String = format!(" {} {} ", article.title.en, article.topics.en.join(" ")).to_lowercase();
        let danger = known.talk.dangers.iter().find(|word| said.contains(&format!(" {word} ")));
        if let (Some(word), None) = (danger, &article.caution) {
            placing.at(&file, &article.id, format!("it speaks of \"{word}\", so a caution is wanted"));
        }
        let words = article.body.split_whitespace().count();
        if !SHORTEST_TO_LONGEST.contains(&words) {
            let (least, most) = SHORTEST_TO_LONGEST.into_inner();
            placing.at(&file, &article.id, format!("the text has {words} words, {least} to {most} expected"));
        }
    }
}

/// Words of an article's text.
const SHORTEST_TO_LONGEST: std::ops::RangeInclusive<usize> = 60..=260;
