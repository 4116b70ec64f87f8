//! The year ahead of a roof: the months against what growers of the region do (common practice, no source: the middle
//! of a season, not its edges), the words in three languages, and who may ask.

use chrono::{Datelike, NaiveDate};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::season::{outlook, seasons, usual_way};
use rooftend::needs::year::Year;
use rooftend::planning::year::{MonthAhead, Roof, YearAhead, year_ahead};
use rooftend::weather::Weather;
use serde_json::Value;
use std::io::Write;
use std::process::{Command, Output};
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

fn year(place: &str, day: &str) -> Year {
    let place = KNOWN.places.iter().find(|known| known.id == place).unwrap();
    Year::around(&Weather::of_place(place), day.parse().unwrap()).unwrap()
}

fn ahead(place: &str, day: &str, year: &Year) -> YearAhead<'static> {
    let crops = KNOWN.crops.values().map(|crop| (crop, usual_way(crop, false), 0)).collect();
    let place = KNOWN.places.iter().find(|known| known.id == place);
    let today: NaiveDate = day.parse().unwrap();
    year_ahead(&Roof { year, today, crops, typical: None, place })
}

fn month<'a>(ahead: &'a YearAhead<'_>, month: u32) -> &'a MonthAhead {
    ahead.months.iter().find(|found| found.first.month() == month).unwrap()
}

fn named(ahead: &YearAhead<'_>, places: &[usize]) -> Vec<String> {
    places.iter().map(|place| ahead.choices[*place].crop.id.clone()).collect()
}

/// A year's times are those that the question for one crop gives, from any day.
#[test]
fn a_year_agrees_with_the_answer_for_one_crop() {
    for (third, day) in ["2026-01-12", "2026-05-18", "2026-09-20"].into_iter().enumerate() {
        let year = year("nagpur", day);
        for crop in KNOWN.crops.values().skip(third).step_by(3) {
            let way = usual_way(crop, false);
            let (one, all) = (outlook(crop, way, &year), seasons(crop, way, &year));
            assert_eq!(one.fits, all.fits, "{} on {day}", crop.id);
            assert_eq!(one.marginal, all.marginal, "{} on {day}", crop.id);
            assert_eq!(one.window, all.windows.first().copied(), "{} on {day}", crop.id);
        }
    }
}

#[test]
fn months_of_a_hot_place_with_a_monsoon() {
    let year = year("nagpur", "2026-01-12");
    let ahead = ahead("nagpur", "2026-01-12", &year);
    assert_eq!(ahead.months.len(), 12);
    for (crop, starts) in [("okra", 2), ("cauliflower", 9), ("garlic", 9), ("fenugreek", 10), ("lettuce", 11)] {
        let found = named(&ahead, &month(&ahead, starts).begins);
        assert!(found.iter().any(|id| id == crop), "{crop} does not begin in month {starts}: {found:?}");
    }
    // Greens of the cold season are not for April and May, nor okra for December.
    for (crop, out) in [("lettuce", 5), ("coriander", 4), ("cauliflower", 4), ("okra", 12)] {
        let month = month(&ahead, out);
        let all = [named(&ahead, &month.begins), named(&ahead, &month.ends), named(&ahead, &month.goes_on)].concat();
        assert!(all.iter().all(|id| id != crop), "{crop} in month {out}");
    }
    let up = month(&ahead, 3).net_up.expect("the net goes up in March");
    let down = month(&ahead, 6).net_down.expect("it comes down with the rains");
    assert!(up < down);
    // The feed answer halves from 40 °C on: April and May in Nagpur.
    assert!(month(&ahead, 4).feed_halved.is_some());
    assert!(month(&ahead, 6).feed_full.is_some());
    let drains: Vec<u32> = ahead.months.iter().filter(|month| month.drains).map(|month| month.first.month()).collect();
    assert_eq!(drains, [6], "the monsoon comes to Nagpur in June");
}

#[test]
fn nothing_is_told_twice_in_a_month() {
    let year = year("nagpur", "2026-05-18");
    let ahead = ahead("nagpur", "2026-05-18", &year);
    for month in &ahead.months {
        let mut all = [month.begins.clone(), month.ends.clone(), month.goes_on.clone()].concat();
        let count = all.len();
        all.sort_unstable();
        all.dedup();
        assert_eq!(all.len(), count, "{}", month.first);
    }
    // In the middle of the hot season the net and the half feeds are for now.
    let first = &ahead.months[0];
    assert_eq!(first.net_up.map(|day| day.to_string()).as_deref(), Some("2026-05-18"));
    assert_eq!(first.feed_halved.map(|day| day.to_string()).as_deref(), Some("2026-05-18"));
}

#[test]
fn a_mild_place_has_no_net_and_no_half_feeds() {
    let year = year("nairobi", "2026-03-01");
    let ahead = ahead("nairobi", "2026-03-01", &year);
    assert!(ahead.months.iter().all(|month| month.net_up.is_none() && month.feed_halved.is_none()));
    assert!(ahead.choices.iter().filter(|choice| choice.seasons.whole_year).count() > 10);
}

fn rooftend(arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command.args(arguments).output().unwrap()
}

fn json(arguments: &[&str]) -> Value {
    let output = rooftend(arguments);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// The months of a reply.
fn months(reply: &Value) -> &Value {
    let figures = reply["figures"].as_array().unwrap();
    &figures.iter().find(|figure| figure["name"] == "months").unwrap()["value"]
}

/// The reply to a message: it fits a phone, and each of the words stands in it or in what waits behind "more".
#[track_caller]
fn asked(person: &str, message: &str, language: &str, words: &[&str]) -> Value {
    let reply = json(&["ask", "--demo", "--as", person, "--json", message]);
    assert_eq!(reply["reading"]["kind"], "sow", "{message}");
    assert_eq!(reply["outcome"], "answered", "{message}");
    assert_eq!(reply["reading"]["language"], language, "{message}");
    assert_eq!(months(&reply).as_array().unwrap().len(), 12, "{message}");
    let text = reply["text"].as_str().unwrap();
    assert!(text.chars().count() < 500, "{message}: {text}");
    let more = reply["working"].as_array().unwrap().iter().filter_map(Value::as_str).collect::<Vec<_>>().join("\n");
    for word in words {
        assert!(text.contains(word) || more.contains(word), "{message}: {word} in {text}\n{more}");
    }
    reply
}

#[test]
fn the_same_year_in_three_languages() {
    let english =
        asked("meera", "what does my year look like", "en", &["Jun: start", "Clear drains", "Net down about"]);
    let hindi = asked("meera", "साल भर में कब क्या लगाएँ", "hi", &["जून: शुरू करें", "नाली", "जाली लगभग"]);
    let roman = asked("meera", "saal bhar kya lagayein", "hi-Latn", &["June: shuru karein", "naali", "Jaali lagbhag"]);
    assert_eq!(english["figures"], hindi["figures"]);
    assert_eq!(english["figures"], roman["figures"]);
    // The whole of it comes with "more", and with the command.
    let after = r#"{"id":"1","as":"meera","after":["what does my year look like"],"message":"more"}"#;
    let mut file = tempfile::NamedTempFile::new().unwrap();
    file.write_all(after.as_bytes()).unwrap();
    let more = json(&["ask", "--demo", "--batch", file.path().to_str().unwrap()]);
    for words in ["May: start tomato, chilli, okra, brinjal, ridge gourd", "Jun: start", "Clear drains", "Apr: start"] {
        assert!(more["text"].as_str().unwrap().contains(words), "{words}: {}", more["text"]);
    }
    let whole = rooftend(&["year", "--demo", "--as", "meera", "roof-12"]);
    assert!(String::from_utf8_lossy(&whole.stdout).contains("Apr: start"), "{whole:?}");
    asked("asha", "which month for what", "en", &["on your roofs"]);
    asked("farid", "give me a month by month plan for my terrace", "en", &["Farid's terrace"]);
}

#[test]
fn a_crop_or_a_month_in_the_question_is_not_the_whole_year() {
    for message in ["can okra be planted all year", "what can I sow in november", "what can I sow now"] {
        let reply = json(&["ask", "--demo", "--as", "meera", "--json", message]);
        let figures = reply["figures"].as_array().unwrap();
        assert!(figures.iter().all(|figure| figure["name"] != "months"), "{message}");
    }
}

#[test]
fn a_bed_without_depth_has_fewer_crops() {
    let of = |message: &str| {
        let reply = json(&["ask", "--demo", "--as", "joseph", "--json", message]);
        months(&reply)[0]["begins"].as_array().map_or(0, Vec::len)
    };
    // The pot is 25 cm deep in 4.5 hours of sun.
    let balcony = of("what does my year look like");
    let roof = months(&json(&["year", "--demo", "--json", "roof-12"]))[0]["begins"].as_array().map_or(0, Vec::len);
    assert!((1..roof).contains(&balcony), "{balcony} of {roof}");
}

#[test]
fn only_who_may_see_a_site_sees_its_year() {
    let own = rooftend(&["year", "--demo", "--as", "meera", "roof-12"]);
    assert!(String::from_utf8_lossy(&own.stdout).contains("Roof 12"));
    let other = rooftend(&["year", "--demo", "--as", "meera", "roof-7"]);
    assert_eq!(other.status.code(), Some(2));
    assert!(!String::from_utf8_lossy(&other.stderr).contains("Roof 7"));
    // One that is there and one that is not are refused alike.
    let none = rooftend(&["year", "--demo", "--as", "meera", "roof-99"]);
    let told = |output: &Output| String::from_utf8_lossy(&output.stderr).replace("roof-99", "roof-7");
    assert_eq!(told(&other), told(&none));
    // In the language that the person chose.
    let hindi = rooftend(&["year", "--demo", "--as", "nilofer", "roof-21"]);
    assert!(String::from_utf8_lossy(&hindi.stdout).contains("शुरू करें"));
    let reply = json(&["year", "--demo=january", "--json", "terrace-9"]);
    assert_eq!(months(&reply)[0]["month"], "2026-01");
}
