//! `questions`: what was handed over and waits for a person.

use super::arguments::{Arguments, Questions};
use super::ask::print;
use super::front::store;
use super::refusal::Refusal;
use crate::desk::reception::Waiting;
use serde_json::json;
use std::process::ExitCode;

pub fn run(questions: &Questions, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let store = store(arguments)?;
    let all = Waiting::all(store.as_ref())?;
    if all.is_empty() && !questions.json {
        print("nothing waits")?;
    }
    for waiting in all {
        let question = &waiting.question;
        if questions.json {
            let line = json!({
                "id": question.id, "asked_at": question.asked_at, "text": question.text,
                "person": question.person, "sites": waiting.sites,
            });
            print(&without_null(line).to_string())?;
        } else {
            let who = waiting.asker.map_or_else(|| "a stranger".to_owned(), |asker| asker.name);
            print(&format!("{}  {who}: {}", question.asked_at.format("%Y-%m-%d %H:%M UTC"), question.text))?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

/// What is missing is left out, never null.
fn without_null(mut line: serde_json::Value) -> serde_json::Value {
    if let Some(fields) = line.as_object_mut() {
        fields.retain(|_, value| !value.is_null());
    }
    line
}
