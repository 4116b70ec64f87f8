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
mod draft;
mod draw;
mod forecasts;
mod front;
mod paper;
mod questions;
mod records;
mod refusal;
mod round;
mod serve;
mod sums;
mod upkeep;
mod weather;
mod year;

use arguments::{Arguments, Command};
use clap::Parser;
use refusal::Refusal;
use std::process::ExitCode;
use tracing_subscriber::filter::filter_fn;
use tracing_subscriber::layer::SubscriberExt;
use tracing_subscriber::util::SubscriberInitExt;
use tracing_subscriber::{EnvFilter, Layer};

/// Runs the command that was typed. Exit status 0 when it was carried out, 1 when `check` found problems,
/// 2 when an option, a person's id, a file or a line was unusable.
#[must_use]
pub fn main() -> ExitCode {
    logs();
    let arguments = Arguments::parse();
    let done = match &arguments.command {
        Command::Ask(ask) => ask::run(ask, &arguments),
        Command::Chat(chat) => chat::run(chat, &arguments),
        Command::Serve(serve) => serve::run(serve, &arguments),
        Command::Questions(questions) => questions::run(questions, &arguments),
        Command::Round(round) => round::run(round, &arguments),
        Command::Weather(weather) => weather::run(weather, &arguments),
        Command::Year(year) => year::run(year, &arguments),
        Command::Calendar(calendar) => paper::calendar(calendar, &arguments),
        Command::Card(card) => paper::card(card, &arguments),
        Command::Labels(labels) => paper::labels(labels, &arguments),
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

/// Logs go to stderr, without anyone's words in them; `ROOFTEND_LOG` sets how much. Only our own lines are
/// written: those of the crates below may hold an address with the token in it.
fn logs() {
    let much = EnvFilter::try_from_env("ROOFTEND_LOG").unwrap_or_else(|_| EnvFilter::new("warn"));
    let own = filter_fn(|line| line.target().split("::").next() == Some("rooftend"));
    let lines = tracing_subscriber::fmt::layer().with_writer(std::io::stderr).with_filter(much).with_filter(own);
    tracing_subscriber::registry().with(lines).init();
}
