//! A trouble: a pest, disease, disorder, deficiency, weather or a person's mistake.

use super::fact::SourceRef;
use super::names::{InThree, Names};
use super::raw::Reader;
use serde::Deserialize;
use toml::Spanned;

/// One trouble of the knowledge base.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Trouble {
    pub id: String,
    pub kind: TroubleKind,
    pub names: Names,
    /// What one sees.
    pub signs: InThree<String>,
    pub first_steps: InThree<String>,
    pub crops: Vec<String>,
    pub sources: Vec<SourceRef>,
    pub cautions: Vec<InThree<String>>,
}

/// What sort of trouble it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TroubleKind {
    Pest,
    Disease,
    Disorder,
    Deficiency,
    Weather,
    Mistake,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawTrouble {
    id: String,
    kind: TroubleKind,
    names: Names,
    signs: InThree<String>,
    first_steps: InThree<String>,
    #[serde(default)]
    crops: Vec<String>,
    sources: Vec<Spanned<String>>,
    #[serde(default)]
    cautions: Vec<InThree<String>>,
}

pub fn read(reader: &mut Reader<'_>, raw: RawTrouble) -> Option<(String, Trouble)> {
    let sources = raw.sources.iter().map(|source| reader.source(source.span(), source.get_ref())).collect();
    let sources: Option<Vec<_>> = sources;
    let trouble = Trouble {
        id: raw.id,
        kind: raw.kind,
        names: raw.names,
        signs: raw.signs,
        first_steps: raw.first_steps,
        crops: raw.crops,
        sources: sources?,
        cautions: raw.cautions,
    };
    Some((trouble.id.clone(), trouble))
}
