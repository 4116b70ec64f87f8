//! A bed seen from above, its plants to scale.

use super::paint::Ink;
use super::pictogram::measure;
use super::picture::{LEAST, Picture, Style};
use super::shape::{At, Look, Outline};
use super::words::Words;
use crate::answering::{Line, PlanTable, Rim, Said};
use crate::quantity::Length;

const MARGIN: f64 = 48.0;
const WITHIN: f64 = 1080.0 - 2.0 * MARGIN;
/// The bed is drawn no wider and no higher.
const MOST: (f64, f64) = (800.0, 900.0);
/// Left of the bed: its measure.
const LEFT: f64 = 232.0;

/// The plan's picture.
pub fn picture(table: &PlanTable, words: &Words<'_>) -> Picture {
    let mut picture = Picture::screen(words.sentence(&table.told));
    let title = words.headed(&table.bed);
    picture.fitted((MARGIN, 96.0), Style::new(62.0, Ink::Soot).bold(), WITHIN, 40.0, title);
    let mut down = picture.paragraph((MARGIN, 166.0), Style::new(42.0, Ink::Soot), WITHIN, words.sentence(&table.told));
    let scale = Scale::of(table);
    down = match &table.rim {
        Rim::Box { length, width } => boxed(&mut picture, table, words, &scale, (length, width), down + 84.0),
        Rim::Round { across } => round(&mut picture, table, words, &scale, across, down + 8.0),
    };
    down = gap(&mut picture, table, words, &scale, down + 40.0);
    let quiet = Style::new(30.0, Ink::Slate);
    picture.height = picture.paragraph((MARGIN, down + 18.0), quiet, WITHIN, words.say("draw-to-scale")).ceil();
    picture
}

/// From metres to the paper.
struct Scale {
    units_a_metre: f64,
    /// How far leaves hang over the rim, units.
    over: f64,
}

impl Scale {
    fn of(table: &PlanTable) -> Self {
        let (wide, high) = match &table.rim {
            Rim::Box { length, width } => (length.0.as_metres(), width.0.as_metres()),
            Rim::Round { across } => (across.0.as_metres(), across.0.as_metres()),
        };
        let over = table.plants.iter().map(|plant| beyond(table, plant)).fold(0.0, f64::max);
        let (wide, high) = ((wide + 2.0 * over).max(0.01), (high + 2.0 * over).max(0.01));
        let units_a_metre = (MOST.0 / wide).min(MOST.1 / high);
        Self { units_a_metre, over: over * units_a_metre }
    }

    fn units(&self, length: Length) -> f64 {
        length.as_metres() * self.units_a_metre
    }
}

/// How far a plant's leaves reach beyond the rim, metres.
fn beyond(table: &PlanTable, plant: &(Length, Length)) -> f64 {
    let half = table.gap.as_metres() / 2.0;
    let (x, y) = (plant.0.as_metres(), plant.1.as_metres());
    let reach = match &table.rim {
        Rim::Box { length, width } => {
            let beyond = |at: f64, side: f64| (half - at).max(at + half - side);
            beyond(x, length.0.as_metres()).max(beyond(y, width.0.as_metres()))
        }
        Rim::Round { across } => libm::sqrt(x * x + y * y) + half - across.0.as_metres() / 2.0,
    };
    reach.max(0.0)
}

type Side<'a> = &'a (Length, Said);

fn boxed(
    picture: &mut Picture,
    table: &PlanTable,
    words: &Words<'_>,
    scale: &Scale,
    (length, width): (Side<'_>, Side<'_>),
    top: f64,
) -> f64 {
    let (wide, high) = (scale.units(length.0), scale.units(width.0));
    let (left, top) = (LEFT + scale.over, top + scale.over);
    // The wall of the box around its mix.
    const WALL: f64 = 16.0;
    let wall = Outline::rectangle((left - WALL, top - WALL), (wide + 2.0 * WALL, high + 2.0 * WALL));
    picture.shape(wall, Look::plain(Ink::Soot));
    picture.shape(Outline::rectangle((left, top), (wide, high)), Look::plain(Ink::Husk));
    plants(picture, table, scale, (left, top));
    let above = top - WALL - 22.0 - scale.over;
    measure(picture, (left, above), (left + wide, above));
    let style = Style::new(36.0, Ink::Soot).bold().middle();
    picture.fitted((left + wide / 2.0, above - 20.0), style, WITHIN - 160.0, LEAST, side(length, words));
    let aside = left - WALL - 24.0 - scale.over;
    measure(picture, (aside, top), (aside, top + high));
    upright(picture, words, width, (aside - 18.0, top + high / 2.0));
    top + high + WALL + scale.over
}

/// The measure of the upright side: as it was said, in centimetres below.
fn upright(picture: &mut Picture, words: &Words<'_>, side: Side<'_>, at: At) {
    let (said, metric) = (words.said(&side.1), centimetres(side.0, words));
    let style = Style::new(36.0, Ink::Soot).bold().end();
    let within = at.0 - 16.0;
    if said == metric {
        picture.fitted((at.0, at.1 + 12.0), style, within, LEAST, said);
    } else {
        picture.fitted((at.0, at.1 - 8.0), style, within, LEAST, said);
        picture.fitted((at.0, at.1 + 38.0), Style::new(32.0, Ink::Slate).end(), within, LEAST, metric);
    }
}

fn side(side: Side<'_>, words: &Words<'_>) -> String {
    let (said, metric) = (words.said(&side.1), centimetres(side.0, words));
    if said == metric || said.contains(&metric) { said } else { format!("{said} ({metric})") }
}

fn centimetres(length: Length, words: &Words<'_>) -> String {
    words.said(&cm(length))
}

fn cm(length: Length) -> Said {
    Said::Line(Box::new(Line::new("unit-cm").with("n", Said::Number(length.as_centimetres(), 0))))
}

fn round(
    picture: &mut Picture,
    table: &PlanTable,
    words: &Words<'_>,
    scale: &Scale,
    across: Side<'_>,
    top: f64,
) -> f64 {
    let radius = scale.units(across.0) / 2.0;
    let middle = (540.0, top + scale.over + radius + 20.0);
    let pot = Look::plain(Ink::Husk).edged(Ink::Soot, 14.0);
    picture.shape(Outline::Circle { middle, radius: radius + 7.0 }, pot);
    plants(picture, table, scale, middle);
    let below = middle.1 + radius + scale.over + 52.0;
    measure(picture, (middle.0 - radius, below), (middle.0 + radius, below));
    let style = Style::new(36.0, Ink::Soot).bold().middle();
    picture.fitted((middle.0, below + 52.0), style, WITHIN, LEAST, side(across, words));
    below + 70.0
}

/// The room of each plant, and its stem.
fn plants(picture: &mut Picture, table: &PlanTable, scale: &Scale, from: At) {
    let radius = scale.units(table.gap) / 2.0;
    let places: Vec<At> =
        table.plants.iter().map(|(x, y)| (from.0 + scale.units(*x), from.1 + scale.units(*y))).collect();
    let edge = (radius * 0.12).clamp(1.6, 4.0);
    for middle in &places {
        let room = Outline::Circle { middle: *middle, radius: radius - edge / 2.0 };
        let look = Look::line(Ink::Leaf, edge);
        picture.shape(room, if scale.over > 0.5 { look.dashed(14.0, 10.0) } else { look });
    }
    for middle in places {
        picture.shape(Outline::Circle { middle, radius: (radius * 0.24).clamp(3.0, 18.0) }, Look::plain(Ink::Leaf));
    }
}

/// Two plants beside each other at the bed's own scale, with the gap between their stems.
fn gap(picture: &mut Picture, table: &PlanTable, words: &Words<'_>, scale: &Scale, top: f64) -> f64 {
    let apart = scale.units(table.gap);
    if table.plants.len() < 2 {
        let room = Line::new("draw-room").with("room", cm(table.gap));
        return picture.paragraph((MARGIN, top + 40.0), Style::new(36.0, Ink::Soot).bold(), WITHIN, words.line(&room));
    }
    // A wide gap would push its words from the paper: then they stand below it.
    let (left, stem) = (MARGIN + 24.0, (apart * 0.12).clamp(4.0, 18.0));
    let line = top + 30.0;
    for x in [left, left + apart] {
        picture.shape(Outline::Circle { middle: (x, line), radius: stem }, Look::plain(Ink::Leaf));
        picture.shape(Outline::lines(&[(x, line), (x, line + 54.0)]), Look::line(Ink::Leaf, 3.0));
    }
    measure(picture, (left, line + 46.0), (left + apart, line + 46.0));
    let text = Line::new("draw-gap").with("gap", cm(table.gap));
    let text = words.line(&text);
    let style = Style::new(36.0, Ink::Soot).bold();
    let beside = left + apart + 40.0;
    let mut down = if apart < 420.0 {
        picture.paragraph((beside, line + 42.0), style, 1080.0 - MARGIN - beside, text).max(line + 110.0)
    } else {
        picture.paragraph((MARGIN, line + 120.0), style, WITHIN, text)
    };
    if let Some((along, across)) = table.rows {
        let rows = Line::new("draw-rows")
            .with("along", Said::Count(i64::from(along)))
            .with("across", Said::Count(i64::from(across)));
        down = picture.paragraph((MARGIN, down + 10.0), Style::new(36.0, Ink::Soot), WITHIN, words.line(&rows));
    }
    down
}
