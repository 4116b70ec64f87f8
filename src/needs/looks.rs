//! What people saw of a bed, set against what the balance had foretold for that hour.

use super::day_course::{Hour, Stretch};
use super::loss_factor::{Found, Look, LossFactor, learned};
use super::surroundings::Surroundings;
use super::water::root_limit;
use super::water_day::DayLoss;
use super::water_doubts::{Inputs, aired, doubts};
use crate::garden::{JobDone, JobKind, Seen, SeenKind, When};
use crate::quantity::{Volume, WaterDepth};
use crate::weather::{Day, Origin};
use chrono::Timelike;

/// Spread of the logarithm of what was foretold, by what it rests on (judgements).
const WITH_FORECAST: f64 = 0.18;
const WITH_USUAL_DAYS: f64 = 0.28;
/// Water also runs through a mix that has dried and parted from its sides: a weak sign.
const RAN_THROUGH: f64 = 0.35;
/// Nobody wrote down when it was watered.
const UNKNOWN_WATERING: f64 = 0.35;
/// A watering longer ago than this has nothing to do with a look.
const LOOKED_BACK_DAYS: i64 = 7;

/// Hours that count where only the day was told: watering in the morning; a look at what was dry too soon at
/// noon, at what was still wet when the next watering was due.
const MORNING_H: f64 = 7.0;
const NOON_H: f64 = 13.0;

/// The factor that a bed's looks teach. `jobs` and `seen` are this bed's, up to now.
#[must_use]
pub fn factor(bed: &Surroundings<'_>, jobs: &[JobDone], seen: &[Seen]) -> LossFactor {
    learned(&seen.iter().filter_map(|seen| look(bed, jobs, seen)).collect::<Vec<_>>())
}

/// The hour of a record on its day, where it has one.
#[must_use]
pub fn hour(when: When) -> Option<f64> {
    when.time().map(|time| f64::from(time.num_seconds_from_midnight()) / 3600.0)
}

fn look(bed: &Surroundings<'_>, jobs: &[JobDone], seen: &Seen) -> Option<Look> {
    let was = match seen.what {
        SeenKind::DryEarly => Found::Drier,
        SeenKind::StillWet | SeenKind::RanThrough => Found::Wetter,
    };
    if bed.filled().top.as_square_metres() <= 0.0 {
        return None;
    }
    let unknown = |doubt_ln| Look { at_limit: 1.0, was, doubt_ln };
    let at = (seen.on.date(), hour(seen.on).unwrap_or(if was == Found::Drier { NOON_H } else { MORNING_H }));
    let mut watered = waterings(jobs, at);
    if seen.what == SeenKind::RanThrough {
        return Some(ran_through(bed, &mut watered).unwrap_or_else(|| unknown(UNKNOWN_WATERING.max(RAN_THROUGH))));
    }
    let Some((last, _)) = watered.next() else { return Some(unknown(UNKNOWN_WATERING)) };
    let lost = lost(bed, last, at)?;
    let dryness = lost.dryness(bed);
    // Nothing lost yet: the look says nothing of how fast the bed dries.
    (dryness > 0.05).then(|| Look { at_limit: 1.0 / dryness, was, doubt_ln: lost.doubt_ln() })
}

/// What a bed has lost from a watering until now, each a day and an hour (0 to 24), rain taken off; at best
/// values. None where the weather is not known.
#[must_use]
pub fn lost_since(bed: &Surroundings<'_>, watered: Hour, now: Hour, factor: &LossFactor) -> Option<WaterDepth> {
    lost(bed, watered, now).map(|lost| lost.all * factor.is.value())
}

/// What was poured against what was missing: it ran through, so less was missing.
fn ran_through(bed: &Surroundings<'_>, watered: &mut impl Iterator<Item = (Hour, Option<Volume>)>) -> Option<Look> {
    let (last, poured) = watered.next()?;
    let (before, _) = watered.next()?;
    let lost = lost(bed, before, last)?;
    let missing = lost.all * bed.filled().top;
    let at_limit = poured?.as_litres() / missing.as_litres().max(0.01);
    Some(Look { at_limit, was: Found::Wetter, doubt_ln: RAN_THROUGH.max(lost.doubt_ln()) })
}

/// Waterings before an hour with what was poured, the last first, none longer than a week ago.
pub fn waterings(jobs: &[JobDone], at: Hour) -> impl Iterator<Item = (Hour, Option<Volume>)> + use<> {
    let mut all: Vec<(Hour, Option<Volume>)> = jobs
        .iter()
        .filter(|job| job.job == JobKind::Water)
        .map(|job| {
            let hour = hour(job.on).unwrap_or(MORNING_H);
            ((job.on.date(), hour), job.amount.and_then(|amount| amount.volume()))
        })
        .filter(|((day, hour), _)| (*day, *hour) <= at && (at.0 - *day).num_days() <= LOOKED_BACK_DAYS)
        .collect();
    all.sort_by(|(a, _), (b, _)| b.0.cmp(&a.0).then(b.1.total_cmp(&a.1)));
    all.into_iter()
}

/// What a bed lost between two hours, at best values.
struct Lost {
    all: WaterDepth,
    bare_surface: WaterDepth,
    usual_days: bool,
    inputs: Inputs,
}

impl Lost {
    /// Loss over the nearer of the two limits.
    fn dryness(&self, bed: &Surroundings<'_>) -> f64 {
        let roots = root_limit(bed, self.inputs.easily_available);
        let of = |lost: WaterDepth, limit: WaterDepth| lost.as_millimetres() / limit.as_millimetres().max(0.1);
        of(self.bare_surface, self.inputs.surface_limit).max(of(self.all, roots))
    }

    fn doubt_ln(&self) -> f64 {
        if self.usual_days { WITH_USUAL_DAYS } else { WITH_FORECAST }
    }
}

fn lost(bed: &Surroundings<'_>, from: Hour, until: Hour) -> Option<Lost> {
    let dates = from.0.iter_days().take_while(|date| *date <= until.0);
    let days: Vec<Day> = dates.map_while(|date| bed.weather.on(date)).collect();
    if days.last()?.date < until.0 {
        return None;
    }
    let (inputs, _) = doubts(bed, &days, &LossFactor::UNSEEN);
    let (mut all, mut bare_surface) = (WaterDepth::default(), WaterDepth::default());
    for day in aired(bed, &days, &inputs) {
        let DayLoss { loss, bare_surface: bare, rain, .. } = day.loss(&inputs);
        let stretch = Stretch::between(day.day.day.date, from, Some(until));
        all = stretch.short_after(all, loss * stretch.part(), rain);
        bare_surface = stretch.short_after(bare_surface, bare * stretch.part(), rain);
    }
    let usual_days = days.iter().any(|day| day.origin == Origin::Normals);
    Some(Lost { all, bare_surface, usual_days, inputs })
}
