//! What another writer's types of the Bot API make of our calls, and of the updates that our server brings.

use frankenstein::methods::{
    AnswerCallbackQueryParams, CopyMessageParams, DeleteMyCommandsParams, DeleteWebhookParams, GetUpdatesParams,
    SendMessageParams, SetMyCommandsParams, SetWebhookParams,
};
use frankenstein::updates::Update;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// What differs in a call once it was read into those types and written again; nothing where all of it is known.
pub fn differs(method: &str, body: &Value) -> Option<String> {
    match method {
        "sendMessage" => again::<SendMessageParams>(method, body),
        "copyMessage" => again::<CopyMessageParams>(method, body),
        "answerCallbackQuery" => again::<AnswerCallbackQueryParams>(method, body),
        "setMyCommands" => again::<SetMyCommandsParams>(method, body),
        "deleteMyCommands" => again::<DeleteMyCommandsParams>(method, body),
        "getUpdates" => again::<GetUpdatesParams>(method, body),
        "setWebhook" => again::<SetWebhookParams>(method, body),
        "deleteWebhook" => again::<DeleteWebhookParams>(method, body),
        // No body, or a file: its form is looked at elsewhere.
        _ => None,
    }
}

/// Whether an update is one that those types can read.
pub fn unreadable(update: &Value) -> Option<String> {
    serde_json::from_value::<Update>(update.clone()).err().map(|fault| format!("update: {fault}: {update}"))
}

fn again<T: DeserializeOwned + Serialize>(method: &str, body: &Value) -> Option<String> {
    let read: T = match serde_json::from_value(body.clone()) {
        Ok(read) => read,
        Err(fault) => return Some(format!("{method}: {fault}: {body}")),
    };
    let written = serde_json::to_value(read).unwrap_or_default();
    (written != *body).then(|| format!("{method}: {body} was read as {written}"))
}
