//! What can go in now, and what waits; what follows a crop in its bed.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::line::{Line, Said};
use super::sow::{Asked, caution_heat};
use super::sow_crop::{figures, pieces};
use super::sow_working::days;
use super::subject::{Subject, subjects};
use crate::garden::BedKind;
use crate::knowledge::{Crop, GrownFor, SourceRef};
use crate::needs::season::{Fits, Outlook, Way, outlook, usual_way};
use crate::understanding::Reading;
use std::collections::BTreeSet;

/// So many crops are told of each sort.
const TOLD_NOW: usize = 6;
const TOLD_WAITING: usize = 4;

/// A crop with its outlook.
type Choice<'a> = (&'a Crop, Outlook);

/// The crops that fit, most margin first; those that wait, soonest first.
pub fn answer(reading: &Reading, facts: &Facts<'_>, asked: &Asked<'_>) -> Answer {
    let bed = bed_meant(reading, facts);
    let before = families_before(reading, facts, bed.as_ref());
    let on_tray = bed.as_ref().is_some_and(|bed| bed.bed.kind == BedKind::Tray) || reading.microgreen;
    let follows = reading.follows && bed.is_some();
    let fits_bed = |crop: &Crop| {
        let Some(bed) = &bed else { return lit(crop, reading) };
        let deep = bed.bed.shape.depth().is_none_or(|depth| depth >= crop.bed.depth.is.low());
        deep && bed.sun_hours >= crop.bed.sun_hours.is.low()
    };
    // Trees and shrubs are asked for by name.
    let bedded = |crop: &Crop| !crop.stands_alone() || facts.known.usual_crops.contains(&crop.id);
    let wanted = |crop: &&Crop| bedded(crop) && (!follows || !before.contains(crop.family.as_str()));
    let in_bed: Vec<Choice<'_>> = facts
        .known
        .crops
        .values()
        .filter(|crop| !on_tray && crop.grown_for != GrownFor::Shoot && fits_bed(crop))
        .filter(wanted)
        .map(|crop| (crop, outlook(crop, usual_way(crop, false), &asked.year)))
        .collect();
    let trays: Vec<Choice<'_>> = facts
        .known
        .crops
        .values()
        .filter(|crop| crop.microgreen.is_some() && (on_tray || bed.is_none()))
        .map(|crop| (crop, outlook(crop, Way::Tray, &asked.year)))
        .filter(|(_, outlook)| outlook.fits == Fits::Yes)
        .collect();
    let mut answer = Answer::new(Outcome::Answered);
    told(&mut answer, bed.as_ref(), (in_bed, trays), asked, follows.then_some(reading));
    if follows {
        answer.lines.push(Line::new("sow-other-family"));
        answer.cite(&SourceRef::new("common-practice", "another family after each crop"));
    }
    if asked.elsewhere
        && let Some((place, _)) = asked.weather.normals()
    {
        answer.lines.push(Line::new("sow-reckoned-for").with("place", Said::Place(place.id.clone())));
    }
    answer.working.push(Line::new("working-sow-list"));
    days(&mut answer, asked);
    caution_heat(&mut answer, asked, asked.day);
    answer
}

/// Whether so many hours of sun as were told do for a crop.
fn lit(crop: &Crop, reading: &Reading) -> bool {
    reading.sun_hours.is_none_or(|hours| hours >= crop.bed.sun_hours.is.low())
}

/// The one bed that was named, or in which the crop stands that is to be followed.
fn bed_meant<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Option<Subject<'a>> {
    if !reading.beds_named && !reading.follows && reading.measures.is_empty() && reading.beds.len() != 1 {
        return None;
    }
    subjects(reading, facts).ok()?.into_iter().next()
}

/// Families of what stood in the bed: pests and diseases of the soil wait for the next of them.
fn families_before<'a>(reading: &Reading, facts: &'a Facts<'_>, bed: Option<&'a Subject<'_>>) -> BTreeSet<&'a str> {
    let named = reading.crops.iter().filter_map(|id| facts.known.crops.get(id));
    let standing = bed.into_iter().flat_map(|bed| bed.standing.iter().map(|standing| standing.crop));
    named.chain(standing).map(|crop| crop.family.as_str()).collect()
}

fn told(
    answer: &mut Answer,
    bed: Option<&Subject<'_>>,
    (in_bed, mut trays): (Vec<Choice<'_>>, Vec<Choice<'_>>),
    asked: &Asked<'_>,
    follows: Option<&Reading>,
) {
    let (mut now, mut later): (Vec<_>, Vec<_>) = in_bed.into_iter().partition(|(_, outlook)| outlook.fits == Fits::Yes);
    let most_margin = |a: &Choice<'_>, b: &Choice<'_>| b.1.margin_k.total_cmp(&a.1.margin_k);
    now.sort_by(most_margin);
    trays.sort_by(most_margin);
    later.retain(|(_, outlook)| outlook.window.is_some());
    later.sort_by_key(|(_, outlook)| outlook.window.map(|window| window.from.value()));
    let place = match (bed, follows) {
        (Some(_), Some(_)) => "follows",
        (Some(_), None) => "bed",
        (None, _) => "roof",
    };
    let crop = follows.and_then(|reading| reading.crops.first()).cloned();
    let head = |phrase: &'static str| {
        let line = Line::new(phrase)
            .with("place", Said::Key(if place == "follows" && crop.is_none() { "bed" } else { place }))
            .with("when", Said::Key(if asked.day == asked.today { "today" } else { "day" }))
            .with("day", Said::Day(asked.day));
        let line = bed.map_or(line.clone(), |bed| line.with("bed", bed.called()));
        crop.clone().map_or(line.clone(), |crop| line.with("crop", Said::Crop(crop)))
    };
    now.truncate(TOLD_NOW);
    if !now.is_empty() {
        let list = now.iter().map(|(crop, outlook)| item(crop, outlook, asked)).collect();
        answer.lines.push(head("sow-now").with("crops", Said::List(list)));
    }
    if !trays.is_empty() {
        let list = trays.iter().take(TOLD_NOW).map(|(crop, _)| Said::Crop(crop.id.clone())).collect();
        answer.lines.push(Line::new("sow-now-trays").with("crops", Said::List(list)));
    }
    if now.is_empty() && trays.is_empty() {
        answer.lines.push(head("sow-nothing"));
    }
    later.truncate(TOLD_WAITING);
    if !later.is_empty() {
        let list = later.iter().filter_map(|(crop, outlook)| waiting(crop, outlook, asked)).collect();
        answer.lines.push(Line::new("sow-waits").with("crops", Said::List(list)));
    }
    for (crop, outlook) in now.iter().chain(&later) {
        figures(answer, crop, outlook, true);
        answer.cite(&crop.heat.day_limit.source);
        answer.cite(&crop.harvest.first.source);
    }
}

/// A crop that fits, with the end of its window.
fn item(crop: &Crop, outlook: &Outlook, asked: &Asked<'_>) -> Said {
    let line = Line::new("sow-item").with("crop", Said::Crop(crop.id.clone()));
    let window = outlook.window.filter(|window| !window.whole_year);
    let way = match outlook.way {
        Way::Seedbed => "seedbed",
        Way::Pieces(_) => "pieces",
        _ => "bed",
    };
    let line = line.with("way", Said::Key(way)).with("pieces", pieces(outlook.way));
    Said::Line(Box::new(match window {
        Some(window) => line.with("ends", Said::Key("day")).with("until", asked.season_day(window.until.value())),
        None => line.with("ends", Said::Key("year")),
    }))
}

/// A crop that waits, with the day its window opens.
fn waiting(crop: &Crop, outlook: &Outlook, asked: &Asked<'_>) -> Option<Said> {
    let line = Line::new("sow-waiting")
        .with("crop", Said::Crop(crop.id.clone()))
        .with("from", asked.season_day(outlook.window?.from.value()));
    Some(Said::Line(Box::new(line)))
}
