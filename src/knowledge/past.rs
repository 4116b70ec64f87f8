//! The past of Hindi verbs: a verb's stem with each light verb that says it was done.

use serde::Deserialize;

/// Stems of verbs in both scripts: `काट`, `kaat`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stems {
    pub hi: Vec<String>,
    #[serde(rename = "hi-Latn")]
    pub hi_latn: Vec<String>,
}

/// Light verbs in the past, by gender and number: "kaat diya", "kaat li", "kaat chuke".
const LIGHT: [&str; 12] = ["दिया", "दी", "दिए", "दीं", "लिया", "ली", "लिए", "लीं", "डाला", "डाली", "डाले", "चुके"];
const LIGHT_LATIN: [&str; 12] =
    ["diya", "di", "diye", "dee", "liya", "li", "liye", "lee", "daala", "daali", "daale", "chuke"];

/// Who did it and came back: "kaat aaya". What grows comes out by itself: "side shoot nikal aaya".
const CAME: [&str; 4] = ["आया", "आई", "आए", "आयी"];
const CAME_LATIN: [&str; 4] = ["aaya", "aayi", "aaye", "aai"];
const BY_ITSELF: [&str; 8] = ["निकाल", "उतार", "nikaal", "nikal", "utaar", "utar", "chadh", "चढ़"];

impl Stems {
    /// Each stem with each light verb; sounds tell their spellings alike.
    pub fn past(&self) -> impl Iterator<Item = String> {
        let with = |stems: &[String], light: &'static [&'static str], came: &'static [&'static str]| {
            let stems = stems.to_vec();
            stems.into_iter().flat_map(move |stem| {
                let by_itself = BY_ITSELF.iter().any(|verb| stem.ends_with(verb));
                let came = came.iter().filter(move |_| !by_itself);
                light.iter().chain(came).map(move |light| format!("{stem} {light}")).collect::<Vec<_>>()
            })
        };
        with(&self.hi, &LIGHT, &CAME).chain(with(&self.hi_latn, &LIGHT_LATIN, &CAME_LATIN))
    }
}
