//! Slips that other rooms keep beside the garden and write in one go with its records: updates taken
//! in, reminders going out, which chat is whose.

use super::store::{Change, Kind, Record, Store, StoreError};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

/// One slip in a named drawer; its content belongs to whoever filed it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Filed {
    pub drawer: String,
    /// Unique within its drawer; slips come back in the order of their keys.
    pub key: String,
    pub value: serde_json::Value,
}

/// A kind of slip with a drawer of its own.
pub trait Slip: Serialize + DeserializeOwned {
    const DRAWER: &'static str;

    /// Unique within the drawer.
    fn key(&self) -> String;

    /// The slip as the store keeps it.
    ///
    /// # Errors
    /// When it cannot be written as JSON.
    fn filed(&self) -> Result<Filed, StoreError> {
        let value = serde_json::to_value(self).map_err(|fault| StoreError::Failed(fault.to_string()))?;
        Ok(Filed { drawer: Self::DRAWER.to_owned(), key: self.key(), value })
    }

    /// The slip with this key; one that an older version wrote and this one cannot read is passed over.
    ///
    /// # Errors
    /// When the store cannot be read.
    fn find(store: &dyn Store, key: &str) -> Result<Option<Self>, StoreError> {
        Ok(store.filed(Self::DRAWER, key)?.and_then(|filed| serde_json::from_value(filed.value).ok()))
    }

    /// All of the drawer, in the order of the keys.
    ///
    /// # Errors
    /// When the store cannot be read.
    fn all(store: &dyn Store) -> Result<Vec<Self>, StoreError> {
        let filed = store.drawer(Self::DRAWER)?;
        Ok(filed.into_iter().filter_map(|filed| serde_json::from_value(filed.value).ok()).collect())
    }

    /// The slips of the drawer one after the other, for a drawer that may hold very many.
    ///
    /// # Errors
    /// When the store cannot be read; what `work` returns.
    fn each(store: &dyn Store, work: &mut dyn FnMut(Self) -> Result<(), StoreError>) -> Result<(), StoreError> {
        store.each(Kind::Filed, &format!("{}|", Self::DRAWER), &mut |record| {
            let read = record.filed().and_then(|filed| serde_json::from_value(filed.value).ok());
            read.map_or(Ok(()), &mut *work)
        })
    }

    /// Those whose keys begin so, in the order of the keys.
    ///
    /// # Errors
    /// When the store cannot be read.
    fn beginning(store: &dyn Store, prefix: &str) -> Result<Vec<Self>, StoreError> {
        let filed = store.records(Kind::Filed, &format!("{}|{prefix}", Self::DRAWER))?;
        let values = filed.into_iter().filter_map(Record::filed).map(|filed| filed.value);
        Ok(values.filter_map(|value| serde_json::from_value(value).ok()).collect())
    }

    /// The change that files it.
    ///
    /// # Errors
    /// As [`Slip::filed`].
    fn put(&self) -> Result<Change, StoreError> {
        self.filed().map(Change::put)
    }

    /// The change that takes it away.
    ///
    /// # Errors
    /// As [`Slip::filed`].
    fn taken_away(&self) -> Result<Change, StoreError> {
        self.filed().map(Change::remove)
    }
}
