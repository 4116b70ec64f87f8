//! The words of a picture, in the language of the reply it goes with.

use crate::answering::{Answer, Line, Said};
use crate::garden::BedId;
use crate::knowledge::Knowledge;
use crate::script::Language;
use crate::wording::{Manner, Phrases, Speaker, digits_of};
use chrono::{Datelike, NaiveDate};

/// Puts what an answer's tables hold into words.
pub struct Words<'a> {
    speaker: Speaker<'a>,
    manner: Manner,
}

impl<'a> Words<'a> {
    #[must_use]
    pub const fn new(answer: &'a Answer, known: &'a Knowledge, phrases: &'a Phrases, manner: Manner) -> Self {
        Self { speaker: Speaker { phrases, known, language: manner.language, answer }, manner }
    }

    /// A whole line that stands as a sentence.
    #[must_use]
    pub fn sentence(&self, line: &Line) -> String {
        large_first(&self.line(line))
    }

    /// A whole line.
    #[must_use]
    pub fn line(&self, line: &Line) -> String {
        self.digits(self.speaker.line(line).trim())
    }

    /// A phrase without values.
    #[must_use]
    pub fn say(&self, phrase: &'static str) -> String {
        self.line(&Line::new(phrase))
    }

    /// A value alone.
    #[must_use]
    pub fn said(&self, said: &Said) -> String {
        self.digits(self.speaker.said(said).trim())
    }

    /// The same with a large first letter.
    #[must_use]
    pub fn headed(&self, said: &Said) -> String {
        large_first(&self.said(said))
    }

    /// The short name of a weekday.
    #[must_use]
    pub fn weekday(&self, day: NaiveDate) -> String {
        const NAMES: [&str; 7] = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
        let name = NAMES.get(day.weekday().num_days_from_monday() as usize).copied().unwrap_or_default();
        self.line(&Line::new("draw-weekday").with("day", Said::Key(name)))
    }

    /// The same for a small box: of Latin letters the first three.
    #[must_use]
    pub fn weekday_in_three(&self, day: NaiveDate) -> String {
        let name = self.weekday(day);
        if name.is_ascii() { name.chars().take(3).collect() } else { name }
    }

    /// What people call a bed, as a heading.
    #[must_use]
    pub fn bed(&self, id: &BedId) -> String {
        self.headed(&Said::Bed(id.clone()))
    }

    /// Figures in the digits of the message.
    #[must_use]
    pub fn digits(&self, text: &str) -> String {
        digits_of(text, self.manner)
    }

    #[must_use]
    pub const fn language(&self) -> Language {
        self.manner.language
    }
}

fn large_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
