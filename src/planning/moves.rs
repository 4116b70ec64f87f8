//! Jobs that people moved: which of the moves still hold.

use crate::garden::{JobDone, JobKind, Move};
use chrono::NaiveDate;

/// What tells one job of a bed from another of its kind: the crop of a picking or a sowing, nothing else.
#[must_use]
pub fn parts(job: JobKind, what: Option<&str>) -> Option<String> {
    what.filter(|_| matches!(job, JobKind::Pick | JobKind::Sow)).map(str::to_owned)
}

/// The day on which a job was done last. A picking or sowing of which no crop was told counts for every crop.
#[must_use]
pub fn last_done(jobs: &[JobDone], job: JobKind, what: Option<&str>) -> Option<NaiveDate> {
    let of_crop = parts(job, what);
    let same = |done: &&JobDone| {
        let crop = of_crop.as_deref().filter(|_| done.what.is_some());
        done.job == job && crop.is_none_or(|crop| done.what.as_deref() == Some(crop))
    };
    jobs.iter().filter(same).map(|done| done.on.date()).max()
}

/// The move of a job that holds: since it was made the job was not done.
#[must_use]
pub fn held<'m>(moves: &'m [Move], jobs: &[JobDone], job: JobKind, what: Option<&str>) -> Option<&'m Move> {
    let crop = parts(job, what);
    let found = moves.iter().find(|moved| moved.job == job && moved.what == crop)?;
    (last_done(jobs, job, what) <= found.after).then_some(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::BedId;

    fn done(job: JobKind, on: &str, what: Option<&str>) -> JobDone {
        let bed = BedId::new("roof/box").unwrap();
        JobDone { bed, job, on: on.parse().unwrap(), what: what.map(Into::into), amount: None }
    }

    fn moved(job: JobKind, what: Option<&str>, after: Option<&str>) -> Move {
        Move {
            bed: BedId::new("roof/box").unwrap(),
            job,
            what: what.map(Into::into),
            to: "2026-05-22".parse().unwrap(),
            by: None,
            at: "2026-05-18T02:30:00Z".parse().unwrap(),
            after: after.map(|day| day.parse().unwrap()),
        }
    }

    #[test]
    fn a_move_holds_until_the_job_is_done() {
        let (spray, neem) = (JobKind::Spray, Some("neem-oil"));
        let moves = [moved(spray, None, Some("2026-05-12"))];
        let mut jobs = vec![done(spray, "2026-05-12T18:15", neem)];
        assert_eq!(held(&moves, &jobs, spray, neem), Some(&moves[0]), "whatever is sprayed");
        assert_eq!(held(&moves, &jobs, JobKind::Feed, None), None);
        jobs.push(done(spray, "2026-05-19", neem));
        assert_eq!(held(&moves, &jobs, spray, neem), None, "done before its day");
        jobs.pop();
        assert_eq!(held(&moves, &jobs, spray, neem), Some(&moves[0]), "the record was taken back");
        assert_eq!(
            held(&[moved(spray, None, None)], &[], spray, None).map(|found| found.to.to_string()).as_deref(),
            Some("2026-05-22")
        );
    }

    #[test]
    fn each_crop_is_picked_by_itself() {
        let pick = JobKind::Pick;
        let moves = [moved(pick, Some("okra"), None)];
        assert!(held(&moves, &[done(pick, "2026-05-20", Some("chilli"))], pick, Some("okra")).is_some());
        assert!(held(&moves, &[done(pick, "2026-05-20", None)], pick, Some("okra")).is_none());
        assert!(held(&moves, &[], pick, Some("chilli")).is_none());
    }
}
