//! The messenger: updates in over long polling, letters out, one platform's limits and faults.

mod answer;
mod call;
mod fault;
mod pace;
mod poll;
mod send;
mod update;
mod webhook;

pub use webhook::Webhook;

use super::counts::Counts;
use crate::desk::reception::Reception;
use chrono::{DateTime, FixedOffset};
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use teloxide::Bot;
use thiserror::Error;
use tokio::sync::{Notify, watch};

/// How the messenger is reached.
pub struct Settings {
    pub token: String,
    /// Another server than the platform's own.
    pub api_url: Option<String>,
}

/// Why the messenger cannot be served at all. The token is never in it.
#[derive(Debug, Error, PartialEq, Eq)]
pub enum Unusable {
    #[error("the address of the Bot API server is not usable: {0}")]
    Address(String),
    #[error("no connection can be made: the system's certificates or network are not usable")]
    Client,
    #[error("the messenger does not accept the token; give the one its bot was made with")]
    Token,
    #[error("{0} cannot be listened on for updates: {1}")]
    Listen(SocketAddr, String),
    #[error("the messenger does not accept the web address; it must begin with https:// and be reachable from outside")]
    Webhook,
}

/// What all parts of the messenger share.
#[derive(Clone)]
pub struct Line {
    bot: Bot,
    reception: Arc<Reception>,
    clock: fn() -> DateTime<FixedOffset>,
    counts: Arc<Counts>,
    /// Something came in.
    came_in: Arc<Notify>,
    /// A letter was written.
    written: Arc<Notify>,
    stop: watch::Receiver<bool>,
}

/// A long poll is held open for so long.
const POLL: Duration = Duration::from_secs(25);
/// No answer for so long is no answer at all.
const NO_ANSWER: Duration = Duration::from_secs(40);

impl Line {
    /// Gets ready to serve; nothing is sent yet.
    ///
    /// # Errors
    /// [`Unusable::Address`], [`Unusable::Client`].
    pub fn new(
        settings: Settings,
        reception: Arc<Reception>,
        clock: fn() -> DateTime<FixedOffset>,
        counts: Arc<Counts>,
        stop: watch::Receiver<bool>,
    ) -> Result<Self, Unusable> {
        let client = teloxide::net::default_reqwest_settings().timeout(NO_ANSWER).build();
        let mut bot = Bot::with_client(settings.token, client.map_err(|_| Unusable::Client)?);
        if let Some(address) = settings.api_url {
            let url = address.parse().map_err(|_| Unusable::Address(address.clone()))?;
            if !address.starts_with("http://") && !address.starts_with("https://") {
                return Err(Unusable::Address(address));
            }
            bot = bot.set_api_url(url);
        }
        let (came_in, written) = (Arc::new(Notify::new()), Arc::new(Notify::new()));
        Ok(Self { bot, reception, clock, counts, came_in, written, stop })
    }

    /// What wakes the sending part when a letter was written elsewhere.
    #[must_use]
    pub fn written(&self) -> Arc<Notify> {
        self.written.clone()
    }

    fn stopping(&self) -> bool {
        *self.stop.borrow()
    }

    /// Waits, unless the program is to stop.
    async fn rest(&mut self, time: Duration) {
        tokio::select! {
            () = tokio::time::sleep(time) => {}
            _ = self.stop.changed() => {}
        }
    }
}

/// Serves until told to stop: takes updates in, answers and sends beside each other. Updates are asked for, or brought
/// to a web address where there is one.
///
/// # Errors
/// [`Unusable::Token`], [`Unusable::Listen`], [`Unusable::Webhook`] where that shows at the start.
pub async fn serve(line: Line, limits: bool, webhook: Option<Webhook>) -> Result<(), Unusable> {
    poll::greet(line.clone()).await?;
    let open = match webhook {
        Some(webhook) => Some(webhook::Open::at(line.clone(), webhook).await?),
        None => None,
    };
    let answering = tokio::spawn(answer::run(line.clone()));
    let sending = tokio::spawn(send::run(line.clone(), limits));
    match open {
        Some(open) => open.run().await,
        None => poll::run(line).await,
    }
    for part in [answering, sending] {
        if part.await.is_err() {
            tracing::error!("a part of the messenger ended by itself");
        }
    }
    Ok(())
}

/// So long after so many failures in a row.
fn back_off(failures: u32) -> Duration {
    const FIRST_MS: u64 = 500;
    const LONGEST_MS: u64 = 60_000;
    Duration::from_millis(FIRST_MS.saturating_mul(1 << failures.saturating_sub(1).min(10)).min(LONGEST_MS))
}

#[cfg(test)]
mod tests {
    use super::back_off;

    #[test]
    fn it_waits_longer_each_time_and_never_more_than_a_minute() {
        let waits: Vec<u128> = [1, 2, 3, 7, 8, 1000].map(|failures| back_off(failures).as_millis()).into();
        assert_eq!(waits, [500, 1000, 2000, 32_000, 60_000, 60_000]);
    }
}
