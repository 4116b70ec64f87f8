//! How often a stranger may ask.

use chrono::{DateTime, TimeDelta, Utc};
use std::collections::{BTreeMap, VecDeque};

/// The messages of strangers within the last hour; nothing of it is stored.
#[derive(Debug, Default)]
pub struct Visits {
    of: BTreeMap<i64, VecDeque<DateTime<Utc>>>,
}

/// What a stranger's next message gets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Welcome {
    Answered,
    /// One too many: told so, once.
    Told,
    /// Still too many: nothing is said.
    Silent,
}

impl Visits {
    /// So many messages an hour are answered.
    pub const AN_HOUR: usize = 20;
    /// So many strangers' messages an hour in all, so that many accounts together cannot fill the day.
    pub const ALL_AN_HOUR: usize = 600;

    /// More are not counted, and so not kept.
    const MOST: usize = 2 * Self::ALL_AN_HOUR;

    /// Counts a message of a chat. Whoever brings a code is held to the share of one chat alone: strangers who fill the
    /// hour must not keep an invited client at the door, and a code of 80 bits is not found by trying.
    pub fn next(&mut self, chat: i64, code: bool, now: DateTime<Utc>) -> Welcome {
        for times in self.of.values_mut() {
            while times.front().is_some_and(|time| now - *time >= TimeDelta::hours(1)) {
                times.pop_front();
            }
        }
        self.of.retain(|_, times| !times.is_empty());
        let all: usize = self.of.values().map(VecDeque::len).sum();
        // Far too many: nothing is kept of them either.
        if all >= Self::MOST && !code {
            return Welcome::Silent;
        }
        let times = self.of.entry(chat).or_default();
        if times.len() > Self::AN_HOUR {
            return Welcome::Silent;
        }
        let answered = times.len() < Self::AN_HOUR && (code || all < Self::ALL_AN_HOUR);
        times.push_back(now);
        if answered { Welcome::Answered } else { Welcome::Told }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn twenty_an_hour_then_told_once_then_silence() {
        let start: DateTime<Utc> = "2026-05-18T02:30:00Z".parse().unwrap();
        let mut visits = Visits::default();
        let mut got = Vec::new();
        for minute in 0..23 {
            got.push(visits.next(7, false, start + TimeDelta::minutes(minute)));
        }
        assert!(got[..20].iter().all(|one| *one == Welcome::Answered));
        assert_eq!(got[20..], [Welcome::Told, Welcome::Silent, Welcome::Silent]);
        assert_eq!(
            visits.next(8, false, start + TimeDelta::minutes(24)),
            Welcome::Answered,
            "another is not held to it"
        );
        assert_eq!(visits.next(7, false, start + TimeDelta::minutes(61)), Welcome::Answered);
    }

    #[test]
    fn an_hour_filled_by_strangers_leaves_the_door_open_for_a_code() {
        let now: DateTime<Utc> = "2026-05-18T02:30:00Z".parse().unwrap();
        let mut visits = Visits::default();
        for chat in 0..i64::try_from(Visits::ALL_AN_HOUR).unwrap() {
            assert_eq!(visits.next(chat, false, now), Welcome::Answered);
        }
        assert_eq!(visits.next(-1, false, now), Welcome::Told);
        assert_eq!(visits.next(-2, true, now), Welcome::Answered);
        let tries = (0..=Visits::AN_HOUR).map(|_| visits.next(-3, true, now)).collect::<Vec<_>>();
        assert_eq!(tries.last(), Some(&Welcome::Told), "codes are not tried without end");
    }
}
