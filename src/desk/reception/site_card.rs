//! A new site: its name, then its place, shared or named; shown before it is kept.

use super::awaits::Awaited;
use super::draft::Drafted;
use super::invite::plain_id;
use super::turn::{Turn, language_of};
use crate::garden::rights::{may_add_site, may_manage};
use crate::garden::{Change, Role, Site, SiteId, Store, StoreError};
use crate::knowledge::Place;
use crate::wording::filled;

/// The longest name, in letters.
const LONGEST: usize = 60;
/// Height and time zone of a listed place count up to here without a word, km (judgement).
const NEAR_KM: f64 = 50.0;

impl Turn<'_> {
    /// "New site: Sharma ji's terrace": its name, and the position where that is known.
    pub fn new_site(&mut self, name: &str, position: Option<(f64, f64)>) -> Result<(), StoreError> {
        if !may_add_site(self.person.as_ref()) {
            self.say("bot-crew-only", &[]);
            return Ok(());
        }
        let name: String = name.trim_matches([' ', ':', '-', ',', '.', '"', '\n']).chars().take(LONGEST).collect();
        if !name.chars().any(char::is_alphanumeric) {
            self.await_next(Awaited::SiteName { position })?;
            self.say("site-ask-name", &[]);
            return Ok(());
        }
        match position {
            Some(position) => self.show_site(&name, position, None),
            None => {
                let draft = self.new_draft(Drafted::Named(name.clone()))?;
                self.await_next(Awaited::SitePlace(draft.key))?;
                self.say("site-ask-place", &[("name", &name)]);
                Ok(())
            }
        }
    }

    /// The name that was asked for.
    pub fn site_named(&mut self, text: &str, position: Option<(f64, f64)>) -> Result<bool, StoreError> {
        self.await_nothing()?;
        self.new_site(text, position).map(|()| true)
    }

    /// The position that was asked for.
    pub fn site_placed(&mut self, draft: &str, position: (f64, f64)) -> Result<(), StoreError> {
        self.await_nothing()?;
        match self.draft(draft)?.map(|draft| draft.what) {
            Some(Drafted::Named(name)) => self.show_site(&name, position, None),
            _ => self.new_site("", Some(position)),
        }
    }

    /// A city instead of a position; any other words are a message of their own.
    pub fn site_placed_by_name(&mut self, draft: &str, text: &str) -> Result<bool, StoreError> {
        let said = text.trim().trim_end_matches(['.', '।']).to_lowercase();
        let place = self
            .house
            .known
            .places
            .iter()
            .find(|place| place.id == said || place.names.all().any(|name| name.to_lowercase() == said));
        let (Some(place), Some(Drafted::Named(name))) = (place, self.draft(draft)?.map(|draft| draft.what)) else {
            return Ok(false);
        };
        let place = place.clone();
        self.await_nothing()?;
        self.show_site(&name, (place.latitude_deg, place.longitude_deg), Some(&place))?;
        Ok(true)
    }

    /// What was understood, with yes, change, no.
    fn show_site(&mut self, name: &str, position: (f64, f64), named: Option<&Place>) -> Result<(), StoreError> {
        let (latitude_deg, longitude_deg) = position;
        if !(-90.0..=90.0).contains(&latitude_deg) || !(-180.0..=180.0).contains(&longitude_deg) {
            self.say("bot-place-not-yours", &[]);
            return Ok(());
        }
        let far = |place: &&Place| place.kilometres_from(latitude_deg, longitude_deg);
        let nearest = self.house.known.places.iter().min_by(|a, b| far(a).total_cmp(&far(b)));
        let Some(nearest) = nearest.cloned() else {
            self.say("bot-place-not-yours", &[]);
            return Ok(());
        };
        let km = nearest.kilometres_from(latitude_deg, longitude_deg);
        let site = Site {
            id: self.free_site_id(name)?,
            name: name.to_owned(),
            latitude_deg,
            longitude_deg,
            elevation_m: nearest.elevation_m,
            timezone: nearest.timezone,
            surface: None,
            engineer_limit_kn_m2: None,
            water_ec_ds_m: None,
            hose_l_min: None,
            can: None,
            walls: Vec::new(),
        };
        let near = nearest.names.first(self.language).to_owned();
        let how = if named.is_some() {
            "city"
        } else if km > NEAR_KM {
            "far"
        } else {
            "near"
        };
        let (latitude, longitude) = (format!("{latitude_deg:.4}"), format!("{longitude_deg:.4}"));
        let (height, km) = (format!("{:.0}", site.elevation_m), format!("{km:.0}"));
        let values = [
            ("name", name),
            ("latitude", &latitude),
            ("longitude", &longitude),
            ("how", how),
            ("near", &near),
            ("km", &km),
            ("height", &height),
            ("zone", site.timezone.name()),
        ];
        let text = self.phrase("site-understood", &values);
        let draft = self.new_draft(Drafted::Site(Box::new(site)))?;
        let offered = self.draft_buttons(&draft);
        let buttons = self.labels(offered)?;
        self.text_out(&text, buttons, None);
        Ok(())
    }

    /// An id made of a name: `sharma-ji-s-terrace`, with a number where it is taken.
    fn free_site_id(&self, name: &str) -> Result<SiteId, StoreError> {
        let plain = plain_id(name).unwrap_or_else(|| "site".to_owned());
        let mut number = 1;
        loop {
            let text = if number == 1 { plain.clone() } else { format!("{plain}-{number}") };
            let id = SiteId::new(&text).map_err(|fault| StoreError::Failed(fault.to_string()))?;
            if self.sheet.site(&id)?.is_none() {
                return Ok(id);
            }
            number += 1;
        }
    }

    /// Confirmed: the site is kept, a gardener who added it looks after it, the owner is told.
    pub fn keep_site(&mut self, mut site: Site) -> Result<(), StoreError> {
        let Some(mut person) = self.person.clone().filter(|person| may_add_site(Some(person))) else {
            self.say("bot-crew-only", &[]);
            return Ok(());
        };
        site.id = self.free_site_id(&site.name)?;
        let mut changes = vec![Change::put(site.clone())];
        if person.role == Role::Gardener {
            person.sites.push(site.id.clone());
            changes.push(Change::put(person.clone()));
        }
        self.sheet.write(changes)?;
        self.person = Some(person.clone());
        self.instead("site-kept", &[("name", &site.name), ("id", site.id.as_str())]);
        for (card, other) in self.crew(&[])? {
            if other.id == person.id || !may_manage(Some(&other)) {
                continue;
            }
            let phrases = self.house.phrases(language_of(Some(&other), &card));
            let values = [("who", person.name.as_str()), ("name", &site.name), ("id", site.id.as_str())];
            let told = filled(phrases, "site-added", &values);
            self.text_to(card.chat, &told, Vec::new(), None, None);
        }
        Ok(())
    }
}
