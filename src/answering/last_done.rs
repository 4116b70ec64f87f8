//! "When did I last spray?", "who watered yesterday?": what the records have.

use super::answer::{Answer, Outcome};
use super::facts::{BedFacts, Facts};
use super::line::{Line, Said};
use crate::garden::{BedId, JobDone, JobKind};
use crate::knowledge::{Kind, Point, SourceRef};
use crate::understanding::Reading;

/// At most so many beds are told of.
const BEDS: usize = 4;

/// What is on record, where that is asked; `rest` is what is to be told besides of the one bed that is meant.
pub fn answer(reading: &Reading, facts: &Facts<'_>, rest: impl FnOnce() -> Answer) -> Option<Answer> {
    let asked_of_ours = reading.points.contains(&Point::LastDone) && reading.asks && reading.kind != Kind::None;
    // "Last fed on 4 May, next?" tells when, and asks for the day after.
    let has = |point| reading.points.contains(&point);
    let told = reading.did.is_some() && !reading.days.is_empty() && has(Point::Time) && !has(Point::Who);
    if !asked_of_ours || told {
        return None;
    }
    let asked = [JobKind::Spray, JobKind::Feed, JobKind::Water, JobKind::Pick];
    let job = reading.did.or_else(|| asked.into_iter().find(|job| reading.jobs.contains(job)))?;
    let meant = |bed: &BedFacts| reading.beds.is_empty() || reading.beds.contains(&bed.bed.id);
    let beds: Vec<&BedFacts> = facts.beds().map(|(_, bed)| bed).filter(|bed| meant(bed)).collect();
    let mut lines: Vec<Line> = beds.iter().take(BEDS).map(|bed| last(bed, job)).collect();
    if lines.is_empty() {
        return None;
    }
    if reading.points.contains(&Point::Who) {
        lines.push(Line::new("last-who"));
    }
    let besides = matches!(job, JobKind::Spray | JobKind::Feed | JobKind::Water) && reading.beds.len() == 1;
    let mut answer = if besides { rest() } else { Answer::new(Outcome::Answered) };
    if answer.outcome != Outcome::Answered {
        answer = Answer::new(Outcome::Answered);
    }
    answer.cite(&SourceRef::new("common-practice", "the bed's own records"));
    lines.append(&mut answer.lines);
    answer.lines = lines;
    Some(answer)
}

fn last(bed: &BedFacts, job: JobKind) -> Line {
    let done: Option<&JobDone> = bed.jobs.iter().filter(|done| done.job == job).max_by_key(|done| done.on.date());
    let line =
        |phrase, id: &BedId| Line::new(phrase).with("bed", Said::Bed(id.clone())).with("job", Said::Key(job.word()));
    match done {
        Some(done) => {
            let amount = done.amount.map_or(Said::Key("none"), |amount| Said::Size(vec![amount]));
            line("last-done", &bed.bed.id).with("day", Said::Day(done.on.date())).with("amount", amount)
        }
        None => line("last-none", &bed.bed.id),
    }
}
