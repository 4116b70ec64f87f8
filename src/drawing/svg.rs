//! A picture as an SVG file.

use super::fonts::{options, set};
use super::paint::Fill;
use super::picture::{Mark, Paper, Picture, Placed};
use super::png::NoPicture;
use super::shape::{Look, Outline, Step};
use resvg::usvg;
use std::collections::BTreeSet;
use std::fmt::Write;

/// A file with its letters turned to outlines: it needs no font, so that Devanagari is joined right and nothing runs
/// over its place on any phone or in any print shop. The words stand in its title.
///
/// # Errors
/// [`NoPicture`] when the drawing is not well-formed.
pub fn svg(picture: &Picture) -> Result<String, NoPicture> {
    let tree = usvg::Tree::from_str(&with_letters(picture), &options())?;
    let write = usvg::WriteOptions {
        preserve_text: false,
        coordinates_precision: 2,
        transforms_precision: 4,
        ..usvg::WriteOptions::default()
    };
    let outlines = tree.to_string(&write);
    // Its head gives the size in dots alone: ours says millimetres for a sheet, and what the picture shows.
    let (_, rest) =
        outlines.split_once('>').filter(|(head, _)| head.starts_with("<svg")).ok_or(NoPicture::Unwritten)?;
    let dots = tree.size();
    let words: Vec<&str> = picture.texts().map(|placed| placed.text.as_str()).collect();
    Ok(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" {} viewBox=\"0 0 {} {}\" role=\"img\">\n<title>{}</title>\n<desc>{}</desc>{rest}",
        size(picture),
        n(f64::from(dots.width())),
        n(f64::from(dots.height())),
        escaped(&picture.title),
        escaped(&words.join(" · ")),
    ))
}

/// The same with its letters as letters: what the outlines and the PNG are made from.
pub fn with_letters(picture: &Picture) -> String {
    let mut file = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" {} viewBox=\"0 0 {} {}\">",
        size(picture),
        n(picture.width),
        n(picture.height)
    );
    patterns(&mut file, picture);
    let _ = write!(file, "<rect width=\"{}\" height=\"{}\" fill=\"#ffffff\"/>", n(picture.width), n(picture.height));
    for mark in &picture.marks {
        match mark {
            Mark::Shape(outline, look) => shape(&mut file, outline, look),
            Mark::Text(placed) => text(&mut file, placed),
        }
    }
    file.push_str("</svg>");
    file
}

fn size(picture: &Picture) -> String {
    match picture.paper {
        Paper::Screen => format!("width=\"{}\" height=\"{}\"", n(picture.width), n(picture.height)),
        Paper::Sheet { width_mm, height_mm } => format!("width=\"{width_mm}mm\" height=\"{height_mm}mm\""),
    }
}

/// A number as a file has it: no more than two decimals.
fn n(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// Text that stands between tags or in quotes.
pub fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            letter if letter.is_control() => safe.push(' '),
            letter => safe.push(letter),
        }
    }
    safe
}

fn patterns(file: &mut String, picture: &Picture) {
    let used: BTreeSet<Fill> = picture
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Shape(_, look) => look.fill,
            Mark::Text(_) => None,
        })
        .filter(|fill| fill.pattern().is_some())
        .collect();
    if used.is_empty() {
        return;
    }
    file.push_str("<defs>");
    for fill in used {
        let ink = fill.ink().code();
        let drawn = match fill {
            Fill::Plain(_) => continue,
            Fill::Stripes(_) => {
                format!("<path d=\"M-4 4 L4 -4 M0 16 L16 0 M12 20 L20 12\" stroke=\"{ink}\" stroke-width=\"5\"/>")
            }
            Fill::Falling(_) => {
                format!("<path d=\"M-4 12 L4 20 M0 0 L16 16 M12 -4 L20 4\" stroke=\"{ink}\" stroke-width=\"5\"/>")
            }
            Fill::Dots(_) => format!(
                "<circle cx=\"4\" cy=\"4\" r=\"3.2\" fill=\"{ink}\"/><circle cx=\"12\" cy=\"12\" r=\"3.2\" fill=\"{ink}\"/>"
            ),
            Fill::Mesh(_) => format!("<path d=\"M0 8 L16 8 M8 0 L8 16\" stroke=\"{ink}\" stroke-width=\"2.6\"/>"),
        };
        let _ = write!(
            file,
            "<pattern id=\"{}\" patternUnits=\"userSpaceOnUse\" width=\"16\" height=\"16\">\
             <rect width=\"16\" height=\"16\" fill=\"#ffffff\"/>{drawn}</pattern>",
            fill.pattern().unwrap_or_default(),
        );
    }
    file.push_str("</defs>");
}

fn shape(file: &mut String, outline: &Outline, look: &Look) {
    let _ = match outline {
        Outline::Rectangle { at, size, corner } => write!(
            file,
            "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"{}\"",
            n(at.0),
            n(at.1),
            n(size.0),
            n(size.1),
            n(*corner)
        ),
        Outline::Circle { middle, radius } => {
            write!(file, "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"", n(middle.0), n(middle.1), n(*radius))
        }
        Outline::Path(steps) => write!(file, "<path d=\"{}\"", path(steps)),
    };
    let fill = match look.fill {
        None => "none".to_owned(),
        Some(fill) => fill.pattern().map_or_else(|| fill.ink().code(), |name| format!("url(#{name})")),
    };
    let _ = write!(file, " fill=\"{fill}\"");
    if let Some((ink, width)) = look.edge {
        let _ = write!(
            file,
            " stroke=\"{}\" stroke-width=\"{}\" stroke-linejoin=\"round\" stroke-linecap=\"round\"",
            ink.code(),
            n(width)
        );
    }
    if let Some((stroke, gap)) = look.dashes {
        let _ = write!(file, " stroke-dasharray=\"{} {}\"", n(stroke), n(gap));
    }
    file.push_str("/>");
}

fn path(steps: &[Step]) -> String {
    let place = |at: &(f64, f64)| format!("{} {}", n(at.0), n(at.1));
    let steps: Vec<String> = steps
        .iter()
        .map(|step| match step {
            Step::To(at) => format!("M{}", place(at)),
            Step::Line(at) => format!("L{}", place(at)),
            Step::Curve(one, other, end) => format!("C{} {} {}", place(one), place(other), place(end)),
            Step::Close => "Z".to_owned(),
        })
        .collect();
    steps.join(" ")
}

fn text(file: &mut String, placed: &Placed) {
    let Placed { text, style, .. } = placed;
    let (left, line) = (placed.left(), placed.at.1);
    for run in set(text, style.size, style.bold).0 {
        let _ = write!(
            file,
            "<text x=\"{}\" y=\"{}\" font-family=\"{}\" font-size=\"{}\" font-weight=\"{}\" fill=\"{}\">{}</text>",
            n(left + run.at),
            n(line),
            run.family,
            n(style.size),
            if style.bold { 700 } else { 400 },
            style.ink.code(),
            escaped(run.text),
        );
    }
}
