//! Not about growing, or no sense in it.

use super::answer::{Answer, Outcome};
use super::line::Line;
use crate::understanding::Reading;

/// Short and polite; nothing invented, nothing revealed, nothing recorded.
pub fn answer(reading: &Reading) -> Answer {
    if reading.once_more && reading.speaks.is_some() {
        let choices = ["choice-water", "choice-harvest", "choice-person"].map(Line::new).to_vec();
        return Answer::ask(Line::new("speaks-set"), choices);
    }
    if reading.ill_will {
        return Answer { lines: vec![Line::new("declined-harm")], ..Answer::new(Outcome::Declined) };
    }
    if reading.senseless {
        return not_understood();
    }
    Answer { lines: vec![Line::new("declined")], ..Answer::new(Outcome::Declined) }
}

/// No sense was found: three things to try.
pub fn not_understood() -> Answer {
    let choices = ["choice-water", "choice-harvest", "choice-person"].map(Line::new).to_vec();
    Answer::ask(Line::new("not-understood"), choices)
}
