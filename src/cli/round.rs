//! `round`: what is due, where, in the order to go round.

use super::arguments::{Arguments, Round};
use super::ask::{looks, print};
use super::front::Parts;
use super::refusal::Refusal;
use crate::desk::Message;
use crate::garden::{PersonId, Role, Store};
use crate::script::Language;
use std::process::ExitCode;

pub fn run(round: &Round, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&round.front, arguments)?;
    let from = match parts.person.clone() {
        Some(person) => Some(person),
        None => owner(parts.store.as_ref())?,
    };
    let day = round.on.map_or_else(|| "today".to_owned(), |day| format!("on {}", day.format("%-d %B %Y")));
    // The words of a round are those of the answer to this question, and nothing of it is kept.
    let message = Message { from, text: format!("what is due {day}"), now: parts.now };
    let forgetful = parts.forgetful();
    let reply = parts.desk_over(&forgetful).speaking(Some(Language::En)).answer(&message)?;
    if round.json {
        print(&serde_json::to_string(&reply).map_err(Refusal::plain)?)?;
    } else {
        print(&looks().reply(&reply))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// The owner goes round where nobody else is named.
pub fn owner(store: &dyn Store) -> Result<Option<PersonId>, Refusal> {
    Ok(store.people()?.into_iter().find(|person| person.role == Role::Owner).map(|person| person.id))
}
