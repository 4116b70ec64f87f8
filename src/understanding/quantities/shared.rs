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

/// "35, 50 and 90 percent": all of them are.
pub(super) fn percent(text: &Text, items: &mut [Item]) {
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
