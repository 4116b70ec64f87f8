//! The command line from outside: exit statuses, one clear line for what is unusable, JSON as the contract has it.
#![allow(clippy::disallowed_methods, reason = "the tests write the files that commands read")]

use serde_json::Value;
use std::fs;
use std::path::Path;
use std::process::{Command, Output};

/// The program, with what it derives from the knowledge base kept for all tests.
fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command
}

fn rooftend(data: &Path, arguments: &[&str]) -> Output {
    program().arg("--data").arg(data).args(arguments).output().unwrap()
}

#[track_caller]
fn refused(data: &Path, arguments: &[&str], expected: &[&str]) {
    let output = rooftend(data, arguments);
    let told = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2), "{arguments:?}: {told}");
    for words in expected {
        assert!(told.contains(words), "{arguments:?}: \"{words}\" expected in: {told}");
    }
}

fn demo_json(data: &Path, message: &str) -> Value {
    let output = rooftend(data, &["ask", "--demo", "--as", "meera", "--json", message]);
    assert!(output.status.success());
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn what_is_unusable_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let garden = fs::read_to_string("demo-data/garden.toml").unwrap();
    let file = |name: &str, text: &str| {
        let path = folder.path().join(name);
        fs::write(&path, text).unwrap();
        path.display().to_string()
    };
    let wrong_unit = file("unit.toml", &garden.replacen("depth = \"12 in\"", "depth = \"12 inc\"", 1));
    refused(&data, &["import", &wrong_unit], &["unit \"inc\" is not known", "did you mean \"in\"?", "unit.toml:"]);
    let unknown = file("crop.toml", &garden.replacen("crop = \"amaranth\"", "crop = \"amarant\"", 1));
    refused(&data, &["import", &unknown], &["crop \"amarant\" is not known", "amaranth"]);
    let bed = "\n[[beds]]\nid = \"east-box\"\nsite = \"roof-12\"\nkind = \"box\"\nlength = \"4 ft\"\nwidth = \"3 ft\"\ndepth = \"1 ft\"\n";
    let twice = file("twice.toml", &format!("{garden}{bed}"));
    refused(&data, &["import", &twice], &["bed \"roof-12/east-box\" stands twice"]);
    let forecast = fs::read_to_string("demo-data/forecast-may.json").unwrap();
    let cut = file("cut.json", &forecast[..forecast.len() / 2]);
    refused(&data, &["ask", "--demo", "--forecast", &cut, "x"], &["cut.json:", "the file is cut short"]);
    refused(Path::new("/dev/null/x"), &["ask", "x"], &["cannot be written"]);
    refused(&data, &["ask", "--demo", "--as", "nobody", "x"], &["no person with the id \"nobody\"", "meera"]);
    refused(&data, &["import", "nothing-there.toml"], &["cannot read nothing-there.toml"]);
    refused(&data, &["check", "nothing-there"], &["nothing-there"]);
    // Nothing of all that was half loaded.
    let exported = folder.path().join("out.toml").display().to_string();
    assert!(rooftend(&data, &["export", &exported]).status.success());
    assert!(!fs::read_to_string(&exported).unwrap().contains("[["));
}

#[test]
fn a_batch_names_its_line_and_keeps_what_came_before() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("batch.jsonl");
    fs::write(&file, "{\"id\":\"a\",\"message\":\"how much water for okra\"}\n\n{\"id\":\"b\"}\n").unwrap();
    let output = rooftend(folder.path(), &["ask", "--demo", "--batch", &file.display().to_string()]);
    assert_eq!(output.status.code(), Some(2));
    let first: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(first["id"], "a");
    assert!(String::from_utf8(output.stderr).unwrap().contains("line 3"));
}

#[test]
fn a_garden_goes_round_without_loss() {
    let folder = tempfile::tempdir().unwrap();
    let (first, second) = (folder.path().join("first"), folder.path().join("second"));
    let path = |name: &str| folder.path().join(name).display().to_string();
    let run = |data: &Path, arguments: &[&str]| {
        let output = rooftend(data, arguments);
        assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    };
    run(&first, &["import", "demo-data/garden.toml"]);
    // Jobs that were moved go along.
    let now = "2026-05-18T08:00:00+05:30";
    run(&first, &["ask", "--as", "meera", "--now", now, "move the spray to friday"]);
    run(&first, &["export", &path("one.toml")]);
    let moves = fs::read_to_string(path("one.toml")).unwrap().matches("[[moves]]").count();
    assert!(moves > 1, "{moves}");
    run(&second, &["import", &path("one.toml")]);
    run(&second, &["export", &path("two.toml")]);
    assert_eq!(fs::read(path("one.toml")).unwrap(), fs::read(path("two.toml")).unwrap());
    run(&first, &["backup", &path("all.backup")]);
    run(&folder.path().join("third"), &["restore", &path("all.backup")]);
    refused(&first, &["restore", &path("all.backup")], &["the store is not empty"]);
}

#[test]
fn any_text_gets_a_reply() {
    let folder = tempfile::tempdir().unwrap();
    let long = "water the tomato ".repeat(6_000);
    for message in ["", "🌱🔥", "???", "\u{200d}\u{94d}", long.as_str()] {
        let reply = demo_json(folder.path(), message);
        let text = reply["text"].as_str().unwrap();
        assert!(!text.is_empty() && text.chars().count() < 4_000);
    }
}

/// The keys, and what must hold of every figure (the answer contract).
#[test]
fn json_is_as_the_contract_has_it() {
    let folder = tempfile::tempdir().unwrap();
    for message in [
        "how often should I water the amaranth box this week?",
        "when is the mustard tray ready",
        "what do I need for a 4 x 3 ft box, 1 ft deep?",
        "watered the east box today",
        "how much water?",
        "can I talk to a human please",
        "who won the match last night",
    ] {
        let reply = demo_json(folder.path(), message);
        for key in ["outcome", "reading", "figures", "text", "working", "sources", "cautions", "articles", "choices"] {
            assert!(!reply[key].is_null(), "{message}: {key}");
        }
        for key in ["kind", "crops", "beds", "dates", "quantities", "language", "sureness", "also"] {
            assert!(!reply["reading"][key].is_null(), "{message}: reading.{key}");
        }
        assert!(!reply.to_string().contains("null"), "{message}");
        for figure in reply["figures"].as_array().unwrap() {
            assert!(!figure["value"].is_null() && figure["name"].is_string(), "{figure}");
            if let (Some(low), Some(high)) = (figure["low"].as_f64(), figure["high"].as_f64()) {
                let value = figure["value"].as_f64().unwrap();
                assert!(low <= value && value <= high, "{figure}");
            }
        }
    }
}

/// Each source of an answer is an id of `sources.toml`.
#[test]
fn sources_are_known() {
    let folder = tempfile::tempdir().unwrap();
    let known = fs::read_to_string("knowledge/sources.toml").unwrap();
    for message in
        ["how much water for the east box", "when is the mustard tray ready", "mix for a 4 x 3 ft box 1 ft deep"]
    {
        let reply = demo_json(folder.path(), message);
        let sources = reply["sources"].as_array().unwrap();
        assert!(!sources.is_empty(), "{message}");
        for source in sources {
            let id = source.as_str().unwrap().split(':').next().unwrap();
            assert!(known.contains(&format!("id = \"{id}\"")), "{message}: {id}");
        }
    }
}

#[test]
fn a_dry_run_keeps_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    assert!(rooftend(&data, &["import", "demo-data/garden.toml"]).status.success());
    let export = |name: &str| {
        let path = folder.path().join(name).display().to_string();
        assert!(rooftend(&data, &["export", &path]).status.success());
        fs::read_to_string(path).unwrap()
    };
    let before = export("before.toml");
    let at = ["--as", "meera", "--now", "2026-05-18T08:00:00+05:30"];
    let ask = |extra: &[&str]| {
        let arguments = [&["ask", "--json"], &at[..], extra].concat();
        let output = rooftend(&data, &arguments);
        serde_json::from_slice::<Value>(&output.stdout).unwrap()["outcome"].as_str().unwrap().to_owned()
    };
    assert_eq!(ask(&["--dry-run", "watered the east box today"]), "recorded");
    assert_eq!(export("between.toml"), before);
    assert_eq!(ask(&["watered the east box today"]), "recorded");
    assert_ne!(export("after.toml"), before);
}
