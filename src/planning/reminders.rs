//! What a person is told of the jobs of a day on its eve, or on its morning: each once, moved ones with their new
//! day, open ones again after a while. What was told before is handed in; nothing is forgotten or told twice.

use super::due::{Due, Plot, due};
use super::moves::parts;
use crate::garden::{BedId, JobKind};
use crate::needs::loss_factor::LossFactor;
use crate::needs::surroundings::Surroundings;
use crate::needs::water::{WeekAtBest, week_at_best};
use chrono::{DateTime, Days, FixedOffset, NaiveDate, NaiveTime};
use serde::{Deserialize, Serialize};

/// A job that stays open is spoken of again after so many days (judgement: a word, not a nuisance)…
const AGAIN_DAYS: i64 = 3;
/// …and one of which nothing is on record after so many: the rhythm of the trade for sprays.
const AGAIN_UNRECORDED_DAYS: i64 = 7;
/// A job is followed for so many days past the day that is told of.
const FOLLOWED_DAYS: u64 = 12;
/// A rhythm of watering that slows down is told at most every so many days: showers come and go.
const SLOWER_DAYS: i64 = 3;

/// Which word of the day it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Word {
    /// The evening before.
    Eve,
    /// The morning of the day itself, for what the evening before did not know.
    Morning,
}

/// A job as reminders know it: the same name on every day.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct JobName {
    pub bed: BedId,
    pub job: JobKind,
    /// A crop; of a net `up` or `down`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
}

impl JobName {
    /// The name of a job that is due.
    #[must_use]
    pub fn of(due: &Due) -> Self {
        let way = due.what.clone().filter(|_| due.job == JobKind::Net);
        Self { bed: due.bed.clone(), job: due.job, what: parts(due.job, due.what.as_deref()).or(way) }
    }

    /// The name of a bed's watering.
    #[must_use]
    pub const fn watering(bed: BedId) -> Self {
        Self { bed, job: JobKind::Water, what: None }
    }
}

/// What was told last of a job.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct ToldLast {
    /// The day it was planned for then; of a watering, the day from which its rhythm holds.
    pub day: NaiveDate,
    /// Whether it was announced for that day, rather than told to have moved there.
    pub announced: bool,
    /// The rhythm of a bed's watering, in waterings a week.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rhythm: Option<f64>,
}

/// What is to be told of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum News {
    /// It is to be done on the day.
    Due,
    /// It was told before and is still open.
    Open,
    /// By its rhythm, or by what was told, it fell on the day; now it falls on a later one.
    Moved,
}

/// The jobs of a bed that fall on a day or after it, as they stand in the first minute of that day.
#[must_use]
pub fn jobs_from(plot: &Plot<'_>, day: NaiveDate) -> Vec<Due> {
    let until = day.checked_add_days(Days::new(FOLLOWED_DAYS)).unwrap_or(day);
    due(&Plot { now: first_minute(day, plot.now), ..plot.clone() }, until)
}

/// A day's first minute on the clock of a moment.
#[must_use]
pub fn first_minute(day: NaiveDate, now: DateTime<FixedOffset>) -> DateTime<FixedOffset> {
    day.and_time(NaiveTime::MIN).and_local_timezone(*now.offset()).single().unwrap_or(now)
}

/// What is to be told of a job for a day, if anything. `told` is what was told of it last.
#[must_use]
pub fn news(due: &Due, day: NaiveDate, told: Option<&ToldLast>, word: Word) -> Option<News> {
    // What was told of an earlier time of the same job counts no more.
    let told = told.filter(|told| !is_of_before(due, told));
    if due.date > day {
        let fell_here = due.rhythm.is_some_and(|rhythm| rhythm <= day);
        let moved = !due.moved_by.is_empty() || due.chosen.is_some();
        return match told {
            Some(told) if told.day == due.date => None,
            Some(told) if told.announced && told.day == day => Some(News::Moved),
            _ => (fell_here && moved).then_some(News::Moved),
        };
    }
    let Some(told) = told else { return Some(News::Due) };
    match (told.announced, (day - told.day).num_days()) {
        // Told to have moved to this day, or past a day on which nobody could be told.
        (false, _) => Some(News::Due),
        // Announced for a later day; now it is wanted sooner.
        (true, days) if days < 0 => Some(News::Due),
        // A person put it on this day after it had been announced for another.
        (true, days) if days > 0 && due.chosen.as_ref().is_some_and(|moved| moved.to == day) => Some(News::Due),
        (true, days) => {
            let again = if due.rhythm.is_some() { AGAIN_DAYS } else { AGAIN_UNRECORDED_DAYS };
            (word == Word::Eve && days >= again).then_some(News::Open)
        }
    }
}

/// Whether what was told belongs to a time of the job that is over: it was done since, or its rhythm has come round
/// again. A rhythm that is only estimated shifts by a day or two, which is no new round.
fn is_of_before(due: &Due, told: &ToldLast) -> bool {
    let done_since = due.last.is_some_and(|last| last >= told.day.pred_opt().unwrap_or(told.day));
    let begins = due.chosen.as_ref().map(|moved| moved.to).or(due.rhythm);
    let round_again = begins.is_some_and(|begins| (begins - told.day).num_days() >= AGAIN_DAYS);
    if told.announced { done_since || round_again } else { due.last.is_some_and(|last| last >= told.day) }
}

/// What is to be remembered once the news was told.
#[must_use]
pub const fn told_now(due: &Due, news: News) -> ToldLast {
    ToldLast { day: due.date, announced: !matches!(news, News::Moved), rhythm: None }
}

/// A bed whose rhythm of watering changes from a day on.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterChange {
    pub bed: BedId,
    /// Waterings a week until then.
    pub before: f64,
    /// The week from that day on.
    pub week: WeekAtBest,
}

/// The weeks of water of a bed: from a day, from the next and from the one after. Of the beds of all roofs at once, so
/// that it holds a few numbers each.
#[derive(Debug, Clone, PartialEq)]
pub struct Waters {
    pub bed: BedId,
    day: NaiveDate,
    /// Waterings a week in the week before the day is out.
    now: f64,
    next: WeekAtBest,
    later: Option<f64>,
}

impl Waters {
    /// The weeks around the day on which `around` stands.
    #[must_use]
    pub fn of(around: &Surroundings<'_>, factor: &LossFactor) -> Option<Self> {
        let day = around.today.succ_opt()?;
        let week = |today: NaiveDate| week_at_best(&Surroundings { today, ..around.clone() }, factor);
        let (now, later) = (week(around.today)?.rhythm, day.succ_opt().and_then(week).map(|week| week.rhythm));
        Some(Self { bed: around.bed.id.clone(), day, now, next: week(day)?, later })
    }

    /// Whether the rhythm changes from the next day on: what is to be told, and what is to be remembered; the second
    /// alone where the rhythm that holds is only noted.
    #[must_use]
    pub fn change(&self, told: Option<&ToldLast>) -> Option<(Option<WaterChange>, ToldLast)> {
        let (day, next) = (self.day, self.next.rhythm);
        let before = told.and_then(|told| told.rhythm).unwrap_or(self.now);
        let remembered = ToldLast { day, announced: true, rhythm: Some(next) };
        if (next - before).abs() < f64::EPSILON {
            return told.is_none().then_some((None, remembered));
        }
        // A dry bed is harmed within the day, a wet one is not: slower must hold for the day after as well.
        let lately = told.is_some_and(|told| (day - told.day).num_days() < SLOWER_DAYS);
        let lasts = self.later.is_some_and(|later| later < before);
        if next < before && (lately || !lasts) {
            return None;
        }
        let change = WaterChange { bed: self.bed.clone(), before, week: self.next };
        Some((Some(change), remembered))
    }
}

#[cfg(test)]
mod tests;
