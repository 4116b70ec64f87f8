//! "How far apart, how many fit?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::{Subject, crops, described_bed, subjects};
use super::table::{PlanTable, Rim, Table};
use crate::garden::Shape;
use crate::knowledge::{Crop, MaterialKind, Point, SourceRef};
use crate::needs::layout::bed_layout;
use crate::needs::space::{BoxPlaces, Rule, area_places, bed_places, box_places};
use crate::quantity::{Area, Estimate, Length, UnitOf, Written};
use crate::understanding::{Measured, Reading};

/// The gap, and for a size the number of plants.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    // A spray or feed that was named is what is asked about.
    let of_care = |id: &String| {
        let kind = facts.known.materials.get(id).map(|material| material.kind);
        matches!(kind, Some(MaterialKind::Spray | MaterialKind::Feed))
    };
    if reading.materials.iter().any(of_care) {
        return super::handed_over::not_known();
    }
    let place = place(reading, facts);
    let mut wanted: Vec<&Crop> = crops(reading, facts).collect();
    // "How many go in one pot": of any pot, and of which crop is asked.
    if wanted.is_empty()
        && (reading.beds_named || described_bed(reading).is_some())
        && let Place::Bed(subject) = &place
    {
        wanted = subject.standing.iter().map(|standing| standing.crop).collect();
    }
    if wanted.is_empty() {
        return Answer::ask(Line::new("ask-space-crop"), Vec::new());
    }
    if let Some(on_tray) = strewn(reading, &wanted, facts) {
        return on_tray;
    }
    let mut answer = Answer::new(Outcome::Answered);
    let share = 1.0 / wanted.len() as f64;
    for crop in &wanted {
        let several = wanted.len() > 1;
        one(&mut answer, crop, &place, share, several, reading);
        answer.cite(&crop.bed.spacing.source);
    }
    if let [first, second] = wanted.as_slice() {
        let between = (first.bed.spacing.value() + second.bed.spacing.value()) / 2.0;
        let line = Line::new("space-between").with("cm", Said::Number(between.as_centimetres(), 0));
        answer.lines.push(line.with("one", crop_said(first)).with("other", crop_said(second)));
    }
    notes(&mut answer, &place);
    answer
}

/// Where the plants are to stand.
enum Place<'a> {
    Bed(Box<Subject<'a>>),
    Ground(Area),
    /// One row of this length.
    Row(Written, Length),
    /// Nothing was said: the gap alone is asked for.
    Unsaid,
}

fn place<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Place<'a> {
    if described_bed(reading).is_none()
        && let Some(area) = area_said(reading)
    {
        return Place::Ground(area);
    }
    if let Some((written, length)) = row(reading) {
        return Place::Row(written, length);
    }
    let described = described_bed(reading).is_some();
    let subject = subjects(reading, facts).ok().and_then(|all| {
        // A bed that was assumed or only found by its crop was not asked about.
        all.into_iter().find(|subject| {
            let of_kind = reading.bed_kind == Some(subject.bed.kind) && !subject.usual;
            described || reading.beds_named || of_kind
        })
    });
    subject.map_or(Place::Unsaid, |subject| Place::Bed(Box::new(subject)))
}

/// "How many okra in a 6 foot row": one length, and nothing that has sides.
fn row(reading: &Reading) -> Option<(Written, Length)> {
    /// A shorter one is a gap.
    const LEAST: Length = Length::metres(0.5);
    let lengths = reading.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length);
    let lengths: Vec<&Written> = lengths.collect();
    let ([only], true) = (lengths.as_slice(), reading.points.contains(&Point::InRow)) else { return None };
    let sided = |one: &Measured| one.diameter.is_some() || one.width.is_some() || one.depth.is_some();
    let length = only.length().filter(|length| *length >= LEAST)?;
    let free = !reading.beds_named && !reading.measures.iter().any(sided);
    free.then_some((**only, length))
}

/// An area that was said, without a shape.
pub fn area_said(reading: &Reading) -> Option<Area> {
    let written = reading.quantities.iter().find(|said| said.unit.measures() == UnitOf::Area)?;
    written.area().filter(|area| *area > Area::default() && area.as_square_metres() <= 1_000.0)
}

/// Shoots are strewn, not spaced.
fn strewn(reading: &Reading, wanted: &[&Crop], facts: &Facts<'_>) -> Option<Answer> {
    let shoots = reading.microgreen && wanted.iter().all(|crop| crop.microgreen.is_some());
    if !shoots {
        return None;
    }
    let mut answer = super::seed::answer(reading, facts);
    answer.lines.insert(0, Line::new("space-strewn"));
    Some(answer)
}

fn one(answer: &mut Answer, crop: &Crop, place: &Place<'_>, share: f64, several: bool, reading: &Reading) {
    let gap = &crop.bed.spacing.is;
    let of = several.then_some(crop.id.as_str());
    answer.figures.push(Figure::number("centimetres_between", gap.map(Length::as_centimetres), "cm").of_crop(of));
    let fits = fits(crop, place, share);
    let asked = reading.count.filter(|count| *count > 1.0);
    let cm = gap.map(Length::as_centimetres);
    if let Some(fits) = &fits {
        let plants = fits.plants;
        answer.figures.push(Figure::number("plants", plants, "1").of_crop(of));
        let told = Line::new("space-plants")
            .with("crop", crop_said(crop))
            .with("plants", Said::Span(plants, 0))
            .with("usual", Said::Number(plants.value(), 0))
            .with("one", Said::Key(how_many(&plants)))
            .with("bed", fits.bed.clone())
            .with("verdict", Said::Key(verdict(asked, &plants)))
            .with("asked", Said::Number(asked.unwrap_or_default(), 0))
            .with("share", Said::Key(if several { "shared" } else { "whole" }));
        // A bed that crops share is not drawn: who stands where in it is the gardener's choice.
        if let Place::Bed(subject) = place
            && !several
        {
            answer.tables.extend(plan(crop, subject, &told));
        }
        answer.lines.push(told);
        layout(answer, crop, fits);
    }
    // Alone in a pot or bag a plant hangs over the rim: there is no edge to keep from.
    let alone = fits.as_ref().is_some_and(|fits| matches!(fits.by, Some(Rule::Litres(_))));
    answer.lines.push(
        Line::new("space-gap")
            .with("edge", Said::Key(if alone { "rim" } else { "edge" }))
            .with("crop", crop_said(crop))
            .with("cm", Said::Span(cm, 0))
            .with("inches", Said::Span(gap.map(|gap| gap.as_inches().round()), 0))
            .with("half", Said::Number((gap.value() / 2.0).as_centimetres().ceil(), 0)),
    );
    if fits.is_none() {
        let on = |area: Area| area_places(area, gap.value());
        let on_a_foot = on(Area::square_feet(1.0));
        answer.lines.push(
            Line::new("space-density")
                .with("metre", Said::Number(on(Area::square_metres(1.0)), 0))
                .with("foot", Said::Number(on_a_foot, 0))
                .with("few", Said::Key(if on_a_foot < 1.5 { "few" } else { "many" })),
        );
    }
}

/// One plant, one that could be more, or several.
fn how_many(plants: &Estimate<f64>) -> &'static str {
    match (plants.value() < 1.5, plants.high() < 1.5) {
        (_, true) => "one",
        (true, false) => "first",
        (false, false) => "more",
    }
}

/// Whether a number that was said is more than there is room for.
fn verdict(asked: Option<f64>, plants: &Estimate<f64>) -> &'static str {
    match asked {
        Some(asked) if asked > plants.high() => "too-many",
        Some(asked) if asked > plants.value() => "tight",
        _ => "none",
    }
}

/// How many plants stand there, and by which rule.
struct Fits {
    plants: Estimate<f64>,
    bed: Said,
    /// None for bare ground.
    by: Option<Rule>,
}

fn fits(crop: &Crop, place: &Place<'_>, share: f64) -> Option<Fits> {
    let gap = &crop.bed.spacing.is;
    match place {
        Place::Unsaid => None,
        Place::Ground(area) => {
            let count = |gap| (area_places(*area, gap) * share).floor().max(1.0);
            let plants = Estimate::spanning(count(gap.value()), [count(gap.high()), count(gap.low())]);
            let bed = Said::Line(Box::new(Line::new("space-ground").with("area", Said::Area(*area))));
            Some(Fits { plants, bed, by: None })
        }
        Place::Row(written, length) => {
            let count = |gap| (f64::from(box_places(*length, gap, gap).square.0) * share).floor().max(1.0);
            let plants = Estimate::spanning(count(gap.value()), [count(gap.high()), count(gap.low())]);
            let line = Line::new("space-row").with("length", Said::Size(vec![*written]));
            Some(Fits { plants, bed: Said::Line(Box::new(line)), by: None })
        }
        Place::Bed(subject) => Some(in_bed(crop, subject, share)),
    }
}

fn in_bed(crop: &Crop, subject: &Subject<'_>, share: f64) -> Fits {
    let places = bed_places(crop, subject.bed.kind, &subject.bed.shape);
    let plants = places.plants.map(|count| (count * share).floor().max(1.0));
    Fits { plants, bed: the_bed(subject), by: Some(places.by) }
}

/// The bed seen from above, each plant at its place.
fn plan(crop: &Crop, subject: &Subject<'_>, told: &Line) -> Option<Table> {
    let layout = bed_layout(crop, subject.bed.kind, &subject.bed.shape)?;
    let rim = match (&subject.bed.shape, layout.across) {
        (Shape::Box { length, width, .. }, _) => {
            let side = |side: &crate::garden::Measure<Length>| (side.quantity(), Said::Size(vec![side.written()]));
            Rim::Box { length: side(length), width: side(width) }
        }
        (Shape::Round { diameter, .. }, _) => {
            Rim::Round { across: (diameter.quantity(), Said::Size(vec![diameter.written()])) }
        }
        (Shape::Bag { .. }, across) => {
            let across = across?;
            let said = Line::new("unit-cm").with("n", Said::Number(across.as_centimetres(), 0));
            Rim::Round { across: (across, Said::Line(Box::new(said))) }
        }
    };
    let rows = match layout.places.by {
        Rule::Rows(rows) => Some(rows.square),
        Rule::Round | Rule::Litres(_) => None,
    };
    Some(Table::Plan(PlanTable {
        bed: subject.called(),
        crop: crop_said(crop),
        told: told.clone(),
        rim,
        plants: layout.plants,
        gap: crop.bed.spacing.value(),
        rows,
    }))
}

/// A bed after its article, where the language has one.
pub fn the_bed(subject: &Subject<'_>) -> Said {
    Said::Line(Box::new(Line::new("space-bed").with("bed", subject.called_by_top())))
}

fn layout(answer: &mut Answer, crop: &Crop, fits: &Fits) {
    match &fits.by {
        Some(Rule::Rows(BoxPlaces { square, staggered })) => {
            answer.working.push(
                Line::new("working-space-rows")
                    .with("along", Said::Count(i64::from(square.0)))
                    .with("across", Said::Count(i64::from(square.1)))
                    .with("square", Said::Count(i64::from(square.0 * square.1)))
                    .with("staggered", Said::Count(i64::from(*staggered)))
                    .with("cm", Said::Number(crop.bed.spacing.value().as_centimetres(), 0)),
            );
        }
        Some(Rule::Round) => answer.working.push(Line::new("working-space-round")),
        Some(Rule::Litres(each)) => {
            let line = Line::new("working-space-litres").with("litres", Said::Volume(*each));
            answer.lines.push(Line::new("space-litres").with("litres", Said::Volume(*each)));
            answer.working.push(line);
            answer.cite(&SourceRef::new("common-practice", "litres of mix for each plant"));
        }
        None => answer.working.push(Line::new("working-space-ground")),
    }
}

fn crop_said(crop: &Crop) -> Said {
    Said::Crop(crop.id.clone())
}

fn notes(answer: &mut Answer, place: &Place<'_>) {
    answer.working.push(Line::new("working-space-edge"));
    if let Place::Bed(subject) = place
        && subject.own.is_some()
        && !subject.standing.is_empty()
    {
        answer.lines.push(Line::new("space-empty"));
    }
}
