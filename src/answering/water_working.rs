//! The working of a bed's water, step by step, and its sources.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::Subject;
use super::water::rhythm_key;
use super::water_bed::BedWater;
use crate::agronomy::reference_et::Procedure;
use crate::garden::RainExposure;
use crate::knowledge::SourceRef;
use crate::needs::loss_factor::LossFactor;
use crate::needs::salt::Salts;
use crate::needs::water::{Limit, WaterWeek};
use crate::needs::water_day::DayLoss;
use crate::needs::water_doubts::{DEW_BELOW_TMIN_K, DoubtName};
use crate::quantity::{Estimate, Fraction, WaterDepth};
use crate::weather::aridity::SEMI_ARID_BELOW;

/// What `why` shows.
pub fn working(bed: &BedWater<'_>, facts: &Facts<'_>) -> Vec<Line> {
    let BedWater { subject, week, .. } = bed;
    let mean = |of: fn(&DayLoss) -> f64| {
        week.days.iter().map(|(_, loss)| of(loss)).sum::<f64>() / week.days.len().max(1) as f64
    };
    let at_bed = WaterDepth::millimetres(mean(|loss| loss.reference_at_bed.as_millimetres()));
    let bare = WaterDepth::millimetres(mean(|loss| loss.bare_surface.as_millimetres()));
    let mut lines = vec![Line::new("working-bed").with("bed", subject.called())];
    lines.push(weather(subject, week));
    lines.push(
        Line::new("working-reference")
            .with("et", Said::Depth(week.reference_et))
            .with("source", Said::Source(SourceRef::new("fao56", "eq. 6"))),
    );
    lines.extend(procedures(week));
    lines.extend(dry_air(subject, week));
    lines.extend(showers(subject, week));
    lines.push(
        Line::new("working-light")
            .with("hours", Said::Hours(subject.sun_hours))
            .with("shade", Said::Key(if subject.bed.net_counted() > Fraction::NONE { "net" } else { "open" }))
            .with("net", Said::Percent(subject.bed.net_counted().as_percent()))
            .with("et", Said::Depth(Estimate::exactly(at_bed))),
    );
    lines.push(
        Line::new("working-coefficients")
            .with("basal", Said::Number(mean(|loss| loss.basal), 2))
            .with("evaporation", Said::Number(mean(|loss| loss.evaporation), 2))
            .with("highest", Said::Number(mean(|loss| loss.highest), 2)),
    );
    if let Some(surroundings) = subject.surroundings(facts, subject.today()) {
        let filled = surroundings.filled();
        lines.push(
            Line::new("working-loss")
                .with("loss", Said::Depth(week.loss_per_day))
                .with("area", Said::Area(filled.top))
                .with("day", Said::Volume(week.loss_per_day.map(|loss| loss * filled.top)))
                .with("rain", Said::Depth(Estimate::exactly(week.rain))),
        );
    }
    lines.extend(learned(&bed.factor));
    lines.push(
        Line::new("working-surface")
            .with("bare", Said::Depth(Estimate::exactly(bare)))
            .with("limit", Said::Depth(Estimate::exactly(week.surface_limit))),
    );
    lines.push(
        Line::new("working-roots")
            .with("limit", Said::Depth(Estimate::exactly(week.root_limit)))
            .with("decides", Said::Key(if week.decided_by == Limit::Surface { "surface" } else { "roots" })),
    );
    lines.push(
        Line::new("working-rhythm")
            .with("often", Said::Span(week.waterings, 1))
            .with("rhythm", Said::Key(rhythm_key(week.rhythm))),
    );
    if let Some(doubt) = week.largest_doubt {
        lines.push(Line::new("working-doubt").with("doubt", Said::Key(doubt_key(doubt))));
    }
    lines.extend(super::water_salt::working(bed));
    lines
}

/// What looks at the bed have taught.
fn learned(factor: &LossFactor) -> Option<Line> {
    (factor.looks > 0).then(|| {
        let percent = (factor.is.value() - 1.0) * 100.0;
        let how = match percent.round() {
            more if more >= 1.0 => "faster",
            less if less <= -1.0 => "slower",
            _ => "same",
        };
        Line::new("working-learned")
            .with("how", Said::Key(how))
            .with("percent", Said::Percent(percent.abs()))
            .with("factor", Said::Span(factor.is, 2))
            .with("looks", Said::Count(factor.looks as i64))
    })
}

fn weather(subject: &Subject<'_>, week: &WaterWeek) -> Line {
    let weather = subject.weather.as_ref();
    if week.usual_days > 0 {
        let place = weather.and_then(|weather| weather.normals());
        return match place {
            Some((place, distance)) => Line::new("working-usual-days")
                .with("place", Said::Place(place.id.clone()))
                .with("period", Said::Quoted(place.period.clone()))
                .with("distance", Said::Number(distance, 0))
                .with("days", Said::Count(week.usual_days as i64)),
            None => Line::new("working-no-weather"),
        };
    }
    match weather.and_then(|weather| weather.issued()) {
        Some(issued) => Line::new("working-forecast").with("day", Said::Day(issued.date_naive())),
        None => Line::new("working-forecast-undated"),
    }
}

/// What was missing of the weather, and the procedure that stood in for it.
fn procedures(week: &WaterWeek) -> Vec<Line> {
    Procedure::ALL
        .into_iter()
        .filter(|procedure| week.days.iter().any(|(_, loss)| loss.reference.procedures.contains(*procedure)))
        .map(|procedure| {
            Line::new("working-procedure")
                .with("what", Said::Key(procedure_key(procedure)))
                .with("source", Said::Source(SourceRef::new("fao56", procedure.place())))
        })
        .chain(estimated(week))
        .collect()
}

/// Wind and humidity that the week's file lacks reach the sum at their usual values, so they are told here.
fn estimated(week: &WaterWeek) -> Vec<Line> {
    let mut lines = Vec::new();
    let mut told = |what: &'static str, place: &str| {
        let source = Said::Source(SourceRef::new("fao56", place));
        lines.push(Line::new("working-procedure").with("what", Said::Key(what)).with("source", source));
    };
    if week.days.iter().any(|(day, _)| day.wind_2m.is_none()) {
        told("wind", "chapter 3, missing wind data");
    }
    if week.days.iter().any(|(day, _)| day.humidity_mean.is_none()) {
        told("dew-point", "eq. 48");
    }
    lines
}

/// Why the dew point was taken lower than the night's minimum.
fn dry_air(subject: &Subject<'_>, week: &WaterWeek) -> Option<Line> {
    let index = subject.weather.as_ref()?.arid()?;
    let guessed = week.days.iter().any(|(day, _)| day.humidity_mean.is_none());
    guessed.then(|| {
        Line::new("working-dry-air")
            .with("index", Said::Number(index, 2))
            .with("limit", Said::Number(SEMI_ARID_BELOW, 1))
            .with("class", Said::Source(SourceRef::new(ARIDITY_SOURCE, "")))
            .with("kelvins", Said::Number(DEW_BELOW_TMIN_K, 0))
            .with("source", Said::Source(SourceRef::new("fao56", "eq. 6-6")))
    })
}

/// How usual rain was counted.
fn showers(subject: &Subject<'_>, week: &WaterWeek) -> Option<Line> {
    let reaches = subject.bed.rain_counted() != RainExposure::None;
    let days = Some(week.wet_days()).filter(|days| reaches && *days >= 0.5)?;
    Some(
        Line::new("working-showers")
            .with("rain", Said::Depth(Estimate::exactly(week.rain)))
            .with("days", Said::Number(days, 0)),
    )
}

/// The source of the classes of aridity.
const ARIDITY_SOURCE: &str = "unep-aridity-1992";

fn procedure_key(procedure: Procedure) -> &'static str {
    match procedure {
        Procedure::SolarFromSunshine => "sunshine",
        Procedure::SolarFromTemperature => "solar",
        Procedure::DewPointIsTmin => "dew-point",
        Procedure::HumidityFromHighest | Procedure::HumidityFromMean => "humidity-mean",
        Procedure::DefaultWind => "wind",
        Procedure::SunlessClearness => "sunless",
    }
}

fn doubt_key(doubt: DoubtName) -> &'static str {
    match doubt {
        DoubtName::SunSpell => "sun-spell",
        DoubtName::Bed => "bed",
        DoubtName::Weather => "weather",
        DoubtName::SmallStand => "small-stand",
        DoubtName::Sides => "sides",
        DoubtName::Leaves => "leaves",
        DoubtName::Wind => "wind",
        DoubtName::Humidity => "humidity",
        DoubtName::Rain => "rain",
        DoubtName::SurfaceLimit => "surface-limit",
        DoubtName::RootLimit => "root-limit",
    }
}

/// Everything the figures rest on.
pub fn cite(answer: &mut Answer, bed: &BedWater<'_>, facts: &Facts<'_>) {
    let BedWater { subject, week, .. } = bed;
    if let Some(Salts::Flush(flush)) = &bed.salts {
        super::water_salt::cite(answer, flush);
    }
    for place in ["eq. 6", "eq. 28", "eq. 70", "eq. 71", "eq. 72", "eq. 76", "eq. 77", "eq. 83"] {
        answer.cite(&SourceRef::new("fao56", place));
    }
    for (_, loss) in &week.days {
        for procedure in loss.reference.procedures.iter() {
            answer.cite(&SourceRef::new("fao56", procedure.place()));
        }
    }
    if dry_air(subject, week).is_some() {
        answer.cite(&SourceRef::new("fao56", "eq. 6-6"));
        answer.cite(&SourceRef::new("fao56", "eq. 52"));
        answer.cite(&SourceRef::new(ARIDITY_SOURCE, ""));
    }
    for standing in &subject.standing {
        let water = &standing.crop.water;
        answer.cite(&water.kcb_mid.source);
        answer.cite(&water.depletion_fraction.source);
    }
    if let Some(mix) = subject.mix(facts) {
        answer.cite(&mix.properties.surface_limit.source);
        answer.cite(&mix.properties.easily_available.source);
    }
    let normals = subject.weather.as_ref().and_then(|weather| weather.normals());
    if let (true, Some((place, _))) = (week.usual_days > 0, normals) {
        answer.cite(&place.source);
    }
}
