//! `serve`: the messaging bot, and what runs beside it.

use super::arguments::{Arguments, Serve, Switch};
use super::ask::print;
use super::forecasts::Forecasts;
use super::front::{cache, files, folder, go_by_trial_clock, read_forecast, read_text, system_clock};
use super::refusal::Refusal;
use super::upkeep::Upkeep;
use crate::channel::counts::Counts;
use crate::channel::local::Socket;
use crate::channel::monitor;
use crate::channel::telegram::{self, Line, Settings, Webhook};
use crate::desk::House;
use crate::desk::reception::{Claim, Reception};
use crate::drawing::{picture_for, png};
use crate::garden::Store;
use crate::garden::store::SledStore;
use crate::wording::Manner;
use chrono::Utc;
use std::process::ExitCode;
use std::sync::Arc;
use std::sync::atomic::AtomicI64;
use std::time::Duration;
use tokio::signal::unix::{Signal, SignalKind, signal};
use tokio::sync::{Notify, watch};

const TOKEN: &str = "ROOFTEND_TELEGRAM_TOKEN";
const TOKEN_FILE: &str = "ROOFTEND_TELEGRAM_TOKEN_FILE";
const SECRET: &str = "ROOFTEND_WEBHOOK_SECRET";
const SECRET_FILE: &str = "ROOFTEND_WEBHOOK_SECRET_FILE";
/// Work that does not end by itself is left after this long.
const LAST_WORK: Duration = Duration::from_secs(10);

pub fn run(serve: &Serve, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let token = token()?;
    let webhook = webhook(serve)?;
    if let Some(file) = &serve.clock {
        go_by_trial_clock(file.clone());
    }
    let files = files(arguments.knowledge.as_deref())?;
    let house = match cache(arguments) {
        Some(folder) => House::open_keeping(&files, &folder),
        None => House::open(&files),
    };
    let house = house.map_err(|fault| Refusal::of_house(fault, &files))?;
    let folder = folder(arguments)?;
    let store: Arc<dyn Store> = Arc::new(SledStore::open(&folder)?);
    let house = Arc::new(house);
    let reception = Arc::new(Reception::open(house.clone(), store.clone())?);
    reception.set_drawing(Arc::new(move |answer, language| {
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        let picture = picture_for(answer, &house.known, house.phrases(language), manner)?;
        png(&picture).ok()
    }));
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
        evening: serve.digest_hour,
        wake: wake.clone(),
        written: line.written(),
        swept: AtomicI64::default(),
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
        // Heard from now on, before anyone is told that we serve.
        let terminated = signal(SignalKind::terminate()).ok();
        let told = tokio::spawn(async move {
            wait_for_a_signal(terminated).await;
            tracing::info!("stopping");
            // Nobody listens any more: the bot has ended by itself.
            let _ = stop.send(true);
        });
        print("serving; stop with Ctrl-C")?;
        let served = telegram::serve(line, serve.send_limits == Switch::On, webhook).await.map_err(Refusal::plain);
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
    let Some(text) = secret_text(TOKEN, TOKEN_FILE)? else {
        return Err(Refusal::plain(format!("the bot has no token: set {TOKEN}, or {TOKEN_FILE} to a file with it")));
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

/// A text that nobody else is to see: from a variable of the environment, or the file that another names.
fn secret_text(variable: &str, file: &str) -> Result<Option<String>, Refusal> {
    match (std::env::var(variable), std::env::var_os(file)) {
        (Ok(text), _) if !text.trim().is_empty() => Ok(Some(text)),
        (_, Some(file)) => read_text(file.as_ref()).map(Some),
        _ => Ok(None),
    }
}

/// Where updates are brought, if they are.
fn webhook(serve: &Serve) -> Result<Option<Webhook>, Refusal> {
    const LONGEST: usize = 256;
    let Some(url) = serve.webhook_url.clone().filter(|url| !url.trim().is_empty()) else { return Ok(None) };
    let secret = secret_text(SECRET, SECRET_FILE)?.unwrap_or_default().trim().to_owned();
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || byte == b'_' || byte == b'-';
    if secret.is_empty() || secret.len() > LONGEST || !secret.bytes().all(plain) {
        return Err(Refusal::plain(format!(
            "a web address needs a secret: set {SECRET}, or {SECRET_FILE} to a file with it; \
             1 to {LONGEST} letters, digits, _ and - expected"
        )));
    }
    Ok(Some(Webhook { url: url.trim().to_owned(), secret, listen: serve.webhook_listen }))
}

fn how_to_claim(claim: &Claim) -> String {
    let whose = if claim.name.is_empty() { String::new() } else { format!(" by {}", claim.name) };
    format!(
        "Not claimed yet{whose}. Whoever sends this to the bot within seven days is the owner:\n    /start {}",
        claim.code
    )
}

/// The service manager's signal, or the keyboard's, which is all that is left where the first cannot be heard.
async fn wait_for_a_signal(terminated: Option<Signal>) {
    match terminated {
        Some(mut terminated) => {
            tokio::select! {
                _ = tokio::signal::ctrl_c() => {}
                _ = terminated.recv() => {}
            }
        }
        None => {
            let _ = tokio::signal::ctrl_c().await;
        }
    }
}
