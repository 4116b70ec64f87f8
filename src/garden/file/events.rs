//! `[[plantings]]`, `[[jobs_done]]` and `[[seen]]`: what happened in a bed.

use super::known::expected_one_of;
use super::table::{At, refuse};
use super::{Reader, Table};
use crate::garden::bed::BedKind;
use crate::garden::id::BedId;
use crate::garden::job::{JobDone, JobKind};
use crate::garden::planting::{Planting, Start};
use crate::garden::seen::{Seen, SeenKind};
use crate::garden::when::When;
use crate::quantity::Written;
use std::ops::Range;
use toml::de::DeTable;

const APART: &str = "one record, or two told apart by a clock time, like \"2026-05-13T18:00\"";

impl Reader<'_> {
    pub(super) fn planting(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let keys = ["bed", "crop", "as", "sown", "planted", "plants"];
        let table = Table::new("planting", table, span, &keys, &mut self.notes);
        let bed = self.bed_of(&table);
        if !table.has("crop") {
            table.missing("crop", "\"spinach\"", &mut self.notes);
        }
        let crop = table.text("crop", "spinach", &mut self.notes);
        let crop = crop.and_then(|crop| self.known_id(crop, "crop", &[self.known.crops]));
        let microgreen = self.microgreen(&table, bed.as_ref());
        let notes = &mut self.notes;
        let sown = table.day("sown", notes).map(Start::Sown);
        let planted = table.day("planted", notes).map(Start::Planted);
        match (table.has("sown"), table.has("planted")) {
            (true, true) => {
                notes.note(table.place("planted"), "this planting was both sown and planted", "sown or planted");
            }
            (false, false) => table.missing("sown", "\"2026-05-13\", or planted for saplings", notes),
            _ => {}
        }
        let plants = table.number("plants", &(1.0..=100_000.0), "plants", notes);
        if plants.is_some_and(|plants| plants.fract() != 0.0) {
            notes.note(table.place("plants"), "plants is no whole number", "how many plants, like 24");
        }
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "bounded to 1 to 100 000 above")]
        let plants = plants.map(|plants| plants as u32);
        let planting = Planting { bed: bed?, crop: crop?, microgreen, start: sown.or(planted)?, plants };
        let place = table.span.clone();
        self.add(planting, "this planting", place, "one record of what was sown on a day; plants says how many");
        Some(())
    }

    fn microgreen(&mut self, table: &Table<'_>, bed: Option<&BedId>) -> bool {
        let word = |word: &str| (word == "microgreen").then_some(());
        if table.word("as", &["microgreen"], word, &mut self.notes).is_none() {
            return false;
        }
        let kind = bed.and_then(|bed| self.beds.get(bed)).copied().flatten();
        if let Some(kind) = kind.filter(|kind| *kind != BedKind::Tray) {
            let message = format!("microgreens in a {kind}");
            self.notes.note(table.place("as"), message, "a bed of kind \"tray\", or no \"as\"");
        }
        true
    }

    pub(super) fn job(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let table = Table::new("job", table, span, &["bed", "job", "on", "what", "amount"], &mut self.notes);
        let bed = self.bed_of(&table);
        let words: Vec<_> = JobKind::ALL.iter().map(|job| job.word()).collect();
        if !table.has("job") {
            table.missing("job", "\"water\"", &mut self.notes);
        }
        let job = table.word("job", &words, JobKind::with_word, &mut self.notes);
        let on = self.when_of(&table);
        let what = table.text("what", "neem-oil", &mut self.notes);
        let what = what.zip(job).and_then(|(what, job)| self.object(what, job));
        let amount = self.amount(&table);
        let done = JobDone { bed: bed?, job: job?, on: on?, what, amount };
        let place = table.span.clone();
        self.add(done, "this job", place, APART);
        Some(())
    }

    /// What a job was done with or to.
    fn object(&mut self, what: At<&str>, job: JobKind) -> Option<String> {
        let known = self.known;
        match job {
            JobKind::Net if ["up", "down"].contains(&what.value) => Some(what.value.to_owned()),
            JobKind::Net => {
                let message = format!("what \"{}\" is not known of a net", what.value);
                self.notes.note(what.span, message, "\"up\" or \"down\"");
                None
            }
            // A clear of something that is no crop would end nothing, and nobody would notice.
            JobKind::Clear | JobKind::Sow | JobKind::Plant | JobKind::Pick | JobKind::Thin => {
                self.known_id(what, "crop", &[known.crops])
            }
            JobKind::Spray | JobKind::Feed => self.known_id(what, "material", &[known.materials]),
            _ => self.known_id(what, "material, mix or crop", &[known.materials, known.mixes, known.crops]),
        }
    }

    fn amount(&mut self, table: &Table<'_>) -> Option<Written> {
        let At { value, span } = table.text("amount", "10 ml", &mut self.notes)?;
        match Written::read(value, "10 ml") {
            Ok(amount) if amount.value > 0.0 => Some(amount),
            Ok(_) => {
                self.notes.note(span, format!("amount \"{value}\" is nothing"), "more than 0, or no amount");
                None
            }
            Err(refusal) => {
                refuse("amount", &refusal.to_string(), span, &mut self.notes);
                None
            }
        }
    }

    pub(super) fn look(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let table = Table::new("look", table, span, &["bed", "on", "what"], &mut self.notes);
        let bed = self.bed_of(&table);
        let on = self.when_of(&table);
        let words: Vec<_> = SeenKind::ALL.iter().map(|seen| seen.word()).collect();
        if !table.has("what") {
            table.missing("what", "\"still-wet\"", &mut self.notes);
        }
        let what = table.word("what", &words, SeenKind::with_word, &mut self.notes);
        let seen = Seen { bed: bed?, on: on?, what: what? };
        let place = table.span.clone();
        self.add(seen, "what was seen", place, APART);
        Some(())
    }

    fn when_of(&mut self, table: &Table<'_>) -> Option<When> {
        if !table.has("on") {
            table.missing("on", "\"2026-05-13\"", &mut self.notes);
        }
        table.parsed::<When>("on", "2026-05-13", &mut self.notes).map(|when| when.value)
    }

    /// The bed that is named, as `site/bed`, or by its own id where only one site has it.
    pub(super) fn bed_of(&mut self, table: &Table<'_>) -> Option<BedId> {
        if !table.has("bed") {
            table.missing("bed", "\"roof-12/east-box\"", &mut self.notes);
        }
        let At { value, span } = table.text("bed", "roof-12/east-box", &mut self.notes)?;
        let whole = value.contains('/');
        let found: Vec<&BedId> = if whole {
            let named = BedId::new(value).ok().and_then(|bed| self.beds.get_key_value(&bed));
            named.into_iter().map(|(bed, _)| bed).collect()
        } else {
            self.beds.keys().filter(|bed| bed.bed() == value).collect()
        };
        if let [only] = found.as_slice() {
            return Some((*only).clone());
        }
        if found.is_empty() && self.in_doubt {
            return None;
        }
        let (message, expected) = if found.is_empty() {
            let ids: Vec<String> =
                self.beds.keys().map(|bed| if whole { bed.to_string() } else { bed.bed().into() }).collect();
            let ids: Vec<&str> = ids.iter().map(String::as_str).collect();
            let expected = expected_one_of(value, "a bed of this file or the store", &ids);
            (format!("bed \"{value}\" is not known"), expected)
        } else {
            let ids: Vec<String> = found.iter().map(|bed| format!("\"{bed}\"")).collect();
            (format!("bed \"{value}\" could be {} beds", found.len()), ids.join(" or "))
        };
        self.notes.note(span, message, expected);
        None
    }
}
