//! What the README shows is what the program does.
#![allow(clippy::disallowed_methods, reason = "the README is a file")]

use std::fs;
use std::process::Command;

/// The program, with what it derives from the knowledge base kept for all tests.
fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command
}

fn blocks() -> Vec<String> {
    let text = fs::read_to_string("README.md").unwrap();
    text.split("```text\n")
        .skip(1)
        .filter_map(|rest| rest.split_once("```").map(|(block, _)| block.to_owned()))
        .collect()
}

fn rooftend(arguments: &[&str]) -> (bool, String) {
    let output = program().args(arguments).output().unwrap();
    (output.status.success(), String::from_utf8(output.stdout).unwrap())
}

#[test]
fn its_chats_are_real() {
    let chats: Vec<String> = blocks().into_iter().filter(|block| block.starts_with("> ")).collect();
    assert!(chats.len() >= 2);
    for (chat, season) in chats.iter().zip(["may", "january"]) {
        let (typed, said) = chat.split_once('\n').unwrap();
        let demo = format!("--demo={season}");
        let (done, got) = rooftend(&["ask", &demo, "--as", "meera", typed.trim_start_matches("> ")]);
        assert!(done);
        assert_eq!(got, said, "{typed}");
    }
}

#[test]
fn its_commands_exist() {
    let lines: Vec<String> =
        blocks().into_iter().flat_map(|b| b.lines().map(str::to_owned).collect::<Vec<_>>()).collect();
    let commands: Vec<&str> = lines.iter().filter_map(|line| line.strip_prefix("rooftend ")).collect();
    assert!(commands.len() >= 6, "{commands:?}");
    for command in commands {
        let name = command.split(' ').next().unwrap();
        let (done, help) = rooftend(&[name, "--help"]);
        assert!(done, "{command}");
        for option in command.split(' ').filter(|word| word.starts_with("--")) {
            assert!(help.contains(option), "{command}: {option} is not there");
        }
    }
}

/// `chat --demo` without a terminal answers its three examples and ends.
#[test]
fn the_demo_answers_by_itself() {
    for season in ["may", "january"] {
        let demo = format!("--demo={season}");
        let output = program().args(["chat", &demo]).stdin(std::process::Stdio::null()).output().unwrap();
        let said = String::from_utf8(output.stdout).unwrap();
        assert!(output.status.success());
        assert_eq!(said.matches("\n> ").count(), 3, "{said}");
        assert!(!said.contains("passed"), "every example has an answer of its own: {said}");
        assert!(!said.contains('\u{1b}'), "no colours without a terminal");
    }
}
