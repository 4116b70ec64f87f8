//! Ids: kebab-case words that a person can say and type.

use serde::{Deserialize, Serialize};
use std::fmt::{Display, Formatter};
use std::str::FromStr;
use thiserror::Error;

/// Longest id, in characters.
const LONGEST: usize = 64;

/// A text that is no id.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{found}\" is no id; {expected} expected")]
pub struct NotAnId {
    pub found: String,
    pub expected: &'static str,
}

const PLAIN: &str = "small letters, digits and single hyphens, like \"roof-12\",";
const OF_BED: &str = "site/bed, like \"roof-12/east-box\",";

fn is_id(text: &str) -> bool {
    text.len() <= LONGEST
        && text
            .split('-')
            .all(|part| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit()))
}

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
        #[serde(try_from = "String", into = "String")]
        pub struct $name(String);

        impl $name {
            /// Accepts a kebab-case id.
            ///
            /// # Errors
            /// [`NotAnId`] when it is empty, too long or has another character.
            pub fn new(text: &str) -> Result<Self, NotAnId> {
                if is_id(text) {
                    Ok(Self(text.into()))
                } else {
                    Err(NotAnId { found: text.into(), expected: PLAIN })
                }
            }

            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        text_id!($name);
    };
}

macro_rules! text_id {
    ($name:ident) => {
        impl FromStr for $name {
            type Err = NotAnId;
            fn from_str(text: &str) -> Result<Self, NotAnId> {
                Self::new(text)
            }
        }

        impl TryFrom<String> for $name {
            type Error = NotAnId;
            fn try_from(text: String) -> Result<Self, NotAnId> {
                text.parse()
            }
        }

        impl From<$name> for String {
            fn from(id: $name) -> Self {
                id.to_string()
            }
        }
    };
}

macro_rules! plain_display {
    ($($name:ident),+) => {$(
        impl Display for $name {
            fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
                f.write_str(&self.0)
            }
        }
    )+};
}

id!(
    /// A person of the store.
    PersonId
);
id!(
    /// One client's roof, terrace or balcony.
    SiteId
);
id!(
    /// A question that waits for a person.
    QuestionId
);
plain_display!(PersonId, SiteId, QuestionId);

/// A bed: its own id is unique within its site only, so it is written `site/bed`.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct BedId {
    site: SiteId,
    bed: String,
}

impl BedId {
    /// Accepts the written form, `site/bed`.
    ///
    /// # Errors
    /// [`NotAnId`] when it is not two ids with a slash between them.
    pub fn new(text: &str) -> Result<Self, NotAnId> {
        let (site, bed) = text.split_once('/').ok_or_else(|| NotAnId { found: text.into(), expected: OF_BED })?;
        Self::at(&SiteId::new(site)?, bed)
    }

    /// The bed of this id at a site.
    ///
    /// # Errors
    /// [`NotAnId`] when the bed's own id is not kebab-case.
    pub fn at(site: &SiteId, bed: &str) -> Result<Self, NotAnId> {
        if is_id(bed) {
            Ok(Self { site: site.clone(), bed: bed.into() })
        } else {
            Err(NotAnId { found: bed.into(), expected: PLAIN })
        }
    }

    #[must_use]
    pub const fn site(&self) -> &SiteId {
        &self.site
    }

    /// Its own id, without the site.
    #[must_use]
    pub fn bed(&self) -> &str {
        &self.bed
    }
}

text_id!(BedId);

impl Display for BedId {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}/{}", self.site, self.bed)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got = BedId::new(text).map_or_else(|refusal| refusal.to_string(), |id| id.to_string());
        assert_eq!(got, expected);
    }

    #[test]
    fn reads_and_refuses() {
        case("roof-12/east-box", "roof-12/east-box");
        case("east-box", "\"east-box\" is no id; site/bed, like \"roof-12/east-box\", expected");
        let plain = "is no id; small letters, digits and single hyphens, like \"roof-12\", expected";
        case("Roof/east-box", &format!("\"Roof\" {plain}"));
        case("roof/east--box", &format!("\"east--box\" {plain}"));
        case("roof/", &format!("\"\" {plain}"));
        case("roof/a/b", &format!("\"a/b\" {plain}"));
        case("छत/a", &format!("\"छत\" {plain}"));
    }

    #[test]
    fn a_stored_id_is_checked_again() {
        assert!(serde_json::from_str::<PersonId>("\"Meera K\"").is_err());
        assert_eq!(serde_json::to_string(&BedId::new("a/b").unwrap()).unwrap(), "\"a/b\"");
    }
}
