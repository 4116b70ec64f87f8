//! A message for the desk, and its reply as letters.

use super::button::Does;
use super::letter::{Content, Follow};
use super::turn::{Turn, language_of};
use super::undo::Told;
use crate::answering::Outcome;
use crate::desk::talk::{Desk, Message};
use crate::garden::{Change, Question, Record, Slip, Store, StoreError};
use crate::script::Language;
use crate::wording::Reply;
use chrono::{TimeDelta, Utc};

/// What a stranger said is remembered for so long.
const REMEMBERED: TimeDelta = TimeDelta::hours(1);
/// So many strangers are remembered at once.
const STRANGERS: usize = 500;
/// A button's text, in letters.
const LABEL: usize = 60;

impl Turn<'_> {
    /// Hands a text to the desk and writes down what it answers.
    pub fn converse(&mut self, text: &str) -> Result<(), StoreError> {
        if self.arrival.edited {
            self.take_back()?;
        }
        let at = self.moment();
        self.memory.strangers.retain(|_, (_, said)| at - *said <= REMEMBERED);
        let before = self.memory.strangers.get(&self.arrival.chat).map(|(reading, _)| reading.clone());
        let desk = Desk::new(self.house, self.sheet, self.forecast)
            .recalling(before)
            .speaking(self.person.as_ref().and_then(|person| person.speaks).is_some().then_some(self.language));
        let from = self.person.as_ref().map(|person| person.id.clone());
        let known: Vec<Change> = self.sheet.changes();
        let message = Message { from, text: text.to_owned(), now: at.with_timezone(self.now.offset()) };
        let reply = desk.answer(&message)?;
        let recalled = desk.recalled();
        let strangers = &mut self.memory.strangers;
        let room = strangers.len() < STRANGERS || strangers.contains_key(&self.arrival.chat);
        if let Some(reading) = recalled.filter(|_| self.person.is_none() && room) {
            strangers.insert(self.arrival.chat, (reading, at));
        }
        self.speaks(&reply)?;
        let mut new: Vec<Change> = self.sheet.changes().into_iter().filter(|change| !known.contains(change)).collect();
        if !self.holds_bed(&mut new)? {
            self.reply_out(&reply)?;
        }
        let told = Told::of(self.arrival, self.now.with_timezone(&Utc), self.store, &new)?;
        if let Some(told) = told {
            self.sheet.write(vec![told.put()?])?;
        }
        self.note_moves(&new)?;
        for change in new {
            if let Change::Put(Record::Question(question)) = change {
                self.hand_over(&question, None)?;
            }
        }
        Ok(())
    }

    /// The chat goes on in the language of its last message.
    fn speaks(&mut self, reply: &Reply) -> Result<(), StoreError> {
        let language = [Language::En, Language::Hi, Language::HiLatn]
            .into_iter()
            .find(|language| language.tag() == reply.reading.language)
            .unwrap_or(self.language);
        if let Some(card) = &mut self.card {
            if card.language != language {
                card.language = language;
                self.sheet.write(vec![card.put()?])?;
            }
            self.language = language_of(self.person.as_ref(), card);
        } else {
            self.language = language;
        }
        Ok(())
    }

    fn reply_out(&mut self, reply: &Reply) -> Result<(), StoreError> {
        if self.arrival.group {
            // What would have to be known of a person is asked where nobody reads along.
            let alone = self.phrase("bot-group-alone", &[]);
            let asked = reply.outcome == Outcome::AskedBack;
            let text = if asked { format!("{}\n{alone}", reply.text) } else { reply.text.clone() };
            self.text_out(&text, Vec::new(), None);
            return Ok(());
        }
        let state = self.state()?;
        let mut buttons = Vec::new();
        for choice in &reply.choices {
            let does = Does::Say { text: choice.clone(), after: state.clone() };
            buttons.push(self.button(&short(choice), does)?);
        }
        let working = reply.working.join("\n");
        // Where the working was what was asked for, it stands in the text already.
        if reply.outcome == Outcome::Answered && !working.is_empty() && !reply.text.starts_with(&working) {
            let label = self.phrase("bot-button-why", &[]);
            let cautions = reply.cautions.join("\n");
            let does = Does::Show(format!("{working}\n{cautions}").trim_end().to_owned());
            buttons.push(self.button(&label, does)?);
        }
        buttons.extend(self.picture_button(reply, state.as_ref())?);
        self.text_out(&reply.text, buttons, state.map(Follow::Said));
        Ok(())
    }

    /// The conversation as it stands now.
    fn state(&self) -> Result<Option<serde_json::Value>, StoreError> {
        match &self.person {
            Some(person) => Ok(self.sheet.conversation(&person.id)?.map(|conversation| conversation.state)),
            // Nothing of a stranger is stored.
            None => Ok(None),
        }
    }

    /// A picture or a voice: a person of the crew looks at it.
    pub fn media(&mut self, caption: &str, album: Option<&str>) -> Result<(), StoreError> {
        if self.more_of_album(album, caption)? {
            return Ok(());
        }
        let Some(person) = self.asker()? else {
            self.say("bot-media-stranger", &[]);
            return Ok(());
        };
        let who = Some(person.id.clone());
        let text = if caption.is_empty() { format!("({})", self.arrival.message) } else { caption.to_owned() };
        let said = self.phrase("bot-media-passed", &[]);
        let question = Question::asked(who, self.now.with_timezone(&Utc), &text, Some(said.clone()));
        let question = question.map_err(|fault| StoreError::Failed(fault.to_string()))?;
        self.sheet.write(vec![Change::put(question.clone())])?;
        self.album_asks(album, &question)?;
        self.text_out(&said, Vec::new(), None);
        let copy = Content::Copy { from_chat: self.arrival.chat, message: self.arrival.message };
        self.hand_over(&question, Some((copy, caption)))
    }
}

fn short(text: &str) -> String {
    if text.chars().count() <= LABEL {
        return text.to_owned();
    }
    text.chars().take(LABEL - 1).chain(['…']).collect()
}
