//! What is past its use is taken away; what waits is listed.

use super::Reception;
use super::alerts::Alerted;
use super::arrival::Update;
use super::button::Button;
use super::invite::Invite;
use super::letter::{Letter, Sent, State};
use super::reminder::{Digested, Reminded};
use super::undo::Told;
use crate::desk::talk::REMEMBERED;
use crate::garden::{Change, Kind, Person, Question, SiteId, Slip, Store, StoreError};
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

/// So many are taken away in one write, so that nobody waits long behind it.
const AT_ONCE: usize = 500;

/// Those of a drawer that are past their use.
fn past<S: Slip>(store: &dyn Store, changes: &mut Vec<Change>, is_past: impl Fn(&S) -> bool) -> Result<(), StoreError> {
    S::each(store, &mut |slip| {
        if is_past(&slip) {
            changes.push(slip.taken_away()?);
        }
        Ok(())
    })
}

impl Reception {
    /// Takes away numbers of answered arrivals, old buttons, codes and marks, conversations that nobody goes on with;
    /// returns how many.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn sweep(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let store = self.store.as_ref();
        let mut changes = Vec::new();
        let old = |since: DateTime<Utc>, kept: TimeDelta| now - since > kept;
        past(store, &mut changes, |update: &Update| {
            update.waiting.is_none() && old(update.filed, Update::KNOWN_AGAIN)
        })?;
        past(store, &mut changes, |button: &Button| old(button.made, Button::GOOD_FOR))?;
        past(store, &mut changes, |invite: &Invite| old(invite.made, Invite::GOOD_FOR))?;
        past(store, &mut changes, |sent: &Sent| old(sent.at, sent.kept()))?;
        past(store, &mut changes, |told: &Told| old(told.at, Told::KEPT))?;
        past(store, &mut changes, |digested: &Digested| old(digested.at, Digested::KEPT))?;
        past(store, &mut changes, |alerted: &Alerted| old(alerted.at, Alerted::KEPT))?;
        past(store, &mut changes, |reminded: &Reminded| old(reminded.at, Reminded::KEPT))?;
        let failed = |letter: &Letter| letter.state == State::Failed && old(letter.written, FAILED_KEPT);
        past(store, &mut changes, failed)?;
        changes.extend(super::traces::old(store, now)?);
        let mut count = changes.len();
        // What is old is looked for beside the work of others: none of it is written any more but here.
        while !changes.is_empty() {
            let rest = changes.split_off(changes.len().min(AT_ONCE));
            self.write(&mut self.memory(), std::mem::replace(&mut changes, rest))?;
        }
        count += self.forget_conversations(now)?;
        Ok(count)
    }

    /// Conversations that nobody goes on with, and what was known of chats that are no more. A turn writes them anew:
    /// none runs meanwhile.
    fn forget_conversations(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let mut memory = self.memory();
        let mut changes = Vec::new();
        self.store.each(Kind::Conversation, "", &mut |record| {
            let conversation = record.conversation().filter(|conversation| now - conversation.at > REMEMBERED);
            changes.extend(conversation.map(Change::remove));
            Ok(())
        })?;
        let lately = (now - TimeDelta::days(2)).date_naive();
        memory.looked.retain(|_, (day, _)| *day >= lately);
        memory.strangers.retain(|_, (_, said)| now - *said <= REMEMBERED);
        let count = changes.len();
        if count > 0 {
            self.write(&mut memory, changes)?;
        }
        Ok(count)
    }
}
