//! The working of a load, for `why`.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::Subject;
use crate::knowledge::{Mix, SourceRef};
use crate::needs::load::{AreaLoad, BedLoad, SiteLoad, full_density};
use crate::quantity::Estimate;

/// The parts of one bed.
pub fn working(answer: &mut Answer, subject: &Subject<'_>, load: &BedLoad, facts: &Facts<'_>) {
    answer.working.push(Line::new("working-bed").with("bed", subject.called()));
    if let Some(mix) = subject.mix(facts) {
        density(answer, mix);
    }
    answer.working.push(
        Line::new("working-load-parts")
            .with("mix", Said::Mass(load.mix))
            .with("full", Said::Mass(load.mix_full))
            .with("ponded", Said::Mass(load.ponded))
            .with("vessel", Said::Mass(load.vessel))
            .with("plants", Said::Mass(load.plants)),
    );
    answer.working.push(
        Line::new("working-load-ground")
            .with("ground", Said::Area(load.footprint))
            .with("load", Said::Load(load.load())),
    );
    notes(answer);
}

/// A depth on a square metre.
pub fn area_working(answer: &mut Answer, load: &AreaLoad, mix: &Mix) {
    density(answer, mix);
    answer.working.push(Line::new("working-load-depth").with("load", Said::Load(load.load)));
    notes(answer);
}

/// What a site's weight is made of.
pub fn site_working(answer: &mut Answer, sum: &SiteLoad) {
    answer.working.push(
        Line::new("working-load-site")
            .with("beds", Said::Mass(sum.beds))
            .with("people", Said::Mass(sum.people))
            .with("sacks", Said::Mass(Estimate::exactly(sum.sacks))),
    );
}

/// What a litre of the mix weighs.
pub fn density(answer: &mut Answer, mix: &Mix) {
    let properties = &mix.properties;
    answer.working.push(
        Line::new("working-load-mix")
            .with("mix", Said::Mix(mix.id.clone()))
            .with("wet", Said::Span(properties.density_wet_kg_per_l.is, 2))
            .with("full", Said::Span(full_density(properties), 2)),
    );
    for source in [
        &properties.density_wet_kg_per_l.source,
        &properties.density_dry_kg_per_l.source,
        &properties.container_capacity.source,
        &properties.air_space.source,
        &properties.rim.source,
    ] {
        answer.cite(source);
    }
}

/// What is a judgement is said to be one; a code's figure is for people and is not compared with.
fn notes(answer: &mut Answer) {
    answer.working.push(Line::new("working-load-judged"));
    answer.working.push(Line::new("working-load-code"));
    answer.cite(&SourceRef::new("common-practice", "weights of sides, trays, plants and people"));
}
