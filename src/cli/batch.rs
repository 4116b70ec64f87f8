//! `ask --batch`: a file of messages, one JSON reply a line, nothing stored.

use super::arguments::{Arguments, Ask};
use super::ask::print;
use super::front::{Parts, person, read_text};
use super::refusal::Refusal;
use crate::desk::Message;
use crate::wording::Reply;
use chrono::{DateTime, FixedOffset};
use serde::Deserialize;
use serde_json::Value;
use std::path::Path;
use std::process::ExitCode;

/// One line of the input.
#[derive(Debug, Deserialize)]
struct Line {
    id: Value,
    message: String,
    #[serde(rename = "as")]
    person: Option<String>,
    now: Option<DateTime<FixedOffset>>,
    /// Earlier messages of the same conversation, oldest first.
    #[serde(default)]
    after: Vec<String>,
}

pub fn run(file: &Path, ask: &Ask, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let text = read_text(file)?;
    let parts = Parts::open(&ask.front, arguments)?;
    for (number, line) in text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        let at = |fault: String| Refusal::plain(format!("{}: line {}: {fault}", file.display(), number + 1));
        let line: Line = serde_json::from_str(line)
            .map_err(|fault| at(format!("{fault}; an object with \"id\" and \"message\" expected")))?;
        let reply = answer(line, &parts).map_err(|refusal| match refusal {
            Refusal::Plain(fault) => at(fault),
            other => other,
        })?;
        print(&serde_json::to_string(&reply).map_err(Refusal::plain)?)?;
    }
    Ok(ExitCode::SUCCESS)
}

/// Each line sees the store as it was, plus what its own earlier messages recorded.
fn answer(line: Line, parts: &Parts) -> Result<Reply, Refusal> {
    let from = match &line.person {
        Some(id) => Some(person(id, parts.store.as_ref())?),
        None => parts.person.clone(),
    };
    let now = line.now.unwrap_or(parts.now);
    let forgetful = parts.forgetful();
    let desk = parts.desk_over(&forgetful);
    for text in line.after {
        desk.answer(&Message { from: from.clone(), text, now })?;
    }
    let reply = desk.answer(&Message { from, text: line.message, now })?;
    Ok(Reply { id: Some(line.id), ..reply })
}
