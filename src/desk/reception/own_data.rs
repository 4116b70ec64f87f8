//! What is kept about a person: shown, sent as a file, forgotten.

use super::alerts::Alerted;
use super::button::{Button, Does};
use super::card::Card;
use super::crew::Asked;
use super::invite::Invite;
use super::letter::{Content, Follow, Letter, Sent};
use super::reminder::{Digested, Reminded};
use super::turn::Turn;
use super::undo::Told;
use crate::garden::{
    Change, Garden, Kind, Move, Person, Question, Record, Role, SiteId, Slip, Store, StoreError, write_garden,
};
use serde_json::json;

impl Turn<'_> {
    /// Whoever is linked, else a word to the stranger.
    fn someone(&mut self) -> Option<(Person, Card)> {
        let both = self.person.clone().zip(self.card.clone());
        if both.is_none() {
            self.say("bot-not-linked", &[]);
        }
        both
    }

    /// "Show what you keep about me."
    pub fn show_kept(&mut self) -> Result<(), StoreError> {
        let asked = self.questions_from_here()?.len();
        if self.person.is_none() && asked > 0 {
            let count = self.phrase("bot-keep-questions", &[("count", &asked.to_string())]);
            let text = format!("{}\n{count}", self.phrase("bot-keep-title", &[]));
            self.text_out(&text, Vec::new(), None);
            return Ok(());
        }
        let Some((person, card)) = self.someone() else { return Ok(()) };
        let role = self.role(self.language, person.role);
        let sites: Vec<String> = person.sites.iter().map(SiteId::to_string).collect();
        let day = card.since.with_timezone(self.now.offset()).format("%Y-%m-%d").to_string();
        let questions = self.questions_of(&person)?.len();
        let sent = Sent::beginning(self.sheet, &format!("{}|", card.chat))?.len();
        let records = self.garden_of(&person)?;
        let records = records.jobs.len() + records.seen.len();
        let id = person.id.as_str();
        let mut lines = vec![
            self.phrase("bot-keep-title", &[]),
            self.phrase("bot-keep-person", &[("name", &person.name), ("role", &role), ("id", id)]),
        ];
        if !sites.is_empty() {
            lines.push(self.phrase("bot-keep-sites", &[("sites", &sites.join(", "))]));
        }
        lines.push(self.phrase("bot-keep-language", &[("language", self.language.tag())]));
        lines.push(self.phrase("bot-keep-chat", &[("day", &day)]));
        if self.sheet.conversation(&person.id)?.is_some() {
            lines.push(self.phrase("bot-keep-conversation", &[]));
        }
        let reminders = Reminded::of_chat(self.sheet, card.chat)?.len();
        for (key, count) in [
            ("bot-keep-questions", questions),
            ("bot-keep-answers", sent),
            ("bot-keep-reminders", reminders),
            ("bot-keep-records", records),
        ] {
            if count > 0 {
                lines.push(self.phrase(key, &[("count", &count.to_string())]));
            }
        }
        let visits = super::traces::visits_by(self.sheet, &person.id)?.len();
        if visits > 0 {
            lines.push(self.phrase("bot-keep-visits", &[("count", &visits.to_string())]));
        }
        lines.push(self.phrase("bot-keep-how", &[]));
        self.text_out(&lines.join("\n"), Vec::new(), None);
        Ok(())
    }

    /// The same as files: the garden as a garden file, the rest as JSON.
    pub fn export(&mut self) -> Result<(), StoreError> {
        let Some((person, card)) = self.someone() else { return Ok(()) };
        let garden = self.garden_of(&person)?;
        let questions = self.questions_of(&person)?;
        let conversation = self.sheet.conversation(&person.id)?;
        let sent = Sent::beginning(self.sheet, &format!("{}|", card.chat))?;
        let visits = super::traces::visits_by(self.sheet, &person.id)?;
        let reminders = Reminded::beginning(self.sheet, &format!("{}|", card.chat))?;
        let moves = self.sheet.records(Kind::Move, "")?.into_iter().filter_map(Record::moved);
        let moves: Vec<Move> = moves.filter(|moved| moved.by.as_ref() == Some(&person.id)).collect();
        let rest = json!({
            "person": person, "chat": card, "conversation": conversation, "questions": questions, "answers": sent,
            "visits": visits, "reminders": reminders, "moves": moves,
        });
        let rest = serde_json::to_string_pretty(&rest).map_err(|fault| StoreError::Failed(fault.to_string()))?;
        let chat = self.arrival.chat;
        self.write(chat, Content::File { name: "garden.toml".to_owned(), text: write_garden(&garden) }, None);
        self.write(chat, Content::File { name: "about-me.json".to_owned(), text: rest }, None);
        Ok(())
    }

    /// "Forget me": asked once more. A stranger left at most a question behind, and needs no second thought.
    pub fn ask_to_forget(&mut self) -> Result<(), StoreError> {
        let asked = self.questions_from_here()?;
        if self.person.is_none() && !asked.is_empty() {
            self.remove_traces(Some(self.arrival.chat), asked)?;
            self.say("bot-forgotten", &[]);
            return Ok(());
        }
        if self.someone().is_none() {
            return Ok(());
        }
        let (yes, no) = (self.phrase("bot-button-yes", &[]), self.phrase("bot-button-no", &[]));
        let buttons = vec![self.button(&yes, Does::Forget)?, self.button(&no, Does::Leave)?];
        let question = self.phrase("bot-forget-ask", &[]);
        self.text_out(&question, buttons, None);
        Ok(())
    }

    /// The button under it was pressed.
    pub fn forget(&mut self) -> Result<(), StoreError> {
        let Some((person, _)) = self.someone() else { return Ok(()) };
        self.remove_all_of(&person)?;
        self.say("bot-forgotten", &[]);
        self.write(self.arrival.chat, Content::Menu { commands: Vec::new() }, None);
        (self.person, self.card) = (None, None);
        Ok(())
    }

    /// Takes away all that names a person or carries their words.
    pub fn remove_all_of(&mut self, person: &Person) -> Result<(), StoreError> {
        let store = self.sheet;
        let mut changes = vec![Change::remove(person.clone())];
        // What this person moved stays moved, without the name.
        for moved in store.records(Kind::Move, "")?.into_iter().filter_map(Record::moved) {
            if moved.by.as_ref() == Some(&person.id) {
                changes.push(Change::put(Move { by: None, ..moved }));
            }
        }
        changes.extend(store.conversation(&person.id)?.map(Change::remove));
        changes.extend(super::traces::of_person(store, &person.id)?);
        for invite in Invite::all(store)?.iter().filter(|invite| invite.person.as_ref() == Some(&person.id)) {
            changes.push(invite.taken_away()?);
        }
        let card = Card::of_person(store, &person.id)?;
        let (chat, questions) = (card.as_ref().map(|card| card.chat), self.questions_of(person)?);
        if let Some(card) = card {
            changes.push(card.taken_away()?);
        }
        store.write(changes)?;
        self.remove_traces(chat, questions)
    }

    /// Takes away these questions and all that belongs to them or to a chat.
    fn remove_traces(&mut self, chat: Option<i64>, questions: Vec<Question>) -> Result<(), StoreError> {
        let store = self.sheet;
        let mut changes = Vec::new();
        let of_theirs = |follow: &Follow| matches!(follow, Follow::Question(id) if questions.iter().any(|question| question.id == *id));
        for sent in Sent::all(store)?.iter().filter(|sent| Some(sent.chat) == chat || of_theirs(&sent.follow)) {
            changes.push(sent.taken_away()?);
        }
        for letter in Letter::all(store)? {
            if Some(letter.chat) == chat || letter.follow.as_ref().is_some_and(of_theirs) {
                changes.push(letter.taken_away()?);
            }
        }
        for asked in Asked::all(store)? {
            if Some(asked.chat) == chat || questions.iter().any(|question| question.id == asked.question) {
                changes.push(asked.taken_away()?);
            }
        }
        for button in Button::all(store)?.iter().filter(|button| Some(button.chat) == chat) {
            changes.push(button.taken_away()?);
        }
        for reminded in Reminded::all(store)?.iter().filter(|reminded| Some(reminded.chat) == chat) {
            changes.push(reminded.taken_away()?);
        }
        for digested in Digested::all(store)?.iter().filter(|digested| digested.is_of(chat)) {
            changes.push(digested.taken_away()?);
        }
        for told in Told::all(store)?.iter().filter(|told| told.is_of(chat)) {
            changes.push(told.taken_away()?);
        }
        for alerted in Alerted::all(store)?.iter().filter(|alerted| alerted.is_of(chat)) {
            changes.push(alerted.taken_away()?);
        }
        changes.extend(super::traces::of_the_crews_work(store, chat)?);
        changes.extend(questions.into_iter().map(Change::remove));
        store.write(changes)
    }

    /// The questions that came from this chat and wait.
    fn questions_from_here(&self) -> Result<Vec<Question>, StoreError> {
        let asked = Asked::all(self.sheet)?;
        let mut questions = self.sheet.questions()?;
        let here = |question: &Question| {
            asked.iter().any(|asked| asked.chat == self.arrival.chat && asked.question == question.id)
        };
        questions.retain(|question| here(question));
        Ok(questions)
    }

    fn questions_of(&self, person: &Person) -> Result<Vec<Question>, StoreError> {
        let mut questions = self.sheet.questions()?;
        questions.retain(|question| question.person.as_ref() == Some(&person.id));
        Ok(questions)
    }

    /// The garden as this person may see it; an owner's own export holds no other person.
    fn garden_of(&self, person: &Person) -> Result<Garden, StoreError> {
        let mut garden = Garden { people: vec![person.clone()], ..Garden::default() };
        for site in self.sheet.sites()? {
            // An owner's roofs are the crew's, not about the owner: `rooftend export` has them.
            if person.role == Role::Owner || !person.sites.contains(&site.id) {
                continue;
            }
            for bed in self.sheet.beds_of_site(&site.id)? {
                garden.plantings.extend(self.sheet.plantings_of_bed(&bed.id)?);
                garden.jobs.extend(self.sheet.jobs_of_bed(&bed.id)?);
                garden.seen.extend(self.sheet.seen_of_bed(&bed.id)?);
                // Who else of the crew moved a job is not about this person.
                let moves = self.sheet.moves_of_bed(&bed.id)?.into_iter();
                garden.moves.extend(moves.map(|moved| Move { by: moved.by.filter(|by| *by == person.id), ..moved }));
                garden.beds.push(bed);
            }
            garden.sites.push(site);
        }
        Ok(garden)
    }
}
