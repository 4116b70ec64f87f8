//! The garden file, a TOML file that a person writes: read whole or refused whole, with every problem
//! and its place; and written back in the same form.

mod beds;
mod events;
mod known;
mod moves;
mod people;
mod problem;
mod sites;
mod table;
mod write;

pub use known::KnownIds;
pub use problem::{Problem, Source};
pub use write::write_garden;

use super::bed::BedKind;
use super::id::{BedId, PersonId, SiteId};
use super::store::{Garden, Kind, Record};
use known::expected_one_of;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use table::{At, Notes, Table};
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// The tables of a garden file.
const SECTIONS: [&str; 7] = ["sites", "people", "beds", "plantings", "jobs_done", "seen", "moves"];

/// Reads the text of a garden file; `file` is its name for refusals. What the store holds `already`
/// may be referred to.
///
/// # Errors
/// Every [`Problem`] of the file, in the order of its lines.
pub fn read_garden(file: &str, text: &str, known: &KnownIds<'_>, already: &Garden) -> Result<Garden, Vec<Problem>> {
    let (document, errors) = DeTable::parse_recoverable(text);
    let notes = Notes { source: Source::new(file, text), problems: Vec::new() };
    let mut reader = Reader::new(notes, known, already);
    if errors.is_empty() {
        reader.read(document.get_ref());
    }
    for error in errors {
        let end = text.len();
        let message = format!("this is not TOML: {}", error.message().replace('\n', ", "));
        reader.notes.note(error.span().unwrap_or(end..end), message, "a key and its value, like name = \"Roof 12\"");
    }
    let mut problems = reader.notes.problems;
    if problems.is_empty() {
        return Ok(reader.garden);
    }
    problems.sort_by_key(|problem| problem.span.start);
    Err(problems)
}

/// What is read so far.
struct Reader<'k> {
    notes: Notes,
    known: &'k KnownIds<'k>,
    /// The sites and beds that may be referred to, whatever else may be wrong with them.
    sites: BTreeSet<SiteId>,
    beds: BTreeMap<BedId, Option<BedKind>>,
    /// The people that may be referred to.
    people: BTreeSet<PersonId>,
    /// Has the id of some site, bed or person been refused, or a whole part? Then a name that is not known may be that one's,
    /// and one fault is told once.
    in_doubt: bool,
    /// What this file has held so far.
    held: BTreeSet<(Kind, String)>,
    garden: Garden,
}

impl<'k> Reader<'k> {
    fn new(notes: Notes, known: &'k KnownIds<'k>, already: &Garden) -> Self {
        Self {
            notes,
            known,
            sites: already.sites.iter().map(|site| site.id.clone()).collect(),
            beds: already.beds.iter().map(|bed| (bed.id.clone(), Some(bed.kind))).collect(),
            people: already.people.iter().map(|person| person.id.clone()).collect(),
            in_doubt: false,
            held: BTreeSet::new(),
            garden: Garden::default(),
        }
    }

    fn read(&mut self, document: &DeTable<'_>) {
        for (key, _) in document {
            if !SECTIONS.contains(&key.get_ref().as_ref()) {
                let message = format!("\"{}\" is no part of a garden file", key.get_ref());
                let expected = expected_one_of(key.get_ref(), "a known part", &SECTIONS);
                self.notes.note(key.span(), message, expected);
                self.in_doubt = true;
            }
        }
        // Each may refer to those before it, whatever their order in the file.
        self.section(document, "sites", Self::site);
        self.section(document, "people", Self::person);
        self.section(document, "beds", Self::bed);
        self.section(document, "plantings", Self::planting);
        self.section(document, "jobs_done", Self::job);
        self.section(document, "seen", Self::look);
        self.section(document, "moves", Self::moved);
    }

    fn section(
        &mut self,
        document: &DeTable<'_>,
        name: &'static str,
        read: fn(&mut Self, &DeTable<'_>, Range<usize>) -> Option<()>,
    ) {
        let Some(section) = document.get(name) else { return };
        let expected = format!("one [[{name}]] for each");
        let DeValue::Array(items) = section.get_ref() else {
            self.notes.note(section.span(), format!("\"{name}\" is no list of tables"), expected);
            return;
        };
        for item in items.iter() {
            match item.get_ref() {
                DeValue::Table(table) => {
                    // Whatever a record lacks has been noted, so there is nothing more to say.
                    let _: Option<()> = read(self, table, item.span());
                }
                _ => self.notes.note(item.span(), format!("\"{name}\" holds something else"), expected.clone()),
            }
        }
    }

    /// Adds a record, which may stand only once.
    fn add(&mut self, record: impl Into<Record>, what: &str, span: Range<usize>, expected: &str) {
        let record = record.into();
        if self.held.insert((record.kind(), record.key())) {
            self.garden.add(record);
        } else {
            self.notes.note(span, format!("{what} stands twice"), expected);
        }
    }

    /// An id of the knowledge base.
    fn known_id(&mut self, found: At<&str>, what: &str, groups: &[&BTreeSet<String>]) -> Option<String> {
        let ids: Vec<&str> = groups.iter().flat_map(|group| group.iter().map(String::as_str)).collect();
        if ids.contains(&found.value) {
            return Some(found.value.to_owned());
        }
        let expected = expected_one_of(found.value, &format!("a {what} of the knowledge base"), &ids);
        self.notes.note(found.span, format!("{what} \"{}\" is not known", found.value), expected);
        None
    }

    /// A site that may be referred to.
    fn known_site(&mut self, found: At<&str>) -> Option<SiteId> {
        let site = self.sites.iter().find(|site| site.as_str() == found.value).cloned();
        if site.is_none() && !self.in_doubt {
            let sites: Vec<&str> = self.sites.iter().map(SiteId::as_str).collect();
            let expected = expected_one_of(found.value, "a site of this file or the store", &sites);
            self.notes.note(found.span, format!("site \"{}\" is not known", found.value), expected);
        }
        site
    }
}

/// Where an item of a list stands, and the item if it is a table.
fn table_of<'t>(item: &'t Spanned<DeValue<'t>>, what: &str, notes: &mut Notes) -> Option<&'t DeTable<'t>> {
    let table = item.get_ref().as_table();
    if table.is_none() {
        notes.note(item.span(), format!("this is no {what}"), "a table, like { bearing_deg = 270, ... }");
    }
    table
}

#[cfg(test)]
mod tests;
