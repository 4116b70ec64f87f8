//! What the desk fetched for an answer.

use crate::garden::{Bed, BedId, JobDone, Move, Person, PersonId, Planting, Seen, Site, standing};
use crate::knowledge::{Found, Knowledge};
use crate::weather::Weather;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeMap;

/// Everything an answer may rest on.
#[derive(Debug, Clone)]
pub struct Facts<'a> {
    pub known: &'a Knowledge,
    /// The moment of asking, on the clock of the asker's first site: for what belongs to no bed.
    pub now: DateTime<FixedOffset>,
    /// None for a stranger.
    pub asker: Option<Person>,
    /// The names of those who moved a job of these sites.
    pub movers: BTreeMap<PersonId, String>,
    /// What this person may see.
    pub sites: Vec<SiteFacts<'a>>,
    /// The weather of a place without a site: one that was named, or the forecast's own.
    pub elsewhere: Option<Weather<'a>>,
    /// The moment of asking on the clock of a place that was named; else on the asker's own.
    pub now_elsewhere: DateTime<FixedOffset>,
    /// The articles nearest to the message.
    pub articles: Vec<Found<String>>,
}

/// A site with its beds and its weather.
#[derive(Debug, Clone)]
pub struct SiteFacts<'a> {
    pub site: Site,
    /// The moment of asking, on the site's own clock.
    pub now: DateTime<FixedOffset>,
    pub beds: Vec<BedFacts>,
    pub weather: Weather<'a>,
}

/// A bed with what stands and what was done in it.
#[derive(Debug, Clone)]
pub struct BedFacts {
    /// As the work on record has left it.
    pub bed: Bed,
    /// The net over it went up with no word of how much it cuts.
    pub net_unrated: bool,
    pub plantings: Vec<Planting>,
    pub jobs: Vec<JobDone>,
    /// What people moved to another day.
    pub moves: Vec<Move>,
    /// What people saw of its water.
    pub seen: Vec<Seen>,
}

impl Facts<'_> {
    /// The day of asking.
    #[must_use]
    pub fn today(&self) -> NaiveDate {
        self.now.date_naive()
    }

    /// The moment of asking on the clock of a bed's site.
    #[must_use]
    pub fn now_at(&self, bed: &BedId) -> DateTime<FixedOffset> {
        self.bed(bed).map_or(self.now, |(site, _)| site.now)
    }

    /// A bed this person may see, with its site.
    #[must_use]
    pub fn bed(&self, id: &BedId) -> Option<(&SiteFacts<'_>, &BedFacts)> {
        let site = self.sites.iter().find(|site| site.site.id == *id.site())?;
        site.beds.iter().find(|bed| bed.bed.id == *id).map(|bed| (site, bed))
    }

    /// All beds this person may see.
    pub fn beds(&self) -> impl Iterator<Item = (&SiteFacts<'_>, &BedFacts)> {
        self.sites.iter().flat_map(|site| site.beds.iter().map(move |bed| (site, bed)))
    }
}

impl BedFacts {
    /// The plantings that stand on a day.
    #[must_use]
    pub fn standing(&self, on: NaiveDate) -> Vec<&Planting> {
        standing(&self.plantings, &self.jobs, on)
    }
}
