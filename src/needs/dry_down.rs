//! How long a bed lasts that was watered full and then left.

use super::looks::share_by;
use super::loss_factor::LossFactor;
use super::surroundings::Surroundings;
use super::swing::runs;
use super::water::root_limit;
use super::water_doubts::{AiredDay, Inputs, aired, doubts};
use crate::agronomy::maths::{acos, exp, ln};
use crate::quantity::{Estimate, Fraction, WaterDepth};
use crate::weather::Day;
use chrono::NaiveDate;
use std::f64::consts::PI;

/// Nothing is foretold beyond this.
pub const HORIZON_DAYS: usize = 60;
/// A watering may be this much late (the rule of the rhythm).
const GIVEN: f64 = 1.1;

/// A bed from the moment it was full.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DryDown {
    /// Days until it wants water: the top looks dry or the roots have what they may take, a tenth given.
    pub until_due: Estimate<f64>,
    /// Days until the roots go short, the top drying ever more slowly. [`HORIZON_DAYS`] is that or more.
    pub until_dry: Estimate<f64>,
}

/// One run.
struct Run {
    until_due: f64,
    until_dry: f64,
}

/// Watered full on a day at an hour (0 to 24) and left. None where the weather is not known or the bed has no
/// size.
///
/// FAO-56 chapters 7 and 8 in a container: the root zone empties by eq. 85 with what leaves, top and sides
/// lose; the top's part falls with eq. 74 as the surface layer empties by eq. 77; the roots go short at eq. 83.
/// Rain fills both; the hours of a day follow the sun.
#[must_use]
pub fn dry_down(bed: &Surroundings<'_>, full: (NaiveDate, f64), factor: &LossFactor) -> Option<DryDown> {
    let days: Vec<Day> = bed.weather.from(full.0).take(HORIZON_DAYS).collect();
    if days.is_empty() || bed.filled().top.as_square_metres() <= 0.0 {
        return None;
    }
    let (best, doubts) = doubts(bed, &days, factor);
    let aired = aired(bed, &days, &best);
    let all = runs(&best, &doubts, |inputs| run(bed, &aired, full.1, inputs));
    // A time to a limit is a ratio: its doubts multiply, so they are combined as logarithms.
    let days_of = |of: fn(&Run) -> f64| {
        let ln_days = all.figure(|run| ln(of(run).max(0.02))).is;
        ln_days.map(|value| exp(value).min(HORIZON_DAYS as f64))
    };
    Some(DryDown { until_due: days_of(|run| run.until_due), until_dry: days_of(|run| run.until_dry) })
}

fn run(bed: &Surroundings<'_>, days: &[AiredDay<'_>], full_at_h: f64, inputs: &Inputs) -> Run {
    let none = WaterDepth::default();
    let root_limit = root_limit(bed, inputs.easily_available);
    let mut state = State { short: none, dried: none, bare: none };
    let (mut until_due, mut until_dry) = (None, None);
    for (count, day) in days.iter().enumerate() {
        let lost = day.loss(inputs);
        let begins = if count == 0 { share_by(full_at_h) } else { 0.0 };
        let part = 1.0 - begins;
        // Rain of the day that the bed was watered is taken to have come before.
        state = if count == 0 { state } else { state.rained(lost.rain) };
        let top = day.day.top_loss(&lost, state.dried, &inputs.doubtful) * part;
        let next = State {
            short: state.short + lost.below * part + top,
            dried: (state.dried + top / lost.exposed.as_of_one()).min(day.day.top_holds()),
            bare: state.bare + lost.bare_surface * part,
        };
        let crossed = |from: WaterDepth, to: WaterDepth, limit: WaterDepth| {
            (to >= limit).then(|| {
                let share = if to > from { (limit - from).max(none) / (to - from) } else { 0.0 };
                count as f64 + (hour_of(begins + share * part) - full_at_h) / 24.0
            })
        };
        if until_due.is_none() {
            let surface = crossed(state.bare, next.bare, inputs.surface_limit * GIVEN);
            let roots = crossed(state.short, next.short, root_limit * GIVEN);
            until_due = [surface, roots].into_iter().flatten().reduce(f64::min);
        }
        until_dry = until_dry.or_else(|| crossed(state.short, next.short, root_limit));
        state = next;
        if until_due.is_some() && until_dry.is_some() {
            break;
        }
    }
    let horizon = days.len() as f64;
    Run { until_due: until_due.unwrap_or(horizon), until_dry: until_dry.unwrap_or(horizon) }
}

/// How far a bed has dried.
#[derive(Debug, Clone, Copy)]
struct State {
    /// Of the whole mix (Dr).
    short: WaterDepth,
    /// Of the surface layer (De).
    dried: WaterDepth,
    /// What a bare top kept losing would have lost, for the look of it.
    bare: WaterDepth,
}

impl State {
    fn rained(self, rain: WaterDepth) -> Self {
        let less = |short: WaterDepth| (short - rain).max(WaterDepth::default());
        Self { short: less(self.short), dried: less(self.dried), bare: less(self.bare) }
    }
}

/// The hour by which a part of a day's loss is over: [`share_by`] turned round.
fn hour_of(share: f64) -> f64 {
    6.0 + 12.0 * acos(1.0 - 2.0 * share.clamp(0.0, 1.0)) / PI
}

/// A bed with a net over it and mulch on it: what shade buys.
#[must_use]
pub fn sheltered(bed: &crate::garden::Bed, net: Fraction) -> crate::garden::Bed {
    let net_percent = bed.net_counted().as_percent().max(net.as_percent());
    crate::garden::Bed { net_percent: Some(net_percent), mulch: Some(true), ..bed.clone() }
}
