//! What stands behind a button: a slip in the store that only its owner may use.

use super::tap::Tap;
use super::task::Task;
use super::undo::Told;
use crate::garden::{SiteId, Slip, StoreError};
use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// A button that was offered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Button {
    /// All that the platform is told.
    pub token: String,
    pub chat: i64,
    /// The only account that may press it.
    pub owner: i64,
    pub made: DateTime<Utc>,
    pub does: Does,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Does {
    /// As if the person had written this, in the conversation as it stood then.
    Say {
        text: String,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after: Option<serde_json::Value>,
    },
    /// Shows what was worked out when the answer was given.
    Show(String),
    /// A site lies here.
    Place { site: SiteId, latitude_deg: f64, longitude_deg: f64 },
    /// Draws the answer to this state of the conversation.
    Picture { state: serde_json::Value },
    /// The jobs of a reminder: which, and whether done, moved or explained, stands behind the token.
    Tasks(Vec<Task>),
    /// Another day for a job: which stands behind the token.
    Days { task: Task, days: Vec<NaiveDate> },
    /// What a button recorded is taken back.
    TakeBack(Box<Told>),
    /// All that is kept about the person goes.
    Forget,
    /// Nothing is done.
    Leave,
    /// A button of the crew's work.
    Crew(Tap),
}

impl Slip for Button {
    const DRAWER: &'static str = "buttons";
    fn key(&self) -> String {
        self.token.clone()
    }
}

impl Button {
    /// The token of a slip, and what stands behind it where one slip serves several buttons.
    #[must_use]
    pub fn parted(data: &str) -> (&str, &str) {
        data.split_once('-').unwrap_or((data, ""))
    }

    /// Whether it may be pressed again.
    #[must_use]
    pub const fn stays(&self) -> bool {
        matches!(self.does, Does::Show(_) | Does::Tasks(_) | Does::Days { .. })
    }

    /// A button that nobody pressed for so long is taken away.
    pub const GOOD_FOR: TimeDelta = TimeDelta::days(7);
}

/// Sixteen random letters and digits, 80 bits: what nobody guesses.
pub fn token() -> Result<String, StoreError> {
    const LETTERS: [char; 32] = [
        'a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'j', 'k', 'm', 'n', 'p', 'q', 'r', 's', 't', 'u', 'v', 'w', 'x', 'y',
        'z', '2', '3', '4', '5', '6', '7', '8', '9', 'i',
    ];
    let mut bytes = [0_u8; 16];
    getrandom::fill(&mut bytes).map_err(|fault| StoreError::Failed(fault.to_string()))?;
    Ok(bytes.iter().filter_map(|byte| LETTERS.get(usize::from(byte % 32))).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tokens_fit_a_button_and_differ() {
        let tokens: std::collections::BTreeSet<String> = (0..200).map(|_| token().unwrap()).collect();
        assert_eq!(tokens.len(), 200);
        assert!(tokens.iter().all(|token| token.len() == 16 && token.bytes().all(|byte| byte.is_ascii_alphanumeric())));
    }
}
