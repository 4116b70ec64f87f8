//! What the next words or the next place in a chat are for, where something was asked.

use super::turn::Turn;
use crate::garden::{BedId, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// A chat that was asked for something; one thing at a time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Awaits {
    pub chat: i64,
    pub at: DateTime<Utc>,
    pub what: Awaited,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Awaited {
    /// What was picked weighs so much.
    Weight { bed: BedId, crop: Option<String> },
    /// The words of a visit note, by its key.
    NoteText(String),
    /// Where a round starts.
    RoundStart,
    /// What a new site is called.
    SiteName {
        #[serde(default, skip_serializing_if = "Option::is_none")]
        position: Option<(f64, f64)>,
    },
    /// Where the new site of this draft lies.
    SitePlace(String),
}

impl Slip for Awaits {
    const DRAWER: &'static str = "awaits";
    fn key(&self) -> String {
        self.chat.to_string()
    }
}

impl Awaits {
    /// What comes later than this is a message of its own.
    pub const GOOD_FOR: TimeDelta = TimeDelta::hours(1);
}

impl Turn<'_> {
    /// The next words or place of this chat are for this.
    pub fn await_next(&mut self, what: Awaited) -> Result<(), StoreError> {
        let at = self.moment();
        self.sheet.write(vec![Awaits { chat: self.arrival.chat, at, what }.put()?])
    }

    /// What this chat was asked for and has not said.
    pub fn awaited(&self) -> Result<Option<Awaited>, StoreError> {
        let now = self.moment();
        let found = Awaits::find(self.sheet, &self.arrival.chat.to_string())?;
        Ok(found.filter(|awaits| now - awaits.at <= Awaits::GOOD_FOR).map(|awaits| awaits.what))
    }

    /// The chat is asked for nothing any more.
    pub fn await_nothing(&mut self) -> Result<(), StoreError> {
        match Awaits::find(self.sheet, &self.arrival.chat.to_string())? {
            Some(awaits) => self.sheet.write(vec![awaits.taken_away()?]),
            None => Ok(()),
        }
    }

    /// Words that were asked for; whether they were taken as such.
    pub fn takes_words(&mut self, text: &str) -> Result<bool, StoreError> {
        if self.arrival.edited {
            return Ok(false);
        }
        match self.awaited()? {
            Some(Awaited::Weight { bed, crop }) => self.weight_typed(&bed, crop, text),
            Some(Awaited::NoteText(key)) => self.note_changed(&key, text),
            Some(Awaited::SiteName { position }) => self.site_named(text, position),
            Some(Awaited::SitePlace(draft)) => self.site_placed_by_name(&draft, text),
            Some(Awaited::RoundStart) | None => Ok(false),
        }
    }

    /// A place that was asked for; whether it was taken as such.
    pub fn takes_place(&mut self, position: (f64, f64)) -> Result<bool, StoreError> {
        match self.awaited()? {
            Some(Awaited::RoundStart) => self.round_from(position).map(|()| true),
            Some(Awaited::SitePlace(draft)) => self.site_placed(&draft, position).map(|()| true),
            _ => Ok(false),
        }
    }
}
