//! What the crew's buttons do.

use super::turn::Turn;
use crate::garden::{BedId, JobKind, SeenKind, SiteId, StoreError};
use serde::{Deserialize, Serialize};

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Tap {
    /// Something on the card of a bed.
    Bed {
        bed: BedId,
        act: Act,
    },
    Round(Step),
    /// Something with a visit note, by its key.
    Note {
        note: String,
        step: NoteStep,
    },
    /// Something with what was told and waits to be confirmed, by its key.
    Draft {
        draft: String,
        step: DraftStep,
    },
    /// Adds a site.
    NewSite {
        #[serde(default, skip_serializing_if = "Option::is_none")]
        position: Option<(f64, f64)>,
    },
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Act {
    Done {
        job: JobKind,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        what: Option<String>,
    },
    /// All that is due.
    All,
    Saw(SeenKind),
    /// Which crop was picked.
    Pick,
    /// How much of it.
    Weigh {
        crop: Option<String>,
    },
    Picked {
        crop: Option<String>,
        grams: Option<f64>,
    },
    TypeWeight {
        crop: Option<String>,
    },
    TakeBack,
    /// The card itself again.
    Card,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    Begin,
    AskStart,
    From { latitude_deg: f64, longitude_deg: f64 },
    AsGiven,
    Next,
    Skip,
    Others,
    Go(BedId),
    LeaveSite(SiteId),
    End,
    Anew,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NoteStep {
    Send,
    Change,
    Drop,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DraftStep {
    Keep,
    Change,
    Drop,
}

impl Turn<'_> {
    /// A button of the crew's was pressed; each asks for its rights again.
    pub fn tapped(&mut self, tap: Tap) -> Result<(), StoreError> {
        match tap {
            Tap::Bed { bed, act } => self.acts(&bed, act),
            Tap::Round(step) => self.round_step(step),
            Tap::Note { note, step } => self.note_step(&note, step),
            Tap::Draft { draft, step } => self.draft_step(&draft, step),
            Tap::NewSite { position } => self.new_site("", position),
        }
    }
}
