//! A site's weather on any day: what was said there, else what is kept or foretold, else usual days.

use super::aridity::{SEMI_ARID_BELOW, aridity_index};
use super::day::{Day, Origin};
use super::normals::usual_day;
use super::source::Service;
use super::source::file::Forecast;
use super::told::Told;
use super::wet_days::WetDays;
use crate::knowledge::{Knowledge, Place};
use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta};
use std::collections::BTreeMap;
use std::sync::Arc;

/// How far a forecast may lie from a site and still be its own, km.
pub(super) const FORECAST_REACH_KM: f64 = 40.0;

/// How far the nearest listed place may lie and still stand for a site, km.
const NORMALS_REACH_KM: f64 = 250.0;

/// A forecast older than this is called old.
const OLD: TimeDelta = TimeDelta::days(2);

/// What is known of the weather at one position.
#[derive(Debug, Clone)]
pub struct Weather<'a> {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    forecast: Option<&'a Forecast>,
    kept: Option<Arc<SiteDays>>,
    told: Option<Arc<BTreeMap<NaiveDate, Told>>>,
    normals: Option<(&'a Place, f64)>,
    wet_days: Option<WetDays>,
}

/// Days of a site out of the store: gone by and foretold.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SiteDays {
    pub days: BTreeMap<NaiveDate, Day>,
    /// The forecast among them.
    pub forecast: Option<Foretold>,
}

/// Who made a forecast and when.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Foretold {
    pub by: Service,
    /// When it was made; where a document does not say so, when it came.
    pub made: Option<DateTime<FixedOffset>>,
    /// Its last day.
    pub until: NaiveDate,
}

impl Foretold {
    /// Its age in whole days, where that is past two days.
    #[must_use]
    pub fn old(&self, now: DateTime<FixedOffset>) -> Option<i64> {
        let age = now - self.made?;
        (age > OLD).then(|| age.num_days())
    }
}

impl<'a> Weather<'a> {
    /// The weather of a position: a forecast counts only within 40 km, normals within 250 km.
    #[must_use]
    pub fn at(position: (f64, f64, f64), forecast: Option<&'a Forecast>, known: &'a Knowledge) -> Self {
        let (latitude_deg, longitude_deg, elevation_m) = position;
        let forecast = forecast.filter(|forecast| reaches(forecast, latitude_deg, longitude_deg));
        let normals =
            known.nearest_place(latitude_deg, longitude_deg).filter(|(_, distance)| *distance <= NORMALS_REACH_KM);
        let wet_days = normals.map(|(place, _)| WetDays::of(place));
        Self { latitude_deg, longitude_deg, elevation_m, forecast, kept: None, told: None, normals, wet_days }
    }

    /// The weather of a listed place, from its normals alone.
    #[must_use]
    pub fn of_place(place: &'a Place) -> Self {
        Self {
            latitude_deg: place.latitude_deg,
            longitude_deg: place.longitude_deg,
            elevation_m: place.elevation_m,
            forecast: None,
            kept: None,
            told: None,
            normals: Some((place, 0.0)),
            wet_days: Some(WetDays::of(place)),
        }
    }

    /// The same over what the store has of the site; a forecast that was handed in fixes the weather and stands alone.
    #[must_use]
    pub fn keeping(mut self, kept: Arc<SiteDays>) -> Self {
        if self.forecast.is_none() && !kept.days.is_empty() {
            self.kept = Some(kept);
        }
        self
    }

    /// The same with what people at the site said of some days, over all else.
    #[must_use]
    pub fn as_told(mut self, told: impl IntoIterator<Item = Told>) -> Self {
        let told: BTreeMap<NaiveDate, Told> = told.into_iter().map(|told| (told.date, told)).collect();
        self.told = (!told.is_empty()).then(|| Arc::new(told));
        self
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
        let below = self.known(date).or_else(|| self.usual(date));
        match self.told.as_ref().and_then(|told| told.get(&date)) {
            Some(told) => told.over(below),
            None => below,
        }
    }

    fn known(&self, date: NaiveDate) -> Option<Day> {
        let forecast = self.forecast.and_then(|forecast| forecast.on(date));
        forecast.or_else(|| self.kept.as_ref()?.days.get(&date).copied())
    }

    /// The usual day of a date, if the place's normals are known.
    #[must_use]
    pub fn usual(&self, date: NaiveDate) -> Option<Day> {
        self.normals.zip(self.wet_days.as_ref()).map(|((place, _), wet)| usual_day(place, wet, date))
    }

    /// The day as it counts for the seasons of a year: foretold, else usual. What one past day was like says nothing of
    /// the season it lay in.
    #[must_use]
    pub fn in_season(&self, date: NaiveDate) -> Option<Day> {
        let known = self.known(date).filter(|day| day.origin == Origin::Forecast);
        known.or_else(|| self.usual(date))
    }

    /// Days from a date on, as long as something is known of them.
    pub fn from(&self, date: NaiveDate) -> impl Iterator<Item = Day> + '_ {
        date.iter_days().map_while(|date| self.on(date))
    }

    /// When the forecast was made, if one is used and says so.
    #[must_use]
    pub fn issued(&self) -> Option<DateTime<FixedOffset>> {
        match self.forecast {
            Some(forecast) => forecast.issued,
            None => self.foretold()?.made,
        }
    }

    /// The forecast used, who made it and how far it goes.
    #[must_use]
    pub fn foretold(&self) -> Option<Foretold> {
        match self.forecast {
            Some(forecast) => {
                let until = forecast.days().last()?.date;
                Some(Foretold { by: Service::File, made: forecast.issued, until })
            }
            None => self.kept.as_ref()?.forecast,
        }
    }

    /// Whether a forecast is at hand for this position.
    #[must_use]
    pub fn has_forecast(&self) -> bool {
        self.foretold().is_some()
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

/// Whether a forecast is near enough to a position to be its own.
#[must_use]
pub fn reaches(forecast: &Forecast, latitude_deg: f64, longitude_deg: f64) -> bool {
    kilometres((latitude_deg, longitude_deg), (forecast.latitude_deg, forecast.longitude_deg)) <= FORECAST_REACH_KM
}

/// Flat-earth distance, good to a per cent over the few km that matter here.
fn kilometres(from: (f64, f64), to: (f64, f64)) -> f64 {
    const KM_PER_DEGREE: f64 = 111.2;
    let north = (to.0 - from.0) * KM_PER_DEGREE;
    let east = (to.1 - from.1) * KM_PER_DEGREE * libm::cos(from.0.to_radians());
    libm::hypot(north, east)
}
