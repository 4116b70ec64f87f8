//! Someone is hurt, or a plant is: the first is answered before anything else, the second never so. The sentences
//! were written for this test, in three languages; those about plants use the same words.

use chrono::NaiveDate;
use rooftend::knowledge::{Emergency, Files, Index, Knowledge};
use rooftend::understanding::{Asker, Gazetteer, Reader, read};
use std::fmt::Write as _;

/// Checks every line of a table: what happened at the left margin, what was said set in below it.
#[test]
fn who_is_hurt_and_who_is_not() {
    let (known, problems) = Knowledge::read(&Files::embedded());
    assert!(problems.is_empty(), "{problems:?}");
    let index = Index::build(&known).unwrap();
    let gazetteer = Gazetteer::of(&known);
    let reader = Reader { known: &known, index: &index, gazetteer: &gazetteer };
    let today = NaiveDate::from_ymd_opt(2026, 5, 18).unwrap();
    let (mut expected, mut wrong, mut checked) = ("", String::new(), [0, 0]);
    for line in
        include_str!("reading/emergencies.txt").lines().filter(|line| !line.is_empty() && !line.starts_with('#'))
    {
        let Some(said) = line.strip_prefix("  ") else {
            expected = line;
            continue;
        };
        let (reading, _) = read(said, &reader, &Asker::default(), today);
        let got = match reading.emergency {
            None => "no one",
            Some(Emergency::Swallowed) => "swallowed",
            Some(Emergency::Eye) => "eye",
            Some(Emergency::Bite) => "bite",
            Some(Emergency::Heat) => "heat",
            Some(Emergency::Fall) => "fall",
            Some(Emergency::Shock) => "shock",
            Some(Emergency::Cut) => "cut",
            Some(Emergency::Burn) => "burn",
            Some(Emergency::WouldEat) => "would-eat",
            Some(Emergency::Despair) => "despair",
        };
        checked[usize::from(expected != "no one")] += 1;
        if got != expected {
            writeln!(wrong, "{said}\n    read: {got}, wanted: {expected}").unwrap();
        }
    }
    assert!(checked[0] >= 100 && checked[1] >= 90, "the table was not read: {checked:?}");
    assert!(wrong.is_empty(), "\n{wrong}");
}
