//! The crew's work by message, from outside: the bot's own loops in this process, on a clock of ours, against a Bot API
//! server of our own.
#![allow(clippy::disallowed_methods, reason = "the tests read files that the program wrote")]

mod bot_api;

use bot_api::{BotApi, Sent, TOKEN, rooftend};
use chrono::{DateTime, FixedOffset};
use rooftend::channel::counts::Counts;
use rooftend::channel::telegram::{self, Line, Settings};
use rooftend::desk::House;
use rooftend::desk::reception::{Reception, bed_codes};
use rooftend::garden::store::SledStore;
use rooftend::garden::{BedId, JobKind, SiteId, Store};
use rooftend::knowledge::Files;
use std::path::Path;
use std::sync::{Arc, OnceLock};
use std::thread::JoinHandle;
use tokio::sync::watch;

const ASHA: i64 = 101;
const RAVI: i64 = 103;
const SUNITA: i64 = 104;
const MEERA: i64 = 88_102_455;
const FARID: i64 = 106;
const STRANGER: i64 = 199;

/// 08:00 in Nagpur on the first day of the demo's forecast, as the server dates its messages.
fn clock() -> DateTime<FixedOffset> {
    "2026-05-18T08:00:00+05:30".parse().unwrap()
}

fn house() -> Arc<House> {
    static HOUSE: OnceLock<Arc<House>> = OnceLock::new();
    let kept = Path::new(concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    HOUSE.get_or_init(|| Arc::new(House::open_keeping(&Files::embedded(), kept).unwrap())).clone()
}

/// A bot that runs.
struct Bot {
    stop: watch::Sender<bool>,
    serving: JoinHandle<()>,
    store: Arc<dyn Store>,
    reception: Arc<Reception>,
}

impl Bot {
    fn start(data: &Path, api: &BotApi) -> Self {
        let store: Arc<dyn Store> = Arc::new(SledStore::open(data).unwrap());
        let reception = Arc::new(Reception::open(house(), store.clone()).unwrap());
        let forecast = std::fs::read_to_string("demo-data/forecast-may.json").unwrap();
        reception.set_forecast(Some(rooftend::weather::Forecast::read("forecast-may.json", &forecast).unwrap()));
        let (stop, stopped) = watch::channel(false);
        let settings = Settings { token: TOKEN.into(), api_url: Some(api.url()) };
        let line = Line::new(settings, reception.clone(), clock, Arc::new(Counts::default()), stopped).unwrap();
        let serving = std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().unwrap();
            runtime.block_on(telegram::serve(line, false)).unwrap();
        });
        Self { stop, serving, store, reception }
    }

    fn stop(self) {
        self.stop.send(true).unwrap();
        self.serving.join().unwrap();
    }
}

/// A bot on the demo garden that Asha has claimed, with these of its people let in.
fn opened(data: &Path, api: &BotApi, people: &[(&str, i64)]) -> Bot {
    let done = rooftend(data, &["import", "demo-data/garden.toml"]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let bot = Bot::start(data, api);
    let claim = bot.reception.claims(clock().to_utc(), false).unwrap().remove(0);
    api.says(ASHA, &format!("/start {}", claim.code));
    api.expect(ASHA, "linked as Asha (owner)");
    for (id, account) in people {
        api.says(ASHA, &format!("/invite {id}"));
        let invite = api.expect(ASHA, "Code for");
        api.expect(ASHA, "is known already");
        let code = invite.text.split("/start ").last().unwrap().trim().to_owned();
        api.says(*account, &format!("/start {code}"));
        api.next(*account);
        api.expect(ASHA, " has come in");
    }
    bot
}

fn jobs(bot: &Bot, bed: &str, kind: JobKind) -> Vec<String> {
    let jobs = bot.store.jobs_of_bed(&BedId::new(bed).unwrap()).unwrap();
    let today = clock().date_naive();
    let today = jobs.into_iter().filter(|job| job.job == kind && job.on.date() == today);
    today.map(|job| job.amount.map_or_else(String::new, |amount| amount.to_string())).collect()
}

/// Presses a button and gives what stands there then.
#[track_caller]
fn press(api: &BotApi, person: i64, under: &Sent, says: &str) -> Sent {
    api.presses(person, under, &under.button(says));
    api.next(person)
}

#[test]
fn a_round_by_taps() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let bot = opened(folder.path(), &api, &[("ravi", RAVI), ("meera", MEERA), ("farid", FARID)]);
    api.says(RAVI, "round: roof 12");
    let plan = api.expect(RAVI, "one roof");
    assert!(plan.text.contains("1. Roof 12:"), "{}", plan.text);
    let mut card = press(&api, RAVI, &plan, "begin");
    assert_eq!(card.number, plan.number, "one message, edited as the round goes");
    println!("{}\n{:?}", card.text, card.buttons.iter().map(|b| &b.0).collect::<Vec<_>>());
    assert!(card.text.starts_with("Round, bed 1 of "), "{}", card.text);
    for _ in 0..3 {
        card = press(&api, RAVI, &card, "next bed");
        println!("{}\n{:?}", card.text, card.buttons.iter().map(|b| &b.0).collect::<Vec<_>>());
    }
    bot.stop();
    api.nothing_wrong();
}
