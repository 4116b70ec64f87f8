//! What is kept when documents come one after the other.

use crate::weather_service::documents::{met_norway as compact, open_meteo as arrays};
use crate::{NOW, at, nagpur};
use chrono::{NaiveDate, TimeDelta};
use rooftend::desk::sky::{Filed, Handed, PastMonth, Recalled, Skies, SkySlip, file};
use rooftend::garden::{Overlay, Site, SiteId, SledStore, Slip, Store, ToldWeather};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::weather::cell::{Cell, Spot};
use rooftend::weather::source::{Answered, Fault, Fetched, met_norway, open_meteo};
use rooftend::weather::{Day, Origin, Service as By};
use serde_json::{Value, json};

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn spot() -> Spot {
    Spot { cell: nagpur(), zone: chrono_tz::Asia::Kolkata }
}

/// A store and what answers see of it.
struct Kept<S = Overlay<'static>> {
    store: S,
    known: Knowledge,
    recalled: Recalled,
}

impl Kept {
    fn new() -> Self {
        Self::over(Overlay::in_memory())
    }
}

impl<S: Store> Kept<S> {
    fn over(store: S) -> Self {
        Self { store, known: Knowledge::read(&Files::embedded()).0, recalled: Recalled::default() }
    }

    fn takes(&self, by: By, document: &Value, now: &str) -> Filed {
        let text = document.to_string();
        let outlook = match by {
            By::OpenMeteo => open_meteo::read(&text, nagpur()),
            _ => met_norway::read(&text, nagpur()),
        };
        let fetched = outlook.map(|outlook| {
            let fetched = Fetched { outlook, last_modified: None, expires: None, deprecated: false };
            Answered::New(Box::new(fetched))
        });
        file(&self.store, &spot(), by, fetched, at(now), 1).unwrap()
    }

    fn on(&self, day: &str, now: &str) -> Day {
        let here = at(now).with_timezone(&chrono::FixedOffset::east_opt(19_800).unwrap());
        let read = Skies::new(&self.store, Handed::Nothing, &self.known).over(&site(), here).unwrap();
        let recalled = Skies::new(&self.store, Handed::Nothing, &self.known).recalling(&self.recalled);
        let day = read.on(date(day)).unwrap();
        assert_eq!(Some(day), { recalled }.over(&site(), here).unwrap().on(day.date), "what is recalled is the same");
        day
    }
}

fn site() -> Site {
    Site {
        id: SiteId::new("roof-12").unwrap(),
        name: "Roof 12".to_owned(),
        latitude_deg: 21.16,
        longitude_deg: 79.09,
        elevation_m: 310.0,
        timezone: chrono_tz::Asia::Kolkata,
        surface: None,
        engineer_limit_kn_m2: None,
        water_ec_ds_m: None,
        hose_l_min: None,
        can: None,
        walls: Vec::new(),
    }
}

#[test]
fn a_document_becomes_days_and_the_days_go_by() {
    let kept = Kept::new();
    // From before midnight in Nagpur on: today is whole.
    let filed = kept.takes(By::MetNorway, &compact(at("2026-05-17T18:00:00Z"), 60, 30), "2026-05-17T18:40:00Z");
    assert!(matches!(&filed, Filed::New { days, deprecated: false, .. } if *days == 10), "{filed:?}");
    let today = kept.on("2026-05-18", NOW);
    assert_eq!(today.origin, Origin::Forecast);
    // Hourly instants on the half hour miss the ends by less than a tenth.
    assert!((today.tmax.as_celsius() - 43.0).abs() < 0.1 && (today.tmin.as_celsius() - 29.0).abs() < 0.1, "{today:?}");
    assert!((today.humidity_mean.unwrap().as_percent() - 30.0).abs() < 1e-9);
    assert_eq!(today.solar, None, "left to the published estimate");
    // Six-hourly steps of 0.6 mm: 2.4 mm a day, by the curve still near the ends.
    let later = kept.on("2026-05-24", NOW);
    assert!((later.rain.unwrap().as_millimetres() - 2.4).abs() < 1e-6, "{later:?}");
    assert!((later.tmax.as_celsius() - 43.0).abs() < 1.5 && (later.tmin.as_celsius() - 29.0).abs() < 1.5, "{later:?}");

    // At noon the service tells of the hours to come only; the morning is known from before.
    kept.takes(By::MetNorway, &compact(at("2026-05-18T06:00:00Z"), 60, 30), "2026-05-18T06:10:00Z");
    let today = kept.on("2026-05-18", "2026-05-18T06:10:00Z");
    assert_eq!(today.origin, Origin::Forecast);
    assert!((today.tmin.as_celsius() - 29.0).abs() < 0.1, "{today:?}");

    // A day later it is a kept forecast, before and after another document comes.
    let next = "2026-05-19T02:00:00Z";
    assert_eq!(kept.on("2026-05-18", next).origin, Origin::Kept);
    kept.takes(By::MetNorway, &compact(at(next), 60, 30), next);
    assert_eq!(kept.on("2026-05-18", next).origin, Origin::Kept);
    assert_eq!(kept.on("2026-05-19", next).origin, Origin::Forecast, "its night is known from before");
    assert_eq!(kept.on("2026-05-17", next).origin, Origin::Normals, "nobody told of it");
    assert_eq!(kept.on("2026-07-17", next).origin, Origin::Normals, "past the end of the forecast");

    // The other service tells afterwards how the days were; a later kept forecast does not take their place.
    let third = "2026-05-20T02:00:00Z";
    kept.takes(By::OpenMeteo, &arrays(at(third), 12), third);
    let observed = kept.on("2026-05-19", third);
    assert_eq!(observed.origin, Origin::Observed);
    // 290 W/m² all day are 25.056 MJ; 0.1 mm an hour 2.4 mm; the document is one degree cooler.
    assert!((observed.solar.unwrap().as_megajoules_per_square_metre() - 25.056).abs() < 1e-6, "{observed:?}");
    assert!((observed.rain.unwrap().as_millimetres() - 2.4).abs() < 1e-6);
    assert!((observed.tmax.as_celsius() - 42.0).abs() < 0.1);
    let ahead = kept.on("2026-05-21", third);
    assert_eq!(ahead.rain_chance.map(|chance| chance.as_percent()), Some(20.0));
    let past = PastMonth::days_of(&kept.store, &spot()).unwrap();
    assert_eq!(past.iter().map(|day| day.day.date).max(), Some(date("2026-05-19")));
}

/// What is kept in memory between answers never outlives what the store has, through a sheet over it as well.
#[test]
fn what_was_read_before_is_read_anew_once_it_is_written() {
    let folder = tempfile::tempdir().unwrap();
    let kept = Kept::over(SledStore::open(folder.path()).unwrap());
    assert_eq!(kept.on("2026-05-18", NOW).origin, Origin::Normals);
    for (step, spoil) in [0.0, 1.5, -2.0].into_iter().enumerate() {
        let mut document = compact(at("2026-05-17T18:00:00Z"), 60, 30);
        for hour in document["properties"]["timeseries"].as_array_mut().unwrap() {
            let celsius = &mut hour["data"]["instant"]["details"]["air_temperature"];
            *celsius = json!(celsius.as_f64().unwrap() + spoil);
        }
        let now = at(NOW) + TimeDelta::hours(4 * step as i64);
        kept.takes(By::MetNorway, &document, &now.to_rfc3339());
        let day = kept.on("2026-05-18", NOW);
        assert!((day.tmax.as_celsius() - 43.0 - spoil).abs() < 0.1, "{day:?}");
    }
    // A day gone by that is observed afterwards.
    let third = "2026-05-20T02:00:00Z";
    assert_eq!(kept.on("2026-05-19", third).origin, Origin::Kept);
    kept.takes(By::OpenMeteo, &arrays(at(third), 12), third);
    assert_eq!(kept.on("2026-05-19", third).origin, Origin::Observed);
    // A sheet sees what is below it, and what is written to it alone.
    let stamp = |store: &dyn Store| store.stamp(SkySlip::DRAWER, &spot().to_string());
    let sheet = Overlay::over(&kept.store);
    assert_eq!(stamp(&sheet), stamp(&kept.store));
    sheet.write(vec![SkySlip::new(&spot(), Default::default()).put().unwrap()]).unwrap();
    assert_eq!(stamp(&sheet), None);
    assert!(stamp(&kept.store).is_some());
}

#[test]
fn a_document_that_cannot_be_taken_leaves_what_is_kept() {
    let kept = Kept::new();
    kept.takes(By::MetNorway, &compact(at("2026-05-17T18:00:00Z"), 60, 30), "2026-05-17T18:40:00Z");
    let before = SkySlip::of(&kept.store, &spot()).unwrap();
    let mut spoilt = compact(at(NOW), 60, 30);
    spoilt["properties"]["timeseries"][7]["data"]["instant"]["details"]["air_temperature"] = json!(70);
    let filed = kept.takes(By::MetNorway, &spoilt, NOW);
    assert!(matches!(filed, Filed::Kept(Fault::Document { .. })), "{filed:?}");
    // A run of hours that has gone by gives no day either.
    let filed = kept.takes(By::MetNorway, &compact(at("2026-05-16T00:00:00Z"), 20, 0), NOW);
    assert!(matches!(&filed, Filed::Kept(fault) if fault.to_string().contains("no day from today on")), "{filed:?}");
    let after = SkySlip::of(&kept.store, &spot()).unwrap();
    assert_eq!(after.good, before.good);
    assert_eq!(after.failures, 2);
    assert!(after.trouble.unwrap().contains("no day from today on"));
    assert!(after.next > at(NOW) && after.next < at(NOW) + TimeDelta::minutes(30), "{}", after.next);
}

#[test]
fn an_hour_gap_costs_the_day_and_it_is_said() {
    let kept = Kept::new();
    let mut document = compact(at("2026-05-17T18:00:00Z"), 72, 0);
    let series = document["properties"]["timeseries"].as_array_mut().unwrap();
    series.drain(30..36);
    let filed = kept.takes(By::MetNorway, &document, "2026-05-17T18:40:00Z");
    let Filed::New { unmade, .. } = &filed else { panic!("{filed:?}") };
    assert_eq!(unmade[0], "2026-05-19 is not made: 18 of its 24 hours are known");
    assert_eq!(kept.on("2026-05-19", NOW).origin, Origin::Normals);
    assert_eq!(kept.on("2026-05-20", NOW).origin, Origin::Forecast);
}

#[test]
fn what_people_said_lies_over_all_else() {
    let kept = Kept::new();
    kept.takes(By::MetNorway, &compact(at("2026-05-17T18:00:00Z"), 60, 30), "2026-05-17T18:40:00Z");
    let said = ToldWeather {
        site: SiteId::new("roof-12").unwrap(),
        date: date("2026-05-18"),
        tmax_c: None,
        tmin_c: None,
        rain_mm: Some(20.0),
        at: at(NOW),
    };
    let change = said.kept(&kept.store).unwrap();
    kept.store.write(vec![change]).unwrap();
    let day = kept.on("2026-05-18", NOW);
    assert_eq!((day.origin, day.rain.unwrap().as_millimetres()), (Origin::Told, 20.0));
    assert!((day.tmax.as_celsius() - 43.0).abs() < 0.1, "what was not said is the forecast's");
    assert_eq!(ToldWeather::all(&kept.store).unwrap().len(), 1);
}

/// A document of so many hours for Berlin, warmer by a tenth of a degree every hour.
fn berlin(by: By, first: &str, hours: i64) -> Value {
    let (first, position) = (at(first), [13.4, 52.5]);
    if by == By::MetNorway {
        let mut document = compact(first, hours, 0);
        document["geometry"]["coordinates"] = json!(position);
        for (hour, entry) in document["properties"]["timeseries"].as_array_mut().unwrap().iter_mut().enumerate() {
            entry["data"]["instant"]["details"]["air_temperature"] = json!(hour as f64 / 10.0);
            if (hour as i64) < hours {
                entry["data"]["next_1_hours"]["details"]["precipitation_amount"] = json!(0.5);
            }
        }
        return document;
    }
    let times = (0..=hours).map(|hour| (first + TimeDelta::hours(hour)).format("%Y-%m-%dT%H:%M").to_string());
    let list = |value: f64| json!((0..=hours).map(|_| value).collect::<Vec<_>>());
    let mut document = arrays(first, 3);
    (document["latitude"], document["longitude"]) = (json!(position[1]), json!(position[0]));
    document["hourly"] = json!({
        "time": times.collect::<Vec<_>>(),
        "temperature_2m": (0..=hours).map(|hour| hour as f64 / 10.0).collect::<Vec<_>>(),
        "precipitation": list(0.5),
    });
    document
}

#[track_caller]
fn clock_change(by: By, first: &str, day: &str, hours: f64) {
    let zone = chrono_tz::Europe::Berlin;
    let (cell, store) = (Cell::of(52.5, 13.4), Overlay::in_memory());
    let text = berlin(by, first, 72).to_string();
    let read = if by == By::MetNorway { met_norway::read(&text, cell) } else { open_meteo::read(&text, cell) };
    let outlook = read.unwrap();
    let fetched = Fetched { outlook, last_modified: None, expires: None, deprecated: false };
    let spot = Spot { cell, zone };
    file(&store, &spot, by, Ok(Answered::New(Box::new(fetched))), at(first), 1).unwrap();
    let good = SkySlip::of(&store, &spot).unwrap().good.unwrap();
    let made = good.days.iter().find(|made| made.date == date(day)).unwrap();
    // Half a millimetre an hour, and a tenth of a degree from each hour to the next.
    assert!((made.rain_mm.unwrap() - hours / 2.0).abs() < 1e-9, "{made:?}");
    assert!((made.tmax_c - made.tmin_c - (hours - 1.0) / 10.0).abs() < 1e-9, "{made:?}");
}

/// Days of 23 and of 25 hours (IANA time zone database, Europe/Berlin), by both services.
#[test]
fn the_days_on_which_clocks_are_moved() {
    for by in [By::MetNorway, By::OpenMeteo] {
        clock_change(by, "2026-03-28T20:00:00Z", "2026-03-29", 23.0);
        clock_change(by, "2026-03-28T20:00:00Z", "2026-03-30", 24.0);
        clock_change(by, "2026-10-24T20:00:00Z", "2026-10-25", 25.0);
    }
}
