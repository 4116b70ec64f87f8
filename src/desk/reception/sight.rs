//! What the crew's cards need of the desk: the facts of one site, lines and names in words, the moment that counts.

use super::arrival::What;
use super::card::Card;
use super::turn::{Turn, language_of};
use crate::answering::{Answer, Facts, Line, Outcome, Said};
use crate::desk::fetch::seen_unasked;
use crate::garden::rights::may_see_site;
use crate::garden::{Person, Role, SiteId, Store, StoreError};
use crate::knowledge::Kind;
use crate::quantity::Written;
use crate::script::Language;
use crate::understanding::Reading;
use crate::wording::{Manner, reply};
use chrono::{DateTime, FixedOffset, NaiveDate, Utc};

impl Turn<'_> {
    /// When it was said; of a press, which carries no time of its own, now.
    pub fn moment(&self) -> DateTime<Utc> {
        match self.arrival.what {
            What::Pressed { .. } => self.now.with_timezone(&Utc),
            _ => self.arrival.at,
        }
    }

    /// The same on our clock.
    pub fn here(&self) -> DateTime<FixedOffset> {
        self.moment().with_timezone(self.now.offset())
    }

    /// The day where the first of this person's sites lies, else on our clock.
    pub fn today(&self) -> Result<NaiveDate, StoreError> {
        let mut sites = self.sheet.sites()?;
        sites.retain(|site| may_see_site(self.person.as_ref(), &site.id));
        let there = sites.first().map(|site| self.moment().with_timezone(&site.timezone).date_naive());
        Ok(there.unwrap_or_else(|| self.here().date_naive()))
    }

    /// The message whose button was pressed.
    pub const fn pressed_in(&self) -> Option<i32> {
        match self.arrival.what {
            What::Pressed { .. } if self.arrival.message > 0 => Some(self.arrival.message),
            _ => None,
        }
    }

    /// Works on the facts of one site as this person sees it at a moment; None where they may not see it.
    pub fn with_facts_of<T>(
        &self,
        person: Option<&Person>,
        site: &SiteId,
        now: DateTime<FixedOffset>,
        work: impl FnOnce(&Facts<'_>) -> Option<T>,
    ) -> Result<Option<T>, StoreError> {
        let Some(person) = person.filter(|person| may_see_site(Some(person), site)) else { return Ok(None) };
        // Only this site is fetched: whoever sees all is given the one.
        let role = if person.role == Role::Owner { Role::Gardener } else { person.role };
        let narrowed = Person { role, sites: vec![site.clone()], ..person.clone() };
        let seen = seen_unasked(self.house, self.sheet, self.handed(), narrowed, now)?;
        let facts = seen.facts(self.house, self.handed().any(), &Reading::blank(Kind::Water, self.language));
        Ok(work(&facts))
    }

    /// An answer in the language of this chat.
    pub fn put(&self, answer: &Answer) -> String {
        self.put_in(answer, self.language)
    }

    /// An answer in a language.
    pub fn put_in(&self, answer: &Answer, language: Language) -> String {
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        reply(answer, &self.house.known, self.house.phrases(language), manner).text
    }

    /// Lines of no answer, in the language of this chat.
    pub fn put_lines(&self, lines: Vec<Line>) -> String {
        self.put(&Answer { lines, ..Answer::new(Outcome::Answered) })
    }

    /// One value in words.
    fn word(&self, said: Said) -> String {
        self.put_lines(vec![Line::new("value").with("value", said)])
    }

    /// A crop in the language of this chat.
    pub fn crop_name(&self, crop: &str) -> String {
        self.word(Said::Crop(crop.to_owned()))
    }

    /// An amount as people say it.
    pub fn amount(&self, written: Written) -> String {
        self.word(Said::Size(vec![written]))
    }

    /// The language in which someone is written to.
    pub fn language_for(&self, person: &Person) -> Result<Language, StoreError> {
        let card = Card::of_person(self.sheet, &person.id)?;
        let chosen = person.speaks.and_then(|speaks| {
            [Language::En, Language::Hi, Language::HiLatn].into_iter().find(|language| language.tag() == speaks.word())
        });
        Ok(card.map_or_else(|| chosen.unwrap_or(self.language), |card| language_of(Some(person), &card)))
    }
}
