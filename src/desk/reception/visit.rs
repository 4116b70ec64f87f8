//! Visits: which day the crew worked where, noted from what they record, whichever way they tell it.

use super::card::Card;
use super::turn::Turn;
use crate::answering::visit::due_of_the_crew;
use crate::answering::{Line, Said};
use crate::garden::rights::{may_go_round, may_see_visits};
use crate::garden::{
    BedId, Change, JobDone, Kind, PersonId, Record, Role, Seen, Site, SiteId, Slip, Store, StoreError,
};
use crate::planning::visits::{Became, SPAN_DAYS, visits};
use chrono::{Days, NaiveDate, TimeDelta, TimeZone};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// One site on one day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Visit {
    pub site: SiteId,
    pub day: NaiveDate,
    /// Who of the crew recorded something; whoever was forgotten is not named.
    pub by: BTreeSet<PersonId>,
    /// The records, by their kind and key.
    pub work: BTreeSet<(Kind, String)>,
    /// The clients whose note of this day was sent or dropped.
    #[serde(default)]
    pub noted: BTreeSet<PersonId>,
}

impl Slip for Visit {
    const DRAWER: &'static str = "visits";
    fn key(&self) -> String {
        key(&self.site, self.day)
    }
}

fn key(site: &SiteId, day: NaiveDate) -> String {
    format!("{site}|{day}")
}

/// The days that `/visits` tells of, today the last.
const TOLD_DAYS: u64 = 7;
/// Visits are worked out from so many days before those on, so that a span that ends within them is seen whole.
const BEFORE_DAYS: u64 = 7;

impl Visit {
    /// A season and a little.
    pub const KEPT: TimeDelta = TimeDelta::days(120);

    pub fn of(store: &dyn Store, site: &SiteId, day: NaiveDate) -> Result<Option<Self>, StoreError> {
        Self::find(store, &key(site, day))
    }

    /// The records that still stand: what was taken back is gone.
    pub fn records(&self, store: &dyn Store) -> Result<(Vec<JobDone>, Vec<Seen>), StoreError> {
        let (mut jobs, mut seen) = (Vec::new(), Vec::new());
        for (kind, key) in &self.work {
            match store.record(*kind, key)? {
                Some(Record::Job(job)) => jobs.push(job),
                Some(Record::Seen(look)) => seen.push(look),
                _ => {}
            }
        }
        Ok((jobs, seen))
    }

    /// Whoever is forgotten is named no more.
    pub fn without(&self, person: &PersonId) -> Option<Self> {
        let named = self.by.contains(person) || self.noted.contains(person);
        named.then(|| {
            let mut other = self.clone();
            other.by.remove(person);
            other.noted.remove(person);
            other
        })
    }
}

/// The bed and day of work or a look.
fn of_bed(record: &Record) -> Option<(&BedId, NaiveDate)> {
    match record {
        Record::Job(job) => Some((&job.bed, job.on.date())),
        Record::Seen(seen) => Some((&seen.bed, seen.on.date())),
        _ => None,
    }
}

impl Turn<'_> {
    /// Notes what someone of the crew recorded in this turn as a visit of its site on its day.
    pub fn note_visits(&mut self) -> Result<(), StoreError> {
        let Some(person) = self.person.as_ref().filter(|person| may_go_round(Some(person))) else { return Ok(()) };
        let mut visits: BTreeMap<(SiteId, NaiveDate), Visit> = BTreeMap::new();
        for change in self.sheet.changes() {
            let Change::Put(record) = change else { continue };
            let Some((bed, day)) = of_bed(&record) else { continue };
            let entry = (record.kind(), record.key());
            if self.store.record(entry.0, &entry.1)?.is_some() {
                continue;
            }
            let place = (bed.site().clone(), day);
            if !visits.contains_key(&place) {
                let (site, day) = place.clone();
                let (by, work, noted) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
                let known = Visit::of(self.sheet, &site, day)?;
                visits.insert(place.clone(), known.unwrap_or(Visit { site, day, by, work, noted }));
            }
            if let Some(visit) = visits.get_mut(&place) {
                visit.by.insert(person.id.clone());
                visit.work.insert(entry);
            }
        }
        let changes = visits.values().map(Slip::put).collect::<Result<Vec<_>, _>>()?;
        self.sheet.write(changes)
    }

    /// `/visits`: of each site the visits made within the last seven days, and those that were missed or are open.
    pub fn list_visits(&mut self) -> Result<(), StoreError> {
        if !may_see_visits(self.person.as_ref()) {
            self.say("bot-owner-only", &[]);
            return Ok(());
        }
        let today = self.today()?;
        let first = today.checked_sub_days(Days::new(TOLD_DAYS - 1)).unwrap_or(today);
        let mut lines = vec![Line::new("visits-title").with("from", Said::Day(first)).with("until", Said::Day(today))];
        let since = self.crew_since()?;
        for site in self.sheet.sites()? {
            if !self.sheet.beds_of_site(&site.id)?.is_empty() {
                lines.push(self.visits_of(&site, first, since)?);
            }
        }
        let text = self.put_lines(lines);
        self.text_out(&text, Vec::new(), None);
        Ok(())
    }

    /// Nothing can be missed before someone of the crew had a chat to record in.
    fn crew_since(&self) -> Result<Option<NaiveDate>, StoreError> {
        let mut since = None;
        for card in Card::all(self.sheet)? {
            let person = self.sheet.person(&card.person)?;
            if may_go_round(person.as_ref()) {
                let day = card.since.with_timezone(self.now.offset()).date_naive();
                since = Some(since.map_or(day, |since: NaiveDate| since.min(day)));
            }
        }
        Ok(since)
    }

    fn visits_of(&self, site: &Site, first: NaiveDate, since: Option<NaiveDate>) -> Result<Line, StoreError> {
        let today = self.moment().with_timezone(&site.timezone).date_naive();
        let all: Vec<Visit> = Visit::all(self.sheet)?.into_iter().filter(|visit| visit.site == site.id).collect();
        let mut parts: Vec<(NaiveDate, Line)> = Vec::new();
        let mut worked = BTreeSet::new();
        for visit in all.iter().filter(|visit| visit.day <= today) {
            let (jobs, seen) = visit.records(self.sheet)?;
            let count = jobs.len() + seen.len();
            if count == 0 {
                continue;
            }
            worked.insert(visit.day);
            if visit.day >= first {
                let who = self.names_of(&visit.by)?;
                let line = Line::new("visits-made").with("day", Said::Day(visit.day)).with("who", Said::Quoted(who));
                parts.push((visit.day, line.with("count", Said::Count(count as i64))));
            }
        }
        let from = first.checked_sub_days(Days::new(BEFORE_DAYS)).unwrap_or(first);
        // A visit before those days sets where the next span may begin.
        let after_last = worked.range(..first).next_back().and_then(|day| day.succ_opt());
        let from = after_last.map_or(from, |day| day.max(from));
        let from = since.map_or(from, |since| since.max(from));
        let owner = self.person.clone();
        let due_on = |day: NaiveDate| {
            let morning = morning(site, day);
            let due = self.with_facts_of(owner.as_ref(), &site.id, morning, |facts| {
                facts.sites.first().map(|site| due_of_the_crew(site, facts))
            });
            due.ok().flatten().unwrap_or_default()
        };
        for visit in visits((from, today), due_on, &worked) {
            let end = visit.due.checked_add_days(Days::new(SPAN_DAYS - 1)).unwrap_or(visit.due);
            let key = match visit.became {
                Became::Missed if end >= first => "missed",
                Became::Open => "open",
                _ => continue,
            };
            let jobs: BTreeSet<_> = visit.work.iter().map(|(_, job)| *job).collect();
            let jobs = jobs.into_iter().map(|job| Said::Line(Box::new(crate::answering::visit::job_alone(job))));
            let line = Line::new("visits-due")
                .with("became", Said::Key(key))
                .with("day", Said::Day(visit.due))
                .with("jobs", Said::List(jobs.collect()));
            parts.push((visit.due, line));
        }
        parts.sort_by_key(|(day, _)| *day);
        let parts: Vec<Said> = parts.into_iter().map(|(_, line)| Said::Line(Box::new(line))).collect();
        let any = if parts.is_empty() { Said::Line(Box::new(Line::new("visits-none"))) } else { Said::List(parts) };
        Ok(Line::new("visits-site").with("site", Said::Quoted(site.name.clone())).with("visits", any))
    }

    /// People by their names; whoever was forgotten as the crew.
    pub fn names_of(&self, people: &BTreeSet<PersonId>) -> Result<String, StoreError> {
        let mut names = Vec::new();
        for id in people {
            names.extend(self.sheet.person(id)?.map(|person| person.name));
        }
        Ok(if names.is_empty() { self.phrase("visits-the-crew", &[]) } else { names.join(", ") })
    }

    /// The clients of a site.
    pub fn clients_of(&self, site: &SiteId) -> Result<Vec<crate::garden::Person>, StoreError> {
        let people = self.sheet.people()?.into_iter();
        Ok(people.filter(|person| person.role == Role::Client && person.sites.contains(site)).collect())
    }
}

/// Before work begins, where a site lies.
fn morning(site: &Site, day: NaiveDate) -> chrono::DateTime<chrono::FixedOffset> {
    use chrono::Offset;
    /// The hour at which a day's work is looked at.
    const HOUR: u32 = 6;
    let local = day.and_hms_opt(HOUR, 0, 0).unwrap_or_default();
    let here = site.timezone.from_local_datetime(&local).earliest();
    here.map_or_else(|| local.and_utc().fixed_offset(), |here| here.with_timezone(&here.offset().fix()))
}
