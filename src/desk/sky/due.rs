//! Which cells are to be asked for, and how what came is filed. The asking itself is done by whoever calls.

use super::slips::{PastMonth, SkySlip, StepsSlip};
use crate::garden::{Change, Site, Slip, Store, StoreError};
use crate::weather::Service;
use crate::weather::cell::Spot;
use crate::weather::kept::{Sky, passed, taken};
use crate::weather::schedule::{FILE_AGAIN, after_failure, after_success};
use crate::weather::source::{Answered, Fault};
use chrono::{DateTime, Utc};
use std::collections::HashSet;

/// Past days older than this are taken away: a year of seasons and some weeks, d.
pub const PAST_KEPT_D: i64 = 400;

/// A cell that is to be asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    pub spot: Spot,
    /// Who gave the document that is kept, and its `last_modified`.
    known: Option<(Service, String)>,
}

impl Due {
    /// The cell of a spot as it stands, whether it is due or not.
    #[must_use]
    pub fn of(spot: Spot, sky: &Sky) -> Self {
        let known = sky.good.as_ref().and_then(|good| Some((good.by, good.last_modified.clone()?)));
        Self { spot, known }
    }

    /// What to tell a service of the document that is known, if it is its own.
    #[must_use]
    pub fn since(&self, service: Service) -> Option<&str> {
        self.known.as_ref().filter(|(by, _)| *by == service).map(|(_, since)| since.as_str())
    }
}

/// All cells of a store.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rooms {
    /// How many there are.
    pub cells: usize,
    pub due: Vec<Due>,
    /// When the next of those that are not due is.
    pub next: Option<DateTime<Utc>>,
}

/// The cells of these sites: those that are due at a moment, in the order in which they fell due. Days that have passed
/// in them are put with the days gone by.
///
/// # Errors
/// When the store cannot be read or written.
pub fn due(store: &dyn Store, sites: &[Site], now: DateTime<Utc>) -> Result<Rooms, StoreError> {
    let mut seen = HashSet::new();
    let mut rooms = Rooms::default();
    let mut waiting = Vec::new();
    for site in sites {
        let spot = Spot::of(site.latitude_deg, site.longitude_deg, site.timezone);
        if !seen.insert(spot) {
            continue;
        }
        let mut sky = SkySlip::of(store, &spot)?;
        roll(store, &spot, &mut sky, now)?;
        if sky.next <= now {
            waiting.push((sky.next, Due::of(spot, &sky)));
        } else {
            rooms.next = Some(rooms.next.map_or(sky.next, |next| next.min(sky.next)));
        }
    }
    rooms.cells = seen.len();
    waiting.sort_by_key(|(since, _)| *since);
    rooms.due = waiting.into_iter().map(|(_, due)| due).collect();
    Ok(rooms)
}

/// Puts the days of a cell that have passed with the days gone by.
fn roll(store: &dyn Store, spot: &Spot, sky: &mut Sky, now: DateTime<Utc>) -> Result<(), StoreError> {
    let today = now.with_timezone(&spot.zone).date_naive();
    let gone = sky.good.as_mut().map(|good| passed(good, today)).unwrap_or_default();
    if gone.is_empty() {
        return Ok(());
    }
    let mut changes = PastMonth::keeping(store, spot, gone)?;
    changes.push(SkySlip::new(spot, sky.clone()).put()?);
    changes.extend(too_old(store, spot, now)?);
    store.write(changes)
}

/// The changes that take away months gone by long since.
fn too_old(store: &dyn Store, spot: &Spot, now: DateTime<Utc>) -> Result<Vec<Change>, StoreError> {
    let months = PastMonth::beginning(store, &format!("{spot}|"))?;
    let old = |month: &&PastMonth| {
        month.days.last().is_some_and(|last| (now.date_naive() - last.day.date).num_days() > PAST_KEPT_D)
    };
    months.iter().filter(old).map(Slip::taken_away).collect()
}

/// What became of an answer.
#[derive(Debug, Clone, PartialEq)]
pub enum Filed {
    /// A new document, with how many days from today on it gives, and days that could not be made.
    New { days: usize, unmade: Vec<String>, deprecated: bool },
    /// What is kept is still the newest.
    Same,
    /// Nothing could be taken: what is kept stays.
    Kept(Fault),
}

/// Files what a service answered for a cell. `cells` is how many there are in all.
///
/// # Errors
/// When the store cannot be read or written.
pub fn file(
    store: &dyn Store,
    spot: &Spot,
    by: Service,
    answered: Result<Answered, Fault>,
    now: DateTime<Utc>,
    cells: usize,
) -> Result<Filed, StoreError> {
    let mut sky = SkySlip::of(store, spot)?;
    roll(store, spot, &mut sky, now)?;
    let key = spot.to_string();
    let none_failed = sky.failures == 0;
    let mut changes = Vec::new();
    let filed = match answered {
        Ok(Answered::New(fetched)) => {
            let (expires, deprecated) = (fetched.expires, fetched.deprecated);
            let steps = StepsSlip::find(store, &key)?.map(|slip| slip.steps).unwrap_or_default();
            match taken(spot, &sky, &steps, by, *fetched, now) {
                Ok(taken) => {
                    succeeded(&mut sky, now, expires, cells, &key);
                    changes.extend(PastMonth::keeping(store, spot, taken.past)?);
                    changes.push(StepsSlip::new(spot, taken.steps).put()?);
                    let filed =
                        Filed::New { days: taken.good.days.len(), unmade: taken.good.unmade.clone(), deprecated };
                    sky.good = Some(taken.good);
                    filed
                }
                Err(what) => {
                    let place = "the document".to_owned();
                    failed(&mut sky, Fault::Document { service: by, place, what }, now, &key)
                }
            }
        }
        Ok(Answered::Same { expires }) => {
            succeeded(&mut sky, now, expires, cells, &key);
            if let Some(good) = &mut sky.good {
                good.expires = expires;
            }
            Filed::Same
        }
        Err(fault) => failed(&mut sky, fault, now, &key),
    };
    let taken = !matches!(filed, Filed::Kept(_));
    // Behind a service that failed, a file does not bring the next call to that service nearer.
    if by == Service::File && taken && none_failed {
        sky.next = now + FILE_AGAIN;
    }
    sky.tried = Some(now);
    changes.push(SkySlip::new(spot, sky).put()?);
    store.write(changes)?;
    Ok(filed)
}

fn succeeded(sky: &mut Sky, now: DateTime<Utc>, expires: Option<DateTime<Utc>>, cells: usize, key: &str) {
    sky.next = after_success(now, expires, cells, key);
    sky.failures = 0;
    sky.trouble = None;
}

fn failed(sky: &mut Sky, fault: Fault, now: DateTime<Utc>, key: &str) -> Filed {
    sky.failures = sky.failures.saturating_add(1);
    sky.next = after_failure(now, sky.failures, key);
    sky.trouble = Some(fault.to_string());
    Filed::Kept(fault)
}
