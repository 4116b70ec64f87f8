//! A store is killed while it writes; whatever it had acknowledged must be there afterwards.
//!
//! The test runs itself again as the process that writes, and kills that one. `ROOFTEND_CRASH_ROUNDS`
//! asks for more rounds than the usual few.

use rooftend::garden::{BedId, Change, JobDone, JobKind, Seen, SeenKind, SledStore, Store, StoreError};
use std::collections::BTreeSet;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};

/// Says that this process is the one that writes, and where.
const FOLDER: &str = "ROOFTEND_CRASH_FOLDER";
/// Says from which number on it writes.
const FIRST: &str = "ROOFTEND_CRASH_FIRST";
const USUAL_ROUNDS: u32 = 15;
const CALLERS: u32 = 4;
const SEED: u64 = 20_260_518;

#[test]
fn what_was_acknowledged_survives_a_kill() {
    if let Ok(folder) = std::env::var(FOLDER) {
        write_until_killed(Path::new(&folder));
    }
    let rounds = std::env::var("ROOFTEND_CRASH_ROUNDS").map_or(USUAL_ROUNDS, |rounds| rounds.parse().unwrap());
    let folder = tempfile::tempdir().unwrap();
    let mut random = SEED;
    let mut acknowledged = BTreeSet::new();
    let mut next = 0;
    for round in 0..rounds {
        // A linear congruential step (Knuth, MMIX) picks after how many acknowledgements to kill.
        random = random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let kill_after = 1 + usize::try_from((random >> 33) % 400).unwrap();
        let new = acknowledged_before_kill(folder.path(), next, kill_after);
        assert!(new.len() >= kill_after, "round {round}: the writer ended by itself");
        next += 100_000;
        acknowledged.extend(new);
        let there = numbers(folder.path());
        let lost: Vec<_> = acknowledged.difference(&there).collect();
        assert!(lost.is_empty(), "round {round}: acknowledged and lost: {lost:?}");
    }
    println!("{rounds} rounds, {} acknowledged, none lost", acknowledged.len());
}

/// Runs the writer, kills it after so many acknowledgements, and returns all that came through.
fn acknowledged_before_kill(folder: &Path, first: u32, kill_after: usize) -> Vec<u32> {
    let mut writer = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "what_was_acknowledged_survives_a_kill", "--nocapture", "--test-threads=1"])
        .env(FOLDER, folder)
        .env(FIRST, first.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut numbers = Vec::new();
    for line in BufReader::new(writer.stdout.take().unwrap()).lines() {
        // A line that the kill cut short acknowledges nothing; a whole one ends in a stop.
        let line = line.unwrap();
        numbers.extend(line.strip_prefix("kept ").and_then(|rest| rest.strip_suffix('.')?.parse::<u32>().ok()));
        if numbers.len() == 1 && kill_after.is_multiple_of(5) {
            let held = StoreError::Held { folder: folder.into(), by: Some(writer.id()) };
            assert_eq!(SledStore::open(folder).err(), Some(held), "another process holds it");
        }
        if numbers.len() == kill_after {
            writer.kill().unwrap();
        }
    }
    writer.wait().unwrap();
    numbers
}

/// What the store holds. Both records of one write must be there, or neither.
fn numbers(folder: &Path) -> BTreeSet<u32> {
    let store = SledStore::open(folder).unwrap();
    let whole = store.whole().unwrap();
    let jobs: BTreeSet<u32> = whole.jobs.iter().map(|job| number(&job.bed)).collect();
    let seen: BTreeSet<u32> = whole.seen.iter().map(|seen| number(&seen.bed)).collect();
    assert_eq!(jobs, seen, "a write was half made");
    jobs
}

fn number(bed: &BedId) -> u32 {
    bed.bed().trim_start_matches("bed-").parse().unwrap()
}

fn write_until_killed(folder: &Path) -> ! {
    let store = SledStore::open(folder).unwrap();
    let first: u32 = std::env::var(FIRST).unwrap().parse().unwrap();
    std::thread::scope(|scope| {
        for caller in 0..CALLERS {
            let store = &store;
            scope.spawn(move || {
                for number in (first + caller..).step_by(CALLERS as usize) {
                    let bed = BedId::new(&format!("roof/bed-{number}")).unwrap();
                    let on = "2026-05-18T08:00".parse().unwrap();
                    let job = JobDone { bed: bed.clone(), job: JobKind::Water, on, what: None, amount: None };
                    let seen = Seen { bed, on, what: SeenKind::RanThrough };
                    store.write(vec![Change::put(job), Change::put(seen)]).unwrap();
                    let mut out = std::io::stdout().lock();
                    writeln!(out, "kept {number}.").and_then(|()| out.flush()).unwrap();
                }
            });
        }
    });
    unreachable!("the writer runs until it is killed")
}
