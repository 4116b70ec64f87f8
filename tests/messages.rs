//! Two sets of labelled messages, ours and another writer's, sent as a client with the demo's beds. How many kinds are
//! right is printed; what is asserted is that nothing is answered or recorded where that would be wrong.
#![allow(clippy::disallowed_methods, reason = "the test reads the messages and the replies")]

use serde_json::Value;
use std::process::Command;

fn words(value: &Value) -> Vec<&str> {
    match value {
        Value::String(word) => vec![word],
        Value::Array(words) => words.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    }
}

/// Each message of a file with its reply.
#[track_caller]
fn sent(file: &str) -> Vec<(Value, Value)> {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command.args(["ask", "--demo", "--as", "meera", "--now", "2026-05-18T08:00:00+05:30", "--batch", file]);
    let output = command.output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let asked = std::fs::read_to_string(file).unwrap();
    let asked: Vec<Value> =
        asked.lines().filter(|line| !line.trim().is_empty()).map(|line| serde_json::from_str(line).unwrap()).collect();
    let replies = String::from_utf8(output.stdout).unwrap();
    let replies: Vec<Value> = replies.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(asked.len(), replies.len());
    asked.into_iter().zip(replies).collect()
}

#[track_caller]
fn nothing_false_in(file: &str) {
    let sent = sent(file);
    let (mut right, mut given) = (0, Vec::new());
    for (asked, reply) in &sent {
        let (kind, outcome) = (reply["reading"]["kind"].as_str().unwrap(), reply["outcome"].as_str().unwrap());
        right += usize::from(words(&asked["kind"]).contains(&kind));
        let wanted = words(&asked["outcome"]);
        let may = wanted.iter().any(|word| ["answered", "recorded"].contains(word));
        if ["answered", "recorded"].contains(&outcome) && !may {
            given.push(format!("{}: {}", asked["message"], reply["text"]));
        }
    }
    println!("{file}: {right} kinds right of {}", sent.len());
    assert!(given.is_empty(), "answered where it should not be:\n{}", given.join("\n"));
}

#[test]
fn our_own_messages() {
    nothing_false_in("tests/reading/messages.jsonl");
}

#[test]
fn another_writers_messages() {
    nothing_false_in("tests/reading/other-writer.jsonl");
}

/// Work told and things seen, with questions, plans and jokes that tell of none.
#[test]
fn work_told_is_read_as_told() {
    let mut wrong = Vec::new();
    for (asked, reply) in sent("tests/reading/told.jsonl") {
        let (kind, outcome) = (reply["reading"]["kind"].as_str().unwrap(), reply["outcome"].as_str().unwrap());
        let days = words(&reply["reading"]["dates"]);
        let dated = words(&asked["dates"]).iter().all(|day| days.contains(day));
        if !words(&asked["kind"]).contains(&kind) || !words(&asked["outcome"]).contains(&outcome) || !dated {
            wrong.push(format!("{}: {kind}, {outcome}, {days:?}", asked["message"]));
        }
    }
    assert!(wrong.is_empty(), "read otherwise:\n{}", wrong.join("\n"));
}
