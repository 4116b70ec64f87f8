//! How well the right article is found: questions written by someone who saw only titles and texts, beside a plain BM25
//! of the same texts. The shares are printed; what is asserted is that ours is no worse than the plain one.

use rooftend::knowledge::{Files, Index, Knowledge};
use rooftend::script::Text;
use rooftend::understanding::{Asker, Gazetteer, Reader, read};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::sync::LazyLock;

#[derive(Deserialize)]
struct Asked {
    question: String,
    lang: String,
    article: Vec<String>,
    slips: bool,
}

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| {
    let (known, problems) = Knowledge::read(&Files::embedded());
    assert!(problems.is_empty());
    known
});

fn questions() -> Vec<Asked> {
    include_str!("retrieval.jsonl").lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

/// Hits at 1 and at 3, and how many were asked.
#[derive(Default, Clone, Copy)]
struct Recall {
    at_1: usize,
    at_3: usize,
    all: usize,
}

impl Recall {
    fn add(&mut self, found: &[String], wanted: &[String]) {
        self.all += 1;
        self.at_1 += usize::from(found.first().is_some_and(|id| wanted.contains(id)));
        self.at_3 += usize::from(found.iter().take(3).any(|id| wanted.contains(id)));
    }
}

/// Plain BM25 (Robertson and Zaragoza 2009: k1 1.2, b 0.75) over lower-case words between spaces and marks.
struct Plain {
    texts: Vec<(String, HashMap<String, f64>, f64)>,
    rarity: HashMap<String, f64>,
    mean_length: f64,
}

impl Plain {
    fn of(known: &Knowledge) -> Self {
        let texts: Vec<_> = known
            .articles
            .values()
            .map(|article| {
                let mut words = plain_words(&article.body);
                for (_, title) in article.title.each() {
                    words.extend(plain_words(title));
                }
                for (_, topics) in article.topics.each() {
                    words.extend(topics.iter().flat_map(|topic| plain_words(topic)));
                }
                for (_, answer) in article.answer.each() {
                    words.extend(plain_words(answer));
                }
                let length = words.len() as f64;
                let mut counts = HashMap::new();
                words.into_iter().for_each(|word| *counts.entry(word).or_insert(0.0) += 1.0);
                (article.id.clone(), counts, length)
            })
            .collect();
        let mut standing: HashMap<String, f64> = HashMap::new();
        for (_, counts, _) in &texts {
            counts.keys().for_each(|word| *standing.entry(word.clone()).or_default() += 1.0);
        }
        let all = texts.len() as f64;
        let rarity = standing.into_iter().map(|(word, n)| (word, ((all - n + 0.5) / (n + 0.5) + 1.0).ln())).collect();
        let mean_length = texts.iter().map(|(_, _, length)| length).sum::<f64>() / all;
        Self { texts, rarity, mean_length }
    }

    fn find(&self, question: &str) -> Vec<String> {
        let asked: BTreeSet<String> = plain_words(question).into_iter().collect();
        let mut scores: Vec<(f64, &str)> = self
            .texts
            .iter()
            .map(|(id, counts, length)| {
                let score = asked
                    .iter()
                    .filter_map(|word| Some((self.rarity.get(word)?, counts.get(word)?)))
                    .map(|(rarity, count)| {
                        rarity * count * 2.2 / (count + 1.2 * (0.25 + 0.75 * length / self.mean_length))
                    })
                    .sum();
                (score, id.as_str())
            })
            .collect();
        scores.sort_by(|a, b| b.0.total_cmp(&a.0));
        scores.into_iter().take(3).map(|(_, id)| id.to_owned()).collect()
    }
}

fn plain_words(text: &str) -> Vec<String> {
    let tokens = Text::read(text).tokens;
    tokens
        .into_iter()
        .map(|token| token.text.to_lowercase())
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .collect()
}

#[test]
fn ours_finds_no_less_than_plain_bm25() {
    let index = Index::build(&KNOWN).unwrap();
    let gazetteer = Gazetteer::of(&KNOWN);
    let reader = Reader { known: &KNOWN, index: &index, gazetteer: &gazetteer };
    let plain = Plain::of(&KNOWN);
    let mut tables: BTreeMap<String, (Recall, Recall)> = BTreeMap::new();
    for asked in questions() {
        for id in &asked.article {
            assert!(KNOWN.articles.contains_key(id), "{id} is no article");
        }
        let (reading, _) = read(&asked.question, &reader, &Asker::default(), "2026-05-18".parse().unwrap());
        let ours: Vec<String> = index.articles(&reading.search, 3).into_iter().map(|found| found.what).collect();
        let theirs = plain.find(&asked.question);
        let slips = if asked.slips { "with slips" } else { "without slips" };
        for group in ["all", &asked.lang, slips] {
            let (a, b) = tables.entry(group.to_owned()).or_default();
            a.add(&ours, &asked.article);
            b.add(&theirs, &asked.article);
        }
    }
    for (group, (ours, plain)) in &tables {
        let share = |hits: usize| 100.0 * hits as f64 / ours.all as f64;
        println!(
            "{group} ({}): ours {:.0} / {:.0} %, plain BM25 {:.0} / {:.0} % (at 1 / at 3)",
            ours.all,
            share(ours.at_1),
            share(ours.at_3),
            share(plain.at_1),
            share(plain.at_3)
        );
    }
    let (ours, plain) = tables["all"];
    assert!(ours.at_1 >= plain.at_1 && ours.at_3 >= plain.at_3);
}
