//! "New box, 4 by 3 ft, a foot deep": a bed that is told, filed under a name of its own.

use super::answer::{Answer, Outcome};
use super::facts::{Facts, SiteFacts};
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::record;
use super::subject::{depth_written, described_bed};
use crate::garden::rights::may_record;
use crate::garden::{Bed, BedId, JobKind, Record, Shape, SiteId};
use crate::needs::sun_span::sun_hours_between;
use crate::needs::surroundings::vessel;
use crate::quantity::Written;
use crate::understanding::Reading;
use serde_json::json;

/// A bed larger than this was meant otherwise (judgement: metres said for feet).
const LARGEST_M2: f64 = 20.0;

/// Files the bed at the one site that is meant.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if facts.asker.is_none() {
        return Answer { lines: vec![Line::new("record-stranger")], ..Answer::new(Outcome::Declined) };
    }
    if reading.someone_else && reading.sites.is_empty() {
        return Answer { lines: vec![Line::new("new-bed-not-yours")], ..Answer::new(Outcome::Declined) };
    }
    let site = match site(reading, facts) {
        Ok(site) => site,
        Err(question) => return question,
    };
    let Some((described, depth_assumed)) = described_bed(reading) else {
        return Answer::hand_over(Line::new("record-unknown"));
    };
    let ids = told_before(reading, site, &described)
        .map_or_else(|| free_ids(site, &described, reading.beds_told.unwrap_or(1)), |told| vec![told]);
    let Some(id) = ids.first().cloned() else { return Answer::hand_over(Line::new("record-unknown")) };
    if !may_record(facts.asker.as_ref(), &id) {
        let line = Line::new("record-not-yours").with("bed", Said::Bed(id));
        return Answer { lines: vec![line], ..Answer::new(Outcome::Declined) };
    }
    // Two beds of one name could not be told apart.
    let taken =
        |name: &String| site.beds.iter().any(|bed| bed.bed.names.iter().any(|other| other.eq_ignore_ascii_case(name)));
    let own = reading.called.clone().filter(|name| ids.len() == 1 && !taken(name));
    let called = |id: &BedId| own.clone().unwrap_or_else(|| id.bed().replace('-', " "));
    let names: Vec<String> = ids.iter().map(called).collect();
    if vessel(&described.shape).measures().top.as_square_metres() > LARGEST_M2 {
        return Answer::ask(Line::new("new-bed-odd-size"), Vec::new());
    }
    let sun_hours = sun_hours(reading, site);
    let filed = |id: &BedId| Bed {
        names: vec![called(id)],
        sun_hours,
        ..Bed::bare(id.clone(), described.kind, described.shape)
    };
    let bed = filed(&id);
    let all: Vec<String> = ids.iter().map(BedId::to_string).collect();
    let mut event =
        json!({"beds": all, "site": id.site().to_string(), "kind": bed.kind.word(), "names": names.clone()});
    for (key, written) in measures(&bed) {
        event[key] = json!(written.to_string());
    }
    let mut answer = Answer::new(Outcome::Recorded);
    answer.lines.push(
        Line::new("recorded-bed")
            .with("name", Said::Quoted(names.join(", ")))
            .with("size", Said::Size(measures(&bed).into_iter().map(|(_, written)| written).collect())),
    );
    if depth_assumed {
        let depth = depth_written(&bed).into_iter().collect();
        answer.lines.push(Line::new("recorded-bed-depth").with("size", Said::Size(depth)));
    }
    answer.lines.push(match sun_hours {
        Some(hours) => Line::new("recorded-bed-rest").with("sun", Said::Number(hours, 0)),
        None => Line::new("recorded-bed-rest").with("sun", Said::Number(6.0, 0)),
    });
    if let Some(hours) = sun_hours {
        event["sun_hours"] = json!(hours);
    }
    answer.figures.push(Figure { name: "event".to_owned(), is: FigureValue::Structure(event), bed: None, crop: None });
    answer.records.extend(ids.iter().map(|id| Record::Bed(filed(id))));
    with_crop(&mut answer, &ids, reading, facts);
    answer
}

/// What was told of the crop in it: sown or planted it is noted with the bed; else it is asked for, since its days count
/// from there.
fn with_crop(answer: &mut Answer, beds: &[BedId], reading: &Reading, facts: &Facts<'_>) {
    let ([crop], [bed, ..]) = (reading.crops.as_slice(), beds) else { return };
    let today = facts.now_at(bed).date_naive();
    let on = reading.days.first().map_or(today, |(day, _)| *day);
    if !matches!(reading.did, Some(JobKind::Sow | JobKind::Plant)) || on > today {
        answer.lines.push(Line::new("recorded-bed-crop").with("crop", Said::Crop(crop.clone())));
        return;
    }
    let sown = record::sown(reading, facts, beds, on);
    answer.figures.extend(sown.figures);
    answer.records.extend(sown.records);
    // The bed has no name of its own in the store yet.
    answer.lines.push(
        Line::new("recorded-bed-sown")
            .with("how", Said::Key(if reading.did == Some(JobKind::Plant) { "planted" } else { "sown" }))
            .with("crop", Said::Crop(crop.clone()))
            .with("day", Said::Day(on)),
    );
}

/// Hours of sun that were told, or those between the hours of the clock that were, on the day of telling.
fn sun_hours(reading: &Reading, site: &SiteFacts<'_>) -> Option<f64> {
    let clock = (reading.sun_from_h, reading.sun_until_h);
    if clock == (None, None) {
        return reading.sun_hours;
    }
    let place = (site.site.latitude_deg, site.site.longitude_deg);
    let hours = sun_hours_between(place, site.site.timezone, site.now.date_naive(), clock)?;
    // A tenth of an hour is as near as "till two" says.
    Some((hours * 10.0).round() / 10.0)
}

/// The site named, else the only one; asked back where several could be meant.
fn site<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Result<&'a SiteFacts<'a>, Answer> {
    let named = |site: &&SiteFacts<'_>| reading.sites.contains(&site.site.id);
    match facts.sites.as_slice() {
        [] => Err(Answer::hand_over(Line::new("record-no-bed"))),
        [only] => Ok(only),
        several => several.iter().find(named).ok_or_else(|| {
            let sites = several.iter().take(4);
            let choices = sites.map(|site| Line::new("choice-site").with("site", Said::Quoted(site.site.name.clone())));
            Answer::ask(Line::new("ask-which-site"), choices.collect())
        }),
    }
}

/// The bed that was just filed under a name made for it, and is now called by its own.
fn told_before(reading: &Reading, site: &SiteFacts<'_>, described: &Bed) -> Option<BedId> {
    let called = reading.follow_up && reading.called.is_some();
    let unnamed = |bed: &Bed| bed.names == [bed.id.bed().replace('-', " ")];
    let same = |bed: &&Bed| bed.kind == described.kind && bed.shape == described.shape && unnamed(bed);
    site.beds.iter().map(|plot| &plot.bed).filter(|_| called).rfind(same).map(|bed| bed.id.clone())
}

/// `box-2` where there is a box already; a number is never given twice.
fn free_ids(site: &SiteFacts<'_>, described: &Bed, how_many: u32) -> Vec<BedId> {
    let here: &SiteId = &site.site.id;
    (2..1_000)
        .filter_map(|number| BedId::at(here, &format!("{}-{number}", described.kind.word())).ok())
        .filter(|id| site.beds.iter().all(|bed| bed.bed.id != *id))
        .take(how_many as usize)
        .collect()
}

/// Its measures as they were written.
pub fn measures(bed: &Bed) -> Vec<(&'static str, Written)> {
    match &bed.shape {
        Shape::Box { length, width, depth } => {
            vec![("length", length.written()), ("width", width.written()), ("depth", depth.written())]
        }
        Shape::Round { diameter, depth } => vec![("diameter", diameter.written()), ("depth", depth.written())],
        Shape::Bag { volume, depth } => {
            let depth = depth.map(|depth| ("depth", depth.written()));
            [Some(("volume", volume.written())), depth].into_iter().flatten().collect()
        }
    }
}
