//! Words that name a plant and are something else beside other words: "til Thursday", "jab main gaon jau", "do rai".

use super::{Hit, Named};
use crate::script::{Language, Text};
use crate::understanding::dates::DayFound;

/// Whose opinion it is, or how many there are.
const WHOSE: [&str; 10] = ["do", "aapki", "apki", "sabki", "unki", "uski", "teri", "tumhari", "inki", "nek"];

/// Who goes, or where to.
const GOES: [&str; 18] = [
    "main", "mai", "gaon", "gaanv", "bahar", "baahar", "ghar", "office", "chala", "chali", "wapas", "mayke", "jab",
    "shaadi", "shadi", "dilli", "chhutti", "bazaar",
];

/// What a time lasts until, besides a day.
const UNTIL: [&str; 12] = ["i", "we", "they", "it", "then", "next", "the", "evening", "morning", "night", "now", "end"];

/// Whether the one word of a name is no plant here.
pub(super) fn is_no_plant(text: &Text, days: &[DayFound], hit: &Hit<Named>) -> bool {
    const NEAR: usize = 4;
    let at = hit.span.start;
    if hit.span.len() != 1 || !matches!(hit.meaning, Named::Crop(_) | Named::OtherPlant(_) | Named::Material(_)) {
        return false;
    }
    let before = at.checked_sub(1).map_or("", |before| text.normal(before));
    match text.normal(at) {
        "राय" => true,
        "rai" | "raay" => WHOSE.contains(&before),
        "til" => {
            let day = days.iter().any(|day| day.span.start == at + 1 || day.span.contains(&at));
            text.language == Language::En && (day || UNTIL.contains(&text.normal(at + 1)))
        }
        "jau" | "jaun" | "jaoon" | "jaau" => {
            (at.saturating_sub(NEAR)..at).any(|place| GOES.contains(&text.normal(place)))
        }
        _ => false,
    }
}
