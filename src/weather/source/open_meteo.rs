//! The forecast service of Open-Meteo: parallel arrays with their units beside them. Without a key it is for
//! non-commercial use; data under CC BY 4.0.

use super::http::Http;
use super::met_norway::WIND_HEIGHT_M;
use super::{Asking, Content, Fault, Outlook, Provider, Service, belongs, unread};
use crate::agronomy::atmosphere::wind_at_two_metres;
use crate::quantity::{Fraction, OutOfBounds, Quantity, Temperature, WaterDepth, WindSpeed};
use crate::weather::cell::Cell;
use crate::weather::step::{Step, solar};
use chrono::{DateTime, NaiveDateTime, TimeDelta, Utc};
use serde::Deserialize;
use std::collections::BTreeMap;

/// The service.
pub struct OpenMeteo(pub(super) Http);

/// What is asked for, by the hour and by Greenwich; yesterday comes with it, so that today is whole on every clock and
/// yesterday is what it was found to be.
const ASKED: &str = "hourly=temperature_2m,relative_humidity_2m,precipitation,precipitation_probability,\
wind_speed_10m,shortwave_radiation&wind_speed_unit=ms&timezone=GMT&past_days=2&forecast_days=10";

impl Provider for OpenMeteo {
    fn service(&self) -> Service {
        Service::OpenMeteo
    }

    fn ask<'a>(&'a self, cell: Cell, since: Option<&'a str>) -> Asking<'a> {
        Box::pin(async move {
            let (lat, lon) = (cell.latitude_deg(), cell.longitude_deg());
            let path = format!("/v1/forecast?latitude={lat:.2}&longitude={lon:.2}&{ASKED}");
            self.0.get(Service::OpenMeteo, &path, since).await?.answered(|text| read(text, cell))
        })
    }
}

#[derive(Deserialize)]
struct Document {
    latitude: f64,
    longitude: f64,
    utc_offset_seconds: i64,
    hourly_units: BTreeMap<String, String>,
    hourly: Hourly,
}

#[derive(Deserialize)]
struct Hourly {
    time: Vec<String>,
    temperature_2m: Vec<Option<f64>>,
    #[serde(default)]
    relative_humidity_2m: Vec<Option<f64>>,
    #[serde(default)]
    precipitation: Vec<Option<f64>>,
    #[serde(default)]
    precipitation_probability: Vec<Option<f64>>,
    #[serde(default)]
    wind_speed_10m: Vec<Option<f64>>,
    #[serde(default)]
    shortwave_radiation: Vec<Option<f64>>,
}

/// Reads a document, checked against its own units and against what weather can be.
///
/// # Errors
/// [`Fault::Document`] with the place in it and what was expected.
pub fn read(text: &str, cell: Cell) -> Result<Outlook, Fault> {
    let document: Document = serde_json::from_str(text).map_err(|fault| unread(Service::OpenMeteo, &fault))?;
    belongs(Service::OpenMeteo, cell, document.latitude, document.longitude)?;
    let hourly = &document.hourly;
    check_lengths(hourly)?;
    let winds = check_units(&document.hourly_units, hourly)?;
    let offset = TimeDelta::try_seconds(document.utc_offset_seconds).unwrap_or_default();
    let times: Vec<DateTime<Utc>> =
        hourly.time.iter().enumerate().map(|(place, text)| time(place, text, offset)).collect::<Result<_, _>>()?;
    let mut steps = Vec::with_capacity(times.len());
    for (place, at) in times.iter().enumerate() {
        let named = |what: String| fault(&format!("hourly[{place}] ({})", at.to_rfc3339()), what);
        let next = times.get(place + 1).copied();
        if next.is_some_and(|next| next <= *at) {
            return Err(named("the next time is not later; times in their order expected".to_owned()));
        }
        steps.extend(step(hourly, place, *at, next, winds).map_err(named)?);
    }
    if steps.is_empty() {
        return Err(fault("hourly.temperature_2m", "no temperature is given; at least one expected"));
    }
    // The document does not say when it was made.
    Ok(Outlook { issued: None, content: Content::Steps(steps) })
}

/// One hour from its moment on. Sums and means of the service are of the hour before a moment, so that what falls and
/// shines in this one stands beside the next.
fn step(
    hourly: &Hourly,
    place: usize,
    at: DateTime<Utc>,
    next: Option<DateTime<Utc>>,
    metres_per_second: f64,
) -> Result<Option<Step>, String> {
    let here = |list: &[Option<f64>]| list.get(place).copied().flatten();
    let follows = next.is_some_and(|next| next - at == TimeDelta::hours(1));
    let ahead = |list: &[Option<f64>]| list.get(place + 1).copied().flatten().filter(|_| follows);
    let Some(celsius) = here(&hourly.temperature_2m) else { return Ok(None) };
    let of = |name: &'static str| move |refusal: OutOfBounds| format!("{name}: {refusal}");
    let percent = |name: &'static str| {
        move |value: f64| {
            Fraction::checked(value / 100.0).map_err(|_| format!("{name} {value} % was given, 0 to 100 % expected"))
        }
    };
    let wind = here(&hourly.wind_speed_10m).map(|speed| WindSpeed::checked(speed * metres_per_second));
    let wind = wind.transpose().map_err(of("wind_speed_10m"))?;
    let rain = ahead(&hourly.precipitation).map(WaterDepth::checked).transpose().map_err(of("precipitation"))?;
    Ok(Some(Step {
        at,
        hours: if next.is_some() { 1.0 } else { 0.0 },
        temperature: Temperature::checked(celsius).map_err(of("temperature_2m"))?,
        humidity: here(&hourly.relative_humidity_2m).map(percent("relative_humidity_2m")).transpose()?,
        wind_2m: wind.and_then(|wind| wind_at_two_metres(wind, WIND_HEIGHT_M)),
        rain,
        rain_chance: ahead(&hourly.precipitation_probability).map(percent("precipitation_probability")).transpose()?,
        solar_w_m2: ahead(&hourly.shortwave_radiation)
            .map(|watts| solar(watts).map_err(|what| format!("shortwave_radiation: {what}")))
            .transpose()?,
    }))
}

/// A time without a zone, as the service writes it, with the document's own offset taken off.
fn time(place: usize, text: &str, offset: TimeDelta) -> Result<DateTime<Utc>, Fault> {
    let read =
        ["%Y-%m-%dT%H:%M", "%Y-%m-%dT%H:%M:%S"].iter().find_map(|form| NaiveDateTime::parse_from_str(text, form).ok());
    let read = read.and_then(|at| at.checked_sub_signed(offset));
    read.map(|at| at.and_utc()).ok_or_else(|| {
        fault(&format!("hourly.time[{place}]"), format!("\"{text}\" is no time; one like 2026-05-18T06:00 expected"))
    })
}

/// Parallel arrays are of one length.
fn check_lengths(hourly: &Hourly) -> Result<(), Fault> {
    let hours = hourly.time.len();
    for (name, list, required) in arrays(hourly) {
        if list.len() != hours && (required || !list.is_empty()) {
            let what = format!("{} values were given for {hours} times; as many as times expected", list.len());
            return Err(fault(&format!("hourly.{name}"), what));
        }
    }
    Ok(())
}

fn arrays(hourly: &Hourly) -> [(&'static str, &[Option<f64>], bool); 6] {
    [
        ("temperature_2m", &hourly.temperature_2m, true),
        ("relative_humidity_2m", &hourly.relative_humidity_2m, false),
        ("precipitation", &hourly.precipitation, false),
        ("precipitation_probability", &hourly.precipitation_probability, false),
        ("wind_speed_10m", &hourly.wind_speed_10m, false),
        ("shortwave_radiation", &hourly.shortwave_radiation, false),
    ]
}

/// The units that the sums here understand; returns what one unit of wind is in m/s.
fn check_units(units: &BTreeMap<String, String>, hourly: &Hourly) -> Result<f64, Fault> {
    const KILOMETRES_PER_HOUR: f64 = 1.0 / 3.6;
    let expected = |name: &str| match name {
        "temperature_2m" => "°C",
        "precipitation" => "mm",
        "wind_speed_10m" => "m/s",
        "shortwave_radiation" => "W/m²",
        _ => "%",
    };
    let mut winds = 1.0;
    for (name, _, _) in arrays(hourly).into_iter().filter(|(_, list, _)| !list.is_empty()) {
        match (name, units.get(name).map(String::as_str)) {
            (_, Some(given)) if given == expected(name) => {}
            ("wind_speed_10m", Some("km/h")) => winds = KILOMETRES_PER_HOUR,
            (_, given) => {
                let what = given.map_or_else(
                    || format!("the unit is missing; \"{}\" expected", expected(name)),
                    |given| format!("the unit \"{given}\" was given, \"{}\" expected", expected(name)),
                );
                return Err(fault(&format!("hourly_units.{name}"), what));
            }
        }
    }
    Ok(winds)
}

fn fault(place: &str, what: impl Into<String>) -> Fault {
    Fault::Document { service: Service::OpenMeteo, place: place.to_owned(), what: what.into() }
}
