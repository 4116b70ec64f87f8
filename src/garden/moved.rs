//! A job that a person moved to another day than its rhythm gives.

use super::id::{BedId, PersonId};
use super::job::JobKind;
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

/// One job of a bed, on the day that a person chose. There is at most one for each job of a bed: the last counts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Move {
    pub bed: BedId,
    pub job: JobKind,
    /// The crop of a picking or a sowing; nothing else parts the jobs of a bed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    /// The day it is to be done on.
    pub to: NaiveDate,
    /// None once that person was forgotten.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<PersonId>,
    pub at: DateTime<Utc>,
    /// The day on which the job was last done when it was moved: one done later ends the move.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<NaiveDate>,
}

impl Move {
    /// The jobs that a person may move; watering has its own rhythm and is not among them.
    pub const JOBS: [JobKind; 5] = [JobKind::Spray, JobKind::Feed, JobKind::Net, JobKind::Pick, JobKind::Sow];
}
