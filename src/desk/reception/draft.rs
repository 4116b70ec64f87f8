//! What was told in more than a line of record: shown as it was understood, kept when it is confirmed.

use super::bed_card::Offered;
use super::button::token;
use super::tap::{DraftStep, Tap};
use super::turn::Turn;
use crate::answering::bed_told;
use crate::garden::rights::may_record;
use crate::garden::{Bed, BedId, Change, Record, Site, SiteId, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// Something that waits for a yes; one at a time in a chat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Draft {
    pub key: String,
    pub chat: i64,
    pub at: DateTime<Utc>,
    pub what: Drafted,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Drafted {
    /// A site whose place is not known yet.
    Named(String),
    Site(Box<Site>),
    Bed(Box<Bed>),
}

impl Slip for Draft {
    const DRAWER: &'static str = "drafts";
    fn key(&self) -> String {
        self.key.clone()
    }
}

impl Draft {
    /// What nobody confirmed for so long was not meant.
    pub const KEPT: TimeDelta = TimeDelta::days(1);
}

impl Turn<'_> {
    /// Files a draft in place of any other of this chat.
    pub fn new_draft(&mut self, what: Drafted) -> Result<Draft, StoreError> {
        let mut changes = Vec::new();
        for other in Draft::all(self.sheet)?.iter().filter(|draft| draft.chat == self.arrival.chat) {
            changes.push(other.taken_away()?);
        }
        let draft = Draft { key: token()?, chat: self.arrival.chat, at: self.moment(), what };
        changes.push(draft.put()?);
        self.sheet.write(changes)?;
        Ok(draft)
    }

    pub fn draft(&self, key: &str) -> Result<Option<Draft>, StoreError> {
        Ok(Draft::find(self.sheet, key)?.filter(|draft| draft.chat == self.arrival.chat))
    }

    /// Yes, change, no.
    pub fn draft_buttons(&self, draft: &Draft) -> Vec<Offered> {
        let steps = [
            ("bot-button-yes", DraftStep::Keep),
            ("draft-button-change", DraftStep::Change),
            ("bot-button-no", DraftStep::Drop),
        ];
        let offer = |(key, step): (&str, DraftStep)| {
            let tap = Tap::Draft { draft: draft.key.clone(), step };
            (self.phrase(key, &[]), tap, step != DraftStep::Keep)
        };
        steps.into_iter().map(offer).collect()
    }

    /// A new bed that a message would record is held back and shown instead; whether there was one. What else the
    /// message recorded stays.
    pub fn holds_bed(&mut self, new: &mut Vec<Change>) -> Result<bool, StoreError> {
        let told = |change: &Change| matches!(change, Change::Put(Record::Bed(_)));
        let Some(at) = new.iter().position(told) else { return Ok(false) };
        let Record::Bed(bed) = new.remove(at).record().clone() else { return Ok(false) };
        if self.store.bed(&bed.id)?.is_some() {
            // A bed that was there before is no new one.
            return Ok(false);
        }
        self.sheet.write(vec![Change::remove(bed.clone())])?;
        let Some(site) = self.sheet.site(bed.id.site())? else { return Ok(false) };
        let draft = self.new_draft(Drafted::Bed(Box::new(bed.clone())))?;
        let text = self.put(&bed_told(&bed, &site));
        let offered = self.draft_buttons(&draft);
        let buttons = self.labels(offered)?;
        self.text_out(&text, buttons, None);
        Ok(true)
    }

    /// A button under what was understood.
    pub fn draft_step(&mut self, key: &str, step: DraftStep) -> Result<(), StoreError> {
        let Some(draft) = self.draft(key)? else {
            self.say("bot-button-old", &[]);
            return Ok(());
        };
        self.sheet.write(vec![draft.taken_away()?])?;
        match (step, draft.what) {
            (DraftStep::Keep, Drafted::Bed(bed)) => self.keep_bed(*bed),
            (DraftStep::Keep, Drafted::Site(site)) => self.keep_site(*site),
            (DraftStep::Change, Drafted::Bed(_)) => {
                self.instead("draft-bed-again", &[]);
                Ok(())
            }
            (DraftStep::Change, _) => self.new_site("", None),
            (DraftStep::Keep, Drafted::Named(_)) | (DraftStep::Drop, _) => {
                self.instead("bot-left-alone", &[]);
                Ok(())
            }
        }
    }

    /// The right is looked at again; a name that was taken meanwhile gets a number.
    fn keep_bed(&mut self, mut bed: Bed) -> Result<(), StoreError> {
        if !may_record(self.person.as_ref(), &bed.id) || self.sheet.site(bed.id.site())?.is_none() {
            self.say("crew-not-yours", &[]);
            return Ok(());
        }
        if self.sheet.bed(&bed.id)?.is_some() {
            let Some(id) = self.free_bed_id(bed.id.site(), bed.id.bed())? else {
                self.say("bot-left-alone", &[]);
                return Ok(());
            };
            bed.names = vec![id.bed().replace('-', " ")];
            bed.id = id;
        }
        let name = self.name_of_bed(&bed);
        self.sheet.write(vec![Change::put(bed.clone())])?;
        self.instead("draft-bed-kept", &[("bed", &name), ("id", &bed.id.to_string())]);
        Ok(())
    }

    fn name_of_bed(&self, bed: &Bed) -> String {
        bed.names.first().cloned().unwrap_or_else(|| bed.id.bed().replace('-', " "))
    }

    /// The first number that makes an id free.
    fn free_bed_id(&self, site: &SiteId, plain: &str) -> Result<Option<BedId>, StoreError> {
        const MOST: usize = 200;
        for number in 2..MOST {
            let Ok(id) = BedId::at(site, &format!("{plain}-{number}")) else { return Ok(None) };
            if self.sheet.bed(&id)?.is_none() {
                return Ok(Some(id));
            }
        }
        Ok(None)
    }
}
