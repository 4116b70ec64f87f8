//! A message that leans on the one before.

use super::asker::{Asker, OwnBed};
use super::reading::{InVessels, Measured, Reading};
use crate::garden::{BedId, BedKind, JobKind};
use crate::knowledge::Kind;
use crate::quantity::{UnitOf, Written};

/// How much a message says by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Says {
    /// Names, sizes or days only: "and the tomatoes?", "4 by 3 ft".
    NoKind,
    /// A kind, but nothing it is about: "and how far apart?".
    NoSubject,
    /// A kind and a crop, but not where: "and how many chillies go in it".
    NoPlace,
    /// Enough.
    All,
}

/// The reading with what it leaves unsaid taken from the one before.
pub fn completed(mut now: Reading, before: &Reading, says: Says, asker: &Asker) -> Reading {
    // "How much seed for the east box" after a crop that is to be sown: of that one, whatever stands there.
    let kept = matches!(before.kind, Kind::Seed | Kind::Space) && says == Says::NoKind;
    let of_room = matches!(now.kind, Kind::Seed | Kind::Space) || kept;
    let to_come = matches!(before.kind, Kind::Sow | Kind::Seed | Kind::Space);
    let placed = now.beds_named || now.bed_kind.is_some();
    if of_room && to_come && placed && now.crops.is_empty() && now.refused.is_empty() {
        now.crops.clone_from(&before.crops);
        // The one bed of that kind is meant, whatever stands there.
        let of_kind: Vec<BedId> =
            asker.beds.iter().filter(|bed| now.bed_kind == Some(bed.kind)).map(|bed| bed.id.clone()).collect();
        if of_kind.len() == 1 && !now.beds_named && now.measures.is_empty() && now.quantities.is_empty() {
            (now.beds, now.beds_named) = (of_kind, true);
        }
    }
    // "Mirchi me bhi diya" after a watering told: the same work there.
    let of_work = before.kind == Kind::Record && before.did.is_some() && before.offered_beds.is_empty();
    let workless = now.kind == Kind::Record && now.did.is_none() && now.saw.is_none() && now.put_off.is_none();
    let says =
        if of_work && workless && !now.asks && !now.new_bed && now.stays.is_none() { Says::NoKind } else { says };
    // "Palak bo di", then "parso boi thi": the same work, of the same crop.
    let told = before.kind == Kind::Record && before.did.is_some();
    let same_work = now.kind == Kind::Record && told && now.did == before.did && now.saw.is_none();
    if same_work && says == Says::All && now.crops.is_empty() && now.other_plants.is_empty() {
        now.crops.clone_from(&before.crops);
        now.microgreen |= before.microgreen;
        now.follow_up = true;
    }
    if says == Says::All {
        return now;
    }
    if says == Says::NoKind {
        with_kind(&mut now, before);
    }
    if now.sky.is_empty() {
        now.sky.clone_from(&before.sky);
    }
    // "And on the tomatoes?", "old leaves only": the same signs.
    if now.kind == Kind::Trouble && before.kind == Kind::Trouble && now.signs.is_empty() {
        now.signs.clone_from(&before.signs);
        if now.crops.is_empty() {
            now.like.clone_from(&before.like);
            now.denied
                .extend(before.denied.iter().filter(|sign| !now.denied.contains(sign)).cloned().collect::<Vec<_>>());
        }
    }
    let other_bed = names_another_bed(&now, before, asker);
    // Rajma, whose shoots are refused, is what is spoken of.
    if now.crops.is_empty()
        && now.refused.is_empty()
        && now.other_plants.is_empty()
        && now.beds.is_empty()
        && !now.beds_named
        && !now.all_beds
        && !other_bed
    {
        now.crops.clone_from(&before.crops);
        // "Must I pinch the tops", of the crop spoken of: an article is found by the words of both.
        if now.kind == Kind::Care && says == Says::NoSubject && !before.crops.is_empty() {
            now.search
                .extend(before.search.iter().filter(|word| !now.search.contains(word)).cloned().collect::<Vec<_>>());
        }
        if now.troubles.is_empty() {
            now.troubles.clone_from(&before.troubles);
        }
        now.microgreen = before.microgreen;
    }
    if !other_bed {
        with_place(&mut now, before, says, asker);
    }
    on_the_roof_told(&mut now, before);
    now.follow_up = true;
    now
}

/// Whether a reading that leans on the one before asks the very same: no other plant, place, day, amount or side of it.
pub fn adds_nothing(now: &Reading, before: &Reading) -> bool {
    let same_plants = now.crops == before.crops
        && now.refused == before.refused
        && now.other_plants == before.other_plants
        && now.materials == before.materials
        && now.mixes == before.mixes
        && now.troubles == before.troubles
        && now.signs == before.signs
        && now.denied == before.denied;
    let same_place = now.beds == before.beds
        && now.bed_kind == before.bed_kind
        && now.all_beds == before.all_beds
        && now.sites == before.sites
        && now.places == before.places;
    let same_days = now.days == before.days
        && now.months == before.months
        && now.season == before.season
        && now.parts_of_day == before.parts_of_day
        && now.for_days == before.for_days
        && now.sky == before.sky;
    let same_amounts = now.quantities == before.quantities
        && now.measures == before.measures
        && now.count == before.count
        && now.vessels == before.vessels
        && now.temperatures_c == before.temperatures_c;
    let same_side = now.points == before.points && now.aspects == before.aspects && now.microgreen == before.microgreen;
    let same_work = now.did == before.did && now.saw == before.saw && now.put_off == before.put_off;
    now.kind == before.kind
        && same_plants
        && same_place
        && same_days
        && same_amounts
        && same_side
        && same_work
        && !now.why
}

/// "Roof 12" after beds of one name were asked about: the one there.
fn on_the_roof_told(now: &mut Reading, before: &Reading) {
    let there: Vec<BedId> = before.alike.iter().filter(|bed| now.sites.contains(bed.site())).cloned().collect();
    if there.len() == 1 && now.beds.iter().all(|bed| before.alike.contains(bed)) {
        (now.beds, now.beds_named) = (there, true);
    }
}

/// "And the basket?" after a bed of another kind: one of hers, with what stands there.
fn names_another_bed(now: &Reading, before: &Reading, asker: &Asker) -> bool {
    let Some(kind) = now.bed_kind else { return false };
    let of_hers = asker.beds.iter().any(|bed| bed.kind == kind);
    // "Per bag" of what stands in the bag that was told of.
    let same =
        before.bed_kind == Some(kind) || asker.beds.iter().any(|bed| bed.kind == kind && before.beds.contains(&bed.id));
    let volume = now.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume);
    let placed = before.beds_named || before.bed_kind.is_some() && !before.beds.is_empty();
    placed && of_hers && !same && now.measures.is_empty() && !volume
}

/// The same is asked: its kind, what exactly, of which days, with what.
fn with_kind(now: &mut Reading, before: &Reading) {
    now.kind = before.kind;
    now.sureness = before.sureness.min(0.9);
    if before.kind == Kind::Record && now.asks {
        // "And the amaranth box?" after a record asks; it tells of no work.
        now.kind = if before.did == Some(JobKind::Water) { Kind::Water } else { Kind::None };
        now.sureness = if now.kind == Kind::Water { now.sureness } else { 0.0 };
    } else {
        now.did = now.did.or(before.did);
        now.saw = now.saw.or(before.saw);
        now.put_off = now.put_off.or(before.put_off).filter(|_| !now.not_to_move);
        // "In the east box" after a sowing told: what was sown stays what it was.
        if before.kind == Kind::Record && now.crops.is_empty() {
            now.crops.clone_from(&before.crops);
        }
    }
    now.senseless = false;
    // An article is found by the words of both.
    if now.kind == Kind::Care {
        now.search.extend(before.search.iter().filter(|word| !now.search.contains(word)).cloned().collect::<Vec<_>>());
    }
    now.asks |= before.asks && before.kind != Kind::Record;
    let told = now.quantities.first().copied();
    if let Some(asked) = before.vessels.as_ref().filter(|vessels| now.kind == Kind::Water && vessels.wanted) {
        // What a mug holds is told in answer to "how many mugs": no size of the bed.
        let holds = now.vessels.as_ref().and_then(|vessels| vessels.holds).or(told);
        let holds = holds.filter(|holds| holds.unit.measures() == UnitOf::Volume && now.bed_kind.is_none());
        now.quantities.retain(|said| holds != Some(*said));
        now.vessels.get_or_insert_with(|| asked.clone());
        if let Some(vessels) = now.vessels.as_mut().filter(|_| holds.is_some()) {
            *vessels = InVessels { holds, ..asked.clone() };
        }
    }
    if now.aspects.is_empty() {
        now.aspects.clone_from(&before.aspects);
        now.for_days = now.for_days.or(before.for_days);
    }
    if now.season.is_none() && now.months.is_empty() && now.days.is_empty() {
        now.season = before.season;
    }
    if now.days.is_empty() && now.months.is_empty() && now.season.is_none() {
        now.days.clone_from(&before.days);
        now.months.clone_from(&before.months);
        if now.parts_of_day.is_empty() {
            now.parts_of_day.clone_from(&before.parts_of_day);
        }
    }
    // A strength stays for what is asked of it, an amount for the work it was told of.
    if now.quantities.is_empty() && matches!(before.kind, Kind::Spray | Kind::Feed | Kind::Record) {
        now.quantities.clone_from(&before.quantities);
    }
    // "A strong medicine" told of a bottle is no other product.
    let of_bottle = now.points.iter().any(|point| point.tells_product());
    if now.materials.is_empty() || of_bottle && !before.materials.is_empty() {
        now.materials.clone_from(&before.materials);
    }
    if now.mixes.is_empty() {
        now.mixes.clone_from(&before.mixes);
    }
    now.points.extend(&before.points);
}

/// Where: the bed or the size spoken of, with the measures that are new. Another crop is asked of in the same place where
/// the place was described and the crop has none of its own, or where the question hangs on the place.
fn with_place(now: &mut Reading, before: &Reading, says: Says, asker: &Asker) {
    let volume = |reading: &Reading| reading.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume);
    if now.beds_named || !now.beds.is_empty() || !now.sites.is_empty() || now.all_beds {
        return;
    }
    let of_place = matches!(now.kind, Kind::Space | Kind::Seed | Kind::Mix | Kind::Build | Kind::Load);
    let another = !now.crops.is_empty() && now.crops != before.crops;
    let stands = asker.beds.iter().any(|bed| now.crops.iter().any(|crop| bed.has(crop)));
    let same_place = !another || says == Says::NoPlace || says == Says::NoKind && (of_place || !stands);
    if !same_place {
        return;
    }
    let described =
        now.measures.iter().any(|one| one.diameter.is_some() || one.length.is_some() && one.width.is_some())
            || volume(now) && now.bed_kind.is_some();
    let in_bed = !another || says == Says::NoPlace || of_place && before.beds_named;
    if in_bed && !described {
        now.beds.clone_from(&before.beds);
        now.beds_named = before.beds_named;
        now.all_beds |= before.all_beds;
    }
    with_measures(now, before);
    // Another kind of bed is another place; the litres of a spray are none.
    let of_liquid = matches!(now.kind, Kind::Spray | Kind::Feed) && volume(now);
    if !now.measures.is_empty() || of_liquid || now.bed_kind.is_some() && now.bed_kind != before.bed_kind {
        return;
    }
    now.bed_kind = before.bed_kind;
    if !volume(now) && now.bed_kind.is_some() {
        let told = before.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Volume).copied();
        now.quantities.extend(told.collect::<Vec<_>>());
    }
}

/// "What if only 6 inches deep", "4 ft long", "a 14 inch one": the thing measured before, with what is new of it.
fn with_measures(now: &mut Reading, before: &Reading) {
    // "12 inch gehra 4x3 foot dabba": what was said of one thing in two pieces.
    let pieces = before.measures.iter().copied().reduce(|one, other| Measured {
        length: one.length.or(other.length),
        width: one.width.or(other.width),
        depth: one.depth.or(other.depth),
        diameter: one.diameter.or(other.diameter),
    });
    let parts = |one: &Measured| [one.length, one.width, one.depth, one.diameter].iter().flatten().count();
    let of_one = pieces.is_some_and(|whole| parts(&whole) == before.measures.iter().map(parts).sum::<usize>());
    let Some(old) = (if of_one { pieces } else { before.measures.first().copied() }) else {
        // "Mix for three bags?" and then "of 40 litres": three of them.
        let holds = now.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume);
        if holds && before.kind == now.kind && before.bed_kind == Some(BedKind::Bag) {
            now.count = now.count.or(before.count);
            now.bed_kind = now.bed_kind.or(before.bed_kind);
        }
        return;
    };
    let old = &old;
    let lengths: Vec<Written> =
        now.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length).copied().collect();
    let volume = now.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume) && now.bed_kind.is_some();
    let new = match (now.measures.as_slice(), lengths.as_slice()) {
        ([], []) if volume => return,
        ([], []) => {
            now.measures.clone_from(&before.measures);
            now.count = now.count.or(before.count);
            now.bed_kind = now.bed_kind.or(before.bed_kind);
            return;
        }
        ([], [one]) => match unsaid_side(*one, old) {
            Some(new) => new,
            None => return,
        },
        ([new], _) => *new,
        _ => return,
    };
    let whole = new.length.is_some() && new.width.is_some() || new.diameter.is_some();
    // "60 x 40 cm ki hai tray" after trays were counted for a box: what is laid in it.
    if now.kind == Kind::Build && whole && is_tray_in(now.bed_kind, &new, old, before.bed_kind) {
        now.measures = vec![*old, new];
        now.quantities.extend([old.length, old.width, old.depth].into_iter().flatten());
        now.bed_kind = before.bed_kind.or(Some(BedKind::Box));
        return;
    }
    let round = |measured: &Measured| measured.diameter.is_some();
    if whole && round(&new) != round(old) {
        return;
    }
    now.measures = vec![Measured {
        length: new.length.or(old.length),
        width: new.width.or(old.width),
        depth: new.depth.or(old.depth),
        diameter: new.diameter.or(old.diameter),
    }];
    now.count = now.count.or(before.count);
    now.bed_kind = now.bed_kind.or(before.bed_kind);
}

/// A tray, smaller than the box that was measured before.
fn is_tray_in(kind: Option<BedKind>, new: &Measured, old: &Measured, before: Option<BedKind>) -> bool {
    let metres = |side: Option<Written>| side.and_then(Written::length).map(|side| side.as_metres());
    let area = |one: &Measured| Some(metres(one.length)? * metres(one.width)?);
    let smaller = area(new).zip(area(old)).is_some_and(|(new, old)| new < old);
    kind == Some(BedKind::Tray) && before != Some(BedKind::Tray) && smaller
}

/// A length without a word for its side: the diameter of a round thing; the depth, where it is short beside the sides and
/// in another unit.
fn unsaid_side(one: Written, old: &Measured) -> Option<Measured> {
    /// A bed is at most half as deep as it is wide, as a rule (judgement).
    const DEEPEST: f64 = 0.5;
    if old.diameter.is_some() {
        return Some(Measured { diameter: Some(one), ..Measured::default() });
    }
    let metres = |side: Written| side.length().map(|length| length.as_metres());
    let sides = [old.length?, old.width?];
    let shorter = sides.into_iter().filter_map(metres).fold(f64::INFINITY, f64::min);
    // "And if 1 ft" of a box whose depth was said.
    let smaller = sides.iter().all(|side| side.unit != one.unit) || old.depth.is_some();
    let depth = smaller && metres(one)? <= DEEPEST * shorter;
    depth.then(|| Measured { depth: Some(one), ..Measured::default() })
}

/// "Sorry, it was Saturday", "no, it was methi": the record told before with what is said now in its place.
pub fn corrected(now: &Reading, before: &Reading, corrects: bool, asker: &Asker) -> Option<Reading> {
    let changes = !now.days.is_empty()
        || !now.crops.is_empty()
        || !now.beds.is_empty()
        || now.bed_kind.is_some()
        || now.did.is_some()
        || !now.materials.is_empty()
        || !now.quantities.is_empty();
    let told =
        before.kind == Kind::Record && (before.did.is_some() || before.saw.is_some() || before.put_off.is_some());
    if !(corrects && changes && told) || now.asks {
        return None;
    }
    let mut reading = Reading {
        // Where a bed was asked back, nothing was noted that could be taken back.
        corrects: before.offered_beds.is_empty(),
        // The words that told of it are no longer what was meant.
        spray_told: None,
        alike: Vec::new(),
        follow_up: true,
        language: now.language,
        devanagari_digits: now.devanagari_digits,
        why: false,
        ..before.clone()
    };
    // "Kal wala galat tha, parso kiya tha": the day that was told before is not meant.
    let other: Vec<_> = now.days.iter().filter(|day| !before.days.contains(day)).copied().collect();
    if !other.is_empty() {
        reading.days = other;
    } else if !now.days.is_empty() {
        reading.days.clone_from(&now.days);
    }
    correct_subject(&mut reading, now, before, asker);
    if now.did.is_some() {
        reading.did = now.did;
    }
    if !now.materials.is_empty() {
        reading.materials.clone_from(&now.materials);
    }
    let one_holds = one_vessel(now, before);
    if let (Some(holds), Some(vessels)) = (one_holds, &mut reading.vessels) {
        vessels.holds = Some(holds);
    }
    let volumes = |all: &[Written]| all.iter().filter(|said| said.unit.measures() == UnitOf::Volume).count();
    if volumes(&now.quantities) > 1 && matches!(before.did, Some(JobKind::Feed | JobKind::Spray)) {
        // "10 ml in 1 L": both are said anew.
        reading.quantities.retain(|told| told.unit.measures() != UnitOf::Volume);
        reading.quantities.extend(now.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Volume));
    }
    for said in now.quantities.iter().filter(|said| one_holds != Some(**said)) {
        if reading.quantities.contains(said) {
            continue;
        }
        // Of several weights the sum was asked for.
        let weights = reading.quantities.iter().filter(|told| told.unit.measures() == UnitOf::Mass).count();
        if before.did == Some(JobKind::Pick) && weights > 1 && reading.crops.len() <= 1 {
            reading.quantities.retain(|told| told.unit.measures() != said.unit.measures());
        }
        let alike = |told: &&mut Written| told.unit.measures() == said.unit.measures();
        match reading.quantities.iter_mut().find(alike) {
            Some(told) => *told = *said,
            None => reading.quantities.push(*said),
        }
    }
    if !now.parts_of_day.is_empty() {
        reading.parts_of_day.clone_from(&now.parts_of_day);
    }
    Some(reading)
}

/// "It holds 700 ml", "700 ml" after water told in vessels whose size was not known: what one of them holds.
pub fn one_vessel(now: &Reading, before: &Reading) -> Option<Written> {
    let asked = before.vessels.as_ref().is_some_and(|vessels| vessels.count.is_some() && vessels.holds.is_none());
    let whole = now.vessels.as_ref().is_some_and(|vessels| vessels.count.is_some_and(|count| count > 1.0));
    match now.quantities.as_slice() {
        [said] if said.unit.measures() == UnitOf::Volume => {
            (before.did == Some(JobKind::Water) && asked && !whole).then_some(*said)
        }
        _ => None,
    }
}

/// "Not the basket, the chilli pot": the crop and the bed of a record, as they are now said.
fn correct_subject(reading: &mut Reading, now: &Reading, before: &Reading, asker: &Asker) {
    let of_bed = matches!(before.did, Some(JobKind::Water | JobKind::Spray | JobKind::Feed)) || before.saw.is_some();
    let of_kind = |bed: &&OwnBed| now.bed_kind == Some(bed.kind);
    let beds: Vec<BedId> = if now.beds.is_empty() && !now.beds_named {
        let of_kind: Vec<BedId> = asker.beds.iter().filter(of_kind).map(|bed| bed.id.clone()).collect();
        if of_kind.len() == 1 { of_kind } else { Vec::new() }
    } else {
        now.beds.clone()
    };
    // What stands in the other bed is another crop, unless the crop was brought or taken.
    if !now.crops.is_empty() {
        reading.crops.clone_from(&now.crops);
    } else if of_bed && before.beds != beds && (!beds.is_empty() || now.bed_kind.is_some()) {
        reading.crops.clear();
    }
    // Another crop stands perhaps in another bed, unless the bed was named and may hold it, or is being sown.
    let sown = matches!(before.did, Some(JobKind::Sow | JobKind::Plant));
    let elsewhere = asker.beds.iter().any(|bed| now.crops.iter().any(|crop| bed.has(crop)));
    let moved = !now.crops.is_empty() && !sown && (!before.beds_named || of_bed && elsewhere);
    // Several that may be meant are asked about.
    if beds.len() == 1 || now.beds_named {
        reading.beds = beds;
        reading.beds_named = true;
    } else if moved || now.bed_kind.is_some() || !beds.is_empty() {
        reading.beds.clear();
        reading.beds_named = false;
        reading.bed_kind = now.bed_kind;
    }
}

/// "So ready by?" after a sowing told with its day: the harvest of that sowing.
pub fn counted_from(now: &mut Reading, before: &Reading) {
    let sown = matches!(before.did, Some(JobKind::Sow | JobKind::Plant)) && before.kind == Kind::Record;
    let of_it = now.kind == Kind::Harvest && now.follow_up && now.crops == before.crops && now.did.is_none();
    if sown && of_it && now.days.is_empty() && !before.days.is_empty() {
        now.did = before.did;
        now.days.clone_from(&before.days);
    }
}

/// "Undo that": the record told before.
pub fn undone(now: &Reading, before: &Reading, undoes: bool) -> Option<Reading> {
    let told = before.kind == Kind::Record
        && (before.did.is_some() || before.saw.is_some() || before.new_bed || before.put_off.is_some());
    // "No, don't move it" after a move: that move.
    let unmoved = now.not_to_move && now.jobs.is_empty() && before.put_off.is_some();
    ((undoes || unmoved) && told && !before.undo && !now.asks).then(|| Reading {
        undo: true,
        follow_up: true,
        language: now.language,
        devanagari_digits: now.devanagari_digits,
        why: false,
        ..before.clone()
    })
}

/// "Planted out on 20 April", "the cherry tomatoes, planted on 1 April" after a question about the harvest is its start, not
/// a record: of what was spoken of, of what the question left out, or of another crop where a word ties it to the question.
pub fn started(now: &Reading, before: &Reading, ties: bool) -> Option<Reading> {
    let start = matches!(now.did, Some(JobKind::Sow | JobKind::Plant)) && !now.days.is_empty();
    let lacked = before.crops.is_empty() && !before.beds_named;
    let same = now.crops.iter().all(|crop| before.crops.contains(crop)) && !now.beds_named;
    if before.kind != Kind::Harvest || !start || !(same || lacked || ties) || now.asks {
        return None;
    }
    let mut reading = Reading {
        did: now.did,
        days: now.days.clone(),
        language: now.language,
        devanagari_digits: now.devanagari_digits,
        follow_up: true,
        why: false,
        ..before.clone()
    };
    if !same {
        reading.crops.clone_from(&now.crops);
        reading.beds.clone_from(&now.beds);
        reading.beds_named = now.beds_named;
        reading.bed_kind = now.bed_kind;
        reading.measures.clone_from(&now.measures);
        reading.count = now.count;
        reading.quantities.clone_from(&now.quantities);
    }
    Some(reading)
}
