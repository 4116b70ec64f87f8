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

impl Stems {
    /// Each stem with each light verb; sounds tell their spellings alike.
    pub fn past(&self) -> impl Iterator<Item = String> {
        let with = |stems: &[String], light: [&'static str; 12]| {
            let stems = stems.to_vec();
            stems.into_iter().flat_map(move |stem| light.map(|light| format!("{stem} {light}")))
        };
        with(&self.hi, LIGHT).chain(with(&self.hi_latn, LIGHT_LATIN))
    }
}
