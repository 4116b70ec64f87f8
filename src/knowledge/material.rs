//! A material: anything put on or in a bed.

use super::fact::Fact;
use super::names::{InThree, Names};
use super::raw::{RawFact, Reader};
use serde::Deserialize;

/// One material of the knowledge base.
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    pub id: String,
    pub kind: MaterialKind,
    pub what_for: InThree<String>,
    pub names: Names,
    /// As bought, loose, kg/L.
    pub density_kg_per_l: Option<Fact<f64>>,
    /// Loose litres from 1 kg of a pressed block.
    pub swell_l_per_kg: Option<Fact<f64>>,
    pub cautions: Vec<InThree<String>>,
}

/// What sort of material it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MaterialKind {
    Medium,
    Compost,
    Mineral,
    Meal,
    Feed,
    Spray,
    Cloth,
    Net,
    Tie,
    Tray,
    Board,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawMaterial {
    id: String,
    kind: MaterialKind,
    what_for: InThree<String>,
    names: Names,
    #[serde(default)]
    properties: RawProperties,
    #[serde(default)]
    cautions: Vec<InThree<String>>,
}

#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
struct RawProperties {
    density_kg_per_l: Option<RawFact>,
    swell_l_per_kg: Option<RawFact>,
}

pub fn read(reader: &mut Reader<'_>, raw: RawMaterial) -> Option<(String, Material)> {
    let properties = raw.properties;
    let density = properties.density_kg_per_l.map(|raw| reader.number(&raw, "density in kg/L", 0.02, 8.0));
    let swell = properties.swell_l_per_kg.map(|raw| reader.number(&raw, "litres from 1 kg", 1.0, 30.0));
    let material = Material {
        id: raw.id,
        kind: raw.kind,
        what_for: raw.what_for,
        names: raw.names,
        density_kg_per_l: flat(density)?,
        swell_l_per_kg: flat(swell)?,
        cautions: raw.cautions,
    };
    Some((material.id.clone(), material))
}

/// Nothing said is fine; said wrongly is not.
#[expect(clippy::option_option, reason = "unsaid, wrong and right are three things")]
fn flat<T>(said: Option<Option<T>>) -> Option<Option<T>> {
    match said {
        None => Some(None),
        Some(None) => None,
        Some(right) => Some(right),
    }
}
