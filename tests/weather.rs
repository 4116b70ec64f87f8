//! Forecasts from outside: both services on the loopback with their faults, what is kept of them, and how it reaches an
//! answer.
#![allow(clippy::disallowed_methods, reason = "the tests ask the clock of the program they run")]

mod bot_api;
mod weather_service;

#[path = "weather/kept.rs"]
mod kept;
#[path = "weather/program.rs"]
mod program;
#[path = "weather/reading.rs"]
mod reading;

use chrono::{DateTime, Utc};
use rooftend::weather::cell::Cell;
use weather_service::documents::NAGPUR;

/// Half past seven in Nagpur.
const NOW: &str = "2026-05-18T02:00:00Z";

fn at(text: &str) -> DateTime<Utc> {
    text.parse().unwrap()
}

fn nagpur() -> Cell {
    Cell::of(NAGPUR.0, NAGPUR.1)
}
