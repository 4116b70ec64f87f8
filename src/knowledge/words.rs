//! The words for units and days, in three ways of writing.

use super::lexicon::{Lexicon, Listed};
use crate::quantity::Unit;
use crate::script::Text;
use chrono::Weekday;
use rustc_hash::FxHashMap;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use thiserror::Error;

/// Words for units and for days, from `knowledge/words/units.toml` and `knowledge/words/days.toml`.
#[derive(Debug, Clone, Default)]
pub struct Words {
    pub units: Lexicon<Unit>,
    pub days: Lexicon<DayWord>,
    pub spans: Lexicon<TimeUnit>,
    pub parts_of_day: Lexicon<PartOfDay>,
    /// Days of a month in words, 1 to 31.
    pub ordinals: Lexicon<u32>,
    signs: FxHashMap<Sign, Lexicon<()>>,
    to_come_endings: Vec<String>,
    done_endings: Vec<String>,
}

/// What a word for a day names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayWord {
    /// Days after today; negative before.
    Relative(i64),
    /// So many days before or after today; the tense decides.
    Either(i64),
    Weekday(Weekday),
    /// A short name with other meanings (`sun`), which counts after a word like `on` only.
    ShortWeekday(Weekday),
    /// 1 to 12.
    Month(u32),
}

/// A part of a day, on the clock of the site, h.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct PartOfDay {
    /// Before this hour one does not speak of it as gone by.
    pub from_h: f64,
    /// The hour that counts for work done in it.
    pub counts_h: f64,
}

/// A unit of time that people count in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TimeUnit {
    Minute,
    Hour,
    Day,
    Week,
    Month,
    Year,
}

macro_rules! signs {
    ($($name:ident = $key:literal),* $(,)?) => {
        /// What the other words of the two files tell; the files say how each is used.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Sign { $($name),* }

        impl Sign {
            const ALL: &[(Self, &str)] = &[$((Self::$name, $key)),*];
        }
    };
}

signs! {
    Celsius = "celsius", Heat = "heat", Fahrenheit = "fahrenheit", Times = "times", Between = "between",
    Length = "length", Width = "width", Depth = "depth", Diameter = "diameter", Round = "round",
    Filler = "filler", Thing = "things", Label = "labels", Storey = "storeys", NotInch = "not-inch",
    Ago = "ago", Later = "later", Within = "within", Repeating = "repeating", Last = "last", Next = "next",
    This = "this", Weekend = "weekend", On = "on", OfMonth = "of-month", Marked = "marked", Through = "through",
    NotMonth = "not-month", Done = "done", ToCome = "to-come",
    Bounds = "bounds", BoundAfter = "bound-after", Pending = "pending",
}

const TO_COME_ENDINGS: &str = "to-come-endings";
const DONE_ENDINGS: &str = "done-endings";

/// Words shorter than this have their ending by chance.
const SHORTEST_WITH_ENDING: usize = 5;

/// A words file that cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum NotWords {
    #[error("words/{file}.toml: {why}")]
    Toml { file: &'static str, why: String },
    #[error("words/units.toml: unit \"{0}\" is not known")]
    UnknownUnit(String),
    #[error("words/days.toml: there is no {what} number {number}")]
    UnknownNumber { what: &'static str, number: u32 },
    #[error("words/{file}.toml: heading \"{heading}\" is not known")]
    UnknownHeading { file: &'static str, heading: String },
    #[error("words: heading \"{0}\" is missing")]
    Missing(&'static str),
}

#[derive(Deserialize)]
struct UnitsFile {
    units: Vec<UnitEntry>,
    #[serde(flatten)]
    signs: BTreeMap<String, Listed>,
}

#[derive(Deserialize)]
struct UnitEntry {
    symbol: String,
    #[serde(flatten)]
    words: Listed,
}

#[derive(Deserialize)]
struct DaysFile {
    relative: Vec<Offset>,
    either: Vec<Offset>,
    weekdays: Vec<Numbered>,
    months: Vec<Numbered>,
    ordinals: Vec<Numbered>,
    spans: Vec<SpanEntry>,
    #[serde(rename = "parts-of-day")]
    parts_of_day: Vec<PartEntry>,
    #[serde(flatten)]
    signs: BTreeMap<String, Listed>,
}

#[derive(Deserialize)]
struct Offset {
    days: i64,
    #[serde(flatten)]
    words: Listed,
}

#[derive(Deserialize)]
struct Numbered {
    number: u32,
    #[serde(default, rename = "en-short")]
    short: Vec<String>,
    #[serde(flatten)]
    words: Listed,
}

#[derive(Deserialize)]
struct SpanEntry {
    unit: TimeUnit,
    #[serde(flatten)]
    words: Listed,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
struct PartEntry {
    from_h: f64,
    counts_h: f64,
    #[serde(flatten)]
    words: Listed,
}

impl Words {
    /// Reads the text of the two files.
    ///
    /// # Errors
    /// [`NotWords`] when a text is not TOML of the expected form, names an unknown unit, month,
    /// weekday or heading, or lacks a heading.
    pub fn parse(units: &str, days: &str) -> Result<Self, NotWords> {
        let units: UnitsFile = read("units", units)?;
        let days: DaysFile = read("days", days)?;
        let mut words = Self {
            units: Lexicon::default(),
            days: Lexicon::default(),
            spans: Lexicon::default(),
            parts_of_day: Lexicon::default(),
            ordinals: Lexicon::default(),
            signs: FxHashMap::default(),
            to_come_endings: Vec::new(),
            done_endings: Vec::new(),
        };
        for entry in units.units {
            let unit = Unit::with_symbol(&entry.symbol).ok_or(NotWords::UnknownUnit(entry.symbol))?;
            words.units.add(&entry.words, unit);
        }
        for entry in days.relative {
            words.days.add(&entry.words, DayWord::Relative(entry.days));
        }
        for entry in days.either {
            words.days.add(&entry.words, DayWord::Either(entry.days));
        }
        for entry in days.weekdays {
            let weekday = weekday(entry.number)?;
            words.days.add(&entry.words, DayWord::Weekday(weekday));
            for short in &entry.short {
                words.days.add_phrase(short, DayWord::ShortWeekday(weekday));
            }
        }
        for entry in days.months {
            if !(1..=12).contains(&entry.number) {
                return Err(NotWords::UnknownNumber { what: "month", number: entry.number });
            }
            words.days.add(&entry.words, DayWord::Month(entry.number));
        }
        for entry in days.ordinals {
            if !(1..=31).contains(&entry.number) {
                return Err(NotWords::UnknownNumber { what: "day of a month", number: entry.number });
            }
            words.ordinals.add(&entry.words, entry.number);
        }
        for entry in days.spans {
            words.spans.add(&entry.words, entry.unit);
        }
        for entry in days.parts_of_day {
            words.parts_of_day.add(&entry.words, PartOfDay { from_h: entry.from_h, counts_h: entry.counts_h });
        }
        words.add_signs("units", units.signs)?;
        words.add_signs("days", days.signs)?;
        match Sign::ALL.iter().find(|(sign, _)| !words.signs.contains_key(sign)) {
            Some((_, heading)) => Err(NotWords::Missing(heading)),
            None => Ok(words),
        }
    }

    fn add_signs(&mut self, file: &'static str, signs: BTreeMap<String, Listed>) -> Result<(), NotWords> {
        for (heading, listed) in signs {
            let endings = match heading.as_str() {
                TO_COME_ENDINGS => Some(&mut self.to_come_endings),
                DONE_ENDINGS => Some(&mut self.done_endings),
                _ => None,
            };
            if let Some(endings) = endings {
                let all = listed.en.iter().chain(&listed.hi).chain(&listed.hi_latn);
                endings.extend(all.flat_map(|ending| Text::read(ending).tokens).map(|token| token.normal));
                continue;
            }
            let Some((sign, _)) = Sign::ALL.iter().find(|(_, key)| *key == heading) else {
                return Err(NotWords::UnknownHeading { file, heading });
            };
            self.signs.entry(*sign).or_default().add(&listed, ());
        }
        Ok(())
    }

    /// How many tokens a word of this sign takes there; `None` when there is none.
    #[must_use]
    pub fn sign(&self, sign: Sign, text: &Text, token: usize) -> Option<usize> {
        self.signs.get(&sign)?.length_at(text, token)
    }

    /// Whether the word there tells what is to come, by itself or by its ending.
    #[must_use]
    pub fn is_to_come(&self, text: &Text, token: usize) -> bool {
        self.sign(Sign::ToCome, text, token).is_some() || ends_in(text.normal(token), &self.to_come_endings)
    }

    /// Whether the word there tells what is done, by itself or by its ending.
    #[must_use]
    pub fn is_done(&self, text: &Text, token: usize) -> bool {
        // What is planned has the ending of what was done, and is to come.
        const AHEAD: [&str; 5] = ["planned", "scheduled", "booked", "expected", "intended"];
        // "Today" sounds as "toda", picked.
        let day = self.days.at(text, token).is_some();
        let word = text.normal(token);
        let ending = !word.ends_with("eed") && ends_in(word, &self.done_endings);
        // "We're off from 23 May" is no "were".
        let short = text.tokens.get(token).is_some_and(|token| token.text.contains(['\'', '’']) && word == "were");
        !AHEAD.contains(&word) && !short && (!day && self.sign(Sign::Done, text, token).is_some() || ending)
    }
}

fn ends_in(word: &str, endings: &[String]) -> bool {
    word.chars().count() >= SHORTEST_WITH_ENDING && endings.iter().any(|ending| word.ends_with(ending.as_str()))
}

fn read<T: DeserializeOwned>(file: &'static str, text: &str) -> Result<T, NotWords> {
    toml::from_str(text).map_err(|refusal| NotWords::Toml { file, why: refusal.to_string() })
}

/// The weekday with this number, Monday being 1.
fn weekday(number: u32) -> Result<Weekday, NotWords> {
    u8::try_from(number)
        .ok()
        .and_then(|number| number.checked_sub(1))
        .and_then(|number| Weekday::try_from(number).ok())
        .ok_or(NotWords::UnknownNumber { what: "weekday", number })
}

#[cfg(test)]
mod tests {
    use super::*;

    const UNITS: &str = include_str!("../../knowledge/words/units.toml");
    const DAYS: &str = include_str!("../../knowledge/words/days.toml");

    #[test]
    fn the_files_are_read() {
        let words = Words::parse(UNITS, DAYS).unwrap();
        assert_eq!(words.units.at(&Text::read("sq. ft."), 0), Some((Unit::SquareFoot, 3)));
        assert_eq!(words.units.at(&Text::read("m2"), 0), Some((Unit::SquareMetre, 2)));
        assert_eq!(words.units.at(&Text::read("ft2in"), 0), Some((Unit::Foot, 1)));
        assert_eq!(words.days.at(&Text::read("shanivaar"), 0), Some((DayWord::Weekday(Weekday::Sat), 1)));
        assert!(words.is_to_come(&Text::read("karungi"), 0));
    }

    #[test]
    fn refusals_name_the_place() {
        let wrong = UNITS.replace("symbol = \"ft\"", "symbol = \"ell\"");
        let refusal = Words::parse(&wrong, DAYS).unwrap_err().to_string();
        assert_eq!(refusal, "words/units.toml: unit \"ell\" is not known");
        let refusal = Words::parse(UNITS, &DAYS.replace("[ago]", "[agoo]")).unwrap_err().to_string();
        assert_eq!(refusal, "words/days.toml: heading \"agoo\" is not known");
        assert!(Words::parse("", DAYS).unwrap_err().to_string().starts_with("words/units.toml: "));
    }
}
