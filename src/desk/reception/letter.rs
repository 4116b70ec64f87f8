//! What goes out: letters, in the order in which they were written.

use super::alerts::Alerted;
use super::reminder::Reminded;
use crate::garden::{Change, QuestionId, Slip, StoreError};
use crate::planning::reminders::JobName;
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// One thing to be sent to a chat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Letter {
    /// Rising, so that a chat's letters go out in their order.
    pub id: u64,
    pub chat: i64,
    pub content: Content,
    /// What a reply to it belongs to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub follow: Option<Follow>,
    pub written: DateTime<Utc>,
    pub not_before: DateTime<Utc>,
    /// Not sent any more from then on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<DateTime<Utc>>,
    pub attempts: u32,
    pub state: State,
    /// What was noted as told with it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tells: Vec<Tells>,
}

/// Something that a letter tells and that was noted as told when it was written, with what had been noted before: that
/// is put back where the letter is not brought.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Tells {
    Job { name: JobName, before: Option<Box<Reminded>> },
    Alert { event: String, before: Option<Box<Alerted>> },
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    Waiting,
    /// Refused for good; kept for a while so that someone can look.
    Failed,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Content {
    Text {
        text: String,
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        buttons: Vec<Label>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reply_to: Option<i32>,
    },
    /// A message of ours that stands there already says this now.
    Edit {
        message: i32,
        text: String,
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        buttons: Vec<Label>,
    },
    /// A picture with words and buttons below it.
    Picture {
        png: super::picture::Png,
        #[serde(default, skip_serializing_if = "String::is_empty")]
        caption: String,
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        buttons: Vec<Label>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reply_to: Option<i32>,
    },
    /// Another chat's message, shown here too.
    Copy {
        from_chat: i64,
        message: i32,
    },
    File {
        name: String,
        text: String,
    },
    /// A button's press is acknowledged.
    Seen {
        query: String,
    },
    /// What the chat's menu offers.
    Menu {
        commands: Vec<(String, String)>,
    },
}

/// What stands on a button, and the token behind it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Label {
    pub text: String,
    pub token: String,
    /// In one row with the button before it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beside: bool,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Follow {
    /// It asks the crew something.
    Question(QuestionId),
    /// It answers; this is the state of the conversation then.
    Said(serde_json::Value),
    /// It reminds of these jobs.
    Reminder(Vec<JobName>),
}

impl Slip for Letter {
    const DRAWER: &'static str = "outbox";
    fn key(&self) -> String {
        format!("{:020}", self.id)
    }
}

impl Letter {
    /// Nobody wants an answer that comes later than this.
    pub const GIVEN_UP_AFTER: TimeDelta = TimeDelta::hours(24);
    /// So often a letter that is no message is tried again.
    const TRIED_BESIDE: u32 = 3;
    const FIRST_WAIT_S: u32 = 1;
    const LONGEST_WAIT_S: u32 = 120;

    /// Whether it may go out at a moment. A clock that was put back leaves letters behind that seem to be of a time to
    /// come: they do not wait for it.
    #[must_use]
    pub fn may_go(&self, now: DateTime<Utc>) -> bool {
        self.not_before <= now || self.written > now
    }

    /// Whether its time is over.
    #[must_use]
    pub fn is_late(&self, now: DateTime<Utc>) -> bool {
        self.until.is_some_and(|until| now >= until)
    }

    /// Whether its time is over for so long that no call that began before can still be on its way.
    #[must_use]
    pub fn has_lapsed(&self, now: DateTime<Utc>) -> bool {
        const STILL_ON_ITS_WAY: TimeDelta = TimeDelta::minutes(2);
        self.state == State::Waiting && self.is_late(now - STILL_ON_ITS_WAY)
    }

    /// Whether it counts as a message in the eyes of the platform's limits.
    #[must_use]
    pub const fn counts(&self) -> bool {
        !matches!(self.content, Content::Seen { .. } | Content::Menu { .. })
    }

    /// As it stands now; a menu or the glow of a button that failed is of no use to anyone who looks.
    pub fn put_or_dropped(&self) -> Result<Change, StoreError> {
        if self.state == State::Failed && !self.counts() { self.taken_away() } else { self.put() }
    }

    /// The same after a failed attempt: later each time, given up after a day.
    #[must_use]
    pub fn put_off(mut self, now: DateTime<Utc>, wait: Option<TimeDelta>) -> Self {
        let doubled = Self::FIRST_WAIT_S.checked_shl(self.attempts.min(10)).unwrap_or(Self::LONGEST_WAIT_S);
        let usual = TimeDelta::seconds(i64::from(doubled.min(Self::LONGEST_WAIT_S)));
        self.attempts += 1;
        self.not_before = now + wait.unwrap_or(usual);
        // A menu or the glow of a button is not worth that a chat's words wait for it.
        let beside = !self.counts() && self.attempts > Self::TRIED_BESIDE;
        if beside || self.not_before - self.written > Self::GIVEN_UP_AFTER {
            self.state = State::Failed;
        }
        self
    }
}

/// A letter that was sent and that a reply may belong to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Sent {
    pub chat: i64,
    pub message: i32,
    pub at: DateTime<Utc>,
    pub follow: Follow,
}

impl Slip for Sent {
    const DRAWER: &'static str = "sent";
    fn key(&self) -> String {
        Self::key_of(self.chat, self.message)
    }
}

impl Sent {
    /// A reply to something older is a message of its own: what was asked of the crew may wait long, an answer is soon
    /// forgotten.
    #[must_use]
    pub const fn kept(&self) -> TimeDelta {
        match self.follow {
            Follow::Question(_) => TimeDelta::days(30),
            Follow::Said(_) | Follow::Reminder(_) => TimeDelta::days(7),
        }
    }

    #[must_use]
    pub fn key_of(chat: i64, message: i32) -> String {
        format!("{chat}|{message}")
    }
}

/// The longest text of one message, in UTF-16 units: the platform's 4096 with a little room.
const LONGEST: usize = 4000;

/// A text in pieces that each fit one message, cut between paragraphs where that can be, else lines, else words.
#[must_use]
pub fn pieces(text: &str) -> Vec<String> {
    let mut pieces = Vec::new();
    let mut rest = text.trim();
    while units(rest) > LONGEST {
        let end = fitting(rest);
        let head = rest.get(..end).unwrap_or(rest);
        let cut = ["\n\n", "\n", " "]
            .iter()
            .find_map(|between| head.rfind(between).filter(|at| *at > end / 4))
            .unwrap_or(end);
        let (piece, after) = rest.split_at_checked(cut).unwrap_or((rest, ""));
        pieces.push(piece.trim_end().to_owned());
        rest = after.trim_start();
    }
    if !rest.is_empty() {
        pieces.push(rest.to_owned());
    }
    pieces
}

fn units(text: &str) -> usize {
    text.encode_utf16().count()
}

/// So many bytes of a text fit, at the end of a character.
fn fitting(text: &str) -> usize {
    let mut used = 0;
    for (at, letter) in text.char_indices() {
        used += letter.len_utf16();
        if used > LONGEST {
            return at;
        }
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn letter() -> Letter {
        let at = "2026-05-18T02:30:00Z".parse().unwrap();
        let content = Content::Text { text: "q".into(), buttons: Vec::new(), reply_to: None };
        Letter {
            id: 1,
            chat: 5,
            content,
            follow: None,
            written: at,
            not_before: at,
            until: None,
            attempts: 0,
            state: State::Waiting,
            tells: Vec::new(),
        }
    }

    #[test]
    fn each_wait_is_longer_and_a_day_is_the_end() {
        let mut now = letter().written;
        let mut tried = letter();
        let mut waits = Vec::new();
        while tried.state == State::Waiting {
            tried = tried.put_off(now, None);
            waits.push((tried.not_before - now).num_seconds());
            now = tried.not_before;
        }
        assert_eq!(waits.iter().take(9).copied().collect::<Vec<_>>(), [1, 2, 4, 8, 16, 32, 64, 120, 120]);
        assert!(now - tried.written > Letter::GIVEN_UP_AFTER);
        let mut menu = Letter { content: Content::Seen { query: "q".into() }, ..letter() };
        for _ in 0..4 {
            assert_eq!(menu.state, State::Waiting);
            menu = menu.put_off(letter().written, None);
        }
        assert_eq!(menu.state, State::Failed, "it holds nothing up");
        let told = letter().put_off(letter().written, Some(TimeDelta::seconds(17)));
        assert_eq!((told.not_before - told.written).num_seconds(), 17);
    }

    #[test]
    fn a_long_text_is_cut_between_paragraphs() {
        let paragraph = "पानी दें। ".repeat(150);
        let text = [paragraph.trim(); 5].join("\n\n");
        let got = pieces(&text);
        assert_eq!(got.join("\n\n"), text);
        assert!(got.len() >= 2 && got.iter().all(|piece| piece.starts_with("पानी") && piece.ends_with('।')));
        assert_eq!(pieces("short"), ["short"]);
        assert!(pieces(" \n ").is_empty());
    }

    proptest! {
        #[test]
        fn every_piece_fits_and_no_word_is_lost(text in "(\\PC{0,40}[ \n🌱]{0,3}){0,400}") {
            let got = pieces(&text);
            prop_assert!(got.iter().all(|piece| units(piece) <= LONGEST && !piece.trim().is_empty()));
            let bare = |text: &str| text.split_whitespace().collect::<String>();
            prop_assert_eq!(bare(&got.concat()), bare(&text));
        }
    }
}
