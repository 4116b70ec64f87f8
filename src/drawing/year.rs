//! The year of a site: a row a crop, a column a month.

use super::fonts::width;
use super::paint::{Fill, Ink};
use super::pictogram::sample;
use super::picture::{LEAST, Picture, Style};
use super::shape::{Look, Outline};
use super::words::Words;
use crate::answering::{Line, Said, YearKind, YearRow, YearTable};
use chrono::{Datelike, Months, NaiveDate};

const MARGIN: f64 = 40.0;
const LEFT: f64 = 330.0;
const RIGHT: f64 = 1080.0 - MARGIN;
const WITHIN: f64 = 1080.0 - 2.0 * MARGIN;
/// A row; a higher one where a name takes two lines.
const ROW: (f64, f64) = (62.0, 88.0);
const NAME: Style = Style::new(32.0, Ink::Soot);
const MONTHS: u32 = 12;

/// The year's picture.
pub fn picture(table: &YearTable, words: &Words<'_>) -> Picture {
    let mut picture = Picture::screen(words.sentence(&table.told));
    let title = Style::new(56.0, Ink::Soot).bold();
    let down = picture.paragraph((MARGIN, 92.0), title, WITHIN, words.sentence(&table.told));
    let calendar = Calendar { first: table.first };
    let top = months(&mut picture, &calendar, words, down + 10.0);
    let mut names: Vec<String> = table.rows.iter().map(|row| words.headed(&row.name)).collect();
    names.extend((!table.waterings.is_empty()).then(|| words.say("draw-year-waterings")));
    let long = names.iter().any(|name| width(name, LEAST, NAME.bold) > LEFT - MARGIN - 14.0);
    let high = if long { ROW.1 } else { ROW.0 };
    let bottom = top + high * names.len() as f64;
    grid(&mut picture, &calendar, top, bottom);
    for (place, name) in names.iter().enumerate() {
        row_name(&mut picture, name, top + high * place as f64, high);
    }
    for (place, row) in table.rows.iter().enumerate() {
        span_row(&mut picture, &calendar, row, top + high * place as f64, high);
    }
    let numbers = if table.waterings.is_empty() { 0.0 } else { high };
    today(&mut picture, &calendar, table.today, words, (top, bottom - numbers, bottom));
    if !table.waterings.is_empty() {
        waterings(&mut picture, table, words, bottom - high / 2.0);
    }
    picture.height = legend(&mut picture, table, words, bottom + 100.0).ceil();
    picture
}

/// Twelve months from the first.
struct Calendar {
    first: NaiveDate,
}

impl Calendar {
    /// The first day of a month so many months on.
    fn month(&self, ahead: u32) -> NaiveDate {
        self.first.checked_add_months(Months::new(ahead)).unwrap_or(self.first)
    }

    /// Where a day begins, kept within the year shown. Months are of one width, as on a wall calendar.
    fn place(&self, day: NaiveDate) -> f64 {
        let wide = (RIGHT - LEFT) / f64::from(MONTHS);
        if day <= self.first {
            return LEFT;
        }
        let held = (0..MONTHS).find(|ahead| day < self.month(ahead + 1));
        held.map_or(RIGHT, |ahead| {
            let (from, until) = (self.month(ahead), self.month(ahead + 1));
            let part = (day - from).num_days() as f64 / (until - from).num_days().max(1) as f64;
            LEFT + wide * (f64::from(ahead) + part)
        })
    }
}

/// Names of the months, by turns on two lines so that each keeps its size.
fn months(picture: &mut Picture, calendar: &Calendar, words: &Words<'_>, top: f64) -> f64 {
    const NAMES: [&str; 12] = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
    let wide = (RIGHT - LEFT) / f64::from(MONTHS);
    for ahead in 0..MONTHS {
        let month = calendar.month(ahead).month0() as usize;
        let name = Said::Key(NAMES.get(month).copied().unwrap_or_default());
        let name = words.line(&Line::new("draw-month").with("month", name));
        let middle = LEFT + wide * (f64::from(ahead) + 0.5);
        let line = if ahead % 2 == 0 { top } else { top + 44.0 };
        picture.fitted((middle, line), Style::new(30.0, Ink::Soot).bold().middle(), 1.9 * wide, LEAST, name);
        if ahead % 2 == 0 {
            picture.shape(Outline::lines(&[(middle, top + 12.0), (middle, top + 56.0)]), Look::line(Ink::Slate, 2.0));
        }
    }
    top + 64.0
}

fn grid(picture: &mut Picture, calendar: &Calendar, top: f64, bottom: f64) {
    for ahead in 0..=MONTHS {
        let at = LEFT + (RIGHT - LEFT) / f64::from(MONTHS) * f64::from(ahead);
        let new_year = ahead > 0 && ahead < MONTHS && calendar.month(ahead).month() == 1;
        let look = if new_year { Look::line(Ink::Soot, 4.0) } else { Look::line(Ink::Slate, 1.5) };
        picture.shape(Outline::lines(&[(at, top), (at, bottom)]), look);
    }
    picture.shape(Outline::lines(&[(MARGIN, top), (RIGHT, top)]), Look::line(Ink::Soot, 4.0));
    picture.shape(Outline::lines(&[(MARGIN, bottom), (RIGHT, bottom)]), Look::line(Ink::Soot, 4.0));
}

fn row_name(picture: &mut Picture, name: &str, top: f64, high: f64) {
    let within = LEFT - MARGIN - 14.0;
    if width(name, LEAST, NAME.bold) <= within {
        picture.fitted((MARGIN, top + high / 2.0 + 11.0), NAME, within, LEAST, name);
    } else {
        let (first, second) = in_two(name);
        picture.fitted((MARGIN, top + high / 2.0 - 8.0), Style::new(LEAST, Ink::Soot), within, LEAST, first);
        picture.fitted((MARGIN, top + high / 2.0 + 30.0), Style::new(LEAST, Ink::Soot), within, LEAST, second);
    }
    picture.shape(Outline::lines(&[(MARGIN, top + high), (RIGHT, top + high)]), Look::line(Ink::Slate, 1.5));
}

/// Parted at the space nearest to its middle.
fn in_two(name: &str) -> (&str, &str) {
    let middle = name.len() / 2;
    let spaces = name.char_indices().filter(|(_, letter)| *letter == ' ');
    let space = spaces.min_by_key(|(at, _)| at.abs_diff(middle));
    space.map_or((name, ""), |(at, _)| (&name[..at], &name[at + 1..]))
}

fn span_row(picture: &mut Picture, calendar: &Calendar, row: &YearRow, top: f64, high: f64) {
    for span in &row.spans {
        // The last day is in it.
        let after = span.until.succ_opt().unwrap_or(span.until);
        let (from, until) = (calendar.place(span.from), calendar.place(after));
        if until - from < 1.0 {
            continue;
        }
        let block = Outline::rectangle((from, top + 11.0), (until - from, high - 22.0));
        picture.shape(block, Look::filled(fill(span.kind)).edged(Ink::Soot, 2.5));
    }
}

const fn fill(kind: YearKind) -> Fill {
    match kind {
        YearKind::GoesIn => Fill::Plain(Ink::Leaf),
        YearKind::Picking => Fill::Dots(Ink::Leaf),
        YearKind::Net => Fill::Mesh(Ink::Brick),
        YearKind::FeedLess => Fill::Falling(Ink::Slate),
        YearKind::Rains => Fill::Stripes(Ink::Tank),
    }
}

/// Waterings a week, a number a month, in a row with this middle.
fn waterings(picture: &mut Picture, table: &YearTable, words: &Words<'_>, row: f64) {
    let wide = (RIGHT - LEFT) / f64::from(MONTHS);
    for (ahead, often) in table.waterings.iter().take(MONTHS as usize).enumerate() {
        let Some(often) = often else { continue };
        let number = format!("{often:.1}");
        let number = words.digits(number.trim_end_matches('0').trim_end_matches('.'));
        let middle = (LEFT + wide * (ahead as f64 + 0.5), row + 11.0);
        picture.fitted(middle, Style::new(30.0, Ink::Tank).bold().middle(), wide - 4.0, LEAST, number);
    }
}

/// Today's line runs from the top to the numbers, if there are any, and begins again below them: it goes through none.
fn today(
    picture: &mut Picture,
    calendar: &Calendar,
    today: NaiveDate,
    words: &Words<'_>,
    (top, numbers, bottom): (f64, f64, f64),
) {
    let at = calendar.place(today);
    let line = Look::line(Ink::Brick, 5.0);
    picture.shape(Outline::lines(&[(at, top), (at, numbers)]), line.dashed(12.0, 8.0));
    picture.shape(Outline::lines(&[(at, bottom), (at, bottom + 20.0)]), line);
    let name = words.say("draw-today");
    let style = Style::new(30.0, Ink::Brick).bold();
    // Near the right end its name stands to the left.
    let style = if at > RIGHT - 160.0 { style.end() } else { style };
    picture.text((at, bottom + 46.0), style, name);
}

/// What each pattern means, of those that are used.
fn legend(picture: &mut Picture, table: &YearTable, words: &Words<'_>, top: f64) -> f64 {
    let used: std::collections::BTreeSet<YearKind> =
        table.rows.iter().flat_map(|row| row.spans.iter().map(|span| span.kind)).collect();
    let mut down = top;
    for kind in used {
        sample(picture, (MARGIN, down - 30.0), (64.0, 38.0), fill(kind));
        let line = Line::new("draw-year-kind").with("kind", Said::Key(kind.word()));
        down = picture.paragraph((MARGIN + 84.0, down), Style::new(32.0, Ink::Soot), WITHIN - 84.0, words.line(&line));
        down += 8.0;
    }
    down
}
