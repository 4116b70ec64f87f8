//! A year around a day at one place: each week's mean temperatures, and how long its days are.

use crate::agronomy::sun::SunDay;
use crate::agronomy::thermal_time::Thresholds;
use crate::needs::gathered::Gathered;
use crate::needs::heat::temperatures;
use crate::quantity::{Temperature, TemperatureDifference};
use crate::weather::{Day, Weather};
use chrono::{Datelike, Days, NaiveDate};

/// Days before the day asked about.
const BEFORE: usize = 370;
/// Days after it: a year, and what the last sowing of that year needs.
const AFTER: usize = 370 + 330;
/// A week counts from its first day.
const WEEK: usize = 7;

/// The days around one day; a place in it is the number of days since its first.
#[derive(Debug, Clone)]
pub struct Year {
    first: NaiveDate,
    days: Vec<Day>,
    weeks: Vec<Week>,
}

/// The seven days from one day on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Week {
    pub tmax: Temperature,
    pub tmin: Temperature,
    /// From sunrise to sunset of its first day, h (FAO-56 eq. 34).
    pub day_h: f64,
}

impl Week {
    /// Its mean temperature.
    #[must_use]
    pub fn mean(&self) -> Temperature {
        self.tmax.middle(self.tmin)
    }
}

impl Year {
    /// The year around a day. None where no usual days of the place are known: a forecast alone is too short.
    #[must_use]
    pub fn around(weather: &Weather<'_>, day: NaiveDate) -> Option<Self> {
        let first = day.checked_sub_days(Days::new(BEFORE as u64))?;
        let days: Vec<Day> = first
            .iter_days()
            .map_while(|date| if date < day { weather.in_season(date) } else { weather.on(date) })
            .take(BEFORE + AFTER)
            .collect();
        if days.len() < BEFORE + AFTER {
            return None;
        }
        // A day of the year is as long in each of the three years that it lies in.
        let hours = |ordinal: u16| SunDay::new(weather.latitude_deg, ordinal).daylight_hours();
        let day_h: Vec<f64> = (1..=366).map(hours).collect();
        let weeks = days.windows(WEEK).filter_map(|week| {
            let ordinal = week.first()?.date.ordinal0() as usize;
            Some(Week {
                tmax: mean(week.iter().map(|day| day.tmax)),
                tmin: mean(week.iter().map(|day| day.tmin)),
                day_h: day_h.get(ordinal).copied()?,
            })
        });
        Some(Self { first, weeks: weeks.collect(), days })
    }

    /// The place of the day it was made around.
    #[must_use]
    pub const fn today(&self) -> usize {
        BEFORE
    }

    /// How many places have a whole week.
    #[must_use]
    pub fn len(&self) -> usize {
        self.weeks.len()
    }

    /// Whether it has no week.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.weeks.is_empty()
    }

    #[must_use]
    pub fn week(&self, place: usize) -> Option<&Week> {
        self.weeks.get(place)
    }

    /// The first and the last place of the weeks that lie wholly within a stretch of days.
    #[must_use]
    pub fn places_within(&self, from: usize, until: usize) -> (usize, usize) {
        (from, (until + 1).saturating_sub(WEEK).max(from))
    }

    /// The weeks that lie wholly within a stretch of days, with their places.
    pub fn weeks_within(&self, from: usize, until: usize) -> impl Iterator<Item = (usize, &Week)> {
        let (first, last) = self.places_within(from, until);
        self.weeks.iter().enumerate().take(last + 1).skip(first)
    }

    #[must_use]
    pub fn date(&self, place: usize) -> NaiveDate {
        self.first.checked_add_days(Days::new(place as u64)).unwrap_or(NaiveDate::MAX)
    }

    /// Thermal time gathered before each place, degree days.
    #[must_use]
    pub fn gathered(&self, thresholds: Thresholds) -> Gathered {
        Gathered::over(self.days.iter().map(temperatures), thresholds)
    }
}

fn mean(temperatures: impl ExactSizeIterator<Item = Temperature>) -> Temperature {
    let count = temperatures.len() as f64;
    let zero = Temperature::celsius(0.0);
    let sum: f64 = temperatures.map(|temperature| (temperature - zero).as_kelvins()).sum();
    zero + TemperatureDifference::kelvins(sum / count)
}
