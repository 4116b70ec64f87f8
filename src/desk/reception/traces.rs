//! What the crew's work leaves in drawers: taken away when its person is forgotten, or when it is past its use.

use super::album::Album;
use super::awaits::Awaits;
use super::bed_card::OpenCard;
use super::draft::Draft;
use super::round::Round;
use super::visit::Visit;
use super::visit_note::Note;
use crate::garden::{Change, PersonId, Slip, Store, StoreError};
use chrono::{DateTime, Utc};

/// All that names a person: their round, notes for them; visits stay, without their name.
pub fn of_person(store: &dyn Store, person: &PersonId) -> Result<Vec<Change>, StoreError> {
    let mut changes = Vec::new();
    if let Some(round) = Round::find(store, person.as_str())? {
        changes.push(round.taken_away()?);
    }
    for note in Note::all(store)?.iter().filter(|note| note.client == *person) {
        changes.push(note.taken_away()?);
    }
    for visit in Visit::all(store)?.iter().filter_map(|visit| visit.without(person)) {
        changes.push(visit.put()?);
    }
    Ok(changes)
}

/// The visits that name a person.
pub fn visits_by(store: &dyn Store, person: &PersonId) -> Result<Vec<Visit>, StoreError> {
    Ok(Visit::all(store)?.into_iter().filter(|visit| visit.without(person).is_some()).collect())
}

/// All that belongs to a chat.
pub fn of_the_crews_work(store: &dyn Store, chat: Option<i64>) -> Result<Vec<Change>, StoreError> {
    let Some(chat) = chat else { return Ok(Vec::new()) };
    let mut changes = Vec::new();
    if let Some(card) = OpenCard::find(store, &chat.to_string())? {
        changes.push(card.taken_away()?);
    }
    if let Some(awaits) = Awaits::find(store, &chat.to_string())? {
        changes.push(awaits.taken_away()?);
    }
    for note in Note::all(store)?.iter().filter(|note| note.chat == chat) {
        changes.push(note.taken_away()?);
    }
    for draft in Draft::all(store)?.iter().filter(|draft| draft.chat == chat) {
        changes.push(draft.taken_away()?);
    }
    for album in Album::all(store)?.iter().filter(|album| album.chat == chat) {
        changes.push(album.taken_away()?);
    }
    Ok(changes)
}

/// What is older than it is of use.
pub fn old(store: &dyn Store, now: DateTime<Utc>) -> Result<Vec<Change>, StoreError> {
    let mut changes = Vec::new();
    for awaits in Awaits::all(store)?.iter().filter(|awaits| now - awaits.at > Awaits::GOOD_FOR) {
        changes.push(awaits.taken_away()?);
    }
    for note in Note::all(store)?.iter().filter(|note| now - note.at > Note::KEPT) {
        changes.push(note.taken_away()?);
    }
    for draft in Draft::all(store)?.iter().filter(|draft| now - draft.at > Draft::KEPT) {
        changes.push(draft.taken_away()?);
    }
    for album in Album::all(store)?.iter().filter(|album| now - album.at > Album::KEPT) {
        changes.push(album.taken_away()?);
    }
    let today = now.date_naive();
    for round in Round::all(store)?.iter().filter(|round| today - round.day > Round::KEPT) {
        changes.push(round.taken_away()?);
    }
    for visit in Visit::all(store)?.iter().filter(|visit| today - visit.day > Visit::KEPT) {
        changes.push(visit.taken_away()?);
    }
    Ok(changes)
}
