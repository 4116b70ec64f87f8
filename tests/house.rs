//! The house keeps to its own table: who may know whom, what stands at the top of a room, what must not be
//! left lying about, and which phrases are said.
#![allow(clippy::disallowed_methods, reason = "the test reads the sources")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

fn sources(folder: &str) -> Vec<(PathBuf, String)> {
    let mut all = Vec::new();
    let mut open = vec![PathBuf::from(folder)];
    while let Some(folder) = open.pop() {
        for entry in fs::read_dir(&folder).unwrap().map(Result::unwrap) {
            let path = entry.path();
            if path.is_dir() {
                open.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let text = fs::read_to_string(&path).unwrap();
                all.push((path, text));
            }
        }
    }
    all.sort();
    all
}

/// The import table of DEVELOPERS.md: room → rooms it may import; `None` for all.
fn table() -> BTreeMap<String, Option<BTreeSet<String>>> {
    let text = fs::read_to_string("DEVELOPERS.md").unwrap();
    let rows = text.lines().filter(|line| line.starts_with("| ") && line.contains("| `"));
    rows.map(|row| {
        let cells: Vec<&str> = row.split('|').map(str::trim).collect();
        let room = cells[2].trim_matches('`').to_owned();
        let may = match cells[4] {
            "all" => None,
            "–" => Some(BTreeSet::new()),
            list => Some(list.split(", ").map(str::to_owned).collect()),
        };
        (room, may)
    })
    .collect()
}

fn room(path: &Path) -> String {
    let mut parts = path.components().skip(1);
    let first = parts.next().unwrap().as_os_str().to_string_lossy().into_owned();
    first.trim_end_matches(".rs").to_owned()
}

#[test]
fn a_room_knows_only_the_rooms_of_its_row() {
    let table = table();
    assert!(table.len() >= 12, "the table of DEVELOPERS.md was not found");
    let mut faults = Vec::new();
    for (path, text) in sources("src") {
        let own = room(&path);
        if own == "lib" || own == "main" {
            continue;
        }
        let Some(may) = table.get(&own) else {
            faults.push(format!("{}: room `{own}` is not in the table", path.display()));
            continue;
        };
        let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
        for (number, line) in code.enumerate() {
            // A list would hide rooms from the look below, and a climb out of the room is an import too.
            if line.contains("use crate::{") || line.contains("super::super::") {
                faults.push(format!("{}:{}: write one `use crate::room::…` a room", path.display(), number + 1));
            }
            for import in line.split("crate::").skip(1) {
                let named: String = import.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect();
                let known = table.contains_key(&named) && named != own;
                if known && may.as_ref().is_some_and(|may| !may.contains(&named)) {
                    faults.push(format!("{}:{}: `{own}` may not know `{named}`", path.display(), number + 1));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn a_room_says_what_it_is_and_what_is_never_there() {
    for room in table().keys() {
        let text = fs::read_to_string(format!("src/{room}/mod.rs")).unwrap();
        assert!(text.starts_with("//!"), "{room}: its purpose is missing");
        assert!(text.contains("//! **Never here:**"), "{room}: what is never there is missing");
    }
}

#[test]
fn nothing_is_left_lying_about() {
    let markers = ["TO".to_owned() + "DO", "FIX".to_owned() + "ME", "XX".to_owned() + "X", "dbg".to_owned() + "!("];
    for (path, text) in sources("src").into_iter().chain(sources("tests")).chain(sources("benches")) {
        for marker in &markers {
            assert!(!text.contains(marker.as_str()), "{}: {marker}", path.display());
        }
        assert!(text.starts_with("//!"), "{}: its first line does not say what it is", path.display());
    }
}

/// Every phrase the code says stands in the files, and every phrase of the files is said.
#[test]
fn phrases_and_code_agree() {
    let english = fs::read_to_string("knowledge/wording/en.ftl").unwrap();
    let keys: BTreeSet<&str> = english
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_lowercase()))
        .filter_map(|line| line.split_once(" =").map(|(key, _)| key))
        .collect();
    let code: String = sources("src").into_iter().map(|(_, text)| text).collect();
    let numbered = |key: &str| key.starts_with("weekday-") || key.starts_with("month-");
    let unsaid: Vec<&&str> =
        keys.iter().filter(|key| !numbered(key) && !code.contains(&format!("\"{key}\""))).collect();
    assert!(unsaid.is_empty(), "nobody says {unsaid:?}");
    let said = code.split("Line::new(\"").skip(1).filter_map(|rest| rest.split_once('"').map(|(key, _)| key));
    let missing: BTreeSet<&str> = said.filter(|key| !keys.contains(key)).collect();
    assert!(missing.is_empty(), "no phrase for {missing:?}");
}

#[test]
fn the_knowledge_base_has_no_problem() {
    let (known, mut problems) = rooftend::knowledge::Knowledge::read(&rooftend::knowledge::Files::embedded());
    problems.extend(rooftend::wording::problems_of_phrases(&known));
    let told: Vec<String> = problems.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{}", told.join("\n"));
}
