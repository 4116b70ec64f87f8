//! Work that only describes the plant a message is about: "the tomatoes we planted in sacks have no fruit".

use super::Named;
use super::claims::Claims;
use crate::script::Language;
use std::ops::Range;

impl Claims<'_> {
    /// The verb stands with a plant as its attribute, and the clause goes on to say what the plant does or lacks.
    pub(super) fn only_describes(&self, span: &Range<usize>) -> bool {
        if self.text.language == Language::En { self.follows_its_plant(span) } else { self.precedes_its_plant(span) }
    }

    /// "Boriyon me lagaye hue tamatar me phal nahi aaya": the participle, then the plant, then what binds the plant to
    /// another verb. "Lagaye tamatar ke paudhe" tells the planting.
    fn precedes_its_plant(&self, span: &Range<usize>) -> bool {
        const BOUND: [&str; 8] = ["me", "mein", "mai", "par", "pe", "में", "पर", "पे"];
        const BEING: [&str; 8] = ["hue", "hui", "hua", "huye", "हुए", "हुई", "हुआ", "huey"];
        // "Spray kiya tamatar me" puts the place behind the verb that tells it: a plant is described by its planting alone.
        const PLANTED: [&str; 8] = ["lagaye", "lagaya", "lagayi", "lagai", "लगाए", "लगाया", "लगाई", "लगाये"];
        let verb = span.end.checked_sub(1).map_or("", |at| self.text.normal(at));
        let from = span.end + usize::from(BEING.contains(&self.text.normal(span.end)));
        let plant = self.names.iter().find(|hit| hit.span.start == from && matches!(hit.meaning, Named::Crop(_)));
        let bound = plant.is_some_and(|plant| {
            let goes_on = self.text.tokens.get(plant.span.end + 1).is_some_and(|token| token.is_word());
            BOUND.contains(&self.text.normal(plant.span.end)) && goes_on
        });
        PLANTED.contains(&verb) && bound
    }

    /// "The tomatoes (that) we planted in sacks have no fruit".
    fn follows_its_plant(&self, span: &Range<usize>) -> bool {
        const WHO: [&str; 8] = ["we", "i", "you", "he", "she", "they", "mali", "maid"];
        const LACKS: [&str; 17] = [
            "no", "not", "never", "none", "don't", "doesn't", "won't", "isn't", "aren't", "haven't", "hasn't", "dont",
            "doesnt", "wont", "isnt", "havent", "hasnt",
        ];
        let before = |back: usize| span.start.checked_sub(back).map_or("", |at| self.text.normal(at));
        let who = WHO.contains(&before(1));
        let that = usize::from(who && matches!(before(2), "that" | "which"));
        let plant = span.start.checked_sub(1 + that).is_some_and(|end| {
            self.names.iter().any(|hit| hit.span.end == end && matches!(hit.meaning, Named::Crop(_)))
        });
        let clause = (span.end..self.text.tokens.len())
            .take_while(|at| !matches!(self.text.normal(*at), "," | "." | "?" | "!" | ";" | "and" | "but" | "so"));
        who && plant && clause.into_iter().any(|at| LACKS.contains(&self.text.normal(at)))
    }
}
