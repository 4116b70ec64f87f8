//! A question answered at the keyboard: its words go to the chat that asked, under the crew's name.

use super::crew::Asked;
use super::letter::{Content, Letter, State, pieces};
use crate::garden::{Change, Question, Slip, Store, StoreError};
use crate::knowledge::Knowledge;
use crate::wording::{Phrases, filled};
use chrono::{DateTime, FixedOffset, Utc};

/// What became of an answer given by hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ByHand {
    /// A letter waits in the outbox.
    OnItsWay,
    /// Whoever asked has no chat.
    NoChat,
}

/// Letters written here are numbered so far beyond those of a bot that runs at the same time that they never meet.
const BEYOND: u64 = 1_000_000;

/// Writes the letter and takes the question away, in one write.
///
/// # Errors
/// When the store cannot be read or written: the question waits on.
pub fn answer_by_hand(
    store: &dyn Store,
    known: &Knowledge,
    question: &Question,
    text: &str,
    now: DateTime<FixedOffset>,
) -> Result<ByHand, StoreError> {
    let asked = Asked::find(store, question.id.as_str())?;
    let mut changes = vec![Change::remove(question.clone())];
    let mut became = ByHand::NoChat;
    if let Some(asked) = asked {
        if asked.chat != 0 {
            let phrases = Phrases::of(known, asked.language);
            let first = Letter::all(store)?.last().map_or(0, |letter| letter.id) + BEYOND;
            let written = now.with_timezone(&Utc);
            let said = filled(&phrases, "bot-from-crew", &[("text", text)]);
            for (id, (place, text)) in (first..).zip(pieces(&said).into_iter().enumerate()) {
                let reply_to = Some(asked.message).filter(|number| *number > 0 && place == 0);
                let content = Content::Text { text, buttons: Vec::new(), reply_to };
                let (chat, not_before) = (asked.chat, written);
                let letter = Letter {
                    id,
                    chat,
                    content,
                    follow: None,
                    written,
                    not_before,
                    until: None,
                    attempts: 0,
                    tells: Vec::new(),
                    state: State::Waiting,
                };
                changes.push(letter.put()?);
            }
            became = ByHand::OnItsWay;
        }
        changes.push(asked.taken_away()?);
    }
    store.write(changes)?;
    Ok(became)
}
