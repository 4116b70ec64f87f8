//! `questions`: what was handed over and waits for a person; answering it, and making drafts of it.

use super::arguments::{Arguments, Deed, Questions};
use super::ask::print;
use super::draft;
use super::front::{knowledge, store, system_clock};
use super::refusal::Refusal;
use crate::desk::reception::{ByHand, Waiting, answer_by_hand};
use serde_json::json;
use std::process::ExitCode;

pub fn run(questions: &Questions, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let store = store(arguments)?;
    let all = Waiting::all(store.as_ref())?;
    match &questions.deed {
        None => list(&all, questions.json)?,
        Some(Deed::Answer { number, text }) => {
            let waiting = numbered(&all, *number)?;
            let known = knowledge(arguments)?;
            let sent = answer_by_hand(store.as_ref(), &known, &waiting.question, &text.join(" "), system_clock())?;
            print(match sent {
                ByHand::OnItsWay => "on its way to the chat that asked",
                ByHand::NoChat => "the question waits no longer; whoever asked has no chat, so tell them yourself",
            })?;
        }
        Some(Deed::Draft { number, as_asking, as_article, into }) => {
            let waiting = numbered(&all, *number)?;
            let file =
                draft::write(waiting, as_asking.as_deref(), as_article.as_deref(), into, store.as_ref(), arguments)?;
            print(&format!("written: {}; `rooftend check {}` says what is missing", file.display(), into.display()))?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn numbered(all: &[Waiting], number: usize) -> Result<&Waiting, Refusal> {
    let found = number.checked_sub(1).and_then(|place| all.get(place));
    found.ok_or_else(|| Refusal::plain(format!("no question {number} waits; there are {}", all.len())))
}

fn list(all: &[Waiting], json: bool) -> Result<(), Refusal> {
    if all.is_empty() && !json {
        print("nothing waits")?;
    }
    for (place, waiting) in all.iter().enumerate() {
        let question = &waiting.question;
        if json {
            let line = json!({
                "number": place + 1, "id": question.id, "asked_at": question.asked_at, "text": question.text,
                "person": question.person, "sites": waiting.sites,
            });
            print(&without_null(line).to_string())?;
        } else {
            let who = waiting.asker.as_ref().map_or("a stranger", |asker| &asker.name);
            let at = question.asked_at.format("%Y-%m-%d %H:%M UTC");
            print(&format!("{}  {at}  {who}: {}", place + 1, question.text))?;
        }
    }
    Ok(())
}

/// What is missing is left out, never null.
fn without_null(mut line: serde_json::Value) -> serde_json::Value {
    if let Some(fields) = line.as_object_mut() {
        fields.retain(|_, value| !value.is_null());
    }
    line
}
