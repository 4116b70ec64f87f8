//! The search index: ways of asking, and articles. Derived from the facts; may be deleted.

use super::Knowledge;
use super::article::Article;
use super::asking::Kind;
use super::habit::Habit;
use crate::script::{Language, index_words_as};
use std::collections::{BTreeSet, HashMap};
use tantivy::collector::TopDocs;
use tantivy::query::{BooleanQuery, Occur, Query, TermQuery};
use tantivy::schema::{Field, IndexRecordOption, STORED, Schema, TextFieldIndexing, TextOptions, Value};
use tantivy::{IndexWriter, ReloadPolicy, Searcher, TantivyDocument, Term};
use thiserror::Error;

/// Both indexes, in memory.
pub struct Index {
    asking: Shelf,
    articles: Shelf,
    ways: Vec<(Kind, Vec<String>)>,
    habit: Habit,
    /// In how many ways of asking a word stands, and in how many of those are no chatter.
    frequency: HashMap<String, (u32, u32)>,
}

/// A hit: which one, and how near.
#[derive(Debug, Clone, PartialEq)]
pub struct Found<T> {
    pub what: T,
    pub score: f64,
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
            let articles = scope.spawn(|| Shelf::build(known.articles.values().map(article_words)));
            let ways: Vec<(Kind, Vec<String>)> =
                known.ways_of_asking.iter().map(|way| (way.kind, with_classes(&way.phrase, way.language))).collect();
            let (habit, asking) = std::thread::scope(|inner| {
                let habit = inner.spawn(|| Habit::of(ways.iter().map(|(kind, words)| (*kind, words.as_slice()))));
                let asking = Shelf::build(ways.iter().map(|(kind, words)| (format!("{kind:?}"), words.clone())));
                (habit.join(), asking)
            });
            let mut frequency: HashMap<String, (u32, u32)> = HashMap::new();
            for (kind, words) in &ways {
                for word in words.iter().collect::<BTreeSet<_>>() {
                    let (all, care) = frequency.entry(word.clone()).or_default();
                    *all += 1;
                    *care += u32::from(*kind != Kind::None);
                }
            }
            let gone = || tantivy::TantivyError::SystemError("a thread of the index ended early".to_owned());
            let habit = habit.map_err(|_| gone())?;
            let articles = articles.join().map_err(|_| gone())??;
            Ok(Self { asking: asking?, articles, ways, habit, frequency })
        })
    }

    /// The ways of asking nearest to these words, best first. The score is the weight of the shared words
    /// over the mean weight of both phrases (Dice), 0 to 1, each word weighed by its rarity.
    #[must_use]
    pub fn ways_of_asking(&self, words: &[String], most: usize) -> Vec<Found<Kind>> {
        let asked: BTreeSet<&str> = words.iter().map(String::as_str).collect();
        let asked_weight: f64 = asked.iter().map(|word| self.weight(word)).sum();
        let mut found: Vec<Found<Kind>> = self
            .asking
            .search(words, most)
            .into_iter()
            .filter_map(|(ordinal, _, _)| {
                let (kind, way) = self.ways.get(ordinal)?;
                let way: BTreeSet<&str> = way.iter().map(String::as_str).collect();
                let way_weight: f64 = way.iter().map(|word| self.weight(word)).sum();
                let shared: f64 = way.intersection(&asked).map(|word| self.weight(word)).sum();
                Some(Found { what: *kind, score: 2.0 * shared / (asked_weight + way_weight).max(1e-9) })
            })
            .collect();
        found.sort_by(|a, b| b.score.total_cmp(&a.score));
        found
    }

    /// How usual these words are for each kind, as shares of 1.
    #[must_use]
    pub fn leaning(&self, words: &[String]) -> Vec<(Kind, f64)> {
        self.habit.shares(words)
    }

    /// Whether any way of asking has this word.
    #[must_use]
    pub fn knows(&self, word: &str) -> bool {
        self.frequency.contains_key(word)
    }

    /// Whether a way of asking about growing has this word.
    #[must_use]
    pub fn knows_of_care(&self, word: &str) -> bool {
        self.frequency.get(word).is_some_and(|(_, care)| *care > 0)
    }

    /// How telling a word is: the logarithm of how rarely it stands in the ways of asking.
    fn weight(&self, word: &str) -> f64 {
        let all = self.ways.len() as f64 + 1.0;
        let with = f64::from(self.frequency.get(word).copied().unwrap_or_default().0) + 1.0;
        let rarity = libm::log(all / with);
        // A word no phrase has is more often chatter than sense: it counts like a usual one.
        if with < 1.5 { rarity * UNKNOWN_WORD } else { rarity }
    }

    /// The articles nearest to these words, best first, by id, with their BM25 scores.
    #[must_use]
    pub fn articles(&self, words: &[String], most: usize) -> Vec<Found<String>> {
        let hits = self.articles.search(words, most);
        hits.into_iter().map(|(_, what, score)| Found { what, score: f64::from(score) }).collect()
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

/// The id of an article and its words; what people say when they ask counts more than what the text goes on to say.
fn article_words(article: &Article) -> (String, Vec<String>) {
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
    (article.id.clone(), words)
}

/// One list of texts that can be searched.
struct Shelf {
    searcher: Searcher,
    words: Field,
    name: Field,
    ordinal: Field,
}

impl Shelf {
    fn build(texts: impl Iterator<Item = (String, Vec<String>)>) -> Result<Self, tantivy::TantivyError> {
        let mut schema = Schema::builder();
        // The words are cut by our own reader of text; the index only keeps them apart.
        let indexing =
            TextFieldIndexing::default().set_tokenizer("whitespace").set_index_option(IndexRecordOption::WithFreqs);
        let words = schema.add_text_field("words", TextOptions::default().set_indexing_options(indexing));
        let name = schema.add_text_field("name", STORED);
        let ordinal = schema.add_u64_field("ordinal", STORED);
        let index = tantivy::Index::create_in_ram(schema.build());
        let mut writer: IndexWriter = index.writer_with_num_threads(1, 15_000_000)?;
        for (number, (text_name, text_words)) in texts.enumerate() {
            let mut document = TantivyDocument::default();
            document.add_text(words, text_words.join(" "));
            document.add_text(name, text_name);
            document.add_u64(ordinal, number as u64);
            writer.add_document(document)?;
        }
        writer.commit()?;
        let reader = index.reader_builder().reload_policy(ReloadPolicy::Manual).try_into()?;
        Ok(Self { searcher: reader.searcher(), words, name, ordinal })
    }

    /// Ordinal, name and score of the nearest texts. A fault in a search of memory is no hit.
    fn search(&self, words: &[String], most: usize) -> Vec<(usize, String, f32)> {
        let mut seen = BTreeSet::new();
        let terms: Vec<(Occur, Box<dyn Query>)> = words
            .iter()
            .filter(|word| seen.insert(word.as_str()))
            .map(|word| {
                let term = Term::from_field_text(self.words, word);
                let query: Box<dyn Query> = Box::new(TermQuery::new(term, IndexRecordOption::WithFreqs));
                (Occur::Should, query)
            })
            .collect();
        if terms.is_empty() {
            return Vec::new();
        }
        let hits = self.searcher.search(&BooleanQuery::new(terms), &TopDocs::with_limit(most).order_by_score());
        let Ok(hits) = hits else { return Vec::new() };
        hits.into_iter()
            .filter_map(|(score, address)| {
                let document: TantivyDocument = self.searcher.doc(address).ok()?;
                let ordinal = usize::try_from(document.get_first(self.ordinal)?.as_u64()?).ok()?;
                let name = document.get_first(self.name)?.as_str()?.to_owned();
                Some((ordinal, name, score))
            })
            .collect()
    }
}
