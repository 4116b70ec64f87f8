//! Any other fact or how-to: the nearest article.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::handed_over::not_known;
use super::line::{Line, Said};
use super::{own_beds, topic, wants};
use crate::knowledge::{Article, Kind, Point};
use crate::understanding::Reading;

/// An article further from the message than this answers something else (BM25 of title, topics and text;
/// found by looking at where good and bad hits part).
pub const NEAR_ENOUGH: f64 = 9.0;
/// The best article must be this much ahead of the next, or both may be meant.
const AHEAD: f64 = 1.05;

/// Articles on harm to someone.
const ON_HARM: [&str; 3] = ["eating-raw-shoots", "pets-and-plants", "poisonous-leaves-in-beds"];

/// The article's two sentences, with its caution.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if let Some(plain) = own_beds::answer(reading, facts).or_else(|| wants::answer(reading, facts)) {
        return plain;
    }
    if let Some(article) = of_dividing(reading, facts) {
        return told(article);
    }
    if let Some(article) = topic::said(reading, facts) {
        return told(article);
    }
    let meant = of_climbing(reading, facts)
        .or_else(|| article(facts).filter(|article| shares_words(reading, article, facts)))
        .or_else(|| one_of_two(reading, facts))
        .or_else(|| by_topic(reading, facts));
    if let Some(article) = meant {
        return told(article);
    }
    let near = facts.articles.iter().take(2).filter(|found| found.score >= NEAR_ENOUGH);
    let choices = near.filter_map(|found| {
        let article = facts.known.articles.get(&found.what)?;
        Some(Line::new("choice-article").with("title", Said::Text(article.title.clone())))
    });
    let choices: Vec<Line> = choices.collect();
    if choices.is_empty() { not_known() } else { Answer::ask(Line::new("which-article"), choices) }
}

/// The one article that is near enough, and clearly nearer than the next.
pub fn article<'a>(facts: &'a Facts<'_>) -> Option<&'a Article> {
    let found = facts.articles.first().filter(|found| found.score >= NEAR_ENOUGH)?;
    let next = facts.articles.get(1).map_or(0.0, |found| found.score);
    let ahead = found.score >= next * AHEAD;
    facts.known.articles.get(&found.what).filter(|_| ahead)
}

/// What vines climb on: the nearest that tells it, though a net is what else is in the message.
fn of_climbing<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    const TELLS: [&str; 2] = ["gourds-on-a-roof", "supporting-climbers"];
    let asked = reading.points.contains(&Point::Climbs);
    let near = facts.articles.iter().map(|found| found.what.as_str()).find(|id| TELLS.contains(id));
    asked.then(|| facts.known.articles.get(near.unwrap_or(TELLS[1])))?
}

/// How a clump is taken apart, of the plants that the article names; of others it is not known.
fn of_dividing<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    const TELLS: &str = "splitting-clumps";
    let article = facts.known.articles.get(TELLS)?;
    let named = reading.crops.is_empty() || reading.crops.iter().any(|crop| article.crops.contains(crop));
    (reading.points.contains(&Point::Divides) && named).then_some(article)
}

/// Of two that are as near: the one on harm to someone, else the one of the crop that was named.
fn one_of_two<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    let near = facts.articles.iter().take(2).filter(|found| found.score >= NEAR_ENOUGH);
    let two: Vec<&Article> = near.filter_map(|found| facts.known.articles.get(&found.what)).collect();
    let of_crop = |article: &&Article| article.crops.iter().any(|crop| reading.crops.contains(crop));
    let only = |which: &dyn Fn(&&Article) -> bool| {
        let mut meant = two.iter().copied().filter(which);
        meant.next().filter(|_| meant.next().is_none())
    };
    only(&|article| ON_HARM.contains(&article.id.as_str())).or_else(|| only(&of_crop))
}

/// An article that is only just near enough shares words with the message in one of its topics; else its text is near by
/// chance: "a friend gave me a seedling, what does it want" is of no feed that was given.
fn shares_words(reading: &Reading, article: &Article, facts: &Facts<'_>) -> bool {
    /// BM25 as of `NEAR_ENOUGH`, and the share of words of `topic::nearness` (judgement).
    const NEAR: f64 = 14.0;
    const SHARED: f64 = 0.2;
    /// Where a how-to was as surely asked for, what is near is told.
    const SURE: f64 = 0.8;
    let score = facts.articles.first().map_or(0.0, |found| found.score);
    score >= NEAR || reading.sureness >= SURE || topic::nearness(reading, article) >= SHARED
}

/// Of those that are as near as the first: the one that a topic names in nearly the words of the message.
fn by_topic<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    let first = facts.articles.first()?.score;
    let near = facts.articles.iter().filter(|found| found.score >= NEAR_ENOUGH && found.score * AHEAD > first);
    let near: Vec<&Article> = near.filter_map(|found| facts.known.articles.get(&found.what)).collect();
    topic::nearest(reading, &near)
}

/// The article that is told where the kind of a message is not sure: nearer, and further ahead of the next, than where
/// a how-to was surely asked for; chatter must be nearer still. (Of 150 questions that articles answer, nine in ten
/// hits beyond these borders were right.)
pub fn instead<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    const NEAR: f64 = 12.0;
    const NEAR_FOR_CHATTER: f64 = 16.0;
    const WELL_AHEAD: f64 = 1.15;
    let least = if reading.kind == Kind::None { NEAR_FOR_CHATTER } else { NEAR };
    let found = facts.articles.first().filter(|found| found.score >= least && !reading.senseless)?;
    let next = facts.articles.get(1).map_or(0.0, |found| found.score);
    facts.known.articles.get(&found.what).filter(|_| found.score >= next * WELL_AHEAD)
}

/// What a message about harm to someone is near to, whatever else it asks: it is told before any figure.
pub fn of_harm<'a>(facts: &'a Facts<'_>) -> Option<&'a Article> {
    /// Nearer than for other articles, since it takes the place of another answer.
    const VERY_NEAR: f64 = 14.0;
    let near = facts.articles.first().is_some_and(|found| found.score >= VERY_NEAR);
    article(facts).filter(|article| near && ON_HARM.contains(&article.id.as_str()))
}

/// An article told.
pub fn told(article: &Article) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("article").with("answer", Said::Text(article.answer.clone())));
    if let Some(caution) = &article.caution {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
    answer.working.push(Line::new("working-article").with("title", Said::Text(article.title.clone())));
    for source in &article.sources {
        answer.cite(source);
    }
    answer.articles.push(article.id.clone());
    answer
}
