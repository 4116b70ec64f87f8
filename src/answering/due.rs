//! "What is due, where, today or this week?"

use super::answer::{Answer, Outcome};
use super::facts::{Facts, SiteFacts};
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::plots::{mover, plot};
use super::spray_time::obstacle_key;
use super::table::{DueJob, DueTable, Table};
use crate::garden::{BedId, JobKind};
use crate::knowledge::Point;
use crate::needs::year::Year;
use crate::planning::due::{Due, due};
use crate::planning::round::{Stop, order};
use crate::understanding::Reading;
use chrono::{Days, NaiveDate};
use serde_json::json;
use std::collections::BTreeMap;

/// Without a day, this many days are looked through, today the first.
const WEEK: u64 = 7;
/// So many lines of jobs are told; the rest is counted.
const TOLD: usize = 6;
/// More beds than this on a line are cut to one less and counted.
const BEDS_ON_A_LINE: usize = 3;

/// The jobs of the days asked for, on the beds that are meant, else on all.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let today = facts.today();
    let (first, last) = span(reading, today);
    let missed = reading.points.contains(&Point::Missed) && reading.days.is_empty();
    let (first, last) = if missed { week_before(today) } else { (first, last) };
    if last < today && facts.beds().next().is_some() {
        let days = gone_by(reading).unwrap_or((first, last));
        return super::due_missed::answer(reading, days, facts).unwrap_or_else(super::handed_over::not_known);
    }
    let wanted = |bed: &BedId| reading.beds.is_empty() || reading.beds.contains(bed);
    let job = asked_job(reading);
    let mut answer = of_days((first, last), facts, |due| wanted(&due.bed) && job.is_none_or(|job| due.job == job));
    if reading.points.contains(&Point::Round) {
        super::due_round::put(&mut answer, facts);
    }
    answer
}

/// The jobs from one day to another that are wanted, in the order of a round.
pub fn of_days((first, last): (NaiveDate, NaiveDate), facts: &Facts<'_>, wanted: impl Fn(&Due) -> bool) -> Answer {
    let today = facts.today();
    if facts.beds().next().is_none() {
        return Answer::ask(Line::new("ask-what-bed"), Vec::new());
    }
    let mut all: Vec<Due> = Vec::new();
    for site in &facts.sites {
        let year = Year::around(&site.weather, site.now.date_naive());
        for bed in &site.beds {
            all.extend(due(&plot(site, bed, year.as_ref(), facts.known), last));
        }
    }
    // What is due today was perhaps due before; on a later day only what falls on it.
    all.retain(|due| due.date >= first && wanted(due));
    let places = places(facts);
    all.sort_by_key(|due| (due.date, places.get(&due.bed).copied(), due.job.word()));
    let mut answer = Answer::new(Outcome::Answered);
    put_jobs(&mut answer, &all);
    answer.tables.push(Table::Due(DueTable {
        first,
        last,
        jobs: all.iter().filter_map(|due| listed(due, facts)).collect(),
    }));
    told(&mut answer, &all, (first, last), today, facts);
    answer
}

/// The jobs as a figure.
pub fn put_jobs(answer: &mut Answer, all: &[Due]) {
    let list: Vec<_> = all
        .iter()
        .map(|due| {
            let mut job = json!({"date": due.date.to_string(), "bed": due.bed.to_string(), "job": due.job.word()});
            if let Some(what) = &due.what {
                job["what"] = json!(what);
            }
            job
        })
        .collect();
    answer.figures.push(Figure {
        name: "jobs".to_owned(),
        is: FigureValue::Structure(json!(list)),
        bed: None,
        crop: None,
    });
}

/// A job as a list has it.
fn listed(due: &Due, facts: &Facts<'_>) -> Option<DueJob> {
    let (site, _) = facts.bed(&due.bed)?;
    let known = facts.known;
    let what_said = due.what.as_ref().and_then(|what| match what {
        what if known.crops.contains_key(what) => Some(Said::Crop(what.clone())),
        what if known.materials.contains_key(what) => Some(Said::Material(what.clone())),
        _ => None,
    });
    Some(DueJob {
        date: due.date,
        bed: due.bed.clone(),
        site: site.site.id.clone(),
        site_name: site.site.name.clone(),
        job: key(due.job.word(), due.what.as_deref()),
        what: due.what.clone(),
        what_said,
        since: due.since,
    })
}

/// Where each bed comes in a round: its site by the nearest way from the first, then its own place on the roof.
pub fn places(facts: &Facts<'_>) -> BTreeMap<BedId, usize> {
    let stops: Vec<Stop<'_>> = facts
        .sites
        .iter()
        .map(|site| (site.site.id.as_str(), site.site.latitude_deg, site.site.longitude_deg))
        .collect();
    let ordered = order(&stops, None);
    let by_id: BTreeMap<&str, &SiteFacts<'_>> = facts.sites.iter().map(|site| (site.site.id.as_str(), site)).collect();
    let sites = ordered.iter().filter_map(|(id, ..)| by_id.get(id));
    sites.flat_map(|site| &site.beds).enumerate().map(|(place, bed)| (bed.bed.id.clone(), place)).collect()
}

/// The days asked for: those named, else a week.
fn span(reading: &Reading, today: NaiveDate) -> (NaiveDate, NaiveDate) {
    let week = today.checked_add_days(Days::new(WEEK - 1)).unwrap_or(today);
    let first = reading.days.iter().map(|(first, _)| *first).min();
    let last = reading.days.iter().map(|(_, last)| *last).max();
    match (first, last) {
        (Some(first), Some(last)) if first == last && first > today => up_to(first, reading, today),
        (Some(first), Some(last)) => (first.max(today).min(last), last),
        _ => (today, week),
    }
}

/// "By Sunday" and "before Sunday" ask for all days until then.
fn up_to(day: NaiveDate, reading: &Reading, today: NaiveDate) -> (NaiveDate, NaiveDate) {
    let says = |point| reading.points.contains(&point);
    match (says(Point::Before), says(Point::UpTo)) {
        (true, _) => (today, day.pred_opt().unwrap_or(day)),
        (false, true) => (today, day),
        (false, false) => (day, day),
    }
}

/// The seven days before a day.
fn week_before(today: NaiveDate) -> (NaiveDate, NaiveDate) {
    let back = |days| today.checked_sub_days(Days::new(days)).unwrap_or(today);
    (back(WEEK), back(1))
}

/// The days named, as they were named.
fn gone_by(reading: &Reading) -> Option<(NaiveDate, NaiveDate)> {
    let first = reading.days.iter().map(|(first, _)| *first).min()?;
    let last = reading.days.iter().map(|(_, last)| *last).max()?;
    Some((first, last))
}

/// The one job that is asked after.
fn asked_job(reading: &Reading) -> Option<JobKind> {
    [JobKind::Spray, JobKind::Feed, JobKind::Pick, JobKind::Net].into_iter().find(|job| reading.jobs.contains(job))
}

/// Jobs of one day and sort together, with all their beds; the first days first.
pub fn told(
    answer: &mut Answer,
    all: &[Due],
    (first, last): (NaiveDate, NaiveDate),
    today: NaiveDate,
    facts: &Facts<'_>,
) {
    if all.is_empty() {
        let none = if first == last { "due-none-day" } else { "due-none" };
        answer.lines.push(Line::new(none).with("day", Said::Day(first)));
        return;
    }
    let mut groups: BTreeMap<(NaiveDate, &'static str, Option<&str>), Vec<&Due>> = BTreeMap::new();
    for due in all {
        // Which crop is picked or which way a net goes parts the beds; a product does not.
        let what = due.what.as_deref().filter(|_| due.job != JobKind::Spray);
        groups.entry((due.date, due.job.word(), what)).or_default().push(due);
    }
    for ((date, job, what), dues) in groups.iter().take(TOLD) {
        let mut beds: Vec<Said> = dues.iter().map(|due| Said::Bed(due.bed.clone())).collect();
        if beds.len() > BEDS_ON_A_LINE {
            let rest = beds.split_off(BEDS_ON_A_LINE - 1).len();
            beds.push(Said::Line(Box::new(Line::new("due-beds-more").with("count", Said::Count(rest as i64)))));
        }
        let crop = what.filter(|what| facts.known.crops.contains_key(*what));
        let line = Line::new("due-job")
            .with("day", if *date == today { Said::Key("today") } else { Said::Day(*date) })
            .with("job", Said::Key(key(job, *what)))
            .with("crop", crop.map_or(Said::Key("none"), |crop| Said::Crop(crop.to_owned())))
            .with("beds", Said::List(beds));
        answer.lines.push(line);
    }
    if groups.len() > TOLD {
        answer.lines.push(Line::new("due-more").with("count", Said::Count((groups.len() - TOLD) as i64)));
    }
    for due in all {
        if let Some(obstacle) = due.moved_by.iter().next() {
            answer.working.push(
                Line::new("working-due-moved")
                    .with("bed", Said::Bed(due.bed.clone()))
                    .with("day", Said::Day(due.date))
                    .with("by", Said::Key(obstacle_key(*obstacle))),
            );
        }
        if let Some(moved) = &due.chosen {
            answer.working.push(
                Line::new("working-moved-by")
                    .with("bed", Said::Bed(due.bed.clone()))
                    .with("who", mover(moved, facts))
                    .with("day", Said::Day(moved.to)),
            );
        }
        if let Some(since) = due.since {
            answer.working.push(
                Line::new("working-due-since")
                    .with("bed", Said::Bed(due.bed.clone()))
                    .with("job", Said::Key(key(due.job.word(), due.what.as_deref())))
                    .with("day", Said::Day(since)),
            );
        }
    }
    answer.working.push(Line::new("working-due"));
    answer.cite(&crate::knowledge::SourceRef::new("common-practice", "weekly spray, feed every 7 to 10 days"));
}

pub fn key(job: &'static str, what: Option<&str>) -> &'static str {
    match (job, what) {
        ("net", Some("down")) => "net-down",
        _ => job,
    }
}
