//! How long nothing is picked from a bed that was sprayed.

use super::line::{Line, Said};
use crate::garden::{BedId, JobDone, JobKind};
use crate::knowledge::Knowledge;
use chrono::{Days, NaiveDate};

/// What was sprayed is not known: its label says how long. It is told of for so many days (judgement: labels of what is
/// sprayed on food in gardens seldom ask for more).
const LABEL_TOLD_DAYS: u64 = 14;

/// Until when nothing is picked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wait {
    /// Picking is safe again from this day on.
    Until(NaiveDate),
    /// The label decides; told of until this day.
    Label(NaiveDate),
}

impl Wait {
    /// Whether it still counts on a day.
    #[must_use]
    pub fn lasts(self, on: NaiveDate) -> bool {
        let (Self::Until(end) | Self::Label(end)) = self;
        on < end
    }

    /// Of several the heaviest counts: a label that is not known, then the latest day.
    #[must_use]
    pub const fn weight(self) -> (bool, NaiveDate) {
        match self {
            Self::Until(day) => (false, day),
            Self::Label(day) => (true, day),
        }
    }

    /// As it is told of a bed.
    #[must_use]
    pub fn line(self, bed: &BedId) -> Line {
        let bed = Said::Bed(bed.clone());
        match self {
            Self::Until(day) => Line::new("note-wait").with("bed", bed).with("day", Said::Day(day)),
            Self::Label(_) => Line::new("note-wait-label").with("bed", bed),
        }
    }
}

/// The wait after a spray: the longer end of what its sources say, since nobody is harmed by a day more. None after any
/// other job, and after a spray without a wait.
#[must_use]
pub fn waits(job: &JobDone, known: &Knowledge) -> Option<Wait> {
    if job.job != JobKind::Spray {
        return None;
    }
    let on = job.on.date();
    let Some(spray) = job.what.as_ref().and_then(|id| known.materials.get(id)?.spray.as_ref()) else {
        return on.checked_add_days(Days::new(LABEL_TOLD_DAYS)).map(Wait::Label);
    };
    let days = spray.wait_days.is.high().ceil();
    if days < 1.0 { None } else { on.checked_add_days(Days::new(days as u64)).map(Wait::Until) }
}
