//! What can be typed.

use crate::script::Language;
use crate::weather::source::Setting;
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
    /// Which weather each site stands on, how old it is and who made it
    Weather(Weather),
    /// The year ahead of a site: what goes in when, nets, feeds, waterings, drains
    Year(Year),
    /// The coming jobs as a calendar file (.ics)
    Calendar(CalendarFile),
    /// A card for the tap: this week's cans for each bed of a site, to print
    Card(Card),
    /// Labels for the beds of a site, with the code that opens each in the bot, to print
    Labels(Labels),
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
    #[command(flatten)]
    pub sources: Sources,
}

/// Where forecasts come from, unless a forecast file is given.
#[derive(Debug, Args)]
pub struct Sources {
    /// met-norway, open-meteo, file:PATH, several parted by commas in the order in which they are asked, or none
    #[arg(long, env = "ROOFTEND_WEATHER", value_name = "SOURCES", default_value = "none")]
    pub weather: Setting,
    /// Whom a forecast service may write to: an e-mail address or a page
    #[arg(long, env = "ROOFTEND_WEATHER_CONTACT", value_name = "CONTACT")]
    pub weather_contact: Option<String>,
}

#[derive(Debug, Args)]
pub struct Weather {
    /// Only the sites of this person
    #[arg(long = "as", value_name = "PERSON")]
    pub person: Option<String>,
    /// Only this site
    #[arg(long, value_name = "SITE", conflicts_with = "person")]
    pub site: Option<String>,
    /// Ask the services now, and say what came
    #[arg(long)]
    pub fetch: bool,
    /// The moment of asking, like 2026-05-18T08:00:00+05:30 (else the system's clock)
    #[arg(long, value_name = "RFC3339")]
    pub now: Option<DateTime<FixedOffset>>,
    #[command(flatten)]
    pub sources: Sources,
}

/// A season of the demo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Season {
    May,
    January,
}

/// The languages of the replies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Speaks {
    #[value(name = "en")]
    En,
    #[value(name = "hi")]
    Hi,
    #[value(name = "hi-Latn")]
    HiLatn,
}

impl From<Speaks> for Language {
    fn from(speaks: Speaks) -> Self {
        match speaks {
            Speaks::En => Self::En,
            Speaks::Hi => Self::Hi,
            Speaks::HiLatn => Self::HiLatn,
        }
    }
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
    /// Draw the answer into a file too (.svg or .png): a bed's week of water, a bed's plan
    #[arg(long, value_name = "FILE", conflicts_with = "batch")]
    pub picture: Option<PathBuf>,
    /// Answer in this language whatever the message is in
    #[arg(long, value_name = "LANGUAGE", conflicts_with = "batch")]
    pub speaks: Option<Speaks>,
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
    #[command(flatten)]
    pub sources: Sources,
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
    #[command(subcommand)]
    pub deed: Option<Deed>,
}

/// What is done with a waiting question; its number is that of the list.
#[derive(Debug, Subcommand)]
pub enum Deed {
    /// Answer it: the words go to whoever asked, and it waits no longer
    Answer {
        number: usize,
        #[arg(required = true, num_args = 1..)]
        text: Vec<String>,
    },
    /// Write a draft for the knowledge base, with names left out
    Draft {
        number: usize,
        /// A way of asking of this kind: water, harvest, spray, …
        #[arg(long, value_name = "KIND", required_unless_present = "as_article", conflicts_with = "as_article")]
        as_asking: Option<String>,
        /// An article of this title
        #[arg(long, value_name = "TITLE")]
        as_article: Option<String>,
        /// Folder of knowledge files
        #[arg(long, value_name = "DIR")]
        into: PathBuf,
    },
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
    /// Write it as a page to print and tick (.html)
    #[arg(long, value_name = "FILE", conflicts_with = "json")]
    pub page: Option<PathBuf>,
    /// Language of the page (else English)
    #[arg(long, value_name = "LANGUAGE", requires = "page")]
    pub speaks: Option<Speaks>,
}

#[derive(Debug, Args)]
pub struct CalendarFile {
    #[command(flatten)]
    pub front: Front,
    /// Where to write it
    #[arg(long, value_name = "FILE.ics")]
    pub out: PathBuf,
    /// So many days ahead
    #[arg(long, value_name = "DAYS", default_value_t = 28, value_parser = clap::value_parser!(u32).range(1..=366))]
    pub days: u32,
    /// Language of the entries (else the person's own)
    #[arg(long, value_name = "LANGUAGE")]
    pub speaks: Option<Speaks>,
}

#[derive(Debug, Args)]
pub struct Card {
    /// Id of the site
    pub site: String,
    #[command(flatten)]
    pub front: Front,
    /// Where to write it (.svg or .png); more pages get a number
    #[arg(long, value_name = "FILE")]
    pub out: PathBuf,
    /// Language, or two of them: hi,en (else the person's own)
    #[arg(long, value_name = "LANGUAGE", value_delimiter = ',', num_args = 1)]
    pub speaks: Vec<Speaks>,
}

#[derive(Debug, Args)]
pub struct Labels {
    /// Id of the site
    pub site: String,
    #[command(flatten)]
    pub front: Front,
    /// The bot: its name, or its link
    #[arg(long, value_name = "BOT")]
    pub link: String,
    /// Where to write it (.svg or .png); more sheets get a number
    #[arg(long, value_name = "FILE")]
    pub out: PathBuf,
    /// Language (else the person's own)
    #[arg(long, value_name = "LANGUAGE")]
    pub speaks: Option<Speaks>,
}

#[derive(Debug, Args)]
pub struct Year {
    #[command(flatten)]
    pub front: Front,
    /// Print the reply as JSON
    #[arg(long)]
    pub json: bool,
    /// Id of the site
    pub site: String,
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
