//! Plantings, and which of them stand on a day.

use super::id::BedId;
use super::job::{JobDone, JobKind};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// How a planting began.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Start {
    /// Seed went in on this day.
    Sown(NaiveDate),
    /// Saplings went in on this day.
    Planted(NaiveDate),
}

impl Start {
    #[must_use]
    pub const fn date(self) -> NaiveDate {
        match self {
            Self::Sown(date) | Self::Planted(date) => date,
        }
    }
}

/// One crop in one bed from one day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Planting {
    pub bed: BedId,
    /// The crop's plain id, also for a microgreen.
    pub crop: String,
    #[serde(default)]
    pub microgreen: bool,
    pub start: Start,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plants: Option<u32>,
}

/// The plantings that stand at the end of `on`: begun by then, and not cleared since.
///
/// Only a job `clear` ends a planting, however often it was picked. It ends what began on an earlier
/// day: a bed cleared and sown again on one day carries the new sowing.
#[must_use]
pub fn standing<'a>(plantings: &'a [Planting], jobs: &[JobDone], on: NaiveDate) -> Vec<&'a Planting> {
    let ends = |job: &JobDone, planting: &Planting| {
        let crop = job.what.as_deref();
        job.job == JobKind::Clear
            && job.bed == planting.bed
            && crop.is_none_or(|crop| crop == planting.crop)
            && planting.start.date() < job.on.date()
            && job.on.date() <= on
    };
    plantings
        .iter()
        .filter(|planting| planting.start.date() <= on && !jobs.iter().any(|job| ends(job, planting)))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn planting(crop: &str, sown: &str) -> Planting {
        Planting {
            bed: BedId::new("roof/box").unwrap(),
            crop: crop.into(),
            microgreen: false,
            start: Start::Sown(sown.parse().unwrap()),
            plants: None,
        }
    }

    fn job(kind: JobKind, bed: &str, on: &str, what: Option<&str>) -> JobDone {
        JobDone {
            bed: BedId::new(bed).unwrap(),
            job: kind,
            on: on.parse().unwrap(),
            what: what.map(Into::into),
            amount: None,
        }
    }

    #[track_caller]
    fn case(jobs: &[JobDone], on: &str, expected: &[&str]) {
        let plantings = [planting("spinach", "2026-01-01"), planting("radish", "2026-02-01")];
        let got = standing(&plantings, jobs, on.parse().unwrap());
        assert_eq!(got.iter().map(|planting| planting.crop.as_str()).collect::<Vec<_>>(), expected);
    }

    #[test]
    fn only_a_clear_ends_a_planting() {
        let (clear, pick) = (JobKind::Clear, JobKind::Pick);
        case(&[], "2025-12-31", &[]);
        case(&[], "2026-01-01", &["spinach"]);
        case(&[job(pick, "roof/box", "2026-03-01", None)], "2026-04-01", &["spinach", "radish"]);
        case(&[job(clear, "roof/box", "2026-03-01", None)], "2026-02-28", &["spinach", "radish"]);
        case(&[job(clear, "roof/box", "2026-03-01", None)], "2026-03-01", &[]);
        case(&[job(clear, "roof/box", "2026-03-01T18:00", Some("spinach"))], "2026-03-01", &["radish"]);
        case(&[job(clear, "roof/other", "2026-03-01", None)], "2026-03-01", &["spinach", "radish"]);
        // Cleared and sown again on the same day: the new sowing stands.
        case(&[job(clear, "roof/box", "2026-02-01", None)], "2026-02-01", &["radish"]);
    }
}
