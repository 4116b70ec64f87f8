//! Which length is the length, the width, the depth or the diameter of a thing.

use crate::knowledge::{Sign, Words};
use crate::quantity::Written;
use crate::script::{Number, Text, numbers};
use std::ops::Range;

/// The measures of one thing: `4 x 2 ft, 8 in deep`, `12 inch pot`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Dimensions {
    pub length: Option<Written>,
    pub width: Option<Written>,
    /// Depth or height.
    pub depth: Option<Written>,
    pub diameter: Option<Written>,
    /// Range of token indices.
    pub span: Range<usize>,
}

/// One length of a text.
pub(super) struct Piece {
    pub written: Written,
    pub span: Range<usize>,
    /// Joined to the next one by a times sign.
    pub times: bool,
}

/// How many tokens may stand between the parts of one size (`4 x 2 ft box, 1 ft deep`).
const PARTS_APART: usize = 3;

/// And where the sides are said and the depth follows.
const DEPTH_APART: usize = 7;

/// Puts the lengths of a text together.
pub(super) fn read(text: &Text, words: &Words, pieces: &[Piece]) -> Vec<Dimensions> {
    let mut found: Vec<Dimensions> = Vec::new();
    let mut rest = pieces;
    let lead = words_lead(text, words, pieces);
    let counted = numbers(text);
    let mut lone: Vec<&Piece> = Vec::new();
    while let Some(first) = rest.first() {
        let joined = rest.iter().take_while(|piece| piece.times).count() + 1;
        let (group, after) = rest.split_at(joined.min(rest.len()));
        rest = after;
        match group {
            [only] if is_square(text, only) => found.push(Dimensions {
                length: Some(only.written),
                width: Some(only.written),
                span: only.span.start..only.span.end + 1,
                ..Dimensions::default()
            }),
            [only] => {
                let taken = found.last().map_or(0, |size| size.span.end);
                let leads = lead || led_in_its_clause(text, words, pieces, only);
                match single(text, words, only, (taken, leads), &counted) {
                    Some(single) => add(text, &mut found, single),
                    None => lone.push(only),
                }
            }
            [length, width, others @ ..] => found.push(Dimensions {
                length: Some(length.written),
                width: Some(width.written),
                depth: others.first().map(|piece| piece.written),
                diameter: None,
                span: first.span.start..others.first().unwrap_or(width).span.end,
            }),
            [] => {}
        }
    }
    fill_length(text, words, &mut found, &lone);
    fill_depth(text, words, &mut found, &lone);
    found
}

/// "2 ft square", "do fut chaukor": as wide as it is long. "Square feet" are an area, and no length stands before them.
fn is_square(text: &Text, piece: &Piece) -> bool {
    const SQUARE: [&str; 9] =
        ["square", "chaukor", "chokor", "chowkor", "chaukaur", "चौकोर", "चौरस", "chauras", "वर्गाकार"];
    const UNITS: [&str; 10] = ["ft", "feet", "foot", "m", "metre", "metres", "meter", "meters", "inch", "inches"];
    let unit = UNITS.contains(&text.normal(piece.span.end + 1));
    SQUARE.contains(&text.normal(piece.span.end)) && !unit
}

/// "Five feet by two feet, nine inches": what ends a size of two sides in a smaller unit is its depth.
fn fill_depth(text: &Text, words: &Words, found: &mut [Dimensions], lone: &[&Piece]) {
    /// A bed is at most so deep beside its shorter side (judgement).
    const DEEPEST: f64 = 1.0;
    let joins = |at: usize| {
        let mark = text.tokens.get(at).is_some_and(|token| !token.is_word());
        mark && !matches!(text.normal(at), "." | "?" | "।" | ";")
            || matches!(text.normal(at), "and" | "with" | "at" | "is" | "aur" | "और")
            || words.sign(Sign::Thing, text, at).is_some()
    };
    let ends = |at: usize| text.tokens.get(at).is_none_or(|token| !token.is_word() && token.number.is_none());
    let metres = |side: Written| side.length().map(|length| length.as_metres());
    for size in found.iter_mut().filter(|size| size.depth.is_none() && size.diameter.is_none()) {
        let (Some(length), Some(width)) = (size.length, size.width) else { continue };
        let near = |piece: &&&Piece| {
            let gap = size.span.end..piece.span.start;
            piece.span.start >= size.span.end && gap.len() <= PARTS_APART && gap.into_iter().all(joins)
        };
        let Some(piece) = lone.iter().find(near) else { continue };
        let smaller = [length, width].iter().all(|side| side.unit != piece.written.unit);
        let shorter = metres(length).into_iter().chain(metres(width)).fold(f64::INFINITY, f64::min);
        let fits = metres(piece.written).is_some_and(|depth| depth <= DEEPEST * shorter);
        if smaller && fits && ends(piece.span.end) {
            size.depth = Some(piece.written);
            size.span.end = piece.span.end;
        }
    }
}

/// "6 ft ki kyari, 3 ft chaudi, 1 ft gehri": what was measured just before the width, and is not shorter, is the length.
fn fill_length(text: &Text, words: &Words, found: &mut [Dimensions], lone: &[&Piece]) {
    const JOINS: [&str; 18] = [
        "of", "a", "an", "the", "is", "and", "with", "hai", "h", "he", "aur", "ek", "है", "और", "एक", "wooden",
        "bamboo", "raised",
    ];
    let joins = |at: usize| {
        text.tokens.get(at).is_some_and(|token| !token.is_word() && !matches!(text.normal(at), "." | "?" | "।" | ";"))
            || JOINS.contains(&text.normal(at))
            || words.sign(Sign::Filler, text, at).is_some()
            || words.sign(Sign::Thing, text, at).is_some()
    };
    let metres = |side: Written| side.length().map(|length| length.as_metres());
    for size in found.iter_mut().filter(|size| size.length.is_none() && size.diameter.is_none()) {
        let Some(width) = size.width else { continue };
        let before = lone.iter().filter(|piece| piece.span.end <= size.span.start);
        let mut near = before.filter(|piece| (piece.span.end..size.span.start).all(joins));
        let Some(piece) = near.next_back() else { continue };
        if metres(piece.written) >= metres(width) {
            size.length = Some(piece.written);
            size.span.start = piece.span.start;
        }
    }
}

/// "Length 5 ft width 3 ft depth 1 ft": each word stands before its measure, and none after the last.
fn words_lead(text: &Text, words: &Words, pieces: &[Piece]) -> bool {
    let sides = [Sign::Depth, Sign::Width, Sign::Length, Sign::Diameter];
    let side_at = |at: usize| sides.iter().any(|sign| words.sign(*sign, text, at).is_some());
    let before = |piece: &Piece| piece.span.start.checked_sub(1).is_some_and(side_at);
    let last_ends = pieces.last().is_some_and(|piece| !side_at(piece.span.end));
    pieces.len() > 1 && last_ends && pieces.iter().all(|piece| !piece.times && before(piece))
}

/// "9 inch gehra, lambai 5 fut chaudai 2 fut": the same within what stands between two stops or commas.
fn led_in_its_clause(text: &Text, words: &Words, pieces: &[Piece], piece: &Piece) -> bool {
    let stop = |at: &usize| matches!(text.normal(*at), "," | "." | ";" | "।" | "?" | "!");
    let start = (0..piece.span.start).rfind(|at| stop(at)).map_or(0, |at| at + 1);
    let end = (piece.span.end..text.tokens.len()).find(stop).unwrap_or(text.tokens.len());
    let within = |other: &&Piece| start <= other.span.start && other.span.end <= end;
    let sides = [Sign::Depth, Sign::Width, Sign::Length, Sign::Diameter];
    let side_at = |at: usize| at >= start && at < end && sides.iter().any(|sign| words.sign(*sign, text, at).is_some());
    let before = |piece: &Piece| piece.span.start.checked_sub(1).is_some_and(side_at);
    let of_clause: Vec<&Piece> = pieces.iter().filter(within).collect();
    let last_ends = of_clause.last().is_some_and(|last| !side_at(last.span.end));
    of_clause.len() > 1 && last_ends && of_clause.iter().all(|piece| !piece.times && before(piece))
}

/// One length with the word that tells what it measures, after it or before it.
fn single(
    text: &Text,
    words: &Words,
    piece: &Piece,
    (taken, leads): (usize, bool),
    counted: &[Number],
) -> Option<Dimensions> {
    let end = piece.span.end;
    let start = piece.span.start;
    let sides = [Sign::Depth, Sign::Width, Sign::Length, Sign::Diameter];
    let after = sides.iter().find_map(|sign| Some((*sign, start..end + words.sign(*sign, text, end)?)));
    let round_after = || {
        let mut at = end;
        for _ in 0..=3 {
            if let Some(length) = words.sign(Sign::Round, text, at) {
                return Some((Sign::Diameter, start..at + length));
            }
            // "12 inch ke chhe gamle": how many may stand between.
            let many =
                counted.iter().find(|number| number.span.start == at && at > end).map(|number| number.span.len());
            at += words.sign(Sign::Filler, text, at).or(many)?;
        }
        None
    };
    let before = || {
        let before = start.checked_sub(1)?;
        let word = if matches!(text.normal(before), ":" | "=" | "of" | "is") { before.checked_sub(1)? } else { before };
        (word >= taken).then_some(())?;
        let sign = sides.iter().find(|sign| words.sign(**sign, text, word).is_some())?;
        Some((*sign, word..end))
    };
    let round_before = || {
        let at = (1..=2)
            .filter_map(|back| start.checked_sub(back))
            .find(|at| words.sign(Sign::Round, text, *at).is_some())?;
        (at >= taken).then_some((Sign::Diameter, at..end))
    };
    // "12 inch round pot": the pot says as much as the word before it.
    let (sign, span) = if leads { before() } else { after.or_else(round_after).or_else(before).or_else(round_before) }?;
    let mut size = Dimensions { span, ..Dimensions::default() };
    *field(&mut size, sign) = Some(piece.written);
    Some(size)
}

const fn field(size: &mut Dimensions, sign: Sign) -> &mut Option<Written> {
    match sign {
        Sign::Length => &mut size.length,
        Sign::Width => &mut size.width,
        Sign::Diameter => &mut size.diameter,
        _ => &mut size.depth,
    }
}

/// Adds a single measure to the size just before it, where that one lacks it.
fn add(text: &Text, found: &mut Vec<Dimensions>, single: Dimensions) {
    if let Some(before) = found.last_mut() {
        let gap = before.span.end..single.span.start;
        // "8 ft by 2.5 ft along the parapet, 14 in tall".
        let of_depth = single.depth.is_some() && before.depth.is_none() && before.width.is_some();
        let apart = if of_depth { DEPTH_APART } else { PARTS_APART };
        let near = gap.len() <= apart && !gap.clone().any(|at| matches!(text.normal(at), "." | "?" | "!" | ";"));
        let new = |have: &Option<Written>, more: &Option<Written>| have.is_none() || more.is_none();
        let fits = new(&before.length, &single.length)
            && new(&before.width, &single.width)
            && new(&before.depth, &single.depth)
            && new(&before.diameter, &single.diameter);
        let round = before.diameter.is_some() && (single.length.is_some() || single.width.is_some())
            || single.diameter.is_some() && (before.length.is_some() || before.width.is_some());
        if near && fits && !round {
            before.length = before.length.or(single.length);
            before.width = before.width.or(single.width);
            before.depth = before.depth.or(single.depth);
            before.diameter = before.diameter.or(single.diameter);
            before.span.end = single.span.end;
            return;
        }
    }
    found.push(single);
}
