//! What is told of a job, day after day.

use super::*;
use crate::garden::Move;
use crate::needs::spray::Obstacle;
use std::collections::BTreeSet;

fn day(text: &str) -> NaiveDate {
    format!("2026-05-{text}").parse().unwrap()
}

/// A spray that is planned for a day; by its rhythm since another.
fn spray(planned: &str, rhythm: Option<&str>, last: Option<&str>) -> Due {
    Due {
        date: day(planned),
        bed: BedId::new("roof/box").unwrap(),
        job: JobKind::Spray,
        what: Some("neem-oil".into()),
        since: None,
        moved_by: BTreeSet::new(),
        rhythm: rhythm.map(day),
        chosen: None,
        last: last.map(day),
        hours: None,
    }
}

fn by(mut due: Due, obstacle: Obstacle) -> Due {
    due.moved_by.insert(obstacle);
    due
}

fn chosen(mut due: Due) -> Due {
    let (bed, job, to) = (due.bed.clone(), due.job, due.date);
    let at = "2026-05-18T02:30:00Z".parse().unwrap();
    due.chosen = Some(Move { bed, job, what: None, to, by: None, at, after: due.last });
    due
}

fn told(day: NaiveDate, announced: bool) -> ToldLast {
    ToldLast { day, announced, rhythm: None }
}

#[track_caller]
fn case(due: &Due, of: &str, before: Option<ToldLast>, word: Word, expected: Option<News>) {
    assert_eq!(news(due, day(of), before.as_ref(), word), expected);
}

#[test]
fn a_job_is_announced_once_for_its_day() {
    let due = spray("19", Some("19"), Some("12"));
    case(&due, "19", None, Word::Eve, Some(News::Due));
    case(&due, "19", Some(told(day("12"), true)), Word::Eve, Some(News::Due));
    case(&due, "19", Some(told(day("19"), true)), Word::Eve, None);
    case(&due, "19", Some(told(day("19"), true)), Word::Morning, None);
    case(&due, "18", None, Word::Eve, None);
    assert_eq!(told_now(&due, News::Due), told(day("19"), true));
}

#[test]
fn one_that_moves_is_told_with_its_new_day_and_then_announced_for_it() {
    let rained = by(spray("21", Some("19"), Some("12")), Obstacle::Rain);
    case(&rained, "19", None, Word::Eve, Some(News::Moved));
    assert_eq!(told_now(&rained, News::Moved), told(day("21"), false));
    case(&rained, "20", Some(told(day("21"), false)), Word::Eve, None);
    // The forecast of the morning moves what the evening announced.
    case(&rained, "19", Some(told(day("19"), true)), Word::Morning, Some(News::Moved));
    // Moved once more.
    let again = by(spray("22", Some("19"), Some("12")), Obstacle::Heat);
    case(&again, "20", Some(told(day("21"), false)), Word::Eve, Some(News::Moved));
    // Its day: on the 21st nothing stands against it any more, and that is when it is announced.
    let there = spray("21", Some("19"), Some("12"));
    case(&there, "21", Some(told(day("21"), false)), Word::Eve, Some(News::Due));
    case(&there, "21", Some(told(day("21"), true)), Word::Eve, None);
    // Nobody could be told on the evening before: the morning does.
    case(&there, "21", Some(told(day("21"), false)), Word::Morning, Some(News::Due));
    // The rain stayed away: sooner than was told.
    let sooner = spray("20", Some("19"), Some("12"));
    case(&sooner, "20", Some(told(day("21"), false)), Word::Eve, Some(News::Due));
}

#[test]
fn a_move_by_a_person_is_told_to_the_others() {
    let moved = chosen(spray("22", Some("19"), Some("12")));
    case(&moved, "19", None, Word::Eve, Some(News::Moved));
    case(&moved, "19", Some(told(day("22"), false)), Word::Eve, None);
    case(&moved, "22", Some(told(day("22"), false)), Word::Eve, Some(News::Due));
    // Announced for the 20th, and put off since.
    case(&moved, "22", Some(told(day("20"), true)), Word::Eve, Some(News::Due));
    case(&moved, "22", Some(told(day("22"), true)), Word::Morning, None);
}

#[test]
fn an_open_job_is_spoken_of_again_after_three_days_and_of_an_evening() {
    let open = |planned| spray(planned, Some("19"), Some("12"));
    let before = Some(told(day("19"), true));
    for (of, word, expected) in [
        ("20", Word::Eve, None),
        ("21", Word::Eve, None),
        ("22", Word::Morning, None),
        ("22", Word::Eve, Some(News::Open)),
    ] {
        case(&open(of), of, before, word, expected);
    }
    // Done meanwhile, and due again.
    case(&spray("27", Some("27"), Some("20")), "27", before, Word::Eve, Some(News::Due));
    // Nothing on record: its day is every day, and it is spoken of weekly.
    let unrecorded = |planned| spray(planned, None, None);
    case(&unrecorded("19"), "19", None, Word::Eve, Some(News::Due));
    case(&unrecorded("22"), "22", before, Word::Eve, None);
    case(&unrecorded("26"), "26", before, Word::Eve, Some(News::Open));
}

#[test]
fn an_estimate_that_shifts_by_a_day_is_no_new_job() {
    let ripe = |rhythm| spray("21", Some(rhythm), None);
    case(&ripe("21"), "21", Some(told(day("20"), true)), Word::Eve, None);
    case(&ripe("20"), "21", Some(told(day("20"), true)), Word::Eve, None);
}

#[test]
fn names_tell_crops_and_nets_apart_and_sprays_not() {
    let mut due = spray("19", None, None);
    assert_eq!(JobName::of(&due).what, None);
    (due.job, due.what) = (JobKind::Net, Some("up".into()));
    assert_eq!(JobName::of(&due).what.as_deref(), Some("up"));
    (due.job, due.what) = (JobKind::Pick, Some("okra".into()));
    assert_eq!(JobName::of(&due).what.as_deref(), Some("okra"));
}
