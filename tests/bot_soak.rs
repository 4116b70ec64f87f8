//! How the bot bears a load: the real program against a Bot API server of our own. Nothing here runs of itself; it
//! measures and prints, and asserts only that everything is answered. In a release build:
//!
//! `ROOFTEND_SOAK_MINUTES=60 cargo test --release --test bot_soak -- --ignored --nocapture steady`
//!
//! Settings: `ROOFTEND_SOAK_MINUTES` (2), `ROOFTEND_SOAK_A_SECOND` messages in all (10), `ROOFTEND_SOAK_CHATS` (50),
//! `ROOFTEND_SOAK_LIMITS` `on` keeps the platform's limits of sending (off), `ROOFTEND_SOAK_BURST` (500).
#![allow(clippy::disallowed_methods, reason = "it reads how much memory the program holds")]

mod bot_api;

use bot_api::crew::claimed_with;
use bot_api::{BotApi, Serving, crowd, rooftend};
use rooftend::garden::{Change, Filed, SledStore, Store};
use serde_json::json;
use std::collections::BTreeMap;
use std::time::{Duration, Instant};

fn setting(name: &str, usual: f64) -> f64 {
    std::env::var(name).map_or(usual, |text| text.parse().unwrap_or_else(|_| panic!("{name}: {text}")))
}

/// What people write: questions, records, a command; in three languages.
const MESSAGES: [&str; 8] = [
    "how much water for the east box",
    "watered the east box",
    "/help",
    "purab wala box mein kitna paani doon",
    "when is the next spray for the east box",
    "पूरब वाले डिब्बे में पानी कब दें",
    "what is due tomorrow",
    "can my balcony take a 4x3 box",
];

/// Memory held, in MB (`VmRSS` of proc(5)).
fn resident_mb(serving: &Serving) -> f64 {
    let text = std::fs::read_to_string(format!("/proc/{}/status", serving.pid())).unwrap_or_default();
    let line = text.lines().find_map(|line| line.strip_prefix("VmRSS:")).unwrap_or_default();
    line.trim().trim_end_matches(" kB").trim().parse::<f64>().unwrap_or(0.0) / 1024.0
}

/// Processor time used so far, in seconds (`utime` and `stime` of proc(5), in hundredths).
fn processor_s(serving: &Serving) -> f64 {
    let text = std::fs::read_to_string(format!("/proc/{}/stat", serving.pid())).unwrap_or_default();
    let after = text.rsplit_once(')').map_or("", |(_, after)| after);
    let ticks: f64 = after.split_whitespace().skip(11).take(2).filter_map(|text| text.parse::<f64>().ok()).sum();
    ticks / 100.0
}

/// Waterings on each bed when the load begins, one a day.
const DAYS: u64 = 14;

/// A garden with as many clients as there are chats, each with a roof and beds of her own, all let in.
fn full_house(api: &BotApi, data: &std::path::Path, chats: i64, settings: &[(&str, &str)]) -> Serving {
    let clients = usize::try_from(chats).unwrap();
    let file = data.join("crowd.toml");
    std::fs::write(&file, crowd::garden(clients, DAYS)).unwrap();
    let done = rooftend(data, &["import", file.to_str().unwrap()]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let card = |number: usize| {
        let chat = 10_000 + number;
        let since = "2026-05-01T00:00:00Z";
        let value = json!({"chat": chat, "person": crowd::id(number), "language": "en", "since": since});
        Change::put(Filed { drawer: "chats".to_owned(), key: chat.to_string(), value })
    };
    let store = SledStore::open(data).unwrap();
    store.write((0..clients).map(card).collect()).unwrap();
    drop(store);
    claimed_with(data, api, settings)
}

/// When each message was written and when its answer came, by chat: answers keep the order of their chat.
#[derive(Default)]
struct Times {
    asked: BTreeMap<i64, Vec<Instant>>,
}

impl Times {
    /// Milliseconds from question to answer, in order of size, and how many had none.
    fn waits(&self, api: &BotApi, before: usize) -> (Vec<f64>, usize) {
        let mut answered: BTreeMap<i64, Vec<Instant>> = BTreeMap::new();
        for (chat, at) in api.arrived().split_off(before) {
            answered.entry(chat).or_default().push(at);
        }
        let (mut waits, mut none) = (Vec::new(), 0);
        for (chat, asked) in &self.asked {
            let of_chat = answered.remove(chat).unwrap_or_default();
            none += asked.len().saturating_sub(of_chat.len());
            waits.extend(asked.iter().zip(of_chat).map(|(asked, at)| (at - *asked).as_secs_f64() * 1000.0));
        }
        waits.sort_by(f64::total_cmp);
        (waits, none)
    }

    fn all(&self) -> usize {
        self.asked.values().map(Vec::len).sum()
    }
}

fn part(sorted: &[f64], of_hundred: usize) -> f64 {
    let place = (sorted.len() * of_hundred / 100).min(sorted.len().saturating_sub(1));
    sorted.get(place).copied().unwrap_or(f64::NAN)
}

fn told(what: &str, waits: &[f64], none: usize) {
    println!(
        "{what}: {} answered, {none} not; answer after p50 {:.0} ms, p90 {:.0} ms, p99 {:.0} ms, longest {:.0} ms",
        waits.len(),
        part(waits, 50),
        part(waits, 90),
        part(waits, 99),
        part(waits, 100)
    );
}

fn limits() -> String {
    std::env::var("ROOFTEND_SOAK_LIMITS").unwrap_or_else(|_| "off".into())
}

/// Waits until every question has its answer, or nothing has come for a minute.
fn until_answered(api: &BotApi, times: &Times, before: usize) {
    let (mut seen, mut since) = (0, Instant::now());
    while api.arrived().len() < before + times.all() && since.elapsed() < Duration::from_secs(60) {
        std::thread::sleep(Duration::from_millis(20));
        let now = api.arrived().len();
        if now > seen {
            (seen, since) = (now, Instant::now());
        }
    }
}

/// So many messages a second, from so many chats, for so many minutes.
#[test]
#[ignore = "measures for minutes"]
fn steady() {
    let minutes = setting("ROOFTEND_SOAK_MINUTES", 2.0);
    let (a_second, chats) = (setting("ROOFTEND_SOAK_A_SECOND", 10.0), setting("ROOFTEND_SOAK_CHATS", 50.0) as i64);
    let (folder, api, limits) = (tempfile::tempdir().unwrap(), BotApi::start(), limits());
    let settings = [("ROOFTEND_SEND_LIMITS", "off"), ("ROOFTEND_LOG", "warn")];
    let serving = full_house(&api, folder.path(), chats, &settings);
    assert_eq!(serving.stop().0, Some(0));
    let settings = [("ROOFTEND_SEND_LIMITS", limits.as_str()), ("ROOFTEND_LOG", "warn")];
    let serving = Serving::start(folder.path(), &api, &settings);
    serving.line("serving");
    println!("{a_second} messages a second from {chats} chats for {minutes} minutes, limits of sending {limits}");
    println!("{:>8} {:>10} {:>12} {:>12}", "minute", "memory MB", "unanswered", "processor s");
    let (mut times, before) = (Times::default(), api.arrived().len());
    let (begun, pause) = (Instant::now(), Duration::from_secs_f64(1.0 / a_second));
    let whole = Duration::from_secs_f64(minutes * 60.0);
    let (mut number, mut minute) = (0_u32, 0);
    while begun.elapsed() < whole {
        if begun.elapsed().as_secs() / 30 >= minute {
            let open = times.all() - (api.arrived().len() - before).min(times.all());
            println!(
                "{:>8.1} {:>10.1} {open:>12} {:>12.1}",
                begun.elapsed().as_secs_f64() / 60.0,
                resident_mb(&serving),
                processor_s(&serving)
            );
            minute += 1;
        }
        let chat = 10_000 + i64::from(number) % chats;
        let text = MESSAGES[(number as usize / chats as usize) % MESSAGES.len()];
        times.asked.entry(chat).or_default().push(Instant::now());
        api.says(chat, text);
        number += 1;
        std::thread::sleep((pause * number).saturating_sub(begun.elapsed()));
    }
    until_answered(&api, &times, before);
    println!("{:>8} {:>10.1} {:>12} {:>12.1}", "end", resident_mb(&serving), 0, processor_s(&serving));
    let (waits, none) = times.waits(&api, before);
    told("steady", &waits, none);
    println!("processor time an answer: {:.1} ms", processor_s(&serving) * 1000.0 / waits.len().max(1) as f64);
    assert_eq!(none, 0);
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

/// So many messages at once, from ten chats.
#[test]
#[ignore = "measures for minutes"]
fn burst() {
    const CHATS: i64 = 10;
    let many = setting("ROOFTEND_SOAK_BURST", 500.0) as i64;
    let (folder, api, limits) = (tempfile::tempdir().unwrap(), BotApi::start(), limits());
    let settings = [("ROOFTEND_SEND_LIMITS", "off"), ("ROOFTEND_LOG", "warn")];
    let serving = full_house(&api, folder.path(), CHATS, &settings);
    assert_eq!(serving.stop().0, Some(0));
    let (mut times, before) = (Times::default(), api.arrived().len());
    let depth = |number: i64| 6 + number / CHATS % 20;
    for number in 0..many {
        let chat = 10_000 + number % CHATS;
        times.asked.entry(chat).or_default().push(Instant::now());
        api.says(chat, &format!("what do I need for a 4 x 3 ft box, {} in deep", depth(number)));
    }
    let settings = [("ROOFTEND_SEND_LIMITS", limits.as_str()), ("ROOFTEND_LOG", "warn")];
    let begun = Instant::now();
    let serving = Serving::start(folder.path(), &api, &settings);
    serving.line("serving");
    println!("serving after {:.1} s", begun.elapsed().as_secs_f64());
    let drained = Instant::now();
    until_answered(&api, &times, before);
    let (waits, none) = times.waits(&api, before);
    println!("burst of {many} drained in {:.1} s after the start, limits {limits}", drained.elapsed().as_secs_f64());
    told("burst", &waits, none);
    println!("memory {:.1} MB, processor {:.1} s", resident_mb(&serving), processor_s(&serving));
    assert_eq!(none, 0);
    for chat in 0..CHATS {
        let sent: Vec<_> = api.sent().split_off(before).into_iter().filter(|sent| sent.chat == 10_000 + chat).collect();
        let asked = (chat..many).step_by(CHATS as usize);
        for (number, sent) in asked.zip(sent) {
            let size = format!("4 × 3 ft × {} in", depth(number));
            assert!(sent.text.contains(&size), "out of order in chat {chat}: {size} expected, got {}", sent.text);
        }
    }
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}
