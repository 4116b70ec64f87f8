//! Whether the files of phrases agree: the same keys in every language, nothing that is no phrase.

use crate::knowledge::{Knowledge, Problem};
use fluent_syntax::ast::Entry;
use fluent_syntax::parser::parse;
use std::collections::BTreeSet;

/// Every line that is no phrase, every key that stands twice, and every key that one language has and another lacks.
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
        let mut found = BTreeSet::new();
        let named = |entry: &'_ Entry<&'_ str>| match entry {
            Entry::Message(message) => Some(message.id.name.to_owned()),
            _ => None,
        };
        for key in resource.body.iter().filter_map(named) {
            if !found.insert(key.clone()) {
                // The later one would win without a word.
                let place = text.rfind(&format!("\n{key} =")).map_or(0, |start| start + 1);
                let message = format!("the phrase \"{key}\" stands here a second time");
                problems.push(Problem::at(&file, text, place..place + key.len(), message));
            }
        }
        keys.push((file, text, found));
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::Files;

    #[test]
    fn a_key_twice_is_told_with_its_place() {
        let mut known = Knowledge::read(&Files::embedded()).0;
        assert!(problems_of_phrases(&known).is_empty());
        let line = known.phrases.en.lines().count();
        known.phrases.en.push_str("\ndeclined = No.\n");
        let told = problems_of_phrases(&known).iter().map(ToString::to_string).collect::<Vec<_>>().join("\n");
        assert!(told.contains("\"declined\" stands here a second time"), "{told}");
        assert!(told.contains(&format!("en.ftl:{}", line + 2)), "{told}");
    }
}
