//! A site's weather on any day: the forecast where it reaches, usual days elsewhere.

use super::aridity::{SEMI_ARID_BELOW, aridity_index};
use super::day::Day;
use super::normals::usual_day;
use super::source::file::Forecast;
use super::told::Told;
use crate::knowledge::{Knowledge, Place};
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeMap;
use std::sync::Arc;

/// How far a forecast may lie from a site and still be its own, km.
const FORECAST_REACH_KM: f64 = 40.0;

/// How far the nearest listed place may lie and still stand for a site, km.
const NORMALS_REACH_KM: f64 = 250.0;

/// What is known of the weather at one position.
#[derive(Debug, Clone)]
pub struct Weather<'a> {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    forecast: Option<&'a Forecast>,
    told: Option<Arc<BTreeMap<NaiveDate, Told>>>,
    normals: Option<(&'a Place, f64)>,
}

impl<'a> Weather<'a> {
    /// The weather of a position: a forecast counts only within 40 km, normals within 250 km.
    #[must_use]
    pub fn at(position: (f64, f64, f64), forecast: Option<&'a Forecast>, known: &'a Knowledge) -> Self {
        let (latitude_deg, longitude_deg, elevation_m) = position;
        let forecast = forecast.filter(|forecast| {
            kilometres((latitude_deg, longitude_deg), (forecast.latitude_deg, forecast.longitude_deg))
                <= FORECAST_REACH_KM
        });
        let normals =
            known.nearest_place(latitude_deg, longitude_deg).filter(|(_, distance)| *distance <= NORMALS_REACH_KM);
        Self { latitude_deg, longitude_deg, elevation_m, forecast, told: None, normals }
    }

    /// The weather of a listed place, from its normals alone.
    #[must_use]
    pub fn of_place(place: &'a Place) -> Self {
        Self {
            latitude_deg: place.latitude_deg,
            longitude_deg: place.longitude_deg,
            elevation_m: place.elevation_m,
            forecast: None,
            told: None,
            normals: Some((place, 0.0)),
        }
    }

    /// The same with what a person has just said of some days, over all that was known or said before.
    #[must_use]
    pub fn hearing(mut self, told: impl IntoIterator<Item = Told>) -> Self {
        let mut all = self.told.take().map(Arc::unwrap_or_clone).unwrap_or_default();
        for told in told {
            let before = all.get(&told.date).copied();
            all.insert(told.date, before.map_or(told, |before| told.after(before)));
        }
        self.told = (!all.is_empty()).then(|| Arc::new(all));
        self
    }

    /// The weather of one day, if anything is known of it.
    #[must_use]
    pub fn on(&self, date: NaiveDate) -> Option<Day> {
        let forecast = self.forecast.and_then(|forecast| forecast.on(date));
        let below = forecast.or_else(|| self.normals.map(|(place, _)| usual_day(place, date)));
        match self.told.as_ref().and_then(|told| told.get(&date)) {
            Some(told) => told.over(below),
            None => below,
        }
    }

    /// Days from a date on, as long as something is known of them.
    pub fn from(&self, date: NaiveDate) -> impl Iterator<Item = Day> + '_ {
        date.iter_days().map_while(|date| self.on(date))
    }

    /// When the forecast was made, if one is used.
    #[must_use]
    pub fn issued(&self) -> Option<DateTime<FixedOffset>> {
        self.forecast.and_then(|forecast| forecast.issued)
    }

    /// Whether a forecast is at hand for this position.
    #[must_use]
    pub fn has_forecast(&self) -> bool {
        self.forecast.is_some()
    }

    /// The aridity index of a place that is semi-arid or drier, by the normals that stand in here.
    #[must_use]
    pub fn arid(&self) -> Option<f64> {
        aridity_index(self.normals?.0).filter(|index| *index < SEMI_ARID_BELOW)
    }

    /// The place whose normals stand in, with its distance in km.
    #[must_use]
    pub fn normals(&self) -> Option<(&'a Place, f64)> {
        self.normals
    }
}

/// Flat-earth distance, good to a per cent over the few km that matter here.
fn kilometres(from: (f64, f64), to: (f64, f64)) -> f64 {
    const KM_PER_DEGREE: f64 = 111.2;
    let north = (to.0 - from.0) * KM_PER_DEGREE;
    let east = (to.1 - from.1) * KM_PER_DEGREE * libm::cos(from.0.to_radians());
    libm::hypot(north, east)
}
