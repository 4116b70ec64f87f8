//! The reminders of a day: one letter a chat and day, outside the quiet hours, never twice.

use super::Reception;
use super::card::Card;
use super::letter::{Content, Letter, State, pieces};
use super::turn::language_of;
use crate::answering::FigureValue;
use crate::desk::talk::{Desk, Message};
use crate::garden::rights::may_see_site;
use crate::garden::{Overlay, Person, Slip, StoreError};
use crate::script::Language;
use chrono::{DateTime, FixedOffset, NaiveDate, Offset, TimeDelta, Timelike, Utc};
use serde::{Deserialize, Serialize};
use std::sync::PoisonError;

/// Nothing is sent from this hour of the evening on, in the site's own time…
const QUIET_FROM: u32 = 21;
/// …until this one of the morning.
const QUIET_UNTIL: u32 = 7;

/// What is said to ask for it: the words of a reminder are those of the answer to this.
const QUESTION: &str = "what is due today";

/// Says what is due for a person at a moment, in a language; None where nothing is.
pub type DueFor<'a> = dyn Fn(&Person, DateTime<FixedOffset>, Language) -> Result<Option<String>, StoreError> + 'a;

/// That a chat had its digest of a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Digested {
    chat: i64,
    day: NaiveDate,
    pub at: DateTime<Utc>,
}

impl Slip for Digested {
    const DRAWER: &'static str = "digests";
    fn key(&self) -> String {
        format!("{}|{}", self.chat, self.day)
    }
}

impl Digested {
    pub const KEPT: TimeDelta = TimeDelta::days(3);
}

impl Reception {
    /// Writes the digests that are due now. Looking twice is harmless. Returns how many were written.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn digests(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let forecast = self.forecast.read().unwrap_or_else(PoisonError::into_inner).clone();
        self.digests_of(now, &|person, here, language| {
            // Nothing of the question is kept: it was nobody's.
            let sheet = Overlay::over(self.store.as_ref());
            let desk = Desk::new(&self.house, &sheet, forecast.as_deref()).speaking(Some(language));
            let message = Message { from: Some(person.id.clone()), text: QUESTION.to_owned(), now: here };
            let reply = desk.answer(&message)?;
            let jobs = reply.figures.iter().find(|figure| figure.name == "jobs").map(|figure| &figure.is);
            let any = matches!(jobs, Some(FigureValue::Structure(list)) if list.as_array().is_some_and(|all| !all.is_empty()));
            Ok(any.then_some(reply.text))
        })
    }

    /// The same with what is due given by another.
    ///
    /// # Errors
    /// As [`Reception::digests`], and when `due` could not say.
    pub fn digests_of(&self, now: DateTime<Utc>, due: &DueFor<'_>) -> Result<usize, StoreError> {
        let mut memory = self.memory();
        let store = self.store.as_ref();
        let sites = store.sites()?;
        let mut written = 0;
        for card in Card::all(store)?.into_iter().filter(|card| !card.blocked) {
            let Some(person) = store.person(&card.person)? else { continue };
            let Some(site) = sites.iter().find(|site| may_see_site(Some(&person), &site.id)) else { continue };
            let here = now.with_timezone(&site.timezone);
            let digested = Digested { chat: card.chat, day: here.date_naive(), at: now };
            let quiet = !(QUIET_UNTIL..QUIET_FROM).contains(&here.hour());
            if quiet || store.filed(Digested::DRAWER, &digested.key())?.is_some() {
                continue;
            }
            let language = language_of(Some(&person), &card);
            // A day without work is noted as well: it was looked at.
            let mut changes = vec![digested.put()?];
            let fixed = here.with_timezone(&here.offset().fix());
            let mut alerts = self.alerts_for(card.chat, &person, fixed, language)?;
            changes.append(&mut alerts.changes);
            if let Some(text) = alerts.before(due(&person, fixed, language)?) {
                for text in pieces(&text) {
                    let id = memory.next_letter;
                    memory.next_letter += 1;
                    let content = Content::Text { text, buttons: Vec::new(), reply_to: None };
                    let (chat, state) = (card.chat, State::Waiting);
                    let letter =
                        Letter { id, chat, content, follow: None, written: now, not_before: now, attempts: 0, state };
                    changes.push(letter.put()?);
                }
                written += 1;
            }
            store.write(changes)?;
        }
        Ok(written)
    }
}
