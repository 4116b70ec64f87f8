//! Every name the knowledge base has, ready to be found in a text.

mod gathered;
mod meanings;

use super::asker::Asker;
use super::emergencies::EmergencyBook;
use super::phrasebook::{Forms, Hit, Phrasebook, without_overlaps};
use super::symptoms::{Described, SignBook};
use super::worlds::WorldBook;
use crate::knowledge::{Emergency, Kind, Knowledge, Names, Ordinary};
use crate::script::Text;
use rustc_hash::FxHashSet;
use std::collections::BTreeSet;
use std::ops::Range;

pub use meanings::{Named, Told};

/// Names and steering words of the knowledge base.
#[derive(Debug, Clone)]
pub struct Gazetteer {
    names: Phrasebook<Named>,
    told: Phrasebook<Told>,
    things: Phrasebook<Told>,
    /// What was seen of a bed's water: said loosely, with a word or two between.
    seen: Phrasebook<Told>,
    /// Words that speak of one kind of question alone.
    topics: Phrasebook<Kind>,
    signs: SignBook,
    emergencies: EmergencyBook,
    pub(super) worlds: WorldBook,
    ordinary: Ordinary,
    /// Words for work done, as they are spelled.
    deeds: FxHashSet<String>,
    /// After a plant: it is spoken of as a stuff.
    stuff: BTreeSet<String>,
    /// After one of these crops: so is it.
    made: BTreeSet<String>,
    as_stuff: BTreeSet<String>,
}

impl Gazetteer {
    /// Gathers all names.
    #[must_use]
    pub fn of(known: &Knowledge) -> Self {
        std::thread::scope(|scope| {
            let signs = scope.spawn(|| SignBook::of(known));
            let names = gathered::names(known);
            let (told, things, seen) = gathered::told(known);
            // A thread that ended early left nothing behind; the work is done here instead.
            let signs = signs.join().unwrap_or_else(|_| SignBook::of(known));
            let emergencies = EmergencyBook::of(known);
            let worlds = WorldBook::of(known);
            let normal = |names: &Names| names.all().map(|word| Text::read(word).normal(0).to_owned()).collect();
            let (stuff, made) = (normal(&known.other_plants.stuff), normal(&known.other_plants.made));
            Self {
                names,
                told,
                things,
                seen,
                topics: gathered::topics(known),
                signs,
                emergencies,
                worlds,
                ordinary: known.ordinary.clone(),
                deeds: gathered::deeds(known),
                stuff,
                made,
                as_stuff: known.other_plants.as_stuff.iter().cloned().collect(),
            }
        })
    }

    /// All names in a text, the asker's own beds first.
    #[must_use]
    pub fn names(&self, forms: &Forms, asker: &Asker) -> Vec<Hit<Named>> {
        let beds = asker.called.find_all(forms).into_iter();
        let mut all: Vec<Hit<Named>> =
            beds.map(|Hit { span, meaning, exact }| Hit { span, meaning: Named::OwnBed(meaning), exact }).collect();
        let beds = all.clone();
        let mut called = asker.everyone.find(forms, asker.who.as_ref());
        // Where they are equally long the first is kept.
        called.sort_by_key(|(rank, _)| *rank);
        all.extend(called.into_iter().map(|(_, hit)| hit));
        let mut all = without_overlaps(all);
        // Beds of one name on several roofs are all meant, until it is told which.
        let kept: Vec<Range<usize>> =
            all.iter().filter(|hit| matches!(hit.meaning, Named::OwnBed(_))).map(|hit| hit.span.clone()).collect();
        for bed in beds.into_iter().filter(|bed| kept.contains(&bed.span)) {
            if !all.contains(&bed) {
                all.push(bed);
            }
        }
        for hit in self.names.find(forms).into_iter().filter(|hit| !self.is_stuff(hit, forms)) {
            let free = all.iter().all(|other| hit.span.end <= other.span.start || other.span.end <= hit.span.start);
            if free || matches!(hit.meaning, Named::Crop(_)) {
                all.push(hit);
            }
        }
        all.sort_by_key(|hit| hit.span.start);
        all
    }

    /// A peel of a banana, a cake of groundnuts.
    fn is_stuff(&self, hit: &Hit<Named>, forms: &Forms) -> bool {
        const OF: [&str; 7] = ["of", "ka", "ke", "ki", "का", "के", "की"];
        let after = |skip: usize| forms.written(hit.span.end + skip);
        let next = if OF.contains(&after(0)) { after(1) } else { after(0) };
        match &hit.meaning {
            Named::OtherPlant(_) => self.stuff.contains(next),
            Named::Crop(crop) => self.as_stuff.contains(crop) && self.made.contains(next),
            _ => false,
        }
    }

    /// Names nearly said, among the tokens still open.
    #[must_use]
    pub fn names_nearly(&self, forms: &Forms, open: impl Fn(usize) -> bool) -> Vec<Hit<Named>> {
        self.names.find_near(forms, |position| open(position) && !self.ordinary.is(forms.written(position)))
    }

    /// Words that speak of one kind of question alone.
    #[must_use]
    pub fn topics(&self, forms: &Forms) -> Vec<Hit<Kind>> {
        self.topics.find(forms)
    }

    /// Signs of trouble described in a text.
    #[must_use]
    pub fn signs(&self, text: &Text, parts: &[(usize, &str)]) -> Described {
        self.signs.find(text, parts)
    }

    /// What happened to someone, where that is told. `crops` are the tokens that name one.
    #[must_use]
    pub fn emergency(&self, text: &Text, crops: &[usize]) -> Option<Emergency> {
        self.emergencies.find(text, crops, |token| self.signs.is_empty_word(token))
    }

    /// Words for work done, nearly said, among the tokens still open.
    #[must_use]
    pub fn told_nearly(&self, forms: &Forms, open: impl Fn(usize) -> bool) -> Vec<Hit<Told>> {
        let free = |position: usize| open(position) && !self.ordinary.is(forms.written(position));
        self.told.find_near_of(forms, free, |meaning| matches!(meaning, Told::Did(_)))
    }

    /// Steering words in a text.
    #[must_use]
    pub fn told(&self, forms: &Forms) -> Vec<Hit<Told>> {
        let mut all = self.told.find_all(forms);
        // "Thodi", a little, sounds as "todi", picked: an everyday word is a deed only as it is spelled.
        let spelled = |at: usize| self.deeds.contains(forms.written(at)) || !self.ordinary.is(forms.written(at));
        all.retain(|hit| !matches!(hit.meaning, Told::Did(_)) || hit.span.len() > 1 || spelled(hit.span.start));
        all.extend(self.things.find_all(forms));
        all.extend(self.seen.find_loosely(forms, SEEN_APART));
        all
    }
}

/// So many words may stand between those for what was seen: "dry again by lunch".
const SEEN_APART: usize = 2;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::Files;
    use crate::script::Language;

    /// The crops that a word names in a text of this language, as it is or with a slip.
    #[track_caller]
    fn crops(gazetteer: &Gazetteer, word: &str, language: Language, expected: &[&str]) {
        let forms = Forms::of(&Text::read_as(word, language));
        let mut found = gazetteer.names(&forms, &Asker::default());
        if found.is_empty() {
            found = gazetteer.names_nearly(&forms, |_| true);
        }
        let crops: Vec<&str> = found
            .iter()
            .filter_map(|hit| match &hit.meaning {
                Named::Crop(id) => Some(id.as_str()),
                _ => None,
            })
            .collect();
        assert_eq!(crops, expected, "{word}");
    }

    #[test]
    fn everyday_words_are_no_crops() {
        let (known, _) = Knowledge::read(&Files::embedded());
        let gazetteer = Gazetteer::of(&known);
        for word in ["began", "alive", "chews", "lets", "indeed", "steady", "partly", "busy", "origin"] {
            crops(&gazetteer, word, Language::En, &[]);
        }
        for word in ["banta", "khel", "palkein"] {
            crops(&gazetteer, word, Language::HiLatn, &[]);
        }
        for word in ["बनता", "पलक"] {
            crops(&gazetteer, word, Language::Hi, &[]);
        }
        // Names of Hindi in an English text, and names with a slip, are still names.
        crops(&gazetteer, "baigan", Language::En, &["brinjal"]);
        crops(&gazetteer, "bhindee", Language::En, &["okra"]);
        crops(&gazetteer, "coriandar", Language::En, &["coriander"]);
        crops(&gazetteer, "dhaniaa", Language::HiLatn, &["coriander"]);
    }

    #[test]
    fn what_only_sounds_as_a_deed_is_none() {
        let (known, _) = Knowledge::read(&Files::embedded());
        let gazetteer = Gazetteer::of(&known);
        let deeds = |word: &str, language| {
            let told = gazetteer.told(&Forms::of(&Text::read_as(word, language)));
            told.into_iter().filter(|hit| matches!(hit.meaning, Told::Did(_))).count()
        };
        assert_eq!(
            [deeds("thodi", Language::HiLatn), deeds("थोड़ी", Language::Hi), deeds("निकली", Language::Hi)],
            [0; 3]
        );
        assert!([deeds("todi", Language::HiLatn), deeds("तोड़ी", Language::Hi)].iter().all(|count| *count > 0));
    }
}
