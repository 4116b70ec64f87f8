//! What a new bed is to be called: "call it the kitchen box", "iska naam rasoi box rakho".

use super::leans::is_mark;
use super::{Found, Reading, Told};
use crate::knowledge::Kind;
use crate::script::{Language, Text};

/// A name has at most so many words.
const LONGEST: usize = 4;

/// Such a message has at most so many tokens.
const SHORT: usize = 10;

impl Found {
    /// The words after "call it", as they are written, without an article and without the verb that ends a Hindi sentence.
    pub(super) fn called(&self, text: &Text) -> Option<String> {
        const ENDS: [&str; 22] = [
            "rakho",
            "rakhna",
            "rakh",
            "rakhenge",
            "rakha",
            "hai",
            "h",
            "hoga",
            "do",
            "dena",
            "kar",
            "karo",
            "please",
            "pls",
            "रखो",
            "रखना",
            "रखें",
            "रखिए",
            "रख",
            "रखा",
            "है",
            "होगा",
        ];
        let called = self.told.iter().filter(|hit| hit.meaning == Told::Called).max_by_key(|hit| hit.span.end);
        let Some(hit) = called else { return self.numbered(text) };
        let mut from = hit.span.end;
        while matches!(text.normal(from), "the" | "as" | "is" | "it" | ":") {
            from += 1;
        }
        let ends = |at: &usize| is_mark(text, *at) || ENDS.contains(&text.normal(*at));
        let to = (from..text.tokens.len()).find(ends).unwrap_or(text.tokens.len());
        let (first, last) = (text.tokens.get(from)?, text.tokens.get(to.checked_sub(1)?)?);
        let words = to.checked_sub(from).filter(|words| (1..=LONGEST).contains(words))?;
        let name = text.original.get(first.span.start..last.span.end)?;
        let letters = (from..from + words).any(|at| text.tokens.get(at).is_some_and(|token| token.is_word()));
        (letters && (text.language == Language::En || to < text.tokens.len() || !self.asks)).then(|| name.to_owned())
    }

    /// "Call it the kitchen box" after a new bed was told: that bed, with its name.
    pub(super) fn names_the_new_bed(&self, text: &Text, reading: &Reading, before: &Reading) -> Option<Reading> {
        let told = before.kind == Kind::Record && before.new_bed && !before.undo;
        if !told || reading.called.is_none() || self.asks || text.tokens.len() > SHORT {
            return None;
        }
        Some(Reading {
            called: reading.called.clone(),
            follow_up: true,
            language: reading.language,
            devanagari_digits: reading.devanagari_digits,
            why: false,
            ..before.clone()
        })
    }
}
