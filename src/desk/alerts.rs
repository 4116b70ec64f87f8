//! Alerts of a moment for one person, put into words without a question.

use super::talk::{Desk, Message};
use crate::answering::{alerts_of, alerts_told};
use crate::garden::{Person, StoreError};
use crate::planning::alerts::Alert;
use chrono::{DateTime, FixedOffset};

impl Desk<'_> {
    /// The alerts that are wanted of those for the sites this person may see, and their text; none where there is none.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn alerts(
        &self,
        person: &Person,
        now: DateTime<FixedOffset>,
        wanted: &mut dyn FnMut(&Alert) -> bool,
    ) -> Result<Option<String>, StoreError> {
        let message = Message { from: Some(person.id.clone()), text: String::new(), now };
        self.unasked(Some(person), &message, |facts| {
            let mut all = alerts_of(facts);
            all.retain(|alert| wanted(alert));
            (!all.is_empty()).then(|| alerts_told(&all, facts))
        })
    }
}
