//! Which of the asker's own beds a message means.

use super::asker::{Asker, OwnBed};
use super::reading::Reading;
use crate::garden::{BedId, JobKind};
use crate::knowledge::Kind;
use crate::quantity::UnitOf;

/// The asker's beds that are meant, where none was named: those where the crop stands, narrowed by the word
/// for their kind. A size that was said describes another bed, so none of hers is meant.
pub fn with_beds(mut reading: Reading, asker: &Asker) -> Reading {
    told_apart(&mut reading, asker);
    if !reading.alike.is_empty() {
        return reading;
    }
    if !reading.measures.is_empty() || reading.beds_named || !reading.beds.is_empty() {
        return with_crop_of_bed(reading, asker);
    }
    let there = |bed: &&OwnBed| reading.sites.is_empty() || reading.sites.contains(bed.id.site());
    let of_kind = |bed: &&OwnBed| reading.bed_kind.is_none_or(|kind| bed.kind == kind);
    let here: Vec<&OwnBed> = asker.beds.iter().filter(there).collect();
    let chosen: Vec<&OwnBed> = if !reading.crops.is_empty() {
        let with_crop: Vec<&OwnBed> =
            here.into_iter().filter(|bed| reading.crops.iter().any(|crop| bed.has(crop))).collect();
        let narrow: Vec<&OwnBed> = with_crop.iter().copied().filter(of_kind).collect();
        // What is sown or planted in a tray stands in none of the boxes, whatever grows there.
        // "In 15 litre bags" describes others than hers.
        let described = reading.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume)
            || reading.did == Some(JobKind::Plant) && is_of_another(&reading);
        let started = matches!(reading.did, Some(JobKind::Sow | JobKind::Plant)) && reading.kind == Kind::Record;
        let started = started && !described;
        if started && reading.bed_kind.is_some() {
            asker.beds.iter().filter(there).filter(of_kind).collect()
        } else if narrow.is_empty() {
            with_crop
        } else {
            narrow
        }
    } else if reading.all_beds || reading.bed_kind.is_none() && !reading.sites.is_empty() {
        reading.all_beds = true;
        here
    } else if reading.kind == Kind::Record && !reading.other_plants.is_empty() {
        // "The papaya tubs": none of those where other crops stand.
        Vec::new()
    } else if reading.bed_kind.is_some() {
        here.into_iter().filter(of_kind).collect()
    } else {
        Vec::new()
    };
    let beds: Vec<BedId> = chosen.into_iter().map(|bed| bed.id.clone()).collect();
    reading.beds = beds;
    with_crop_of_bed(reading, asker)
}

/// "Moved into a bigger pot", "planted in a 20 inch drum": what a plant is set in may be none of those on record.
fn is_of_another(reading: &Reading) -> bool {
    /// Shorter than this is how deep it was set (judgement).
    const A_POT_M: f64 = 0.15;
    let wide = reading.quantities.iter().filter_map(|said| said.length()).any(|length| length.as_metres() >= A_POT_M);
    let moved = ["move", "moved", "shift", "shifted"].iter().any(|word| reading.all_words.contains(*word));
    wide || moved
}

/// Beds of one name: those on the roofs that were named; where several are left, none of them is meant for sure.
fn told_apart(reading: &mut Reading, asker: &Asker) {
    let names = |id: &BedId| asker.beds.iter().find(|bed| bed.id == *id).map(|bed| &bed.names);
    let same_name = |one: &BedId, other: &BedId| {
        let shared = |(ones, others): (&Vec<String>, &Vec<String>)| {
            ones.iter().any(|name| others.iter().any(|other| other.to_lowercase() == name.to_lowercase()))
        };
        one != other && names(one).zip(names(other)).is_some_and(shared)
    };
    let has_twin = |id: &BedId| reading.beds.iter().any(|other| same_name(id, other));
    let (twins, mut told): (Vec<BedId>, Vec<BedId>) = reading.beds.iter().cloned().partition(has_twin);
    if twins.is_empty() || !reading.beds_named || reading.all_beds {
        return;
    }
    let here: Vec<BedId> = twins.iter().filter(|bed| reading.sites.contains(bed.site())).cloned().collect();
    // Named with their roofs, both are meant.
    let several_roofs = here.len() > 1 && here.len() == reading.sites.len();
    if here.len() == 1 || several_roofs {
        told.extend(here);
        reading.beds = told;
    } else {
        reading.alike = if here.is_empty() { twins } else { here };
        reading.beds.clear();
        reading.beds_named = false;
    }
}

/// A crop on a tray is meant as a shoot.
fn with_crop_of_bed(mut reading: Reading, asker: &Asker) -> Reading {
    let shoots = asker
        .beds
        .iter()
        .filter(|bed| reading.beds.contains(&bed.id))
        .flat_map(|bed| &bed.crops)
        .any(|(crop, microgreen)| *microgreen && (reading.crops.is_empty() || reading.crops.contains(crop)));
    reading.microgreen = reading.microgreen || shoots;
    reading
}
