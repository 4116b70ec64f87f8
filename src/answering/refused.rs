//! Shoots that must not be grown and eaten: named, with the reason, whatever else was asked of them.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::line::{Line, Said};
use crate::garden::{BedKind, JobKind};
use crate::knowledge::{Kind, Point, RefusedShoot};
use crate::understanding::Reading;

/// The refusal, where a message is about shoots of what must not be eaten so.
pub fn shoots(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    // A trouble on a plant, or work that was done, is no plan to eat it.
    let trouble = reading.kind == Kind::Trouble && !reading.signs.is_empty();
    if (trouble || matches!(reading.kind, Kind::Record | Kind::None)) && reading.refused.is_empty() {
        return None;
    }
    // "Potato sprouts have come, can I plant them", "the shoots of the chilli are small, shall I feed": a plant in its bed.
    let eaten = reading.points.iter().any(|point| matches!(point, Point::Raw | Point::Wait))
        || reading.bed_kind == Some(BedKind::Tray);
    let cared_for = reading.jobs.iter().any(|job| matches!(job, JobKind::Feed | JobKind::Plant | JobKind::Spray));
    let named = reading.all_words.iter().any(|word| word.starts_with("microgreen") || word.starts_with("salad"));
    if cared_for && !eaten && reading.refused.is_empty() && !named {
        return None;
    }
    let means = |shoot: &&RefusedShoot| match &shoot.crop {
        Some(crop) => reading.microgreen && reading.crops.contains(crop),
        // What is no crop here is asked after for no other use than to be sprouted or eaten.
        None => {
            let eaten = reading.points.contains(&Point::Wait) || reading.bed_kind == Some(BedKind::Tray);
            (reading.microgreen || eaten) && reading.refused.contains(&shoot.id)
        }
    };
    let meant: Vec<&RefusedShoot> = facts.known.refused_shoots.iter().filter(means).collect();
    if meant.is_empty() {
        return None;
    }
    let mut answer = Answer::new(Outcome::Answered);
    for shoot in meant {
        let name = match &shoot.crop {
            Some(crop) => Said::Crop(crop.clone()),
            None => Said::Text(shoot.names.first_of_each()),
        };
        answer.lines.push(Line::new("shoots-refused").with("crop", name));
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(shoot.reason.clone())));
        answer.cite(&shoot.source);
    }
    answer.lines.push(Line::new("shoots-instead"));
    Some(answer)
}
