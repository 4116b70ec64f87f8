//! Where forecasts come from: a file, two open services; each behind [`Provider`]. Asking is the only thing here that
//! goes out; what comes in is read by pure functions.

pub mod fault;
pub mod file;
mod file_provider;
mod http;
pub mod met_norway;
pub mod open_meteo;
pub mod setting;

pub use fault::Fault;
pub use setting::{Choice, Setting};

use super::cell::Cell;
use super::day::Day;
use super::step::Step;
use super::tables::FORECAST_REACH_KM;
use crate::knowledge::kilometres;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use std::future::Future;
use std::pin::Pin;

/// Who foretells.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Service {
    File,
    MetNorway,
    OpenMeteo,
}

impl Service {
    /// Its word in settings, logs and phrases.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::File => "file",
            Self::MetNorway => "met-norway",
            Self::OpenMeteo => "open-meteo",
        }
    }

    /// Its id in `sources.toml` with the terms under which its data stand; a file has none.
    #[must_use]
    pub const fn source(self) -> Option<(&'static str, &'static str)> {
        match self {
            Self::File => None,
            Self::MetNorway => Some(("met-norway", "Locationforecast 2.0, CC BY 4.0")),
            Self::OpenMeteo => Some(("open-meteo", "forecast, CC BY 4.0")),
        }
    }
}

impl std::fmt::Display for Service {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.word())
    }
}

/// A document as it was read, checked, and still without anyone's clock.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    /// When it was made, where it says so.
    pub issued: Option<DateTime<Utc>>,
    pub content: Content,
}

/// What a document holds.
#[derive(Debug, Clone, PartialEq)]
pub enum Content {
    /// In the order of time, at least one.
    Steps(Vec<Step>),
    /// Days by the document's own clock.
    Days(Vec<Day>),
}

/// What a provider answered.
#[derive(Debug, Clone, PartialEq)]
pub enum Answered {
    /// The document that is known is still the newest.
    Same {
        expires: Option<DateTime<Utc>>,
    },
    New(Box<Fetched>),
}

/// A new document with what is needed to ask again.
#[derive(Debug, Clone, PartialEq)]
pub struct Fetched {
    pub outlook: Outlook,
    /// Exactly as it was given.
    pub last_modified: Option<String>,
    /// Not to be asked again before.
    pub expires: Option<DateTime<Utc>>,
    /// The service says that this product ends.
    pub deprecated: bool,
}

/// An answer on its way.
pub type Asking<'a> = Pin<Box<dyn Future<Output = Result<Answered, Fault>> + Send + 'a>>;

/// One source of forecasts.
pub trait Provider: Send + Sync {
    fn service(&self) -> Service;

    /// Asks for the forecast of a cell; `since` is the `last_modified` of the document that is known.
    fn ask<'a>(&'a self, cell: Cell, since: Option<&'a str>) -> Asking<'a>;
}

/// A document must be of the place it was asked for.
fn belongs(service: Service, cell: Cell, latitude_deg: f64, longitude_deg: f64) -> Result<(), Fault> {
    let away = kilometres((cell.latitude_deg(), cell.longitude_deg()), (latitude_deg, longitude_deg));
    // What is no number is near nothing.
    if away <= FORECAST_REACH_KM {
        return Ok(());
    }
    let what = format!("it is for a place {away:.0} km away; {FORECAST_REACH_KM} km at most expected");
    Err(Fault::Document { service, place: "the position".to_owned(), what })
}

/// JSON that is cut short or of another form, with its place.
fn unread(service: Service, fault: &serde_json::Error) -> Fault {
    let place = format!("line {}, column {}", fault.line(), fault.column());
    let what = if fault.is_eof() {
        "the document is cut short".to_owned()
    } else {
        let told = fault.to_string();
        told.split(" at line ").next().unwrap_or(&told).to_owned()
    };
    Fault::Document { service, place, what }
}

/// The providers of a setting, in its order; `contact` tells a service whom to write to.
///
/// # Errors
/// When no connections can be made at all.
pub fn providers(setting: &Setting, contact: Option<&str>) -> Result<Vec<Box<dyn Provider>>, Fault> {
    let provider = |choice: &Choice| -> Result<Box<dyn Provider>, Fault> {
        Ok(match choice {
            Choice::File(path) => Box::new(file_provider::FileProvider::new(path.clone())),
            Choice::MetNorway(base) => Box::new(met_norway::MetNorway(http::Http::new(base, contact)?)),
            Choice::OpenMeteo(base) => Box::new(open_meteo::OpenMeteo(http::Http::new(base, contact)?)),
        })
    };
    setting.choices.iter().map(provider).collect()
}
