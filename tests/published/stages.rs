//! Lengths of our crops' seasons at the pace of the weather, against the rows that FAO-56 table 11 prints for
//! a region, on normals of such a region.

use super::table::rows;
use chrono::NaiveDate;
use rooftend::garden::Start;
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::stage::{stage_days, table_days};
use rooftend::needs::surroundings::Standing;
use rooftend::weather::Weather;

/// The middle of the planting month stands for it, so 15 %.
const WITHIN: f64 = 0.15;

#[track_caller]
fn case(known: &Knowledge, crop: &str, place: &str, planted: &str, (name, region, planting): (&str, &str, &str)) {
    let row = rows("stages.csv")
        .into_iter()
        .find(|row| row.text("crop") == name && row.text("region") == region && row.text("planting") == planting);
    let published = row.expect("a row").number("total_d");
    let place = known.places.iter().find(|known| known.id == place).expect("a place");
    let planted: NaiveDate = planted.parse().unwrap();
    let crop = &known.crops[crop];
    let standing = Standing { crop, microgreen: false, start: Some(Start::Planted(planted)), plants: None };
    let weather = Weather::of_place(place);
    let whole = stage_days(crop).total();
    let over = planted.iter_days().find(|day| table_days(&standing, &weather, *day).is_some_and(|days| days >= whole));
    let days = (over.expect("it ends") - planted).num_days() as f64;
    assert!((days / published - 1.0).abs() <= WITHIN, "{name}, {region}, {planting}: {days}, {published} printed");
}

#[test]
fn seasons_take_as_long_as_printed() {
    let known = Knowledge::read(&Files::embedded()).0;
    case(&known, "tomato", "lahore", "2026-01-15", ("tomato", "arid region", "Jan"));
    case(&known, "tomato", "lahore", "2025-10-31", ("tomato", "arid region", "Oct/Nov"));
    case(&known, "tomato", "phoenix", "2026-01-15", ("tomato", "Calif. desert USA", "Jan"));
    case(&known, "cauliflower", "phoenix", "2025-09-15", ("cauliflower", "Calif. desert USA", "Sep"));
    case(&known, "chilli", "lahore", "2025-10-15", ("sweet pepper (capsicum)", "arid region", "Oct"));
}
