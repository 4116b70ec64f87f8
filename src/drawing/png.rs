//! A picture as a PNG file.

use super::fonts::options;
use super::picture::{Paper, Picture};
use super::svg::with_letters;
use resvg::{tiny_skia, usvg};
use thiserror::Error;

/// A picture that could not be drawn.
#[derive(Debug, Error)]
pub enum NoPicture {
    #[error("the drawing is not well-formed: {0}")]
    Drawing(#[from] usvg::Error),
    #[error("the drawing is {wide} by {high} dots; 1 to {MOST} each way expected")]
    Size { wide: f64, high: f64 },
    #[error("the PNG could not be written: {0}")]
    Encoding(String),
    #[error("the code of a link could not be made: {0}")]
    Code(String),
    #[error("the SVG could not be written: its head was not found")]
    Unwritten,
}

/// A picture is never larger than this, dots each way.
const MOST: f64 = 6_000.0;

/// A PNG: a screen dot for dot, a sheet at 200 dots an inch.
///
/// # Errors
/// [`NoPicture`] when the drawing is not well-formed or has no fit size.
pub fn png(picture: &Picture) -> Result<Vec<u8>, NoPicture> {
    /// Dots a millimetre at 200 dots an inch.
    const DOTS_A_MM: f64 = 200.0 / 25.4;
    let scale = match picture.paper {
        Paper::Screen => 1.0,
        Paper::Sheet { width_mm, .. } => f64::from(width_mm) * DOTS_A_MM / picture.width,
    };
    let (wide, high) = ((picture.width * scale).round(), (picture.height * scale).round());
    let fits = |dots: f64| (1.0..=MOST).contains(&dots);
    let canvas = if fits(wide) && fits(high) { tiny_skia::Pixmap::new(wide as u32, high as u32) } else { None };
    let mut canvas = canvas.ok_or(NoPicture::Size { wide, high })?;
    let tree = usvg::Tree::from_str(&with_letters(picture), &options())?;
    // The tree has the size of the file in dots of CSS; what is drawn is its view.
    let to_view = wide / f64::from(tree.size().width());
    resvg::render(&tree, tiny_skia::Transform::from_scale(to_view as f32, to_view as f32), &mut canvas.as_mut());
    canvas.encode_png().map_err(|fault| NoPicture::Encoding(fault.to_string()))
}
