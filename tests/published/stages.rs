//! Lengths of our crops' seasons at the pace of the weather, against the rows that FAO-56 table 11 prints for
//! a region, on normals of such a region.

use super::table::{Row, rows};
use chrono::NaiveDate;
use rooftend::agronomy::thermal_time::{DayTemperatures, Thresholds, thermal_time};
use rooftend::garden::Start;
use rooftend::knowledge::{Crop, Files, Knowledge, Place};
use rooftend::needs::stage::{stage_days, table_days};
use rooftend::needs::surroundings::Standing;
use rooftend::quantity::Temperature;
use rooftend::weather::Weather;

/// One station stands for a region and the middle of the planting month for the day: so much beyond a span.
const GIVEN: f64 = 0.15;

/// A row of the table, of one of our crops, with places of its region and the middle of its planting.
struct Case {
    crop: &'static str,
    row: (&'static str, &'static str, &'static str),
    places: &'static [&'static str],
    planted: &'static str,
}

const ARID: &[&str] = &["lahore", "phoenix"];
const DESERT: &[&str] = &["phoenix"];
const MEDITERRANEAN: &[&str] = &["tunis"];

const fn case(
    crop: &'static str,
    row: (&'static str, &'static str, &'static str),
    places: &'static [&'static str],
    planted: &'static str,
) -> Case {
    Case { crop, row, places, planted }
}

const CASES: [Case; 18] = [
    case("tomato", ("tomato", "arid region", "Jan"), ARID, "2026-01-15"),
    case("tomato", ("tomato", "arid region", "Oct/Nov"), ARID, "2025-10-31"),
    case("tomato", ("tomato", "Calif. desert USA", "Jan"), DESERT, "2026-01-15"),
    case("tomato", ("tomato", "Mediterranean", "Apr/May"), MEDITERRANEAN, "2026-04-30"),
    case("cauliflower", ("cauliflower", "Calif. desert USA", "Sep"), DESERT, "2025-09-15"),
    case("chilli", ("sweet pepper (capsicum)", "Europe and Mediterranean", "Apr/Jun"), MEDITERRANEAN, "2026-05-15"),
    case("chilli", ("sweet pepper (capsicum)", "arid region", "Oct"), ARID, "2025-10-15"),
    case("lettuce", ("lettuce", "Mediterranean", "Apr"), MEDITERRANEAN, "2026-04-15"),
    case("lettuce", ("lettuce", "Mediterranean", "Nov/Jan"), MEDITERRANEAN, "2025-12-15"),
    case("lettuce", ("lettuce", "arid region", "Oct/Nov"), ARID, "2025-10-31"),
    case("lettuce", ("lettuce", "Mediterranean", "Feb"), MEDITERRANEAN, "2026-02-15"),
    case("spinach", ("spinach", "Mediterranean", "Apr; Sep/Oct"), MEDITERRANEAN, "2026-04-15"),
    case("spinach", ("spinach", "Mediterranean", "Apr; Sep/Oct"), MEDITERRANEAN, "2025-09-30"),
    case("spinach", ("spinach", "arid region", "Nov"), ARID, "2025-11-15"),
    case("radish", ("radish", "Mediterranean; Europe", "Mar/Apr"), MEDITERRANEAN, "2026-03-31"),
    case("radish", ("radish", "arid region", "winter"), ARID, "2025-12-31"),
    case("french-bean", ("bean green", "Calif., Mediterranean", "Feb/Mar"), MEDITERRANEAN, "2026-02-28"),
    // The coast of Tunis stands for that of Lebanon.
    case("french-bean", ("bean green", "Calif., Egypt, Lebanon", "Aug/Sep"), MEDITERRANEAN, "2026-08-31"),
];

/// Rows of our crops that are not looked at, and why.
const LEFT_OUT: [(&str, &str, &str, &str); 1] =
    [("tomato", "Calif. USA", "Apr/May", "no normals of that valley were read")];

/// Rows that do not follow from the others of their crop, and why: with two rows only, each is the other's sole
/// witness, and by degree days that of late summer holds a quarter more than that of spring.
const STANDS_APART: [(&str, &str); 2] = [("bean green", "Aug/Sep"), ("bean green", "Feb/Mar")];

fn known() -> Knowledge {
    Knowledge::read(&Files::embedded()).0
}

fn row(case: &Case) -> Row {
    let (name, region, planting) = case.row;
    let found = rows("stages.csv")
        .into_iter()
        .find(|row| row.text("crop") == name && row.text("region") == region && row.text("planting") == planting);
    found.unwrap_or_else(|| panic!("{:?} is no row", case.row))
}

/// The printed totals of a row: one, or one for spring and one for autumn.
fn totals(row: &Row) -> Vec<f64> {
    row.text("total_d").split('/').map(|total| total.parse().unwrap()).collect()
}

/// What the row prints for the planting of a case.
fn printed(case: &Case) -> f64 {
    let totals = totals(&row(case));
    if case.planted.contains("-09-") { *totals.last().unwrap() } else { totals[0] }
}

/// From the shortest to the longest season that the table prints for a crop.
fn span(name: &str) -> (f64, f64) {
    let all: Vec<f64> = rows("stages.csv").iter().filter(|row| row.text("crop") == name).flat_map(totals).collect();
    (all.iter().copied().fold(f64::MAX, f64::min), all.iter().copied().fold(0.0, f64::max))
}

fn place(known: &Knowledge, id: &str) -> Place {
    if let Some(place) = known.places.iter().find(|place| place.id == id) {
        return place.clone();
    }
    let mut place = known.places[0].clone();
    place.id = id.to_owned();
    for row in rows("normals.csv").iter().filter(|row| row.text("place") == id) {
        place.latitude_deg = row.number("latitude_deg");
        place.longitude_deg = row.number("longitude_deg");
        place.elevation_m = row.number("elevation_m");
        let month = &mut place.months[row.number("month") as usize - 1];
        month.tmax = Temperature::celsius(row.number("tmax_c"));
        month.tmin = Temperature::celsius(row.number("tmin_c"));
    }
    place
}

/// The degree days of a row's printed days, the mean of its region's places.
fn degree_days(known: &Knowledge, case: &Case) -> f64 {
    let heat = &known.crops[case.crop].heat;
    let thresholds = Thresholds { base: heat.base.value(), upper: Some(heat.upper.value()) };
    let sums = case.places.iter().map(|id| {
        let place = place(known, id);
        let weather = Weather::of_place(&place);
        let days = weather.from(case.planted.parse().unwrap()).take(printed(case) as usize);
        let sum = |day: rooftend::weather::Day| {
            thermal_time(DayTemperatures { tmax: day.tmax, tmin: day.tmin }, thresholds).as_degree_days()
        };
        days.map(sum).sum::<f64>()
    });
    sums.sum::<f64>() / case.places.len() as f64
}

/// Days from planting until the season is over.
fn length(crop: &Crop, place: &Place, planted: &str) -> f64 {
    let planted: NaiveDate = planted.parse().unwrap();
    let standing = Standing { crop, microgreen: false, start: Some(Start::Planted(planted)), plants: None };
    let weather = Weather::of_place(place);
    let whole = stage_days(crop).total();
    let over = planted.iter_days().find(|day| table_days(&standing, &weather, *day).is_some_and(|days| days >= whole));
    (over.expect("it ends") - planted).num_days() as f64
}

#[track_caller]
fn within_span(case: &Case, place: &str, days: f64, what: &str) {
    let (low, high) = span(case.row.0);
    let shown = format!("{what} {:?} at {place}: {days} days, {} printed, {low} to {high}", case.row, printed(case));
    println!("{shown}");
    assert!(days >= low * (1.0 - GIVEN) && days <= high * (1.0 + GIVEN), "{shown}");
}

#[test]
fn seasons_lie_in_the_span_that_the_table_prints() {
    let known = known();
    let mut near = 0;
    let mut all = 0;
    for case in &CASES {
        for id in case.places {
            let days = length(&known.crops[case.crop], &place(&known, id), case.planted);
            within_span(case, id, days, "all rows:");
            all += 1;
            near += usize::from((days / printed(case) - 1.0).abs() <= GIVEN);
        }
    }
    println!("{near} of {all} within {GIVEN} of their own row");
    // Lettuce of Nov/Jan (a third long) and of Feb (a quarter short): by degree days one holds twice the other.
    assert_eq!((near, all), (22, 24));
}

/// Nothing is fitted to the row it is checked by: the season as the crop's other rows alone would give it.
#[test]
fn each_row_follows_from_the_others() {
    let known = known();
    let mut alone = Vec::new();
    let mut apart = 0;
    for case in &CASES {
        let others: Vec<f64> = CASES
            .iter()
            .filter(|other| other.crop == case.crop && !std::ptr::eq(*other, case))
            .map(|other| degree_days(&known, other))
            .collect();
        if others.is_empty() {
            alone.push(case.crop);
            continue;
        }
        let season = others.iter().sum::<f64>() / others.len() as f64;
        let own = known.crops[case.crop].stages.thermal_time.as_ref().expect("a season").value().as_degree_days();
        if STANDS_APART.contains(&(case.row.0, case.row.2)) {
            apart += 1;
            continue;
        }
        for id in case.places {
            // The same clock, stopped at the other rows' sum instead of the crop's own.
            let mut crop = known.crops[case.crop].clone();
            let part = season / own;
            let longer = |days: &mut rooftend::knowledge::Fact<f64>| days.is = days.is.map(|days| days * part);
            let stages = &mut crop.stages;
            let lengths =
                [&mut stages.initial_days, &mut stages.development_days, &mut stages.mid_days, &mut stages.late_days];
            lengths.into_iter().for_each(longer);
            let season = stages.thermal_time.as_mut().expect("a season");
            season.is = season.is.map(|sum| sum * part);
            let days = length(&crop, &place(&known, id), case.planted);
            within_span(case, id, days, "other rows:");
        }
    }
    // One row each: it says nothing of itself.
    assert_eq!(alone, ["cauliflower"]);
    assert_eq!(apart, STANDS_APART.len());
}

/// The sums of the crop files are the means of their rows.
#[test]
fn seasons_of_the_crop_files_are_those_of_the_rows() {
    let known = known();
    for crop in ["tomato", "cauliflower", "chilli", "lettuce", "spinach", "radish", "french-bean"] {
        let sums: Vec<f64> =
            CASES.iter().filter(|case| case.crop == crop).map(|case| degree_days(&known, case)).collect();
        let mean = sums.iter().sum::<f64>() / sums.len() as f64;
        let season = known.crops[crop].stages.thermal_time.as_ref().expect("a season");
        let kept = season.value().as_degree_days();
        println!("{crop}: {mean:.0} over {sums:.0?}, {kept} kept");
        assert!((kept / mean - 1.0).abs() < 0.01, "{crop}: {kept}, {mean} summed");
    }
}

#[test]
fn every_row_is_looked_at_or_named() {
    let all = rows("stages.csv");
    let looked_at =
        |row: &&Row| CASES.iter().any(|case| case.row == (row.text("crop"), row.text("region"), row.text("planting")));
    let left: Vec<&Row> = all.iter().filter(|row| !looked_at(row)).collect();
    assert_eq!((all.len(), left.len()), (18, LEFT_OUT.len()));
    for row in left {
        let named = LEFT_OUT.iter().any(|(crop, region, planting, why)| {
            !why.is_empty()
                && (*crop, *region, *planting) == (row.text("crop"), row.text("region"), row.text("planting"))
        });
        assert!(named, "{} {} {}", row.text("crop"), row.text("region"), row.text("planting"));
    }
}
