//! Signs that a message says nothing but what is changed of the one before.

use super::follows::HAS_A_KIND_OF_ITS_OWN;
use super::{Found, Hit, Named, Reader, Told};
use crate::garden::BedId;
use crate::knowledge::{Kind, Point, Slips};
use crate::quantity::{UnitOf, Written};
use crate::script::{Language, Text, Token, index_word, numbers};
use crate::understanding::asker::Asker;
use crate::understanding::reading::{Measured, Reading};
use std::ops::Range;

/// So few words name one job among those that are due.
const NARROW: usize = 4;

impl Found {
    /// The same question with something else in it: another crop, size, number, day, unit or condition, and no kind said.
    pub(super) fn changes_only(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        before: &Reading,
        nearness: f64,
        open: &[usize],
    ) -> bool {
        /// So strange a text is chatter.
        const STRANGE: f64 = 0.5;
        let bare = matches!(before.kind, Kind::None | Kind::Person | Kind::Record);
        if bare || !self.signs.is_empty() {
            return false;
        }
        if self.wants_another_unit(text, before, open) {
            return true;
        }
        if nearness >= HAS_A_KIND_OF_ITS_OWN {
            return false;
        }
        if open.len() > 1 && self.strange(text, reader) >= STRANGE {
            return false;
        }
        let other_stuff = (self.sprays || self.feeds) && !matches!(before.kind, Kind::Spray | Kind::Feed);
        if self.supposes(text) {
            return !other_stuff;
        }
        // "Only spraying" of what is due.
        let words = text.tokens.iter().filter(|token| token.normal.chars().any(char::is_alphanumeric)).count();
        if before.kind == Kind::Due && !self.asks && words <= NARROW && self.jobs().len() == 1 {
            return true;
        }
        let changed = !self.names.is_empty()
            || !self.days.is_empty()
            || !self.months(text, reader).is_empty()
            || self.season().is_some()
            || self.measured_anything()
            || self.count_of_same(text).is_some();
        let why = self.told.iter().any(|hit| hit.meaning == Told::Why);
        if !changed || why || other_stuff || self.has_own_kind(text, reader, open) {
            return false;
        }
        let asks = self.asks_by_itself();
        let sized = self.measured_anything() && is_of_a_size(before.kind);
        self.says_the_same(text) || !asks && (self.begins_with(text, &Told::FollowUp) || sized)
    }

    fn measured_anything(&self) -> bool {
        let amount = |unit: UnitOf| matches!(unit, UnitOf::Length | UnitOf::Volume);
        let said = &self.quantities.said;
        // Millimetres of rain are no size.
        let rain = self.points().any(|point| matches!(point, Point::Rain | Point::RainFell | Point::NoRain));
        let sized = said.iter().any(|said| amount(said.written.unit.measures()));
        !rain && (sized || !self.quantities.dimensions.is_empty() || !self.quantities.bare.is_empty())
    }

    /// "Too", "instead", "make it": a single such word stands first or last.
    fn says_the_same(&self, text: &Text) -> bool {
        let last = |span: &Range<usize>| (span.end..text.tokens.len()).all(|at| is_mark(text, at));
        let first = |span: &Range<usize>| (0..span.start).all(|at| is_mark(text, at) || self.is_empty_word(at));
        self.told
            .iter()
            .filter(|hit| hit.meaning == Told::Same)
            .any(|hit| hit.span.len() > 1 || last(&hit.span) || first(&hit.span))
    }

    /// Nothing but empty words stand before a word of this meaning.
    pub(super) fn begins_with(&self, text: &Text, what: &Told) -> bool {
        self.told
            .iter()
            .filter(|hit| hit.meaning == *what)
            .any(|hit| (0..hit.span.start).all(|at| is_mark(text, at) || self.is_empty_word(at)))
    }

    /// "And if it's kept under the net", "jaali ke neeche ho to": a condition, and nothing asked beside it.
    pub(super) fn supposes(&self, text: &Text) -> bool {
        /// So many words after a comma ask for something.
        const CLAUSE: usize = 2;
        let spans: Vec<&Range<usize>> = self
            .told
            .iter()
            .filter(|hit| matches!(hit.meaning, Told::Condition | Told::ConditionEnd))
            .map(|hit| &hit.span)
            .collect();
        let begins = self.begins_with(text, &Told::Condition);
        let word_after = |from: usize| (from..text.tokens.len()).filter(|at| !is_mark(text, *at)).count();
        let ends = text.language != Language::En
            && self.told.iter().any(|hit| hit.meaning == Told::ConditionEnd && word_after(hit.span.end) == 0);
        let started = spans.first().map_or(0, |span| span.end);
        let main_clause = (started..text.tokens.len()).any(|at| {
            let ends = matches!(text.normal(at), "," | "then") || at > started && self.is_end_of_condition(text, at);
            ends && word_after(at + 1) >= CLAUSE
        });
        (begins || ends) && !main_clause && !self.asks_by_itself()
    }

    fn is_end_of_condition(&self, text: &Text, at: usize) -> bool {
        text.language != Language::En
            && self.told.iter().any(|hit| hit.meaning == Told::ConditionEnd && hit.span.start == at)
    }

    /// A word that asks, outside of a condition.
    fn asks_by_itself(&self) -> bool {
        let within = |span: &Range<usize>| {
            self.told.iter().any(|hit| {
                matches!(hit.meaning, Told::Condition | Told::Same | Told::FollowUp)
                    && hit.span.start <= span.start
                    && span.end <= hit.span.end
            })
        };
        self.told.iter().any(|hit| hit.meaning == Told::Question && !within(&hit.span))
    }

    /// "How many mugs is that", "balti me batao": the same amount in what it is carried in.
    fn wants_another_unit(&self, text: &Text, before: &Reading, open: &[usize]) -> bool {
        let amount = before.kind == Kind::Harvest || before.kind == Kind::Space || is_of_a_size(before.kind);
        let vessel = |at: usize| self.within(at, &Told::AmountIn);
        let asks = |at: usize| self.within(at, &Told::Question) || self.within(at, &Told::Pronoun);
        let number = self.names.is_empty() && self.quantities.said.is_empty() && self.days.is_empty();
        let named = self.told.iter().any(|hit| hit.meaning == Told::AmountIn);
        amount && named && number && open.iter().all(|at| vessel(*at) || asks(*at) || is_mark(text, *at))
    }

    fn within(&self, at: usize, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what && hit.span.contains(&at))
    }

    /// The words that are no name, size, day, number or empty word.
    pub(super) fn open_words(&self, text: &Text, reader: &Reader<'_>) -> Vec<usize> {
        let spans = |at: usize| {
            self.names.iter().any(|hit| hit.span.contains(&at))
                || self.quantities.said.iter().any(|said| said.span.contains(&at))
                || self.quantities.dimensions.iter().any(|found| found.span.contains(&at))
                || self.quantities.bare.iter().any(|found| found.span.contains(&at))
                || self.quantities.counts.iter().any(|found| found.span.contains(&at))
                || self.days.iter().any(|day| day.span.contains(&at))
                || reader.known.words.days.at(text, at).is_some()
        };
        let steers = |at: usize| {
            self.is_empty_word(at)
                || matches!(text.normal(at), "bhi" | "भी" | "too" | "also")
                || text.language != Language::En && matches!(text.normal(at), "me" | "mein" | "में" | "par" | "pe" | "पर")
                || [Told::Same, Told::Condition, Told::Inside, Told::OtherOne].iter().any(|what| self.within(at, what))
                || self.told.iter().any(|hit| matches!(hit.meaning, Told::Season(_)) && hit.span.contains(&at))
                || text.language != Language::En && self.within(at, &Told::ConditionEnd)
        };
        (0..text.tokens.len()).filter(|at| !is_mark(text, *at) && !spans(*at) && !steers(*at)).collect()
    }

    /// What the words left over mean leans to one kind: "spacing", "how heavy".
    fn has_own_kind(&self, text: &Text, reader: &Reader<'_>, open: &[usize]) -> bool {
        /// So large a share of the leaning is plain (judgement).
        const PLAIN: f64 = 0.65;
        let left: Vec<Token> = open.iter().filter_map(|at| text.tokens.get(*at).cloned()).collect();
        let meant = reader.known.meanings.of(&left, text.language, Slips::Forgiven);
        if meant.is_empty() {
            return false;
        }
        let words: Vec<String> = left.iter().filter_map(|token| index_word(token, text.language)).collect();
        let leaning = reader.index.leaning(&[words, meant].concat()).kinds;
        let most = leaning.into_iter().max_by(|a, b| a.1.total_cmp(&b.1));
        most.is_some_and(|(kind, share)| kind != Kind::None && share >= PLAIN)
    }

    /// "Three of those", "aise do": how many of the same.
    pub(super) fn count_of_same(&self, text: &Text) -> Option<f64> {
        let numbers = numbers(text);
        let spans = self.told.iter().filter(|hit| hit.meaning == Told::Same).map(|hit| &hit.span);
        let beside = |span: &Range<usize>| {
            let number =
                numbers.iter().find(|number| number.span.end == span.start || span.end == number.span.start)?;
            let free = self.quantities.said.iter().all(|said| !said.span.contains(&number.span.start));
            (free && number.value >= 2.0 && number.value.fract() == 0.0).then_some(number.value)
        };
        spans.filter_map(beside).next()
    }

    /// "And 4 x 3?" after a size: sides without a unit are in the unit of those before.
    pub(super) fn with_bare_size(&self, reading: &mut Reading, before: &Reading) {
        let Some(unit) = before.measures.iter().find_map(|old| old.length.or(old.diameter)).map(|old| old.unit) else {
            return;
        };
        let [bare] = self.quantities.bare.as_slice() else { return };
        if !reading.measures.is_empty() {
            return;
        }
        let side = |place: usize| bare.values.get(place).map(|value| Written { value: *value, unit });
        let measured = Measured { length: side(0), width: side(1), depth: side(2), diameter: None };
        reading.quantities.extend([measured.length, measured.width, measured.depth].into_iter().flatten());
        reading.measures.push(measured);
    }

    /// "350" after 300 g were told: of the same unit.
    pub(super) fn with_bare_amount(&self, text: &Text, reading: &mut Reading, before: &Reading) {
        let numbers = numbers(text);
        let ([told], [number]) = (before.quantities.as_slice(), numbers.as_slice()) else { return };
        let alone =
            (0..text.tokens.len()).all(|at| number.span.contains(&at) || is_mark(text, at) || self.is_empty_word(at));
        if alone && before.kind == Kind::Record && reading.quantities.is_empty() && reading.days.is_empty() {
            reading.quantities.push(Written { value: number.value, unit: told.unit });
        }
    }

    /// "And the one beside it": a thing that was not named, where more than one may be meant.
    pub(super) fn means_another(&self, text: &Text, before: &Reading, asker: &Asker) -> bool {
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        let named = |hit: &Hit<Named>| {
            matches!(
                hit.meaning,
                Named::Crop(_) | Named::OtherPlant(_) | Named::OwnBed(_) | Named::BedKind(_) | Named::Material(_)
            )
        };
        // "No, the other one" after a crop without a bed: which bed that is was not said.
        let other = says(&Told::OtherOne) && before.beds.is_empty() && before.offered_beds.is_empty();
        // "The middle ones are fine" of leaves.
        const PARTS: [&str; 18] = [
            "leaf",
            "leaves",
            "patte",
            "patta",
            "patti",
            "pattiyan",
            "flowers",
            "flower",
            "phool",
            "fruit",
            "fruits",
            "phal",
            "spots",
            "पत्ते",
            "पत्ता",
            "पत्तियाँ",
            "फूल",
            "फल",
        ];
        let of_parts = text.tokens.iter().any(|token| PARTS.contains(&token.normal.as_str()))
            || before.kind == Kind::Trouble && !before.signs.is_empty();
        // "How often do I water", then "and for this one": of no bed yet.
        let general = before.crops.is_empty()
            && before.beds.is_empty()
            && before.bed_kind.is_none()
            && before.materials.is_empty()
            && before.measures.is_empty()
            && before.signs.is_empty();
        let this_one = general && says_this_one(text);
        let spoken_of = before.kind != Kind::None && before.kind != Kind::Person;
        spoken_of
            && !of_parts
            && (says(&Told::BesideIt) || other || this_one)
            && asker.beds.len() > 2
            && !self.names.iter().any(named)
    }

    /// "What about the other one": her bed of the same kind that was not meant; where there are several, all of them, so
    /// that it is asked which.
    pub(super) fn other_beds(&self, before: &Reading, asker: &Asker) -> Vec<BedId> {
        let [meant] = before.beds.as_slice() else { return Vec::new() };
        let bare = self.names.iter().all(|hit| !matches!(hit.meaning, Named::OwnBed(_)));
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        let other = says(&Told::OtherOne) || says(&Told::Not) && says(&Told::Nth(2));
        if !bare || !other || before.offered_beds.len() > 1 {
            return Vec::new();
        }
        let kind = asker.beds.iter().find(|bed| bed.id == *meant).map(|bed| bed.kind);
        let others = || asker.beds.iter().filter(|bed| bed.id != *meant && bed.id.site() == meant.site());
        let alike: Vec<BedId> = others().filter(|bed| Some(bed.kind) == kind).map(|bed| bed.id.clone()).collect();
        if alike.is_empty() { others().map(|bed| bed.id.clone()).collect() } else { alike }
    }
}

/// "This one", "isko".
pub(super) fn says_this_one(text: &Text) -> bool {
    const IT: [&str; 8] = ["isko", "usko", "isme", "usme", "इसको", "उसको", "इसमें", "उसमें"];
    let one = |at: usize| {
        let two = matches!(text.normal(at), "this" | "that") && text.normal(at + 1) == "one";
        two || IT.contains(&text.normal(at))
    };
    (0..text.tokens.len()).any(one)
}

/// Kinds whose answer hangs on the size of a bed or of what it is given.
const fn is_of_a_size(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::Water | Kind::Mix | Kind::Build | Kind::Load | Kind::Space | Kind::Seed | Kind::Spray | Kind::Feed
    )
}

pub(super) fn is_mark(text: &Text, at: usize) -> bool {
    text.tokens.get(at).is_none_or(|token| !token.normal.chars().any(char::is_alphanumeric))
}
