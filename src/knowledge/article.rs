//! An article: a short how-to with a two-sentence answer in three languages.

use super::fact::SourceRef;
use super::names::{InThree, Names};
use super::raw::Reader;
use serde::Deserialize;
use toml::Spanned;

/// One article of the knowledge base.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Article {
    pub id: String,
    pub title: InThree<String>,
    /// Words and short phrases people use when they ask for this.
    pub topics: Names,
    pub crops: Vec<String>,
    /// Two sentences.
    pub answer: InThree<String>,
    pub caution: Option<InThree<String>>,
    pub sources: Vec<SourceRef>,
    /// The text, in English.
    pub body: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawArticle {
    id: String,
    title: InThree<String>,
    topics: Names,
    #[serde(default)]
    crops: Vec<String>,
    answer: InThree<String>,
    caution: Option<InThree<String>>,
    sources: Vec<Spanned<String>>,
}

pub fn read(reader: &mut Reader<'_>, raw: RawArticle, body: &str) -> Option<(String, Article)> {
    // The front matter begins after the four bytes of its opening line.
    let sources: Option<Vec<_>> = raw
        .sources
        .iter()
        .map(|source| reader.source(source.span().start + 4..source.span().end + 4, source.get_ref()))
        .collect();
    let texts = [("title", &raw.title), ("answer", &raw.answer)];
    for (what, text) in texts {
        for (language, text) in text.each() {
            if text.trim().is_empty() {
                reader.problem(0..3, format!("the {what} of the article is missing in {}", language.tag()));
            }
        }
    }
    if body.trim().is_empty() {
        reader.problem(0..3, "the text of the article is missing");
    }
    let article = Article {
        id: raw.id,
        title: raw.title,
        topics: raw.topics,
        crops: raw.crops,
        answer: raw.answer,
        caution: raw.caution,
        sources: sources?,
        body: body.to_owned(),
    };
    Some((article.id.clone(), article))
}
