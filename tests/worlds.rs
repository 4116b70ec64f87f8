//! What has nothing to do with a garden is declined, and what is asked of a garden in the same words is not. The sentences
//! were written for this test, in three languages.

use chrono::NaiveDate;
use rooftend::knowledge::{Files, Index, Kind, Knowledge};
use rooftend::understanding::{Asker, Gazetteer, Reader, read};
use std::fmt::Write as _;

/// Checks every line of a table: of which world it is at the left margin, what was said set in below it.
#[test]
fn what_is_of_another_world_and_what_is_of_a_garden() {
    let (known, problems) = Knowledge::read(&Files::embedded());
    assert!(problems.is_empty(), "{problems:?}");
    let index = Index::build(&known).unwrap();
    let gazetteer = Gazetteer::of(&known);
    let reader = Reader { known: &known, index: &index, gazetteer: &gazetteer };
    let today = NaiveDate::from_ymd_opt(2026, 5, 18).unwrap();
    let (mut elsewhere, mut wrong, mut checked) = (false, String::new(), [0, 0]);
    for line in include_str!("reading/worlds.txt").lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let Some(said) = line.strip_prefix("  ") else {
            elsewhere = line == "elsewhere";
            continue;
        };
        let (reading, _) = read(said, &reader, &Asker::default(), today);
        checked[usize::from(elsewhere)] += 1;
        if (reading.kind == Kind::None) != elsewhere {
            writeln!(wrong, "{said}\n    read: {:?} {:.2}", reading.kind, reading.sureness).unwrap();
        }
    }
    assert!(checked.iter().all(|count| *count >= 40), "the table was not read: {checked:?}");
    assert!(wrong.is_empty(), "\n{wrong}");
}
