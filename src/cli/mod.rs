//! The command line: reads what was typed, builds the parts, hands them over.
//!
//! **Never here:** any decision about care.

mod arguments;
mod ask;
mod batch;
mod chat;
mod check;
pub mod compute;
mod demo;
mod front;
mod records;
mod refusal;
mod sums;

use arguments::{Arguments, Command};
use clap::Parser;
use refusal::Refusal;
use std::process::ExitCode;

/// Runs the command that was typed. Exit status 0 when it was carried out, 1 when `check` found problems,
/// 2 when an option, a person's id, a file or a line was unusable.
#[must_use]
pub fn main() -> ExitCode {
    logs();
    let arguments = Arguments::parse();
    let done = match &arguments.command {
        Command::Ask(ask) => ask::run(ask, &arguments),
        Command::Chat(chat) => chat::run(chat, &arguments),
        Command::Check(check) => check::run(check, &arguments),
        Command::Compute { sum } => sums::run(sum, &arguments),
        Command::Import { file } => records::import(file, &arguments),
        Command::Export { file } => records::export(file, &arguments),
        Command::Backup { file } => records::backup(file, &arguments),
        Command::Restore { file } => records::restore(file, &arguments),
    };
    done.unwrap_or_else(|refusal: Refusal| {
        refusal.show();
        ExitCode::from(2)
    })
}

/// Logs go to stderr, without anyone's words in them; `ROOFTEND_LOG` sets how much.
fn logs() {
    let filter = tracing_subscriber::EnvFilter::try_from_env("ROOFTEND_LOG")
        .unwrap_or_else(|_| tracing_subscriber::EnvFilter::new("warn"));
    tracing_subscriber::fmt().with_env_filter(filter).with_writer(std::io::stderr).init();
}
