//! A year of daily answers on usual days at three places, for three beds, drawn as `target/year-*.svg`.

#![allow(clippy::disallowed_methods, reason = "an example draws files")]

use chrono::{Datelike, NaiveDate};
use rooftend::garden::{Bed, BedId, BedKind, Measure, Shape, Sides};
use rooftend::knowledge::{Files, Knowledge, Place};
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::{WaterWeek, water_week};
use rooftend::weather::Weather;
use std::fmt::Write as _;
use std::path::Path;

const PLACES: [&str; 3] = ["wardha-grid", "nairobi", "phoenix"];
const WIDTH: f64 = 1100.0;
const PANEL: f64 = 170.0;
const LEFT: f64 = 70.0;
const GAP: f64 = 40.0;

fn beds() -> Vec<(&'static str, &'static str, Bed)> {
    let length = |text| Measure::read(text).expect("a length");
    let bed = |name, kind, shape| Bed::bare(BedId::new(&format!("roof/{name}")).expect("an id"), kind, shape);
    let greens = Shape::Box { length: length("4 ft"), width: length("3 ft"), depth: length("12 in") };
    let basket = Shape::Round { diameter: length("14 in"), depth: length("7 in") };
    let bag = Shape::Bag { volume: Measure::read("40 L").expect("a volume"), depth: Some(length("14 in")) };
    let mut cloth = bed("bag", BedKind::Bag, bag);
    cloth.sides = Some(Sides::Cloth);
    vec![
        ("amaranth, box 4 x 3 ft, 12 in deep", "amaranth", bed("box", BedKind::Box, greens)),
        ("tomato, cloth bag 40 L", "tomato", cloth),
        ("mint, basket 14 in, 7 in deep", "mint", bed("basket", BedKind::Basket, basket)),
    ]
}

/// Every day's answer for an established crop with six hours of sun.
fn year(known: &Knowledge, place: &Place, bed: &Bed, crop: &str) -> Vec<(NaiveDate, WaterWeek)> {
    let first = NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
    let around = |today| Surroundings {
        bed,
        mix: &known.mixes["house"],
        standing: vec![Standing { crop: &known.crops[crop], microgreen: false, start: None, plants: Some(1) }],
        weather: Weather::of_place(place),
        sun_hours: 6.0,
        today,
    };
    first.iter_days().take(365).filter_map(|today| Some((today, water_week(&around(today))?))).collect()
}

struct Panel<'a> {
    title: String,
    unit: &'a str,
    lines: Vec<(&'a str, Vec<f64>)>,
    band: Option<(Vec<f64>, Vec<f64>)>,
}

fn panel(svg: &mut String, top: f64, panel: &Panel<'_>) {
    let all = panel.lines.iter().flat_map(|(_, values)| values);
    let all = all.chain(panel.band.iter().flat_map(|(low, high)| low.iter().chain(high)));
    let highest = all.clone().fold(1.0_f64, |a, b| a.max(*b)) * 1.05;
    let lowest = all.fold(0.0_f64, |a, b| a.min(*b));
    let x = |day: usize| LEFT + day as f64 / 365.0 * (WIDTH - LEFT - 20.0);
    let y = |value: f64| top + PANEL - (value - lowest) / (highest - lowest) * PANEL;
    let path = |values: &[f64]| -> Vec<String> {
        values.iter().enumerate().map(|(day, value)| format!("{:.1},{:.1}", x(day), y(*value))).collect()
    };
    let _ = writeln!(svg, r#"<text x="{LEFT}" y="{:.0}" font-weight="bold">{}</text>"#, top - 8.0, panel.title);
    for step in 0..=4 {
        let value = lowest + (highest - lowest) * f64::from(step) / 4.0;
        let at = y(value);
        let _ = writeln!(svg, r##"<path d="M{LEFT} {at:.1}H{}" stroke="#ddd"/>"##, WIDTH - 20.0);
        let _ = writeln!(svg, r#"<text x="4" y="{:.1}">{value:.1} {}</text>"#, at + 4.0, panel.unit);
    }
    for month in 1..=12 {
        let day = NaiveDate::from_ymd_opt(2026, month, 1).map_or(0, |day| day.ordinal0() as usize);
        let _ = writeln!(svg, r##"<path d="M{:.1} {top}v{PANEL}" stroke="#eee"/>"##, x(day));
        let _ = writeln!(
            svg,
            r##"<text x="{:.1}" y="{:.1}" fill="#888">{month}</text>"##,
            x(day) + 3.0,
            top + PANEL + 13.0
        );
    }
    if let Some((low, high)) = &panel.band {
        let mut outline = path(high);
        outline.extend(path(low).into_iter().rev());
        let _ = writeln!(svg, r##"<polygon points="{}" fill="#9cf" opacity="0.5"/>"##, outline.join(" "));
    }
    for (colour, values) in &panel.lines {
        let _ = writeln!(
            svg,
            r#"<polyline points="{}" fill="none" stroke="{colour}" stroke-width="1.6"/>"#,
            path(values).join(" ")
        );
    }
}

fn draw(known: &Knowledge, place: &Place) -> String {
    let mut panels = Vec::new();
    for (title, crop, bed) in &beds() {
        let year = year(known, place, bed, crop);
        let of = |value: fn(&WaterWeek) -> f64| year.iter().map(|(_, week)| value(week)).collect::<Vec<f64>>();
        if panels.is_empty() {
            let day = |value: fn(&rooftend::weather::Day) -> f64| {
                year.iter().filter_map(|(_, week)| week.days.first().map(|(day, _)| value(day))).collect::<Vec<f64>>()
            };
            panels.push(Panel {
                title: format!("{}: usual highest (red) and lowest (blue) of the day", place.id),
                unit: "°C",
                lines: vec![("#c33", day(|day| day.tmax.as_celsius())), ("#36c", day(|day| day.tmin.as_celsius()))],
                band: None,
            });
            panels.push(Panel {
                title: "reference evapotranspiration (green) and rain (blue), a day".to_owned(),
                unit: "mm",
                lines: vec![
                    ("#383", of(|week| week.reference_et.value().as_millimetres())),
                    ("#36c", of(|week| week.rain.as_millimetres() / 7.0)),
                ],
                band: None,
            });
        }
        let band = (of(|w| w.litres.low().as_litres() / 7.0), of(|w| w.litres.high().as_litres() / 7.0));
        panels.push(Panel {
            title: format!("{title}: litres a day, its range"),
            unit: "L",
            lines: vec![("#136", of(|week| week.litres.value().as_litres() / 7.0))],
            band: Some(band),
        });
        panels.push(Panel {
            title: format!("{title}: rhythm (black) and the sum's range, waterings a week"),
            unit: "/w",
            lines: vec![("#000", of(|week| week.rhythm))],
            band: Some((of(|week| week.waterings.low()), of(|week| week.waterings.high()))),
        });
    }
    let height = GAP + panels.len() as f64 * (PANEL + GAP);
    let mut svg = format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH}" height="{height}" font-family="sans-serif" font-size="11"><rect width="100%" height="100%" fill="#fff"/>"##
    );
    for (place, one) in panels.iter().enumerate() {
        panel(&mut svg, GAP + place as f64 * (PANEL + GAP), one);
    }
    svg.push_str("</svg>\n");
    svg
}

fn main() -> std::io::Result<()> {
    let known = Knowledge::read(&Files::embedded()).0;
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("target");
    for id in PLACES {
        let Some(place) = known.places.iter().find(|place| place.id == id) else { continue };
        let file = folder.join(format!("year-{id}.svg"));
        std::fs::write(&file, draw(&known, place))?;
        println!("{}", file.display());
    }
    Ok(())
}
