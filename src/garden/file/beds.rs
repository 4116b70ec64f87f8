//! `[[beds]]`.

use super::{Reader, Table};
use crate::garden::bed::{Bed, BedKind, RainExposure, Shape, Sides};
use crate::garden::id::BedId;
use crate::quantity::{Length, Volume};
use std::ops::Range;
use toml::de::DeTable;

const KEYS: [&str; 16] = [
    "id",
    "site",
    "names",
    "kind",
    "length",
    "width",
    "diameter",
    "depth",
    "volume",
    "mix",
    "mix_added",
    "sides",
    "sun_hours",
    "rain",
    "net_percent",
    "mulch",
];

/// The longest side of a bed on a roof.
const LONGEST_SIDE: Length = Length::metres(30.0);
/// The deepest bed on a roof.
const DEEPEST: Length = Length::metres(3.0);
/// What the largest bag holds.
const LARGEST_BAG: Volume = Volume::litres(2000.0);

impl Reader<'_> {
    pub(super) fn bed(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let table = Table::new("bed", table, span, &KEYS, &mut self.notes);
        let kinds: Vec<_> = BedKind::ALL.iter().map(|kind| kind.word()).collect();
        for (key, expected) in [("id", "\"east-box\""), ("site", "\"roof-12\""), ("kind", "\"box\"")] {
            if !table.has(key) {
                table.missing(key, expected, &mut self.notes);
            }
        }
        let kind = table.word("kind", &kinds, BedKind::with_word, &mut self.notes);
        let id = self.bed_own_id(&table, kind);
        let shape = kind.and_then(|kind| self.shape(&table, kind));
        let mix = table.text("mix", "house", &mut self.notes);
        let mix = mix.and_then(|mix| self.known_id(mix, "mix", &[self.known.mixes]));
        let notes = &mut self.notes;
        let sides: Vec<_> = Sides::ALL.iter().map(|sides| sides.word()).collect();
        let rain: Vec<_> = RainExposure::ALL.iter().map(|rain| rain.word()).collect();
        let names =
            table.texts("names", "[\"east box\"]", notes).into_iter().map(|name| name.value.to_owned()).collect();
        let mix_added = table.day("mix_added", notes);
        let sides = table.word("sides", &sides, Sides::with_word, notes);
        let sun_hours = table.number("sun_hours", &(0.0..=24.0), "hours", notes);
        let rain = table.word("rain", &rain, RainExposure::with_word, notes);
        let net_percent = table.number("net_percent", &(0.0..=95.0), "percent", notes);
        let mulch = table.yes_or_no("mulch", notes);
        let id = id?;
        let what = format!("bed \"{id}\"");
        let bed =
            Bed { id, names, kind: kind?, shape: shape?, mix, mix_added, sides, sun_hours, rain, net_percent, mulch };
        self.add(bed, &what, table.place("id"), "another id, or another site");
        Some(())
    }

    /// The bed's id at its site; from here on it may be referred to.
    fn bed_own_id(&mut self, table: &Table<'_>, kind: Option<BedKind>) -> Option<BedId> {
        let own = table.text("id", "east-box", &mut self.notes);
        let site = table.text("site", "roof-12", &mut self.notes).and_then(|site| self.known_site(site));
        let (Some(own), Some(site)) = (own, site) else {
            self.in_doubt = true;
            return None;
        };
        match BedId::at(&site, own.value) {
            Ok(id) => {
                self.beds.insert(id.clone(), kind);
                Some(id)
            }
            Err(refusal) => {
                self.in_doubt = true;
                super::table::refuse("id", &refusal.to_string(), own.span, &mut self.notes);
                None
            }
        }
    }

    fn shape(&mut self, table: &Table<'_>, kind: BedKind) -> Option<Shape> {
        let notes = &mut self.notes;
        let length = table.measure("length", LONGEST_SIDE, notes);
        let width = table.measure("width", LONGEST_SIDE, notes);
        let diameter = table.measure("diameter", LONGEST_SIDE, notes);
        let depth = table.measure("depth", DEEPEST, notes);
        let volume = table.measure("volume", LARGEST_BAG, notes);
        let sides = table.has("length") || table.has("width");
        let (round, whole) = (table.has("diameter"), table.has("volume"));
        if whole && kind != BedKind::Bag {
            notes.note(table.place("volume"), format!("a {kind} has no volume of its own"), "its inside measures");
            return None;
        }
        if usize::from(sides) + usize::from(round) + usize::from(whole) > 1 {
            let place = table.place(if whole { "volume" } else { "diameter" });
            notes.note(
                place,
                "this bed has more than one shape",
                "length and width, or diameter, or the volume of a bag",
            );
            return None;
        }
        if whole {
            return Some(Shape::Bag { volume: volume?, depth });
        }
        let round = round || (!sides && matches!(kind, BedKind::Basket | BedKind::Pot | BedKind::Bag));
        let wanted: &[(&str, &str)] = if round {
            &[("diameter", "\"14 in\""), ("depth", "\"12 in\"")]
        } else {
            &[("length", "\"4 ft\""), ("width", "\"3 ft\""), ("depth", "\"12 in\"")]
        };
        for (key, expected) in wanted {
            if !table.has(key) {
                let or = match (kind, *key) {
                    (BedKind::Bag, "diameter") => ", or volume = \"20 L\" alone",
                    (BedKind::Tray | BedKind::Box, "length") => ", or a diameter for a round one",
                    (_, "diameter") => ", or length and width",
                    _ => "",
                };
                table.missing(key, &format!("{expected}{or}"), notes);
            }
        }
        if round {
            Some(Shape::Round { diameter: diameter?, depth: depth? })
        } else {
            Some(Shape::Box { length: length?, width: width?, depth: depth? })
        }
    }
}
