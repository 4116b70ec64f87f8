//! What a message put in the store, so that an edited message takes it back first.

use super::arrival::Arrival;
use super::turn::Turn;
use crate::garden::{Change, Kind, Record, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// The records of one message, and what stood in their places before.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Told {
    chat: i64,
    message: i32,
    pub at: DateTime<Utc>,
    records: Vec<Kept>,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Kept {
    kind: Kind,
    now: Value,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    before: Option<Value>,
}

impl Slip for Told {
    const DRAWER: &'static str = "told";
    fn key(&self) -> String {
        key(self.chat, self.message)
    }
}

fn key(chat: i64, message: i32) -> String {
    format!("{chat}|{message}")
}

impl Told {
    /// People edit a message within two days or not at all: the platform allows no more.
    pub const KEPT: TimeDelta = TimeDelta::days(2);

    /// What these changes are, seen from the store as it was; none where nothing was recorded.
    pub fn of(
        arrival: &Arrival,
        now: DateTime<Utc>,
        before: &dyn Store,
        changes: &[Change],
    ) -> Result<Option<Self>, StoreError> {
        let mut records = Vec::new();
        for change in changes {
            let record = change.record();
            let kind = record.kind();
            let kept = !matches!(kind, Kind::Conversation | Kind::Filed);
            if kept && matches!(change, Change::Put(_)) {
                let was = before.record(kind, &record.key())?;
                records.push(Kept { kind, now: json(record)?, before: was.as_ref().map(json).transpose()? });
            }
        }
        let (chat, message) = (arrival.chat, arrival.message);
        Ok((!records.is_empty()).then_some(Self { chat, message, at: now, records }))
    }

    /// Whether it was told in this chat.
    pub fn is_of(&self, chat: Option<i64>) -> bool {
        Some(self.chat) == chat
    }

    pub fn changes_back(&self) -> Result<Vec<Change>, StoreError> {
        let mut changes = vec![self.taken_away()?];
        for kept in &self.records {
            changes.push(match &kept.before {
                Some(before) => Change::Put(record(kept.kind, before)?),
                None => Change::Remove(record(kept.kind, &kept.now)?),
            });
        }
        Ok(changes)
    }
}

impl Turn<'_> {
    /// Takes back what the message recorded before it was edited.
    pub fn take_back(&mut self) -> Result<(), StoreError> {
        let told = Told::find(self.sheet, &key(self.arrival.chat, self.arrival.message))?;
        match told {
            Some(told) => self.sheet.write(told.changes_back()?),
            None => Ok(()),
        }
    }
}

fn json(record: &Record) -> Result<Value, StoreError> {
    let failed = |fault: serde_json::Error| StoreError::Failed(fault.to_string());
    serde_json::from_slice(&record.to_json().map_err(failed)?).map_err(failed)
}

fn record(kind: Kind, value: &Value) -> Result<Record, StoreError> {
    let failed = |fault: serde_json::Error| StoreError::Failed(fault.to_string());
    Record::from_json(kind, &serde_json::to_vec(value).map_err(failed)?).map_err(failed)
}
