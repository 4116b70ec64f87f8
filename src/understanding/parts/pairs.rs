//! Two things asked of one: "spacing and feeding of brinjal", "pani aur khad dono bata do", "cut list and wet weight".

use super::By;
use super::borders::is_joining;
use crate::knowledge::Kind;
use crate::script::Text;
use crate::understanding::phrasebook::{Forms, Hit};
use crate::understanding::reading::Reading;
use std::ops::Range;

/// Each must be as sure as this of the kind that its word speaks of.
const SURE: f64 = 0.6;

/// So many words may stand between one of the two words and what joins them.
const APART: usize = 2;

/// The two requests, where exactly two kinds are spoken of and a joining word stands between their words: the text without the
/// one and without the other.
pub(super) fn of_one(text: &str, whole: &Reading, by: &By<'_>) -> Option<(Reading, Reading)> {
    if whole.did.is_some() || whole.saw.is_some() || !whole.signs.is_empty() || whole.new_bed || by.tried_enough() {
        return None;
    }
    let read = Text::read_as(text, by.language);
    let (first, second) = two_topics(&read, by)?;
    let joint = (first.span.end..second.span.start).find(|at| is_joining(&read, *at))?;
    let end = end_of_group(&read, second.span.end);
    let without = |out: Range<usize>| -> String {
        let left = |at: &usize| !out.contains(at);
        let words =
            (0..read.tokens.len()).filter(left).filter_map(|at| read.tokens.get(at)).map(|token| token.text.as_str());
        words.collect::<Vec<_>>().join(" ")
    };
    let (one, other) = (by.part(&without(joint..end)), by.part(&without(first.span.start..joint + 1)));
    let is = |part: &Reading, hit: &Hit<Kind>| part.kind == hit.meaning && part.sureness >= SURE && part.did.is_none();
    (is(&one, &first) && is(&other, &second)).then_some((one, other))
}

/// The words of two kinds, side by side but for what joins them.
fn two_topics(read: &Text, by: &By<'_>) -> Option<(Hit<Kind>, Hit<Kind>)> {
    let forms = Forms::of(read);
    let mut hits = by.reader.gazetteer.topics(&forms);
    let names = by.reader.gazetteer.names(&forms, by.asker);
    hits.retain(|hit| names.iter().all(|name| name.span.end <= hit.span.start || hit.span.end <= name.span.start));
    hits.sort_by_key(|hit| hit.span.start);
    let mut kinds: Vec<Kind> = hits.iter().map(|hit| hit.meaning).collect();
    kinds.dedup();
    let [one, other] = kinds.as_slice() else { return None };
    if [one, other].iter().any(|kind| matches!(kind, Kind::Trouble | Kind::None | Kind::Record)) {
        return None;
    }
    let first = hits.iter().rfind(|hit| hit.meaning == *one)?.clone();
    let second = hits.iter().find(|hit| hit.meaning == *other)?.clone();
    let between: Vec<usize> = (first.span.end..second.span.start).collect();
    let joints: Vec<usize> = between.iter().copied().filter(|at| is_joining(read, *at)).collect();
    let [joint] = joints.as_slice() else { return None };
    let near = joint - first.span.end <= APART && second.span.start - joint <= APART + 1;
    let stops = between.iter().any(|at| matches!(read.normal(*at), "." | "?" | "," | ";" | "।"));
    (near && !stops).then_some((first, second))
}

/// A noun behind the second word belongs to it: "seed quantity", "beej kitna".
fn end_of_group(read: &Text, after: usize) -> usize {
    const NOUNS: [&str; 20] = [
        "quantity",
        "amount",
        "rate",
        "date",
        "time",
        "list",
        "percentage",
        "percent",
        "weight",
        "distance",
        "schedule",
        "kitna",
        "kitni",
        "kab",
        "matra",
        "कितना",
        "कितनी",
        "कब",
        "मात्रा",
        "dose",
    ];
    let article =
        usize::from(matches!(read.normal(after), "ki" | "ka" | "की" | "का") && NOUNS.contains(&read.normal(after + 1)));
    if NOUNS.contains(&read.normal(after + article)) { after + article + 1 } else { after }
}
