//! `serve`: the messaging bot, and what runs beside it.

use super::arguments::{Arguments, Serve, Switch};
use super::ask::print;
use super::forecasts::Forecasts;
use super::front::{cache, files, folder, read_forecast, read_text, system_clock};
use super::refusal::Refusal;
use super::upkeep::Upkeep;
use crate::channel::counts::Counts;
use crate::channel::local::Socket;
use crate::channel::monitor;
use crate::channel::telegram::{self, Line, Settings};
use crate::desk::House;
use crate::desk::reception::{Invite, Reception};
use crate::garden::Store;
use crate::garden::store::SledStore;
use chrono::Utc;
use std::process::ExitCode;
use std::sync::Arc;
use std::time::Duration;
use tokio::signal::unix::{SignalKind, signal};
use tokio::sync::{Notify, watch};

const TOKEN: &str = "ROOFTEND_TELEGRAM_TOKEN";
const TOKEN_FILE: &str = "ROOFTEND_TELEGRAM_TOKEN_FILE";
/// Work that does not end by itself is left after this long.
const LAST_WORK: Duration = Duration::from_secs(10);

pub fn run(serve: &Serve, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let token = token()?;
    let files = files(arguments.knowledge.as_deref())?;
    let house = match cache(arguments) {
        Some(folder) => House::open_keeping(&files, &folder),
        None => House::open(&files),
    };
    let house = house.map_err(|fault| Refusal::of_house(fault, &files))?;
    let folder = folder(arguments)?;
    let store: Arc<dyn Store> = Arc::new(SledStore::open(&folder)?);
    let reception = Arc::new(Reception::open(Arc::new(house), store.clone())?);
    if let Some(file) = &serve.forecast {
        reception.set_forecast(Some(read_forecast(file)?));
    }
    for claim in reception.claims(system_clock().with_timezone(&Utc), serve.new_claim)? {
        print(&how_to_claim(&claim))?;
    }
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(Refusal::plain)?;
    let (stop, stopped) = watch::channel(false);
    let counts = Arc::new(Counts::default());
    let settings = Settings { token, api_url: serve.api_url.clone() };
    let line = Line::new(settings, reception.clone(), system_clock, counts.clone(), stopped);
    let line = line.map_err(Refusal::plain)?;
    let wake = Arc::new(Notify::new());
    let upkeep = Upkeep {
        reception,
        store: store.clone(),
        folder: folder.clone(),
        forecast: serve.forecast.clone(),
        counts: counts.clone(),
        digest: serve.digest == Switch::On,
        wake: wake.clone(),
        written: line.written(),
    };
    let forecasts = Forecasts::of(&serve.sources, store.clone(), counts.clone())?;
    let served = runtime.block_on(async {
        let mut beside = tokio::task::JoinSet::new();
        if let Some(port) = serve.metrics {
            let listener = monitor::open(port).await;
            let listener = listener.map_err(|fault| Refusal::plain(format!("port {port} cannot be taken: {fault}")))?;
            beside.spawn(monitor::run(listener, counts, system_clock));
        }
        match Socket::open(&folder) {
            Ok(socket) => {
                beside.spawn(socket.run(store.clone(), wake));
            }
            Err(fault) => tracing::warn!(%fault, "no socket: other commands cannot reach the store while this runs"),
        }
        beside.spawn(upkeep.run());
        if let Some(forecasts) = forecasts {
            beside.spawn(forecasts.run());
        }
        let told = tokio::spawn(async move {
            wait_for_a_signal().await;
            tracing::info!("stopping");
            // Nobody listens any more: the bot has ended by itself.
            let _ = stop.send(true);
        });
        print("serving; stop with Ctrl-C")?;
        let served = telegram::serve(line, serve.send_limits == Switch::On).await.map_err(Refusal::plain);
        told.abort();
        beside.shutdown().await;
        served
    });
    runtime.shutdown_timeout(LAST_WORK);
    drop(store);
    served.map(|()| ExitCode::SUCCESS)
}

/// The token, from the environment or a file: never from an argument, which other accounts can see.
fn token() -> Result<String, Refusal> {
    let text = match (std::env::var(TOKEN), std::env::var_os(TOKEN_FILE)) {
        (Ok(token), _) if !token.trim().is_empty() => token,
        (_, Some(file)) => read_text(file.as_ref())?,
        _ => {
            return Err(Refusal::plain(format!(
                "the bot has no token: set {TOKEN}, or {TOKEN_FILE} to a file with it"
            )));
        }
    };
    let token = text.trim();
    let (number, rest) = token.split_once(':').unwrap_or_default();
    let plain = |text: &str| text.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'_' || byte == b'-');
    if number.is_empty() || !number.bytes().all(|byte| byte.is_ascii_digit()) || rest.is_empty() || !plain(rest) {
        // The text itself is not shown: it may be a token with a slip in it.
        return Err(Refusal::plain(format!(
            "what {TOKEN} or its file holds is no token: digits, a colon, letters expected"
        )));
    }
    Ok(token.to_owned())
}

fn how_to_claim(claim: &Invite) -> String {
    let whose = if claim.name.is_empty() { String::new() } else { format!(" by {}", claim.name) };
    format!(
        "Not claimed yet{whose}. Whoever sends this to the bot within seven days is the owner:\n    /start {}",
        claim.code
    )
}

async fn wait_for_a_signal() {
    let terminated = signal(SignalKind::terminate());
    match terminated {
        Ok(mut terminated) => {
            tokio::select! {
                _ = tokio::signal::ctrl_c() => {}
                _ = terminated.recv() => {}
            }
        }
        Err(_) => {
            // Without it the keyboard's signal is left.
            let _ = tokio::signal::ctrl_c().await;
        }
    }
}
