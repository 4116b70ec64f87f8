//! Steps of a forecast → days of a site's own clock.

use super::day::{Day, Origin};
use super::step::Step;
use crate::agronomy::daily_temperature::DailyCurve;
use crate::agronomy::sun_times::sun_times;
use crate::quantity::{Fraction, Radiation, Temperature, WaterDepth, WindSpeed};
use chrono::{DateTime, NaiveDate, NaiveTime, TimeDelta, TimeZone, Utc};
use chrono_tz::Tz;

/// A day that more hours than this are missing of is not made (judgement: with three, the coldest or the hottest hour
/// is still known from its neighbours).
const MOST_MISSING_H: f64 = 3.0;
/// Steps longer than this miss the day's ends, and the daily curve is laid through them.
const DENSE_H: f64 = 1.5;
/// A curve through few points goes no farther beyond them than this, K (judgement: six-hourly instants miss the crest of
/// a day of 14 K by 1 to 3 K).
const CURVE_BEYOND_K: f64 = 4.0;
/// MJ/m² of one W/m² held for an hour.
const MEGAJOULES_PER_WATT_HOUR: f64 = 3_600.0 / 1_000_000.0;

/// A day that could not be made, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Unmade {
    pub date: NaiveDate,
    pub hours_known: f64,
    pub hours: f64,
}

impl std::fmt::Display for Unmade {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self { date, hours_known, hours } = self;
        write!(f, "{date} is not made: {hours_known:.0} of its {hours:.0} hours are known")
    }
}

/// Where and by whose clock days are counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ground {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub zone: Tz,
}

/// The days that the steps fill, and those they only touch. Steps stand in the order of time.
#[must_use]
pub fn days(steps: &[Step], ground: &Ground) -> (Vec<Day>, Vec<Unmade>) {
    let (mut made, mut unmade) = (Vec::new(), Vec::new());
    let (Some(first), Some(last)) = (steps.first(), steps.last()) else { return (made, unmade) };
    let date = |at: DateTime<Utc>| at.with_timezone(&ground.zone).date_naive();
    // A step that ends at midnight does not touch the day that begins then.
    let end = date((last.end() - TimeDelta::seconds(1)).max(last.at));
    for date in date(first.at).iter_days().take_while(|date| *date <= end) {
        match Stretch::of(date, steps, ground).map(|stretch| stretch.day(ground)) {
            Some(Ok(day)) => made.push(day),
            Some(Err(why)) if why.hours_known > 0.0 => unmade.push(why),
            _ => {}
        }
    }
    (made, unmade)
}

/// The moment a date begins on a clock: midnight, or the first moment there is where midnight is skipped.
#[must_use]
pub fn begins(date: NaiveDate, zone: Tz) -> Option<DateTime<Utc>> {
    let midnight = date.and_time(NaiveTime::MIN);
    let quarters = (0..=8).map(|quarter| midnight + TimeDelta::minutes(15 * quarter));
    quarters.filter_map(|at| zone.from_local_datetime(&at).earliest()).map(|at| at.with_timezone(&Utc)).next()
}

/// One date with the steps that touch it.
struct Stretch<'a> {
    date: NaiveDate,
    from: DateTime<Utc>,
    until: DateTime<Utc>,
    steps: Vec<(&'a Step, f64)>,
}

impl<'a> Stretch<'a> {
    fn of(date: NaiveDate, steps: &'a [Step], ground: &Ground) -> Option<Self> {
        let (from, until) = (begins(date, ground.zone)?, begins(date.succ_opt()?, ground.zone)?);
        let touching = steps.iter().map(|step| (step, step.within(from, until)));
        // A last step without a length still tells its own moment.
        let touching = touching.filter(|(step, hours)| *hours > 0.0 || (from..until).contains(&step.at));
        Some(Self { date, from, until, steps: touching.collect() })
    }

    fn hours(&self) -> f64 {
        (self.until - self.from).num_seconds() as f64 / 3600.0
    }

    fn day(&self, ground: &Ground) -> Result<Day, Unmade> {
        let (hours, known) = (self.hours(), self.steps.iter().map(|(_, hours)| hours).sum::<f64>());
        let unmade = Unmade { date: self.date, hours_known: known, hours };
        if hours - known > MOST_MISSING_H {
            return Err(unmade);
        }
        let (tmin, tmax) = self.ends(ground).ok_or(unmade)?;
        let rain = self.sum(|step| step.rain.map(|rain| rain.as_millimetres() / step.hours.max(f64::MIN_POSITIVE)));
        let chances = self.steps.iter().filter(|(_, hours)| *hours > 0.0).filter_map(|(step, _)| step.rain_chance);
        Ok(Day {
            date: self.date,
            tmax,
            tmin,
            humidity_mean: self.mean(|step| step.humidity.map(Fraction::as_of_one)).map(Fraction::of_one),
            wind_2m: self
                .mean(|step| step.wind_2m.map(WindSpeed::as_metres_per_second))
                .map(WindSpeed::metres_per_second),
            solar: self
                .sum(|step| step.solar_w_m2)
                .map(|watt_hours| Radiation::megajoules_per_square_metre(watt_hours * MEGAJOULES_PER_WATT_HOUR)),
            sunshine_h: None,
            rain: rain.map(WaterDepth::millimetres),
            // The day is at least as likely to be wet as its likeliest hour.
            rain_chance: chances.reduce(|a, b| if b > a { b } else { a }),
            origin: Origin::Forecast,
        })
    }

    /// Over the hours in which it is known, if those are enough for the day.
    fn known(&self, of: impl Fn(&Step) -> Option<f64>) -> Option<(f64, f64)> {
        let known = self.steps.iter().filter_map(|(step, hours)| Some((of(step)?, *hours)));
        let (sum, hours) = known.fold((0.0, 0.0), |(sum, all), (value, hours)| (sum + value * hours, all + hours));
        (self.hours() - hours <= MOST_MISSING_H && hours > 0.0).then_some((sum, hours))
    }

    fn mean(&self, of: impl Fn(&Step) -> Option<f64>) -> Option<f64> {
        self.known(of).map(|(sum, hours)| sum / hours)
    }

    fn sum(&self, per_hour: impl Fn(&Step) -> Option<f64>) -> Option<f64> {
        self.known(per_hour).map(|(sum, _)| sum)
    }

    /// Minimum and maximum: of hourly instants the lowest and the highest, of sparser ones by the daily curve.
    fn ends(&self, ground: &Ground) -> Option<(Temperature, Temperature)> {
        let inside = self.steps.iter().map(|(step, _)| *step).filter(|step| step.at >= self.from);
        let seen: Vec<&Step> = inside.collect();
        let low = seen.iter().map(|step| step.temperature).reduce(|a, b| if b < a { b } else { a })?;
        let high = seen.iter().map(|step| step.temperature).reduce(|a, b| if b > a { b } else { a })?;
        if self.steps.iter().all(|(step, _)| step.hours <= DENSE_H) {
            return Some((low, high));
        }
        let Some((fit_low, fit_high)) = fitted(&seen, self.date, ground) else { return Some((low, high)) };
        let (low, high) = (low.as_celsius(), high.as_celsius());
        let low = fit_low.clamp(low - CURVE_BEYOND_K, low);
        let high = fit_high.clamp(high, high + CURVE_BEYOND_K);
        Some((Temperature::celsius(low), Temperature::celsius(high)))
    }
}

/// The ends of the daily curve (Parton and Logan 1981) that lies nearest to some instants by least squares, °C. At any
/// hour the curve is a weighted mean of its two ends, so that they come from two linear equations. None in polar day or
/// night, or where the instants do not tell the two apart.
fn fitted(seen: &[&Step], date: NaiveDate, ground: &Ground) -> Option<(f64, f64)> {
    let sun = sun_times(ground.latitude_deg, ground.longitude_deg, date)?;
    let (rise, set) = (sun.sunrise?, sun.sunset?);
    let hour = |at: DateTime<Utc>| (at - rise).num_seconds() as f64 / 3600.0;
    let (zero, one) = (Temperature::celsius(0.0), Temperature::celsius(1.0));
    let curve = DailyCurve { tmax: one, tmin: zero, next_tmin: zero, sunrise_h: 0.0, sunset_h: hour(set) };
    let (mut aa, mut ab, mut bb, mut at, mut bt) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for step in seen {
        // Before the morning's minimum it is still the night of the day before.
        let since_rise = hour(step.at);
        let since_rise = if since_rise < 0.0 { since_rise + 24.0 } else { since_rise };
        let warm = curve.air_temperature(since_rise).as_celsius();
        let (cold, celsius) = (1.0 - warm, step.temperature.as_celsius());
        aa += cold * cold;
        ab += cold * warm;
        bb += warm * warm;
        at += cold * celsius;
        bt += warm * celsius;
    }
    let determinant = aa * bb - ab * ab;
    (determinant > 1e-3).then(|| ((at * bb - bt * ab) / determinant, (bt * aa - at * ab) / determinant))
}

#[cfg(test)]
mod tests;
