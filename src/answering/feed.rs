//! "When is the next feed, how much of what?"

use super::answer::{Answer, Outcome};
use super::care::NEAR_ENOUGH;
use super::facts::Facts;
use super::feed_bed;
use super::figure::Figure;
use super::handed_over::not_known;
use super::line::{Line, Said};
use super::subject::subjects;
use crate::garden::JobKind;
use crate::knowledge::{Kind, Material, MaterialKind, Point, SourceRef};
use crate::needs::feed::next_feed;
use crate::needs::feed_day::usual_days;
use crate::understanding::Reading;
use chrono::NaiveDate;

/// The article on what is fermented at home.
const FERMENTED: &str = "fermented-feeds";

/// A feed of one known salt, and the article on its use.
const EPSOM: &str = "epsom-salt";
const ON_EPSOM: &str = "epsom-salt-use";

/// What was overdone first, then what is no food and what the label decides, then the beds.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let has = |point: Point| reading.points.contains(&point);
    let named = feeds(reading, facts).next();
    if has(Point::Accident) {
        return accident();
    }
    if has(Point::Tonic) && named.is_none_or(|material| material.feed.is_none()) {
        return tonic();
    }
    // What is fermented at home has no label.
    let at_home = || {
        facts
            .articles
            .iter()
            .find(|found| found.what == FERMENTED)
            .and_then(|found| facts.known.articles.get(&found.what))
    };
    if let Some(article) =
        at_home().filter(|_| !has(Point::SyntheticFeed) && named.is_some_and(|material| material.feed.is_none()))
    {
        return super::care::told(article);
    }
    // Of what strength Epsom salt is, is known: what it is good for is told, as long as no measure is asked.
    let measure = [Point::Strength, Point::Amount].into_iter().any(has);
    let epsom = || named.filter(|material| material.id == EPSOM && !measure);
    if let Some(article) = epsom().and_then(|_| facts.known.articles.get(ON_EPSOM)) {
        return super::care::told(article);
    }
    if has(Point::SyntheticFeed) || named.is_some_and(|material| material.feed.is_none() && made(material)) {
        // How much of it is its label's matter; when the next is due after a day that was told is the rhythm's.
        let last = told_day(reading, facts.today()).filter(|_| reading.asks && !measure && !has(Point::SyntheticFeed));
        return last.map_or_else(by_label, |last| {
            let mut answer = by_rhythm(last, facts.today());
            answer.cautions.push(Line::new("caution-label-feed"));
            answer
        });
    }
    // Shoots on a tray, of no bed that was named.
    let nowhere = reading.beds.is_empty() && reading.bed_kind.is_none() && reading.crops.is_empty();
    if reading.microgreen && nowhere {
        return feed_bed::tray();
    }
    match subjects(reading, facts) {
        Ok(all) if all.is_empty() => not_known(),
        Ok(all) => feed_bed::answer(reading, facts, &all),
        Err(question) => match (named, told_day(reading, facts.today())) {
            (_, Some(last)) => by_rhythm(last, facts.today()),
            // "How many spoons of compost for it": which it is comes first.
            (Some(_), None) if reading.for_it => question,
            (Some(material), None) => of_material(material, facts),
            (None, None) => question,
        },
    }
}

/// Whether too much was given: what to do then is said even where the reading is less sure.
pub fn of_harm(reading: &Reading) -> bool {
    reading.kind == Kind::Feed && reading.points.contains(&Point::Accident)
}

/// The feeds that were named.
pub fn feeds<'a>(reading: &'a Reading, facts: &'a Facts<'_>) -> impl Iterator<Item = &'a Material> {
    let named = reading.materials.iter().filter_map(|id| facts.known.materials.get(id));
    named.filter(|material| {
        material.feed.is_some()
            || matches!(material.kind, MaterialKind::Feed | MaterialKind::Meal | MaterialKind::Compost)
    })
}

/// Bought as a feed, rather than a meal or compost whose figures are only missing.
fn made(material: &Material) -> bool {
    material.kind == MaterialKind::Feed
}

/// The day of the last feed as the message tells it.
pub fn told_day(reading: &Reading, today: NaiveDate) -> Option<NaiveDate> {
    let done = reading.did == Some(JobKind::Feed);
    reading.days.iter().map(|(day, _)| *day).find(|day| *day < today || *day == today && done)
}

/// Far too much was given: plain water, and no more.
fn accident() -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("feed-too-much"));
    answer.cautions.push(Line::new("caution-overfed"));
    answer.articles.push("feeding-a-bed".to_owned());
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

/// Peel water and the like.
fn tonic() -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("feed-tonic"));
    answer.cautions.push(Line::new("caution-feed"));
    answer.articles.push("feeding-a-bed".to_owned());
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

/// A manufactured feed: its label decides.
fn by_label() -> Answer {
    let mut answer = Answer::hand_over(Line::new("feed-label"));
    answer.cautions.push(Line::new("caution-label-feed"));
    answer
}

/// A crop that is not known here, fed on a day that was told: the rhythm of the trade alone.
fn by_rhythm(last: NaiveDate, today: NaiveDate) -> Answer {
    let every = usual_days();
    let next = next_feed(last, &every, today);
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::date("next_feed", next));
    answer.lines.push(Line::new("feed-next-rhythm").with("day", Said::Days(next)).with("every", Said::Span(every, 0)));
    answer.lines.push(Line::new("feed-how").with("hot", Said::Key("mild")));
    answer.cautions.push(Line::new("caution-feed"));
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

/// How a material is given, with no bed in mind: its article, else its figures.
fn of_material(material: &Material, facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let near = facts.articles.first().filter(|found| found.score >= NEAR_ENOUGH);
    if let Some(article) = near.and_then(|found| facts.known.articles.get(&found.what)) {
        answer.lines.push(Line::new("article").with("answer", Said::Text(article.answer.clone())));
        if let Some(caution) = &article.caution {
            answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
        }
        answer.articles.push(article.id.clone());
        article.sources.iter().for_each(|source| answer.cite(source));
    }
    let figures = feed_bed::strengths(&mut answer, material, false, false);
    if answer.articles.is_empty() {
        if !figures {
            return not_known();
        }
        feed_bed::give(&mut answer, material, None, (false, true));
    }
    if answer.cautions.is_empty() {
        answer.cautions.push(Line::new("caution-feed"));
    }
    answer
}
