//! What waits, kept at hand: arrivals to be answered and letters to be sent. The store has it all; this spares reading
//! its drawers through at every step, which would take longer with every message of the last days.

use super::arrival::Update;
use super::letter::Letter;
use crate::garden::{Change, Filed, Record, Slip, Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};

/// The same as the store holds, after every write.
#[derive(Debug, Default)]
pub struct AtHand {
    arrivals: BTreeSet<u32>,
    letters: BTreeMap<String, Letter>,
}

impl AtHand {
    /// What a store holds.
    pub fn of(store: &dyn Store) -> Result<Self, StoreError> {
        let waiting = Update::all(store)?.into_iter().filter(|update| update.waiting.is_some());
        let letters = Letter::all(store)?.into_iter().map(|letter| (letter.key(), letter));
        Ok(Self { arrivals: waiting.map(|update| update.number).collect(), letters: letters.collect() })
    }

    /// The numbers of the arrivals that wait longest, the oldest first.
    pub fn first(&self, count: usize) -> Vec<u32> {
        self.arrivals.iter().take(count).copied().collect()
    }

    /// An arrival waits no more.
    pub fn passed_over(&mut self, number: u32) {
        self.arrivals.remove(&number);
    }

    /// In the order in which they were written, those set aside among them.
    pub fn letters(&self) -> impl Iterator<Item = &Letter> {
        self.letters.values()
    }

    /// Whether a letter is there still.
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
            Letter::DRAWER => {
                if let Ok(letter) = serde_json::from_value::<Letter>(filed.value.clone()) {
                    self.letters.insert(filed.key.clone(), letter);
                }
            }
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
