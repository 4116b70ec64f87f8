//! Beds of others, asked about in a running talk: two roofs with beds of the same names, and everybody who may ask.
#![allow(clippy::disallowed_methods, reason = "the tests write the files that commands read")]

use serde_json::{Value, json};
use std::fs;
use std::process::Command;

/// A site with its two beds.
fn roof(number: u32) -> String {
    format!(
        r#"
[[sites]]
id = "roof-{number}"
name = "Roof {number}"
latitude = 21.15
longitude = 79.09
elevation_m = 310
timezone = "Asia/Kolkata"

[[beds]]
id = "east-box"
site = "roof-{number}"
names = ["east box", "purab wala box", "पूरब वाला डिब्बा"]
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"

[[beds]]
id = "tomato-bag"
site = "roof-{number}"
names = ["tomato bag"]
kind = "bag"
volume = "40 L"
depth = "14 in"

[[plantings]]
bed = "roof-{number}/east-box"
crop = "amaranth"
sown = "2026-04-20"

[[plantings]]
bed = "roof-{number}/tomato-bag"
crop = "tomato"
planted = "2026-02-10"
"#
    )
}

const PEOPLE: &str = r#"
[[people]]
id = "asha"
name = "Asha"
role = "owner"

[[people]]
id = "ravi"
name = "Ravi"
role = "gardener"
sites = ["roof-99"]

[[people]]
id = "gita"
name = "Gita"
role = "client"
sites = ["roof-99"]

[[people]]
id = "meera"
name = "Meera"
role = "client"
sites = ["roof-12"]
"#;

/// What is said of the bed on roof 12, in all languages, asked and told.
const OF_ROOF_12: [&str; 12] = [
    "roof 12 ka east box",
    "roof-12 ka east box",
    "and the east box on roof 12?",
    "how much water for the roof 12 east box",
    "roof 12 ke purab wale box mein kitna paani",
    "रूफ 12 का पूरब वाला डिब्बा",
    "no, the east box on roof 12",
    "watered the east box on roof 12",
    "the one on roof 12",
    "move the spray on the roof 12 east box to friday",
    "and Meera's east box?",
    "meera ka east box",
];

/// What was said before it.
const BEFORE: [&[&str]; 7] = [
    &[],
    &["how much water for the tomato bag"],
    &["watered the tomato bag"],
    &["when is the next spray"],
    &["watered it"],
    &["move the spray on the tomato bag to friday"],
    &["what is due this week"],
];

/// The replies to all of it, for everybody, with who asked and what was said.
fn replies(who: &[Option<&str>]) -> Vec<(String, Value)> {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name).display().to_string();
    fs::write(at("garden.toml"), [roof(12).as_str(), roof(99).as_str(), PEOPLE].concat()).unwrap();
    let mut lines = Vec::new();
    for person in who {
        for before in BEFORE {
            for said in OF_ROOF_12 {
                let told = format!("{person:?}: {} > {said}", before.join(" > "));
                let mut line = json!({"id": told, "message": said, "after": before});
                if let Some(person) = person {
                    line["as"] = json!(person);
                }
                lines.push(line.to_string());
            }
        }
    }
    fs::write(at("all.jsonl"), lines.join("\n")).unwrap();
    let run = |arguments: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
        command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
        let output = command.arg("--data").arg(at("data")).args(arguments).output().unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    };
    run(&["import", &at("garden.toml")]);
    let (now, forecast) = ("2026-05-18T08:00:00+05:30", "demo-data/forecast-may.json");
    let answered = run(&["ask", "--now", now, "--forecast", forecast, "--batch", &at("all.jsonl")]);
    let replies = answered.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    replies.map(|reply| (reply["id"].as_str().unwrap().to_owned(), reply)).collect()
}

#[test]
fn whoever_may_not_see_a_bed_is_declined_whatever_was_said_before() {
    let mut wrong = Vec::new();
    for (told, reply) in replies(&[None, Some("gita"), Some("ravi")]) {
        let beds = reply["reading"]["beds"].as_array().map_or(0, Vec::len);
        if reply["outcome"] != "declined" || beds > 0 {
            wrong.push(format!("{told}\n  {}: {}", reply["outcome"], reply["text"]));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn whoever_may_see_it_is_not_declined() {
    let mut wrong = Vec::new();
    for (told, reply) in replies(&[Some("asha"), Some("meera")]) {
        let of_99 = format!("{}{}", reply["figures"], reply["reading"]["beds"]).contains("roof-99");
        if reply["outcome"] == "declined" || of_99 {
            wrong.push(format!("{told}\n  {}: {}", reply["outcome"], reply["text"]));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
