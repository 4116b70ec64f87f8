//! The card of a chat: whose it is, which language it speaks.

use crate::garden::{PersonId, Slip, Store, StoreError};
use crate::script::Language;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// What is kept of a chat; a stranger's has no person and is not kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Card {
    pub chat: i64,
    pub person: PersonId,
    /// The language of the last message.
    pub language: Language,
    pub since: DateTime<Utc>,
    /// The person shut us out; nothing is sent.
    #[serde(default)]
    pub blocked: bool,
}

impl Slip for Card {
    const DRAWER: &'static str = "chats";
    fn key(&self) -> String {
        self.chat.to_string()
    }
}

impl Card {
    pub fn of_chat(store: &dyn Store, chat: i64) -> Result<Option<Self>, StoreError> {
        Self::find(store, &chat.to_string())
    }

    pub fn of_person(store: &dyn Store, person: &PersonId) -> Result<Option<Self>, StoreError> {
        Ok(Self::all(store)?.into_iter().find(|card| card.person == *person))
    }
}
