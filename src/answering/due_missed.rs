//! "Did I miss anything yesterday?": what was due on days gone by and is not noted since.

use super::answer::{Answer, Outcome};
use super::due::{put_jobs, told};
use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use super::plots::plot;
use crate::garden::{JobDone, JobKind};
use crate::needs::year::Year;
use crate::planning::due::{Due, due};
use crate::understanding::Reading;
use chrono::{NaiveDate, NaiveTime};

/// Longer ago than this nothing is looked up.
const LOOKED_BACK_DAYS: i64 = 31;

/// The jobs that fell due between two days before today, on the beds that are meant; those done since are not told.
/// None where the days lie too far back.
pub fn answer(reading: &Reading, (first, last): (NaiveDate, NaiveDate), facts: &Facts<'_>) -> Option<Answer> {
    if (facts.today() - first).num_days() > LOOKED_BACK_DAYS {
        return None;
    }
    let mut missed: Vec<Due> = Vec::new();
    for site in &facts.sites {
        let year = Year::around(&site.weather, first);
        for bed in site.beds.iter().filter(|bed| reading.beds.is_empty() || reading.beds.contains(&bed.bed.id)) {
            missed.extend(of_bed(site, bed, year.as_ref(), (first, last), facts)?);
        }
    }
    let asked = |due: &Due| reading.jobs.iter().all(|job| !is_of_due(*job)) || reading.jobs.contains(&due.job);
    missed.retain(asked);
    missed.sort_by_key(|due| (due.date, due.job.word()));
    let mut answer = Answer::new(Outcome::Answered);
    put_jobs(&mut answer, &missed);
    let said = Line::new(if missed.is_empty() { "due-missed-none" } else { "due-missed" });
    answer.lines.push(
        said.with("first", Said::Day(first))
            .with("last", Said::Day(last))
            .with("span", Said::Key(if first == last { "day" } else { "days" })),
    );
    if !missed.is_empty() {
        told(&mut answer, &missed, (first, last), facts.today(), facts);
    }
    Some(answer)
}

const fn is_of_due(job: JobKind) -> bool {
    matches!(job, JobKind::Spray | JobKind::Feed | JobKind::Pick | JobKind::Net)
}

/// Of one bed, as it stood on the morning of the first day; none where that morning is no moment.
fn of_bed(
    site: &SiteFacts<'_>,
    bed: &BedFacts,
    year: Option<&Year>,
    (first, last): (NaiveDate, NaiveDate),
    facts: &Facts<'_>,
) -> Option<Vec<Due>> {
    let then = first.and_time(NaiveTime::MIN).and_local_timezone(*site.now.offset()).single()?;
    let before: Vec<JobDone> = bed.jobs.iter().filter(|job| job.on.date() < first).cloned().collect();
    let now = plot(site, bed, year, facts.known);
    let mut then = crate::planning::due::Plot { jobs: &before, now: then, ..now };
    then.standing.retain(|standing| standing.start.is_none_or(|start| start.date() <= first));
    let done_since = |due: &Due| bed.jobs.iter().any(|job| job.job == due.job && job.on.date() >= first);
    let mut all = due(&then, last);
    all.retain(|due| due.date >= first && !done_since(due));
    Some(all)
}
