//! A crop: what its file says, as facts.

mod file;

pub use file::read;

use super::fact::{Fact, SourceRef};
use super::names::{InThree, Names};
use crate::quantity::{Fraction, Length, Temperature, ThermalTime};
use serde::Deserialize;

/// One crop of the knowledge base.
#[derive(Debug, Clone, PartialEq)]
pub struct Crop {
    pub id: String,
    pub botanical: String,
    pub family: String,
    pub grown_for: GrownFor,
    pub names: Names,
    pub water: WaterUse,
    pub stages: Stages,
    pub heat: HeatLimits,
    pub emergence: Emergence,
    pub harvest: Harvest,
    pub bed: BedNeeds,
    pub microgreen: Option<Microgreen>,
    pub sowing: Option<Sowing>,
    pub net: Option<NetUse>,
    pub feeding: Option<Feeding>,
    pub salt: Option<SaltTolerance>,
    pub season: Option<SeasonLimits>,
    pub neighbours: Vec<Neighbour>,
    pub cautions: Vec<CropCaution>,
}

/// The part that is eaten.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum GrownFor {
    Leaf,
    Fruit,
    Pod,
    Root,
    Head,
    Herb,
    Bulb,
    Flower,
    /// Grown on trays only, cut as a shoot.
    Shoot,
}

/// FAO-56 dual coefficient and root parameters.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterUse {
    /// Basal crop coefficient of the three stages (table 17), dimensionless.
    pub kcb_initial: Fact<f64>,
    pub kcb_mid: Fact<f64>,
    pub kcb_end: Fact<f64>,
    pub height: Fact<Length>,
    /// In a field; a bed limits it.
    pub root_depth: Fact<Length>,
    /// Depletion fraction p (table 22).
    pub depletion_fraction: Fact<Fraction>,
}

/// Lengths of the four growth stages, days (FAO-56 table 11).
#[derive(Debug, Clone, PartialEq)]
pub struct Stages {
    pub initial_days: Fact<f64>,
    pub development_days: Fact<f64>,
    pub mid_days: Fact<f64>,
    pub late_days: Fact<f64>,
    /// Degree days, over the crop's base and below its upper temperature, that all four take together: the middle of
    /// what the table's rows give on normals of their regions. None where the crop has no rows of its own.
    pub thermal_time: Option<Fact<ThermalTime>>,
}

/// What temperature does to growth.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatLimits {
    /// Growth stops below.
    pub base: Fact<Temperature>,
    /// No further gain above.
    pub upper: Fact<Temperature>,
    /// A week whose mean daily maximum is above is past the crop's limit.
    pub day_limit: Fact<Temperature>,
    /// A mean daily minimum below hurts it.
    pub cold_limit: Fact<Temperature>,
    pub beyond: Beyond,
}

/// What heat past the limit does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Beyond {
    Bolts,
    TurnsBitter,
    DropsFlowers,
    Stops,
    Scorches,
}

impl Crop {
    /// A tree, a shrub or a vine that is planted once and kept for years.
    #[must_use]
    pub fn stands_for_years(&self) -> bool {
        const YEAR_DAYS: f64 = 365.0;
        self.season.as_ref().is_some_and(|season| season.days_in_bed.value() > YEAR_DAYS)
    }

    /// A tree or a shrub that is grown for flowers: one to a tub, and in no box.
    #[must_use]
    pub fn stands_alone(&self) -> bool {
        const SHRUB_APART: Length = Length::metres(0.45);
        let shrub = self.grown_for == GrownFor::Flower && self.bed.spacing.value() >= SHRUB_APART;
        self.stands_for_years() || shrub
    }
}

impl Beyond {
    /// The word that files and phrases use.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Bolts => "bolts",
            Self::TurnsBitter => "turns-bitter",
            Self::DropsFlowers => "drops-flowers",
            Self::Stops => "stops",
            Self::Scorches => "scorches",
        }
    }
}

/// Thermal time to emergence.
#[derive(Debug, Clone, PartialEq)]
pub struct Emergence {
    pub base: Fact<Temperature>,
    pub thermal_time: Fact<ThermalTime>,
    pub optimum: Fact<Temperature>,
    pub ceiling: Fact<Temperature>,
}

/// When thermal time to the first pick begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CountedFrom {
    Sowing,
    Planting,
}

/// First pick, last pick, how much, how one sees it.
#[derive(Debug, Clone, PartialEq)]
pub struct Harvest {
    pub counted_from: CountedFrom,
    pub first: Fact<ThermalTime>,
    /// From first to last pick, days.
    pub picking_days: Fact<f64>,
    /// The whole harvest, g/m².
    pub grams_per_m2: Fact<f64>,
    pub signs: InThree<String>,
}

/// What the crop asks of a bed.
#[derive(Debug, Clone, PartialEq)]
pub struct BedNeeds {
    pub depth: Fact<Length>,
    pub spacing: Fact<Length>,
    /// Least direct sun, h/day.
    pub sun_hours: Fact<f64>,
}

/// The crop on a sprouting tray, cut as a shoot.
#[derive(Debug, Clone, PartialEq)]
pub struct Microgreen {
    pub base: Fact<Temperature>,
    pub upper: Fact<Temperature>,
    /// Sowing to cutting.
    pub thermal_time: Fact<ThermalTime>,
    pub seed_g_per_m2: Fact<f64>,
    pub soak_hours: Fact<f64>,
    pub blackout_days: Fact<f64>,
    pub grams_per_m2: Fact<f64>,
    pub signs: InThree<String>,
}

/// Seed, or the living pieces that are planted instead, and how they go in.
#[derive(Debug, Clone, PartialEq)]
pub struct Sowing {
    /// None where seed is sown; else all "seeds" below are these pieces.
    pub planted_as: Option<PlantedAs>,
    pub thousand_seeds_g: Fact<f64>,
    /// Share of seeds that come up, 0 to 1.
    pub germination: Fact<Fraction>,
    pub depth: Fact<Length>,
    /// Seeds laid for each plant wanted.
    pub seeds_per_plant: Fact<f64>,
}

/// A living piece that is planted where it is to stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlantedAs {
    Clove,
    Tuber,
    Rhizome,
    Slip,
    Cutting,
    Runner,
    Bulb,
}

impl PlantedAs {
    /// The word that files and phrases use.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Clove => "clove",
            Self::Tuber => "tuber",
            Self::Rhizome => "rhizome",
            Self::Slip => "slip",
            Self::Cutting => "cutting",
            Self::Runner => "runner",
            Self::Bulb => "bulb",
        }
    }

    /// Whether it lies in the mix without leaves until it shoots: it can rot there, but no sun scorches it.
    #[must_use]
    pub const fn rests(self) -> bool {
        matches!(self, Self::Clove | Self::Tuber | Self::Rhizome | Self::Bulb)
    }
}

/// What a net does for the crop.
#[derive(Debug, Clone, PartialEq)]
pub struct NetUse {
    /// Light cut that suits it in the hot season.
    pub cut: Fact<Fraction>,
    /// A week whose mean daily maximum is above calls for a net.
    pub above: Fact<Temperature>,
    /// Least daily light, mol m⁻² d⁻¹ of photosynthetic light.
    pub least_light_mol_m2: Fact<f64>,
}

/// How much the crop takes from the mix.
#[derive(Debug, Clone, PartialEq)]
pub struct Feeding {
    /// Nitrogen taken away with 1 kg of fresh harvest, g.
    pub nitrogen_g_per_kg: Fact<f64>,
    /// Days from one feed to the next.
    pub every_days: Fact<f64>,
}

/// Salt that roots stand: FAO-56 table 23.
#[derive(Debug, Clone, PartialEq)]
pub struct SaltTolerance {
    /// Conductivity of the saturation extract at which yield begins to fall, dS/m.
    pub threshold_ds_m: Fact<f64>,
    /// Yield lost for each dS/m beyond, percent.
    pub loss_percent_per_ds_m: Fact<f64>,
}

/// When it may stand, beyond its heat and cold limits.
#[derive(Debug, Clone, PartialEq)]
pub struct SeasonLimits {
    /// Bolts where the day is longer than this, h; none where day length does not matter.
    pub bolts_above_day_h: Option<Fact<f64>>,
    /// Whole time in the bed, days, from sowing or planting to the last pick.
    pub days_in_bed: Fact<f64>,
    /// Its flowers draw bees, so that nothing is sprayed while they are open.
    pub draws_bees: bool,
}

/// Another crop that does it good or harm, with the evidence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Neighbour {
    pub crop: String,
    pub effect: Effect,
    pub text: InThree<String>,
    pub source: SourceRef,
}

/// What a neighbour does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Effect {
    Good,
    Bad,
}

/// When a caution is due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum WhenDue {
    Harvest,
    Microgreen,
    Always,
}

/// A caution of this crop.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CropCaution {
    pub when: WhenDue,
    pub text: InThree<String>,
}
