//! What the crew tells and is told, without any channel: notes, visits, labels, new sites and beds.

use super::arrival::What;
use super::crew_tests::{FARID, Garden, MEERA, OWNER, RAVI, STRANGER, bed, roof};
use super::label::{bed_codes, revoke_code};
use super::menu::menu;
use super::tap::{Act, Tap};
use super::tests::{house, moment, morning};
use super::visit::Visit;
use crate::garden::{Change, JobDone, JobKind, Person, Role, When};
use crate::script::Language;
use chrono::Utc;

#[test]
fn a_note_goes_to_each_client_when_the_gardener_says_so() {
    let mut garden = Garden::new();
    let plan = garden.says_one(RAVI, "/round");
    let card = garden.presses_one(RAVI, &plan, "begin");
    let card = garden.presses_one(RAVI, &card, "watered");
    let card = garden.presses_one(RAVI, &card, "dry too early");
    let end = garden.presses(RAVI, &card, "next bed");
    assert!(end[0].text.contains("The round is over"), "{end:?}");
    let offer = &end[1];
    assert_eq!(end.len(), 2, "only she has this roof: {end:?}");
    for part in
        ["This would go to meera", "Ravi was at a", "Done: watered (green box)", "Found: dry too early", "Until"]
    {
        assert!(offer.text.contains(part), "{part}: {}", offer.text);
    }
    assert!(offer.text.contains(" L each"), "what she does until then: {}", offer.text);
    // Changed, shown again, sent.
    garden.presses(RAVI, offer, "change");
    let changed = garden.says_one(RAVI, "All is well, water as before.");
    assert!(changed.text.contains("This would go to meera") && changed.text.contains("All is well"), "{changed:?}");
    let sent = garden.presses(RAVI, &changed, "send");
    assert_eq!((sent[0].chat, sent[0].text.as_str()), (MEERA, "All is well, water as before."));
    assert!(sent[1].text.contains("has gone to meera"), "{sent:?}");
    assert!(garden.presses_one(RAVI, offer, "send").text.contains("no longer there"), "once");
    let visit = Visit::of(garden.store.as_ref(), &roof("a"), morning().date_naive()).unwrap().unwrap();
    assert_eq!((visit.by.len(), visit.work.len(), visit.noted.len()), (1, 2, 1));
    // A second round of the day offers it no more.
    let over = garden.says_one(RAVI, "/round");
    let plan = garden.presses_one(RAVI, &over, "start anew");
    let card = garden.presses_one(RAVI, &plan, "begin");
    assert_eq!(garden.presses(RAVI, &card, "next bed").len(), 1);
}

#[test]
fn a_note_is_in_her_language_and_may_be_dropped() {
    let mut garden = Garden::new();
    let meera = Person { speaks: Some(crate::garden::Speaks::Hindi), ..garden.person("meera") };
    garden.store.write(vec![Change::put(meera)]).unwrap();
    let spray = JobDone {
        bed: bed("a/box"),
        job: JobKind::Spray,
        on: When::Day(morning().date_naive()),
        what: Some("neem-oil".into()),
        amount: None,
    };
    let plan = garden.says_one(RAVI, "/round");
    let card = garden.presses_one(RAVI, &plan, "begin");
    let tap = Tap::Bed { bed: spray.bed.clone(), act: Act::Done { job: spray.job, what: spray.what.clone() } };
    let card_after = garden.forges(RAVI, tap).remove(0);
    assert!(card_after.text.contains("sprayed neem"), "{card:?} {card_after:?}");
    assert!(card_after.text.contains("Pick nothing from the green box before"), "{card_after:?}");
    let end = garden.presses(RAVI, &card_after, "end the round");
    let offer = end.last().unwrap().clone();
    assert!(offer.text.contains("किया:") && offer.text.contains("अगली बार आने तक"), "{}", offer.text);
    assert!(offer.text.contains("कुछ न तोड़ें"), "the wait is told: {}", offer.text);
    let dropped = garden.presses(RAVI, &offer, "do not send");
    assert!(dropped.len() == 1 && dropped[0].chat == RAVI, "{dropped:?}");
}

#[test]
fn the_owner_sees_visits_made_and_missed() {
    let mut garden = Garden::new();
    let says = |garden: &mut Garden, at: &str, chat, text: &str| {
        garden.now = moment(at);
        garden.says_one(chat, text).text
    };
    // On the 19th Ravi feeds on a; b is nobody's: what is due there goes by.
    says(&mut garden, "2026-05-19T09:00:00+05:30", RAVI, "fed the green box");
    says(&mut garden, "2026-05-20T09:00:00+05:30", MEERA, "watered the green box");
    let got = says(&mut garden, "2026-05-24T18:00:00+05:30", OWNER, "visits this week");
    let line = |site: &str| got.lines().find(|line| line.starts_with(site)).unwrap_or_default().to_lowercase();
    assert!(line("A:").contains("tue 19 may ravi (one record)"), "{got}");
    assert!(!line("A:").contains("meera") && !line("A:").contains("wed 20"), "a client's work is no visit: {got}");
    assert!(line("B:").contains("missed since") && !line("B:").contains("ravi"), "{got}");
    // Whoever is forgotten is not named; what was done stays.
    let sure = garden.says_one(RAVI, "/forget");
    garden.presses(RAVI, &sure, "yes");
    let got = says(&mut garden, "2026-05-24T18:00:00+05:30", OWNER, "/visits");
    assert!(got.to_lowercase().contains("tue 19 may the crew") && !got.contains("ravi"), "{got}");
    assert!(!format!("{:?}", garden.store.drawer("visits").unwrap()).contains("ravi"));
}

#[test]
fn a_label_opens_its_bed_for_those_who_may_see_it() {
    let mut garden = Garden::new();
    let codes = bed_codes(garden.store.as_ref(), &roof("a"), garden.now.with_timezone(&Utc)).unwrap();
    let payload = codes[0].1.clone();
    for chat in [OWNER, RAVI, MEERA] {
        let card = garden.says_one(chat, &format!("/start {payload}"));
        assert!(card.text.contains("A, green box") && card.text.contains(" L each"), "{chat}: {card:?}");
        for says in ["watered", "still wet", "picked"] {
            assert!(card.buttons.iter().any(|label| label.text == says), "{chat} {says}: {card:?}");
        }
        assert!(!card.buttons.iter().any(|label| label.text == "next bed"), "no round: {card:?}");
        let why = garden.says_one(chat, "how much water does it need");
        assert!(why.text.contains("green box"), "the chat is on that bed: {why:?}");
    }
    // Another client, and a stranger, learn nothing: not even that the code is one.
    let other = |garden: &mut Garden, chat, payload: &str| garden.says_one(chat, &format!("/start {payload}")).text;
    let wrong = other(&mut garden, FARID, "bed-nothing");
    assert_eq!(other(&mut garden, FARID, &payload), wrong);
    assert!(wrong.contains("opens nothing"), "{wrong}");
    let wrong = other(&mut garden, STRANGER, "bed-nothing");
    assert_eq!(other(&mut garden, STRANGER, &payload), wrong);
    assert_eq!(wrong, garden.says_one(STRANGER, "/start").text, "what every stranger is told");
    for odd in ["bed-", "bed-|", "bed-../x", "bed-वन"] {
        assert!(other(&mut garden, MEERA, odd).contains("opens nothing"), "{odd}");
    }
    // A code that was taken back.
    assert!(garden.says_one(RAVI, "/newcode a/box").text.contains("opens nothing any more"));
    assert!(other(&mut garden, MEERA, &payload).contains("opens nothing"));
    let codes = garden.says_one(RAVI, "/codes a").text;
    assert!(codes.contains("green box (a/box)") && codes.contains("/start bed-"), "{codes}");
    assert!(revoke_code(garden.store.as_ref(), &bed("a/box")).unwrap());
}

#[test]
fn a_new_site_is_shown_kept_given_and_told() {
    let mut garden = Garden::new();
    let asked = garden.says_one(RAVI, "new site: Sharma ji's terrace");
    assert!(asked.text.contains("Where is Sharma ji's terrace"), "{asked:?}");
    let shown = garden.arrives(RAVI, What::Place { latitude_deg: 21.14, longitude_deg: 79.08 }).remove(0);
    for part in ["\"Sharma ji's terrace\"", "21.1400, 79.0800", "Nagpur", "Asia/Kolkata"] {
        assert!(shown.text.contains(part), "{part}: {shown:?}");
    }
    assert_eq!(garden.store.sites().unwrap().len(), 2, "not before it is confirmed");
    let kept = garden.presses(RAVI, &shown, "yes");
    assert!(kept[0].text.contains("sharma-ji-s-terrace"), "{kept:?}");
    assert_eq!((kept[1].chat, kept[1].text.contains("ravi has added a place: Sharma")), (OWNER, true), "{kept:?}");
    assert!(garden.person("ravi").sites.contains(&roof("sharma-ji-s-terrace")), "given to him");
    assert!(!garden.person("meera").sites.contains(&roof("sharma-ji-s-terrace")));
    // By taps, with a city for its place, in Hindi.
    let asked = garden.says_one(OWNER, "/newsite");
    assert!(asked.text.contains("called"), "{asked:?}");
    garden.says(OWNER, "Gupta ji ki chhat");
    let other = garden.says_one(OWNER, "how much water for the green box of a");
    assert!(other.text.contains("each"), "a question in between is answered: {other:?}");
    let shown = garden.says_one(OWNER, "नागपुर");
    assert!(shown.text.contains("Gupta ji ki chhat"), "{shown:?}");
    let again = garden.presses_one(OWNER, &shown, "change");
    assert!(again.text.contains("called") || again.text.contains("नाम"), "{again:?}");
    assert_eq!(garden.store.sites().unwrap().len(), 3);
    // Whoever may not is told so, or answered as ever.
    for chat in [MEERA, STRANGER] {
        let got = garden.says_one(chat, "new site: my terrace");
        assert!(!got.text.contains("Where is"), "{got:?}");
    }
    assert_eq!(garden.store.sites().unwrap().len(), 3);
}

#[test]
fn a_new_bed_at_a_clients_is_shown_before_it_is_kept() {
    let mut garden = Garden::new();
    let beds = |garden: &Garden, site: &str| garden.store.beds_of_site(&roof(site)).unwrap().len();
    let shown = garden.says_one(OWNER, "new box at Meera's, 4 by 3 ft, a foot deep, sun till two");
    for part in ["a new box at a", "4 × 3 × 1 ft", "8.4 h", "Is that right"] {
        assert!(shown.text.contains(part), "{part}: {shown:?}");
    }
    assert_eq!(beds(&garden, "a"), 1, "not before it is confirmed");
    let kept = garden.presses_one(OWNER, &shown, "yes");
    assert!(kept.edits && kept.text.contains("Kept: box 2 (a/box-2)"), "{kept:?}");
    let stored = garden.store.bed(&bed("a/box-2")).unwrap().unwrap();
    // The sun rises there at 05:34 on 18 May by `sun_times`, which `tests/published` holds against tables.
    assert_eq!(stored.sun_hours, Some(8.4));
    // In Hindi, by the gardener to whom the roof is given; a roof that is not is refused.
    let shown = garden.says_one(RAVI, "Meera ke yahan naya box, 4 by 3 ft, ek foot gehra, dhoop do baje tak");
    assert!(shown.text.contains("8.4"), "{shown:?}");
    let change = garden.presses_one(RAVI, &shown, "badlein");
    assert!(change.edits || !change.text.is_empty());
    let refused = garden.says(RAVI, "new box at Farid's, 4 by 3 ft, one foot deep");
    assert!(refused[0].buttons.is_empty() && refused[0].text.contains("don't look after"), "{refused:?}");
    let refused = garden.says(MEERA, "new box at Farid's, 4 by 3 ft, one foot deep");
    assert!(refused[0].buttons.is_empty(), "{refused:?}");
    assert_eq!((beds(&garden, "a"), beds(&garden, "b")), (2, 1));
    // Dropped.
    let shown = garden.says_one(MEERA, "new pot, 12 inch across, a foot deep");
    garden.presses(MEERA, &shown, "no");
    assert_eq!(beds(&garden, "a"), 2);
}

#[test]
fn the_menu_of_each_role_in_its_language() {
    let words = |role, language| {
        let menu = menu(&house(), Some(role), language);
        menu.into_iter().map(|(word, says)| format!("{word}: {says}")).collect::<Vec<_>>()
    };
    let gardener = words(Role::Gardener, Language::Hi);
    for expected in ["round: आज का राउंड", "note: आज के ग्राहकों को नोट", "newsite: नई छत जोड़ें", "codes: लेबलों के लिंक"]
    {
        assert!(gardener.contains(&expected.to_owned()), "{expected}: {gardener:?}");
    }
    assert!(!gardener.iter().any(|line| line.starts_with("visits") || line.starts_with("invite")), "{gardener:?}");
    let owner = words(Role::Owner, Language::HiLatn);
    assert!(owner.contains(&"visits: hue aur chhoote daure".to_owned()), "{owner:?}");
    let client = words(Role::Client, Language::En);
    assert!(client.iter().all(|line| !line.starts_with("round") && !line.starts_with("codes")), "{client:?}");
}

#[test]
fn work_told_without_a_round_has_its_note_too() {
    let mut garden = Garden::new();
    assert!(garden.says_one(RAVI, "/note").text.contains("no work of yours today"));
    garden.says(RAVI, "fed the green box");
    let offer = garden.says_one(RAVI, "/note");
    assert!(offer.text.contains("This would go to meera") && offer.text.contains("fed (green box)"), "{offer:?}");
    garden.presses(RAVI, &offer, "send");
    assert!(garden.says_one(RAVI, "/note").text.contains("no work of yours today"), "once a visit");
    // What a client records is no visit, and a gardener writes to nobody on another's roof.
    garden.says(FARID, "watered the green box");
    assert!(garden.says_one(OWNER, "/note").text.contains("no work of yours today"));
}
