//! "Not Sunday, Saturday", "kal nahi parso": what is denied beside another of its sort is not meant.

use super::deeds::Deeds;
use super::{Found, Named, Told};
use crate::knowledge::Knowledge;
use crate::script::{Language, Text};
use std::ops::Range;

/// Sorts of things that one says instead of another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Sort {
    Day,
    Amount,
    /// Crops and beds alike: "not the basket, the chilli".
    Subject,
    /// What was used, and what was done with it.
    Stuff,
    Job,
}

impl Found {
    /// Takes away what is denied where another of its sort is said; whether anything was.
    pub(super) fn without_denied(&mut self, text: &Text, known: &Knowledge) -> bool {
        let slots = self.slots();
        let denied: Vec<Range<usize>> = self.negations().filter_map(|not| self.denied_by(text, &slots, &not)).collect();
        let is_denied = |span: &Range<usize>| denied.iter().any(|denied| denied == span);
        let kept = |sort: Sort| slots.iter().any(|(other, span)| *other == sort && !is_denied(span));
        let gone: Vec<Range<usize>> =
            slots.iter().filter(|(sort, span)| is_denied(span) && kept(*sort)).map(|(_, span)| span.clone()).collect();
        if gone.is_empty() {
            return false;
        }
        // The crop within a bed's name goes with it.
        let goes = |span: &Range<usize>| gone.iter().any(|gone| gone.start <= span.start && span.end <= gone.end);
        self.names.retain(|hit| !goes(&hit.span));
        self.days.retain(|day| !goes(&day.span));
        self.quantities.said.retain(|said| !goes(&said.span));
        self.quantities.counts.retain(|count| !goes(&count.span));
        let before = self.told.len();
        self.told.retain(|hit| !matches!(hit.meaning, Told::Did(_) | Told::Thing(_)) || !goes(&hit.span));
        if self.told.len() != before {
            let days: Vec<Range<usize>> = self.days.iter().map(|day| day.span.clone()).collect();
            let deeds = Deeds {
                text,
                known,
                told: &self.told,
                names: &self.names,
                quantities: &self.quantities,
                days: &days,
                come: false,
                gone: false,
                asks: self.asks,
                noted: false,
            };
            self.did = deeds.job();
        }
        true
    }

    /// The days, amounts, names and jobs that are said.
    fn slots(&self) -> Vec<(Sort, Range<usize>)> {
        let days = self.days.iter().map(|day| (Sort::Day, day.span.clone()));
        let said = self.quantities.said.iter().map(|said| said.span.clone());
        let amounts = said.chain(self.quantities.counts.iter().map(|count| count.span.clone()));
        let amounts = amounts.map(|span| (Sort::Amount, span));
        let names = self.names.iter().filter_map(|hit| match hit.meaning {
            Named::Crop(_) | Named::OwnBed(_) | Named::BedKind(_) => Some((Sort::Subject, hit.span.clone())),
            Named::Material(_) | Named::Mix(_) => Some((Sort::Stuff, hit.span.clone())),
            _ => None,
        });
        let jobs = self.told.iter().filter_map(|hit| match hit.meaning {
            Told::Did(_) => Some((Sort::Job, hit.span.clone())),
            _ => None,
        });
        let mut all: Vec<(Sort, Range<usize>)> = days.chain(amounts).chain(names).chain(jobs).collect();
        // "The tomato bag" is one thing, whatever else its words are.
        let whole = all.clone();
        all.retain(|(sort, span)| {
            !whole.iter().any(|(other, around)| {
                other == sort && around.len() > span.len() && around.start <= span.start && span.end <= around.end
            })
        });
        all
    }

    fn negations(&self) -> impl Iterator<Item = Range<usize>> {
        self.told.iter().filter(|hit| hit.meaning == Told::Not).map(|hit| hit.span.clone())
    }

    /// What a word for "not" denies: what stands before it in Hindi, what follows it in English. A verb beside it is what
    /// it denies, and nothing else.
    fn denied_by(&self, text: &Text, slots: &[(Sort, Range<usize>)], not: &Range<usize>) -> Option<Range<usize>> {
        let empty = |at: usize| self.is_empty_word(at);
        let mark = |at: usize| text.tokens.get(at).is_none_or(|token| !token.normal.chars().any(char::is_alphanumeric));
        let in_slot = |at: usize| slots.iter().any(|(_, span)| span.contains(&at));
        let mut after = not.end;
        while after < text.tokens.len() && empty(after) && !in_slot(after) {
            after += 1;
        }
        if text.language == Language::En {
            return slots.iter().find(|(_, span)| span.start == after).map(|(_, span)| span.clone());
        }
        if !(mark(after) || in_slot(after)) {
            return None;
        }
        let mut before = not.start;
        while before > 0 && empty(before - 1) && !in_slot(before - 1) {
            before -= 1;
        }
        slots.iter().find(|(_, span)| span.end == before).map(|(_, span)| span.clone())
    }

    /// A word that steers and says nothing by itself.
    pub(super) fn is_empty_word(&self, at: usize) -> bool {
        self.told.iter().any(|hit| {
            hit.span.contains(&at)
                && matches!(hit.meaning, Told::Filler | Told::FollowUp | Told::Correction | Told::Pronoun)
        })
    }
}
