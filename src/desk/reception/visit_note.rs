//! The note that a client gets after a visit, shown to whoever was there before it goes.

use super::awaits::Awaited;
use super::bed_card::Offered;
use super::button::token;
use super::card::Card;
use super::letter::Content;
use super::tap::{NoteStep, Tap};
use super::turn::Turn;
use super::visit::Visit;
use crate::answering::visit::{Visited, note};
use crate::garden::rights::{may_go_round, may_work_at};
use crate::garden::{Person, PersonId, SiteId, Slip, Store, StoreError};
use crate::wording::filled;
use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// A note that waits for the word of whoever was there.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Note {
    pub key: String,
    /// Whose word it waits for.
    pub chat: i64,
    pub client: PersonId,
    pub site: SiteId,
    pub day: NaiveDate,
    pub text: String,
    pub at: DateTime<Utc>,
}

impl Slip for Note {
    const DRAWER: &'static str = "notes";
    fn key(&self) -> String {
        self.key.clone()
    }
}

impl Note {
    /// A note that nobody sent for so long is not sent.
    pub const KEPT: TimeDelta = TimeDelta::days(3);
    /// The longest that is taken from a keyboard, in letters.
    const LONGEST: usize = 2000;
}

impl Turn<'_> {
    /// Offers a note for each client of the sites worked at on a day, unless it was sent or dropped already.
    pub fn offer_notes(&mut self, day: NaiveDate) -> Result<(), StoreError> {
        // What this very turn recorded counts as well.
        self.note_visits()?;
        let Some(me) = self.person.clone() else { return Ok(()) };
        for note in Note::all(self.sheet)?.iter().filter(|note| note.chat == self.arrival.chat) {
            self.sheet.write(vec![note.taken_away()?])?;
        }
        for visit in Visit::all(self.sheet)? {
            if visit.day != day || !visit.by.contains(&me.id) || !may_work_at(Some(&me), &visit.site) {
                continue;
            }
            for client in self.clients_of(&visit.site)? {
                if !visit.noted.contains(&client.id) {
                    self.offer_note(&visit, &client, &me)?;
                }
            }
        }
        Ok(())
    }

    /// `/note`: what was done today without a round is told to those who live there as well.
    pub fn notes_of_today(&mut self) -> Result<(), StoreError> {
        if !may_go_round(self.person.as_ref()) {
            self.say("bot-crew-only", &[]);
            return Ok(());
        }
        let day = self.today()?;
        let written = self.letters.len();
        self.offer_notes(day)?;
        if self.letters.len() == written {
            self.say("note-none", &[]);
        }
        Ok(())
    }

    fn offer_note(&mut self, visit: &Visit, client: &Person, me: &Person) -> Result<(), StoreError> {
        let (jobs, seen) = visit.records(self.sheet)?;
        if jobs.is_empty() && seen.is_empty() {
            return Ok(());
        }
        let language = self.language_for(client)?;
        let visited = Visited { site: &visit.site, who: &me.name, on: visit.day, jobs: &jobs, seen: &seen };
        // The note is made of what the client may see.
        let answer = self.with_facts_of(Some(client), &visit.site, self.here(), |facts| note(&visited, facts))?;
        let Some(answer) = answer else { return Ok(()) };
        let note = Note {
            key: token()?,
            chat: self.arrival.chat,
            client: client.id.clone(),
            site: visit.site.clone(),
            day: visit.day,
            text: self.put_in(&answer, language),
            at: self.moment(),
        };
        self.show_note(&note, None)
    }

    /// The note as it would go, with what can be done about it; in the message itself where it stands there already.
    fn show_note(&mut self, note: &Note, message: Option<i32>) -> Result<(), StoreError> {
        self.sheet.write(vec![note.put()?])?;
        let name = self.sheet.person(&note.client)?.map(|client| client.name).unwrap_or_default();
        let head = self.phrase("note-offer", &[("name", &name)]);
        let text = format!("{head}\n\n{}", note.text);
        let step = |key: &str, step: NoteStep| {
            (self.phrase(key, &[]), Tap::Note { note: note.key.clone(), step }, step != NoteStep::Send)
        };
        let offered: Vec<Offered> = vec![
            step("note-button-send", NoteStep::Send),
            step("note-button-change", NoteStep::Change),
            step("note-button-drop", NoteStep::Drop),
        ];
        let buttons = self.labels(offered)?;
        match message {
            Some(message) => self.write(self.arrival.chat, Content::Edit { message, text, buttons }, None),
            None => self.text_out(&text, buttons, None),
        }
        Ok(())
    }

    /// The note of this chat, as long as its writer may work at the site.
    fn note_here(&mut self, key: &str) -> Result<Option<Note>, StoreError> {
        let note = Note::find(self.sheet, key)?.filter(|note| note.chat == self.arrival.chat);
        let note = note.filter(|note| may_work_at(self.person.as_ref(), &note.site));
        if note.is_none() {
            self.say("note-gone", &[]);
        }
        Ok(note)
    }

    /// A button under a note.
    pub fn note_step(&mut self, key: &str, step: NoteStep) -> Result<(), StoreError> {
        let Some(note) = self.note_here(key)? else { return Ok(()) };
        match step {
            NoteStep::Send => self.send_note(&note),
            NoteStep::Drop => {
                self.settle(&note)?;
                self.instead("note-dropped", &[]);
                Ok(())
            }
            NoteStep::Change => {
                self.await_next(Awaited::NoteText(note.key.clone()))?;
                self.say("note-type", &[]);
                Ok(())
            }
        }
    }

    /// The words that shall go instead.
    pub fn note_changed(&mut self, key: &str, text: &str) -> Result<bool, StoreError> {
        self.await_nothing()?;
        let Some(note) = self.note_here(key)? else { return Ok(true) };
        let text: String = text.chars().take(Note::LONGEST).collect();
        self.show_note(&Note { text, at: self.moment(), ..note }, None)?;
        Ok(true)
    }

    fn send_note(&mut self, note: &Note) -> Result<(), StoreError> {
        let client = self.sheet.person(&note.client)?.filter(|client| client.sites.contains(&note.site));
        let Some(client) = client else {
            self.settle(note)?;
            self.say("note-gone", &[]);
            return Ok(());
        };
        self.settle(note)?;
        match Card::of_person(self.sheet, &client.id)?.filter(|card| !card.blocked) {
            Some(card) => {
                self.text_to(card.chat, &note.text, Vec::new(), None, None);
                self.instead("note-sent", &[("name", &client.name)]);
            }
            None => self.instead("note-no-chat", &[("name", &client.name), ("text", &note.text)]),
        }
        Ok(())
    }

    /// The note is done with: the client is offered no other of this visit.
    fn settle(&mut self, note: &Note) -> Result<(), StoreError> {
        let mut changes = vec![note.taken_away()?];
        if let Some(mut visit) = Visit::of(self.sheet, &note.site, note.day)? {
            visit.noted.insert(note.client.clone());
            changes.push(visit.put()?);
        }
        self.sheet.write(changes)
    }

    /// Says a phrase in place of the message whose button was pressed.
    pub fn instead(&mut self, phrase: &str, values: &[(&str, &str)]) {
        let text = filled(self.house.phrases(self.language), phrase, values);
        match self.pressed_in() {
            Some(message) => {
                let content = Content::Edit { message, text, buttons: Vec::new() };
                self.write(self.arrival.chat, content, None);
            }
            None => self.text_out(&text, Vec::new(), None),
        }
    }
}
