//! Labels for beds: a sheet to cut, each with the code that opens the bed's chat.

use super::fonts::{legible, width};
use super::paint::Ink;
use super::picture::{Picture, Style, broken};
use super::png::NoPicture;
use super::shape::{At, Look, Outline, Step};
use super::words::Words;
use qrcode::{Color, EcLevel, QrCode};

/// One bed's label.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Label {
    /// What people call the bed.
    pub bed: String,
    pub site: String,
    /// Its deep link.
    pub link: String,
}

/// Across and down on one sheet.
const SHEET: (usize, usize) = (2, 4);
/// Nearer to the edge many printers do not print.
const EDGE: f64 = 48.0;

/// Sheets of labels, eight on each.
///
/// # Errors
/// [`NoPicture::Code`] when a link is too long for a code.
pub fn labels(labels: &[Label], words: &Words<'_>) -> Result<Vec<Picture>, NoPicture> {
    labels.chunks(SHEET.0 * SHEET.1).map(|of_sheet| sheet(of_sheet, words)).collect()
}

fn sheet(labels: &[Label], words: &Words<'_>) -> Result<Picture, NoPicture> {
    let names: Vec<&str> = labels.iter().map(|label| label.bed.as_str()).collect();
    let mut page = Picture::page(names.join(", "));
    let size = ((page.width - 2.0 * EDGE) / SHEET.0 as f64, (page.height - 2.0 * EDGE) / SHEET.1 as f64);
    for (place, one) in labels.iter().enumerate() {
        let (across, down) = ((place % SHEET.0) as f64, (place / SHEET.0) as f64);
        cuts(&mut page, (EDGE + across * size.0, EDGE + down * size.1), size, (place % SHEET.0 == 0, place < SHEET.0));
        label(&mut page, one, words, (EDGE + across * size.0, EDGE + down * size.1), size)?;
    }
    Ok(page)
}

/// Dashes where to cut: right of a label and below it, and before the first of a row or a column.
fn cuts(page: &mut Picture, (left, top): At, (wide, high): (f64, f64), (first_across, first_down): (bool, bool)) {
    let (right, bottom) = (left + wide, top + high);
    let mut lines = vec![[(right, top), (right, bottom)], [(left, bottom), (right, bottom)]];
    if first_across {
        lines.push([(left, top), (left, bottom)]);
    }
    if first_down {
        lines.push([(left, top), (right, top)]);
    }
    for line in lines {
        page.shape(Outline::lines(&line), Look::line(Ink::Slate, 2.0).dashed(10.0, 8.0));
    }
}

fn label(page: &mut Picture, label: &Label, words: &Words<'_>, at: At, size: (f64, f64)) -> Result<(), NoPicture> {
    let inside = 28.0;
    let code = 300.0;
    let (left, within) = (at.0 + inside, size.0 - 2.0 * inside);
    let name = Style::new(58.0, Ink::Soot).bold();
    if width(&label.bed, 40.0, true) <= within {
        page.fitted((left, at.1 + 80.0), name, within, 40.0, &label.bed);
    } else {
        let half = Style { size: 34.0, ..name };
        let lines = broken(&legible(&label.bed), half, within);
        for (place, line) in lines.iter().take(2).enumerate() {
            // What is left over stands on the second line, and is cut there.
            let rest = if place == 1 { lines[1..].join(" ") } else { line.clone() };
            page.fitted((left, at.1 + 48.0 + 46.0 * place as f64), half, within, 30.0, rest);
        }
    }
    draw_code(page, &label.link, (left, at.1 + 106.0), code)?;
    let (beside, room) = (left + code + 20.0, within - code - 20.0);
    let down = page.paragraph((beside, at.1 + 150.0), Style::new(30.0, Ink::Soot).bold(), room, &label.site);
    page.paragraph((beside, down + 8.0), Style::new(27.0, Ink::Soot), room, words.say("draw-label-scan"));
    Ok(())
}

/// A code with the quiet margin of four modules that its standard asks for (ISO/IEC 18004). A quarter of it may be
/// dirty or torn: it hangs outdoors.
fn draw_code(page: &mut Picture, link: &str, at: At, size: f64) -> Result<(), NoPicture> {
    const QUIET: usize = 4;
    let code = QrCode::with_error_correction_level(link.as_bytes(), EcLevel::Q)
        .map_err(|fault| NoPicture::Code(fault.to_string()))?;
    let modules = code.width();
    let module = size / (modules + 2 * QUIET) as f64;
    let place = |count: usize| (count + QUIET) as f64 * module;
    page.shape(Outline::rectangle(at, (size, size)), Look::plain(Ink::Paper));
    let colours = code.to_colors();
    let mut steps = Vec::new();
    for (row, line) in colours.chunks(modules).enumerate() {
        let mut column = 0;
        while column < modules {
            let dark = line[column..].iter().take_while(|colour| **colour == Color::Dark).count();
            if dark > 0 {
                let (left, right) = (at.0 + place(column), at.0 + place(column + dark));
                let (upper, lower) = (at.1 + place(row), at.1 + place(row + 1));
                steps.extend([
                    Step::To((left, upper)),
                    Step::Line((right, upper)),
                    Step::Line((right, lower)),
                    Step::Line((left, lower)),
                    Step::Close,
                ]);
            }
            column += dark.max(1);
        }
    }
    page.shape(Outline::Path(steps), Look::plain(Ink::Soot));
    Ok(())
}
