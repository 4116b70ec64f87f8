//! The messaging bot from outside: the real program against a Bot API server of our own.
#![allow(clippy::disallowed_methods, reason = "the tests read files that the program wrote")]

mod bot_api;

use bot_api::crew::{ASHA, MEERA, RAVI, claimed, claimed_with, code, invited, stdout};
use bot_api::{BotApi, Call, Clock, Fault, Sent, Serving, TOKEN, rooftend};
use std::path::Path;
use std::time::Duration;

const STRANGER: i64 = 199;

#[test]
fn from_claim_to_forgotten() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path();
    let api = BotApi::start();
    let serving = claimed(data, &api);
    invited(&api, "meera", "Meera", MEERA);
    invited(&api, "ravi", "Ravi", RAVI);

    // Asked back, with the answers as buttons.
    api.says(MEERA, "how much water?");
    let which = api.expect(MEERA, "?");
    assert!(which.buttons.len() >= 2, "{which:?}");
    api.presses(MEERA, &which, &which.button("Chilli pot"));
    let pot = api.expect(MEERA, "hilli pot");
    assert!(pot.text.contains(" L") || pot.text.contains(" ml"), "{}", pot.text);
    api.presses(MEERA, &which, &which.button("Chilli pot"));
    api.expect(MEERA, "no longer good");

    // A client asks about her own bed, and why.
    api.says(MEERA, "how often should I water the amaranth box this week?");
    let answer = api.expect(MEERA, "east box");
    assert!(answer.text.contains(" L"), "{}", answer.text);
    let why = answer.button("why");
    api.presses(RAVI, &answer, &why);
    api.expect(RAVI, "no longer good");
    api.presses(MEERA, &answer, &why);
    let working = api.next(MEERA);
    assert!(working.text.contains("mm") && working.text != answer.text, "{}", working.text);

    // A reply goes back to what it replies to.
    api.says(MEERA, "when can I sow okra");
    api.next(MEERA);
    api.replies(MEERA, &answer, "why?");
    let again = api.next(MEERA);
    assert!(again.text.contains("1.1 m²") || again.text.contains("mm a day"), "{}", again.text);

    // A gardener records; an edited message takes its record back first.
    let before = jobs(data);
    api.says(RAVI, "watered the east box");
    api.expect(RAVI, "Noted: watered, east box");
    let with_his = jobs(data);
    assert!(with_his > before);
    let own = api.says(MEERA, "neem kar diya east box mein");
    api.expect(MEERA, "Likh liya");
    assert_eq!(jobs(data), with_his + 1);
    api.edits(MEERA, own, "how much water for the east box");
    api.expect(MEERA, " L");
    assert_eq!(jobs(data), with_his, "the edited message no longer says it was sprayed");

    // Handed over: to the owner and the gardener of that roof, and back under the crew's name.
    api.says(MEERA, "please let me talk to a person");
    api.next(MEERA);
    let at_asha = api.expect(ASHA, "Meera asks: please let me talk to a person");
    let at_ravi = api.expect(RAVI, "Meera asks: please let me talk to a person");
    assert!(stdout(data, &["questions"]).contains("Meera: please let me talk to a person"));
    api.says(RAVI, "/questions");
    api.expect(RAVI, "Meera: please let me talk to a person");
    api.replies(RAVI, &at_ravi, "I come at five, *bring* <b>water</b> & [a can](x)");
    let back = api.expect(MEERA, "The crew answers: I come at five, *bring* <b>water</b> & [a can](x)");
    assert!(back.reply_to.is_some());
    api.expect(RAVI, "Passed on to Meera");
    api.expect(ASHA, "Ravi has answered Meera");
    api.replies(ASHA, &at_asha, "too late");
    api.expect(ASHA, "answered already");
    assert_eq!(stdout(data, &["questions"]), "nothing waits\n");

    // What was asked at a keyboard reaches the crew as well.
    stdout(data, &["ask", "--as", "farid", "let me talk to a person, it is about my terrace"]);
    let typed = api.expect(ASHA, "Farid asks");
    api.expect(RAVI, "Farid asks");
    // A letter is noted as sent a moment after it arrived; the next one in the chat goes out after that.
    api.says(ASHA, "/help");
    api.expect(ASHA, "Write as you would");
    api.expect(ASHA, "/round leads");
    api.replies(ASHA, &typed, "tomorrow");
    api.expect(ASHA, "has no chat with me");
    api.expect(RAVI, "Asha has answered Farid");

    // A picture goes to the crew as it is.
    let photo = api.sends_photo(MEERA, "spots on the leaves");
    api.expect(MEERA, "passed it to the crew");
    api.expect(ASHA, &format!("copy of {photo} in {MEERA}"));
    api.expect(ASHA, "Meera sends this. spots on the leaves");
    api.expect(RAVI, "copy of");
    api.expect(RAVI, "spots");

    // Where a roof lies is the crew's to say.
    api.sends_place(MEERA, 21.2, 79.1);
    api.expect(MEERA, "Only the owner and the gardeners");
    api.sends_place(RAVI, 21.2001, 79.1002);
    let which = api.expect(RAVI, "Which roof lies here (21.2001, 79.1002)");
    assert!(which.buttons.iter().all(|(site, _)| site != "Balcony 5"), "not his: {:?}", which.buttons);
    api.presses(RAVI, &which, &which.button("Roof 12"));
    api.expect(RAVI, "Roof 12 now lies at 21.2001, 79.1002");

    // What only the owner may do.
    api.says(RAVI, "/invite gardener Someone roof-12");
    api.expect(RAVI, "Only the owner");
    api.says(MEERA, "/questions");
    api.expect(MEERA, "Only the crew");

    // A stranger gets general answers, and no more of them than twenty an hour.
    api.says(STRANGER, "/start");
    api.expect(STRANGER, "I answer in general only");
    api.says(STRANGER, "how much water for the east box of roof 12");
    let general = api.next(STRANGER);
    assert!(!general.text.contains("60 to"), "{}", general.text);
    for _ in 0..18 {
        api.says(STRANGER, "/start wrongcode");
    }
    for _ in 0..18 {
        api.expect(STRANGER, "not valid");
    }
    api.says(STRANGER, "/help");
    api.expect(STRANGER, "within an hour");

    // What is kept, as a file, and then no more.
    api.says(MEERA, "What do you keep about me?");
    let kept = api.expect(MEERA, "This is what I keep about you");
    assert!(kept.text.contains("roof-12") && kept.text.contains("Questions of yours"), "{}", kept.text);
    api.says(MEERA, "/export");
    let garden = api.next(MEERA);
    assert!(garden.text.contains("id = \"meera\"") && !garden.text.contains("terrace-3"), "{}", garden.text);
    api.expect(MEERA, "\"questions\"");
    api.says(MEERA, "mujhe bhool jao");
    let sure = api.expect(MEERA, "Shall I forget you");
    api.presses(MEERA, &sure, &sure.button("yes"));
    api.expect(MEERA, "I no longer know you");
    api.says(MEERA, "how much water for the east box");
    let general = api.next(MEERA);
    assert!(!general.text.contains("60 to"), "{}", general.text);
    let (code, log) = serving.stop();
    assert_eq!(code, Some(0), "{log}");
    assert!(!log.contains("loopback-secret") && !log.contains("spots") && !log.contains("Meera"), "{log}");
    let whole = folder.path().join("whole.backup").display().to_string();
    stdout(data, &["backup", &whole]);
    let whole = std::fs::read_to_string(whole).unwrap();
    let hers: Vec<&str> =
        whole.lines().filter(|line| line.contains("eera") || line.contains(&MEERA.to_string())).collect();
    assert!(hers.is_empty(), "{hers:?}");
    api.nothing_wrong();
}

/// How many jobs the store of a running bot holds, seen through its socket.
fn jobs(data: &Path) -> usize {
    let file = data.join("look.toml").display().to_string();
    stdout(data, &["export", &file]);
    std::fs::read_to_string(file).unwrap().matches("[[jobs_done]]").count()
}

#[test]
fn every_fault_is_outlived() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    api.order("getMe", Fault::Cut);
    let serving = claimed(folder.path(), &api);
    let said = |text: &str| api.sent().iter().filter(|sent| sent.text.contains(text)).count();

    api.order("sendMessage", Fault::TooFast(2));
    api.says(ASHA, "/invite client First roof-12");
    let begun = std::time::Instant::now();
    api.expect(ASHA, "Code for First");
    assert!(begun.elapsed() >= Duration::from_secs(2), "it waits as long as it is told");

    api.order("sendMessage", Fault::Cut);
    api.order("getUpdates", Fault::Cut);
    api.says(ASHA, "/invite client Second roof-12");
    api.says(ASHA, "/invite client Third roof-12");
    api.expect(ASHA, "Code for Second");
    api.expect(ASHA, "Code for Third");

    // The same updates once more: nobody is answered twice.
    api.order("getUpdates", Fault::Repeat);
    api.says(ASHA, "/invite client Fourth roof-12");
    api.expect(ASHA, "Code for Fourth");
    api.all_acknowledged();

    // Done, but the answer was lost: nobody can know; it is sent again.
    api.order("sendMessage", Fault::DoneThenCut);
    api.says(ASHA, "/invite client Fifth roof-12");
    api.expect(ASHA, "Code for Fifth");
    api.expect(ASHA, "Code for Fifth");

    api.order("sendMessage", Fault::Late(Duration::from_millis(1500)));
    api.says(ASHA, "/invite client Sixth roof-12");
    api.expect(ASHA, "Code for Sixth");

    api.order("sendMessage", Fault::Trouble);
    api.order("getUpdates", Fault::BadGateway);
    api.says(ASHA, "/invite client Seventh roof-12");
    api.expect(ASHA, "Code for Seventh");

    for once in ["First", "Second", "Third", "Fourth", "Sixth", "Seventh"] {
        assert_eq!(said(&format!("Code for {once}")), 1, "{once}");
    }
    let (code, log) = serving.stop();
    assert_eq!(code, Some(0));
    assert!(!log.contains("loopback-secret") && log.contains("a letter did not arrive"), "{log}");
    api.nothing_wrong();
}

/// Trouble of the server: pictures, edits and files go out again as soon as messages do, each once.
#[test]
fn pictures_edits_and_files_outlive_the_servers_trouble() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let clock = Clock::at(folder.path(), "2026-05-18T08:00");
    let mut settings = clock.settings();
    settings[1].1 = "off".into();
    let serving = claimed_with(folder.path(), &api, &Clock::borrowed(&settings));
    invited(&api, "meera", "Meera", MEERA);
    invited(&api, "ravi", "Ravi", RAVI);
    let made = |method: &str| api.calls(method).len();

    api.says(MEERA, "how much water for the east box this week");
    let answer = api.expect(MEERA, "east box");
    // Asha's letter is told to wait for some seconds; a picture that met with trouble meanwhile is there before.
    api.order("sendMessage", Fault::TooFast(9));
    api.says(ASHA, "/help");
    let told = |call: &Call| {
        call.body["chat_id"] == ASHA && call.body["text"].as_str().is_some_and(|text| text.contains("Write as you"))
    };
    while !api.calls("sendMessage").iter().any(told) {
        std::thread::sleep(Duration::from_millis(20));
    }
    api.order("sendPhoto", Fault::Trouble);
    let picture = press(&api, MEERA, &answer, "picture");
    assert_eq!(made("sendPhoto"), 2, "once in vain, once more");
    let help = api.expect(ASHA, "Write as you would");
    assert!(picture.at < help.at, "what waits for a second is not held for ten");

    api.says(RAVI, "round: roof 12");
    let plan = api.expect(RAVI, "one roof");
    let before = made("editMessageText");
    api.order("editMessageText", Fault::Trouble);
    let card = press(&api, RAVI, &plan, "begin");
    assert!(card.number == plan.number && card.text.starts_with("Round, bed 1 of 5"), "{}", card.text);
    assert_eq!(made("editMessageText") - before, 2);
    // The answer to an edit is lost: the same edit changes nothing the second time, which is as good.
    api.order("editMessageText", Fault::DoneThenCut);
    let card = press(&api, RAVI, &card, "watered");
    let card = press(&api, RAVI, &card, "next bed");
    assert!(card.text.starts_with("Round, bed 2 of 5"), "{}", card.text);
    assert_eq!(made("editMessageText") - before, 5);

    api.order("sendDocument", Fault::Trouble);
    api.says(MEERA, "/export");
    api.expect(MEERA, "id = \"meera\"");
    api.expect(MEERA, "\"questions\"");
    let names = api.calls("sendDocument").into_iter().map(|call| call.body["document"]["file_name"].clone());
    assert_eq!(names.collect::<Vec<_>>(), ["garden.toml", "garden.toml", "about-me.json"], "in their order");
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

/// Presses a button and gives what stands there then.
#[track_caller]
fn press(api: &BotApi, person: i64, under: &Sent, says: &str) -> Sent {
    api.presses(person, under, &under.button(says));
    api.next(person)
}

#[test]
fn a_chat_that_shuts_us_out_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let serving = claimed(folder.path(), &api);
    invited(&api, "meera", "Meera", MEERA);
    invited(&api, "ravi", "Ravi", RAVI);
    api.block(RAVI);
    api.says(MEERA, "please let me talk to a person");
    api.next(MEERA);
    api.expect(ASHA, "Meera asks");
    api.says(MEERA, "I want to talk to someone of the crew");
    api.next(MEERA);
    api.expect(ASHA, "Meera asks");
    let to_ravi = |call: &Call| call.body["chat_id"] == RAVI;
    let tried = api
        .calls("sendMessage")
        .into_iter()
        .filter(to_ravi)
        .filter(|call| call.body["text"].as_str().is_some_and(|text| text.contains("asks")));
    assert_eq!(tried.count(), 1, "tried once, then left alone");
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

#[test]
fn in_a_group_it_answers_when_called() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let serving = claimed(folder.path(), &api);
    let group = -500;
    api.says_in(group, ASHA, "how much water for the east box of roof 12");
    api.says_in(group, ASHA, "@roof_test_bot what do I need for a 4 x 3 ft box, 1 ft deep?");
    let answer = api.next(group);
    assert!(answer.reply_to.is_some() && answer.buttons.is_empty());
    assert_eq!(api.sent().iter().filter(|sent| sent.chat == group).count(), 1);
    // Of a person's own beds nothing is told where others read along, nor asked as if it could be.
    let group = -501;
    api.says_in(group, ASHA, "@roof_test_bot how much water for the east box");
    api.expect(group, "write to me alone");
    api.says_in(group, ASHA, "/round@roof_test_bot");
    api.expect(group, "write to me alone");
    api.says_in(group, ASHA, "@roof_test_bot thanks");
    api.expect(group, "All right.");
    api.says(ASHA, "नमस्ते");
    api.expect(ASHA, "नमस्ते। छत के पानी");
    api.says(ASHA, "Thank you!");
    api.expect(ASHA, "All right.");
    api.says(ASHA, "👍");
    api.expect(ASHA, "All right.");
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

#[test]
fn health_numbers_and_a_wrong_token() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let port = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().port();
    let serving = Serving::start(folder.path(), &api, &[("ROOFTEND_METRICS", &port.to_string())]);
    let claim = code(&serving.line("/start"));
    api.says(ASHA, &format!("/start {claim}"));
    api.expect(ASHA, "linked as User101 (owner)");
    let get = |path: &str| {
        use std::io::{Read, Write};
        let mut stream = std::net::TcpStream::connect(("127.0.0.1", port)).unwrap();
        stream.write_all(format!("GET {path} HTTP/1.1\r\nHost: x\r\n\r\n").as_bytes()).unwrap();
        let mut got = String::new();
        stream.read_to_string(&mut got).unwrap();
        got
    };
    assert!(get("/healthz").starts_with("HTTP/1.1 200"));
    let numbers = get("/metrics");
    assert!(numbers.contains("rooftend_updates_total 1\n"), "{numbers}");
    assert_eq!(serving.stop().0, Some(0));

    // The token may stand in a file; the platform's limits are kept unless they are switched off.
    let file = folder.path().join("token");
    std::fs::write(&file, format!("{TOKEN}\n")).unwrap();
    let file = file.display().to_string();
    let more =
        [("ROOFTEND_TELEGRAM_TOKEN", ""), ("ROOFTEND_TELEGRAM_TOKEN_FILE", &file), ("ROOFTEND_SEND_LIMITS", "on")];
    let paced = Serving::start(folder.path(), &api, &more);
    let before = api.calls("sendMessage").len();
    for _ in 0..3 {
        api.says(ASHA, "/help");
    }
    for _ in 0..3 {
        api.expect(ASHA, "Write as you would");
        api.expect(ASHA, "/round leads");
    }
    let calls = api.calls("sendMessage").split_off(before);
    assert!(calls.windows(2).all(|two| two[1].at - two[0].at >= Duration::from_millis(990)), "a message a second");
    assert_eq!(paced.stop().0, Some(0));

    let told = |token: &str| Serving::start(folder.path(), &api, &[("ROOFTEND_TELEGRAM_TOKEN", token)]).ended();
    let (code, log) = told("77:other");
    assert!(code == Some(2) && log.contains("does not accept the token"), "{log}");
    let (code, log) = told("no token");
    assert!(code == Some(2) && log.contains("is no token") && !log.contains("\"no token"), "{log}");
}

/// Killed again and again while messages come in: each is answered, each is recorded once.
#[test]
fn nothing_is_lost_or_done_twice_when_it_is_killed() {
    let rounds: u64 = std::env::var("ROOFTEND_BOT_CRASH_ROUNDS").map_or(4, |rounds| rounds.parse().unwrap());
    const A_ROUND: usize = 12;
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let mut serving = claimed(folder.path(), &api);
    let mut random: u64 = 20_260_518;
    let mut guests = 0;
    for _ in 0..rounds {
        for _ in 0..A_ROUND {
            guests += 1;
            api.says(ASHA, &format!("/invite client Guest{} roof-12", letters(guests)));
        }
        // A linear congruential step (Knuth, MMIX) picks the moment.
        random = random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        std::thread::sleep(Duration::from_millis((random >> 33) % 400));
        serving.kill();
        serving = Serving::start(folder.path(), &api, &[]);
        serving.line("serving");
    }
    let of = |number: usize| format!("Code for Guest{} ", letters(number));
    api.until("every guest has a code", |sent| {
        (1..=guests).all(|number| sent.iter().any(|sent| sent.text.contains(&of(number))))
    });
    api.all_acknowledged();
    assert_eq!(serving.stop().0, Some(0));
    let sent = api.sent();
    let place = |number: usize| sent.iter().position(|sent| sent.text.contains(&of(number)));
    let order: Vec<_> = (1..=guests).map(|number| (number, place(number))).collect();
    assert!(order.windows(2).all(|two| two[0].1 < two[1].1), "the order of a chat is kept: {order:?}");
    let twice = (1..=guests).filter(|number| sent.iter().filter(|sent| sent.text.contains(&of(*number))).count() > 1);
    let twice = twice.count();
    assert!(twice as u64 <= rounds, "at most the letter on its way at each kill goes out again: {twice}");
    let whole = folder.path().join("whole.backup").display().to_string();
    stdout(folder.path(), &["backup", &whole]);
    let whole = std::fs::read_to_string(whole).unwrap();
    let codes = whole.lines().filter(|line| line.contains("\"drawer\":\"invites\"")).count();
    assert_eq!(codes, guests, "each is recorded once");
    println!("{rounds} kills, {guests} messages, none lost, {twice} letters sent twice");
    api.nothing_wrong();
}

/// A number in letters: a name with a digit would be taken for a roof.
fn letters(number: usize) -> String {
    number.to_string().bytes().map(|digit| char::from(digit - b'0' + b'a')).collect()
}

#[test]
fn the_token_is_not_an_option() {
    let help = rooftend(Path::new("/nowhere"), &["serve", "--help"]);
    let help = String::from_utf8(help.stdout).unwrap();
    assert!(!help.contains("--token") && !help.contains(TOKEN));
}
