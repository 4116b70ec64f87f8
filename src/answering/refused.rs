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
    if is_of_a_plant(reading) {
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

/// "Potato sprouts have come, can I plant them", "the shoots of the chilli are small, shall I feed": of a plant in its bed,
/// and of nothing that anyone eats.
fn is_of_a_plant(reading: &Reading) -> bool {
    const EATEN: [&str; 22] = [
        "eat",
        "raw",
        "salad",
        "microgreen",
        "kha",
        "tray",
        "kid",
        "child",
        "bachch",
        "famil",
        "guest",
        "rabbit",
        "cow",
        "hen",
        "bird",
        "parrot",
        "son",
        "daught",
        "baby",
        "खा",
        "बच्च",
        "सलाद",
    ];
    let has = |starts: &[&str]| reading.all_words.iter().any(|word| starts.iter().any(|start| word.starts_with(start)));
    let eaten = reading.points.iter().any(|point| matches!(point, Point::Raw | Point::Wait))
        || reading.bed_kind == Some(BedKind::Tray)
        || has(&EATEN);
    let fed = reading.jobs.iter().any(|job| matches!(job, JobKind::Feed | JobKind::Plant | JobKind::Spray));
    let planted = reading.all_words.contains("plant") || has(&["lagau", "lagaun", "लगाऊ"]);
    (fed || planted) && !eaten && reading.refused.is_empty()
}
