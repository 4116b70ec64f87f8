//! How far apart plants stand, and how many fit.
//!
//! A plant may stand half a spacing from the edge. Where leaves set the distance, the ground is counted; where
//! one plant's roots fill a pot or bag, its litres are.

use super::surroundings::vessel;
use crate::agronomy::maths::{asin, cos, sin, sqrt};
use crate::garden::{BedKind, Shape};
use crate::knowledge::{Crop, GrownFor};
use crate::quantity::{Area, Estimate, Length, Volume};
use std::f64::consts::PI;

/// Plants of one crop in a bed, from the widest gap to the closest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BedPlaces {
    pub plants: Estimate<f64>,
    pub by: Rule,
}

/// What sets the number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rule {
    /// Rows at the usual gap.
    Rows(BoxPlaces),
    /// Rings or a grid in a round pot.
    Round,
    /// What one plant's roots want, where that allows fewer than the gap does.
    Litres(Estimate<Volume>),
}

/// How many of a crop stand in an empty bed. A plant alone in a pot or bag may reach over the rim with its
/// leaves; then its litres and the gap between stems both hold, the fewer plants.
#[must_use]
pub fn bed_places(crop: &Crop, kind: BedKind, shape: &Shape) -> BedPlaces {
    let gap = &crop.bed.spacing.is;
    if let Shape::Box { length, width, .. } = *shape {
        let places = |gap| box_places(length.quantity(), width.quantity(), gap);
        let usual = places(gap.value());
        let (wide, close) = (places(gap.high()).in_squares(), places(gap.low()).most());
        let plants = Estimate::spanning(f64::from(usual.in_squares()), [f64::from(wide), f64::from(close)]);
        return BedPlaces { plants, by: Rule::Rows(usual) };
    }
    let measures = vessel(shape).measures();
    let across = Length::metres(sqrt(measures.top.as_square_metres() * 4.0 / PI));
    let alone = matches!(kind, BedKind::Pot | BedKind::Bag | BedKind::Basket);
    let litres = litres_per_plant(crop).filter(|_| alone);
    let by_gap = |gap: Length| {
        // No half gap is kept to the rim where leaves hang over it.
        let reach = if litres.is_some() { across + gap } else { across };
        f64::from(round_places(reach, gap))
    };
    let by_gap = Estimate::spanning(by_gap(gap.value()), [by_gap(gap.high()), by_gap(gap.low())]);
    let Some(each) = litres else { return BedPlaces { plants: by_gap, by: Rule::Round } };
    let by_volume = plants_by_volume(measures.volume, &each);
    let fewer = |one: f64, other: f64| one.min(other);
    let plants = Estimate::spanning(
        fewer(by_gap.value(), by_volume.value()),
        [fewer(by_gap.low(), by_volume.low()), fewer(by_gap.high(), by_volume.high())],
    );
    BedPlaces { plants, by: Rule::Litres(each) }
}

/// How many plants stand in a box, both ways of laying them out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct BoxPlaces {
    /// Along the length and along the width, in rows and columns.
    pub square: (u32, u32),
    /// Every second row moved by half a spacing.
    pub staggered: u32,
}

impl BoxPlaces {
    /// Plants of the square layout.
    #[must_use]
    pub const fn in_squares(&self) -> u32 {
        self.square.0 * self.square.1
    }

    /// The fuller of the two.
    #[must_use]
    pub fn most(&self) -> u32 {
        self.in_squares().max(self.staggered)
    }
}

/// A hair of floating point is no reason to lose a row.
pub(super) const HAIR: f64 = 1e-9;

/// Nothing here is laid out with more plants along one side: a guard against a spacing near zero.
const MOST_ALONG: f64 = 2_000.0;

/// Places in a box or tray. However small it is, one plant stands in its middle.
#[must_use]
pub fn box_places(length: Length, width: Length, spacing: Length) -> BoxPlaces {
    let (length, width) = (length / spacing, width / spacing);
    let square = (along(length), along(width));
    BoxPlaces { square, staggered: staggered(length, width).max(staggered(width, length)) }
}

/// Plants along a side of so many spacings, half a spacing from both ends.
fn along(spacings: f64) -> u32 {
    if !spacings.is_finite() {
        return 1;
    }
    (spacings + HAIR).floor().clamp(1.0, MOST_ALONG) as u32
}

/// Rows along the first side at √3/2 of a spacing, every second moved by half a spacing.
fn staggered(row: f64, across: f64) -> u32 {
    let row_gap = sqrt(3.0) / 2.0;
    let rows = if across.is_finite() {
        ((across - 1.0) / row_gap + HAIR).floor().clamp(0.0, MOST_ALONG) as u32 + 1
    } else {
        1
    };
    let full = along(row);
    // A moved row loses one plant unless half a spacing is left over.
    let moved = if row - f64::from(full) + HAIR >= 0.5 { full } else { full - 1 };
    rows.div_ceil(2) * full + rows / 2 * moved
}

/// Places in a round pot or basket: the most of rings within rings and of a triangular grid.
#[must_use]
pub fn round_places(diameter: Length, spacing: Length) -> u32 {
    u32::try_from(round_layout(diameter / spacing).len()).unwrap_or(u32::MAX).max(1)
}

/// Positions in spacings from the middle, for a pot of so many spacings across.
pub(super) fn round_layout(across: f64) -> Vec<(f64, f64)> {
    let reach = (across.clamp(1.0, 100.0) - 1.0) / 2.0;
    let grids = [(0.0, 0.0), (0.5, 0.0), (0.5, sqrt(3.0) / 6.0)].map(|shift| grid_within(reach, shift));
    grids.into_iter().fold(rings_within(reach), |most, layout| if layout.len() > most.len() { layout } else { most })
}

/// Rings one spacing apart, each as full as the chord allows, the outermost at the reach.
fn rings_within(reach: f64) -> Vec<(f64, f64)> {
    let mut places = Vec::new();
    let mut ring = reach;
    while ring >= 0.5 - HAIR {
        // Neighbours on a ring of radius r are 2 r sin(π/n) apart.
        let count = (PI / asin((0.5 / ring).min(1.0)) + HAIR).floor();
        let steps = (0..count as u32).map(|step| 2.0 * PI * f64::from(step) / count);
        places.extend(steps.map(|angle| (ring * cos(angle), ring * sin(angle))));
        ring -= 1.0;
    }
    // A plant in the middle wants a whole spacing to the innermost ring.
    if ring >= -HAIR || places.is_empty() {
        places.push((0.0, 0.0));
    }
    places
}

fn grid_within(reach: f64, shift: (f64, f64)) -> Vec<(f64, f64)> {
    let row_gap = sqrt(3.0) / 2.0;
    let most = reach.ceil() as i32 + 1;
    let rows = (-most * 2)..=(most * 2);
    rows.flat_map(|row| {
        let moved = if row % 2 == 0 { 0.0 } else { 0.5 };
        (-most..=most).map(move |place| (f64::from(place) + moved + shift.0, f64::from(row) * row_gap + shift.1))
    })
    .filter(|(x, y)| sqrt(x * x + y * y) <= reach + HAIR)
    .collect()
}

/// Plants on an area of no known shape, in squares.
#[must_use]
pub fn area_places(area: Area, spacing: Length) -> f64 {
    area.as_square_metres() / (spacing * spacing).as_square_metres()
}

/// Litres of mix that one plant wants in a pot or bag; none for leaves and roots, where ground is counted.
/// Judgement, held beside the five volumes an extension leaflet prints (AgriLife EHT-062): a hot roof dries a
/// small pot too fast, so the usual lies above the least that bears.
#[must_use]
pub fn litres_per_plant(crop: &Crop) -> Option<Estimate<Volume>> {
    let spacing = crop.bed.spacing.value().as_metres();
    // A larger plant wants more, in step with the ground it covers.
    let by_ground = 80.0 * spacing * spacing;
    let (least, most) = match crop.grown_for {
        // A tree in a drum of 40 to 60 L (common practice, no source).
        GrownFor::Fruit if crop.stands_for_years() => (40.0, 60.0),
        GrownFor::Fruit => (10.0, 20.0),
        GrownFor::Pod => (4.0, 10.0),
        GrownFor::Head => (6.0, 10.0),
        GrownFor::Leaf | GrownFor::Root | GrownFor::Herb | GrownFor::Bulb | GrownFor::Flower | GrownFor::Shoot => {
            return None;
        }
    };
    let usual = by_ground.clamp(least, most);
    Some(Estimate::spanning(usual, [usual * 0.6, usual * 1.25]).map(Volume::litres))
}

/// Plants in a pot or bag by its litres; one always may stand there.
#[must_use]
pub fn plants_by_volume(holds: Volume, for_each: &Estimate<Volume>) -> Estimate<f64> {
    let count = |each: Volume| (holds / each + HAIR).floor().max(1.0);
    Estimate::spanning(count(for_each.value()), [count(for_each.high()), count(for_each.low())])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn apart(places: &[(f64, f64)]) -> f64 {
        let mut least = f64::INFINITY;
        for (at, one) in places.iter().enumerate() {
            for other in &places[at + 1..] {
                least = least.min(((one.0 - other.0).powi(2) + (one.1 - other.1).powi(2)).sqrt());
            }
        }
        least
    }

    /// n circles on a ring touch when the pot is 1 + 1/sin(π/n) of their width across (chord of a circle);
    /// with one in the middle a ring of at least six holds as much and one more.
    #[test]
    fn rings_are_as_full_as_the_chord_allows() {
        for ring in 2_u32..=5 {
            let across = 1.0 + 1.0 / (PI / f64::from(ring)).sin();
            assert_eq!(places(across * 1.000_001), ring, "{across}");
            assert!(places(across * 0.999) < ring, "{across}");
        }
        for ring in 6_u32..=8 {
            let across = 1.0 + 1.0 / (PI / f64::from(ring)).sin();
            assert_eq!(places(across * 1.000_001), ring + 1, "{across}");
        }
    }

    #[track_caller]
    fn places(across: f64) -> u32 {
        round_places(Length::metres(across), Length::metres(1.0))
    }

    #[track_caller]
    fn case(length: f64, width: f64, square: (u32, u32), staggered: u32) {
        let got = box_places(Length::metres(length), Length::metres(width), Length::metres(1.0));
        assert_eq!((got.square, got.staggered), (square, staggered), "{length} x {width}");
    }

    /// Counted by hand on squared and on triangular paper, sides in spacings.
    #[test]
    fn boxes_of_a_few_spacings() {
        case(1.0, 1.0, (1, 1), 1);
        case(0.6, 0.6, (1, 1), 1);
        case(4.0, 1.0, (4, 1), 4);
        case(2.0, 2.0, (2, 2), 3);
        case(3.0, 2.0, (3, 2), 5);
        case(3.5, 2.0, (3, 2), 6);
        case(4.0, 2.8, (4, 2), 11);
        case(5.0, 4.47, (5, 4), 23);
    }

    proptest! {
        /// Brute force: no plant of a layout stands too near another or the edge.
        #[test]
        fn no_plant_in_a_pot_is_crowded(across in 1.0f64..12.0) {
            let places = round_layout(across);
            prop_assert!(places.len() == 1 || apart(&places) >= 1.0 - 1e-6, "{}", apart(&places));
            for (x, y) in &places {
                prop_assert!((x * x + y * y).sqrt() <= (across - 1.0) / 2.0 + 1e-6);
            }
            // No packing of circles is denser than π/√12 of the ground (Thue).
            let densest = (across + 1.0).powi(2) * (PI / 4.0) / (3.0f64.sqrt() / 2.0);
            prop_assert!(places.len() as f64 <= densest);
        }

        /// Brute force: a triangular grid laid out place by place has as many as the count says.
        #[test]
        fn staggered_rows_are_counted_as_they_stand(row in 1.0f64..14.0, across in 1.0f64..14.0) {
            let mut count = 0;
            let mut y = 0.5;
            let mut moved = false;
            while y <= across - 0.5 + 1e-9 {
                let mut x = if moved { 1.0 } else { 0.5 };
                while x <= row - 0.5 + 1e-9 {
                    count += 1;
                    x += 1.0;
                }
                y += 3.0f64.sqrt() / 2.0;
                moved = !moved;
            }
            prop_assert_eq!(staggered(row, across), count);
        }

        #[test]
        fn more_room_never_holds_fewer(side in 1.0f64..10.0, more in 0.0f64..3.0) {
            prop_assert!(places(side + more) >= places(side));
            let one = Length::metres(1.0);
            let places = |side: f64| box_places(Length::metres(side), Length::metres(2.3), one).most();
            prop_assert!(places(side + more) >= places(side));
        }
    }
}
