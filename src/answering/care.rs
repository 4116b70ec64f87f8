//! Any other fact or how-to: the nearest article.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::handed_over::not_known;
use super::line::{Line, Said};
use crate::understanding::Reading;

/// An article further from the message than this answers something else (BM25 of title, topics and text;
/// found by looking at where good and bad hits part).
pub const NEAR_ENOUGH: f64 = 9.0;
/// The best article must be this much ahead of the next, or both may be meant.
const AHEAD: f64 = 1.05;

/// The article's two sentences, with its caution.
pub fn answer(_reading: &Reading, facts: &Facts<'_>) -> Answer {
    let Some(found) = facts.articles.first().filter(|found| found.score >= NEAR_ENOUGH) else {
        return not_known();
    };
    let next = facts.articles.get(1).map_or(0.0, |found| found.score);
    let Some(article) = facts.known.articles.get(&found.what) else { return not_known() };
    if found.score < next * AHEAD {
        let choices = facts.articles.iter().take(2).filter_map(|found| {
            let article = facts.known.articles.get(&found.what)?;
            Some(Line::new("choice-article").with("title", Said::Text(article.title.clone())))
        });
        return Answer::ask(Line::new("which-article"), choices.collect());
    }
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
