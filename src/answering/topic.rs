//! A message that says just what a topic of an article says: "what is mulching", "cocopeat ya mitti".

use super::care;
use super::facts::Facts;
use crate::knowledge::{Article, Kind, Point};
use crate::script::{Language, index_words_as};
use crate::understanding::Reading;
use std::collections::BTreeSet;

/// The article one of whose topics has every telling word of the message and no word that the message lacks; the
/// nearest of several.
pub fn said<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    if reading.telling.is_empty() {
        return None;
    }
    let mut near = facts.articles.iter().filter_map(|found| facts.known.articles.get(&found.what));
    near.find(|article| {
        let topics = article
            .topics
            .each()
            .into_iter()
            .flat_map(|(language, all)| all.iter().map(move |topic| (language, topic)));
        topics.into_iter().any(|(language, topic): (Language, &String)| is_said(reading, topic, language))
    })
}

/// The one of several articles with a topic that is much nearer to the message than any of the others'.
pub fn nearest<'a>(reading: &Reading, among: &[&'a Article]) -> Option<&'a Article> {
    /// So much nearer, in shares of the words of both (judgement).
    const NEARER: f64 = 0.15;
    /// Less than this is shared by chance (judgement: "plants keep mosquitoes away" shares less with keeping a bottle away).
    const LEAST: f64 = 0.4;
    /// So many words of a message tell enough of it.
    const ENOUGH: usize = 2;
    if reading.telling.len() < ENOUGH {
        return None;
    }
    let mut by_topic: Vec<(f64, &'a Article)> =
        among.iter().map(|article| (nearness(reading, article), *article)).collect();
    by_topic.sort_by(|a, b| b.0.total_cmp(&a.0));
    match by_topic.as_slice() {
        [(first, article), (second, _), ..] if *first >= LEAST && *first >= second + NEARER => Some(article),
        _ => None,
    }
}

/// A topic of so many words all of which the message has counts at least so much (judgement).
const WHOLE: (usize, f64) = (3, 0.8);

/// How near the nearest topic of an article is to the message: the share of the words of both that both have, 0 to 1.
pub fn nearness(reading: &Reading, article: &Article) -> f64 {
    let topics = article.topics.each().into_iter();
    let all = topics.flat_map(|(language, all)| all.iter().map(move |topic| shared(reading, topic, language)));
    all.fold(0.0, f64::max)
}

/// The share of the words of a message and of a topic that both have, 0 to 1.
fn shared(reading: &Reading, topic: &str, language: Language) -> f64 {
    let topic: BTreeSet<String> = index_words_as(topic, language).into_iter().collect();
    let both = reading.telling.iter().filter(|forms| forms.iter().any(|form| topic.contains(form))).count();
    let all = reading.telling.len() + topic.len().saturating_sub(both);
    let whole = both >= WHOLE.0 && topic.iter().all(|word| reading.all_words.contains(word));
    let share = if all == 0 { 0.0 } else { both as f64 / all as f64 };
    if whole { share.max(WHOLE.1) } else { share }
}

fn is_said(reading: &Reading, topic: &str, language: Language) -> bool {
    let topic: BTreeSet<String> = index_words_as(topic, language).into_iter().collect();
    let has = |forms: &Vec<String>| forms.iter().any(|form| topic.contains(form));
    reading.telling.iter().all(has) && topic.iter().all(|word| reading.all_words.contains(word))
}

/// What a word means or which of two things is better, asked in the words of a topic: told before any figure.
pub fn meant<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    let asked = [Point::Meaning, Point::Choice].iter().any(|point| reading.points.contains(point));
    let own = reading.beds_named || !reading.measures.is_empty() || reading.did.is_some() || reading.follow_up;
    // "Which feed is right for it": of a bed that is still to be named.
    let bare = reading.crops.is_empty() && reading.materials.is_empty() && reading.mixes.is_empty();
    let of_it = reading.of_it && bare && !reading.points.contains(&Point::Meaning);
    if !asked || own || of_it {
        return None;
    }
    let choice =
        reading.points.contains(&Point::Choice) && matches!(reading.kind, Kind::Care | Kind::Mix | Kind::Build);
    said(reading, facts).or_else(|| care::instead(reading, facts).filter(|_| choice))
}
