//! The server: updates out, calls in, faults to order.

use super::TOKEN;
use super::checks::problems;
use super::http::{read, write};
use super::typed::{differs, unreadable};
use super::webhook::post;
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::io::BufReader;
use std::net::{Shutdown, TcpListener, TcpStream};
use std::sync::{Arc, Condvar, Mutex, MutexGuard};
use std::time::{Duration, Instant};

/// What happens to the next call of a method.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// 429 with its `retry_after`.
    TooFast(u32),
    /// 500, as JSON.
    Trouble,
    /// 502 with a page of HTML that names the address.
    BadGateway,
    /// The connection is cut before anything is done.
    Cut,
    /// It is done, and the connection cut before the answer.
    DoneThenCut,
    /// It is done, and the answer comes late.
    Late(Duration),
    /// The updates of the last answer are brought again.
    Repeat,
}

/// One call that came in.
#[derive(Debug, Clone)]
pub struct Call {
    pub method: String,
    pub body: Value,
    pub at: Instant,
}

/// A message that arrived in a chat.
#[derive(Debug, Clone)]
pub struct Sent {
    pub chat: i64,
    pub number: i64,
    pub text: String,
    /// What stands on each button, and its data.
    pub buttons: Vec<(String, String)>,
    pub reply_to: Option<i64>,
    pub body: Value,
    pub at: Instant,
}

impl Sent {
    /// The data of the button that says this.
    #[track_caller]
    pub fn button(&self, says: &str) -> String {
        let found = self.buttons.iter().find(|(text, _)| text == says);
        found.unwrap_or_else(|| panic!("no button \"{says}\": {:?}", self.buttons)).1.clone()
    }
}

#[derive(Default)]
pub(super) struct State {
    updates: Vec<Value>,
    last_given: Vec<Value>,
    pub(super) next_update: i64,
    next_message: i64,
    calls: Vec<Call>,
    sent: Vec<Sent>,
    /// How many of a chat's messages were looked at.
    looked: BTreeMap<i64, usize>,
    faults: BTreeMap<String, VecDeque<Fault>>,
    problems: Vec<String>,
    blocked: BTreeSet<i64>,
    pub(super) queries: BTreeSet<String>,
    messages: BTreeSet<(i64, i64)>,
    ended: bool,
    /// Seconds since 1970 that new messages carry, where it is not the first morning.
    dated: Option<i64>,
    /// Where updates are brought, and the secret that goes along.
    webhook: Option<(String, String)>,
}

/// The server and what it saw.
pub struct BotApi {
    address: String,
    shared: Arc<(Mutex<State>, Condvar)>,
}

/// 08:00 in Nagpur on the first day of the demo's forecast.
pub(super) const MORNING: i64 = 1_779_071_400;

impl BotApi {
    pub fn start() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = listener.local_addr().unwrap().to_string();
        let state = State { next_update: 700, next_message: 10, ..State::default() };
        let shared = Arc::new((Mutex::new(state), Condvar::new()));
        let of_thread = shared.clone();
        std::thread::spawn(move || {
            let to_bring = of_thread.clone();
            std::thread::spawn(move || bring(&to_bring));
            for stream in listener.incoming().filter_map(Result::ok) {
                let shared = of_thread.clone();
                std::thread::spawn(move || connection(stream, &shared));
            }
        });
        Self { address, shared }
    }

    pub fn url(&self) -> String {
        format!("http://{}", self.address)
    }

    pub(super) fn state(&self) -> MutexGuard<'_, State> {
        self.shared.0.lock().unwrap()
    }

    pub fn order(&self, method: &str, fault: Fault) {
        self.state().faults.entry(method.to_owned()).or_default().push_back(fault);
        self.shared.1.notify_all();
    }

    /// What people write from now on is of this moment.
    pub fn dated(&self, moment: &str) {
        let moment: chrono::DateTime<chrono::FixedOffset> = moment.parse().unwrap();
        self.state().dated = Some(moment.timestamp());
    }

    /// Another program has updates brought to an address of its own.
    pub fn webhook_elsewhere(&self) {
        self.state().webhook = Some(("http://127.0.0.1:9/".into(), "other".into()));
        self.shared.1.notify_all();
    }

    pub fn block(&self, chat: i64) {
        self.state().blocked.insert(chat);
    }

    pub(super) fn update(&self, kind: &str, value: &Value) {
        let mut state = self.state();
        let number = state.next_update;
        state.next_update += 1;
        let update = json!({"update_id": number, kind: value});
        state.problems.extend(unreadable(&update));
        state.updates.push(update);
        self.shared.1.notify_all();
    }

    pub(super) fn message(&self, chat: i64, from: i64, more: &Value) -> (i64, Value) {
        let mut state = self.state();
        state.next_message += 1;
        let number = state.next_message;
        let date = state.dated.unwrap_or(MORNING);
        state.messages.insert((chat, number));
        let where_it_is = if chat < 0 {
            json!({"id": chat, "type": "group", "title": "Roofs"})
        } else {
            json!({"id": chat, "type": "private", "first_name": format!("User{chat}")})
        };
        let mut message = json!({"message_id": number, "date": date, "chat": where_it_is, "from": user(from)});
        message.as_object_mut().unwrap().extend(more.as_object().unwrap().clone());
        (number, message)
    }

    /// The next message that arrives in a chat.
    #[track_caller]
    pub fn next(&self, chat: i64) -> Sent {
        let until = Instant::now() + Duration::from_secs(60);
        let mut state = self.state();
        loop {
            let looked = state.looked.get(&chat).copied().unwrap_or(0);
            let found = state.sent.iter().filter(|sent| sent.chat == chat).nth(looked).cloned();
            if let Some(sent) = found {
                state.looked.insert(chat, looked + 1);
                return sent;
            }
            assert!(Instant::now() < until, "nothing came in chat {chat}; calls: {:?}", methods(&state.calls));
            state = self.shared.1.wait_timeout(state, Duration::from_millis(200)).unwrap().0;
        }
    }

    /// The next message in a chat, which says this.
    #[track_caller]
    pub fn expect(&self, chat: i64, says: &str) -> Sent {
        let sent = self.next(chat);
        assert!(sent.text.contains(says), "\"{says}\" expected in chat {chat}, got: {}", sent.text);
        sent
    }

    /// Waits until this holds of all that was sent.
    #[track_caller]
    pub fn until(&self, what: &str, holds: impl Fn(&[Sent]) -> bool) {
        let until = Instant::now() + Duration::from_secs(120);
        let mut state = self.state();
        while !holds(&state.sent) {
            assert!(Instant::now() < until, "never: {what}; calls: {:?}", methods(&state.calls));
            state = self.shared.1.wait_timeout(state, Duration::from_millis(200)).unwrap().0;
        }
    }

    /// The chat and the moment of each message that arrived.
    pub fn arrived(&self) -> Vec<(i64, Instant)> {
        self.state().sent.iter().map(|sent| (sent.chat, sent.at)).collect()
    }

    pub fn sent(&self) -> Vec<Sent> {
        self.state().sent.clone()
    }

    /// The calls of a method so far.
    pub fn calls(&self, method: &str) -> Vec<Call> {
        self.state().calls.iter().filter(|call| call.method == method).cloned().collect()
    }

    /// Waits until every update was acknowledged.
    #[track_caller]
    pub fn all_acknowledged(&self) {
        let until = Instant::now() + Duration::from_secs(60);
        let mut state = self.state();
        while !state.updates.is_empty() {
            assert!(Instant::now() < until, "updates were never acknowledged");
            state = self.shared.1.wait_timeout(state, Duration::from_millis(200)).unwrap().0;
        }
    }

    /// Nothing that was called differs from what is published.
    #[track_caller]
    pub fn nothing_wrong(&self) {
        let state = self.state();
        assert!(state.problems.is_empty(), "{}", state.problems.join("\n"));
    }
}

impl Drop for BotApi {
    fn drop(&mut self) {
        if let Ok(mut state) = self.shared.0.lock() {
            state.ended = true;
        }
        self.shared.1.notify_all();
    }
}

fn methods(calls: &[Call]) -> Vec<&str> {
    calls.iter().rev().take(20).map(|call| call.method.as_str()).collect()
}

pub(super) fn user(id: i64) -> Value {
    json!({"id": id, "is_bot": false, "first_name": format!("User{id}"), "language_code": "en"})
}

/// Names of methods are read whatever their case; ours are compared as they are published.
fn as_published(method: &str) -> String {
    let mut letters = method.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

fn connection(stream: TcpStream, shared: &(Mutex<State>, Condvar)) {
    let Ok(mut out) = stream.try_clone() else { return };
    let mut stream = BufReader::new(stream);
    while let Ok(Some(request)) = read(&mut stream) {
        let Some(method) = request.path.strip_prefix(&format!("/bot{TOKEN}/")).map(as_published) else {
            let refused = json!({"ok": false, "error_code": 401, "description": "Unauthorized"});
            let _ = write(&mut out, 401, &refused.to_string());
            continue;
        };
        let fault = {
            let mut state = shared.0.lock().unwrap();
            state.problems.extend(problems(&method, &request.body));
            state.problems.extend(differs(&method, &request.body));
            state.calls.push(Call { method: method.clone(), body: request.body.clone(), at: Instant::now() });
            let ordered = state.faults.get_mut(&method);
            // A repetition is for the next answer that has something to repeat.
            ordered.and_then(|faults| if faults.front() == Some(&Fault::Repeat) { None } else { faults.pop_front() })
        };
        shared.1.notify_all();
        let failed = |status: u16, description: &str| {
            (status, json!({"ok": false, "error_code": status, "description": description}).to_string())
        };
        let (status, body) = match fault {
            Some(Fault::TooFast(seconds)) => {
                let body = json!({"ok": false, "error_code": 429,
                    "description": format!("Too Many Requests: retry after {seconds}"),
                    "parameters": {"retry_after": seconds}});
                (429, body.to_string())
            }
            Some(Fault::Trouble) => failed(500, "Internal Server Error"),
            Some(Fault::BadGateway) => (502, format!("<html>{}</html>", request.path)),
            Some(Fault::Cut) => {
                let _ = out.shutdown(Shutdown::Both);
                return;
            }
            Some(Fault::DoneThenCut) => {
                let _ = carry_out(&method, &request.body, shared);
                let _ = out.shutdown(Shutdown::Both);
                return;
            }
            Some(Fault::Late(time)) => {
                let done = carry_out(&method, &request.body, shared);
                std::thread::sleep(time);
                done
            }
            Some(Fault::Repeat) | None => carry_out(&method, &request.body, shared),
        };
        shared.1.notify_all();
        if write(&mut out, status, &body).is_err() {
            return;
        }
    }
}

fn ok(result: &Value) -> (u16, String) {
    (200, json!({"ok": true, "result": result}).to_string())
}

fn refused(status: u16, description: &str) -> (u16, String) {
    (status, json!({"ok": false, "error_code": status, "description": description}).to_string())
}

fn carry_out(method: &str, body: &Value, shared: &(Mutex<State>, Condvar)) -> (u16, String) {
    let chat = body.get("chat_id").and_then(Value::as_i64).unwrap_or_default();
    let mut state = shared.0.lock().unwrap();
    if chat != 0 && state.blocked.contains(&chat) {
        return refused(403, "Forbidden: bot was blocked by the user");
    }
    match method {
        "getMe" => ok(&json!({"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_test_bot",
            "can_join_groups": true, "can_read_all_group_messages": false, "supports_inline_queries": false,
            "can_connect_to_business": false, "has_main_web_app": false})),
        "getUpdates" if state.webhook.is_some() => refused(
            409,
            "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
        ),
        "getUpdates" => {
            drop(state);
            updates(body, shared)
        }
        "sendMessage" => {
            let text = body.get("text").and_then(Value::as_str).unwrap_or_default();
            if text.trim().is_empty() {
                return refused(400, "Bad Request: message text is empty");
            }
            ok(&arrive(&mut state, chat, text, body))
        }
        "editMessageText" => edited(&mut state, chat, body),
        "sendPhoto" => {
            let caption = body.get("caption").and_then(Value::as_str).unwrap_or_default().to_owned();
            let mut message = arrive(&mut state, chat, &caption, body);
            let fields = message.as_object_mut().unwrap();
            fields.remove("text");
            let size = |name: &str| body["photo"][name].clone();
            let photo = json!([{"file_id": "p", "file_unique_id": "q", "width": size("width"),
                "height": size("height"), "file_size": size("bytes")}]);
            fields.insert("photo".into(), photo);
            fields.insert("caption".into(), json!(caption));
            ok(&message)
        }
        "sendDocument" => {
            let text = body["document"]["text"].as_str().unwrap_or_default().to_owned();
            let mut message = arrive(&mut state, chat, &text, body);
            let fields = message.as_object_mut().unwrap();
            fields.remove("text");
            let name = body["document"]["file_name"].clone();
            fields.insert(
                "document".into(),
                json!({"file_id": "f", "file_unique_id": "g", "file_size": 9, "file_name": name}),
            );
            ok(&message)
        }
        "copyMessage" => {
            let from = (body["from_chat_id"].as_i64().unwrap_or(0), body["message_id"].as_i64().unwrap_or(0));
            if !state.messages.contains(&from) {
                return refused(400, "Bad Request: message to copy not found");
            }
            let message = arrive(&mut state, chat, &format!("copy of {} in {}", from.1, from.0), body);
            ok(&json!({"message_id": message["message_id"]}))
        }
        "answerCallbackQuery" => {
            let id = body["callback_query_id"].as_str().unwrap_or_default().to_owned();
            if !state.queries.contains(&id) {
                return refused(
                    400,
                    "Bad Request: query is too old and response timeout expired or query ID is invalid",
                );
            }
            ok(&json!(true))
        }
        "setWebhook" => {
            let said = |name: &str| body.get(name).and_then(Value::as_str).unwrap_or_default().to_owned();
            state.webhook = Some((said("url"), said("secret_token")));
            ok(&json!(true))
        }
        "deleteWebhook" => {
            state.webhook = None;
            ok(&json!(true))
        }
        "getWebhookInfo" => {
            let url = state.webhook.as_ref().map(|(url, _)| url.clone()).unwrap_or_default();
            ok(&json!({"url": url, "has_custom_certificate": false, "pending_update_count": state.updates.len()}))
        }
        "setMyCommands" | "deleteMyCommands" => ok(&json!(true)),
        _ => refused(404, "Not Found"),
    }
}

/// A message that stands in a chat says something else now; it arrives once more, under its own number.
fn edited(state: &mut State, chat: i64, body: &Value) -> (u16, String) {
    let number = body.get("message_id").and_then(Value::as_i64).unwrap_or_default();
    let text = body.get("text").and_then(Value::as_str).unwrap_or_default().to_owned();
    let standing = state.sent.iter().rev().find(|sent| sent.chat == chat && sent.number == number).cloned();
    let Some(standing) = standing else { return refused(400, "Bad Request: message to edit not found") };
    let buttons = buttons_of(body);
    if standing.text == text && standing.buttons == buttons {
        let unchanged = "Bad Request: message is not modified: specified new message content and reply markup are \
            exactly the same as a current content and reply markup of the message";
        return refused(400, unchanged);
    }
    state.sent.push(Sent { text: text.clone(), buttons, body: body.clone(), ..standing });
    ok(&json!({"message_id": number, "date": MORNING, "edit_date": MORNING + 1, "text": text,
        "chat": {"id": chat, "type": "private", "first_name": "x"},
        "from": {"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_test_bot"}}))
}

/// What stands on each button of a call, and its data.
fn buttons_of(body: &Value) -> Vec<(String, String)> {
    let rows = body["reply_markup"]["inline_keyboard"].as_array().cloned().unwrap_or_default();
    let buttons = rows.iter().filter_map(Value::as_array).flatten();
    let said = |button: &Value, key: &str| button[key].as_str().unwrap_or_default().to_owned();
    buttons.map(|button| (said(button, "text"), said(button, "callback_data"))).collect()
}

fn arrive(state: &mut State, chat: i64, text: &str, body: &Value) -> Value {
    state.next_message += 1;
    let number = state.next_message;
    let buttons = buttons_of(body);
    let reply_to = body["reply_parameters"]["message_id"].as_i64();
    state.sent.push(Sent {
        chat,
        number,
        text: text.to_owned(),
        buttons,
        reply_to,
        body: body.clone(),
        at: Instant::now(),
    });
    let place = if chat < 0 {
        json!({"id": chat, "type": "group", "title": "Roofs"})
    } else {
        json!({"id": chat, "type": "private", "first_name": "x"})
    };
    json!({"message_id": number, "date": MORNING, "chat": place, "text": text,
        "from": {"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_test_bot"}})
}

/// Brings updates to the web address, the first until it is taken, as the published API describes it.
fn bring(shared: &(Mutex<State>, Condvar)) {
    loop {
        let next = {
            let state = shared.0.lock().unwrap();
            if state.ended {
                return;
            }
            state.webhook.clone().zip(state.updates.first().cloned())
        };
        let Some(((url, secret), update)) = next else {
            std::thread::sleep(Duration::from_millis(5));
            continue;
        };
        if post(&url, &[("X-Telegram-Bot-Api-Secret-Token", &secret)], &update.to_string()) == Some(200) {
            let mut state = shared.0.lock().unwrap();
            state.updates.retain(|other| other["update_id"] != update["update_id"]);
            shared.1.notify_all();
        } else {
            std::thread::sleep(Duration::from_millis(50));
        }
    }
}

/// Long polling: what was acknowledged goes; what waits is given; else the call is held open.
fn updates(body: &Value, shared: &(Mutex<State>, Condvar)) -> (u16, String) {
    let offset = body.get("offset").and_then(Value::as_i64).unwrap_or(0);
    let seconds = body.get("timeout").and_then(Value::as_u64).unwrap_or(0);
    let until = Instant::now() + Duration::from_secs(seconds);
    let mut state = shared.0.lock().unwrap();
    let number = |update: &Value| update["update_id"].as_i64().unwrap_or(0);
    state.updates.retain(|update| number(update) >= offset);
    shared.1.notify_all();
    loop {
        // An address set meanwhile ends the asking; otherwise a message that comes next could still go out by it.
        if state.webhook.is_some() {
            return refused(409, "Conflict: terminated by setWebhook request");
        }
        if state.faults.get("getUpdates").and_then(VecDeque::front) == Some(&Fault::Repeat)
            && !state.last_given.is_empty()
        {
            state.faults.get_mut("getUpdates").and_then(VecDeque::pop_front);
            return ok(&Value::Array(state.last_given.clone()));
        }
        if !state.updates.is_empty() {
            let given: Vec<Value> = state.updates.iter().take(100).cloned().collect();
            state.last_given = given.clone();
            return ok(&Value::Array(given));
        }
        if Instant::now() >= until || state.ended {
            return ok(&json!([]));
        }
        state = shared.1.wait_timeout(state, Duration::from_millis(100)).unwrap().0;
    }
}
