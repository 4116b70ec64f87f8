//! How long one reading and one whole answer take, over the labelled messages and over 10 000 spoiled ones: p50 and p99
//! are printed, and criterion measures one pass over the labelled.

#![allow(clippy::disallowed_methods, reason = "a bench measures time")]

#[path = "../tests/spoiled/mod.rs"]
mod spoiled;

use criterion::{Criterion, criterion_group, criterion_main};
use rooftend::desk::{Desk, House, Message};
use rooftend::garden::import::import;
use rooftend::garden::store::Overlay;
use rooftend::garden::{Garden, KnownIds, PersonId, read_garden};
use rooftend::knowledge::Files;
use rooftend::understanding::{Asker, Reader, read};
use rooftend::weather::Forecast;
use spoiled::{Dice, Fillings, message};
use std::hint::black_box;
use std::time::{Duration, Instant};

/// So many messages that nobody wrote.
const SPOILED: usize = 10_000;

fn messages() -> Vec<String> {
    let files = [include_str!("../tests/reading/messages.jsonl"), include_str!("../tests/reading/other-writer.jsonl")];
    let lines = files.iter().flat_map(|file| file.lines()).filter(|line| !line.trim().is_empty());
    let parsed = lines.map(|line| serde_json::from_str::<serde_json::Value>(line).expect("a labelled message"));
    parsed.filter_map(|line| line["message"].as_str().map(str::to_owned)).collect()
}

fn told(what: &str, mut times: Vec<Duration>) {
    times.sort_unstable();
    let at = |share: usize| times[(times.len() - 1) * share / 100];
    println!("{what}: {} messages, p50 {:.2?}, p99 {:.2?}, longest {:.2?}", times.len(), at(50), at(99), at(100));
}

fn reading(criterion: &mut Criterion) {
    let house = House::open(&Files::embedded()).expect("the knowledge base");
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden("garden.toml", include_str!("../demo-data/garden.toml"), &ids, &Garden::default());
    let store = Overlay::in_memory();
    import(&store, garden.expect("the demo garden")).expect("in memory");
    let forecast = Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).expect("the forecast");
    let reader = Reader { known: &house.known, index: &house.index, gazetteer: &house.gazetteer };
    let today = "2026-05-18".parse().expect("a day");
    let now = "2026-05-18T08:00:00+05:30".parse().expect("a moment");
    let messages = messages();
    let one_reading = |text: &str| read(black_box(text), &reader, &Asker::default(), today);
    let one_answer = |text: &str| {
        let forgetful = Overlay::over(&store);
        let message = Message { from: PersonId::new("meera").ok(), text: text.to_owned(), now };
        Desk::new(&house, &forgetful, Some(&forecast)).answer(black_box(&message)).expect("a reply")
    };
    let timed = |messages: &[String], run: &dyn Fn(&str)| -> Vec<Duration> {
        let time = |text: &String| {
            let start = Instant::now();
            run(text);
            start.elapsed()
        };
        messages.iter().map(time).collect()
    };
    // The machine does other work too: what a message takes is the quickest of three times.
    let at_best = |messages: &[String], run: &dyn Fn(&str)| -> Vec<Duration> {
        let rounds: Vec<Vec<Duration>> = (0..3).map(|_| timed(messages, run)).collect();
        (0..messages.len()).filter_map(|at| rounds.iter().filter_map(|times| times.get(at)).min().copied()).collect()
    };
    let read_it = |text: &str| drop(black_box(one_reading(text)));
    let answer_it = |text: &str| drop(black_box(one_answer(text)));
    told("one reading", timed(&messages, &read_it));
    told("one whole answer", timed(&messages, &answer_it));
    // Not where the benches are only tried.
    if std::env::args().any(|argument| argument == "--bench") {
        let (mut dice, fillings) = (Dice::of(1), Fillings::of(&house.known));
        let spoiled: Vec<String> = (0..SPOILED).map(|_| message(&mut dice, &fillings)).collect();
        told("one reading of a spoiled message", timed(&spoiled, &read_it));
        told("one reading of a spoiled message, the quickest of three", at_best(&spoiled, &read_it));
        told("one whole answer to a spoiled message", timed(&spoiled, &answer_it));
    }
    let mut group = criterion.benchmark_group("messages");
    group.sample_size(10);
    group.bench_function("all of them read", |bench| bench.iter(|| messages.iter().for_each(|text| read_it(text))));
    group.bench_function("all of them answered", |bench| {
        bench.iter(|| messages.iter().for_each(|text| answer_it(text)))
    });
    group.finish();
}

criterion_group!(benches, reading);
criterion_main!(benches);
