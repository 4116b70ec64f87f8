//! What can be typed.

use chrono::{DateTime, FixedOffset, NaiveDate};
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::net::SocketAddr;
use std::path::PathBuf;

/// The assistant of a crew that builds and looks after kitchen gardens on roofs.
#[derive(Debug, Parser)]
#[command(name = "rooftend", version, about)]
pub struct Arguments {
    /// Folder of the store (else the platform's data folder)
    #[arg(long, global = true, env = "ROOFTEND_DATA", value_name = "DIR")]
    pub data: Option<PathBuf>,
    /// Folder for what is derived from the knowledge files (else the platform's cache folder)
    #[arg(long, global = true, env = "ROOFTEND_CACHE", value_name = "DIR")]
    pub cache: Option<PathBuf>,
    /// Knowledge files of this folder instead of those in the binary
    #[arg(long, global = true, value_name = "DIR")]
    pub knowledge: Option<PathBuf>,
    #[command(subcommand)]
    pub command: Command,
}

#[derive(Debug, Subcommand)]
pub enum Command {
    /// Answer one message, or a file of them
    Ask(Ask),
    /// Talk in the terminal
    Chat(Front),
    /// Serve the messaging bot; its token comes from ROOFTEND_TELEGRAM_TOKEN or the file ROOFTEND_TELEGRAM_TOKEN_FILE
    Serve(Serve),
    /// What was handed over and waits for a person
    Questions(Questions),
    /// What is due, where, in the order to go round
    Round(Round),
    /// Read the knowledge base: what is in it, what is wrong with it
    Check(Check),
    /// The published sums by themselves, on a CSV file
    Compute {
        #[command(subcommand)]
        sum: Sum,
    },
    /// Put a garden file into the store
    Import { file: PathBuf },
    /// Write the store's garden as a garden file
    Export { file: PathBuf },
    /// Save everything in the store to one file
    Backup { file: PathBuf },
    /// Fill an empty store from a backup
    Restore { file: PathBuf },
}

/// Who asks, when, under which sky.
#[derive(Debug, Args)]
pub struct Front {
    /// Id of the person who asks (else a stranger)
    #[arg(long = "as", value_name = "PERSON")]
    pub person: Option<String>,
    /// The moment of asking, like 2026-05-18T08:00:00+05:30 (else the system's clock)
    #[arg(long, value_name = "RFC3339")]
    pub now: Option<DateTime<FixedOffset>>,
    /// Forecast file
    #[arg(long, value_name = "FILE")]
    pub forecast: Option<PathBuf>,
    /// Use an invented garden and its weather, in a store that is thrown away
    #[arg(long, value_name = "SEASON", num_args = 0..=1, require_equals = true, default_missing_value = "may")]
    pub demo: Option<Season>,
}

/// A season of the demo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Season {
    May,
    January,
}

#[derive(Debug, Args)]
pub struct Ask {
    #[command(flatten)]
    pub front: Front,
    /// Print the reply as JSON
    #[arg(long)]
    pub json: bool,
    /// Store nothing
    #[arg(long)]
    pub dry_run: bool,
    /// Answer every line of a JSONL file, as JSON, storing nothing
    #[arg(long, value_name = "FILE", conflicts_with = "message")]
    pub batch: Option<PathBuf>,
    /// The message
    #[arg(required_unless_present = "batch", num_args = 1.., trailing_var_arg = false)]
    pub message: Vec<String>,
}

/// What a running bot needs; all of it may stand in the environment.
#[derive(Debug, Args)]
pub struct Serve {
    /// Another Bot API server than the platform's own
    #[arg(long, env = "ROOFTEND_TELEGRAM_API_URL", value_name = "URL")]
    pub api_url: Option<String>,
    /// The address to which the messenger brings updates; without one they are asked for. Its secret comes from
    /// ROOFTEND_WEBHOOK_SECRET or the file ROOFTEND_WEBHOOK_SECRET_FILE
    #[arg(long, env = "ROOFTEND_WEBHOOK_URL", value_name = "URL")]
    pub webhook_url: Option<String>,
    /// Where they are listened for, behind what ends the encryption
    #[arg(long, env = "ROOFTEND_WEBHOOK_LISTEN", value_name = "ADDRESS:PORT", default_value = "127.0.0.1:8470")]
    pub webhook_listen: SocketAddr,
    /// Forecast file; read again whenever it changes
    #[arg(long, env = "ROOFTEND_FORECAST", value_name = "FILE")]
    pub forecast: Option<PathBuf>,
    /// Port of this machine for /healthz and /metrics (else none)
    #[arg(long, env = "ROOFTEND_METRICS", value_name = "PORT")]
    pub metrics: Option<u16>,
    /// Whether the platform's limits of sending are kept
    #[arg(long, env = "ROOFTEND_SEND_LIMITS", value_name = "ON|OFF", default_value = "on")]
    pub send_limits: Switch,
    /// Print a new code for the owner, who has lost the chat that is linked
    #[arg(long)]
    pub new_claim: bool,
    /// Whether each person is told in the evening what is due the next day
    #[arg(long, env = "ROOFTEND_DIGEST", value_name = "ON|OFF", default_value = "on")]
    pub digest: Switch,
    /// The hour of the evening from which that is told, in each site's own time
    #[arg(long, env = "ROOFTEND_DIGEST_HOUR", value_name = "12..20", default_value_t = crate::desk::reception::EVENING, value_parser = clap::value_parser!(u32).range(12..=20))]
    pub digest_hour: u32,
    /// For trials: a file with the moment from which the clock goes on
    #[arg(long, env = "ROOFTEND_CLOCK", value_name = "FILE", hide = true)]
    pub clock: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Switch {
    On,
    Off,
}

#[derive(Debug, Args)]
pub struct Questions {
    /// Print them as JSON
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Round {
    #[command(flatten)]
    pub front: Front,
    /// Another day than today, like 2026-05-21
    #[arg(long, value_name = "DATE")]
    pub on: Option<NaiveDate>,
    /// Print the reply as JSON
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Check {
    /// Print the result as JSON
    #[arg(long)]
    pub json: bool,
    /// Folder of knowledge files (else those in the binary)
    pub folder: Option<PathBuf>,
}

#[derive(Debug, Subcommand)]
pub enum Sum {
    /// Reference evapotranspiration (FAO-56)
    ReferenceEt { file: PathBuf },
    /// A season's daily water balance (FAO-56, dual crop coefficient)
    WaterBalance {
        file: PathBuf,
        #[arg(long, value_name = "FILE.json")]
        parameters: PathBuf,
    },
    /// Days from sowing to emergence
    Emergence { file: PathBuf },
    /// Day length, sunrise and sunset
    Daylight { file: PathBuf },
}
