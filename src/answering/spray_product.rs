//! How strong, and how long until picking: only for a product that is known.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::handed_over::not_computed;
use super::line::{Line, Said};
use super::spray::{product, sprays};
use super::spray_time::{last_spray, liquid, told_day};
use super::subject::{Subject, subjects};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Material, Point, SourceRef, SprayUse};
use crate::needs::spray::{self, later};
use crate::quantity::{Estimate, Unit, Volume};
use crate::understanding::Reading;
use chrono::NaiveDate;

/// Days that some wait for the taste of neem to go (a kitchen page, read; not a matter of safety).
const TASTE_DAYS: (f64, f64) = (5.0, 7.0);

/// Which product it is.
pub fn which() -> Answer {
    Answer::ask(Line::new("spray-which-product"), product_choices())
}

/// The dose of a plain product; what the bottle holds is asked first.
pub fn strength(reading: &Reading, facts: &Facts<'_>, subjects: Option<Vec<Subject<'_>>>) -> Answer {
    let Some((material, spray)) = with_figures(reading, facts) else {
        return if sprays(reading, facts).next().is_none() { which() } else { not_computed(Kind::Spray) };
    };
    let has = |point: Point| reading.points.contains(&point);
    let percent = reading.quantities.iter().any(|written| written.unit == Unit::Percent);
    if has(Point::Concentrate) || percent {
        let mut answer = Answer::new(Outcome::Answered);
        answer.lines.push(Line::new("spray-by-label").with("material", Said::Material(material.id.clone())));
        answer.cautions.push(Line::new("caution-spray"));
        return answer;
    }
    if has(Point::NotKnown) {
        return Answer::hand_over(
            Line::new("spray-bottle-unknown").with("material", Said::Material(material.id.clone())),
        );
    }
    if spray.product_must_be_known && !has(Point::PlainOil) {
        let choices = ["choice-plain-oil", "choice-concentrate", "choice-not-known"].map(Line::new);
        let question = Line::new("spray-which-bottle").with("material", Said::Material(material.id.clone()));
        return Answer::ask(question, choices.to_vec());
    }
    let mut answer = Answer::new(Outcome::Answered);
    dose(&mut answer, material, spray, reading);
    let bed = subjects.as_deref().filter(|all| all.len() == 1).and_then(<[_]>::first);
    if let Some(subject) = bed.filter(|subject| !subject.usual) {
        liquid(&mut answer, subject, facts, None, true);
    }
    answer
}

/// Less than this is oil, not water.
const LEAST_WATER: Volume = Volume::litres(0.2);

fn dose(answer: &mut Answer, material: &Material, spray: &SprayUse, reading: &Reading) {
    let dose = spray::strength(spray);
    let limit = &spray.limit_millilitres_per_litre;
    answer.figures.push(Figure::number("millilitres_per_litre", dose, "ml/L"));
    answer.lines.push(
        Line::new("spray-strength")
            .with("material", Said::Material(material.id.clone()))
            .with("start", Said::Number(dose.value(), 0))
            .with("dose", Said::Span(dose, 0))
            .with("limit", Said::Number(limit.is.low(), 0)),
    );
    let volumes = reading.quantities.iter().filter_map(|written| written.volume());
    // The larger of two volumes is the water. "Per litre" is a measure too; only another volume is worth a sum.
    let water = volumes.reduce(Volume::max);
    if let Some(volume) = water.filter(|volume| *volume >= LEAST_WATER && *volume != Volume::litres(1.0)) {
        let millilitres = dose.map(|dose| Volume::millilitres(dose * volume.as_litres()));
        answer.lines.push(
            Line::new("spray-into")
                .with("volume", Said::Number(volume.as_litres(), 1))
                .with("amount", Said::Dose(millilitres)),
        );
    }
    if spray.product_must_be_known {
        answer.lines.push(Line::new("spray-add-soap"));
    } else if let Some(caution) = material.cautions.first() {
        // Which of the things that go by its name is meant: "plain soft soap only, never detergent".
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
    let heat = Said::Temperature(spray.not_above.value());
    answer.lines.push(Line::new("spray-test-leaf").with("limit", heat));
    for fact in [&spray.millilitres_per_litre, limit] {
        answer.cite(&fact.source);
    }
    answer.working.push(
        Line::new("working-spray-strength")
            .with("dose", Said::Span(spray.millilitres_per_litre.is, 0))
            .with("source", Said::Source(spray.millilitres_per_litre.source.clone()))
            .with("limit", Said::Number(limit.is.low(), 0))
            .with("limited", Said::Source(limit.source.clone())),
    );
}

/// A spray with figures, and the day it was done where that is known.
struct Sprayed<'a> {
    material: &'a Material,
    spray: &'a SprayUse,
    on: Option<NaiveDate>,
    recorded: bool,
}

impl Sprayed<'_> {
    /// The first day to pick. The longer end counts: nobody is harmed by one day more.
    fn pick_from(&self) -> Option<NaiveDate> {
        Some(later(self.on?, self.spray.wait_days.is.high().ceil()))
    }
}

/// The spray that keeps from picking longest: the one told of, and all that are noted of the beds that are meant.
/// None where none is known; an unknown product, used last on one of the beds, leaves no answer.
fn deciding<'a>(
    reading: &Reading,
    facts: &'a Facts<'_>,
    subjects: &[Subject<'_>],
) -> Result<Option<Sprayed<'a>>, Answer> {
    let known = |id: &str| {
        let material = facts.known.materials.get(id)?;
        Some((material, material.spray.as_ref()?))
    };
    let named = sprays(reading, facts).next().is_some();
    let told = with_figures(reading, facts).map(|(material, _)| material.id.clone());
    if named && told.is_none() {
        return Err(not_computed(Kind::Spray));
    }
    let mut all = Vec::new();
    for subject in subjects {
        let last = last_spray(subject, facts);
        if !named
            && let Some(last) = &last
            && last.what.as_deref().is_none_or(|id| known(id).is_none())
        {
            return Err(match last.what {
                Some(_) => not_computed(Kind::Spray),
                None => Answer::ask(Line::new("spray-what-was-it"), product_choices()),
            });
        }
        let bed = subject.own.as_ref().and_then(|id| facts.bed(id));
        let noted = bed.iter().flat_map(|(_, bed)| &bed.jobs).filter(|job| job.job == JobKind::Spray);
        all.extend(noted.filter_map(|job| {
            let (material, spray) = known(job.what.as_deref()?)?;
            Some(Sprayed { material, spray, on: Some(job.on.date()), recorded: true })
        }));
    }
    if let Some((material, spray)) = told.as_deref().and_then(known) {
        let on = told_day(reading, subjects.first().map_or(facts.today(), Subject::today));
        // Named with no day: the wait itself is asked, unless one of it is noted.
        if on.is_none() {
            all.retain(|sprayed| sprayed.material.id == material.id);
        }
        if on.is_some() || all.is_empty() {
            all.push(Sprayed { material, spray, on, recorded: false });
        }
    }
    Ok(all.into_iter().max_by_key(Sprayed::pick_from))
}

/// The label's wait before picking, apart from the wait for taste.
pub fn wait(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let subjects = subjects(reading, facts).unwrap_or_default();
    let found = match deciding(reading, facts, &subjects) {
        Ok(found) => found,
        Err(unanswered) => return unanswered,
    };
    let Some(sprayed) = found else {
        return Answer::ask(Line::new("spray-what-was-it"), product_choices());
    };
    let Sprayed { material, spray, on, recorded } = sprayed;
    let days = spray.wait_days.is;
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::number("days_before_picking", days, "day"));
    let material_said = Said::Material(material.id.clone());
    answer.lines.push(match on.zip(sprayed.pick_from()) {
        Some((on, from)) => Line::new("spray-pick-from")
            .with("material", material_said)
            .with("on", Said::Day(on))
            .with("from", Said::Day(from)),
        None => Line::new("spray-wait").with("material", material_said).with("days", Said::Span(days, 0)),
    });
    if material.id == "neem-oil" {
        let taste = Estimate::spanning(TASTE_DAYS.0, [TASTE_DAYS.1]);
        answer.lines.push(Line::new("spray-taste").with("days", Said::Span(taste, 0)));
        answer.cite(&SourceRef::new("neem-label-notes", "wait for taste"));
    }
    if recorded {
        let which = if subjects.len() > 1 { "several" } else { "one" };
        answer.lines.push(Line::new("spray-from-record").with("which", Said::Key(which)));
    }
    answer.cautions.push(Line::new("caution-wait"));
    answer.cite(&spray.wait_days.source);
    answer.working.push(
        Line::new("working-spray-wait")
            .with("days", Said::Span(days, 0))
            .with("source", Said::Source(spray.wait_days.source.clone())),
    );
    answer
}

/// More than the label is no cure.
pub fn no_stronger(reading: &Reading, facts: &Facts<'_>, unknown: bool) -> Answer {
    let figures = with_figures(reading, facts).filter(|_| !unknown);
    let mut answer = match figures {
        Some((material, spray)) => {
            let mut answer = Answer::new(Outcome::Answered);
            let limit = &spray.limit_millilitres_per_litre;
            answer.lines.push(
                Line::new("spray-no-stronger")
                    .with("material", Said::Material(material.id.clone()))
                    .with("limit", Said::Number(limit.is.low(), 0)),
            );
            answer.cite(&limit.source);
            answer
        }
        None => Answer::hand_over(Line::new("spray-no-double")),
    };
    answer.cautions.push(Line::new("caution-poison"));
    answer
}

/// The product named, else the only one whose figures are known under that name.
fn with_figures<'a>(reading: &'a Reading, facts: &'a Facts<'_>) -> Option<(&'a Material, &'a SprayUse)> {
    let material = product(reading, facts)?;
    Some((material, material.spray.as_ref()?))
}

/// The sprays that have figures, and another.
fn product_choices() -> Vec<Line> {
    let named = ["neem-oil", "soap"].map(|id| {
        let material = Said::Material(id.to_owned());
        Line::new("choice-material").with("material", material)
    });
    named.into_iter().chain([Line::new("choice-other-product")]).collect()
}
