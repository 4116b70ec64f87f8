//! Not about growing, or no sense in it.

use super::answer::{Answer, Outcome};
use super::line::Line;
use crate::understanding::Reading;

/// Short and polite; nothing invented, nothing revealed, nothing recorded.
pub fn answer(reading: &Reading) -> Answer {
    if reading.senseless {
        let choices = ["choice-water", "choice-harvest", "choice-person"].map(Line::new).to_vec();
        return Answer::ask(Line::new("not-understood"), choices);
    }
    Answer { lines: vec![Line::new("declined")], ..Answer::new(Outcome::Declined) }
}
