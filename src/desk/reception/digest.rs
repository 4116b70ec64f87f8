//! The reminders of a day: one letter a chat and day, outside the quiet hours, never twice.

use super::Reception;
use super::card::Card;
use super::letter::{Content, Letter, State, pieces};
use super::turn::language_of;
use crate::garden::rights::may_see_site;
use crate::garden::{Person, SiteId, Slip, StoreError};
use crate::script::Language;
use crate::wording::filled;
use chrono::{DateTime, NaiveDate, TimeDelta, Timelike, Utc};
use serde::{Deserialize, Serialize};

/// Nothing is sent from this hour of the evening on, in the site's own time…
const QUIET_FROM: u32 = 21;
/// …until this one of the morning.
const QUIET_UNTIL: u32 = 7;

/// A piece of care that is due, said in a person's language.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    pub site: SiteId,
    pub text: String,
}

/// Says what is due for a person on a day, in a language.
pub type JobsOf<'a> = dyn Fn(&Person, NaiveDate, Language) -> Result<Vec<Job>, StoreError> + 'a;

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

/// Writes the digests that are due now: `jobs` says what is due for a person that day. Looking twice is
/// harmless. Returns how many were written.
///
/// # Errors
/// When the store cannot be read or written, or `jobs` could not.
pub fn digests(reception: &Reception, now: DateTime<Utc>, jobs: &JobsOf<'_>) -> Result<usize, StoreError> {
    let mut memory = reception.memory();
    let store = reception.store.as_ref();
    let sites = store.sites()?;
    let mut written = 0;
    for card in Card::all(store)?.into_iter().filter(|card| !card.blocked) {
        let Some(person) = store.person(&card.person)? else { continue };
        let own: Vec<_> = sites.iter().filter(|site| may_see_site(Some(&person), &site.id)).collect();
        let Some(first) = own.first() else { continue };
        let here = now.with_timezone(&first.timezone);
        let digested = Digested { chat: card.chat, day: here.date_naive(), at: now };
        let quiet = !(QUIET_UNTIL..QUIET_FROM).contains(&here.hour());
        if quiet || store.filed(Digested::DRAWER, &digested.key())?.is_some() {
            continue;
        }
        let language = language_of(Some(&person), &card);
        let due = jobs(&person, here.date_naive(), language)?;
        // What nobody may see is not told, whoever planned it.
        let mut lines = Vec::new();
        for site in own {
            let of_site: Vec<&Job> = due.iter().filter(|job| job.site == site.id).collect();
            if !of_site.is_empty() {
                lines.push(filled(reception.house.phrases(language), "bot-digest", &[("site", &site.name)]));
                lines.extend(of_site.iter().map(|job| job.text.clone()));
            }
        }
        if lines.is_empty() {
            continue;
        }
        let mut changes = vec![digested.put()?];
        for text in pieces(&lines.join("\n")) {
            let id = memory.next_letter;
            memory.next_letter += 1;
            let content = Content::Text { text, buttons: Vec::new(), reply_to: None };
            let (chat, state) = (card.chat, State::Waiting);
            let letter = Letter { id, chat, content, follow: None, written: now, not_before: now, attempts: 0, state };
            changes.push(letter.put()?);
        }
        store.write(changes)?;
        written += 1;
    }
    Ok(written)
}
