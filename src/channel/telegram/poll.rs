//! Updates in: asked for, filed to disk, and only then acknowledged by asking with the next number.

use super::call::call;
use super::fault::Fault;
use super::update::arrival;
use super::{Line, POLL, Unusable, back_off};
use chrono::Utc;
use std::time::{Duration, Instant};
use teloxide::payloads::{DeleteWebhook, GetMe, GetUpdates, GetUpdatesSetters, SetMyCommands, SetMyCommandsSetters};
use teloxide::types::{AllowedUpdate, BotCommand, Me, Update};

/// After a quiet day the platform may begin its numbers anew.
const QUIET: Duration = Duration::from_secs(24 * 3600);

/// Between two empty answers.
const SOONEST: Duration = Duration::from_millis(500);

/// The updates that are asked for.
pub const UPDATES: [AllowedUpdate; 4] =
    [AllowedUpdate::Message, AllowedUpdate::EditedMessage, AllowedUpdate::CallbackQuery, AllowedUpdate::MyChatMember];

/// Asks who we are, for as long as it takes, and says what everyone may do.
pub async fn greet(mut line: Line) -> Result<(), Unusable> {
    let mut failures = 0;
    while !line.stopping() {
        let me = GetMe::new();
        let asked = call::<_, Me>(&line.bot, &me);
        let mut stop = line.stop.clone();
        let answered = tokio::select! {
            answered = asked => answered,
            _ = stop.changed() => continue,
        };
        match answered {
            Ok(me) => {
                line.counts.polled((line.clock)().timestamp());
                welcome(&line, me).await;
                return Ok(());
            }
            Err(fault) => {
                if fault == Fault::Token {
                    return Err(Unusable::Token);
                }
                failures += 1;
                tracing::warn!(why = fault.word(), failures, "the messenger is not reached yet");
                line.rest(wait_of(fault, failures)).await;
            }
        }
    }
    Ok(())
}

async fn welcome(line: &Line, me: Me) {
    if let Some(name) = me.user.username {
        line.reception.set_username(name);
    }
    for (language, commands) in line.reception.menus_of_strangers() {
        let commands: Vec<BotCommand> = commands.into_iter().map(|(word, says)| BotCommand::new(word, says)).collect();
        let mut menu = SetMyCommands::new(commands);
        if let Some(language) = language {
            menu = menu.language_code(language);
        }
        let set: Result<bool, Fault> = call(&line.bot, &menu).await;
        if let Err(fault) = set {
            tracing::warn!(why = fault.word(), "the menu could not be set");
        }
    }
}

/// Polls until told to stop. A web address of another time is taken away first.
pub async fn run(mut line: Line) {
    if let Err(fault) = take_webhook_away(&line).await {
        tracing::warn!(why = fault.word(), "whether there is a web address is not known");
    }
    let (mut offset, mut failures, mut last) = (None, 0, Instant::now());
    while !line.stopping() {
        if last.elapsed() > QUIET {
            offset = None;
        }
        let seconds = u32::try_from(POLL.as_secs()).unwrap_or(25);
        let asked = Instant::now();
        let mut wanted = GetUpdates::new().timeout(seconds).allowed_updates(UPDATES);
        if let Some(offset) = offset {
            wanted = wanted.offset(offset);
        }
        let mut stop = line.stop.clone();
        let answered = tokio::select! {
            answered = call::<_, Vec<Update>>(&line.bot, &wanted) => answered,
            _ = stop.changed() => break,
        };
        let fault = match answered {
            Ok(updates) => {
                line.counts.polled((line.clock)().timestamp());
                let next = updates.iter().map(|update| update.id.as_offset()).max();
                if next.is_none() {
                    failures = 0;
                    // A server that does not hold the call open is not asked without a pause.
                    line.rest(SOONEST.saturating_sub(asked.elapsed())).await;
                    continue;
                }
                last = Instant::now();
                if file(&line, updates).await {
                    (offset, failures) = (next, 0);
                    line.came_in.notify_one();
                    continue;
                }
                Fault::Later("the store could not be written")
            }
            Err(fault) => fault,
        };
        failures += 1;
        line.counts.poll_failures.add(1);
        tracing::warn!(why = fault.word(), failures, "updates could not be had");
        if fault == Fault::Webhook && take_webhook_away(&line).await.is_ok() {
            tracing::info!("the web address was taken away: updates are asked for from here");
        }
        line.rest(wait_of(fault, failures)).await;
    }
}

async fn take_webhook_away(line: &Line) -> Result<bool, Fault> {
    call(&line.bot, &DeleteWebhook::new()).await
}

/// Files updates to disk; false when that failed and they must come again.
pub async fn file(line: &Line, updates: Vec<Update>) -> bool {
    let (reception, now) = (line.reception.clone(), (line.clock)().with_timezone(&Utc));
    let all = updates.len();
    let filed = tokio::task::spawn_blocking(move || {
        let bot = reception.username();
        let arrivals = updates.into_iter().map(|update| arrival(update, bot.as_deref())).collect();
        reception.take_in(arrivals, now)
    });
    match filed.await {
        Ok(Ok(new)) => {
            line.counts.updates.add(new);
            line.counts.repeated.add(all - new);
            true
        }
        Ok(Err(fault)) => {
            tracing::error!(%fault, "updates could not be filed");
            false
        }
        Err(_) => {
            tracing::error!("updates could not be read");
            false
        }
    }
}

fn wait_of(fault: Fault, failures: u32) -> Duration {
    if let Fault::TooFast(wait) = fault { wait } else { back_off(failures) }
}
