//! Labelled messages as lines for `knowledge/heard/`: names, sizes and days stand as their class.
//!
//! `cargo run --example heard -- FILE.jsonl...`, where each line has a `kind`, a `lang` and a `message`, and by what
//! someone is `hurt` where one is; what it prints has the kind, the language and the line, parted by tabs, for whoever
//! reads them before they are put in. What names a person or a site is left out; what cannot be read is named on the
//! error stream.

#![allow(clippy::disallowed_methods, reason = "an example reads files")]

use rooftend::desk::House;
use rooftend::knowledge::Files;
use rooftend::understanding::{Asker, Reader, classed_beside};
use serde::Deserialize;
use std::path::Path;

#[derive(Deserialize)]
struct Labelled {
    kind: Kinds,
    /// By what someone is hurt; `none` where no one is.
    hurt: Option<String>,
    lang: String,
    message: String,
}

/// One kind, or those that are acceptable, the best first.
#[derive(Deserialize)]
#[serde(untagged)]
enum Kinds {
    One(String),
    Several(Vec<String>),
}

impl Kinds {
    fn first(&self) -> &str {
        match self {
            Self::One(kind) => kind,
            Self::Several(kinds) => kinds.first().map_or("", String::as_str),
        }
    }
}

fn main() {
    let files = Files::folder(Path::new("knowledge")).expect("the knowledge base");
    let house = House::open(&files).map_err(|fault| format!("{fault:?}")).expect("the knowledge base");
    let reader = Reader { known: &house.known, index: &house.index, gazetteer: &house.gazetteer };
    let today = "2026-05-18".parse().expect("a day");
    for file in std::env::args().skip(1) {
        let text = std::fs::read_to_string(&file).expect("a file of messages");
        for (number, line) in text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty()) {
            match serde_json::from_str::<Labelled>(line) {
                Ok(said) => {
                    let heard = classed_beside(&said.message, &reader, &Asker::default(), today);
                    let hurt = said.hurt.as_deref().filter(|what| *what != "none");
                    let matter = hurt.map_or_else(|| said.kind.first().to_owned(), |what| format!("hurt:{what}"));
                    println!("{matter}\t{}\t{heard}", said.lang);
                }
                Err(fault) => eprintln!("{file}, line {}: {fault}", number + 1),
            }
        }
    }
}
