//! Every name the knowledge base has, ready to be found in a text.

use super::asker::Asker;
use super::emergencies::EmergencyBook;
use super::phrasebook::{By, Forms, Hit, Phrasebook, without_overlaps};
use super::symptoms::{Described, SignBook};
use super::worlds::WorldBook;
use crate::garden::{BedId, BedKind, JobKind, SeenKind, SiteId};
use crate::knowledge::{Aspect, Emergency, Kind, Knowledge, Names, Ordinary, Point};
use crate::script::{Language, Text};
use std::collections::{BTreeSet, HashSet};
use std::ops::Range;
use std::sync::Arc;

/// What a name stands for.
#[derive(Debug, Clone, PartialEq)]
pub enum Named {
    OwnBed(BedId),
    Site(SiteId),
    Crop(String),
    Material(String),
    Mix(String),
    Trouble(String),
    /// Seed whose shoots must not be eaten, and which is no crop here.
    Refused(String),
    Place(String),
    /// A plant that has no file here.
    OtherPlant(String),
    /// A person or site that the asker may not see: nothing is told of it.
    SomeoneElse,
    BedKind(BedKind),
}

/// A word that says what was done or seen.
#[derive(Debug, Clone, PartialEq)]
pub enum Told {
    Did(JobKind),
    /// A thing that, with a word for done, says what was done.
    Thing(JobKind),
    Done,
    Saw(SeenKind),
    Aspect(Aspect),
    NetDown,
    Question,
    Why,
    FollowUp,
    All,
    Microgreen,
    /// What comes after a crop.
    Follows,
    Filler,
    Yes,
    /// Someone who is not the asker.
    Others,
    /// What the body wants or the law forbids.
    NotOurs,
    /// What is kept of a person: records, an address.
    Data,
    /// What was told before was wrong.
    Correction,
    /// A bed that is new.
    NewBed,
    /// A name follows.
    Called,
    Pronoun,
    Undo,
    /// A harvest told without a word for picking.
    Got,
    NoneOfThese,
    Point(Point),
    /// A place among what was offered, from 1.
    Nth(usize),
    Both,
    OthersSaid,
    Shorter,
    /// The language that is asked for.
    Speak(Language),
    /// The day after the one spoken of.
    DayAfter,
    /// "Did" where it asks.
    DidAsk,
    /// A job is to be done on another day.
    Move,
    /// A job is going to be done.
    Will,
    Not,
    /// Whether a saying is true is asked.
    Hearsay,
    /// Something ails a plant, and it is not said what.
    Ails,
    /// The same is asked of something else.
    Same,
    /// What is supposed follows, or stands before.
    Condition,
    ConditionEnd,
    /// Not the one spoken of but the one beside it.
    OtherOne,
    /// All that was offered.
    Every,
    /// In the thing spoken of.
    Inside,
    /// What an amount is wanted in.
    AmountIn,
    /// It is asked that something be written down.
    Note,
    /// What water is carried in.
    Vessel,
    /// What is told is of someone else's garden.
    OthersGarden,
    /// Nothing is meant in earnest.
    Joke,
    /// "If": what follows is only supposed.
    Supposed,
    /// An animal that is no gardener.
    Creature,
    /// A word with the ending of what is done that is no work.
    NoDeed,
    /// Of a crop and a day: it was sown then.
    PutIn,
    /// Given by someone else, at the verb.
    ByOthers,
    /// A time of the year, by the month in its middle.
    Season(u32),
    /// How bad what was told is, and what helps.
    Worry,
    /// The working of the answer before is asked for.
    Working,
    /// Of each turn.
    EachTime,
    /// Something else is asked to do in place of what was told.
    Suffices,
    /// Something is wished to be told: beside work it asks.
    Request,
}

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
    deeds: HashSet<String>,
    /// After a plant: it is spoken of as a stuff.
    stuff: BTreeSet<String>,
}

impl Gazetteer {
    /// Gathers all names.
    #[must_use]
    pub fn of(known: &Knowledge) -> Self {
        std::thread::scope(|scope| {
            let signs = scope.spawn(|| SignBook::of(known));
            let names = names(known);
            let (told, things, seen) = told(known);
            // A thread that ended early left nothing behind; the work is done here instead.
            let signs = signs.join().unwrap_or_else(|_| SignBook::of(known));
            let emergencies = EmergencyBook::of(known);
            let worlds = WorldBook::of(known);
            let stuff = known.other_plants.stuff.all().map(|word| Text::read(word).normal(0).to_owned()).collect();
            Self {
                names,
                told,
                things,
                seen,
                topics: topics(known),
                signs,
                emergencies,
                worlds,
                ordinary: known.ordinary.clone(),
                deeds: deeds(known),
                stuff,
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
        matches!(hit.meaning, Named::OtherPlant(_)) && self.stuff.contains(next)
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

fn names(known: &Knowledge) -> Phrasebook<Named> {
    let mut names = Phrasebook::new(By::Stem, &known.ordinary);
    for crop in known.crops.values() {
        names.add(&crop.names, &Named::Crop(crop.id.clone()));
    }
    for material in known.materials.values() {
        names.add(&material.names, &Named::Material(material.id.clone()));
    }
    for mix in known.mixes.values() {
        names.add(&mix.names, &Named::Mix(mix.id.clone()));
    }
    for trouble in known.troubles.values() {
        names.add(&trouble.names, &Named::Trouble(trouble.id.clone()));
    }
    for shoot in known.refused_shoots.iter().filter(|shoot| shoot.crop.is_none()) {
        names.add(&shoot.names, &Named::Refused(shoot.id.clone()));
    }
    for plant in &known.other_plants.plants {
        names.add(&plant.names, &Named::OtherPlant(plant.id.clone()));
    }
    for place in &known.places {
        names.add(&place.names, &Named::Place(place.id.clone()));
    }
    for bed in &known.talk.beds {
        if let Some(kind) = BedKind::with_word(&bed.kind) {
            names.add(&bed.words, &Named::BedKind(kind));
        }
    }
    names
}

fn topics(known: &Knowledge) -> Phrasebook<Kind> {
    let mut topics = Phrasebook::new(By::Whole, &known.ordinary);
    known.talk.topics.iter().for_each(|topic| topics.add(&topic.words, &topic.kind));
    topics
}

/// The words for work done of one word each, as they are spelled.
fn deeds(known: &Knowledge) -> HashSet<String> {
    let phrases = known
        .talk
        .jobs
        .iter()
        .flat_map(|job| job.did.each())
        .flat_map(|(language, names)| names.iter().map(move |name| Text::read_as(name, language)));
    let single = phrases.filter(|text| text.tokens.len() == 1);
    single.flat_map(|text| text.tokens).map(|token| token.normal).collect()
}

/// Words that mean what they are spelled as, however short they sound: everyday words, words for what is seen on a
/// plant, names, and the words that steer a message themselves.
fn themselves(known: &Knowledge) -> HashSet<String> {
    let talk = &known.talk;
    let looks = known.looks.looks.iter().map(|look| &look.words).chain([&known.looks.empty]);
    let steering = [&talk.filler, &talk.question, &talk.done, &talk.not, &talk.follow_up, &talk.vessel, &talk.data];
    let steering = steering.into_iter().chain(talk.points.iter().map(|point| &point.words));
    let names = known.crops.values().map(|crop| &crop.names).chain(known.materials.values().map(|stuff| &stuff.names));
    let all = looks.chain(steering).chain(names).flat_map(Names::all).filter(|name| !name.contains(' '));
    let words = all.filter_map(|name| Text::read(name).tokens.first().map(|token| token.normal.clone()));
    words.chain(known.ordinary.written().map(str::to_owned)).collect()
}

/// The past tense alone says that a thing was done, so those words are compared whole; the things it was
/// done with are compared by their stems.
fn told(known: &Knowledge) -> (Phrasebook<Told>, Phrasebook<Told>, Phrasebook<Told>) {
    let talk = &known.talk;
    // Everyday words are what these lists are made of.
    let none = Ordinary::default();
    let themselves = Arc::new(themselves(known));
    let book = |by| Phrasebook::new(by, &none).knowing(&themselves);
    let (mut told, mut things, mut seen_words) = (book(By::Whole), book(By::Stem), book(By::Whole));
    for job in &talk.jobs {
        if let Some(kind) = JobKind::with_word(&job.job) {
            told.add(&job.did, &Told::Did(kind));
            job.verbs.past().for_each(|phrase| told.add_phrase(&phrase, Language::HiLatn, &Told::Did(kind)));
            things.add(&job.thing, &Told::Thing(kind));
        }
    }
    for seen in &talk.seen {
        if let Some(kind) = SeenKind::with_word(&seen.what) {
            seen_words.add(&seen.words, &Told::Saw(kind));
        }
    }
    for aspect in &talk.aspects {
        told.add(&aspect.words, &Told::Aspect(aspect.aspect));
    }
    for nth in &talk.nth {
        told.add(&nth.words, &Told::Nth(nth.place));
    }
    for speak in &talk.speak {
        told.add(&speak.words, &Told::Speak(speak.language));
    }
    for season in talk.seasons.iter().filter(|season| (1..=12).contains(&season.month)) {
        told.add(&season.words, &Told::Season(season.month));
    }
    let lists: [(&Names, Told); 50] = [
        (&talk.called, Told::Called),
        (&talk.hearsay, Told::Hearsay),
        (&talk.ails, Told::Ails),
        (&talk.done, Told::Done),
        (&talk.net_down, Told::NetDown),
        (&talk.question, Told::Question),
        (&talk.why, Told::Why),
        (&talk.follow_up, Told::FollowUp),
        (&talk.all, Told::All),
        (&talk.microgreen, Told::Microgreen),
        (&talk.follows, Told::Follows),
        (&talk.filler, Told::Filler),
        (&talk.yes, Told::Yes),
        (&talk.others, Told::Others),
        (&talk.data, Told::Data),
        (&talk.not_ours, Told::NotOurs),
        (&talk.undo, Told::Undo),
        (&talk.correction, Told::Correction),
        (&talk.new_bed, Told::NewBed),
        (&talk.pronoun, Told::Pronoun),
        (&talk.got, Told::Got),
        (&talk.none_of_these, Told::NoneOfThese),
        (&talk.both, Told::Both),
        (&talk.others_said, Told::OthersSaid),
        (&talk.shorter, Told::Shorter),
        (&talk.day_after, Told::DayAfter),
        (&talk.did_ask, Told::DidAsk),
        (&talk.moves, Told::Move),
        (&talk.will, Told::Will),
        (&talk.not, Told::Not),
        (&talk.same, Told::Same),
        (&talk.condition, Told::Condition),
        (&talk.condition_end, Told::ConditionEnd),
        (&talk.other_one, Told::OtherOne),
        (&talk.every, Told::Every),
        (&talk.inside, Told::Inside),
        (&talk.amount_in, Told::AmountIn),
        (&talk.note, Told::Note),
        (&talk.vessel, Told::Vessel),
        (&talk.others_garden, Told::OthersGarden),
        (&talk.joke, Told::Joke),
        (&talk.supposed, Told::Supposed),
        (&talk.creature, Told::Creature),
        (&talk.no_deed, Told::NoDeed),
        (&talk.put_in, Told::PutIn),
        (&talk.worry, Told::Worry),
        (&talk.working, Told::Working),
        (&talk.each_time, Told::EachTime),
        (&talk.suffices, Told::Suffices),
        (&talk.request, Told::Request),
    ];
    for point in &talk.points {
        told.add(&point.words, &Told::Point(point.point));
    }
    for (words, meaning) in lists {
        told.add(words, &meaning);
    }
    (told, things, seen_words)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::Files;

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
