//! Tables in, tables out.

use super::{ComputeError, daylight, emergence, reference_et, water_balance};
use crate::quantity::{Estimate, Temperature, ThermalTime};

fn text(run: impl FnOnce(&mut Vec<u8>) -> Result<(), ComputeError>) -> String {
    let mut output = Vec::new();
    match run(&mut output) {
        Ok(()) => String::from_utf8(output).unwrap(),
        Err(refusal) => {
            assert!(output.is_empty(), "something was written before the refusal");
            refusal.to_string()
        }
    }
}

fn cells(text: &str, row: usize) -> Vec<String> {
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes());
    reader.records().nth(row).unwrap().unwrap().iter().map(str::to_owned).collect()
}

#[track_caller]
fn refused(input: &str, expected: &str) {
    assert_eq!(text(|output| reference_et(input.as_bytes(), output)), expected, "{input}");
}

const COLUMNS: &str = "latitude_deg,elevation_m,day_of_year,tmax_c,tmin_c";

#[test]
fn lyon_in_july_with_temperatures_only() {
    // FAO-56 example 20 prints 4.56 mm, and 5.0 mm by eq. 52.
    let input = format!("\u{feff}note,{COLUMNS}\n\"a, \"\"b\"\"\",45.72,200,196,26.6,14.8\n");
    let output = text(|output| reference_et(input.as_bytes(), output));
    let row = cells(&output, 1);
    assert_eq!(row[0], "a, \"b\"");
    assert_eq!(row[1..6], ["45.72", "200", "196", "26.6", "14.8"]);
    assert!((row[6].parse::<f64>().unwrap() - 4.56).abs() < 0.005, "{row:?}");
    assert!((row[11].parse::<f64>().unwrap() - 5.0).abs() < 0.05, "{row:?}");
    let method = "fao56 eq. 6; solar_mj_m2 from tmax_c and tmin_c by eq. 50; ea_kpa from tmin_c by eq. 48; wind_2m_m_s taken as 2";
    assert_eq!(row[12], method);
    assert_eq!(output.lines().count(), 2);
}

#[test]
fn a_date_or_a_day_of_the_year() {
    let by_day = text(|output| reference_et(format!("{COLUMNS}\n21,300,138,43,29\n").as_bytes(), output));
    let dated = "latitude_deg,elevation_m,date,tmax_c,tmin_c\n21,300,2026-05-18,43,29\n";
    let by_date = text(|output| reference_et(dated.as_bytes(), output));
    assert_eq!(cells(&by_day, 1)[5..], cells(&by_date, 1)[5..]);
}

#[test]
fn refusals_name_row_and_column() {
    refused("latitude_deg,elevation_m,date,tmin_c\n", "header (line 1): column tmax_c is missing; °C expected");
    refused(
        "latitude_deg,elevation_m,tmax_c,tmin_c\n",
        "header (line 1): column day_of_year is missing; 1 to 366, or a column date, expected",
    );
    refused("tmax_c,tmax_c\n", "header (line 1): column tmax_c stands there twice");
    refused(
        &format!("{COLUMNS}\n21,300,138,43,29\n21,300,138,4x,29\n"),
        "row 2 (line 3), column tmax_c: \"4x\" was found; a number from -60 to 60 °C expected",
    );
    refused(
        &format!("{COLUMNS}\n21,300,138,,29\n"),
        "row 1 (line 2), column tmax_c is empty; a number from -60 to 60 °C expected",
    );
    refused(
        &format!("{COLUMNS}\n21,300,138,NaN,29\n"),
        "row 1 (line 2), column tmax_c: \"NaN\" was found; a number from -60 to 60 °C expected",
    );
    refused(
        &format!("{COLUMNS}\n21,300,138,20,29\n"),
        "row 1 (line 2), column tmin_c: \"29\" was found; tmax_c (20) or less expected",
    );
    refused(
        &format!("{COLUMNS}\n21,300,1.5,40,29\n"),
        "row 1 (line 2), column day_of_year: \"1.5\" was found; a whole number from 1 to 366 expected",
    );
    refused(
        &format!("{COLUMNS},rh_max_percent,rh_min_percent\n21,300,138,40,29,30,60\n"),
        "row 1 (line 2), column rh_min_percent: \"60\" was found; rh_max_percent (30) or less expected",
    );
    refused(
        &format!("{COLUMNS},ea_kpa\n21,300,138,40,29,9\n"),
        "row 1 (line 2), column ea_kpa: \"9\" was found; no more than the air can hold at tmax_c (40 °C) expected",
    );
    refused(
        "latitude_deg,elevation_m,date,tmax_c,tmin_c\n21,300,2026-02-30,40,29\n",
        "row 1 (line 2), column date: \"2026-02-30\" was found; a date like 2026-05-18 expected",
    );
}

#[test]
fn an_event_that_does_not_happen_is_empty() {
    let input = "latitude_deg,longitude_deg,date\n78.2,15.6,2026-06-21\n19.08,72.88,2026-06-21\n";
    let output = text(|output| daylight(input.as_bytes(), output));
    assert_eq!(cells(&output, 1)[3..], ["24", "", ""]);
    assert!(cells(&output, 2)[4].starts_with("2026-06-21T00:3"), "{output}");
}

#[test]
fn days_to_emergence_of_a_crop() {
    let facts = |crop: &str| {
        let base = Estimate::exactly(Temperature::celsius(10.0));
        (crop == "amaranth").then(|| (base, Estimate::exactly(ThermalTime::degree_days(60.0))))
    };
    let run = |rows: &str| {
        let input = format!("crop,temperature_c\n{rows}");
        text(|output| emergence(input.as_bytes(), output, facts))
    };
    assert_eq!(cells(&run("amaranth,30\n"), 1), ["amaranth", "30", "3", "3", "3"]);
    assert_eq!(cells(&run("amaranth,8\n"), 1), ["amaranth", "8", "", "", ""]);
    let refusal = run("amaranth,30\nkumquat,30\n");
    assert!(refusal.starts_with("row 2 (line 3), column crop: \"kumquat\" was found;"), "{refusal}");
}

/// The season of the published table, asked for through a file (Dr within 0.1 mm).
#[test]
fn a_season_through_the_files() {
    let parameters = r#"{"latitude_deg": 23.0, "elevation_m": 55, "kcb": [0.15, 1.1, 0.7],
        "stage_days": [30, 40, 45, 30], "height_m": [0.05, 0.6], "root_depth_m": [0.25, 0.7],
        "depletion_fraction": 0.4, "field_capacity": 0.29, "wilting_point": 0.14, "initial_water": 0.25,
        "evaporation_layer_m": 0.1, "readily_evaporable_mm": 9.0, "irrigation_wetted_fraction": 0.8}"#;
    let published = include_str!("../../../tests/published/waterbalance_pyfao56.csv");
    let renamed = [
        ("srad_mj", "solar_mj_m2"),
        ("rhmax_pct", "rh_max_percent"),
        ("rhmin_pct", "rh_min_percent"),
        ("u2_ms", "wind_2m_m_s"),
        ("irrig_mm", "irrigation_mm"),
        ("irrig_fw", "irrigation_wetted_fraction"),
        ("kcb", "published_kcb"),
        ("ks", "published_ks"),
        ("ke", "published_ke"),
        ("etc_mm", "published_etc_mm"),
        ("eta_mm", "published_eta_mm"),
    ];
    let (header, rows) = published.split_once('\n').unwrap();
    let mut names = Vec::new();
    for name in header.trim().split(',') {
        names.push(renamed.iter().find(|(old, _)| *old == name).map_or(name, |&(_, new)| new));
    }
    let input = format!("{}\n{rows}", names.join(","));
    let output = text(|output| water_balance(input.as_bytes(), parameters.as_bytes(), output));
    let mut reader = csv::Reader::from_reader(output.as_bytes());
    let columns = reader.headers().unwrap().clone();
    let at = |name: &str| columns.iter().position(|column| column == name).unwrap();
    let mut days = 0;
    for row in reader.records().map(Result::unwrap) {
        let number = |name: &str| row[at(name)].parse::<f64>().unwrap();
        for (ours, theirs) in
            [("depletion_mm", "dr_mm"), ("eta_mm", "published_eta_mm"), ("deep_percolation_mm", "dp_mm")]
        {
            assert!((number(ours) - number(theirs)).abs() < 0.1, "{} {ours}", &row[at("date")]);
        }
        days += 1;
    }
    assert_eq!(days, 150);
}

#[track_caller]
fn season_refused(parameters: &str, input: &str, expected: &str) {
    let refusal = text(|output| water_balance(input.as_bytes(), parameters.as_bytes(), output));
    assert!(refusal.contains(expected), "{refusal}");
}

#[test]
fn a_season_that_cannot_be() {
    let parameters = |wilting_point: f64| {
        format!(
            r#"{{"kcb": [0.15, 1.1, 0.7], "stage_days": [30, 40, 45, 30], "height_m": [0.05, 0.6],
            "root_depth_m": [0.25, 0.7], "depletion_fraction": 0.4, "field_capacity": 0.29,
            "wilting_point": {wilting_point}, "initial_water": 0.25, "evaporation_layer_m": 0.1,
            "readily_evaporable_mm": 9.0, "irrigation_wetted_fraction": 0.8}}"#
        )
    };
    let ready = "date,reference_et_mm,rh_min_percent,rain_mm,irrigation_mm\n";
    season_refused(&parameters(0.4), ready, "field_capacity must lie above wilting_point");
    season_refused(&parameters(1.4), ready, "wilting_point: fraction 1.4");
    season_refused("{}", ready, "missing field `kcb`");
    let gap = format!("{ready}2026-05-01,5,30,0,0\n2026-05-03,5,30,0,0\n");
    season_refused(&parameters(0.14), &gap, "row 2 (line 3), column date: \"2026-05-03\"");
    let dry = format!("{ready}2026-05-01,5,,0,0\n");
    season_refused(&parameters(0.14), &dry, "column rh_min_percent is empty");
    let placeless = "date,tmax_c,tmin_c,rain_mm,irrigation_mm\n2026-05-01,40,28,0,0\n";
    season_refused(&parameters(0.14), placeless, "latitude_deg: is missing");
    let mistyped = format!("{ready}2026-05-01,5,30,2 mm,0\n");
    season_refused(&parameters(0.14), &mistyped, "column rain_mm: \"2 mm\" was found");
}
