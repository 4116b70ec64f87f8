//! Short messages that answer what was asked back, or want the last answer put otherwise.

use super::leans::{is_mark, says_this_one};
use super::{Found, Hit, Reading, Told};
use crate::garden::BedId;
use crate::knowledge::{Kind, Point};
use crate::script::{Language, Text};
use chrono::Days;

/// Such a message has at most so many tokens.
const SHORT: usize = 7;

/// So many other words may stand beside the place of what is chosen.
const BESIDE: usize = 3;

impl Found {
    fn has(&self, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what)
    }

    /// The place among what was offered, from 1.
    pub(super) fn nth(&self) -> Option<usize> {
        // "The second one": the later place is meant, "one" is no place then.
        self.told.iter().filter_map(|hit| if let Told::Nth(place) = hit.meaning { Some(place) } else { None }).max()
    }

    /// The language that is asked for.
    pub(super) fn speaks(&self) -> Option<Language> {
        // "The child's Hindi homework" asks for no other language.
        if self.by_company == Some(Kind::None) {
            return None;
        }
        self.told.iter().find_map(|hit| if let Told::Speak(language) = hit.meaning { Some(language) } else { None })
    }

    pub(super) fn shorter(&self) -> bool {
        self.has(&Told::Shorter)
    }

    /// Nothing but a wish for another language or fewer words.
    pub(super) fn once_more(&self, text: &Text) -> bool {
        let wish = self.speaks().is_some() || self.shorter();
        let bare = self.names.is_empty() && self.signs.is_empty() && self.quantities.said.is_empty();
        wish && bare && text.tokens.len() <= SHORT
    }

    /// Which of the beds that were offered is meant, named by its place: "the second", "dono". Words that tell no
    /// place leave the question as it was.
    pub(super) fn chosen(&self, text: &Text, reading: &Reading, before: &Reading) -> Option<Reading> {
        let offered = &before.offered_beds;
        let named = !reading.crops.is_empty() || reading.beds_named || !self.quantities.said.is_empty();
        // "When is the next one" asks of a day, and chooses none.
        let when = self.asks && self.says_point(Point::Time);
        if offered.is_empty() || named || when || text.tokens.len() > SHORT || self.did.is_some() {
            return None;
        }
        // "Cool. Did we bat first yesterday": a place among other things. "And this one" tells none.
        if self.words_beside_a_place(text) > BESIDE || says_this_one(text) {
            return None;
        }
        // "Not the first one", "first I will check", "maybe the second", "did the first one wilt" choose none.
        let asks = self.told.iter().any(|hit| matches!(hit.meaning, Told::Question | Told::DidAsk | Told::Request));
        let unsure =
            text.tokens.iter().any(|token| matches!(token.normal.as_str(), "maybe" | "shayad" | "शायद" | "times"));
        let begins = matches!(
            (text.normal(0), text.normal(1)),
            ("first", "i" | "we" | "let" | "tell") | ("pehle", "main" | "mai")
        );
        if begins || self.has(&Told::Not) || self.has(&Told::Will) || asks || unsure {
            return None;
        }
        let last =
            text.tokens.iter().any(|token| matches!(token.normal.as_str(), "last" | "aakhri" | "akhri" | "आख़िरी"));
        let places = self.places_told(text);
        let beds: Vec<BedId> = match (self.nth(), self.has(&Told::Both)) {
            _ if last && places.is_empty() => offered.last().cloned().into_iter().collect(),
            // Of several places each must be there.
            _ if last || places.len() > 1 => {
                let all: Option<Vec<BedId>> = places.iter().map(|place| offered.get(place - 1).cloned()).collect();
                all.filter(|_| !last)?
            }
            (_, true) => offered.iter().take(2).cloned().collect(),
            (Some(place), _) => vec![offered.get(place - 1)?.clone()],
            (None, _) if self.is_nothing_but(text, &Told::Every) => offered.clone(),
            (None, _) => return None,
        };
        Some(Reading {
            beds,
            beds_named: true,
            offered_beds: Vec::new(),
            alike: Vec::new(),
            follow_up: true,
            language: reading.language,
            devanagari_digits: reading.devanagari_digits,
            why: false,
            another: false,
            ..before.clone()
        })
    }

    /// The places told, from 1, each once; "one" is none beside another.
    fn places_told(&self, text: &Text) -> Vec<usize> {
        let place = |hit: &Hit<Told>| match hit.meaning {
            Told::Nth(place) if !matches!(text.normal(hit.span.start), "one" | "ones") => Some(place),
            _ => None,
        };
        let mut places: Vec<usize> = self.told.iter().filter_map(place).collect();
        places.sort_unstable();
        places.dedup();
        places
    }

    /// Words that are neither empty nor tell a place.
    fn words_beside_a_place(&self, text: &Text) -> usize {
        let within = |at: usize| {
            let place = |hit: &&Hit<Told>| matches!(hit.meaning, Told::Nth(_) | Told::Both | Told::Every);
            self.told.iter().filter(place).any(|hit| hit.span.contains(&at))
        };
        (0..text.tokens.len()).filter(|at| !is_mark(text, *at) && !self.is_empty_word(*at) && !within(*at)).count()
    }

    /// Such words are there, and none besides but empty ones.
    fn is_nothing_but(&self, text: &Text, what: &Told) -> bool {
        let within = |at: usize| self.told.iter().any(|hit| hit.meaning == *what && hit.span.contains(&at));
        let empty = |at: usize| is_mark(text, at) || self.is_empty_word(at);
        self.has(what) && (0..text.tokens.len()).all(|at| within(at) || empty(at))
    }

    /// Which of the things that were offered is asked: by its place, or in its own words. Who wants a person instead has
    /// the question handed over that was not understood.
    pub(super) fn chosen_kind(&self, text: &Text, reading: &Reading, before: &Reading) -> Option<Reading> {
        /// What was chosen is plain (judgement).
        const SURE: f64 = 0.85;
        let named = !reading.crops.is_empty() || reading.beds_named || !self.quantities.said.is_empty();
        if before.offered_kinds.is_empty() || named || text.tokens.len() > SHORT || self.did.is_some() {
            return None;
        }
        let said = || before.offered_kinds.iter().find(|kind| **kind == reading.kind).copied();
        let kind = match self.nth() {
            Some(place) => *before.offered_kinds.get(place - 1)?,
            None if reading.kind == Kind::Person => Kind::Person,
            None => said()?,
        };
        Some(Reading {
            kind,
            sureness: SURE,
            offered_kinds: Vec::new(),
            follow_up: true,
            language: reading.language,
            devanagari_digits: reading.devanagari_digits,
            why: false,
            another: false,
            ..before.clone()
        })
    }

    /// "Till the 27th" after "leaving on Friday": the run from the one to the other.
    pub(super) fn with_end_of_days(&self, text: &Text, reading: &mut Reading, before: &Reading) {
        const TILL: [&str; 4] = ["till", "until", "til", "upto"];
        let (&[(from, same)], &[(until, last)]) = (before.days.as_slice(), reading.days.as_slice()) else { return };
        let Some(said) = self.days.first() else { return };
        let article = usize::from(said.span.start > 0 && text.normal(said.span.start - 1) == "the");
        let till = said.span.start.checked_sub(1 + article).is_some_and(|at| TILL.contains(&text.normal(at)));
        let tak = |at: usize| matches!(text.normal(at), "tak" | "तक");
        let ends = till || tak(said.span.end) || said.span.end.checked_sub(1).is_some_and(tak);
        if ends && from == same && until == last && until > from && self.did.is_none() {
            reading.days = vec![(from, until)];
        }
    }

    /// "And the day after?": after the day spoken of.
    pub(super) fn with_day_after(&self, reading: &mut Reading, before: &Reading) {
        let after = before.days.last().and_then(|(_, last)| last.checked_add_days(Days::new(1)));
        if let Some(day) = after.filter(|_| self.has(&Told::DayAfter) && reading.days.is_empty()) {
            reading.days.push((day, day));
        }
    }
}
