//! A crop's file: its text as parts, and the parts as checked facts.

use super::{
    BedNeeds, Beyond, CountedFrom, Crop, CropCaution, Effect, Emergence, Feeding, GrownFor, Harvest, HeatLimits,
    Microgreen, Neighbour, NetUse, PlantedAs, SaltTolerance, SeasonLimits, Sowing, Stages, WaterUse, WhenDue,
};
use crate::knowledge::names::{InThree, Names};
use crate::knowledge::raw::{RawFact, Reader, said};
use crate::quantity::{Fraction, Length, Temperature, ThermalTime};
use serde::Deserialize;
use toml::Spanned;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RawCrop {
    id: String,
    botanical: String,
    family: String,
    grown_for: GrownFor,
    names: Names,
    water: RawWater,
    stages: RawStages,
    heat: RawHeat,
    emergence: RawEmergence,
    harvest: RawHarvest,
    bed: RawBed,
    microgreen: Option<RawMicrogreen>,
    sowing: Option<RawSowing>,
    net: Option<RawNet>,
    feeding: Option<RawFeeding>,
    salt: Option<RawSalt>,
    season: Option<RawSeason>,
    #[serde(default)]
    neighbours: Vec<RawNeighbour>,
    #[serde(default)]
    cautions: Vec<RawCaution>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawWater {
    kcb_initial: RawFact,
    kcb_mid: RawFact,
    kcb_end: RawFact,
    height_m: RawFact,
    root_depth_m: RawFact,
    depletion_fraction: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawStages {
    initial_days: RawFact,
    development_days: RawFact,
    mid_days: RawFact,
    late_days: RawFact,
    thermal_time_cd: Option<RawFact>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHeat {
    base_c: RawFact,
    upper_c: RawFact,
    day_limit_c: RawFact,
    cold_limit_c: RawFact,
    beyond: Beyond,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawEmergence {
    base_c: RawFact,
    thermal_time_cd: RawFact,
    optimum_c: RawFact,
    ceiling_c: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawHarvest {
    counted_from: CountedFrom,
    first_cd: RawFact,
    picking_days: RawFact,
    grams_per_m2: RawFact,
    signs: InThree<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawBed {
    depth_cm: RawFact,
    spacing_cm: RawFact,
    sun_hours: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawMicrogreen {
    base_c: RawFact,
    upper_c: RawFact,
    thermal_time_cd: RawFact,
    seed_g_per_m2: RawFact,
    soak_hours: RawFact,
    blackout_days: RawFact,
    grams_per_m2: RawFact,
    signs: InThree<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawSowing {
    planted_as: Option<PlantedAs>,
    thousand_seeds_g: RawFact,
    germination_percent: RawFact,
    depth_cm: RawFact,
    seeds_per_plant: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawNet {
    cut_percent: RawFact,
    above_c: RawFact,
    least_light_mol_m2: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawFeeding {
    nitrogen_g_per_kg: RawFact,
    every_days: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawSalt {
    threshold_ds_m: RawFact,
    loss_percent_per_ds_m: RawFact,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawSeason {
    bolts_above_day_h: Option<RawFact>,
    days_in_bed: RawFact,
    draws_bees: bool,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawNeighbour {
    crop: String,
    effect: Effect,
    en: String,
    hi: String,
    #[serde(rename = "hi-Latn")]
    hi_latn: String,
    from: Spanned<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawCaution {
    when: WhenDue,
    en: String,
    hi: String,
    #[serde(rename = "hi-Latn")]
    hi_latn: String,
}

pub fn read(reader: &mut Reader<'_>, raw: RawCrop) -> Option<(String, Crop)> {
    // Every part is read before any is given up, so that all problems of a file are told at once.
    let water = water(reader, &raw.water);
    let stages = stages(reader, &raw.stages);
    let heat = heat(reader, &raw.heat);
    let emergence = emergence(reader, &raw.emergence);
    let harvest = harvest(reader, raw.harvest);
    let bed = bed(reader, &raw.bed);
    let microgreen = raw.microgreen.map(|raw| microgreen(reader, raw));
    let sowing = raw.sowing.map(|raw| sowing(reader, &raw));
    let net = raw.net.map(|raw| net(reader, &raw));
    let feeding = raw.feeding.map(|raw| feeding(reader, &raw));
    let salt = raw.salt.map(|raw| salt(reader, &raw));
    let season = raw.season.map(|raw| season(reader, &raw));
    let neighbours: Option<Vec<Neighbour>> = raw.neighbours.into_iter().map(|raw| neighbour(reader, raw)).collect();
    let cautions = raw
        .cautions
        .into_iter()
        .map(|raw| CropCaution { when: raw.when, text: InThree { en: raw.en, hi: raw.hi, hi_latn: raw.hi_latn } })
        .collect();
    let crop = Crop {
        id: raw.id,
        botanical: raw.botanical,
        family: raw.family,
        grown_for: raw.grown_for,
        names: raw.names,
        water: water?,
        stages: stages?,
        heat: heat?,
        emergence: emergence?,
        harvest: harvest?,
        bed: bed?,
        microgreen: said(microgreen)?,
        sowing: said(sowing)?,
        net: said(net)?,
        feeding: said(feeding)?,
        salt: said(salt)?,
        season: said(season)?,
        neighbours: neighbours?,
        cautions,
    };
    Some((crop.id.clone(), crop))
}

fn neighbour(reader: &mut Reader<'_>, raw: RawNeighbour) -> Option<Neighbour> {
    let source = reader.source(raw.from.span(), raw.from.get_ref())?;
    let text = InThree { en: raw.en, hi: raw.hi, hi_latn: raw.hi_latn };
    Some(Neighbour { crop: raw.crop, effect: raw.effect, text, source })
}

fn water(reader: &mut Reader<'_>, raw: &RawWater) -> Option<WaterUse> {
    let coefficient = |reader: &mut Reader<'_>, raw| reader.number(raw, "basal crop coefficient", 0.0, 1.5);
    let kcb =
        [coefficient(reader, &raw.kcb_initial), coefficient(reader, &raw.kcb_mid), coefficient(reader, &raw.kcb_end)];
    let height = reader.fact(&raw.height_m, Length::metres);
    let root_depth = reader.fact(&raw.root_depth_m, Length::metres);
    let depletion_fraction = reader.fact(&raw.depletion_fraction, Fraction::of_one);
    let [kcb_initial, kcb_mid, kcb_end] = kcb;
    Some(WaterUse {
        kcb_initial: kcb_initial?,
        kcb_mid: kcb_mid?,
        kcb_end: kcb_end?,
        height: height?,
        root_depth: root_depth?,
        depletion_fraction: depletion_fraction?,
    })
}

fn stages(reader: &mut Reader<'_>, raw: &RawStages) -> Option<Stages> {
    let mut days = |raw| reader.number(raw, "stage length", 0.0, 400.0);
    let lengths = [days(&raw.initial_days), days(&raw.development_days), days(&raw.mid_days), days(&raw.late_days)];
    let [initial_days, development_days, mid_days, late_days] = lengths;
    Some(Stages {
        initial_days: initial_days?,
        development_days: development_days?,
        mid_days: mid_days?,
        late_days: late_days?,
        thermal_time: raw.thermal_time_cd.as_ref().and_then(|raw| reader.fact(raw, ThermalTime::degree_days)),
    })
}

fn heat(reader: &mut Reader<'_>, raw: &RawHeat) -> Option<HeatLimits> {
    let mut celsius = |raw| reader.fact(raw, Temperature::celsius);
    let limits = [celsius(&raw.base_c), celsius(&raw.upper_c), celsius(&raw.day_limit_c), celsius(&raw.cold_limit_c)];
    let [base, upper, day_limit, cold_limit] = limits;
    Some(HeatLimits { base: base?, upper: upper?, day_limit: day_limit?, cold_limit: cold_limit?, beyond: raw.beyond })
}

fn emergence(reader: &mut Reader<'_>, raw: &RawEmergence) -> Option<Emergence> {
    let thermal_time = reader.fact(&raw.thermal_time_cd, ThermalTime::degree_days);
    let mut celsius = |raw| reader.fact(raw, Temperature::celsius);
    let [base, optimum, ceiling] = [celsius(&raw.base_c), celsius(&raw.optimum_c), celsius(&raw.ceiling_c)];
    Some(Emergence { base: base?, thermal_time: thermal_time?, optimum: optimum?, ceiling: ceiling? })
}

fn harvest(reader: &mut Reader<'_>, raw: RawHarvest) -> Option<Harvest> {
    let first = reader.fact(&raw.first_cd, ThermalTime::degree_days);
    let picking_days = reader.number(&raw.picking_days, "picking time", 0.0, 2_000.0);
    let grams_per_m2 = reader.number(&raw.grams_per_m2, "yield in g/m²", 0.0, 50_000.0);
    Some(Harvest {
        counted_from: raw.counted_from,
        first: first?,
        picking_days: picking_days?,
        grams_per_m2: grams_per_m2?,
        signs: raw.signs,
    })
}

fn bed(reader: &mut Reader<'_>, raw: &RawBed) -> Option<BedNeeds> {
    let depth = reader.fact(&raw.depth_cm, Length::centimetres);
    let spacing = reader.fact(&raw.spacing_cm, Length::centimetres);
    let sun_hours = reader.number(&raw.sun_hours, "sun hours", 0.0, 16.0);
    Some(BedNeeds { depth: depth?, spacing: spacing?, sun_hours: sun_hours? })
}

fn microgreen(reader: &mut Reader<'_>, raw: RawMicrogreen) -> Option<Microgreen> {
    let base = reader.fact(&raw.base_c, Temperature::celsius);
    let upper = reader.fact(&raw.upper_c, Temperature::celsius);
    let thermal_time = reader.fact(&raw.thermal_time_cd, ThermalTime::degree_days);
    let seed_g_per_m2 = reader.number(&raw.seed_g_per_m2, "seed in g/m²", 1.0, 2_000.0);
    let soak_hours = reader.number(&raw.soak_hours, "soaking time in h", 0.0, 48.0);
    let blackout_days = reader.number(&raw.blackout_days, "days in the dark", 0.0, 10.0);
    let grams_per_m2 = reader.number(&raw.grams_per_m2, "yield in g/m²", 100.0, 10_000.0);
    Some(Microgreen {
        base: base?,
        upper: upper?,
        thermal_time: thermal_time?,
        seed_g_per_m2: seed_g_per_m2?,
        soak_hours: soak_hours?,
        blackout_days: blackout_days?,
        grams_per_m2: grams_per_m2?,
        signs: raw.signs,
    })
}

fn sowing(reader: &mut Reader<'_>, raw: &RawSowing) -> Option<Sowing> {
    let thousand_seeds_g = reader.number(&raw.thousand_seeds_g, "weight of 1000 seeds in g", 0.02, 100_000.0);
    let germination = reader.fact(&raw.germination_percent, Fraction::percent);
    let depth = reader.fact(&raw.depth_cm, Length::centimetres);
    let seeds_per_plant = reader.number(&raw.seeds_per_plant, "seeds for each plant", 1.0, 60.0);
    Some(Sowing {
        planted_as: raw.planted_as,
        thousand_seeds_g: thousand_seeds_g?,
        germination: germination?,
        depth: depth?,
        seeds_per_plant: seeds_per_plant?,
    })
}

fn net(reader: &mut Reader<'_>, raw: &RawNet) -> Option<NetUse> {
    let cut = reader.fact(&raw.cut_percent, Fraction::percent);
    let above = reader.fact(&raw.above_c, Temperature::celsius);
    let least_light_mol_m2 = reader.number(&raw.least_light_mol_m2, "light in mol/m²/day", 1.0, 60.0);
    Some(NetUse { cut: cut?, above: above?, least_light_mol_m2: least_light_mol_m2? })
}

fn feeding(reader: &mut Reader<'_>, raw: &RawFeeding) -> Option<Feeding> {
    let nitrogen_g_per_kg = reader.number(&raw.nitrogen_g_per_kg, "nitrogen in g/kg", 0.5, 20.0);
    let every_days = reader.number(&raw.every_days, "days between feeds", 3.0, 90.0);
    Some(Feeding { nitrogen_g_per_kg: nitrogen_g_per_kg?, every_days: every_days? })
}

fn salt(reader: &mut Reader<'_>, raw: &RawSalt) -> Option<SaltTolerance> {
    let threshold_ds_m = reader.number(&raw.threshold_ds_m, "conductivity in dS/m", 0.3, 20.0);
    let loss_percent_per_ds_m = reader.number(&raw.loss_percent_per_ds_m, "yield loss in percent", 0.5, 50.0);
    Some(SaltTolerance { threshold_ds_m: threshold_ds_m?, loss_percent_per_ds_m: loss_percent_per_ds_m? })
}

fn season(reader: &mut Reader<'_>, raw: &RawSeason) -> Option<SeasonLimits> {
    let bolts_above_day_h = raw.bolts_above_day_h.as_ref().map(|raw| reader.number(raw, "day length in h", 8.0, 24.0));
    let days_in_bed = reader.number(&raw.days_in_bed, "days in the bed", 5.0, 4_000.0);
    Some(SeasonLimits {
        bolts_above_day_h: said(bolts_above_day_h)?,
        days_in_bed: days_in_bed?,
        draws_bees: raw.draws_bees,
    })
}
