//! One bed on the day of asking: its water, the crew's jobs due by now, what was done and seen today. No message asks for
//! it: it is what a card of the bed shows.

use super::answer::{Answer, Outcome};
use super::bed_wait::waits;
use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use super::plots::plot;
use super::subject::subjects;
use super::water::rhythm;
use super::water_bed::BedWater;
use super::water_now;
use crate::garden::{BedId, JobDone, JobKind, Seen, SeenKind};
use crate::knowledge::{Kind, Knowledge};
use crate::needs::year::Year;
use crate::planning::due::{Due, due};
use crate::script::Language;
use crate::understanding::Reading;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// A bed's day.
#[derive(Debug, Clone, PartialEq)]
pub struct BedToday {
    /// The card's lines, its title first.
    pub said: Answer,
    /// Due by now.
    pub due: Vec<Due>,
    /// It wants water now, or nobody noted when it was watered.
    pub thirsty: bool,
}

/// The day of a bed that is among the facts.
#[must_use]
pub fn bed_today(id: &BedId, facts: &Facts<'_>) -> Option<BedToday> {
    let (site, bed) = facts.bed(id)?;
    let today = site.now.date_naive();
    let mut said = Answer::new(Outcome::Answered);
    said.called = called(facts);
    said.lines.push(title(site, bed));
    let mut thirsty = true;
    let mut reading = Reading::blank(Kind::Water, Language::En);
    (reading.beds, reading.beds_named) = (vec![id.clone()], true);
    for subject in subjects(&reading, facts).unwrap_or_default() {
        let Some(water) = BedWater::of(&subject, &reading, facts) else { continue };
        let wet = still_wet(bed, today);
        thirsty = water_now::wants_water(&water) && !wet;
        let now = water_now::lines(&water).into_iter().next().filter(|_| water.last.is_some() && !wet);
        said.lines.extend(now);
        said.lines.push(rhythm(&water));
        said.lines.extend(water.gently());
    }
    let year = Year::around(&site.weather, today);
    let mut due = due(&plot(site, bed, year.as_ref(), facts.known), today);
    let wait = bed.jobs.iter().filter_map(|job| waits(job, facts.known)).filter(|wait| wait.lasts(today));
    if let Some(wait) = wait.max_by_key(|wait| wait.weight()) {
        said.lines.push(wait.line(id));
        due.retain(|due| due.job != JobKind::Pick);
    }
    if due.iter().any(|due| due.job == JobKind::Spray) {
        said.cautions.push(Line::new("caution-spray"));
    }
    if !due.is_empty() {
        let all = due.iter().map(|due| job_due(due.job, due.what.as_deref(), facts.known));
        said.lines.push(Line::new("card-due").with("jobs", list(all)));
    }
    let done = bed.jobs.iter().filter(|job| job.on.date() == today);
    let done = done.map(|job| job_done(job, facts.known));
    let seen = bed.seen.iter().filter(|seen| seen.on.date() == today).map(looked);
    let noted: Vec<Line> = done.chain(seen).collect();
    if !noted.is_empty() {
        said.lines.push(Line::new("card-noted").with("what", list(noted.into_iter())));
    }
    Some(BedToday { said, due, thirsty })
}

/// Whether the last look of today found it still wet, and nobody has watered it since: the eye beats the sum.
fn still_wet(bed: &BedFacts, today: NaiveDate) -> bool {
    let look = bed.seen.iter().filter(|seen| seen.on.date() == today).max_by_key(|seen| seen.on);
    let watered = bed.jobs.iter().filter(|job| job.job == JobKind::Water).map(|job| job.on).max();
    look.is_some_and(|look| look.what == SeenKind::StillWet && watered.is_none_or(|watered| watered <= look.on))
}

/// The site, the bed, and what stands in it.
fn title(site: &SiteFacts<'_>, bed: &BedFacts) -> Line {
    let mut crops: Vec<Said> = Vec::new();
    for planting in bed.standing(site.now.date_naive()) {
        let crop = Said::Crop(planting.crop.clone());
        if !crops.contains(&crop) {
            crops.push(crop);
        }
    }
    let crops = if crops.is_empty() { Said::Key("none") } else { Said::List(crops) };
    Line::new("card-title")
        .with("site", Said::Quoted(site.site.name.clone()))
        .with("bed", Said::Bed(bed.bed.id.clone()))
        .with("crops", crops)
}

/// What people call the beds among the facts, without the name of their site.
pub fn called(facts: &Facts<'_>) -> BTreeMap<String, Vec<String>> {
    let named = |bed: &BedFacts| {
        let mut names = bed.bed.names.clone();
        names.push(bed.bed.id.bed().replace('-', " "));
        (bed.bed.id.to_string(), names)
    };
    facts.beds().map(|(_, bed)| named(bed)).collect()
}

/// A job as it is to be done.
pub fn job_due(job: JobKind, what: Option<&str>, known: &Knowledge) -> Line {
    let key = if job == JobKind::Net && what == Some("down") { "net-down" } else { job.word() };
    Line::new("job-due").with("job", Said::Key(key)).with("what", thing(job, what, known))
}

/// A job as it was done.
pub fn job_done(job: &JobDone, known: &Knowledge) -> Line {
    let what = job.what.as_deref();
    let key = if job.job == JobKind::Net && what == Some("down") { "net-down" } else { job.job.word() };
    let amount = job.amount.map_or(Said::Key("none"), |amount| Said::Size(vec![amount]));
    Line::new("job-done").with("job", Said::Key(key)).with("what", thing(job.job, what, known)).with("amount", amount)
}

/// What was seen.
pub fn looked(seen: &Seen) -> Line {
    Line::new("bed-looked").with("what", Said::Key(seen.what.word()))
}

/// A crop, a material or a mix; of a net nothing: its job says which way it goes.
fn thing(job: JobKind, what: Option<&str>, known: &Knowledge) -> Said {
    let Some(what) = what.filter(|_| job != JobKind::Net) else { return Said::Key("none") };
    if known.crops.contains_key(what) {
        Said::Crop(what.to_owned())
    } else if known.materials.contains_key(what) {
        Said::Material(what.to_owned())
    } else if known.mixes.contains_key(what) {
        Said::Mix(what.to_owned())
    } else {
        Said::Key("none")
    }
}

/// Lines side by side.
pub fn list(lines: impl Iterator<Item = Line>) -> Said {
    Said::List(lines.map(|line| Said::Line(Box::new(line))).collect())
}
