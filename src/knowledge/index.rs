//! The search index: ways of asking, and articles. Derived from the facts; may be deleted.

use super::article::Article;
use super::asking::{Kind, WayOfAsking};
use super::habit::{Habit, WRITTEN};
use super::harm::Emergency;
use super::heard::Matter;
use super::meanings::Slips;
use super::pack::{Packed, Ranked, Unpacking};
use super::shelf::Shelf;
use super::spellings::Spellings;
use super::{Knowledge, kept};
use crate::script::{Language, Text, Token, index_words_as};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use thiserror::Error;

/// Both indexes, in memory.
pub struct Index {
    asking: Shelf,
    articles: Shelf,
    /// The ids of the articles, by their places on the shelf.
    ids: Vec<String>,
    ways: Ways,
    habit: Habit<Matter>,
    /// The words as they are spelled.
    pub spellings: Spellings,
}

/// The ways of asking as different words, by place.
struct Ways {
    kinds: Vec<Kind>,
    words: Ranked,
    /// In how many ways of asking a word stands, and in how many of those that are no chatter.
    all: Vec<u32>,
    of_care: Vec<u32>,
    /// The words of one way after another, those of a way in order, and where each ends.
    said: Vec<u32>,
    ends: Vec<u32>,
}

/// A hit: which one, and how near.
#[derive(Debug, Clone, PartialEq)]
pub struct Found<T> {
    pub what: T,
    pub score: f64,
}

/// What words are usual for, as shares of 1.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Usual {
    pub kinds: Vec<(Kind, f64)>,
    /// Messages that leave unsaid what they are about.
    pub unsaid: f64,
    /// Messages in which someone is hurt, by what.
    pub hurt: Vec<(Emergency, f64)>,
}

/// The index could not be built or asked.
#[derive(Debug, Error)]
#[error("the search index: {0}")]
pub struct IndexFault(#[from] tantivy::TantivyError);

impl Index {
    /// Indexes everything that is searched.
    ///
    /// # Errors
    /// [`IndexFault`] when memory or threads run out.
    pub fn build(known: &Knowledge) -> Result<Self, IndexFault> {
        // The parts do not need one another: a second core halves the wait of a cold start.
        std::thread::scope(|scope| {
            let articles = scope.spawn(|| {
                let texts: Vec<Vec<String>> = known.articles.values().map(article_words).collect();
                Shelf::build(texts.iter().map(Vec::as_slice))
            });
            let ways: Vec<(Kind, Vec<String>)> =
                known.ways_of_asking.iter().map(|way| (way.kind, with_classes(&way.phrase, way.language))).collect();
            let asking = scope.spawn({
                let ways = ways.iter().map(|(_, words)| words.clone()).collect::<Vec<_>>();
                move || Shelf::build(ways.iter().map(Vec::as_slice))
            });
            let habit = Habit::of(&lessons_of_asking(known), &lessons_of_messages(known));
            let gone = |_| tantivy::TantivyError::SystemError("a thread of the index ended early".to_owned());
            let (articles, asking) = (articles.join().map_err(gone)??, asking.join().map_err(gone)??);
            Ok(Self {
                asking,
                articles,
                ids: ids(known),
                ways: Ways::of(&ways),
                habit,
                spellings: Spellings::of(known),
            })
        })
    }

    /// Takes up what is kept in a folder where it is of the same knowledge; else indexes, and keeps it there.
    ///
    /// # Errors
    /// [`IndexFault`] as for [`Index::build`]; a folder that cannot be read or written is none.
    pub fn kept(known: &Knowledge, folder: &Path) -> Result<Self, IndexFault> {
        if let Some(index) = kept::taken_up(folder, known.fingerprint, |bytes| Self::unpack(bytes, known)) {
            return Ok(index);
        }
        let index = Self::build(known)?;
        if let Err(fault) = kept::keep(folder, known.fingerprint, &index.pack()?) {
            tracing::debug!(%fault, "the index is not kept");
        }
        Ok(index)
    }

    fn pack(&self) -> Result<Vec<u8>, IndexFault> {
        let mut packed = Packed::default();
        self.ways.pack(&mut packed);
        self.habit.pack(&mut packed);
        self.spellings.pack(&mut packed);
        self.asking.pack(&mut packed)?;
        self.articles.pack(&mut packed)?;
        Ok(packed.into_bytes())
    }

    fn unpack(bytes: &[u8], known: &Knowledge) -> Option<Self> {
        let mut from = Unpacking(bytes);
        let kinds = || known.ways_of_asking.iter().map(|way| way.kind);
        let ways = Ways::unpack(&mut from, kinds().collect())?;
        let habit = Habit::unpack(&mut from, labels(known))?;
        let spellings = Spellings::unpack(&mut from)?;
        let asking = Shelf::unpack(&mut from, ways.kinds.len())?;
        let articles = Shelf::unpack(&mut from, known.articles.len())?;
        from.is_done().then(|| Self { asking, articles, ids: ids(known), ways, habit, spellings })
    }

    /// The ways of asking nearest to these words, best first. The score is the weight of the shared words
    /// over the mean weight of both phrases (Dice), 0 to 1, each word weighed by its rarity.
    #[must_use]
    pub fn ways_of_asking(&self, words: &[String], most: usize) -> Vec<Found<Kind>> {
        let asked: BTreeSet<&str> = words.iter().map(String::as_str).collect();
        let asked_weight: f64 = asked.iter().map(|word| self.ways.weight(self.ways.words.place(word))).sum();
        let telling = self.telling(&asked);
        let asked: BTreeSet<usize> = asked.iter().filter_map(|word| self.ways.words.place(word)).collect();
        let mut found: Vec<Found<Kind>> = self
            .asking
            .search(&telling, most)
            .into_iter()
            .filter_map(|(place, _)| {
                let way = || self.ways.said_in(place).iter().map(|word| *word as usize);
                let way_weight: f64 = way().map(|word| self.ways.weight(Some(word))).sum();
                let shared: f64 =
                    way().filter(|word| asked.contains(word)).map(|word| self.ways.weight(Some(word))).sum();
                let what = *self.ways.kinds.get(place)?;
                Some(Found { what, score: 2.0 * shared / (asked_weight + way_weight).max(1e-9) })
            })
            .collect();
        found.sort_by(|a, b| b.score.total_cmp(&a.score));
        found
    }

    /// The rarest of these words: what long texts share with a way of asking beside them tells little, and every word
    /// of half the ways costs the search as much as ten others.
    fn telling(&self, words: &BTreeSet<&str>) -> Vec<String> {
        /// So many words find the ways of asking nearest to a text (measured: of 2 800 labelled messages one is read
        /// otherwise than with all of its words, and better).
        const ENOUGH: usize = 8;
        let known = words.iter().filter_map(|word| Some((self.ways.weight(Some(self.ways.words.place(word)?)), word)));
        let mut known: Vec<(f64, &&str)> = known.collect();
        known.sort_by(|a, b| b.0.total_cmp(&a.0));
        known.into_iter().take(ENOUGH).map(|(_, word)| (*word).to_owned()).collect()
    }

    /// What these words, meanings and words as written are usual for.
    #[must_use]
    pub fn leaning(&self, words: &[String]) -> Usual {
        let mut usual = Usual::default();
        for (matter, share) in self.habit.shares(words) {
            usual.unsaid += if matter.says_too_little { share } else { 0.0 };
            if let Some(what) = matter.hurt {
                usual.hurt.push((what, share));
                continue;
            }
            // The matters of one kind stand side by side.
            match usual.kinds.last_mut().filter(|(last, _)| *last == matter.kind) {
                Some((_, sum)) => *sum += share,
                None => usual.kinds.push((matter.kind, share)),
            }
        }
        // Where no one is hurt it is one of the kinds.
        let others: f64 = usual.kinds.iter().map(|(_, share)| share).sum();
        if others > 0.0 {
            usual.kinds.iter_mut().for_each(|(_, share)| *share /= others);
            usual.unsaid /= others;
        }
        usual
    }

    /// Whether any way of asking has this word.
    #[must_use]
    pub fn knows(&self, word: &str) -> bool {
        self.ways.words.place(word).is_some()
    }

    /// Whether several ways of asking have this word.
    #[must_use]
    pub fn knows_well(&self, word: &str) -> bool {
        const SEVERAL: u32 = 3;
        let all = self.ways.words.place(word).and_then(|place| self.ways.all.get(place));
        all.is_some_and(|all| *all >= SEVERAL)
    }

    /// Whether a way of asking about growing has this word.
    #[must_use]
    pub fn knows_of_care(&self, word: &str) -> bool {
        let care = self.ways.words.place(word).and_then(|place| self.ways.of_care.get(place));
        care.is_some_and(|care| *care > 0)
    }

    /// The articles nearest to these words, best first, by id, with their BM25 scores.
    #[must_use]
    pub fn articles(&self, words: &[String], most: usize) -> Vec<Found<String>> {
        let hits = self.articles.search(words, most).into_iter();
        hits.filter_map(|(place, score)| Some(Found { what: self.ids.get(place)?.clone(), score: f64::from(score) }))
            .collect()
    }
}

fn ids(known: &Knowledge) -> Vec<String> {
    known.articles.keys().cloned().collect()
}

impl Ways {
    fn of(ways: &[(Kind, Vec<String>)]) -> Self {
        let mut counts: BTreeMap<&str, (u32, u32)> = BTreeMap::new();
        let different: Vec<BTreeSet<&str>> =
            ways.iter().map(|(_, words)| words.iter().map(String::as_str).collect()).collect();
        for ((kind, _), words) in ways.iter().zip(&different) {
            for word in words {
                let (all, of_care) = counts.entry(word).or_default();
                *all += 1;
                *of_care += u32::from(*kind != Kind::None);
            }
        }
        let words = Ranked::of(counts.keys().copied());
        let (all, of_care) = counts.into_values().unzip();
        let (mut said, mut ends) = (Vec::new(), Vec::new());
        for way in different {
            said.extend(way.into_iter().filter_map(|word| u32::try_from(words.place(word)?).ok()));
            ends.push(u32::try_from(said.len()).unwrap_or(u32::MAX));
        }
        Self { kinds: ways.iter().map(|(kind, _)| *kind).collect(), words, all, of_care, said, ends }
    }

    /// The words of one way of asking, by place, in order.
    fn said_in(&self, way: usize) -> &[u32] {
        let end = |way: usize| self.ends.get(way).map_or(0, |end| *end as usize);
        self.said.get(way.checked_sub(1).map_or(0, end)..end(way)).unwrap_or_default()
    }

    /// How telling a word is: the logarithm of how rarely it stands in the ways of asking.
    fn weight(&self, word: Option<usize>) -> f64 {
        let all = self.kinds.len() as f64 + 1.0;
        let with = f64::from(word.and_then(|word| self.all.get(word)).copied().unwrap_or_default()) + 1.0;
        let rarity = libm::log(all / with);
        // A word no phrase has is more often chatter than sense: it counts like a usual one.
        if with < 1.5 { rarity * UNKNOWN_WORD } else { rarity }
    }

    fn pack(&self, packed: &mut Packed) {
        self.words.pack(packed);
        for numbers in [&self.all, &self.of_care, &self.said, &self.ends] {
            packed.numbers(numbers);
        }
    }

    fn unpack(from: &mut Unpacking<'_>, kinds: Vec<Kind>) -> Option<Self> {
        let words = Ranked::unpack(from)?;
        let (all, of_care, said, ends) = (from.numbers()?, from.numbers()?, from.numbers()?, from.numbers()?);
        let fits = all.len() == words.len() && of_care.len() == words.len() && ends.len() == kinds.len();
        fits.then_some(Self { kinds, words, all, of_care, said, ends })
    }
}

/// The weight of a word that no way of asking has, against that of the rarest known.
const UNKNOWN_WORD: f64 = 0.5;

/// The word a class of names is indexed as: `{crop}` → `classcrop`. No person types it.
#[must_use]
pub fn class_word(class: &str) -> String {
    format!("class{class}")
}

/// The words of a phrasing, with its braces turned into class words.
fn with_classes(phrase: &str, language: Language) -> Vec<String> {
    let mut words = Vec::new();
    for (position, piece) in phrase.split(['{', '}']).enumerate() {
        if position % 2 == 0 { words.extend(index_words_as(piece, language)) } else { words.push(class_word(piece)) }
    }
    words
}

/// What the kinds are learned from: the words of each example, what they mean, and how they are written.
fn lesson(known: &Knowledge, phrase: &str, language: Language) -> Vec<String> {
    let tokens = Text::read_as(phrase, language).tokens;
    let meant = known.meanings.of(&tokens, language, Slips::Refused);
    with_classes(phrase, language).into_iter().chain(meant).chain(written_outside_classes(phrase, language)).collect()
}

fn lessons_of_asking(known: &Knowledge) -> Vec<(Matter, Vec<String>)> {
    let lesson = |way: &WayOfAsking| (Matter::of(way.kind), lesson(known, &way.phrase, way.language));
    known.ways_of_asking.iter().map(lesson).collect()
}

fn lessons_of_messages(known: &Knowledge) -> Vec<(Matter, Vec<String>)> {
    known.heard.iter().map(|heard| (heard.matter, lesson(known, &heard.phrase, heard.language))).collect()
}

/// What the lessons tell apart.
fn labels(known: &Knowledge) -> impl Iterator<Item = Matter> {
    let asked = known.ways_of_asking.iter().map(|way| Matter::of(way.kind));
    known.heard.iter().map(|heard| heard.matter).chain(asked)
}

/// The words of a phrasing as they are written, without its braces, each marked as such.
fn written_outside_classes(phrase: &str, language: Language) -> Vec<String> {
    let outside = phrase.split(['{', '}']).step_by(2);
    outside.flat_map(|piece| Text::read_as(piece, language).tokens).map(|token| as_written(&token)).collect()
}

/// A word as it is written, told apart from its stem: tense and number count.
#[must_use]
pub fn as_written(token: &Token) -> String {
    format!("{WRITTEN}{}", token.normal)
}

/// The words of an article; what people say when they ask counts more than what the text goes on to say.
fn article_words(article: &Article) -> Vec<String> {
    let mut asked = Vec::new();
    for (language, title) in article.title.each() {
        asked.extend(index_words_as(title, language));
    }
    for (language, topics) in article.topics.each() {
        asked.extend(topics.iter().flat_map(|topic| index_words_as(topic, language)));
    }
    let mut words = [asked.as_slice(), &asked, &asked].concat();
    for (language, answer) in article.answer.each() {
        words.extend(index_words_as(answer, language));
    }
    words.extend(index_words_as(&article.body, Language::En));
    words
}
