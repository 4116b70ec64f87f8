//! What people said of the weather at a site: kept beside the garden, day by day.

use super::filed::{Filed, Slip};
use super::id::SiteId;
use super::store::{Change, Store, StoreError};
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

/// What was said of one day at one site; what was not said is left out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ToldWeather {
    pub site: SiteId,
    pub date: NaiveDate,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tmax_c: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tmin_c: Option<f64>,
    /// What fell or is to fall that day; 0 for "no rain".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain_mm: Option<f64>,
    /// When it was said.
    pub at: DateTime<Utc>,
}

impl Slip for ToldWeather {
    const DRAWER: &'static str = "weather-told";
    fn key(&self) -> String {
        format!("{}|{}", self.site, self.date)
    }
}

impl ToldWeather {
    /// All that was said of the weather of a site.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn of_site(store: &dyn Store, site: &SiteId) -> Result<Vec<Self>, StoreError> {
        Self::beginning(store, &format!("{site}|"))
    }

    /// The change that keeps it: over what was said of the same day before, of which all stays that is not said anew.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn kept(self, store: &dyn Store) -> Result<Change, StoreError> {
        let before = Self::find(store, &self.key())?;
        let (tmax_c, tmin_c, rain_mm) =
            before.map(|before| (before.tmax_c, before.tmin_c, before.rain_mm)).unwrap_or_default();
        let both = Self {
            tmax_c: self.tmax_c.or(tmax_c),
            tmin_c: self.tmin_c.or(tmin_c),
            rain_mm: self.rain_mm.or(rain_mm),
            ..self
        };
        both.put()
    }

    /// The slip of it, for an answer that records it.
    ///
    /// # Errors
    /// When it cannot be written as JSON.
    pub fn slip(&self) -> Result<Filed, StoreError> {
        self.filed()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::Overlay;

    fn said(date: &str, tmax_c: Option<f64>, rain_mm: Option<f64>) -> ToldWeather {
        let at = "2026-05-18T02:30:00Z".parse().unwrap();
        let site = SiteId::new("roof-1").unwrap();
        ToldWeather { site, date: date.parse().unwrap(), tmax_c, tmin_c: None, rain_mm, at }
    }

    #[test]
    fn what_is_said_later_leaves_what_it_does_not_speak_of() {
        let store = Overlay::in_memory();
        for told in [said("2026-05-18", Some(43.0), None), said("2026-05-18", None, Some(20.0))] {
            let change = told.kept(&store).unwrap();
            store.write(vec![change]).unwrap();
        }
        let other = ToldWeather { site: SiteId::new("roof-12").unwrap(), ..said("2026-05-19", Some(40.0), None) };
        let change = other.kept(&store).unwrap();
        store.write(vec![change]).unwrap();
        let all = ToldWeather::of_site(&store, &SiteId::new("roof-1").unwrap()).unwrap();
        assert_eq!(all, [said("2026-05-18", Some(43.0), Some(20.0))]);
    }
}
