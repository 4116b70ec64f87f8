//! The crew's work by message, without any channel: rights, cards, rounds.

use super::Reception;
use super::arrival::{Arrival, What};
use super::button::{Button, Does, token};
use super::letter::{Content, Label, Letter};
use super::round::{Round, State};
use super::tap::{Act, DraftStep, NoteStep, Step, Tap};
use super::tests::{arrival, crew, moment, morning};
use crate::garden::{
    Bed, BedId, BedKind, Change, JobDone, JobKind, Measure, Person, PersonId, Planting, SeenKind, Shape, SiteId, Slip,
    Start, Store, When,
};
use chrono::{DateTime, FixedOffset, TimeDelta, Utc};
use std::sync::Arc;

pub const OWNER: i64 = 1;
pub const RAVI: i64 = 2;
pub const MEERA: i64 = 3;
pub const FARID: i64 = 4;
pub const STRANGER: i64 = 9;

/// The crew of the other tests, with a box of spinach on each roof.
pub struct Garden {
    pub store: Arc<dyn Store>,
    pub reception: Reception,
    number: u32,
    pub now: DateTime<FixedOffset>,
}

/// What a chat got: its text and buttons.
#[derive(Debug, Clone)]
pub struct Got {
    pub chat: i64,
    pub text: String,
    pub buttons: Vec<Label>,
    pub edits: bool,
}

impl Garden {
    pub fn new() -> Self {
        let (store, reception) = crew();
        let mut changes = Vec::new();
        for id in ["a/box", "b/box"] {
            let feet = |text| Measure::read(text).unwrap();
            let shape = Shape::Box { length: feet("4 ft"), width: feet("3 ft"), depth: feet("1 ft") };
            let id = BedId::new(id).unwrap();
            changes.push(Change::put(Bed {
                names: vec!["green box".into()],
                ..Bed::bare(id.clone(), BedKind::Box, shape)
            }));
            let start = Start::Sown("2026-04-20".parse().unwrap());
            let crop = "amaranth".to_owned();
            let on = When::Day("2026-05-01".parse().unwrap());
            let fed = JobDone { bed: id.clone(), job: JobKind::Feed, on, what: None, amount: None };
            changes.push(Change::put(fed));
            changes.push(Change::put(Planting { bed: id, crop, microgreen: false, start, plants: None }));
        }
        store.write(changes).unwrap();
        Self { store, reception, number: 100, now: morning() }
    }

    pub fn arrives(&mut self, chat: i64, what: What) -> Vec<Got> {
        self.number += 1;
        let pressed = matches!(what, What::Pressed { .. });
        let mut arrived: Arrival = arrival(self.number, chat, what);
        arrived.at = self.now.with_timezone(&Utc);
        if pressed {
            // As the platform has it: the message is the one the button stands in, and there is no time.
            (arrived.at, arrived.message) = (DateTime::UNIX_EPOCH, 50);
        }
        self.reception.answer(&arrived, self.now).unwrap();
        let letters = Letter::all(self.store.as_ref()).unwrap();
        let got = letters.iter().filter_map(|letter| match &letter.content {
            Content::Text { text, buttons, .. } => {
                Some(Got { chat: letter.chat, text: text.clone(), buttons: buttons.clone(), edits: false })
            }
            Content::Edit { text, buttons, .. } => {
                Some(Got { chat: letter.chat, text: text.clone(), buttons: buttons.clone(), edits: true })
            }
            _ => None,
        });
        let got = got.collect();
        let sent: Vec<_> = letters.iter().cloned().map(|letter| (letter, None)).collect();
        self.reception.sent(&sent, self.now.with_timezone(&Utc)).unwrap();
        got
    }

    pub fn says(&mut self, chat: i64, text: &str) -> Vec<Got> {
        self.arrives(chat, What::Text(text.into()))
    }

    #[track_caller]
    pub fn says_one(&mut self, chat: i64, text: &str) -> Got {
        let all = self.says(chat, text);
        all.first().cloned().unwrap_or_else(|| panic!("nothing was said to \"{text}\""))
    }

    #[track_caller]
    pub fn presses(&mut self, chat: i64, under: &Got, says: &str) -> Vec<Got> {
        let label = under.buttons.iter().find(|label| label.text == says);
        let token = label.unwrap_or_else(|| panic!("no \"{says}\" under {under:?}")).token.clone();
        self.arrives(chat, What::Pressed { query: "q".into(), token })
    }

    #[track_caller]
    pub fn presses_one(&mut self, chat: i64, under: &Got, says: &str) -> Got {
        self.presses(chat, under, says).first().cloned().unwrap()
    }

    /// A press of a button that this chat was never offered, its slip put into the store by hand.
    pub fn forges(&mut self, chat: i64, tap: Tap) -> Vec<Got> {
        let made = self.now.with_timezone(&Utc);
        let button = Button { token: token().unwrap(), chat, owner: chat, made, does: Does::Crew(tap) };
        self.store.write(vec![button.put().unwrap()]).unwrap();
        // A stranger has twenty an hour.
        self.now += TimeDelta::minutes(if chat == STRANGER { 4 } else { 0 });
        self.arrives(chat, What::Pressed { query: "q".into(), token: button.token })
    }

    pub fn records(&self) -> usize {
        let whole = self.store.whole().unwrap();
        whole.jobs.len() + whole.seen.len() + whole.beds.len() + whole.sites.len()
    }

    pub fn person(&self, id: &str) -> Person {
        self.store.person(&PersonId::new(id).unwrap()).unwrap().unwrap()
    }
}

pub fn bed(id: &str) -> BedId {
    BedId::new(id).unwrap()
}

pub fn roof(id: &str) -> SiteId {
    SiteId::new(id).unwrap()
}

#[test]
fn every_role_and_every_command_of_the_crew() {
    let mut garden = Garden::new();
    for (chat, crew, owner) in
        [(OWNER, true, true), (RAVI, true, false), (MEERA, false, false), (STRANGER, false, false)]
    {
        for command in ["/round", "/note", "/newsite", "/codes a", "/newcode a/box"] {
            let got = garden.says_one(chat, command).text;
            assert_eq!(got.contains("Only the crew"), !crew, "{chat} {command}: {got}");
        }
        let got = garden.says_one(chat, "/visits").text;
        assert_eq!(got.contains("Only the owner"), !owner, "{chat}: {got}");
        // Without a command whoever has no right is answered as before.
        let got = garden.says_one(chat, "round").text;
        assert_eq!(got.contains("Round for"), crew, "{chat}: {got}");
        let got = garden.says_one(chat, "visits this week").text;
        assert_eq!(got.contains("Visits,"), owner, "{chat}: {got}");
    }
    for (chat, command) in [(RAVI, "/codes b"), (RAVI, "/newcode b/box"), (RAVI, "/codes nowhere")] {
        let got = garden.says_one(chat, command).text;
        assert!(
            got.contains("Roofs: a") && !got.contains("a, b"),
            "what she may not see is as what is not there: {got}"
        );
    }
    let plan = garden.says_one(RAVI, "/round").text;
    assert!(plan.contains("1. a:") && !plan.contains("2."), "{plan}");
    let plan = garden.says_one(OWNER, "/round").text;
    assert!(plan.contains("1. a:") && plan.contains("2. b:"), "{plan}");
}

/// Ids of another client put into buttons by hand: refused whatever they do, and nothing is recorded.
#[test]
fn forged_buttons_do_nothing() {
    let mut garden = Garden::new();
    let acts = || {
        vec![
            Act::Done { job: JobKind::Water, what: None },
            Act::All,
            Act::Saw(SeenKind::StillWet),
            Act::Pick,
            Act::Weigh { crop: None },
            Act::Picked { crop: Some("amaranth".into()), grams: Some(100.0) },
            Act::TypeWeight { crop: None },
            Act::TakeBack,
            Act::Card,
        ]
    };
    let before = garden.records();
    for chat in [MEERA, RAVI, STRANGER] {
        for act in acts() {
            let got = garden.forges(chat, Tap::Bed { bed: bed("b/box"), act: act.clone() });
            assert!(got[0].text.contains("don't look after that bed"), "{chat} {act:?}: {got:?}");
        }
        let got = garden.forges(chat, Tap::Bed { bed: bed("b/none"), act: Act::Card });
        assert!(got[0].text.contains("don't look after that bed"), "a bed that is not there is told alike: {got:?}");
    }
    let steps = || {
        let start = Step::From { latitude_deg: 21.0, longitude_deg: 79.0 };
        let (go, leave) = (Step::Go(bed("a/box")), Step::LeaveSite(roof("a")));
        let more = [Step::AskStart, Step::AsGiven, Step::Next, Step::Skip, Step::Others, Step::End, Step::Anew];
        [Step::Begin, start, go, leave].into_iter().chain(more)
    };
    for chat in [MEERA, STRANGER] {
        for step in steps() {
            let got = garden.forges(chat, Tap::Round(step.clone()));
            assert!(got[0].text.contains("Only the crew"), "{chat} {step:?}: {got:?}");
        }
        let got = garden.forges(chat, Tap::NewSite { position: None });
        assert!(got[0].text.contains("Only the crew"), "{got:?}");
    }
    // A bed of another roof in a gardener's own round is not gone to.
    let plan = garden.says_one(RAVI, "/round");
    garden.presses(RAVI, &plan, "begin");
    let got = garden.forges(RAVI, Tap::Round(Step::Go(bed("b/box"))));
    assert!(got[0].text.contains("A, green box"), "{got:?}");
    // Another chat's draft and note.
    let draft = garden.says(RAVI, "new box, 4 by 3 ft, a foot deep");
    assert!(draft[0].text.contains("Understood"), "{draft:?}");
    let key = super::draft::Draft::all(garden.store.as_ref()).unwrap()[0].key.clone();
    for chat in [OWNER, MEERA, FARID, STRANGER] {
        let got = garden.forges(chat, Tap::Draft { draft: key.clone(), step: DraftStep::Keep });
        assert!(got[0].text.contains("no longer good"), "{chat}: {got:?}");
        let got = garden.forges(chat, Tap::Note { note: "abc".into(), step: NoteStep::Send });
        assert!(got[0].text.contains("no longer there"), "{chat}: {got:?}");
    }
    assert_eq!(garden.records(), before, "nothing was recorded by any of it");
}

#[test]
fn a_right_that_was_taken_away_is_asked_for_again() {
    let mut garden = Garden::new();
    let plan = garden.says_one(RAVI, "/round");
    let card = garden.presses_one(RAVI, &plan, "begin");
    let ravi = Person { sites: Vec::new(), ..garden.person("ravi") };
    garden.store.write(vec![Change::put(ravi)]).unwrap();
    let before = garden.records();
    let got = garden.presses(RAVI, &card, "watered");
    assert!(got[0].text.contains("don't look after that bed"), "{got:?}");
    assert_eq!(garden.records(), before);
}

#[test]
fn a_card_records_shows_and_takes_back() {
    let mut garden = Garden::new();
    let plan = garden.says_one(RAVI, "aaj ka round");
    let card = garden.presses_one(RAVI, &plan, "begin");
    assert!(card.edits && card.text.contains("Round, bed 1 of 1") && card.text.contains(" L each"), "{card:?}");
    let watered = garden.presses_one(RAVI, &card, "watered");
    assert!(watered.edits && watered.text.contains("Noted today: watered"), "{watered:?}");
    assert!(!watered.buttons.iter().any(|label| label.text == "watered"), "not twice within the hour");
    assert!(
        garden.presses(RAVI, &card, "still wet").is_empty(),
        "a press on what has changed meanwhile is passed over"
    );
    let wet = garden.presses_one(RAVI, &watered, "still wet");
    assert!(wet.text.contains("still wet"), "{wet:?}");
    let back = garden.presses_one(RAVI, &wet, "take back");
    assert!(!back.text.contains("still wet") && back.text.contains("watered"), "{back:?}");
    let ask = garden.presses_one(RAVI, &back, "picked");
    assert!(ask.text.contains("How much Amaranth"), "{ask:?}");
    let picked = garden.presses_one(RAVI, &ask, "250 g");
    assert!(picked.text.contains("picked amaranth, 250 g"), "{picked:?}");
    let ask = garden.presses_one(RAVI, &picked, "picked");
    let typed = garden.presses_one(RAVI, &ask, "type it");
    assert!(typed.text.contains("like 350 g"), "{typed:?}");
    let card = garden.says_one(RAVI, "dedh kilo");
    assert!(!card.edits && card.text.contains("1.5 kg"), "{card:?}");
    let jobs = garden.store.jobs_of_bed(&bed("a/box")).unwrap();
    let picked: Vec<f64> = jobs.iter().filter_map(|job| job.amount?.mass()).map(|mass| mass.as_kilograms()).collect();
    assert_eq!(picked.iter().sum::<f64>(), 1.75, "{jobs:?}");
    let today = jobs.iter().filter(|job| job.on.date() == morning().date_naive());
    assert_eq!(today.count(), jobs.len() - 1, "all but the feed of before: a press carries no time: now counts");
    // A number alone: many are grams, few are asked after; words that are no weight are a message of their own.
    let ask = garden.presses_one(RAVI, &card, "picked");
    garden.presses(RAVI, &ask, "type it");
    let unit = garden.says_one(RAVI, "2");
    let card = garden.presses_one(RAVI, &unit, "2 kg");
    assert!(card.text.contains("2 kg"), "{card:?}");
    let ask = garden.presses_one(RAVI, &card, "picked");
    garden.presses(RAVI, &ask, "type it");
    assert!(garden.says_one(RAVI, "how much water for the green box").text.contains("each"), "answered as ever");
    let card = garden.says_one(RAVI, "/round");
    let ask = garden.presses_one(RAVI, &card, "picked");
    garden.presses(RAVI, &ask, "type it");
    assert!(garden.says_one(RAVI, "900 kg").text.contains("can't be right"));
}

#[test]
fn a_round_goes_by_way_or_as_given_and_stands_where_it_was() {
    let mut garden = Garden::new();
    let far = garden.store.site(&roof("b")).unwrap().unwrap();
    let third = crate::garden::Site { id: roof("c"), name: "c".into(), latitude_deg: 21.12, ..far.clone() };
    let far = crate::garden::Site { latitude_deg: 21.3, ..far };
    let box_c = Bed { id: bed("c/box"), ..garden.store.bed(&bed("a/box")).unwrap().unwrap() };
    garden.store.write(vec![Change::put(far), Change::put(third), Change::put(box_c)]).unwrap();
    let order = |text: &str| {
        let lines = text.lines().filter(|line| line.starts_with(|first: char| first.is_ascii_digit()));
        lines.filter_map(|line| line.split([' ', ':']).nth(1).map(str::to_owned)).collect::<Vec<_>>()
    };
    let plan = garden.says_one(OWNER, "/round");
    assert_eq!(order(&plan.text), ["a", "c", "b"], "the nearest each time from the first: {}", plan.text);
    let given = garden.presses_one(OWNER, &plan, "in the order of my list");
    assert_eq!(order(&given.text), ["a", "b", "c"], "{}", given.text);
    let named = garden.says_one(OWNER, "round: b, then a");
    assert_eq!(order(&named.text), ["b", "a"], "{}", named.text);
    let plan = garden.says_one(OWNER, "/round");
    let asked = garden.presses_one(OWNER, &plan, "start where I am");
    assert!(asked.text.contains("Send me where you are"), "{asked:?}");
    let plan = garden.arrives(OWNER, What::Place { latitude_deg: 21.31, longitude_deg: 79.0 }).remove(0);
    assert_eq!(order(&plan.text), ["b", "c", "a"], "{}", plan.text);
    let card = garden.presses_one(OWNER, &plan, "begin");
    let card = garden.presses_one(OWNER, &card, "next bed");
    assert!(card.text.contains("bed 2 of 3"), "{card:?}");
    // Another reception over the same store: nothing of a round is in memory.
    garden.reception = Reception::open(super::tests::house(), garden.store.clone()).unwrap();
    let card = garden.says_one(OWNER, "round");
    assert!(card.text.contains("bed 2 of 3") && card.text.contains("\nC, green box"), "{card:?}");
    let last = garden.presses_one(OWNER, &card, "skip");
    let over = garden.presses_one(OWNER, &last, "next bed");
    assert!(over.text.contains("2 roofs, 2 beds") && over.text.contains("Left out: green box"), "{over:?}");
    let round = Round::find(garden.store.as_ref(), "owner").unwrap().unwrap();
    assert_eq!((round.state, round.walked.len(), round.left_out.len()), (State::Over, 2, 1));
    assert!(garden.says_one(OWNER, "/round").text.contains("Today's round is over"));
    garden.now = moment("2026-05-19T08:00:00+05:30");
    assert!(garden.says_one(OWNER, "/round").text.contains("Round for"), "a new day, a new round");
}
