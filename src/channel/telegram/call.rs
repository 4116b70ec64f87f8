//! One call, with a JSON body or with a file. The client library waits ten seconds on a server's trouble before it says
//! so; what could go out again within one must not: every call is made here.

use super::fault::Fault;
use reqwest::RequestBuilder;
use reqwest::multipart::{Form, Part};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use std::time::Duration;
use teloxide::Bot;
use teloxide::requests::Payload;

const UNWRITTEN: &str = "the call could not be written";

/// What every call is answered with.
#[derive(Deserialize)]
struct Answer<T> {
    ok: bool,
    result: Option<T>,
    #[serde(default)]
    error_code: u16,
    #[serde(default)]
    description: String,
    #[serde(default)]
    parameters: Parameters,
}

#[derive(Default, Deserialize)]
struct Parameters {
    retry_after: Option<u64>,
    migrate_to_chat_id: Option<i64>,
}

/// All that is read of a message that was sent.
#[derive(Deserialize)]
pub struct Numbered {
    pub message_id: i32,
}

/// Makes a call and reads of its answer what is asked for.
///
/// # Errors
/// A [`Fault`], which holds nothing of the address or the message.
pub async fn call<P: Payload + Serialize, T: DeserializeOwned>(bot: &Bot, payload: &P) -> Result<T, Fault> {
    let body = serde_json::to_vec(payload).map_err(|_| Fault::Refused(UNWRITTEN))?;
    answer_to(request(bot, P::NAME).header("Content-Type", "application/json").body(body)).await
}

/// A file that goes along with a call.
pub struct Attached<'f> {
    /// The parameter that it is.
    pub parameter: &'static str,
    pub name: &'f str,
    pub bytes: Vec<u8>,
}

/// Makes a call of these parameters with a file ("Sending files" of the published Bot API: `multipart/form-data`, where
/// what is neither text nor number is written as JSON).
///
/// # Errors
/// As [`call`].
pub async fn call_with_file<T: DeserializeOwned>(
    bot: &Bot,
    method: &str,
    parameters: Vec<(&'static str, String)>,
    file: Attached<'_>,
) -> Result<T, Fault> {
    let part = Part::bytes(file.bytes).file_name(file.name.to_owned());
    let form = parameters.into_iter().fold(Form::new(), |form, (name, value)| form.text(name, value));
    answer_to(request(bot, method).multipart(form.part(file.parameter, part))).await
}

/// A value as a parameter beside a file.
///
/// # Errors
/// [`Fault::Refused`] where it is no JSON.
pub fn parameter(value: &impl Serialize) -> Result<String, Fault> {
    serde_json::to_string(value).map_err(|_| Fault::Refused(UNWRITTEN))
}

fn request(bot: &Bot, method: &str) -> RequestBuilder {
    let mut address = bot.api_url();
    address.set_path(&format!("/bot{}/{method}", bot.token()));
    bot.client().post(address)
}

async fn answer_to<T: DeserializeOwned>(request: RequestBuilder) -> Result<T, Fault> {
    let answered = request.send().await.map_err(|fault| Fault::of_network(&fault))?;
    let trouble = answered.status().is_server_error();
    let text = answered.text().await.map_err(|fault| Fault::of_network(&fault))?;
    match serde_json::from_str::<Answer<T>>(&text) {
        Ok(Answer { ok: true, result: Some(result), .. }) => Ok(result),
        Ok(answer) if !answer.ok => Err(refused(&answer)),
        _ if trouble => Err(Fault::Later("the server has trouble")),
        _ => Err(Fault::Later("the answer could not be read")),
    }
}

fn refused<T>(answer: &Answer<T>) -> Fault {
    if let Some(seconds) = answer.parameters.retry_after {
        return Fault::TooFast(Duration::from_secs(seconds));
    }
    if let Some(chat) = answer.parameters.migrate_to_chat_id {
        return Fault::Moved(chat);
    }
    match answer.error_code {
        401 | 404 => Fault::Token,
        400..500 => Fault::of_text(&answer.description),
        _ => Fault::Later("the server has trouble"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::channel::telegram::fault::{SAYS_SO_ALREADY, STANDS_NO_MORE};

    #[track_caller]
    fn case(answer: &str, expected: Fault) {
        let answer: Answer<bool> = serde_json::from_str(answer).unwrap();
        assert_eq!(refused(&answer), expected);
    }

    /// Answers as the published Bot API describes them ("Making requests", `ResponseParameters`).
    #[test]
    fn refusals_have_their_meaning() {
        case(
            r#"{"ok":false,"error_code":429,"description":"Too Many Requests: retry after 7","parameters":{"retry_after":7}}"#,
            Fault::TooFast(Duration::from_secs(7)),
        );
        case(
            r#"{"ok":false,"error_code":400,"description":"Bad Request: group chat was upgraded","parameters":{"migrate_to_chat_id":-100}}"#,
            Fault::Moved(-100),
        );
        case(r#"{"ok":false,"error_code":403,"description":"Forbidden: bot was blocked by the user"}"#, Fault::ShutOut);
        case(
            r#"{"ok":false,"error_code":400,"description":"Bad Request: chat not found"}"#,
            Fault::Refused("bad request"),
        );
        case(
            r#"{"ok":false,"error_code":400,"description":"Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message"}"#,
            Fault::Refused(SAYS_SO_ALREADY),
        );
        case(
            r#"{"ok":false,"error_code":400,"description":"Bad Request: message to edit not found"}"#,
            Fault::Refused(STANDS_NO_MORE),
        );
        case(
            r#"{"ok":false,"error_code":409,"description":"Conflict: terminated by other getUpdates request; make sure that only one bot instance is running"}"#,
            Fault::Rival,
        );
        case(r#"{"ok":false,"error_code":401,"description":"Unauthorized"}"#, Fault::Token);
        case(
            r#"{"ok":false,"error_code":500,"description":"Internal Server Error"}"#,
            Fault::Later("the server has trouble"),
        );
        case(
            r#"{"ok":false,"error_code":429,"description":"Too Many Requests"}"#,
            Fault::Later("the server has trouble"),
        );
    }
}
