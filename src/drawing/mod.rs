//! An answer → a picture, a calendar file, a page to print.
//!
//! A [`Picture`] is plain data: shapes and texts at their places. From it come an SVG file (with its texts
//! turned to outlines, so that it looks the same on every phone and in every print shop) and a PNG. Pictures are
//! made to be read in the sun and without colour vision: few dark inks on white, patterns and words beside them.
//!
//! **Never here:** figures of its own, I/O, the clock.

mod calendar;
mod card;
mod fonts;
mod labels;
mod link;
mod of_answer;
mod page;
mod paint;
mod pictogram;
mod picture;
mod plan;
mod png;
mod pour;
mod shape;
mod svg;
mod water;
mod words;
mod year;

pub use calendar::calendar;
pub use card::card;
pub use fonts::{boxes, has_letters_for, legible, width};
pub use labels::{Label, labels};
pub use link::{NoLink, deep_link};
pub use of_answer::picture_for;
pub use page::page;
pub use paint::{Fill, Ink};
pub use picture::{Anchor, Mark, Paper, Picture, Placed};
pub use png::{NoPicture, png};
pub use shape::{Look, Outline};
pub use svg::svg;
pub use words::Words;
