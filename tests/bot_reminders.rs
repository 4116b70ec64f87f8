//! Reminders from outside: the real program under a clock that jumps, told, pressed, killed.
#![allow(clippy::disallowed_methods, reason = "the tests read files that the program wrote")]

mod bot_api;

use bot_api::crew::{ASHA, MEERA, RAVI, claimed_with, invited, stdout};
use bot_api::{BotApi, Clock, Sent, Serving};
use chrono::{Days, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::time::{Duration, Instant};

/// Another command at the store makes the program look at once.
fn poke(data: &Path) {
    stdout(data, &["questions"]);
}

fn number_of(sent: &Sent, says: &str) -> String {
    let line = sent.text.lines().find(|line| line.contains(says));
    line.unwrap_or_else(|| panic!("no \"{says}\": {}", sent.text)).split('.').next().unwrap().to_owned()
}

#[test]
fn the_evening_before_done_moved_why_and_a_clock_that_jumps() {
    let folder = tempfile::tempdir().unwrap();
    let (data, api) = (folder.path().join("data"), BotApi::start());
    let data = data.as_path();
    let clock = Clock::at(folder.path(), "2026-05-18T07:30");
    let settings = clock.settings();
    let serving = claimed_with(data, &api, &Clock::borrowed(&settings));
    invited(&api, "meera", "Meera", MEERA);
    poke(data);
    let today = api.expect(MEERA, "Today, Mon 18 May:");
    assert!(today.text.contains("Feed: mint basket"), "{}", today.text);
    api.expect(ASHA, "Today, Mon 18 May:");

    clock.jump("2026-05-18T18:30");
    poke(data);
    let eve = api.expect(MEERA, "Tomorrow, Tue 19 May:");
    assert!(eve.text.contains("Spray: east box, mint basket and tomato bag; before the sun is up"), "{}", eve.text);
    let (spray, feed) = (number_of(&eve, "Spray: "), number_of(&eve, "Feed: chilli pot"));
    // The buttons of one job stand in a row.
    let rows = eve.body["reply_markup"]["inline_keyboard"].as_array().unwrap();
    assert!(
        rows.iter().all(|row| row.as_array().unwrap().len() == 3 || row[0]["text"].as_str().unwrap().ends_with("why"))
    );
    api.expect(ASHA, "Tomorrow, Tue 19 May:");

    api.presses(MEERA, &eve, &eve.button(&format!("{spray} why")));
    let why = api.next(MEERA);
    assert!(why.text.contains("°C") && why.text.contains("19 May"), "{}", why.text);
    api.presses(MEERA, &eve, &eve.button(&format!("{feed} move")));
    let ask = api.expect(MEERA, "Which day instead");
    api.presses(MEERA, &ask, &ask.button("In 2 days, Wed 20 May"));
    api.expect(MEERA, "Moved: feed, chilli pot, to Wed 20 May");
    clock.jump("2026-05-19T06:10");
    api.presses(MEERA, &eve, &eve.button(&format!("{spray} done")));
    let done = api.expect(MEERA, "Noted: sprayed, east box, mint basket and tomato bag, Tue 19 May");
    api.presses(MEERA, &eve, &eve.button(&format!("{spray} done")));
    api.expect(MEERA, "noted as done already");
    let due = stdout(data, &["round", "--as", "meera", "--now", "2026-05-19T08:00:00+05:30", "--on", "2026-05-20"]);
    assert!(due.contains("feed, chilli pot") && !due.contains("spray, east box"), "{due}");
    api.presses(MEERA, &done, &done.button("undo"));
    api.expect(MEERA, "Taken back");

    // Back by a day, forward by two: each evening is told once, whatever the clock did.
    clock.jump("2026-05-18T19:00");
    poke(data);
    clock.jump("2026-05-19T18:05");
    poke(data);
    let eve = api.expect(MEERA, "Tomorrow, Wed 20 May:");
    assert!(eve.text.contains("Feed: chilli pot"), "{}", eve.text);
    clock.jump("2026-05-19T22:00");
    poke(data);
    clock.jump("2026-05-21T18:05");
    poke(data);
    let eve = api.expect(MEERA, "Tomorrow, Fri 22 May:");
    assert!(eve.text.contains("open since"), "what stayed open is not forgotten: {}", eve.text);
    let titles: Vec<String> = api
        .sent()
        .iter()
        .filter(|sent| sent.chat == MEERA && (sent.text.starts_with("Tomorrow") || sent.text.starts_with("Today")))
        .map(|sent| sent.text.lines().next().unwrap().to_owned())
        .collect();
    let once: BTreeSet<&String> = titles.iter().collect();
    assert_eq!(once.len(), titles.len(), "{titles:?}");
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

/// What each chat is told on each evening, by the day that is told of.
fn evenings(sent: &[Sent]) -> BTreeMap<(i64, String), BTreeMap<String, usize>> {
    let mut all: BTreeMap<(i64, String), BTreeMap<String, usize>> = BTreeMap::new();
    for sent in sent.iter().filter(|sent| sent.text.starts_with("Tomorrow, ")) {
        let day = sent.text.lines().next().unwrap().to_owned();
        *all.entry((sent.chat, day)).or_default().entry(sent.text.clone()).or_default() += 1;
    }
    all
}

/// Whether an evening is over: every chat had its word, or was found to need none, and no letter waits.
fn is_over(data: &Path, day: NaiveDate) -> bool {
    let file = data.join("look.backup").display().to_string();
    stdout(data, &["backup", &file]);
    let whole = std::fs::read_to_string(file).unwrap();
    let looked = format!("\"key\":\"{{}}|{day}|eve\"");
    let had = [ASHA, MEERA, RAVI].iter().all(|chat| whole.contains(&looked.replace("{}", &chat.to_string())));
    had && !whole.contains("\"drawer\":\"outbox\"") && !whole.contains("\"waiting\":")
}

/// The demo garden's evenings, a day each, with messages coming in; `goes_on` hands back the process that sees the
/// evening out.
fn through_days(rounds: u64, goes_on: impl Fn(Serving, u64, &dyn Fn() -> Serving) -> Serving) -> Through {
    let folder = tempfile::tempdir().unwrap();
    let (data, api) = (folder.path().join("data"), BotApi::start());
    let data = data.as_path();
    let clock = Clock::at(folder.path(), "2026-05-17T23:00");
    let settings = clock.settings();
    let serving = claimed_with(data, &api, &Clock::borrowed(&settings));
    invited(&api, "meera", "Meera", MEERA);
    invited(&api, "ravi", "Ravi", RAVI);
    assert_eq!(serving.stop().0, Some(0));
    let mut guests = 0;
    let first: NaiveDate = "2026-05-18".parse().unwrap();
    for round in 0..rounds {
        let day = first.checked_add_days(Days::new(round)).unwrap();
        clock.jump(&format!("{day}T18:30"));
        let start = || Serving::start(data, &api, &Clock::borrowed(&settings));
        let serving = start();
        for _ in 0..GUESTS_A_DAY {
            guests += 1;
            api.says(ASHA, &format!("/invite client Guest{} roof-12", letters(guests)));
        }
        // A record that no reminder rests on; each has an amount of its own.
        api.says(MEERA, &format!("watered the mint basket {} ml", 100 + round));
        let serving = goes_on(serving, round, &start);
        api.all_acknowledged();
        let until = Instant::now() + Duration::from_secs(120);
        while !is_over(data, day) {
            assert!(Instant::now() < until, "the evening of {day} is never over: {}", serving.logged());
            std::thread::sleep(Duration::from_millis(100));
        }
        assert_eq!(serving.stop().0, Some(0));
    }
    let whole = std::fs::read_to_string(data.join("look.backup")).unwrap();
    // Codes are good for a week of that clock; of those of the last days each is there, and none twice.
    let codes = |number: usize| {
        let name = format!("\"name\":\"Guest{}\"", letters(number));
        whole.lines().filter(|line| line.contains("\"drawer\":\"invites\"") && line.contains(&name)).count()
    };
    let lately = guests.saturating_sub(6 * GUESTS_A_DAY) + 1..=guests;
    let once = lately.clone().all(|number| codes(number) == 1) && (1..=guests).all(|number| codes(number) <= 1);
    assert!(once, "{:?}", lately.map(|number| (number, codes(number))).collect::<Vec<_>>());
    let watered = |line: &&str| {
        line.starts_with("{\"kind\":\"jobs_done\"") && line.contains("mint-basket") && line.contains(" ml\"")
    };
    let records = whole.lines().filter(|line| watered(line) && line.contains("2026-05-18T08:00")).count();
    api.nothing_wrong();
    Through { sent: api.sent(), guests, records }
}

/// What came of the days.
struct Through {
    sent: Vec<Sent>,
    guests: usize,
    /// Waterings in the store at the end.
    records: usize,
}

const GUESTS_A_DAY: usize = 3;

fn code_for(number: usize) -> String {
    format!("Code for Guest{} ", letters(number))
}

/// A number in letters: a name with a digit would be taken for a roof.
fn letters(number: usize) -> String {
    number.to_string().bytes().map(|digit| char::from(digit - b'0' + b'a')).collect()
}

/// Killed on every evening while reminders and messages are on their way: what is told is what is told without.
#[test]
fn no_reminder_is_lost_or_told_twice_when_it_is_killed() {
    let rounds: u64 = std::env::var("ROOFTEND_BOT_CRASH_ROUNDS").map_or(3, |rounds| rounds.parse().unwrap());
    let calm = through_days(rounds, |serving, _, _| {
        serving.line("serving");
        serving
    });
    // A linear congruential step (Knuth, MMIX) picks the moment.
    let random = |round: u64| {
        let step = |seed: u64| seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        step(step(20_260_518 + round)) >> 33
    };
    let killed = through_days(rounds, |serving, round, start| {
        serving.line("serving");
        std::thread::sleep(Duration::from_millis(random(round) % 1200));
        serving.kill();
        let serving = start();
        serving.line("serving");
        serving
    });
    let (calm_evenings, told) = (evenings(&calm.sent), evenings(&killed.sent));
    let (calm_days, days): (BTreeSet<_>, BTreeSet<_>) = (calm_evenings.keys().collect(), told.keys().collect());
    assert_eq!(days, calm_days, "no evening is lost, none is told that was not to be");
    for (evening, texts) in &told {
        assert_eq!(texts.len(), 1, "{evening:?} was told in two ways: {texts:?}");
        let calm = &calm_evenings[evening];
        assert_eq!(texts.keys().next(), calm.keys().next(), "{evening:?}");
    }
    let twice: usize = told.values().flat_map(BTreeMap::values).map(|count| count - 1).sum();
    let guests = (1..=killed.guests)
        .map(|number| killed.sent.iter().filter(|sent| sent.text.contains(&code_for(number))).count());
    let guests_twice: usize = guests.map(|count| count - 1).sum();
    // At most one letter of each chat is on its way at a kill.
    assert!(twice + guests_twice <= 3 * rounds as usize, "{twice} evenings and {guests_twice} answers twice");
    assert_eq!(killed.records as u64, rounds, "each is recorded once");
    println!(
        "{rounds} kills, {} evenings of 3 chats, {} answers and {} records; none lost; {twice} evenings and {guests_twice} answers sent twice",
        told.len(),
        killed.guests,
        killed.records
    );
}
