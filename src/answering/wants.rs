//! "How deep a box, how much sun does it want?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::crops;
use crate::knowledge::{Crop, Point};
use crate::quantity::{Length, UnitOf, Written};
use crate::understanding::Reading;

/// So many crops are told.
const TOLD: usize = 3;
/// A plant that wants this much room is grown one to a pot (common practice).
const ALONE_IN_A_POT: Length = Length::metres(0.2);

/// What the crops named want of a bed, where that is asked.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    let depth = reading.points.contains(&Point::BedDepth);
    let sun = reading.points.contains(&Point::SunWanted);
    let seed = reading.points.contains(&Point::SowingDepth);
    let wanted: Vec<&Crop> = crops(reading, facts).take(TOLD).collect();
    if !(depth || sun || seed) || wanted.is_empty() {
        return None;
    }
    let mut answer = Answer::new(Outcome::Answered);
    for crop in wanted {
        if reading.microgreen && crop.microgreen.is_some() {
            answer.lines.push(Line::new("wants-tray").with("crop", said(crop)));
            continue;
        }
        if seed {
            laid(&mut answer, crop);
        }
        if depth {
            deep(&mut answer, crop, length_said(reading));
        }
        if sun {
            lit(&mut answer, crop, reading.sun_hours);
        }
    }
    Some(answer)
}

fn said(crop: &Crop) -> Said {
    Said::Crop(crop.id.clone())
}

/// The one length of a message: a depth, or the width of a pot that is as deep as it is wide.
fn length_said(reading: &Reading) -> Option<Written> {
    let mut lengths = reading.quantities.iter().copied().filter(|said| said.unit.measures() == UnitOf::Length);
    let only = lengths.next()?;
    if lengths.next().is_some() { None } else { Some(only) }
}

fn deep(answer: &mut Answer, crop: &Crop, offered: Option<Written>) {
    let needs = &crop.bed.depth;
    let verdict = match offered.and_then(Written::length) {
        Some(length) if length >= needs.value() => "enough",
        Some(length) if length >= needs.is.low() => "just",
        Some(_) => "short",
        None => "unsaid",
    };
    let line = Line::new("wants-depth")
        .with("verdict", Said::Key(verdict))
        .with("crop", said(crop))
        .with("offered", offered.map_or(Said::Key("-"), |written| Said::Size(vec![written])))
        .with("needs", Said::Length(needs.value()));
    answer.lines.push(line);
    answer.cite(&needs.source);
    let gap = &crop.bed.spacing;
    if gap.value() >= ALONE_IN_A_POT {
        answer.lines.push(Line::new("wants-gap").with("gap", Said::Length(gap.value())));
        answer.cite(&gap.source);
    }
    let source = Said::Source(needs.source.clone());
    answer.working.push(Line::new("working-depth").with("needs", Said::Length(needs.value())).with("source", source));
}

fn lit(answer: &mut Answer, crop: &Crop, offered: Option<f64>) {
    let needs = &crop.bed.sun_hours;
    let verdict = match offered {
        Some(hours) if hours >= needs.value() => "enough",
        Some(hours) if hours >= needs.is.low() => "just",
        Some(_) => "short",
        None => "unsaid",
    };
    let line = Line::new("wants-sun")
        .with("verdict", Said::Key(verdict))
        .with("crop", said(crop))
        .with("offered", Said::Hours(offered.unwrap_or_default()))
        .with("needs", Said::Hours(needs.value()));
    answer.lines.push(line);
    answer.cite(&needs.source);
    let source = Said::Source(needs.source.clone());
    answer.working.push(Line::new("working-sun").with("needs", Said::Hours(needs.value())).with("source", source));
}

/// How deep its seed, or what stands for seed, goes in.
fn laid(answer: &mut Answer, crop: &Crop) {
    let Some(sowing) = &crop.sowing else { return };
    let centimetres = sowing.depth.is.map(Length::as_centimetres);
    let piece = sowing.planted_as.map_or(Said::Key("-"), super::sow_crop::piece_word);
    let line = Line::new("wants-sowing-depth")
        .with("crop", said(crop))
        .with("as", Said::Key(if sowing.planted_as.is_some() { "pieces" } else { "seed" }))
        .with("pieces", piece)
        .with("cm", Said::Span(centimetres, 1));
    answer.lines.push(line);
    answer.cite(&sowing.depth.source);
}
