//! Keeps what people tell of the weather for their site, day by day, in the drawer of told weather.

use crate::answering::{Facts, site_told_of, told_days};
use crate::garden::rights::may_see_site;
use crate::garden::{Change, Person, SiteId, Store, StoreError, ToldWeather};
use crate::quantity::{Temperature, WaterDepth};
use crate::understanding::Reading;
use crate::weather::Told;
use chrono::{DateTime, FixedOffset, Utc};

/// The changes that keep it: none where it may be of several sites, or of one that this person may not see.
pub fn kept(
    store: &dyn Store,
    reading: &Reading,
    facts: &Facts<'_>,
    asker: Option<&Person>,
    now: DateTime<FixedOffset>,
) -> Result<Vec<Change>, StoreError> {
    let site = site_told_of(reading, facts).filter(|site| may_see_site(asker, &site.site.id));
    let Some(site) = site.filter(|_| !reading.sky.is_empty() && !reading.why) else { return Ok(Vec::new()) };
    let mut all: Vec<Told> = Vec::new();
    for told in told_days(&reading.sky) {
        match all.iter_mut().find(|day| day.date == told.date) {
            Some(day) => *day = told.after(*day),
            None => all.push(told),
        }
    }
    all.into_iter().map(|told| of_day(&site.site.id, told, now.with_timezone(&Utc)).kept(store)).collect()
}

/// What was told of one day, as the store has it.
fn of_day(site: &SiteId, told: Told, at: DateTime<Utc>) -> ToldWeather {
    ToldWeather {
        site: site.clone(),
        date: told.date,
        tmax_c: told.tmax.map(Temperature::as_celsius),
        tmin_c: told.tmin.map(Temperature::as_celsius),
        rain_mm: told.rain.map(WaterDepth::as_millimetres),
        at,
    }
}
