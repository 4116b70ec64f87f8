//! What was said so far with one person.

use super::id::PersonId;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// The state of one person's conversation; its content belongs to whoever leads it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Conversation {
    pub person: PersonId,
    /// When it last moved.
    pub at: DateTime<Utc>,
    pub state: serde_json::Value,
}
