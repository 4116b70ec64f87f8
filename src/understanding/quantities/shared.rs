//! Units that one number gives to another.

use super::{Item, Of, is_length};
use crate::knowledge::{Sign, Words};
use crate::quantity::{Unit, UnitOf};
use crate::script::Text;

/// Gives joined numbers without a unit that of a neighbour: `4 x 2 ft`, `4 ft x 2 x 8 in`, `2-3 ft`.
pub(super) fn units(items: &mut [Item]) {
    for place in 1..items.len() {
        let Some([before, item]) = items.get(place - 1..=place) else { continue };
        let known_after = item.times && items.get(place + 1).is_some_and(|after| is_length(after.of));
        // A number far above its neighbour is in the smaller unit, which follows.
        let fits = !known_after || item.value <= 5.0 * before.value;
        if before.times && item.of.is_none() && is_length(before.of) && fits {
            let of = before.of;
            if let Some(item) = items.get_mut(place) {
                item.of = of;
            }
        }
    }
    for place in (1..items.len()).rev() {
        let Some([before, item]) = items.get(place - 1..=place) else { continue };
        let shares =
            (before.times && is_length(item.of)) || (before.between && before.value <= item.value && !before.weak);
        if before.of.is_none() && item.of.is_some() && shares {
            let of = item.of;
            if let Some(before) = items.get_mut(place - 1) {
                before.of = of;
            }
        }
    }
}

/// Gives a size without any unit that of the other measures of its message: `four by two, one foot deep`, `4x2 box 10
/// in deep` (feet: a box of so few inches has no depth of ten), `120 x 60 cm, 30 deep`.
pub(super) fn across(text: &Text, words: &Words, items: &mut [Item]) {
    /// A side of more feet than this is no side of a box (judgement).
    const LONGEST_FT: f64 = 15.0;
    let unit_of = |item: &Item| match item.of {
        Some(Of::Unit(unit)) if unit.measures() == UnitOf::Length => Some(unit),
        _ => None,
    };
    let units: Vec<Unit> = items.iter().filter_map(unit_of).collect();
    let Some(&unit) = units.iter().find(|unit| **unit != Unit::Inch).or_else(|| units.first()) else { return };
    let in_size: Vec<bool> = (0..items.len())
        .map(|place| {
            let joined = |place: Option<usize>| place.and_then(|place| items.get(place)).is_some_and(|item| item.times);
            joined(Some(place)) || joined(place.checked_sub(1))
        })
        .collect();
    for (item, in_size) in items.iter_mut().zip(in_size) {
        if item.of.is_some() {
            continue;
        }
        if in_size {
            let of_inches = unit == Unit::Inch && item.value <= LONGEST_FT;
            item.of = Some(Of::Unit(if of_inches { Unit::Foot } else { unit }));
        } else if words.sign(Sign::Depth, text, item.span.end).is_some() {
            item.of = Some(Of::Unit(unit));
        }
    }
}

/// Gives a side whose unit is said with another side that one: `length 5 width 2 ft`, `lambai 5 fut chaudai 2`.
pub(super) fn sides(text: &Text, words: &Words, items: &mut [Item]) {
    /// Sides of more feet than this are no sides of a box, and no box is so many feet deep (judgement).
    const LONGEST_FT: f64 = 15.0;
    const DEEPEST_FT: f64 = 3.0;
    const SIDES: [Sign; 3] = [Sign::Length, Sign::Width, Sign::Depth];
    let side = |at: usize| SIDES.into_iter().find(|sign| words.sign(*sign, text, at).is_some());
    let before = |item: &Item| side(item.span.start.checked_sub(1)?);
    // Where the words stand before their numbers, the first of them stands before the first number that has one.
    let first = (0..text.tokens.len()).find(|at| matches!(side(*at), Some(Sign::Length | Sign::Width)));
    let leads = |item: &Item| first.is_some_and(|at| at < item.span.start) && before(item).is_some();
    let of = |item: &Item| if leads(item) { before(item) } else { side(item.span.end) };
    let sided: Vec<Option<Sign>> = items.iter().map(of).collect();
    let known: Vec<(usize, Sign, Unit)> = (0..items.len())
        .filter_map(|place| match (sided.get(place).copied().flatten()?, items.get(place)?.of) {
            (sign, Some(Of::Unit(unit))) if unit.measures() == UnitOf::Length => Some((place, sign, unit)),
            _ => None,
        })
        .collect();
    for place in 0..items.len() {
        let Some(sign) = sided.get(place).copied().flatten() else { continue };
        let Some(item) = items.get_mut(place).filter(|item| item.of.is_none() && !item.times) else { continue };
        let flat = |known: &&(usize, Sign, Unit)| known.1 != Sign::Depth;
        let after = known.iter().filter(flat).find(|known| known.0 > place);
        let Some((_, of, unit)) = after.or_else(|| known.iter().rfind(flat)).or(known.first()) else { continue };
        let unit = match (unit, sign, of) {
            (Unit::Foot, Sign::Depth, _) if item.value > DEEPEST_FT => Unit::Inch,
            (Unit::Inch, Sign::Length | Sign::Width, Sign::Depth) if item.value <= LONGEST_FT => Unit::Foot,
            _ => *unit,
        };
        item.of = Some(Of::Unit(unit));
    }
}

/// "35, 50 and 90 percent", "50 percent chalegi ya 35": all of them are.
pub(super) fn percent(text: &Text, items: &mut [Item]) {
    /// So many words on, another is offered.
    const FURTHEST: usize = 3;
    for place in 1..items.len() {
        let Some([before, item]) = items.get(place - 1..=place) else { continue };
        let between = before.span.end..item.number.start;
        let offered = between.end.checked_sub(1).is_some_and(|at| matches!(text.normal(at), "or" | "ya" | "या"));
        let percent = before.of == Some(Of::Unit(Unit::Percent)) && (10.0..=95.0).contains(&item.value);
        if item.of.is_none() && offered && percent && (1..=FURTHEST).contains(&between.len()) {
            let of = before.of;
            if let Some(item) = items.get_mut(place) {
                item.of = of;
            }
        }
    }
    for place in (1..items.len()).rev() {
        let Some([before, item]) = items.get(place - 1..=place) else { continue };
        let between = before.span.end..item.number.start;
        let joins = |at| matches!(text.normal(at), "," | "and" | "or" | "/" | "n" | "&" | "aur" | "ya" | "और" | "या");
        let listed = !between.is_empty() && between.len() <= 2 && between.clone().all(joins);
        let percent = item.of == Some(Of::Unit(Unit::Percent)) && (1.0..=100.0).contains(&before.value);
        if before.of.is_none() && listed && percent {
            let of = item.of;
            if let Some(before) = items.get_mut(place - 1) {
                before.of = of;
            }
        }
    }
}
