//! The platform's limits: a message a second in a chat, twenty a minute in a group, thirty a second in all.

use std::collections::{HashMap, VecDeque};
use std::time::{Duration, Instant};

/// What was sent lately.
#[derive(Debug, Default)]
pub struct Pace {
    kept: bool,
    last: HashMap<i64, Instant>,
    lately: VecDeque<Instant>,
}

const IN_A_CHAT: Duration = Duration::from_secs(1);
const IN_A_GROUP: Duration = Duration::from_secs(3);
const SECOND: Duration = Duration::from_secs(1);
const A_SECOND: usize = 30;

impl Pace {
    pub fn new(kept: bool) -> Self {
        Self { kept, ..Self::default() }
    }

    /// How long a message to this chat has to wait.
    pub fn wait(&self, chat: i64, now: Instant) -> Duration {
        if !self.kept {
            return Duration::ZERO;
        }
        // Numbers of groups are negative.
        let apart = if chat < 0 { IN_A_GROUP } else { IN_A_CHAT };
        let of_chat =
            self.last.get(&chat).map_or(Duration::ZERO, |last| (*last + apart).saturating_duration_since(now));
        let earliest = self.lately.len().checked_sub(A_SECOND).and_then(|place| self.lately.get(place));
        let of_all = earliest.map_or(Duration::ZERO, |earliest| (*earliest + SECOND).saturating_duration_since(now));
        of_chat.max(of_all)
    }

    /// A message has arrived: the next one in this chat waits from now, however long this one was on its way.
    pub fn arrived(&mut self, chat: i64, now: Instant) {
        self.last.insert(chat, now);
    }

    /// A message goes out.
    pub fn note(&mut self, chat: i64, now: Instant) {
        self.last.retain(|_, last| now.saturating_duration_since(*last) < IN_A_GROUP);
        while self.lately.front().is_some_and(|first| now.saturating_duration_since(*first) >= SECOND) {
            self.lately.pop_front();
        }
        self.last.insert(chat, now);
        self.lately.push_back(now);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_chat_has_a_message_a_second() {
        let mut pace = Pace::new(true);
        let start = Instant::now();
        assert_eq!(pace.wait(5, start), Duration::ZERO);
        pace.note(5, start);
        assert_eq!(pace.wait(5, start + Duration::from_millis(300)), Duration::from_millis(700));
        assert_eq!(pace.wait(6, start + Duration::from_millis(300)), Duration::ZERO);
        pace.arrived(5, start + Duration::from_millis(800));
        assert_eq!(pace.wait(5, start + Duration::from_millis(900)), Duration::from_millis(900));
        pace.note(-6, start);
        assert_eq!(pace.wait(-6, start + Duration::from_secs(1)), Duration::from_secs(2));
    }

    #[test]
    fn all_chats_together_have_thirty() {
        let mut pace = Pace::new(true);
        let start = Instant::now();
        for chat in 0..30 {
            assert_eq!(pace.wait(chat, start), Duration::ZERO);
            pace.note(chat, start);
        }
        assert_eq!(pace.wait(99, start), Duration::from_secs(1));
        assert_eq!(pace.wait(99, start + Duration::from_secs(1)), Duration::ZERO);
        let mut free = Pace::new(false);
        free.note(1, start);
        assert_eq!(free.wait(1, start), Duration::ZERO);
    }
}
