//! How long a message takes: the knowledge base loaded and indexed, one question from end to end, the same in a house of
//! many clients, and from a cold start of the program.

#[path = "../tests/bot_api/crowd.rs"]
mod crowd;

use criterion::{Criterion, criterion_group, criterion_main};
use rooftend::desk::{Desk, House, Message};
use rooftend::garden::import::import;
use rooftend::garden::store::Overlay;
use rooftend::garden::{Garden, KnownIds, PersonId, SledStore, read_garden};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::weather::Forecast;
use std::hint::black_box;
use std::process::Command;

fn ask(criterion: &mut Criterion) {
    let house = House::open(&Files::embedded()).expect("the knowledge base");
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden("garden.toml", include_str!("../demo-data/garden.toml"), &ids, &Garden::default());
    let store = Overlay::in_memory();
    import(&store, garden.expect("the demo garden")).expect("in memory");
    let forecast = Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).expect("the forecast");
    let message = |text: &str| Message {
        from: PersonId::new("meera").ok(),
        text: text.to_owned(),
        now: "2026-05-18T08:00:00+05:30".parse().expect("a moment"),
    };
    for (name, text) in [
        ("ask: water", "how often should I water the amaranth box this week?"),
        ("ask: harvest, romanised Hindi", "sarson wali tray kab kategi, kal boi thi"),
        ("ask: build, Hindi", "4 फुट x 3 फुट x 1 फुट के बक्से के लिए क्या सामान चाहिए"),
        ("ask: nothing to do with it", "who won the match last night"),
    ] {
        let message = message(text);
        criterion.bench_function(name, |bench| {
            bench.iter(|| Desk::new(&house, &store, Some(&forecast)).answer(black_box(&message)).expect("a reply"));
        });
    }
}

/// One message where the store holds so many clients, each with a roof of her own; then with years of work on one's beds.
fn crowded(criterion: &mut Criterion) {
    let house = House::open(&Files::embedded()).expect("the knowledge base");
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let forecast = Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).expect("the forecast");
    let mut group = criterion.benchmark_group("crowd");
    group.sample_size(10);
    for (clients, days) in [(1, 10), (100, 10), (2000, 10), (1, 300), (1, 3000)] {
        let folder = tempfile::tempdir().expect("a folder");
        let store = SledStore::open(folder.path()).expect("a store");
        let garden = read_garden("crowd.toml", &crowd::garden(clients, days), &ids, &Garden::default());
        import(&store, garden.expect("a garden")).expect("imported");
        for (name, text) in [
            ("water", "how much water for the east box"),
            ("two parts", "watered the east box, and how is the tomato bag on my roof"),
        ] {
            let message = Message {
                from: PersonId::new(&crowd::id(0)).ok(),
                text: text.to_owned(),
                now: "2026-05-18T08:00:00+05:30".parse().expect("a moment"),
            };
            group.bench_function(format!("{name}, {clients} clients, {days} days of work"), |bench| {
                bench.iter(|| {
                    let forgetful = Overlay::over(&store);
                    Desk::new(&house, &forgetful, Some(&forecast)).answer(black_box(&message)).expect("a reply")
                });
            });
        }
    }
    group.finish();
}

fn open(criterion: &mut Criterion) {
    let files = Files::embedded();
    criterion.bench_function("knowledge: read and checked", |bench| {
        bench.iter(|| Knowledge::read(black_box(&files)));
    });
    criterion.bench_function("house: opened with nothing kept", |bench| {
        bench.iter(|| House::open(black_box(&files)).expect("the knowledge base"));
    });
    let folder = tempfile::tempdir().expect("a folder");
    criterion.bench_function("house: opened with what was kept", |bench| {
        bench.iter(|| House::open_keeping(black_box(&files), folder.path()).expect("the knowledge base"));
    });
    criterion.bench_function("program: one question, with what was kept", |bench| {
        bench.iter(|| {
            let output = Command::new(env!("CARGO_BIN_EXE_rooftend"))
                .env("ROOFTEND_CACHE", folder.path())
                .args(["ask", "--demo", "--as", "meera", "how often should I water the amaranth box this week?"])
                .output();
            assert!(output.expect("a reply").status.success());
        });
    });
}

criterion_group!(benches, ask, crowded, open);
criterion_main!(benches);
