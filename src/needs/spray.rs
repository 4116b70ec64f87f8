//! When a bed is sprayed next, in which hours, how strong and with how much liquid.

use super::swing::{Doubt, swing};
use crate::agronomy::daily_temperature::DailyCurve;
use crate::agronomy::sun_times::sun_times;
use crate::knowledge::SprayUse;
use crate::quantity::{Area, Estimate, Temperature, Volume};
use crate::weather::{Day, Origin, Weather};
use chrono::{DateTime, Days, FixedOffset, NaiveDate, NaiveTime, Timelike, Utc};
use std::collections::BTreeSet;

/// So many days are looked through for one that fits.
const DAYS_LOOKED_AT: u64 = 10;
/// A day with more expected rain than this washes the spray off (judgement).
const RAIN_MM: f64 = 2.0;
/// So much on one day after a spray washes off what dried on the leaf (common practice, no source).
pub const WASHES_OFF_MM: f64 = 10.0;
/// Light enough to work by, before sunrise and after sunset, h: civil twilight at low latitudes.
const TWILIGHT_H: f64 = 0.42;
/// The sun is off the leaves and bees go home about this long before sunset, h (judgement).
const LOW_SUN_H: f64 = 1.0;
/// On a cool day the morning may be used for this long after sunrise, h (judgement).
const COOL_MORNING_H: f64 = 1.0;
/// The leaf is to be dry before the air passes the limit: so long after a morning spray, h (judgement).
const DRYING_H: f64 = 0.75;
/// Shorter than this, no bed is done, h (judgement).
const SHORTEST_H: f64 = 0.33;
/// Times are given in steps of this, h: finer would claim what the curve does not know.
const STEP_H: f64 = 1.0 / 12.0;

/// Why a day was passed over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Obstacle {
    Rain,
    Wind,
    Heat,
    /// What is ready is picked first: the wait would run into it.
    Picking,
}

/// Which end of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartOfDay {
    Dawn,
    Evening,
}

/// The clock times between which the air is below the limit, the light good and the bees away.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SprayHours {
    pub from: NaiveTime,
    pub until: NaiveTime,
    pub part: PartOfDay,
    /// The warmest air from the first drop until the leaf is dry, by the curve.
    pub warmest: Temperature,
}

/// The next spray of one bed.
#[derive(Debug, Clone, PartialEq)]
pub struct NextSpray {
    pub day: Estimate<NaiveDate>,
    /// By the rhythm alone, whatever the weather; may lie in the past.
    pub due: NaiveDate,
    /// The day of the rain that washed the last one off, or is going to, before the next by the rhythm.
    pub washed_off: Option<NaiveDate>,
    /// None where no day looked at has a fit hour, or no weather is known.
    pub hours: Option<SprayHours>,
    /// What moved it.
    pub moved_by: BTreeSet<Obstacle>,
    /// Whether its day is a usual day, with no forecast of rain and wind.
    pub usual_day: bool,
}

/// What of a bed moves its sprays.
#[derive(Debug, Clone, Copy)]
pub struct SprayedBed<'a> {
    pub last: Option<NaiveDate>,
    /// The days on which something in it is ready, as far as they are known.
    pub pickings: &'a [NaiveDate],
    pub open_to_rain: bool,
    /// The day that a person chose instead of the one by the rhythm.
    pub chosen: Option<NaiveDate>,
    /// The moment of asking; it carries the clock that the hours are given on.
    pub now: DateTime<FixedOffset>,
}

/// The next spray: the day that was chosen, else the last one and the product's rhythm, sooner where rain washes it off;
/// then moved to the first day without rain or wind that has cool hours, and past a picking that falls within its wait.
/// Without a last one and a chosen day it is due now.
#[must_use]
pub fn next_spray(product: &SprayUse, bed: &SprayedBed<'_>, weather: Option<&Weather<'_>>) -> NextSpray {
    let SprayedBed { last, pickings, open_to_rain, chosen, now } = *bed;
    let today = now.date_naive();
    let after = |days: f64| last.map_or(today, |last| later(last, days));
    let every = &product.every_days.is;
    let due = after(every.value());
    let washed_off = last
        .filter(|_| open_to_rain && chosen.is_none())
        .zip(weather)
        .and_then(|(last, weather)| washed_off(weather, last, due));
    let wanted = washed_off.and_then(|rain| rain.succ_opt()).map_or(due, |after| after.min(due));
    let first = chosen.unwrap_or(wanted).max(today);
    let mut moved_by = BTreeSet::new();
    let first = after_pickings(first, product, pickings, &mut moved_by);
    let found = weather.and_then(|weather| {
        (0..DAYS_LOOKED_AT).filter_map(|ahead| weather.on(first.checked_add_days(Days::new(ahead))?)).find_map(|day| {
            // A day of rain later the wait may run into a picking that it did not before.
            if after_pickings(day.date, product, pickings, &mut moved_by) > day.date {
                return None;
            }
            match hours(&day, product, weather, now) {
                Ok(hours) => Some((day, hours)),
                Err(obstacle) => {
                    moved_by.extend(obstacle);
                    None
                }
            }
        })
    });
    let value = found.as_ref().map_or(first, |(day, _)| day.date);
    // A day that was chosen is no estimate.
    let (low, high) = match chosen {
        Some(_) => (value, value),
        None => (after(every.low()).max(today).min(value), after(every.high()).max(value)),
    };
    NextSpray {
        day: Estimate::spanning(value, [low, high]),
        due,
        washed_off,
        usual_day: found.as_ref().is_some_and(|(day, _)| day.origin == Origin::Normals),
        hours: found.map(|(_, hours)| hours),
        moved_by,
    }
}

/// The first day of forecast rain after a spray, before the next by the rhythm, that washes it off. A usual day's rain
/// says nothing of one day; nor does the day of the spray itself, whose hours are not known.
fn washed_off(weather: &Weather<'_>, last: NaiveDate, due: NaiveDate) -> Option<NaiveDate> {
    let days = last.succ_opt()?.iter_days().take_while(|day| *day < due).filter_map(|day| weather.on(day));
    let heavy = |day: &Day| {
        day.origin != Origin::Normals && day.rain.is_some_and(|rain| rain.as_millimetres() >= WASHES_OFF_MM)
    };
    days.into_iter().find(heavy).map(|day| day.date)
}

/// A day for a spray, moved past every picking that would fall within its wait (the longer end: nobody is harmed by a
/// day more): to the day after it.
fn after_pickings(
    day: NaiveDate,
    product: &SprayUse,
    pickings: &[NaiveDate],
    moved_by: &mut BTreeSet<Obstacle>,
) -> NaiveDate {
    let mut pickings = pickings.to_vec();
    pickings.sort_unstable();
    pickings.into_iter().fold(day, |day, picking| {
        let waits_until = later(day, product.wait_days.is.high().ceil());
        if picking < day || picking > waits_until || waits_until == day {
            return day;
        }
        moved_by.insert(Obstacle::Picking);
        picking.succ_opt().unwrap_or(picking)
    })
}

/// The hours of one day; none but no obstacle where they are over already.
fn hours(
    day: &Day,
    product: &SprayUse,
    weather: &Weather<'_>,
    now: DateTime<FixedOffset>,
) -> Result<SprayHours, Option<Obstacle>> {
    // A usual day's rain is a month's amount spread evenly: it says nothing of one day.
    let forecast = day.origin != Origin::Normals;
    if forecast && day.rain.is_some_and(|rain| rain.as_millimetres() >= RAIN_MM) {
        return Err(Some(Obstacle::Rain));
    }
    if forecast && day.wind_2m.is_some_and(|wind| wind > product.not_in_wind.value()) {
        return Err(Some(Obstacle::Wind));
    }
    let next = day.date.succ_opt().and_then(|next| weather.on(next)).unwrap_or(*day);
    let sun = sun_times(weather.latitude_deg, weather.longitude_deg, day.date).ok_or(None)?;
    let clock = |at: Option<DateTime<Utc>>| at.map(|at| hour_of(at.with_timezone(&now.timezone()).time())).ok_or(None);
    let curve = DailyCurve {
        tmax: day.tmax,
        tmin: day.tmin,
        next_tmin: next.tmin,
        sunrise_h: clock(sun.sunrise)?,
        sunset_h: clock(sun.sunset)?,
    };
    let started = if day.date == now.date_naive() { hour_of(now.time()) } else { 0.0 };
    let limit = product.not_above.value();
    let over = |hours: &Window| hours.until - hours.from.max(started) < SHORTEST_H;
    let windows = [evening(&curve, limit), dawn(&curve, limit)];
    // Where the evening is too warm and the dawn too warm or over, it is the heat that moves the spray.
    let hot = windows.first().is_some_and(Option::is_none).then_some(Obstacle::Heat);
    let fit = windows.into_iter().flatten().find(|window| !over(window)).ok_or(hot)?;
    let from = fit.from.max(started);
    let dry = if fit.part == PartOfDay::Dawn { DRYING_H } else { 0.0 };
    let ends = [curve.air_temperature(from), curve.air_temperature(fit.until + dry)];
    let warmest = if ends[0] > ends[1] { ends[0] } else { ends[1] };
    let time = |hour: f64| NaiveTime::from_num_seconds_from_midnight_opt((hour * 3600.0).round() as u32, 0).ok_or(None);
    Ok(SprayHours { from: time(up(from))?, until: time(down(fit.until))?, part: fit.part, warmest })
}

struct Window {
    from: f64,
    until: f64,
    part: PartOfDay,
}

/// From the low sun on, once the air has fallen to the limit, until it is too dark to work.
fn evening(curve: &DailyCurve, limit: Temperature) -> Option<Window> {
    let until = curve.sunset_h + TWILIGHT_H;
    let from = steps(up(curve.sunset_h - LOW_SUN_H), until).find(|hour| curve.air_temperature(*hour) <= limit)?;
    window(from, until, PartOfDay::Evening)
}

/// From first light until the leaf can still dry below the limit; on a day that passes it, sunrise is the end.
fn dawn(curve: &DailyCurve, limit: Temperature) -> Option<Window> {
    let from = curve.sunrise_h - TWILIGHT_H;
    let latest = if curve.tmax > limit { curve.sunrise_h } else { curve.sunrise_h + COOL_MORNING_H };
    let fits = |hour: &f64| curve.air_temperature(*hour + DRYING_H) <= limit && curve.air_temperature(*hour) <= limit;
    let until = steps(from, latest).take_while(fits).last()?;
    window(from, until, PartOfDay::Dawn)
}

fn window(from: f64, until: f64, part: PartOfDay) -> Option<Window> {
    (until - from >= SHORTEST_H).then_some(Window { from, until, part })
}

/// Every minute from one hour to another.
fn steps(from: f64, until: f64) -> impl Iterator<Item = f64> {
    (0..=((until - from) * 60.0).max(0.0) as u32).map(move |minute| from + f64::from(minute) / 60.0)
}

fn up(hour: f64) -> f64 {
    (hour / STEP_H - 1e-9).ceil() * STEP_H
}

fn down(hour: f64) -> f64 {
    (hour / STEP_H + 1e-9).floor() * STEP_H
}

fn hour_of(time: NaiveTime) -> f64 {
    f64::from(time.num_seconds_from_midnight()) / 3600.0
}

/// A day so many days later, to the nearest day.
pub fn later(day: NaiveDate, days: f64) -> NaiveDate {
    day.checked_add_days(Days::new(days.round().max(0.0) as u64)).unwrap_or(day)
}

/// How strong the plain product is mixed, ml/L: never above the lowest upper limit of any source.
#[must_use]
pub fn strength(product: &SprayUse) -> Estimate<f64> {
    let limit = product.limit_millilitres_per_litre.is.low();
    product.millilitres_per_litre.is.map(|strength| strength.min(limit))
}

/// What the leaves of a bed hold, and what they take.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leaves {
    /// Leaf area over ground area: low for young plants, high for a closed stand (judgement).
    area_index: f64,
    /// Water that stays on 1 m² of leaf wetted on both sides to the point of dripping, with what is lost, ml
    /// (judgement: a film of about a tenth of a millimetre a side).
    millilitres_per_m2: f64,
}

impl Leaves {
    const USUAL: Self = Self { area_index: 2.0, millilitres_per_m2: 200.0 };

    fn litres(&self, ground: Area) -> f64 {
        ground.as_square_metres() * self.area_index * self.millilitres_per_m2 / 1000.0
    }
}

/// Spray liquid for the leaves over a piece of ground (the bed's top, times its leaf spread).
#[must_use]
pub fn litres_of_spray(ground: Area) -> Estimate<Volume> {
    let usual = Leaves::USUAL;
    let doubts = [
        Doubt {
            name: "leaves",
            at_low: Leaves { area_index: 1.0, ..usual },
            at_high: Leaves { area_index: 3.0, ..usual },
        },
        Doubt {
            name: "film",
            at_low: Leaves { millilitres_per_m2: 100.0, ..usual },
            at_high: Leaves { millilitres_per_m2: 350.0, ..usual },
        },
    ];
    swing(&usual, &doubts, |leaves| leaves.litres(ground)).is.map(Volume::litres)
}

#[cfg(test)]
mod tests;
