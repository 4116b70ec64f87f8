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

fn is_said(reading: &Reading, topic: &str, language: Language) -> bool {
    let topic: BTreeSet<String> = index_words_as(topic, language).into_iter().collect();
    let has = |forms: &Vec<String>| forms.iter().any(|form| topic.contains(form));
    reading.telling.iter().all(has) && topic.iter().all(|word| reading.all_words.contains(word))
}

/// What a word means or which of two things is better, asked in the words of a topic: told before any figure.
pub fn meant<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    let asked = [Point::Meaning, Point::Choice].iter().any(|point| reading.points.contains(point));
    let own = reading.beds_named || !reading.measures.is_empty() || reading.did.is_some() || reading.follow_up;
    if !asked || own {
        return None;
    }
    let choice =
        reading.points.contains(&Point::Choice) && matches!(reading.kind, Kind::Care | Kind::Mix | Kind::Build);
    said(reading, facts).or_else(|| care::instead(reading, facts).filter(|_| choice))
}
