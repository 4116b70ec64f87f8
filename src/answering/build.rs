//! "What do I buy and cut for a box of this size?"

use super::answer::{Answer, Outcome};
use super::care;
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::mix::{all_beds, put, put_below, put_whole, recipe_notes};
use super::subject::{Subject, box_measures, subjects};
use crate::garden::{Bed, BedKind, Shape};
use crate::knowledge::{Mix, SourceRef};
use crate::needs::build::{BuildNeed, USUAL_TRAY, build_need, parts_need, total};
use crate::needs::load::bed_load;
use crate::needs::mix::mix_need;
use crate::needs::surroundings::vessel;
use crate::quantity::{Area, Estimate, Length, Unit, UnitOf, Written};
use crate::understanding::{Measured, Reading};

/// The articles on how water leaves a box, and on what it stands on.
const OF_ANY_SIZE: [&str; 2] = ["holes-or-cloth", "why-trays-below"];

/// Trays, sides, cloth, wire, and the mix.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if reading.all_beds && reading.measures.is_empty() {
        return whole(reading, facts);
    }
    if reading.measures.is_empty() && !reading.beds_named {
        // "Holes at the bottom, or is the cloth enough" is told of any size.
        if let Some(article) = care::article(facts).filter(|article| OF_ANY_SIZE.contains(&article.id.as_str())) {
            return care::told(article);
        }
    }
    if reading.measures.is_empty() && !reading.beds_named || tray_alone(reading) {
        return Answer::ask(Line::new("ask-size"), sizes());
    }
    // What trays are counted for is the box that they lie in.
    let in_box = Reading { bed_kind: Some(BedKind::Box), ..reading.clone() };
    let reading = if tray_measured(reading).is_some() || too_large_for_tray(reading) { &in_box } else { reading };
    let subject = match subjects(reading, facts) {
        Ok(subjects) => subjects.into_iter().next(),
        Err(question) => return question,
    };
    let Some(subject) = subject else { return Answer::ask(Line::new("ask-size"), sizes()) };
    let Shape::Box { length, width, depth } = subject.bed.shape else {
        return round(&subject, facts);
    };
    let (tray, tray_said) = tray(reading);
    let need = build_need(length.quantity(), width.quantity(), depth.quantity(), tray);
    let mut answer = Answer::new(Outcome::Answered);
    figures(&mut answer, &need);
    answer.lines.push(
        Line::new("build-parts")
            .with("bed", subject.called())
            .with("trays", Said::Count(i64::from(need.trays)))
            .with("said", Said::Key(if tray_said { "yes" } else { "no" }))
            .with("tray", Said::Size(tray_written(reading)))
            .with("sides", Said::Length(need.sides))
            .with("height", Said::Size(vec![depth.written()]))
            .with("cloth", Said::Area(need.cloth))
            .with("wire", Said::Length(need.wire)),
    );
    answer.working.push(
        Line::new("working-trays")
            .with("along", Said::Count(i64::from(need.grid.0)))
            .with("across", Said::Count(i64::from(need.grid.1))),
    );
    answer.working.push(Line::new("working-parts"));
    let Some(mix) = facts.known.mixes.get(subject.bed.mix_counted()) else { return answer };
    let mixed = mix_need(&vessel(&subject.bed.shape), 1.0, mix, facts.known);
    put_below(&mut answer, mix, &mixed);
    if subject.depth_assumed {
        answer.lines.push(Line::new("assumed-depth").with("depth", Said::Size(vec![depth.written()])));
    }
    recipe_notes(&mut answer, mix);
    heavy(&mut answer, &subject.bed, mix);
    answer.cite(&SourceRef::new("common-practice", "building a box"));
    answer
}

fn figures(answer: &mut Answer, need: &BuildNeed) {
    answer.figures.push(Figure::number("trays", Estimate::exactly(f64::from(need.trays)), "1"));
    answer.figures.push(Figure::quantity("side_metres", &Estimate::exactly(need.sides)));
    answer.figures.push(Figure::quantity("cloth_square_metres", &Estimate::exactly(need.cloth)));
    answer.figures.push(Figure::quantity("wire_metres", &Estimate::exactly(need.wire)));
}

/// The heavy end decides: full of water, drain blocked, the same sum that a question about the load gets; and
/// nobody here says that it may stand there.
fn heavy(answer: &mut Answer, bed: &Bed, mix: &Mix) {
    let Some(load) = bed_load(bed, mix) else { return };
    let weight = load.waterlogged().high() - load.plants.high();
    answer.cautions.insert(0, Line::new("caution-weight").with("weight", Said::UpTo(weight)));
    answer.cite(&mix.properties.density_dry_kg_per_l.source);
}

/// A basket, pot or bag: cloth and mix, no trays.
fn round(subject: &Subject<'_>, facts: &Facts<'_>) -> Answer {
    let need =
        parts_need(subject.bed.kind, &subject.bed.shape, (Length::feet(USUAL_TRAY.0), Length::feet(USUAL_TRAY.1)));
    let mut answer = Answer::new(Outcome::Answered);
    figures(&mut answer, &need);
    answer.lines.push(
        Line::new("build-round")
            .with("bed", subject.called())
            .with("cloth", if need.cloth > Area::default() { Said::Area(need.cloth) } else { Said::Key("none") }),
    );
    answer.working.push(Line::new("working-build-site"));
    answer.cite(&SourceRef::new("common-practice", "lining a basket or pot"));
    let Some(mix) = facts.known.mixes.get(subject.bed.mix_counted()) else { return answer };
    let mixed = mix_need(&vessel(&subject.bed.shape), 1.0, mix, facts.known);
    put(&mut answer, mix, &mixed, &subject.called(), 1.0);
    recipe_notes(&mut answer, mix);
    heavy(&mut answer, &subject.bed, mix);
    answer
}

/// One list for all beds of a person, rounded once.
fn whole(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let subjects = match subjects(reading, facts) {
        Ok(subjects) if !subjects.is_empty() => subjects,
        Ok(_) => return Answer::ask(Line::new("ask-size"), sizes()),
        Err(question) => return question,
    };
    let tray = (Length::feet(USUAL_TRAY.0), Length::feet(USUAL_TRAY.1));
    let needs: Vec<BuildNeed> =
        subjects.iter().map(|subject| parts_need(subject.bed.kind, &subject.bed.shape, tray)).collect();
    let need = total(&needs);
    let mut answer = Answer::new(Outcome::Answered);
    figures(&mut answer, &need);
    answer.lines.push(
        Line::new("build-site")
            .with("bed", all_beds(subjects.len()))
            .with("trays", Said::Count(i64::from(need.trays)))
            .with("tray", Said::Size(tray_written(reading)))
            .with("sides", Said::Length(need.sides))
            .with("cloth", Said::Area(need.cloth))
            .with("wire", Said::Length(need.wire)),
    );
    answer.working.push(Line::new("working-build-site"));
    answer.working.push(Line::new("working-parts"));
    put_whole(&mut answer, &subjects, facts);
    answer.cautions.insert(0, Line::new("caution-load"));
    answer.cite(&SourceRef::new("common-practice", "building a box"));
    answer
}

/// The trays' size: the smaller thing measured beside a word for trays, else the usual one.
fn tray(reading: &Reading) -> ((Length, Length), bool) {
    let written = tray_written(reading);
    let side = |at: usize, usual: f64| written.get(at).and_then(|side| side.length()).unwrap_or(Length::feet(usual));
    ((side(0, USUAL_TRAY.0), side(1, USUAL_TRAY.1)), tray_measured(reading).is_some())
}

fn tray_measured(reading: &Reading) -> Option<(Written, Written)> {
    let largest = box_measures(reading)?;
    let other = reading.measures.iter().find(|measured| **measured != largest)?;
    let sides = other.length.zip(other.width)?;
    /// Smaller than this is no tray.
    const LEAST_TRAY: Length = Length::metres(0.1);
    let of_use = |side: Written| side.length().is_some_and(|side| side >= LEAST_TRAY);
    (reading.measures.len() > 1 && of_use(sides.0) && of_use(sides.1)).then_some(sides)
}

/// "8 ft by 2.5 ft, 14 in tall: boards, cloth, trays": what is so long or so deep has trays under it, and is none.
fn too_large_for_tray(reading: &Reading) -> bool {
    const LONGEST_M: f64 = 1.25;
    const DEEPEST_M: f64 = 0.15;
    let metres = |side: Option<Written>| side.and_then(Written::length).map_or(0.0, |side| side.as_metres());
    let large = |one: &Measured| metres(one.length) > LONGEST_M || metres(one.depth) > DEEPEST_M;
    reading.bed_kind == Some(BedKind::Tray) && reading.measures.iter().any(large)
}

/// "Trays of 50 cm square in a 2 metre box": a tray was measured, and of the box one side.
fn tray_alone(reading: &Reading) -> bool {
    let metres = |written: &Written| written.length().map(|length| length.as_metres());
    let [measured] = reading.measures.as_slice() else { return false };
    let sides = [measured.length, measured.width].map(|side| side.and_then(|side| metres(&side)));
    let [Some(length), Some(width)] = sides else { return false };
    let lengths = reading.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length);
    let longer = lengths.filter_map(metres).any(|other| other > length.max(width) * 1.01);
    reading.bed_kind == Some(BedKind::Tray) && longer
}

fn tray_written(reading: &Reading) -> Vec<Written> {
    let feet = |value| Written { value, unit: Unit::Foot };
    match tray_measured(reading) {
        Some((length, width)) => vec![length, width],
        None => vec![feet(USUAL_TRAY.0), feet(USUAL_TRAY.1)],
    }
}

/// Sizes to choose from.
fn sizes() -> Vec<Line> {
    let feet = |value| Written { value, unit: Unit::Foot };
    [(4.0, 3.0), (4.0, 2.0), (3.0, 2.0), (2.0, 1.5)]
        .map(|(length, width)| Line::new("choice-size").with("size", Said::Size(vec![feet(length), feet(width)])))
        .to_vec()
}
