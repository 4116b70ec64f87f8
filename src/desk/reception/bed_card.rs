//! The card of a bed: today's figure, what is due, and buttons for what was done and seen. One card is open in a chat;
//! a press changes the message it stands in.

use super::awaits::Awaited;
use super::button::{Button, Does};
use super::letter::{Content, Label};
use super::tap::{Act, Step, Tap};
use super::turn::Turn;
use crate::answering::{BedToday, bed_today};
use crate::garden::rights::may_record;
use crate::garden::{BedId, Change, JobKind, Kind, Record, SeenKind, Slip, Store, StoreError};
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// The card that is open in a chat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OpenCard {
    pub chat: i64,
    /// Buttons of the message as it stands; when it changes they are no longer good.
    pub tokens: Vec<String>,
    /// The message, once a button of it was pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub message: Option<i32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bed: Option<BedId>,
    /// What was recorded on this card, a press at a time, so that it can be taken back.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub noted: Vec<Vec<Noted>>,
}

/// A record that a press made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Noted {
    pub kind: Kind,
    pub value: Value,
}

impl Slip for OpenCard {
    const DRAWER: &'static str = "cards";
    fn key(&self) -> String {
        self.chat.to_string()
    }
}

/// A button before it is made: its words, what it does, and whether it stands beside the one before.
pub type Offered = (String, Tap, bool);

impl Turn<'_> {
    /// Opens the card of a bed, or shows it again; `above` stands over it. A bed that is not theirs is told as such.
    pub fn show_bed(&mut self, bed: &BedId, above: Option<String>) -> Result<(), StoreError> {
        let Some(today) = self.bed_today(bed)? else {
            self.say("crew-not-yours", &[]);
            return Ok(());
        };
        let text = self.put(&today.said);
        let text = above.map_or_else(|| text.clone(), |above| format!("{above}\n{text}"));
        let buttons = self.bed_buttons(bed, &today)?;
        self.put_card(Some(bed), &text, buttons)
    }

    /// Whether a bed is there and they may record in it.
    pub fn is_theirs(&self, bed: &BedId) -> Result<bool, StoreError> {
        Ok(may_record(self.person.as_ref(), bed) && self.sheet.bed(bed)?.is_some())
    }

    /// A bed's day, for whoever may record in it.
    pub fn bed_today(&self, bed: &BedId) -> Result<Option<BedToday>, StoreError> {
        if !self.is_theirs(bed)? {
            return Ok(None);
        }
        let person = self.person.clone();
        self.with_facts_of(person.as_ref(), bed.site(), self.here(), |facts| bed_today(bed, facts))
    }

    /// Buttons by what is due, then what may be seen, then the round's own.
    fn bed_buttons(&self, bed: &BedId, today: &BedToday) -> Result<Vec<Offered>, StoreError> {
        let of = |act: Act| Tap::Bed { bed: bed.clone(), act };
        let did = |job: JobKind, what: Option<&str>| {
            let key = if job == JobKind::Net && what == Some("down") { "net-down" } else { job.word() };
            self.phrase("card-button-did", &[("job", key)])
        };
        let mut buttons: Vec<Offered> = Vec::new();
        let mut all = usize::from(today.thirsty);
        if !self.watered_lately(bed)? {
            buttons.push((did(JobKind::Water, None), of(Act::Done { job: JobKind::Water, what: None }), false));
        }
        for due in &today.due {
            all += 1;
            if due.job == JobKind::Pick {
                continue;
            }
            let beside = buttons.len() % 2 == 1;
            let act = Act::Done { job: due.job, what: due.what.clone() };
            buttons.push((did(due.job, due.what.as_deref()), of(act), beside));
        }
        if all > 1 {
            buttons.push((self.phrase("card-button-all", &[]), of(Act::All), false));
        }
        for (place, saw) in SeenKind::ALL.iter().enumerate() {
            let says = self.phrase("card-button-saw", &[("what", saw.word())]);
            buttons.push((says, of(Act::Saw(*saw)), place > 0));
        }
        buttons.push((self.phrase("card-button-picked", &[]), of(Act::Pick), false));
        if self.open_card()?.is_some_and(|card| card.bed.as_ref() == Some(bed) && !card.noted.is_empty()) {
            buttons.push((self.phrase("card-button-take-back", &[]), of(Act::TakeBack), true));
        }
        if self.round_is_at(bed)? {
            let step = |key: &str, step: Step, beside| (self.phrase(key, &[]), Tap::Round(step), beside);
            buttons.push(step("round-button-skip", Step::Skip, false));
            buttons.push(step("round-button-next", Step::Next, true));
            buttons.push(step("round-button-others", Step::Others, false));
            buttons.push(step("round-button-end", Step::End, true));
        }
        Ok(buttons)
    }

    /// Changes the message whose button was pressed, else writes a new one; its buttons are the only good ones then.
    pub fn put_card(&mut self, bed: Option<&BedId>, text: &str, offered: Vec<Offered>) -> Result<(), StoreError> {
        let chat = self.arrival.chat;
        let before = self.open_card()?;
        for token in before.iter().flat_map(|card| &card.tokens) {
            if let Some(button) = Button::find(self.sheet, token)? {
                self.sheet.write(vec![button.taken_away()?])?;
            }
        }
        let noted = before.filter(|card| card.bed.as_ref() == bed).map(|card| card.noted).unwrap_or_default();
        let buttons = self.labels(offered)?;
        let tokens = buttons.iter().map(|label| label.token.clone()).collect();
        let message = self.pressed_in();
        let card = OpenCard { chat, tokens, message, bed: bed.cloned(), noted };
        self.sheet.write(vec![card.put()?])?;
        match message {
            Some(message) => self.write(chat, Content::Edit { message, text: text.to_owned(), buttons }, None),
            None => self.text_out(text, buttons, None),
        }
        Ok(())
    }

    /// The buttons themselves.
    pub fn labels(&mut self, offered: Vec<Offered>) -> Result<Vec<Label>, StoreError> {
        let make = |(text, tap, beside): Offered| {
            let label = self.button(&text, Does::Crew(tap))?;
            Ok(Label { beside, ..label })
        };
        offered.into_iter().map(make).collect()
    }

    /// Whether what was pressed stands in the card that is open.
    pub fn is_open_card(&self) -> Result<bool, StoreError> {
        let message = self.pressed_in();
        Ok(self.open_card()?.is_some_and(|card| card.message.is_some() && card.message == message))
    }

    pub fn open_card(&self) -> Result<Option<OpenCard>, StoreError> {
        OpenCard::find(self.sheet, &self.arrival.chat.to_string())
    }

    /// Something was pressed on the card of a bed.
    pub fn acts(&mut self, bed: &BedId, act: Act) -> Result<(), StoreError> {
        if !self.is_theirs(bed)? {
            self.say("crew-not-yours", &[]);
            return Ok(());
        }
        match act {
            Act::Done { job, what } => self.record_job(bed, job, what)?,
            Act::All => self.record_all(bed)?,
            Act::Saw(saw) => self.record_look(bed, saw)?,
            Act::Pick => return self.ask_crop(bed),
            Act::Weigh { crop } => return self.ask_weight(bed, crop),
            Act::Picked { crop, grams } => self.record_pick(bed, crop, grams)?,
            Act::TypeWeight { crop } => {
                self.await_next(Awaited::Weight { bed: bed.clone(), crop })?;
                let (text, back) = (self.phrase("card-type-weight", &[]), self.phrase("card-button-back", &[]));
                return self.put_card(Some(bed), &text, vec![(back, self.card_of(bed), false)]);
            }
            Act::TakeBack => self.take_back_last(bed)?,
            Act::Card => {}
        }
        self.await_nothing()?;
        self.show_again(bed)
    }

    /// The tap that leads back to a card.
    pub fn card_of(&self, bed: &BedId) -> Tap {
        Tap::Bed { bed: bed.clone(), act: Act::Card }
    }

    /// The card, in its round where it belongs to one.
    pub fn show_again(&mut self, bed: &BedId) -> Result<(), StoreError> {
        let above = self.round_line(bed)?;
        self.show_bed(bed, above)
    }

    /// What the last press recorded goes.
    fn take_back_last(&mut self, bed: &BedId) -> Result<(), StoreError> {
        let Some(mut card) = self.open_card()?.filter(|card| card.bed.as_ref() == Some(bed)) else { return Ok(()) };
        let failed = |fault: serde_json::Error| StoreError::Failed(fault.to_string());
        for noted in card.noted.pop().unwrap_or_default() {
            let json = serde_json::to_vec(&noted.value).map_err(failed)?;
            let record = Record::from_json(noted.kind, &json).map_err(failed)?;
            self.sheet.write(vec![Change::Remove(record)])?;
        }
        self.sheet.write(vec![card.put()?])
    }
}
