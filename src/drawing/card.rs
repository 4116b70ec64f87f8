//! A card for the tap: this week's cans for each bed of a site, for whoever waters and never chats.

use super::fonts::width;
use super::paint::Ink;
use super::pictogram::{self, Sun};
use super::picture::{Picture, Style};
use super::pour::{Pour, Vessel};
use super::shape::{At, Look, Outline};
use super::words::Words;
use crate::answering::{Answer, Line, Said, Table, Turn, WaterTable};
use crate::quantity::Estimate;
use chrono::Datelike;

const MARGIN: f64 = 60.0;
/// So many beds are shown on one page.
const BEDS: usize = 6;
const ROW: f64 = 196.0;
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
    let pages = beds.chunks(BEDS).count();
    beds.chunks(BEDS)
        .enumerate()
        .map(|(place, beds)| page(site, beds, left_out.filter(|_| place + 1 == pages), &both))
        .collect()
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

fn page(site: &str, beds: &[&WaterTable], left_out: Option<&Line>, both: &Both<'_>) -> Picture {
    let title = both.line(|words| words.say("draw-card-title"));
    let mut page = Picture::page(format!("{title}: {site}"));
    let within = page.width - 2.0 * MARGIN;
    page.fitted((MARGIN, 116.0), Style::new(76.0, Ink::Soot).bold(), within, 40.0, site);
    page.fitted((MARGIN, 180.0), Style::new(46.0, Ink::Soot), within, 30.0, title);
    if let Some((first, last)) = beds.first().and_then(|bed| bed.days.first().zip(bed.days.last())) {
        let dates = both.line(|words| {
            words.line(&Line::new("draw-card-valid").with("from", Said::Day(first.date)).with("until", Said::Day(last.date)))
        });
        page.fitted((MARGIN, 244.0), Style::new(42.0, Ink::Brick).bold(), within, 28.0, dates);
    }
    let mut down = 274.0;
    for bed in beds {
        row(&mut page, bed, both, down);
        down += ROW;
    }
    page.shape(Outline::lines(&[(MARGIN, down), (page.width - MARGIN, down)]), Look::line(Ink::Soot, 4.0));
    notes(&mut page, beds, left_out, both, down + 20.0);
    page
}

fn row(page: &mut Picture, bed: &WaterTable, both: &Both<'_>, top: f64) {
    let right = page.width - MARGIN;
    page.shape(Outline::lines(&[(MARGIN, top), (right, top)]), Look::line(Ink::Soot, 4.0));
    let (name, other) = both.say(|words| words.headed(&bed.bed));
    let within = TURNS - MARGIN - 24.0;
    page.fitted((MARGIN, top + 60.0), Style::new(50.0, Ink::Soot).bold(), within, 30.0, name);
    if let Some(other) = other {
        page.fitted((MARGIN, top + 104.0), Style::new(34.0, Ink::Slate).bold(), within, 24.0, other);
    }
    days(page, bed, both.words, (MARGIN, top + 120.0));
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
        let at = (TURNS + place as f64 * wide, top);
        let pour = Pour::of(turn.value(), bed.can);
        one_turn(page, *part, &pour, both.words, at, wide);
        let litres = both.words.said(&Said::About(Estimate::exactly(turn.value())));
        page.fitted((at.0 + 110.0, top + 176.0), Style::new(40.0, Ink::Soot).bold(), wide - 120.0, 26.0, litres);
    }
}

/// The seven days, those with water filled.
fn days(page: &mut Picture, bed: &WaterTable, words: &Words<'_>, at: At) {
    const BOX: f64 = 52.0;
    for (place, day) in bed.days.iter().enumerate() {
        let corner = (at.0 + place as f64 * (BOX + 3.0), at.1);
        let watered = !day.turns.is_empty();
        let look = if watered { Look::plain(Ink::Tank) } else { Look::plain(Ink::Paper) };
        page.shape(Outline::rectangle(corner, (BOX, BOX)), look.edged(Ink::Soot, 3.0));
        let ink = if watered { Ink::Paper } else { Ink::Slate };
        let style = Style::new(30.0, ink).bold().middle();
        let date = words.digits(&day.date.day().to_string());
        page.text((corner.0 + BOX / 2.0, corner.1 + 37.0), style, date);
    }
}

/// When, and how many cans or bottles.
fn one_turn(page: &mut Picture, turn: Turn, pour: &Pour, words: &Words<'_>, at: At, wide: f64) {
    let sun = match turn {
        Turn::Morning => Sun::Rising,
        Turn::Noon => Sun::High,
        Turn::Evening => Sun::Setting,
    };
    pictogram::sun(page, (at.0 + 48.0, at.1 + 72.0), 92.0, sun);
    let clock = words.said(&Said::Clock(turn.hour()));
    page.fitted((at.0, at.1 + 176.0), Style::new(36.0, Ink::Soot).bold(), 104.0, 26.0, clock);
    let (left, top, room) = (at.0 + 108.0, at.1 + 22.0, wide - 116.0);
    let shown = pour.vessels();
    let size = (room / shown.len().max(1) as f64).min(108.0);
    // More than fit side by side: one, and how many of it.
    if size < 62.0 {
        draw(page, pour.vessel, (left, top), 100.0, 1.0);
        let count = format!("× {}", pour.count_text());
        page.fitted((left + 104.0, top + 70.0), Style::new(52.0, Ink::Soot).bold(), room - 104.0, 30.0, words.digits(&count));
        return;
    }
    for (place, level) in shown.iter().enumerate() {
        draw(page, pour.vessel, (left + place as f64 * size, top + 108.0 - size), size, *level);
    }
}

fn draw(page: &mut Picture, vessel: Vessel, at: At, size: f64, level: f64) {
    match vessel {
        Vessel::Can => pictogram::can(page, at, size, level),
        Vessel::Bottle => pictogram::bottle(page, at, size, level),
    }
}

/// What one can and one bottle hold, what to do when the top is still wet, and until when the card holds.
fn notes(page: &mut Picture, beds: &[&WaterTable], left_out: Option<&Line>, both: &Both<'_>, top: f64) {
    let within = page.width - 2.0 * MARGIN;
    let can = beds.iter().find_map(|bed| bed.can).unwrap_or(crate::answering::USUAL_CAN);
    let litres = both.words.said(&Said::About(Estimate::exactly(can)));
    pictogram::can(page, (MARGIN, top), 84.0, 1.0);
    let style = Style::new(38.0, Ink::Soot).bold();
    let text = format!("= {litres}");
    page.text((MARGIN + 94.0, top + 60.0), style, &text);
    let beside = MARGIN + 94.0 + width(&text, 38.0, true) + 60.0;
    pictogram::bottle(page, (beside, top), 84.0, 1.0);
    let one = both.words.said(&Said::About(Estimate::exactly(super::pour::BOTTLE)));
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
}
