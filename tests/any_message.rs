//! Messages nobody wrote: phrasings of the knowledge base with names, sizes and days put in, spelled badly, mixed in
//! script, cut and joined; and any text at all. Whatever comes is read, and one in ten is answered: there is a reply,
//! and no longer than one letter holds.
//!
//! The suite takes two thousand of them; `ROOFTEND_MESSAGES=10000` makes a longer run, `ROOFTEND_SEED=7` another one,
//! `ROOFTEND_ANSWERED=1` answers all.
#![allow(clippy::disallowed_methods, reason = "the test reads its settings")]

mod spoiled;

use proptest::prelude::*;
use rooftend::desk::{Desk, House, Message};
use rooftend::garden::import::import;
use rooftend::garden::store::Overlay;
use rooftend::garden::{Garden, KnownIds, PersonId, read_garden};
use rooftend::knowledge::Files;
use rooftend::understanding::{Asker, Reader, read};
use rooftend::weather::Forecast;
use spoiled::{Dice, Fillings, message};
use std::sync::LazyLock;

/// A letter of the messenger holds 4096; some of them are left for what a channel adds.
const LONGEST: usize = 4000;

struct Setting {
    house: House,
    garden: Garden,
    forecast: Forecast,
}

static SETTING: LazyLock<Setting> = LazyLock::new(|| {
    let house = House::open(&Files::embedded()).unwrap();
    let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden =
        read_garden("garden.toml", include_str!("../demo-data/garden.toml"), &ids, &Garden::default()).unwrap();
    let forecast = Forecast::read("may.json", include_str!("../demo-data/forecast-may.json")).unwrap();
    Setting { house, garden, forecast }
});

fn number(name: &str, usual: u64) -> u64 {
    std::env::var(name).ok().and_then(|value| value.parse().ok()).unwrap_or(usual)
}

/// Sends messages one after another in one conversation, and says what is wrong with a reply.
fn faults(texts: &[String], setting: &Setting) -> Vec<String> {
    let below = Overlay::in_memory();
    import(&below, setting.garden.clone()).unwrap();
    let store = Overlay::over(&below);
    let desk = Desk::new(&setting.house, &store, Some(&setting.forecast));
    let now = "2026-05-18T08:00:00+05:30".parse().unwrap();
    let mut faults = Vec::new();
    for (place, text) in texts.iter().enumerate() {
        let from = if place % 5 == 4 { None } else { PersonId::new("meera").ok() };
        let reply = desk.answer(&Message { from, text: text.clone(), now }).unwrap();
        let long = reply.text.chars().count();
        if reply.text.trim().is_empty() || long > LONGEST || reply.text.contains("NaN") {
            faults.push(format!("{text:?}: {long} letters: {}", reply.text.chars().take(200).collect::<String>()));
        }
    }
    faults
}

fn read_alone(text: &str, setting: &Setting) {
    let house = &setting.house;
    let reader = Reader { known: &house.known, index: &house.index, gazetteer: &house.gazetteer };
    let (reading, _) = read(text, &reader, &Asker::default(), "2026-05-18".parse().unwrap());
    assert!((0.0..=1.0).contains(&reading.sureness), "{text:?}");
}

#[test]
fn spoiled_messages_are_read() {
    /// So many messages make a conversation.
    const CONVERSATION: u64 = 25;
    let (all, seed) = (number("ROOFTEND_MESSAGES", 2_000), number("ROOFTEND_SEED", 1));
    let answered = number("ROOFTEND_ANSWERED", 10).max(1);
    let threads = std::thread::available_parallelism().map_or(1, std::num::NonZero::get) as u64;
    let wrong: Vec<String> = std::thread::scope(|scope| {
        let workers: Vec<_> = (0..threads)
            .map(|worker| {
                scope.spawn(move || {
                    let fillings = Fillings::of(&SETTING.house.known);
                    let mut wrong = Vec::new();
                    for chat in (worker..all.div_ceil(CONVERSATION)).step_by(threads as usize) {
                        let mut dice = Dice::of(seed.wrapping_mul(1_000_003) + chat);
                        let texts: Vec<String> = (0..CONVERSATION).map(|_| message(&mut dice, &fillings)).collect();
                        if chat % answered == 0 {
                            wrong.extend(faults(&texts, &SETTING));
                        } else {
                            texts.iter().for_each(|text| read_alone(text, &SETTING));
                        }
                    }
                    wrong
                })
            })
            .collect();
        workers.into_iter().flat_map(|worker| worker.join().unwrap()).collect()
    });
    assert!(wrong.is_empty(), "{} replies:\n{}", wrong.len(), wrong.join("\n"));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn any_text_is_answered(texts in prop::collection::vec("\\PC{0,160}", 1..4), bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        let mut texts = texts;
        texts.push(String::from_utf8_lossy(&bytes).into_owned());
        let wrong = faults(&texts, &SETTING);
        prop_assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }
}
