//! Answers that are drawn or listed rather than told: nothing of them is kept.

use super::{Desk, Message, together};
use crate::answering::{Answer, answer};
use crate::desk::fetch::{Seen, seen};
use crate::garden::{BedId, PersonId, SiteId, StoreError};
use crate::knowledge::Kind;
use crate::script::Language;
use crate::understanding::{Reader, Reading, read};
use crate::wording::Manner;
use chrono::{DateTime, FixedOffset, NaiveDate};

/// An answer before it is put into words, and how it is to be put.
pub struct Looked {
    pub answer: Answer,
    pub manner: Manner,
}

impl Desk<'_> {
    /// What would be answered to a message, its tables with it.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn look(&self, message: &Message) -> Result<Looked, StoreError> {
        let asker = message.from.as_ref().map(|id| self.store.person(id)).transpose()?.flatten();
        let before = self.before(asker.as_ref(), message.now)?;
        let seen = seen(self.house, self.store, self.handed, asker, message.now)?;
        let (reading, others) = self.read(message, &seen, before);
        let language = self.speaks.unwrap_or(reading.language);
        let manner = Manner { language, devanagari_digits: reading.devanagari_digits, why: reading.why, short: false };
        let facts = seen.facts(self.house, self.handed.any(), &reading);
        let (answer, _) = together(&reading, &others, &facts);
        Ok(Looked { answer, manner })
    }

    /// The week's water of all beds of a site; none where this person may not see it.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn water_of_site(
        &self,
        from: Option<&PersonId>,
        site: &SiteId,
        now: DateTime<FixedOffset>,
    ) -> Result<Option<Looked>, StoreError> {
        let Some((seen, beds)) = self.of_site(from, site, now)? else { return Ok(None) };
        let reading = Reading { beds, all_beds: true, ..self.unsaid(Kind::Water, &seen) };
        Ok(Some(self.looked(seen, &reading)))
    }

    /// The jobs of the days from now until a day, on all beds this person sees.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn due_until(
        &self,
        from: Option<&PersonId>,
        until: NaiveDate,
        now: DateTime<FixedOffset>,
    ) -> Result<Looked, StoreError> {
        let asker = from.map(|id| self.store.person(id)).transpose()?.flatten();
        let seen = seen(self.house, self.store, self.handed, asker, now)?;
        let today = seen.now.date_naive();
        let reading = Reading { days: vec![(today, until.max(today))], ..self.unsaid(Kind::Due, &seen) };
        Ok(self.looked(seen, &reading))
    }

    /// The jobs of one day, today where none is said, on all beds this person sees.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn due_on(
        &self,
        from: Option<&PersonId>,
        day: Option<NaiveDate>,
        now: DateTime<FixedOffset>,
    ) -> Result<Looked, StoreError> {
        let asker = from.map(|id| self.store.person(id)).transpose()?.flatten();
        let seen = seen(self.house, self.store, self.handed, asker, now)?;
        let day = day.unwrap_or(seen.now.date_naive());
        let reading = Reading { days: vec![(day, day)], ..self.unsaid(Kind::Due, &seen) };
        Ok(self.looked(seen, &reading))
    }

    fn of_site(
        &self,
        from: Option<&PersonId>,
        site: &SiteId,
        now: DateTime<FixedOffset>,
    ) -> Result<Option<(Seen<'_>, Vec<BedId>)>, StoreError> {
        let asker = from.map(|id| self.store.person(id)).transpose()?.flatten();
        let mut seen = seen(self.house, self.store, self.handed, asker, now)?;
        // Its neighbours are left out, so that its beds are called by their names alone.
        seen.sites.retain(|facts| facts.site.id == *site);
        let Some(here) = seen.sites.first() else { return Ok(None) };
        seen.now = here.now;
        let beds = here.beds.iter().map(|bed| bed.bed.id.clone()).collect();
        Ok(Some((seen, beds)))
    }

    fn looked(&self, seen: Seen<'_>, reading: &Reading) -> Looked {
        let language = self.speaks.unwrap_or(Language::En);
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        let facts = seen.facts(self.house, self.handed.any(), reading);
        Looked { answer: answer(reading, &facts), manner }
    }

    /// A reading that nobody wrote: sure of its kind, nothing else said.
    fn unsaid(&self, kind: Kind, seen: &Seen<'_>) -> Reading {
        let reader = Reader { known: &self.house.known, index: &self.house.index, gazetteer: &self.house.gazetteer };
        let (blank, _) = read("", &reader, &seen.names(None), seen.now.date_naive());
        Reading { kind, sureness: 1.0, senseless: false, ..blank }
    }
}
