//! Someone is hurt or may be: what to do now, and nothing else.

use super::answer::Answer;
use super::line::{Line, Said};
use crate::knowledge::{Emergency, SourceRef};

/// First help that any first-aid course teaches, and the way to a doctor; the crew is told as well.
pub fn answer(what: Emergency) -> Answer {
    let what = match what {
        Emergency::Swallowed => "swallowed",
        Emergency::Breathed => "breathed",
        Emergency::Skin => "skin",
        Emergency::Eye => "eye",
        Emergency::Bite => "bite",
        Emergency::Heat => "heat",
        Emergency::Fall => "fall",
        Emergency::Shock => "shock",
        Emergency::Cut => "cut",
        Emergency::Burn => "burn",
        Emergency::Blow => "blow",
        Emergency::Choked => "choked",
        Emergency::Despair => return despair(),
        Emergency::WouldEat => return never_eat(),
    };
    let mut answer = Answer::hand_over(Line::new("emergency-first").with("what", Said::Key(what)));
    answer.lines.push(Line::new("emergency-help"));
    answer.cautions.push(Line::new("caution-emergency"));
    answer.cite(&match what {
        "eye" | "burn" | "skin" => SourceRef::new("first-aid-chemicals", "what to do"),
        "cut" => SourceRef::new("first-aid-wounds", "care of a wound, tetanus"),
        "shock" => SourceRef::new("first-aid-electric", "what to do"),
        "blow" => SourceRef::new("first-aid-bones", "bones and joints, sprains"),
        "choked" => SourceRef::new("first-aid-choking", "what to do"),
        "fall" => SourceRef::new("first-aid-falls", "what to do"),
        _ => SourceRef::new("common-practice", "first aid"),
    });
    answer.stops = true;
    answer
}

/// Who does not want to live: to people at once, and nothing of what was asked.
fn despair() -> Answer {
    let mut answer = Answer::hand_over(Line::new("despair-first"));
    answer.lines.push(Line::new("emergency-help"));
    answer.cite(&SourceRef::new("common-practice", "first aid"));
    answer.stops = true;
    answer
}

/// A mushroom or a datura that came up by itself, and the wish to cook it: never, and someone of the crew looks at it.
fn never_eat() -> Answer {
    let mut answer = Answer::hand_over(Line::new("never-eat"));
    answer.lines.push(Line::new("never-eat-do"));
    answer.cautions.push(Line::new("caution-never-eat"));
    answer.articles.push("weeds-and-lookalikes".to_owned());
    answer.cite(&SourceRef::new("datura-family-2020", "abstract"));
    answer.cite(&SourceRef::new("common-practice", "wild mushrooms"));
    answer.stops = true;
    answer
}
