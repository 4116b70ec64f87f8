//! How a site's weather is put together: what was said there, over what a file or the store foretells, over the days
//! gone by, over usual days.

use super::slips::{PastMonth, SkySlip};
use crate::garden::{Site, Store, StoreError, ToldWeather};
use crate::knowledge::Knowledge;
use crate::weather::cell::Spot;
use crate::weather::kept::Good;
use crate::weather::{Day, Foretold, Forecast, Origin, Service, SiteDays, Told, Weather, reaches};
use chrono::{NaiveDate, Offset, TimeZone};

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

/// The weather of a site on its own day.
///
/// # Errors
/// When the store cannot be read.
pub fn of_position<'a>(
    store: &dyn Store,
    site: &Site,
    handed: Handed<'a>,
    known: &'a Knowledge,
    today: NaiveDate,
) -> Result<Weather<'a>, StoreError> {
    let position = (site.latitude_deg, site.longitude_deg, site.elevation_m);
    let fixed = if let Handed::Fixed(forecast) = handed { Some(forecast) } else { None };
    let mut weather = Weather::at(position, fixed, known);
    if !weather.has_forecast() {
        weather = weather.keeping(standing(store, site, handed, today)?);
    }
    let told = ToldWeather::of_site(store, &site.id)?;
    let told = told.iter().filter_map(|told| Told::checked(told.date, told.tmax_c, told.tmin_c, told.rain_mm).ok());
    Ok(weather.as_told(told))
}

/// The days that the store and a file of the setting have of a site.
///
/// # Errors
/// When the store cannot be read.
pub fn standing(store: &dyn Store, site: &Site, handed: Handed<'_>, today: NaiveDate) -> Result<SiteDays, StoreError> {
    let spot = Spot::of(site.latitude_deg, site.longitude_deg, site.timezone);
    let mut all = SiteDays::default();
    let past = PastMonth::days_of(store, &spot)?;
    all.days.extend(past.iter().filter_map(|past| past.read()).map(|day| (day.date, day)));
    let good = SkySlip::of(store, &spot)?.good;
    let reaches_today = good.as_ref().is_some_and(|good| good.days.last().is_some_and(|day| day.date >= today));
    let near = |forecast: &&Forecast| reaches(forecast, site.latitude_deg, site.longitude_deg);
    let observed = |there: &Day| there.origin == Origin::Observed;
    let file = match handed {
        Handed::First(forecast) => Some(forecast).filter(near),
        Handed::Later(forecast) if !reaches_today => Some(forecast).filter(near),
        _ => None,
    };
    if let Some(good) = good {
        foretold(&mut all, &good, site, today);
    }
    if let Some(forecast) = file {
        all.days.retain(|_, day| day.origin != Origin::Forecast);
        for day in forecast.days() {
            if !all.days.get(&day.date).is_some_and(observed) {
                all.days.insert(day.date, *day);
            }
        }
        let until = forecast.days().last().map_or(today, |day| day.date);
        all.forecast = Some(Foretold { by: Service::File, made: forecast.issued, until });
    }
    Ok(all)
}

/// The days of the last good document; one that has passed since is a kept forecast, unless more is known of it.
fn foretold(all: &mut SiteDays, good: &Good, site: &Site, today: NaiveDate) {
    for row in &good.days {
        let origin = if row.date < today { Origin::Kept } else { Origin::Forecast };
        let Ok(day) = row.day(origin) else { continue };
        let observed = |there: &Day| there.origin == Origin::Observed;
        if !all.days.get(&day.date).is_some_and(observed) {
            all.days.insert(day.date, day);
        }
    }
    let made = good.made();
    let offset = site.timezone.offset_from_utc_datetime(&made.naive_utc()).fix();
    let until = good.days.last().map_or(today, |day| day.date);
    all.forecast = Some(Foretold { by: good.by, made: Some(made.with_timezone(&offset)), until });
}
