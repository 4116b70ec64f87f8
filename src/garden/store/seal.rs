//! The seal of the embedded store: how many records there are, and a mark made of all of them. It is
//! written with every change and checked on opening, so that a record that was lost or altered below
//! the store is noticed rather than answered from.

use super::record::{Kind, fingerprint};

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Seal {
    pub records: u64,
    mark: u64,
}

impl Seal {
    /// A record came.
    pub fn add(&mut self, kind: Kind, key: &[u8], value: &[u8]) {
        self.records = self.records.wrapping_add(1);
        self.mark ^= mark(kind, key, value);
    }

    /// A record went.
    pub fn remove(&mut self, kind: Kind, key: &[u8], value: &[u8]) {
        self.records = self.records.wrapping_sub(1);
        self.mark ^= mark(kind, key, value);
    }

    pub fn read(bytes: &[u8]) -> Option<Self> {
        let (records, mark) = bytes.split_first_chunk::<8>()?;
        let mark = <[u8; 8]>::try_from(mark).ok()?;
        Some(Self { records: u64::from_be_bytes(*records), mark: u64::from_be_bytes(mark) })
    }

    pub fn bytes(self) -> [u8; 16] {
        (u128::from(self.records) << 64 | u128::from(self.mark)).to_be_bytes()
    }
}

fn mark(kind: Kind, key: &[u8], value: &[u8]) -> u64 {
    fingerprint(&[kind.word().as_bytes(), key, value])
}
