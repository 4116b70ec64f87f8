//! The search index: ways of asking, and articles. Derived from the facts; may be deleted.

use super::Knowledge;
use super::asking::Kind;
use crate::script::index_words;
use tantivy::collector::TopDocs;
use tantivy::query::{BooleanQuery, Occur, Query, TermQuery};
use tantivy::schema::{Field, IndexRecordOption, STORED, Schema, TextFieldIndexing, TextOptions, Value};
use tantivy::{IndexWriter, ReloadPolicy, Searcher, TantivyDocument, Term};
use thiserror::Error;

/// Both indexes, in memory.
pub struct Index {
    asking: Shelf,
    articles: Shelf,
    kinds: Vec<Kind>,
}

/// A hit: which one, and its BM25 score.
#[derive(Debug, Clone, PartialEq)]
pub struct Found<T> {
    pub what: T,
    pub score: f32,
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
        let asking = Shelf::build(known.ways_of_asking.iter().map(|way| {
            let name = format!("{:?}", way.kind);
            (name, index_words(&with_classes(&way.phrase)))
        }))?;
        let articles = Shelf::build(known.articles.values().map(|article| {
            // What people say when they ask counts more than what the text goes on to say.
            let mut text = String::new();
            for _ in 0..3 {
                for (_, title) in article.title.each() {
                    text.push_str(title);
                    text.push(' ');
                }
                for topic in article.topics.all() {
                    text.push_str(topic);
                    text.push(' ');
                }
            }
            for (_, answer) in article.answer.each() {
                text.push_str(answer);
                text.push(' ');
            }
            text.push_str(&article.body);
            (article.id.clone(), index_words(&text))
        }))?;
        Ok(Self { asking, articles, kinds: known.ways_of_asking.iter().map(|way| way.kind).collect() })
    }

    /// The ways of asking nearest to these words, best first.
    #[must_use]
    pub fn ways_of_asking(&self, words: &[String], most: usize) -> Vec<Found<Kind>> {
        let hits = self.asking.search(words, most);
        hits.into_iter()
            .filter_map(|(ordinal, _, score)| Some(Found { what: *self.kinds.get(ordinal)?, score }))
            .collect()
    }

    /// The articles nearest to these words, best first, by id.
    #[must_use]
    pub fn articles(&self, words: &[String], most: usize) -> Vec<Found<String>> {
        self.articles.search(words, most).into_iter().map(|(_, what, score)| Found { what, score }).collect()
    }
}

/// The word a class of names is indexed as: `{crop}` → `classcrop`. It survives every stemmer and
/// no person types it.
#[must_use]
pub fn class_word(class: &str) -> String {
    format!("class{class}")
}

/// A phrasing with its braces turned into class words.
#[must_use]
pub fn with_classes(phrase: &str) -> String {
    phrase.replace('{', " class").replace('}', " ")
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
        let mut seen = std::collections::BTreeSet::new();
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
