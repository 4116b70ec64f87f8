//! All the times of the year ahead at which a crop can go in.

use super::{EASED, Fits, Growth, LOOKED_BEYOND_DAYS, NEAR_DAYS, Way, Window, YEAR_DAYS, windows};
use crate::knowledge::Crop;
use crate::needs::year::Year;

/// When a crop goes in within the year from the day that `year` was made around.
#[derive(Debug, Clone, PartialEq)]
pub struct Seasons {
    pub way: Way,
    /// In order; one that is open on the day began before it.
    pub windows: Vec<Window>,
    /// Whether the day itself suits.
    pub fits: Fits,
    /// No day of the year is unfit.
    pub whole_year: bool,
    /// No time of the year keeps within its limits; these only just exceed them.
    pub marginal: bool,
    /// How far the worst week stays from the nearer limit, K, for what goes in at the middle of each window.
    pub margins_k: Vec<f64>,
}

/// The seasons of a crop in the year ahead, none where no time of it fits.
#[must_use]
pub fn seasons(crop: &Crop, way: Way, year: &Year) -> Seasons {
    let growth = Growth::of(crop, way, year);
    let (strict, runs) = growth.times();
    let today = year.today();
    let ahead = |(first, last): &(usize, usize)| *last >= today && *first <= today + YEAR_DAYS;
    let ahead: Vec<(usize, usize)> = runs.iter().copied().filter(ahead).collect();
    let middle = |(first, last): &(usize, usize)| (first.max(&today) + last) / 2;
    let windows: Vec<Window> = ahead.iter().map(|run| growth.doubted(*run, strict)).collect();
    Seasons {
        way,
        fits: fits(&runs, today),
        whole_year: windows.iter().any(|window| window.whole_year),
        marginal: strict < 0.0 && !windows.is_empty(),
        margins_k: ahead.iter().map(|run| growth.margin(middle(run) + growth.nursery())).collect(),
        windows,
    }
}

/// Whether a day lies in a time that fits, shortly before or shortly after one.
pub(super) fn fits(runs: &[(usize, usize)], day: usize) -> Fits {
    let open = runs.iter().find(|(_, last)| *last >= day);
    let closed = runs.iter().rfind(|(_, last)| *last < day);
    match (open, closed) {
        (Some((first, _)), _) if *first <= day => Fits::Yes,
        (Some((first, _)), _) if *first <= day + NEAR_DAYS => Fits::Soon,
        (_, Some((_, last))) if *last + NEAR_DAYS >= day => Fits::Late,
        _ => Fits::No,
    }
}

impl Growth<'_> {
    /// The times that fit, as places of the year, and how strictly: where no time keeps within the limits, the time
    /// that is least past them, eased once by their doubt, then twice.
    pub(super) fn times(&self) -> (f64, Vec<(usize, usize)>) {
        let today = self.year.today();
        [0.0, EASED, 2.0 * EASED]
            .into_iter()
            .map(|strict| (strict, self.runs(strict)))
            .find(|(_, runs)| runs.iter().any(|(_, last)| *last >= today))
            .unwrap_or_default()
    }

    fn runs(&self, strict: f64) -> Vec<(usize, usize)> {
        let today = self.year.today();
        let bounds = self.bounds(strict);
        let fits = |day: usize| self.suits(day, &bounds);
        let mut all: Vec<bool> = (0..=today + YEAR_DAYS).map(fits).collect();
        // A window that is open when the year ends is followed to its own end.
        let longest = today + YEAR_DAYS + LOOKED_BEYOND_DAYS;
        while all.last() == Some(&true) && all.len() <= longest && fits(all.len()) {
            all.push(true);
        }
        windows(&all)
    }
}
