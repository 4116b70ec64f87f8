//! Where each plant of a bed stands: the places that [`super::space`] counts.

use super::space::{BedPlaces, HAIR, Rule, bed_places, round_layout};
use super::surroundings::vessel;
use crate::agronomy::maths::{cos, sin, sqrt};
use crate::garden::{BedKind, Shape};
use crate::knowledge::Crop;
use crate::quantity::Length;
use std::f64::consts::PI;

/// More plants than this are strewn, not set one by one.
const MOST: usize = 1_200;
/// So many on one ring stand as far apart as any arrangement in a circle allows (known optima of few circles).
const ON_ONE_RING: usize = 5;

/// A bed with the places of its plants at the usual gap.
#[derive(Debug, Clone, PartialEq)]
pub struct BedLayout {
    pub places: BedPlaces,
    /// Of a box from its corner, along its length and its width; of a round one from its middle.
    pub plants: Vec<(Length, Length)>,
    /// The top of a round bed.
    pub across: Option<Length>,
}

/// The layout of one crop in an empty bed; none where there are too many plants to be set one by one.
#[must_use]
pub fn bed_layout(crop: &Crop, kind: BedKind, shape: &Shape) -> Option<BedLayout> {
    let places = bed_places(crop, kind, shape);
    let gap = crop.bed.spacing.value();
    let count = places.plants.value() as usize;
    if !(1..=MOST).contains(&count) {
        return None;
    }
    if let (Rule::Rows(rows), Shape::Box { length, width, .. }) = (&places.by, shape) {
        let along = middled(rows.square.0, length.quantity(), gap);
        let across = middled(rows.square.1, width.quantity(), gap);
        let plants = across.iter().flat_map(|y| along.iter().map(|x| (*x, *y))).collect();
        return Some(BedLayout { places, plants, across: None });
    }
    let across = Length::metres(sqrt(vessel(shape).measures().top.as_square_metres() * 4.0 / PI));
    // As counted: where leaves hang over the rim, stems may stand up to it.
    let reach = if matches!(places.by, Rule::Litres(_)) { across + gap } else { across };
    let plants = round(count, reach, gap);
    Some(BedLayout { places, plants, across: Some(across) })
}

/// Places on a line of a length, a gap apart, as far from one end as from the other.
fn middled(count: u32, length: Length, gap: Length) -> Vec<Length> {
    let first = (length - gap * f64::from(count.saturating_sub(1))) / 2.0;
    (0..count).map(|place| first + gap * f64::from(place)).collect()
}

/// So many places from the middle of a pot whose stems may stand half a gap within a reach.
fn round(count: usize, reach: Length, gap: Length) -> Vec<(Length, Length)> {
    let full = round_layout(reach / gap);
    let in_metres = |(x, y): (f64, f64)| (gap * x, gap * y);
    if full.len() <= count {
        return full.into_iter().map(in_metres).collect();
    }
    if count == 1 {
        return vec![(Length::metres(0.0), Length::metres(0.0))];
    }
    if count <= ON_ONE_RING {
        // Fewer than fit: no wider than they need, and not so near the rim.
        let least = 0.5 / sin(PI / count as f64);
        let radius = least.max((reach / gap - 1.0) / 4.0).min((reach / gap - 1.0) / 2.0 + HAIR);
        let turn = |place: usize| 2.0 * PI * place as f64 / count as f64 - PI / 2.0;
        return (0..count).map(|place| in_metres((radius * cos(turn(place)), radius * sin(turn(place))))).collect();
    }
    let mut nearest = full;
    nearest.sort_by(|one, other| (one.0 * one.0 + one.1 * one.1).total_cmp(&(other.0 * other.0 + other.1 * other.1)));
    nearest.into_iter().take(count).map(in_metres).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::Measure;
    use crate::knowledge::{Files, Knowledge};
    use crate::quantity::Volume;

    fn least_apart(plants: &[(Length, Length)]) -> f64 {
        let mut least = f64::INFINITY;
        for (at, one) in plants.iter().enumerate() {
            for other in &plants[at + 1..] {
                let (x, y) = ((one.0 - other.0).as_metres(), (one.1 - other.1).as_metres());
                least = least.min((x * x + y * y).sqrt());
            }
        }
        least
    }

    /// Brute force over every crop and some vessels: as many plants as were counted, none too near another, all within.
    #[test]
    fn the_places_are_those_that_were_counted() {
        let known = Knowledge::read(&Files::embedded()).0;
        let long = |text: &str| Measure::<Length>::read(text).unwrap();
        let depth = long("12 in");
        let boxed = |length: &str, width: &str| Shape::Box { length: long(length), width: long(width), depth };
        let round = |across: &str| Shape::Round { diameter: long(across), depth };
        let bag = Shape::Bag { volume: Measure::<Volume>::read("40 L").unwrap(), depth: Some(depth) };
        let vessels = [
            (BedKind::Box, boxed("4 ft", "3 ft")),
            (BedKind::Box, boxed("1.7 m", "25 cm")),
            (BedKind::Tray, boxed("30 cm", "20 cm")),
            (BedKind::Pot, round("12 in")),
            (BedKind::Basket, round("60 cm")),
            (BedKind::Pot, round("1 m")),
            (BedKind::Bag, bag),
        ];
        let mut looked_at = 0;
        for crop in known.crops.values() {
            for (kind, shape) in &vessels {
                let Some(layout) = bed_layout(crop, *kind, shape) else { continue };
                looked_at += 1;
                let (gap, plants) = (crop.bed.spacing.value().as_metres(), &layout.plants);
                assert_eq!(plants.len() as f64, layout.places.plants.value(), "{} {shape:?}", crop.id);
                assert!(least_apart(plants) >= gap - 1e-6, "{} {shape:?}: {}", crop.id, least_apart(plants));
                for (x, y) in plants {
                    let (x, y) = (x.as_metres(), y.as_metres());
                    let within = match shape {
                        Shape::Box { length, width, .. } => {
                            let (long, wide) = (length.quantity().as_metres(), width.quantity().as_metres());
                            (0.0..=long).contains(&x) && (0.0..=wide).contains(&y)
                        }
                        _ => (x * x + y * y).sqrt() <= layout.across.unwrap().as_metres() / 2.0 + 1e-6,
                    };
                    assert!(within, "{} {shape:?}: {x} {y}", crop.id);
                }
            }
        }
        assert!(looked_at > 100, "{looked_at}");
    }
}
