//! `ask`: one message, one reply.

use super::arguments::{Arguments, Ask};
use super::batch;
use super::front::Parts;
use super::refusal::Refusal;
use crate::channel::terminal::Looks;
use crate::desk::Message;
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
    let reply = if ask.dry_run {
        let forgetful = parts.forgetful();
        parts.desk_over(&forgetful).answer(&message)?
    } else {
        parts.desk().answer(&message)?
    };
    if ask.json {
        let json = serde_json::to_string(&reply).map_err(Refusal::plain)?;
        print(&json)?;
    } else {
        print(&looks().reply(&reply))?;
        if ask.front.demo.is_some() {
            eprintln!("{}", simple(parts.house.phrases(Language::En), "demo-note"));
        }
    }
    Ok(ExitCode::SUCCESS)
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
