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
        let mut memory = self.memory();
        for letter in memory.at_hand.letters() {
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
                outbox.due.push(letter.clone());
            }
        }
        memory.on_their_way = outbox.due.iter().map(|letter| letter.chat).chain(busy.iter().copied()).collect();
        Ok(outbox)
    }

    /// Letters arrived, each as a message where the platform numbers it. They are noted together.
    ///
    /// # Errors
    /// When the store cannot be written: the letters will go out again.
    pub fn sent(&self, letters: &[(Letter, Option<i32>)], now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut memory = self.memory();
        let mut changes = Vec::new();
        for (letter, message) in letters {
            changes.push(letter.taken_away()?);
            // A person who asked to be forgotten meanwhile has no letter any more, and no mark of it is made.
            let still = memory.at_hand.has(letter);
            if let (Some(follow), Some(message), true) = (letter.follow.clone(), *message, still) {
                changes.push(Sent { chat: letter.chat, message, at: now, follow }.put()?);
            }
        }
        self.write(&mut memory, changes)
    }

    /// A letter did not arrive, or perhaps did: it is tried again later, unless it was taken away meanwhile.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn put_off(&self, letter: Letter, wait: Option<TimeDelta>, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut memory = self.memory();
        if !memory.at_hand.has(&letter) {
            return Ok(());
        }
        let later = letter.put_off(now, wait);
        let mut changes = vec![later.put_or_dropped()?];
        if later.state == State::Failed {
            changes.extend(untold(self.store.as_ref(), &later)?);
        }
        self.write(&mut memory, changes)
    }

    /// A letter that will never be taken: set aside, so that the next ones go out.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn refused(&self, letter: Letter) -> Result<(), StoreError> {
        let mut memory = self.memory();
        if !memory.at_hand.has(&letter) {
            return Ok(());
        }
        let mut changes = untold(self.store.as_ref(), &letter)?;
        changes.push(Letter { state: State::Failed, ..letter }.put_or_dropped()?);
        self.write(&mut memory, changes)
    }

    /// The chat shut us out: it is marked, and what waits for it is thrown away.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn shut_out(&self, chat: i64) -> Result<(), StoreError> {
        let mut memory = self.memory();
        let store = self.store.as_ref();
        let mut changes = Vec::new();
        for letter in memory.at_hand.letters().filter(|letter| letter.chat == chat) {
            changes.push(letter.taken_away()?);
            changes.extend(untold(store, letter)?);
        }
        if let Some(card) = Card::of_chat(store, chat)? {
            changes.push(Card { blocked: true, ..card }.put()?);
        }
        self.write(&mut memory, changes)
    }

    /// A group has another number now.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn moved(&self, letter: Letter, chat: i64) -> Result<(), StoreError> {
        let mut memory = self.memory();
        self.write(&mut memory, vec![Letter { chat, ..letter }.put()?])
    }
}
