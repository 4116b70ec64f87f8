//! Volumes that are poured, and are no size of a pot: "it gets 4 litres every other day".

use super::{Found, Hit, Named};
use crate::quantity::{UnitOf, Written};
use crate::script::Text;
use std::ops::Range;

impl Found {
    /// Volumes that a bed is given, told by a verb for giving or a rhythm beside them.
    pub(super) fn given_volumes(&self, text: &Text) -> Vec<Written> {
        let volumes = self.quantities.said.iter().filter(|said| said.written.unit.measures() == UnitOf::Volume);
        // "4 bags 25 L each": so large is each of them.
        let of_bags = |span: &Range<usize>| {
            let kind = |hit: &Hit<Named>| matches!(hit.meaning, Named::BedKind(_)) && hit.span.end == span.start;
            self.names.iter().any(kind)
        };
        let given = volumes.filter(|said| is_given(text, &said.span) && !of_bags(&said.span));
        given.map(|said| said.written).collect()
    }
}

fn is_given(text: &Text, volume: &Range<usize>) -> bool {
    /// So many tokens may stand between the verb and what is given, and between that and its rhythm.
    const BEFORE: usize = 3;
    const AFTER: usize = 3;
    const GIVES: [&str; 14] = [
        "gets", "get", "give", "giving", "gave", "given", "pour", "pouring", "poured", "drinks", "takes", "roz",
        "rozana", "daily",
    ];
    const EACH_TIME: [&str; 11] =
        ["day", "morning", "evening", "night", "noon", "afternoon", "time", "turn", "week", "watering", "other"];
    const RHYTHM: [&str; 29] = [
        "every",
        "daily",
        "day",
        "each",
        "morning",
        "evening",
        "roz",
        "roj",
        "rozana",
        "din",
        "subah",
        "sham",
        "shaam",
        "deta",
        "deti",
        "dete",
        "dalta",
        "dalti",
        "daalta",
        "daalti",
        "paani",
        "pani",
        "रोज",
        "दिन",
        "देता",
        "देती",
        "देते",
        "डालता",
        "डालती",
    ];
    let stops = |at: &usize| !matches!(text.normal(*at), "," | "." | "?" | ";" | "।" | "!");
    let before = (volume.start.saturating_sub(BEFORE)..volume.start).rev().take_while(stops);
    let after = (volume.end..volume.end + AFTER).take_while(stops);
    // "A 20 L bag every day": what is measured is the bag.
    let of_a_vessel =
        matches!(text.normal(volume.end), "bag" | "pot" | "tub" | "drum" | "growbag" | "grow" | "bags" | "pots")
            || matches!(text.normal(volume.end), "ka" | "ke" | "wala" | "wale" | "का" | "के" | "वाला" | "वाले");
    let gives = before.into_iter().any(|at| GIVES.contains(&text.normal(at)));
    // "12 bags of 20 L each": a rhythm has its time behind it, "each evening".
    let each = |at: usize| text.normal(at) == "each" && !EACH_TIME.contains(&text.normal(at + 1));
    !of_a_vessel && (gives || after.into_iter().any(|at| RHYTHM.contains(&text.normal(at)) && !each(at)))
}
