//! One arrival's turn: who it is, and where it is dealt with.

use super::Memory;
use super::arrival::{Arrival, What};
use super::button::{Button, Does, token};
use super::card::Card;
use super::letter::{Content, Follow, Label, Letter, Sent, State, pieces};
use super::picture::Drawing;
use super::visits::Welcome;
use crate::desk::house::House;
use crate::desk::sky::Handed;
use crate::garden::{Change, Conversation, Overlay, Person, Slip, Speaks, Store, StoreError};
use crate::script::Language;
use crate::weather::Forecast;
use crate::wording::filled;
use chrono::{DateTime, FixedOffset, Utc};
use std::sync::Arc;

/// All that one arrival is dealt with by; what it changes goes to the sheet and to the letters.
pub struct Turn<'t> {
    pub house: &'t House,
    /// The store as it was.
    pub store: &'t dyn Store,
    /// The store as it will be.
    pub sheet: &'t Overlay<'t>,
    pub forecast: Option<&'t Forecast>,
    pub memory: &'t mut Memory,
    pub arrival: &'t Arrival,
    pub now: DateTime<FixedOffset>,
    pub card: Option<Card>,
    pub person: Option<Person>,
    pub language: Language,
    pub letters: Vec<Letter>,
    pub drawing: Option<Arc<Drawing>>,
}

impl<'t> Turn<'t> {
    /// The forecast that fixes the weather, where one was set.
    pub fn handed(&self) -> Handed<'t> {
        self.forecast.map_or(Handed::Nothing, Handed::Fixed)
    }

    pub fn begin(
        house: &'t House,
        store: &'t dyn Store,
        sheet: &'t Overlay<'t>,
        forecast: Option<&'t Forecast>,
        memory: &'t mut Memory,
        arrival: &'t Arrival,
        now: DateTime<FixedOffset>,
    ) -> Result<Self, StoreError> {
        // In a group nobody is known: what a bed holds is not for all who read along.
        let card = if arrival.group { None } else { Card::of_chat(store, arrival.chat)? };
        let person = match &card {
            Some(card) => store.person(&card.person)?,
            None => None,
        };
        let app = if arrival.language.as_deref().is_some_and(|tag| tag.starts_with("hi")) {
            Language::Hi
        } else {
            Language::En
        };
        let language = card.as_ref().map_or(app, |card| language_of(person.as_ref(), card));
        let letters = Vec::new();
        let drawing = None;
        Ok(Self { house, store, sheet, forecast, memory, arrival, now, card, person, language, letters, drawing })
    }

    pub fn run(&mut self) -> Result<(), StoreError> {
        match &self.arrival.what {
            What::Left => return self.block(true),
            What::CameBack => return self.block(false),
            What::Other => return Ok(()),
            // Of an album only one photo calls us by name.
            What::Media { caption, album } if !self.arrival.addressed && !self.arrival.edited => {
                return self.more_of_album(album.clone().as_deref(), &caption.clone()).map(|_| ());
            }
            _ if !self.arrival.addressed => return Ok(()),
            // A place that moves: only changed words are read again.
            What::Media { caption, .. } if self.arrival.edited && !self.arrival.group => {
                return self.caption_edited(&caption.clone());
            }
            What::Place { .. } | What::Media { .. } if self.arrival.edited => return Ok(()),
            _ => {}
        }
        if let What::Pressed { query, .. } = &self.arrival.what {
            self.write(self.arrival.chat, Content::Seen { query: query.clone() }, None);
        }
        self.block(false)?;
        if self.person.is_none() {
            let code = matches!(&self.arrival.what, What::Text(text) if text.starts_with("/start "));
            match self.memory.visits.next(self.arrival.chat, code, self.now.with_timezone(&Utc)) {
                Welcome::Answered => {}
                Welcome::Told => {
                    self.say("bot-too-many", &[]);
                    return Ok(());
                }
                Welcome::Silent => return Ok(()),
            }
        }
        if self.arrival.group {
            return self.in_a_group();
        }
        match self.arrival.what.clone() {
            What::Pressed { token, .. } => self.pressed(&token),
            What::Text(text) => match text.strip_prefix('/') {
                Some(command) => self.command(command),
                None => self.text(&text),
            },
            What::Place { latitude_deg, longitude_deg } if self.takes_place((latitude_deg, longitude_deg))? => Ok(()),
            What::Place { latitude_deg, longitude_deg } => self.place(latitude_deg, longitude_deg),
            What::Media { caption, album } => self.media(&caption, album.as_deref()),
            What::Left | What::CameBack | What::Other => Ok(()),
        }
    }

    /// Where others read along only words are answered, and of the commands the one that harms nobody.
    fn in_a_group(&mut self) -> Result<(), StoreError> {
        match self.arrival.what.clone() {
            What::Text(text) if text.starts_with("/help") || text.starts_with("/start") => {
                self.say("bot-help", &[]);
                Ok(())
            }
            What::Text(text) if text.starts_with('/') => {
                self.say("bot-group-alone", &[]);
                Ok(())
            }
            What::Text(text) if self.courtesy(&text) => Ok(()),
            What::Text(text) => self.converse(&text),
            What::Media { caption, album } => self.media(&caption, album.as_deref()),
            _ => Ok(()),
        }
    }

    fn text(&mut self, text: &str) -> Result<(), StoreError> {
        if let Some(number) = self.arrival.reply_to {
            let sent = Sent::find(self.sheet, &Sent::key_of(self.arrival.chat, number))?;
            match sent.map(|sent| sent.follow) {
                Some(Follow::Question(id)) => return self.crew_replies(&id, text),
                Some(Follow::Said(state)) => self.go_back_to(state)?,
                Some(Follow::Reminder(_)) | None => {}
            }
        }
        if self.wishes("bot-words-forget", text) {
            return self.ask_to_forget();
        }
        if self.wishes("bot-words-export", text) {
            return self.export();
        }
        if self.wishes("bot-words-me", text) {
            return self.show_kept();
        }
        if self.wishes("bot-words-help", text) {
            return self.command("help");
        }
        if self.crew_words(text)? || self.takes_words(text)? || !self.arrival.edited && self.courtesy(text) {
            return Ok(());
        }
        self.converse(text)
    }

    fn pressed(&mut self, data: &str) -> Result<(), StoreError> {
        let (token, verb) = Button::parted(data);
        let (chat, from) = (self.arrival.chat, self.arrival.from);
        let button = Button::find(self.sheet, token)?.filter(|button| button.chat == chat && button.owner == from);
        let Some(button) = button.filter(|button| self.now.with_timezone(&Utc) - button.made <= Button::GOOD_FOR)
        else {
            // Pressed twice on the card that is open: the first press was taken.
            if !self.is_open_card()? {
                self.say("bot-button-old", &[]);
            }
            return Ok(());
        };
        // A "why" may be looked at again; most else is done once.
        if !button.stays() {
            self.sheet.write(vec![button.taken_away()?])?;
        }
        match button.does {
            Does::Say { text, after } => {
                if let Some(state) = after {
                    self.go_back_to(state)?;
                }
                self.converse(&text)
            }
            Does::Show(text) => {
                self.text_out(&text, Vec::new(), None);
                Ok(())
            }
            Does::Place { site, latitude_deg, longitude_deg } => self.set_place(&site, latitude_deg, longitude_deg),
            Does::Tasks(tasks) => self.task_pressed(&tasks, verb),
            Does::Days { task, days } => self.day_pressed(&task, &days, verb),
            Does::TakeBack(told) => self.task_taken_back(&told),
            Does::Forget => self.forget(),
            Does::Crew(tap) => self.tapped(tap),
            Does::Picture { state } => self.picture(state),
            Does::Leave => {
                self.say("bot-left-alone", &[]);
                Ok(())
            }
        }
    }

    /// Takes the conversation back to where it stood.
    fn go_back_to(&mut self, state: serde_json::Value) -> Result<(), StoreError> {
        let at = self.moment();
        match &self.person {
            Some(person) => {
                let conversation = Conversation { person: person.id.clone(), at, state };
                self.sheet.write(vec![Change::put(conversation)])
            }
            None => {
                if let Ok(reading) = serde_json::from_value(state) {
                    self.memory.strangers.insert(self.arrival.chat, (reading, at));
                }
                Ok(())
            }
        }
    }

    /// Whether a text is one of a phrase's, in any language, whatever its case and stops.
    pub fn wishes(&self, phrase: &str, text: &str) -> bool {
        let bare = |text: &str| {
            let kept = text.chars().filter(|letter| !matches!(letter, '.' | '?' | '!' | '।' | ',' | '"'));
            kept.collect::<String>().to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
        };
        let said = bare(text);
        [Language::En, Language::Hi, Language::HiLatn].into_iter().any(|language| {
            let all = filled(self.house.phrases(language), phrase, &[]);
            all.split('|').any(|one| bare(one) == said)
        })
    }

    fn block(&mut self, blocked: bool) -> Result<(), StoreError> {
        match &mut self.card {
            Some(card) if card.blocked != blocked => {
                card.blocked = blocked;
                self.sheet.write(vec![card.put()?])
            }
            _ => Ok(()),
        }
    }

    /// A phrase in the language of this chat.
    pub fn phrase(&self, phrase: &str, values: &[(&str, &str)]) -> String {
        filled(self.house.phrases(self.language), phrase, values)
    }

    /// A role in a language.
    pub fn role(&self, language: Language, role: crate::garden::Role) -> String {
        filled(self.house.phrases(language), "bot-role", &[("role", role.word())])
    }

    /// Says a phrase in this chat.
    pub fn say(&mut self, phrase: &str, values: &[(&str, &str)]) {
        let text = self.phrase(phrase, values);
        self.text_out(&text, Vec::new(), None);
    }

    /// Says a text in this chat, in as many pieces as it takes; buttons stand under the last.
    pub fn text_out(&mut self, text: &str, buttons: Vec<Label>, follow: Option<Follow>) {
        let reply_to = self.arrival.group.then_some(self.arrival.message);
        self.text_to(self.arrival.chat, text, buttons, reply_to, follow);
    }

    /// The same to another chat.
    pub fn text_to(
        &mut self,
        chat: i64,
        text: &str,
        buttons: Vec<Label>,
        reply_to: Option<i32>,
        follow: Option<Follow>,
    ) {
        let all = pieces(text);
        let last = all.len().saturating_sub(1);
        let (mut buttons, mut follow) = (Some(buttons), Some(follow));
        for (place, text) in all.into_iter().enumerate() {
            let (own, belongs) = if place == last {
                (buttons.take().unwrap_or_default(), follow.take().flatten())
            } else {
                (Vec::new(), None)
            };
            let reply_to = if place == 0 { reply_to } else { None };
            self.write(chat, Content::Text { text, buttons: own, reply_to }, belongs);
        }
    }

    /// Puts a letter with the others of this turn.
    pub fn write(&mut self, chat: i64, content: Content, follow: Option<Follow>) {
        let id = self.memory.next_letter;
        self.memory.next_letter += 1;
        let now = self.now.with_timezone(&Utc);
        let state = State::Waiting;
        let (until, tells) = (None, Vec::new());
        self.letters.push(Letter {
            id,
            chat,
            content,
            follow,
            written: now,
            not_before: now,
            until,
            attempts: 0,
            state,
            tells,
        });
    }

    /// A button for this chat.
    pub fn button(&mut self, text: &str, does: Does) -> Result<Label, StoreError> {
        let token = token()?;
        let made = self.now.with_timezone(&Utc);
        let (chat, owner) = (self.arrival.chat, self.arrival.from);
        let button = Button { token: token.clone(), chat, owner, made, does };
        self.sheet.write(vec![button.put()?])?;
        Ok(Label { text: text.to_owned(), token, beside: false })
    }
}

/// The language of a person: what they chose, else that of their last message.
pub fn language_of(person: Option<&Person>, card: &Card) -> Language {
    match person.and_then(|person| person.speaks) {
        Some(Speaks::English) => Language::En,
        Some(Speaks::Hindi) => Language::Hi,
        Some(Speaks::RomanisedHindi) => Language::HiLatn,
        None => card.language,
    }
}
