//! How much faster or slower than the sum one bed dries, learned from what people saw of it.

use crate::agronomy::maths::{erf, exp, ln, sqrt};
use crate::quantity::Estimate;

/// Spread of the natural logarithm of the factor between beds of which nothing was seen (judgement: the sum
/// is right to about a quarter for a bed that nobody has looked at).
const SPREAD_BEFORE: f64 = 0.25;
/// A bed that seems to dry at less than half or more than twice the sum is mistaken for something else: a
/// leak, a hand that waters unseen.
const BOUNDS: [f64; 2] = [0.5, 2.0];

/// One look: was the bed drier or wetter than some factor would have made it?
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Look {
    /// The factor at which the bed would have been just at its limit when it was looked at.
    pub at_limit: f64,
    pub was: Found,
    /// Spread of the logarithm of `at_limit`: the day's weather, the eye.
    pub doubt_ln: f64,
}

/// What the look found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Found {
    /// Past its limit, so that the factor is likely higher.
    Drier,
    /// Short of it.
    Wetter,
}

/// The factor on a bed's loss.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LossFactor {
    /// Nine times in ten.
    pub is: Estimate<f64>,
    /// Spread of its logarithm.
    pub spread_ln: f64,
    pub looks: usize,
}

impl LossFactor {
    /// Of a bed that nobody has looked at. What it might be stands in the sum's own doubts.
    pub const UNSEEN: Self = Self { is: Estimate::exactly(1.0), spread_ln: SPREAD_BEFORE, looks: 0 };

    /// The part that is left of the doubt about this bed itself, 0 to 1.
    #[must_use]
    pub fn doubt_left(&self) -> f64 {
        (self.spread_ln / SPREAD_BEFORE).min(1.0)
    }
}

/// The factor after some looks, in whatever order: each is used afresh, so that one taken back leaves no
/// trace.
///
/// Bayes on a grid: a normal prior on the logarithm, for each look the normal probability that a bed of
/// that factor would have been found so (a probit likelihood), all held within one half and two.
#[must_use]
pub fn learned(looks: &[Look]) -> LossFactor {
    const STEPS: usize = 200;
    if looks.is_empty() {
        return LossFactor::UNSEEN;
    }
    let (lowest, highest) = (ln(BOUNDS[0]), ln(BOUNDS[1]));
    let step = (highest - lowest) / STEPS as f64;
    let grid = (0..=STEPS).map(|place| {
        let x = lowest + step * place as f64;
        let log = looks.iter().map(|look| log_likelihood(look, x)).sum::<f64>();
        (x, log - 0.5 * (x / SPREAD_BEFORE) * (x / SPREAD_BEFORE))
    });
    let grid: Vec<(f64, f64)> = grid.collect();
    let peak = grid.iter().map(|(_, log)| *log).fold(f64::NEG_INFINITY, f64::max);
    let weights: Vec<(f64, f64)> = grid.iter().map(|(x, log)| (*x, exp(log - peak))).collect();
    let whole: f64 = weights.iter().map(|(_, weight)| weight).sum();
    let mean = weights.iter().map(|(x, weight)| x * weight).sum::<f64>() / whole;
    let variance = weights.iter().map(|(x, weight)| (x - mean) * (x - mean) * weight).sum::<f64>() / whole;
    let at = |share: f64| {
        let mut reached = 0.0;
        let found = weights.iter().find(|(_, weight)| {
            reached += weight / whole;
            reached >= share
        });
        found.map_or(mean, |(x, _)| *x)
    };
    LossFactor {
        is: Estimate::spanning(exp(mean), [exp(at(0.05)), exp(at(0.95))]),
        spread_ln: sqrt(variance),
        looks: looks.len(),
    }
}

fn log_likelihood(look: &Look, factor_ln: f64) -> f64 {
    /// The eye errs now and then for no reason (judgement): no single look rules a factor out.
    const MISTAKEN: f64 = 0.02;
    let past = (factor_ln - ln(look.at_limit.max(0.01))) / look.doubt_ln.max(0.01);
    let found = match look.was {
        Found::Drier => past,
        Found::Wetter => -past,
    };
    let probability = 0.5 * (1.0 + erf(found / std::f64::consts::SQRT_2));
    ln(MISTAKEN + (1.0 - 2.0 * MISTAKEN) * probability)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A small generator of equally likely numbers (`SplitMix64`), so that the beds are the same everywhere.
    struct Dice(u64);

    impl Dice {
        fn even(&mut self) -> f64 {
            self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
            let mut z = self.0;
            z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
            z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
            ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
        }

        /// Twelve even numbers make a near-normal one of spread 1.
        fn normal(&mut self) -> f64 {
            (0..12).map(|_| self.even()).sum::<f64>() - 6.0
        }
    }

    fn median(mut values: Vec<f64>) -> f64 {
        values.sort_by(f64::total_cmp);
        f64::midpoint(values[values.len() / 2 - 1], values[values.len() / 2])
    }

    /// Beds whose factor is hidden; people look at them about when the last answer told them to water, with
    /// an eye and a weather that err by a sixth. The error is that of the interval between waterings.
    #[test]
    fn six_looks_halve_the_error_of_the_interval() {
        const EYE_AND_WEATHER: f64 = 0.16;
        let mut dice = Dice(20_260_518);
        let (mut before, mut after) = (Vec::new(), Vec::new());
        let mut held = 0;
        for _ in 0..200 {
            let hidden = dice.normal() * SPREAD_BEFORE;
            let mut looks: Vec<Look> = Vec::new();
            for _ in 0..6 {
                // The time of the look, as a part of the interval foretold with what is known by then.
                let told = ln(learned(&looks).is.value());
                let at_limit = told + 0.12 * dice.normal();
                let drier = hidden + EYE_AND_WEATHER * dice.normal() > at_limit;
                let was = if drier { Found::Drier } else { Found::Wetter };
                looks.push(Look { at_limit: exp(at_limit), was, doubt_ln: EYE_AND_WEATHER });
            }
            let factor = learned(&looks);
            before.push((exp(-hidden) - 1.0).abs() / exp(-hidden));
            after.push((exp(-hidden) - 1.0 / factor.is.value()).abs() / exp(-hidden));
            held += usize::from(factor.is.low() <= exp(hidden) && exp(hidden) <= factor.is.high());
        }
        let (before, after) = (median(before), median(after));
        println!("median error of the interval: {before:.3} before, {after:.3} after; range held {held} of 200");
        assert!(after <= before / 2.0, "{before} {after}");
        assert!((160..=197).contains(&held), "{held} of 200 within the range that claims nine in ten");
    }

    fn look(at_limit: f64, was: Found) -> Look {
        Look { at_limit, was, doubt_ln: 0.2 }
    }

    #[test]
    fn stays_within_bounds_and_forgets_what_is_taken_back() {
        let dry: Vec<Look> = (0..40).map(|_| look(3.0, Found::Drier)).collect();
        assert!(learned(&dry).is.high() <= 2.0 + 1e-9);
        let wet: Vec<Look> = (0..40).map(|_| look(0.3, Found::Wetter)).collect();
        assert!(learned(&wet).is.low() >= 0.5 - 1e-9);
        assert_eq!(learned(&dry[..0]), LossFactor::UNSEEN);
        let (a, b) = (look(0.9, Found::Drier), look(1.1, Found::Wetter));
        assert!((learned(&[a, b]).is.value() - learned(&[b, a]).is.value()).abs() < 1e-12);
    }

    #[track_caller]
    fn case(was: Found, rises: bool) {
        let factor = learned(&[look(1.0, was)]);
        assert_eq!(factor.is.value() > 1.0, rises, "{factor:?}");
        assert!(factor.spread_ln < SPREAD_BEFORE);
    }

    #[test]
    fn one_look_moves_it_the_right_way() {
        case(Found::Drier, true);
        case(Found::Wetter, false);
    }
}
