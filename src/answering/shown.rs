//! The part of a reading that a reply shows.

use crate::knowledge::Kind;
use crate::understanding::Reading;
use serde::Serialize;

/// `reading` of a reply's JSON.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ReadingShown {
    pub kind: Kind,
    pub crops: Vec<String>,
    /// `microgreen`, else left out.
    #[serde(rename = "as", skip_serializing_if = "Option::is_none")]
    pub grown_as: Option<&'static str>,
    pub beds: Vec<String>,
    /// A span gives its first and last day.
    pub dates: Vec<String>,
    pub quantities: Vec<QuantityShown>,
    pub language: &'static str,
    pub sureness: f64,
    pub also: Vec<Kind>,
}

/// A quantity that was said, in its own unit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct QuantityShown {
    pub value: f64,
    pub unit: &'static str,
}

impl Default for ReadingShown {
    fn default() -> Self {
        Self {
            kind: Kind::None,
            crops: Vec::new(),
            grown_as: None,
            beds: Vec::new(),
            dates: Vec::new(),
            quantities: Vec::new(),
            language: "en",
            sureness: 0.0,
            also: Vec::new(),
        }
    }
}

impl ReadingShown {
    /// The reading of a second request in the same message.
    pub fn join(&mut self, other: Self) {
        fn add<T: PartialEq>(list: &mut Vec<T>, more: Vec<T>) {
            for item in more {
                if !list.contains(&item) {
                    list.push(item);
                }
            }
        }
        if other.kind != self.kind {
            add(&mut self.also, vec![other.kind]);
        }
        add(&mut self.crops, other.crops);
        add(&mut self.beds, other.beds);
        add(&mut self.dates, other.dates);
        add(&mut self.quantities, other.quantities);
        self.grown_as = self.grown_as.or(other.grown_as);
        self.sureness = self.sureness.min(other.sureness);
    }

    /// What of a reading is shown.
    #[must_use]
    pub fn of(reading: &Reading) -> Self {
        let mut dates = Vec::new();
        // "for 5 days from friday": a span gives its first and its last day.
        let spans = reading.days.iter().enumerate().map(|(place, (first, last))| {
            let days = reading.for_days.filter(|days| place == 0 && first == last && *days >= 1.0);
            let more = days.map_or(0, |days| days as u64 - 1);
            (*first, last.checked_add_days(chrono::Days::new(more)).unwrap_or(*last))
        });
        for (first, last) in spans {
            for day in [first, last] {
                let day = day.to_string();
                if !dates.contains(&day) {
                    dates.push(day);
                }
            }
        }
        Self {
            kind: reading.kind,
            crops: reading.crops.clone(),
            grown_as: reading.microgreen.then_some("microgreen"),
            beds: reading.beds.iter().map(ToString::to_string).collect(),
            dates,
            quantities: reading
                .quantities
                .iter()
                .map(|written| QuantityShown { value: written.value, unit: written.unit.symbol() })
                .collect(),
            language: reading.language.tag(),
            sureness: reading.sureness,
            also: reading.also.clone(),
        }
    }
}
