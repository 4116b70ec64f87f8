//! The reminders of a day: one letter a chat on the evening before, and one in the morning for what the evening did
//! not know. Outside the quiet hours, each job once, none forgotten: what was told of a job is written together with
//! the letter that tells it, and taken back where that letter could not be brought in time.

use super::Reception;
use super::alerts::{AlertLetter, Alerted};
use super::card::Card;
use super::letter::{Content, Follow, Letter, State, Tells, pieces};
use super::task::{Task, buttons};
use super::turn::language_of;
use crate::answering::reminder::{SitePlan, items, plan, told};
use crate::answering::{Answer, Facts, SiteFacts, alerts_of_site};
use crate::desk::fetch::seen_unasked;
use crate::desk::sky::Handed;
use crate::garden::rights::may_see_site;
use crate::garden::{Change, Person, Role, Site, SiteId, Slip, Store, StoreError};
use crate::planning::alerts::Alert;
use crate::planning::reminders::{JobName, ToldLast, Word, news, told_now};
use crate::understanding::Reading;
use crate::weather::Forecast;
use crate::wording::{Manner, reply};
use chrono::{DateTime, FixedOffset, NaiveDate, Offset, TimeDelta, TimeZone, Timelike, Utc};
use rayon::iter::{IntoParallelRefIterator, ParallelIterator};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::PoisonError;

/// Nothing is sent from this hour of the evening on, in the site's own time…
pub const QUIET_FROM: u32 = 21;
/// …until this one of the morning.
pub const QUIET_UNTIL: u32 = 7;
/// The hour of the evening from which tomorrow is told: work is over, and what is needed can still be got ready.
pub const EVENING: u32 = 18;

/// The line above all news.
const TITLE: usize = 1;

/// That a chat had its word of a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Digested {
    chat: i64,
    /// The day on which it was told.
    day: NaiveDate,
    word: Word,
    pub at: DateTime<Utc>,
}

impl Slip for Digested {
    const DRAWER: &'static str = "digests";
    fn key(&self) -> String {
        let word = if self.word == Word::Eve { "eve" } else { "morning" };
        format!("{}|{}|{word}", self.chat, self.day)
    }
}

impl Digested {
    pub const KEPT: TimeDelta = TimeDelta::days(3);

    /// Whether it is of this chat.
    #[must_use]
    pub fn is_of(&self, chat: Option<i64>) -> bool {
        Some(self.chat) == chat
    }
}

/// What a chat was told last of a job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reminded {
    pub chat: i64,
    pub name: JobName,
    pub told: ToldLast,
    pub at: DateTime<Utc>,
}

impl Slip for Reminded {
    const DRAWER: &'static str = "reminded";
    fn key(&self) -> String {
        Self::key_of(self.chat, &self.name)
    }
}

impl Reminded {
    /// Longer than any job of the rhythm of care stays open; rhythms of watering are noted anew after it.
    pub const KEPT: TimeDelta = TimeDelta::days(90);

    fn key_of(chat: i64, name: &JobName) -> String {
        format!("{chat}|{}|{}|{}", name.bed, name.job, name.what.as_deref().unwrap_or_default())
    }

    /// What a chat was told, by the name of the job.
    pub fn of_chat(store: &dyn Store, chat: i64) -> Result<BTreeMap<JobName, ToldLast>, StoreError> {
        let of_chat = store.records(crate::garden::Kind::Filed, &format!("{}|{chat}|", Self::DRAWER))?;
        let slips = of_chat.into_iter().filter_map(crate::garden::Record::filed);
        let read = slips.filter_map(|filed| serde_json::from_value::<Self>(filed.value).ok());
        Ok(read.map(|reminded| (reminded.name, reminded.told)).collect())
    }
}

/// A chat whose word is due.
struct Awaiting {
    card: Card,
    person: Person,
    /// On the clock of the person's first site.
    here: DateTime<FixedOffset>,
    word: Word,
    /// Until then it may be sent.
    until: DateTime<Utc>,
}

impl Awaiting {
    fn digested(&self, at: DateTime<Utc>) -> Digested {
        Digested { chat: self.card.chat, day: self.here.date_naive(), word: self.word, at }
    }
}

/// So many chats are looked at side by side before their letters are written, one after the other.
const AT_ONCE: usize = 64;

/// What the sites want and what comes to them, each worked out once for all who are told.
#[derive(Debug, Default)]
struct Plans {
    jobs: BTreeMap<(SiteId, Word), SitePlan>,
    alerts: BTreeMap<SiteId, Vec<Alert>>,
}

/// What one site wants and what comes to it.
type Planned = (SiteId, SitePlan, Vec<Alert>);

impl Plans {
    /// The plans of those sites that have none yet.
    fn missing(&self, facts: &Facts<'_>, word: Word) -> Vec<Planned> {
        let wants = |site: &&SiteFacts<'_>| !self.jobs.contains_key(&(site.site.id.clone(), word));
        let planned =
            |site: &SiteFacts<'_>| (site.site.id.clone(), plan(site, facts, word), alerts_of_site(site, facts));
        facts.sites.par_iter().filter(wants).map(planned).collect()
    }

    fn take(&mut self, planned: Vec<Planned>, word: Word) {
        for (id, plan, alerts) in planned {
            self.jobs.insert((id.clone(), word), plan);
            self.alerts.insert(id, alerts);
        }
    }
}

impl Reception {
    /// Writes the letters that are due now; `evening` is the hour from which tomorrow is told. Looking twice is
    /// harmless. Returns how many chats were written to.
    ///
    /// # Errors
    /// When the store cannot be read or written: what was not written is planned again at the next look.
    pub fn reminders(&self, now: DateTime<Utc>, evening: u32) -> Result<usize, StoreError> {
        let mut plans = Plans::default();
        let (mut planned_on, mut written) = (None, 0);
        for few in self.awaiting(now, evening)?.chunks(AT_ONCE) {
            let state = self.memory().state;
            let forecast = self.forecast.read().unwrap_or_else(PoisonError::into_inner).clone();
            if planned_on.replace(state) != Some(state) {
                plans = Plans::default();
            }
            let looked: Vec<_> =
                few.par_iter().map(|awaiting| self.looked_at(awaiting, &plans, forecast.as_deref())).collect();
            for (awaiting, looked) in few.iter().zip(looked) {
                let (facts, planned) = looked?;
                plans.take(planned, awaiting.word);
                let mut memory = self.memory();
                if memory.state != state {
                    // Records or forecast changed while this was worked out: the next look plans it anew.
                    continue;
                }
                let mut letter = memory.next_letter;
                let (changes, any) = self.words(awaiting, &plans, &facts, &mut letter, now)?;
                // What the morning looked through is looked through again when something changes.
                if awaiting.word == Word::Morning {
                    memory.looked.insert(awaiting.card.chat, (awaiting.here.date_naive(), state));
                }
                if !changes.is_empty() {
                    self.write(&mut memory, changes)?;
                    memory.next_letter = letter;
                }
                written += usize::from(any);
            }
        }
        Ok(written)
    }

    /// What a chat's person may see, and the plans of those of her sites that nobody has looked at yet.
    fn looked_at<'a>(
        &'a self,
        awaiting: &Awaiting,
        plans: &Plans,
        forecast: Option<&'a Forecast>,
    ) -> Result<(Facts<'a>, Vec<Planned>), StoreError> {
        let handed = forecast.map_or(Handed::Nothing, Handed::Fixed);
        let (person, store) = (awaiting.person.clone(), self.store.as_ref());
        let seen = seen_unasked(&self.house, store, handed, person, awaiting.here)?;
        let facts = seen.facts(&self.house, handed.any(), &Reading::default());
        let planned = plans.missing(&facts, awaiting.word);
        Ok((facts, planned))
    }

    /// The chats whose word of the evening or of the morning is still to come.
    fn awaiting(&self, now: DateTime<Utc>, evening: u32) -> Result<Vec<Awaiting>, StoreError> {
        let store = self.store.as_ref();
        let sites: BTreeMap<SiteId, Site> = store.sites()?.into_iter().map(|site| (site.id.clone(), site)).collect();
        let mut all = Vec::new();
        for card in Card::all(store)?.into_iter().filter(|card| !card.blocked) {
            let Some(person) = store.person(&card.person)? else { continue };
            let first = match person.role {
                Role::Owner => sites.values().next(),
                Role::Gardener | Role::Client => {
                    let seen = person.sites.iter().filter(|id| may_see_site(Some(&person), id));
                    seen.filter_map(|id| sites.get(id)).min_by_key(|site| &site.id)
                }
            };
            let Some(site) = first else { continue };
            let there = now.with_timezone(&site.timezone);
            let (word, ends) = match there.hour() {
                hour if !(QUIET_UNTIL..QUIET_FROM).contains(&hour) => continue,
                hour if hour >= evening => (Word::Eve, QUIET_FROM),
                _ => (Word::Morning, evening.min(QUIET_FROM)),
            };
            let ends = there.date_naive().and_hms_opt(ends, 0, 0);
            let until = ends.and_then(|ends| site.timezone.from_local_datetime(&ends).earliest());
            let until = until.map_or(now, |until| until.with_timezone(&Utc));
            let here = there.with_timezone(&there.offset().fix());
            let awaiting = Awaiting { card, person, here, word, until };
            let told = store.filed(Digested::DRAWER, &awaiting.digested(now).key())?.is_some();
            let memory = self.memory();
            // What a letter tells that is late and not given up yet may be told or not: the next word waits for that.
            let lapses = |letter: &Letter| {
                let here = letter.chat == awaiting.card.chat && letter.state == State::Waiting;
                here && letter.is_late(now) && !letter.has_lapsed(now)
            };
            if memory.at_hand.letters().any(lapses) {
                continue;
            }
            let looked = memory.looked.get(&awaiting.card.chat) == Some(&(here.date_naive(), memory.state));
            if !(told || word == Word::Morning && looked) {
                all.push(awaiting);
            }
        }
        Ok(all)
    }

    /// All that a chat's word of a day changes, and whether anything is told.
    fn words(
        &self,
        awaiting: &Awaiting,
        plans: &Plans,
        facts: &Facts<'_>,
        letter: &mut u64,
        now: DateTime<Utc>,
    ) -> Result<(Vec<Change>, bool), StoreError> {
        let chat = awaiting.card.chat;
        let slips = Reminded::beginning(self.store.as_ref(), &format!("{chat}|"))?;
        let known: BTreeMap<JobName, Reminded> = slips.into_iter().map(|slip| (slip.name.clone(), slip)).collect();
        let last = |name: &JobName| known.get(name).map(|slip| &slip.told);
        let mut remembered: Vec<(JobName, ToldLast)> = Vec::new();
        let (mut jobs, mut waters) = (Vec::new(), Vec::new());
        for site in &facts.sites {
            let Some(plan) = plans.jobs.get(&(site.site.id.clone(), awaiting.word)) else { continue };
            for due in &plan.jobs {
                let name = JobName::of(due);
                if let Some(news) = news(due, plan.day, last(&name), awaiting.word) {
                    remembered.push((name, told_now(due, news)));
                    jobs.push((due.clone(), news));
                }
            }
            for bed in &plan.waters {
                let name = JobName::watering(bed.bed.clone());
                let Some((change, told)) = bed.change(last(&name)) else { continue };
                remembered.push((name, told));
                waters.extend(change);
            }
        }
        let items = items(jobs, waters, facts);
        let day = match awaiting.word {
            Word::Eve => awaiting.here.date_naive().succ_opt(),
            Word::Morning => Some(awaiting.here.date_naive()),
        };
        let answer = told(&items, day.unwrap_or(awaiting.here.date_naive()), awaiting.word, facts);
        // Warnings of the weather go out in the same letter, before what is due.
        let language = language_of(Some(&awaiting.person), &awaiting.card);
        let mut warned = self.alerts_for(chat, facts, &plans.alerts, (awaiting.here, language))?;
        let jobs_told = answer.lines.len() > TITLE;
        let any = jobs_told || warned.text.is_some();
        let mut changes = std::mem::take(&mut warned.changes);
        // An evening without work is noted as well: it was looked at.
        if any || awaiting.word == Word::Eve {
            changes.push(awaiting.digested(now).put()?);
        }
        if any {
            let tasks = items.iter().filter_map(Task::of).collect();
            let before = |name: &JobName| known.get(name).cloned().map(Box::new);
            let mut tells = std::mem::take(&mut warned.tells);
            tells.extend(remembered.iter().map(|(name, _)| Tells::Job { name: name.clone(), before: before(name) }));
            changes.extend(self.letters(
                awaiting,
                (&warned, jobs_told.then_some(&answer)),
                tasks,
                &tells,
                letter,
                now,
            )?);
        }
        for (name, told) in remembered {
            changes.push(Reminded { chat, name, told, at: now }.put()?);
        }
        Ok((changes, any))
    }

    /// The letter, in as many pieces as it takes, its buttons under the last.
    fn letters(
        &self,
        awaiting: &Awaiting,
        (warned, answer): (&AlertLetter, Option<&Answer>),
        tasks: Vec<Task>,
        tells: &[Tells],
        next: &mut u64,
        now: DateTime<Utc>,
    ) -> Result<Vec<Change>, StoreError> {
        let (chat, language) = (awaiting.card.chat, language_of(Some(&awaiting.person), &awaiting.card));
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        let phrases = self.house.phrases(language);
        let due = answer.map(|answer| reply(answer, &self.house.known, phrases, manner).text);
        let text = warned.before(due).unwrap_or_default();
        let mut changes = Vec::new();
        let mut labels = Vec::new();
        if !tasks.is_empty() {
            let slip;
            (slip, labels) = buttons(tasks, chat, phrases, now)?;
            changes.push(slip.put()?);
        }
        let job = |tells: &Tells| if let Tells::Job { name, .. } = tells { Some(name.clone()) } else { None };
        let names: Vec<JobName> = tells.iter().filter_map(job).collect();
        let all = pieces(&text);
        let last = all.len().saturating_sub(1);
        for (place, text) in all.into_iter().enumerate() {
            let buttons = if place == last { labels.clone() } else { Vec::new() };
            let follow = (place == last).then(|| Follow::Reminder(names.clone()));
            // A letter of several pieces has told nothing for sure before all of them are there.
            let tells = tells.to_vec();
            let content = Content::Text { text, buttons, reply_to: None };
            let (id, state, until) = (*next, State::Waiting, Some(awaiting.until));
            *next += 1;
            let (written, not_before, attempts) = (now, now, 0);
            let letter = Letter { id, chat, content, follow, written, not_before, until, attempts, state, tells };
            changes.push(letter.put()?);
        }
        Ok(changes)
    }

    /// Takes away reminders that could not be brought before the quiet hours: what they told was not told, and is told
    /// again when it is its day still. Returns how many.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn lapse(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let mut memory = self.memory();
        let store = self.store.as_ref();
        let mut changes = Vec::new();
        let mut count = 0;
        // One that is on its way perhaps arrives, however the clock may have jumped.
        let lapsed = |letter: &&Letter| letter.has_lapsed(now) && !memory.on_their_way.contains(&letter.chat);
        for letter in memory.at_hand.letters().filter(lapsed) {
            changes.push(letter.taken_away()?);
            changes.extend(untold(store, letter)?);
            count += 1;
        }
        if count > 0 {
            self.write(&mut memory, changes)?;
        }
        Ok(count)
    }
}

/// The changes that make what a letter told untold again: what was noted before it is put back. None for a letter that
/// reminds of nothing.
pub fn untold(store: &dyn Store, letter: &Letter) -> Result<Vec<Change>, StoreError> {
    let mut changes = Vec::new();
    for tells in &letter.tells {
        // What was told by a later letter stays told.
        match tells {
            Tells::Job { name, before } => {
                let slip = Reminded::find(store, &Reminded::key_of(letter.chat, name))?;
                if let Some(slip) = slip.filter(|slip| slip.at <= letter.written) {
                    changes.push(before.as_ref().map_or_else(|| slip.taken_away(), |before| before.put())?);
                }
            }
            Tells::Alert { event, before } => {
                let slip = Alerted::find(store, &Alerted::key_of(letter.chat, event))?;
                if let Some(slip) = slip.filter(|slip| slip.at <= letter.written) {
                    changes.push(before.as_ref().map_or_else(|| slip.taken_away(), |before| before.put())?);
                }
            }
        }
    }
    Ok(changes)
}

#[cfg(test)]
mod tests;
