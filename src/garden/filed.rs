//! Slips that other rooms keep beside the garden and write in one go with its records: updates taken
//! in, reminders going out, which chat is whose.

use serde::{Deserialize, Serialize};

/// One slip in a named drawer; its content belongs to whoever filed it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Filed {
    pub drawer: String,
    /// Unique within its drawer; slips come back in the order of their keys.
    pub key: String,
    pub value: serde_json::Value,
}
