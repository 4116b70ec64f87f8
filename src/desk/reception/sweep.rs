//! What is past its use is taken away; what waits is listed.

use super::Reception;
use super::alerts::Alerted;
use super::arrival::Update;
use super::button::Button;
use super::invite::Invite;
use super::letter::{Letter, Sent, State};
use super::reminder::{Digested, Reminded};
use super::undo::Told;
use crate::garden::{Person, Question, SiteId, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};

/// A letter that failed is kept for so long.
const FAILED_KEPT: TimeDelta = TimeDelta::days(7);

/// A question that waits, and who asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Waiting {
    pub question: Question,
    pub asker: Option<Person>,
    pub sites: Vec<SiteId>,
}

/// The questions that wait, oldest first.
///
/// # Errors
/// When the store cannot be read.
pub fn waiting(store: &dyn Store) -> Result<Vec<Waiting>, StoreError> {
    let mut all = Vec::new();
    for question in store.questions()? {
        let asker = match &question.person {
            Some(person) => store.person(person)?,
            None => None,
        };
        let sites = asker.as_ref().map(|asker| asker.sites.clone()).unwrap_or_default();
        all.push(Waiting { question, asker, sites });
    }
    Ok(all)
}

impl Waiting {
    /// All of a store.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn all(store: &dyn Store) -> Result<Vec<Self>, StoreError> {
        waiting(store)
    }
}

impl Reception {
    /// Takes away numbers of answered arrivals, old buttons, codes and marks; returns how many.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn sweep(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let store = self.store.as_ref();
        let mut changes = Vec::new();
        let old = |since: DateTime<Utc>, kept: TimeDelta| now - since > kept;
        for update in Update::all(store)? {
            if update.waiting.is_none() && old(update.filed, Update::KNOWN_AGAIN) {
                changes.push(update.taken_away()?);
            }
        }
        for button in Button::all(store)?.iter().filter(|button| old(button.made, Button::GOOD_FOR)) {
            changes.push(button.taken_away()?);
        }
        for invite in Invite::all(store)?.iter().filter(|invite| old(invite.made, Invite::GOOD_FOR)) {
            changes.push(invite.taken_away()?);
        }
        for sent in Sent::all(store)?.iter().filter(|sent| old(sent.at, Sent::KEPT)) {
            changes.push(sent.taken_away()?);
        }
        for told in Told::all(store)?.iter().filter(|told| old(told.at, Told::KEPT)) {
            changes.push(told.taken_away()?);
        }
        for digested in Digested::all(store)?.iter().filter(|digested| old(digested.at, Digested::KEPT)) {
            changes.push(digested.taken_away()?);
        }
        for alerted in Alerted::all(store)?.iter().filter(|alerted| old(alerted.at, Alerted::KEPT)) {
            changes.push(alerted.taken_away()?);
        }
        changes.extend(super::traces::old(store, now)?);
        for reminded in Reminded::all(store)?.iter().filter(|reminded| old(reminded.at, Reminded::KEPT)) {
            changes.push(reminded.taken_away()?);
        }
        for letter in Letter::all(store)? {
            if letter.state == State::Failed && old(letter.written, FAILED_KEPT) {
                changes.push(letter.taken_away()?);
            }
        }
        let count = changes.len();
        if count > 0 {
            // What is old is looked for beside the work of others: none of it is written any more but here.
            self.write(&mut self.memory(), changes)?;
        }
        Ok(count)
    }
}
