//! What a bed weighs when wet, and what it lays on the slab under it.
//!
//! Nothing here says what a slab carries: that is a structural engineer's word.

use super::surroundings::vessel;
use crate::garden::{Bed, BedKind, Sides};
use crate::knowledge::{Mix, MixProperties};
use crate::quantity::{Area, Estimate, Length, Mass, RoofLoad};

/// The parts of one bed's weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BedLoad {
    /// The mix drained after a watering: at container capacity.
    pub mix: Estimate<Mass>,
    /// The mix with every pore full of water.
    pub mix_full: Estimate<Mass>,
    /// Water standing on the mix and in the tray below, where the drain is blocked.
    pub ponded: Estimate<Mass>,
    /// Sides, lining, trays or the pot itself.
    pub vessel: Estimate<Mass>,
    pub plants: Estimate<Mass>,
    /// What it stands on.
    pub footprint: Area,
}

/// The weight of a mix on a square metre, for a depth alone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AreaLoad {
    pub kilograms_per_square_metre: Estimate<f64>,
    pub load: Estimate<RoofLoad>,
}

/// All beds of a site with what comes on top of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SiteLoad {
    pub beds: Estimate<Mass>,
    /// Two people at work.
    pub people: Estimate<Mass>,
    /// Sacks for the largest bed on the day they are delivered, wet through.
    pub sacks: Mass,
    /// From one light person on drained beds to blocked drains, two heavy people and the sacks.
    pub total: Estimate<Mass>,
}

/// One person at work, kg: light, usual, heavy with tools (judgement).
const PERSON_KG: [f64; 3] = [50.0, 80.0, 100.0];
const PEOPLE: f64 = 2.0;

/// Garden soil, wet to saturated, kg/L: natural soil light to heavy (public guide pages on roof gardens).
pub const GARDEN_SOIL_KG_PER_L: (f64, f64) = (1.28, 2.0);

/// No grain is denser than quartz, 2.65 kg/L (common handbook value): what solids leave is pores.
const DENSEST_SOLID_KG_PER_L: f64 = 2.65;

/// Water that a hollow drainage tray or a saucer keeps when it can't run off: depth (judgement).
const TRAY_WATER: [Length; 3] = [Length::metres(0.01), Length::metres(0.02), Length::metres(0.03)];

impl BedLoad {
    /// After a watering, drained.
    #[must_use]
    pub fn soaked(&self) -> Estimate<Mass> {
        sum([self.mix, self.vessel, self.plants])
    }

    /// The drain blocked in heavy rain.
    #[must_use]
    pub fn waterlogged(&self) -> Estimate<Mass> {
        sum([self.mix_full, self.ponded, self.vessel, self.plants])
    }

    /// Wet, as it may be met: from a drained bed to a blocked one.
    #[must_use]
    pub fn wet(&self) -> Estimate<Mass> {
        let soaked = self.soaked();
        Estimate::spanning(soaked.value(), [soaked.low(), self.waterlogged().high()])
    }

    /// [`Self::wet`] over the footprint, under standard gravity.
    #[must_use]
    pub fn load(&self) -> Estimate<RoofLoad> {
        self.wet().map(|mass| RoofLoad::of(mass, self.footprint))
    }
}

/// The weight of one bed. None where it has no ground to stand on.
#[must_use]
pub fn bed_load(bed: &Bed, mix: &Mix) -> Option<BedLoad> {
    let whole = vessel(&bed.shape);
    let brim = whole.measures();
    let footprint = brim.bottom;
    if footprint.as_square_metres() <= 0.0 {
        return None;
    }
    let rim = &mix.properties.rim.is;
    let litres = |rim| whole.filled_below(rim).measures().volume.as_litres();
    // A deeper rim holds less mix.
    let litres = Estimate::spanning(litres(rim.value()), [litres(rim.high()), litres(rim.low())]);
    let on_top = match bed.sides_counted() {
        Sides::Slatted => Estimate::exactly(0.0),
        Sides::Cloth => Estimate::spanning(0.0, [rim.high().as_metres()]),
        Sides::Solid => rim.map(Length::as_metres),
    };
    let in_tray = tray_water(bed.kind);
    let deep = |stands: f64, below: f64| (stands * brim.top.as_square_metres() + below) * 1000.0;
    let under = |depth: f64| depth * footprint.as_square_metres();
    let ponded = Estimate::spanning(
        deep(on_top.value(), under(in_tray.value())),
        [deep(on_top.low(), under(in_tray.low())), deep(on_top.high(), under(in_tray.high()))],
    );
    Some(BedLoad {
        mix: product(&litres, &mix.properties.density_wet_kg_per_l.is),
        mix_full: product(&litres, &full_density(&mix.properties)),
        ponded: ponded.map(Mass::kilograms),
        vessel: vessel_mass(bed.kind, brim.side, footprint),
        plants: plants(bed.kind, brim.top),
        footprint,
    })
}

/// A depth of mix alone, from drained to every pore full, on one square metre.
#[must_use]
pub fn area_load(depth: Length, mix: &Mix) -> AreaLoad {
    let wet = &mix.properties.density_wet_kg_per_l.is;
    let full = full_density(&mix.properties);
    let kilograms = |density: f64| density * depth.as_metres() * 1000.0;
    let kilograms = Estimate::spanning(kilograms(wet.value()), [kilograms(wet.low()), kilograms(full.high())]);
    let load = kilograms.map(|mass| RoofLoad::of(Mass::kilograms(mass), Area::square_metres(1.0)));
    AreaLoad { kilograms_per_square_metre: kilograms, load }
}

/// All beds together, each counted as often as it is given, with people and a delivery. None without beds.
#[must_use]
pub fn site_load(beds: &[BedLoad]) -> Option<SiteLoad> {
    let largest = beds.iter().map(|bed| bed.mix.high()).reduce(Mass::max)?;
    let all = sum(beds.iter().map(BedLoad::wet));
    let [light, usual, heavy] = PERSON_KG.map(|kilograms| Mass::kilograms(kilograms * PEOPLE));
    let people = Estimate::spanning(usual, [light, heavy]);
    let total = Estimate::spanning(all.value() + usual, [all.low() + light / PEOPLE, all.high() + heavy + largest]);
    Some(SiteLoad { beds: all, people, sacks: largest, total })
}

/// kg/L with every pore full: dry mix and the water that pores hold, pores being what drains and what stays.
/// The ends move one at a time what moves them apart; no mix has more pores than its solids leave.
#[must_use]
pub fn full_density(properties: &MixProperties) -> Estimate<f64> {
    let (dry, held, air) = (
        &properties.density_dry_kg_per_l.is,
        properties.container_capacity.value().as_of_one(),
        properties.air_space.is.map(|air| air.as_of_one()),
    );
    let full = |dry: f64, air: f64| dry + (held + air).min(1.0 - dry / DENSEST_SOLID_KG_PER_L);
    let wet = &properties.density_wet_kg_per_l.is;
    let value = full(dry.value(), air.value()).max(wet.value());
    let high = full(dry.high(), air.high()).max(wet.high());
    Estimate::spanning(value, [full(dry.low(), air.low()).max(wet.low()), high])
}

/// Metres of water kept below a bed: boxes and trays stand on hollow trays, pots and bags in a saucer.
fn tray_water(kind: BedKind) -> Estimate<f64> {
    let [low, value, high] = TRAY_WATER.map(Length::as_metres);
    match kind {
        BedKind::Basket => Estimate::exactly(0.0),
        BedKind::Box | BedKind::Tray | BedKind::Pot | BedKind::Bag => Estimate::spanning(value, [low, high]),
    }
}

/// kg per m² of sides and of ground, no source, a judgement: bamboo mat to thick board on plastic trays; thin
/// plastic to burnt clay; cloth.
fn vessel_mass(kind: BedKind, side: Area, ground: Area) -> Estimate<Mass> {
    let (of_side, of_ground) = match kind {
        BedKind::Box => ([3.0, 7.0, 15.0], [2.0, 4.0, 8.0]),
        BedKind::Tray => ([1.0, 2.0, 4.0], [1.0, 2.0, 4.0]),
        BedKind::Basket => ([1.0, 3.0, 6.0], [1.0, 3.0, 6.0]),
        BedKind::Pot => ([1.5, 8.0, 25.0], [1.5, 8.0, 25.0]),
        BedKind::Bag => ([0.2, 0.3, 0.6], [0.2, 0.3, 0.6]),
    };
    let at = |end: usize| {
        let pick = |all: [f64; 3]| all.get(end).copied().unwrap_or_default();
        Mass::kilograms(pick(of_side) * side.as_square_metres() + pick(of_ground) * ground.as_square_metres())
    };
    Estimate::spanning(at(1), [at(0), at(2)])
}

/// What stands in it, with stakes and fruit (judgement): by the square metre of a bed, or one grown plant or
/// two in a pot or bag.
fn plants(kind: BedKind, top: Area) -> Estimate<Mass> {
    let per_square_metre = |kilograms: f64| Mass::kilograms(kilograms * top.as_square_metres());
    let [low, value, high] = match kind {
        BedKind::Box => [1.0, 4.0, 12.0].map(per_square_metre),
        BedKind::Basket => [1.0, 3.0, 8.0].map(per_square_metre),
        BedKind::Tray => [0.5, 1.5, 3.0].map(per_square_metre),
        BedKind::Pot | BedKind::Bag => [0.3, 1.5, 4.0].map(Mass::kilograms),
    };
    Estimate::spanning(value, [low, high])
}

/// Litres times kg per litre, low with low and high with high.
fn product(litres: &Estimate<f64>, kg_per_l: &Estimate<f64>) -> Estimate<Mass> {
    let mass = |litres: f64, density: f64| Mass::kilograms(litres * density);
    Estimate::spanning(
        mass(litres.value(), kg_per_l.value()),
        [mass(litres.low(), kg_per_l.low()), mass(litres.high(), kg_per_l.high())],
    )
}

/// End with end: weights that stand together are all heavy when they are wet.
fn sum(all: impl IntoIterator<Item = Estimate<Mass>>) -> Estimate<Mass> {
    all.into_iter().fold(Estimate::exactly(Mass::default()), |sum, part| {
        Estimate::spanning(sum.value() + part.value(), [sum.low() + part.low(), sum.high() + part.high()])
    })
}
