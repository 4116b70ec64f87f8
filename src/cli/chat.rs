//! `chat`: a conversation in the terminal.

use super::arguments::{Arguments, Front};
use super::ask::{looks, print};
use super::demo;
use super::front::{Parts, folder, person, system_clock};
use super::refusal::Refusal;
use crate::desk::{Desk, Message};
use crate::script::Language;
use crate::wording::simple;
use rustyline::error::ReadlineError;
use std::io::{BufRead, IsTerminal};
use std::path::PathBuf;
use std::process::ExitCode;

pub fn run(front: &Front, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let mut parts = Parts::open(front, arguments)?;
    let typed = std::io::stdin().is_terminal();
    if let Some(season) = front.demo {
        if parts.person.is_none() {
            parts.person = Some(person(demo::PERSON, parts.store.as_ref())?);
        }
        print(&simple(parts.house.phrases(Language::En), "demo-greeting"))?;
        let examples = demo::examples(season);
        if !typed {
            let desk = parts.desk();
            for example in examples {
                print(&format!("\n{}", looks().typed(example)))?;
                say(&desk, &parts, example, front)?;
            }
            return Ok(ExitCode::SUCCESS);
        }
        for example in examples {
            print(&looks().typed(example))?;
        }
    }
    let desk = parts.desk();
    if typed { lines_typed(&desk, &parts, front, history(front, arguments)) } else { lines_piped(&desk, &parts, front) }
}

fn say(desk: &Desk<'_>, parts: &Parts, text: &str, front: &Front) -> Result<(), Refusal> {
    // A conversation goes on: unless the clock was fixed, each message has its own moment.
    let now = if front.now.is_some() || front.demo.is_some() { parts.now } else { system_clock() };
    let reply = desk.answer(&Message { from: parts.person.clone(), text: text.to_owned(), now })?;
    print(&looks().reply(&reply))
}

fn lines_piped(desk: &Desk<'_>, parts: &Parts, front: &Front) -> Result<ExitCode, Refusal> {
    for line in std::io::stdin().lock().lines() {
        let line = line.map_err(|fault| Refusal::plain(format!("cannot read what was typed: {fault}")))?;
        if !line.trim().is_empty() {
            say(desk, parts, &line, front)?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn lines_typed(desk: &Desk<'_>, parts: &Parts, front: &Front, history: Option<PathBuf>) -> Result<ExitCode, Refusal> {
    let mut editor = rustyline::DefaultEditor::new().map_err(Refusal::plain)?;
    if let Some(history) = &history {
        // The first conversation has no history yet.
        let _ = editor.load_history(history);
    }
    loop {
        match editor.readline("> ") {
            Ok(line) if line.trim().is_empty() => {}
            Ok(line) => {
                let _ = editor.add_history_entry(line.as_str());
                say(desk, parts, &line, front)?;
            }
            Err(ReadlineError::Interrupted | ReadlineError::Eof) => break,
            Err(fault) => return Err(Refusal::plain(fault)),
        }
    }
    let kept = history.as_ref().map_or(Ok(()), |history| editor.save_history(history));
    if let Err(fault) = kept {
        tracing::warn!(%fault, "the history of this conversation could not be kept");
    }
    Ok(ExitCode::SUCCESS)
}

/// Where the lines typed are kept: beside the store; a demo keeps nothing.
fn history(front: &Front, arguments: &Arguments) -> Option<PathBuf> {
    if front.demo.is_some() {
        return None;
    }
    folder(arguments).ok().map(|folder| folder.join("typed"))
}
