//! One message in, one reply out.

mod look;

pub use look::Looked;

use super::fetch::{Seen, seen};
use super::house::House;
use super::sky::Handed;
use super::told_sky;
use crate::answering::{Answer, Facts, Line, Outcome, Said, answer};
use crate::garden::{Change, Conversation, Person, PersonId, Question, Record, SiteId, Store, StoreError};
use crate::knowledge::Kind;
use crate::script::Language;
use crate::understanding::{Reader, Reading, read};
use crate::weather::Forecast;
use crate::wording::{Manner, Reply, reply};
use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta, Utc};
use std::sync::Mutex;

/// What a person sent.
#[derive(Debug, Clone)]
pub struct Message {
    /// None for a stranger.
    pub from: Option<PersonId>,
    pub text: String,
    pub now: DateTime<FixedOffset>,
}

/// Leads conversations over one store.
pub struct Desk<'a> {
    house: &'a House,
    store: &'a dyn Store,
    handed: Handed<'a>,
    /// What the stranger of this desk said last: nothing of a stranger is stored.
    stranger: Mutex<Option<Reading>>,
    /// The language of the replies, where the person chose one.
    speaks: Option<Language>,
}

/// A conversation is forgotten after this long.
pub const REMEMBERED: TimeDelta = TimeDelta::hours(24);

impl<'a> Desk<'a> {
    /// A forecast that is given fixes the weather; without one it is the store's.
    #[must_use]
    pub fn new(house: &'a House, store: &'a dyn Store, forecast: Option<&'a Forecast>) -> Self {
        let handed = forecast.map_or(Handed::Nothing, Handed::Fixed);
        Self { house, store, handed, stranger: Mutex::new(None), speaks: None }
    }

    /// The same desk with a forecast that does not fix the weather but joins what the store has.
    #[must_use]
    pub fn handed(self, handed: Handed<'a>) -> Self {
        Self { handed, ..self }
    }

    /// The same desk, remembering what its stranger said before.
    #[must_use]
    pub fn recalling(self, said: Option<Reading>) -> Self {
        Self { stranger: Mutex::new(said), ..self }
    }

    /// The same desk, answering in this language whatever the message is in.
    #[must_use]
    pub const fn speaking(mut self, language: Option<Language>) -> Self {
        self.speaks = language;
        self
    }

    /// What its stranger said last.
    #[must_use]
    pub fn recalled(&self) -> Option<Reading> {
        self.stranger.lock().map(|last| last.clone()).unwrap_or_default()
    }

    /// Answers a message and files what it records.
    ///
    /// # Errors
    /// When the store cannot be read. A store that cannot be written is told in the reply: nothing is called
    /// recorded that is not kept.
    pub fn answer(&self, message: &Message) -> Result<Reply, StoreError> {
        self.answer_about(message, None)
    }

    /// The same, of one site, whatever the message names; nothing of it waits behind "more".
    ///
    /// # Errors
    /// As [`Desk::answer`].
    pub fn answer_at(&self, site: &SiteId, message: &Message) -> Result<Reply, StoreError> {
        self.answer_about(message, Some(site))
    }

    fn answer_about(&self, message: &Message, site: Option<&SiteId>) -> Result<Reply, StoreError> {
        let asker = match &message.from {
            Some(id) => self.store.person(id)?,
            None => None,
        };
        let before = self.before(asker.as_ref(), message.now)?;
        let seen = seen(self.house, self.store, self.handed, asker.clone(), message.now)?;
        let (mut reading, others) = self.read(message, &seen, before.clone());
        reading.sites.extend(site.filter(|site| !reading.sites.contains(site)).cloned());
        let facts = seen.facts(self.house, self.handed.any(), &reading).under_told_sky(&reading);
        let kept = told_sky::kept(self.store, &reading, &facts, asker.as_ref(), message.now)?;
        let (answered, open) = together(&reading, &others, &facts);
        let answered = if site.is_some() { whole(answered) } else { answered };
        // A record that is corrected is worked out again from what was said, and taken back.
        let wrong = match before {
            Some(before) if reading.corrects || reading.undo => answer(&before, &facts).records,
            _ => Vec::new(),
        };
        Ok(self.file(message, asker.as_ref(), open.unwrap_or(&reading), answered, (wrong, kept)))
    }

    /// Answers what no text stood behind, a button: files what it records as for a message.
    ///
    /// # Errors
    /// As [`Desk::answer`].
    pub fn answer_reading(&self, message: &Message, reading: &Reading) -> Result<Reply, StoreError> {
        let (asker, facts) = self.facts(message, reading)?;
        Ok(self.file(message, asker.as_ref(), reading, answer(reading, &facts), (Vec::new(), Vec::new())))
    }

    /// What is due on a day, in the order of a round; nothing of it is kept.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn round(&self, message: &Message, day: Option<NaiveDate>) -> Result<Reply, StoreError> {
        let language = self.speaks.unwrap_or_default();
        let (_, facts) = self.facts(message, &Reading::default())?;
        let day = day.unwrap_or(facts.today());
        let days = vec![(day, day)];
        let reading = Reading { kind: Kind::Due, sureness: 1.0, language, days, all_beds: true, ..Reading::default() };
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        Ok(reply(&answer(&reading, &facts), &self.house.known, self.house.phrases(language), manner))
    }

    /// Who asks, and what an answer to a reading rests on.
    fn facts(&self, message: &Message, reading: &Reading) -> Result<(Option<Person>, Facts<'a>), StoreError> {
        let asker = match &message.from {
            Some(id) => self.store.person(id)?,
            None => None,
        };
        let seen = seen(self.house, self.store, self.handed, asker.clone(), message.now)?;
        Ok((asker, seen.facts(self.house, self.handed.any(), reading)))
    }

    /// The reading of a message; "why?" is read as the message before, its working asked for.
    fn read(&self, message: &Message, seen: &Seen<'_>, before: Option<Reading>) -> (Reading, Vec<Reading>) {
        let reader = Reader { known: &self.house.known, index: &self.house.index, gazetteer: &self.house.gazetteer };
        let names = seen.names(before.clone());
        let today = seen.now.date_naive();
        let (mut reading, mut others) = read(&message.text, &reader, &names, today);
        // "Today" is the day of the beds that are meant: known only once they are read.
        let there = seen.day_of(&reading);
        if there != today {
            (reading, others) = read(&message.text, &reader, &names, there);
        }
        let speaks = reading.speaks.or(before.as_ref().and_then(|before| before.speaks));
        let (mut reading, others) = match before {
            Some(before) if reading.why => (Reading { why: true, language: reading.language, ..before }, Vec::new()),
            Some(before) if reading.once_more => {
                let (language, shorter) = (reading.language, reading.shorter);
                (Reading { once_more: true, shorter, language, ..before }, Vec::new())
            }
            _ => (reading, others),
        };
        reading.speaks = speaks;
        (reading, others.into_iter().map(|other| Reading { speaks, ..other }).collect())
    }

    fn before(&self, asker: Option<&Person>, now: DateTime<FixedOffset>) -> Result<Option<Reading>, StoreError> {
        let Some(asker) = asker else {
            return Ok(self.recalled());
        };
        let conversation = self.store.conversation(&asker.id)?;
        let recent = conversation.filter(|conversation| {
            let age = now.with_timezone(&Utc) - conversation.at;
            age >= TimeDelta::zero() && age <= REMEMBERED
        });
        // A state that an older version wrote and this one cannot read is a conversation forgotten.
        Ok(recent.and_then(|conversation| serde_json::from_value(conversation.state).ok()))
    }

    /// Keeps what is to be kept, in one write; then, and only then, the reply says so.
    fn file(
        &self,
        message: &Message,
        asker: Option<&Person>,
        reading: &Reading,
        mut answer: Answer,
        (wrong, kept): (Vec<Record>, Vec<Change>),
    ) -> Reply {
        let language = reading.speaks.or(self.speaks).unwrap_or(reading.language);
        let (why, short) = (reading.why, reading.shorter && reading.once_more);
        let manner = Manner { language, devanagari_digits: reading.devanagari_digits, why, short };
        let put = |answer: &Answer| reply(answer, &self.house.known, self.house.phrases(language), manner);
        let mut said = put(&answer);
        let mut changes: Vec<Change> = kept;
        // The working of a recorded answer is asked for, not the record again.
        let again = reading.why || reading.once_more;
        if !again && (reading.undo || !answer.records.is_empty()) {
            changes.extend(wrong.into_iter().map(Change::Remove));
            changes.extend(answer.records.iter().cloned().map(Change::Put));
        }
        if answer.queued && !again {
            let at = message.now.with_timezone(&Utc);
            let who = asker.map(|person| person.id.clone());
            let question = Question::asked(who, at, asked_in(reading, message), Some(said.text.clone()));
            changes.extend(question.ok().map(Change::put));
        }
        match asker {
            Some(person) => changes.extend(remembered(person, message, &with_offered(reading, &answer, message))),
            None => {
                if let Ok(mut last) = self.stranger.lock() {
                    *last = Some(with_offered(reading, &answer, message));
                }
            }
        }
        if let Err(fault) = self.store.write(changes) {
            tracing::error!(%fault, "a message could not be filed");
            if !answer.records.is_empty() || answer.queued {
                answer = Answer {
                    lines: vec![Line::new("record-not-kept")],
                    reading: answer.reading,
                    ..Answer::new(Outcome::Declined)
                };
                said = put(&answer);
            }
        }
        said
    }
}

/// The answers to all parts of a message in one, and the part that something is asked back about, where it is not the
/// first: what is said next belongs to it.
pub(super) fn together<'r>(
    first: &'r Reading,
    others: &'r [Reading],
    facts: &Facts<'_>,
) -> (Answer, Option<&'r Reading>) {
    let mut all = answer(first, facts);
    let mut asked = (all.outcome == Outcome::AskedBack).then_some(first);
    let mut more = false;
    for reading in others {
        let mut part = answer(reading, facts);
        if part.outcome == Outcome::AskedBack {
            more |= asked.is_some() && reading.kind == Kind::Record;
            // One question at a time: the work of a second one has to be told again.
            if more && part.lines == all.lines {
                part.lines.clear();
                part.choices.clear();
            }
            asked = asked.or(Some(reading));
        }
        all = all.joined(part);
    }
    if more {
        all.lines.push(Line::new("record-other-later"));
    }
    (all, asked)
}

/// Its first line, and all that waits behind "more" instead of what else was told.
fn whole(mut answer: Answer) -> Answer {
    if !answer.rest.is_empty() {
        answer.lines.truncate(1);
        answer.lines.append(&mut answer.rest);
    }
    answer
}

/// The words that a person of the crew is to read: those that were not understood, where one was only asked for after them.
fn asked_in<'m>(reading: &'m Reading, message: &'m Message) -> &'m str {
    reading.words.as_deref().unwrap_or(&message.text)
}

/// What was asked back is remembered with the reading, so that an answer to it is known as one.
fn with_offered(reading: &Reading, answer: &Answer, message: &Message) -> Reading {
    let asked = reading.asked.saturating_add(u8::from(!answer.offered.is_empty()));
    let beds = answer.choices.iter().flat_map(|choice| &choice.values);
    let offered_beds = beds.filter_map(|(_, said)| if let Said::Bed(bed) = said { Some(bed.clone()) } else { None });
    let offered_beds = offered_beds.collect();
    Reading {
        offered: answer.offered.clone(),
        offered_beds,
        offered_kinds: answer.offered_kinds.clone(),
        words: (!answer.offered_kinds.is_empty()).then(|| message.text.clone()),
        asked,
        once_more: false,
        shorter: false,
        ..reading.clone()
    }
}

fn remembered(person: &Person, message: &Message, reading: &Reading) -> Option<Change> {
    let state = serde_json::to_value(reading).ok()?;
    let at = message.now.with_timezone(&Utc);
    Some(Change::put(Conversation { person: person.id.clone(), at, state }))
}
