//! Alerts as they are asked for, in three languages, and to whom they speak of which beds.

use serde_json::Value;
use std::fs;
use std::process::Command;

/// What the demo's people are told under a forecast of these days: tmax, wind at 2 m, rain.
fn asked(person: &str, message: &str, days: &[(f64, f64, f64)]) -> Value {
    let folder = tempfile::tempdir().unwrap();
    let first: chrono::NaiveDate = "2026-05-18".parse().unwrap();
    let days: Vec<String> = first
        .iter_days()
        .zip(days)
        .map(|(date, (tmax, wind, rain))| {
            format!(
                r#"{{"date":"{date}","tmax_c":{tmax},"tmin_c":29,"rh_mean_percent":30,"wind_2m_m_s":{wind},"rain_mm":{rain}}}"#
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude":21.15,"longitude":79.09,"elevation_m":310,"timezone":"Asia/Kolkata","days":[{}]}}"#,
        days.join(",")
    );
    let file = folder.path().join("forecast.json");
    #[allow(clippy::disallowed_methods, reason = "the test writes the file that the command reads")]
    fs::write(&file, text).unwrap();
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command.args(["ask", "--demo", "--now", "2026-05-18T08:00:00+05:30", "--forecast", file.to_str().unwrap()]);
    let output = command.args(["--json", "--as", person, message]).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

const HOT: [(f64, f64, f64); 5] =
    [(45.5, 2.0, 0.0), (46.0, 2.0, 0.0), (44.0, 2.0, 0.0), (43.0, 5.5, 0.0), (36.0, 2.0, 80.0)];
const MILD: [(f64, f64, f64); 5] = [(36.0, 2.0, 0.0); 5];

fn alerts(reply: &Value) -> Vec<String> {
    let figure = reply["figures"].as_array().unwrap().iter().find(|figure| figure["name"] == "alerts").unwrap();
    figure["value"].as_array().unwrap().iter().map(|alert| alert["key"].as_str().unwrap().to_owned()).collect()
}

#[track_caller]
fn case(person: &str, message: &str, language: &str, says: &[&str]) -> Value {
    let reply = asked(person, message, &HOT);
    let text = reply["text"].as_str().unwrap();
    assert_eq!(reply["outcome"], "answered", "{message}: {text}");
    assert_eq!(reply["reading"]["language"], language, "{message}");
    for words in says {
        assert!(text.contains(words), "{message}: \"{words}\" expected in: {text}");
    }
    reply
}

#[test]
fn the_same_alerts_in_three_languages() {
    let en = case(
        "meera",
        "any alert this week?",
        "en",
        &["Heat wave", "Near gale", "Heavy rain", "east box", "edge in wind"],
    );
    let hi = case("meera", "इस हफ़्ते कोई चेतावनी है", "hi", &["लू", "बहुत तेज़ हवा", "भारी बारिश", "किनारे पर कभी न"]);
    let roman = case("meera", "is hafte koi alert hai", "hi-Latn", &["Loo", "Bahut tez hawa", "Bhaari baarish"]);
    let keys =
        ["heat-wave|1", "heavy-rain|1", "strong-wind|2", "hot-walls|1", "rains|1"].map(|key| format!("roof-12|{key}"));
    assert_eq!(alerts(&en), keys);
    assert_eq!(en["figures"], hi["figures"]);
    assert_eq!(en["figures"], roman["figures"]);
    let cited: Vec<&str> = en["sources"].as_array().unwrap().iter().filter_map(Value::as_str).collect();
    for source in ["imd-heat-wave", "imd-rain-classes", "beaufort-scale", "osha-heat-bands"] {
        assert!(cited.iter().any(|cited| cited.starts_with(source)), "{source}: {cited:?}");
    }
}

#[test]
fn each_hears_of_her_own_beds() {
    let farid = asked("farid", "any alert this week?", &HOT);
    let text = farid["text"].as_str().unwrap();
    assert!(text.contains("okra box") && !text.contains("east box"), "{text}");
    // The crew has too many beds for one message: all together.
    let ravi = asked("ravi", "any alert this week?", &HOT);
    assert!(ravi["text"].as_str().unwrap().contains("beds want about"), "{}", ravi["text"]);
}

#[test]
fn nothing_to_warn_of_is_said_too() {
    let text = asked("farid", "any alert this week?", &MILD)["text"].to_string();
    assert!(!text.contains("Heat wave") && text.contains("usually begin in Jun"), "{text}");
}
