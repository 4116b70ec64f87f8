//! What is shown, and its JSON.

use super::phrases::Phrases;
use super::shown::Speaker;
use crate::answering::{Answer, Figure, FigureValue, Line, Outcome, ReadingShown};
use crate::knowledge::Knowledge;
use crate::script::Language;
use serde::{Serialize, Serializer};
use serde_json::{Map, Value, json};

/// A reply: what the person reads, and what a program reads.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Reply {
    /// Stands in a batch only.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<Value>,
    pub outcome: Outcome,
    pub reading: ReadingShown,
    #[serde(serialize_with = "figures")]
    pub figures: Vec<Figure>,
    pub text: String,
    pub working: Vec<String>,
    pub sources: Vec<String>,
    pub cautions: Vec<String>,
    pub articles: Vec<String>,
    pub choices: Vec<String>,
}

/// How a reply is to be put.
#[derive(Debug, Clone, Copy)]
pub struct Manner {
    pub language: Language,
    pub devanagari_digits: bool,
    /// The working is what was asked for.
    pub why: bool,
    /// The first line and the cautions alone.
    pub short: bool,
}

/// The cautions that are never crowded out of the text.
const SAFETY_FIRST: [&str; 3] = ["caution-load", "caution-weight", "caution-spray"];

/// So many cautions stand in the text; all stand in `cautions`.
const CAUTIONS_IN_TEXT: usize = 2;

/// Puts an answer into words.
#[must_use]
pub fn reply(answer: &Answer, known: &Knowledge, phrases: &Phrases, manner: Manner) -> Reply {
    let speaker = Speaker { phrases, known, language: manner.language, answer };
    let digits = |text: String| digits_of(&text, manner);
    let say = |lines: &[Line]| -> Vec<String> {
        lines.iter().map(|line| digits(large_first(speaker.line(line).trim()))).collect()
    };
    let mut by_harm: Vec<Line> = answer.cautions.clone();
    by_harm.sort_by_key(|line| !SAFETY_FIRST.contains(&line.phrase));
    let (lines, cautions) = (say(&answer.lines), once(say(&by_harm)));
    let working = [say(&answer.rest), say(&answer.working)].concat();
    // What was handed over or stopped has no working to show.
    let worked = manner.why && answer.outcome == Outcome::Answered && !working.is_empty();
    let mut shown = if worked { working.clone() } else { lines };
    // What is short asks nothing beside its answer.
    let brief = manner.short && answer.outcome != Outcome::AskedBack;
    if brief {
        shown.truncate(1);
    }
    if !cautions.is_empty() {
        for caution in cautions.iter().take(CAUTIONS_IN_TEXT) {
            let mut values = fluent_bundle::FluentArgs::new();
            values.set("text", small_first(caution, manner.language));
            shown.push(phrases.say("caution", &values));
        }
    }
    Reply {
        id: None,
        outcome: answer.outcome,
        reading: answer.reading.clone(),
        figures: answer.figures.clone(),
        text: once(shown).join("\n"),
        working,
        sources: answer.sources.iter().map(ToString::to_string).collect(),
        cautions,
        articles: answer.articles.clone(),
        choices: if brief { Vec::new() } else { say(&answer.choices) },
    }
}

/// A phrase that no answer stands behind: a greeting, a note of the front door.
#[must_use]
pub fn simple(phrases: &Phrases, phrase: &str) -> String {
    phrases.say(phrase, &fluent_bundle::FluentArgs::new())
}

/// A phrase of the front door with its values, texts as they are.
#[must_use]
pub fn filled(phrases: &Phrases, phrase: &str, values: &[(&str, &str)]) -> String {
    let mut all = fluent_bundle::FluentArgs::new();
    for (name, value) in values {
        all.set(*name, *value);
    }
    phrases.say(phrase, &all)
}

/// The same line said twice is said once.
fn once(lines: Vec<String>) -> Vec<String> {
    let mut seen = std::collections::BTreeSet::new();
    lines.into_iter().filter(|line| !line.is_empty() && seen.insert(line.clone())).collect()
}

fn large_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// After "Caution:" a sentence goes on small, unless it opens with a word that is large of itself.
fn small_first(text: &str, language: Language) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    let second_large = letters.clone().next().is_none_or(|letter| letter.is_uppercase() || !letter.is_alphabetic());
    if language == Language::Hi || second_large {
        return text.to_owned();
    }
    first.to_lowercase().chain(letters).collect()
}

/// A text with its figures in the digits that the person used.
#[must_use]
pub fn digits_of(text: &str, manner: Manner) -> String {
    if manner.devanagari_digits { in_devanagari(text) } else { text.to_owned() }
}

fn in_devanagari(text: &str) -> String {
    text.chars()
        .map(|letter| letter.to_digit(10).and_then(|digit| char::from_u32(0x0966 + digit)).unwrap_or(letter))
        .collect()
}

fn figures<S: Serializer>(figures: &[Figure], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_seq(figures.iter().map(figure))
}

/// A figure as the answer contract has it; what is missing is left out, never null.
fn figure(figure: &Figure) -> Value {
    let mut object = Map::new();
    object.insert("name".to_owned(), json!(figure.name));
    match &figure.is {
        FigureValue::Number { is, unit } => {
            object.insert("low".to_owned(), json!(is.low()));
            object.insert("value".to_owned(), json!(is.value()));
            object.insert("high".to_owned(), json!(is.high()));
            object.insert("unit".to_owned(), json!(unit));
        }
        FigureValue::Date(is) => {
            object.insert("low".to_owned(), json!(is.low().to_string()));
            object.insert("value".to_owned(), json!(is.value().to_string()));
            object.insert("high".to_owned(), json!(is.high().to_string()));
            object.insert("unit".to_owned(), json!("date"));
        }
        FigureValue::Time(is) => {
            object.insert("value".to_owned(), json!(is.format("%H:%M").to_string()));
            object.insert("unit".to_owned(), json!("time"));
        }
        FigureValue::Structure(value) => {
            object.insert("value".to_owned(), value.clone());
        }
    }
    if let Some(bed) = &figure.bed {
        object.insert("bed".to_owned(), json!(bed.to_string()));
    }
    if let Some(crop) = &figure.crop {
        object.insert("crop".to_owned(), json!(crop));
    }
    Value::Object(object)
}
