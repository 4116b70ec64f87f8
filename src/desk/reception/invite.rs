//! One-time codes that bring a person in.

use super::button::token;
use crate::garden::{Change, PersonId, Role, SiteId, Slip, Store, StoreError};
use chrono::{DateTime, TimeDelta, Utc};
use ring::hmac;
use serde::{Deserialize, Serialize};

/// A code that waits for the person it was made for. The code itself is told once and kept nowhere: what is kept is
/// its mark, HMAC-SHA-256 (RFC 2104, FIPS 180-4) under the invite's own id.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Invite {
    /// A random text that names the slip.
    pub id: String,
    /// In hexadecimal digits.
    mark: String,
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
        self.id.clone()
    }
}

impl Invite {
    /// A code is good for so long.
    pub const GOOD_FOR: TimeDelta = TimeDelta::days(7);

    /// An invite and its code, which nobody can ask for again.
    ///
    /// # Errors
    /// When the system has no random numbers.
    pub fn new(whom: Whom, made: DateTime<Utc>, claim: bool) -> Result<(Self, String), StoreError> {
        let code = token()?;
        Ok((Self::with_code(&code, whom, made, claim)?, code))
    }

    fn with_code(code: &str, whom: Whom, made: DateTime<Utc>, claim: bool) -> Result<Self, StoreError> {
        let id = token()?;
        let mark = hex(hmac::sign(&key(&id), code.as_bytes()).as_ref());
        let Whom { person, name, role, sites } = whom;
        Ok(Self { id, mark, person, name, role, sites, made, claim })
    }

    /// Whether a code is this invite's; takes as long for a code that is nearly right as for any other.
    fn has(&self, code: &str) -> bool {
        let mark = unhex(&self.mark).unwrap_or_default();
        hmac::verify(&key(&self.id), code.as_bytes(), &mark).is_ok()
    }

    #[must_use]
    pub fn is_good(&self, now: DateTime<Utc>) -> bool {
        now >= self.made && now - self.made <= Self::GOOD_FOR
    }

    /// The invite behind a code that is still good.
    pub fn behind(store: &dyn Store, code: &str, now: DateTime<Utc>) -> Result<Option<Self>, StoreError> {
        // All are looked at, whichever fits.
        let fits = |found: Option<Self>, invite: Self| if invite.has(code) { Some(invite) } else { found };
        Ok(Self::all(store)?.into_iter().fold(None, fits).filter(|invite| invite.is_good(now)))
    }

    /// Codes that an older version kept as they are, marked instead.
    pub fn marked_anew(store: &dyn Store) -> Result<Vec<Change>, StoreError> {
        let mut changes = Vec::new();
        for filed in store.drawer(Self::DRAWER)? {
            let Ok(old) = serde_json::from_value::<Plain>(filed.value.clone()) else { continue };
            let whom = Whom { person: old.person, name: old.name, role: old.role, sites: old.sites };
            changes.push(Change::remove(filed));
            changes.push(Self::with_code(&old.code, whom, old.made, old.claim)?.put()?);
        }
        Ok(changes)
    }
}

/// An invite with its code in it.
#[derive(Deserialize)]
struct Plain {
    code: String,
    person: Option<PersonId>,
    name: String,
    role: Role,
    #[serde(default)]
    sites: Vec<SiteId>,
    made: DateTime<Utc>,
    #[serde(default)]
    claim: bool,
}

/// Whom an invite is for: someone the store knows already, else a new person is made of what follows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Whom {
    pub person: Option<PersonId>,
    pub name: String,
    pub role: Role,
    pub sites: Vec<SiteId>,
}

fn key(id: &str) -> hmac::Key {
    hmac::Key::new(hmac::HMAC_SHA256, id.as_bytes())
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn unhex(text: &str) -> Option<Vec<u8>> {
    let digits: Vec<u8> =
        text.chars().map(|digit| digit.to_digit(16).map(|digit| digit as u8)).collect::<Option<_>>()?;
    digits.chunks(2).map(|pair| Some(pair.first()? << 4 | pair.get(1)?)).collect()
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
    use crate::garden::{Filed, Overlay, Person};

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
        let whom = || Whom { person: None, name: "Ravi".into(), role: Role::Gardener, sites: vec![] };
        let (invite, code) = Invite::new(whom(), made, false).unwrap();
        let (other, second) = Invite::new(whom(), made, false).unwrap();
        store.write(vec![invite.put().unwrap(), other.put().unwrap()]).unwrap();
        let behind = |code: &str, days| Invite::behind(&store, code, made + TimeDelta::days(days)).unwrap();
        assert_eq!(behind(&code, 0), Some(invite));
        assert_eq!(behind(&second, 7), Some(other));
        let good = |code: &str, days| behind(code, days).is_some();
        assert!(!good(&code, 8) && !good(&code, -1) && !good("", 0) && !good(&code[1..], 0));
        let kept = format!("{:?}", store.whole().unwrap());
        assert!(!kept.contains(&code) && !kept.contains(&second), "what is kept lets nobody in");
    }

    #[test]
    fn a_code_of_an_older_version_is_good_still_and_kept_no_more() {
        let made: DateTime<Utc> = "2026-05-18T02:30:00Z".parse().unwrap();
        let store = Overlay::in_memory();
        let value = serde_json::json!({"code": "abcd2345", "name": "Ravi", "role": "gardener", "made": made});
        let filed = Filed { drawer: "invites".into(), key: "abcd2345".into(), value };
        store.write(vec![Change::put(filed)]).unwrap();
        store.write(Invite::marked_anew(&store).unwrap()).unwrap();
        assert_eq!(Invite::behind(&store, "abcd2345", made).unwrap().map(|invite| invite.name), Some("Ravi".into()));
        assert!(!format!("{:?}", store.whole().unwrap()).contains("abcd2345"));
        assert!(Invite::marked_anew(&store).unwrap().is_empty());
    }

    /// HMAC-SHA-256 of RFC 4231, test case 2.
    #[test]
    fn marks_are_those_of_the_published_case() {
        let mark = hex(hmac::sign(&key("Jefe"), b"what do ya want for nothing?").as_ref());
        assert_eq!(mark, "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
        assert_eq!(unhex("00ff10"), Some(vec![0, 255, 16]));
        assert_eq!(unhex("0g"), None);
    }
}
