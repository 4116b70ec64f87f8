//! A picture as plain data: shapes and texts at their places.

use super::fonts::{legible, width};
use super::paint::Ink;
use super::shape::{At, Look, Outline};

/// Which point of a text stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// How a text looks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Style {
    /// Of the letters, in units of the picture.
    pub size: f64,
    pub bold: bool,
    pub ink: Ink,
    pub anchor: Anchor,
}

impl Style {
    #[must_use]
    pub const fn new(size: f64, ink: Ink) -> Self {
        Self { size, bold: false, ink, anchor: Anchor::Start }
    }

    #[must_use]
    pub const fn bold(mut self) -> Self {
        self.bold = true;
        self
    }

    #[must_use]
    pub const fn middle(mut self) -> Self {
        self.anchor = Anchor::Middle;
        self
    }

    #[must_use]
    pub const fn end(mut self) -> Self {
        self.anchor = Anchor::End;
        self
    }
}

/// A text at its place; the place lies on the line the letters stand on.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    pub at: At,
    pub text: String,
    pub style: Style,
}

impl Placed {
    /// Where its first letter begins.
    #[must_use]
    pub fn left(&self) -> f64 {
        let wide = || width(&self.text, self.style.size, self.style.bold);
        match self.style.anchor {
            Anchor::Start => self.at.0,
            Anchor::Middle => self.at.0 - wide() / 2.0,
            Anchor::End => self.at.0 - wide(),
        }
    }

    /// The upper left and lower right corner of its letters, measured.
    #[must_use]
    pub fn bounds(&self) -> (At, At) {
        let (left, wide) = (self.left(), width(&self.text, self.style.size, self.style.bold));
        // Signs above and below the Devanagari line reach further than Latin letters; both fit in this.
        ((left, self.at.1 - 0.95 * self.style.size), (left + wide, self.at.1 + 0.3 * self.style.size))
    }
}

/// One thing on the paper; later ones lie over earlier ones.
#[derive(Debug, Clone, PartialEq)]
pub enum Mark {
    Shape(Outline, Look),
    Text(Placed),
}

/// What a picture is meant for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// A phone: 1080 units are its width.
    Screen,
    /// A printed sheet, width and height in mm.
    Sheet { width_mm: u32, height_mm: u32 },
}

/// Shapes and texts on white paper.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    pub width: f64,
    pub height: f64,
    pub paper: Paper,
    /// For those who can't see it, in the language of its words.
    pub title: String,
    pub marks: Vec<Mark>,
}

/// The least size of letters on a phone, 1080 units wide.
pub const LEAST: f64 = 28.0;
/// From line to line of a paragraph, in sizes of its letters: Devanagari needs the room.
const LINE: f64 = 1.42;

impl Picture {
    /// An empty one for a phone; its height is set when all stands.
    #[must_use]
    pub const fn screen(title: String) -> Self {
        Self { width: 1080.0, height: 0.0, paper: Paper::Screen, title, marks: Vec::new() }
    }

    /// An empty A4 page, six units a millimetre.
    #[must_use]
    pub const fn page(title: String) -> Self {
        let paper = Paper::Sheet { width_mm: 210, height_mm: 297 };
        Self { width: 1260.0, height: 1782.0, paper, title, marks: Vec::new() }
    }

    /// Puts a shape over what is there.
    pub fn shape(&mut self, outline: Outline, look: Look) {
        self.marks.push(Mark::Shape(outline, look));
    }

    /// Puts a line of text, as it is.
    pub fn text(&mut self, at: At, style: Style, text: impl AsRef<str>) {
        let text = legible(text.as_ref());
        if !text.is_empty() {
            self.marks.push(Mark::Text(Placed { at, text, style }));
        }
    }

    /// Puts a line of text within a width: with smaller letters down to `least`, then cut short.
    pub fn fitted(&mut self, at: At, style: Style, within: f64, least: f64, text: impl AsRef<str>) {
        let text = legible(text.as_ref());
        let (text, size) = fit(&text, style, within, least);
        self.text(at, Style { size, ..style }, text);
    }

    /// Puts a text over as many lines as it takes; gives where the next line would stand.
    pub fn paragraph(&mut self, at: At, style: Style, within: f64, text: impl AsRef<str>) -> f64 {
        let mut down = at.1;
        for line in broken(&legible(text.as_ref()), style, within) {
            self.fitted((at.0, down), style, within, style.size * 0.6, line);
            down += style.size * LINE;
        }
        down
    }

    /// All its texts.
    pub fn texts(&self) -> impl Iterator<Item = &Placed> {
        self.marks.iter().filter_map(|mark| match mark {
            Mark::Text(placed) => Some(placed),
            Mark::Shape(..) => None,
        })
    }
}

/// A text and the size at which it fits.
fn fit(text: &str, style: Style, within: f64, least: f64) -> (String, f64) {
    let wide = width(text, style.size, style.bold);
    if wide <= within {
        return (text.to_owned(), style.size);
    }
    let size = style.size * within / wide;
    if size >= least {
        return (text.to_owned(), size);
    }
    let least = least.min(style.size);
    let mut words: Vec<&str> = text.split(' ').collect();
    let mut letters: Vec<char> = text.chars().collect();
    let fits = |text: &str| width(text, least, style.bold) <= within;
    while words.len() > 1 {
        words.pop();
        let shorter = format!("{}…", words.join(" "));
        if fits(&shorter) {
            return (shorter, least);
        }
    }
    while letters.len() > 1 {
        letters.pop();
        let shorter = format!("{}…", letters.iter().collect::<String>());
        if fits(&shorter) {
            return (shorter, least);
        }
    }
    (text.chars().take(1).collect(), least)
}

/// Broken at its spaces into lines that fit.
pub fn broken(text: &str, style: Style, within: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match (longer, lines.last_mut()) {
            (Some(longer), Some(line)) if width(&longer, style.size, style.bold) <= within => *line = longer,
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_paragraph_keeps_within_its_width() {
        let mut picture = Picture::screen(String::new());
        let text =
            "Skip a turn if it is still moist a finger-joint down, and an-uncommonly-long-name-of-a-bed-without-a-gap.";
        let next = picture.paragraph((10.0, 50.0), Style::new(40.0, Ink::Soot), 300.0, text);
        let lines: Vec<&Placed> = picture.texts().collect();
        assert!(lines.len() >= 5);
        assert!((next - (50.0 + lines.len() as f64 * 40.0 * LINE)).abs() < 1e-6);
        for line in lines {
            assert!(line.bounds().1.0 <= 310.5, "{line:?}");
        }
    }

    #[test]
    fn what_does_not_fit_is_drawn_smaller_then_cut() {
        let (text, size) = fit("east box", Style::new(60.0, Ink::Soot), 200.0, 28.0);
        assert_eq!(text, "east box");
        assert!((28.0..60.0).contains(&size));
        let (text, size) = fit("the very long name of an east box", Style::new(60.0, Ink::Soot), 200.0, 28.0);
        assert!(text.ends_with('…') && size == 28.0, "{text} {size}");
    }
}
