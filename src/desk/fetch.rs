//! What an answer needs, fetched: the asker, what she may see, its weather.

use super::house::House;
use super::sky::{Handed, Skies};
use crate::answering::{BedFacts, Facts, SiteFacts};
use crate::garden::rights::may_see_site;
use crate::garden::{Person, PersonId, Role, Site, SiteId, Store, StoreError};
use crate::understanding::{Asker, Everyone, OwnBed, Reading};
use crate::weather::{Forecast, Weather};
use chrono::{DateTime, FixedOffset, NaiveDate, Offset};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What a person may see of the garden, as it stood at a moment.
pub struct Seen<'a> {
    pub asker: Option<Person>,
    pub sites: Vec<SiteFacts<'a>>,
    /// What everybody is called, so that what this person may not see is known as such; nobody where nothing is read.
    everyone: Arc<Everyone>,
    movers: BTreeMap<PersonId, String>,
    /// The moment, in the time zone of the asker's first site.
    pub now: DateTime<FixedOffset>,
}

/// Reads from the store what this person may see; records dated after `now` do not count yet.
pub fn seen<'a>(
    house: &'a House,
    store: &dyn Store,
    handed: Handed<'a>,
    asker: Option<Person>,
    now: DateTime<FixedOffset>,
) -> Result<Seen<'a>, StoreError> {
    let own = match &asker {
        Some(person) => sites_of(store, person)?,
        None => Vec::new(),
    };
    let everyone = house.names.of(store, &house.known.ordinary)?;
    Ok(Seen { everyone, ..stood(house, store, handed, (asker, own), now)? })
}

/// The same of a person to whom something is told unasked: where nothing is read, nobody's names are needed.
pub fn seen_unasked<'a>(
    house: &'a House,
    store: &dyn Store,
    handed: Handed<'a>,
    person: Person,
    now: DateTime<FixedOffset>,
) -> Result<Seen<'a>, StoreError> {
    let own = sites_of(store, &person)?;
    stood(house, store, handed, (Some(person), own), now)
}

/// The sites that a person may see, in the order of their ids, read one by one where they are not all.
fn sites_of(store: &dyn Store, person: &Person) -> Result<Vec<Site>, StoreError> {
    if person.role == Role::Owner {
        return store.sites();
    }
    let mut ids: Vec<&SiteId> = person.sites.iter().filter(|id| may_see_site(Some(person), id)).collect();
    ids.sort();
    ids.dedup();
    ids.into_iter().filter_map(|id| store.site(id).transpose()).collect()
}

/// These sites as they stood at a moment.
fn stood<'a>(
    house: &'a House,
    store: &dyn Store,
    handed: Handed<'a>,
    (asker, own): (Option<Person>, Vec<Site>),
    now: DateTime<FixedOffset>,
) -> Result<Seen<'a>, StoreError> {
    let mut skies = Skies::new(store, handed, &house.known).recalling(&house.skies);
    let mut sites = Vec::new();
    let mut movers = BTreeMap::new();
    let mut local = None;
    for site in own {
        let here = now.with_timezone(&site.timezone);
        let here = here.with_timezone(&here.offset().fix());
        local.get_or_insert(here);
        let mut beds = Vec::new();
        for bed in store.beds_of_site(&site.id)? {
            let mut plantings = store.plantings_of_bed(&bed.id)?;
            plantings.retain(|planting| planting.start.date() <= here.date_naive());
            let mut jobs = store.jobs_of_bed(&bed.id)?;
            jobs.retain(|job| job.on.has_come(here.naive_local()));
            let mut looks = store.seen_of_bed(&bed.id)?;
            looks.retain(|look| look.on.has_come(here.naive_local()));
            let moves = store.moves_of_bed(&bed.id)?;
            for by in moves.iter().filter_map(|moved| moved.by.as_ref()) {
                movers.extend(store.person(by)?.map(|person| (by.clone(), person.name)));
            }
            let net_unrated = bed.net_unrated(&jobs);
            let bed = bed.as_worked(&jobs, |id| house.known.mixes.contains_key(id));
            beds.push(BedFacts { bed, net_unrated, plantings, jobs, moves, seen: looks });
        }
        let weather = skies.over(&site, here)?;
        sites.push(SiteFacts { site, now: here, beds, weather });
    }
    Ok(Seen { asker, sites, everyone: Arc::default(), movers, now: local.unwrap_or(now) })
}

impl<'a> Seen<'a> {
    /// What this person may mean by a name.
    #[must_use]
    pub fn names(&self, before: Option<Reading>) -> Asker {
        let beds = self.sites.iter().flat_map(|site| site.beds.iter().map(move |bed| (site, bed)));
        let beds = beds.map(|(site, bed)| OwnBed {
            id: bed.bed.id.clone(),
            kind: bed.bed.kind,
            names: bed.bed.names.clone(),
            crops: bed
                .standing(site.now.date_naive())
                .into_iter()
                .map(|planting| (planting.crop.clone(), planting.microgreen))
                .collect(),
        });
        Asker::of(self.asker.clone(), beds.collect(), self.everyone.clone()).after(before)
    }

    /// The day of asking where the beds of a reading stand.
    #[must_use]
    pub fn day_of(&self, reading: &Reading) -> NaiveDate {
        let stands = |site: &&SiteFacts<'_>| site.beds.iter().any(|bed| reading.beds.contains(&bed.bed.id));
        self.sites.iter().find(stands).map_or(self.now, |site| site.now).date_naive()
    }

    /// The facts an answer rests on.
    #[must_use]
    pub fn facts(self, house: &'a House, forecast: Option<&'a Forecast>, reading: &Reading) -> Facts<'a> {
        /// So many articles are looked at.
        const ARTICLES: usize = 8;
        let known = &house.known;
        let named = reading.places.first().and_then(|id| known.places.iter().find(|place| place.id == *id));
        let elsewhere = named.map(Weather::of_place).or_else(|| {
            forecast.map(|forecast| {
                let position = (forecast.latitude_deg, forecast.longitude_deg, forecast.elevation_m);
                Weather::at(position, Some(forecast), known)
            })
        });
        let there = named.map(|place| self.now.with_timezone(&place.timezone));
        let now_elsewhere = there.map_or(self.now, |there| there.with_timezone(&there.offset().fix()));
        let articles = house.index.articles(&reading.search, ARTICLES);
        let Self { asker, movers, sites, now, .. } = self;
        Facts { known, now, asker, movers, sites, elsewhere, now_elsewhere, articles }
    }
}
