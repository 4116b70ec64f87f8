//! A list of texts that can be searched: one segment of tantivy in memory, so that a text is known by its place.

use super::pack::{Packed, Unpacking};
use std::collections::BTreeSet;
use std::path::Path;
use tantivy::collector::TopDocs;
use tantivy::directory::{Directory, RamDirectory};
use tantivy::query::{BooleanQuery, Occur, Query, TermQuery};
use tantivy::schema::{Field, IndexRecordOption, Schema, TextFieldIndexing, TextOptions};
use tantivy::{ReloadPolicy, Searcher, SingleSegmentIndexWriter, TantivyDocument, TantivyError, Term};

pub struct Shelf {
    searcher: Searcher,
    words: Field,
    directory: RamDirectory,
}

/// The field that holds the words.
const WORDS: &str = "words";
/// Where tantivy says which files make up an index.
const META: &str = "meta.json";
/// Memory of the writer, bytes: what tantivy asks for at least.
const MEMORY: usize = 15_000_000;

impl Shelf {
    /// Of texts, each given as its words.
    pub fn build<'w>(texts: impl Iterator<Item = &'w [String]>) -> Result<Self, TantivyError> {
        let mut schema = Schema::builder();
        // The words are cut by our own reader of text; the index only keeps them apart.
        let indexing =
            TextFieldIndexing::default().set_tokenizer("whitespace").set_index_option(IndexRecordOption::WithFreqs);
        let words = schema.add_text_field(WORDS, TextOptions::default().set_indexing_options(indexing));
        let directory = RamDirectory::create();
        let mut writer: SingleSegmentIndexWriter =
            tantivy::Index::builder().schema(schema.build()).single_segment_index_writer(directory.clone(), MEMORY)?;
        for text in texts {
            let mut document = TantivyDocument::default();
            document.add_text(words, text.join(" "));
            writer.add_document(document)?;
        }
        Self::of(&writer.finalize()?, directory)
    }

    fn of(index: &tantivy::Index, directory: RamDirectory) -> Result<Self, TantivyError> {
        let words = index.schema().get_field(WORDS)?;
        let reader = index.reader_builder().reload_policy(ReloadPolicy::Manual).try_into()?;
        Ok(Self { searcher: reader.searcher(), words, directory })
    }

    /// Place and score of the nearest texts. A fault in a search of memory is no hit.
    pub fn search(&self, words: &[String], most: usize) -> Vec<(usize, f32)> {
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
        hits.unwrap_or_default().into_iter().map(|(score, address)| (address.doc_id as usize, score)).collect()
    }

    /// The files of the index.
    pub fn pack(&self, packed: &mut Packed) -> Result<(), TantivyError> {
        let managed = self.searcher.index().directory().list_managed_files();
        let mut paths: BTreeSet<&Path> = managed.iter().map(AsRef::as_ref).collect();
        paths.insert(Path::new(META));
        paths.retain(|path| self.directory.exists(path).unwrap_or(false));
        packed.number(paths.len() as u64);
        for path in paths {
            packed.bytes(path.to_string_lossy().as_bytes());
            packed.bytes(&self.directory.open_read(path)?.read_bytes()?);
        }
        Ok(())
    }

    pub fn unpack(from: &mut Unpacking<'_>, texts: usize) -> Option<Self> {
        let directory = RamDirectory::create();
        for _ in 0..from.number()? {
            let path = std::str::from_utf8(from.bytes()?).ok()?;
            directory.atomic_write(Path::new(path), from.bytes()?).ok()?;
        }
        let index = tantivy::Index::open(directory.clone()).ok()?;
        Self::of(&index, directory).ok().filter(|shelf| shelf.searcher.num_docs() == texts as u64)
    }
}
