//! When a bed is fed next, how much it is given, and whether its nitrogen lasts.

use super::spray::later;
use super::swing::{Doubt, swing};
use crate::agronomy::maths::{exp, ln, powf, sqrt};
use crate::knowledge::FeedUse;
use crate::quantity::{Area, Estimate, Mass, Temperature};
use chrono::NaiveDate;

/// From this maximum on a feed is halved (judgement: roots take up salt with the water that the heat draws).
pub const HALF_ABOVE: Temperature = Temperature::celsius(40.0);
/// The part given on such a day.
const HALF: f64 = 0.5;
/// A material's release is told for this many days.
const RELEASE_DAYS: f64 = 90.0;
/// Nitrogen is looked at so far ahead, days.
const AHEAD_DAYS: f64 = 30.0;

/// The next feed: the last one and the rhythm, not before today.
#[must_use]
pub fn next_feed(last: NaiveDate, every_days: &Estimate<f64>, today: NaiveDate) -> Estimate<NaiveDate> {
    let day = |days: f64| later(last, days).max(today);
    let value = day(every_days.value());
    Estimate::spanning(value, [day(every_days.low()), day(every_days.high())])
}

/// Whether a day is so hot that a feed is halved.
#[must_use]
pub fn halved_by_heat(tmax: Temperature) -> bool {
    tmax >= HALF_ABOVE
}

/// An amount, halved on a hot day.
#[must_use]
pub fn amount(usual: &Estimate<f64>, hot: bool) -> Estimate<f64> {
    usual.map(|usual| if hot { usual * HALF } else { usual })
}

/// Grams strewn on a bed at one time, from g/m² and the area of its top.
#[must_use]
pub fn grams_per_bed(feed: &FeedUse, top: Area, hot: bool) -> Option<Estimate<Mass>> {
    let grams_per_m2 = feed.grams_per_m2.as_ref()?;
    Some(amount(&grams_per_m2.is, hot).map(|grams| Mass::grams(grams * top.as_square_metres())))
}

/// Something that holds nitrogen and lets go of it, in a bed since a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Given<'a> {
    pub feed: &'a FeedUse,
    pub mass: Estimate<Mass>,
    pub on: NaiveDate,
}

/// What a crop takes or took.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Taken {
    pub fresh: Estimate<Mass>,
    /// g of nitrogen in 1 kg fresh.
    pub nitrogen_g_per_kg: Estimate<f64>,
}

/// The nitrogen of a bed, in g, from its filling to a month ahead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NitrogenBalance {
    /// What its mix and feeds let go that plants can use.
    pub released_g: Estimate<f64>,
    pub taken_g: Estimate<f64>,
    /// By how much it falls short; nothing where it lasts.
    pub short_g: Estimate<f64>,
}

/// How far each input stands between its ends: -1 low, 0 usual, 1 high.
#[derive(Debug, Clone, Copy)]
struct Inputs {
    content: f64,
    release: f64,
    usable: f64,
    taken: f64,
}

impl Inputs {
    const USUAL: Self = Self { content: 0.0, release: 0.0, usable: 0.0, taken: 0.0 };
}

/// The part of the released nitrogen that plants catch before it is washed out or lost to the air: low, usual,
/// high (judgement; no source for boxes on roofs).
const USABLE: (f64, f64, f64) = (0.4, 0.6, 0.8);

/// What mix and feeds release until a month ahead, against what was picked and will grow. Release is first
/// order: of the share that a material gives in 90 days, the rest follows at the same rate.
#[must_use]
pub fn nitrogen_balance(given: &[Given<'_>], taken: &[Taken], today: NaiveDate) -> NitrogenBalance {
    let usual = Inputs::USUAL;
    let doubts = [
        Doubt { name: "content", at_low: Inputs { content: -1.0, ..usual }, at_high: Inputs { content: 1.0, ..usual } },
        Doubt { name: "release", at_low: Inputs { release: -1.0, ..usual }, at_high: Inputs { release: 1.0, ..usual } },
        Doubt { name: "usable", at_low: Inputs { usable: -1.0, ..usual }, at_high: Inputs { usable: 1.0, ..usual } },
        Doubt { name: "taken", at_low: Inputs { taken: -1.0, ..usual }, at_high: Inputs { taken: 1.0, ..usual } },
    ];
    let released = |inputs: &Inputs| given.iter().map(|given| released_g(given, inputs, today)).sum::<f64>();
    let taken = |inputs: &Inputs| taken.iter().map(|taken| taken_g(taken, inputs)).sum::<f64>();
    let released_g = in_proportion(released(&usual), released, &doubts);
    let taken_g = in_proportion(taken(&usual), taken, &doubts);
    NitrogenBalance { released_g, taken_g, short_g: shortfall(&taken_g, &released_g) }
}

/// The range of a product of doubtful factors: their shifts are combined as ratios, so that it never turns
/// negative. Nothing stays nothing.
fn in_proportion(value: f64, sum: impl Fn(&Inputs) -> f64, doubts: &[Doubt<&'static str, Inputs>]) -> Estimate<f64> {
    if value <= 0.0 {
        return Estimate::exactly(0.0);
    }
    // A factor that may be nothing at its low end is taken as a thousandth.
    let ratios = swing(&Inputs::USUAL, doubts, |inputs| ln((sum(inputs) / value).max(0.001))).is;
    ratios.map(|ratio| value * exp(ratio))
}

/// What is missing, where two independent amounts differ.
fn shortfall(taken_g: &Estimate<f64>, released_g: &Estimate<f64>) -> Estimate<f64> {
    let value = taken_g.value() - released_g.value();
    let fall = hypotenuse(taken_g.value() - taken_g.low(), released_g.high() - released_g.value());
    let rise = hypotenuse(taken_g.high() - taken_g.value(), released_g.value() - released_g.low());
    Estimate::spanning(value, [value - fall, value + rise]).map(|grams| grams.max(0.0))
}

fn hypotenuse(a: f64, b: f64) -> f64 {
    sqrt(a * a + b * b)
}

fn released_g(given: &Given<'_>, inputs: &Inputs, today: NaiveDate) -> f64 {
    let days = (today - given.on).num_days() as f64 + AHEAD_DAYS;
    let grams = between(&given.mass.map(Mass::as_grams), inputs.content);
    let content = between(&given.feed.nitrogen.is.map(|share| share.as_of_one()), inputs.content);
    let share = between(&given.feed.released.is.map(|share| share.as_of_one()), inputs.release);
    let usable = between(&Estimate::spanning(USABLE.1, [USABLE.0, USABLE.2]), inputs.usable);
    grams * content * let_go(share, days) * usable
}

/// The part let go after so many days, from the share let go in 90.
fn let_go(share: f64, days: f64) -> f64 {
    1.0 - powf((1.0 - share).clamp(0.0, 1.0), days.max(0.0) / RELEASE_DAYS)
}

fn taken_g(taken: &Taken, inputs: &Inputs) -> f64 {
    let kilograms = between(&taken.fresh.map(Mass::as_kilograms), inputs.taken);
    kilograms * between(&taken.nitrogen_g_per_kg, inputs.taken)
}

fn between(range: &Estimate<f64>, place: f64) -> f64 {
    let end = if place < 0.0 { range.low() } else { range.high() };
    range.value() + (end - range.value()) * place.abs()
}

/// What a crop has grown and will grow within a month: of its whole yield, the part of its time in the bed that
/// will have gone by, and never less than what was picked.
#[must_use]
pub fn grown(whole: &Estimate<Mass>, age_days: f64, days_in_bed: f64, picked: Mass) -> Estimate<Mass> {
    let part = ((age_days + AHEAD_DAYS) / days_in_bed.max(1.0)).clamp(0.0, 1.0);
    whole.map(|whole| (whole * part).max(picked))
}

#[cfg(test)]
mod tests;
