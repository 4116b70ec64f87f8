//! Alerts that go out with the day's letter: each event once, again only when it has become worse.

use super::Reception;
use super::letter::Tells;
use crate::answering::{Answer, Facts, alerts_told, called};
use crate::garden::{Change, SiteId, Slip, StoreError};
use crate::planning::alerts::Alert;
use crate::script::Language;
use crate::wording::{Manner, reply};
use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta, Utc};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// That a chat was told of an event, and how bad it was then.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Alerted {
    chat: i64,
    /// The event without its grade.
    event: String,
    grade: u8,
    from: NaiveDate,
    until: NaiveDate,
    pub at: DateTime<Utc>,
}

impl Slip for Alerted {
    const DRAWER: &'static str = "alerts";
    fn key(&self) -> String {
        Self::key_of(self.chat, &self.event)
    }
}

impl Alerted {
    /// A season's alert is not told again in the same season.
    pub const KEPT: TimeDelta = TimeDelta::days(200);

    #[must_use]
    pub fn key_of(chat: i64, event: &str) -> String {
        format!("{chat}|{event}")
    }

    /// Whether it was told to this chat.
    #[must_use]
    pub fn is_of(&self, chat: Option<i64>) -> bool {
        Some(self.chat) == chat
    }
}

/// What a day's letter says of alerts, and what is to be noted in the same write.
#[derive(Debug, Default)]
pub struct AlertLetter {
    pub text: Option<String>,
    pub changes: Vec<Change>,
    /// The events that the text tells, and what was noted of each before.
    pub tells: Vec<Tells>,
}

impl AlertLetter {
    /// Before what is due: what may hurt comes first.
    #[must_use]
    pub fn before(&self, due: Option<String>) -> Option<String> {
        match (&self.text, due) {
            (Some(alerts), Some(due)) => Some(format!("{alerts}\n\n{due}")),
            (Some(alerts), None) => Some(alerts.clone()),
            (None, due) => due,
        }
    }
}

impl Reception {
    /// The alerts of the sites of a chat's person at a moment that were not told yet. Nothing is written here: the changes go out
    /// with the letter.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub(super) fn alerts_for(
        &self,
        chat: i64,
        facts: &Facts<'_>,
        alerts: &BTreeMap<SiteId, Vec<Alert>>,
        (here, language): (DateTime<FixedOffset>, Language),
    ) -> Result<AlertLetter, StoreError> {
        let told = Alerted::beginning(self.store.as_ref(), &format!("{chat}|"))?;
        let (mut all, mut changes, mut tells) = (Vec::new(), Vec::new(), Vec::new());
        for alert in facts.sites.iter().filter_map(|site| alerts.get(&site.site.id)).flatten() {
            let (new, slip) = noted_of(alert, chat, &told, here.with_timezone(&Utc));
            if new {
                let before = told.iter().find(|told| told.event == slip.event).cloned().map(Box::new);
                tells.push(Tells::Alert { event: slip.event.clone(), before });
                all.push(alert.clone());
            }
            changes.push(slip.put()?);
        }
        let text = (!all.is_empty()).then(|| {
            let answer = Answer { called: called(facts), ..alerts_told(&all, facts) };
            let manner = Manner { language, devanagari_digits: false, why: false, short: false };
            reply(&answer, &self.house.known, self.house.phrases(language), manner).text
        });
        Ok(AlertLetter { text, changes, tells })
    }
}

/// Whether an alert is news, and what is noted of it. An event that goes on keeps its first day and its worst grade.
fn noted_of(alert: &Alert, chat: i64, told: &[Alerted], at: DateTime<Utc>) -> (bool, Alerted) {
    let event = alert.event();
    let before = told.iter().find(|told| told.event == event && alert.goes_on(told.from, told.until));
    let slip = Alerted {
        chat,
        event,
        grade: before.map_or(alert.grade, |before| before.grade.max(alert.grade)),
        from: before.map_or(alert.from, |before| before.from),
        until: before.map_or(alert.until, |before| before.until.max(alert.until)),
        at,
    };
    (before.is_none_or(|before| before.grade < alert.grade), slip)
}

#[cfg(test)]
mod tests;
