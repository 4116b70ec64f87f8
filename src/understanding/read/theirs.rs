//! What stands in a place that the asker may not see.

use super::{Found, Hit, Named, Reader, Told};
use crate::knowledge::Kind;
use crate::script::Text;
use crate::understanding::reading::Reading;
use std::ops::Range;

/// A site called by its name leaves little else (judgement).
const SURE: f64 = 0.95;

/// What makes a name the owner of what follows it.
const OWNS: [&str; 12] = ["ka", "ke", "ki", "wala", "wale", "wali", "का", "के", "की", "वाला", "वाले", "वाली"];

impl Found {
    /// The reading of a message about a place that the asker may not see, whatever was said before: nothing of her own
    /// is meant by it.
    pub(super) fn in_another_place(&self, text: &Text, reader: &Reader<'_>) -> Option<Reading> {
        self.is_in_another_place(text, reader).then(|| Reading {
            beds: Vec::new(),
            beds_named: false,
            all_beds: false,
            sites: Vec::new(),
            did: None,
            saw: None,
            put_off: None,
            stays: None,
            jobs: Vec::new(),
            senseless: false,
            ..self.reading(text, reader, Kind::None, SURE)
        })
    }

    /// A site of someone else is called by its name, of several words: one alone may be any word. Or a bed is told to be
    /// someone's: "Meera's box".
    fn is_in_another_place(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        // What others say is asked about, and a new bed there is refused as such.
        if says(&Told::OthersSaid) || self.is_new_bed(text, reader) {
            return false;
        }
        let theirs = self.names.iter().filter(|hit| hit.meaning == Named::SomeoneElse);
        let mut spans = theirs.map(|hit| &hit.span);
        spans.any(|span| span.len() > 1 && !self.is_measured(span) || self.owns_a_bed(text, span))
    }

    /// "My roof 12 ft by 10": a number that is part of a size is no part of a name.
    fn is_measured(&self, span: &Range<usize>) -> bool {
        let sizes = self.quantities.said.iter().map(|said| &said.span);
        let sides = self.quantities.dimensions.iter().map(|found| &found.span);
        let bare = self.quantities.bare.iter().map(|found| &found.span);
        sizes.chain(sides).chain(bare).any(|size| size.start < span.end && span.start < size.end)
    }

    /// A bed follows a name, perhaps with the crop in it, as that person's.
    fn owns_a_bed(&self, text: &Text, name: &Range<usize>) -> bool {
        let written = text.tokens.get(name.end.saturating_sub(1)).map_or("", |token| token.text.as_str());
        let from = match text.normal(name.end) {
            _ if ["'s", "’s"].iter().any(|ending| written.ends_with(ending)) => name.end,
            word if OWNS.contains(&word) => name.end + 1,
            _ => return false,
        };
        let is_bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_));
        let begins = |at: usize| self.names.iter().any(|hit| is_bed(hit) && hit.span.start == at);
        let crop = self.names.iter().find(|hit| matches!(hit.meaning, Named::Crop(_)) && hit.span.start == from);
        let after = crop.map_or(from, |crop| crop.span.end);
        // A word may stand between that tells which: "Meera's east box", "Meera ka bhindi wala box".
        begins(from) || begins(after) || begins(after + 1)
    }
}
