//! What waits, kept at hand: arrivals to be answered and letters to be sent. The store has it all; this spares reading
//! its drawers through at every step, which would take longer with every message of the last days.

use super::arrival::Update;
use super::letter::{Letter, State};
use crate::garden::{Change, Filed, Record, Slip, Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};

/// The same as the store holds, after every write.
#[derive(Debug, Default)]
pub struct AtHand {
    arrivals: BTreeSet<u32>,
    /// Those that wait: what was set aside is only in the store.
    letters: BTreeMap<String, Letter>,
    /// The number of the last letter as the store was opened.
    pub last_letter: Option<u64>,
}

impl AtHand {
    /// What a store holds.
    pub fn of(store: &dyn Store) -> Result<Self, StoreError> {
        let mut all = Self::default();
        Update::each(store, &mut |update| {
            all.arrivals.extend(update.waiting.map(|_| update.number));
            Ok(())
        })?;
        Letter::each(store, &mut |letter| {
            all.last_letter = Some(letter.id);
            if letter.state == State::Waiting {
                all.letters.insert(letter.key(), letter);
            }
            Ok(())
        })?;
        Ok(all)
    }

    /// The numbers of the arrivals that wait longest, the oldest first.
    pub fn first(&self, count: usize) -> Vec<u32> {
        self.arrivals.iter().take(count).copied().collect()
    }

    /// An arrival waits no more.
    pub fn passed_over(&mut self, number: u32) {
        self.arrivals.remove(&number);
    }

    /// In the order in which they were written.
    pub fn letters(&self) -> impl Iterator<Item = &Letter> {
        self.letters.values()
    }

    /// Whether a letter waits still.
    pub fn has(&self, letter: &Letter) -> bool {
        self.letters.contains_key(&letter.key())
    }

    /// What was written to the store is noted here as well.
    pub fn follow(&mut self, changes: &[Change]) {
        for change in changes {
            match change {
                Change::Put(Record::Filed(filed)) => self.put(filed),
                Change::Remove(Record::Filed(filed)) => self.removed(filed),
                Change::Put(_) | Change::Remove(_) => {}
            }
        }
    }

    fn put(&mut self, filed: &Filed) {
        match filed.drawer.as_str() {
            Update::DRAWER => {
                let Ok(update) = serde_json::from_value::<Update>(filed.value.clone()) else { return };
                if update.waiting.is_some() {
                    self.arrivals.insert(update.number);
                } else {
                    self.arrivals.remove(&update.number);
                }
            }
            Letter::DRAWER => match serde_json::from_value::<Letter>(filed.value.clone()) {
                Ok(letter) if letter.state == State::Waiting => drop(self.letters.insert(filed.key.clone(), letter)),
                _ => drop(self.letters.remove(&filed.key)),
            },
            _ => {}
        }
    }

    fn removed(&mut self, filed: &Filed) {
        match filed.drawer.as_str() {
            Update::DRAWER => {
                if let Ok(number) = filed.key.parse() {
                    self.arrivals.remove(&number);
                }
            }
            Letter::DRAWER => {
                self.letters.remove(&filed.key);
            }
            _ => {}
        }
    }
}
