//! Pictures: the drawing of an answer, sent as a PNG file with words below it.
//!
//! The seam: whoever builds the parts hands the drawing in ([`super::Reception::set_drawing`]); without it nothing is
//! offered. It gets an answer and a language and gives a PNG file, or nothing where there is nothing to draw.

use super::button::Does;
use super::letter::{Content, Follow, Label};
use super::turn::Turn;
use crate::answering::{Answer, Outcome, answer};
use crate::desk::fetch::seen;
use crate::garden::StoreError;
use crate::knowledge::Kind;
use crate::script::Language;
use crate::understanding::Reading;
use crate::wording::{Manner, Reply, reply};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use serde_json::Value;

/// Draws an answer in a language.
pub type Drawing = dyn Fn(&Answer, Language) -> Option<Vec<u8>> + Send + Sync;

/// The kinds of answer that may be drawn.
const DRAWN: [Kind; 2] = [Kind::Water, Kind::Space];
/// The longest caption, in UTF-16 units (Bot API, sendPhoto).
const LONGEST_CAPTION: usize = 1024;
/// The largest file, in bytes: what is larger is no drawing of ours.
const LARGEST: usize = 2_000_000;

/// The bytes of a PNG file; in the store they are written as hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Png(pub Vec<u8>);

impl Serialize for Png {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let digit = |half: u8| char::from_digit(u32::from(half), 16).unwrap_or('0');
        let text: String = self.0.iter().flat_map(|byte| [digit(byte >> 4), digit(byte & 15)]).collect();
        serializer.serialize_str(&text)
    }
}

impl<'de> Deserialize<'de> for Png {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let value = |letter: u8| char::from(letter).to_digit(16).and_then(|digit| u8::try_from(digit).ok());
        let byte = |pair: &[u8]| match pair {
            [high, low] => Some(value(*high)? << 4 | value(*low)?),
            _ => None,
        };
        let bytes: Option<Vec<u8>> = text.as_bytes().chunks(2).map(byte).collect();
        bytes.map(Self).ok_or_else(|| serde::de::Error::custom("hexadecimal digits, two a byte, expected"))
    }
}

impl Turn<'_> {
    /// The button "picture" under an answer that may be drawn.
    pub fn picture_button(&mut self, reply: &Reply, state: Option<&Value>) -> Result<Option<Label>, StoreError> {
        let of_a_year = reply.figures.iter().any(|figure| figure.name == "months");
        let drawn = reply.outcome == Outcome::Answered && (DRAWN.contains(&reply.reading.kind) || of_a_year);
        let Some(state) = state.filter(|_| drawn && self.drawing.is_some()) else { return Ok(None) };
        let label = self.phrase("bot-button-picture", &[]);
        self.button(&label, Does::Picture { state: state.clone() }).map(Some)
    }

    /// The button was pressed: the answer is worked out again and drawn.
    pub fn picture(&mut self, state: Value) -> Result<(), StoreError> {
        let reading: Option<Reading> = serde_json::from_value(state.clone()).ok();
        let (Some(reading), Some(draw)) = (reading, self.drawing.clone()) else {
            self.say("bot-no-picture", &[]);
            return Ok(());
        };
        let seen = seen(self.house, self.sheet, self.handed(), self.person.clone(), self.here())?;
        let facts = seen.facts(self.house, self.handed().any(), &reading);
        let answer = answer(&reading, &facts);
        let png = draw(&answer, self.language).filter(|png| png.len() <= LARGEST);
        let Some(png) = png else {
            self.say("bot-no-picture", &[]);
            return Ok(());
        };
        let manner =
            Manner { language: self.language, devanagari_digits: reading.devanagari_digits, why: false, short: false };
        let text = reply(&answer, &self.house.known, self.house.phrases(self.language), manner).text;
        self.picture_out(png, &text, Vec::new(), Some(Follow::Said(state)));
        Ok(())
    }

    /// A picture with words and buttons below it; words that are too long for a caption follow as a message.
    pub fn picture_out(&mut self, png: Vec<u8>, text: &str, buttons: Vec<Label>, follow: Option<Follow>) {
        let reply_to = self.arrival.group.then_some(self.arrival.message);
        let fits = text.encode_utf16().count() <= LONGEST_CAPTION;
        let (caption, under) = if fits { (text.trim().to_owned(), buttons) } else { (String::new(), Vec::new()) };
        let picture = Content::Picture { png: Png(png), caption, buttons: under.clone(), reply_to };
        if fits {
            self.write(self.arrival.chat, picture, follow);
        } else {
            self.write(self.arrival.chat, picture, None);
            self.text_out(text, under, follow);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_come_back_as_they_were() {
        let png = Png((0..=255).collect());
        let text = serde_json::to_string(&png).unwrap();
        assert!(text.starts_with("\"000102") && text.ends_with("feff\""), "{text}");
        assert_eq!(serde_json::from_str::<Png>(&text).unwrap(), png);
        for odd in ["\"0\"", "\"0g\"", "\"+1\"", "5"] {
            assert!(serde_json::from_str::<Png>(odd).is_err(), "{odd}");
        }
    }
}
