//! "Tray and basket both watered", "tomato aur tokri me pani diya": beds told side by side, one by its kind.

use super::{Found, Hit, Named, Reading, Text, Told};
use crate::garden::BedId;
use crate::understanding::asker::Asker;

impl Found {
    /// The beds of all places that are named side by side, where each of them is one of the asker's and the reading left
    /// one out.
    pub(super) fn with_all_places(&self, text: &Text, mut reading: Reading, asker: &Asker) -> Reading {
        let worked = reading.did.is_some() || reading.saw.is_some();
        // "Not the bag, the basket" names two, and means one.
        let denied = reading.corrects || self.told.iter().any(|hit| hit.meaning == Told::Not);
        if !worked
            || denied
            || !reading.measures.is_empty()
            || reading.new_bed
            || reading.all_beds
            || !reading.alike.is_empty()
        {
            return reading;
        }
        let places = self.places_named();
        let kinds = places.iter().any(|hit| matches!(hit.meaning, Named::BedKind(_)));
        let joined = places.windows(2).all(|pair| matches!(pair, [one, next] if is_joined(text, one, next)));
        if places.len() < 2 || !kinds || !joined {
            return reading;
        }
        let mut beds: Vec<BedId> = Vec::new();
        for hit in places {
            let there: Vec<BedId> = match &hit.meaning {
                Named::OwnBed(id) => vec![id.clone()],
                Named::Crop(crop) => asker.beds.iter().filter(|bed| bed.has(crop)).map(|bed| bed.id.clone()).collect(),
                Named::BedKind(kind) => {
                    asker.beds.iter().filter(|bed| bed.kind == *kind).map(|bed| bed.id.clone()).collect()
                }
                _ => Vec::new(),
            };
            let [one] = there.as_slice() else { return reading };
            if !beds.contains(one) {
                beds.push(one.clone());
            }
        }
        reading.beds = beds;
        reading.beds_named = true;
        reading
    }

    /// Beds, crops and kinds of bed, without those that stand within the name of a bed.
    fn places_named(&self) -> Vec<&Hit<Named>> {
        let of_beds = |hit: &&Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_) | Named::BedKind(_));
        let within = |hit: &Hit<Named>| {
            self.names.iter().any(|other| {
                matches!(other.meaning, Named::OwnBed(_))
                    && other.span.len() > hit.span.len()
                    && other.span.start <= hit.span.start
                    && hit.span.end <= other.span.end
            })
        };
        self.names.iter().filter(of_beds).filter(|hit| !within(hit)).collect()
    }
}

/// Only words that join and small words stand between.
fn is_joined(text: &Text, one: &Hit<Named>, next: &Hit<Named>) -> bool {
    const JOINS: [&str; 9] = ["and", "&", ",", "aur", "n", "plus", "+", "और", "also"];
    const SMALL: [&str; 18] = [
        "the",
        "my",
        "both",
        "then",
        "ko",
        "me",
        "mein",
        "par",
        "pe",
        "ke",
        "ka",
        "ki",
        "wale",
        "wali",
        "को",
        "में",
        "पर",
        "के",
    ];
    let between = one.span.end..next.span.start;
    let joins = between.clone().any(|at| JOINS.contains(&text.normal(at)));
    joins && between.into_iter().all(|at| JOINS.contains(&text.normal(at)) || SMALL.contains(&text.normal(at)))
}
