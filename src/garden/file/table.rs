//! Reading one table of a garden file: each key taken by its kind, every problem noted with its place.

use super::known::{expected_one_of, nearest};
use super::problem::{Problem, Source};
use crate::garden::measure::{Measurable, Measure};
use chrono::NaiveDate;
use std::fmt::Display;
use std::ops::{Range, RangeInclusive};
use std::str::FromStr;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Where problems are noted.
pub struct Notes {
    pub source: Source,
    pub problems: Vec<Problem>,
}

impl Notes {
    pub fn note(&mut self, span: Range<usize>, message: impl Into<String>, expected: impl Into<String>) {
        self.problems.push(self.source.problem(span, message.into(), expected.into()));
    }
}

/// A value with the place it stands at.
pub struct At<T> {
    pub value: T,
    pub span: Range<usize>,
}

/// A table with the place of its head.
pub struct Table<'t> {
    /// What it is, for people: "bed".
    what: &'static str,
    table: &'t DeTable<'t>,
    pub span: Range<usize>,
}

impl<'t> Table<'t> {
    /// Takes a table of which only these keys are known.
    pub fn new(
        what: &'static str,
        table: &'t DeTable<'t>,
        span: Range<usize>,
        keys: &[&str],
        notes: &mut Notes,
    ) -> Self {
        for (key, _) in table {
            if !keys.contains(&key.get_ref().as_ref()) {
                let message = format!("\"{}\" is no key of a {what}", key.get_ref());
                notes.note(key.span(), message, expected_one_of(key.get_ref(), "a known key", keys));
            }
        }
        Self { what, table, span }
    }

    pub fn get(&self, key: &str) -> Option<&'t Spanned<DeValue<'t>>> {
        self.table.get(key)
    }

    /// Notes that a key is missing.
    pub fn missing(&self, key: &str, expected: &str, notes: &mut Notes) {
        notes.note(self.span.clone(), format!("this {} has no {key}", self.what), format!("{key} = {expected}"));
    }

    pub fn has(&self, key: &str) -> bool {
        self.get(key).is_some()
    }

    /// Where the value of a key stands, else the head of the table.
    pub fn place(&self, key: &str) -> Range<usize> {
        self.get(key).map_or_else(|| self.span.clone(), Spanned::span)
    }

    pub fn text(&self, key: &str, example: &str, notes: &mut Notes) -> Option<At<&'t str>> {
        let value = self.get(key)?;
        match value.get_ref() {
            DeValue::String(text) if !text.trim().is_empty() => Some(At { value: text.as_ref(), span: value.span() }),
            DeValue::String(_) => {
                notes.note(value.span(), format!("{key} is empty"), format!("a text like \"{example}\""));
                None
            }
            other => {
                wrong_kind(key, other, value.span(), &format!("a text in quotes, like \"{example}\""), notes);
                None
            }
        }
    }

    /// A text that a type reads; its refusal is of the form that [`refuse`] knows.
    pub fn parsed<T: FromStr<Err: Display>>(&self, key: &str, example: &str, notes: &mut Notes) -> Option<At<T>> {
        let At { value, span } = self.text_or_date(key, example, notes)?;
        match value.parse() {
            Ok(value) => Some(At { value, span }),
            Err(refusal) => {
                refuse(key, &refusal.to_string(), span, notes);
                None
            }
        }
    }

    /// One of a closed list of words.
    pub fn word<T>(&self, key: &str, words: &[&str], find: fn(&str) -> Option<T>, notes: &mut Notes) -> Option<T> {
        let At { value, span } = self.text(key, words.first().copied().unwrap_or_default(), notes)?;
        let found = find(value);
        if found.is_none() {
            let near = nearest(value, words.iter().copied());
            let near = near.map_or_else(String::new, |near| format!("; did you mean \"{near}\"?"));
            let expected = format!("one of {}{near}", words.join(", "));
            notes.note(span, format!("{key} \"{value}\" is not known"), expected);
        }
        found
    }

    pub fn measure<Q: Measurable>(&self, key: &str, highest: Q, notes: &mut Notes) -> Option<Measure<Q>> {
        let At { value, span } = self.text(key, Q::EXAMPLE, notes)?;
        match Measure::read(value) {
            Ok(measure) if measure.quantity() > highest => {
                let expected = format!("at most {} {}", highest.base(), Q::UNIT);
                notes.note(span, format!("{key} \"{value}\" is out of bounds"), expected);
                None
            }
            Ok(measure) => Some(measure),
            Err(refusal) => {
                refuse(key, &refusal.to_string(), span, notes);
                None
            }
        }
    }

    pub fn day(&self, key: &str, notes: &mut Notes) -> Option<NaiveDate> {
        let At { value, span } = self.text_or_date(key, "2026-05-13", notes)?;
        let day = (value.len() == 10).then(|| value.parse::<NaiveDate>().ok()).flatten();
        if day.is_none() {
            notes.note(span, format!("{key} \"{value}\" is no day"), "a day of the calendar, like \"2026-05-13\"");
        }
        day
    }

    /// A number within bounds; `unit` follows the bounds in a refusal.
    pub fn number(&self, key: &str, bounds: &RangeInclusive<f64>, unit: &str, notes: &mut Notes) -> Option<f64> {
        let value = self.get(key)?;
        let expected = format!("a number from {} to {} {unit}", bounds.start(), bounds.end());
        let expected = expected.trim_end();
        let number: f64 = match value.get_ref() {
            DeValue::Integer(number) if number.radix() == 10 => number.as_str().parse().ok(),
            DeValue::Float(number) => number.as_str().parse().ok(),
            other => {
                wrong_kind(key, other, value.span(), expected, notes);
                return None;
            }
        }?;
        if bounds.contains(&number) {
            return Some(number);
        }
        notes.note(value.span(), format!("{key} {number} is out of bounds"), expected);
        None
    }

    pub fn yes_or_no(&self, key: &str, notes: &mut Notes) -> Option<bool> {
        let value = self.get(key)?;
        let DeValue::Boolean(yes) = value.get_ref() else {
            wrong_kind(key, value.get_ref(), value.span(), "true or false", notes);
            return None;
        };
        Some(*yes)
    }

    /// The items of a list; none where the key is left out.
    pub fn list(&self, key: &str, example: &str, notes: &mut Notes) -> &'t [Spanned<DeValue<'t>>] {
        let Some(value) = self.get(key) else { return &[] };
        let DeValue::Array(items) = value.get_ref() else {
            wrong_kind(key, value.get_ref(), value.span(), &format!("a list, like {example}"), notes);
            return &[];
        };
        items
    }

    /// The texts of a list.
    pub fn texts(&self, key: &str, example: &str, notes: &mut Notes) -> Vec<At<&'t str>> {
        let mut texts = Vec::new();
        for item in self.list(key, example, notes) {
            match item.get_ref().as_str() {
                Some(text) if !text.trim().is_empty() => texts.push(At { value: text, span: item.span() }),
                Some(_) => notes.note(item.span(), format!("{key} holds an empty text"), format!("like {example}")),
                None => wrong_kind(key, item.get_ref(), item.span(), &format!("texts, like {example}"), notes),
            }
        }
        texts
    }

    /// A text; or a day that was written without quotes, which means the same.
    pub fn text_or_date(&self, key: &str, example: &str, notes: &mut Notes) -> Option<At<String>> {
        let value = self.get(key)?;
        if let DeValue::Datetime(day) = value.get_ref() {
            return Some(At { value: day.to_string(), span: value.span() });
        }
        self.text(key, example, notes).map(|At { value, span }| At { value: value.to_owned(), span })
    }
}

/// Notes a refusal of the form "what was found; what was expected".
pub fn refuse(key: &str, refusal: &str, span: Range<usize>, notes: &mut Notes) {
    let (found, expected) = refusal.split_once("; ").unwrap_or((refusal, "another value"));
    let expected = expected.strip_suffix(" expected").unwrap_or(expected).trim_end_matches(',');
    let expected = expected.replace(" expected;", ";").replace("write it like", "a number and a unit, like");
    notes.note(span, format!("{key}: {found}"), expected);
}

fn wrong_kind(key: &str, found: &DeValue<'_>, span: Range<usize>, expected: &str, notes: &mut Notes) {
    let found = match found {
        DeValue::String(_) => "a text",
        DeValue::Integer(_) | DeValue::Float(_) => "a number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a day",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a table",
    };
    notes.note(span, format!("{key} is {found}"), expected);
}
