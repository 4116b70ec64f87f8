//! What one bed's week of water costs, and a million of them.

use chrono::NaiveDate;
use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use rooftend::garden::{Bed, BedId, BedKind, Measure, Shape, Start};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::dry_down::dry_down;
use rooftend::needs::loss_factor::LossFactor;
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::water_week;
use rooftend::weather::Weather;
use std::hint::black_box;
use std::time::Instant;

fn bed() -> Bed {
    let length = |text| Measure::read(text).expect("a length");
    let shape = Shape::Box { length: length("4 ft"), width: length("3 ft"), depth: length("12 in") };
    Bed::bare(BedId::new("roof/bed").expect("an id"), BedKind::Box, shape)
}

fn weeks(criterion: &mut Criterion) {
    let known = Knowledge::read(&Files::embedded()).0;
    let bed = bed();
    let place = known.places.first().expect("a place");
    let today: NaiveDate = "2026-05-18".parse().expect("a day");
    let around = |start: Option<Start>| Surroundings {
        bed: &bed,
        mix: &known.mixes["house"],
        standing: vec![Standing { crop: &known.crops["amaranth"], microgreen: false, start, plants: None }],
        weather: Weather::of_place(place),
        sun_hours: 6.0,
        today,
    };
    let established = around(None);
    let sown = around(Some(Start::Sown(today - chrono::Days::new(30))));

    // Two cores share nothing but the knowledge base, so a million weeks on two take half the time of one.
    let counted = 2_000_u32;
    let begun = Instant::now();
    for _ in 0..counted {
        black_box(water_week(black_box(&established)));
    }
    let each = begun.elapsed().as_secs_f64() / f64::from(counted);
    println!(
        "one bed's week: {:.1} µs; a million bed-weeks on two cores: {:.0} s (extrapolated)",
        each * 1e6,
        each * 1e6 / 2.0
    );

    let mut group = criterion.benchmark_group("bed_week");
    group.throughput(Throughput::Elements(1));
    group.bench_function("established", |bencher| bencher.iter(|| water_week(black_box(&established))));
    group.bench_function("sown a month ago", |bencher| bencher.iter(|| water_week(black_box(&sown))));
    group.bench_function("left to dry", |bencher| {
        bencher.iter(|| dry_down(black_box(&established), (today, 7.0), &LossFactor::UNSEEN));
    });
    group.finish();
}

criterion_group!(benches, weeks);
criterion_main!(benches);
