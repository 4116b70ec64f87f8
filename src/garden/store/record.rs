//! Records as a store keeps them: of a kind, under a key.

use crate::garden::bed::Bed;
use crate::garden::conversation::Conversation;
use crate::garden::filed::Filed;
use crate::garden::job::JobDone;
use crate::garden::moved::Move;
use crate::garden::person::Person;
use crate::garden::planting::{Planting, Start};
use crate::garden::question::Question;
use crate::garden::seen::Seen;
use crate::garden::site::Site;
use crate::garden::word::words;

words!(
    /// The kinds of record; the word names the store's tree or table.
    Kind {
        Person = "people",
        Site = "sites",
        Bed = "beds",
        Planting = "plantings",
        Job = "jobs_done",
        Seen = "seen",
        Question = "questions",
        Conversation = "conversations",
        Filed = "filed",
        Move = "moves",
    }
);

/// One record of any kind.
#[derive(Debug, Clone, PartialEq)]
pub enum Record {
    Person(Person),
    Site(Site),
    Bed(Bed),
    Planting(Planting),
    Job(JobDone),
    Seen(Seen),
    Question(Question),
    Conversation(Conversation),
    Filed(Filed),
    Move(Move),
}

/// One change to the store.
#[derive(Debug, Clone, PartialEq)]
pub enum Change {
    /// Adds the record, or replaces the one with its key.
    Put(Record),
    /// Takes the record with this one's key away, if it is there.
    Remove(Record),
}

impl Change {
    pub fn put(record: impl Into<Record>) -> Self {
        Self::Put(record.into())
    }
    pub fn remove(record: impl Into<Record>) -> Self {
        Self::Remove(record.into())
    }
    #[must_use]
    pub const fn record(&self) -> &Record {
        match self {
            Self::Put(record) | Self::Remove(record) => record,
        }
    }
}

macro_rules! kinds {
    ($($kind:ident: $type:ident = $accessor:ident),+) => {
        $(
            impl From<$type> for Record {
                fn from(record: $type) -> Self {
                    Self::$kind(record)
                }
            }
        )+

        impl Record {
            #[must_use]
            pub const fn kind(&self) -> Kind {
                match self {
                    $(Self::$kind(_) => Kind::$kind),+
                }
            }

            $(
                #[must_use]
                pub fn $accessor(self) -> Option<$type> {
                    if let Self::$kind(record) = self { Some(record) } else { None }
                }
            )+

            /// The record as JSON.
            ///
            /// # Errors
            /// When a number in it is no JSON number.
            pub fn to_json(&self) -> Result<Vec<u8>, serde_json::Error> {
                match self {
                    $(Self::$kind(record) => serde_json::to_vec(record)),+
                }
            }

            /// Reads what [`Record::to_json`] wrote; fields that a later version added are passed over.
            ///
            /// # Errors
            /// When it is no record of this kind.
            pub fn from_json(kind: Kind, json: &[u8]) -> Result<Self, serde_json::Error> {
                match kind {
                    $(Kind::$kind => serde_json::from_slice(json).map(Self::$kind)),+
                }
            }
        }
    };
}

kinds!(
    Person: Person = person,
    Site: Site = site,
    Bed: Bed = bed,
    Planting: Planting = planting,
    Job: JobDone = job,
    Seen: Seen = seen,
    Question: Question = question,
    Conversation: Conversation = conversation,
    Filed: Filed = filed,
    Move: Move = moved
);

impl Record {
    /// What tells it from others of its kind. What happened in a bed is known by all that was said of
    /// it, so that the same record filed twice stands once; its day comes first, so that keys are in
    /// the order of time.
    #[must_use]
    pub fn key(&self) -> String {
        match self {
            Self::Person(person) => person.id.to_string(),
            Self::Site(site) => site.id.to_string(),
            Self::Bed(bed) => bed.id.to_string(),
            Self::Planting(planting) => {
                let how = if matches!(planting.start, Start::Sown(_)) { "sown" } else { "planted" };
                let size = if planting.microgreen { "microgreen" } else { "plant" };
                format!("{}|{}|{}|{how}|{size}", planting.bed, planting.start.date(), planting.crop)
            }
            Self::Job(job) => {
                let amount = job.amount.map_or_else(String::new, |amount| amount.to_string());
                format!("{}|{}|{}|{}|{amount}", job.bed, job.on, job.job, job.what.as_deref().unwrap_or_default())
            }
            Self::Seen(seen) => format!("{}|{}|{}", seen.bed, seen.on, seen.what),
            Self::Question(question) => question.id.to_string(),
            Self::Conversation(conversation) => conversation.person.to_string(),
            Self::Filed(filed) => format!("{}|{}", filed.drawer, filed.key),
            Self::Move(moved) => {
                format!("{}|{}|{}", moved.bed, moved.job, moved.what.as_deref().unwrap_or_default())
            }
        }
    }
}

/// FNV-1a, 64 bits (Fowler, Noll, Vo), over the parts with their lengths: any one changed byte changes it.
pub fn fingerprint(parts: &[&[u8]]) -> u64 {
    let mut hash = Fingerprint::default();
    for part in parts {
        hash.part(part.len() as u64);
        hash.bytes(part);
    }
    hash.0
}

/// The same of what is not held in one piece.
pub struct Fingerprint(pub u64);

impl Default for Fingerprint {
    fn default() -> Self {
        const BASIS: u64 = 0xcbf2_9ce4_8422_2325;
        Self(BASIS)
    }
}

impl Fingerprint {
    /// A part of so many bytes begins.
    pub fn part(&mut self, length: u64) {
        self.bytes(&length.to_le_bytes());
    }

    /// More of the part.
    pub fn bytes(&mut self, bytes: &[u8]) {
        const PRIME: u64 = 0x0000_0100_0000_01b3;
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(PRIME);
        }
    }
}
