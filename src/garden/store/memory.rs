//! The store that holds nothing, which a store in memory lies over.

use super::Store;
use super::error::StoreError;
use super::record::{Change, Kind, Record};
use super::stamps::Stamp;

/// Nothing at all, and nothing can be written to it.
pub(super) struct Nothing;

pub(super) static NOTHING: Nothing = Nothing;

impl Store for Nothing {
    fn record(&self, _: Kind, _: &str) -> Result<Option<Record>, StoreError> {
        Ok(None)
    }
    fn records(&self, _: Kind, _: &str) -> Result<Vec<Record>, StoreError> {
        Ok(Vec::new())
    }
    fn stamp(&self, _: &str, _: &str) -> Option<Stamp> {
        Some(Stamp::NOTHING)
    }
    fn stamp_of(&self, _: Kind) -> Option<Stamp> {
        Some(Stamp::NOTHING)
    }
    fn write(&self, _: Vec<Change>) -> Result<(), StoreError> {
        Err(StoreError::Closed)
    }
}
