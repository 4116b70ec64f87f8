//! Sequences of words that mean something, found in a text: by stem for English, by sound for Hindi.

use crate::knowledge::{Names, Ordinary};
use crate::script::{Language, Script, Text, Token, index_word, near, sound_key};
use std::collections::{BTreeSet, HashMap, HashSet};
use std::ops::Range;
use std::sync::Arc;

/// How words are compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum By {
    /// `tomatoes` is `tomato`; गमलों is गमला.
    Stem,
    /// Tense and number count: `watered` is not `water`.
    Whole,
}

/// A list of phrases, each with its meaning.
#[derive(Debug, Clone)]
pub struct Phrasebook<T> {
    by: By,
    ordinary: Ordinary,
    /// Words that are none but themselves: what sounds short and is spelled so is no other word.
    themselves: Arc<HashSet<String>>,
    english: Phrases<T>,
    hindi: Phrases<T>,
}

/// The phrases of one language, by their first words.
#[derive(Debug, Clone)]
struct Phrases<T> {
    by_first: HashMap<String, Vec<Entry<T>>>,
    /// The words of phrases of one word, long enough for a slip, by their first letter.
    singles: HashMap<char, BTreeSet<String>>,
    /// The first words of phrases of two, by the second.
    firsts: HashMap<String, BTreeSet<String>>,
}

impl<T> Default for Phrases<T> {
    fn default() -> Self {
        Self { by_first: HashMap::new(), singles: HashMap::new(), firsts: HashMap::new() }
    }
}

impl<T> Phrases<T> {
    fn get(&self, first: &str) -> Option<&Vec<Entry<T>>> {
        self.by_first.get(first)
    }

    fn add(&mut self, entry: Entry<T>) {
        match entry.words.as_slice() {
            [only] if only.chars().count() >= SHORTEST_SLIP => {
                let letter = only.chars().next().unwrap_or_default();
                self.singles.entry(letter).or_default().insert(only.clone());
            }
            [first, second] => {
                self.firsts.entry(second.clone()).or_default().insert(first.clone());
            }
            _ => {}
        }
        if let Some(first) = entry.words.first() {
            self.by_first.entry(first.clone()).or_default().push(entry);
        }
    }
}

/// One phrase in the form in which it is compared.
#[derive(Debug, Clone)]
struct Entry<T> {
    words: Vec<String>,
    /// As it is spelled.
    written: String,
    spelling: Spelling,
    meaning: T,
}

/// How a phrase has to be spelled.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Spelling {
    /// The spellings of a phrase of one word whose sound is too short to tell, or is that of an everyday word;
    /// empty where any spelling will do.
    spelled: Vec<String>,
    /// Its sounds with all vowels, bent by number and case, where it is short and no everyday word: `kheere`.
    sounds: Vec<String>,
}

impl Spelling {
    /// Whether a phrase that begins at this token is spelled so. `fits` says that the language of the text is the
    /// phrase's: `kale` is black in Hindi, an everyday word there is no English name.
    pub(super) fn is_that(&self, forms: &Forms, start: usize, fits: bool, is_itself: impl Fn(&str) -> bool) -> bool {
        let heard = || forms.whole.hindi.get(start).is_some_and(|sound| self.sounds.contains(sound));
        // "Pani" is "paani", however plainly it is a word of its own.
        let alike = |said: &String| self.spelled.iter().any(|spelled| plain_vowels(spelled) == plain_vowels(said));
        let as_said = |said: &String| self.spelled.contains(said) || (!is_itself(said) || alike(said)) && heard();
        self.spelled.is_empty() || fits && forms.written.get(start).is_some_and(as_said)
    }
}

/// A spelling in which a vowel is long or short, and a nasal end is written or not.
fn plain_vowels(word: &str) -> String {
    const SAME: [(&str, &str); 7] =
        [("aa", "a"), ("ee", "i"), ("ii", "i"), ("oo", "u"), ("uu", "u"), ("w", "v"), ("z", "j")];
    let plain = SAME.iter().fold(word.to_owned(), |word, (long, short)| word.replace(long, short));
    match plain.strip_suffix('n') {
        Some(open) if open.ends_with(['a', 'e', 'i', 'o', 'u']) => open.to_owned(),
        _ => plain,
    }
}

/// A phrase's words as they are compared, empty where a token has none, and how it has to be spelled.
pub(super) fn compared(phrase: &str, language: Language, by: By, ordinary: &Ordinary) -> (Vec<String>, Spelling) {
    let text = Text::read_as(phrase, language);
    let words: Vec<String> = text.tokens.iter().map(|token| form(token, language, by)).collect();
    let english = language == Language::En;
    let short = |word: &str| !english && word.chars().count() < SHORTEST_SOUND;
    let everyday = |word: &str| by == By::Stem && ordinary.sounds_like(word);
    let mut spelling = Spelling::default();
    if let ([word], [token]) = (words.as_slice(), text.tokens.as_slice()) {
        if short(word) || everyday(word) {
            let endings = ["s", "es"].iter().filter(|_| english).map(|ending| format!("{}{ending}", token.normal));
            spelling.spelled = std::iter::once(token.normal.clone()).chain(endings).collect();
        }
        if short(word) && !everyday(word) {
            spelling.sounds = bent(&sound_key(&token.normal));
        }
    }
    (words, spelling)
}

/// Sounds shorter than this meet by chance: `rai` is not `rain`.
const SHORTEST_SOUND: usize = 4;

/// Shorter words are not taken for one another's slips: `mist` is not `mint`.
const SHORTEST_SLIP: usize = 5;

/// A phrase found in a text.
#[derive(Debug, Clone, PartialEq)]
pub struct Hit<T> {
    /// Range of token indices.
    pub span: Range<usize>,
    pub meaning: T,
    /// False where a word was only nearly the same.
    pub exact: bool,
}

/// The forms in which a text's words are compared, a word a token; empty where a token has none.
#[derive(Debug, Clone)]
pub struct Forms {
    stem: TwoForms,
    whole: TwoForms,
    /// As written, in normal form.
    written: Vec<String>,
    /// The text is English.
    english: bool,
}

#[derive(Debug, Clone)]
struct TwoForms {
    english: Vec<String>,
    hindi: Vec<String>,
}

impl Forms {
    /// The forms of every token of a text; a token of Devanagari has no English form.
    #[must_use]
    pub fn of(text: &Text) -> Self {
        let all = |by| TwoForms {
            english: text.tokens.iter().map(|token| form(token, Language::En, by)).collect(),
            hindi: text.tokens.iter().map(|token| form(token, Language::HiLatn, by)).collect(),
        };
        let written = text.tokens.iter().map(|token| token.normal.clone()).collect();
        let english = text.language == Language::En;
        Self { stem: all(By::Stem), whole: all(By::Whole), written, english }
    }

    fn by(&self, by: By) -> &TwoForms {
        match by {
            By::Stem => &self.stem,
            By::Whole => &self.whole,
        }
    }

    /// A token as it is written, in normal form.
    #[must_use]
    pub fn written(&self, position: usize) -> &str {
        self.written.get(position).map_or("", String::as_str)
    }

    /// The stems by which the words of a language are compared; empty where a token has none.
    #[must_use]
    pub(super) fn stems(&self, english: bool) -> &[String] {
        if english { &self.stem.english } else { &self.stem.hindi }
    }

    /// Whether phrases of this language fit the text.
    pub(super) const fn fits(&self, english: bool) -> bool {
        !english || self.english
    }

    /// How many tokens there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.stem.english.len()
    }
}

fn form(token: &Token, language: Language, by: By) -> String {
    match (token.script, by) {
        (Script::Devanagari, _) if language == Language::En => String::new(),
        (Script::Latin, By::Whole) if language == Language::En => token.normal.clone(),
        (Script::Latin | Script::Devanagari, By::Whole) => sound_key(&token.normal),
        _ => index_word(token, language).unwrap_or_default(),
    }
}

impl<T: Clone> Phrasebook<T> {
    /// An empty list.
    #[must_use]
    pub fn new(by: By, ordinary: &Ordinary) -> Self {
        let themselves = Arc::default();
        Self { by, ordinary: ordinary.clone(), themselves, english: Phrases::default(), hindi: Phrases::default() }
    }

    /// The same where these words are none but themselves: "ke" is no "khaye", "ne" is no "na".
    #[must_use]
    pub fn knowing(self, themselves: &Arc<HashSet<String>>) -> Self {
        Self { themselves: Arc::clone(themselves), ..self }
    }

    /// Adds every name of a thing.
    pub fn add(&mut self, names: &Names, meaning: &T) {
        for name in &names.en {
            self.add_phrase(name, Language::En, meaning);
        }
        for name in names.hi.iter().chain(&names.hi_latn) {
            self.add_phrase(name, Language::HiLatn, meaning);
        }
    }

    /// Adds one phrase.
    pub fn add_phrase(&mut self, phrase: &str, language: Language, meaning: &T) {
        let (words, spelling) = compared(phrase, language, self.by, &self.ordinary);
        let map = if language == Language::En { &mut self.english } else { &mut self.hindi };
        // A word of another script has no form here: a phrase with one would match any such word.
        if words.iter().any(String::is_empty) {
            return;
        }
        map.add(Entry { words, written: phrase.to_lowercase(), spelling, meaning: meaning.clone() });
    }

    /// Everything found, the longest first where two overlap, in the order of the text.
    #[must_use]
    pub fn find(&self, forms: &Forms) -> Vec<Hit<T>> {
        without_overlaps(self.find_all(forms))
    }

    /// Everything found, overlapping or not.
    #[must_use]
    pub fn find_all(&self, forms: &Forms) -> Vec<Hit<T>> {
        let (all_forms, english) = (forms, forms.english);
        let forms = forms.by(self.by);
        let mut all = Vec::new();
        for start in 0..forms.english.len() {
            // An everyday word of English is no Hindi name in an English text: a heat wave that "began" is no "baigan".
            let everyday = english && self.ordinary.is(all_forms.written(start));
            let maps = [(&self.english, &forms.english, english, false), (&self.hindi, &forms.hindi, true, everyday)];
            for (map, words, fits, no_name) in maps {
                let Some(phrases) = words.get(start).and_then(|word| map.get(word)) else { continue };
                for entry in phrases.iter().filter(|entry| !no_name || entry.words.len() > 1) {
                    let end = start + entry.words.len();
                    let as_spelled = entry.spelling.is_that(all_forms, start, fits, |said| {
                        self.ordinary.is(said) || self.themselves.contains(said)
                    });
                    if as_spelled && words.get(start..end).is_some_and(|said| said == entry.words) {
                        all.push(Hit { span: start..end, meaning: entry.meaning.clone(), exact: true });
                    }
                }
            }
        }
        all
    }

    /// Phrases whose words come in their order with at most `apart` others between two of them, none of which denies.
    #[must_use]
    pub fn find_loosely(&self, forms: &Forms, apart: usize) -> Vec<Hit<T>> {
        let (written, forms) = (&forms.written, forms.by(self.by));
        let mut all = Vec::new();
        for (map, words) in [(&self.english, &forms.english), (&self.hindi, &forms.hindi)] {
            for start in 0..words.len() {
                for entry in words.get(start).and_then(|word| map.get(word)).into_iter().flatten() {
                    let mut end = start + 1;
                    let fits = entry.words.iter().skip(1).all(|wanted| {
                        let next = (end..words.len().min(end + apart + 1)).find(|at| words.get(*at) == Some(wanted));
                        let denied = |from: usize, to: usize| {
                            written
                                .get(from..to)
                                .is_some_and(|between| between.iter().any(|w| NOT.contains(&w.as_str())))
                        };
                        let found = next.filter(|next| !denied(end, *next));
                        end = found.map_or(end, |next| next + 1);
                        found.is_some()
                    });
                    if fits {
                        all.push(Hit { span: start..end, meaning: entry.meaning.clone(), exact: true });
                    }
                }
            }
        }
        all
    }

    /// One-word phrases that are nearly a token's word, where `open` says that the token is still free.
    #[must_use]
    pub fn find_near(&self, forms: &Forms, open: impl Fn(usize) -> bool) -> Vec<Hit<T>> {
        self.find_near_of(forms, open, |_| true)
    }

    /// The same among the phrases of wanted meanings alone.
    #[must_use]
    pub fn find_near_of(
        &self,
        forms: &Forms,
        open: impl Fn(usize) -> bool,
        wanted: impl Fn(&T) -> bool,
    ) -> Vec<Hit<T>> {
        let (written, english) = (&forms.written, forms.english);
        let forms = forms.by(self.by);
        let mut all = Vec::new();
        for position in (0..forms.english.len()).filter(|position| open(*position)) {
            // A slip in a sound is two steps from an English word: "indeed" is no endive. Its letters must be near as well.
            let spelled = |entry: &Entry<T>| {
                !english || written.get(position).is_some_and(|said| near(&entry.written, said).is_some())
            };
            let any = |_: &Entry<T>| true;
            let by_stem = forms.english.get(position).and_then(|word| nearest(&self.english, word, &wanted, any));
            let by_sound = forms.hindi.get(position).and_then(|word| nearest(&self.hindi, word, &wanted, spelled));
            let best = [by_stem, by_sound].into_iter().flatten().min_by_key(|(slips, _)| *slips);
            let pair = [(&self.english, &forms.english), (&self.hindi, &forms.hindi)]
                .into_iter()
                .find_map(|(map, words)| nearly_a_pair(map, words, position))
                .filter(|hit| wanted(&hit.meaning));
            if let Some(hit) = pair {
                all.push(hit);
            } else if let Some((_, meaning)) = best {
                all.push(Hit { span: position..position + 1, meaning, exact: false });
            }
        }
        all
    }
}

/// A Hindi word's sound, and how it sounds in the plural and before a postposition.
fn bent(sound: &str) -> Vec<String> {
    let mut all = vec![sound.to_owned()];
    match sound.strip_suffix('a') {
        Some(stem) => all.extend(["e", "o"].map(|ending| format!("{stem}{ending}"))),
        None => all.extend(["e", "o"].map(|ending| format!("{sound}{ending}"))),
    }
    all
}

/// The phrase of one word that is nearest to this one, with the slips between them; of equally near ones the first by
/// the alphabet.
fn nearest<T: Clone>(
    phrases: &Phrases<T>,
    word: &str,
    wanted: &impl Fn(&T) -> bool,
    fits: impl Fn(&Entry<T>) -> bool,
) -> Option<(usize, T)> {
    if word.chars().count() < SHORTEST_SLIP {
        return None;
    }
    // People rarely miss the first letter; a word that begins otherwise is another word.
    let alike = phrases.singles.get(&word.chars().next()?)?;
    let mut best: Option<(usize, &T)> = None;
    for known in alike {
        let Some(slips) = near(known, word).filter(|slips| best.is_none_or(|(least, _)| *slips < least)) else {
            continue;
        };
        let mut entries = phrases.get(known).into_iter().flatten();
        let entry = entries.find(|entry| {
            let single = entry.words.len() == 1 && entry.spelling.spelled.is_empty();
            single && wanted(&entry.meaning) && fits(entry)
        });
        if let Some(entry) = entry {
            best = Some((slips, &entry.meaning));
        }
    }
    best.map(|(slips, meaning)| (slips, meaning.clone()))
}

/// A name of two words, one as it is and the other, at this position, with a slip in it: `bitter guard`.
fn nearly_a_pair<T: Clone>(phrases: &Phrases<T>, words: &[String], position: usize) -> Option<Hit<T>> {
    let slipped = |known: &str, said: &str| {
        let alike = known.chars().next() == said.chars().next() && said.chars().count() >= SHORTEST_SLIP;
        alike && near(known, said).is_some()
    };
    let word = words.get(position)?;
    if let Some(before) = position.checked_sub(1).and_then(|before| words.get(before)) {
        let entries = phrases.get(before).into_iter().flatten();
        for entry in entries {
            if matches!(entry.words.as_slice(), [_, second] if slipped(second, word)) {
                return Some(Hit { span: position - 1..position + 1, meaning: entry.meaning.clone(), exact: false });
            }
        }
    }
    let after = words.get(position + 1)?;
    let first = phrases.firsts.get(after)?.iter().find(|first| slipped(first, word))?;
    let mut entries = phrases.get(first)?.iter();
    let best = entries.find(|entry| matches!(entry.words.as_slice(), [_, second] if second == after))?;
    Some(Hit { span: position..position + 2, meaning: best.meaning.clone(), exact: false })
}

/// Words between those of a phrase that is said loosely turn it round.
const NOT: [&str; 7] = ["not", "no", "never", "nahi", "nhi", "nahin", "नहीं"];

/// The longest of those that overlap, the first where they are alike; in the order of the text.
pub(super) fn without_overlaps<T>(mut all: Vec<Hit<T>>) -> Vec<Hit<T>> {
    all.sort_by_key(|hit| (std::cmp::Reverse(hit.span.len()), hit.span.start));
    let mut kept: Vec<Hit<T>> = Vec::new();
    for hit in all {
        if kept.iter().all(|other| hit.span.end <= other.span.start || other.span.end <= hit.span.start) {
            kept.push(hit);
        }
    }
    kept.sort_by_key(|hit| hit.span.start);
    kept
}
