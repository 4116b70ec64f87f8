//! Questions handed over, waiting for a person of the crew.

use super::id::{PersonId, QuestionId};
use super::store::fingerprint;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// A question that the knowledge base has no good answer to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Question {
    pub id: QuestionId,
    /// Nobody known to the store: a stranger.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<PersonId>,
    pub asked_at: DateTime<Utc>,
    pub text: String,
    /// What the person was told meanwhile.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reply_so_far: Option<String>,
}

impl Question {
    /// A question with an id made of its time, asker and text: filed twice, it stands once.
    ///
    /// # Errors
    /// Never in practice; [`super::NotAnId`] if a year had a sign.
    pub fn asked(
        person: Option<PersonId>,
        asked_at: DateTime<Utc>,
        text: &str,
        reply_so_far: Option<String>,
    ) -> Result<Self, super::NotAnId> {
        let asker = person.as_ref().map_or("", PersonId::as_str);
        let mark = fingerprint(&[asker.as_bytes(), text.as_bytes()]);
        let id = QuestionId::new(&format!("{}-{:08x}", asked_at.format("%Y%m%d-%H%M%S"), mark & 0xffff_ffff))?;
        Ok(Self { id, person, asked_at, text: text.into(), reply_so_far })
    }
}
