//! Names and steering words, gathered out of the knowledge base.

use super::meanings::{Named, Told};
use crate::garden::{BedKind, JobKind, SeenKind};
use crate::knowledge::{Kind, Knowledge, Names, Ordinary};
use crate::script::{Language, Text};
use crate::understanding::phrasebook::{By, Phrasebook};
use rustc_hash::FxHashSet;
use std::sync::Arc;

pub(super) fn names(known: &Knowledge) -> Phrasebook<Named> {
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

pub(super) fn topics(known: &Knowledge) -> Phrasebook<Kind> {
    let mut topics = Phrasebook::new(By::Whole, &known.ordinary);
    known.talk.topics.iter().for_each(|topic| topics.add(&topic.words, &topic.kind));
    topics
}

/// The words for work done of one word each, as they are spelled.
pub(super) fn deeds(known: &Knowledge) -> FxHashSet<String> {
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
fn themselves(known: &Knowledge) -> FxHashSet<String> {
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
pub(super) fn told(known: &Knowledge) -> (Phrasebook<Told>, Phrasebook<Told>, Phrasebook<Told>) {
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
    let lists: [(&Names, Told); 52] = [
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
        (&talk.beside_it, Told::BesideIt),
        (&talk.poorly, Told::Poorly),
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
