//! Whether the files of phrases agree: the same keys in every language, nothing that is no phrase.

use crate::knowledge::{Knowledge, Problem};
use fluent_syntax::ast::Entry;
use fluent_syntax::parser::parse;
use std::collections::BTreeSet;

/// Every line that is no phrase, and every key that one language has and another lacks.
#[must_use]
pub fn problems_of_phrases(known: &Knowledge) -> Vec<Problem> {
    let mut problems = Vec::new();
    let mut keys: Vec<(String, &str, BTreeSet<String>)> = Vec::new();
    for (language, text) in known.phrases.each() {
        let file = format!("wording/{}.ftl", language.tag());
        let resource = match parse(text.as_str()) {
            Ok(resource) => resource,
            Err((resource, faults)) => {
                for fault in faults {
                    problems.push(Problem::at(&file, text, fault.pos.clone(), fault.to_string()));
                }
                resource
            }
        };
        let found = resource.body.iter().filter_map(|entry| match entry {
            Entry::Message(message) => Some(message.id.name.to_owned()),
            _ => None,
        });
        keys.push((file, text, found.collect()));
    }
    let all: BTreeSet<String> = keys.iter().flat_map(|(_, _, keys)| keys.iter().cloned()).collect();
    for (file, text, keys) in &keys {
        for key in all.difference(keys) {
            let message = format!("the phrase \"{key}\" is missing here; another language has it");
            problems.push(Problem::at(file, text, text.len()..text.len(), message));
        }
    }
    problems
}
