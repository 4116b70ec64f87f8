//! Quantities, counts, durations and temperatures said in a text.

mod compound;
mod shared;

use super::calendar::{close, numeric_at};
use super::dimensions::{self, Piece};
use crate::knowledge::{DayWord, Sign, TimeUnit, Words};
use crate::quantity::{Unit, UnitOf, Written};
use crate::script::{Language, Number, Script, Text, numbers};
use std::ops::Range;

pub use super::dimensions::Dimensions;

/// Everything measured that a text says. All spans are ranges of token indices.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Quantities {
    /// Each length, area, volume, weight, percent and strength, in its own unit, in order.
    pub said: Vec<Said>,
    pub dimensions: Vec<Dimensions>,
    /// Sizes said without any unit (`4x2 box`): what the numbers are of has to be asked.
    pub bare: Vec<Bare>,
    pub counts: Vec<Count>,
    /// Also those that a day is counted by (`3 weeks ago`).
    pub durations: Vec<Duration>,
    pub temperatures: Vec<Degrees>,
}

/// One quantity, as said.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    pub written: Written,
    pub span: Range<usize>,
}

/// Numbers joined by `x` or `by`, without a unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Bare {
    pub values: Vec<f64>,
    pub span: Range<usize>,
}

/// A bare number of things.
#[derive(Debug, Clone, PartialEq)]
pub struct Count {
    pub value: f64,
    pub span: Range<usize>,
    /// Index of the token that names what is counted, if one follows.
    pub of: Option<usize>,
}

/// A time that something takes.
#[derive(Debug, Clone, PartialEq)]
pub struct Duration {
    pub value: f64,
    pub unit: TimeUnit,
    pub span: Range<usize>,
}

/// A temperature, degrees Celsius.
#[derive(Debug, Clone, PartialEq)]
pub struct Degrees {
    pub celsius: f64,
    pub span: Range<usize>,
}

/// What a number is of.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Of {
    Unit(Unit),
    Time(TimeUnit),
    Celsius,
    Fahrenheit,
}

/// A number and what follows it.
struct Item {
    value: f64,
    /// The number alone.
    number: Range<usize>,
    /// The number with its unit.
    span: Range<usize>,
    of: Option<Of>,
    weak: bool,
    worded: bool,
    /// Joined to the next number by a times sign.
    times: bool,
    /// Joined to the next number as the ends of a range.
    between: bool,
}

/// Reads all quantities of a text.
#[must_use]
pub fn read(text: &Text, words: &Words) -> Quantities {
    let mut items: Vec<Item> = Vec::new();
    for number in with_articles(text, words) {
        // A number inside a unit belongs to it: "ml per 1 litre".
        if items.last().is_none_or(|before| before.span.end <= number.span.start) {
            items.push(item(text, words, &number));
        }
    }
    items.extend(compound::articles(text, words, &items));
    items.sort_by_key(|item| item.span.start);
    compound::put_together(text, words, &mut items);
    join(text, words, &mut items);
    shared::units(&mut items);
    shared::sides(text, words, &mut items);
    shared::across(text, words, &mut items);
    shared::percent(text, &mut items);
    let mut found = Quantities::default();
    for item in &items {
        match item.of {
            Some(Of::Unit(unit)) => {
                found.said.push(Said { written: Written { value: item.value, unit }, span: item.span.clone() });
            }
            Some(Of::Time(unit)) => {
                found.durations.push(Duration { value: item.value, unit, span: item.span.clone() });
            }
            Some(Of::Celsius) => found.temperatures.push(Degrees { celsius: item.value, span: item.span.clone() }),
            Some(Of::Fahrenheit) => {
                let celsius = (item.value - 32.0) * 5.0 / 9.0;
                found.temperatures.push(Degrees { celsius, span: item.span.clone() });
            }
            None => {}
        }
    }
    found.dimensions = dimensions::read(text, words, &pieces(&items));
    found.bare = bare(&items);
    found.counts = (0..items.len()).filter_map(|place| count(text, words, &items, place)).collect();
    found
}

/// The numbers of a text, and the article that stands for one in "a foot deep".
fn with_articles(text: &Text, words: &Words) -> Vec<Number> {
    let mut all = numbers(text);
    let sides = [Sign::Depth, Sign::Width, Sign::Length];
    for at in 0..text.tokens.len() {
        let unit = || {
            let (unit, length) = words.units.at(text, at + 1)?;
            let side = sides.iter().any(|sign| words.sign(*sign, text, at + 1 + length).is_some());
            (unit.measures() == UnitOf::Length && side).then_some(())
        };
        let taken = all.iter().any(|number| number.span.contains(&at));
        if matches!(text.normal(at), "a" | "an") && !taken && unit().is_some() {
            all.push(Number { value: 1.0, span: at..at + 1, weak: false, worded: true });
        }
    }
    all.sort_by_key(|number| number.span.start);
    all
}

/// The number with the unit after it.
fn item(text: &Text, words: &Words, number: &Number) -> Item {
    let found = of(text, words, number);
    let end = found.map_or(number.span.end, |(_, end)| end);
    Item {
        value: number.value,
        number: number.span.clone(),
        span: number.span.start..end,
        of: found.map(|(of, _)| of),
        weak: number.weak,
        worded: number.worded,
        times: false,
        between: false,
    }
}

/// What the number is of, and where its unit ends; a dash may stand between (`12-inch`).
fn of(text: &Text, words: &Words, number: &Number) -> Option<(Of, usize)> {
    let end = number.span.end;
    let dash = usize::from(text.normal(end) == "-" && close(text, end.checked_sub(1)?, 2));
    let at = end + dash;
    let unit = words.units.at(text, at).filter(|(unit, _)| is_meant(text, words, at, *unit, number));
    if let Some((unit, length)) = unit {
        return Some((Of::Unit(unit), at + length));
    }
    if let Some(length) = words.sign(Sign::Fahrenheit, text, at) {
        return Some((Of::Fahrenheit, at + length));
    }
    if let Some(length) = words.sign(Sign::Celsius, text, at) {
        return Some((Of::Celsius, at + length));
    }
    let start = number.span.start;
    if (1..=2).any(|back| start >= back && words.sign(Sign::Heat, text, start - back) == Some(back)) {
        return Some((Of::Celsius, number.span.end));
    }
    let (unit, length) = words.spans.at(text, at)?;
    // In romanised Hindi a lone h is "is".
    let lone_h = text.normal(at) == "h" && text.language == Language::HiLatn && !close(text, at - 1, 1);
    (!lone_h).then_some((Of::Time(unit), at + length))
}

/// Whether a word that can be a unit is one here: `in`, `'` and `"` are other things too.
fn is_meant(text: &Text, words: &Words, at: usize, unit: Unit, number: &Number) -> bool {
    let touching = at > 0 && close(text, at - 1, 1);
    match (text.normal(at), unit) {
        // The last side of "5 ft x 3 ft x 10 in box".
        ("in", Unit::Inch)
            if number.span.start > 0 && words.sign(Sign::Times, text, number.span.start - 1) == Some(1) =>
        {
            true
        }
        ("in", Unit::Inch) => {
            let next = text.tokens.get(at + 1);
            let ends = next.is_none_or(|next| !next.is_word());
            let followed = [Sign::Depth, Sign::Width, Sign::Length, Sign::Diameter, Sign::Round, Sign::Times]
                .iter()
                .any(|sign| words.sign(*sign, text, at + 1).is_some());
            touching || (!number.worded && (ends || followed || words.sign(Sign::NotInch, text, at + 1).is_none()))
        }
        ("'", Unit::Foot) => touching,
        // "6 fit by 4 fit" and "unchai 1 fit" are told of a box; "3 fit honge" asks how many find room.
        ("fit", Unit::Foot) => {
            const SIDES: [&str; 8] = ["unchai", "oonchai", "uchai", "lambai", "chaudai", "gehrai", "gahrai", "gehraai"];
            const OF: [&str; 12] =
                ["ka", "ki", "ke", "lamba", "lambi", "chauda", "chaudi", "gehra", "gahra", "gehri", "uncha", "unchi"];
            let before = number.span.start.checked_sub(1).map_or("", |before| text.normal(before));
            let times = |word: &str| matches!(word, "by" | "x" | "*" | "guna");
            let next = text.normal(at + 1);
            let of = text.language != Language::En && (OF.contains(&next) || SIDES.contains(&before));
            times(before) || times(next) || of
        }
        ("\"", Unit::Inch) => {
            // A quote opened before a word closes here.
            let opened = (0..at).filter(|before| text.normal(*before) == "\"").any(|before| {
                before == 0
                    || !close(text, before - 1, 1)
                    || text.tokens.get(before - 1).is_none_or(|t| t.number.is_none())
            });
            touching && !opened
        }
        _ => true,
    }
}

/// Marks which numbers are joined to the next one.
fn join(text: &Text, words: &Words, items: &mut [Item]) {
    for place in 1..items.len() {
        let (Some(end), Some(start)) =
            (items.get(place - 1).map(|item| item.span.end), items.get(place).map(|item| item.number.start))
        else {
            continue;
        };
        let joined = |sign| start > end && words.sign(sign, text, end) == Some(start - end);
        // "5 feet 2 feet": two sides with nothing between; "5 feet 2 inches" is one length.
        let side_by_side = start == end && is_side_beside(items, place);
        let (times, between) = (joined(Sign::Times) || side_by_side, joined(Sign::Between));
        if let Some(item) = items.get_mut(place - 1) {
            item.times = times;
            item.between = between;
        }
    }
}

/// Whether the number there and the one before it are lengths of one unit, the longer first.
fn is_side_beside(items: &[Item], place: usize) -> bool {
    let pair = place.checked_sub(1).and_then(|before| Some((items.get(before)?, items.get(place)?)));
    // "4 x 2 ft 1 ft deep": its sides are said already.
    let in_size = place.checked_sub(2).and_then(|earlier| items.get(earlier)).is_some_and(|earlier| earlier.times);
    !in_size
        && pair.is_some_and(|(before, item)| is_length(item.of) && before.of == item.of && before.value >= item.value)
}

fn is_length(of: Option<Of>) -> bool {
    matches!(of, Some(Of::Unit(unit)) if unit.measures() == UnitOf::Length)
}

/// The lengths, for [`dimensions`].
fn pieces(items: &[Item]) -> Vec<Piece> {
    let before = std::iter::once(false).chain(items.iter().map(|item| item.between));
    items
        .iter()
        .zip(before)
        .filter_map(|(item, after_range)| match item.of {
            // "12-15 inch pot" has no one size.
            Some(Of::Unit(_)) if item.between || after_range => None,
            Some(Of::Unit(unit)) if unit.measures() == UnitOf::Length => {
                Some(Piece { written: Written { value: item.value, unit }, span: item.span.clone(), times: item.times })
            }
            _ => None,
        })
        .collect()
}

fn bare(items: &[Item]) -> Vec<Bare> {
    let mut found: Vec<Bare> = Vec::new();
    let mut goes_on = false;
    for item in items {
        let of_size = item.of.is_none() && (goes_on || item.times);
        match found.last_mut() {
            Some(size) if goes_on && of_size => {
                size.values.push(item.value);
                size.span.end = item.span.end;
            }
            _ if of_size => found.push(Bare { values: vec![item.value], span: item.span.clone() }),
            _ => {}
        }
        goes_on = item.of.is_none() && item.times;
    }
    found.retain(|size| size.values.len() > 1);
    found
}

/// The number there as a count, if it is one: not a size, a day, a clock time, a name or a ratio.
fn count(text: &Text, words: &Words, items: &[Item], place: usize) -> Option<Count> {
    let item = items.get(place)?;
    let (start, end) = (item.number.start, item.span.end);
    let in_size = item.times || place.checked_sub(1).and_then(|before| items.get(before)).is_some_and(|b| b.times);
    if item.of.is_some() || in_size || !is_free(text, words, start, end) {
        return None;
    }
    let mut next = end;
    // Past a size: "six 20 L bags".
    if let Some(after) = items.get(place + 1)
        && after.number.start == next
        && after.of.is_some()
    {
        next = items
            .iter()
            .skip(place + 1)
            .scan(true, |joined, item| {
                let part = *joined;
                *joined = item.times;
                part.then_some(item.span.end)
            })
            .last()
            .unwrap_or(next);
    }
    if words.sign(Sign::Storey, text, next).is_some() {
        return None;
    }
    let thing = (next..next + 2).find(|at| words.sign(Sign::Thing, text, *at).is_some());
    let joins = [Sign::Between, Sign::Through, Sign::Marked].iter().any(|sign| words.sign(*sign, text, next).is_some());
    let word = text.tokens.get(next).is_some_and(|token| token.is_word() && !joins).then_some(next);
    let labelled = start > 0 && words.sign(Sign::Label, text, start - 1).is_some();
    // "one" and "ek" are pronouns and articles as often as counts.
    let article = item.worded && item.value == 1.0;
    if (item.weak || labelled || article) && thing.is_none() {
        return None;
    }
    Some(Count { value: item.value, span: item.number.clone(), of: thing.or(word) })
}

/// Whether a number stands by itself: no day, clock time, ratio, ordinal, or part of a name.
fn is_free(text: &Text, words: &Words, start: usize, end: usize) -> bool {
    let marks = |mark: &str| matches!(mark, ":" | "/" | "." | "#");
    let close_before = start > 0 && close(text, start - 1, 1);
    let letters_before = close_before
        && text.tokens.get(start - 1).is_some_and(|t| matches!(t.script, Script::Latin | Script::Devanagari));
    let marked_before = close_before && start > 1 && marks(text.normal(start - 1));
    let marked_after = close(text, end.saturating_sub(1), 2) && marks(text.normal(end));
    let month = |at: usize| matches!(words.days.at(text, at), Some((DayWord::Month(_), _)));
    let in_day =
        (start.saturating_sub(4)..=start).any(|at| numeric_at(text, at).is_some_and(|(_, length)| at + length > start));
    let clock = matches!(text.normal(end), "am" | "pm" | "baje" | "bje" | "बजे" | "o");
    !(letters_before
        || marked_before
        || marked_after
        || in_day
        || clock
        || month(end)
        || words.sign(Sign::Through, text, end).is_some_and(|length| {
            text.tokens.get(end + length).is_some_and(|token| token.number.is_some()) && month(end + length + 1)
        })
        || (start > 0 && month(start - 1))
        || words.sign(Sign::OfMonth, text, end).is_some())
}
