//! `round`: what is due, where, in the order to go round.

use super::arguments::{Arguments, Round};
use super::ask::{looks, print};
use super::front::{Parts, write_file};
use super::refusal::Refusal;
use crate::answering::Table;
use crate::desk::{Desk, Message};
use crate::drawing::{Words, page};
use crate::garden::{PersonId, Role, Store};
use crate::script::Language;
use chrono::NaiveDate;
use std::path::Path;
use std::process::ExitCode;

pub fn run(round: &Round, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&round.front, arguments)?;
    let from = asker(&parts)?;
    let message = Message { from, text: String::new(), now: parts.now };
    let forgetful = parts.forgetful();
    let language = round.speaks.map_or(Language::En, Language::from);
    let desk = parts.desk_over(&forgetful).speaking(Some(language));
    if let Some(file) = &round.page {
        return write_page(&desk, &message, round.on, &parts, file);
    }
    let reply = desk.round(&message, round.on)?;
    if round.json {
        print(&serde_json::to_string(&reply).map_err(Refusal::plain)?)?;
    } else {
        print(&looks().reply(&reply))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// The same answer as a page.
fn write_page(
    desk: &Desk<'_>,
    message: &Message,
    day: Option<NaiveDate>,
    parts: &Parts,
    file: &Path,
) -> Result<ExitCode, Refusal> {
    let looked = desk.due_on(message.from.as_ref(), day, message.now)?;
    let words =
        Words::new(&looked.answer, &parts.house.known, parts.house.phrases(looked.manner.language), looked.manner);
    let due = looked.answer.tables.iter().find_map(|table| match table {
        Table::Due(due) => Some(due),
        _ => None,
    });
    let due = due.ok_or_else(|| Refusal::plain("this person has no beds to go round"))?;
    write_file(file, page(due, &words).as_bytes())?;
    print(&format!("written: {}", file.display()))?;
    Ok(ExitCode::SUCCESS)
}

/// Whoever was named, else the owner.
pub fn asker(parts: &Parts) -> Result<Option<PersonId>, Refusal> {
    match parts.person.clone() {
        Some(person) => Ok(Some(person)),
        None => owner(parts.store.as_ref()),
    }
}

/// The owner goes round where nobody else is named.
pub fn owner(store: &dyn Store) -> Result<Option<PersonId>, Refusal> {
    Ok(store.people()?.into_iter().find(|person| person.role == Role::Owner).map(|person| person.id))
}
