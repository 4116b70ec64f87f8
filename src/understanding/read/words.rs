//! What the words of a message are worth: those to search by, those that nothing here knows.

use super::{Found, Hit, Named, Reader, Told};
use crate::knowledge::{DayWord, GrownFor, Knowledge, PartOfDay, Sign};
use crate::quantity::Unit;
use crate::script::{Language, Script, Text, Token, index_word};
use std::ops::Range;

/// Letters of a name that nonsense may hold by chance.
const SHORT_NAME: usize = 3;

impl Found {
    /// The words that tell what is asked about: neither fillers, nor words that only ask, nor names of beds. A word of romanised
    /// Hindi may be an English one, so it is searched in both forms.
    pub(super) fn search_words(&self, text: &Text) -> Vec<String> {
        let mut words = Vec::new();
        for form in self.words_told(text).into_iter().flatten() {
            if !words.contains(&form) {
                words.push(form);
            }
        }
        words
    }

    /// The same, one list a word.
    pub(super) fn words_told(&self, text: &Text) -> Vec<Vec<String>> {
        let telling = |position: &usize| {
            // What her bed is called says nothing of the matter: the "east box" is no question of where the sun is.
            let own = |hit: &&Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::Site(_));
            !self.names.iter().filter(own).any(|hit| hit.span.contains(position))
                && !self.told.iter().any(|hit| {
                    hit.span.contains(position) && matches!(hit.meaning, Told::Filler | Told::Question | Told::FollowUp)
                })
        };
        let forms = (0..text.tokens.len()).filter(telling).map(|at| forms_of(text, at));
        forms.filter(|forms| !forms.is_empty()).collect()
    }

    /// Months that are named without a day of theirs.
    pub(super) fn months(&self, text: &Text, reader: &Reader<'_>) -> Vec<u32> {
        let mut months = Vec::new();
        for position in 0..text.tokens.len() {
            let Some((DayWord::Month(month), length)) = reader.known.words.days.at(text, position) else { continue };
            let dated = self.days.iter().any(|day| day.span.contains(&position));
            // "may" is more often a verb, unless a month is what the sentence wants there.
            let verb = text.normal(position) == "may"
                && reader.known.words.sign(Sign::NotMonth, text, position + length).is_some();
            if !dated && !verb && !months.contains(&month) {
                months.push(month);
            }
        }
        months
    }

    /// "50 or 75 percent for the tomato?": shares as nets have them, of a crop or bed, and no mix, material or sign that
    /// they could be of.
    pub(super) fn says_a_cut(&self, text: &Text) -> bool {
        /// Nets for plants cut so much of the light (percent).
        const CUTS: std::ops::RangeInclusive<f64> = 20.0..=95.0;
        let cut = |said: &super::quantities::Said| {
            let share = said.written.unit == Unit::Percent && CUTS.contains(&said.written.value);
            share && text.normal(said.span.end) != "of"
        };
        let over = || (0..text.tokens.len()).any(|at| matches!(text.normal(at), "over" | "upar" | "uper" | "ऊपर"));
        let plant = |named: &Named| {
            matches!(named, Named::Crop(_) | Named::OwnBed(_)) || matches!(named, Named::BedKind(_)) && over()
        };
        let other = |named: &Named| matches!(named, Named::Material(_) | Named::Mix(_));
        self.did.is_none()
            && self.signs.is_empty()
            && self.quantities.said.iter().any(cut)
            && self.names.iter().any(|hit| plant(&hit.meaning))
            && !self.names.iter().any(|hit| other(&hit.meaning))
    }

    /// The share of the telling words (neither names nor everyday words) that no way of asking about growing has.
    pub(super) fn strange(&self, text: &Text, reader: &Reader<'_>) -> f64 {
        let named = |position: usize| {
            self.names.iter().any(|hit| hit.span.contains(&position))
                || self.told.iter().any(|hit| matches!(hit.meaning, Told::Did(_)) && hit.span.contains(&position))
                || self.days.iter().any(|day| day.span.contains(&position))
                || self.quantities.said.iter().any(|said| said.span.contains(&position))
        };
        let telling = text.tokens.iter().enumerate().filter(|(position, token)| {
            token.is_word()
                && token.normal.chars().count() >= 3
                && !named(*position)
                && !reader.known.ordinary.is(&token.normal)
        });
        let (mut all, mut strange) = (0.0, 0.0);
        for (_, token) in telling {
            all += 1.0;
            let known = index_word(token, text.language).is_some_and(|word| reader.index.knows_of_care(&word));
            strange += if known { 0.0 } else { 1.0 };
        }
        if all > 0.0 { strange / all } else { 0.0 }
    }

    /// Words of three letters and more that stand in no phrase, name or list; neighbours are one.
    pub(super) fn unknown_words(&self, text: &Text, reader: &Reader<'_>) -> Vec<String> {
        let covered = |position: usize| {
            self.names.iter().any(|hit| hit.span.contains(&position))
                || self.told.iter().any(|hit| hit.span.contains(&position))
                || self.days.iter().any(|day| day.span.contains(&position))
                || self.quantities.said.iter().any(|said| said.span.contains(&position))
                || reader.known.words.days.at(text, position).is_some()
        };
        // "Kaunse herbs": an English word in Hindi is no unheard-of plant.
        let borrowed =
            |token: &Token| index_word(token, Language::En).is_some_and(|word| reader.index.knows_well(&word));
        let unknown = |(position, token): &(usize, &Token)| {
            let word = index_word(token, text.language);
            token.is_word()
                && token.normal.chars().count() >= 3
                && !covered(*position)
                && word.is_some_and(|word| !reader.index.knows(&word))
                && !borrowed(token)
        };
        let mut all: Vec<(usize, String)> = Vec::new();
        for (position, token) in text.tokens.iter().enumerate().filter(unknown) {
            match all.last_mut() {
                Some((last, words)) if *last + 1 == position => {
                    *last = position;
                    *words = format!("{words} {}", token.text);
                }
                _ => all.push((position, token.text.clone())),
            }
        }
        all.into_iter().map(|(_, words)| words).collect()
    }

    /// Parts of a day that belong to the first day named: within its words or right beside them. Where no day is
    /// named they belong to the work told, unless something is asked too: then the evening may be one to come.
    pub(super) fn parts_of_day(&self, text: &Text, reader: &Reader<'_>) -> Vec<PartOfDay> {
        let mut found: Vec<(Range<usize>, PartOfDay)> = Vec::new();
        for at in 0..text.tokens.len() {
            let within = found.last().is_some_and(|(span, _)| span.contains(&at));
            if let Some((part, length)) = reader.known.words.parts_of_day.at(text, at).filter(|_| !within) {
                found.push((at..at + length, part));
            }
        }
        let mut parts: Vec<PartOfDay> = Vec::new();
        // Beside the day, and one after the other from there: "yesterday morning and evening".
        let mut beside = self.days.first().map(|day| day.span.clone());
        for (span, part) in found {
            let belongs = match &beside {
                Some(day) => span.start <= day.end + 1 && day.start <= span.end + 1,
                None => !self.asks,
            };
            if belongs && !parts.contains(&part) {
                parts.push(part);
                beside = beside.map(|day| day.start.min(span.start)..day.end.max(span.end));
            }
        }
        parts
    }

    /// Nothing but a word for "why" among empty ones.
    pub(super) fn is_why(&self, text: &Text) -> bool {
        let why = |at: usize| self.told.iter().any(|hit| hit.meaning == Told::Why && hit.span.contains(&at));
        let mark = |at: usize| text.tokens.get(at).is_none_or(|token| !token.normal.chars().any(char::is_alphanumeric));
        let named = |at: usize| self.names.iter().any(|hit| hit.span.contains(&at));
        let all = 0..text.tokens.len();
        let only = all.clone().all(|at| why(at) || mark(at) || self.is_empty_word(at) && !named(at));
        only && all.into_iter().any(why)
    }

    /// No word that any phrase, name or list has.
    pub(super) fn is_senseless(&self, text: &Text, reader: &Reader<'_>) -> bool {
        // Letters in a row sound as some word by chance: without a vowel sign a word counts where people write it so.
        let bare = |token: &Token| token.script == Script::Devanagari && !token.text.chars().any(is_vowel_sign);
        let written = |token: &Token| reader.known.ordinary.is(&token.normal);
        let heard = |token: &Token| index_word(token, text.language).is_some_and(|word| reader.index.knows(&word));
        let known =
            |token: &Token| !is_one_letter_held(token) && if bare(token) { written(token) } else { heard(token) };
        // A number is known everywhere, and so is a single letter ("l"): neither makes sense of strange words.
        let in_letters = |token: &&Token| {
            let single = token.script == Script::Latin && token.normal.chars().count() == 1;
            token.normal.chars().any(char::is_alphabetic) && !single
        };
        let words = text.tokens.iter().filter(in_letters).count();
        let understood = text.tokens.iter().filter(in_letters).filter(|token| known(token)).count();
        let spelled_out = text.tokens.iter().filter(in_letters).any(|token| !bare(token));
        // A name of three letters among such words met by chance.
        let named = self.names.iter().any(|hit| {
            let letters = hit.span.clone().map(|position| text.normal(position).chars().count()).sum::<usize>();
            letters > SHORT_NAME || words <= hit.span.len() + 1
        });
        // Of few such words the everyday ones are not all listed: "नमक कम".
        let steered = || self.told.iter().any(|hit| hit.span.start < hit.span.end);
        if !spelled_out && words <= 2 && steered() {
            return false;
        }
        !named && self.quantities.said.is_empty() && self.days.is_empty() && understood * 4 <= words
    }
}

/// A word as it is searched for: in the language of its text and as an English one.
pub(super) fn forms_of(text: &Text, at: usize) -> Vec<String> {
    let Some(token) = text.tokens.get(at) else { return Vec::new() };
    let mut forms: Vec<String> = index_word(token, text.language).into_iter().collect();
    forms.extend(index_word(token, Language::En).filter(|word| !forms.contains(word)));
    forms
}

/// "Jjjj": a key that was held down.
fn is_one_letter_held(token: &Token) -> bool {
    let mut letters = token.normal.chars();
    let first = letters.next();
    token.normal.chars().count() > 2 && letters.all(|letter| Some(letter) == first)
}

/// Vowels of Devanagari, as letters of their own or as signs on others.
const fn is_vowel_sign(c: char) -> bool {
    matches!(c, '\u{904}'..='\u{914}' | '\u{93e}'..='\u{94c}')
}

/// No look has this name.
const NO_LOOK: &str = "";

/// The tokens that name a crop, with the look of the part that it is grown for: of one that is sprouted, the shoot.
/// The tokens of a material's longer name stand for no look: leaf mould is neither a leaf nor mould.
pub(super) fn parts_named<'k>(names: &[Hit<Named>], sprouts: bool, known: &'k Knowledge) -> Vec<(usize, &'k str)> {
    let mut all = Vec::new();
    for hit in names {
        if matches!(hit.meaning, Named::Material(_)) && hit.span.len() > 1 {
            all.extend(hit.span.clone().map(|position| (position, NO_LOOK)));
        }
        let Named::Crop(id) = &hit.meaning else { continue };
        let look = match known.crops.get(id).map(|crop| crop.grown_for) {
            Some(_) if sprouts => "seedling",
            Some(GrownFor::Fruit | GrownFor::Pod) => "fruit",
            Some(GrownFor::Leaf | GrownFor::Herb | GrownFor::Head) => "leaf",
            Some(GrownFor::Root | GrownFor::Bulb) => "root",
            Some(GrownFor::Flower) => "flower",
            Some(GrownFor::Shoot) => "seedling",
            None => continue,
        };
        all.extend(hit.span.clone().map(|position| (position, look)));
    }
    all
}
