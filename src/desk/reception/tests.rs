//! The reception, without any channel.

use super::Reception;
use super::arrival::{Arrival, What};
use super::card::Card;
use super::letter::{self, Content, Follow, Letter, Sent};
use super::menu::menu;
use crate::desk::house::House;
use crate::garden::{Change, Kind, Overlay, Person, PersonId, Role, Site, SiteId, Slip, Store};
use crate::knowledge::Files;
use crate::script::Language;
use chrono::{DateTime, FixedOffset, TimeDelta, Utc};
use std::collections::BTreeSet;
use std::sync::{Arc, OnceLock};

pub fn house() -> Arc<House> {
    static HOUSE: OnceLock<Arc<House>> = OnceLock::new();
    HOUSE.get_or_init(|| Arc::new(House::open(&Files::embedded()).unwrap())).clone()
}

pub fn moment(text: &str) -> DateTime<FixedOffset> {
    text.parse().unwrap()
}

pub fn morning() -> DateTime<FixedOffset> {
    moment("2026-05-18T08:00:00+05:30")
}

pub fn site(id: &str) -> Site {
    let garden = format!(
        "[[sites]]\nid = \"{id}\"\nname = \"{id}\"\nlatitude = 21.1\nlongitude = 79.0\nelevation_m = 310\ntimezone = \"Asia/Kolkata\"\n"
    );
    let (crops, mixes, materials) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    let ids = crate::garden::KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let mut read = crate::garden::read_garden("x", &garden, &ids, &crate::garden::Garden::default()).unwrap();
    read.sites.pop().unwrap()
}

pub fn person(id: &str, role: Role, sites: &[&str]) -> Person {
    let sites = sites.iter().map(|id| SiteId::new(id).unwrap()).collect();
    Person { id: PersonId::new(id).unwrap(), name: id.into(), role, sites, speaks: None }
}

pub fn card(chat: i64, id: &str) -> Card {
    let (person, since) = (PersonId::new(id).unwrap(), morning().with_timezone(&Utc));
    Card { chat, person, language: Language::En, since, blocked: false }
}

/// Owner 1, gardener 2 of roof "a", client 3 of "a", client 4 of "b".
pub fn crew() -> (Arc<dyn Store>, Reception) {
    let store: Arc<dyn Store> = Arc::new(Overlay::in_memory());
    let mut changes = vec![Change::put(site("a")), Change::put(site("b"))];
    let people = [
        (1, person("owner", Role::Owner, &[])),
        (2, person("ravi", Role::Gardener, &["a"])),
        (3, person("meera", Role::Client, &["a"])),
        (4, person("farid", Role::Client, &["b"])),
    ];
    for (chat, person) in people {
        changes.push(card(chat, person.id.as_str()).put().unwrap());
        changes.push(Change::put(person));
    }
    store.write(changes).unwrap();
    let reception = Reception::open(house(), store.clone()).unwrap();
    (store, reception)
}

pub fn arrival(number: u32, chat: i64, what: What) -> Arrival {
    Arrival {
        number,
        chat,
        group: false,
        addressed: true,
        from: chat,
        name: "Someone".into(),
        language: None,
        message: i32::try_from(number).unwrap(),
        reply_to: None,
        edited: false,
        at: morning().with_timezone(&Utc),
        what,
    }
}

pub fn letters(store: &dyn Store) -> Vec<(i64, String)> {
    let text = |letter: Letter| match letter.content {
        Content::Text { text, .. } => (letter.chat, text),
        other => (letter.chat, format!("{other:?}")),
    };
    Letter::all(store).unwrap().into_iter().map(text).collect()
}

/// What a chat is told for a text; the letters are taken away afterwards.
pub fn told(store: &dyn Store, reception: &Reception, number: u32, chat: i64, text: &str) -> Vec<(i64, String)> {
    reception.answer(&arrival(number, chat, What::Text(text.into())), morning()).unwrap();
    let told = letters(store);
    for letter in Letter::all(store).unwrap() {
        reception.sent(&[(letter.clone(), None)], morning().with_timezone(&Utc)).unwrap();
    }
    told
}

#[test]
fn filed_once_answered_once() {
    let (store, reception) = crew();
    let now = morning().with_timezone(&Utc);
    let help = || arrival(9, 3, What::Text("/help".into()));
    assert_eq!(reception.take_in(vec![help(), arrival(8, 3, What::Other)], now).unwrap(), 2);
    assert_eq!(reception.take_in(vec![help()], now).unwrap(), 0, "brought again before it was answered");
    assert_eq!(reception.next_few().unwrap().remove(0).number, 8, "in the order of their numbers");
    reception.answer(&reception.next_few().unwrap().remove(0), morning()).unwrap();
    reception.answer(&reception.next_few().unwrap().remove(0), morning()).unwrap();
    assert!(reception.next_few().unwrap().is_empty());
    assert_eq!(reception.take_in(vec![help()], now).unwrap(), 0, "brought again afterwards");
    assert_eq!(letters(store.as_ref()).len(), 1);
    assert!(!format!("{:?}", store.drawer("updates").unwrap()).contains("/help"), "the words do not stay");
    reception.sweep(now + TimeDelta::days(3)).unwrap();
    assert!(store.drawer("updates").unwrap().is_empty());
}

/// The nightly work takes away what is past its day, and nothing that is not: a marked answer after a week, a question
/// to the crew after a month, a conversation after a day, a letter that failed after a week.
#[test]
fn what_is_past_its_day_is_swept() {
    let (store, reception) = crew();
    let now = morning().with_timezone(&Utc);
    let said = |number: u32, text: &str| {
        let mut arrival = arrival(number, 3, What::Text(text.into()));
        arrival.at = now;
        reception.take_in(vec![arrival.clone()], now).unwrap();
        reception.answer(&arrival, morning()).unwrap();
    };
    said(1, "how much water for the east box");
    said(2, "please let me talk to a person");
    let mut number = 100;
    for letter in Letter::all(store.as_ref()).unwrap() {
        number += 1;
        reception.sent(&[(letter, Some(number))], now).unwrap();
    }
    said(3, "how much water for the mint basket");
    let letter = Letter::all(store.as_ref()).unwrap().remove(0);
    reception.refused(letter).unwrap();
    let seen =
        Letter { content: Content::Seen { query: "q".into() }, ..Letter::all(store.as_ref()).unwrap().remove(0) };
    let seen = Letter { id: seen.id + 1, state: letter::State::Waiting, ..seen };
    reception.write(&mut reception.memory(), vec![seen.put().unwrap()]).unwrap();
    reception.refused(seen).unwrap();
    let count = |drawer: &str| store.drawer(drawer).unwrap().len();
    let talks = || store.records(Kind::Conversation, "").unwrap().len();
    assert_eq!(count("outbox"), 1, "the glow of a button that failed is not kept");
    let (marks, questions) = (count("sent"), store.questions().unwrap().len());
    assert!(marks >= 2 && questions == 1 && talks() == 1, "{marks} {questions} {}", talks());
    reception.sweep(now + TimeDelta::hours(23)).unwrap();
    assert_eq!((count("sent"), talks(), count("updates")), (marks, 1, 3));
    reception.sweep(now + TimeDelta::hours(25)).unwrap();
    assert_eq!((count("sent"), talks(), count("updates")), (marks, 0, 3));
    reception.sweep(now + TimeDelta::days(8)).unwrap();
    let questions_alone = Sent::all(store.as_ref()).unwrap();
    assert!(!questions_alone.is_empty() && questions_alone.len() < marks, "{questions_alone:?}");
    assert!(questions_alone.iter().all(|sent| matches!(sent.follow, Follow::Question(_))));
    assert_eq!((count("updates"), count("outbox"), count("buttons")), (0, 0, 0));
    assert_eq!(store.questions().unwrap().len(), questions, "what waits for the crew waits");
    reception.sweep(now + TimeDelta::days(31)).unwrap();
    assert_eq!(count("sent"), 0);
}

#[test]
fn a_claim_is_made_once_and_works_once() {
    let store: Arc<dyn Store> = Arc::new(Overlay::in_memory());
    let reception = Reception::open(house(), store.clone()).unwrap();
    let now = morning().with_timezone(&Utc);
    let claims = reception.claims(now, false).unwrap();
    assert_eq!(claims.len(), 1);
    assert_ne!(reception.claims(now, false).unwrap(), claims, "another start has another code: none is kept");
    let got = told(store.as_ref(), &reception, 9, 7, &format!("/start {}", claims[0].code));
    assert!(got[0].1.contains("not valid"), "the code of the start before is good no more: {got:?}");
    let code = reception.claims(now, false).unwrap()[0].code.clone();
    let got = told(store.as_ref(), &reception, 1, 7, &format!("/start {code}"));
    assert!(got[0].1.contains("linked as Someone (owner)"), "{got:?}");
    assert!(got[1].1.contains("invite") && got[1].1.contains("people"), "an owner's menu: {got:?}");
    let got = told(store.as_ref(), &reception, 2, 8, &format!("/start {code}"));
    assert!(got[0].1.contains("not valid"), "{got:?}");
    assert!(reception.claims(now, false).unwrap().is_empty(), "claimed");
    let anew = reception.claims(now, true).unwrap();
    let got = told(store.as_ref(), &reception, 3, 9, &format!("/start {}", anew[0].code));
    assert!(got[0].1.contains("linked as Someone (owner)"), "the owner's new chat: {got:?}");
    let got = told(store.as_ref(), &reception, 4, 7, "/people");
    assert!(got[0].1.contains("Only the owner"), "the old chat is a stranger's: {got:?}");
    assert!(!format!("{:?}", store.whole().unwrap()).contains(&code), "no code is kept");
}

#[test]
fn commands_by_role() {
    let (store, reception) = crew();
    let mut number = 10;
    let mut first = |chat: i64, text: &str| {
        number += 1;
        told(store.as_ref(), &reception, number, chat, text)[0].1.clone()
    };
    for (chat, refused) in [(1, false), (2, true), (3, true), (9, true)] {
        for command in ["/invite client Nila a", "/people", "/remove nobody"] {
            assert_eq!(first(chat, command).contains("Only the owner"), refused, "{chat} {command}");
        }
        assert_eq!(first(chat, "/questions").contains("Only the crew"), chat == 3 || chat == 9, "{chat}");
        for command in ["/me", "/forget", "/export", "/language en"] {
            assert_eq!(first(chat, command).contains("don't know you"), chat == 9, "{chat} {command}");
        }
    }
    assert!(first(1, "/invite client Nila roof-99").contains("no roof \"roof-99\". There are: a, b"));
    assert!(first(1, "/invite client Nila").contains("Write: /invite"));
    assert!(first(1, "/invite owner Nila a").contains("Write: /invite"), "an owner is not made this way");
    assert!(first(1, "/invite nila").contains("no person \"nila\""));
    assert!(first(1, "/invite gardener Nila Devi a b").contains("Code for Nila Devi (gardener)"));
    assert!(first(1, "/remove farid").contains("farid is removed"));
    assert!(first(4, "/me").contains("don't know you"));
    assert!(first(1, "/remove owner").contains("no person"), "nobody removes themselves by mistake");
    let words = |role| menu(&house(), role, Language::Hi).into_iter().map(|(word, _)| word).collect::<Vec<_>>();
    assert_eq!(words(None), ["help"]);
    assert_eq!(words(Some(Role::Client)), ["help", "language", "me", "export", "forget"]);
    assert!(words(Some(Role::Owner)).contains(&"invite".into()));
}

#[test]
fn a_question_goes_to_those_who_may_answer_it() {
    let (store, reception) = crew();
    let chats = |told: &[(i64, String)]| told.iter().map(|(chat, _)| *chat).collect::<Vec<_>>();
    let ask = "please let me talk to a person";
    assert_eq!(chats(&told(store.as_ref(), &reception, 1, 3, ask)), [3, 1, 2], "the owner and the roof's gardener");
    assert_eq!(chats(&told(store.as_ref(), &reception, 2, 4, ask)), [4, 1], "no gardener looks after b");
    assert_eq!(chats(&told(store.as_ref(), &reception, 3, 9, ask)), [9, 1], "a stranger's is the owner's");
    assert_eq!(chats(&told(store.as_ref(), &reception, 4, 1, ask)), [1,], "nobody asks herself");
    let list = told(store.as_ref(), &reception, 5, 2, "/questions");
    assert_eq!(list[0].1.matches(ask).count(), 1, "a gardener sees what she may answer: {list:?}");
    assert!(list[0].1.contains("meera"));
}

#[test]
fn a_stranger_leaves_nothing_but_a_question_and_may_take_it_back() {
    let (store, reception) = crew();
    told(store.as_ref(), &reception, 1, 9, "how much water does okra need");
    assert!(!format!("{:?}", store.whole().unwrap()).contains("okra"), "nothing of it stays");
    told(store.as_ref(), &reception, 2, 9, "please let me talk to a person");
    assert_eq!(store.questions().unwrap().len(), 1);
    let kept = told(store.as_ref(), &reception, 3, 9, "/me");
    assert!(kept[0].1.contains("wait for the crew: 1"), "{kept:?}");
    let gone = told(store.as_ref(), &reception, 4, 9, "forget me");
    assert!(gone[0].1.contains("no longer know you"), "{gone:?}");
    let whole = store.whole().unwrap();
    assert!(whole.questions.is_empty());
    assert!(whole.filed.iter().all(|slip| slip.drawer == "updates" || slip.drawer == "chats"), "{:?}", whole.filed);
}

#[test]
fn what_could_not_be_worked_on_is_set_aside() {
    let (store, reception) = crew();
    reception.take_in(vec![arrival(5, 3, What::Text("x".into()))], morning().with_timezone(&Utc)).unwrap();
    reception.set_aside(&reception.next_few().unwrap().remove(0), morning()).unwrap();
    assert!(reception.next_few().unwrap().is_empty());
    assert!(letters(store.as_ref())[0].1.contains("could not work on"));
}

#[test]
fn a_letter_waits_its_turn_and_a_closed_chat_has_none() {
    let (store, reception) = crew();
    let now = morning().with_timezone(&Utc);
    for (number, chat) in [(1, 3), (2, 3), (3, 4)] {
        reception.answer(&arrival(number, chat, What::Text("/help".into())), morning()).unwrap();
    }
    let due = |busy: &[i64], at| {
        let outbox = reception.outbox(at, &busy.iter().copied().collect()).unwrap();
        (outbox.due.iter().map(|letter| letter.id).collect::<Vec<_>>(), outbox.look_again)
    };
    assert_eq!(due(&[], now), (vec![1, 3], None), "the first of each chat");
    assert_eq!(due(&[3], now).0, [3]);
    let first = Letter::all(store.as_ref()).unwrap().remove(0);
    reception.put_off(first, Some(TimeDelta::seconds(30)), now).unwrap();
    assert_eq!(due(&[], now), (vec![3], Some(now + TimeDelta::seconds(30))), "the second does not overtake");
    assert_eq!(due(&[], now + TimeDelta::seconds(30)).0, [1, 3]);
    reception.shut_out(3).unwrap();
    assert_eq!(due(&[], now + TimeDelta::seconds(30)).0, [3]);
    assert!(Card::of_chat(store.as_ref(), 3).unwrap().unwrap().blocked);
    reception.answer(&arrival(4, 3, What::Text("/help".into())), morning()).unwrap();
    assert!(!Card::of_chat(store.as_ref(), 3).unwrap().unwrap().blocked, "who writes is back");
    let again = Reception::open(house(), store.clone()).unwrap();
    again.answer(&arrival(5, 3, What::Text("/help".into())), morning()).unwrap();
    let ids: Vec<u64> = Letter::all(store.as_ref()).unwrap().iter().map(|letter| letter.id).collect();
    assert_eq!(ids, [3, 4, 5], "numbers go on after a restart");
}

#[test]
fn a_long_answer_is_several_letters_in_order() {
    let (store, reception) = crew();
    let mut changes = Vec::new();
    for number in 0..200 {
        changes.push(Change::put(person(&format!("guest-of-the-house-number-{number}"), Role::Client, &["a"])));
    }
    store.write(changes).unwrap();
    let got = told(store.as_ref(), &reception, 1, 1, "/people");
    assert!(got.len() >= 2, "{}", got.len());
    assert!(got.iter().all(|(_, text)| text.encode_utf16().count() <= 4096 && text.ends_with("linked")));
}

#[test]
fn a_reply_goes_back_to_where_the_conversation_stood() {
    let (store, reception) = crew();
    let now = morning().with_timezone(&Utc);
    reception
        .answer(&arrival(1, 3, What::Text("what do I need for a 4 x 3 ft box, 1 ft deep?".into())), morning())
        .unwrap();
    let letter = Letter::all(store.as_ref()).unwrap().remove(0);
    assert!(letter.follow.is_some());
    reception.sent(&[(letter.clone(), Some(77))], now).unwrap();
    told(store.as_ref(), &reception, 2, 3, "when can I sow okra");
    let mut why = arrival(3, 3, What::Text("why?".into()));
    why.reply_to = Some(77);
    reception.answer(&why, morning()).unwrap();
    let got = letters(store.as_ref()).pop().unwrap().1;
    assert!(!got.to_lowercase().contains("okra"), "the box is explained, not the sowing: {got}");
}
