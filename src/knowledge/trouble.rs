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
    /// What one sees, as a text.
    pub signs: InThree<String>,
    /// What one sees, as signs of the vocabulary, with how often each is seen.
    pub evidence: Vec<Evidence>,
    /// Signs that speak against it.
    pub against: Vec<String>,
    /// When it comes; empty: at any time.
    pub weather: Vec<Spell>,
    /// Jobs that, done shortly before, speak for it.
    pub after: Vec<String>,
    /// Jobs that, long left undone, speak for it.
    pub without: Vec<String>,
    pub first_steps: InThree<String>,
    pub watch_for: Option<InThree<String>>,
    /// When the plant is past saving.
    pub pull_when: Option<InThree<String>>,
    /// When a person of the crew must see it.
    pub call_when: Option<InThree<String>>,
    pub remedies: Vec<Remedy>,
    /// Troubles that draw it: named beside one of them it is a companion, not the cause.
    pub comes_with: Vec<String>,
    /// It is met on sprouting trays.
    pub trays: bool,
    /// Whoever names it saw it at work: nothing else need be asked.
    pub plain_to_see: bool,
    /// Crops it is typical of; empty: any.
    pub crops: Vec<String>,
    pub sources: Vec<SourceRef>,
    pub cautions: Vec<InThree<String>>,
}

/// A sign with how often it is seen where the trouble is.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Evidence {
    pub sign: String,
    pub seen: Often,
}

/// How often a sign is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Often {
    NearlyAlways,
    Often,
    Sometimes,
    Seldom,
}

/// Weather that brings a trouble.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Spell {
    Hot,
    Mild,
    Cool,
    Dry,
    Humid,
    Wet,
}

/// A remedy by a material of the base, whose dose and limits stand there.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Remedy {
    pub material: String,
    pub text: InThree<String>,
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
    #[serde(default)]
    evidence: Vec<Evidence>,
    #[serde(default)]
    against: Vec<RawAgainst>,
    #[serde(default)]
    weather: Vec<Spell>,
    #[serde(default)]
    after: Vec<String>,
    #[serde(default)]
    without: Vec<String>,
    #[serde(default)]
    comes_with: Vec<String>,
    #[serde(default)]
    trays: bool,
    #[serde(default)]
    plain_to_see: bool,
    first_steps: InThree<String>,
    watch_for: Option<InThree<String>>,
    pull_when: Option<InThree<String>>,
    call_when: Option<InThree<String>>,
    #[serde(default)]
    remedies: Vec<RawRemedy>,
    #[serde(default)]
    crops: Vec<String>,
    sources: Vec<Spanned<String>>,
    #[serde(default)]
    cautions: Vec<InThree<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawAgainst {
    sign: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawRemedy {
    material: String,
    en: String,
    hi: String,
    #[serde(rename = "hi-Latn")]
    hi_latn: String,
}

pub fn read(reader: &mut Reader<'_>, raw: RawTrouble) -> Option<(String, Trouble)> {
    let sources = raw.sources.iter().map(|source| reader.source(source.span(), source.get_ref())).collect();
    let sources: Option<Vec<_>> = sources;
    let remedy = |raw: RawRemedy| Remedy {
        material: raw.material,
        text: InThree { en: raw.en, hi: raw.hi, hi_latn: raw.hi_latn },
    };
    let trouble = Trouble {
        id: raw.id,
        kind: raw.kind,
        names: raw.names,
        signs: raw.signs,
        evidence: raw.evidence,
        against: raw.against.into_iter().map(|against| against.sign).collect(),
        weather: raw.weather,
        after: raw.after,
        without: raw.without,
        comes_with: raw.comes_with,
        trays: raw.trays,
        plain_to_see: raw.plain_to_see,
        first_steps: raw.first_steps,
        watch_for: raw.watch_for,
        pull_when: raw.pull_when,
        call_when: raw.call_when,
        remedies: raw.remedies.into_iter().map(remedy).collect(),
        crops: raw.crops,
        sources: sources?,
        cautions: raw.cautions,
    };
    Some((trouble.id.clone(), trouble))
}
