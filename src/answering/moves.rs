//! "Move the spray to friday": a job put on another day, filed as a record of its own.

use super::answer::{Answer, Outcome};
use super::due::key;
use super::facts::Facts;
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::plots::plot;
use super::spray_time::obstacle_key;
use crate::garden::rights::may_record;
use crate::garden::{BedId, JobKind, Move, Record};
use crate::needs::year::Year;
use crate::planning::due::{Due, Plot, due, due_by_rhythm};
use crate::planning::moves::{last_done, parts};
use crate::understanding::Reading;
use chrono::{Days, NaiveDate, Utc};
use serde_json::json;

/// A job that is due within so many days can be moved…
const DUE_WITHIN: u64 = 21;
/// …to a day within so many.
const FURTHEST: u64 = 60;

/// Files the move; asks back where no day, or none that will do, was said.
pub fn answer(job: JobKind, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let Some(asker) = &facts.asker else {
        return Answer { lines: vec![Line::new("record-stranger")], ..Answer::new(Outcome::Declined) };
    };
    let today = facts.today();
    let wanted = wanted(job, reading, facts);
    let said = Said::Key(key(job.word(), wanted.first().and_then(|due| due.what.as_deref())));
    let Some(soonest) = wanted.iter().map(|due| due.date).min() else {
        let line = Line::new("move-none").with("job", said).with("days", Said::Count(DUE_WITHIN as i64));
        return Answer { lines: vec![line], ..Answer::new(Outcome::Answered) };
    };
    let Some(to) = day(reading, soonest) else { return which_day("move-which-day", said, soonest, today) };
    if to < today || to > ahead(today, FURTHEST) {
        return which_day("move-not-then", said, soonest, today);
    }
    if let Some(due) = wanted.iter().find(|due| !may_record(Some(asker), &due.bed)) {
        let line = Line::new("record-not-yours").with("bed", Said::Bed(due.bed.clone()));
        return Answer { lines: vec![line], ..Answer::new(Outcome::Declined) };
    }
    let moves: Vec<Move> = wanted
        .iter()
        .map(|due| Move {
            bed: due.bed.clone(),
            job,
            what: parts(job, due.what.as_deref()),
            to,
            by: Some(asker.id.clone()),
            at: facts.now.with_timezone(&Utc),
            after: facts.bed(&due.bed).and_then(|(_, bed)| last_done(&bed.jobs, job, due.what.as_deref())),
        })
        .collect();
    filed(moves, &wanted, said, facts)
}

/// "Don't move it": nothing is filed; when the job is due as things stand.
pub fn stays(job: JobKind, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let until = ahead(facts.today(), DUE_WITHIN);
    let mut all: Vec<Due> = each_bed(facts, |plot| due(plot, until));
    all.retain(|due| due.job == job && (reading.beds.is_empty() || reading.beds.contains(&due.bed)));
    let soonest = all.iter().map(|due| due.date).min();
    all.retain(|due| Some(due.date) == soonest);
    let said = Said::Key(key(job.word(), all.first().and_then(|due| due.what.as_deref())));
    let line = match soonest {
        Some(day) => {
            let mut beds: Vec<BedId> = all.into_iter().map(|due| due.bed).collect();
            beds.dedup();
            let beds = Said::List(beds.into_iter().map(Said::Bed).collect());
            Line::new("move-stays").with("job", said).with("beds", beds).with("day", Said::Day(day))
        }
        None => Line::new("move-none").with("job", said).with("days", Said::Count(DUE_WITHIN as i64)),
    };
    Answer { lines: vec![line], ..Answer::new(Outcome::Answered) }
}

/// The day that was said; a number of days counts from the day on which the job is due.
fn day(reading: &Reading, soonest: NaiveDate) -> Option<NaiveDate> {
    let named = reading.days.iter().map(|(day, _)| *day).max();
    let later = reading.for_days.filter(|days| (1.0..=FURTHEST as f64).contains(days));
    named.or_else(|| later.map(|days| ahead(soonest, days as u64)))
}

fn ahead(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}

fn which_day(question: &'static str, job: Said, soonest: NaiveDate, today: NaiveDate) -> Answer {
    let days = (1..=4).map(|days| ahead(today, days)).filter(|day| *day != soonest).take(3);
    let choices = days.map(|day| Line::new("choice-day").with("day", Said::Day(day))).collect();
    Answer::ask(Line::new(question).with("job", job), choices)
}

/// The jobs that are meant, as their rhythm has them: those of the beds or crops that were named; else those that are
/// due now or next.
fn wanted(job: JobKind, reading: &Reading, facts: &Facts<'_>) -> Vec<Due> {
    let until = ahead(facts.today(), DUE_WITHIN);
    let mut all: Vec<Due> = each_bed(facts, |plot| due_by_rhythm(plot, until));
    let of_crop = |due: &Due| match (&due.what, job) {
        (Some(what), JobKind::Pick | JobKind::Sow) => reading.crops.is_empty() || reading.crops.contains(what),
        _ => true,
    };
    all.retain(|due| due.job == job && of_crop(due));
    if !reading.beds.is_empty() {
        all.retain(|due| reading.beds.contains(&due.bed));
        return all;
    }
    // What a digest tells of tomorrow holds what is open since today.
    let next = all.iter().map(|due| due.date).min().map(|date| date.max(ahead(facts.today(), 1)));
    all.retain(|due| next.is_some_and(|next| due.date <= next));
    all
}

fn each_bed(facts: &Facts<'_>, jobs: impl Fn(&Plot<'_>) -> Vec<Due>) -> Vec<Due> {
    let mut all = Vec::new();
    for site in &facts.sites {
        let year = Year::around(&site.weather, site.now.date_naive());
        for bed in &site.beds {
            all.extend(jobs(&plot(site, bed, year.as_ref(), facts.known)));
        }
    }
    all
}

fn filed(moves: Vec<Move>, wanted: &[Due], job: Said, facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Recorded);
    let Some(first) = moves.first() else { return answer };
    let mut beds: Vec<BedId> = moves.iter().map(|moved| moved.bed.clone()).collect();
    beds.dedup();
    let names: Vec<String> = beds.iter().map(BedId::to_string).collect();
    let event = json!({"beds": names, "job": first.job.word(), "moved_to": first.to.to_string()});
    answer.figures.push(Figure { name: "event".to_owned(), is: FigureValue::Structure(event), bed: None, crop: None });
    answer.lines.push(
        Line::new("moved-to")
            .with("job", job)
            .with("beds", Said::List(beds.into_iter().map(Said::Bed).collect()))
            .with("day", Said::Day(first.to)),
    );
    // The sky and the picking have their word still: a day that will not do is told at once.
    let until = ahead(first.to, DUE_WITHIN);
    let after = each_bed(facts, |plot| {
        let own: Vec<Move> = moves.iter().filter(|moved| moved.bed == plot.bed.id).cloned().collect();
        if own.is_empty() { Vec::new() } else { due(&Plot { moves: &own, ..plot.clone() }, until) }
    });
    let same = |due: &&Due| wanted.iter().any(|one| (&one.bed, one.job, &one.what) == (&due.bed, due.job, &due.what));
    for due in after.iter().filter(same).filter(|due| due.date > first.to) {
        let Some(obstacle) = due.moved_by.iter().next() else { continue };
        answer.lines.push(
            Line::new("moved-but").with("bed", Said::Bed(due.bed.clone())).with("day", Said::Day(due.date)).with(
                "by",
                Said::Line(Box::new(Line::new("spray-obstacle").with("what", Said::Key(obstacle_key(*obstacle))))),
            ),
        );
    }
    answer.records = moves.into_iter().map(Record::Move).collect();
    answer
}
