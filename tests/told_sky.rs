//! What a person tells of the weather: how it is read, what it does to the answer, where it is kept.
#![allow(clippy::disallowed_methods, reason = "the tests write the files that commands read")]

use serde_json::Value;
use std::process::Command;

fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command
}

fn asked(person: &str, message: &str) -> Value {
    let output = program().args(["ask", "--demo", "--json", "--as", person, message]).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

fn figure(reply: &Value, name: &str) -> f64 {
    let figures = reply["figures"].as_array().unwrap();
    figures.iter().find(|figure| figure["name"] == name).unwrap()["value"].as_f64().unwrap()
}

#[track_caller]
fn says(person: &str, message: &str, kind: &str, words: &[&str]) -> Value {
    let reply = asked(person, message);
    let text = reply["text"].as_str().unwrap();
    assert_eq!(
        (reply["reading"]["kind"].as_str(), reply["outcome"].as_str()),
        (Some(kind), Some("answered")),
        "{message}: {text}"
    );
    for word in words {
        assert!(text.contains(word), "{message}: \"{word}\" expected in: {text}");
    }
    reply
}

/// The demo's forecast is 43 to 44 °C by day until the week's end.
#[test]
fn temperatures_that_were_told_count() {
    let plain = asked("meera", "how much water does the east box need this week?");
    let cooler = says(
        "meera",
        "36/25 till Sunday, no rain. how much water does the east box need this week?",
        "water",
        &["Mon 18 May to Sun 24 May: 36 °C by day and 25 °C by night and no rain"],
    );
    let (told, forecast) = (figure(&cooler, "litres_this_week"), figure(&plain, "litres_this_week"));
    assert!(told < 0.92 * forecast, "{told} against {forecast}");
    let hotter = says("meera", "यहाँ रोज़ 47 जा रहा है, east box को हफ़्ते में कितना पानी", "water", &["दिन में 47 °C"]);
    let told = figure(&hotter, "litres_this_week");
    assert!(told > 1.03 * forecast, "{told} against {forecast}");
}

#[test]
fn rain_that_was_told_has_watered_the_bed() {
    let dry = says("meera", "can I skip watering the east box?", "water", &["by the record"]);
    assert!(!dry["text"].as_str().unwrap().contains("rain you told of"));
    let evening = ["can wait until this evening", "Reckoned from the rain you told of, Sun 17 May", "20 mm of rain"];
    says("meera", "it rained 20 mm last night, skip watering the east box?", "water", &evening);
}

#[test]
fn rain_without_millimetres_is_guessed_and_says_so() {
    let hard = ["20 mm baarish", "Millimetre nahi bataye"];
    says("meera", "kal raat achhi barish hui, east box ko paani dun?", "water", &hard);
    says("meera", "कल रात हल्की बारिश हुई, east box को पानी दूँ?", "water", &["2 mm बारिश", "मिलीमीटर नहीं बताए"]);
    says(
        "meera",
        "it rained yesterday, do I water the east box today?",
        "water",
        &["5 mm of rain", "You gave no millimetres"],
    );
}

#[test]
fn told_alone_it_is_answered_for_all_beds() {
    let text = says("meera", "43/29 till Friday, no rain", "water", &["All of them together"])["text"].to_string();
    assert!(text.starts_with("\"Reckoned with what you say of Mon 18 May to Fri 22 May"), "{text}");
    says("meera", "kal raat achhi barish hui", "water", &["20 mm baarish"]);
    says("meera", "यहाँ रोज़ 44 जा रहा है", "water", &["सोमवार 18 मई से रविवार 24 मई"]);
}

#[test]
fn a_question_about_weather_tells_nothing() {
    for message in [
        "will it rain tomorrow",
        "something that grows in 44 degrees?",
        "can okra be sown at 40 C",
        "what if it rains",
        "24/7 helpline number",
    ] {
        let text = asked("meera", message)["text"].to_string();
        assert!(!text.contains("Reckoned with what you say"), "{message}: {text}");
    }
    let chatter = asked("meera", "it rained so hard during the match yesterday my team lost the trophy");
    assert_eq!(chatter["reading"]["kind"], "none");
}

/// What was told before a question was asked back counts for its answer.
#[test]
fn the_rain_is_remembered_when_the_bed_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("batch.jsonl");
    let line = r#"{"id":"a","message":"east box","as":"meera","after":["it rained 20 mm last night, skip watering?"]}"#;
    std::fs::write(&file, line).unwrap();
    let output = program().args(["ask", "--demo", "--batch", file.to_str().unwrap()]).output().unwrap();
    let reply: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert!(reply["text"].as_str().unwrap().contains("rain you told of"), "{}", reply["text"]);
}

/// What is kept is told of one site, day by day, what was said later over what was said before.
#[test]
fn it_is_kept_for_the_site_of_who_may_see_it() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let run = |arguments: &[&str]| {
        let output = program().arg("--data").arg(&data).args(arguments).output().unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    };
    run(&["import", "demo-data/garden.toml"]);
    let ask = |person: &str, message: &str| {
        run(&["ask", "--now", "2026-05-18T08:00:00+05:30", "--as", person, message]);
    };
    ask("meera", "43/29 till Tuesday, no rain");
    ask("meera", "it rained 12 mm today, skip watering the east box?");
    ask("farid", "it rained 7 mm last night");
    run(&[
        "ask",
        "--now",
        "2026-05-18T08:00:00+05:30",
        "it rained 90 mm today, skip watering a 12 inch pot of tomato?",
    ]);
    // Of several roofs nobody knows which.
    ask("ravi", "it rained 50 mm last night");
    let backup = folder.path().join("backup.json");
    run(&["backup", backup.to_str().unwrap()]);
    let text = std::fs::read_to_string(&backup).unwrap();
    let kept: Vec<&str> = text.lines().filter(|line| line.contains("weather-told")).collect();
    let all = kept.join("\n");
    for words in ["roof-12|2026-05-18", "roof-12|2026-05-19", "terrace-3|2026-05-17"] {
        assert!(all.contains(words), "{words}: {all}");
    }
    let monday = kept.iter().find(|line| line.contains("roof-12|2026-05-18")).unwrap();
    assert!(monday.contains("43") && monday.contains("12"), "{monday}");
    assert_eq!(kept.len(), 3, "{all}");
}
