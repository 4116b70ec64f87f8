//! Someone is hurt or may be: what to do now, and nothing else.

use super::answer::Answer;
use super::line::{Line, Said};
use crate::knowledge::{Emergency, SourceRef};

/// First help that any first-aid course teaches, and the way to a doctor; the crew is told as well.
pub fn answer(what: Emergency) -> Answer {
    let what = match what {
        Emergency::Swallowed => "swallowed",
        Emergency::Eye => "eye",
        Emergency::Bite => "bite",
        Emergency::Heat => "heat",
        Emergency::Fall => "fall",
    };
    let mut answer = Answer::hand_over(Line::new("emergency-first").with("what", Said::Key(what)));
    answer.lines.push(Line::new("emergency-help"));
    answer.cautions.push(Line::new("caution-emergency"));
    answer.cite(&SourceRef::new("common-practice", "first aid"));
    answer.stops = true;
    answer
}
