//! What is asked of gardens in general, where no bed need be named; and what can be told while one is asked for.

use super::answer::{Answer, Outcome};
use super::care;
use super::facts::Facts;
use super::handed_over::not_known;
use super::line::{Line, Said};
use super::spray::product;
use super::wants;
use crate::garden::JobKind;
use crate::knowledge::{Article, Kind, Material, Point, SourceRef};
use crate::needs::feed_day::usual_days;
use crate::needs::spray::WASHES_OFF_MM;
use crate::understanding::Reading;

/// What is sprayed where nothing else was named (common practice).
const USUAL_PRODUCT: &str = "neem-oil";

/// Words for buying and for a list of parts, as they are compared.
const LIST: [&str; 12] = [
    "purchas",
    "purchase",
    "purchased",
    "buy",
    "shop",
    "shopping",
    "list",
    "material",
    "saman",
    "samagri",
    "kharid",
    "सामान",
];

/// An article on no more plants than these is told of them alone.
const FEW_PLANTS: usize = 6;

/// An answer as it was, but where it asks which bed is meant: then the rule of the trade beside the question, or, where
/// it was asked in general, in its place.
pub fn instead(answer: Answer, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let asks = |what: &str| answer.outcome == Outcome::AskedBack && answer.lines.iter().any(|line| line.phrase == what);
    // "Are holes needed, or is the cloth enough": how a box is made is told of any size.
    // A list of what to buy hangs on the size, whatever else its words are near to.
    let list = LIST.iter().any(|word| reading.all_words.contains(*word));
    // "How deep a box for ginger": of any length and width.
    if asks("ask-size")
        && let Some(told) = wants::answer(reading, facts)
    {
        return told;
    }
    if asks("ask-size")
        && !list
        && reading.asks
        && reading.quantities.is_empty()
        && !reading.points.contains(&Point::Amount)
    {
        return care::instead(reading, facts).map_or(answer, care::told);
    }
    if !asks("ask-which-bed") {
        return answer;
    }
    // What wet coir weighs: of no bed.
    if reading.kind == Kind::Load && !reading.materials.is_empty() && reading.beds.is_empty() {
        return Answer { cautions: answer.cautions, ..not_known() };
    }
    if is_general(reading)
        && !reading.for_it
        && let Some(told) = in_general(reading, facts)
    {
        return Answer { cautions: answer.cautions, ..Answer::new(told.outcome) }.joined(told);
    }
    let mut answer = answer;
    if let Some((rule, source)) = rule(reading, facts) {
        answer.lines.push(rule);
        answer.cite(&source);
    }
    answer
}

/// No bed, crop or size, nothing that was done, and no word for one's own, for a certain day or for an amount.
fn is_general(reading: &Reading) -> bool {
    let placed = !reading.beds.is_empty() || reading.bed_kind.is_some() || !reading.measures.is_empty();
    // "Can it be sprayed at dusk" tells of nothing done.
    let done = reading.did.is_some() && reading.kind != Kind::Spray || reading.saw.is_some();
    let timed = !reading.days.is_empty() || done || reading.points.contains(&Point::Missed);
    let bare = reading.points.contains(&Point::BareAsked);
    let own = bare || reading.points.contains(&Point::Own) || reading.follow_up;
    let asks = reading.asks || reading.points.contains(&Point::Time);
    // How much depends on the bed.
    let how_much = match reading.kind {
        Kind::Water => reading.points.contains(&Point::Amount) || reading.vessels.is_some(),
        Kind::Feed => [Point::Amount, Point::Strength].iter().any(|point| reading.points.contains(point)),
        _ => false,
    };
    let amount = !reading.quantities.is_empty() || how_much;
    asks && !amount && !placed && !timed && !own && reading.crops.is_empty()
}

/// The nearest article, or the rule; none where the bed must be known.
fn in_general(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    // "Every day or every other day": what is told of certain plants alone answers no question in general.
    let of_any = |article: &&Article| article.crops.is_empty() || article.crops.len() > FEW_PLANTS;
    let near = || care::instead(reading, facts).or_else(|| care::article(facts)).filter(of_any).map(care::told);
    match reading.kind {
        Kind::Spray => {
            let when = reading.points.contains(&Point::Time) || reading.points.contains(&Point::Midday);
            let rule = || rule(reading, facts).map(told);
            let answer = if when { rule().or_else(near) } else { near().or_else(rule) };
            Some(answer.unwrap_or_else(not_known))
        }
        Kind::Mix => Some(near().unwrap_or_else(not_known)),
        Kind::Feed => near(),
        // The rule of the finger says more than an article that is near by chance.
        Kind::Water => care::instead(reading, facts).filter(of_any).map(care::told),
        _ => None,
    }
}

fn told((rule, source): (Line, SourceRef)) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(rule);
    answer.cite(&source);
    answer
}

/// What holds for every bed.
fn rule(reading: &Reading, facts: &Facts<'_>) -> Option<(Line, SourceRef)> {
    match reading.kind {
        Kind::Spray => of_spray(reading, facts),
        Kind::Feed => {
            let line = Line::new("feed-general").with("every", Said::Span(usual_days(), 0));
            Some((line, SourceRef::new("common-practice", "feed every 7 to 10 days")))
        }
        Kind::Water if reading.aspects.is_empty() => {
            Some((Line::new("water-general"), SourceRef::new("common-practice", "the finger test")))
        }
        _ => None,
    }
}

/// Of the product named; of the usual one where a spray is spoken of and nothing else is named.
fn of_spray(reading: &Reading, facts: &Facts<'_>) -> Option<(Line, SourceRef)> {
    let unnamed = reading.materials.is_empty() && reading.jobs.contains(&JobKind::Spray);
    let usual = || facts.known.materials.get(USUAL_PRODUCT).filter(|_| unnamed);
    let material: &Material = product(reading, facts).or_else(usual)?;
    let spray = material.spray.as_ref()?;
    let line = Line::new("spray-general")
        .with("material", Said::Material(material.id.clone()))
        .with("limit", Said::Temperature(spray.not_above.value()))
        .with("every", Said::Span(spray.every_days.is, 0))
        .with("rain", Said::Number(WASHES_OFF_MM, 0));
    Some((line, spray.every_days.source.clone()))
}
