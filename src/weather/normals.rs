//! Usual days, from monthly normals.

use super::day::{Day, Origin};
use super::wet_days::WetDays;
use crate::knowledge::Place;
use crate::quantity::{Fraction, Temperature, WaterDepth, WindSpeed};
use chrono::{Datelike, Days, Months, NaiveDate};

/// The usual day of a date: between the two nearest mid-months, each variable by straight line.
///
/// Rain is the month's amount over its days, an expectation, not a shower; its chance is the share of days on which
/// it comes.
pub fn usual_day(place: &Place, wet: &WetDays, date: NaiveDate) -> Day {
    let (before, after, share) = neighbours(date);
    let month = |index: u32| &place.months[index as usize % 12];
    let (from, to) = (month(before), month(after));
    let line = |a: f64, b: f64| a + (b - a) * share;
    let both = |a: Option<f64>, b: Option<f64>| Some(line(a?, b?));
    let today = month(date.month0());
    Day {
        date,
        tmax: Temperature::celsius(line(from.tmax.as_celsius(), to.tmax.as_celsius())),
        tmin: Temperature::celsius(line(from.tmin.as_celsius(), to.tmin.as_celsius())),
        humidity_mean: both(from.humidity_mean.map(Fraction::as_of_one), to.humidity_mean.map(Fraction::as_of_one))
            .map(Fraction::of_one),
        wind_2m: both(
            from.wind_2m.map(WindSpeed::as_metres_per_second),
            to.wind_2m.map(WindSpeed::as_metres_per_second),
        )
        .map(WindSpeed::metres_per_second),
        solar: None,
        sunshine_h: both(from.sunshine_h, to.sunshine_h),
        rain: today.rain.map(|rain| WaterDepth::millimetres(rain.as_millimetres() / days_in_month(date))),
        rain_chance: wet.share(date.month0(), days_in_month(date)),
        origin: Origin::Normals,
    }
}

/// Month indices before and after, and how far the date lies between their middles.
fn neighbours(date: NaiveDate) -> (u32, u32, f64) {
    let middle = days_in_month(date) / 2.0;
    let day = f64::from(date.day0()) + 0.5;
    let month = date.month0();
    if day < middle {
        let before =
            days_in_month(date.with_day(1).and_then(|first| first.checked_sub_days(Days::new(1))).unwrap_or(date));
        let gap = before / 2.0 + middle;
        ((month + 11) % 12, month, (before / 2.0 + day) / gap)
    } else {
        let next = date.with_day(1).and_then(|first| first.checked_add_months(Months::new(1))).unwrap_or(date);
        let gap = middle + days_in_month(next) / 2.0;
        (month, (month + 1) % 12, (day - middle) / gap)
    }
}

fn days_in_month(date: NaiveDate) -> f64 {
    f64::from(date.num_days_in_month())
}
