//! Forecasts from outside: both services on the loopback with their faults, what is kept of them, and how it reaches an
//! answer.
#![allow(clippy::disallowed_methods, reason = "the tests write the files that commands read")]

#[allow(unused_imports, reason = "the bot's own tests use the rest of it")]
mod bot_api;
mod weather_service;

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use rooftend::desk::sky::{Filed, Handed, PastMonth, Skies, SkySlip, file};
use rooftend::garden::{Overlay, Site, SiteId, Slip, Store, ToldWeather};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::weather::cell::{Cell, Spot};
use rooftend::weather::source::{Answered, Content, Fault, Provider, Setting, met_norway, open_meteo, providers};
use rooftend::weather::{Day, Origin, Service as By};
use serde_json::{Value, json};
use std::path::Path;
use std::process::{Command, Output};
use weather_service::documents::{NAGPUR, celsius, http_date, met_norway as compact, open_meteo as arrays, stamp};
use weather_service::{Reply, Service};

/// Half past seven in Nagpur.
const NOW: &str = "2026-05-18T02:00:00Z";

fn at(text: &str) -> DateTime<Utc> {
    text.parse().unwrap()
}

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn nagpur() -> Cell {
    Cell::of(NAGPUR.0, NAGPUR.1)
}

fn spot() -> Spot {
    Spot { cell: nagpur(), zone: chrono_tz::Asia::Kolkata }
}

/// The only provider of a setting.
fn provider(setting: &str) -> Box<dyn Provider> {
    providers(&setting.parse::<Setting>().unwrap(), Some("crew@example.org")).unwrap().remove(0)
}

fn ask(provider: &dyn Provider, since: Option<&str>) -> Result<Answered, Fault> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(provider.ask(nagpur(), since))
}

#[test]
fn asks_as_the_terms_of_met_norway_want() {
    let modified = "Mon, 18 May 2026 01:12:13 GMT";
    let whole = Reply::document(compact(at(NOW), 60, 30).to_string());
    let whole = whole.with("Last-Modified", modified).with("Expires", "Mon, 18 May 2026 02:31:00 GMT");
    let same = Reply::status(304).with("Expires", "Mon, 18 May 2026 03:05:00 GMT");
    let service = Service::start([whole, same]);
    let provider = provider(&format!("met-norway={}", service.address()));
    let Ok(Answered::New(fetched)) = ask(provider.as_ref(), None) else { panic!("a document") };
    assert_eq!(fetched.last_modified.as_deref(), Some(modified));
    assert_eq!(fetched.expires, Some(at("2026-05-18T02:31:00Z")));
    assert_eq!(fetched.outlook.issued, Some(at(NOW)));
    assert!(!fetched.deprecated);
    let again = ask(provider.as_ref(), Some(modified));
    assert_eq!(again, Ok(Answered::Same { expires: Some(at("2026-05-18T03:05:00Z")) }));
    let asked = service.asked();
    assert_eq!(asked[0].path, "/weatherapi/locationforecast/2.0/compact?lat=21.15&lon=79.10");
    assert!(asked[0].user_agent.starts_with("rooftend/") && asked[0].user_agent.contains("crew@example.org"));
    assert_eq!((asked[0].since.as_deref(), asked[1].since.as_deref()), (None, Some(modified)));
}

#[test]
fn asks_open_meteo_in_units_of_the_sums() {
    let service = Service::start([Reply::document(arrays(at(NOW), 9).to_string())]);
    let provider = provider(&format!("open-meteo={}/", service.address()));
    assert!(matches!(ask(provider.as_ref(), None), Ok(Answered::New(_))));
    let path = &service.asked()[0].path;
    for part in ["/v1/forecast?latitude=21.15&longitude=79.10&", "wind_speed_unit=ms", "timezone=GMT"] {
        assert!(path.contains(part), "{path}");
    }
}

#[track_caller]
fn fault(reply: Reply, expected: &str) {
    let service = Service::start([reply]);
    for name in ["met-norway", "open-meteo"] {
        let told = ask(provider(&format!("{name}={}", service.address())).as_ref(), None).unwrap_err().to_string();
        assert_eq!(told, expected.replace("SERVICE", name));
    }
}

#[test]
fn faults_of_the_way() {
    fault(Reply::status(429).with("Retry-After", "600"), "SERVICE asks to be left alone for a while (429)");
    fault(Reply::status(403), "SERVICE refused with status 403");
    fault(Reply::status(301).with("Location", "http://127.0.0.1:9/"), "SERVICE refused with status 301");
    fault(Reply::status(502), "SERVICE is out of order: status 502");
    fault(Reply::Dead, "SERVICE cannot be reached: the connection broke off");
    fault(Reply::Broken, "SERVICE cannot be reached: the connection broke off");
    fault(Reply::document("<html>".to_owned()), "SERVICE: line 1, column 1: expected value");
    let nobody = provider("met-norway=http://127.0.0.1:9");
    assert_eq!(ask(nobody.as_ref(), None).unwrap_err().to_string(), "met-norway cannot be reached: no connection");
    let busy = Service::start([Reply::status(429).with("Retry-After", "600")]);
    let told = ask(provider(&format!("met-norway={}", busy.address())).as_ref(), None).unwrap_err();
    assert_eq!(told, Fault::Busy { service: By::MetNorway, wait: Some(TimeDelta::seconds(600)) });
}

#[test]
fn a_product_that_ends_is_told() {
    let document = Reply::Whole(203, Vec::new(), compact(at(NOW), 60, 4).to_string());
    let service = Service::start([document]);
    let Ok(Answered::New(fetched)) = ask(provider(&format!("met-norway={}", service.address())).as_ref(), None) else {
        panic!("a document")
    };
    assert!(fetched.deprecated);
}

#[track_caller]
fn refused_compact(spoil: impl Fn(&mut Value), expected: &str) {
    let mut document = compact(at(NOW), 24, 2);
    spoil(&mut document);
    let told = met_norway::read(&document.to_string(), nagpur()).unwrap_err().to_string();
    assert!(told.starts_with("met-norway: ") && told.contains(expected), "{told}");
}

#[test]
fn compact_documents_that_cannot_be() {
    let details = "/properties/timeseries/3/data/instant/details";
    let set =
        |path: String, value: Value| move |document: &mut Value| *document.pointer_mut(&path).unwrap() = value.clone();
    let third = "properties.timeseries[3] (2026-05-18T05:00:00+00:00)";
    refused_compact(
        set(format!("{details}/air_temperature"), json!(70.0)),
        &format!("{third}: air_temperature: temperature 70 °C was given, -60 to 60 °C expected"),
    );
    refused_compact(
        set(format!("{details}/relative_humidity"), json!(140.0)),
        &format!("{third}: relative_humidity 140 % was given, 0 to 100 % expected"),
    );
    let hour = "/properties/timeseries/3/data/next_1_hours/details/precipitation_amount";
    refused_compact(set(hour.to_owned(), json!(-0.2)), "precipitation_amount: depth of water -0.2 mm was given");
    refused_compact(set(format!("{details}/wind_speed"), json!(99.0)), "wind_speed: wind speed 99 m/s was given");
    refused_compact(set(format!("{details}/air_temperature"), json!("warm")), "invalid type: string");
    let unit = "/properties/meta/units/wind_speed";
    refused_compact(
        set(unit.to_owned(), json!("knots")),
        "properties.meta.units.wind_speed: the unit \"knots\" was given, \"m/s\" expected",
    );
    refused_compact(set("/geometry/coordinates".to_owned(), json!([10.7, 59.9])), "it is for a place 6");
    let second = "/properties/timeseries/4/time";
    refused_compact(set(second.to_owned(), json!(NOW)), "times in their order expected");
    refused_compact(set("/properties/timeseries".to_owned(), json!([])), "at least one expected");
    let cut = &compact(at(NOW), 24, 2).to_string()[..900];
    let told = met_norway::read(cut, nagpur()).unwrap_err().to_string();
    assert_eq!(told, "met-norway: line 1, column 900: the document is cut short");
}

#[track_caller]
fn refused_arrays(path: &str, value: Value, expected: &str) {
    let mut document = arrays(at(NOW), 4);
    *document.pointer_mut(path).unwrap() = value;
    let told = open_meteo::read(&document.to_string(), nagpur()).unwrap_err().to_string();
    assert!(told.starts_with("open-meteo: ") && told.contains(expected), "{told}");
}

#[test]
fn arrays_that_cannot_be() {
    refused_arrays("/hourly/temperature_2m/5", json!(70), "hourly[5] (2026-05-16T05:00:00+00:00): temperature_2m: ");
    refused_arrays("/hourly/relative_humidity_2m/5", json!(140), "relative_humidity_2m 140 % was given");
    refused_arrays("/hourly/precipitation/5", json!(-1), "precipitation: depth of water -1 mm was given");
    refused_arrays("/hourly/shortwave_radiation/5", json!(2000), "shortwave_radiation: radiation 2000 W/m2 was given");
    refused_arrays("/hourly/time/5", json!("soon"), "hourly.time[5]: \"soon\" is no time");
    refused_arrays("/hourly/precipitation", json!([0.0]), "hourly.precipitation: 1 values were given for 96 times");
    refused_arrays("/hourly/temperature_2m", json!({}), "invalid type: map");
    refused_arrays("/hourly_units/temperature_2m", json!("°F"), "the unit \"°F\" was given, \"°C\" expected");
    refused_arrays("/hourly_units/precipitation", json!("inch"), "the unit \"inch\" was given, \"mm\" expected");
    refused_arrays("/latitude", json!(52.5), "it is for a place");
    // What is not known of an hour is left out.
    let mut document = arrays(at(NOW), 4);
    document["hourly"]["temperature_2m"][5] = Value::Null;
    let Content::Steps(steps) = open_meteo::read(&document.to_string(), nagpur()).unwrap().content else {
        panic!("steps")
    };
    assert_eq!(steps.len(), 95);
}

/// FAO-56 eq. 47 and example 14: 3.2 m/s at 10 m are 2.4 m/s at 2 m (the factor 4.87 / ln(67.8·10 − 5.42) is 0.748).
#[test]
fn wind_of_ten_metres_is_brought_to_two() {
    let mut document = compact(at(NOW), 24, 0);
    document["properties"]["timeseries"][0]["data"]["instant"]["details"]["wind_speed"] = json!(3.2);
    let wind = |content| match content {
        Content::Steps(steps) => steps.first().unwrap().wind_2m.unwrap().as_metres_per_second(),
        Content::Days(_) => panic!("steps"),
    };
    let got = wind(met_norway::read(&document.to_string(), nagpur()).unwrap().content);
    assert!((got - 2.4).abs() < 0.05, "{got}");
    let mut document = arrays(at(NOW), 3);
    document["hourly_units"]["wind_speed_10m"] = json!("km/h");
    document["hourly"]["wind_speed_10m"][0] = json!(3.2 * 3.6);
    let got = wind(open_meteo::read(&document.to_string(), nagpur()).unwrap().content);
    assert!((got - 2.4).abs() < 0.05, "{got}");
}

/// What is kept when documents come one after the other.
struct Kept {
    store: Overlay<'static>,
    known: Knowledge,
}

impl Kept {
    fn new() -> Self {
        Self { store: Overlay::in_memory(), known: Knowledge::read(&Files::embedded()).0 }
    }

    fn takes(&self, by: By, document: &Value, now: &str) -> Filed {
        let text = document.to_string();
        let outlook = match by {
            By::OpenMeteo => open_meteo::read(&text, nagpur()),
            _ => met_norway::read(&text, nagpur()),
        };
        let fetched = outlook.map(|outlook| {
            let fetched =
                rooftend::weather::source::Fetched { outlook, last_modified: None, expires: None, deprecated: false };
            Answered::New(Box::new(fetched))
        });
        file(&self.store, &spot(), by, fetched, at(now), 1).unwrap()
    }

    fn on(&self, day: &str, now: &str) -> Day {
        let here = at(now).with_timezone(&chrono::FixedOffset::east_opt(19_800).unwrap());
        let weather = Skies::new(&self.store, Handed::Nothing, &self.known).over(&site(), here).unwrap();
        weather.on(date(day)).unwrap()
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
    assert_eq!(observed.rain_chance.map(|chance| chance.as_percent()), Some(20.0));
    let past = PastMonth::days_of(&kept.store, &spot()).unwrap();
    assert_eq!(past.iter().map(|day| day.day.date).max(), Some(date("2026-05-19")));
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

/// The program with a garden of its own.
struct Garden {
    folder: tempfile::TempDir,
    sources: String,
}

impl Garden {
    fn under(sources: String) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let garden = Self { folder, sources };
        assert!(garden.run(&["import", "demo-data/garden.toml"]).status.success());
        garden
    }

    fn run(&self, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_rooftend"))
            .env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"))
            .env("ROOFTEND_WEATHER", &self.sources)
            .arg("--data")
            .arg(self.folder.path())
            .args(arguments)
            .output()
            .unwrap()
    }

    fn told(&self, arguments: &[&str]) -> String {
        let output = self.run(arguments);
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    }

    fn asked(&self, now: &str, message: &str) -> Value {
        let told = self.told(&["ask", "--as", "meera", "--now", now, "--dry-run", "--json", message]);
        serde_json::from_str(&told).unwrap()
    }
}

const WATER: &str = "how much water for the east box this week";

fn has(list: &Value, part: &str) -> bool {
    list.as_array().unwrap().iter().any(|one| one.as_str().unwrap().contains(part))
}

#[test]
fn from_one_command_to_an_answer_and_how_it_ages() {
    let first = at("2026-05-17T18:00:00Z");
    let document = Reply::document(compact(first, 60, 30).to_string())
        .with("Last-Modified", &http_date(first))
        .with("Expires", &http_date(at("2026-05-18T02:30:00Z")));
    let service = Service::start([document]);
    let garden = Garden::under(format!("met-norway={}", service.address()));

    let before = garden.asked("2026-05-18T07:30:00+05:30", WATER);
    assert!(before["text"].as_str().unwrap().contains("usual days"), "{before}");
    assert_eq!(service.asked().len(), 0, "nothing is fetched in the way of an answer");

    let told = garden.told(&["weather", "--fetch", "--now", "2026-05-18T00:20:00+05:30"]);
    assert_eq!(service.asked().len(), 2, "six roofs lie in two cells");
    assert!(told.contains("cell 21.15,79.10: met-norway gave a new forecast of 10 days"), "{told}");
    assert!(told.contains("forecast: met-norway, made 2026-05-17 23:30 (0 h old), until 2026-05-27"), "{told}");
    assert!(told.contains("data from the Norwegian Meteorological Institute (Locationforecast 2.0, CC BY 4.0)"));
    let one = garden.told(&["weather", "--site", "roof-12", "--now", "2026-05-18T00:20:00+05:30"]);
    assert_eq!(one.matches("cell ").count(), 1, "{one}");

    // It is left alone until its document expires.
    let told = garden.told(&["weather", "--fetch", "--site", "roof-12", "--now", "2026-05-18T07:40:00+05:30"]);
    assert!(told.contains("asks not to be asked before 2026-05-18 08:00"), "{told}");
    assert_eq!(service.asked().len(), 2);

    let fresh = garden.asked("2026-05-18T07:30:00+05:30", WATER);
    let text = fresh["text"].as_str().unwrap();
    assert!(!text.contains("usual days") && !text.contains("days old"), "{text}");
    assert!(has(&fresh["sources"], "met-norway: Locationforecast 2.0, CC BY 4.0"), "{fresh}");
    assert!(has(&fresh["working"], "MET Norway, Locationforecast 2.0, licence CC BY 4.0"), "{fresh}");
    // The sun is not told by this service: its estimate is named.
    assert!(has(&fresh["sources"], "fao56: eq. 50"), "{fresh}");

    let third = garden.asked("2026-05-20T07:30:00+05:30", WATER);
    let text = third["text"].as_str().unwrap();
    assert!(text.contains("The newest forecast I have is 2 days old"), "{text}");
    assert!(has(&third["working"], "2 as their last forecast had them"), "{third}");
    let week = garden.asked("2026-05-24T07:30:00+05:30", WATER);
    let text = week["text"].as_str().unwrap();
    assert!(text.contains("The forecast lacks 3 of the 7 days"), "{text}");
    let ended = garden.asked("2026-05-30T07:30:00+05:30", WATER);
    let text = ended["text"].as_str().unwrap();
    assert!(text.contains("usual days") && !text.contains("days old"), "{text}");
    assert!(has(&ended["working"], "The last forecast ended on Wed 27 May"), "{ended}");
    assert!(!has(&ended["sources"], "met-norway"), "{ended}");

    // What comes later is asked for with the date of what is known; what cannot be is refused and the last good one stays.
    let mut spoilt = compact(at("2026-05-20T00:00:00Z"), 60, 30);
    spoilt["properties"]["timeseries"][7]["data"]["instant"]["details"]["relative_humidity"] = json!(140);
    service.now_answers([Reply::document(spoilt.to_string())]);
    let told = garden.told(&["weather", "--fetch", "--site", "roof-12", "--now", "2026-05-20T07:30:00+05:30"]);
    assert!(told.contains("nothing taken, what is kept stays: met-norway: properties.timeseries[7]"), "{told}");
    assert!(told.contains("until 2026-05-27"), "{told}");
    assert_eq!(service.asked()[2].since.as_deref(), Some(http_date(first).as_str()));
}

#[test]
fn the_next_source_is_asked_where_the_first_fails() {
    let broken = Service::start([Reply::status(503)]);
    let works = Service::start([Reply::document(arrays(at(NOW), 12).to_string())]);
    let garden = Garden::under(format!("met-norway={}, open-meteo={}", broken.address(), works.address()));
    let told = garden.told(&["weather", "--fetch", "--now", "2026-05-18T07:30:00+05:30"]);
    assert!(told.contains("nothing taken, what is kept stays: met-norway is out of order: status 503"), "{told}");
    assert!(told.contains("open-meteo gave a new forecast of"), "{told}");
    assert_eq!(broken.asked().len(), 1, "a service that is out of order is left alone for the next cell");
    let answer = garden.asked("2026-05-18T07:30:00+05:30", WATER);
    assert!(has(&answer["sources"], "open-meteo: forecast, CC BY 4.0"), "{answer}");
    assert!(!has(&answer["sources"], "fao56: eq. 50"), "the sun is told by this service: {answer}");
    assert!(has(&answer["working"], "1 as they were found to be"), "{answer}");
}

#[test]
fn a_file_of_the_setting_joins_what_the_store_has() {
    let garden = Garden::under("file:demo-data/forecast-may.json".to_owned());
    let now = "2026-05-18T08:00:00+05:30";
    let by_setting = garden.asked(now, WATER);
    let told = garden.told(&[
        "ask",
        "--as",
        "meera",
        "--now",
        now,
        "--dry-run",
        "--json",
        "--forecast",
        "demo-data/forecast-may.json",
        WATER,
    ]);
    let by_option: Value = serde_json::from_str(&told).unwrap();
    assert_eq!(by_setting["figures"], by_option["figures"]);
    let told = garden.told(&["weather", "--fetch", "--now", now]);
    assert!(told.contains("file gave a new forecast of"), "{told}");
    let told = garden.told(&["weather", "--fetch", "--now", now]);
    assert!(told.contains("file says that what is kept is still the newest"), "{told}");
}

#[test]
fn wrong_settings_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let run = |sources: &str, arguments: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
        command.env("ROOFTEND_WEATHER", sources).arg("--data").arg(folder.path()).args(arguments).output().unwrap()
    };
    let output = run("metno", &["ask", "x"]);
    let told = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(2), "{told}");
    assert!(told.contains("\"metno\" is no source of weather; met-norway, open-meteo, file:PATH or none expected"));
    let output = run("none", &["weather", "--fetch"]);
    let told = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(2), "{told}");
    assert!(told.contains("no source of weather is set"), "{told}");
    let output = run("none", &["weather", "--site", "roof-99"]);
    assert!(String::from_utf8_lossy(&output.stderr).contains("no site with the id \"roof-99\""));
}

/// The bot fetches beside its answers, for each cell once, and keeps to what it has while the service is away.
#[test]
fn a_running_bot_fetches_in_the_background() {
    let now = Utc::now();
    let first = DateTime::from_timestamp((now.timestamp() - 86_400) / 3_600 * 3_600, 0).unwrap();
    let document = compact(first, 96, 24).to_string();
    let service = Service::start([Reply::document(document).with("Last-Modified", &http_date(first))]);
    let garden = Garden::under(format!("met-norway={}", service.address()));
    let api = bot_api::BotApi::start();
    let more = [("ROOFTEND_WEATHER", garden.sources.as_str())];
    let serving = bot_api::Serving::start(Path::new(garden.folder.path()), &api, &more);
    serving.line("serving");
    let asked = service.was_asked(2);
    assert_ne!(asked[0].path, asked[1].path);
    // Through the socket of the process that holds the store.
    let begun = std::time::Instant::now();
    loop {
        let told = garden.told(&["weather", "--site", "roof-12"]);
        if told.contains("forecast: met-norway") {
            break;
        }
        assert!(begun.elapsed() < std::time::Duration::from_secs(60), "{told}");
        std::thread::sleep(std::time::Duration::from_millis(50));
    }
    let answer = garden.asked(&Utc::now().to_rfc3339(), WATER);
    assert!(has(&answer["sources"], "met-norway"), "{answer}");
    let (code, log) = serving.stop();
    assert_eq!(code, Some(0), "{log}");
    assert!(log.contains("a forecast came"), "{log}");
}

/// The documents' own shape: a moment's value is what was put in.
#[test]
fn the_documents_are_what_they_seem() {
    assert!((celsius(at("2026-05-18T09:30:00Z")) - 43.0).abs() < 1e-9);
    assert_eq!(stamp(at(NOW)), "2026-05-18T02:00:00Z");
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
    let fetched = rooftend::weather::source::Fetched { outlook, last_modified: None, expires: None, deprecated: false };
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
