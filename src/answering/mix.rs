//! "What goes in the mix, and how much of each?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::{Subject, described_bed, subjects};
use crate::garden::BedKind;
use crate::knowledge::Mix;
use crate::needs::mix::{MixNeed, mix_need};
use crate::needs::surroundings::vessel;
use crate::understanding::Reading;

/// The recipe, and for a size its litres.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let sized = described_bed(reading).is_some() || reading.beds_named;
    let subject = if sized { subjects(reading, facts).ok().and_then(|all| all.into_iter().next()) } else { None };
    let id = mix_meant(reading, subject.as_ref());
    let Some(mix) = facts.known.mixes.get(&id) else { return super::handed_over::not_known() };
    let mut answer = Answer::new(Outcome::Answered);
    match subject {
        Some(subject) => {
            let count = reading.count.unwrap_or(1.0).max(1.0);
            let need = mix_need(&vessel(&subject.bed.shape), count, mix, facts.known);
            put(&mut answer, mix, &need, &subject.called(), count);
        }
        None => {
            answer
                .lines
                .push(Line::new("mix-recipe").with("mix", Said::Mix(mix.id.clone())).with("parts", shares(mix)));
        }
    }
    recipe_notes(&mut answer, mix);
    answer
}

/// The mix that was named, else that of the bed, else what suits a sprouting tray or a bed.
fn mix_meant(reading: &Reading, subject: Option<&Subject<'_>>) -> String {
    let tray = reading.microgreen || reading.bed_kind == Some(BedKind::Tray);
    let own = subject.filter(|subject| subject.own.is_some()).map(|subject| subject.bed.mix_counted());
    own.unwrap_or(if tray { "tray" } else { "house" }).to_owned()
}

/// Figures, lines and working of a mix for beds of a size.
pub fn put(answer: &mut Answer, mix: &Mix, need: &MixNeed, bed: &Said, count: f64) {
    answer.figures.push(Figure::quantity("litres_total", &need.loose));
    answer.figures.push(Figure::quantity("litres_settled", &need.settled));
    for part in &need.parts {
        if let Some(litres) = &part.litres {
            answer.figures.push(Figure::quantity(format!("litres_of.{}", part.material), litres));
        }
        if let Some(mass) = &part.mass {
            answer.figures.push(Figure::quantity(format!("kilograms_of.{}", part.material), mass));
        }
    }
    answer.lines.push(
        Line::new("mix-litres")
            .with("litres", Said::Volume(need.loose))
            .with("settled", Said::Volume(need.settled))
            .with("bed", bed.clone())
            .with("count", Said::Count(count as i64)),
    );
    let parts = need.parts.iter().map(|part| {
        let material = Said::Material(part.material.clone());
        let line = Line::new("mix-part").with("material", material);
        let line = match (&part.litres, &part.mass) {
            (Some(litres), _) => line.with("amount", Said::Volume(*litres)),
            (None, Some(mass)) => line.with("amount", Said::Mass(*mass)),
            (None, None) => return Said::Line(Box::new(line)),
        };
        Said::Line(Box::new(line))
    });
    answer.lines.push(Line::new("mix-parts").with("parts", Said::List(parts.collect())));
    answer.working.push(
        Line::new("working-mix")
            .with("settled", Said::Volume(need.settled))
            .with("rim", Said::Length(mix.properties.rim.value()))
            .with("settling", Said::Percent(mix.properties.settling.value().as_percent()))
            .with("loose", Said::Volume(need.loose)),
    );
    answer.working.push(Line::new("working-recipe").with("mix", Said::Mix(mix.id.clone())).with("parts", shares(mix)));
}

/// Sources and cautions of a recipe.
pub fn recipe_notes(answer: &mut Answer, mix: &Mix) {
    for source in mix.components.iter().map(|component| &component.share.source) {
        answer.cite(source);
    }
    answer.cite(&mix.properties.settling.source);
    answer.cite(&mix.properties.rim.source);
    for caution in &mix.cautions {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
}

/// The recipe by percent, and what is stirred in by the litre.
fn shares(mix: &Mix) -> Said {
    let components = mix.components.iter().map(|component| {
        Line::new("mix-share")
            .with("material", Said::Material(component.material.clone()))
            .with("percent", Said::Percent(component.share.value().as_percent()))
    });
    let additions = mix.additions.iter().map(|addition| {
        Line::new("mix-addition")
            .with("material", Said::Material(addition.material.clone()))
            .with("grams", Said::Number(addition.grams_per_litre.value(), 0))
    });
    Said::List(components.chain(additions).map(|line| Said::Line(Box::new(line))).collect())
}
