//! Ranges by running a sum again with its doubtful inputs moved, one at a time.

use crate::agronomy::maths::sqrt;
use crate::quantity::Estimate;

/// A doubtful input, moved to each of its ends.
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt<D, I> {
    /// Which one it is.
    pub name: D,
    pub at_low: I,
    pub at_high: I,
}

/// A result with its range, and the doubt that moves it most.
#[derive(Debug, Clone, PartialEq)]
pub struct Swung<D> {
    pub is: Estimate<f64>,
    pub largest: Option<D>,
}

/// A sum's outcome at its best inputs and at both ends of each doubt, run once for all its figures.
#[derive(Debug, Clone, PartialEq)]
pub struct Runs<D, R> {
    pub best: R,
    ends: Vec<(D, R, R)>,
}

/// Runs the sum at its best inputs and at each end of each doubt.
pub fn runs<D: Copy, I, R>(best: &I, doubts: &[Doubt<D, I>], sum: impl Fn(&I) -> R) -> Runs<D, R> {
    let ends = doubts.iter().map(|doubt| (doubt.name, sum(&doubt.at_low), sum(&doubt.at_high)));
    Runs { best: sum(best), ends: ends.collect() }
}

impl<D: Copy, R> Runs<D, R> {
    /// Whether something holds of every run.
    pub fn each(&self, holds: impl Fn(&R) -> bool) -> bool {
        holds(&self.best) && self.ends.iter().all(|(_, at_low, at_high)| holds(at_low) && holds(at_high))
    }

    /// One figure of the outcome. The shifts up and the shifts down are combined apart, by the root of their
    /// squares: the doubts are taken as independent.
    pub fn figure(&self, of: impl Fn(&R) -> f64) -> Swung<D> {
        let value = of(&self.best);
        let (mut down, mut up) = (0.0, 0.0);
        let mut largest: Option<(f64, D)> = None;
        for (name, at_low, at_high) in &self.ends {
            let shifts = [of(at_low) - value, of(at_high) - value];
            let (fall, rise) = (shifts[0].min(shifts[1]).min(0.0), shifts[0].max(shifts[1]).max(0.0));
            down += fall * fall;
            up += rise * rise;
            let width = rise - fall;
            if width > 0.0 && largest.is_none_or(|(widest, _)| width > widest) {
                largest = Some((width, *name));
            }
        }
        let is = Estimate::spanning(value, [value - sqrt(down), value + sqrt(up)]);
        Swung { is, largest: largest.map(|(_, name)| name) }
    }
}

/// A sum with one figure.
pub fn swing<D: Copy, I>(best: &I, doubts: &[Doubt<D, I>], sum: impl Fn(&I) -> f64) -> Swung<D> {
    runs(best, doubts, sum).figure(|value| *value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shifts_combine_by_the_root_of_their_squares() {
        let doubt = |name, low, high| Doubt { name, at_low: low, at_high: high };
        let swung =
            swing(&(1.0, 1.0), &[doubt('a', (0.7, 1.0), (1.3, 1.0)), doubt('b', (1.0, 0.6), (1.0, 1.4))], |i| {
                10.0 * (i.0 + i.1)
            });
        assert!((swung.is.low() - 15.0).abs() < 1e-9 && (swung.is.high() - 25.0).abs() < 1e-9, "{swung:?}");
        assert_eq!(swung.largest, Some('b'));
    }
}
