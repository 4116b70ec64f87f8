//! How long a bed lasts that was watered full and then left.

use super::day_course::{Hour, Stretch};
use super::loss_factor::LossFactor;
use super::surroundings::Surroundings;
use super::swing::{Runs, runs};
use super::water::root_limit;
use super::water_doubts::{AiredDay, DoubtName, Inputs, aired, doubts};
use crate::agronomy::maths::{exp, ln};
use crate::quantity::{Estimate, Fraction, WaterDepth};
use crate::weather::{Day, Origin};

/// Nothing is foretold beyond this.
pub const HORIZON_DAYS: usize = 60;
/// A watering may be this much late (the rule of the rhythm).
const GIVEN: f64 = 1.1;

/// How long something lasts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Lasts {
    /// It ends after so many days.
    For(Estimate<f64>),
    /// It may not end within the days that are looked at or known: not before so many have gone by.
    AtLeast(f64),
}

impl Lasts {
    /// The days that can be counted on.
    #[must_use]
    pub fn sure(&self) -> f64 {
        match self {
            Self::For(days) => days.low(),
            Self::AtLeast(days) => *days,
        }
    }

    /// The likeliest day, else the one that can be counted on.
    #[must_use]
    pub fn about(&self) -> f64 {
        match self {
            Self::For(days) => days.value(),
            Self::AtLeast(days) => *days,
        }
    }

    /// Its days, where both ends are known.
    #[must_use]
    pub fn known(&self) -> Option<Estimate<f64>> {
        match self {
            Self::For(days) => Some(*days),
            Self::AtLeast(_) => None,
        }
    }
}

/// A bed from the moment it was full.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DryDown {
    /// Until it wants water: the top looks dry or the roots have what they may take, a tenth given.
    pub until_due: Lasts,
    /// Until the roots go short, the top drying ever more slowly.
    pub until_dry: Lasts,
}

/// One run, in days; none where it does not come within the days looked at.
struct Run {
    until_due: Option<f64>,
    until_dry: Option<f64>,
}

/// Watered full on a day at an hour (0 to 24) and left. None where the weather is not known or the bed has no
/// size.
///
/// FAO-56 chapters 7 and 8 in a container: the root zone empties by eq. 85 with what leaves, top and sides
/// lose; the top's part falls with eq. 74 as the surface layer empties by eq. 77; the roots go short at eq. 83.
/// Rain fills both; the hours of a day follow the sun, its rain too ([`Stretch::short_after`]).
#[must_use]
pub fn dry_down(bed: &Surroundings<'_>, full: Hour, factor: &LossFactor) -> Option<DryDown> {
    /// Most beds are dry within this; only the others need the far days.
    const NEAR_DAYS: usize = 10;
    let days: Vec<Day> = bed.weather.from(full.0).take(HORIZON_DAYS).collect();
    if days.is_empty() || bed.filled().top.as_square_metres() <= 0.0 {
        return None;
    }
    let near = over(bed, days.get(..NEAR_DAYS).unwrap_or(&days), full, factor);
    let settled = near.until_dry.known().is_some() && near.until_due.known().is_some();
    Some(if settled { near } else { over(bed, &days, full, factor) })
}

/// The same over some days.
fn over(bed: &Surroundings<'_>, days: &[Day], full: Hour, factor: &LossFactor) -> DryDown {
    let (best, mut doubts) = doubts(bed, days, factor);
    if days.iter().any(|day| day.origin == Origin::Normals) {
        // What dries a bed out is the first dry spell, not a dry season: the sooner end counts on no usual rain.
        let rain = doubts.iter_mut().filter(|doubt| doubt.name == DoubtName::Rain);
        rain.for_each(|doubt| doubt.at_high.doubtful.rain = 0.0);
    }
    let aired = aired(bed, days, &best);
    let all = runs(&best, &doubts, |inputs| run(bed, &aired, full, inputs));
    let end = days.len() as f64 - full.1 / 24.0;
    DryDown { until_due: lasts(&all, end, |run| run.until_due), until_dry: lasts(&all, end, |run| run.until_dry) }
}

/// A range that is open as soon as any of its runs, or all doubts together, reach beyond the last day.
fn lasts(all: &Runs<DoubtName, Run>, end: f64, of: impl Fn(&Run) -> Option<f64>) -> Lasts {
    // A time to a limit is a ratio: its doubts multiply, so they are combined as logarithms.
    let ln_days = all.figure(|run| ln(of(run).unwrap_or(end).max(0.02))).is;
    let days = ln_days.map(exp);
    if all.each(|run| of(run).is_some()) && days.high() < end {
        Lasts::For(days)
    } else {
        Lasts::AtLeast(days.low().min(end))
    }
}

fn run(bed: &Surroundings<'_>, days: &[AiredDay<'_>], full: Hour, inputs: &Inputs) -> Run {
    let none = WaterDepth::default();
    let root_limit = root_limit(bed, inputs.easily_available);
    let mut state = State { short: none, dried: none, bare: none };
    let (mut until_due, mut until_dry) = (None, None);
    for (count, day) in days.iter().enumerate() {
        let lost = day.loss(inputs);
        let stretch = Stretch::between(day.day.day.date, full, None);
        let part = stretch.part();
        let top = day.day.top_loss(&lost, state.dried, &inputs.doubtful) * part;
        let after = |short: WaterDepth, more: WaterDepth| stretch.short_after(short, more, lost.rain);
        let next = State {
            short: after(state.short, lost.below * part + top),
            dried: after(state.dried, top / lost.exposed.as_of_one()).min(day.day.top_holds()),
            bare: after(state.bare, lost.bare_surface * part),
        };
        let crossed = |from: WaterDepth, to: WaterDepth, limit: WaterDepth| {
            (to >= limit).then(|| {
                let share = if to > from { (limit - from).max(none) / (to - from) } else { 0.0 };
                count as f64 + (stretch.hour_at(share) - full.1) / 24.0
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
    Run { until_due, until_dry }
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

/// A bed with a net over it and mulch on it: what shade buys.
#[must_use]
pub fn sheltered(bed: &crate::garden::Bed, net: Fraction) -> crate::garden::Bed {
    let net_percent = bed.net_counted().as_percent().max(net.as_percent());
    crate::garden::Bed { net_percent: Some(net_percent), mulch: Some(true), ..bed.clone() }
}
