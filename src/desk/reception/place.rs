//! A place sent from a phone: where a site lies, once someone who may say so has confirmed it.

use super::button::Does;
use super::tap::{Step, Tap};
use super::turn::Turn;
use crate::garden::rights::{may_add_site, may_place_site};
use crate::garden::{Change, SiteId, Store, StoreError};

impl Turn<'_> {
    /// Asks which of their sites lies there.
    pub fn place(&mut self, latitude_deg: f64, longitude_deg: f64) -> Result<(), StoreError> {
        if self.person.is_none() {
            self.say("bot-not-linked", &[]);
            return Ok(());
        }
        let mut sites = self.sheet.sites()?;
        sites.retain(|site| may_place_site(self.person.as_ref(), &site.id));
        let crew = may_add_site(self.person.as_ref());
        if sites.is_empty() && !crew
            || !(-90.0..=90.0).contains(&latitude_deg)
            || !(-180.0..=180.0).contains(&longitude_deg)
        {
            self.say("bot-place-not-yours", &[]);
            return Ok(());
        }
        let mut buttons = Vec::new();
        for site in sites {
            let does = Does::Place { site: site.id.clone(), latitude_deg, longitude_deg };
            buttons.push(self.button(&site.name, does)?);
        }
        if crew {
            let start = Tap::Round(Step::From { latitude_deg, longitude_deg });
            let site = Tap::NewSite { position: Some((latitude_deg, longitude_deg)) };
            for (key, tap) in [("place-button-new", site), ("place-button-round", start)] {
                let says = self.phrase(key, &[]);
                buttons.push(self.button(&says, Does::Crew(tap))?);
            }
        }
        let no = self.phrase("bot-button-no", &[]);
        buttons.push(self.button(&no, Does::Leave)?);
        let (latitude, longitude) = (degrees(latitude_deg), degrees(longitude_deg));
        let question = self.phrase("bot-place-which", &[("latitude", &latitude), ("longitude", &longitude)]);
        self.text_out(&question, buttons, None);
        Ok(())
    }

    /// The button under it was pressed; the right is looked at again.
    pub fn set_place(&mut self, site: &SiteId, latitude_deg: f64, longitude_deg: f64) -> Result<(), StoreError> {
        let site = self.sheet.site(site)?.filter(|site| may_place_site(self.person.as_ref(), &site.id));
        let Some(mut site) = site else {
            self.say("bot-place-not-yours", &[]);
            return Ok(());
        };
        (site.latitude_deg, site.longitude_deg) = (latitude_deg, longitude_deg);
        let (latitude, longitude) = (degrees(latitude_deg), degrees(longitude_deg));
        self.say("bot-place-set", &[("site", &site.name), ("latitude", &latitude), ("longitude", &longitude)]);
        self.sheet.write(vec![Change::put(site)])
    }
}

/// Four decimals are some ten metres: as near as a roof needs.
fn degrees(value: f64) -> String {
    format!("{value:.4}")
}
