//! How much mix a bed takes, and how much of each material.

use crate::agronomy::vessel::Vessel;
use crate::knowledge::{Fact, Knowledge, Mix};
use crate::quantity::{Area, Estimate, Fraction, Length, Mass, Quantity, Volume};

/// The mix of one or several equal beds.
#[derive(Debug, Clone, PartialEq)]
pub struct MixNeed {
    /// In the bed, a rim below its edge, after settling.
    pub settled: Estimate<Volume>,
    /// Loose, to buy.
    pub loose: Estimate<Volume>,
    pub parts: Vec<Part>,
}

/// One material of the mix.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    pub material: String,
    /// Left out for a small amount stirred in.
    pub litres: Option<Estimate<Volume>>,
    /// Left out where no density is known.
    pub mass: Option<Estimate<Mass>>,
    pub share: Option<Fact<Fraction>>,
    pub per_litre: Option<Fact<f64>>,
}

/// The mix of `count` equal vessels. The range comes from the rim and from how far the mix settles; the
/// shares of the recipe are its own.
#[must_use]
pub fn mix_need(vessel: &Vessel, count: f64, mix: &Mix, known: &Knowledge) -> MixNeed {
    let rim = &mix.properties.rim.is;
    let holds = |rim| vessel.filled_below(rim).measures().volume * count;
    let settled = Estimate::spanning(holds(rim.value()), [holds(rim.high()), holds(rim.low())]);
    loose_need(settled, mix, known)
}

/// What fills up a bed whose mix has sunk by this much below where it stood.
#[must_use]
pub fn top_up_need(top: Area, sunk: Length, mix: &Mix, known: &Knowledge) -> MixNeed {
    loose_need(Estimate::exactly(top * sunk), mix, known)
}

/// One list for several beds: added up before any rounding, each material once, in the order first met.
#[must_use]
pub fn total(needs: &[MixNeed]) -> MixNeed {
    let none = || Estimate::exactly(Volume::default());
    let mut all = MixNeed { settled: none(), loose: none(), parts: Vec::new() };
    for need in needs {
        all.settled = plus(&all.settled, &need.settled);
        all.loose = plus(&all.loose, &need.loose);
        for part in &need.parts {
            let Some(known) = all.parts.iter_mut().find(|known| known.material == part.material) else {
                all.parts.push(Part { share: None, per_litre: None, ..part.clone() });
                continue;
            };
            known.litres = known.litres.zip(part.litres).map(|(one, other)| plus(&one, &other));
            known.mass = known.mass.zip(part.mass).map(|(one, other)| plus(&one, &other));
        }
    }
    all
}

/// Pressed blocks for these loose litres, by weight. The least swelling asks for the most.
#[must_use]
pub fn blocks_need(litres: &Estimate<Volume>, swell_l_per_kg: &Estimate<f64>) -> Estimate<Mass> {
    let mass = |volume: Volume, swell: f64| Mass::kilograms(volume.as_litres() / swell);
    Estimate::spanning(
        mass(litres.value(), swell_l_per_kg.value()),
        [mass(litres.low(), swell_l_per_kg.high()), mass(litres.high(), swell_l_per_kg.low())],
    )
}

/// The loose litres that so much of pressed blocks swells to.
#[must_use]
pub fn swollen(mass: Mass, swell_l_per_kg: &Estimate<f64>) -> Estimate<Volume> {
    swell_l_per_kg.map(|swell| Volume::litres(mass.as_kilograms() * swell))
}

fn plus<Q: Quantity + std::ops::Add<Output = Q>>(one: &Estimate<Q>, other: &Estimate<Q>) -> Estimate<Q> {
    Estimate::spanning(one.value() + other.value(), [one.low() + other.low(), one.high() + other.high()])
}

/// The materials of a settled volume of mix.
#[must_use]
pub fn loose_need(settled: Estimate<Volume>, mix: &Mix, known: &Knowledge) -> MixNeed {
    let settling = &mix.properties.settling.is;
    let before = |volume: Volume, settling: Fraction| volume / (1.0 - settling.as_of_one()).max(0.1);
    let loose = Estimate::spanning(
        before(settled.value(), settling.value()),
        [before(settled.low(), settling.low()), before(settled.high(), settling.high())],
    );
    let components = mix.components.iter().map(|component| {
        let litres = loose.map(|volume| volume * component.share.value().as_of_one());
        let density = known.materials.get(&component.material).and_then(|m| m.density_kg_per_l.as_ref());
        Part {
            material: component.material.clone(),
            mass: density.map(|density| product(&litres, &density.is)),
            litres: Some(litres),
            share: Some(component.share.clone()),
            per_litre: None,
        }
    });
    let additions = mix.additions.iter().map(|addition| Part {
        material: addition.material.clone(),
        litres: None,
        mass: Some(product(&loose, &addition.grams_per_litre.is.map(|grams| grams / 1000.0))),
        share: None,
        per_litre: Some(addition.grams_per_litre.clone()),
    });
    MixNeed { settled, loose, parts: components.chain(additions).collect() }
}

/// Litres times kg per litre, low with low and high with high.
fn product(litres: &Estimate<Volume>, kg_per_l: &Estimate<f64>) -> Estimate<Mass> {
    let mass = |volume: Volume, density: f64| Mass::kilograms(volume.as_litres() * density);
    Estimate::spanning(
        mass(litres.value(), kg_per_l.value()),
        [mass(litres.low(), kg_per_l.low()), mass(litres.high(), kg_per_l.high())],
    )
}
