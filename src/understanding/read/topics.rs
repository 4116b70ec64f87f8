//! What a message speaks of in words of its own: those that speak of one kind alone, and things that are named.

use super::leans::is_mark;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, MaterialKind, StepWords};
use crate::script::{Language, Text};
use std::ops::Range;

impl Found {
    /// "Put in beans on 1 april, when pods": the first of what was sown or planted, and nothing else is spoken of.
    pub(super) fn about_the_fruit_of_it(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.85;
        let begun = matches!(self.did, Some(JobKind::Sow | JobKind::Plant)) && !self.days.is_empty();
        let topics = self.topics(text, reader);
        let only = !topics.is_empty() && topics.iter().all(|hit| matches!(hit.meaning, Kind::Harvest | Kind::Sow));
        let fruit = topics.iter().any(|hit| hit.meaning == Kind::Harvest);
        (begun && self.asks && only && fruit && self.names_crop() && !self.sprays && !self.feeds)
            .then_some((Kind::Harvest, SURE))
    }

    /// The words that speak of one kind alone, in their order; what is only a circumstance ("under the net", "with half day
    /// shade", "in how much water"), denied ("not water") or left ("forget feeding") is none.
    pub(super) fn topics(&self, text: &Text, reader: &Reader<'_>) -> Vec<Hit<Kind>> {
        let steps = &reader.known.talk.steps;
        let mut all = self.topics_said(text, reader);
        all.retain(|hit| !is_circumstance(text, hit, steps) && !self.is_left(text, &hit.span, steps));
        all
    }

    fn topics_said(&self, text: &Text, reader: &Reader<'_>) -> Vec<Hit<Kind>> {
        let mut all = self.topic_words.clone();
        // What a thing is called speaks of that thing: "soap water", "the spinach box".
        all.retain(|hit| {
            self.names.iter().all(|name| !(name.span.start <= hit.span.start && hit.span.end <= name.span.end))
        });
        for name in &self.names {
            if let Some(kind) = of_thing(&name.meaning, reader) {
                all.push(Hit { span: name.span.clone(), meaning: kind, exact: true });
            }
        }
        all.extend(self.how_many_of_a_crop(text));
        all.sort_by_key(|hit| hit.span.start);
        all
    }

    /// "How many okra", "kitne baingan".
    fn how_many_of_a_crop(&self, text: &Text) -> Option<Hit<Kind>> {
        let many = |at: usize| match text.normal(at) {
            "many" | "mny" => at.checked_sub(1).is_some_and(|how| matches!(text.normal(how), "how" | "hw")),
            "kitne" | "कितने" => true,
            _ => false,
        };
        let crops = self.names.iter().filter(|hit| matches!(hit.meaning, Named::Crop(_)));
        let counted = |hit: &&Hit<Named>| hit.span.start.checked_sub(1).is_some_and(many);
        crops.into_iter().find(counted).map(|hit| Hit { span: hit.span.clone(), meaning: Kind::Space, exact: true })
    }

    /// "Not water", "forget feeding", "khaad chhodo".
    fn is_left(&self, text: &Text, span: &Range<usize>, steps: &StepWords) -> bool {
        let article = |at: usize| if matches!(text.normal(at), "the" | "about") { at.saturating_sub(1) } else { at };
        let before = span.start.checked_sub(1).map(article);
        let after = span.end + usize::from(matches!(text.normal(span.end), "ki" | "ka" | "की" | "का"));
        match text.language {
            Language::En => before.is_some_and(|at| is_one_of(&steps.left, text, at)),
            _ => is_one_of(&steps.left_after, text, after) && !self.asks_after(text, after),
        }
    }

    /// "Pani nahi du kya" asks about the water.
    fn asks_after(&self, text: &Text, at: usize) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Question && hit.span.start > at)
            && !(at..text.tokens.len()).any(|place| text.normal(place) == ",")
    }

    /// "Not water, spacing", "forget feeding, when does it fruit": the one kind that is said where that of the question
    /// before is left.
    pub(super) fn turns_to(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<Kind> {
        let left = self
            .topics_said(text, reader)
            .into_iter()
            .filter(|hit| self.is_left(text, &hit.span, &reader.known.talk.steps));
        let leaves = left.into_iter().any(|hit| hit.meaning == before.kind);
        let others = self.topics(text, reader);
        let kind = others.first()?.meaning;
        (leaves && kind != before.kind && others.iter().all(|hit| hit.meaning == kind)).then_some(kind)
    }
}

/// What is asked of a thing that is named: a net, something to spray, a feed.
fn of_thing(named: &Named, reader: &Reader<'_>) -> Option<Kind> {
    match named {
        Named::Material(id) => match reader.known.materials.get(id)?.kind {
            MaterialKind::Net => Some(Kind::Shade),
            MaterialKind::Spray => Some(Kind::Spray),
            MaterialKind::Feed | MaterialKind::Meal => Some(Kind::Feed),
            _ => None,
        },
        Named::Trouble(_) => Some(Kind::Trouble),
        _ => None,
    }
}

/// "Under the net", "with half day shade", "in how much water", "jaali ke neeche", "kitne pani me".
fn is_circumstance(text: &Text, hit: &Hit<Kind>, steps: &StepWords) -> bool {
    /// So many words may stand between.
    const APART: usize = 3;
    let (start, end) = (hit.span.start, hit.span.end);
    let near = |list: &[String]| {
        let before = (1..=APART).filter_map(|back| start.checked_sub(back)).take_while(|at| !is_mark(text, *at));
        before.into_iter().any(|at| is_one_of(list, text, at))
    };
    let placed = is_one_of(&steps.of, text, end) && is_one_of(&steps.with_after, text, end + 1);
    let into = hit.meaning == Kind::Water && (near(&steps.into) || is_one_of(&steps.into_after, text, end));
    into || if text.language == Language::En { near(&steps.with) } else { placed }
}

/// Whether the word here is one of a list, as it is written.
pub(super) fn is_one_of(list: &[String], text: &Text, at: usize) -> bool {
    let word = text.normal(at);
    list.iter().any(|one| one == word)
}
