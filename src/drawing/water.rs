//! A bed's week of water: a bar a day, its range, the weather, and when to water.

use super::fonts::width;
use super::paint::{Fill, Ink};
use super::pictogram::{self, Sun};
use super::picture::{LEAST, Picture, Style};
use super::shape::{Look, Outline};
use super::words::Words;
use crate::answering::{Line, Said, Turn, WaterTable};
use crate::quantity::Estimate;
use chrono::Datelike;

const MARGIN: f64 = 48.0;
/// Left of the bars: the scale, and the names of the turns.
const LEFT: f64 = 200.0;
const RIGHT: f64 = 1080.0 - MARGIN;
const WITHIN: f64 = 1080.0 - 2.0 * MARGIN;
const BARS_HIGH: f64 = 430.0;
const BAR_WIDE: f64 = 70.0;
/// A day with more expected rain than this carries a drop.
const WORTH_A_DROP_MM: f64 = 0.5;

/// The week's picture.
pub fn picture(table: &WaterTable, words: &Words<'_>) -> Picture {
    let mut picture = Picture::screen(words.sentence(&table.told));
    let mut down = 96.0;
    picture.fitted((MARGIN, down), Style::new(62.0, Ink::Soot).bold(), WITHIN, 40.0, words.headed(&table.bed));
    down += 56.0;
    down = span(&mut picture, table, words, down) + 6.0;
    down = picture.paragraph((MARGIN, down), Style::new(42.0, Ink::Soot), WITHIN, words.sentence(&table.told));
    down = bars(&mut picture, table, words, down + 16.0);
    down = turns(&mut picture, table, words, down);
    down = notes(&mut picture, table, words, down);
    picture.height = down.ceil();
    picture
}

fn span(picture: &mut Picture, table: &WaterTable, words: &Words<'_>, down: f64) -> f64 {
    let (Some(first), Some(last)) = (table.days.first(), table.days.last()) else { return down };
    let line = Line::new("draw-from-until").with("from", Said::Day(first.date)).with("until", Said::Day(last.date));
    picture.fitted((MARGIN, down), Style::new(36.0, Ink::Slate), WITHIN, LEAST, words.line(&line));
    down + 58.0
}

/// The middle of a day's column.
fn column(day: usize, days: usize) -> f64 {
    LEFT + (RIGHT - LEFT) * (day as f64 + 0.5) / days.max(1) as f64
}

fn bars(picture: &mut Picture, table: &WaterTable, words: &Words<'_>, top: f64) -> f64 {
    let most = table.days.iter().map(|day| day.litres.high().as_litres()).fold(0.0, f64::max);
    let unit = Unit::of(most);
    let name = words.line(&Line::new("draw-a-day").with("unit", Said::Key(unit.name)));
    picture.text((MARGIN, top + 24.0), Style::new(32.0, Ink::Slate).bold(), name);
    let step = step(most);
    let steps = (most / step).ceil().max(1.0);
    // Room above the highest whisker for its number.
    let (upper, lower) = (top + 84.0, top + 84.0 + BARS_HIGH);
    let up = |litres: f64| lower - litres / (steps * step) * BARS_HIGH;
    for line in 0..=(steps as u32) {
        let litres = f64::from(line) * step;
        let at = up(litres);
        picture.shape(Outline::lines(&[(LEFT, at), (RIGHT, at)]), Look::line(Ink::Slate, 2.0).dashed(3.0, 9.0));
        let style = Style::new(30.0, Ink::Slate).end();
        picture.text((LEFT - 18.0, at + 11.0), style, words.digits(&short(litres * unit.in_a_litre)));
    }
    for (place, day) in table.days.iter().enumerate() {
        let middle = column(place, table.days.len());
        let litres = &day.litres;
        let height = lower - up(litres.value().as_litres());
        if height > 0.5 {
            let fill = if day.usual { Fill::Stripes(Ink::Tank) } else { Fill::Plain(Ink::Tank) };
            let bar = Outline::rectangle((middle - BAR_WIDE / 2.0, lower - height), (BAR_WIDE, height));
            picture.shape(bar, Look::filled(fill).edged(Ink::Tank, 4.0));
        }
        whisker(picture, middle, up(litres.high().as_litres()), up(litres.low().as_litres()));
        let above = (up(litres.high().as_litres()) - 16.0).max(upper - 40.0);
        let number = words.digits(&short(rounded(litres.value().as_litres() * unit.in_a_litre)));
        // A line of the scale must not run through it.
        let half = width(&number, 36.0, true) / 2.0 + 5.0;
        let ground = Outline::rectangle((middle - half, above - 30.0), (2.0 * half, 34.0));
        picture.shape(ground, Look::plain(Ink::Paper));
        let style = Style::new(36.0, Ink::Soot).bold().middle();
        picture.fitted((middle, above), style, (RIGHT - LEFT) / 7.0 - 6.0, LEAST, number);
    }
    picture.shape(Outline::lines(&[(LEFT, lower), (RIGHT, lower)]), Look::line(Ink::Soot, 4.0));
    days(picture, table, words, lower)
}

/// What the scale counts.
struct Unit {
    name: &'static str,
    in_a_litre: f64,
}

impl Unit {
    const fn of(most_litres: f64) -> Self {
        if most_litres < 1.0 { Self { name: "ml", in_a_litre: 1000.0 } } else { Self { name: "L", in_a_litre: 1.0 } }
    }
}

/// To the half litre, to a twentieth below one, to ten or fifty millilitres: no finer than a hand pours.
fn rounded(value: f64) -> f64 {
    let step = match value {
        v if v < 1.0 => 0.05,
        v if v < 3.0 => 0.1,
        v if v < 10.0 => 0.5,
        v if v < 100.0 => 1.0,
        v if v < 300.0 => 10.0,
        _ => 50.0,
    };
    (value / step).round() * step
}

/// From the least to the most; a pale seam keeps it apart from the bar behind it.
fn whisker(picture: &mut Picture, middle: f64, high: f64, low: f64) {
    if low - high < 3.0 {
        return;
    }
    let line = [(middle, high), (middle, low)];
    let cap = |at: f64| [(middle - 14.0, at), (middle + 14.0, at)];
    for (ink, width) in [(Ink::Paper, 13.0), (Ink::Soot, 5.0)] {
        for part in [line, cap(high), cap(low)] {
            picture.shape(Outline::lines(&part), Look::line(ink, width));
        }
    }
}

/// Under each bar: the day, the sky, its heat.
fn days(picture: &mut Picture, table: &WaterTable, words: &Words<'_>, lower: f64) -> f64 {
    let wide = (RIGHT - LEFT) / 7.0 - 6.0;
    for (place, day) in table.days.iter().enumerate() {
        let middle = column(place, table.days.len());
        let bold = Style::new(34.0, Ink::Soot).bold().middle();
        picture.fitted((middle, lower + 50.0), bold, wide, LEAST, words.weekday(day.date));
        let date = words.digits(&day.date.day().to_string());
        picture.text((middle, lower + 96.0), Style::new(34.0, Ink::Soot).middle(), date);
        let sky = (middle, lower + 146.0);
        let style = Style::new(30.0, Ink::Soot).middle();
        if day.rain.as_millimetres() > WORTH_A_DROP_MM {
            pictogram::drop(picture, sky, 58.0);
            let rain = words.said(&Said::Depth(Estimate::exactly(day.rain)));
            picture.fitted((middle, lower + 214.0), style, wide, LEAST, rain);
        } else {
            pictogram::sun(picture, sky, 62.0, Sun::High);
            let heat = format!("{:.0}°", day.tmax.as_celsius());
            picture.text((middle, lower + 214.0), style, words.digits(&heat));
        }
    }
    lower + 244.0
}

/// A row for each part of the day in which water is given.
fn turns(picture: &mut Picture, table: &WaterTable, words: &Words<'_>, top: f64) -> f64 {
    const ROW: f64 = 92.0;
    let used = [Turn::Morning, Turn::Noon, Turn::Evening];
    let used: Vec<Turn> =
        used.into_iter().filter(|turn| table.days.iter().any(|day| day.turns.contains(turn))).collect();
    if used.is_empty() {
        return top;
    }
    let high = ROW * used.len() as f64;
    let band = Outline::rectangle((MARGIN, top + 8.0), (WITHIN, high));
    picture.shape(band, Look::plain(Ink::Haze));
    for (row, turn) in used.iter().enumerate() {
        let middle = top + 8.0 + ROW * (row as f64 + 0.5);
        let style = Style::new(34.0, Ink::Soot).bold();
        let name = words.line(&Line::new("draw-turn").with("turn", Said::Key(turn.word())));
        picture.fitted((MARGIN + 12.0, middle + 12.0), style, LEFT - MARGIN - 16.0, LEAST, name);
        for (place, day) in table.days.iter().enumerate() {
            let at = column(place, table.days.len());
            if day.turns.contains(turn) {
                pictogram::can(picture, (at - 36.0, middle - 38.0), 72.0, 1.0);
            } else {
                let dash = [(at - 12.0, middle), (at + 12.0, middle)];
                picture.shape(Outline::lines(&dash), Look::line(Ink::Slate, 4.0));
            }
        }
    }
    top + 8.0 + high
}

fn notes(picture: &mut Picture, table: &WaterTable, words: &Words<'_>, top: f64) -> f64 {
    let mut down = top + 62.0;
    if let Some(check) = &table.check {
        down =
            picture.paragraph((MARGIN, down), Style::new(36.0, Ink::Soot).bold(), WITHIN, words.sentence(check)) + 6.0;
    }
    let quiet = Style::new(30.0, Ink::Slate);
    down = picture.paragraph((MARGIN, down), quiet, WITHIN, words.say("draw-whisker"));
    if table.days.iter().any(|day| day.usual) {
        pictogram::sample(picture, (MARGIN, down - 26.0), (44.0, 30.0), Fill::Stripes(Ink::Tank));
        down = picture.paragraph((MARGIN + 60.0, down), quiet, WITHIN - 60.0, words.say("draw-usual-days"));
    }
    down
}

/// A step of the scale: 1, 2 or 5 of a power of ten, four to eight of them.
fn step(most: f64) -> f64 {
    let tens = libm::pow(10.0, libm::floor(libm::log10(most.max(0.01))));
    [0.2, 0.5, 1.0, 2.0].into_iter().map(|part| part * tens).find(|step| most / step <= 5.0).unwrap_or(2.0 * tens)
}

/// A number of the scale.
fn short(value: f64) -> String {
    let text = format!("{value:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(most: f64, expected: f64) {
        assert!((step(most) - expected).abs() < 1e-9, "{most}: {}", step(most));
    }

    #[test]
    fn a_scale_has_round_steps() {
        case(11.4, 5.0);
        case(8.0, 2.0);
        case(0.43, 0.1);
        case(4.2, 1.0);
        case(95.0, 20.0);
    }
}
