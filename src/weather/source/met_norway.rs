//! The open forecast service of MET Norway: Locationforecast 2.0, compact.
//!
//! Its terms, kept here and by whoever asks: a User-Agent that says who it is, coordinates of at most four decimals (a
//! cell has two), `If-Modified-Since` with exactly the `Last-Modified` that was given, not asked again before `Expires`,
//! 429 backed away from, 203 (a product that ends) told in the log. Data under CC BY 4.0.

use super::http::Http;
use super::{Asking, Content, Fault, Outlook, Provider, Service, belongs, unread};
use crate::agronomy::atmosphere::wind_at_two_metres;
use crate::quantity::{Fraction, Quantity, Temperature, WaterDepth, WindSpeed};
use crate::weather::cell::Cell;
use crate::weather::step::Step;
use chrono::{DateTime, Utc};
use serde::Deserialize;
use std::collections::BTreeMap;

/// The wind of forecasts is that of this height above ground, m (World Meteorological Organization's standard).
pub(super) const WIND_HEIGHT_M: f64 = 10.0;

/// The service.
pub struct MetNorway(pub(super) Http);

impl Provider for MetNorway {
    fn service(&self) -> Service {
        Service::MetNorway
    }

    fn ask<'a>(&'a self, cell: Cell, since: Option<&'a str>) -> Asking<'a> {
        Box::pin(async move {
            let (lat, lon) = (cell.latitude_deg(), cell.longitude_deg());
            let path = format!("/weatherapi/locationforecast/2.0/compact?lat={lat:.2}&lon={lon:.2}");
            self.0.get(Service::MetNorway, &path, since).await?.answered(|text| read(text, cell))
        })
    }
}

#[derive(Deserialize)]
struct Document {
    geometry: Geometry,
    properties: Properties,
}

#[derive(Deserialize)]
struct Geometry {
    /// Longitude, latitude, and perhaps the height in metres.
    coordinates: Vec<f64>,
}

#[derive(Deserialize)]
struct Properties {
    meta: Meta,
    timeseries: Vec<Entry>,
}

#[derive(Deserialize)]
struct Meta {
    updated_at: DateTime<Utc>,
    units: BTreeMap<String, String>,
}

#[derive(Deserialize)]
struct Entry {
    time: DateTime<Utc>,
    data: Data,
}

#[derive(Deserialize)]
struct Data {
    instant: Instant,
    next_1_hours: Option<Next>,
    next_6_hours: Option<Next>,
}

#[derive(Deserialize)]
struct Instant {
    details: InstantDetails,
}

#[derive(Deserialize)]
struct InstantDetails {
    air_temperature: f64,
    relative_humidity: Option<f64>,
    wind_speed: Option<f64>,
}

#[derive(Deserialize)]
struct Next {
    // Where nothing of the sort is foretold, the service leaves the details out.
    details: Option<NextDetails>,
}

#[derive(Deserialize)]
struct NextDetails {
    precipitation_amount: Option<f64>,
    probability_of_precipitation: Option<f64>,
}

/// Reads a document, checked against its own units and against what weather can be.
///
/// # Errors
/// [`Fault::Document`] with the place in it and what was expected.
pub fn read(text: &str, cell: Cell) -> Result<Outlook, Fault> {
    let document: Document = serde_json::from_str(text).map_err(|fault| unread(Service::MetNorway, &fault))?;
    let [longitude_deg, latitude_deg, ..] = document.geometry.coordinates[..] else {
        return Err(fault("geometry.coordinates", "longitude and latitude expected"));
    };
    belongs(Service::MetNorway, cell, latitude_deg, longitude_deg)?;
    let Properties { meta, timeseries } = document.properties;
    check_units(&meta.units, &timeseries)?;
    let nexts = timeseries.iter().skip(1).map(|entry| Some(entry.time)).chain([None]);
    let mut steps = Vec::with_capacity(timeseries.len());
    for (place, (entry, next)) in timeseries.iter().zip(nexts).enumerate() {
        let named =
            |what: String| fault(&format!("properties.timeseries[{place}] ({})", entry.time.to_rfc3339()), what);
        if next.is_some_and(|next| next <= entry.time) {
            return Err(named("the next time is not later; times in their order expected".to_owned()));
        }
        steps.push(step(entry, next).map_err(named)?);
    }
    if steps.is_empty() {
        return Err(fault("properties.timeseries", "no time is given; at least one expected"));
    }
    Ok(Outlook { issued: Some(meta.updated_at), content: Content::Steps(steps) })
}

/// One entry. What falls in the next hour counts where it is told, else what falls in the next six, as far as the next
/// entry leaves them.
fn step(entry: &Entry, next: Option<DateTime<Utc>>) -> Result<Step, String> {
    let details = &entry.data.instant.details;
    let until_next = next.map_or(f64::INFINITY, |next| (next - entry.time).num_seconds() as f64 / 3600.0);
    let (hours, foretold) = match (&entry.data.next_1_hours, &entry.data.next_6_hours) {
        (Some(next), _) => (1.0, next.details.as_ref()),
        (None, Some(next)) => (6.0, next.details.as_ref()),
        (None, None) => (0.0, None),
    };
    let lasts: f64 = until_next.min(hours);
    let share = if hours > 0.0 { lasts / hours } else { 0.0 };
    let percent = |name: &str, value: f64| {
        Fraction::checked(value / 100.0).map_err(|_| format!("{name} {value} % was given, 0 to 100 % expected"))
    };
    let rain = foretold.and_then(|details| details.precipitation_amount);
    let rain = rain.map(WaterDepth::checked).transpose().map_err(|refusal| of("precipitation_amount", refusal))?;
    let chance = foretold.and_then(|details| details.probability_of_precipitation);
    let wind = details.wind_speed.map(WindSpeed::checked).transpose().map_err(|refusal| of("wind_speed", refusal))?;
    let temperature = Temperature::checked(details.air_temperature);
    Ok(Step {
        at: entry.time,
        hours: lasts,
        temperature: temperature.map_err(|refusal| of("air_temperature", refusal))?,
        humidity: details.relative_humidity.map(|value| percent("relative_humidity", value)).transpose()?,
        wind_2m: wind.and_then(|wind| wind_at_two_metres(wind, WIND_HEIGHT_M)),
        rain: rain.map(|rain| rain * share),
        rain_chance: chance.map(|value| percent("probability_of_precipitation", value)).transpose()?,
        solar_w_m2: None,
    })
}

/// The units that the sums here understand, by the document's own list.
fn check_units(units: &BTreeMap<String, String>, timeseries: &[Entry]) -> Result<(), Fault> {
    let details = || timeseries.iter().map(|entry| &entry.data.instant.details);
    let foretold = || {
        let nexts = |entry: &'_ Entry| [entry.data.next_1_hours.is_some(), entry.data.next_6_hours.is_some()];
        timeseries.iter().flat_map(nexts).any(|told| told)
    };
    let chance = |entry: &Entry| {
        let nexts = [&entry.data.next_1_hours, &entry.data.next_6_hours];
        nexts
            .into_iter()
            .flatten()
            .filter_map(|next| next.details.as_ref())
            .any(|details| details.probability_of_precipitation.is_some())
    };
    for (name, unit, used) in [
        ("air_temperature", "celsius", true),
        ("relative_humidity", "%", details().any(|details| details.relative_humidity.is_some())),
        ("wind_speed", "m/s", details().any(|details| details.wind_speed.is_some())),
        ("precipitation_amount", "mm", foretold()),
        ("probability_of_precipitation", "%", timeseries.iter().any(chance)),
    ] {
        let given = units.get(name).map(String::as_str);
        if used && given != Some(unit) {
            let place = format!("properties.meta.units.{name}");
            let what = given.map_or_else(
                || format!("the unit is missing; \"{unit}\" expected"),
                |given| format!("the unit \"{given}\" was given, \"{unit}\" expected"),
            );
            return Err(fault(&place, what));
        }
    }
    Ok(())
}

fn of(name: &str, refusal: crate::quantity::OutOfBounds) -> String {
    format!("{name}: {refusal}")
}

fn fault(place: &str, what: impl Into<String>) -> Fault {
    Fault::Document { service: Service::MetNorway, place: place.to_owned(), what: what.into() }
}
