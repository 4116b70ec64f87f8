//! The messaging bot with updates brought to a web address: the real program, called by a Bot API server of our own.
#![allow(clippy::disallowed_methods, reason = "the tests read files that the program wrote")]

mod bot_api;

use bot_api::crew::{ASHA, claimed_with};
use bot_api::{BotApi, Fault, Serving, post};
use serde_json::{Value, json};
use std::time::Duration;

const SECRET: &str = "loopback-secret_Webhook";

fn free_port() -> u16 {
    std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().port()
}

/// The address and the settings that go with it.
fn settings() -> (String, Vec<(&'static str, String)>) {
    let listen = format!("127.0.0.1:{}", free_port());
    let url = format!("http://{listen}/updates");
    let all = vec![
        ("ROOFTEND_WEBHOOK_URL", url.clone()),
        ("ROOFTEND_WEBHOOK_SECRET", SECRET.to_owned()),
        ("ROOFTEND_WEBHOOK_LISTEN", listen),
    ];
    (url, all)
}

fn borrowed<'a>(settings: &'a [(&'static str, String)]) -> Vec<(&'static str, &'a str)> {
    settings.iter().map(|(name, value)| (*name, value.as_str())).collect()
}

/// An update by hand: a text of the owner's.
fn update(number: i64, text: &str) -> Value {
    json!({"update_id": number, "message": {"message_id": 9000 + number, "date": 1_779_071_400, "text": text,
        "chat": {"id": ASHA, "type": "private", "first_name": "Asha"},
        "from": {"id": ASHA, "is_bot": false, "first_name": "Asha"}}})
}

#[test]
fn updates_are_brought_and_only_with_the_secret() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let (url, settings) = settings();
    let settings = borrowed(&settings);
    let serving = claimed_with(folder.path(), &api, &settings);
    let set = api.calls("setWebhook");
    assert_eq!(set[0].body["url"], url);
    assert_eq!(set[0].body["secret_token"], SECRET);
    assert_eq!(
        set[0].body["allowed_updates"],
        json!(["message", "edited_message", "callback_query", "my_chat_member"])
    );
    assert!(api.calls("getUpdates").is_empty());

    let header = "X-Telegram-Bot-Api-Secret-Token";
    let body = update(5000, "/invite client Intruder roof-12").to_string();
    assert_eq!(post(&url, &[], &body), Some(401));
    assert_eq!(post(&url, &[(header, "loopback-secret_Webhooks")], &body), Some(401));
    assert_eq!(post(&url, &[(header, "")], &body), Some(401));
    assert_eq!(post(&url, &[(header, SECRET)], "no update"), Some(400));
    assert_eq!(post(&url, &[(header, SECRET)], &format!("\"{}\"", "x".repeat(300 * 1024))), Some(413));
    assert_eq!(post(&url, &[(header, SECRET)], r#"{"update_id": 5001, "something_new": {}}"#), Some(200));
    // The same update twice is answered once.
    let body = update(5002, "/invite client Twice roof-12").to_string();
    assert_eq!(post(&url, &[(header, SECRET)], &body), Some(200));
    assert_eq!(post(&url, &[(header, SECRET)], &body), Some(200));
    api.expect(ASHA, "Code for Twice");
    api.says(ASHA, "/invite client Next roof-12");
    api.expect(ASHA, "Code for Next");
    assert!(api.sent().iter().all(|sent| !sent.text.contains("Intruder")));

    // Acknowledged is on the disk: killed at that very moment, it is answered after the next start.
    assert_eq!(post(&url, &[(header, SECRET)], &update(5003, "/invite client Kept roof-12").to_string()), Some(200));
    serving.kill();
    let serving = Serving::start(folder.path(), &api, &settings);
    serving.line("serving");
    api.until("what was acknowledged is answered", |sent| sent.iter().any(|sent| sent.text.contains("Code for Kept")));
    let (code, log) = serving.stop();
    assert_eq!(code, Some(0), "{log}");
    assert!(!log.contains("loopback-secret") && !log.contains("Kept"), "{log}");

    // Back to asking: the address is taken away, and nothing is missed.
    api.says(ASHA, "/invite client Between roof-12");
    let serving = Serving::start(folder.path(), &api, &[]);
    api.until("asked for again", |sent| sent.iter().any(|sent| sent.text.contains("Code for Between")));
    assert!(!api.calls("deleteWebhook").is_empty());

    // Another program sets an address of its own: it is taken away.
    let before = api.calls("deleteWebhook").len();
    api.webhook_elsewhere();
    api.says(ASHA, "/invite client Still roof-12");
    api.until("taken back", |sent| sent.iter().any(|sent| sent.text.contains("Code for Still")));
    assert!(api.calls("deleteWebhook").len() > before);
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}

#[test]
fn without_a_secret_it_does_not_start_and_trouble_is_waited_out() {
    let folder = tempfile::tempdir().unwrap();
    let api = BotApi::start();
    let (url, all) = settings();
    let (code, log) = Serving::start(folder.path(), &api, &[("ROOFTEND_WEBHOOK_URL", &url)]).ended();
    assert!(code == Some(2) && log.contains("a web address needs a secret"), "{log}");
    let (code, log) = Serving::start(
        folder.path(),
        &api,
        &[("ROOFTEND_WEBHOOK_URL", &url), ("ROOFTEND_WEBHOOK_SECRET", "not allowed: ünknown")],
    )
    .ended();
    assert!(code == Some(2) && !log.contains("not allowed"), "{log}");
    api.order("setWebhook", Fault::Cut);
    api.order("setWebhook", Fault::TooFast(1));
    let serving = claimed_with(folder.path(), &api, &borrowed(&all));
    assert_eq!(api.calls("setWebhook").len(), 3);
    // A letter's own trouble is not waited out for ten seconds.
    api.order("sendMessage", Fault::Trouble);
    let begun = std::time::Instant::now();
    api.says(ASHA, "/help");
    api.expect(ASHA, "Write as you would");
    assert!(begun.elapsed() < Duration::from_secs(9), "{:?}", begun.elapsed());
    assert_eq!(serving.stop().0, Some(0));
    api.nothing_wrong();
}
