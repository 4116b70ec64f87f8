//! "A 4 by 2 box": sides without a unit, of a box or a tray.

use super::{Found, Measured, Named, Reading, Text};
use crate::garden::BedKind;
use crate::quantity::{Unit, Written};
use crate::script::numbers;

/// Boxes are spoken of in feet where no unit is said (common practice, no source); the answer names the size with it.
const USUAL: Unit = Unit::Foot;

/// Sides in feet of a box that may stand on a roof (judgement): "30 by 30" is none.
const SIDES_FT: std::ops::RangeInclusive<f64> = 1.0..=15.0;

/// Bags are sold by inches: "a 12x15 grow bag" (common practice, no source).
const BAG_IN: std::ops::RangeInclusive<f64> = 6.0..=30.0;

/// "120 x 60 x 30": too much for feet and for inches alike, and a box in centimetres (judgement).
fn are_centimetres(values: &[f64]) -> bool {
    let [length, width, depth] = values else { return false };
    (100.0..=300.0).contains(length) && (40.0..=150.0).contains(width) && (15.0..=60.0).contains(depth)
}

/// The word for the box stands so near to its sides, in tokens.
const NEAR: usize = 3;

impl Found {
    /// "What if it is only 6", "and at 8?" of a box whose depth was said: a depth in the unit of that one, and no number of
    /// boxes.
    pub(super) fn with_bare_depth(&self, text: &Text, reading: &mut Reading, before: &Reading) {
        /// Depths of what stands on a roof, in metres (judgement).
        const DEPTHS_M: std::ops::RangeInclusive<f64> = 0.07..=0.6;
        const OF_ONE: [&str; 17] = [
            "only",
            "with",
            "it",
            "its",
            "it's",
            "deep",
            "at",
            "just",
            "gehra",
            "gehri",
            "gahra",
            "ho",
            "hua",
            "hai",
            "हो",
            "गहरा",
            "सिर्फ",
        ];
        let numbers = numbers(text);
        let (Some(old), [number]) = (before.measures.first().and_then(|old| old.depth), numbers.as_slice()) else {
            return;
        };
        // "And 14?" counts no boxes either; "for 3?" and "and 3?" may.
        const MOST: f64 = 5.0;
        let counted = (0..text.tokens.len()).any(|at| matches!(text.normal(at), "for" | "ke" | "such" | "like" | "के"));
        let of_one = (0..text.tokens.len()).any(|at| OF_ONE.contains(&text.normal(at)));
        let of_one = of_one || number.value > MOST && !counted;
        let ends = !text
            .tokens
            .get(number.span.end)
            .is_some_and(|next| next.is_word() && !OF_ONE.contains(&next.normal.as_str()));
        let depth = Written { value: number.value, unit: old.unit };
        let fits = depth.length().is_some_and(|length| DEPTHS_M.contains(&length.as_metres()));
        let bare = reading.measures.is_empty() && reading.quantities.is_empty() && reading.days.is_empty();
        if of_one && ends && fits && bare && self.names.is_empty() {
            reading.quantities.push(depth);
            reading.measures.push(Measured { depth: Some(depth), ..Measured::default() });
            reading.count = None;
        }
    }

    /// The sides of a box that were said without a unit, in feet. A message with any unit of length says its own.
    pub(super) fn with_bare_box(&self, reading: &mut Reading) {
        let [bare] = self.quantities.bare.as_slice() else { return };
        let beside = |at: usize| at + NEAR >= bare.span.start && at <= bare.span.end + NEAR;
        let of_box = |named: &Named| matches!(named, Named::BedKind(BedKind::Box | BedKind::Tray));
        let is_box = self.names.iter().any(|hit| of_box(&hit.meaning) && beside(hit.span.start));
        let fits = bare.values.len() <= 3 && bare.values.iter().all(|value| SIDES_FT.contains(value));
        let centimetres = is_box && are_centimetres(&bare.values);
        let bag = |named: &Named| *named == Named::BedKind(BedKind::Bag);
        let is_bag = self.names.iter().any(|hit| bag(&hit.meaning) && beside(hit.span.start));
        let of_bag =
            is_bag && !is_box && bare.values.len() == 2 && bare.values.iter().all(|value| BAG_IN.contains(value));
        let (is_box, fits) = (is_box || of_bag, fits || centimetres || of_bag);
        if !is_box || !fits || !reading.measures.is_empty() {
            return;
        }
        let unit = if centimetres { Unit::Centimetre } else { USUAL };
        let unit = if of_bag { Unit::Inch } else { unit };
        let side = |place: usize| bare.values.get(place).map(|value| Written { value: *value, unit });
        let measured = Measured { length: side(0), width: side(1), depth: side(2), diameter: None };
        reading.quantities.extend([measured.length, measured.width, measured.depth].into_iter().flatten());
        reading.measures.push(measured);
    }
}
