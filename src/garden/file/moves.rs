//! `[[moves]]`: jobs that a person put on another day.

use super::known::expected_one_of;
use super::table::At;
use super::{Reader, Table};
use crate::garden::id::PersonId;
use crate::garden::job::JobKind;
use crate::garden::moved::Move;
use chrono::{DateTime, Utc};
use std::ops::Range;
use toml::de::DeTable;

const KEYS: [&str; 7] = ["bed", "job", "what", "to", "by", "at", "after"];

impl Reader<'_> {
    pub(super) fn moved(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let table = Table::new("move", table, span, &KEYS, &mut self.notes);
        let bed = self.bed_of(&table);
        for (key, expected) in [("job", "\"spray\""), ("to", "\"2026-05-22\""), ("at", "\"2026-05-18T02:30:00Z\"")] {
            if !table.has(key) {
                table.missing(key, expected, &mut self.notes);
            }
        }
        let words = Move::JOBS.map(JobKind::word);
        let movable = |word: &str| JobKind::with_word(word).filter(|job| Move::JOBS.contains(job));
        let job = table.word("job", &words, movable, &mut self.notes);
        let what = table.text("what", "okra", &mut self.notes);
        let what = what.zip(job).and_then(|(what, job)| self.crop_of_move(what, job));
        let to = table.day("to", &mut self.notes);
        let by = table.text("by", "meera", &mut self.notes).and_then(|by| self.known_person(by));
        let at = self.moment("at", &table);
        let after = table.day("after", &mut self.notes);
        let moved = Move { bed: bed?, job: job?, what, to: to?, by, at: at?, after };
        let place = table.span.clone();
        self.add(moved, "this move", place, "one day for each job of a bed");
        Some(())
    }

    /// The crop of a picking or a sowing; nothing else tells one job of a bed from another of its kind.
    fn crop_of_move(&mut self, what: At<&str>, job: JobKind) -> Option<String> {
        if matches!(job, JobKind::Pick | JobKind::Sow) {
            return self.known_id(what, "crop", &[self.known.crops]);
        }
        let message = format!("what \"{}\" of a moved {job}", what.value);
        self.notes.note(what.span, message, "no \"what\": only a pick or a sow is of one crop");
        None
    }

    fn known_person(&mut self, found: At<&str>) -> Option<PersonId> {
        let person = self.people.iter().find(|person| person.as_str() == found.value).cloned();
        if person.is_none() && !self.in_doubt {
            let people: Vec<&str> = self.people.iter().map(PersonId::as_str).collect();
            let expected = expected_one_of(found.value, "a person of this file or the store", &people);
            self.notes.note(found.span, format!("person \"{}\" is not known", found.value), expected);
        }
        person
    }

    fn moment(&mut self, key: &str, table: &Table<'_>) -> Option<DateTime<Utc>> {
        let At { value, span } = table.text_or_date(key, "2026-05-18T02:30:00Z", &mut self.notes)?;
        let moment = DateTime::parse_from_rfc3339(&value).ok();
        if moment.is_none() {
            let expected = "a moment with its zone, like \"2026-05-18T02:30:00Z\"";
            self.notes.note(span, format!("{key} \"{value}\" is no moment"), expected);
        }
        moment.map(|moment| moment.with_timezone(&Utc))
    }
}
