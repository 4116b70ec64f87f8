//! Alerts from forecasts made by hand, at a place whose usual May days are about 43 °C.

use super::{Alert, Peak, What, alerts, is_foretold};
use crate::garden::{Garden, KnownIds, SiteId, Start, read_garden};
use crate::knowledge::{Files, Knowledge};
use crate::needs::surroundings::Standing;
use crate::needs::year::Year;
use crate::planning::due::Plot;
use crate::weather::{Forecast, Weather};
use chrono::NaiveDate;
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

const NAGPUR: (f64, f64, f64) = (21.15, 79.09, 310.0);

/// A day: tmax, tmin, wind at 2 m, rain.
type Sky = (f64, f64, f64, f64);

fn forecast(first: &str, days: &[Sky]) -> Forecast {
    let first: NaiveDate = first.parse().unwrap();
    let days: Vec<String> = first
        .iter_days()
        .zip(days)
        .map(|(date, (tmax, tmin, wind, rain))| {
            format!(
                r#"{{"date":"{date}","tmax_c":{tmax},"tmin_c":{tmin},"rh_mean_percent":30,"wind_2m_m_s":{wind},"rain_mm":{rain}}}"#
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude":21.15,"longitude":79.09,"elevation_m":310,"timezone":"Asia/Kolkata","days":[{}]}}"#,
        days.join(",")
    );
    Forecast::read("made by hand", &text).unwrap()
}

fn garden(beds: &str) -> Garden {
    let site = "[[sites]]\nid = \"roof\"\nname = \"Roof\"\nlatitude = 21.15\nlongitude = 79.09\nelevation_m = 310\ntimezone = \"Asia/Kolkata\"\n";
    let (crops, mixes, materials) = (KNOWN.crop_ids(), KNOWN.mix_ids(), KNOWN.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    read_garden("x", &format!("{site}{beds}"), &ids, &Garden::default()).unwrap()
}

const BEDS: &str = r#"
[[beds]]
id = "box"
site = "roof"
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"
[[beds]]
id = "basket"
site = "roof"
kind = "basket"
diameter = "14 in"
depth = "7 in"
"#;

/// The alerts of a roof on which these crops stand: the first in a box, the second in a basket, sown on a day.
fn of(days: &[Sky], first: &str, crops: [&str; 2], sown: &str) -> Vec<Alert> {
    let forecast = forecast(first, days);
    let weather = Weather::at(NAGPUR, Some(&forecast), &KNOWN);
    let today: NaiveDate = first.parse().unwrap();
    let year = Year::around(&weather, today);
    let garden = garden(BEDS);
    let start = Start::Sown(sown.parse().unwrap());
    let now = today.and_hms_opt(8, 0, 0).unwrap().and_local_timezone(chrono::FixedOffset::east_opt(19_800).unwrap());
    let plots: Vec<Plot<'_>> = garden
        .beds
        .iter()
        .zip(crops)
        .map(|(bed, crop)| Plot {
            bed,
            standing: vec![Standing { crop: &KNOWN.crops[crop], microgreen: false, start: Some(start), plants: None }],
            jobs: &[],
            moves: &[],
            weather: &weather,
            year: year.as_ref(),
            known: &KNOWN,
            now: now.unwrap(),
        })
        .collect();
    alerts(&SiteId::new("roof").unwrap(), &weather, today, &plots)
}

fn only(what: What, all: &[Alert]) -> Option<&Alert> {
    all.iter().find(|alert| alert.what == what)
}

#[track_caller]
fn heat(days: &[f64], first: &str, expected: Option<(u8, &str, &str)>) {
    let days: Vec<Sky> = days.iter().map(|tmax| (*tmax, tmax - 14.0, 2.0, 0.0)).collect();
    let all = of(&days, first, ["amaranth", "amaranth"], "2026-04-01");
    let got = only(What::HeatWave, &all).map(|alert| (alert.grade, alert.from.to_string(), alert.until.to_string()));
    let expected = expected.map(|(grade, from, until)| (grade, from.to_owned(), until.to_owned()));
    assert_eq!(got, expected, "{days:?}");
}

/// The department's criterion: 40 °C and 4.5 K above the normal of the day (Nagpur's middle of May: 43, of April: 41,
/// of March: 36), or 45 °C; severe above 6.4 K or from 47 °C; two days running.
#[test]
fn heat_waves_by_the_published_criterion() {
    heat(&[43.0, 44.0, 44.9, 44.0, 43.0], "2026-05-15", None);
    heat(&[44.0, 45.0, 45.5, 44.0, 43.0], "2026-05-15", Some((1, "2026-05-16", "2026-05-17")));
    heat(&[44.0, 45.0, 44.0, 44.0, 43.0], "2026-05-15", None);
    heat(&[44.0, 47.0, 44.0, 44.0, 43.0], "2026-05-15", Some((2, "2026-05-16", "2026-05-16")));
    // The middle of March: 40.5 is 4.5 above, 43.1 is 7.1 above; 39.9 is far above, and not 40.
    heat(&[40.5, 40.8, 38.0, 38.0, 38.0], "2026-03-16", Some((1, "2026-03-16", "2026-03-17")));
    heat(&[43.1, 38.0, 38.0, 38.0, 38.0], "2026-03-16", Some((2, "2026-03-16", "2026-03-16")));
    heat(&[39.9, 39.9, 39.9, 39.9, 39.9], "2026-03-01", None);
    // Beyond the days that are looked at.
    heat(&[43.0, 43.0, 43.0, 43.0, 43.0, 47.0, 47.0], "2026-05-15", None);
}

#[track_caller]
fn rain(mm: f64, grade: Option<u8>) {
    let all = of(&[(32.0, 25.0, 2.0, 0.0), (30.0, 24.0, 2.0, mm)], "2026-07-15", ["okra", "mint"], "2026-06-20");
    assert_eq!(only(What::HeavyRain, &all).map(|alert| alert.grade), grade, "{mm}");
}

#[test]
fn rain_by_the_published_classes() {
    rain(64.4, None);
    rain(64.5, Some(1));
    rain(115.5, Some(1));
    rain(115.6, Some(2));
    rain(204.5, Some(3));
}

#[test]
fn wind_by_the_scale_of_beaufort() {
    let at = |wind| {
        let all = of(&[(35.0, 25.0, wind, 0.0)], "2026-06-10", ["okra", "mint"], "2026-05-01");
        only(What::StrongWind, &all).map(|alert| alert.grade)
    };
    // A strong breeze is 11.2 m/s at 10 m, so 8.4 at 2 m in the windiest hour and half of that on the mean of the day.
    assert_eq!((at(4.1), at(4.2), at(5.3), at(5.4)), (None, Some(1), Some(1), Some(2)));
}

#[test]
fn a_cold_night_names_only_what_suffers() {
    let night = |tmin| of(&[(24.0, tmin, 1.0, 0.0)], "2026-01-12", ["spinach", "chilli"], "2025-11-01");
    assert_eq!(only(What::ColdNight, &night(16.0)), None);
    let limit = KNOWN.crops["chilli"].heat.cold_limit.value().as_celsius();
    let all = night(limit - 1.0);
    let cold = only(What::ColdNight, &all).unwrap();
    assert_eq!((cold.grade, cold.crops.as_slice()), (1, ["chilli".to_owned()].as_slice()));
    assert_eq!(cold.beds.iter().map(ToString::to_string).collect::<Vec<_>>(), ["roof/basket"]);
    assert_eq!(only(What::ColdNight, &night(limit - 4.0)).unwrap().grade, 2);
}

#[test]
fn thin_walls_heat_up_in_three_hot_days() {
    let days = |hot: usize| {
        let mut days = vec![(38.5, 25.0, 2.0, 0.0); hot];
        days.resize(5, (36.0, 25.0, 2.0, 0.0));
        of(&days, "2026-04-02", ["okra", "mint"], "2026-02-20")
    };
    assert_eq!(only(What::HotWalls, &days(2)), None);
    let all = days(3);
    let walls = only(What::HotWalls, &all).unwrap();
    // A slatted box of bamboo is no thin wall.
    assert_eq!(walls.beds.iter().map(ToString::to_string).collect::<Vec<_>>(), ["roof/basket"]);
}

#[test]
fn the_first_week_past_the_limit_of_a_crop_that_bolts() {
    let limit = KNOWN.crops["coriander"].heat.day_limit.value().as_celsius();
    // The week has seven days: two of them are usual ones of the place.
    let week = |tmax| of(&[(tmax, 15.0, 1.0, 0.0); 7], "2026-02-01", ["coriander", "okra"], "2025-12-20");
    assert_eq!(only(What::Bolting, &week(limit - 2.0)), None);
    let all = week(limit + 1.0);
    let bolting = only(What::Bolting, &all).unwrap();
    assert_eq!(bolting.crops, ["coriander"]);
    assert!(matches!(bolting.peak, Peak::Week { .. }));
    assert_eq!(bolting.key(), "roof|bolting|coriander|2025-12-20|1");
}

#[test]
fn drains_before_the_rains() {
    let on = |day: &str| {
        let all = of(&[(38.0, 28.0, 2.0, 0.0)], day, ["okra", "mint"], "2026-04-01");
        only(What::Rains, &all).map(|alert| alert.peak)
    };
    assert_eq!(on("2026-05-10"), None);
    assert_eq!(on("2026-05-20"), Some(Peak::Month(6)));
    assert_eq!(on("2026-06-20"), Some(Peak::Month(6)));
    assert_eq!(on("2026-07-10"), None);
}

#[test]
fn a_key_stays_while_the_days_come_nearer() {
    let days = [(44.0, 30.0, 2.0, 0.0), (46.0, 31.0, 2.0, 0.0), (46.0, 31.0, 2.0, 0.0), (47.5, 31.0, 2.0, 0.0)];
    let at = |first: &str, days: &[Sky]| {
        let all = of(days, first, ["okra", "mint"], "2026-04-01");
        only(What::HeatWave, &all).unwrap().clone()
    };
    let seen = at("2026-05-15", &days[..3]);
    let next = at("2026-05-16", &days[1..3]);
    assert_eq!(seen.key(), next.key());
    assert!(next.goes_on(seen.from, seen.until));
    let worse = at("2026-05-16", &days[1..]);
    assert_ne!(seen.key(), worse.key());
    assert_eq!(seen.event(), worse.event());
    // A fortnight later it is another one.
    let later = at("2026-05-31", &days[..3]);
    assert!(!later.goes_on(seen.from, seen.until));
}

#[test]
fn usual_days_are_no_event() {
    let weather = Weather::at(NAGPUR, None, &KNOWN);
    let day = "2026-05-15".parse().unwrap();
    assert!(!is_foretold(&weather, day));
    let all = alerts(&SiteId::new("roof").unwrap(), &weather, day, &[]);
    assert!(all.is_empty(), "{all:?}");
}
