//! Keeps what people tell of the weather for their site, day by day, in the drawer of told weather.

use crate::answering::{Facts, site_told_of, told_days};
use crate::garden::rights::may_see_site;
use crate::garden::{Change, Filed, Person, SiteId, Store, StoreError};
use crate::quantity::{Temperature, WaterDepth};
use crate::understanding::Reading;
use crate::weather::Told;
use chrono::{DateTime, FixedOffset, Utc};
use serde_json::{Map, Value, json};

/// The drawer; a slip a site and day, keyed `site|date`.
const DRAWER: &str = "weather-told";

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
    all.into_iter().map(|told| slip(store, &site.site.id, told, now.with_timezone(&Utc)).map(Change::put)).collect()
}

/// The slip of a day, over what was told of it before.
fn slip(store: &dyn Store, site: &SiteId, told: Told, at: DateTime<Utc>) -> Result<Filed, StoreError> {
    let key = format!("{site}|{}", told.date);
    let before = store.filed(DRAWER, &key)?.map(|filed| filed.value);
    let mut value = before.and_then(|value| value.as_object().cloned()).unwrap_or_else(Map::new);
    let mut put = |name: &str, number: Option<f64>| {
        if let Some(number) = number {
            value.insert(name.to_owned(), json!(number));
        }
    };
    put("tmax_c", told.tmax.map(Temperature::as_celsius));
    put("tmin_c", told.tmin.map(Temperature::as_celsius));
    put("rain_mm", told.rain.map(WaterDepth::as_millimetres));
    value.insert("site".to_owned(), json!(site.as_str()));
    value.insert("date".to_owned(), json!(told.date.to_string()));
    value.insert("at".to_owned(), json!(at));
    Ok(Filed { drawer: DRAWER.to_owned(), key, value: Value::Object(value) })
}
