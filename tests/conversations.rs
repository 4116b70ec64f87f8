//! Chats that a gardener can read: what a person types, what must be said, and the record of what was said.
//!
//! `must` lines are promises and are never rewritten; lines with `<` are the record: run with
//! `ROOFTEND_WRITE=1` to write them anew, and look at the difference.
#![allow(clippy::disallowed_methods, reason = "the chats are files")]

use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::fs;
use std::process::Command;

/// The program, with what it derives from the knowledge base kept for all tests.
fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command
}

/// One thing typed, with what must hold of its reply.
#[derive(Default)]
struct Step {
    typed: String,
    must: Vec<String>,
    record: Vec<String>,
}

struct Chat {
    title: String,
    season: String,
    person: Option<String>,
    steps: Vec<Step>,
}

fn parse(text: &str) -> Vec<Chat> {
    let mut chats: Vec<Chat> = Vec::new();
    for line in text.lines() {
        if let Some(title) = line.strip_prefix("# ") {
            let (season, person) = (String::from("may"), None);
            chats.push(Chat { title: title.into(), season, person, steps: Vec::new() });
            continue;
        }
        let Some(chat) = chats.last_mut() else { continue };
        if let Some(setting) = line.strip_prefix("demo ") {
            let mut words = setting.split(" · ");
            chat.season = words.next().unwrap_or("may").into();
            chat.person = words.next().and_then(|speaks| speaks.strip_prefix("speaks ")).map(Into::into);
        } else if let Some(typed) = line.strip_prefix("> ") {
            chat.steps.push(Step { typed: typed.into(), ..Step::default() });
        } else if let Some(step) = chat.steps.last_mut() {
            if line.starts_with("must ") {
                step.must.push(line.into());
            } else if let Some(said) = line.strip_prefix("< ") {
                step.record.push(said.into());
            }
        }
    }
    chats
}

fn write(chats: &[Chat], heading: &str) -> String {
    let mut text = format!("{heading}\n");
    for chat in chats {
        let speaks = chat.person.as_ref().map_or(String::new(), |person| format!(" · speaks {person}"));
        text.push_str(&format!("\n# {}\ndemo {}{speaks}\n", chat.title, chat.season));
        for step in &chat.steps {
            text.push_str(&format!("> {}\n", step.typed));
            step.must.iter().for_each(|must| text.push_str(&format!("{must}\n")));
            step.record.iter().for_each(|said| text.push_str(&format!("< {said}\n")));
        }
    }
    text
}

/// The replies of each chat, each message with those before it; all chats of a season in one run.
fn replies(chats: &[Chat]) -> Vec<Vec<Value>> {
    let mut all = vec![Vec::new(); chats.len()];
    let seasons: BTreeSet<&str> = chats.iter().map(|chat| chat.season.as_str()).collect();
    for season in seasons {
        let of_season: Vec<usize> = (0..chats.len()).filter(|at| chats[*at].season == season).collect();
        let lines: Vec<String> = of_season.iter().flat_map(|at| lines(*at, &chats[*at])).collect();
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("chats.jsonl");
        fs::write(&file, lines.join("\n")).unwrap();
        let mut command = program();
        command.arg("ask").arg(format!("--demo={season}")).arg("--batch").arg(&file);
        let output = command.output().unwrap();
        assert!(output.status.success(), "{season}: {}", String::from_utf8_lossy(&output.stderr));
        for line in String::from_utf8(output.stdout).unwrap().lines() {
            let reply: Value = serde_json::from_str(line).unwrap();
            let chat = usize::try_from(reply["id"].as_u64().unwrap()).unwrap();
            all[chat].push(reply);
        }
    }
    all
}

/// The lines of a batch for one chat.
fn lines(number: usize, chat: &Chat) -> Vec<String> {
    let line = |at: usize| {
        let after: Vec<&str> = chat.steps[..at].iter().map(|step| step.typed.as_str()).collect();
        let mut line = json!({"id": number, "message": chat.steps[at].typed, "after": after});
        if let Some(person) = &chat.person {
            line["as"] = json!(person);
        }
        line.to_string()
    };
    (0..chat.steps.len()).map(line).collect()
}

/// What a promise says is wrong with a reply.
fn broken(must: &str, reply: &Value) -> Option<String> {
    let text = reply["text"].as_str().unwrap();
    let shown = format!("{text}\n{}", reply["choices"]);
    let cited = format!("{}", reply["sources"]);
    let holds = if let Some(words) = must.strip_prefix("must say: ") {
        shown.contains(words)
    } else if let Some(words) = must.strip_prefix("must not say: ") {
        !shown.contains(words)
    } else if let Some(source) = must.strip_prefix("must cite: ") {
        cited.contains(source)
    } else if let Some(outcome) = must.strip_prefix("must be: ") {
        let kind = format!("{} {}", reply["outcome"].as_str().unwrap(), reply["reading"]["kind"].as_str().unwrap());
        kind == outcome
    } else if must == "must caution" {
        !reply["cautions"].as_array().unwrap().is_empty()
    } else {
        panic!("no such promise: {must}");
    };
    (!holds).then(|| format!("{must}\n  but the reply was {} {}:\n{text}", reply["outcome"], reply["reading"]["kind"]))
}

#[test]
fn chats_go_as_written() {
    let rewrite = std::env::var_os("ROOFTEND_WRITE").is_some();
    let mut titles = BTreeSet::new();
    let mut faults = Vec::new();
    for entry in fs::read_dir("tests/conversations").unwrap().map(Result::unwrap) {
        let path = entry.path();
        let text = fs::read_to_string(&path).unwrap();
        let heading: Vec<&str> = text.lines().take_while(|line| !line.is_empty()).collect();
        let mut chats = parse(&text);
        assert!(!chats.is_empty(), "{}: no chat in it", path.display());
        let all = replies(&chats);
        for (chat, replies) in chats.iter_mut().zip(all) {
            assert!(titles.insert(chat.title.clone()), "the title \"{}\" stands twice", chat.title);
            for (step, reply) in chat.steps.iter_mut().zip(replies) {
                let said: Vec<String> = reply["text"].as_str().unwrap().lines().map(Into::into).collect();
                faults.extend(
                    step.must
                        .iter()
                        .filter_map(|must| broken(must, &reply))
                        .map(|fault| format!("{}: \"{}\"\n  {fault}", chat.title, step.typed)),
                );
                if rewrite {
                    step.record = said;
                } else if step.record != said {
                    faults.push(format!(
                        "{}: \"{}\"\n  the record differs; now:\n{}",
                        chat.title,
                        step.typed,
                        said.join("\n")
                    ));
                }
            }
        }
        if rewrite {
            fs::write(&path, write(&chats, &heading.join("\n"))).unwrap();
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n\n"));
}
