//! The day of a bed's next feed: by its crops' rhythm from the last one, else when a fresh mix is used up.

use super::feed::next_feed;
use crate::knowledge::{Crop, SourceRef};
use crate::quantity::Estimate;
use chrono::NaiveDate;

/// Days from one feed to the next where a crop does not say (common practice, no source).
pub const USUAL_DAYS: (f64, f64, f64) = (7.0, 9.0, 10.0);
/// A fresh mix feeds for about so long, days (common practice, no source).
const MIX_FEEDS_DAYS: (f64, f64, f64) = (45.0, 60.0, 75.0);

/// What the day is counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Counted {
    LastFeed,
    /// A fresh mix still feeds.
    FreshMix,
    /// The mix was fresh, and is used up.
    UsedUpMix,
    /// Nothing is known: its day is a guess and is not told.
    Nothing,
}

/// The usual rhythm.
#[must_use]
pub fn usual_days() -> Estimate<f64> {
    Estimate::spanning(USUAL_DAYS.1, [USUAL_DAYS.0, USUAL_DAYS.2])
}

/// The shortest rhythm of the crops that stand, else the usual one; with its source.
#[must_use]
pub fn rhythm<'a>(crops: impl Iterator<Item = &'a Crop>) -> (Estimate<f64>, SourceRef) {
    let feedings = crops.filter_map(|crop| crop.feeding.as_ref());
    let shortest = feedings.min_by(|a, b| a.every_days.value().total_cmp(&b.every_days.value()));
    match shortest {
        Some(feeding) => (feeding.every_days.is, feeding.every_days.source.clone()),
        None => (usual_days(), SourceRef::new("common-practice", "")),
    }
}

/// The day of the next feed, not before today, and what it was counted from.
#[must_use]
pub fn feed_day(
    last: Option<NaiveDate>,
    mix_added: Option<NaiveDate>,
    every: &Estimate<f64>,
    today: NaiveDate,
) -> (Estimate<NaiveDate>, Counted) {
    if let Some(last) = last {
        return (next_feed(last, every, today), Counted::LastFeed);
    }
    let Some(added) = mix_added else { return (Estimate::exactly(today), Counted::Nothing) };
    let feeds_for = Estimate::spanning(MIX_FEEDS_DAYS.1, [MIX_FEEDS_DAYS.0, MIX_FEEDS_DAYS.2]);
    let next = next_feed(added, &feeds_for, today);
    (next, if next.value() > today { Counted::FreshMix } else { Counted::UsedUpMix })
}
