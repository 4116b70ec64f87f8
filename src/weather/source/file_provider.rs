//! A forecast file as a provider: read again whenever it has changed.

use super::file::Forecast;
use super::{Answered, Asking, Content, Fault, Fetched, Outlook, Provider, Service, belongs};
use crate::weather::cell::Cell;
use crate::weather::day::Day;
use chrono::{DateTime, Utc};
use std::path::PathBuf;

/// One file.
pub struct FileProvider {
    path: PathBuf,
}

impl FileProvider {
    pub const fn new(path: PathBuf) -> Self {
        Self { path }
    }

    fn read(&self, cell: Cell, since: Option<&str>) -> Result<Answered, Fault> {
        let document =
            |what: String| Fault::Document { service: Service::File, place: self.path.display().to_string(), what };
        let unreadable = |fault: std::io::Error| document(format!("it cannot be read: {}", fault.kind()));
        let written = std::fs::metadata(&self.path).and_then(|about| about.modified()).map_err(unreadable)?;
        let last_modified = DateTime::<Utc>::from(written).to_rfc3339();
        if since == Some(last_modified.as_str()) {
            return Ok(Answered::Same { expires: None });
        }
        #[expect(clippy::disallowed_methods, reason = "a provider reads its source")]
        let text = std::fs::read_to_string(&self.path).map_err(unreadable)?;
        let forecast = Forecast::read(&self.path.display().to_string(), &text)
            .map_err(|problem| document(format!("line {}: {}", problem.line, problem.message)))?;
        belongs(Service::File, cell, forecast.latitude_deg, forecast.longitude_deg)?;
        let days: Vec<Day> = forecast.days().copied().collect();
        let issued = forecast.issued.map(|at| at.with_timezone(&Utc));
        let outlook = Outlook { issued, content: Content::Days(days) };
        let last_modified = Some(last_modified);
        Ok(Answered::New(Box::new(Fetched { outlook, last_modified, expires: None, deprecated: false })))
    }
}

impl Provider for FileProvider {
    fn service(&self) -> Service {
        Service::File
    }

    fn ask<'a>(&'a self, cell: Cell, since: Option<&'a str>) -> Asking<'a> {
        Box::pin(async move { self.read(cell, since) })
    }
}
