//! What a message tells as done.

use super::{Hit, Named, Quantities, Told};
use crate::garden::JobKind;
use crate::knowledge::Point;
use crate::quantity::UnitOf;

/// What was done: said alone, or by a thing with a word for done after it, a few words apart.
pub(super) fn did(told: &[Hit<Told>]) -> Option<JobKind> {
    const APART: usize = 5;
    let alone = told.iter().find_map(|hit| match hit.meaning {
        Told::Did(kind) => Some((kind, hit.span.clone())),
        _ => None,
    });
    let with_thing = told.iter().find_map(|thing| {
        let Told::Thing(kind) = thing.meaning else { return None };
        told.iter()
            .any(|done| {
                let apart = done.span.start.abs_diff(thing.span.start);
                done.meaning == Told::Done && done.span != thing.span && apart <= APART
            })
            .then_some(kind)
    });
    // "Planted" in Hindi is also what one does with a net: the thing decides.
    match (alone, with_thing) {
        (Some((JobKind::Plant, _)), Some(kind)) => Some(kind),
        (Some((kind, _)), _) => Some(kind),
        (None, thing) => thing,
    }
}

/// Told and not asked about: "got 400 g of tomatoes", a crop and a weight; "done, 4 L on the east box", a bed and a
/// volume of nothing but water.
pub(super) fn given(told: &[Hit<Told>], names: &[Hit<Named>], quantities: &Quantities, asks: bool) -> Option<JobKind> {
    let says = |what: Told| told.iter().any(|hit| hit.meaning == what);
    let got = says(Told::Got);
    let crop = names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)));
    let bed = names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
    let stuff = names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)));
    let measured = |what: UnitOf| quantities.said.iter().any(|said| said.written.unit.measures() == what);
    let plain = !asks && quantities.dimensions.is_empty() && !stuff;
    if plain && crop && measured(UnitOf::Mass) && (got || says(Told::Thing(JobKind::Pick))) {
        return Some(JobKind::Pick);
    }
    (plain && bed && measured(UnitOf::Volume) && (got || says(Told::Done))).then_some(JobKind::Water)
}

/// "Chaulai 28 april ko daali, when is it cut": a crop and a day gone by, told with a word for done, and picking asked
/// about.
pub(super) fn put_in(told: &[Hit<Told>], names: &[Hit<Named>], dated: bool) -> Option<JobKind> {
    let says = |what: Told| told.iter().any(|hit| hit.meaning == what);
    let crop = names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)));
    let stuff = names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)));
    let picking = says(Told::Thing(JobKind::Pick)) || says(Told::Point(Point::Wait));
    (crop && dated && !stuff && picking && says(Told::Done)).then_some(JobKind::Sow)
}
