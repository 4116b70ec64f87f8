//! Vessels that water is carried in: "two mugs", "in mugs", "my mug holds 700 ml".

use super::deeds::counted;
use super::{Found, Told};
use crate::quantity::{UnitOf, Written};
use crate::script::{Text, numbers};
use crate::understanding::reading::InVessels;
use std::ops::Range;

impl Found {
    /// The first vessel that is counted, asked for, or told how much it holds.
    pub(super) fn vessels(&self, text: &Text) -> Option<InVessels> {
        // "Can" is a verb more often; as a vessel it is counted or wanted in so many words.
        // "Bottle" in the name of a gourd is none.
        let meant = |span: &Range<usize>| {
            // "Ke" sounds as the Hindi for can.
            let particle = matches!(text.normal(span.start), "ke" | "k" | "kai" | "kae" | "के" | "कै" | "कई");
            let named = self.names.iter().any(|hit| hit.span.contains(&span.start) && hit.span.len() > 1);
            !particle && !named && (text.normal(span.start) != "can" || counted(text, span.start))
        };
        let spans = || {
            self.told.iter().filter(|hit| hit.meaning == Told::Vessel && meant(&hit.span)).map(|hit| hit.span.clone())
        };
        let alone = self.names.is_empty();
        let counted = spans().find(|span| self.many(text, span).is_some());
        let vessel = counted.or_else(|| spans().find(|span| wanted(text, span, alone))).or_else(|| spans().next())?;
        let count = self.many(text, &vessel);
        let holds = spans().find_map(|span| self.one_holds(text, &span));
        let word = text.tokens.get(vessel.start)?.text.clone();
        let wanted = count.is_none() && spans().any(|span| wanted(text, &span, alone));
        Some(InVessels { word, count, holds, wanted })
    }

    /// How many: the number before it, what each holds or a word between: "two small mugs", "two 10 L cans".
    fn many(&self, text: &Text, vessel: &Range<usize>) -> Option<f64> {
        const BETWEEN: [&str; 14] = [
            "small",
            "big",
            "full",
            "plastic",
            "watering",
            "of",
            "bade",
            "chhote",
            "bhar",
            "bhare",
            "बडे",
            "छोटे",
            "भर",
            "-",
        ];
        let mut start = vessel.start;
        while start > 0 && BETWEEN.contains(&text.normal(start - 1)) {
            start -= 1;
        }
        if let Some(said) = self.quantities.said.iter().find(|said| said.span.end == start) {
            start = said.span.start;
        }
        let number = numbers(text).into_iter().find(|number| number.span.end == start).map(|number| number.value);
        let article = || start.checked_sub(1).is_some_and(|at| matches!(text.normal(at), "a" | "an"));
        number.or_else(|| article().then_some(1.0))
    }

    /// What one such vessel holds: "mug of 700 ml", "700 ml ka mug".
    fn one_holds(&self, text: &Text, vessel: &Range<usize>) -> Option<Written> {
        const TELLS: [&str; 14] =
            ["of", "is", "holds", "takes", "has", "about", "around", "ka", "ke", "wala", "wale", "का", "के", "में"];
        let joined = |range: Range<usize>| range.len() <= 3 && range.clone().all(|at| TELLS.contains(&text.normal(at)));
        let said = self.quantities.said.iter().find(|said| {
            let before = said.span.end <= vessel.start && joined(said.span.end..vessel.start);
            let of_it = matches!(text.normal(said.span.end), "ka" | "ke" | "का" | "के");
            let after = vessel.end < said.span.start && joined(vessel.end..said.span.start)
                || vessel.end == said.span.start && of_it;
            said.written.unit.measures() == UnitOf::Volume && (before || after)
        });
        said.map(|said| said.written)
    }
}

/// "How many mugs", "mugs per day"; "in mugs", "मग में" where no plant is named that may stand in one.
fn wanted(text: &Text, vessel: &Range<usize>, alone: bool) -> bool {
    const MANY: [&str; 6] = ["many", "kitne", "kitni", "ktne", "कितने", "कितनी"];
    const IN: [&str; 3] = ["me", "mein", "में"];
    let before = vessel.start.checked_sub(1).map_or("", |at| text.normal(at));
    let after = text.normal(vessel.end);
    MANY.contains(&before) || after == "per" || alone && (before == "in" || IN.contains(&after))
}
