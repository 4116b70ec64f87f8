//! When a crop is ready, when it ends, how much to expect.

use super::gathered::Gathered;
use super::heat::temperatures;
use super::surroundings::Standing;
use crate::agronomy::thermal_time::{DayTemperatures, Thresholds};
use crate::garden::Start;
use crate::knowledge::{CountedFrom, Fact};
use crate::quantity::{Area, Estimate, Mass, Temperature, TemperatureDifference, ThermalTime};
use crate::weather::{Day, Origin, Weather};
use chrono::{Days, NaiveDate};

/// Looking further ahead than this is no forecast.
const FURTHEST_DAYS: usize = 400;
/// A usual day's mean may be this far from the day that comes (judgement: the spread of a mean over weeks).
const USUAL_DAY_DOUBT_K: f64 = 1.5;
/// A forecast day's mean may be this far off (judgement).
const FORECAST_DOUBT_K: f64 = 0.7;

/// The window of a harvest.
#[derive(Debug, Clone, PartialEq)]
pub struct HarvestWindow {
    pub first: Estimate<NaiveDate>,
    /// None for a tray, which is cut at once.
    pub last: Option<Estimate<NaiveDate>>,
    /// Thermal time asked for, over which base and below which upper temperature.
    pub sum: Fact<ThermalTime>,
    pub thresholds: Thresholds,
    pub start: Start,
    /// Whether the crop's clock was meant to begin with planting but only a sowing is known, or the reverse.
    pub other_start: bool,
    /// Mean maximum and minimum until the first pick.
    pub mean_tmax: Temperature,
    pub mean_tmin: Temperature,
    /// Days until the first pick that are usual days, not forecast.
    pub usual_days: usize,
    /// From the start to the first pick.
    pub days: usize,
}

/// The window of a standing crop under the weather of its site. None where its start or the weather is
/// unknown, or it would take more than 400 days (too cold).
#[must_use]
pub fn harvest_window(standing: &Standing<'_>, weather: &Weather<'_>) -> Option<HarvestWindow> {
    let start = standing.start?;
    let crop = standing.crop;
    let (sum, base, upper, picking) = match (&crop.microgreen, standing.microgreen) {
        (Some(tray), true) => (&tray.thermal_time, &tray.base, &tray.upper, None),
        _ => (&crop.harvest.first, &crop.heat.base, &crop.heat.upper, Some(&crop.harvest.picking_days)),
    };
    let thresholds = Thresholds { base: base.value(), upper: Some(upper.value()) };
    let days: Vec<Day> = weather.from(start.date()).take(FURTHEST_DAYS).collect();
    let reach = |degree_days: ThermalTime, warmer: f64| {
        Gathered::over(days.iter().map(|day| warmed(day, warmer)), thresholds).reached(0, degree_days)
    };
    let value = reach(sum.value(), 0.0)?;
    let early = reach(sum.is.low(), 1.0)?;
    let late = reach(sum.is.high(), -1.0)?;
    let date = |days: usize| start.date().checked_add_days(Days::new(days as u64)).unwrap_or(NaiveDate::MAX);
    let first = Estimate::spanning(date(value), [date(early), date(late)]);
    let last = picking.map(|picking| {
        let after = |day: NaiveDate, days: f64| day.checked_add_days(Days::new(days as u64)).unwrap_or(day);
        let ends = [after(first.low(), picking.is.low()), after(first.high(), picking.is.high())];
        Estimate::spanning(after(first.value(), picking.value()), ends)
    });
    let until: Vec<&Day> = days.iter().take(value.max(1)).collect();
    let meant = match crop.harvest.counted_from {
        CountedFrom::Sowing => matches!(start, Start::Sown(_)),
        CountedFrom::Planting => matches!(start, Start::Planted(_)),
    };
    Some(HarvestWindow {
        first,
        last,
        sum: sum.clone(),
        thresholds,
        start,
        other_start: !meant && !standing.microgreen,
        mean_tmax: super::heat::mean(until.iter().map(|day| day.tmax))?,
        mean_tmin: super::heat::mean(until.iter().map(|day| day.tmin))?,
        usual_days: until.iter().filter(|day| day.origin == Origin::Normals).count(),
        days: value,
    })
}

/// The whole harvest of an area.
#[must_use]
pub fn grams_expected(standing: &Standing<'_>, area: Area) -> (Estimate<Mass>, Fact<f64>) {
    let crop = standing.crop;
    let fact = match (&crop.microgreen, standing.microgreen) {
        (Some(tray), true) => &tray.grams_per_m2,
        _ => &crop.harvest.grams_per_m2,
    };
    (fact.is.map(|grams| Mass::grams(grams * area.as_square_metres())), fact.clone())
}

/// A day moved by its own doubt, warmer or colder.
fn warmed(day: &Day, warmer: f64) -> DayTemperatures {
    let doubt = match day.origin {
        Origin::Forecast => FORECAST_DOUBT_K,
        Origin::Normals => USUAL_DAY_DOUBT_K,
    };
    let shift = TemperatureDifference::kelvins(doubt * warmer);
    let day = temperatures(day);
    DayTemperatures { tmax: day.tmax + shift, tmin: day.tmin + shift }
}
