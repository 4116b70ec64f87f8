//! Whether a message is of another world than a garden: by classes of words, and by what of a garden stands beside them.
//!
//! A net may be slow, a feed may be for fish, a bed may hold bugs that bite people: what decides is the company of a word.

use super::phrasebook::{By, Forms, Hit, Phrasebook};
use crate::knowledge::{Kind, Knowledge, Mark, Point};
use crate::script::{Language, Text, sound_key};
use rustc_hash::FxHashSet;
use std::ops::Range;

/// Words of other worlds, and what of them tells that a message is of one.
#[derive(Debug, Clone)]
pub struct WorldBook {
    /// English by stems; Hindi by whole sounds, since its stems meet: "bank" is no "banake".
    english: Phrasebook<usize>,
    hindi: Phrasebook<usize>,
    /// Words as they are spelled, by their class: sounds too short to tell must be one of them.
    spelled: FxHashSet<(usize, String)>,
    told: Vec<Rule>,
}

#[derive(Debug, Clone)]
struct Rule {
    all: Vec<Vec<Sort>>,
    unless: Vec<Sort>,
    company: Company,
}

/// What the company of its words makes of a message.
#[derive(Debug, Clone, Copy)]
pub struct Company {
    pub kind: Kind,
    pub point: Option<Point>,
    /// It stands whatever the other words are usual for.
    pub whatever: bool,
}

/// A class of words by its place, or a mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Sort {
    Class(usize),
    Mark(Mark),
}

impl WorldBook {
    /// Gathers the words of the knowledge base.
    #[must_use]
    pub fn of(known: &Knowledge) -> Self {
        let worlds = &known.worlds;
        let mut english = Phrasebook::new(By::Stem, &known.ordinary);
        let mut hindi = Phrasebook::new(By::Whole, &known.ordinary);
        let mut spelled = FxHashSet::default();
        for (class, list) in worlds.words.iter().enumerate() {
            for (language, phrases) in list.words.each() {
                let book = if language == Language::En { &mut english } else { &mut hindi };
                for phrase in phrases {
                    book.add_phrase(phrase, language, &class);
                    let single = Text::read_as(phrase, language).tokens.into_iter();
                    spelled.extend(single.map(|token| (class, token.normal)));
                }
            }
        }
        let sorts = |slot: &String| -> Vec<Sort> {
            let sort = |name: &str| match Mark::with_name(name) {
                Some(mark) => Some(Sort::Mark(mark)),
                None => worlds.words.iter().position(|words| words.class == name).map(Sort::Class),
            };
            worlds.within(slot).filter_map(sort).collect()
        };
        let rule = |told: &crate::knowledge::WorldTold| Rule {
            all: told.all.iter().map(sorts).collect(),
            unless: told.unless.iter().flat_map(sorts).collect(),
            company: Company { kind: told.kind, point: told.point, whatever: told.whatever },
        };
        Self { english, hindi, spelled, told: worlds.told.iter().map(rule).collect() }
    }

    /// What is told by the company of the words: what is refused whatever else is said, then a product that is no one's to
    /// pour, then what stands first in the file. `marks` are what a garden's words make of it, each with its place;
    /// `names` the places of names that hold no other word: "curry leaf" is no curry.
    #[must_use]
    pub fn tells(&self, forms: &Forms, marks: &[(Mark, Range<usize>)], names: &[Range<usize>]) -> Option<Company> {
        let within = |span: &Range<usize>| {
            names.iter().any(|name| {
                let inside = name.start <= span.start && span.end <= name.end;
                // What ends within a name of two words holds a piece of it: "put in french beans" is in no French.
                let cuts = span.start < name.start && name.start < span.end && span.end < name.end;
                inside || cuts
            })
        };
        let heard =
            |hit: &Hit<usize>| hit.span.len() > 1 || self.is_spelled(forms.written(hit.span.start), hit.meaning);
        let hindi = self.hindi.find_all(forms).into_iter().filter(heard);
        let words = self.english.find_all(forms).into_iter().chain(hindi).filter(|hit| !within(&hit.span));
        let mut said: Vec<(Sort, Range<usize>)> =
            words.map(|Hit { span, meaning, .. }| (Sort::Class(meaning), span)).collect();
        said.extend(marks.iter().map(|(mark, span)| (Sort::Mark(*mark), span.clone())));
        let told: Vec<&Rule> = self.told.iter().filter(|rule| rule.is_told(&said)).collect();
        let product = told.iter().find(|rule| rule.company.point.is_some());
        // What is refused whatever else is said is refused before a product is spoken of.
        let refused = told.iter().find(|rule| rule.company.whatever && rule.company.kind == Kind::None);
        let rule = refused.or(product).or(told.first())?;
        Some(Company { whatever: told.iter().any(|rule| rule.company.whatever), ..rule.company })
    }
}

impl WorldBook {
    /// A sound so short that it is that of other words counts as it is spelled alone.
    fn is_spelled(&self, written: &str, class: usize) -> bool {
        const SHORTEST_SOUND: usize = 5;
        sound_key(written).chars().count() >= SHORTEST_SOUND || self.spelled.contains(&(class, written.to_owned()))
    }
}

impl Rule {
    fn is_told(&self, said: &[(Sort, Range<usize>)]) -> bool {
        let Some(taken) = filled(&self.all, said, &mut Vec::new()) else { return false };
        // "Bed bugs" are of no bed.
        let beside = |span: &Range<usize>, other: &Range<usize>| span.end <= other.start || other.end <= span.start;
        // A longer phrase that holds it says more: "not arrived at all" within "arrived".
        let holds = |span: &Range<usize>, other: &Range<usize>| {
            span.start <= other.start && other.end <= span.end && other.len() < span.len()
        };
        let free = |span: &Range<usize>| taken.iter().all(|other| beside(span, other) || holds(span, other));
        !said.iter().any(|(sort, span)| self.unless.contains(sort) && (span.is_empty() || free(span)))
    }
}

/// The places that fill all slots, each with words of its own; the longest phrases are tried first.
fn filled(
    slots: &[Vec<Sort>],
    said: &[(Sort, Range<usize>)],
    taken: &mut Vec<Range<usize>>,
) -> Option<Vec<Range<usize>>> {
    let Some((slot, rest)) = slots.split_first() else { return Some(taken.clone()) };
    let mut places: Vec<&Range<usize>> =
        said.iter().filter(|(sort, _)| slot.contains(sort)).map(|(_, span)| span).collect();
    places.sort_by_key(|span| std::cmp::Reverse(span.len()));
    for span in places {
        if taken.iter().all(|other| span.end <= other.start || other.end <= span.start) {
            taken.push(span.clone());
            if let Some(all) = filled(rest, said, taken) {
                return Some(all);
            }
            taken.pop();
        }
    }
    None
}
