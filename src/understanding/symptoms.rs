//! Signs of trouble in a person's own words.
//!
//! A name of a sign is taken as a set of meanings (`patte peele` = leaf + yellow). It is said where all of them stand
//! close together, in any order and any language; words that say nothing in a description are skipped. What is said
//! not to be there ("no webs", `jaala nahi`) is kept apart. A description that no phrase fits is still more like one
//! trouble than another: its telling words are weighed against what the files say of each.

use super::likeness::Likeness;
use crate::knowledge::{Knowledge, Ordinary};
use crate::script::{Language, Script, Text, Token, index_word};
use rustc_hash::{FxBuildHasher, FxHashMap, FxHashSet};
use std::collections::BTreeSet;
use std::hash::BuildHasher;

/// Every sign, by the meanings of its names.
#[derive(Debug, Clone, Default)]
pub struct SignBook {
    english: FxHashMap<String, Vec<Meaning>>,
    hindi: FxHashMap<String, Vec<Meaning>>,
    /// As spelled, for words whose sound is too short to tell.
    spelled: FxHashMap<String, Vec<Meaning>>,
    phrases: Vec<Phrase>,
    /// The places of the phrases by the rarest of their meanings.
    by_rarest: FxHashMap<Meaning, Vec<usize>>,
    /// Numbers of the looks by name.
    looks: FxHashMap<String, usize>,
    /// Looks of what one searches for and may not find.
    sought: BTreeSet<usize>,
    /// Looks that are a description by themselves.
    alone: BTreeSet<usize>,
    likeness: Likeness,
}

/// What a description holds.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Described {
    /// Ids of signs, the fullest phrase first.
    pub seen: Vec<String>,
    /// Ids of signs that are said not to be there.
    pub denied: Vec<String>,
    /// How far it is like each trouble, 0 to 1; those that it is like at all, likest first.
    pub like: Vec<(String, f64)>,
}

/// What one word means in a description.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(super) enum Meaning {
    Empty,
    Look(usize),
    /// Any other word: the hash of its stem in one of the languages.
    Word(u64),
}

impl Meaning {
    fn of_word(stem: &str) -> Self {
        Self::Word(FxBuildHasher.hash_one(stem))
    }
}

#[derive(Debug, Clone)]
struct Phrase {
    meanings: BTreeSet<Meaning>,
    sign: String,
}

/// One telling word of a message.
struct Said {
    meanings: Vec<Meaning>,
    /// It is said not to be there.
    denied: bool,
    /// It names a crop: which one says nothing of what ails it here.
    crop: bool,
    /// It is a "without" of Hindi, which stands before what is not there.
    without: bool,
    /// It is a "na", which does so where there are two of them.
    neither: bool,
}

/// Sounds shorter than this meet by chance.
const SHORTEST_SOUND: usize = 4;

/// So many telling words of another sort may stand between those of a sign.
const APART: usize = 3;

/// A name of so many words may be told by one of them.
const SHORT_NAME: usize = 2;

/// Words of Hindi that say "without".
const WITHOUT: [&str; 5] = ["बिना", "बगैर", "bina", "bagair", "bager"];

/// Words of Hindi that say "neither" where two of them stand.
const NEITHER: [&str; 3] = ["न", "ना", "na"];

/// A look of this name turns what stands beside it into its opposite.
const NOT: &str = "not";

impl SignBook {
    /// Gathers the names of all signs, and what is said of all troubles.
    #[must_use]
    pub fn of(known: &Knowledge) -> Self {
        let mut book = Self::with_looks(known);
        for sign in known.signs.values() {
            for (language, names) in sign.names.each() {
                for name in names.iter().chain([sign.label.of(language)]) {
                    book.add(name, language, &sign.id, &known.ordinary);
                }
            }
        }
        book.sort_phrases();
        let everyday = |(meaning, stem): &(Meaning, String)| {
            matches!(meaning, Meaning::Word(_)) && known.ordinary.sounds_like(stem)
        };
        book.likeness = Likeness::of(known, &|text, language| {
            let telling = book.words_of(text, language).into_iter().filter(|word| !everyday(word));
            telling.map(|(meaning, _)| meaning).collect()
        });
        book
    }

    /// The words with which people describe, and no phrase yet.
    fn with_looks(known: &Knowledge) -> Self {
        let mut book = Self::default();
        let numbered = known.looks.looks.iter().enumerate();
        book.looks = numbered.clone().map(|(number, look)| (look.look.clone(), number)).collect();
        book.sought = numbered.clone().filter(|(_, look)| look.sought).map(|(number, _)| number).collect();
        book.alone = numbered.clone().filter(|(_, look)| look.alone).map(|(number, _)| number).collect();
        let lists = numbered.map(|(number, look)| (&look.words, Meaning::Look(number)));
        for (names, meaning) in lists.chain([(&known.looks.empty, Meaning::Empty)]) {
            for (language, words) in names.each() {
                for word in words {
                    book.learn(word, language, &meaning);
                }
            }
        }
        book
    }

    fn learn(&mut self, word: &str, language: Language, meaning: &Meaning) {
        let add = |list: &mut Vec<Meaning>| {
            // A word that says nothing stays so; one of two looks may be either.
            if !list.contains(meaning) && *meaning != Meaning::Empty || list.is_empty() {
                list.push(*meaning);
            }
        };
        for token in Text::read_as(word, language).tokens {
            let Some(form) = index_word(&token, language) else { continue };
            let forms = if language == Language::En { &mut self.english } else { &mut self.hindi };
            if language == Language::En || form.chars().count() >= SHORTEST_SOUND {
                add(forms.entry(form).or_default());
            }
            add(self.spelled.entry(token.normal).or_default());
        }
    }

    /// The telling words of a text that the files hold, each with its first meaning and its stem.
    fn words_of(&self, text: &str, language: Language) -> Vec<(Meaning, String)> {
        let tokens = Text::read_as(text, language).tokens;
        let first = tokens.iter().filter_map(|token| {
            let meaning = self.meanings(token, &[language]).into_iter().next()?;
            Some((meaning, index_word(token, language).unwrap_or_default()))
        });
        first.filter(|(meaning, _)| *meaning != Meaning::Empty).collect()
    }

    fn add(&mut self, name: &str, language: Language, sign: &str, ordinary: &Ordinary) {
        let words = self.words_of(name, language);
        let meanings: BTreeSet<Meaning> = words.iter().map(|(meaning, _)| *meaning).collect();
        // An everyday word by itself describes nothing.
        let telling = match meanings.iter().collect::<Vec<_>>().as_slice() {
            [] => false,
            // "Droop after planting" is more than a droop.
            [Meaning::Look(look)] => self.alone.contains(look) && name.split_whitespace().count() <= SHORT_NAME,
            [Meaning::Word(_)] => {
                words.iter().all(|(_, stem)| stem.chars().count() >= SHORTEST_SOUND && !ordinary.sounds_like(stem))
            }
            _ => true,
        };
        // The phrases of a sign are added one after another.
        let mut of_sign = self.phrases.iter().rev().take_while(|known| known.sign == sign);
        if telling && of_sign.all(|known| known.meanings != meanings) {
            self.phrases.push(Phrase { meanings, sign: sign.to_owned() });
        }
    }

    /// Keeps each phrase by that of its meanings which the fewest phrases have.
    fn sort_phrases(&mut self) {
        let mut counts: FxHashMap<&Meaning, usize> = FxHashMap::default();
        for meaning in self.phrases.iter().flat_map(|phrase| &phrase.meanings) {
            *counts.entry(meaning).or_default() += 1;
        }
        let mut by_rarest: FxHashMap<Meaning, Vec<usize>> = FxHashMap::default();
        for (place, phrase) in self.phrases.iter().enumerate() {
            if let Some(rarest) = phrase.meanings.iter().min_by_key(|meaning| counts.get(meaning)) {
                by_rarest.entry(*rarest).or_default().push(place);
            }
        }
        self.by_rarest = by_rarest;
    }

    /// What a token may mean, read in these languages: its looks where it is a known word.
    fn meanings(&self, token: &Token, languages: &[Language]) -> Vec<Meaning> {
        if !token.normal.chars().any(char::is_alphanumeric) {
            return vec![Meaning::Empty];
        }
        if let Some(meanings) = self.spelled.get(&token.normal) {
            return meanings.clone();
        }
        let mut all = Vec::new();
        for language in languages {
            let english = *language == Language::En;
            if english && token.script == Script::Devanagari {
                continue;
            }
            let Some(form) = index_word(token, *language) else { continue };
            let forms = if english { &self.english } else { &self.hindi };
            if let Some(meanings) = forms.get(&form) {
                return meanings.clone();
            }
            all.push(Meaning::of_word(&form));
        }
        all
    }

    /// Whether a word says nothing in a description.
    pub(super) fn is_empty_word(&self, token: &Token) -> bool {
        self.meanings(token, &[Language::En, Language::HiLatn]).contains(&Meaning::Empty)
    }

    /// The telling words of a message. `parts` says which tokens name a crop, and which look stands for its part.
    fn said(&self, text: &Text, parts: &[(usize, &str)]) -> Vec<Said> {
        let mut said: Vec<Said> = text
            .tokens
            .iter()
            .enumerate()
            .map(|(position, token)| {
                let mut meanings = self.meanings(token, &[Language::En, Language::HiLatn]);
                let crop = parts.iter().any(|(at, _)| *at == position);
                // A bitter gourd is not said to taste bitter, nor a red spinach to be red.
                meanings.retain(|meaning| !crop || !matches!(meaning, Meaning::Look(_)));
                // "Holes in the mint" are holes in its leaves: a crop stands for the part that is eaten.
                let part = parts.iter().filter(|(at, _)| *at == position);
                meanings.extend(part.filter_map(|(_, look)| self.looks.get(*look)).map(|look| Meaning::Look(*look)));
                let without = WITHOUT.contains(&token.normal.as_str());
                let neither = NEITHER.contains(&token.normal.as_str());
                Said { meanings, denied: false, crop, without, neither }
            })
            .filter(|said| !said.meanings.contains(&Meaning::Empty))
            .collect();
        self.leave_to_leaves(&mut said);
        // "Na jaala hai na keede": each stands before what is not there.
        if text.tokens.iter().filter(|token| NEITHER.contains(&token.normal.as_str())).count() > 1 {
            said.iter_mut().for_each(|word| word.without |= word.neither);
        }
        self.deny(&mut said, text.language);
        said
    }

    /// "Cucumber seedlings", "tamatar ke patte": beside its leaves a crop does not stand for its fruit.
    fn leave_to_leaves(&self, said: &mut [Said]) {
        const BEFORE: usize = 1;
        const AFTER: usize = 2;
        let look = |name: &str| self.looks.get(name).map(|look| Meaning::Look(*look));
        let Some(fruit) = look("fruit") else { return };
        let leafy: Vec<Meaning> = ["leaf", "seedling"].into_iter().filter_map(look).collect();
        let is_leafy = |said: &Said| !said.crop && leafy.iter().any(|leaf| said.meanings.contains(leaf));
        for place in 0..said.len() {
            let near = said.get(place.saturating_sub(BEFORE)..said.len().min(place + AFTER + 1)).unwrap_or_default();
            let beside = near.iter().any(is_leafy);
            if let Some(crop) = said.get_mut(place).filter(|said| said.crop && beside) {
                crop.meanings.retain(|meaning| *meaning != fruit);
            }
        }
    }

    /// Marks what is sought and not found: English says "no" before it, Hindi `nahi` after it, rarely before,
    /// and `bina` before.
    fn deny(&self, said: &mut [Said], language: Language) {
        /// So many words may stand between.
        const BETWEEN: usize = 2;
        let Some(not) = self.looks.get(NOT).map(|look| Meaning::Look(*look)) else { return };
        let is_sought = |said: &Said| {
            said.meanings.iter().any(|meaning| matches!(meaning, Meaning::Look(look) if self.sought.contains(look)))
        };
        for place in (0..said.len())
            .filter(|place| said.get(*place).is_some_and(|word| word.meanings.contains(&not)))
            .collect::<Vec<_>>()
        {
            let after: Vec<usize> = (place + 1..said.len().min(place + 1 + BETWEEN)).collect();
            let before: Vec<usize> = (place.saturating_sub(BETWEEN)..place).rev().collect();
            let without = said.get(place).is_some_and(|word| word.without);
            let order = if language == Language::En || without { [after, Vec::new()] } else { [before, after] };
            let found = order.concat().into_iter().find(|at| said.get(*at).is_some_and(is_sought));
            let Some(word) = found.and_then(|at| said.get_mut(at)) else { continue };
            word.denied = true;
            // What is without one thing lacks nothing else.
            if let Some(used) = said.get_mut(place).filter(|used| used.without) {
                used.meanings.retain(|meaning| *meaning != not);
            }
        }
    }

    /// What a text describes; of its signs the fuller before those that they hold: "old leaves yellow first" is not
    /// told as "leaves yellow" besides.
    #[must_use]
    pub fn find(&self, text: &Text, parts: &[(usize, &str)]) -> Described {
        let told = self.said(text, parts);
        let not = self.looks.get(NOT).map(|look| Meaning::Look(*look));
        let everything: FxHashSet<Meaning> = told.iter().flat_map(|said| &said.meanings).copied().collect();
        // Only a phrase whose rarest meaning is there can be there whole.
        let perhaps: BTreeSet<usize> =
            everything.iter().filter_map(|meaning| self.by_rarest.get(meaning)).flatten().copied().collect();
        let said: Vec<(&Phrase, bool)> = perhaps
            .into_iter()
            .filter_map(|place| self.phrases.get(place))
            .filter(|phrase| phrase.meanings.iter().all(|meaning| everything.contains(meaning)))
            .filter_map(|phrase| {
                // "No flowers" is a sign with its "no".
                let whole = not.is_some_and(|not| phrase.meanings.contains(&not));
                close(&phrase.meanings, &told, whole).map(|denied| (phrase, denied))
            })
            .collect();
        let mut signs: Vec<(usize, &str, bool)> = Vec::new();
        for (phrase, denied) in &said {
            let held = said.iter().any(|(other, _)| {
                other.sign != phrase.sign
                    && other.meanings.len() > phrase.meanings.len()
                    && phrase.meanings.is_subset(&other.meanings)
            });
            if held {
                continue;
            }
            match signs.iter_mut().find(|(_, sign, _)| *sign == phrase.sign) {
                // Said of one place and denied of another, it is there.
                Some(known) => known.2 &= denied,
                None => signs.push((phrase.meanings.len(), &phrase.sign, *denied)),
            }
        }
        signs.sort_by_key(|(length, _, _)| std::cmp::Reverse(*length));
        let those = |denied: bool| {
            let of = signs.iter().filter(move |sign| sign.2 == denied);
            of.map(|(_, sign, _)| (*sign).to_owned()).collect()
        };
        let tells = |said: &Said| {
            let look = |meaning: &&Meaning| !said.crop || matches!(meaning, Meaning::Look(_));
            said.meanings.iter().filter(look).copied().collect::<Vec<_>>()
        };
        let words: Vec<Vec<Meaning>> = told.iter().filter(|said| !said.denied).map(tells).collect();
        Described { seen: those(false), denied: those(true), like: self.likeness.to(&words) }
    }
}

/// Whether all these meanings stand within a few words of one another, and whether only what is denied makes them
/// whole. With `whole` nothing is denied.
fn close(meanings: &BTreeSet<Meaning>, told: &[Said], whole: bool) -> Option<bool> {
    let width = meanings.len() + APART;
    let within = |denied: bool| {
        (0..told.len()).any(|start| {
            let window = told.get(start..told.len().min(start + width)).unwrap_or_default();
            let holds = |meaning| window.iter().any(|said| (denied || !said.denied) && said.meanings.contains(meaning));
            meanings.iter().all(holds)
        })
    };
    if within(whole) {
        return Some(false);
    }
    within(true).then_some(true)
}
