//! What is printed or taken into a calendar, from outside: the calendar file read by a parser that had no part in writing it,
//! the round as a page, the commands that write them.
#![allow(clippy::disallowed_methods, reason = "the tests read what the commands write")]

use std::collections::BTreeSet;
use std::path::Path;
use std::process::{Command, Output};

fn rooftend(arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command.args(arguments).output().unwrap()
}

#[track_caller]
fn made(file: &Path, arguments: &[&str]) -> Vec<u8> {
    let output = rooftend(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    std::fs::read(file).unwrap()
}

fn calendar(speaks: &str, days: &str, folder: &Path) -> String {
    let file = folder.join(format!("{speaks}.ics"));
    let name = file.display().to_string();
    let arguments = ["calendar", "--demo", "--as", "ravi", "--speaks", speaks, "--days", days, "--out", &name];
    String::from_utf8(made(&file, &arguments)).unwrap()
}

/// A property of a parsed component.
fn value<'a>(properties: &'a [ical::property::Property], name: &str) -> Option<&'a str> {
    properties.iter().find(|property| property.name == name)?.value.as_deref()
}

#[test]
fn a_calendar_is_read_by_another_parser() {
    let folder = tempfile::tempdir().unwrap();
    for speaks in ["en", "hi", "hi-Latn"] {
        let text = calendar(speaks, "28", folder.path());
        // RFC 5545, 3.1: CRLF after every line, no line of more than 75 octets.
        assert_eq!(text.matches('\n').count(), text.matches("\r\n").count());
        assert!(text.split("\r\n").all(|line| line.len() <= 75), "{speaks}");
        let read = ical::IcalParser::new(text.as_bytes()).next().unwrap().unwrap();
        assert_eq!(value(&read.properties, "VERSION"), Some("2.0"));
        assert!(value(&read.properties, "PRODID").is_some());
        assert!(read.events.len() > 10, "{}", read.events.len());
        let mut ids = BTreeSet::new();
        for event in &read.events {
            let of = |name: &str| value(&event.properties, name).unwrap_or_else(|| panic!("{name} is missing"));
            assert!(ids.insert(of("UID").to_owned()), "{} stands twice", of("UID"));
            assert_eq!(of("DTSTAMP"), "20260518T023000Z", "the moment that was handed in");
            let day = |name: &str| chrono::NaiveDate::parse_from_str(of(name), "%Y%m%d").unwrap();
            assert_eq!((day("DTEND") - day("DTSTART")).num_days(), 1);
            assert!((day("DTSTART") - chrono::NaiveDate::from_ymd_opt(2026, 5, 18).unwrap()).num_days() <= 28);
            assert!(!of("SUMMARY").is_empty());
            let [alarm] = event.alarms.as_slice() else { panic!("one alarm expected") };
            assert_eq!(value(&alarm.properties, "ACTION"), Some("DISPLAY"));
            assert_eq!(value(&alarm.properties, "TRIGGER"), Some("-PT21600S"), "six in the evening before");
            assert!(value(&alarm.properties, "DTSTAMP").is_none());
        }
        let devanagari = |text: &str| text.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c));
        let titles = read.events.iter().filter_map(|event| value(&event.properties, "SUMMARY"));
        assert_eq!(titles.filter(|title| devanagari(title)).count() > 0, speaks == "hi");
    }
}

/// The same jobs made twice are the same file, and a job keeps its id whatever language it is told in.
#[test]
fn ids_are_stable() {
    let folder = tempfile::tempdir().unwrap();
    let ids = |text: &str| {
        let read = ical::IcalParser::new(text.as_bytes()).next().unwrap().unwrap();
        read.events.iter().map(|event| value(&event.properties, "UID").unwrap().to_owned()).collect::<BTreeSet<_>>()
    };
    let first = calendar("en", "28", folder.path());
    assert_eq!(first, calendar("en", "28", folder.path()));
    assert_eq!(ids(&first), ids(&calendar("hi", "28", folder.path())));
    assert!(ids(&calendar("en", "7", folder.path())).is_subset(&ids(&first)));
}

#[test]
fn a_round_is_a_page_in_itself() {
    let folder = tempfile::tempdir().unwrap();
    for (speaks, heading) in [("en", "The round"), ("hi", "चक्कर"), ("hi-Latn", "Chakkar")] {
        let file = folder.path().join(format!("{speaks}.html"));
        let name = file.display().to_string();
        let arguments = ["round", "--demo", "--as", "ravi", "--speaks", speaks, "--page", &name];
        let page = String::from_utf8(made(&file, &arguments)).unwrap();
        assert!(page.contains(&format!("lang=\"{speaks}\"")) && page.contains(&format!("<h1>{heading}</h1>")));
        // Nothing is fetched and nothing runs.
        for outside in ["http:", "https:", "<script", "url(", "@import", "<link", "<img"] {
            assert!(!page.contains(outside), "{outside}");
        }
        assert!(page.contains("@page { size: A4") && page.contains("class=\"tick\""));
        for tag in ["ul", "li", "h2", "span", "p", "body", "html", "style", "title"] {
            let open = page.matches(&format!("<{tag}>")).count() + page.matches(&format!("<{tag} ")).count();
            assert_eq!(open, page.matches(&format!("</{tag}>")).count(), "{tag}");
        }
        // As many boxes to tick as the round has jobs.
        let json = rooftend(&["round", "--demo", "--as", "ravi", "--json"]);
        let reply: serde_json::Value = serde_json::from_slice(&json.stdout).unwrap();
        let figures = reply["figures"].as_array().unwrap();
        let jobs = figures.iter().find(|figure| figure["name"] == "jobs").unwrap()["value"].as_array().unwrap().len();
        assert_eq!(page.matches("<span class=\"tick\">").count(), jobs);
        assert!(page.contains("Farid&#39;s terrace"), "names are escaped");
    }
}

#[test]
fn commands_write_what_was_asked_and_say_why_not() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).display().to_string();
    let card = made(
        &folder.path().join("card.png"),
        &["card", "roof-12", "--demo", "--speaks", "hi,en", "--out", &path("card.png")],
    );
    assert!(card.starts_with(b"\x89PNG"));
    let link = "https://t.me/rooftend_demo_bot";
    let labels = ["labels", "roof-12", "--demo", "--link", link, "--out", &path("labels.svg")];
    let sheet = String::from_utf8(made(&folder.path().join("labels.svg"), &labels)).unwrap();
    assert!(sheet.contains("width=\"210mm\"") && sheet.contains("East box") && sheet.contains("Tomato bag"));
    let picture =
        ["ask", "--demo", "--as", "meera", "--picture", &path("week.png"), "how much water for the amaranth box"];
    assert!(made(&folder.path().join("week.png"), &picture).starts_with(b"\x89PNG"));
    #[track_caller]
    fn refused(arguments: &[&str], expected: &str) {
        let output = rooftend(arguments);
        let told = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {told}");
        assert!(told.contains(expected), "\"{expected}\" expected in: {told}");
    }
    refused(&["card", "roof-99", "--demo", "--out", &path("a.svg")], "no site with the id \"roof-99\"");
    refused(&["card", "terrace-3", "--demo", "--as", "meera", "--out", &path("a.svg")], "may not see terrace-3");
    refused(&["card", "roof-12", "--demo", "--out", &path("a.jpg")], "ends in .svg or .png");
    refused(
        &["ask", "--demo", "--as", "meera", "--picture", &path("b.svg"), "when is the mustard tray ready"],
        "no picture",
    );
    assert!(!Path::new(&path("a.svg")).exists());
}
