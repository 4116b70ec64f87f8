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
            runtime.block_on(telegram::serve(line, false, None)).unwrap();
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

/// From the plan to the note at the client's, by taps alone but for one weight; killed in between.
#[test]
fn a_round_by_taps() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let bot = opened(folder.path(), &api, &[("ravi", RAVI), ("meera", MEERA), ("farid", FARID)]);
    api.says(RAVI, "round: roof 12");
    let plan = api.expect(RAVI, "one roof");
    assert!(plan.text.contains("1. Roof 12:"), "{}", plan.text);
    let card = press(&api, RAVI, &plan, "begin");
    assert_eq!(card.number, plan.number, "one message, edited as the round goes");
    assert!(card.text.starts_with("Round, bed 1 of 5.\nRoof 12, chilli pot (chilli)."), "{}", card.text);
    assert!(card.text.contains("Due: net up and pick chilli") && card.text.contains("540 ml each morning"));
    let rows = card.body["reply_markup"]["inline_keyboard"].as_array().unwrap();
    assert!(rows.iter().any(|row| row.as_array().is_some_and(|row| row.len() == 3)), "looks stand beside each other");
    let card = press(&api, RAVI, &card, "watered");
    assert!(card.text.contains("Noted today: watered"), "{}", card.text);
    let card = press(&api, RAVI, &card, "net put up");
    assert!(card.text.contains("net put up") && !card.text.contains("Due: net up"), "{}", card.text);
    assert!(!card.text.contains("Water the chilli pot now"), "just watered: {}", card.text);
    let card = press(&api, RAVI, &card, "still wet");
    let card = press(&api, RAVI, &card, "take back");
    assert!(!card.text.contains("still wet"), "{}", card.text);
    // Another person's press, a made-up token, another client's bed in its place.
    let next = card.button("next bed");
    for (person, data) in
        [(FARID, next.as_str()), (MEERA, next.as_str()), (RAVI, "roof-12/east-box"), (FARID, "terrace-3/long-box")]
    {
        let elsewhere = Sent { number: 1, ..card.clone() };
        api.presses(person, &elsewhere, data);
        let told = api.next(person).text;
        assert!(told.contains("no longer good") || told.contains("ab nahi chalta"), "{told}");
    }
    let card = press(&api, RAVI, &card, "next bed");
    assert!(card.text.contains("Roof 12, east box (amaranth)"), "{}", card.text);
    let ask = press(&api, RAVI, &card, "picked");
    assert!(ask.text.contains("How much Amaranth did you pick"), "{}", ask.text);
    let card = press(&api, RAVI, &ask, "250 g");
    assert!(card.text.contains("picked amaranth, 250 g"), "{}", card.text);
    assert_eq!(jobs(&bot, "roof-12/east-box", JobKind::Pick), ["250 g"]);
    let ask = press(&api, RAVI, &card, "picked");
    let card = press(&api, RAVI, &ask, "250 g");
    assert_eq!(jobs(&bot, "roof-12/east-box", JobKind::Pick), ["250 g", "250 g"], "a second basket");
    let card = press(&api, RAVI, &card, "take back");
    assert_eq!(jobs(&bot, "roof-12/east-box", JobKind::Pick), ["250 g"]);
    let card = press(&api, RAVI, &card, "next bed");
    assert!(card.text.contains("mint basket"), "{}", card.text);

    // Stopped and started: the round stands where it was.
    bot.stop();
    let bot = Bot::start(folder.path(), &api);
    let ask = press(&api, RAVI, &card, "picked");
    press(&api, RAVI, &ask, "type it");
    api.says(RAVI, "1.2 kg");
    let card = api.expect(RAVI, "Round, bed 3 of 5");
    assert_ne!(card.number, ask.number, "below what was typed");
    assert_eq!(jobs(&bot, "roof-12/mint-basket", JobKind::Pick), ["1.2 kg"]);
    let card = press(&api, RAVI, &card, "all of it done");
    assert!(!card.text.contains("Due:"), "{}", card.text);
    assert_eq!(jobs(&bot, "roof-12/mint-basket", JobKind::Water).len(), 1);
    assert_eq!(jobs(&bot, "roof-12/mint-basket", JobKind::Feed).len(), 1);
    let card = press(&api, RAVI, &card, "skip");
    let card = press(&api, RAVI, &card, "another bed");
    assert!(card.text.contains("Where to?"), "{}", card.text);
    let card = press(&api, RAVI, &card, "back");
    let over = press(&api, RAVI, &card, "end the round");
    assert!(over.text.contains("one roof, 3 beds"), "{}", over.text);
    assert!(over.text.contains("Left out: sprouting tray, tomato bag."), "{}", over.text);
    let offer = api.expect(RAVI, "This would go to Meera");
    for part in ["Ravi was at Roof 12 on Mon 18 May.", "picked amaranth, 250 g (east box)", "Until the next visit:"] {
        assert!(offer.text.contains(part), "{part}: {}", offer.text);
    }
    let sent = press(&api, RAVI, &offer, "send");
    assert!(sent.number == offer.number && sent.text.contains("has gone to Meera"), "{}", sent.text);
    let note = api.expect(MEERA, "Ravi was at Roof 12");
    assert!(offer.text.contains(&note.text) && note.text.contains("We come again about"), "{}", note.text);
    api.says(ASHA, "visits this week");
    let visits = api.expect(ASHA, "Visits, Tue 12 May to Mon 18 May");
    assert!(visits.text.contains("Roof 12: Mon 18 May Ravi"), "{}", visits.text);
    bot.stop();
    api.nothing_wrong();
}

#[test]
fn a_label_a_group_and_an_album() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let people = [("ravi", RAVI), ("sunita", SUNITA), ("meera", MEERA), ("farid", FARID)];
    let bot = opened(folder.path(), &api, &people);
    let site = SiteId::new("roof-12").unwrap();
    let codes = bed_codes(bot.store.as_ref(), &site, clock().to_utc()).unwrap();
    let of_east = codes.iter().find(|(bed, _)| bed.id.bed() == "east-box").unwrap().1.clone();
    for person in [MEERA, RAVI, ASHA] {
        api.says(person, &format!("/start {of_east}"));
        let card = api.expect(person, "Roof 12, east box");
        assert!(card.text.contains("5 L"), "{}", card.text);
        let noted = press(&api, person, &card, "dry too early");
        assert!(noted.text.contains("dry too early"), "{}", noted.text);
    }
    for (person, says) in
        [(FARID, "kuchh nahi kholta"), (SUNITA, "कुछ नहीं खोलता"), (STRANGER, "I answer in general only")]
    {
        api.says(person, &format!("/start {of_east}"));
        let told = api.expect(person, says);
        api.says(person, "/start bed-madeupmadeupmade");
        assert_eq!(api.next(person).text, told.text, "the same for a code that is none");
    }
    api.says(RAVI, "/codes roof-12");
    let links = api.expect(RAVI, "east box (roof-12/east-box)");
    assert!(links.text.contains(&format!("https://t.me/roof_test_bot?start={of_east}")), "{}", links.text);

    // In a group nothing of a bed is told; what is handed over goes to the owner and the gardener of the asker's roof.
    let group = -500;
    api.says_in(group, MEERA, "I want to talk to someone");
    api.says_in(group, MEERA, "@roof_test_bot please let me talk to a person");
    api.next(group);
    api.expect(ASHA, "Meera asks: please let me talk to a person");
    let at_ravi = api.expect(RAVI, "Meera asks: please let me talk to a person");
    // The letter is noted as sent a moment after it arrived: nobody answers as fast as a test.
    api.says(RAVI, "/questions");
    api.expect(RAVI, "Meera: please let me talk to a person");
    api.replies(RAVI, &at_ravi, "I come at five");
    let answer = api.expect(group, "The crew answers: I come at five");
    assert!(answer.reply_to.is_some());
    api.expect(RAVI, "Passed on to Meera");
    api.expect(ASHA, "Ravi has answered Meera");

    // In a group only one photo of an album calls by name; the others belong to it.
    let first = api.sends_album_photo(group, MEERA, "album-0", Some("@roof_test_bot these leaves"));
    let second = api.sends_album_photo(group, MEERA, "album-0", None);
    api.sends_album_photo(group, MEERA, "album-of-somebody-else", None);
    api.expect(group, "passed it to the crew");
    for person in [ASHA, RAVI] {
        api.expect(person, &format!("copy of {first} in {group}"));
        api.expect(person, "Meera sends this. these leaves");
        api.expect(person, &format!("copy of {second} in {group}"));
    }

    // Three photos are one question.
    let first = api.sends_album_photo(MEERA, MEERA, "album-1", Some("spots on the leaves"));
    api.sends_album_photo(MEERA, MEERA, "album-1", None);
    api.sends_album_photo(MEERA, MEERA, "album-1", None);
    api.expect(MEERA, "passed it to the crew");
    for person in [ASHA, RAVI] {
        api.expect(person, &format!("copy of {first} in {MEERA}"));
        api.expect(person, "Meera sends this. spots on the leaves");
        api.expect(person, "copy of");
        api.expect(person, "copy of");
    }
    assert_eq!(bot.store.questions().unwrap().len(), 2, "one of the group, one of the three photos");
    api.edits_caption(MEERA, first, "spots on the leaves of the chilli");
    for person in [ASHA, RAVI] {
        api.expect(person, "spots on the leaves of the chilli");
    }
    let texts: Vec<String> = bot.store.questions().unwrap().into_iter().map(|question| question.text).collect();
    assert!(texts.contains(&"spots on the leaves of the chilli".to_owned()), "{texts:?}");
    let to_meera: Vec<String> =
        api.sent().into_iter().filter(|sent| sent.chat == MEERA).map(|sent| sent.text).collect();
    assert_eq!(to_meera.iter().filter(|text| text.contains("passed it to the crew")).count(), 1);
    bot.stop();
    api.nothing_wrong();
}

#[test]
fn a_site_and_a_bed_by_message() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let bot = opened(folder.path(), &api, &[("ravi", RAVI), ("meera", MEERA)]);
    api.says(RAVI, "new site: Gupta ji's terrace");
    api.expect(RAVI, "Where is Gupta ji's terrace");
    api.sends_place(RAVI, 21.1402, 79.0803);
    let shown = api.expect(RAVI, "a new place, \"Gupta ji's terrace\", at 21.1402, 79.0803, by Nagpur");
    let kept = press(&api, RAVI, &shown, "yes");
    assert!(kept.text.contains("gupta-ji-s-terrace"), "{}", kept.text);
    api.expect(ASHA, "Ravi has added a place: Gupta ji's terrace");
    api.says(RAVI, "new box at Gupta ji's terrace, 4 by 3 ft, a foot deep, sun till two");
    let shown = api.expect(RAVI, "Understood: a new box at Gupta ji's terrace");
    assert!(shown.text.contains("8.4 h"), "{}", shown.text);
    let kept = press(&api, RAVI, &shown, "yes");
    assert!(kept.text.contains("box 2 (gupta-ji-s-terrace/box-2)"), "{}", kept.text);
    api.says(ASHA, "new box at Meera's, 4 by 3 ft, a foot deep, sun till two");
    let shown = api.expect(ASHA, "Understood: a new box at Roof 12");
    press(&api, ASHA, &shown, "no");
    let beds = |site: &str| bot.store.beds_of_site(&SiteId::new(site).unwrap()).unwrap().len();
    assert_eq!((beds("gupta-ji-s-terrace"), beds("roof-12")), (1, 5));
    api.says(RAVI, "how much water for box 2");
    api.expect(RAVI, "box 2");
    // A place that nothing was asked about: a roof, a new roof, or where the round starts.
    api.sends_place(RAVI, 21.15, 79.09);
    let which = api.expect(RAVI, "Which roof lies here");
    let plan = press(&api, RAVI, &which, "the round starts here");
    assert!(plan.text.contains("1. Roof 12"), "{}", plan.text);
    bot.stop();
    api.nothing_wrong();
}

/// A PNG file of one pixel (PNG specification, 2nd edition: signature, IHDR, IDAT, IEND).
const PIXEL: &[u8] = &[
    0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0, 1, 8,
    0, 0, 0, 0, 0x3a, 0x7e, 0x9b, 0x55, 0, 0, 0, 0x0a, 0x49, 0x44, 0x41, 0x54, 0x78, 0x9c, 0x63, 0x60, 0, 0, 0, 2, 0,
    1, 0x48, 0xaf, 0xa4, 0x71, 0, 0, 0, 0, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82,
];

#[test]
fn a_picture_under_an_answer() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let bot = opened(folder.path(), &api, &[("meera", MEERA)]);
    api.says(MEERA, "how much water for the east box this week");
    let plain = api.expect(MEERA, "east box");
    assert!(plain.buttons.iter().all(|(says, _)| says != "picture"), "nothing draws yet: {:?}", plain.buttons);
    bot.reception.set_drawing(Arc::new(|answer, _| (!answer.figures.is_empty()).then(|| PIXEL.to_vec())));
    api.says(MEERA, "how much water for the east box this week");
    let answer = api.expect(MEERA, "east box");
    let picture = press(&api, MEERA, &answer, "picture");
    assert_eq!(picture.body["photo"]["width"], 1, "{:?}", picture.body);
    assert_eq!(picture.text, answer.text, "the words of the answer stand below it");
    api.replies(MEERA, &picture, "why?");
    assert!(api.next(MEERA).text.contains("mm"), "a reply to it goes back to its answer");
    assert_eq!(api.calls("sendPhoto").len(), 1);
    // Nothing is offered under what is not drawn, and a picture is looked at as often as one likes.
    press(&api, MEERA, &answer, "picture");
    api.says(MEERA, "when can I sow okra");
    let sow = api.next(MEERA);
    assert!(sow.buttons.iter().all(|(says, _)| says != "picture"), "{:?}", sow.buttons);
    bot.stop();
    api.nothing_wrong();
}
