//! Pictures as files.

use super::front::write_file;
use super::refusal::Refusal;
use crate::drawing::{Picture, png, svg};
use std::path::Path;

/// A picture as SVG or PNG, by the ending of the file's name.
pub fn write_picture(picture: &Picture, file: &Path) -> Result<(), Refusal> {
    let ending = file.extension().and_then(|ending| ending.to_str()).unwrap_or_default().to_lowercase();
    let bytes = match ending.as_str() {
        "svg" => svg(picture).map(String::into_bytes),
        "png" => png(picture),
        _ => {
            let name = file.display();
            return Err(Refusal::plain(format!("{name}: a name that ends in .svg or .png expected for a picture")));
        }
    };
    write_file(file, &bytes.map_err(Refusal::plain)?)
}
