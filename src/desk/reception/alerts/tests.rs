//! What is told once, and what again.

use super::{Alerted, noted_of};
use crate::desk::house::House;
use crate::desk::reception::EVENING;
use crate::desk::reception::Reception;
use crate::desk::reception::card::Card;
use crate::desk::reception::letter::{Content, Letter};
use crate::garden::import::import;
use crate::garden::{Garden, KnownIds, Overlay, PersonId, SiteId, Slip, Store, read_garden};
use crate::knowledge::Files;
use crate::planning::alerts::{Alert, Peak, What};
use crate::script::Language;
use crate::weather::Forecast;
use chrono::{DateTime, NaiveDate, Utc};
use std::sync::{Arc, OnceLock};

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn rain(grade: u8, from: &str, until: &str) -> Alert {
    Alert {
        what: What::HeavyRain,
        grade,
        site: SiteId::new("roof").unwrap(),
        from: day(from),
        until: day(until),
        peak: Peak::Rain { millimetres: 70.0 },
        beds: Vec::new(),
        crops: Vec::new(),
        start: None,
    }
}

/// What is noted stands in the drawer under one key for an event: the last note counts.
fn told(days: &[(u8, &str, &str)]) -> Vec<bool> {
    let mut drawer: Vec<Alerted> = Vec::new();
    let at: DateTime<Utc> = "2026-07-01T02:00:00Z".parse().unwrap();
    days.iter()
        .map(|(grade, from, until)| {
            let (new, slip) = noted_of(&rain(*grade, from, until), 7, &drawer, at);
            drawer.retain(|old| old.event != slip.event);
            drawer.push(slip);
            new
        })
        .collect()
}

#[test]
fn an_event_is_told_once_and_again_when_it_has_become_worse() {
    let days = [
        (1, "2026-07-03", "2026-07-04"),
        (1, "2026-07-03", "2026-07-05"),
        (2, "2026-07-04", "2026-07-05"),
        (1, "2026-07-05", "2026-07-06"),
        (2, "2026-07-06", "2026-07-08"),
        (1, "2026-07-20", "2026-07-20"),
    ];
    assert_eq!(told(&days), [true, false, true, false, false, true]);
}

/// The demo's people, each in a chat of her own, under a forecast.
fn crew(people: &[(i64, &str, Language)]) -> (Arc<dyn Store>, Reception) {
    static HOUSE: OnceLock<Arc<House>> = OnceLock::new();
    let house = HOUSE.get_or_init(|| Arc::new(House::open(&Files::embedded()).unwrap())).clone();
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let text = include_str!("../../../../demo-data/garden.toml");
    let garden = read_garden("demo-data/garden.toml", text, &ids, &Garden::default()).unwrap();
    let store: Arc<dyn Store> = Arc::new(Overlay::in_memory());
    import(store.as_ref(), garden).unwrap();
    let since = "2026-05-01T02:00:00Z".parse().unwrap();
    for (chat, person, language) in people {
        let (person, language) = (PersonId::new(person).unwrap(), *language);
        let card = Card { chat: *chat, person, language, since, blocked: false };
        store.write(vec![card.put().unwrap()]).unwrap();
    }
    (store.clone(), Reception::open(house, store).unwrap())
}

fn forecast(first: &str, tmax: &[f64]) -> Forecast {
    let days: Vec<String> = day(first)
        .iter_days()
        .zip(tmax)
        .map(|(date, tmax)| {
            format!(r#"{{"date":"{date}","tmax_c":{tmax},"tmin_c":29,"rh_mean_percent":30,"rain_mm":0}}"#)
        })
        .collect();
    let text = format!(
        r#"{{"latitude":21.15,"longitude":79.09,"elevation_m":310,"timezone":"Asia/Kolkata","days":[{}]}}"#,
        days.join(",")
    );
    Forecast::read("made by hand", &text).unwrap()
}

/// What goes out on a morning to each chat.
fn morning(store: &dyn Store, reception: &Reception, on: &str, tmax: &[f64]) -> Vec<(i64, String)> {
    let now: DateTime<Utc> = format!("{on}T02:30:00Z").parse().unwrap();
    reception.set_forecast(Some(forecast(on, tmax)));
    reception.reminders(now, EVENING).unwrap();
    let letters = Letter::all(store).unwrap();
    let sent: Vec<_> = letters.iter().cloned().map(|letter| (letter, None)).collect();
    reception.sent(&sent, now).unwrap();
    let text = |letter: Letter| match letter.content {
        Content::Text { text, .. } => (letter.chat, text),
        other => (letter.chat, format!("{other:?}")),
    };
    letters.into_iter().map(text).collect()
}

#[test]
fn a_heat_wave_goes_to_each_with_the_water_of_her_own_beds() {
    let people = [(3, "meera", Language::En), (4, "farid", Language::HiLatn), (5, "nilofer", Language::Hi)];
    let (store, reception) = crew(&people);
    let first = morning(store.as_ref(), &reception, "2026-05-18", &[43.0, 45.5, 46.0, 45.0, 44.0]);
    let to = |letters: &[(i64, String)], chat| {
        let of = letters.iter().filter(|(to, _)| *to == chat).map(|(_, text)| text.clone());
        of.collect::<Vec<_>>().join("\n")
    };
    let meera = to(&first, 3);
    for words in
        ["Heat wave from Tue 19 May to Thu 21 May: up to 46 °C", "east box", "tomato bag", "before nine", "112"]
    {
        assert!(meera.contains(words), "{words}: {meera}");
    }
    assert!(!meera.contains("okra box"), "another's bed: {meera}");
    let farid = to(&first, 4);
    assert!(farid.contains("Loo") && farid.contains("okra box") && !farid.contains("east box"), "{farid}");
    let nilofer = to(&first, 5);
    assert!(nilofer.contains("लू") && nilofer.contains("दक्षिण वाला डिब्बा"), "{nilofer}");
    // The next morning it is the same event; a day later it has become a severe one.
    let second = morning(store.as_ref(), &reception, "2026-05-19", &[45.5, 46.0, 45.0, 44.0, 43.0]);
    assert!(!to(&second, 3).contains("eat wave"), "{second:?}");
    let third = morning(store.as_ref(), &reception, "2026-05-20", &[46.0, 47.5, 46.0, 44.0, 43.0]);
    assert!(to(&third, 3).contains("Severe heat wave"), "{third:?}");
    assert!(!to(&third, 3).contains("Clear drains"), "told once a season: {third:?}");
}

/// The evening's letter cannot be brought before the quiet hours: its alert was not told.
#[test]
fn an_alert_that_was_not_brought_goes_into_the_next_letter() {
    let wave = [43.0, 43.0, 45.5, 46.0, 45.0, 44.0];
    let (store, reception) = crew(&[(3, "meera", Language::En)]);
    reception.set_forecast(Some(forecast("2026-05-18", &wave)));
    assert_eq!(reception.reminders("2026-05-18T13:00:00Z".parse().unwrap(), EVENING).unwrap(), 1);
    let letter = Letter::all(store.as_ref()).unwrap().remove(0);
    assert!(format!("{:?}", letter.content).contains("Heat wave"), "{letter:?}");
    // Half an hour before nine the connection is gone, and stays so.
    reception.put_off(letter, None, "2026-05-18T15:00:00Z".parse().unwrap()).unwrap();
    assert_eq!(reception.lapse("2026-05-18T15:32:00Z".parse().unwrap()).unwrap(), 1);
    assert!(Alerted::all(store.as_ref()).unwrap().is_empty(), "nothing of it was told");
    let next = morning(store.as_ref(), &reception, "2026-05-19", &wave[1..]);
    assert!(next.iter().any(|(_, text)| text.contains("Heat wave")), "{next:?}");
    let after = morning(store.as_ref(), &reception, "2026-05-20", &wave[2..]);
    assert!(!after.iter().any(|(_, text)| text.contains("Heat wave")), "told once: {after:?}");

    // What is past by then is not told any more.
    let (store, reception) = crew(&[(3, "meera", Language::En)]);
    reception.set_forecast(Some(forecast("2026-05-18", &wave)));
    reception.reminders("2026-05-18T13:00:00Z".parse().unwrap(), EVENING).unwrap();
    assert_eq!(reception.lapse("2026-05-18T15:32:00Z".parse().unwrap()).unwrap(), 1);
    let next = morning(store.as_ref(), &reception, "2026-05-19", &[36.0, 36.0, 36.0, 36.0, 36.0, 36.0]);
    assert!(!next.iter().any(|(_, text)| text.contains("eat wave")), "{next:?}");
}

/// A heat wave was told; that it has become a severe one was not brought: what was told of it before stays told.
#[test]
fn a_worse_grade_that_was_not_brought_is_told_again_and_the_first_is_not() {
    let (store, reception) = crew(&[(3, "meera", Language::En)]);
    morning(store.as_ref(), &reception, "2026-05-18", &[43.0, 45.5, 46.0, 45.0, 44.0]);
    let told = Alerted::all(store.as_ref()).unwrap();
    reception.set_forecast(Some(forecast("2026-05-18", &[43.0, 46.0, 47.5, 46.0, 44.0])));
    reception.reminders("2026-05-18T13:00:00Z".parse().unwrap(), EVENING).unwrap();
    let letter = Letter::all(store.as_ref()).unwrap().remove(0);
    assert!(format!("{:?}", letter.content).contains("Severe heat wave"), "{letter:?}");
    reception.refused(letter).unwrap();
    let grades = |all: &[Alerted]| all.iter().map(|one| (one.event.clone(), one.grade)).collect::<Vec<_>>();
    let after = Alerted::all(store.as_ref()).unwrap();
    assert_eq!(grades(&after), grades(&told));
    let next = morning(store.as_ref(), &reception, "2026-05-19", &[46.0, 47.5, 46.0, 44.0, 43.0]);
    assert!(next.iter().any(|(_, text)| text.contains("Severe heat wave")), "{next:?}");
}

#[test]
fn what_was_told_is_swept_after_the_season() {
    let (store, reception) = crew(&[(3, "meera", Language::En)]);
    morning(store.as_ref(), &reception, "2026-05-18", &[43.0, 45.5, 46.0, 45.0, 44.0]);
    let count = || Alerted::all(store.as_ref()).unwrap().len();
    assert!(count() > 0);
    reception.sweep("2026-06-18T02:30:00Z".parse().unwrap()).unwrap();
    assert!(count() > 0);
    reception.sweep("2027-01-18T02:30:00Z".parse().unwrap()).unwrap();
    assert_eq!(count(), 0);
}
