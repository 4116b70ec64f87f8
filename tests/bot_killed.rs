//! Killed in the middle of a round by taps, of a visit note and of what is shown before it is kept: no tap is lost, nothing
//! is recorded twice, no note goes out twice but where nobody can know.
#![allow(clippy::disallowed_methods, reason = "the tests read files that the program wrote")]

mod bot_api;

use bot_api::crew::{ASHA, MEERA, RAVI, claimed_with, invited, stdout};
use bot_api::{BotApi, Clock, Fault, Sent, Serving};
use chrono::{Days, NaiveDate};
use std::path::Path;
use std::time::{Duration, Instant};

/// Kills of one day: two in the round, one at the note, one at what is shown before it is kept.
const A_DAY: u64 = 4;

/// The program, and what happened to it.
struct Killed<'t> {
    api: &'t BotApi,
    data: &'t Path,
    settings: [(&'static str, String); 2],
    serving: Option<Serving>,
    random: u64,
    kills: Vec<Instant>,
}

impl Killed<'_> {
    fn start(&mut self) {
        let serving = Serving::start(self.data, self.api, &Clock::borrowed(&self.settings));
        serving.line("serving");
        self.serving = Some(serving);
    }

    /// A linear congruential step (Knuth, MMIX).
    fn random(&mut self, below: u64) -> u64 {
        self.random = self.random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.random >> 33) % below
    }

    /// At a random moment of the next quarter of a second.
    fn kill(&mut self) {
        let wait = self.random(250);
        std::thread::sleep(Duration::from_millis(wait));
        if let Some(serving) = self.serving.take() {
            serving.kill();
            self.kills.push(Instant::now());
        }
    }

    /// Waits for what comes after a press, a word: the last that says this in a chat since then.
    #[track_caller]
    fn wait(&self, chat: i64, since: usize, says: &str) -> Sent {
        let found = |sent: &[Sent]| {
            let new = sent.get(since..).unwrap_or_default();
            new.iter().rev().find(|sent| sent.chat == chat && sent.text.contains(says)).cloned()
        };
        self.api.until(&format!("\"{says}\" in chat {chat}"), |sent| found(sent).is_some());
        found(&self.api.sent()).unwrap()
    }

    /// Does something that is answered so, perhaps killed meanwhile; someone who waits presses once more.
    #[track_caller]
    fn does(&mut self, what: impl Fn(), again: bool, killed: bool, chat: i64, says: &str) -> Sent {
        let since = self.api.sent().len();
        what();
        if killed {
            self.kill();
            if again && self.random(2) == 0 {
                what();
            }
            self.start();
        }
        self.wait(chat, since, says)
    }

    #[track_caller]
    fn says(&mut self, chat: i64, text: &str, killed: bool, says: &str) -> Sent {
        let api = self.api;
        let says_it = || {
            api.says(chat, text);
        };
        self.does(says_it, false, killed, chat, says)
    }

    #[track_caller]
    fn presses(&mut self, chat: i64, under: &Sent, button: &str, killed: bool, says: &str) -> Sent {
        let (api, data) = (self.api, under.button(button));
        self.does(|| api.presses(chat, under, &data), true, killed, chat, says)
    }
}

/// Ravi's round over roof 12, all by taps; two of them hit by a kill. Returns the offer of the note.
fn round(bot: &mut Killed<'_>, day: &str) -> Sent {
    const TAPS: u64 = 27;
    let (first, second) = (bot.random(TAPS), bot.random(TAPS));
    let mut taps = 0;
    let mut hit = || {
        let hit = taps == first || taps == second || taps == first + 1 && first == second;
        taps += 1;
        hit
    };
    let since = bot.api.sent().len();
    let plan = bot.says(RAVI, "round: roof 12", hit(), "1. Roof 12:");
    let mut card = bot.presses(RAVI, &plan, "begin", hit(), "Round, bed 1 of");
    for bed in 1..=5 {
        let above = format!("Round, bed {bed} of 5");
        assert!(card.text.contains(&above), "{}", card.text);
        card = bot.presses(RAVI, &card, "watered", hit(), "watered");
        card = bot.presses(RAVI, &card, "still wet", hit(), "still wet");
        let mut ask = bot.presses(RAVI, &card, "picked", hit(), "pick");
        if ask.text.contains("What did you pick") {
            let crop = ask.buttons[0].0.clone();
            ask = bot.presses(RAVI, &ask, &crop, hit(), "How much");
        }
        card = bot.presses(RAVI, &ask, "250 g", hit(), "250 g");
        let after = if bed == 5 { "The round is over".to_owned() } else { format!("Round, bed {} of 5", bed + 1) };
        card = bot.presses(RAVI, &card, "next bed", hit(), &after);
    }
    assert!(card.text.contains("one roof, 5 beds"), "{}", card.text);
    let offer = bot.wait(RAVI, since, "This would go to Meera");
    assert!(offer.text.contains(&format!("Ravi was at Roof 12 on {day}")), "{}", offer.text);
    offer
}

/// The note goes out once; twice only where a kill lies between the two.
fn note(bot: &mut Killed<'_>, offer: &Sent, day: &str) -> usize {
    let since = bot.api.sent().len();
    if bot.random(2) == 0 {
        // The note arrives, and its answer comes late: the kill may fall between the two.
        bot.api.order("sendMessage", Fault::Late(Duration::from_millis(300)));
    }
    bot.presses(RAVI, offer, "send", true, "has gone to Meera");
    let title = format!("Ravi was at Roof 12 on {day}");
    bot.wait(MEERA, since, &title);
    // Whoever presses a note that has gone is told so, and nothing goes out.
    bot.presses(RAVI, offer, "send", false, "no longer good");
    bot.api.all_acknowledged();
    let notes: Vec<Sent> =
        bot.api.sent().into_iter().filter(|sent| sent.chat == MEERA && sent.text.contains(&title)).collect();
    for two in notes.windows(2) {
        let between = bot.kills.iter().any(|kill| two[0].at <= *kill && *kill <= two[1].at);
        assert!(between, "sent twice without a kill: {two:?}");
    }
    notes.len() - 1
}

/// A new bed and a new place, each shown before it is kept; one of the steps is hit by a kill.
fn shown_before_kept(bot: &mut Killed<'_>, number: u64) {
    let hit = bot.random(5);
    let shown = bot.says(
        ASHA,
        "new box at Joseph's balcony, 4 by 3 ft, a foot deep, sun till two",
        hit == 0,
        "Understood: a new box",
    );
    bot.presses(ASHA, &shown, "yes", hit == 1, "Kept: box");
    let name = format!("Terrace of {}", letters(number));
    bot.says(ASHA, &format!("new site: {name}"), hit == 2, &format!("Where is {name}"));
    let api = bot.api;
    let place = || api.sends_place(ASHA, 21.1402, 79.0803);
    let shown = bot.does(place, false, hit == 3, ASHA, &format!("a new place, \"{name}\""));
    bot.presses(ASHA, &shown, "yes", hit == 4, &format!("Kept: {name}"));
}

/// A number in letters: a name with a digit would be taken for a roof.
fn letters(number: u64) -> String {
    number.to_string().bytes().map(|digit| char::from(digit - b'0' + b'a')).collect()
}

/// The records of a garden file that hold all of these.
fn records(garden: &str, table: &str, with: &[&str]) -> usize {
    let of_table = garden.split("\n[[").filter(|one| one.starts_with(&format!("{table}]]")));
    of_table.filter(|one| with.iter().all(|part| one.contains(part))).count()
}

#[test]
fn no_tap_is_lost_or_noted_twice_when_it_is_killed() {
    let rounds: u64 = std::env::var("ROOFTEND_BOT_CRASH_ROUNDS").map_or(A_DAY, |rounds| rounds.parse().unwrap());
    let folder = tempfile::tempdir().unwrap();
    let (data, api) = (folder.path().join("data"), BotApi::start());
    let first: NaiveDate = "2026-05-18".parse().unwrap();
    let clock = Clock::at(folder.path(), "2026-05-18T06:00");
    let mut settings = clock.settings();
    settings[1].1 = "off".into();
    let serving = claimed_with(&data, &api, &Clock::borrowed(&settings));
    invited(&api, "meera", "Meera", MEERA);
    invited(&api, "ravi", "Ravi", RAVI);
    let mut bot =
        Killed { api: &api, data: &data, settings, serving: Some(serving), random: 20_260_518, kills: Vec::new() };
    let (days, mut twice) = (rounds.div_ceil(A_DAY), 0);
    for number in 0..days {
        let date = first.checked_add_days(Days::new(number)).unwrap();
        clock.jump(&format!("{date}T08:00"));
        api.dated(&format!("{date}T08:00:00+05:30"));
        let day = date.format("%a %-d %b").to_string();
        let offer = round(&mut bot, &day);
        twice += note(&mut bot, &offer, &day);
        shown_before_kept(&mut bot, number);
        let file = data.join("look.toml").display().to_string();
        stdout(&data, &["export", &file]);
        let garden = std::fs::read_to_string(&file).unwrap();
        let on = format!("on = \"{date}");
        for bed in ["chilli-pot", "east-box", "mint-basket", "sprout-tray", "tomato-bag"] {
            let bed = format!("bed = \"roof-12/{bed}\"");
            let of = |table: &str, what: &str| records(&garden, table, &[&bed, what, &on]);
            let found = (of("jobs_done", "job = \"water\""), of("jobs_done", "\"250 g\""), of("seen", "still-wet"));
            assert_eq!(found, (1, 1, 1), "watered, picked, still wet: {bed} {date}");
        }
        let kept = number as usize + 1;
        assert_eq!(records(&garden, "beds", &["balcony-5", "\"box"]), kept, "each box that was confirmed, once");
        assert_eq!(records(&garden, "sites", &["name = \"Terrace of "]), kept, "each place that was confirmed, once");
    }
    println!("{} kills in {days} days of taps; none lost, none noted twice; {twice} notes sent twice", bot.kills.len());
    assert_eq!(bot.serving.take().map(|serving| serving.stop().0), Some(Some(0)));
    api.nothing_wrong();
}
