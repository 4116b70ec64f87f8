//! Codes on beds: what a label's link opens. The code is a random token; nothing of the bed can be read from it, and
//! whoever may not see the bed is told what everybody is told.

use super::button::token;
use super::turn::Turn;
use crate::garden::rights::{may_go_round, may_record, may_work_at};
use crate::garden::{Bed, BedId, Change, Conversation, SiteId, Slip, Store, StoreError};
use crate::knowledge::Kind;
use crate::understanding::Reading;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// What stands before the token in a link's payload: `t.me/BOT?start=bed-TOKEN`. With the token it is 20 characters of
/// `A-Za-z0-9_-`; the platform allows 64.
const BEFORE: &str = "bed-";

/// The code of a bed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BedCode {
    pub token: String,
    pub bed: BedId,
    pub made: DateTime<Utc>,
}

impl Slip for BedCode {
    const DRAWER: &'static str = "labels";
    fn key(&self) -> String {
        self.token.clone()
    }
}

impl BedCode {
    /// What stands in the link.
    #[must_use]
    pub fn payload(&self) -> String {
        format!("{BEFORE}{}", self.token)
    }
}

/// The beds of a site with the payload of each one's link, made where it was missing.
///
/// # Errors
/// When the store cannot be read or written, or the system gives no random bytes.
pub fn bed_codes(store: &dyn Store, site: &SiteId, now: DateTime<Utc>) -> Result<Vec<(Bed, String)>, StoreError> {
    let known = BedCode::all(store)?;
    let mut all = Vec::new();
    let mut made = Vec::new();
    for bed in store.beds_of_site(site)? {
        let code = match known.iter().find(|code| code.bed == bed.id) {
            Some(code) => code.clone(),
            None => {
                let code = BedCode { token: token()?, bed: bed.id.clone(), made: now };
                made.push(code.put()?);
                code
            }
        };
        all.push((bed, code.payload()));
    }
    if !made.is_empty() {
        store.write(made)?;
    }
    Ok(all)
}

/// Takes a bed's code away: a label that hangs there opens nothing any more. Whether there was one.
///
/// # Errors
/// When the store cannot be read or written.
pub fn revoke_code(store: &dyn Store, bed: &BedId) -> Result<bool, StoreError> {
    let mut changes = Vec::new();
    for code in BedCode::all(store)?.iter().filter(|code| code.bed == *bed) {
        changes.push(code.taken_away()?);
    }
    let any = !changes.is_empty();
    if any {
        store.write(changes)?;
    }
    Ok(any)
}

impl Turn<'_> {
    /// The token in what stands behind `/start`, if it is one of a bed.
    pub fn token_of_bed(typed: &str) -> Option<&str> {
        typed.strip_prefix(BEFORE)
    }

    /// Opens the chat on the bed of a label. A code that is wrong, revoked, or of a bed they may not see gets one answer.
    pub fn open_bed(&mut self, token: &str) -> Result<(), StoreError> {
        if self.person.is_none() {
            self.say("bot-hello-stranger", &[]);
            return Ok(());
        }
        // A code is letters and digits: anything else cannot be a key.
        let plain = !token.is_empty() && token.bytes().all(|byte| byte.is_ascii_alphanumeric());
        let code = if plain { BedCode::find(self.sheet, token)? } else { None };
        let bed = code.map(|code| code.bed).filter(|bed| may_record(self.person.as_ref(), bed));
        let Some(bed) = bed.filter(|bed| self.sheet.bed(bed).is_ok_and(|bed| bed.is_some())) else {
            self.say("label-opens-nothing", &[]);
            return Ok(());
        };
        self.await_nothing()?;
        self.talk_of(&bed)?;
        self.label_in_round(&bed)?;
        self.show_again(&bed)
    }

    /// In a round under way the bed whose label was opened is the present one.
    fn label_in_round(&mut self, bed: &BedId) -> Result<(), StoreError> {
        if !may_go_round(self.person.as_ref()) {
            return Ok(());
        }
        match self.round_today()? {
            Some(mut round) if round.is_going() && round.queue.contains(bed) => {
                round.go(bed);
                self.sheet.write(vec![round.put()?])
            }
            _ => Ok(()),
        }
    }

    /// The conversation is about this bed now: "how much water?" means it.
    fn talk_of(&mut self, bed: &BedId) -> Result<(), StoreError> {
        let Some(person) = &self.person else { return Ok(()) };
        let mut reading = Reading::blank(Kind::Water, self.language);
        (reading.beds, reading.beds_named) = (vec![bed.clone()], true);
        let state = serde_json::to_value(reading).map_err(|fault| StoreError::Failed(fault.to_string()))?;
        let conversation = Conversation { person: person.id.clone(), at: self.moment(), state };
        self.sheet.write(vec![Change::put(conversation)])
    }

    /// `/codes SITE`: the link of each bed.
    pub fn list_codes(&mut self, rest: &str) -> Result<(), StoreError> {
        let site = SiteId::new(&rest.to_lowercase()).ok().filter(|site| may_work_at(self.person.as_ref(), site));
        let Some(site) = site.filter(|site| self.sheet.site(site).is_ok_and(|site| site.is_some())) else {
            return self.codes_usage();
        };
        let mut lines = Vec::new();
        for (bed, payload) in bed_codes(self.sheet, &site, self.moment())? {
            let name = self.bed_name(&bed.id)?;
            lines.push(format!("{name} ({})\n{}", bed.id, self.link(&payload)));
        }
        if lines.is_empty() {
            return self.codes_usage();
        }
        self.text_out(&lines.join("\n"), Vec::new(), None);
        Ok(())
    }

    /// `/newcode SITE/BED`: the old label opens nothing, here is the new link.
    pub fn new_code(&mut self, rest: &str) -> Result<(), StoreError> {
        let bed = BedId::new(&rest.to_lowercase()).ok().filter(|bed| may_work_at(self.person.as_ref(), bed.site()));
        let Some(bed) = bed.filter(|bed| self.sheet.bed(bed).is_ok_and(|bed| bed.is_some())) else {
            return self.codes_usage();
        };
        revoke_code(self.sheet, &bed)?;
        let codes = bed_codes(self.sheet, bed.site(), self.moment())?;
        let link = codes.iter().find(|(of, _)| of.id == bed).map(|(_, payload)| self.link(payload));
        self.say("label-new", &[("bed", bed.to_string().as_str()), ("link", &link.unwrap_or_default())]);
        Ok(())
    }

    fn link(&self, payload: &str) -> String {
        let bot = self.memory.username.clone();
        bot.map_or_else(|| format!("/start {payload}"), |bot| format!("https://t.me/{bot}?start={payload}"))
    }

    /// What to write, and the sites there are for this person; a client learns no more than that it is the crew's.
    fn codes_usage(&mut self) -> Result<(), StoreError> {
        if !may_go_round(self.person.as_ref()) {
            self.say("bot-crew-only", &[]);
            return Ok(());
        }
        let mut sites = self.sheet.sites()?;
        sites.retain(|site| may_work_at(self.person.as_ref(), &site.id));
        let sites: Vec<String> = sites.into_iter().map(|site| site.id.to_string()).collect();
        self.say("label-usage", &[("sites", &sites.join(", "))]);
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::Overlay;
    use crate::garden::{BedKind, Measure, Shape};

    #[test]
    fn a_code_is_made_once_and_hides_its_bed() {
        let store = Overlay::in_memory();
        let site = SiteId::new("roof-12").unwrap();
        let volume = Measure::read("20 L").unwrap();
        for name in ["east-box", "west-box"] {
            let bed = Bed::bare(BedId::at(&site, name).unwrap(), BedKind::Bag, Shape::Bag { volume, depth: None });
            store.write(vec![Change::put(bed)]).unwrap();
        }
        let now = "2026-05-18T02:30:00Z".parse().unwrap();
        let codes = bed_codes(&store, &site, now).unwrap();
        assert_eq!(codes.len(), 2);
        assert_eq!(bed_codes(&store, &site, now).unwrap(), codes, "the same label the next time");
        let allowed = |byte: u8| byte.is_ascii_alphanumeric() || byte == b'_' || byte == b'-';
        for (bed, payload) in &codes {
            assert!(payload.len() <= 64 && payload.bytes().all(allowed), "{payload}");
            assert!(!payload.contains("roof") && !payload.contains(bed.id.bed()), "{payload}");
        }
        let east = codes.first().unwrap();
        assert!(revoke_code(&store, &east.0.id).unwrap() && !revoke_code(&store, &east.0.id).unwrap());
        let again = bed_codes(&store, &site, now).unwrap();
        assert_ne!(again.first(), codes.first());
        assert_eq!(again.last(), codes.last(), "the other label stays good");
    }
}
