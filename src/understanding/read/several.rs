//! Things of several sizes in one message: "5 pots of 8 inch and 3 of 12 inch", "2 boxes 4x3 ft and one 5x2 ft".

use super::found::measured;
use super::{Found, Hit, Measured, Named, Text};
use crate::garden::BedKind;
use crate::knowledge::Point;
use crate::quantity::{UnitOf, Volume, Written};
use crate::understanding::quantities::Count;
use crate::understanding::reading::Group;
use std::ops::Range;

/// One thing measured, where it stands.
struct Thing {
    measured: Measured,
    volume: Option<Written>,
    span: Range<usize>,
}

impl Found {
    /// The things measured with how many of each, where they are of several sizes; else none.
    pub(super) fn groups(&self, text: &Text) -> Vec<Group> {
        let kinds: Vec<(BedKind, &Range<usize>)> = self.names.iter().filter_map(kind_named).collect();
        let trays = kinds.iter().any(|(kind, _)| *kind == BedKind::Tray);
        let other = self.says_point(Point::Choice) || trays || kinds.is_empty();
        let things = if other { Vec::new() } else { self.things(&kinds) };
        if things.len() < 2 {
            return Vec::new();
        }
        let starts: Vec<usize> = things.iter().map(|thing| thing.span.start).collect();
        let ends: Vec<usize> = things.iter().map(|thing| thing.span.end).collect();
        let from = |place: usize| place.checked_sub(1).and_then(|before| ends.get(before)).copied().unwrap_or(0);
        let until = |place: usize| starts.get(place + 1).copied().unwrap_or(text.tokens.len());
        let counts = &self.quantities.counts;
        let within = |range: Range<usize>| counts.iter().filter(move |count| range.contains(&count.span.start));
        // "12 inch ke 4 gamle aur 10 inch ke 6": how many stands behind its size there, before it elsewhere.
        let leads = within(0..starts.first().copied().unwrap_or(0)).next().is_some();
        let trails = !leads && within(ends.first().copied().unwrap_or(0)..until(0)).any(|count| of_bed(count, &kinds));
        let depth = things.iter().filter_map(|thing| thing.measured.depth).next_back();
        let all_alike = (0..text.tokens.len()).any(|at| {
            matches!(text.normal(at), "all" | "each" | "both" | "sab" | "sabhi" | "dono" | "सब" | "सभी" | "दोनों")
        });
        let mut kind = None;
        let mut groups: Vec<Group> = Vec::new();
        for (place, thing) in things.iter().enumerate() {
            let before = from(place)..thing.span.start;
            let behind = thing.span.end..until(place);
            let count = if trails { within(behind.clone()).next() } else { within(before.clone()).next_back() };
            let near = |range: &Range<usize>| {
                kinds.iter().find(|(_, span)| range.contains(&span.start) || thing.span.contains(&span.start))
            };
            let named = if trails { near(&behind) } else { near(&before).or_else(|| near(&behind)) };
            kind = named.map(|(kind, _)| *kind).or(kind);
            let shared = thing.measured.depth.or(depth.filter(|_| all_alike && thing.measured.length.is_some()));
            let measured = Measured { depth: shared, ..thing.measured };
            groups.push(Group { measured, volume: thing.volume, kind, count: count.map_or(1.0, |count| count.value) });
        }
        let told = groups.iter().any(|group| group.count > 1.0) || groups.iter().any(|group| group.kind != kind);
        let same =
            groups.windows(2).any(|two| matches!(two, [a, b] if a.measured == b.measured && a.volume == b.volume));
        if told && !same { groups } else { Vec::new() }
    }

    /// What has whole sides, and the litres of bags and pots.
    fn things(&self, kinds: &[(BedKind, &Range<usize>)]) -> Vec<Thing> {
        /// Less is a mug.
        const LEAST: Volume = Volume::litres(3.0);
        let whole = |one: &Measured| one.diameter.is_some() || one.length.is_some() && one.width.is_some();
        let sized = self.quantities.dimensions.iter().map(|found| (measured(found), found.span.clone()));
        let sized = sized.map(|(one, span)| (round(one, &span, kinds), span)).filter(|(one, _)| whole(one));
        let mut things: Vec<Thing> = sized.map(|(measured, span)| Thing { measured, volume: None, span }).collect();
        let vessel = |kind: &BedKind| matches!(kind, BedKind::Bag | BedKind::Pot);
        let litres = self.quantities.said.iter().filter(|said| {
            let large = said.written.volume().is_some_and(|volume| volume >= LEAST);
            // "20 L bags", "bags of 20 L": the word stands beside it.
            let beside = kinds.iter().any(|(kind, span)| {
                vessel(kind) && (span.start == said.span.end || (span.end..=span.end + 1).contains(&said.span.start))
            });
            said.written.unit.measures() == UnitOf::Volume && large && beside
        });
        let litres = litres.map(|said| Thing {
            measured: Measured::default(),
            volume: Some(said.written),
            span: said.span.clone(),
        });
        things.extend(litres);
        // "5 pots of 8 inch and 3 of 12 inch": the second is as round as the first.
        let is_round = things.iter().any(|thing| thing.measured.diameter.is_some());
        let bare = self.quantities.said.iter().filter(|said| {
            let measured = self.quantities.dimensions.iter().any(|found| found.span.contains(&said.span.start));
            let counted = self
                .quantities
                .counts
                .iter()
                .any(|count| count.span.end == said.span.start || count.span.end + 1 == said.span.start);
            is_round && said.written.unit.measures() == UnitOf::Length && !measured && counted
        });
        let bare: Vec<Thing> = bare
            .map(|said| Thing {
                measured: Measured { diameter: Some(said.written), ..Measured::default() },
                volume: None,
                span: said.span.clone(),
            })
            .collect();
        things.extend(bare);
        things.sort_by_key(|thing| thing.span.start);
        things
    }
}

fn kind_named(hit: &Hit<Named>) -> Option<(BedKind, &Range<usize>)> {
    match hit.meaning {
        Named::BedKind(kind) => Some((kind, &hit.span)),
        _ => None,
    }
}

/// The count is of beds: their word follows it.
fn of_bed(count: &Count, kinds: &[(BedKind, &Range<usize>)]) -> bool {
    kinds.iter().any(|(_, span)| span.start == count.span.end)
}

/// A pot has one width.
fn round(one: Measured, span: &Range<usize>, kinds: &[(BedKind, &Range<usize>)]) -> Measured {
    let near = |at: &Range<usize>| at.start.abs_diff(span.end).min(at.start.abs_diff(span.start)) <= 3;
    let pot = kinds.iter().any(|(kind, at)| matches!(kind, BedKind::Pot | BedKind::Basket) && near(at));
    if pot && one.length.is_none() && one.diameter.is_none() {
        return Measured { diameter: one.width, width: None, ..one };
    }
    one
}
