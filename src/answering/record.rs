//! "I did it", "I saw it": work done and things seen, filed.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::new_bed;
use super::subject::which_bed;
use crate::garden::rights::may_record;
use crate::garden::{BedId, JobDone, JobKind, Planting, Record, Seen, Start, When};
use crate::knowledge::MaterialKind;
use crate::quantity::{UnitOf, Written};
use crate::understanding::Reading;
use chrono::Timelike;
use serde_json::{Value, json};

/// Files the work on the beds that are meant.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if reading.new_bed {
        return new_bed::answer(reading, facts);
    }
    if reading.did.is_none() && reading.saw.is_none() {
        return Answer::hand_over(Line::new("record-unknown"));
    }
    let Some(asker) = &facts.asker else {
        let line = Line::new("record-stranger");
        return Answer { lines: vec![line], ..Answer::new(Outcome::Declined) };
    };
    let on = reading.days.first().map_or_else(|| facts.today(), |(day, _)| *day);
    if on > facts.today() {
        return Answer::ask(Line::new("record-future").with("day", Said::Day(on)), Vec::new());
    }
    let beds = match beds(reading, facts) {
        Ok(beds) => beds,
        Err(question) => return question,
    };
    if let Some(bed) = beds.iter().find(|bed| !may_record(Some(asker), bed)) {
        let line = Line::new("record-not-yours").with("bed", Said::Bed(bed.clone()));
        return Answer { lines: vec![line], ..Answer::new(Outcome::Declined) };
    }
    let mut answer = match (reading.did, reading.saw) {
        (_, Some(saw)) if reading.did.is_none() => {
            let seen = beds.iter().map(|bed| Seen { bed: bed.clone(), on: When::Day(on), what: saw });
            let event = json!({"beds": names(&beds), "on": on.to_string(), "what": saw.word()});
            let records = seen.map(Record::Seen).collect();
            let line = Line::new("recorded-seen").with("what", Said::Key(saw.word()));
            filed(line, &beds, on, event, records)
        }
        (Some(JobKind::Sow | JobKind::Plant), _) => sown(reading, facts, &beds, on),
        (Some(job), _) => done(reading, facts, job, &beds, on),
        (None, _) => Answer::hand_over(Line::new("record-unknown")),
    };
    if reading.corrects && answer.outcome == Outcome::Recorded {
        answer.lines.push(Line::new("record-corrected"));
    }
    answer
}

/// Named beds; else those of the crop or kind; else the only one. Sowing needs a bed of its own.
fn beds(reading: &Reading, facts: &Facts<'_>) -> Result<Vec<BedId>, Answer> {
    let all: Vec<BedId> = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
    let sowing = matches!(reading.did, Some(JobKind::Sow | JobKind::Plant));
    let usable = reading.beds_named || reading.all_beds || !sowing && !reading.crops.is_empty();
    match (reading.beds.as_slice(), all.as_slice()) {
        ([_], _) => Ok(reading.beds.clone()),
        ([_, ..], _) if usable => Ok(reading.beds.clone()),
        ([_, ..], _) => Err(which_bed(&reading.beds)),
        ([], [only]) => Ok(vec![only.clone()]),
        ([], []) => Err(Answer::hand_over(Line::new("record-no-bed"))),
        ([], _) => Err(which_bed(&all)),
    }
}

fn names(beds: &[BedId]) -> Vec<String> {
    beds.iter().map(BedId::to_string).collect()
}

/// A new planting, and the job that made it.
fn sown(reading: &Reading, facts: &Facts<'_>, beds: &[BedId], on: chrono::NaiveDate) -> Answer {
    let Some(crop) = reading.crops.first() else {
        return Answer::ask(Line::new("record-which-crop"), Vec::new());
    };
    let planted = reading.did == Some(JobKind::Plant);
    let (job, start) = if planted { (JobKind::Plant, Start::Planted(on)) } else { (JobKind::Sow, Start::Sown(on)) };
    let mut records = Vec::new();
    for bed in beds {
        let on_tray = facts.bed(bed).is_some_and(|(_, facts)| facts.bed.mix_counted() == "tray");
        let can = facts.known.crops.get(crop).is_some_and(|crop| crop.microgreen.is_some());
        let microgreen = can && (reading.microgreen || on_tray);
        let plants = reading.count.filter(|count| *count >= 1.0 && *count <= 10_000.0).map(|count| count as u32);
        records.push(Record::Planting(Planting { bed: bed.clone(), crop: crop.clone(), microgreen, start, plants }));
        records.push(Record::Job(job_done(bed, job, on, Some(crop.clone()), None)));
    }
    let event = event(beds, job, on, Some(crop), None);
    let line = Line::new("recorded-sown")
        .with("how", Said::Key(if planted { "planted" } else { "sown" }))
        .with("crop", Said::Crop(crop.clone()));
    filed(line, beds, on, event, records)
}

/// Any other job.
fn done(reading: &Reading, facts: &Facts<'_>, job: JobKind, beds: &[BedId], on: chrono::NaiveDate) -> Answer {
    let what = match job {
        JobKind::Net => Some(if reading.net_down { "down" } else { "up" }.to_owned()),
        JobKind::Pick | JobKind::Pull | JobKind::Clear | JobKind::Thin => reading.crops.first().cloned(),
        JobKind::Spray | JobKind::Feed | JobKind::TopUp | JobKind::Mix => material(reading, facts, job),
        _ => None,
    };
    let amount = amount(reading, job);
    // A bed may be watered twice a day: without a day of its own, it was done now.
    let now = job == JobKind::Water && reading.days.is_empty();
    let when =
        if now { When::Moment(facts.now.naive_local().with_nanosecond(0).unwrap_or_default()) } else { When::Day(on) };
    let records = beds
        .iter()
        .map(|bed| Record::Job(JobDone { on: when, ..job_done(bed, job, on, what.clone(), amount) }))
        .collect();
    let event = event(beds, job, on, what.as_ref(), amount);
    let shown = amount.map_or(Said::Key("none"), |amount| Said::Size(vec![amount]));
    let line = Line::new("recorded-job").with("job", Said::Key(job.word())).with("amount", shown);
    filed(line, beds, on, event, records)
}

/// The material of a job, if one of its sort was named.
fn material(reading: &Reading, facts: &Facts<'_>, job: JobKind) -> Option<String> {
    let fits = |kind: MaterialKind| match job {
        JobKind::Spray => matches!(kind, MaterialKind::Spray),
        JobKind::Feed => matches!(kind, MaterialKind::Feed | MaterialKind::Meal | MaterialKind::Compost),
        _ => true,
    };
    let known = |id: &&String| facts.known.materials.get(*id).is_some_and(|material| fits(material.kind));
    reading.materials.iter().find(known).cloned()
}

/// The amount of a job: a weight or a volume, not a length.
fn amount(reading: &Reading, job: JobKind) -> Option<Written> {
    let fits = |written: &&Written| match job {
        JobKind::Pick => written.unit.measures() == UnitOf::Mass,
        JobKind::Water => written.unit.measures() == UnitOf::Volume,
        _ => matches!(written.unit.measures(), UnitOf::Mass | UnitOf::Volume),
    };
    reading.quantities.iter().find(fits).copied()
}

fn job_done(
    bed: &BedId,
    job: JobKind,
    on: chrono::NaiveDate,
    what: Option<String>,
    amount: Option<Written>,
) -> JobDone {
    JobDone { bed: bed.clone(), job, on: When::Day(on), what, amount }
}

/// The fields of a job as a garden file has them, with all its beds.
fn event(beds: &[BedId], job: JobKind, on: chrono::NaiveDate, what: Option<&String>, amount: Option<Written>) -> Value {
    let mut event = json!({"beds": names(beds), "job": job.word(), "on": on.to_string()});
    if let Some(what) = what {
        event["what"] = json!(what);
    }
    if let Some(amount) = amount {
        event["amount"] = json!(amount.to_string());
    }
    event
}

fn filed(line: Line, beds: &[BedId], on: chrono::NaiveDate, event: Value, records: Vec<Record>) -> Answer {
    let mut answer = Answer::new(Outcome::Recorded);
    let beds = beds.iter().map(|bed| Said::Bed(bed.clone())).collect();
    answer.lines.push(line.with("beds", Said::List(beds)).with("day", Said::Day(on)));
    answer.figures.push(Figure { name: "event".to_owned(), is: FigureValue::Structure(event), bed: None, crop: None });
    answer.records = records;
    answer
}
