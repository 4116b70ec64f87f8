//! What is kept of the weather, as slips beside the garden.

use crate::garden::{Change, Slip, Store, StoreError};
use crate::weather::cell::Spot;
use crate::weather::kept::{PastDay, Sky};
use crate::weather::past_line;
use crate::weather::step::StepRow;
use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A cell as it stands: what answers read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SkySlip {
    spot: String,
    pub sky: Sky,
}

impl Slip for SkySlip {
    const DRAWER: &'static str = "weather";
    fn key(&self) -> String {
        self.spot.clone()
    }
}

impl SkySlip {
    #[must_use]
    pub fn new(spot: &Spot, sky: Sky) -> Self {
        Self { spot: spot.to_string(), sky }
    }

    /// The cell of a spot; one of which nothing is known yet where there is none.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn of(store: &dyn Store, spot: &Spot) -> Result<Sky, StoreError> {
        Ok(Self::find(store, &spot.to_string())?.map(|slip| slip.sky).unwrap_or_default())
    }
}

/// The hours of a cell's last good document: only who fetches reads them.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StepsSlip {
    spot: String,
    pub steps: Vec<StepRow>,
}

impl Slip for StepsSlip {
    const DRAWER: &'static str = "weather-steps";
    fn key(&self) -> String {
        self.spot.clone()
    }
}

impl StepsSlip {
    #[must_use]
    pub fn new(spot: &Spot, steps: Vec<StepRow>) -> Self {
        Self { spot: spot.to_string(), steps }
    }
}

/// The days of one month gone by.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PastMonth {
    spot: String,
    month: String,
    #[serde(with = "past_line")]
    pub days: Vec<PastDay>,
}

impl Slip for PastMonth {
    const DRAWER: &'static str = "weather-past";
    fn key(&self) -> String {
        format!("{}|{}", self.spot, self.month)
    }
}

impl PastMonth {
    /// All that is kept of a spot's days, in their order.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn days_of(store: &dyn Store, spot: &Spot) -> Result<Vec<PastDay>, StoreError> {
        let months = Self::beginning(store, &format!("{spot}|"))?;
        Ok(months.into_iter().flat_map(|month| month.days).collect())
    }

    /// The changes that keep some days, each in the place of what is worth less.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn keeping(store: &dyn Store, spot: &Spot, past: Vec<PastDay>) -> Result<Vec<Change>, StoreError> {
        let mut months: BTreeMap<String, Vec<PastDay>> = BTreeMap::new();
        for day in past {
            months.entry(month_of(day.day.date)).or_default().push(day);
        }
        let mut changes = Vec::new();
        for (month, new) in months {
            let key = format!("{spot}|{month}");
            let before = Self::find(store, &key)?.map(|month| month.days).unwrap_or_default();
            let mut days: BTreeMap<NaiveDate, PastDay> = before.iter().map(|day| (day.day.date, day.clone())).collect();
            for day in new {
                if days.get(&day.day.date).is_none_or(|there| day.replaces(there)) {
                    days.insert(day.day.date, day);
                }
            }
            let days: Vec<PastDay> = days.into_values().collect();
            if days != before {
                changes.push(Self { spot: spot.to_string(), month, days }.put()?);
            }
        }
        Ok(changes)
    }
}

fn month_of(date: NaiveDate) -> String {
    format!("{:04}-{:02}", date.year(), date.month())
}
