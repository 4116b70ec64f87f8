//! "What beds do I have, what grows in the east box?"

use super::answer::{Answer, Outcome};
use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use crate::garden::{BedId, Planting, Shape, Start};
use crate::knowledge::Point;
use crate::understanding::Reading;

/// So many beds are told one by one; the rest is counted.
const TOLD: usize = 8;

/// The beds a person may see, each with its size and what grows in it, where that is asked.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    if !reading.points.iter().any(|point| matches!(point, Point::OwnBeds | Point::Stands)) {
        return None;
    }
    let named = |bed: &BedId| !reading.beds_named || reading.beds.contains(bed);
    let there = |site: &SiteFacts<'_>| reading.sites.is_empty() || reading.sites.contains(&site.site.id);
    let all: Vec<_> = facts.beds().filter(|(site, bed)| named(&bed.bed.id) && there(site)).collect();
    if all.is_empty() {
        return Some(Answer::ask(Line::new("ask-what-bed"), Vec::new()));
    }
    let mut answer = Answer::new(Outcome::Answered);
    for (site, bed) in all.iter().take(TOLD) {
        answer.lines.push(one(site, bed));
    }
    let rest = all.len().saturating_sub(TOLD);
    if rest > 0 {
        answer.lines.push(Line::new("beds-more").with("count", Said::Count(i64::try_from(rest).unwrap_or(i64::MAX))));
    }
    Some(answer)
}

fn one(site: &SiteFacts<'_>, bed: &BedFacts) -> Line {
    let size = match &bed.bed.shape {
        Shape::Box { length, width, depth } => vec![length.written(), width.written(), depth.written()],
        Shape::Round { diameter, .. } => vec![diameter.written()],
        Shape::Bag { volume, .. } => vec![volume.written()],
    };
    let standing = bed.standing(site.now.date_naive());
    let line = Line::new(if standing.is_empty() { "bed-empty" } else { "bed-stands" })
        .with("bed", Said::Bed(bed.bed.id.clone()))
        .with("size", Said::Size(size));
    if standing.is_empty() {
        return line;
    }
    line.with("crops", Said::List(standing.into_iter().map(planting).collect()))
}

fn planting(planting: &Planting) -> Said {
    let (how, day) = match planting.start {
        Start::Sown(day) => ("sown", day),
        Start::Planted(day) => ("planted", day),
    };
    let line = Line::new("bed-planting").with("crop", Said::Crop(planting.crop.clone()));
    Said::Line(Box::new(line.with("how", Said::Key(how)).with("day", Said::SeasonDay(day))))
}
