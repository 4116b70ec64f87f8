//! What must hold of weights, mix, room and seed for any size, on the knowledge base as it stands.

use proptest::prelude::*;
use rooftend::garden::{Bed, BedId, BedKind, Measure, Shape};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::build::{USUAL_TRAY, parts_need, total as parts_total};
use rooftend::needs::load::{BedLoad, bed_load, site_load};
use rooftend::needs::mix::{blocks_need, mix_need, top_up_need, total};
use rooftend::needs::seed::{Sown, seed_need};
use rooftend::needs::space::bed_places;
use rooftend::needs::surroundings::vessel;
use rooftend::quantity::{Area, Estimate, Length, Mass, RoofLoad, Unit, Volume, Written};
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

fn metres(value: f64) -> Measure<Length> {
    Measure::of(Written { value, unit: Unit::Metre }).unwrap()
}

fn a_box(length: f64, width: f64, depth: f64) -> Bed {
    let shape = Shape::Box { length: metres(length), width: metres(width), depth: metres(depth) };
    Bed::bare(BedId::new("roof/bed").unwrap(), BedKind::Box, shape)
}

fn a_bag(litres: f64) -> Bed {
    let volume = Measure::of(Written { value: litres, unit: Unit::Litre }).unwrap();
    Bed::bare(BedId::new("roof/bed").unwrap(), BedKind::Bag, Shape::Bag { volume, depth: None })
}

fn load(bed: &Bed) -> BedLoad {
    bed_load(bed, &KNOWN.mixes[bed.mix_counted()]).unwrap()
}

fn rises(less: &Estimate<Mass>, more: &Estimate<Mass>) -> bool {
    less.low() <= more.low() && less.value() <= more.value() && less.high() <= more.high()
}

proptest! {
    /// More depth is more weight on the same ground; full of water is never lighter than drained.
    #[test]
    fn deeper_is_heavier(length in 0.3f64..3.0, width in 0.2f64..1.5, depth in 0.08f64..0.6, more in 0.0f64..0.4) {
        let (shallow, deep) = (load(&a_box(length, width, depth)), load(&a_box(length, width, depth + more)));
        prop_assert!(rises(&shallow.wet(), &deep.wet()));
        prop_assert!(shallow.load().high() <= deep.load().high());
        for load in [shallow, deep] {
            prop_assert!(rises(&load.soaked(), &load.waterlogged()));
            prop_assert!(load.wet().low() <= load.soaked().low() && load.waterlogged().high() <= load.wet().high());
            // Water and light solids: no such bed is heavier than its brim full of wet garden soil.
            let brim = length * width * 1000.0;
            prop_assert!(load.mix_full.high() <= Mass::kilograms(brim * (depth + more) * 2.0));
        }
    }

    /// The load is the weight over the ground, whatever the bed; a second such bed beside it changes nothing.
    #[test]
    fn a_load_is_weight_over_ground(litres in 3.0f64..200.0) {
        let bag = load(&a_bag(litres));
        let by_hand = bag.wet().high().as_kilograms() * 9.806_65 / 1000.0 / bag.footprint.as_square_metres();
        prop_assert!((bag.load().high().as_kilonewtons_per_square_metre() - by_hand).abs() < 1e-9);
        let two = site_load(&[bag, bag]).unwrap();
        prop_assert!((two.beds.high() / bag.wet().high() - 2.0).abs() < 1e-9);
        prop_assert!(two.total.low() > two.beds.low() && two.total.value() > two.beds.value());
        prop_assert!(two.total.high() >= two.beds.high() + two.people.high());
    }

    /// Scaling a box scales its mix and each of its parts.
    #[test]
    fn a_box_twice_as_long_takes_twice_the_mix(length in 0.3f64..3.0, width in 0.2f64..1.5, depth in 0.1f64..0.6, times in 1.0f64..5.0) {
        let mix = &KNOWN.mixes["house"];
        let need = |length| mix_need(&vessel(&a_box(length, width, depth).shape), 1.0, mix, &KNOWN);
        let (one, more) = (need(length), need(length * times));
        let twice = |a: Volume, b: Volume| (b / a - times).abs() < 1e-9;
        prop_assert!(twice(one.loose.low(), more.loose.low()) && twice(one.settled.high(), more.settled.high()));
        for (part, scaled) in one.parts.iter().zip(&more.parts) {
            prop_assert!(part.litres.zip(scaled.litres).is_none_or(|(a, b)| twice(a.value(), b.value())));
        }
    }

    /// A list for several beds is the sum of their lists, not of rounded ones; each material stands once.
    #[test]
    fn one_list_is_the_sum_of_all(first in 0.3f64..3.0, second in 0.3f64..3.0) {
        let tray = KNOWN.mixes["tray"].clone();
        let house = &KNOWN.mixes["house"];
        let need = |length, mix| mix_need(&vessel(&a_box(length, 0.6, 0.3).shape), 1.0, mix, &KNOWN);
        let (one, other) = (need(first, house), need(second, &tray));
        let all = total(&[one.clone(), other.clone()]);
        prop_assert!(((all.loose.high() - one.loose.high()) / other.loose.high() - 1.0).abs() < 1e-9);
        let mut names: Vec<&str> = all.parts.iter().map(|part| part.material.as_str()).collect();
        names.sort_unstable();
        names.dedup();
        prop_assert_eq!(names.len(), all.parts.len());
        let coir = |need: &rooftend::needs::mix::MixNeed| {
            let part = need.parts.iter().find(|part| part.material == "coco-peat");
            part.and_then(|part| part.litres).map_or(0.0, |litres| litres.value().as_litres())
        };
        prop_assert!((coir(&all) - coir(&one) - coir(&other)).abs() < 1e-9);
        let trays = (Length::feet(USUAL_TRAY.0), Length::feet(USUAL_TRAY.1));
        let parts = [first, second].map(|length| parts_need(BedKind::Box, &a_box(length, 0.6, 0.3).shape, trays));
        prop_assert_eq!(parts_total(&parts).trays, parts[0].trays + parts[1].trays);
    }

    /// A bed of two plants' room wants seed for two; more plants never want less seed.
    #[test]
    fn more_plants_want_more_seed(plants in 1.0f64..500.0, more in 0.0f64..200.0) {
        let crop = &KNOWN.crops["coriander"];
        let sowing = crop.sowing.as_ref().expect("seed facts");
        let need = |plants| seed_need(crop, sowing, Sown::Plants(Estimate::exactly(plants)));
        let (few, many) = (need(plants), need(plants + more));
        prop_assert!(rises(&few.grams, &many.grams));
        prop_assert!(few.seeds.unwrap().low() >= plants, "at least one seed a plant");
    }

    /// A larger bed has room for no fewer plants of any crop.
    #[test]
    fn a_longer_box_has_no_less_room(length in 0.3f64..3.0, more in 0.0f64..1.0) {
        for crop in KNOWN.crops.values() {
            let plants = |length| bed_places(crop, BedKind::Box, &a_box(length, 0.6, 0.3).shape).plants;
            let (small, large) = (plants(length), plants(length + more));
            prop_assert!(small.low() <= large.low() && small.value() <= large.value() && small.high() <= large.high());
        }
    }
}

/// By hand: 1.2 × 0.9 m sunk by 5 cm lack 54 L settled.
#[test]
fn topping_up_fills_what_sank() {
    let need = top_up_need(Area::square_metres(1.08), Length::centimetres(5.0), &KNOWN.mixes["house"], &KNOWN);
    assert!((need.settled.value().as_litres() - 54.0).abs() < 1e-9);
    assert!(need.loose.low() > need.settled.value());
}

/// By hand: 60 L from a coir that gives 12 to 15 L a kg are 4 to 5 kg.
#[test]
fn the_least_swelling_asks_for_the_most() {
    let litres = Estimate::exactly(Volume::litres(60.0));
    let need = blocks_need(&litres, &Estimate::between(12.0, 13.0, 15.0).unwrap());
    assert!((need.low().as_kilograms() - 4.0).abs() < 1e-9 && (need.high().as_kilograms() - 5.0).abs() < 1e-9);
}

/// By hand: 100 kg on a quarter of a square metre, under 9.80665 m/s².
#[test]
fn kilograms_on_a_footprint() {
    let load = RoofLoad::of(Mass::kilograms(100.0), Area::square_metres(0.25));
    assert!((load.as_kilonewtons_per_square_metre() - 3.922_66).abs() < 1e-6);
}
