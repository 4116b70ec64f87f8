//! Signs of trouble in a person's own words.
//!
//! A name of a sign is taken as a set of meanings (`patte peele` = leaf + yellow). It is said where all of them stand
//! close together, in any order and any language; words that say nothing in a description are skipped.

use crate::knowledge::{Knowledge, Ordinary};
use crate::script::{Language, Script, Text, Token, index_word};
use std::collections::{BTreeSet, HashMap};

/// Every sign, by the meanings of its names.
#[derive(Debug, Clone, Default)]
pub struct SignBook {
    english: HashMap<String, Meaning>,
    hindi: HashMap<String, Meaning>,
    /// As spelled, for words whose sound is too short to tell.
    spelled: HashMap<String, Meaning>,
    phrases: Vec<Phrase>,
    /// Numbers of the looks by name.
    looks: HashMap<String, usize>,
}

/// What one word means in a description.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
enum Meaning {
    Empty,
    Look(usize),
    /// Any other word: its stem in one of the languages.
    Word(String),
}

#[derive(Debug, Clone)]
struct Phrase {
    meanings: BTreeSet<Meaning>,
    sign: String,
}

/// Sounds shorter than this meet by chance.
const SHORTEST_SOUND: usize = 4;

/// So many telling words of another sort may stand between those of a sign.
const APART: usize = 3;

impl SignBook {
    /// Gathers the words for emergencies: found by their meanings as signs are.
    #[must_use]
    pub fn of_emergencies(known: &Knowledge) -> Self {
        let mut book = Self::with_looks(known);
        for (number, emergency) in known.talk.emergencies.iter().enumerate() {
            for (language, phrases) in emergency.words.each() {
                for phrase in phrases {
                    book.add(phrase, language, &number.to_string(), &known.ordinary);
                }
            }
        }
        book
    }

    /// Gathers the names of all signs.
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
        book
    }

    /// The words with which people describe, and no phrase yet.
    fn with_looks(known: &Knowledge) -> Self {
        let mut book = Self::default();
        let numbered = known.looks.looks.iter().enumerate();
        book.looks = numbered.map(|(number, look)| (look.look.clone(), number)).collect();
        let lists = known.looks.looks.iter().enumerate().map(|(number, look)| (&look.words, Meaning::Look(number)));
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
        for token in Text::read_as(word, language).tokens {
            let Some(form) = index_word(&token, language) else { continue };
            let forms = if language == Language::En { &mut self.english } else { &mut self.hindi };
            if language == Language::En || form.chars().count() >= SHORTEST_SOUND {
                forms.entry(form).or_insert_with(|| meaning.clone());
            }
            self.spelled.entry(token.normal).or_insert_with(|| meaning.clone());
        }
    }

    fn add(&mut self, name: &str, language: Language, sign: &str, ordinary: &Ordinary) {
        let text = Text::read_as(name, language);
        let meanings: BTreeSet<Meaning> = text
            .tokens
            .iter()
            .flat_map(|token| self.meanings(token, &[language]))
            .filter(|meaning| *meaning != Meaning::Empty)
            .collect();
        // An everyday word by itself describes nothing.
        let telling = match meanings.iter().collect::<Vec<_>>().as_slice() {
            [] => false,
            [Meaning::Word(word)] => word.chars().count() >= SHORTEST_SOUND && !ordinary.sounds_like(word),
            _ => true,
        };
        // The phrases of a sign are added one after another.
        let mut of_sign = self.phrases.iter().rev().take_while(|known| known.sign == sign);
        if telling && of_sign.all(|known| known.meanings != meanings) {
            self.phrases.push(Phrase { meanings, sign: sign.to_owned() });
        }
    }

    /// What a token may mean, read in these languages: one meaning where it is a known word.
    fn meanings(&self, token: &Token, languages: &[Language]) -> Vec<Meaning> {
        if !token.normal.chars().any(char::is_alphanumeric) {
            return vec![Meaning::Empty];
        }
        if let Some(meaning) = self.spelled.get(&token.normal) {
            return vec![meaning.clone()];
        }
        let mut all = Vec::new();
        for language in languages {
            let english = *language == Language::En;
            if english && token.script == Script::Devanagari {
                continue;
            }
            let Some(form) = index_word(token, *language) else { continue };
            let forms = if english { &self.english } else { &self.hindi };
            if let Some(meaning) = forms.get(&form) {
                return vec![meaning.clone()];
            }
            all.push(Meaning::Word(form));
        }
        all
    }

    /// The signs that a text names, the fuller before those that they hold: "old leaves yellow first" is not
    /// told as "leaves yellow" besides. `parts` says which tokens name a crop, and which look stands for its part.
    #[must_use]
    pub fn find(&self, text: &Text, parts: &[(usize, &str)]) -> Vec<String> {
        let told: Vec<Vec<Meaning>> = text
            .tokens
            .iter()
            .enumerate()
            .map(|(position, token)| {
                let mut meanings = self.meanings(token, &[Language::En, Language::HiLatn]);
                // "Holes in the mint" are holes in its leaves: a crop stands for the part that is eaten.
                let part = parts.iter().filter(|(at, _)| *at == position);
                meanings.extend(part.filter_map(|(_, look)| self.looks.get(*look)).map(|look| Meaning::Look(*look)));
                meanings
            })
            .filter(|meanings| !meanings.contains(&Meaning::Empty))
            .collect();
        let everything: BTreeSet<&Meaning> = told.iter().flatten().collect();
        let said: Vec<&Phrase> = self
            .phrases
            .iter()
            .filter(|phrase| phrase.meanings.iter().all(|meaning| everything.contains(meaning)))
            .filter(|phrase| close(&phrase.meanings, &told))
            .collect();
        let mut signs: Vec<(usize, &str)> = Vec::new();
        for phrase in &said {
            let held = said.iter().any(|other| {
                other.sign != phrase.sign
                    && other.meanings.len() > phrase.meanings.len()
                    && phrase.meanings.is_subset(&other.meanings)
            });
            if !held && signs.iter().all(|(_, sign)| *sign != phrase.sign) {
                signs.push((phrase.meanings.len(), &phrase.sign));
            }
        }
        signs.sort_by_key(|(length, _)| std::cmp::Reverse(*length));
        signs.into_iter().map(|(_, sign)| sign.to_owned()).collect()
    }
}

/// Whether all these meanings stand within a few words of one another.
fn close(meanings: &BTreeSet<Meaning>, told: &[Vec<Meaning>]) -> bool {
    let width = meanings.len() + APART;
    (0..told.len()).any(|start| {
        let window = told.get(start..told.len().min(start + width)).unwrap_or_default();
        meanings.iter().all(|meaning| window.iter().any(|word| word.contains(meaning)))
    })
}
