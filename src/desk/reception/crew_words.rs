//! What the crew says without a command: "round", "visits this week", "new site: …".

use super::turn::Turn;
use crate::garden::StoreError;
use crate::garden::rights::{may_add_site, may_go_round, may_see_visits};
use crate::script::Language;
use crate::wording::filled;

impl Turn<'_> {
    /// Whether a text was one of these, and was dealt with. Whoever has no such right is answered as anyone else is.
    pub fn crew_words(&mut self, text: &str) -> Result<bool, StoreError> {
        let person = self.person.as_ref();
        let (round, visits, site) = (may_go_round(person), may_see_visits(person), may_add_site(person));
        if round && self.wishes("crew-words-round", text) {
            return self.round("").map(|()| true);
        }
        if round && let Some(named) = self.after("crew-words-round-of", text) {
            return self.round(&named).map(|()| true);
        }
        if visits && self.wishes("crew-words-visits", text) {
            return self.list_visits().map(|()| true);
        }
        // "New terrace …" may go on about anything: its name stands behind a colon, or is asked for.
        let named = self.after("crew-words-new-place", text).filter(|name| name.is_empty() || name.starts_with(':'));
        let plainly = || self.after("crew-words-new-site", text).filter(|_| !text.contains('?'));
        if site && let Some(name) = named.or_else(plainly) {
            return self.new_site(&name, None).map(|()| true);
        }
        Ok(false)
    }

    /// What follows one of a phrase's words at the beginning of a text, in any language.
    fn after(&self, phrase: &str, text: &str) -> Option<String> {
        let text = text.trim();
        [Language::En, Language::Hi, Language::HiLatn].into_iter().find_map(|language| {
            let all = filled(self.house.phrases(language), phrase, &[]);
            all.split('|').map(str::trim).filter(|words| !words.is_empty()).find_map(|words| {
                let head: String = text.chars().take(words.chars().count()).collect();
                let rest: String = text.chars().skip(words.chars().count()).collect();
                let ends = words.ends_with(':') || !rest.starts_with(char::is_alphanumeric);
                (ends && head.to_lowercase() == words.to_lowercase()).then(|| rest.trim().to_owned())
            })
        })
    }
}
