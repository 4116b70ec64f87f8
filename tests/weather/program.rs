//! The program: one command that asks, answers and how they age, faults, the bot.

use crate::weather_service::documents::{http_date, met_norway as compact, open_meteo as arrays};
use crate::weather_service::{Reply, Service};
use crate::{NOW, at, bot_api};
use chrono::{DateTime, Utc};
use serde_json::{Value, json};
use std::path::Path;
use std::process::{Command, Output};

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

/// A service that takes the call and never answers: what was asked of the bot meanwhile is answered from what there is.
#[test]
fn a_silent_service_delays_no_answer() {
    let service = Service::start([Reply::Silent]);
    let garden = Garden::under(format!("met-norway={}", service.address()));
    let api = bot_api::BotApi::start();
    let more = [("ROOFTEND_WEATHER", garden.sources.as_str())];
    let serving = bot_api::Serving::start(Path::new(garden.folder.path()), &api, &more);
    serving.line("serving");
    service.was_asked(1);
    // The call is never answered, so any answer was given while it was open.
    let answer = garden.asked("2026-05-18T07:30:00+05:30", WATER);
    assert!(answer["text"].as_str().unwrap().contains("usual days"), "{answer}");
    assert!(!has(&answer["sources"], "met-norway"), "{answer}");
    // Nor does it hold the bot up when it is to end.
    let (code, log) = serving.stop();
    assert_eq!(code, Some(0), "{log}");
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
