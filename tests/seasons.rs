//! When crops go in and when nets hang, on the usual days of listed places, against what growers there do
//! (common practice, no source: days in the middle of a season or plainly out of it, not its edges).

use chrono::{Days, NaiveDate};
use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use rooftend::garden::Start;
use rooftend::knowledge::{Crop, Files, Knowledge};
use rooftend::needs::harvest::harvest_window;
use rooftend::needs::season::{Fits, Hindrance, Outlook, Way, outlook, usual_way};
use rooftend::needs::shade::{daily_light_mol_m2, densest, net_need, wind_pressure_n_m2};
use rooftend::needs::surroundings::Standing;
use rooftend::needs::year::Year;
use rooftend::quantity::{Fraction, Temperature, TemperatureDifference};
use rooftend::weather::Weather;
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

fn weather(place: &str) -> Weather<'static> {
    Weather::of_place(KNOWN.places.iter().find(|known| known.id == place).unwrap())
}

fn year(place: &str, day: &str) -> Year {
    Year::around(&weather(place), day.parse().unwrap()).unwrap()
}

fn crop(id: &str) -> &'static Crop {
    &KNOWN.crops[id]
}

fn at(id: &str, place: &str, day: &str) -> Outlook {
    outlook(crop(id), usual_way(crop(id), false), &year(place, day))
}

#[track_caller]
fn in_season(id: &str, place: &str, days: &[&str]) {
    for day in days {
        let got = at(id, place, day);
        assert_eq!(got.fits, Fits::Yes, "{id} at {place} on {day}: {:?}", got.hindrance);
        assert!(!got.marginal, "{id} at {place} on {day} is marginal");
    }
}

#[track_caller]
fn out_of_season(id: &str, place: &str, days: &[&str]) {
    for day in days {
        assert_ne!(at(id, place, day).fits, Fits::Yes, "{id} at {place} on {day}");
    }
}

/// Plains of the north: cold-season greens and roots from October, heat-lovers from March.
#[test]
fn seasons_of_the_northern_plains() {
    in_season("spinach", "lahore", &["2026-11-01", "2026-11-20"]);
    out_of_season("spinach", "lahore", &["2026-04-15", "2026-06-01", "2026-07-15"]);
    in_season("coriander", "lahore", &["2026-10-20", "2026-11-10"]);
    out_of_season("coriander", "lahore", &["2026-05-10", "2026-06-15"]);
    in_season("radish", "lahore", &["2026-10-15", "2026-11-10"]);
    out_of_season("radish", "lahore", &["2026-05-20"]);
    in_season("okra", "lahore", &["2026-04-01", "2026-06-20"]);
    out_of_season("okra", "lahore", &["2026-11-01", "2026-12-20"]);
    in_season("fenugreek", "lahore", &["2026-10-25"]);
    out_of_season("fenugreek", "lahore", &["2026-06-01"]);
}

/// A hot dry place inland: only heat-lovers go in in May, beans and roots in the cool months.
#[test]
fn seasons_of_a_hot_place() {
    in_season("amaranth", "wardha-grid", &["2026-03-15", "2026-05-18", "2026-07-15"]);
    out_of_season("coriander", "wardha-grid", &["2026-05-18"]);
    out_of_season("lettuce", "wardha-grid", &["2026-05-18"]);
    in_season("french-bean", "wardha-grid", &["2026-11-05"]);
    out_of_season("french-bean", "wardha-grid", &["2026-04-15"]);
    in_season("fenugreek", "wardha-grid", &["2026-11-05"]);
    in_season("tomato", "wardha-grid", &["2026-08-15", "2026-09-15"]);
    out_of_season("tomato", "wardha-grid", &["2026-03-15"]);
}

/// What is planted as cloves, tubers, rhizomes or slips goes in where it is to stand, at the time the trade plants it.
#[test]
fn pieces_go_in_at_their_own_time() {
    in_season("garlic", "nagpur", &["2026-10-10", "2026-11-10"]);
    out_of_season("garlic", "nagpur", &["2026-05-18", "2026-07-15", "2026-12-20"]);
    in_season("potato", "nagpur", &["2026-10-25", "2026-11-10"]);
    out_of_season("potato", "nagpur", &["2026-05-18", "2026-07-15", "2027-01-15"]);
    in_season("ginger", "nagpur", &["2026-06-01", "2026-06-15"]);
    in_season("turmeric", "nagpur", &["2026-05-28", "2026-06-10"]);
    in_season("taro", "nagpur", &["2026-05-20", "2026-06-20"]);
    out_of_season("ginger", "nagpur", &["2026-08-15", "2026-12-15"]);
    in_season("sweet-potato", "nagpur", &["2026-06-20", "2026-08-15", "2026-10-15"]);
    out_of_season("strawberry", "nagpur", &["2026-05-18", "2026-07-15", "2027-02-01"]);
    in_season("onion", "nagpur", &["2026-10-15", "2026-11-01"]);
    for crop in KNOWN.crops.values() {
        let piece = crop.sowing.as_ref().and_then(|sowing| sowing.planted_as);
        assert_eq!(matches!(usual_way(crop, false), Way::Pieces(_)), piece.is_some(), "{}", crop.id);
    }
}

#[test]
fn a_mild_place_has_no_closed_season() {
    in_season("lettuce", "nairobi", &["2026-06-15", "2026-09-01"]);
    in_season("radish", "nairobi", &["2026-01-15", "2026-05-15", "2026-09-15"]);
    assert!(at("radish", "nairobi", "2026-05-15").window.unwrap().whole_year);
}

#[test]
fn the_reason_is_the_nearest_limit() {
    assert!(matches!(at("lettuce", "wardha-grid", "2026-05-18").hindrance, Some(Hindrance::SeedHot { .. })));
    assert!(matches!(at("okra", "lahore", "2026-01-05").hindrance, Some(Hindrance::SeedCold { .. })));
    assert!(matches!(at("spinach", "lahore", "2026-02-20").hindrance, Some(Hindrance::Hot { .. })));
    assert!(matches!(
        at("spinach", "phoenix", "2026-03-10").hindrance,
        Some(Hindrance::Hot { .. } | Hindrance::LongDay { .. })
    ));
}

/// What stands against today only weeks from now says nothing of a window in autumn: then what opens it is told.
#[test]
fn a_far_window_has_the_reason_of_its_own_opening() {
    let strawberry = at("strawberry", "nagpur", "2026-01-12");
    let opens = strawberry.window.unwrap().from.value();
    let Some(Hindrance::Hot { on, .. }) = strawberry.hindrance else { panic!("{:?}", strawberry.hindrance) };
    assert!(strawberry.before_opening);
    assert!((on - opens).num_days().abs() <= 120, "{on} for a window from {opens}");
    let may = at("strawberry", "nagpur", "2026-05-18");
    assert!(!may.before_opening && matches!(may.hindrance, Some(Hindrance::Hot { .. })));
}

#[test]
fn soon_and_late_mean_thirty_days() {
    let opens = at("okra", "lahore", "2026-01-15").window.unwrap().from.value();
    let closes = at("okra", "lahore", "2026-06-15").window.unwrap().until.value();
    let on = |day: NaiveDate| at("okra", "lahore", &day.to_string()).fits;
    assert_eq!(on(opens), Fits::Yes);
    assert_eq!(on(opens - Days::new(1)), Fits::Soon);
    assert_eq!(on(opens - Days::new(30)), Fits::Soon);
    assert_eq!(on(opens - Days::new(31)), Fits::No);
    assert_eq!(on(closes), Fits::Yes);
    assert_eq!(on(closes + Days::new(1)), Fits::Late);
    assert_eq!(on(closes + Days::new(30)), Fits::Late);
    assert_eq!(on(closes + Days::new(31)), Fits::No);
}

/// Vegetables of the north hang nets in the hot months and not in winter.
#[test]
fn nets_hang_in_the_hot_months() {
    for id in ["tomato", "chilli", "mint"] {
        let hot = net_need(crop(id), &year("wardha-grid", "2026-05-18")).unwrap();
        assert!(hot.due && hot.cut.unwrap().value() > Fraction::NONE, "{id} in May");
        let winter = net_need(crop(id), &year("lahore", "2026-01-10")).unwrap();
        assert!(!winter.due, "{id} in January");
        assert!(winter.from.unwrap().value() > "2026-02-15".parse().unwrap(), "{id}: {:?}", winter.from);
    }
    let cool = net_need(crop("okra"), &year("nairobi", "2026-05-18")).unwrap();
    assert!(cool.cut.is_none() && cool.from.is_none());
}

/// A year's mean light under the open sky of Phoenix is some 45 mol, June near 60 and December near 25 (maps of
/// daily light, from memory): the sum has to lie by them.
#[test]
fn light_of_an_open_roof() {
    let weather = weather("phoenix");
    let light = |day: &str| daily_light_mol_m2(&weather, 15.0, day.parse().unwrap()).unwrap().value();
    assert!((50.0..66.0).contains(&light("2026-06-15")), "{}", light("2026-06-15"));
    assert!((20.0..32.0).contains(&light("2026-12-15")), "{}", light("2026-12-15"));
    let shaded = daily_light_mol_m2(&weather, 4.0, "2026-06-15".parse().unwrap()).unwrap();
    assert!(shaded.high() < light("2026-06-15"));
}

/// By hand: 60 km/h is 16.67 m/s; 0.5 × 1.15 × 16.67² = 159.7 N/m².
#[test]
fn wind_on_a_closed_net() {
    assert!((wind_pressure_n_m2(60.0) - 159.7).abs() < 0.1);
    assert_eq!(densest(24.0, 12.0), Fraction::of_one(0.5));
    assert_eq!(densest(10.0, 12.0), Fraction::NONE);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// Each day of a window fits, and the days beside it do not.
    #[test]
    fn a_window_is_whole(offset in 0_u64..365, which in 0_usize..14, place in 0_usize..7) {
        let id = KNOWN.crops.keys().nth(which % KNOWN.crops.len()).unwrap();
        let place = &KNOWN.places[place % KNOWN.places.len()].id;
        let day = "2026-01-01".parse::<NaiveDate>().unwrap() + Days::new(offset);
        let first = at(id, place, &day.to_string());
        if let Some(window) = first.window.filter(|window| !window.whole_year && !first.marginal) {
            for inside in [window.from.value(), window.until.value()].into_iter().filter(|inside| *inside >= day) {
                prop_assert!(at(id, place, &inside.to_string()).fits == Fits::Yes, "{id} {place} {inside}");
            }
            let after = window.until.value() + Days::new(1);
            prop_assert!(at(id, place, &after.to_string()).fits != Fits::Yes, "{id} {place} {after}");
        }
    }

    /// A crop that stands more heat fits wherever one that stands less does.
    #[test]
    fn standing_more_heat_never_closes_a_season(offset in 0_u64..365, more in 0.5_f64..8.0, which in 0_usize..14) {
        let id = KNOWN.crops.keys().nth(which % KNOWN.crops.len()).unwrap();
        let day = "2026-01-01".parse::<NaiveDate>().unwrap() + Days::new(offset);
        let year = year("wardha-grid", &day.to_string());
        let mut hardier = crop(id).clone();
        hardier.heat.day_limit.is =
            hardier.heat.day_limit.is.map(|limit: Temperature| limit + TemperatureDifference::kelvins(more));
        let way = usual_way(crop(id), false);
        let (weak, hard) = (outlook(crop(id), way, &year), outlook(&hardier, way, &year));
        prop_assert!(weak.marginal || weak.fits != Fits::Yes || hard.fits == Fits::Yes, "{id} on {day}");
        prop_assert!(hard.margin_k >= weak.margin_k || way == Way::Tray);
    }

    /// A crop that wants its net sooner never gets it later, nor loses it sooner.
    #[test]
    fn a_lower_threshold_never_shortens_a_net(offset in 0_u64..365, lower in 0.5_f64..6.0) {
        let day = "2026-01-01".parse::<NaiveDate>().unwrap() + Days::new(offset);
        let year = year("lahore", &day.to_string());
        let tomato = crop("tomato");
        let mut tender = tomato.clone();
        if let Some(net) = &mut tender.net {
            net.above.is = net.above.is.map(|above: Temperature| above + TemperatureDifference::kelvins(-lower));
        }
        let (plain, sooner) = (net_need(tomato, &year).unwrap(), net_need(&tender, &year).unwrap());
        prop_assert!(sooner.from.unwrap().value() <= plain.from.unwrap().value());
        prop_assert!(!plain.due || sooner.due);
    }
}

/// The question of season and the question of harvest give one crop one first pick.
#[test]
fn a_first_pick_is_the_same_wherever_it_is_asked() {
    let mut looked_at = 0;
    for place in ["wardha-grid", "lahore", "nairobi"] {
        for day in ["2026-01-15", "2026-06-20", "2026-10-25"] {
            let date: NaiveDate = day.parse().unwrap();
            for crop in KNOWN.crops.values() {
                let tray = crop.microgreen.as_ref().map(|_| (Way::Tray, true));
                for (way, microgreen) in
                    [Some((Way::InBed, false)), Some((Way::Planted, false)), tray].into_iter().flatten()
                {
                    let start = if way == Way::Planted { Start::Planted(date) } else { Start::Sown(date) };
                    let standing = Standing { crop, microgreen, start: Some(start), plants: None };
                    let Some(window) = harvest_window(&standing, &weather(place)) else { continue };
                    let first = outlook(crop, way, &year(place, day)).first_pick;
                    assert_eq!(first, Some(window.first.value()), "{} at {place} on {day}, {way:?}", crop.id);
                    looked_at += 1;
                }
            }
        }
    }
    assert!(looked_at > 200, "{looked_at}");
}
