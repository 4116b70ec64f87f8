//! What is kept of the knowledge base from run to run: taken up where it is whole and of the same files, else made anew.
//! Whatever lies in the folder, the answers are the same.
#![allow(clippy::disallowed_methods, reason = "the tests damage what is kept")]

use rooftend::knowledge::{Files, Index, Knowledge};
use rooftend::script::index_words;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

/// The file that is kept.
const FILE: &str = "derived";

/// All that an index says of a few messages, to the last bit.
fn said(index: &Index) -> String {
    let messages = ["how much water does the tomato need", "पालक के पत्ते पीले", "kal khaad dali", "who won", "xyzzy", ""];
    let words = messages.map(index_words);
    let mut all = String::new();
    for words in &words {
        let known = words.iter().map(|word| (index.knows(word), index.knows_of_care(word))).collect::<Vec<_>>();
        let (ways, articles) = (index.ways_of_asking(words, 40), index.articles(words, 9));
        all.push_str(&format!("{known:?} {:?} {ways:?} {articles:?}\n", index.leaning(words)));
    }
    all
}

fn kept(folder: &Path) -> String {
    said(&Index::kept(&KNOWN, folder).unwrap())
}

#[test]
fn what_is_kept_says_what_was_derived() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path().join("not/yet/there");
    let derived = said(&Index::build(&KNOWN).unwrap());
    assert_eq!(kept(&folder), derived);
    assert_eq!(fs::read_dir(&folder).unwrap().count(), 1, "nothing else is left");
    let file = fs::metadata(folder.join(FILE)).unwrap();
    assert_eq!(kept(&folder), derived);
    assert_eq!(fs::metadata(folder.join(FILE)).unwrap().modified().unwrap(), file.modified().unwrap());
}

#[test]
fn a_damaged_file_is_made_anew() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join(FILE);
    let derived = kept(folder.path());
    let whole = fs::read(&file).unwrap();
    let mut one_bit = whole.clone();
    one_bit[whole.len() / 2] ^= 0x80;
    let mut other_mark = whole.clone();
    other_mark[8] ^= 1;
    for bytes in [Vec::new(), whole[..whole.len() - 1].to_vec(), one_bit, other_mark] {
        fs::write(&file, &bytes).unwrap();
        assert_eq!(kept(folder.path()), derived);
        let anew = fs::read(&file).unwrap();
        assert!(anew != bytes);
        assert_eq!(kept(folder.path()), derived);
        assert!(fs::read(&file).unwrap() == anew, "what was made anew is taken up");
    }
}

#[test]
fn other_knowledge_is_not_answered_from_it() {
    let folder = tempfile::tempdir().unwrap();
    let old = kept(folder.path());
    let files = Files::embedded();
    let mut texts: Vec<(String, String)> =
        ["crops", "materials", "mixes", "troubles", "words", "wording", "asking", "heard", "hurt"]
            .iter()
            .flat_map(|within| files.within(within, ""))
            .chain(files.within("articles", ".md"))
            .map(owned)
            .collect();
    texts.extend(
        ["sources.toml", "signs.toml", "refused.toml", "other-plants.toml", "places.toml", "usual-crops.toml"]
            .map(|name| owned((name, files.text(name).unwrap()))),
    );
    let same = Knowledge::read(&Files::of(texts.clone())).0;
    assert_eq!(same.fingerprint, KNOWN.fingerprint);
    let (_, asking) = texts.iter_mut().find(|(name, _)| name == "asking/water.toml").unwrap();
    *asking = asking.replacen("en = [", "en = [\"xyzzy\",", 1);
    let (changed, problems) = Knowledge::read(&Files::of(texts));
    assert!(problems.is_empty() && changed.ways_of_asking.len() == KNOWN.ways_of_asking.len() + 1);
    let new = said(&Index::build(&changed).unwrap());
    assert_ne!(new, old);
    for _ in 0..2 {
        assert_eq!(said(&Index::kept(&changed, folder.path()).unwrap()), new);
    }
    assert_eq!(kept(folder.path()), old);
}

fn owned((name, text): (&str, &str)) -> (String, String) {
    (name.to_owned(), text.to_owned())
}

/// A folder that cannot be, and one that holds a folder where the file should be.
#[test]
fn a_folder_that_cannot_be_written_is_no_fault() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("file");
    fs::write(&file, "a file").unwrap();
    let taken = folder.path().join("taken");
    fs::create_dir_all(taken.join(FILE).join("inner")).unwrap();
    for cache in [file.join("below"), taken.clone()] {
        let output = Command::new(env!("CARGO_BIN_EXE_rooftend"))
            .env("ROOFTEND_CACHE", &cache)
            .args(["ask", "--demo", "--as", "meera", "--json", "how much water for the east box"])
            .output()
            .unwrap();
        assert!(output.status.success());
        assert!(String::from_utf8(output.stdout).unwrap().contains("\"outcome\":\"answered\""));
    }
    assert_eq!(fs::read_dir(&taken).unwrap().count(), 1, "no try is left lying about");
}
