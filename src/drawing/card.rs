//! A card for the tap: this week's cans for each bed of a site, for whoever waters and never chats.

use super::fonts::width;
use super::paint::Ink;
use super::pictogram::{self, Sun};
use super::picture::{Picture, Style};
use super::pour::{BOTTLE, Pour, Vessel};
use super::shape::{At, Look, Outline};
use super::words::Words;
use crate::answering::{Answer, Line, Said, Table, Turn, USUAL_CAN, WaterTable};
use crate::quantity::{Estimate, Volume};
use chrono::Datelike;

const MARGIN: f64 = 60.0;
/// Below this many printers do not print.
const BOTTOM: f64 = 1_734.0;
/// Where the first row begins, with the dates in one language; those in a second take a line more.
const HEAD: f64 = 274.0;
const DATES: f64 = 56.0;
/// A row is at least and at most so high.
const ROW: (f64, f64) = (196.0, 290.0);
/// Where the turns of a bed begin.
const TURNS: f64 = 470.0;

/// The pages of a site's card; `other` is a second language that stands beside the first. No page where no bed of the
/// answer has a week.
#[must_use]
pub fn card(site: &str, answer: &Answer, words: &Words<'_>, other: Option<&Words<'_>>) -> Vec<Picture> {
    let beds: Vec<&WaterTable> = answer
        .tables
        .iter()
        .filter_map(|table| match table {
            Table::Water(week) => Some(week),
            _ => None,
        })
        .collect();
    let both = Both { words, other };
    let left_out = answer.lines.iter().find(|line| line.phrase == "water-not-summed");
    // The notes are laid out once to see what they leave to the beds.
    let below = notes(&mut Picture::page(String::new()), &beds, left_out, &both, 0.0);
    let room = BOTTOM - HEAD - if other.is_some() { DATES } else { 0.0 } - below;
    let on_a_page = ((room / ROW.0).floor() as usize).max(1);
    // Five beds where four fit are three and two, not four and one.
    let pages = beds.len().div_ceil(on_a_page).max(1);
    let each = beds.len().div_ceil(pages).max(1);
    beds.chunks(each).map(|of_page| page(site, of_page, (&beds, left_out), &both, room)).collect()
}

/// One language or two.
struct Both<'a> {
    words: &'a Words<'a>,
    other: Option<&'a Words<'a>>,
}

impl Both<'_> {
    /// The first language, and the second where it says something else.
    fn say(&self, say: impl Fn(&Words<'_>) -> String) -> (String, Option<String>) {
        let first = say(self.words);
        let second = self.other.map(say).filter(|second| *second != first);
        (first, second)
    }

    /// Both on one line.
    fn line(&self, say: impl Fn(&Words<'_>) -> String) -> String {
        match self.say(say) {
            (first, Some(second)) => format!("{first} · {second}"),
            (first, None) => first,
        }
    }
}

fn page(
    site: &str,
    beds: &[&WaterTable],
    (all, left_out): (&[&WaterTable], Option<&Line>),
    both: &Both<'_>,
    room: f64,
) -> Picture {
    let title = both.line(|words| words.say("draw-card-title"));
    let mut page = Picture::page(format!("{title}: {site}"));
    let within = page.width - 2.0 * MARGIN;
    page.fitted((MARGIN, 116.0), Style::new(76.0, Ink::Soot).bold(), within, 40.0, site);
    page.fitted((MARGIN, 180.0), Style::new(46.0, Ink::Soot), within, 30.0, title);
    let mut down = 244.0;
    if let Some((first, last)) = beds.first().and_then(|bed| bed.days.first().zip(bed.days.last())) {
        let valid =
            Line::new("draw-card-valid").with("from", Said::Day(first.date)).with("until", Said::Day(last.date));
        let (dates, other) = both.say(|words| words.line(&valid));
        for dates in [Some(dates), other].into_iter().flatten() {
            page.fitted((MARGIN, down), Style::new(42.0, Ink::Brick).bold(), within, 28.0, dates);
            down += DATES;
        }
    }
    let high = (room / beds.len().max(1) as f64).clamp(ROW.0, ROW.1);
    down -= 26.0;
    for bed in beds {
        row(&mut page, bed, both, down, high);
        down += high;
    }
    page.shape(Outline::lines(&[(MARGIN, down), (page.width - MARGIN, down)]), Look::line(Ink::Soot, 4.0));
    notes(&mut page, all, left_out, both, down);
    page
}

fn row(page: &mut Picture, bed: &WaterTable, both: &Both<'_>, top: f64, high: f64) {
    let right = page.width - MARGIN;
    page.shape(Outline::lines(&[(MARGIN, top), (right, top)]), Look::line(Ink::Soot, 4.0));
    let (name, other) = both.say(|words| words.headed(&bed.bed));
    let within = TURNS - MARGIN - 24.0;
    page.fitted((MARGIN, top + 56.0), Style::new(50.0, Ink::Soot).bold(), within, 30.0, name);
    if let Some(other) = other {
        page.fitted((MARGIN, top + 96.0), Style::new(32.0, Ink::Slate).bold(), within, 24.0, other);
    }
    days(page, bed, both.words, (MARGIN, top + high - 88.0));
    let Some(turn) = bed.turn else {
        let style = Style::new(40.0, Ink::Soot).bold();
        let none = both.line(|words| words.say("draw-card-none"));
        page.paragraph((TURNS, top + 84.0), style, right - TURNS, none);
        return;
    };
    let turns: Vec<Turn> = [Turn::Morning, Turn::Noon, Turn::Evening]
        .into_iter()
        .filter(|turn| bed.days.iter().any(|day| day.turns.contains(turn)))
        .collect();
    let wide = (right - TURNS) / turns.len().max(1) as f64;
    for (place, part) in turns.iter().enumerate() {
        let cell = Cell { left: TURNS + place as f64 * wide, top, wide, high };
        one_turn(page, *part, turn.value(), bed, both.words, &cell);
    }
}

/// The room of one turn.
struct Cell {
    left: f64,
    top: f64,
    wide: f64,
    high: f64,
}

/// The seven days, those with water filled.
fn days(page: &mut Picture, bed: &WaterTable, words: &Words<'_>, at: At) {
    const BOX: (f64, f64) = (52.0, 72.0);
    for (place, day) in bed.days.iter().enumerate() {
        let corner = (at.0 + place as f64 * (BOX.0 + 3.0), at.1);
        let watered = !day.turns.is_empty();
        let look = if watered { Look::plain(Ink::Tank) } else { Look::plain(Ink::Paper) };
        page.shape(Outline::rectangle(corner, BOX), look.edged(Ink::Soot, 3.0));
        let ink = if watered { Ink::Paper } else { Ink::Slate };
        let middle = corner.0 + BOX.0 / 2.0;
        let name = words.weekday_in_three(day.date);
        page.fitted((middle, corner.1 + 27.0), Style::new(22.0, ink).bold().middle(), BOX.0 - 6.0, 16.0, name);
        let date = words.digits(&day.date.day().to_string());
        page.text((middle, corner.1 + 60.0), Style::new(30.0, ink).bold().middle(), date);
    }
}

/// When, and how many cans or bottles.
fn one_turn(page: &mut Picture, turn: Turn, amount: Volume, bed: &WaterTable, words: &Words<'_>, cell: &Cell) {
    let stands = match turn {
        Turn::Morning => Sun::Rising,
        Turn::Noon => Sun::High,
        Turn::Evening => Sun::Setting,
    };
    // Sun and clock take two fifths, the vessels the rest; all grow with the row.
    let grown = (cell.high - 88.0).min(cell.wide * 0.44);
    let sun = grown.min(116.0);
    let line = cell.top + cell.high - 24.0;
    pictogram::sun(page, (cell.left + sun * 0.52, cell.top + 20.0 + sun * 0.5), sun * 0.96, stands);
    let clock = Style::new(36.0, Ink::Soot).bold().middle();
    let beside = cell.left + sun * 1.1 + 8.0;
    let room = cell.left + cell.wide - beside - 16.0;
    let hour = words.said(&Said::Clock(turn.hour()));
    page.fitted((cell.left + sun * 0.52, line), clock, sun * 1.08, 24.0, hour);
    let litres = words.said(&Said::About(Estimate::exactly(amount)));
    page.fitted((beside, line), Style::new(40.0, Ink::Soot).bold(), room, 24.0, litres);
    let pour = Pour::of(amount, bed.can);
    let shown = pour.vessels();
    let (size, across) = best_grid(shown.len(), room, cell.high - 82.0);
    // More than can be told apart: one, and how many of it.
    if size < 44.0 {
        let size = (cell.high - 82.0).min(room * 0.5);
        draw(page, pour.vessel, (beside, cell.top + 16.0), size, 1.0);
        let count = words.digits(&format!("× {}", pour.count_text()));
        let at = (beside + size + 6.0, cell.top + 16.0 + size * 0.7);
        page.fitted(at, Style::new(52.0, Ink::Soot).bold(), room - size - 6.0, 28.0, count);
        return;
    }
    for (place, level) in shown.iter().enumerate() {
        let (column, line) = ((place % across) as f64, (place / across) as f64);
        draw(page, pour.vessel, (beside + column * size, cell.top + 16.0 + line * size), size, *level);
    }
}

/// The largest size at which so many stand in one to three lines, and how many stand on a line.
fn best_grid(count: usize, wide: f64, high: f64) -> (f64, usize) {
    /// Larger ones are no easier to read.
    const MOST: f64 = 170.0;
    let grids = (1..=3).map(|lines| {
        let across = count.max(1).div_ceil(lines);
        ((wide / across as f64).min(high / lines as f64).min(MOST), across)
    });
    grids.fold((0.0, 1), |best, next| if next.0 > best.0 + 1.0 { next } else { best })
}

fn draw(page: &mut Picture, vessel: Vessel, at: At, size: f64, level: f64) {
    match vessel {
        Vessel::Can => pictogram::can(page, at, size, level),
        Vessel::Bottle => pictogram::bottle(page, at, size, level),
    }
}

/// What one can and one bottle hold, what to do when the top is still wet, and until when the card holds.
/// Gives where they end.
fn notes(page: &mut Picture, beds: &[&WaterTable], left_out: Option<&Line>, both: &Both<'_>, top: f64) -> f64 {
    let top = top + 20.0;
    let within = page.width - 2.0 * MARGIN;
    let can = beds.iter().find_map(|bed| bed.can).unwrap_or(USUAL_CAN);
    let litres = both.words.said(&Said::About(Estimate::exactly(can)));
    pictogram::can(page, (MARGIN, top), 84.0, 1.0);
    let style = Style::new(38.0, Ink::Soot).bold();
    let text = format!("= {litres}");
    page.text((MARGIN + 94.0, top + 60.0), style, &text);
    let beside = MARGIN + 94.0 + width(&text, 38.0, true) + 60.0;
    pictogram::bottle(page, (beside, top), 84.0, 1.0);
    let one = both.words.said(&Said::About(Estimate::exactly(BOTTLE)));
    page.text((beside + 94.0, top + 60.0), style, format!("= {one}"));
    let mut down = top + 138.0;
    let mut say = |page: &mut Picture, style: Style, text: &dyn Fn(&Words<'_>) -> Option<String>| {
        let lines = [Some(both.words), both.other].into_iter().flatten().filter_map(text);
        let mut said = std::collections::BTreeSet::new();
        for line in lines.filter(|line| said.insert(line.clone())) {
            down = page.paragraph((MARGIN, down), style, within, line);
        }
    };
    let size = if both.other.is_some() { 29.0 } else { 36.0 };
    let plain = Style::new(size, Ink::Soot);
    say(page, plain.bold(), &|words| {
        let check = beds.iter().find_map(|bed| bed.check.as_ref());
        check.map(|check| words.sentence(check))
    });
    say(page, plain, &|words| Some(words.say("draw-card-finger")));
    say(page, plain, &|words| left_out.map(|line| words.sentence(line)));
    say(page, plain, &|words| Some(words.say("draw-card-edge")));
    down
}
