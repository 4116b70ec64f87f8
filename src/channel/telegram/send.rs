//! Letters out: a chat's in their order, chats beside each other, tried again until they arrive.

use super::Line;
use super::call::{Attached, Numbered, call, call_with_file, parameter};
use super::fault::{Fault, SAYS_SO_ALREADY, STANDS_NO_MORE};
use super::pace::Pace;
use crate::desk::reception::{Content, Label, Letter, Outbox, Reception};
use crate::garden::StoreError;
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::BTreeSet;
use std::time::{Duration, Instant};
use teloxide::payloads::{
    AnswerCallbackQuery, CopyMessage, DeleteMyCommands, DeleteMyCommandsSetters, EditMessageText,
    EditMessageTextSetters, SendMessage, SendMessageSetters, SetMyCommands, SetMyCommandsSetters,
};
use teloxide::types::{
    BotCommand, BotCommandScope, CallbackQueryId, ChatId, InlineKeyboardButton, InlineKeyboardMarkup,
    LinkPreviewOptions, MessageId, Recipient, ReplyParameters,
};
use tokio::task::JoinSet;

/// So many calls run beside each other.
const AT_ONCE: usize = 16;
/// The longest rest between two looks at the outbox.
const LONGEST_REST: Duration = Duration::from_secs(30);
/// Letters on their way may arrive after the order to stop.
const FAREWELL: Duration = Duration::from_secs(5);

type Gone = (Letter, Result<Option<i32>, Fault>);

/// Sends until told to stop; what is on its way then is waited for.
pub async fn run(mut line: Line, limits: bool) {
    let mut pace = Pace::new(limits);
    let mut busy = BTreeSet::new();
    let mut calls: JoinSet<Gone> = JoinSet::new();
    while !line.stopping() {
        let mut rest = LONGEST_REST;
        if let Some(outbox) = look(&line, &busy).await {
            line.counts.waiting.set(outbox.waiting);
            for letter in outbox.due {
                let wait = if letter.counts() { pace.wait(letter.chat, Instant::now()) } else { Duration::ZERO };
                if wait > Duration::ZERO {
                    rest = rest.min(wait);
                } else if calls.len() < AT_ONCE {
                    if letter.counts() {
                        pace.note(letter.chat, Instant::now());
                    }
                    busy.insert(letter.chat);
                    let bot = line.bot.clone();
                    calls.spawn(async move {
                        let sent = send(&bot, &letter).await;
                        (letter, sent)
                    });
                }
            }
            if let Some(again) = outbox.look_again {
                let wait = (again - (line.clock)().with_timezone(&Utc)).to_std().unwrap_or(Duration::ZERO);
                rest = rest.min(wait.max(Duration::from_millis(1)));
            }
        }
        let mut stop = line.stop.clone();
        tokio::select! {
            Some(gone) = calls.join_next(), if !calls.is_empty() => {
                // What has come back by now is noted together: a flush serves all.
                let mut all: Vec<Gone> = gone.into_iter().collect();
                while let Some(gone) = calls.try_join_next() {
                    all.extend(gone);
                }
                for (letter, _) in &all {
                    busy.remove(&letter.chat);
                    if letter.counts() {
                        pace.arrived(letter.chat, Instant::now());
                    }
                }
                note(&line, all).await;
            }
            () = line.written.notified() => {}
            () = tokio::time::sleep(rest) => {}
            _ = stop.changed() => {}
        }
    }
    let until = tokio::time::Instant::now() + FAREWELL;
    while let Ok(Some(gone)) = tokio::time::timeout_at(until, calls.join_next()).await {
        note(&line, gone.into_iter().collect()).await;
    }
    // A letter still on its way goes out again at the next start: the stop itself is not waited for.
    line.stop.mark_unchanged();
}

async fn look(line: &Line, busy: &BTreeSet<i64>) -> Option<Outbox> {
    let (reception, busy, now) = (line.reception.clone(), busy.clone(), (line.clock)().with_timezone(&Utc));
    match tokio::task::spawn_blocking(move || reception.outbox(now, &busy)).await {
        Ok(Ok(outbox)) => Some(outbox),
        _ => {
            tracing::error!("the outbox could not be read");
            None
        }
    }
}

/// What became of letters goes to the store.
async fn note(line: &Line, gone: Vec<Gone>) {
    let mut arrived = Vec::new();
    let mut failed = Vec::new();
    for (letter, sent) in gone {
        match sent {
            Ok(message) => {
                line.counts.sent.add(1);
                arrived.push((letter, message));
            }
            Err(fault) => {
                let (id, attempts) = (letter.id, letter.attempts);
                line.counts.send_failures.add(1);
                tracing::warn!(id, attempts, why = fault.word(), "a letter did not arrive");
                failed.push((letter, fault));
            }
        }
    }
    let (reception, now) = (line.reception.clone(), (line.clock)().with_timezone(&Utc));
    let noted = tokio::task::spawn_blocking(move || {
        let done = if arrived.is_empty() { Ok(()) } else { reception.sent(&arrived, now) };
        failed.into_iter().map(|(letter, fault)| did_not_arrive(&reception, letter, fault, now)).fold(done, Result::and)
    });
    if !matches!(noted.await, Ok(Ok(()))) {
        tracing::error!("what became of letters could not be filed");
    }
}

fn did_not_arrive(reception: &Reception, letter: Letter, fault: Fault, now: DateTime<Utc>) -> Result<(), StoreError> {
    match fault {
        Fault::ShutOut => reception.shut_out(letter.chat),
        Fault::Moved(chat) => reception.moved(letter, chat),
        Fault::Refused(_) => reception.refused(letter),
        Fault::TooFast(wait) => {
            reception.put_off(letter, Some(TimeDelta::from_std(wait).unwrap_or(TimeDelta::seconds(60))), now)
        }
        Fault::Later(_) | Fault::Token | Fault::Rival | Fault::Webhook => reception.put_off(letter, None, now),
    }
}

/// One call; the number of the message where the platform gives one. Texts go out plain: nothing a person
/// wrote is ever read as markup.
async fn send(bot: &teloxide::Bot, letter: &Letter) -> Result<Option<i32>, Fault> {
    let chat = ChatId(letter.chat);
    match &letter.content {
        Content::Text { text, buttons, reply_to } => {
            let mut message = SendMessage::new(chat, text).link_preview_options(no_preview());
            if !buttons.is_empty() {
                message = message.reply_markup(keyboard(buttons));
            }
            if let Some(number) = reply_to {
                let reply = ReplyParameters::new(MessageId(*number)).allow_sending_without_reply();
                message = message.reply_parameters(reply);
            }
            call(bot, &message).await.map(|sent: Numbered| Some(sent.message_id))
        }
        Content::Edit { message, text, buttons } => edit(bot, chat, *message, text, buttons).await,
        Content::Picture { png, caption, buttons, reply_to } => {
            let file = Attached { parameter: "photo", name: "picture.png", bytes: png.0.clone() };
            let mut parameters = vec![("chat_id", chat.to_string())];
            if !caption.is_empty() {
                parameters.push(("caption", caption.clone()));
            }
            if !buttons.is_empty() {
                parameters.push(("reply_markup", parameter(&keyboard(buttons))?));
            }
            if let Some(number) = reply_to {
                let reply = ReplyParameters::new(MessageId(*number)).allow_sending_without_reply();
                parameters.push(("reply_parameters", parameter(&reply)?));
            }
            let sent: Numbered = call_with_file(bot, "sendPhoto", parameters, file).await?;
            Ok(Some(sent.message_id))
        }
        Content::Copy { from_chat, message } => {
            let copy = CopyMessage::new(chat, ChatId(*from_chat), MessageId(*message));
            call(bot, &copy).await.map(|sent: Numbered| Some(sent.message_id))
        }
        Content::File { name, text } => {
            let file = Attached { parameter: "document", name, bytes: text.clone().into_bytes() };
            let sent: Numbered = call_with_file(bot, "sendDocument", vec![("chat_id", chat.to_string())], file).await?;
            Ok(Some(sent.message_id))
        }
        Content::Seen { query } => {
            call(bot, &AnswerCallbackQuery::new(CallbackQueryId(query.clone()))).await.map(|_: bool| None)
        }
        Content::Menu { commands } => {
            let scope = BotCommandScope::Chat { chat_id: Recipient::Id(chat) };
            if commands.is_empty() {
                return call(bot, &DeleteMyCommands::new().scope(scope)).await.map(|_: bool| None);
            }
            let all = commands.iter().map(|(word, says)| BotCommand::new(word, says));
            call(bot, &SetMyCommands::new(all).scope(scope)).await.map(|_: bool| None)
        }
    }
}

/// Buttons in their rows.
fn keyboard(buttons: &[Label]) -> InlineKeyboardMarkup {
    let mut rows: Vec<Vec<InlineKeyboardButton>> = Vec::new();
    for label in buttons {
        let button = InlineKeyboardButton::callback(label.text.clone(), label.token.clone());
        match rows.last_mut() {
            Some(row) if label.beside => row.push(button),
            _ => rows.push(vec![button]),
        }
    }
    InlineKeyboardMarkup::new(rows)
}

/// Changes a message of ours. One that says this already is as good; one that can be changed no more is written anew.
async fn edit(
    bot: &teloxide::Bot,
    chat: ChatId,
    message: i32,
    text: &str,
    buttons: &[Label],
) -> Result<Option<i32>, Fault> {
    // Without a keyboard of its own the message loses the one it had.
    let changed = EditMessageText::new(chat, MessageId(message), text).link_preview_options(no_preview());
    let changed = if buttons.is_empty() { changed } else { changed.reply_markup(keyboard(buttons)) };
    match call(bot, &changed).await {
        Ok(Numbered { .. }) | Err(Fault::Refused(SAYS_SO_ALREADY)) => Ok(None),
        Err(Fault::Refused(STANDS_NO_MORE)) => {
            let mut anew = SendMessage::new(chat, text).link_preview_options(no_preview());
            if !buttons.is_empty() {
                anew = anew.reply_markup(keyboard(buttons));
            }
            call(bot, &anew).await.map(|sent: Numbered| Some(sent.message_id))
        }
        Err(fault) => Err(fault),
    }
}

const fn no_preview() -> LinkPreviewOptions {
    LinkPreviewOptions {
        is_disabled: true,
        url: None,
        prefer_small_media: false,
        prefer_large_media: false,
        show_above_text: false,
    }
}
