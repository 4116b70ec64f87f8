//! How a site's weather is put together: what was said there, over what a file or the store foretells, over the days
//! gone by, over usual days.

use super::recalled::Recalled;
use super::slips::{PastMonth, SkySlip};
use crate::garden::{Site, Store, StoreError, ToldWeather};
use crate::knowledge::Knowledge;
use crate::weather::cell::Spot;
use crate::weather::kept::Good;
use crate::weather::{Day, Forecast, Foretold, Origin, Service, SiteDays, Told, Weather, reaches};
use chrono::{DateTime, FixedOffset, NaiveDate, Offset, TimeZone};
use std::collections::HashMap;
use std::sync::Arc;

/// A forecast that was handed in beside the store.
#[derive(Debug, Clone, Copy, Default)]
pub enum Handed<'a> {
    #[default]
    Nothing,
    /// It fixes the weather: what the store has of it does not count.
    Fixed(&'a Forecast),
    /// The first source of the setting: it stands in for the store's forecast.
    First(&'a Forecast),
    /// A later source of the setting: it counts where the store has no forecast that reaches today.
    Later(&'a Forecast),
}

impl<'a> Handed<'a> {
    /// Any forecast that was handed in.
    #[must_use]
    pub const fn any(self) -> Option<&'a Forecast> {
        match self {
            Self::Nothing => None,
            Self::Fixed(forecast) | Self::First(forecast) | Self::Later(forecast) => Some(forecast),
        }
    }
}

/// The skies over the sites of one answer: what the store has of a cell is read once.
pub struct Skies<'s, 'a> {
    store: &'s dyn Store,
    handed: Handed<'a>,
    known: &'a Knowledge,
    read: HashMap<(Spot, NaiveDate), Arc<SiteDays>>,
    recalled: Option<&'s Recalled>,
}

impl<'s, 'a> Skies<'s, 'a> {
    #[must_use]
    pub fn new(store: &'s dyn Store, handed: Handed<'a>, known: &'a Knowledge) -> Self {
        Self { store, handed, known, read: HashMap::new(), recalled: None }
    }

    /// The same with what answers before this one read.
    #[must_use]
    pub fn recalling(self, recalled: &'s Recalled) -> Self {
        Self { recalled: Some(recalled), ..self }
    }

    /// The weather of a site at a moment on its own clock; what was said after it does not count yet.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn over(&mut self, site: &Site, now: DateTime<FixedOffset>) -> Result<Weather<'a>, StoreError> {
        let today = now.date_naive();
        let position = (site.latitude_deg, site.longitude_deg, site.elevation_m);
        let fixed = if let Handed::Fixed(forecast) = self.handed { Some(forecast) } else { None };
        let mut weather = Weather::at(position, fixed, self.known);
        if !weather.has_forecast() {
            let spot = Spot::of(site.latitude_deg, site.longitude_deg, site.timezone);
            let read = match self.read.get(&(spot, today)) {
                Some(read) => read.clone(),
                None => self.standing(&spot, today)?,
            };
            self.read.insert((spot, today), read.clone());
            weather = weather.keeping(read);
        }
        let told = ToldWeather::of_site(self.store, &site.id)?;
        let told = told
            .iter()
            .filter(|told| told.at <= now)
            .filter_map(|told| Told::checked(told.date, told.tmax_c, told.tmin_c, told.rain_mm).ok());
        Ok(weather.as_told(told))
    }

    fn standing(&self, spot: &Spot, today: NaiveDate) -> Result<Arc<SiteDays>, StoreError> {
        match (self.recalled, self.handed) {
            (Some(recalled), Handed::Nothing) => {
                recalled.or_read(self.store, spot, today, || standing(self.store, spot, Handed::Nothing, today))
            }
            _ => standing(self.store, spot, self.handed, today).map(Arc::new),
        }
    }
}

/// The days that the store and a file of the setting have of a spot.
fn standing(store: &dyn Store, spot: &Spot, handed: Handed<'_>, today: NaiveDate) -> Result<SiteDays, StoreError> {
    let mut all = SiteDays::default();
    let past = PastMonth::days_of(store, spot)?;
    all.days.extend(past.iter().filter_map(|past| past.read()).map(|day| (day.date, day)));
    let good = SkySlip::of(store, spot)?.good;
    let reaches_today = good.as_ref().is_some_and(|good| good.days.last().is_some_and(|day| day.date >= today));
    let near = |forecast: &&Forecast| reaches(forecast, spot.cell.latitude_deg(), spot.cell.longitude_deg());
    let file = match handed {
        Handed::First(forecast) => Some(forecast).filter(near),
        Handed::Later(forecast) if !reaches_today => Some(forecast).filter(near),
        _ => None,
    };
    if let Some(good) = good {
        foretold(&mut all, &good, spot, today);
    }
    if let Some(forecast) = file {
        all.days.retain(|_, day| day.origin != Origin::Forecast);
        for day in forecast.days() {
            put(&mut all, *day);
        }
        let until = forecast.days().last().map_or(today, |day| day.date);
        all.forecast = Some(Foretold { by: Service::File, made: forecast.issued, until });
    }
    Ok(all)
}

/// Puts a day among the others, unless it is known how it was.
fn put(all: &mut SiteDays, day: Day) {
    let observed = all.days.get(&day.date).is_some_and(|there| there.origin == Origin::Observed);
    if !observed {
        all.days.insert(day.date, day);
    }
}

/// The days of the last good document; one that has passed since is a kept forecast, unless more is known of it.
fn foretold(all: &mut SiteDays, good: &Good, spot: &Spot, today: NaiveDate) {
    for row in &good.days {
        let origin = if row.date < today { Origin::Kept } else { Origin::Forecast };
        if let Ok(day) = row.day(origin) {
            put(all, day);
        }
    }
    let made = good.made();
    let offset = spot.zone.offset_from_utc_datetime(&made.naive_utc()).fix();
    let until = good.days.last().map_or(today, |day| day.date);
    all.forecast = Some(Foretold { by: good.by, made: Some(made.with_timezone(&offset)), until });
}
