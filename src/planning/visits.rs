//! Visits of the crew that were due at a site, and what became of them.
//!
//! **A visit falls due** on the first day on which work of the crew is due at the site: a spray, a feed, a net, a new
//! sowing. Watering and picking between visits are the household's. **Its span** is that day and the two after it. It
//! was **made** when the crew recorded any work or look at the site within the span; **missed** when the span went by
//! without, and on its last day something of what made it due was still due (else somebody else did it); until the span
//! is over it is **open**. The next visit can fall due on the day after the work, or after the span.

use crate::garden::{BedId, JobKind};
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// The days within which a visit that is due is to be made, its first among them (judgement).
pub const SPAN_DAYS: u64 = 3;

/// The jobs that bring the crew to a site.
pub const OF_THE_CREW: [JobKind; 4] = [JobKind::Spray, JobKind::Feed, JobKind::Net, JobKind::Sow];

/// A job with its bed.
pub type Work = (BedId, JobKind);

/// What became of a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Became {
    /// On this day.
    Made(NaiveDate),
    Missed,
    /// Its span is not over.
    Open,
    /// Nothing was due any more at its end, though the crew was not there.
    DoneByOthers,
}

/// One visit that was due.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Visit {
    pub due: NaiveDate,
    pub work: BTreeSet<Work>,
    pub became: Became,
}

/// The visits of a site that fell due from a day until today. `due_on` gives the crew's work due on a day, as the
/// records stood then; `worked` holds the days on which the crew was there.
#[must_use]
pub fn visits(
    (from, today): (NaiveDate, NaiveDate),
    due_on: impl Fn(NaiveDate) -> BTreeSet<Work>,
    worked: &BTreeSet<NaiveDate>,
) -> Vec<Visit> {
    let mut all = Vec::new();
    let mut day = from;
    while day <= today {
        let work = due_on(day);
        let (Some(last), Some(tomorrow)) = (plus(day, SPAN_DAYS - 1), day.succ_opt()) else { break };
        if work.is_empty() {
            day = tomorrow;
            continue;
        }
        let made = worked.range(day..=last.min(today)).next().copied();
        let became = match made {
            Some(on) => Became::Made(on),
            None if last >= today => Became::Open,
            None if due_on(last).is_disjoint(&work) => Became::DoneByOthers,
            None => Became::Missed,
        };
        all.push(Visit { due: day, work, became });
        let Some(next) = made.unwrap_or(last).succ_opt() else { break };
        day = next;
    }
    all
}

fn plus(day: NaiveDate, days: u64) -> Option<NaiveDate> {
    day.checked_add_days(Days::new(days))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(number: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 5, number).unwrap()
    }

    /// One spray due from the 4th on until it is done (`done`); the crew there on these days; asked on the 12th.
    #[track_caller]
    fn case(done: Option<u32>, crew: &[u32], expected: &[(u32, Became)]) {
        let bed = BedId::new("roof/box").unwrap();
        let due_on = |on: NaiveDate| {
            let due = on >= day(4) && done.is_none_or(|done| on <= day(done));
            if due { BTreeSet::from([(bed.clone(), JobKind::Spray)]) } else { BTreeSet::new() }
        };
        let worked = crew.iter().map(|number| day(*number)).collect();
        let got: Vec<(NaiveDate, Became)> =
            visits((day(1), day(12)), due_on, &worked).into_iter().map(|visit| (visit.due, visit.became)).collect();
        let expected: Vec<(NaiveDate, Became)> = expected.iter().map(|(due, became)| (day(*due), *became)).collect();
        assert_eq!(got, expected);
    }

    #[test]
    fn made_missed_open() {
        case(Some(4), &[4], &[(4, Became::Made(day(4)))]);
        case(Some(6), &[6], &[(4, Became::Made(day(6)))]);
        // Nobody came: the same work makes the next visit due when a span is over.
        case(None, &[], &[(4, Became::Missed), (7, Became::Missed), (10, Became::Open)]);
        case(Some(8), &[8], &[(4, Became::Missed), (7, Became::Made(day(8)))]);
        // The household sprayed on the 5th.
        case(Some(5), &[], &[(4, Became::DoneByOthers)]);
        // A visit without anything due makes none missed.
        case(Some(5), &[2, 5], &[(4, Became::Made(day(5)))]);
    }
}
