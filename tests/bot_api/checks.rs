//! What the published Bot API (9.1) says of the calls we make: their parameters, types, limits, allowed values.

use serde_json::Value;

const UPDATE_KINDS: [&str; 23] = [
    "message",
    "edited_message",
    "channel_post",
    "edited_channel_post",
    "business_connection",
    "business_message",
    "edited_business_message",
    "deleted_business_messages",
    "message_reaction",
    "message_reaction_count",
    "inline_query",
    "chosen_inline_result",
    "callback_query",
    "shipping_query",
    "pre_checkout_query",
    "purchased_paid_media",
    "poll",
    "poll_answer",
    "my_chat_member",
    "chat_member",
    "chat_join_request",
    "chat_boost",
    "removed_chat_boost",
];

/// What is wrong with a call; nothing where it is as published.
pub fn problems(method: &str, body: &Value) -> Vec<String> {
    let mut found = Vec::new();
    let Some(fields) = body.as_object() else { return vec![format!("{method}: the body is no object")] };
    let (required, optional): (&[&str], &[&str]) = match method {
        "getMe" => (&[], &[]),
        "getUpdates" => (&[], &["offset", "limit", "timeout", "allowed_updates"]),
        "deleteWebhook" => (&[], &["drop_pending_updates"]),
        "setWebhook" => (&["url"], &["secret_token", "max_connections", "allowed_updates", "drop_pending_updates"]),
        "getWebhookInfo" => (&[], &[]),
        "sendMessage" => (&["chat_id", "text"], &["reply_markup", "reply_parameters", "link_preview_options"]),
        "editMessageText" => (&["chat_id", "message_id", "text"], &["reply_markup", "link_preview_options"]),
        "sendPhoto" => (&["chat_id", "photo"], &["caption", "reply_markup", "reply_parameters"]),
        "copyMessage" => (&["chat_id", "from_chat_id", "message_id"], &[]),
        "sendDocument" => (&["chat_id", "document"], &[]),
        "answerCallbackQuery" => (&["callback_query_id"], &["text", "show_alert"]),
        "setMyCommands" => (&["commands"], &["scope", "language_code"]),
        "deleteMyCommands" => (&[], &["scope", "language_code"]),
        _ => return vec![format!("{method}: not a method we are meant to call")],
    };
    for name in required {
        if fields.get(*name).is_none_or(Value::is_null) {
            found.push(format!("{method}: {name} is missing"));
        }
    }
    for (name, value) in fields {
        if !required.contains(&name.as_str()) && !optional.contains(&name.as_str()) {
            found.push(format!("{method}: {name} is not expected"));
        }
        if let Some(wrong) = field(method, name, value) {
            found.push(format!("{method}: {name}: {wrong}"));
        }
    }
    found
}

/// The same field means the same in every method.
fn field(method: &str, name: &str, value: &Value) -> Option<String> {
    let within = |low: i64, high: i64| match value.as_i64() {
        Some(number) if (low..=high).contains(&number) => None,
        _ => Some(format!("{value}: a number from {low} to {high} expected")),
    };
    match name {
        "chat_id" | "from_chat_id" => match value.as_i64() {
            Some(0) | None => Some(format!("{value}: a chat's number expected")),
            Some(_) => None,
        },
        "offset" => within(i64::from(i32::MIN), i64::from(i32::MAX)),
        "limit" | "max_connections" => within(1, 100),
        "url" => text(value, 8, 2048),
        "secret_token" => {
            let plain = |byte: u8| byte.is_ascii_alphanumeric() || byte == b'_' || byte == b'-';
            let fits = value.as_str().is_some_and(|all| (1..=256).contains(&all.len()) && all.bytes().all(plain));
            (!fits).then(|| "1 to 256 letters, digits, _ and - expected".into())
        }
        "timeout" => within(0, 50),
        "message_id" => within(1, i64::from(i32::MAX)),
        "text" if method == "sendMessage" || method == "editMessageText" => text(value, 1, 4096),
        "caption" => text(value, 0, 1024),
        "photo" => photo(value),
        "text" => text(value, 0, 200),
        "callback_query_id" => text(value, 1, 64),
        "allowed_updates" => {
            let all = value.as_array()?;
            all.iter()
                .find(|kind| !kind.as_str().is_some_and(|kind| UPDATE_KINDS.contains(&kind)))
                .map(|kind| format!("{kind} is no kind of update"))
        }
        "reply_parameters" => match value.get("message_id").and_then(Value::as_i64) {
            Some(number) if number > 0 => None,
            _ => Some("message_id is missing".into()),
        },
        "reply_markup" => keyboard(value),
        "link_preview_options" => {
            (!value.get("is_disabled").is_some_and(Value::is_boolean)).then(|| "is_disabled is no boolean".into())
        }
        "commands" => commands(value),
        "scope" => scope(value),
        "language_code" => (value.as_str().is_none_or(|code| code.len() != 2)).then(|| "two letters expected".into()),
        "document" => value.get("file_name").is_none().then(|| "no file came with it".into()),
        "drop_pending_updates" | "show_alert" => (!value.is_boolean()).then(|| "no boolean".into()),
        _ => None,
    }
}

/// Lengths are counted in UTF-16 units.
fn text(value: &Value, low: usize, high: usize) -> Option<String> {
    let Some(text) = value.as_str() else { return Some("no text".into()) };
    let units = text.encode_utf16().count();
    if text.trim().is_empty() && low > 0 {
        return Some("the text is empty".into());
    }
    (!(low..=high).contains(&units)).then(|| format!("{units} units long, {low} to {high} allowed"))
}

/// A photo that is uploaded: a file of at most 10 MB whose width and height add up to 10000 at most, one no more than
/// twenty times the other.
fn photo(value: &Value) -> Option<String> {
    let bytes = value.get("bytes").and_then(Value::as_u64).unwrap_or(0);
    let side = |name: &str| value.get(name).and_then(Value::as_u64).unwrap_or(0);
    let (width, height) = (side("width"), side("height"));
    if value.get("file_name").is_none() {
        return Some("no file came with it".into());
    }
    if bytes == 0 || bytes > 10_000_000 {
        return Some(format!("{bytes} bytes, 10 MB allowed"));
    }
    if width == 0 || height == 0 {
        return Some("it is no PNG".into());
    }
    let (long, short) = (width.max(height), width.min(height));
    (width + height > 10_000 || long > 20 * short).then(|| format!("{width} by {height} is not allowed"))
}

fn keyboard(value: &Value) -> Option<String> {
    let Some(rows) = value.get("inline_keyboard").and_then(Value::as_array) else {
        return Some("no inline keyboard".into());
    };
    let buttons: Vec<&Value> = rows.iter().filter_map(Value::as_array).flatten().collect();
    if buttons.is_empty() || buttons.len() > 100 {
        return Some(format!("{} buttons", buttons.len()));
    }
    buttons.into_iter().find_map(|button| {
        let says = button.get("text").and_then(Value::as_str).unwrap_or_default();
        let data = button.get("callback_data").and_then(Value::as_str).unwrap_or_default();
        let known = button.as_object().is_some_and(|all| all.keys().all(|key| key == "text" || key == "callback_data"));
        let fits = !says.trim().is_empty() && (1..=64).contains(&data.len()) && known;
        (!fits).then(|| format!("a button is not as published: {button}"))
    })
}

fn commands(value: &Value) -> Option<String> {
    let Some(all) = value.as_array().filter(|all| all.len() <= 100) else { return Some("no list of up to 100".into()) };
    all.iter().find_map(|command| {
        let word = command.get("command").and_then(Value::as_str).unwrap_or_default();
        let says = command.get("description").and_then(Value::as_str).unwrap_or_default();
        let plain = word.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_');
        let fits = (1..=32).contains(&word.len()) && plain && (1..=256).contains(&says.encode_utf16().count());
        (!fits).then(|| format!("a command is not as published: {command}"))
    })
}

fn scope(value: &Value) -> Option<String> {
    let kind = value.get("type").and_then(Value::as_str).unwrap_or_default();
    match kind {
        "default" | "all_private_chats" | "all_group_chats" | "all_chat_administrators" => None,
        "chat" => value.get("chat_id").and_then(Value::as_i64).is_none().then(|| "chat_id is missing".into()),
        _ => Some(format!("\"{kind}\" is no scope")),
    }
}
