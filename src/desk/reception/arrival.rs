//! What came in through a channel, as it is filed before anything is done about it.

use crate::garden::Slip;
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// One thing that a person did in a chat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Arrival {
    /// The channel's number for it; the same thing brought twice has the same number.
    pub number: u32,
    pub chat: i64,
    /// Several people read along.
    pub group: bool,
    /// Said to us: always in a private chat, by name in a group.
    pub addressed: bool,
    /// The account that did it.
    pub from: i64,
    pub name: String,
    /// The language of the person's app, as a tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<String>,
    /// The message it is, or belongs to.
    pub message: i32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reply_to: Option<i32>,
    pub edited: bool,
    /// When it was sent.
    pub at: DateTime<Utc>,
    pub what: What,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    Text(String),
    /// A button; `query` is what the channel wants acknowledged.
    Pressed {
        query: String,
        token: String,
    },
    Place {
        latitude_deg: f64,
        longitude_deg: f64,
    },
    /// A picture, a voice, a file: nothing we can read but its caption.
    Media {
        caption: String,
        /// The album that it is part of.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        album: Option<String>,
    },
    /// The person shut us out.
    Left,
    /// The person let us in again.
    CameBack,
    /// Nothing we do anything about.
    Other,
}

impl Arrival {
    /// What stands for something that no message brought; chat 0 is none.
    #[must_use]
    pub const fn of_nobody(chat: i64, at: DateTime<Utc>) -> Self {
        Self {
            number: 0,
            chat,
            group: false,
            addressed: false,
            from: chat,
            name: String::new(),
            language: None,
            message: 0,
            reply_to: None,
            edited: false,
            at,
            what: What::Other,
        }
    }
}

/// Where one arrival stands: it waits, or it was answered and is kept only to know it again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Update {
    pub number: u32,
    pub filed: DateTime<Utc>,
    /// Taken away once it was answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub waiting: Option<Arrival>,
}

impl Slip for Update {
    const DRAWER: &'static str = "updates";
    fn key(&self) -> String {
        Self::key_of(self.number)
    }
}

impl Update {
    /// A platform brings again what was not acknowledged for a day at most; after two nobody needs the number.
    pub const KNOWN_AGAIN: TimeDelta = TimeDelta::days(2);

    #[must_use]
    pub fn key_of(number: u32) -> String {
        format!("{number:010}")
    }

    #[must_use]
    pub fn new(arrival: Arrival, now: DateTime<Utc>) -> Self {
        Self { number: arrival.number, filed: now, waiting: Some(arrival) }
    }

    /// The same, answered: its number stays, its words do not.
    #[must_use]
    pub fn answered(number: u32, now: DateTime<Utc>) -> Self {
        Self { number, filed: now, waiting: None }
    }
}
