//! "How much seed?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::sow_crop::piece_word;
use super::space::{area_said, the_bed};
use super::subject::{Subject, crops, described_bed, subjects};
use crate::garden::BedKind;
use crate::knowledge::{Crop, PlantedAs, WhenDue};
use crate::needs::seed::{SeedNeed, Sown, seed_need, tray_seed};
use crate::needs::space::bed_places;
use crate::needs::surroundings::vessel;
use crate::quantity::{Area, Estimate, Length, Mass, UnitOf, Written};
use crate::understanding::Reading;

/// Grams and seeds for a bed, an area, a row, a tray or so many plants.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let place = place(reading, facts);
    let mut wanted: Vec<&Crop> = crops(reading, facts).collect();
    let told = reading.beds_named || reading.beds.len() == 1;
    if wanted.is_empty()
        && told
        && let Place::Bed(subject) = &place
    {
        wanted = subject.standing.iter().map(|standing| standing.crop).collect();
    }
    if wanted.is_empty() {
        return Answer::ask(Line::new("ask-seed-crop"), Vec::new());
    }
    // One side of a tray is no row.
    let shoots = wanted.iter().any(|crop| crop.microgreen.is_some());
    if matches!(place, Place::Row(..)) && on_tray(&place, reading) == Tray::Shoots && shoots {
        return Answer::ask(Line::new("ask-size"), Vec::new());
    }
    let several = wanted.len() > 1;
    let mut answer = Answer::new(Outcome::Answered);
    let (mut without, mut as_plants) = (Vec::new(), None);
    for crop in &wanted {
        // Two crops in one bed share its ground.
        let share = 1.0 / wanted.len() as f64;
        let need = |shoots| need(crop, &place, reading, share, shoots);
        match on_tray(&place, reading) {
            Tray::Shoots => match need(true) {
                Some(need) => put(&mut answer, crop, &need, several),
                None => without.push(Said::Crop(crop.id.clone())),
            },
            tray => match (need(false), need(true).filter(|need| need.strewn && tray == Tray::Either)) {
                // What is strewn in a tray is mostly cut as shoots; grown to plants it takes far less.
                (Some(plants), Some(shoots)) => {
                    put(&mut answer, crop, &shoots, several);
                    put_as_plants(&mut answer, &plants);
                    as_plants = Some(plants.is.grams.map(Mass::as_grams));
                }
                (Some(need), None) => put(&mut answer, crop, &need, several),
                (None, Some(shoots)) => put(&mut answer, crop, &shoots, several),
                (None, None) => without.push(Said::Crop(crop.id.clone())),
            },
        }
    }
    if !without.is_empty() {
        let line = Line::new("seed-unknown").with("crops", Said::List(without));
        if answer.lines.is_empty() {
            return Answer::hand_over(line);
        }
        answer.lines.push(line);
    }
    if !several {
        compared(&mut answer, reading, as_plants);
    }
    if let Place::Bed(subject) = &place
        && subject.usual
    {
        answer.lines.push(Line::new("load-assumed").with("bed", subject.called_by_top()));
    }
    answer
}

/// So many seeds for each plant are no longer laid place by place: they are strewn and thinned (common practice).
const STREWN_FROM: f64 = 6.0;

/// Where it is to be sown.
enum Place<'a> {
    Bed(Box<Subject<'a>>),
    Ground(Area),
    Row(Written, Length),
    Plants(f64),
}

fn place<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Place<'a> {
    let described = described_bed(reading).is_some();
    if !described {
        if let Some(area) = area_said(reading) {
            return Place::Ground(area);
        }
        if let Some(row) = row(reading) {
            return row;
        }
        // A number with no bed beside it is of plants.
        let of_plants = !reading.beds_named && reading.bed_kind.is_none() && !reading.all_beds;
        if let Some(count) = reading.count.filter(|count| of_plants && *count > 1.0 && *count <= 100_000.0) {
            return Place::Plants(count.floor());
        }
    }
    let subject = subjects(reading, facts).ok().and_then(|all| {
        let fits = |subject: &Subject<'_>| reading.bed_kind.is_none_or(|kind| subject.bed.kind == kind);
        let place = all.iter().position(|subject| reading.beds_named || fits(subject)).unwrap_or_default();
        all.into_iter().nth(place)
    });
    subject.map_or(Place::Ground(Area::square_metres(1.0)), |subject| Place::Bed(Box::new(subject)))
}

/// One length and no width: a row.
fn row<'a>(reading: &Reading) -> Option<Place<'a>> {
    let lengths: Vec<_> = reading.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length).collect();
    let [only] = lengths.as_slice() else { return None };
    let length = only.length().filter(|length| *length > Length::default())?;
    let is_row = reading.measures.iter().all(|measured| measured.depth.is_none() && measured.diameter.is_none());
    is_row.then_some(Place::Row(**only, length))
}

/// What a crop takes there.
struct Need {
    is: SeedNeed,
    place: Said,
    /// How the sum went, for `why`.
    working: Vec<Line>,
    sources: Vec<crate::knowledge::SourceRef>,
    strewn: bool,
    /// What is planted in place of seed.
    pieces: Option<PlantedAs>,
}

fn need(crop: &Crop, place: &Place<'_>, reading: &Reading, share: f64, shoots: bool) -> Option<Need> {
    let beds = reading.count.filter(|count| *count >= 1.0 && *count <= 1_000.0).unwrap_or(1.0).floor();
    if let Some(microgreen) = crop.microgreen.as_ref().filter(|_| shoots) {
        let (area, said) = match place {
            Place::Bed(subject) => {
                let own = subject.own.is_some();
                let beds = if own { 1.0 } else { beds };
                let area = vessel(&subject.bed.shape).measures().top * beds;
                (area, counted(subject, beds))
            }
            Place::Ground(area) => (*area, ground(*area)),
            Place::Row(..) | Place::Plants(_) => return None,
        };
        let density = &microgreen.seed_g_per_m2;
        let working =
            Line::new("working-seed-tray").with("grams", Said::Span(density.is, 0)).with("area", Said::Area(area));
        return Some(Need {
            is: tray_seed(microgreen, crop.sowing.as_ref(), area * share),
            place: said,
            working: vec![working],
            sources: vec![density.source.clone()],
            strewn: true,
            pieces: None,
        });
    }
    let sowing = crop.sowing.as_ref()?;
    let (sown, said, times) = match place {
        Place::Plants(count) => (
            Sown::Plants(Estimate::exactly(*count)),
            Said::Line(Box::new(Line::new("seed-plants").with("count", Said::Number(*count, 0)))),
            1.0,
        ),
        Place::Ground(area) => (Sown::Ground(*area * share), ground(*area), 1.0),
        Place::Row(written, length) => {
            let row = Line::new("seed-row").with("length", Said::Size(vec![*written]));
            (Sown::Row(*length), Said::Line(Box::new(row)), 1.0)
        }
        Place::Bed(subject) => {
            let times = if subject.own.is_some() { 1.0 } else { beds };
            let room = bed_places(crop, subject.bed.kind, &subject.bed.shape).plants;
            // Pieces are set one by one at the usual gap; seed also makes up for gaps kept wider or closer.
            let room = if sowing.planted_as.is_some() { Estimate::exactly(room.value()) } else { room };
            let sown = Sown::Plants(room.map(|count| (count * share).floor().max(1.0)));
            (sown, counted(subject, times), times)
        }
    };
    let is = multiplied(seed_need(crop, sowing, sown), times);
    let gap = &crop.bed.spacing;
    let plants = is.plants.unwrap_or(Estimate::exactly(0.0));
    let working = vec![
        Line::new("working-seed-plants")
            .with("plants", Said::Span(plants, 0))
            .with("cm", Said::Span(gap.is.map(Length::as_centimetres), 0))
            .with("laid", Said::Span(sowing.seeds_per_plant.is, 1))
            .with("comes", Said::Span(sowing.germination.is.map(|share| share.as_percent()), 0)),
        Line::new("working-seed-weight").with("grams", Said::Span(sowing.thousand_seeds_g.is, 1)),
    ];
    let sources =
        [&gap.source, &sowing.thousand_seeds_g.source, &sowing.seeds_per_plant.source, &sowing.germination.source];
    Some(Need {
        is,
        place: said,
        working,
        sources: sources.map(Clone::clone).to_vec(),
        strewn: false,
        pieces: sowing.planted_as,
    })
}

/// What a tray is sown for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Tray {
    /// Shoots are meant: that was said, or it is a sprouting tray of hers.
    Shoots,
    /// A tray by its size alone: greens are grown to plants in it as well.
    Either,
    /// No tray.
    Not,
}

fn on_tray(place: &Place<'_>, reading: &Reading) -> Tray {
    match place {
        _ if reading.microgreen => Tray::Shoots,
        Place::Bed(subject) if subject.bed.kind == BedKind::Tray && subject.own.is_none() => Tray::Either,
        Place::Bed(subject) if subject.bed.kind == BedKind::Tray => Tray::Shoots,
        _ if reading.bed_kind == Some(BedKind::Tray) => Tray::Shoots,
        _ => Tray::Not,
    }
}

/// The same tray sown for plants, beside what is strewn for shoots.
fn put_as_plants(answer: &mut Answer, need: &Need) {
    let seeds = need.is.seeds.map(|seeds| rounded(&seeds));
    answer.lines.push(
        Line::new("seed-as-plants")
            .with("seeds", seeds.map_or(Said::Key("-"), |seeds| Said::Span(seeds, 0)))
            .with("grams", range(&need.is.grams))
            .with("by", Said::Key(if seeds.is_some() { "seeds" } else { "weight" })),
    );
    answer.working.extend(need.working.iter().cloned());
    for source in &need.sources {
        answer.cite(source);
    }
}

fn ground(area: Area) -> Said {
    Said::Line(Box::new(Line::new("space-ground").with("area", Said::Area(area))))
}

fn counted(subject: &Subject<'_>, count: f64) -> Said {
    if count <= 1.0 {
        return the_bed(subject);
    }
    let line = Line::new("seed-beds").with("count", Said::Number(count, 0)).with("bed", subject.called_by_top());
    Said::Line(Box::new(line))
}

fn multiplied(need: SeedNeed, times: f64) -> SeedNeed {
    SeedNeed {
        plants: need.plants.map(|plants| plants.map(|count| count * times)),
        seeds: need.seeds.map(|seeds| seeds.map(|count| count * times)),
        grams: need.grams.map(|grams| grams * times),
    }
}

fn put(answer: &mut Answer, crop: &Crop, need: &Need, several: bool) {
    let of = several.then_some(crop.id.as_str());
    answer.figures.push(Figure::number("grams_of_seed", need.is.grams.map(Mass::as_grams), "g").of_crop(of));
    if let Some(seeds) = need.is.seeds {
        answer.figures.push(Figure::number("seeds", seeds, "1").of_crop(of));
    }
    let seeds = need.is.seeds.map(|seeds| rounded(&seeds));
    // A few seeds are counted, not weighed.
    let few = need.is.grams.high() < Mass::grams(1.0) && !need.strewn;
    let way = match (need.strewn, seeds) {
        (true, _) => "tray",
        (false, Some(_)) if need.pieces.is_some() => "pieces",
        (false, Some(_)) if few => "few",
        (false, Some(_)) => "bed",
        (false, None) => "weight",
    };
    answer.lines.push(
        Line::new("seed-grams")
            .with("crop", Said::Crop(crop.id.clone()))
            .with("about", Said::Mass(Estimate::exactly(need.is.grams.value())))
            .with("grams", range(&need.is.grams))
            .with("place", need.place.clone())
            .with("seeds", seeds.map_or(Said::Key("-"), |seeds| Said::Span(seeds, 0)))
            .with("count", seeds.map_or(Said::Key("-"), |seeds| Said::Number(seeds.value(), 0)))
            .with("pieces", need.pieces.map_or(Said::Key("-"), piece_word))
            .with("gap", Said::Number(crop.bed.spacing.value().as_centimetres(), 0))
            .with("way", Said::Key(way)),
    );
    answer.lines.push(match (&crop.sowing, need.pieces) {
        (Some(sowing), Some(_)) => {
            let depth = sowing.depth.is.map(Length::as_centimetres);
            Line::new("seed-pieces-how").with("depth", Said::Span(depth, 0))
        }
        (Some(sowing), None) if !need.strewn && sowing.seeds_per_plant.value() >= STREWN_FROM => {
            Line::new("seed-strewn-how")
        }
        _ => Line::new(if need.strewn { "seed-tray-how" } else { "seed-how" }),
    });
    answer.working.extend(need.working.iter().cloned());
    for source in &need.sources {
        answer.cite(source);
    }
    let due = |when: WhenDue| need.strewn && when == WhenDue::Microgreen || when == WhenDue::Always;
    for caution in crop.cautions.iter().filter(|caution| due(caution.when)) {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.text.clone())));
    }
}

/// Grams from a low end that is never rounded away to nothing.
fn range(grams: &Estimate<Mass>) -> Said {
    let decimals = usize::from(grams.low() < Mass::grams(10.0));
    let step = if decimals == 0 { 1.0 } else { 10.0 };
    let (low, high) = (grams.low().as_grams() * step, grams.high().as_grams() * step);
    let low = (low + 1e-9).floor() / step;
    let high =
        if grams.high() < Mass::grams(10.0) { (high - 1e-9).ceil() / step } else { grams.high().as_grams().ceil() };
    Said::Line(Box::new(Line::new("seed-range").with("low", Said::Hours(low)).with("high", Said::Hours(high))))
}

/// Seeds as a person counts them: tens past a hundred.
fn rounded(seeds: &Estimate<f64>) -> Estimate<f64> {
    let step = if seeds.high() > 1_000.0 {
        100.0
    } else if seeds.high() > 100.0 {
        10.0
    } else {
        1.0
    };
    let value = (seeds.value() / step).round() * step;
    Estimate::spanning(value, [(seeds.low() / step).floor() * step, (seeds.high() / step).ceil() * step])
}

/// A packet that was named, beside what is wanted, for plants and for shoots where both are told.
fn compared(answer: &mut Answer, reading: &Reading, as_plants: Option<Estimate<f64>>) {
    let said = reading.quantities.iter().find(|said| said.unit.measures() == UnitOf::Mass);
    let Some((written, mass)) = said.and_then(|said| Some((*said, said.mass()?))) else { return };
    let Some(grams) = answer.figures.iter().find_map(|figure| match (&figure.is, figure.name.as_str()) {
        (super::figure::FigureValue::Number { is, .. }, "grams_of_seed") => Some(*is),
        _ => None,
    }) else {
        return;
    };
    let enough = |grams: Estimate<f64>| match mass.as_grams() {
        said if said >= grams.high() => "enough",
        said if said < grams.low() => "short",
        _ => "about",
    };
    let enough = match (enough(grams), as_plants.map(enough)) {
        ("short" | "about", Some("enough")) => "plants",
        (enough, _) => enough,
    };
    let line = Line::new("seed-packet").with("packet", Said::Size(vec![written])).with("enough", Said::Key(enough));
    answer.lines.insert(0, line);
}
