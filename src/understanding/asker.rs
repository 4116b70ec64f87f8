//! What the asker may mean by a name: her own beds, and what was said before.

use super::everyone::Everyone;
use super::phrasebook::{By, Phrasebook};
use super::reading::Reading;
use crate::garden::{BedId, BedKind, Person};
use crate::knowledge::Ordinary;
use crate::script::{Language, Text};
use std::sync::Arc;

/// Who asks, as far as the meaning of a message depends on it.
#[derive(Debug, Clone)]
pub struct Asker {
    /// None for a stranger.
    pub who: Option<Person>,
    /// Only beds this person may see.
    pub beds: Arc<[OwnBed]>,
    /// What these beds are called.
    pub(super) called: Arc<Phrasebook<BedId>>,
    /// What everybody and every site is called, so that what she may not see is known as such, and never told of.
    pub everyone: Arc<Everyone>,
    /// What her last message in this conversation was taken to mean.
    pub before: Option<Reading>,
}

impl Asker {
    /// Someone who begins a conversation.
    #[must_use]
    pub fn of(who: Option<Person>, beds: Vec<OwnBed>, everyone: Arc<Everyone>) -> Self {
        // What a person calls her own bed may be any word.
        let mut called = Phrasebook::new(By::Stem, &Ordinary::default());
        for bed in &beds {
            let id = bed.id.bed().replace('-', " ");
            for name in bed.names.iter().map(String::as_str).chain([id.as_str()]) {
                called.add_phrase(name, Language::En, &bed.id);
                called.add_phrase(name, Language::HiLatn, &bed.id);
            }
        }
        Self { who, beds: beds.into(), called: Arc::new(called), everyone, before: None }
    }

    /// A message of hers: where its words tell no language, in that of the conversation.
    #[must_use]
    pub fn text(&self, message: &str) -> Text {
        match &self.before {
            Some(before) => Text::read_after(message, before.language),
            None => Text::read(message),
        }
    }

    /// The same who has said something before.
    #[must_use]
    pub fn after(self, before: Option<Reading>) -> Self {
        Self { before, ..self }
    }
}

impl Default for Asker {
    fn default() -> Self {
        Self::of(None, Vec::new(), Arc::default())
    }
}

/// A bed the asker may name.
#[derive(Debug, Clone)]
pub struct OwnBed {
    pub id: BedId,
    pub kind: BedKind,
    pub names: Vec<String>,
    /// What stands in it: crop id, and whether as a microgreen.
    pub crops: Vec<(String, bool)>,
}

impl OwnBed {
    /// Whether this crop stands here.
    #[must_use]
    pub fn has(&self, crop: &str) -> bool {
        self.crops.iter().any(|(standing, _)| standing == crop)
    }
}
