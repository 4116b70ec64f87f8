//! How often growers water: the rhythms of the trade (common practice, no source) that the sum has to
//! meet with one set of parameters in every season.

use chrono::NaiveDate;
use rooftend::garden::{Bed, BedId, BedKind, Measure, Shape, Start};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::{WaterWeek, water_week};
use rooftend::weather::{Forecast, Weather};

/// A week of equal days.
struct Sky {
    from: &'static str,
    tmax_c: f64,
    tmin_c: f64,
    rh_percent: f64,
    wind_m_s: f64,
    solar_mj_m2: f64,
    rain_mm: f64,
}

const HOT: Sky = Sky {
    from: "2026-05-18",
    tmax_c: 43.0,
    tmin_c: 29.0,
    rh_percent: 31.0,
    wind_m_s: 2.1,
    solar_mj_m2: 25.4,
    rain_mm: 0.0,
};
const NORTH_WINTER: Sky = Sky {
    from: "2026-01-12",
    tmax_c: 22.5,
    tmin_c: 9.5,
    rh_percent: 65.0,
    wind_m_s: 1.2,
    solar_mj_m2: 13.5,
    rain_mm: 0.0,
};
const MILD: Sky = Sky {
    from: "2026-02-15",
    tmax_c: 27.0,
    tmin_c: 14.0,
    rh_percent: 50.0,
    wind_m_s: 1.5,
    solar_mj_m2: 17.0,
    rain_mm: 0.0,
};
const TRAY_WEATHER: Sky = Sky {
    from: "2026-02-20",
    tmax_c: 29.0,
    tmin_c: 16.5,
    rh_percent: 48.0,
    wind_m_s: 1.4,
    solar_mj_m2: 18.0,
    rain_mm: 0.0,
};
const MONSOON: Sky = Sky {
    from: "2026-07-20",
    tmax_c: 30.0,
    tmin_c: 24.5,
    rh_percent: 85.0,
    wind_m_s: 2.0,
    solar_mj_m2: 13.0,
    rain_mm: 20.0,
};

fn bed(kind: BedKind, measures: &[&str]) -> Bed {
    let length = |at: usize| Measure::read(measures[at]).unwrap();
    let shape = match kind {
        BedKind::Basket | BedKind::Pot => Shape::Round { diameter: length(0), depth: length(1) },
        _ => Shape::Box { length: length(0), width: length(1), depth: length(2) },
    };
    Bed::bare(BedId::new("roof/bed").unwrap(), kind, shape)
}

struct Case<'a> {
    bed: Bed,
    crop: &'a str,
    microgreen: bool,
    /// Days ago, and whether it was planted rather than sown; established where unsaid.
    age: Option<(u64, bool)>,
    sun_hours: f64,
    sky: &'a Sky,
}

fn week(known: &Knowledge, case: &Case<'_>) -> WaterWeek {
    let first: NaiveDate = case.sky.from.parse().unwrap();
    let sky = case.sky;
    let days: Vec<String> = first
        .iter_days()
        .take(8)
        .map(|date| {
            format!(
                r#"{{"date":"{date}","tmax_c":{},"tmin_c":{},"rh_mean_percent":{},"wind_2m_m_s":{},"solar_mj_m2":{},"rain_mm":{}}}"#,
                sky.tmax_c, sky.tmin_c, sky.rh_percent, sky.wind_m_s, sky.solar_mj_m2, sky.rain_mm
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude":21.15,"longitude":79.09,"elevation_m":310,"timezone":"Asia/Kolkata","days":[{}]}}"#,
        days.join(",")
    );
    let forecast = Forecast::read("week.json", &text).unwrap();
    let weather = Weather::at((21.15, 79.09, 310.0), Some(&forecast), known);
    let start = case.age.map(|(days, planted)| {
        let day = first - chrono::Days::new(days);
        if planted { Start::Planted(day) } else { Start::Sown(day) }
    });
    let standing = Standing { crop: &known.crops[case.crop], microgreen: case.microgreen, start, plants: None };
    let mix = &known.mixes[case.bed.mix_counted()];
    let around = Surroundings {
        bed: &case.bed,
        mix,
        standing: vec![standing],
        weather,
        sun_hours: case.sun_hours,
        today: first,
    };
    water_week(&around).expect("a week")
}

fn known() -> Knowledge {
    Knowledge::read(&Files::embedded()).0
}

fn big_box() -> Bed {
    bed(BedKind::Box, &["4 ft", "3 ft", "12 in"])
}

#[track_caller]
fn check(name: &str, case: &Case<'_>, rhythms: &[f64]) -> WaterWeek {
    let week = week(&known(), case);
    let shown = format!(
        "{name}: rhythm {} (sum {:.1} to {:.1}), {:.1} to {:.1} L, loss {:.1} mm a day, ET0 {:.1}, root limit {:.1}, {:?}",
        week.rhythm,
        week.waterings.low(),
        week.waterings.high(),
        week.litres.low().as_litres(),
        week.litres.high().as_litres(),
        week.loss_per_day.value().as_millimetres(),
        week.reference_et.value().as_millimetres(),
        week.root_limit.as_millimetres(),
        week.largest_doubt,
    );
    println!("{shown}");
    assert!(rhythms.iter().any(|rhythm| (rhythm - week.rhythm).abs() < 0.01), "{shown}");
    week
}

#[test]
fn winter_greens_in_a_box() {
    let case =
        Case { bed: big_box(), crop: "spinach", microgreen: false, age: None, sun_hours: 6.0, sky: &NORTH_WINTER };
    check("winter greens", &case, &[3.5, 7.0]);
}

/// The box of the main job: 8 to 11 mm a day with 6 h of sun, some 63 to 85 L over the week; 85 to 110 L in
/// full sun (common practice, no source).
#[test]
fn summer_greens_in_a_box() {
    let mut case = Case { bed: big_box(), crop: "amaranth", microgreen: false, age: None, sun_hours: 6.0, sky: &HOT };
    let week = check("summer greens", &case, &[7.0, 14.0]);
    let (litres, loss) = (week.litres.value().as_litres(), week.loss_per_day.value().as_millimetres());
    assert!((63.0..=85.0).contains(&litres), "{litres} L");
    assert!((8.0..=11.0).contains(&loss), "{loss} mm a day");
    case.sun_hours = 13.5;
    let week = check("summer greens, full sun", &case, &[7.0, 14.0, 21.0]);
    let litres = week.litres.value().as_litres();
    assert!((85.0..=110.0).contains(&litres), "{litres} L");
}

#[test]
fn a_net_never_raises_the_need() {
    let mut case = Case { bed: big_box(), crop: "amaranth", microgreen: false, age: None, sun_hours: 6.0, sky: &HOT };
    let open = week(&known(), &case);
    case.bed.net_percent = Some(35.0);
    let netted = check("under a 35 % net", &case, &[7.0, 14.0]);
    assert!(netted.rhythm <= open.rhythm && netted.litres.value() <= open.litres.value());
}

#[test]
fn a_basket_in_full_sun() {
    let basket = bed(BedKind::Basket, &["14 in", "7 in"]);
    let case = Case { bed: basket, crop: "amaranth", microgreen: false, age: None, sun_hours: 13.5, sky: &HOT };
    check("basket", &case, &[14.0, 21.0]);
}

#[test]
fn saplings_in_their_first_week() {
    let case =
        Case { bed: big_box(), crop: "tomato", microgreen: false, age: Some((2, true)), sun_hours: 6.0, sky: &MILD };
    let week = check("saplings", &case, &[7.0, 14.0]);
    let each = week.litres.value().as_litres() / week.rhythm;
    assert!(each < 3.0, "small amounts: {each} L");
}

#[test]
fn a_sprouting_tray() {
    let mut tray = bed(BedKind::Tray, &["2 ft", "1.5 ft", "3 in"]);
    tray.mix = Some("tray".to_owned());
    let case = Case {
        bed: tray,
        crop: "mustard",
        microgreen: true,
        age: Some((1, false)),
        sun_hours: 3.5,
        sky: &TRAY_WEATHER,
    };
    let week = check("tray", &case, &[7.0, 14.0]);
    let each = week.litres.value().as_litres() / week.rhythm;
    assert!(each < 1.0, "very little: {each} L");
}

#[test]
fn a_box_in_the_monsoon() {
    let case = Case { bed: big_box(), crop: "amaranth", microgreen: false, age: None, sun_hours: 6.0, sky: &MONSOON };
    check("monsoon", &case, &[0.0, 1.0, 2.33]);
}
