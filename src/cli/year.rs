//! `year`: the year ahead of a site.

use super::arguments::{Arguments, Year};
use super::ask::{looks, print};
use super::front::Parts;
use super::refusal::Refusal;
use super::round::owner;
use crate::desk::{Desk, Message};
use crate::garden::rights::may_see_site;
use crate::garden::{Person, SiteId, Speaks};
use crate::script::Language;
use std::process::ExitCode;

/// What is said to ask for it: the words are those of the answer to this.
const QUESTION: &str = "what does my year look like";

pub fn run(year: &Year, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&year.front, arguments)?;
    let store = parts.store.as_ref();
    let from = match parts.person.clone() {
        Some(person) => Some(person),
        None => owner(store)?,
    };
    let person = from.as_ref().map(|id| store.person(id)).transpose()?.flatten();
    let site = seen(&year.site, person.as_ref(), &parts)?;
    let language = match person.and_then(|person| person.speaks) {
        Some(Speaks::Hindi) => Language::Hi,
        Some(Speaks::RomanisedHindi) => Language::HiLatn,
        Some(Speaks::English) | None => Language::En,
    };
    let message = Message { from, text: QUESTION.to_owned(), now: parts.now };
    // Nothing of the question is kept.
    let forgetful = parts.forgetful();
    let desk = Desk::new(parts.house, &forgetful, parts.forecast.as_ref()).speaking(Some(language));
    let reply = desk.answer_at(&site, &message)?;
    if year.json {
        print(&serde_json::to_string(&reply).map_err(Refusal::plain)?)?;
    } else {
        print(&looks().reply(&reply))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// The site by its id; one that this person may not see is as good as none.
fn seen(id: &str, person: Option<&Person>, parts: &Parts) -> Result<SiteId, Refusal> {
    let mut sites: Vec<SiteId> = parts.store.sites()?.into_iter().map(|site| site.id).collect();
    sites.retain(|site| may_see_site(person, site));
    if let Some(site) = sites.iter().find(|site| site.as_str() == id) {
        return Ok(site.clone());
    }
    let mut ids: Vec<&str> = sites.iter().map(SiteId::as_str).collect();
    ids.sort_unstable();
    let who = person.map_or_else(|| "a stranger".to_owned(), |person| format!("\"{}\"", person.id));
    let here = if ids.is_empty() { "none".to_owned() } else { ids.join(", ") };
    Err(Refusal::plain(format!("no site with the id \"{id}\" that {who} may see; there is {here}")))
}
