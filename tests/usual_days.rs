//! Weeks of usual days: rain in showers, and how dry the air of a place is where its humidity is not known.

use chrono::NaiveDate;
use rooftend::garden::{Bed, BedId, BedKind, Measure, RainExposure, Shape};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::{WaterWeek, water_week};
use rooftend::weather::Weather;
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

fn weather(place: &str) -> Weather<'static> {
    Weather::of_place(KNOWN.places.iter().find(|known| known.id == place).unwrap())
}

fn bed(kind: BedKind, measures: &[&str]) -> Bed {
    let length = |at: usize| Measure::read(measures[at]).unwrap();
    let shape = match kind {
        BedKind::Basket | BedKind::Pot => Shape::Round { diameter: length(0), depth: length(1) },
        _ => Shape::Box { length: length(0), width: length(1), depth: length(2) },
    };
    Bed::bare(BedId::new("roof/bed").unwrap(), kind, shape)
}

fn week(bed: &Bed, crop: &str, place: &str, today: NaiveDate) -> WaterWeek {
    let standing = Standing { crop: &KNOWN.crops[crop], microgreen: false, start: None, plants: None };
    let mix = &KNOWN.mixes["house"];
    let weather = weather(place);
    water_week(&Surroundings { bed, mix, standing: vec![standing], weather, sun_hours: 6.0, today }).expect("a week")
}

fn a_box() -> Bed {
    bed(BedKind::Box, &["4 ft", "3 ft", "12 in"])
}

/// In the rains a box is watered now and then, in the dry spells: at most every third day where it pours (common
/// practice), a little oftener where it rains less, and not never for months.
#[test]
fn a_box_in_the_usual_monsoon() {
    for (place, most) in [("wardha-grid", 7.0 / 3.0), ("hyderabad", 3.5)] {
        for day in "2026-07-06".parse::<NaiveDate>().unwrap().iter_days().take(66).step_by(5) {
            let week = week(&a_box(), "amaranth", place, day);
            let shown = format!(
                "{place} {day}: {:.1} ({:.1} to {:.1}), {:.0} to {:.0} L, {:.1} wet days",
                week.rhythm,
                week.waterings.low(),
                week.waterings.high(),
                week.litres.low().as_litres(),
                week.litres.high().as_litres(),
                week.wet_days()
            );
            println!("{shown}");
            assert!(week.rhythm > 0.0 && week.rhythm <= most, "{shown}");
            // Such a week is neither sure to be wet nor sure to be dry.
            assert!(week.waterings.low() < 1.0 && week.waterings.high() > 3.5, "{shown}");
        }
    }
}

/// Before the rains and under a roof nothing changes: what is lost is brought.
#[test]
fn usual_rain_counts_only_where_it_falls() {
    let mut bed = a_box();
    let may: NaiveDate = "2026-05-10".parse().unwrap();
    let july: NaiveDate = "2026-07-20".parse().unwrap();
    assert!(week(&bed, "amaranth", "wardha-grid", may).rhythm >= 7.0);
    let open = week(&bed, "amaranth", "wardha-grid", july);
    bed.rain = Some(RainExposure::Part);
    let part = week(&bed, "amaranth", "wardha-grid", july);
    bed.rain = Some(RainExposure::None);
    let none = week(&bed, "amaranth", "wardha-grid", july);
    let litres = |week: &WaterWeek| week.litres.value().as_litres();
    assert!(litres(&open) <= litres(&part) && litres(&part) < litres(&none));
    let lost: f64 = none.days.iter().map(|(_, loss)| loss.loss.as_millimetres()).sum();
    assert!((litres(&none) - lost * 1.2192 * 0.9144).abs() < 0.05 * litres(&none), "{} {lost}", litres(&none));
}

/// Usual days change slowly, and so do the litres of a week, also where the rains begin and end.
#[test]
fn usual_weeks_change_slowly() {
    for (kind, measures, crop) in
        [(BedKind::Box, vec!["4 ft", "3 ft", "12 in"], "amaranth"), (BedKind::Basket, vec!["14 in", "7 in"], "mint")]
    {
        let bed = bed(kind, &measures);
        let days = "2026-01-01".parse::<NaiveDate>().unwrap().iter_days().take(365);
        let litres: Vec<f64> =
            days.map(|day| week(&bed, crop, "wardha-grid", day).litres.value().as_litres()).collect();
        let most = litres.windows(2).map(|pair| (pair[1] / pair[0] - 1.0).abs()).fold(0.0, f64::max);
        println!(
            "{crop}: {:.1} to {:.1} L, at most {most:.3} from day to day",
            litres.iter().copied().fold(f64::MAX, f64::min),
            litres.iter().copied().fold(0.0, f64::max)
        );
        assert!(most < 0.12, "{crop}: {most} from one day to the next");
    }
}

/// Classes of the World Atlas of Desertification, of cities whose class nobody doubts; places with humidity of their
/// own need no such word.
#[test]
fn dry_air_is_told_by_the_year() {
    let index = |id: &str| {
        let place = KNOWN.places.iter().find(|place| place.id == id).unwrap();
        rooftend::weather::aridity::aridity_index(place).unwrap()
    };
    for (id, least, most) in [
        ("phoenix", 0.0, 0.2),
        ("cairo", 0.0, 0.05),
        ("riyadh", 0.0, 0.2),
        ("jodhpur", 0.05, 0.5),
        ("lahore", 0.2, 0.5),
        ("mumbai", 0.65, 5.0),
        ("kolkata", 0.65, 5.0),
        ("singapore", 0.65, 5.0),
    ] {
        let index = index(id);
        assert!((least..most).contains(&index), "{id}: {index}");
    }
    assert!(weather("phoenix").arid().unwrap() < 0.2);
}
