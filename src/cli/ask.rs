//! `ask`: one message, one reply.

use super::arguments::{Arguments, Ask};
use super::batch;
use super::draw::write_picture;
use super::front::Parts;
use super::refusal::Refusal;
use crate::channel::terminal::Looks;
use crate::desk::{Desk, Message};
use crate::drawing::{Picture, picture_for};
use crate::script::Language;
use crate::wording::simple;
use std::io::{IsTerminal, Write};
use std::process::ExitCode;

pub fn run(ask: &Ask, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    if let Some(file) = &ask.batch {
        return batch::run(file, ask, arguments);
    }
    let parts = Parts::open(&ask.front, arguments)?;
    let message = Message { from: parts.person.clone(), text: ask.message.join(" "), now: parts.now };
    let forgetful = parts.forgetful();
    let desk = if ask.dry_run { parts.desk_over(&forgetful) } else { parts.desk() };
    let desk = desk.speaking(ask.speaks.map(Language::from));
    // Looked at before it is answered: a conversation goes on with each answer.
    let picture = ask.picture.as_ref().map(|_| picture(&desk, &message, &parts)).transpose()?;
    let reply = desk.answer(&message)?;
    if ask.json {
        let json = serde_json::to_string(&reply).map_err(Refusal::plain)?;
        print(&json)?;
    } else {
        print(&looks().reply(&reply))?;
        if ask.front.demo.is_some() {
            eprintln!("{}", simple(parts.house.phrases(Language::En), "demo-note"));
        }
    }
    match (&ask.picture, picture.flatten()) {
        (Some(file), Some(picture)) => write_picture(&picture, file)?,
        (Some(file), None) => {
            let name = file.display();
            return Err(Refusal::plain(format!("{name} was not written: this answer has no picture")));
        }
        (None, _) => {}
    }
    Ok(ExitCode::SUCCESS)
}

/// The picture of what a message would be answered.
fn picture(desk: &Desk<'_>, message: &Message, parts: &Parts) -> Result<Option<Picture>, Refusal> {
    let looked = desk.look(message)?;
    let phrases = parts.house.phrases(looked.manner.language);
    Ok(picture_for(&looked.answer, &parts.house.known, phrases, looked.manner))
}

/// Colours only on a terminal, and not where `NO_COLOR` is set.
pub fn looks() -> Looks {
    let wanted = std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    Looks { colours: std::io::stdout().is_terminal() && wanted }
}

/// A line on stdout; a reader that has gone away is no fault.
pub fn print(line: &str) -> Result<(), Refusal> {
    match writeln!(std::io::stdout().lock(), "{line}") {
        Err(fault) if fault.kind() != std::io::ErrorKind::BrokenPipe => Err(Refusal::plain(fault)),
        _ => Ok(()),
    }
}
