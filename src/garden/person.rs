//! People: who asks, and as what.

use super::id::{PersonId, SiteId};
use super::word::words;
use serde::{Deserialize, Serialize};

words!(
    /// What a person is to the crew.
    Role { Client = "client", Gardener = "gardener", Owner = "owner" }
);

words!(
    /// The language a person wants replies in (BCP 47 tags).
    Speaks { English = "en", Hindi = "hi", RomanisedHindi = "hi-Latn" }
);

/// A client, a gardener of the crew, or its owner.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Person {
    pub id: PersonId,
    pub name: String,
    pub role: Role,
    /// The client's own sites, or those a gardener looks after. An owner sees all without a list.
    #[serde(default)]
    pub sites: Vec<SiteId>,
    /// Left out, replies follow the language of each message.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speaks: Option<Speaks>,
}
