//! Questions handed over: to the crew's chats, and back to the asker under the crew's name.

use super::card::Card;
use super::letter::{Content, Follow};
use super::turn::{Turn, language_of};
use crate::garden::rights::may_answer;
use crate::garden::{Change, Kind, Person, Question, QuestionId, Record, SiteId, Slip, Store, StoreError};
use crate::script::Language;
use crate::wording::filled;
use serde::{Deserialize, Serialize};

/// Where a question came from, so that its answer finds back.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Asked {
    pub question: QuestionId,
    pub chat: i64,
    pub message: i32,
    pub language: Language,
}

impl Slip for Asked {
    const DRAWER: &'static str = "asked";
    fn key(&self) -> String {
        self.question.to_string()
    }
}

impl Turn<'_> {
    /// Tells the crew of a question: the owner, and the gardeners of the asker's sites.
    pub fn hand_over(&mut self, question: &Question, media: Option<(Content, &str)>) -> Result<(), StoreError> {
        let asked = Asked {
            question: question.id.clone(),
            chat: self.arrival.chat,
            message: self.arrival.message,
            language: self.language,
        };
        self.sheet.write(vec![asked.put()?])?;
        let asker = self.asker()?;
        let sites = asker.as_ref().map(|person| person.sites.clone()).unwrap_or_default();
        let question = &self.asked_by(question, asker.as_ref())?;
        for (card, person) in self.crew(&sites)? {
            if question.person.as_ref() == Some(&person.id) {
                continue;
            }
            let phrases = self.house.phrases(language_of(Some(&person), &card));
            let name = self.name_of(asker.as_ref(), language_of(Some(&person), &card));
            let (key, text) = match &media {
                Some((copy, caption)) => {
                    self.write(card.chat, copy.clone(), Some(Follow::Question(question.id.clone())));
                    ("bot-question-media", *caption)
                }
                None => ("bot-question", question.text.as_str()),
            };
            let asks = filled(phrases, key, &[("name", &name), ("text", text)]);
            let how = filled(phrases, "bot-question-how", &[]);
            let follow = Follow::Question(question.id.clone());
            self.text_to(card.chat, &format!("{}\n\n{how}", asks.trim_end()), Vec::new(), None, Some(follow));
        }
        Ok(())
    }

    /// Whoever speaks: in a group, where nobody is known to the others, the account tells who it is to the crew.
    pub fn asker(&self) -> Result<Option<Person>, StoreError> {
        if self.person.is_some() || !self.arrival.group {
            return Ok(self.person.clone());
        }
        // A private chat has the number of its account.
        match Card::of_chat(self.sheet, self.arrival.from)? {
            Some(card) => self.sheet.person(&card.person),
            None => Ok(None),
        }
    }

    /// A question asked in a group is its asker's, so that the gardeners of their roofs may answer it.
    fn asked_by(&mut self, question: &Question, asker: Option<&Person>) -> Result<Question, StoreError> {
        let question = match (&question.person, asker) {
            (None, Some(asker)) => Question { person: Some(asker.id.clone()), ..question.clone() },
            _ => question.clone(),
        };
        if self.arrival.group {
            self.sheet.write(vec![Change::put(question.clone())])?;
        }
        Ok(question)
    }

    /// A reply to a question's letter goes to whoever asked.
    pub fn crew_replies(&mut self, id: &QuestionId, text: &str) -> Result<(), StoreError> {
        let question = self.sheet.record(Kind::Question, id.as_str())?.and_then(Record::question);
        let asked = Asked::find(self.sheet, id.as_str())?;
        let (Some(question), Some(asked)) = (question, asked) else {
            self.say("bot-question-gone", &[]);
            return Ok(());
        };
        let asker = match &question.person {
            Some(person) => self.sheet.person(person)?,
            None => None,
        };
        let sites = asker.as_ref().map(|asker| asker.sites.clone()).unwrap_or_default();
        if !may_answer(self.person.as_ref(), &sites) {
            self.say("bot-question-not-yours", &[]);
            return Ok(());
        }
        let name = self.name_of(asker.as_ref(), self.language);
        // Who asked at a keyboard may have no chat.
        if asked.chat == 0 {
            self.say("bot-no-chat", &[("name", &name)]);
        } else {
            let answer = filled(self.house.phrases(asked.language), "bot-from-crew", &[("text", text)]);
            self.text_to(asked.chat, &answer, Vec::new(), Some(asked.message).filter(|number| *number > 0), None);
            self.say("bot-passed-on", &[("name", &name)]);
        }
        self.sheet.write(vec![asked.taken_away()?, Change::remove(question)])?;
        self.tell_others(asker.as_ref(), &sites, text)
    }

    /// The rest of the crew knows that it need not answer.
    fn tell_others(&mut self, asker: Option<&Person>, sites: &[SiteId], text: &str) -> Result<(), StoreError> {
        let who = self.person.as_ref().map(|person| person.name.clone()).unwrap_or_default();
        for (card, person) in self.crew(sites)? {
            if card.chat == self.arrival.chat || asker.is_some_and(|asker| asker.id == person.id) {
                continue;
            }
            let language = language_of(Some(&person), &card);
            let values = [("who", who.as_str()), ("name", &self.name_of(asker, language)), ("text", text)];
            let told = filled(self.house.phrases(language), "bot-answered-by", &values);
            self.text_to(card.chat, &told, Vec::new(), None, None);
        }
        Ok(())
    }

    /// The chats of those who may answer someone with these sites.
    pub fn crew(&self, sites: &[SiteId]) -> Result<Vec<(Card, Person)>, StoreError> {
        let mut crew = Vec::new();
        for card in Card::all(self.sheet)? {
            let person = self.sheet.person(&card.person)?.filter(|person| may_answer(Some(person), sites));
            if let Some(person) = person.filter(|_| !card.blocked) {
                crew.push((card, person));
            }
        }
        Ok(crew)
    }

    pub fn name_of(&self, person: Option<&Person>, language: Language) -> String {
        let stranger = || filled(self.house.phrases(language), "bot-a-stranger", &[]);
        person.map_or_else(stranger, |person| person.name.clone())
    }
}
