//! The knowledge base: hand-written files that a gardener can read and mend, turned into typed facts,
//! each with its source, and into the search index.
//!
//! A new crop is a new file and no line of Rust; so is a new way of asking. The whole is taken or its
//! problems are listed with file, line and column.
//!
//! **Never here:** the store, a client's beds, a rule of care.

mod article;
mod asking;
mod census;
mod crop;
mod fact;
mod files;
mod habit;
mod harm;
mod heard;
mod ill_will;
mod index;
mod kept;
mod lexicon;
mod looks;
mod material;
mod meanings;
mod mix;
mod names;
mod ordinary;
mod other_plants;
mod pack;
mod past;
mod place;
mod point;
mod problem;
mod raw;
mod refused;
mod shelf;
mod short_forms;
mod sign;
mod source;
mod spellings;
mod talk;
mod trouble;
mod usual;
mod word_lists;
mod words;
mod worlds;

pub use article::Article;
pub use asking::{Kind, WayOfAsking};
pub use census::Census;
pub use crop::{
    BedNeeds, Beyond, CountedFrom, Crop, CropCaution, Effect, Emergence, Feeding, GrownFor, Harvest, HeatLimits,
    Microgreen, Neighbour, NetUse, PlantedAs, SaltTolerance, SeasonLimits, Sowing, Stages, WaterUse, WhenDue,
};
pub use fact::{Fact, SourceRef};
pub use files::{Files, Unreadable};
pub use harm::{Emergency, Harm, HarmTold, HarmWords};
pub use heard::{Heard, Matter};
pub use ill_will::{EnglishIllWill, HindiIllWill, IllWillWords};
pub use index::{Found, Index, IndexFault, Usual, as_written, class_word};
pub use lexicon::Lexicon;
pub use looks::{LookWords, Looks};
pub use material::{FeedUse, Material, MaterialKind, SprayUse};
pub use meanings::{MEANING, Meanings, Slips};
pub use mix::{Addition, Component, Mix, MixProperties};
pub use names::{InThree, Names};
pub use ordinary::Ordinary;
pub use other_plants::{OtherPlant, OtherPlants};
pub use place::{Month, Place, kilometres};
pub use point::Point;
pub use problem::Problem;
pub use refused::RefusedShoot;
pub use short_forms::ShortForms;
pub use sign::{Part, Symptom};
pub use source::{Source, Worth};
pub use spellings::Spellings;
pub use talk::{
    Aspect, BedWords, JobWords, NthWords, PointWords, RoofWords, SeenWords, SpeakWords, StepWords, SunWords, Talk,
    TopicWords,
};
pub use trouble::{Evidence, Often, Remedy, Spell, Trouble, TroubleKind};
pub use word_lists::{Phrases, Sounded, Spelled, WordList};
pub use words::{DayWord, NotWords, PartOfDay, Sign, TimeUnit, Words};
pub use worlds::{Mark, WorldGroup, WorldTold, WorldWords, Worlds};

use std::collections::{BTreeMap, BTreeSet};

/// Everything the files say, checked.
#[derive(Debug, Clone, Default)]
pub struct Knowledge {
    pub sources: BTreeMap<String, Source>,
    pub crops: BTreeMap<String, Crop>,
    pub materials: BTreeMap<String, Material>,
    pub mixes: BTreeMap<String, Mix>,
    pub troubles: BTreeMap<String, Trouble>,
    pub signs: BTreeMap<String, Symptom>,
    pub refused_shoots: Vec<RefusedShoot>,
    /// Plants that have no file here.
    pub other_plants: OtherPlants,
    pub articles: BTreeMap<String, Article>,
    pub ways_of_asking: Vec<WayOfAsking>,
    /// Whole messages as they may be sent, with their kind: learned from, never searched.
    pub heard: Vec<Heard>,
    pub places: Vec<Place>,
    /// Ids of the crops that people ask for first, the commonest first.
    pub usual_crops: Vec<String>,
    pub words: Words,
    pub talk: Talk,
    pub looks: Looks,
    pub harm: Harm,
    pub ill_will: IllWillWords,
    pub worlds: Worlds,
    pub ordinary: Ordinary,
    pub short_forms: ShortForms,
    pub meanings: Meanings,
    /// The Fluent files of phrases, one a language, as text: `wording` reads them.
    pub phrases: InThree<String>,
    /// How many numbers stand in the files.
    pub facts: usize,
    /// How many of them were seen in their source.
    pub facts_read: usize,
    /// A hash over all files: what is derived from them is stale when it changes.
    pub fingerprint: u64,
}

impl Knowledge {
    /// Reads all files. What has a problem is left out of the result and listed; a caller that needs the
    /// whole refuses when the list is not empty.
    #[must_use]
    pub fn read(files: &Files) -> (Self, Vec<Problem>) {
        let mut problems = Vec::new();
        let sources = source::read(files, &mut problems);
        let (mut known, noted) = std::thread::scope(|scope| {
            // The folders do not need one another: each core of the machine takes the next.
            let crops = scope.spawn(|| part(&sources, |reader| reader.folder(files, "crops", crop::read)));
            let troubles = scope.spawn(|| {
                part(&sources, |reader| (reader.folder(files, "troubles", trouble::read), sign::read(files, reader)))
            });
            let articles = scope.spawn(|| part(&sources, |reader| reader.articles(files, article::read)));
            let stuff = scope.spawn(|| {
                part(&sources, |reader| {
                    let materials = reader.folder(files, "materials", material::read);
                    (materials, reader.folder(files, "mixes", mix::read), refused::read(files, reader))
                })
            });
            let places = scope.spawn(|| part(&sources, |reader| place::read(files, reader)));
            let asking = scope.spawn(|| {
                let mut problems = Vec::new();
                ((asking::read(files, &mut problems), heard::read(files, &mut problems)), problems)
            });
            let mut known = Self {
                fingerprint: files.fingerprint(),
                words: words(files, &mut problems),
                talk: talk::read(files, &mut problems),
                ordinary: ordinary::read(files, &mut problems),
                short_forms: short_forms::read(files, &mut problems),
                meanings: meanings::read(files, &mut problems),
                looks: looks::read(files, &mut problems),
                harm: harm::read(files, &mut problems),
                ill_will: ill_will::read(files, &mut problems),
                worlds: worlds::read(files, &mut problems),
                phrases: files.phrases(&mut problems),
                ..Self::default()
            };
            let mut noted = raw::Noted::default();
            known.crops = noted.and(joined(crops));
            (known.troubles, known.signs) = noted.and(joined(troubles));
            known.articles = noted.and(joined(articles));
            (known.materials, known.mixes, known.refused_shoots) = noted.and(joined(stuff));
            known.places = noted.and(joined(places));
            let (examples, of_asking) = joined(asking);
            (known.ways_of_asking, known.heard) = examples;
            noted.problems.extend(of_asking);
            (known, noted)
        });
        known.sources = sources;
        (known.facts, known.facts_read) = (noted.facts, noted.facts_read);
        problems.extend(noted.problems);
        known.usual_crops = usual::read(files, &known.crops, &mut problems);
        known.other_plants = other_plants::read(files, |id| known.crops.contains_key(id), &mut problems);
        census::links(&known, files, &mut problems);
        census::dangers(&known, files, &mut problems);
        problems.sort();
        (known, problems)
    }

    /// Ids of all crops.
    #[must_use]
    pub fn crop_ids(&self) -> BTreeSet<String> {
        self.crops.keys().cloned().collect()
    }

    /// Ids of all mixes.
    #[must_use]
    pub fn mix_ids(&self) -> BTreeSet<String> {
        self.mixes.keys().cloned().collect()
    }

    /// Ids of all materials.
    #[must_use]
    pub fn material_ids(&self) -> BTreeSet<String> {
        self.materials.keys().cloned().collect()
    }

    /// The place nearest to a position, by the great circle, with the distance in kilometres.
    #[must_use]
    pub fn nearest_place(&self, latitude_deg: f64, longitude_deg: f64) -> Option<(&Place, f64)> {
        self.places
            .iter()
            .map(|place| (place, place.kilometres_from(latitude_deg, longitude_deg)))
            .min_by(|a, b| a.1.total_cmp(&b.1))
    }
}

/// A part of the files, and what was noted about it.
fn part<T>(sources: &BTreeMap<String, Source>, read: impl FnOnce(&mut raw::Reader<'_>) -> T) -> (T, raw::Noted) {
    let mut reader = raw::Reader::new(sources);
    let read = read(&mut reader);
    (read, reader.into_noted())
}

fn joined<T>(thread: std::thread::ScopedJoinHandle<'_, T>) -> T {
    thread.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic))
}

fn words(files: &Files, problems: &mut Vec<Problem>) -> Words {
    const UNITS: &str = "words/units.toml";
    let (units, days) = (files.text(UNITS).unwrap_or_default(), files.text("words/days.toml").unwrap_or_default());
    Words::parse(units, days).unwrap_or_else(|refusal| {
        problems.push(Problem::at(UNITS, units, 0..0, refusal.to_string()));
        Words::default()
    })
}
