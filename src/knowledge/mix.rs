//! A mix: a recipe of materials and how it holds water.

use super::fact::Fact;
use super::names::{InThree, Names};
use super::raw::{RawFact, Reader};
use crate::quantity::{Fraction, Length, WaterDepth};
use serde::Deserialize;

/// One mix of the knowledge base.
#[derive(Debug, Clone, PartialEq)]
pub struct Mix {
    pub id: String,
    pub for_what: InThree<String>,
    pub names: Names,
    pub components: Vec<Component>,
    pub additions: Vec<Addition>,
    pub properties: MixProperties,
    pub cautions: Vec<InThree<String>>,
}

/// A share of the loose volume.
#[derive(Debug, Clone, PartialEq)]
pub struct Component {
    pub material: String,
    pub share: Fact<Fraction>,
}

/// A small amount stirred in.
#[derive(Debug, Clone, PartialEq)]
pub struct Addition {
    pub material: String,
    /// g per litre of loose mix.
    pub grams_per_litre: Fact<f64>,
}

/// Physical properties of the settled mix.
#[derive(Debug, Clone, PartialEq)]
pub struct MixProperties {
    /// Water by volume after draining.
    pub container_capacity: Fact<Fraction>,
    /// Water by volume between 1 and 5 kPa.
    pub easily_available: Fact<Fraction>,
    /// Water by volume left where plants wilt.
    pub dry: Fact<Fraction>,
    pub air_space: Fact<Fraction>,
    /// Part of the loose volume lost when it settles.
    pub settling: Fact<Fraction>,
    /// Left free below the edge.
    pub rim: Fact<Length>,
    /// What the top may lose on its bare part before it looks dry.
    pub surface_limit: Fact<WaterDepth>,
    /// The same where seed lies on top.
    pub surface_limit_seed: Fact<WaterDepth>,
    /// Depth of the layer that dries by evaporation (FAO-56 chapter 7).
    pub evaporation_layer: Fact<Length>,
    /// Readily evaporable water REW.
    pub readily_evaporable: Fact<WaterDepth>,
    pub density_dry_kg_per_l: Fact<f64>,
    /// At container capacity.
    pub density_wet_kg_per_l: Fact<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawMix {
    id: String,
    for_what: InThree<String>,
    names: Names,
    components: Vec<RawComponent>,
    #[serde(default)]
    additions: Vec<RawAddition>,
    properties: RawProperties,
    #[serde(default)]
    cautions: Vec<InThree<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawComponent {
    material: String,
    percent: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawAddition {
    material: String,
    grams_per_litre: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawProperties {
    container_capacity_percent: RawFact,
    easily_available_water_percent: RawFact,
    dry_percent: RawFact,
    air_space_percent: RawFact,
    settling_percent: RawFact,
    rim_cm: RawFact,
    surface_limit_mm: RawFact,
    surface_limit_seed_mm: RawFact,
    evaporation_layer_m: RawFact,
    readily_evaporable_mm: RawFact,
    density_dry_kg_per_l: RawFact,
    density_wet_kg_per_l: RawFact,
}

pub fn read(reader: &mut Reader<'_>, raw: RawMix) -> Option<(String, Mix)> {
    let first = raw.components.first().map_or(0..0, |component| component.percent.span());
    let components: Option<Vec<_>> = raw
        .components
        .into_iter()
        .map(|raw| Some(Component { share: reader.fact(&raw.percent, Fraction::percent)?, material: raw.material }))
        .collect();
    let additions: Option<Vec<_>> = raw
        .additions
        .into_iter()
        .map(|raw| {
            let grams_per_litre = reader.number(&raw.grams_per_litre, "g per litre of mix", 0.0, 50.0)?;
            Some(Addition { grams_per_litre, material: raw.material })
        })
        .collect();
    let properties = properties(reader, &raw.properties)?;
    let components = components?;
    let total: f64 = components.iter().map(|component| component.share.value().as_percent()).sum();
    if (total - 100.0).abs() > 0.01 {
        reader.problem(first, format!("the components add up to {total} percent, 100 expected"));
        return None;
    }
    let mix = Mix {
        id: raw.id,
        for_what: raw.for_what,
        names: raw.names,
        components,
        additions: additions?,
        properties,
        cautions: raw.cautions,
    };
    Some((mix.id.clone(), mix))
}

fn properties(reader: &mut Reader<'_>, raw: &RawProperties) -> Option<MixProperties> {
    let mut percent = |raw| reader.fact(raw, Fraction::percent);
    let container_capacity = percent(&raw.container_capacity_percent);
    let easily_available = percent(&raw.easily_available_water_percent);
    let dry = percent(&raw.dry_percent);
    let air_space = percent(&raw.air_space_percent);
    let settling = percent(&raw.settling_percent);
    let mut depth = |raw| reader.fact(raw, WaterDepth::millimetres);
    let surface_limit = depth(&raw.surface_limit_mm);
    let surface_limit_seed = depth(&raw.surface_limit_seed_mm);
    let readily_evaporable = depth(&raw.readily_evaporable_mm);
    let rim = reader.fact(&raw.rim_cm, Length::centimetres);
    let evaporation_layer = reader.fact(&raw.evaporation_layer_m, Length::metres);
    let density_dry_kg_per_l = reader.number(&raw.density_dry_kg_per_l, "density in kg/L", 0.05, 2.0);
    let density_wet_kg_per_l = reader.number(&raw.density_wet_kg_per_l, "density in kg/L", 0.1, 2.5);
    Some(MixProperties {
        container_capacity: container_capacity?,
        easily_available: easily_available?,
        dry: dry?,
        air_space: air_space?,
        settling: settling?,
        rim: rim?,
        surface_limit: surface_limit?,
        surface_limit_seed: surface_limit_seed?,
        evaporation_layer: evaporation_layer?,
        readily_evaporable: readily_evaporable?,
        density_dry_kg_per_l: density_dry_kg_per_l?,
        density_wet_kg_per_l: density_wet_kg_per_l?,
    })
}
