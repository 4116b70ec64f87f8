//! A waiting question turned into a draft of a knowledge file: names of people and sites never go into it.

use super::arguments::Arguments;
use super::front::files;
use super::refusal::Refusal;
use crate::desk::House;
use crate::desk::reception::Waiting;
use crate::garden::Store;
use crate::knowledge::Kind;
use crate::script::{Language, Text};
use crate::understanding::{Asker, Everyone, OwnBed, Reader, classed, read};
use serde_json::json;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Shorter words of names are said of other things.
const SHORTEST_NAME: usize = 3;

/// Writes the draft and says where it stands.
pub fn write(
    waiting: &Waiting,
    as_asking: Option<&str>,
    as_article: Option<&str>,
    into: &Path,
    store: &dyn Store,
    arguments: &Arguments,
) -> Result<PathBuf, Refusal> {
    let files = files(arguments.knowledge.as_deref())?;
    let house = House::open(&files).map_err(|fault| Refusal::of_house(fault, &files))?;
    let (asker, names) = everyone(store)?;
    let reader = Reader { known: &house.known, index: &house.index, gazetteer: &house.gazetteer };
    let text = &waiting.question.text;
    let today = waiting.question.asked_at.date_naive();
    let phrase = classed(text, &reader, &asker, today);
    personal(&phrase, &names)?;
    let language = Text::read(text).language;
    let (file, content) = match (as_asking, as_article) {
        (Some(kind), _) => {
            let parsed: Kind = serde_json::from_value(json!(kind)).map_err(|_| {
                Refusal::plain(format!("\"{kind}\" is no kind of message; water, harvest, sow, … expected"))
            })?;
            let file = into.join("asking").join(format!("{kind}-{}.toml", waiting.question.id));
            (file, asking(parsed, &phrase, language))
        }
        (None, Some(title)) => {
            personal(title, &names)?;
            let crops = read(text, &reader, &asker, today).0.crops;
            let id = slug(title);
            if id.is_empty() {
                return Err(Refusal::plain("a title in English letters was expected: the file is called after it"));
            }
            (into.join("articles").join(format!("{id}.md")), article(&id, title, &phrase, &crops, language))
        }
        (None, None) => return Err(Refusal::plain("--as-asking KIND or --as-article TITLE was expected")),
    };
    if file_exists(&file) {
        return Err(Refusal::plain(format!("{} is there already", file.display())));
    }
    put(&file, &content)?;
    Ok(file)
}

/// Everyone's names, so that none of them goes into a file, and all beds, so that they become a class.
fn everyone(store: &dyn Store) -> Result<(Asker, Vec<String>), Refusal> {
    let mut names = Vec::new();
    let mut beds = Vec::new();
    for person in store.people()? {
        names.push(person.name);
        names.push(person.id.to_string());
    }
    for site in store.sites()? {
        for bed in store.beds_of_site(&site.id)? {
            beds.push(OwnBed { id: bed.id, kind: bed.kind, names: bed.names, crops: Vec::new() });
        }
        names.push(site.id.as_str().replace('-', " "));
        names.push(site.name);
    }
    let words = names.iter().flat_map(|name| name.split_whitespace());
    let long = words.filter(|word| word.chars().count() >= SHORTEST_NAME).map(str::to_owned);
    let mut others = names.clone();
    others.extend(long.filter(|word| word.chars().all(char::is_alphabetic)));
    Ok((Asker::of(None, beds, Arc::new(Everyone::hidden(&others))), others))
}

/// Refuses what still holds a name, an address or a number to call.
fn personal(phrase: &str, names: &[String]) -> Result<(), Refusal> {
    let low = phrase.to_lowercase();
    let said: Vec<&str> = low.split(|letter: char| !letter.is_alphanumeric()).collect();
    let name = names.iter().map(|name| name.to_lowercase()).find(|name| said.contains(&name.as_str()));
    let digits = phrase.chars().filter(char::is_ascii_digit).count();
    if name.is_some() || digits >= 6 || low.contains('@') || low.contains("http") || low.contains("www.") {
        return Err(Refusal::plain(format!("\"{phrase}\" still holds something of a person; write this one by hand")));
    }
    Ok(())
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

fn asking(kind: Kind, phrase: &str, language: Language) -> String {
    let kind = json!(kind);
    let of = |other: Language| if other == language { format!("[{}]", quoted(phrase)) } else { "[]".to_owned() };
    let (en, hi, hi_latn) = (of(Language::En), of(Language::Hi), of(Language::HiLatn));
    format!(
        "# From a question that waited for a person; common practice, names replaced by their class.\n\
         kind = {kind}\n\nen = {en}\nhi = {hi}\nhi-Latn = {hi_latn}\n"
    )
}

fn article(id: &str, title: &str, phrase: &str, crops: &[String], language: Language) -> String {
    // A topic is plain words: a class in braces says nothing to a search.
    let topic: Vec<&str> = phrase.split_whitespace().filter(|word| !word.contains('{')).collect();
    let topic = topic.join(" ");
    let of = |other: Language| if other == language { format!("[{}]", quoted(&topic)) } else { "[]".to_owned() };
    let crops: Vec<String> = crops.iter().map(|crop| quoted(crop)).collect();
    let (title, crops) = (quoted(title), crops.join(", "));
    let (en, hi, hi_latn) = (of(Language::En), of(Language::Hi), of(Language::HiLatn));
    format!(
        "+++\nid = \"{id}\"\ncrops = [{crops}]\nsources = [\"common-practice\"]\n\n\
         [title]\nen = {title}\nhi = \"\"\nhi-Latn = \"\"\n\n\
         [topics]\nen = {en}\nhi = {hi}\nhi-Latn = {hi_latn}\n\n\
         [answer]\nen = \"\"\nhi = \"\"\nhi-Latn = \"\"\n+++\n"
    )
}

/// A title as an id: English letters and digits, joined by hyphens.
fn slug(title: &str) -> String {
    let low = title.to_lowercase();
    let words = low.split(|letter: char| !letter.is_ascii_alphanumeric()).filter(|word| !word.is_empty());
    words.collect::<Vec<_>>().join("-")
}

#[expect(clippy::disallowed_methods, reason = "the command line writes the files it is asked for")]
fn put(file: &Path, content: &str) -> Result<(), Refusal> {
    if let Some(folder) = file.parent() {
        std::fs::create_dir_all(folder).map_err(|fault| Refusal::file("make", folder, &fault))?;
    }
    std::fs::write(file, content).map_err(|fault| Refusal::file("write", file, &fault))
}

fn file_exists(file: &Path) -> bool {
    std::fs::exists(file).unwrap_or(true)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_personal_is_refused() {
        let names = vec!["Meera".to_owned(), "roof 12".to_owned()];
        assert!(personal("how much water for {crop}", &names).is_ok());
        for phrase in ["meera asks about {crop}", "call 9876543210", "write to a@b.example", "see www.a.example"] {
            assert!(personal(phrase, &names).is_err(), "{phrase}");
        }
    }

    #[test]
    fn ids_of_titles() {
        assert_eq!(slug("Keeping a cat off the beds!"), "keeping-a-cat-off-the-beds");
        assert_eq!(slug("बिल्ली"), "");
    }
}
