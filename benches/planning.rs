//! What one evening's reminders cost: jobs, waterings, warnings and the lines of every chat, planned for invented roofs
//! in growing numbers; and the same by the bot's own reception, which collects the roofs from the store chat by chat.
//!
//! The large numbers are one timed pass each, printed as a table; criterion measures the smallest.
//! `ROOFTEND_BENCH_BEDS=100000` leaves out what is larger.

#![allow(clippy::disallowed_methods, reason = "a bench measures time")]

#[path = "planning/roofs.rs"]
mod roofs;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use rayon::iter::{IntoParallelIterator, ParallelIterator};
use roofs::{BEDS_A_ROOF, Roofs, now, store_of};
use rooftend::answering::reminder::{items, plan, told};
use rooftend::answering::{Facts, SiteFacts, alerts_of_site, alerts_told};
use rooftend::desk::House;
use rooftend::desk::reception::{EVENING, Reception};
use rooftend::garden::Store;
use rooftend::knowledge::{Files, Knowledge};
use rooftend::planning::reminders::{News, Word, news};
use rooftend::weather::Forecast;
use std::hint::black_box;
use std::sync::Arc;
use std::time::{Duration, Instant};

/// Roofs made and dropped together, so that a million beds need no more memory than these.
const AT_ONCE: usize = 200;

fn forecast() -> Forecast {
    Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).expect("the forecast")
}

/// One household's evening as the bot plans it, nothing told before. Returns how many jobs and waterings were news.
fn evening<'a>(known: &'a Knowledge, site: SiteFacts<'a>) -> usize {
    let now = site.now;
    let facts = Facts {
        known,
        now,
        asker: None,
        movers: Default::default(),
        sites: vec![site],
        elsewhere: None,
        now_elsewhere: now,
        articles: Vec::new(),
    };
    let site = &facts.sites[0];
    let plan = plan(site, &facts, Word::Eve);
    let new = |due: &rooftend::planning::due::Due| news(due, plan.day, None, Word::Eve);
    let jobs: Vec<(_, News)> = plan.jobs.iter().filter_map(|due| Some((due.clone(), new(due)?))).collect();
    let waters: Vec<_> = plan.waters.iter().filter_map(|bed| bed.change(None)?.0).collect();
    let count = jobs.len() + waters.len();
    let items = items(jobs, waters, &facts);
    black_box(told(&items, plan.day, Word::Eve, &facts));
    black_box(alerts_told(&alerts_of_site(site, &facts), &facts));
    count
}

/// How the roofs made together are planned.
#[derive(Clone, Copy, PartialEq)]
enum Cores {
    One,
    /// As the reception does it.
    All,
}

/// How long the planning of so many beds takes, the making of the roofs left out.
fn planned(known: &Knowledge, forecast: &Forecast, beds: usize, cores: Cores) -> (Duration, usize) {
    let mut roofs = Roofs::new(known, forecast);
    let (mut took, mut jobs) = (Duration::ZERO, 0);
    let mut left = beds.div_ceil(BEDS_A_ROOF);
    while left > 0 {
        let some: Vec<SiteFacts<'_>> = (0..left.min(AT_ONCE)).map(|_| roofs.facts()).collect();
        left -= some.len();
        let begun = Instant::now();
        jobs += match cores {
            Cores::One => some.into_iter().map(|site| evening(known, site)).sum::<usize>(),
            Cores::All => some.into_par_iter().map(|site| evening(known, site)).sum(),
        };
        took += begun.elapsed();
    }
    (took, jobs)
}

/// How long the bot's reception takes over the first look of an evening.
fn received(house: &Arc<House>, beds: usize) -> (Duration, usize) {
    let store: Arc<dyn Store> = Arc::new(store_of(&house.known, beds));
    let reception = Reception::open(house.clone(), store).expect("a reception");
    reception.set_forecast(Some(forecast()));
    let begun = Instant::now();
    let written = reception.reminders(now().to_utc(), EVENING).expect("reminders");
    (begun.elapsed(), written)
}

fn row(what: &str, beds: usize, (took, count): (Duration, usize)) {
    let seconds = took.as_secs_f64();
    println!("{what}: {beds} beds in {seconds:.2} s, {:.1} µs a bed, {count} told", seconds * 1e6 / beds as f64);
}

fn planning(criterion: &mut Criterion) {
    let house = Arc::new(House::open(&Files::embedded()).expect("the knowledge base"));
    let (known, forecast) = (&house.known, forecast());
    // Not where the benches are only tried.
    if std::env::args().any(|argument| argument == "--bench") {
        let most = std::env::var("ROOFTEND_BENCH_BEDS").ok().and_then(|beds| beds.parse().ok()).unwrap_or(usize::MAX);
        for beds in [1_000, 10_000, 100_000].into_iter().filter(|beds| *beds <= most) {
            row("planned and written from the store, a chat a roof", beds, received(&house, beds));
        }
        for beds in [1_000, 10_000, 100_000, 1_000_000].into_iter().filter(|beds| *beds <= most) {
            row("planned, one core", beds, planned(known, &forecast, beds, Cores::One));
            row("planned, all cores", beds, planned(known, &forecast, beds, Cores::All));
        }
    }
    let mut group = criterion.benchmark_group("planning");
    group.sample_size(10);
    group.throughput(Throughput::Elements(1_000));
    group.bench_function("an evening of 1 000 beds", |bench| {
        bench.iter_custom(|times| (0..times).map(|_| planned(known, &forecast, 1_000, Cores::One).0).sum());
    });
    group.finish();
}

criterion_group!(benches, planning);
criterion_main!(benches);
