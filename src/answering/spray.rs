//! "When is the next spray, how strong, safe to pick after?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::handed_over::not_known;
use super::line::{Line, Said};
use super::subject::{Subject, subjects};
use super::{spray_product, spray_time};
use crate::garden::{BedKind, JobKind};
use crate::knowledge::{Kind, Material, MaterialKind, Point, SourceRef};
use crate::quantity::{Unit, Volume};
use crate::understanding::Reading;

/// First what must not be done, then what was asked: the wait, the strength, the day and its hours.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let mut answer = of_points(reading, facts);
    if !answer.cautions.iter().any(|line| line.phrase == "caution-spray") && answer.outcome != Outcome::Declined {
        answer.cautions.push(Line::new("caution-spray"));
    }
    answer
}

fn of_points(reading: &Reading, facts: &Facts<'_>) -> Answer {
    match not_now(reading) {
        Some(no) => Answer { lines: vec![Line::new(no)], ..Answer::new(Outcome::Answered) },
        None => of_product(reading, facts),
    }
}

/// Bees on open flowers, or the heat of the day: no, whatever the product.
fn not_now(reading: &Reading) -> Option<&'static str> {
    let has = |point: Point| reading.points.contains(&point);
    let when = reading.asks && !has(Point::Wait) && !has(Point::Strength);
    match (has(Point::Bees), has(Point::Midday)) {
        (true, _) if when => Some("spray-not-on-bees"),
        (_, true) if when => Some("spray-not-at-noon"),
        _ => None,
    }
}

fn of_product(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let has = |point: Point| reading.points.contains(&point);
    let synthetic = has(Point::SyntheticSpray) || sprays(reading, facts).any(|material| material.spray.is_none());
    let unnamed = sprays(reading, facts).next().is_none();
    let several = sprays(reading, facts).count() > 1 || synthetic && product(reading, facts).is_some();
    if several && (has(Point::Together) || synthetic) {
        return together(reading, facts, synthetic);
    }
    let of_nothing = unnamed && reading.troubles.is_empty() && reading.signs.is_empty();
    if has(Point::WhichSpray)
        && of_nothing
        && !reading.follow_up
        && !synthetic
        && !has(Point::Strength)
        && !has(Point::Wait)
    {
        // What is sprayed hangs on what ails the plant.
        let mut answer = Answer::ask(Line::new("trouble-what-seen"), Vec::new());
        answer.cautions.push(Line::new("caution-spray"));
        return answer;
    }
    if synthetic && has(Point::Accident) {
        return label_decides("wait");
    }
    if has(Point::Wait) {
        if synthetic || unnamed && has(Point::Drug) {
            return label_decides("wait");
        }
        return spray_product::wait(reading, facts);
    }
    if has(Point::Stronger) || over_limit(reading, facts) {
        return spray_product::no_stronger(reading, facts, synthetic || unnamed);
    }
    if has(Point::Tender) {
        return tender();
    }
    if synthetic {
        return label_decides("dose");
    }
    let subjects = subjects(reading, facts);
    // A poison of no name is none that a tray could be told about.
    let nameless = unnamed && has(Point::Drug) && (has(Point::Strength) || has(Point::Amount));
    if let Ok(all) = &subjects
        && !nameless
        && (on_trays(all) || all.is_empty() && reading.microgreen)
    {
        return trays();
    }
    if unnamed && !reading.troubles.is_empty() && !has(Point::Strength) {
        return against(reading, facts);
    }
    if has(Point::Strength) || has(Point::PlainOil) || has(Point::Concentrate) || has(Point::NotKnown) {
        // A strength told of a spray that was done is no question about it.
        let told = reading.did == Some(JobKind::Spray) && has(Point::Time) && !has(Point::Amount);
        if unnamed && has(Point::Drug) {
            return unnamed_dose(reading);
        }
        if !told {
            return spray_product::strength(reading, facts, subjects.ok());
        }
    }
    if unnamed && has(Point::Drug) && !has(Point::Time) {
        return unnamed_dose(reading);
    }
    match subjects {
        Ok(all) if all.is_empty() => not_known(),
        Ok(all) => spray_time::answer(reading, facts, &all),
        Err(question) => question,
    }
}

/// Whether it is asked how strong a named product is, or what may come of a spray: answered with its caution even
/// where the reading is less sure, since a bottle is asked after before any dose.
pub fn of_harm(reading: &Reading) -> bool {
    let harm = [Point::Stronger, Point::Together, Point::Tender];
    let waits = reading.points.contains(&Point::Wait)
        && (reading.points.contains(&Point::Drug) || reading.points.contains(&Point::SyntheticSpray));
    let strength = reading.points.contains(&Point::Strength) && !reading.materials.is_empty();
    reading.kind == Kind::Spray && (waits || strength || harm.iter().any(|point| reading.points.contains(point)))
}

/// The sprays that were named. A word that only says "medicine" names none: neem is called one too.
pub fn sprays<'a>(reading: &'a Reading, facts: &'a Facts<'_>) -> impl Iterator<Item = &'a Material> {
    let medicine = reading.points.contains(&Point::Drug) && !reading.points.contains(&Point::SyntheticSpray);
    let named = reading.materials.iter().filter_map(|id| facts.known.materials.get(id));
    named.filter(move |material| material.kind == MaterialKind::Spray && (material.spray.is_some() || !medicine))
}

/// The one that was named, if it has figures.
pub fn product<'a>(reading: &'a Reading, facts: &'a Facts<'_>) -> Option<&'a Material> {
    sprays(reading, facts).find(|material| material.spray.is_some())
}

/// Whether the beds are all sprouting trays.
fn on_trays(all: &[Subject<'_>]) -> bool {
    let tray = |subject: &Subject<'_>| {
        let shoots = !subject.standing.is_empty() && subject.standing.iter().all(|standing| standing.microgreen);
        shoots || subject.bed.kind == BedKind::Tray && subject.bed.mix_counted() == "tray"
    };
    !all.is_empty() && all.iter().all(tray)
}

/// What is cut whole within days is not sprayed.
fn trays() -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("spray-tray"));
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

/// A product of a maker: its label decides, not this program.
fn label_decides(what: &'static str) -> Answer {
    let mut answer = Answer::hand_over(Line::new("spray-label").with("what", Said::Key(what)));
    answer.cautions.push(Line::new("caution-poison"));
    answer
}

/// A medicine of no name: which it is, where nothing but its amount is asked; no dose of what has lost its label.
fn unnamed_dose(reading: &Reading) -> Answer {
    let bare = reading.quantities.is_empty() && reading.crops.is_empty() && reading.troubles.is_empty();
    if bare && reading.points.contains(&Point::Amount) && reading.signs.is_empty() {
        return spray_product::which();
    }
    label_decides("dose")
}

/// A poison is named, whatever is asked of it.
pub fn names_poison(reading: &Reading) -> bool {
    let other = matches!(reading.kind, Kind::Trouble | Kind::None | Kind::Person);
    reading.points.contains(&Point::SyntheticSpray) && !other
}

/// No dose of it, and its caution.
pub fn by_its_label() -> Answer {
    label_decides("dose")
}

/// A child, an expectant mother or an animal near: no all-clear.
fn tender() -> Answer {
    let mut answer = Answer::hand_over(Line::new("spray-tender"));
    answer.cautions.push(Line::new("caution-poison"));
    answer
}

/// Two products in one bottle: a little soap with neem is one recipe, anything else is not mixed.
fn together(reading: &Reading, facts: &Facts<'_>, synthetic: bool) -> Answer {
    let mut named: Vec<&str> = sprays(reading, facts).map(|material| material.id.as_str()).collect();
    named.sort_unstable();
    let recipe = named == ["neem-oil", "soap"] && !synthetic;
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new(if recipe { "spray-with-soap" } else { "spray-not-together" }));
    answer.cite(&SourceRef::new("neem-label-notes", "dilution with soap; not with sulphur or copper"));
    if !recipe {
        answer.cautions.push(Line::new("caution-poison"));
    }
    answer
}

/// What works on a trouble: its own first steps.
fn against(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let known = reading.troubles.iter().find_map(|id| facts.known.troubles.get(id));
    let Some(trouble) = known else { return not_known() };
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("spray-against").with("steps", Said::Text(trouble.first_steps.clone())));
    for caution in &trouble.cautions {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
    trouble.sources.iter().for_each(|source| answer.cite(source));
    answer
}

/// A strength was said that no source goes to.
fn over_limit(reading: &Reading, facts: &Facts<'_>) -> bool {
    let limit = product(reading, facts)
        .and_then(|material| material.spray.as_ref())
        .map(|spray| spray.limit_millilitres_per_litre.is.low());
    let said = |written: &crate::quantity::Written| {
        written.unit == Unit::MillilitrePerLitre && limit.is_some_and(|limit| written.value > limit)
    };
    // "20 ml in 1 litre" is a strength too.
    let volumes: Vec<Volume> = reading.quantities.iter().filter_map(|written| written.volume()).collect();
    let mixed = match volumes.as_slice() {
        [one, other] if one.max(*other) >= Volume::litres(0.2) && one.min(*other) < Volume::litres(0.2) => {
            Some(one.min(*other).as_millilitres() / one.max(*other).as_litres())
        }
        _ => None,
    };
    let too_strong = mixed.zip(limit).is_some_and(|(mixed, limit)| mixed > limit);
    too_strong || reading.quantities.iter().any(said)
}
