//! One-time codes that bring a person in.

use crate::garden::{PersonId, Role, SiteId, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};

/// A code that waits for the person it was made for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Invite {
    pub code: String,
    /// Someone the store knows already; else a new person is made of what follows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<PersonId>,
    pub name: String,
    pub role: Role,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sites: Vec<SiteId>,
    pub made: DateTime<Utc>,
    /// Made by the program for the owner of a new installation.
    #[serde(default)]
    pub claim: bool,
}

impl Slip for Invite {
    const DRAWER: &'static str = "invites";
    fn key(&self) -> String {
        self.code.clone()
    }
}

impl Invite {
    /// A code is good for so long.
    pub const GOOD_FOR: TimeDelta = TimeDelta::days(7);

    #[must_use]
    pub fn is_good(&self, now: DateTime<Utc>) -> bool {
        now >= self.made && now - self.made <= Self::GOOD_FOR
    }

    /// The invite behind a code that is still good.
    pub fn behind(store: &dyn Store, code: &str, now: DateTime<Utc>) -> Result<Option<Self>, StoreError> {
        // A code is letters and digits: anything else cannot be a key.
        if code.is_empty() || !code.bytes().all(|byte| byte.is_ascii_alphanumeric()) {
            return Ok(None);
        }
        Ok(Self::find(store, code)?.filter(|invite| invite.is_good(now)))
    }
}

/// An id made of a name: its Latin letters and digits, else `person`, with a number where it is taken.
pub fn id_for(name: &str, store: &dyn Store) -> Result<PersonId, StoreError> {
    let plain = plain_id(name).unwrap_or_else(|| "person".to_owned());
    let mut number = 1;
    loop {
        let text = if number == 1 { plain.clone() } else { format!("{plain}-{number}") };
        let id = PersonId::new(&text).map_err(|fault| StoreError::Failed(fault.to_string()))?;
        if store.person(&id)?.is_none() {
            return Ok(id);
        }
        number += 1;
    }
}

/// A name as an id would be written.
pub fn plain_id(name: &str) -> Option<String> {
    const LONGEST: usize = 40;
    let small: String = name
        .chars()
        .map(|letter| if letter.is_ascii_alphanumeric() { letter.to_ascii_lowercase() } else { ' ' })
        .collect();
    let words = small.split_whitespace().collect::<Vec<_>>().join("-");
    let short: String = words.chars().take(LONGEST).collect();
    let short = short.trim_end_matches('-');
    (!short.is_empty()).then(|| short.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::{Change, Overlay, Person};

    #[test]
    fn ids_of_names() {
        let store = Overlay::in_memory();
        let id = |name: &str| {
            let id = id_for(name, &store).unwrap();
            let person = Person { id: id.clone(), name: name.into(), role: Role::Client, sites: vec![], speaks: None };
            store.write(vec![Change::put(person)]).unwrap();
            id.to_string()
        };
        assert_eq!(id("Meera K."), "meera-k");
        assert_eq!(id("meera k"), "meera-k-2");
        assert_eq!(id("मीरा"), "person");
        assert_eq!(id("--"), "person-2");
        assert!(id(&"very long ".repeat(20)).len() <= 40);
    }

    #[test]
    fn a_code_is_good_for_a_week() {
        let made: DateTime<Utc> = "2026-05-18T02:30:00Z".parse().unwrap();
        let store = Overlay::in_memory();
        let invite = Invite {
            code: "abc".into(),
            person: None,
            name: "Ravi".into(),
            role: Role::Gardener,
            sites: vec![],
            made,
            claim: false,
        };
        store.write(vec![invite.put().unwrap()]).unwrap();
        let good = |code: &str, days| Invite::behind(&store, code, made + TimeDelta::days(days)).unwrap().is_some();
        assert!(good("abc", 0) && good("abc", 7));
        assert!(!good("abc", 8) && !good("abc", -1) && !good("", 0) && !good("ab", 0) && !good("abc|", 0));
    }
}
