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
    let message = Message { from, text: String::new(), now: parts.now };
    let reply = parts.desk().speaking(Some(Language::En)).round(&message, round.on)?;
    if round.json {
        print(&serde_json::to_string(&reply).map_err(Refusal::plain)?)?;
    } else {
        print(&looks().reply(&reply))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// The owner goes round where nobody else is named.
fn owner(store: &dyn Store) -> Result<Option<PersonId>, Refusal> {
    Ok(store.people()?.into_iter().find(|person| person.role == Role::Owner).map(|person| person.id))
}
