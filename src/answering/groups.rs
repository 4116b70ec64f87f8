//! Beds of several sizes that were described at once, each with how many of it.

use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::{Subject, described_bed, subjects};
use crate::understanding::Reading;

/// More of one size is no roof of a household (judgement).
const MOST: f64 = 200.0;

/// The beds with how many of each; none where fewer than two sizes were described.
pub fn described<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Option<Vec<(Subject<'a>, f64)>> {
    let all: Vec<(Subject<'a>, f64)> = reading
        .groups
        .iter()
        .filter_map(|group| {
            let one = Reading {
                measures: if group.volume.is_some() { Vec::new() } else { vec![group.measured] },
                quantities: group.volume.into_iter().collect(),
                bed_kind: group.kind,
                given: Vec::new(),
                groups: Vec::new(),
                ..reading.clone()
            };
            described_bed(&one)?;
            let subject = subjects(&one, facts).ok()?.into_iter().next()?;
            Some((subject, group.count.clamp(1.0, MOST).floor()))
        })
        .collect();
    (all.len() > 1 && all.len() == reading.groups.len()).then_some(all)
}

/// "5 × 8 in pot and 3 × 12 in pot".
pub fn called(beds: &[(Subject<'_>, f64)]) -> Said {
    let each = beds.iter().map(|(subject, count)| counted(subject, *count));
    Said::List(each.collect())
}

/// So many of one.
pub fn counted(subject: &Subject<'_>, count: f64) -> Said {
    let line = Line::new("bed-counted").with("count", Said::Count(count as i64)).with("bed", subject.called());
    Said::Line(Box::new(line))
}
