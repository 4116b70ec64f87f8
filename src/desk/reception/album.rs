//! Several photos sent together: one question, however many there are.

use super::crew::Asked;
use super::letter::{Content, Follow};
use super::turn::{Turn, language_of};
use crate::garden::{Change, Kind, Question, QuestionId, Record, Slip, Store, StoreError};
use crate::wording::filled;
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// The question that the photos of an album belong to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Album {
    pub chat: i64,
    /// The platform's name for it.
    pub album: String,
    pub question: QuestionId,
    pub at: DateTime<Utc>,
}

impl Slip for Album {
    const DRAWER: &'static str = "albums";
    fn key(&self) -> String {
        key(self.chat, &self.album)
    }
}

fn key(chat: i64, album: &str) -> String {
    format!("{chat}|{album}")
}

impl Album {
    /// Its photos come within seconds of each other; after a day nobody waits for one.
    pub const KEPT: TimeDelta = TimeDelta::days(1);
}

impl Turn<'_> {
    /// Notes which question the first photo of an album became.
    pub fn album_asks(&mut self, album: Option<&str>, question: &Question) -> Result<(), StoreError> {
        let Some(album) = album else { return Ok(()) };
        let (chat, at) = (self.arrival.chat, self.now.with_timezone(&Utc));
        let slip = Album { chat, album: album.to_owned(), question: question.id.clone(), at };
        self.sheet.write(vec![slip.put()?])
    }

    /// A further photo of an album goes to those who have its question; whether it was one. Its caption joins the question.
    pub fn more_of_album(&mut self, album: Option<&str>, caption: &str) -> Result<bool, StoreError> {
        let Some(album) = album else { return Ok(false) };
        let Some(known) = Album::find(self.sheet, &key(self.arrival.chat, album))? else { return Ok(false) };
        let Some(question) = self.question(&known.question)? else { return Ok(true) };
        self.put_to_crew(&question, true, caption)?;
        Ok(true)
    }

    /// The caption of a photo that was passed on has been put right: the crew is told the new words.
    pub fn caption_edited(&mut self, caption: &str) -> Result<(), StoreError> {
        let here = |asked: &Asked| asked.chat == self.arrival.chat && asked.message == self.arrival.message;
        let asked = Asked::all(self.sheet)?.into_iter().find(here);
        let question = match asked {
            Some(asked) => self.question(&asked.question)?,
            None => None,
        };
        match question {
            Some(question) if !caption.is_empty() && question.text != caption => {
                self.put_to_crew(&question, false, caption)
            }
            _ => Ok(()),
        }
    }

    fn question(&self, id: &QuestionId) -> Result<Option<Question>, StoreError> {
        Ok(self.sheet.record(Kind::Question, id.as_str())?.and_then(Record::question))
    }

    /// What belongs to a question that waits: the photo of this turn, words that are new.
    fn put_to_crew(&mut self, question: &Question, photo: bool, caption: &str) -> Result<(), StoreError> {
        let asker = self.asker()?;
        let sites = asker.as_ref().map(|asker| asker.sites.clone()).unwrap_or_default();
        for (card, person) in self.crew(&sites)? {
            if question.person.as_ref() == Some(&person.id) {
                continue;
            }
            let follow = || Some(Follow::Question(question.id.clone()));
            if photo {
                let copy = Content::Copy { from_chat: self.arrival.chat, message: self.arrival.message };
                self.write(card.chat, copy, follow());
            }
            if !caption.is_empty() {
                let language = language_of(Some(&person), &card);
                let values = [("name", self.name_of(asker.as_ref(), language)), ("text", caption.to_owned())];
                let values = values.each_ref().map(|(name, value)| (*name, value.as_str()));
                let told = filled(self.house.phrases(language), "bot-question-media", &values);
                self.text_to(card.chat, &told, Vec::new(), None, follow());
            }
        }
        if !caption.is_empty() {
            let question = Question { text: caption.to_owned(), ..question.clone() };
            self.sheet.write(vec![Change::put(question)])?;
        }
        Ok(())
    }
}
