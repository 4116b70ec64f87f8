//! What the weather of one answer costs: a site's days out of the store, and a service's document read into days.

use criterion::{Criterion, criterion_group, criterion_main};
use rooftend::desk::sky::{Handed, Recalled, Skies, file};
use rooftend::garden::import::import;
use rooftend::garden::{Garden, KnownIds, SledStore, Store, read_garden};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::weather::Service;
use rooftend::weather::cell::Spot;
use rooftend::weather::source::{Answered, Fetched, met_norway};
use std::hint::black_box;

#[path = "../tests/weather_service/documents.rs"]
#[allow(dead_code, reason = "the tests use the rest of it")]
mod documents;

fn weather(criterion: &mut Criterion) {
    let known = Knowledge::read(&Files::embedded()).0;
    let folder = tempfile::tempdir().expect("a folder");
    let store = SledStore::open(folder.path()).expect("a store");
    let (crops, mixes, materials) = (known.crop_ids(), known.mix_ids(), known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden("garden.toml", include_str!("../demo-data/garden.toml"), &ids, &Garden::default());
    import(&store, garden.expect("the demo garden")).expect("kept");
    let site = store.sites().expect("sites").remove(0);
    let spot = Spot::of(site.latitude_deg, site.longitude_deg, site.timezone);
    // A season of days gone by, each as its forecast had it, and ten days ahead.
    let mut now: chrono::DateTime<chrono::Utc> = "2026-01-18T18:00:00Z".parse().expect("a moment");
    let mut text = String::new();
    for _ in 0..120 {
        text = documents::met_norway(now, 60, 30).to_string();
        let outlook = met_norway::read(&text, spot.cell).expect("a document");
        let fetched = Fetched { outlook, last_modified: None, expires: None, deprecated: false };
        let answered = Ok(Answered::New(Box::new(fetched)));
        file(&store, &spot, Service::MetNorway, answered, now, 1).expect("filed");
        now += chrono::TimeDelta::days(1);
    }
    let here = now.fixed_offset();
    criterion.bench_function("weather: a site's days out of the store, read for the first time", |bench| {
        bench.iter(|| Skies::new(&store, Handed::Nothing, &known).over(black_box(&site), here).expect("weather"));
    });
    let recalled = Recalled::default();
    criterion.bench_function("weather: the same, nothing written since the answer before", |bench| {
        bench.iter(|| {
            let mut skies = Skies::new(&store, Handed::Nothing, &known).recalling(&recalled);
            skies.over(black_box(&site), here).expect("weather")
        });
    });
    criterion.bench_function("weather: a document read", |bench| {
        bench.iter(|| met_norway::read(black_box(&text), spot.cell).expect("a document"));
    });
}

criterion_group!(benches, weather);
criterion_main!(benches);
