//! Stamps: by them a reader that keeps what it made of some slips knows that they are still the same.

use super::record::Kind;
use std::sync::atomic::{AtomicU64, Ordering};

/// Slips are told apart by so many places. What shares a place is read again once too often, never too seldom.
const PLACES: usize = 4096;

/// How some slips of a store stand; it is another one after each write to them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stamp {
    /// Which store of this process.
    store: u64,
    writes: u64,
}

impl Stamp {
    /// Of a store that nothing is ever written to.
    pub(super) const NOTHING: Self = Self { store: 0, writes: 0 };
}

/// The writes of one store, counted by what they were to.
pub struct Stamps {
    store: u64,
    /// To slips, by their places.
    writes: Vec<AtomicU64>,
    /// To all of a kind.
    kinds: Vec<AtomicU64>,
}

impl Stamps {
    pub fn new() -> Self {
        static STORES: AtomicU64 = AtomicU64::new(1);
        let store = STORES.fetch_add(1, Ordering::Relaxed);
        let none = |many: usize| (0..many).map(|_| AtomicU64::new(0)).collect();
        Self { store, writes: none(PLACES), kinds: none(Kind::ALL.len()) }
    }

    /// How the slips stand whose keys begin like this one, up to its second bar: its drawer and the first part.
    pub fn of(&self, key: &str) -> Stamp {
        let writes = self.writes.get(place(key)).map_or(0, |writes| writes.load(Ordering::Acquire));
        Stamp { store: self.store, writes }
    }

    /// How all records of a kind stand.
    pub fn of_kind(&self, kind: Kind) -> Stamp {
        let writes = place_of_kind(kind).and_then(|place| self.kinds.get(place));
        Stamp { store: self.store, writes: writes.map_or(0, |writes| writes.load(Ordering::Acquire)) }
    }

    /// Something of a kind was written under this key.
    pub fn written(&self, kind: Kind, key: &str) {
        let slip = self.writes.get(place(key)).filter(|_| kind == Kind::Filed);
        let of_kind = place_of_kind(kind).and_then(|place| self.kinds.get(place));
        for writes in slip.into_iter().chain(of_kind) {
            writes.fetch_add(1, Ordering::Release);
        }
    }
}

fn place_of_kind(kind: Kind) -> Option<usize> {
    Kind::ALL.iter().position(|one| *one == kind)
}

/// The drawer and the first part of a key.
pub fn head(key: &str) -> &str {
    let second = key.match_indices('|').nth(1).map_or(key.len(), |(at, _)| at);
    key.get(..second).unwrap_or(key)
}

fn place(key: &str) -> usize {
    super::record::fingerprint(&[head(key).as_bytes()]) as usize % PLACES
}
