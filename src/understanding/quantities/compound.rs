//! Amounts said in more than one piece: `1 kg 200 g`, `a kilo and a half`, `one fifty grams`, `ek pav`.

use super::{Item, Of};
use crate::knowledge::{Sign, Words};
use crate::quantity::{Unit, UnitOf};
use crate::script::Text;

/// Puts the pieces of one amount together.
pub(super) fn put_together(text: &Text, words: &Words, items: &mut Vec<Item>) {
    for item in items.iter_mut() {
        quarters(text, item);
    }
    halves(text, words, items);
    let mut whole: Vec<Item> = Vec::with_capacity(items.len());
    let mut joined = false;
    for item in items.drain(..) {
        let sum = whole.last().and_then(|before| {
            hundreds(text, before, &item)
                .or_else(|| small_beside_large(text, before, &item))
                .or_else(|| feet_and_inches(text, words, (before, joined), &item))
        });
        match (sum, whole.last_mut()) {
            (Some((value, unit)), Some(before)) => {
                joined |= unit.measures() == UnitOf::Length;
                before.value = value;
                before.of = Some(Of::Unit(unit));
                before.span.end = item.span.end;
                before.number.end = item.number.end;
                before.weak = false;
            }
            _ => whole.push(item),
        }
    }
    *items = whole;
}

/// "Ek pav", "teen pav": quarters of a kilogram, where no unit follows; "pav" alone only in "pav bhar".
fn quarters(text: &Text, item: &mut Item) {
    const GRAMS: f64 = 1000.0;
    let last = item.number.end.saturating_sub(1);
    let pav = matches!(text.normal(last), "pav" | "paav" | "पाव");
    let full = matches!(text.normal(item.number.end), "bhar" | "भर");
    if item.of.is_none() && pav && (item.number.len() > 1 || full) {
        item.of = Some(Of::Unit(Unit::Gram));
        item.value *= GRAMS;
        item.span.end += usize::from(full);
        item.weak = false;
    }
}

/// "A kilo and a half": half of the same, unless it is half of something else.
fn halves(text: &Text, words: &Words, items: &mut Vec<Item>) {
    for item in items.iter_mut() {
        let end = item.span.end;
        let after = [text.normal(end), text.normal(end + 1), text.normal(end + 2)];
        let (part, length) = match after {
            ["and" | "n", "a", "half"] => (0.5, 3),
            ["and" | "n", "a", "quarter"] => (0.25, 3),
            ["and" | "n", "half", next] if !matches!(next, "a" | "an" | "the" | "of") => (0.5, 2),
            _ => continue,
        };
        let counted = matches!(item.of, Some(Of::Unit(unit)) if unit.measures() != UnitOf::Other);
        let ends =
            words.units.at(text, end + length).is_none() && words.sign(Sign::Thing, text, end + length).is_none();
        if counted && ends && item.span.end > item.number.end {
            item.value += part;
            item.span.end = end + length;
        }
    }
    let taken: Vec<_> = items.iter().filter(|item| item.of.is_some()).map(|item| item.span.clone()).collect();
    items.retain(|item| item.of.is_some() || !taken.iter().any(|span| span.contains(&item.span.start)));
}

/// "Two fifty grams": two hundred and fifty, of what is weighed and poured in small measures.
fn hundreds(text: &Text, before: &Item, item: &Item) -> Option<(f64, Unit)> {
    let gap = before.span.end..item.number.start;
    let close = gap.is_empty() || gap.len() == 1 && text.normal(gap.start) == "-";
    let digit = before.worded && before.of.is_none() && before.number.len() == 1 && before.value.fract() == 0.0;
    let below = item.worded && (10.0..100.0).contains(&item.value);
    match item.of {
        Some(Of::Unit(unit @ (Unit::Gram | Unit::Millilitre)))
            if close && digit && below && (1.0..10.0).contains(&before.value) =>
        {
            Some((before.value.mul_add(100.0, item.value), unit))
        }
        _ => None,
    }
}

/// "1 kg 200 g", "one kilo two hundred grams": one weight. What stands after a joining word is the same amount only
/// before its "of".
fn small_beside_large(text: &Text, before: &Item, item: &Item) -> Option<(f64, Unit)> {
    /// Millilitres beside a litre are a strength where they are few.
    const LEAST: f64 = 25.0;
    const LEAST_ML: f64 = 100.0;
    let gap = before.span.end..item.number.start;
    let joins =
        gap.len() == 1 && matches!(text.normal(gap.start), "and" | "&" | "n") && text.normal(item.span.end) == "of";
    if !(gap.is_empty() || joins) || before.value.fract() != 0.0 || item.value >= 1000.0 {
        return None;
    }
    match (before.of?, item.of?) {
        (Of::Unit(Unit::Kilogram), Of::Unit(Unit::Gram)) if item.value >= LEAST => {
            Some((before.value + item.value / 1000.0, Unit::Kilogram))
        }
        (Of::Unit(Unit::Litre), Of::Unit(Unit::Millilitre)) if item.value >= LEAST_ML => {
            Some((before.value + item.value / 1000.0, Unit::Litre))
        }
        _ => None,
    }
}

/// "4 ft 6 in x 3 ft", `5'6" x 2'`: one side. In "4 x 3 ft 10 in deep" the inches are another, and `4'2"` alone may be.
fn feet_and_inches(text: &Text, words: &Words, (before, joined): (&Item, bool), item: &Item) -> Option<(f64, Unit)> {
    let adjoins = before.span.end == item.number.start && item.value < 12.0;
    let units = before.of == Some(Of::Unit(Unit::Foot)) && item.of == Some(Of::Unit(Unit::Inch));
    if !(adjoins && units) {
        return None;
    }
    let after = item.span.end;
    let next = |sign| words.sign(sign, text, after).is_some();
    let times_before =
        before.number.start.checked_sub(1).is_some_and(|at| words.sign(Sign::Times, text, at) == Some(1));
    let quoted = text.normal(before.span.end.saturating_sub(1)) == "'";
    let one_side = next(Sign::Times)
        || times_before && joined && !next(Sign::Depth)
        || !times_before && (quoted && next(Sign::Depth) || next(Sign::Length) || next(Sign::Width));
    let feet = before.value + item.value / 12.0;
    // Feet where they come out in quarters, else inches.
    let quarters = (feet * 4.0).fract() == 0.0;
    one_side.then_some(if quarters { (feet, Unit::Foot) } else { (feet * 12.0, Unit::Inch) })
}

/// "A third of a kilo" is no kilo.
fn is_part(word: &str) -> bool {
    matches!(
        word,
        "half" | "third" | "thirds" | "quarter" | "quarters" | "fourth" | "fourths" | "part" | "most" | "bit"
    )
}

/// "An inch down", "a kilo of tomatoes": the article stands for one of a length or weight. (A litre after an article is
/// mostly the litre of a strength.)
pub(super) fn articles(text: &Text, words: &Words, items: &[Item]) -> Vec<Item> {
    let free = |at: usize| items.iter().all(|item| !(item.span.start..item.span.end).contains(&at));
    (0..text.tokens.len())
        .filter(|at| matches!(text.normal(*at), "a" | "an") && free(*at) && free(*at + 1))
        .filter_map(|at| {
            let (unit, length) = words.units.at(text, at + 1)?;
            let worded = text.tokens.get(at + 1).is_some_and(|token| token.normal.chars().count() > 2);
            let meant = worded && matches!(unit.measures(), UnitOf::Length | UnitOf::Mass);
            let per = at.checked_sub(1).is_some_and(|before| {
                let part = text.normal(before) == "of" && before > 0 && is_part(text.normal(before - 1));
                matches!(text.normal(before), "times" | "many" | "per" | "half")
                    || words.units.at(text, before).is_some()
                    || part
            });
            (meant && !per).then(|| Item {
                value: 1.0,
                number: at..at + 1,
                span: at..at + 1 + length,
                of: Some(Of::Unit(unit)),
                weak: true,
                worded: true,
                times: false,
                between: false,
            })
        })
        .collect()
}
