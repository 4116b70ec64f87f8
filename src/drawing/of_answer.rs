//! Which picture goes with an answer.

use super::picture::Picture;
use super::words::Words;
use super::{plan, water, year};
use crate::answering::{Answer, Table};
use crate::knowledge::Knowledge;
use crate::wording::{Manner, Phrases};

/// The picture of an answer in the language of its reply; none where nothing of it can be drawn. Of several beds the
/// first is drawn: the others stand in the text.
#[must_use]
pub fn picture_for(answer: &Answer, known: &Knowledge, phrases: &Phrases, manner: Manner) -> Option<Picture> {
    let words = Words::new(answer, known, phrases, manner);
    answer.tables.iter().find_map(|table| match table {
        Table::Water(week) => Some(water::picture(week, &words)),
        Table::Plan(plan) => Some(plan::picture(plan, &words)),
        Table::Year(year) => Some(year::picture(year, &words)),
        Table::Due(_) => None,
    })
}
