//! What a client is told after a visit: what was done, what was found, what she does until the next one; and which work
//! of the crew is due at a site.

use super::answer::{Answer, Outcome};
use super::bed_today::{called, job_done, list, looked};
use super::bed_wait::waits;
use super::facts::{Facts, SiteFacts};
use super::line::{Line, Said};
use super::plots::plot;
use super::subject::subjects;
use super::water::{TOLD_ONE_BY_ONE, rhythm};
use super::water_bed::BedWater;
use crate::garden::{BedId, JobDone, JobKind, Seen, SiteId};
use crate::knowledge::{Kind, Knowledge};
use crate::needs::year::Year;
use crate::planning::due::{Due, due};
use crate::planning::visits::{OF_THE_CREW, Work};
use crate::script::Language;
use crate::understanding::Reading;
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// The next visit is looked for within so many days.
const NEXT_WITHIN: u64 = 21;

/// What was recorded on a visit.
#[derive(Debug, Clone, PartialEq)]
pub struct Visited<'a> {
    pub site: &'a SiteId,
    /// Who was there.
    pub who: &'a str,
    pub on: NaiveDate,
    pub jobs: &'a [JobDone],
    pub seen: &'a [Seen],
}

/// The note for whoever lives there. None where the site is not among the facts.
#[must_use]
pub fn note(visited: &Visited<'_>, facts: &Facts<'_>) -> Option<Answer> {
    let site = facts.sites.iter().find(|site| site.site.id == *visited.site)?;
    let mut answer = Answer::new(Outcome::Answered);
    answer.called = called(facts);
    answer.lines.push(
        Line::new("note-title")
            .with("who", Said::Quoted(visited.who.to_owned()))
            .with("site", Said::Quoted(site.site.name.clone()))
            .with("day", Said::Day(visited.on)),
    );
    let done = grouped(visited.jobs.iter().map(|job| (job_done(job, facts.known), &job.bed)));
    if !done.is_empty() {
        answer.lines.push(Line::new("note-done").with("what", list(done.into_iter())));
    }
    let found = grouped(visited.seen.iter().map(|seen| (looked(seen), &seen.bed)));
    if !found.is_empty() {
        answer.lines.push(Line::new("note-found").with("what", list(found.into_iter())));
    }
    answer.lines.push(Line::new("note-until"));
    answer.lines.extend(watering(site, facts));
    answer.lines.extend(visited.jobs.iter().filter_map(|job| wait(job, facts.known)));
    if let Some(day) = next_visit(site, facts) {
        answer.lines.push(Line::new("note-next").with("day", Said::Day(day)));
    }
    Some(answer)
}

/// Lines that are alike are one, with all their beds.
fn grouped<'b>(all: impl Iterator<Item = (Line, &'b BedId)>) -> Vec<Line> {
    let mut groups: Vec<(Line, Vec<Said>)> = Vec::new();
    for (line, bed) in all {
        let bed = Said::Bed(bed.clone());
        match groups.iter_mut().find(|(known, _)| *known == line) {
            Some((_, beds)) if beds.contains(&bed) => {}
            Some((_, beds)) => beds.push(bed),
            None => groups.push((line, vec![bed])),
        }
    }
    let line = |(what, beds)| {
        Line::new("note-of-beds").with("what", Said::Line(Box::new(what))).with("beds", Said::List(beds))
    };
    groups.into_iter().map(line).collect()
}

/// How much and how often, the first beds one by one.
fn watering(site: &SiteFacts<'_>, facts: &Facts<'_>) -> Vec<Line> {
    let mut reading = Reading::blank(Kind::Water, Language::En);
    reading.beds = site.beds.iter().map(|bed| bed.bed.id.clone()).collect();
    (reading.beds_named, reading.all_beds) = (true, true);
    let subjects = subjects(&reading, facts).unwrap_or_default();
    let summed = subjects.iter().filter_map(|subject| BedWater::of(subject, &reading, facts));
    let lines: Vec<Line> = summed.map(|water| rhythm(&water)).collect();
    let more = lines.len().saturating_sub(TOLD_ONE_BY_ONE);
    let mut told: Vec<Line> = lines.into_iter().take(TOLD_ONE_BY_ONE).collect();
    if more > 0 {
        told.push(Line::new("water-more-beds").with("count", Said::Count(more as i64)));
    }
    told
}

/// Nothing is picked from a sprayed bed before its wait is over.
fn wait(job: &JobDone, known: &Knowledge) -> Option<Line> {
    waits(job, known).map(|wait| wait.line(&job.bed))
}

/// The first day after today on which work of the crew is due.
fn next_visit(site: &SiteFacts<'_>, facts: &Facts<'_>) -> Option<NaiveDate> {
    let today = site.now.date_naive();
    let until = today.checked_add_days(Days::new(NEXT_WITHIN))?;
    let tomorrow = today.succ_opt()?;
    let all = due_at(site, facts, until).into_iter().filter(|due| OF_THE_CREW.contains(&due.job));
    all.map(|due| due.date.max(tomorrow)).min()
}

/// All jobs due at a site by a day.
fn due_at(site: &SiteFacts<'_>, facts: &Facts<'_>, until: NaiveDate) -> Vec<Due> {
    let year = Year::around(&site.weather, site.now.date_naive());
    site.beds.iter().flat_map(|bed| due(&plot(site, bed, year.as_ref(), facts.known), until)).collect()
}

/// The crew's work that is due at a site on the day of asking.
#[must_use]
pub fn due_of_the_crew(site: &SiteFacts<'_>, facts: &Facts<'_>) -> BTreeSet<Work> {
    let all = due_at(site, facts, site.now.date_naive()).into_iter();
    all.filter(|due| OF_THE_CREW.contains(&due.job)).map(|due| (due.bed, due.job)).collect()
}

/// A job without what it is done with.
#[must_use]
pub fn job_alone(job: JobKind) -> Line {
    Line::new("job-due").with("job", Said::Key(job.word())).with("what", Said::Key("none"))
}

/// How many jobs are due at a site today, picking included.
#[must_use]
pub fn any_due(site: &SiteFacts<'_>, facts: &Facts<'_>) -> usize {
    due_at(site, facts, site.now.date_naive()).len()
}
