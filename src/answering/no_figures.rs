//! A plant that people know by name and that no file here is about: nothing of it is worked out, and nothing is answered
//! of another plant in its place.

use super::answer::Answer;
use super::care;
use super::facts::Facts;
use super::feed;
use super::line::{Line, Said};
use crate::knowledge::{Kind, Names};
use crate::understanding::Reading;

/// That there are no figures of it; where no plant of the base is named beside it, and the question is of a plant.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    let of_a_plant = matches!(
        reading.kind,
        Kind::Water
            | Kind::Harvest
            | Kind::Sow
            | Kind::Shade
            | Kind::Feed
            | Kind::Mix
            | Kind::Space
            | Kind::Seed
            | Kind::Care
    );
    if !of_a_plant || !reading.crops.is_empty() || feed::of_harm(reading) {
        return None;
    }
    // What is told of all plants holds for this one.
    let general = reading.kind == Kind::Care && care::article(facts).is_some_and(|article| article.crops.is_empty());
    let names = named(reading, facts).filter(|_| !general)?;
    Some(Answer::hand_over(Line::new("no-figures").with("plant", Said::Text(names.first_of_each()))))
}

fn named<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Names> {
    let of_list = || {
        let id = reading.other_plants.first()?;
        facts.known.other_plants.plants.iter().find(|plant| plant.id == *id).map(|plant| &plant.names)
    };
    let refused = || {
        let id = reading.refused.first()?;
        facts.known.refused_shoots.iter().find(|shoot| shoot.id == *id).map(|shoot| &shoot.names)
    };
    of_list().or_else(refused)
}
