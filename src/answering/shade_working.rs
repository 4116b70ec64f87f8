//! The steps behind a net: the weeks, the light, the water.

use super::answer::Answer;
use super::line::{Line, Said};
use super::shade::Shaded;
use super::sow::Asked;
use super::sow_working::days;
use crate::knowledge::SourceRef;
use crate::quantity::{Estimate, Fraction};

/// Light under a net, mol m⁻² d⁻¹.
pub fn light_left(open_mol_m2: f64, cut: Fraction) -> f64 {
    open_mol_m2 * cut.rest().as_of_one()
}

/// Threshold, weeks, light, water.
pub fn working(answer: &mut Answer, shaded: &Shaded<'_>, asked: &Asked<'_>) {
    let need = &shaded.need;
    let crop = Said::Crop(shaded.standing.crop.id.clone());
    let line = Line::new("working-shade-weeks")
        .with("crop", crop)
        .with("above", Said::Temperature(need.above))
        .with("tmax", Said::Temperature(need.mean_tmax));
    answer.working.push(match &need.above_source {
        Some(source) => line.with("from", Said::Key("crop")).with("source", Said::Source(source.clone())),
        None => line
            .with("from", Said::Key("limit"))
            .with("source", Said::Source(shaded.standing.crop.heat.day_limit.source.clone())),
    });
    if let (Some(from), Some(until)) = (need.from, need.until) {
        answer
            .working
            .push(Line::new("working-shade-window").with("from", Said::Days(from)).with("until", Said::Days(until)));
    }
    if let Some(cut) = need.cut {
        let source = need.cut_source.clone().unwrap_or_else(|| SourceRef::new("common-practice", "nets over beds"));
        answer.working.push(
            Line::new("working-shade-cut")
                .with("cut", Said::Span(cut.map(Fraction::as_percent), 0))
                .with("source", Said::Source(source)),
        );
    }
    if let Some(light) = shaded.light_mol_m2 {
        light_steps(answer, shaded, light);
    }
    if let Some(water) = shaded.water {
        answer.working.push(Line::new("working-shade-water").with("share", Said::Percent(water.as_percent())));
    }
    answer.working.push(Line::new("working-shade-wind"));
    days(answer, asked);
}

fn light_steps(answer: &mut Answer, shaded: &Shaded<'_>, light: Estimate<f64>) {
    answer.working.push(
        Line::new("working-shade-light")
            .with("hours", Said::Number(shaded.subject.sun_hours, 1))
            .with("light", Said::Span(light, 0)),
    );
    if let (Some(net), Some(densest)) = (&shaded.standing.crop.net, shaded.densest) {
        answer.working.push(
            Line::new("working-shade-least")
                .with("least", Said::Number(net.least_light_mol_m2.value(), 0))
                .with("densest", Said::Percent(densest.as_percent()))
                .with("source", Said::Source(net.least_light_mol_m2.source.clone())),
        );
    }
}

/// Sources of a net's figures.
pub fn cite(answer: &mut Answer, shaded: &Shaded<'_>) {
    let crop = shaded.standing.crop;
    match &crop.net {
        Some(net) => {
            answer.cite(&net.above.source);
            answer.cite(&net.cut.source);
            answer.cite(&net.least_light_mol_m2.source);
        }
        None => answer.cite(&crop.heat.day_limit.source),
    }
    answer.cite(&SourceRef::new("mccree-1972", "light that plants can use"));
    answer.cite(&SourceRef::new("common-practice", "nets over beds"));
}
