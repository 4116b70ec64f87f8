//! A material: anything put on or in a bed.

use super::fact::Fact;
use super::names::{InThree, Names};
use super::raw::{RawFact, Reader, said};
use crate::quantity::{Fraction, Temperature, WindSpeed};
use serde::Deserialize;

/// One material of the knowledge base.
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    pub id: String,
    pub kind: MaterialKind,
    pub what_for: InThree<String>,
    /// How much and how often, in words.
    pub how: Option<InThree<String>>,
    pub storage: Option<InThree<String>>,
    pub names: Names,
    /// As bought, loose, kg/L.
    pub density_kg_per_l: Option<Fact<f64>>,
    /// Loose litres from 1 kg of a pressed block.
    pub swell_l_per_kg: Option<Fact<f64>>,
    /// By volume, of a bed 30 cm deep after draining.
    pub container_capacity: Option<Fact<Fraction>>,
    pub air_space: Option<Fact<Fraction>>,
    /// By volume, held between 1 and 5 kPa.
    pub easily_available_water: Option<Fact<Fraction>>,
    pub feed: Option<FeedUse>,
    pub spray: Option<SprayUse>,
    pub cautions: Vec<InThree<String>>,
}

/// How a material feeds.
#[derive(Debug, Clone, PartialEq)]
pub struct FeedUse {
    /// Nitrogen by weight.
    pub nitrogen: Fact<Fraction>,
    /// Share of its nitrogen that plants get within about three months in warm moist mix.
    pub released: Fact<Fraction>,
    /// Strewn on a bed at one time, g/m².
    pub grams_per_m2: Option<Fact<f64>>,
    /// Stirred or steeped in water, g/L.
    pub grams_per_litre: Option<Fact<f64>>,
    /// Poured in water, ml/L.
    pub millilitres_per_litre: Option<Fact<f64>>,
}

/// How a material is sprayed.
#[derive(Debug, Clone, PartialEq)]
pub struct SprayUse {
    /// For the plain material; a concentrate goes by its label.
    pub millilitres_per_litre: Fact<f64>,
    /// The lowest upper limit that any source gives: never more.
    pub limit_millilitres_per_litre: Fact<f64>,
    /// Which strength is in the bottle must be known before a dose is given.
    pub product_must_be_known: bool,
    /// Not in warmer air.
    pub not_above: Fact<Temperature>,
    /// Not in stronger wind.
    pub not_in_wind: Fact<WindSpeed>,
    /// Days from one spray to the next.
    pub every_days: Fact<f64>,
    /// Days before picking; the label decides where it says more.
    pub wait_days: Fact<f64>,
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
    how: Option<InThree<String>>,
    storage: Option<InThree<String>>,
    names: Names,
    #[serde(default)]
    properties: RawProperties,
    feed: Option<RawFeed>,
    spray: Option<RawSpray>,
    #[serde(default)]
    cautions: Vec<InThree<String>>,
}

#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
struct RawProperties {
    density_kg_per_l: Option<RawFact>,
    swell_l_per_kg: Option<RawFact>,
    container_capacity_percent: Option<RawFact>,
    air_space_percent: Option<RawFact>,
    easily_available_water_percent: Option<RawFact>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawFeed {
    nitrogen_percent: RawFact,
    released_percent: RawFact,
    grams_per_m2: Option<RawFact>,
    grams_per_litre: Option<RawFact>,
    millilitres_per_litre: Option<RawFact>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawSpray {
    millilitres_per_litre: RawFact,
    limit_millilitres_per_litre: RawFact,
    product_must_be_known: bool,
    not_above_c: RawFact,
    not_in_wind_m_s: RawFact,
    every_days: RawFact,
    wait_days: RawFact,
}

pub fn read(reader: &mut Reader<'_>, raw: RawMaterial) -> Option<(String, Material)> {
    let properties = raw.properties;
    let density = properties.density_kg_per_l.map(|raw| reader.number(&raw, "density in kg/L", 0.02, 8.0));
    let swell = properties.swell_l_per_kg.map(|raw| reader.number(&raw, "litres from 1 kg", 1.0, 30.0));
    let mut share = |raw: Option<RawFact>| raw.map(|raw| reader.fact(&raw, Fraction::percent));
    let container_capacity = share(properties.container_capacity_percent);
    let air_space = share(properties.air_space_percent);
    let easily_available_water = share(properties.easily_available_water_percent);
    let feed = raw.feed.map(|raw| feed(reader, &raw));
    let spray = raw.spray.map(|raw| spray(reader, &raw));
    let material = Material {
        id: raw.id,
        kind: raw.kind,
        what_for: raw.what_for,
        how: raw.how,
        storage: raw.storage,
        names: raw.names,
        density_kg_per_l: said(density)?,
        swell_l_per_kg: said(swell)?,
        container_capacity: said(container_capacity)?,
        air_space: said(air_space)?,
        easily_available_water: said(easily_available_water)?,
        feed: said(feed)?,
        spray: said(spray)?,
        cautions: raw.cautions,
    };
    Some((material.id.clone(), material))
}

fn feed(reader: &mut Reader<'_>, raw: &RawFeed) -> Option<FeedUse> {
    let nitrogen = reader.fact(&raw.nitrogen_percent, Fraction::percent);
    let released = reader.fact(&raw.released_percent, Fraction::percent);
    let grams_per_m2 = raw.grams_per_m2.as_ref().map(|raw| reader.number(raw, "g/m²", 1.0, 5_000.0));
    let grams_per_litre = raw.grams_per_litre.as_ref().map(|raw| reader.number(raw, "g/L", 0.1, 200.0));
    let millilitres_per_litre = raw.millilitres_per_litre.as_ref().map(|raw| reader.number(raw, "ml/L", 0.1, 200.0));
    Some(FeedUse {
        nitrogen: nitrogen?,
        released: released?,
        grams_per_m2: said(grams_per_m2)?,
        grams_per_litre: said(grams_per_litre)?,
        millilitres_per_litre: said(millilitres_per_litre)?,
    })
}

fn spray(reader: &mut Reader<'_>, raw: &RawSpray) -> Option<SprayUse> {
    let millilitres_per_litre = reader.number(&raw.millilitres_per_litre, "ml/L", 0.1, 50.0);
    let limit_millilitres_per_litre = reader.number(&raw.limit_millilitres_per_litre, "ml/L", 0.1, 50.0);
    let not_above = reader.fact(&raw.not_above_c, Temperature::celsius);
    let not_in_wind = reader.fact(&raw.not_in_wind_m_s, WindSpeed::metres_per_second);
    let every_days = reader.number(&raw.every_days, "days between sprays", 1.0, 60.0);
    let wait_days = reader.number(&raw.wait_days, "days before picking", 0.0, 60.0);
    Some(SprayUse {
        millilitres_per_litre: millilitres_per_litre?,
        limit_millilitres_per_litre: limit_millilitres_per_litre?,
        product_must_be_known: raw.product_must_be_known,
        not_above: not_above?,
        not_in_wind: not_in_wind?,
        every_days: every_days?,
        wait_days: wait_days?,
    })
}
