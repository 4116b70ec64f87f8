//! What is kept of one cell between fetches: the last good document as days, its hours, and the days gone by.

use super::cell::Spot;
use super::daily::{Ground, begins, days};
use super::day::{Day, Origin};
use super::row::DayRow;
use super::source::{Content, Fetched, Service};
use super::step::{Step, StepRow, merged};
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

/// A cell as it stands.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Sky {
    /// The last document that could be taken; a failure leaves it as it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub good: Option<Good>,
    /// When somebody was last asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tried: Option<DateTime<Utc>>,
    /// Not to be asked again before.
    #[serde(default)]
    pub next: DateTime<Utc>,
    /// Failures since the last success.
    #[serde(default)]
    pub failures: u32,
    /// What the last try failed with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub trouble: Option<String>,
}

/// The last good document of a cell.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Good {
    pub by: Service,
    /// When it was made, where it says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub issued: Option<DateTime<Utc>>,
    /// When it came.
    pub fetched: DateTime<Utc>,
    /// Exactly as it was given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_modified: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expires: Option<DateTime<Utc>>,
    /// In their order, today the first where it is known.
    pub days: Vec<DayRow>,
    /// Days that could not be made, and why.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub unmade: Vec<String>,
}

impl Good {
    /// When it was made, else when it came.
    #[must_use]
    pub fn made(&self) -> DateTime<Utc> {
        self.issued.unwrap_or(self.fetched)
    }
}

/// A day gone by.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(try_from = "PastRow")]
pub struct PastDay {
    pub day: DayRow,
    pub was: Was,
    pub by: Service,
    /// When the document was made that told it.
    pub made: DateTime<Utc>,
}

/// A day gone by as older versions kept it: days of the common era, °C, °C, percent, m/s, MJ/m², h, mm, whether it was
/// observed, by whom, made at so many seconds since 1970.
#[derive(Deserialize)]
struct PastRow(i32, f64, f64, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>, bool, Service, i64);

impl TryFrom<PastRow> for PastDay {
    type Error = &'static str;

    fn try_from(row: PastRow) -> Result<Self, Self::Error> {
        let PastRow(
            date,
            tmax_c,
            tmin_c,
            rh_mean_percent,
            wind_2m_m_s,
            solar_mj_m2,
            sunshine_h,
            rain_mm,
            observed,
            by,
            made,
        ) = row;
        let date = NaiveDate::from_num_days_from_ce_opt(date).ok_or("a day of the calendar expected")?;
        let made = DateTime::from_timestamp(made, 0).ok_or("a moment expected")?;
        let rain_chance = None;
        let day = DayRow {
            date,
            tmax_c,
            tmin_c,
            rh_mean_percent,
            wind_2m_m_s,
            solar_mj_m2,
            sunshine_h,
            rain_mm,
            rain_chance,
        };
        Ok(Self { day, was: if observed { Was::Observed } else { Was::Kept }, by, made })
    }
}

/// How a day gone by is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Was {
    /// As the last forecast before its end had it.
    Kept,
    /// As its source had it afterwards.
    Observed,
}

impl PastDay {
    /// The day with its origin; none where what was written is no weather.
    #[must_use]
    pub fn read(&self) -> Option<Day> {
        let origin = match self.was {
            Was::Kept => Origin::Kept,
            Was::Observed => Origin::Observed,
        };
        self.day.day(origin).ok()
    }

    /// Whether it takes the place of what is kept of the same day: a forecast never that of what was observed.
    #[must_use]
    pub fn replaces(&self, before: &Self) -> bool {
        self.was == Was::Observed || before.was == Was::Kept
    }
}

/// What a new document changes.
#[derive(Debug, Clone, PartialEq)]
pub struct Taken {
    pub good: Good,
    /// Its hours over those told before, for the next time; none of a document of days.
    pub steps: Vec<StepRow>,
    /// Days that have passed, from it or from the document before.
    pub past: Vec<PastDay>,
}

/// Takes a new document over what is kept.
///
/// # Errors
/// Why no day could be made of it: then what is kept stays.
pub fn taken(
    spot: &Spot,
    sky: &Sky,
    steps: &[StepRow],
    by: Service,
    fetched: Fetched,
    now: DateTime<Utc>,
) -> Result<Taken, String> {
    let today = now.with_timezone(&spot.zone).date_naive();
    let made = fetched.outlook.issued.unwrap_or(now);
    let (all, unmade, steps, observed) = match fetched.outlook.content {
        Content::Steps(new) => of_steps(spot, steps, &new, today),
        Content::Days(days) => {
            // What was written down after its day had passed is no forecast; where nobody says when, it may be one.
            let issued = fetched.outlook.issued.map(|at| at.with_timezone(&spot.zone).date_naive());
            let after = |date: &NaiveDate| issued.is_some_and(|issued| *date < issued);
            let observed = days.iter().map(|day| day.date).filter(after).collect();
            (days, Vec::new(), Vec::new(), observed)
        }
    };
    let ahead: Vec<DayRow> = all.iter().filter(|day| day.date >= today).map(DayRow::of).collect();
    if ahead.is_empty() {
        let why = unmade.first().cloned().unwrap_or_else(|| "all of its days have passed".to_owned());
        return Err(format!("no day from today on could be made of it: {why}"));
    }
    let mut before = sky.good.clone();
    let mut past = before.as_mut().map(|good| passed(good, today)).unwrap_or_default();
    let gone = all.iter().filter(|day| day.date < today);
    past.extend(gone.map(|day| {
        let was = if observed.contains(&day.date) { Was::Observed } else { Was::Kept };
        PastDay { day: DayRow::of(day), was, by, made }
    }));
    let good = Good {
        by,
        issued: fetched.outlook.issued,
        fetched: now,
        last_modified: fetched.last_modified,
        expires: fetched.expires,
        days: ahead,
        unmade,
    };
    Ok(Taken { good, steps, past })
}

/// Days of new steps over old ones, those not made, the steps to keep, and the days that the new ones alone know after
/// they have passed.
fn of_steps(
    spot: &Spot,
    old: &[StepRow],
    new: &[Step],
    today: NaiveDate,
) -> (Vec<Day>, Vec<String>, Vec<StepRow>, Vec<NaiveDate>) {
    let ground =
        Ground { latitude_deg: spot.cell.latitude_deg(), longitude_deg: spot.cell.longitude_deg(), zone: spot.zone };
    let observed = days(new, &ground).0.iter().map(|day| day.date).filter(|date| *date < today).collect();
    let old: Vec<Step> = old.iter().filter_map(|row| row.step()).collect();
    let since = begins(today, spot.zone).unwrap_or(DateTime::<Utc>::MIN_UTC);
    let steps = merged(&old, new, since);
    let (made, unmade) = days(&steps, &ground);
    // Days that a document only touches at its ends are no fault of it.
    let last = made.last().map_or(today, |day| day.date);
    let unmade = unmade.iter().filter(|unmade| unmade.date >= today && unmade.date <= last);
    let told = unmade.map(ToString::to_string).collect();
    let kept = steps.iter().filter(|step| step.end() > since).map(StepRow::of).collect();
    (made, told, kept, observed)
}

/// Takes the days that have passed out of a document: they stay as it last foretold them.
pub fn passed(good: &mut Good, today: NaiveDate) -> Vec<PastDay> {
    let (gone, ahead) = good.days.iter().partition(|day| day.date < today);
    good.days = ahead;
    let (by, made) = (good.by, good.made());
    let gone: Vec<DayRow> = gone;
    gone.into_iter().map(|day| PastDay { day, was: Was::Kept, by, made }).collect()
}
