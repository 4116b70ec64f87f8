//! "I did it", "I saw it": work done and things seen, filed.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::subject::which_bed;
use super::water_asked::is_can;
use super::{moves, new_bed};
use crate::garden::rights::may_record;
use crate::garden::{BedId, JobDone, JobKind, Measure, Planting, Record, Seen, Start, When};
use crate::knowledge::{MaterialKind, PartOfDay};
use crate::quantity::{Unit, UnitOf, Written};
use crate::understanding::{InVessels, Reading};
use chrono::{NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, Timelike};
use serde_json::{Value, json};

/// Files the work on the beds that are meant.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if reading.undo {
        return Answer { lines: vec![Line::new("record-undone")], ..Answer::new(Outcome::Answered) };
    }
    if let Some(job) = reading.stays {
        return moves::stays(job, reading, facts);
    }
    if let Some(job) = reading.put_off {
        return moves::answer(job, reading, facts);
    }
    if reading.no_such_day {
        return Answer::ask(Line::new("record-which-day"), Vec::new());
    }
    if reading.on_no_day && reading.days.is_empty() {
        return Answer::ask(Line::new("record-on-which-day"), Vec::new());
    }
    if reading.one_more && !reading.new_bed && reading.did.is_none() && reading.saw.is_none() {
        let known = !reading.crops.is_empty() || reading.bed_kind.is_some();
        return Answer::ask(Line::new(if known { "ask-new-bed-size" } else { "ask-what-bed" }), Vec::new());
    }
    if reading.new_bed {
        return new_bed::answer(reading, facts);
    }
    if reading.did.is_none() && reading.saw.is_none() {
        return what_was_done(reading, facts);
    }
    let Some(asker) = &facts.asker else {
        let line = Line::new("record-stranger");
        return Answer { lines: vec![line], ..Answer::new(Outcome::Declined) };
    };
    let first_day = |today: NaiveDate| reading.days.first().map_or(today, |(day, _)| *day);
    if first_day(facts.today()) > facts.today() && reading.beds.is_empty() {
        return future(first_day(facts.today()));
    }
    let beds = match beds(reading, facts) {
        Ok(beds) => beds,
        Err(question) => return question,
    };
    // Each bed has its own site's day; they differ only where a message names none.
    let today = beds.first().map_or(facts.today(), |bed| facts.now_at(bed).date_naive());
    let on = first_day(today);
    if on > today {
        return future(on);
    }
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
        (Some(job), _) => done(reading, facts, job, &beds),
        (None, _) => Answer::hand_over(Line::new("record-unknown")),
    };
    if reading.corrects && answer.outcome == Outcome::Recorded {
        answer.lines.push(Line::new("record-corrected"));
    }
    answer
}

/// What was done is asked of whoever has beds, where it was not understood; what a stranger tells goes to the crew.
pub(super) fn what_was_done(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let hers = !reading.beds.is_empty() || facts.beds().next().is_some();
    if !hers || facts.asker.is_none() {
        return Answer::hand_over(Line::new("record-unknown"));
    }
    let jobs = [JobKind::Water, JobKind::Feed, JobKind::Spray, JobKind::Pick];
    let choices = jobs.map(|job| Line::new("choice-done").with("job", Said::Key(job.word())));
    Answer::ask(Line::new("ask-what-done"), choices.into_iter().chain([Line::new("choice-person")]).collect())
}

fn future(on: NaiveDate) -> Answer {
    Answer::ask(Line::new("record-future").with("day", Said::Day(on)), Vec::new())
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
pub(super) fn sown(reading: &Reading, facts: &Facts<'_>, beds: &[BedId], on: NaiveDate) -> Answer {
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
fn done(reading: &Reading, facts: &Facts<'_>, job: JobKind, beds: &[BedId]) -> Answer {
    let what = match job {
        JobKind::Net => Some(if reading.net_down { "down" } else { "up" }.to_owned()),
        JobKind::Pick | JobKind::Pull | JobKind::Clear | JobKind::Thin => reading.crops.first().cloned(),
        JobKind::Mix => reading.mixes.first().cloned().or_else(|| material(reading, facts, job)),
        JobKind::Spray | JobKind::Feed | JobKind::TopUp => material(reading, facts, job),
        _ => None,
    };
    let amounts = amounts(reading, job);
    if amounts.len() > 1 && job == JobKind::Pick && beds.len() == amounts.len() && reading.crops.len() == beds.len() {
        return picked_apart(reading, facts, beds, &amounts);
    }
    // Of several weights it is not known which is meant.
    let several = job == JobKind::Pick && amounts.len() > 1;
    let amount = in_vessels(reading, facts, beds).or_else(|| amounts.first().copied().filter(|_| !several));
    let jobs: Vec<JobDone> = beds
        .iter()
        .flat_map(|bed| {
            let once = JobDone { bed: bed.clone(), job, on: When::Day(facts.today()), what: what.clone(), amount };
            times(&once, reading, facts).into_iter().map(move |on| JobDone { on, ..once.clone() })
        })
        .collect();
    let on = jobs.first().map_or(facts.today(), |job| job.on.date());
    let event = event(beds, job, on, what.as_ref(), amount);
    let shown = amount.map_or(Said::Key("none"), |amount| Said::Size(vec![amount]));
    let line = Line::new("recorded-job").with("job", Said::Key(job.word())).with("amount", shown);
    let mut answer = filed(line, beds, on, event, jobs.into_iter().map(Record::Job).collect());
    if several {
        answer.lines.push(Line::new("record-which-amount"));
    }
    let counted = reading.vessels.as_ref().filter(|vessels| vessels.count.is_some());
    if let Some(vessels) = counted.filter(|_| job == JobKind::Water && amount.is_none()) {
        answer.lines.push(Line::new("record-vessel-unknown").with("word", Said::Quoted(vessels.word.clone())));
    }
    answer
}

/// What was poured in vessels of a known size: "two 10 L cans", "half a can" where the site has one.
fn in_vessels(reading: &Reading, facts: &Facts<'_>, beds: &[BedId]) -> Option<Written> {
    let vessels = reading.vessels.as_ref()?;
    let can = || {
        let (site, _) = facts.bed(beds.first()?)?;
        site.site.can.map(Measure::written).filter(|_| is_can(&vessels.word))
    };
    InVessels { holds: vessels.holds.or_else(can), ..vessels.clone() }.amount()
}

/// When a job was done: in the parts of its day that were told, else on that day, else now. A bed may be watered
/// twice a day, a net go up and come down, so theirs are moments.
fn times(job: &JobDone, reading: &Reading, facts: &Facts<'_>) -> Vec<When> {
    let now = facts.now_at(&job.bed).naive_local().with_nanosecond(0).unwrap_or_default();
    let named = reading.days.first().map(|(day, _)| *day);
    let by_the_hour = matches!(job.job, JobKind::Water | JobKind::Net);
    match (named, reading.parts_of_day.as_slice()) {
        (_, parts @ [_, ..]) if by_the_hour => {
            parts.iter().map(|part| When::Moment(moment(*part, named, now))).collect()
        }
        (Some(day), _) => vec![When::Day(day)],
        (None, _) if by_the_hour => vec![told_already(job, facts, now).unwrap_or(When::Moment(now))],
        (None, _) => vec![When::Day(now.date())],
    }
}

/// The hour that counts for a part of a day, not later than now. Told of no day, a part that has not begun is
/// that of the day before: "in the evening", said at breakfast.
fn moment(part: PartOfDay, named: Option<NaiveDate>, now: NaiveDateTime) -> NaiveDateTime {
    let hour = |hours: f64| TimeDelta::seconds((hours * 3600.0) as i64);
    let at = |day: NaiveDate, hours: f64| day.and_time(NaiveTime::MIN) + hour(hours);
    let day = named.unwrap_or_else(|| {
        let begun = now >= at(now.date(), part.from_h);
        if begun { now.date() } else { now.date().pred_opt().unwrap_or(now.date()) }
    });
    at(day, part.counts_h).min(now)
}

/// The same told within the hour, with no hour of its own either, is the same work told again.
fn told_already(job: &JobDone, facts: &Facts<'_>, now: NaiveDateTime) -> Option<When> {
    const AGAIN: TimeDelta = TimeDelta::hours(1);
    let (_, bed) = facts.bed(&job.bed)?;
    let same = |done: &&JobDone| (done.job, &done.what, done.amount) == (job.job, &job.what, job.amount);
    let latest = bed.jobs.iter().filter(|done| done.job == job.job).filter_map(|done| match done.on {
        When::Moment(moment) if moment <= now && now - moment < AGAIN => Some((moment, done)),
        _ => None,
    });
    // A net that went up, came down and goes up again within the hour went up twice.
    let (_, latest) = latest.max_by_key(|(moment, _)| *moment)?;
    Some(latest).filter(same).map(|done| done.on)
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

/// "1 kg tomatoes and 200 g chillies": each weight is of its own crop, in the order told, where each stands in one bed.
fn picked_apart(reading: &Reading, facts: &Facts<'_>, beds: &[BedId], amounts: &[Written]) -> Answer {
    let holds = |bed: &BedId, crop: &str| {
        facts
            .bed(bed)
            .is_some_and(|(_, found)| found.standing(facts.today()).iter().any(|planting| planting.crop == crop))
    };
    let mut whole: Option<Answer> = None;
    for (crop, amount) in reading.crops.iter().zip(amounts) {
        let of_it: Vec<BedId> = beds.iter().filter(|bed| holds(bed, crop)).cloned().collect();
        let [_] = of_it.as_slice() else { return which_bed(beds) };
        let one = Reading { crops: vec![crop.clone()], quantities: vec![*amount], ..reading.clone() };
        let told = done(&one, facts, JobKind::Pick, &of_it);
        whole = Some(match whole {
            Some(before) => before.joined(told),
            None => told,
        });
    }
    whole.unwrap_or_else(|| which_bed(beds))
}

/// The amounts of a job: weights or volumes, not lengths.
fn amounts(reading: &Reading, job: JobKind) -> Vec<Written> {
    let fits = |written: &&Written| match job {
        JobKind::Pick => written.unit.measures() == UnitOf::Mass,
        JobKind::Water => written.unit.measures() == UnitOf::Volume,
        // Of a net, the light it cuts.
        JobKind::Net => written.unit == Unit::Percent && (1.0..=95.0).contains(&written.value),
        _ => matches!(written.unit.measures(), UnitOf::Mass | UnitOf::Volume),
    };
    reading.quantities.iter().filter(fits).copied().collect()
}

fn job_done(bed: &BedId, job: JobKind, on: NaiveDate, what: Option<String>, amount: Option<Written>) -> JobDone {
    JobDone { bed: bed.clone(), job, on: When::Day(on), what, amount }
}

/// The fields of a job as a garden file has them, with all its beds.
fn event(beds: &[BedId], job: JobKind, on: NaiveDate, what: Option<&String>, amount: Option<Written>) -> Value {
    let mut event = json!({"beds": names(beds), "job": job.word(), "on": on.to_string()});
    if let Some(what) = what {
        event["what"] = json!(what);
    }
    if let Some(amount) = amount {
        event["amount"] = json!(amount.to_string());
    }
    event
}

fn filed(line: Line, beds: &[BedId], on: NaiveDate, event: Value, records: Vec<Record>) -> Answer {
    let mut answer = Answer::new(Outcome::Recorded);
    let beds = beds.iter().map(|bed| Said::Bed(bed.clone())).collect();
    answer.lines.push(line.with("beds", Said::List(beds)).with("day", Said::Day(on)));
    answer.figures.push(Figure { name: "event".to_owned(), is: FigureValue::Structure(event), bed: None, crop: None });
    answer.records = records;
    answer
}
