//! All that a store or a garden file holds.

use super::record::{Change, Record};
use crate::garden::bed::Bed;
use crate::garden::conversation::Conversation;
use crate::garden::filed::Filed;
use crate::garden::job::JobDone;
use crate::garden::moved::Move;
use crate::garden::person::Person;
use crate::garden::planting::Planting;
use crate::garden::question::Question;
use crate::garden::seen::Seen;
use crate::garden::site::Site;

/// A garden in the open. A garden file carries all but questions, conversations and slips; a backup carries all.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Garden {
    pub people: Vec<Person>,
    pub sites: Vec<Site>,
    pub beds: Vec<Bed>,
    pub plantings: Vec<Planting>,
    pub jobs: Vec<JobDone>,
    pub seen: Vec<Seen>,
    pub questions: Vec<Question>,
    pub conversations: Vec<Conversation>,
    pub filed: Vec<Filed>,
    pub moves: Vec<Move>,
}

impl Garden {
    /// Puts a record in its list.
    pub fn add(&mut self, record: Record) {
        match record {
            Record::Person(person) => self.people.push(person),
            Record::Site(site) => self.sites.push(site),
            Record::Bed(bed) => self.beds.push(bed),
            Record::Planting(planting) => self.plantings.push(planting),
            Record::Job(job) => self.jobs.push(job),
            Record::Seen(seen) => self.seen.push(seen),
            Record::Question(question) => self.questions.push(question),
            Record::Conversation(conversation) => self.conversations.push(conversation),
            Record::Filed(filed) => self.filed.push(filed),
            Record::Move(moved) => self.moves.push(moved),
        }
    }

    /// All of its records, kind by kind.
    #[must_use]
    pub fn into_records(self) -> Vec<Record> {
        let mut records: Vec<Record> = Vec::new();
        records.extend(self.people.into_iter().map(Record::Person));
        records.extend(self.sites.into_iter().map(Record::Site));
        records.extend(self.beds.into_iter().map(Record::Bed));
        records.extend(self.plantings.into_iter().map(Record::Planting));
        records.extend(self.jobs.into_iter().map(Record::Job));
        records.extend(self.seen.into_iter().map(Record::Seen));
        records.extend(self.questions.into_iter().map(Record::Question));
        records.extend(self.conversations.into_iter().map(Record::Conversation));
        records.extend(self.filed.into_iter().map(Record::Filed));
        records.extend(self.moves.into_iter().map(Record::Move));
        records
    }

    /// The changes that put all of it in a store.
    #[must_use]
    pub fn into_changes(self) -> Vec<Change> {
        self.into_records().into_iter().map(Change::Put).collect()
    }
}
