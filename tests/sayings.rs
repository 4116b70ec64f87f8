//! Sentences of which one thing is asked, written for these tests in three languages: who is hurt, what has nothing to do
//! with a garden, what harm is meant. Each table in `tests/reading/` holds as many that say otherwise in the same words.

use chrono::NaiveDate;
use rooftend::knowledge::{Emergency, Files, Index, Kind, Knowledge, Point};
use rooftend::understanding::{Asker, Gazetteer, Reader, Reading, read};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| {
    let (known, problems) = Knowledge::read(&Files::embedded());
    assert!(problems.is_empty(), "{problems:?}");
    known
});
static INDEX: LazyLock<Index> = LazyLock::new(|| Index::build(&KNOWN).unwrap());
static GAZETTEER: LazyLock<Gazetteer> = LazyLock::new(|| Gazetteer::of(&KNOWN));

/// Each sentence of a table with what is expected of it: a line at the left margin, what was said set in below it.
fn set_in(table: &str) -> Vec<(&str, &str)> {
    let mut expected = "";
    let mut all = Vec::new();
    for line in lines(table) {
        match line.strip_prefix("  ") {
            Some(said) => all.push((expected, said)),
            None => expected = line,
        }
    }
    all
}

/// The same of a table with a mark before each sentence.
fn marked(table: &str) -> Vec<(&str, &str)> {
    lines(table).filter_map(|line| line.split_once(' ')).collect()
}

fn lines(table: &str) -> impl Iterator<Item = &str> {
    table.lines().filter(|line| !line.is_empty() && !line.starts_with('#'))
}

/// Reads each sentence as one that is sent, and tells all that read otherwise at once. Returns how many there were of each
/// expectation.
#[track_caller]
fn check<'t>(sentences: &[(&'t str, &str)], shown: impl Fn(&Reading) -> &'static str) -> BTreeMap<&'t str, usize> {
    let reader = Reader { known: &KNOWN, index: &INDEX, gazetteer: &GAZETTEER };
    let today = NaiveDate::from_ymd_opt(2026, 5, 18).unwrap();
    let (mut wrong, mut checked) = (String::new(), BTreeMap::new());
    for (expected, said) in sentences {
        let (reading, _) = read(said, &reader, &Asker::default(), today);
        *checked.entry(*expected).or_default() += 1;
        let got = shown(&reading);
        if got != *expected {
            let Reading { kind, sureness, .. } = &reading;
            writeln!(wrong, "{said}\n    read: {got} ({kind:?} {sureness:.2}), wanted: {expected}").unwrap();
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
    checked
}

/// Someone is hurt, or a plant is: the first is answered before anything else, the second never so.
#[test]
fn who_is_hurt_and_who_is_not() {
    const NO_ONE: &str = "no one";
    let checked = check(&set_in(include_str!("reading/emergencies.txt")), |reading| match reading.emergency {
        None => NO_ONE,
        Some(Emergency::Swallowed) => "swallowed",
        Some(Emergency::Breathed) => "breathed",
        Some(Emergency::Skin) => "skin",
        Some(Emergency::Eye) => "eye",
        Some(Emergency::Bite) => "bite",
        Some(Emergency::Heat) => "heat",
        Some(Emergency::Fall) => "fall",
        Some(Emergency::Shock) => "shock",
        Some(Emergency::Cut) => "cut",
        Some(Emergency::Burn) => "burn",
        Some(Emergency::Blow) => "blow",
        Some(Emergency::Choked) => "choked",
        Some(Emergency::WouldEat) => "would-eat",
        Some(Emergency::Despair) => "despair",
    });
    let hurt: usize = checked.iter().filter(|(what, _)| **what != NO_ONE).map(|(_, count)| count).sum();
    assert!(checked[NO_ONE] >= 100 && hurt >= 90, "the table was not read: {checked:?}");
}

/// Invented messages as they are sent in haste, nothing of which was learned: of those in which someone is hurt nine in ten
/// are heard as such, and of those that only share words with accidents one in fifty at most.
#[test]
fn who_is_hurt_is_heard_in_words_of_their_own() {
    #[derive(serde::Deserialize)]
    struct Told {
        hurt: bool,
        message: String,
    }
    let reader = Reader { known: &KNOWN, index: &INDEX, gazetteer: &GAZETTEER };
    let today = NaiveDate::from_ymd_opt(2026, 5, 18).unwrap();
    let all: Vec<Told> =
        lines(include_str!("reading/hurt.jsonl")).map(|line| serde_json::from_str(line).unwrap()).collect();
    let heard = |told: &Told| read(&told.message, &reader, &Asker::default(), today).0.emergency.is_some();
    let (hurt, others): (Vec<&Told>, Vec<&Told>) = all.iter().partition(|told| told.hurt);
    let missed: Vec<&str> = hurt.iter().filter(|told| !heard(told)).map(|told| told.message.as_str()).collect();
    let alarms: Vec<&str> = others.iter().filter(|told| heard(told)).map(|told| told.message.as_str()).collect();
    assert!(hurt.len() >= 60 && others.len() >= 150, "the table was not read");
    assert!(missed.len() * 10 <= hurt.len(), "{} of {} missed:\n{}", missed.len(), hurt.len(), missed.join("\n"));
    assert!(alarms.len() * 50 <= others.len(), "{} of {} in vain:\n{}", alarms.len(), others.len(), alarms.join("\n"));
}

/// What has nothing to do with a garden is declined, and what is asked of a garden in the same words is not.
#[test]
fn what_is_of_another_world_and_what_is_of_a_garden() {
    let checked = check(&set_in(include_str!("reading/worlds.txt")), |reading| {
        if reading.kind == Kind::None { "elsewhere" } else { "a garden" }
    });
    assert!(checked.len() == 2 && checked.values().all(|count| *count >= 40), "the table was not read: {checked:?}");
}

/// Harm that is meant is declined or, where it is to oneself, answered as despair; the words of care and of accidents are
/// not. The sentences are read here by the whole of a reading, with all that may come before and after.
#[test]
fn harm_that_is_meant_and_what_only_sounds_like_it() {
    let checked = check(&marked(include_str!("reading/ill-will.txt")), |reading| match reading {
        Reading { ill_will: true, .. } => "+",
        Reading { emergency: Some(Emergency::Despair), .. } => "!",
        _ => "-",
    });
    assert!(checked["+"] >= 35 && checked["!"] >= 5 && checked["-"] >= 35, "the table was not read: {checked:?}");
}

/// No dose of a product that nobody knows or that is no one's to pour; what is known, seen or sown is asked as ever.
#[test]
fn products_that_nobody_knows() {
    let checked = check(&set_in(include_str!("reading/products.txt")), |reading| {
        let product = reading.kind == Kind::Spray && reading.points.contains(&Point::SyntheticSpray);
        if product { "no dose" } else { "a garden" }
    });
    assert!(checked.len() == 2 && checked.values().all(|count| *count >= 10), "the table was not read: {checked:?}");
}

/// A tray sown and eaten raw is shoots, and carries the caution of raw shoots: "raw" is heard beside "sown" and "tray".
#[test]
fn a_tray_sown_and_eaten_raw_is_shoots() {
    let sentences: Vec<(&str, &str)> = [
        ("shoots, raw", "मेथी की ट्रे परसों बोई, कब काटूँ और कच्ची खा लें क्या"),
        ("shoots, raw", "sowed mustard in the tray on saturday, when do I cut and can I eat it raw"),
        ("shoots, raw", "methi tray boyi kal, kitne din me kate aur kachi kha sakte?"),
        ("other", "sowed spinach in the long box, can I eat it raw"),
        ("other", "methi ka dabba boya, kab kate"),
    ]
    .to_vec();
    check(&sentences, |reading| {
        let raw = reading.microgreen && reading.points.contains(&Point::Raw);
        if raw { "shoots, raw" } else { "other" }
    });
}
