//! What is measured of a bed that was told before, and what the measures of a message are of.

use super::{Found, Measured, Named, Reading, Text};
use crate::garden::{BedId, BedKind};
use crate::knowledge::Kind;
use crate::quantity::{UnitOf, Written};
use std::ops::Range;

impl Found {
    /// "8 in wide and 7 in deep" after "I have put a new pot there": the bed told before, with its size.
    pub(super) fn sizes_the_new_bed(&self, reading: &Reading, before: &Reading) -> Option<Reading> {
        let told = before.kind == Kind::Record && before.one_more && !before.new_bed;
        let waits = told && before.did.is_none() && before.saw.is_none();
        if !waits || self.asks || self.did.is_some() || !self.signs.is_empty() {
            return None;
        }
        let kind = reading.bed_kind.or(before.bed_kind);
        let volume = |said: &Written| said.unit.measures() == UnitOf::Volume;
        let measures = match (reading.measures.as_slice(), reading.quantities.as_slice()) {
            ([measured], _) => vec![of_round(*measured, kind)],
            ([], [said]) if said.unit.measures() == UnitOf::Length && is_round(kind) => {
                vec![Measured { diameter: Some(*said), ..Measured::default() }]
            }
            ([], said) if said.iter().any(volume) && matches!(kind, Some(BedKind::Bag | BedKind::Pot)) => Vec::new(),
            _ => return None,
        };
        let whole = |one: &Measured| one.diameter.is_some() || one.length.is_some() && one.width.is_some();
        if !measures.iter().all(whole) {
            return None;
        }
        let crops = if reading.crops.is_empty() { &before.crops } else { &reading.crops };
        Some(Reading {
            kind: Kind::Record,
            sureness: before.sureness,
            crops: crops.clone(),
            beds: Vec::<BedId>::new(),
            beds_named: false,
            bed_kind: kind,
            beds_told: reading.beds_told.or(before.beds_told),
            called: reading.called.clone().or_else(|| before.called.clone()),
            measures,
            new_bed: true,
            follow_up: true,
            ..reading.clone()
        })
    }

    /// The kind of bed that the largest thing measured is, where several are named: of "one bag for two 12 inch pots" the
    /// pots, of "60 x 40 cm trays in a box of 4 x 3 ft" the box.
    pub(super) fn kind_measured(&self, text: &Text) -> Option<BedKind> {
        /// So many words stand between a size and what has it.
        const NEAR: usize = 2;
        let kinds = || {
            self.names.iter().filter_map(|hit| match hit.meaning {
                Named::BedKind(kind) => Some((kind, &hit.span)),
                _ => None,
            })
        };
        let first = kinds().next()?.0;
        if kinds().all(|(kind, _)| kind == first) {
            return None;
        }
        let metres = |side: Option<Written>| side.and_then(Written::length).map_or(0.0, |side| side.as_metres());
        let area = |size: &&crate::understanding::quantities::Dimensions| {
            let across = metres(size.diameter).max(metres(size.width));
            metres(size.length).max(across) * across
        };
        let largest = self.quantities.dimensions.iter().max_by(|a, b| area(a).total_cmp(&area(b)))?;
        let stop = |from: usize, to: usize| (from..to).any(|at| matches!(text.normal(at), "," | "." | "।" | "?"));
        let within = |span: &Range<usize>| largest.span.contains(&span.start);
        let behind = |span: &Range<usize>| {
            let end = largest.span.end;
            (end..=end + NEAR).contains(&span.start) && !stop(end, span.start)
        };
        let before = |span: &Range<usize>| {
            let start = largest.span.start;
            span.end <= start && start - span.end <= NEAR && !stop(span.end, start)
        };
        let mut found = kinds().filter(|(_, span)| within(span));
        let found = found.next().or_else(|| kinds().find(|(_, span)| behind(span)));
        found.or_else(|| kinds().find(|(_, span)| before(span))).map(|(kind, _)| kind)
    }
}

const fn is_round(kind: Option<BedKind>) -> bool {
    matches!(kind, Some(BedKind::Pot | BedKind::Basket))
}

/// A round thing has one width.
fn of_round(measured: Measured, kind: Option<BedKind>) -> Measured {
    if is_round(kind) && measured.diameter.is_none() && measured.length.is_none() {
        return Measured { diameter: measured.width, width: None, ..measured };
    }
    measured
}
