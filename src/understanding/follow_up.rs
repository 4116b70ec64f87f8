//! A message that leans on the one before.

use super::reading::{Measured, Reading};
use crate::garden::JobKind;
use crate::knowledge::Kind;

/// How much a message says by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Says {
    /// Names, sizes or days only: "and the tomatoes?", "4 by 3 ft".
    NoKind,
    /// A kind, but nothing it is about: "and how far apart?".
    NoSubject,
    /// Enough.
    All,
}

/// The reading with what it leaves unsaid taken from the one before.
pub fn completed(mut now: Reading, before: &Reading, says: Says) -> Reading {
    if says == Says::All {
        return now;
    }
    if says == Says::NoKind {
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
        if now.aspects.is_empty() {
            now.aspects.clone_from(&before.aspects);
            now.for_days = now.for_days.or(before.for_days);
        }
        if now.days.is_empty() {
            now.days.clone_from(&before.days);
            if now.parts_of_day.is_empty() {
                now.parts_of_day.clone_from(&before.parts_of_day);
            }
        }
        if now.measures.is_empty() && now.crops.is_empty() && now.beds.is_empty() {
            now.measures.clone_from(&before.measures);
        }
        with_new_depth(&mut now, before);
        // "A strong medicine" told of a bottle is no other product.
        let of_bottle = now.points.iter().any(|point| point.tells_product());
        if now.materials.is_empty() || of_bottle && !before.materials.is_empty() {
            now.materials.clone_from(&before.materials);
        }
        now.points.extend(&before.points);
    }
    if now.sky.is_empty() {
        now.sky.clone_from(&before.sky);
    }
    let names_something = !now.crops.is_empty() || now.beds_named;
    if !names_something {
        now.crops.clone_from(&before.crops);
        if now.troubles.is_empty() {
            now.troubles.clone_from(&before.troubles);
        }
        now.microgreen = before.microgreen;
        if now.measures.is_empty() {
            now.beds.clone_from(&before.beds);
            now.beds_named = before.beds_named;
            now.all_beds |= before.all_beds;
            now.measures.clone_from(&before.measures);
        }
        now.bed_kind = now.bed_kind.or(before.bed_kind);
    }
    now.follow_up = true;
    now
}

/// "Sorry, it was Saturday", "no, it was methi": the record told before with what is said now in its place.
pub fn corrected(now: &Reading, before: &Reading, corrects: bool) -> Option<Reading> {
    let changes = !now.days.is_empty()
        || !now.crops.is_empty()
        || now.beds_named
        || now.did.is_some()
        || !now.quantities.is_empty();
    let told =
        before.kind == Kind::Record && (before.did.is_some() || before.saw.is_some() || before.put_off.is_some());
    if !(corrects && changes && told) || now.asks {
        return None;
    }
    let mut reading = Reading {
        corrects: true,
        follow_up: true,
        language: now.language,
        devanagari_digits: now.devanagari_digits,
        why: false,
        ..before.clone()
    };
    if !now.days.is_empty() {
        reading.days.clone_from(&now.days);
    }
    if !now.crops.is_empty() {
        reading.crops.clone_from(&now.crops);
        // Another crop stands perhaps in another bed, unless the bed was named or is being sown.
        let sown = matches!(before.did, Some(JobKind::Sow | JobKind::Plant));
        if !before.beds_named && !sown {
            reading.beds.clear();
        }
    }
    if now.beds_named {
        reading.beds.clone_from(&now.beds);
        reading.beds_named = true;
    }
    if now.did.is_some() {
        reading.did = now.did;
    }
    if !now.quantities.is_empty() {
        reading.quantities.clone_from(&now.quantities);
    }
    Some(reading)
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

/// "Planted out on 20 April" after a question about the harvest is its start, not a record.
pub fn started(now: &Reading, before: &Reading) -> Option<Reading> {
    let start = matches!(now.did, Some(JobKind::Sow | JobKind::Plant)) && !now.days.is_empty();
    let bare = now.crops.is_empty() && !now.beds_named;
    if before.kind != Kind::Harvest || !start || !bare || now.asks {
        return None;
    }
    Some(Reading {
        did: now.did,
        days: now.days.clone(),
        language: now.language,
        devanagari_digits: now.devanagari_digits,
        follow_up: true,
        why: false,
        ..before.clone()
    })
}

/// "What if only 6 inches deep": the thing measured before, with another depth.
fn with_new_depth(now: &mut Reading, before: &Reading) {
    let ([new], [old, ..]) = (now.measures.as_slice(), before.measures.as_slice()) else { return };
    let depth_alone = new.depth.is_some() && new.length.is_none() && new.width.is_none() && new.diameter.is_none();
    if depth_alone && (old.length.is_some() || old.diameter.is_some()) {
        now.measures = vec![Measured { depth: new.depth, ..*old }];
        now.bed_kind = now.bed_kind.or(before.bed_kind);
    }
}
