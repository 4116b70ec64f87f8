//! The outbox: which letters are due, and what became of them.

use super::Reception;
use super::card::Card;
use super::letter::{Letter, Sent, State};
use super::reminder::untold;
use crate::garden::{Slip, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::BTreeSet;

/// The letters that may go out now, and when to look again.
#[derive(Debug, Clone, PartialEq)]
pub struct Outbox {
    /// The first of each chat.
    pub due: Vec<Letter>,
    pub look_again: Option<DateTime<Utc>>,
    /// All that wait.
    pub waiting: usize,
}

impl Reception {
    /// The first letter of each chat, but for busy chats and those that must wait.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn outbox(&self, now: DateTime<Utc>, busy: &BTreeSet<i64>) -> Result<Outbox, StoreError> {
        let mut outbox = Outbox { due: Vec::new(), look_again: None, waiting: 0 };
        let mut seen = BTreeSet::new();
        for letter in Letter::all(self.store.as_ref())? {
            if letter.state != State::Waiting || letter.is_late(now) {
                continue;
            }
            outbox.waiting += 1;
            if busy.contains(&letter.chat) || !seen.insert(letter.chat) {
                continue;
            }
            if !letter.may_go(now) {
                let sooner = outbox.look_again.is_none_or(|again| letter.not_before < again);
                outbox.look_again = if sooner { Some(letter.not_before) } else { outbox.look_again };
            } else {
                outbox.due.push(letter);
            }
        }
        Ok(outbox)
    }

    /// A letter arrived, as this message where the platform numbers it.
    ///
    /// # Errors
    /// When the store cannot be written: the letter will go out again.
    pub fn sent(&self, letter: &Letter, message: Option<i32>, now: DateTime<Utc>) -> Result<(), StoreError> {
        let _one_at_a_time = self.memory();
        let mut changes = vec![letter.taken_away()?];
        // A person who asked to be forgotten meanwhile has no letter any more, and no mark of it is made.
        let still = self.store.filed(Letter::DRAWER, &letter.key())?.is_some();
        if let (Some(follow), Some(message), true) = (letter.follow.clone(), message, still) {
            changes.push(Sent { chat: letter.chat, message, at: now, follow }.put()?);
        }
        self.store.write(changes)
    }

    /// A letter did not arrive, or perhaps did: it is tried again later, unless it was taken away meanwhile.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn put_off(&self, letter: Letter, wait: Option<TimeDelta>, now: DateTime<Utc>) -> Result<(), StoreError> {
        let _one_at_a_time = self.memory();
        if self.store.filed(Letter::DRAWER, &letter.key())?.is_none() {
            return Ok(());
        }
        let later = letter.put_off(now, wait);
        let mut changes = vec![later.put()?];
        if later.state == State::Failed {
            changes.extend(untold(self.store.as_ref(), &later)?);
        }
        self.store.write(changes)
    }

    /// A letter that will never be taken: set aside, so that the next ones go out.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn refused(&self, letter: Letter) -> Result<(), StoreError> {
        let _one_at_a_time = self.memory();
        if self.store.filed(Letter::DRAWER, &letter.key())?.is_none() {
            return Ok(());
        }
        let mut changes = untold(self.store.as_ref(), &letter)?;
        changes.push(Letter { state: State::Failed, ..letter }.put()?);
        self.store.write(changes)
    }

    /// The chat shut us out: it is marked, and what waits for it is thrown away.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn shut_out(&self, chat: i64) -> Result<(), StoreError> {
        let _one_at_a_time = self.memory();
        let store = self.store.as_ref();
        let mut changes = Vec::new();
        for letter in Letter::all(store)?.iter().filter(|letter| letter.chat == chat) {
            changes.push(letter.taken_away()?);
            changes.extend(untold(store, letter)?);
        }
        if let Some(card) = Card::of_chat(store, chat)? {
            changes.push(Card { blocked: true, ..card }.put()?);
        }
        self.store.write(changes)
    }

    /// A group has another number now.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn moved(&self, letter: Letter, chat: i64) -> Result<(), StoreError> {
        let _one_at_a_time = self.memory();
        self.store.write(vec![Letter { chat, ..letter }.put()?])
    }
}
