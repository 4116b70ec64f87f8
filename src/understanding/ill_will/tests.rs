//! Harm that is meant, and what only sounds like it.

use super::{IllWill, told};
use crate::knowledge::{Files, Knowledge};
use crate::script::Text;

/// Sentences of both sorts, a line each: `+` harm meant to others, `!` to oneself, `-` none of it.
const SENTENCES: &str = include_str!("../../../tests/reading/ill-will.txt");

#[test]
fn harm_that_is_meant_is_told_from_what_is_feared_or_happened() {
    let (known, problems) = Knowledge::read(&Files::embedded());
    assert!(problems.is_empty(), "{problems:?}");
    let mut wrong = Vec::new();
    for line in SENTENCES.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let (mark, sentence) = line.split_at(2);
        let wanted = match mark.trim() {
            "+" => Some(IllWill::ToOthers),
            "!" => Some(IllWill::ToOneself),
            _ => None,
        };
        if told(&Text::read(sentence), &known.ill_will) != wanted {
            wrong.push(line);
        }
    }
    assert!(wrong.is_empty(), "read otherwise: {wrong:#?}");
}
