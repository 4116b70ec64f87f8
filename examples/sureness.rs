//! How often a reading was right, by the sureness it gave: the table of DEVELOPERS.md, over files of labelled messages.
//!
//! `cargo run --example sureness [-- [--wrong] FILE...]`, by default over `tests/reading/*.jsonl`; follow-ups are left out.

#![allow(clippy::disallowed_methods, reason = "an example reads files")]

use rooftend::desk::{Desk, House, Message};
use rooftend::garden::import::import;
use rooftend::garden::store::Overlay;
use rooftend::garden::{Garden, KnownIds, PersonId, read_garden};
use rooftend::knowledge::Files;
use rooftend::weather::Forecast;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

#[derive(Deserialize)]
struct Labelled {
    message: String,
    lang: String,
    kind: Vec<String>,
    #[serde(default)]
    after: Vec<String>,
    now: Option<String>,
}

/// The lower ends of the rows.
const ROWS: [f64; 6] = [0.0, 0.4, 0.65, 0.8, 0.9, 0.95];
const NOW: &str = "2026-05-18T08:00:00+05:30";

fn main() {
    let (flags, mut files): (Vec<String>, Vec<String>) =
        std::env::args().skip(1).partition(|argument| argument.starts_with("--"));
    if files.is_empty() {
        files = ["messages", "other-writer"].map(|name| format!("tests/reading/{name}.jsonl")).to_vec();
    }
    let knowledge = Files::folder(Path::new("knowledge")).expect("the knowledge base");
    let house = House::open(&knowledge).map_err(|fault| format!("{fault:?}")).expect("the knowledge base");
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden("garden.toml", include_str!("../demo-data/garden.toml"), &ids, &Garden::default());
    let store = Overlay::in_memory();
    import(&store, garden.expect("the demo garden")).expect("in memory");
    let forecast = Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).expect("the forecast");
    let mut rows = [(0, 0); ROWS.len()];
    for file in &files {
        let text = std::fs::read_to_string(file).expect("a file of messages");
        let mut by_language: BTreeMap<String, (usize, usize)> = BTreeMap::new();
        for line in text.lines().filter(|line| !line.trim().is_empty()) {
            let asked: Labelled = serde_json::from_str(line).expect("a labelled message");
            if !asked.after.is_empty() {
                continue;
            }
            let now = asked.now.as_deref().unwrap_or(NOW).parse().expect("a moment");
            let forgetful = Overlay::over(&store);
            let desk = Desk::new(&house, &forgetful, Some(&forecast));
            let message = Message { from: PersonId::new("meera").ok(), text: asked.message.clone(), now };
            let reply = desk.answer(&message).expect("a reply");
            let got = serde_json::to_value(reply.reading).expect("a reading");
            let (kind, sure) = (got["kind"].as_str().unwrap_or(""), got["sureness"].as_f64().unwrap_or(0.0));
            let right = asked.kind.iter().any(|wanted| wanted == kind);
            if !right && flags.iter().any(|flag| flag == "--wrong") {
                println!("{sure:.2} {kind} (wanted {}): {}", asked.kind.join(", "), asked.message);
            }
            let row = ROWS.iter().rposition(|low| sure >= *low).unwrap_or(0);
            for (all, good) in [&mut rows[row], by_language.entry(asked.lang).or_default()] {
                *all += 1;
                *good += usize::from(right);
            }
        }
        let shares = by_language.iter().map(|(lang, (all, good))| format!("{lang} {good}/{all}"));
        let (all, good) = by_language.values().fold((0, 0), |sum, one| (sum.0 + one.0, sum.1 + one.1));
        println!("{file}: {good}/{all} ({:.1} %) {}", percent(good, all), shares.collect::<Vec<_>>().join(", "));
    }
    println!("| sureness given | messages | kind right |\n| --- | --- | --- |");
    for (place, (all, good)) in rows.iter().enumerate() {
        let to = ROWS.get(place + 1).map_or("and more".to_owned(), |next| format!("to {next}"));
        println!("| {} {to} | {all} | {:.0} % |", ROWS[place], percent(*good, *all));
    }
}

fn percent(part: usize, of: usize) -> f64 {
    if of == 0 { 0.0 } else { 100.0 * part as f64 / of as f64 }
}
