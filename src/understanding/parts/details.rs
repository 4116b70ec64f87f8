//! What stands beside work told and is no request: a day alone, what it was done with.

use crate::garden::JobKind;
use crate::knowledge::Kind;
use crate::quantity::{UnitOf, Written};
use crate::understanding::reading::Reading;
use chrono::NaiveDate;

/// Nothing but a day, told and not asked about.
pub(super) fn is_a_day_alone(part: &Reading, text: &str) -> bool {
    /// "16 May eve" has so many words.
    const MOST_WORDS: usize = 3;
    let nothing = part.crops.is_empty() && part.materials.is_empty() && part.beds.is_empty() && part.jobs.is_empty();
    let told = !part.asks && part.did.is_none() && part.saw.is_none() && part.quantities.is_empty();
    nothing && told && !part.days.is_empty() && text.split_whitespace().count() <= MOST_WORDS
}

/// What follows work told and neither asks nor tells of something else: "sprayed the chilli. garlic spray. yesterday".
pub(super) fn is_detail(first: &Reading, second: &Reading) -> bool {
    /// A surer part about another crop is a request in few words: "spacing for okra".
    const SURELY: f64 = 0.9;
    let told = first.kind == Kind::Record && first.did.is_some() && !first.asks;
    let own = second.did.is_some() && second.did != first.did || second.saw.is_some() || second.put_off.is_some();
    let other = own || second.asks || !second.measures.is_empty() || !second.signs.is_empty() || second.new_bed;
    let of_it = match first.did {
        Some(JobKind::Spray) => second.kind == Kind::Spray,
        Some(JobKind::Feed) => second.kind == Kind::Feed,
        Some(JobKind::Water) => second.kind == Kind::Water,
        _ => false,
    };
    let nothing = matches!(second.kind, Kind::None | Kind::Person | Kind::Trouble);
    let of_another = second.crops.iter().any(|crop| !first.crops.contains(crop));
    told && !other && !nothing && (of_it || second.sureness < SURELY || !of_another && !second.beds_named)
}

/// The work with what the detail adds; a day still to come is none of the work's.
pub(super) fn with_detail(first: Reading, detail: &Reading, today: NaiveDate) -> Reading {
    let mut whole = first;
    let come = detail.days.iter().any(|(day, _)| *day <= today);
    if whole.days.is_empty() && !detail.days.is_empty() && !come {
        whole.days.push((today, today));
    }
    whole.days.extend(detail.days.iter().copied());
    whole.quantities.extend(detail.quantities.iter().copied());
    if whole.materials.is_empty() {
        whole.materials.clone_from(&detail.materials);
    }
    whole
}

/// A place is described in the other part, and this one asks how many, how much seed, or of something "in it".
pub(super) fn is_in_the_same(part: &Reading, other: &Reading) -> bool {
    let volume = |said: &Written| said.unit.measures() == UnitOf::Volume;
    let described = !other.measures.is_empty() || other.bed_kind.is_some() && other.quantities.iter().any(volume);
    let of_room = matches!(part.kind, Kind::Space | Kind::Seed) || part.kind == Kind::Water && part.of_it;
    let placed = part.beds_named || part.bed_kind.is_some() || !part.measures.is_empty() || part.all_beds;
    described && !other.new_bed && of_room && !placed && !part.crops.is_empty() && part.did.is_none()
}

/// The same without the bed in which such a crop stands.
pub(super) fn without_other_bed(part: Reading, other: &Reading) -> Reading {
    if is_in_the_same(&part, other) { Reading { beds: Vec::new(), ..part } } else { part }
}
