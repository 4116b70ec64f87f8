//! What a box takes to build: trays under it, sides, lining cloth, wire.

use crate::garden::{BedKind, Shape};
use crate::quantity::{Area, Length};

/// A drainage tray's usual size, 2 ft × 1.5 ft (common practice, no source).
pub const USUAL_TRAY: (f64, f64) = (2.0, 1.5);
/// Cloth laps over the edge by this much on every side (common practice).
const CLOTH_LAP: Length = Length::metres(0.10);
/// Wire for one corner tie, and one tie for about this much height (common practice).
const WIRE_FOR_A_TIE: Length = Length::metres(0.40);
const HEIGHT_OF_A_TIE: Length = Length::metres(0.15);

/// The parts of one rectangular box.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BuildNeed {
    pub trays: u32,
    /// Trays along the length and along the width.
    pub grid: (u32, u32),
    /// Running metres of side board or bamboo mat, as high as the box.
    pub sides: Length,
    pub cloth: Area,
    pub wire: Length,
}

/// Trays lock edge to edge, so all lie the same way: the fewer of the two grids. Cloth lines bottom and
/// sides in one piece with a lap over the edge.
#[must_use]
pub fn build_need(length: Length, width: Length, depth: Length, tray: (Length, Length)) -> BuildNeed {
    let along = grid(length, width, tray);
    let across = grid(length, width, (tray.1, tray.0));
    let count = |grid: (u32, u32)| grid.0.saturating_mul(grid.1);
    let chosen = if count(along) <= count(across) { along } else { across };
    let reach = (depth + CLOTH_LAP) * 2.0;
    let ties = 4.0 * (depth / HEIGHT_OF_A_TIE).ceil().max(2.0);
    BuildNeed {
        trays: count(chosen),
        grid: chosen,
        sides: (length + width) * 2.0,
        cloth: (length + reach) * (width + reach),
        wire: WIRE_FOR_A_TIE * ties,
    }
}

/// The parts of a round one: no trays and no sides. A basket is lined in one piece cut from a square; a pot has
/// a piece over its holes; a bag is its own cloth.
#[must_use]
pub fn round_need(kind: BedKind, diameter: Length, depth: Length) -> BuildNeed {
    let side = match kind {
        BedKind::Bag => Length::default(),
        BedKind::Pot => diameter,
        BedKind::Basket | BedKind::Box | BedKind::Tray => diameter + (depth + CLOTH_LAP) * 2.0,
    };
    BuildNeed { cloth: side * side, ..BuildNeed::default() }
}

/// The parts of a bed of any shape; a sprouting tray is one already.
#[must_use]
pub fn parts_need(kind: BedKind, shape: &Shape, tray: (Length, Length)) -> BuildNeed {
    match *shape {
        Shape::Box { .. } if kind == BedKind::Tray => BuildNeed::default(),
        Shape::Box { length, width, depth } => build_need(length.quantity(), width.quantity(), depth.quantity(), tray),
        Shape::Round { diameter, depth } => round_need(kind, diameter.quantity(), depth.quantity()),
        Shape::Bag { .. } => BuildNeed::default(),
    }
}

/// One list for several beds: whole trays, and lengths and cloth added up before any rounding.
#[must_use]
pub fn total(needs: &[BuildNeed]) -> BuildNeed {
    BuildNeed {
        trays: needs.iter().map(|need| need.trays).sum(),
        grid: (0, 0),
        sides: needs.iter().map(|need| need.sides).sum(),
        cloth: needs.iter().map(|need| need.cloth).sum(),
        wire: needs.iter().map(|need| need.wire).sum(),
    }
}

/// How many trays cover a length and a width, laid one way. A hair of overhang is none.
fn grid(length: Length, width: Length, tray: (Length, Length)) -> (u32, u32) {
    const HAIR: f64 = 1e-6;
    let covers = |side: Length, piece: Length| ((side / piece) - HAIR).ceil().max(1.0) as u32;
    (covers(length, tray.0), covers(width, tray.1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn case(length_ft: f64, width_ft: f64, tray_ft: (f64, f64), trays: u32) {
        let feet = Length::feet;
        let need = build_need(feet(length_ft), feet(width_ft), feet(1.0), (feet(tray_ft.0), feet(tray_ft.1)));
        assert_eq!(need.trays, trays, "{length_ft} x {width_ft} ft");
    }

    /// Counted by hand: trays laid edge to edge, all the same way.
    #[test]
    fn counts_trays() {
        case(4.0, 3.0, (2.0, 1.5), 4);
        case(3.0, 4.0, (2.0, 1.5), 4);
        case(6.0, 3.0, (2.0, 1.5), 6);
        // Three across cover 4.5 × 2 ft; lengthwise it takes four.
        case(4.0, 2.0, (2.0, 1.5), 3);
        case(4.0, 3.0, (2.0, 1.0), 6);
        case(6.0, 2.0, (2.0, 1.0), 6);
        case(8.0, 2.0, (2.0, 1.0), 8);
        case(1.0, 1.0, (2.0, 1.5), 1);
    }

    /// Trays put down one by one until a side is covered.
    fn laid(side_mm: u32, tray_mm: u32) -> u32 {
        let (mut count, mut covered) = (1, tray_mm);
        while covered < side_mm {
            count += 1;
            covered += tray_mm;
        }
        count
    }

    proptest! {
        /// Brute force, any box and any tray.
        #[test]
        fn trays_put_down_one_by_one(length in 100_u32..6000, width in 100_u32..3000, tray in (150_u32..900, 150_u32..900)) {
            let mm = |value: u32| Length::millimetres(f64::from(value));
            let need = build_need(mm(length), mm(width), mm(300), (mm(tray.0), mm(tray.1)));
            let one = laid(length, tray.0) * laid(width, tray.1);
            let other = laid(length, tray.1) * laid(width, tray.0);
            prop_assert_eq!(need.trays, one.min(other));
            prop_assert_eq!(need.grid.0 * need.grid.1, need.trays);
        }
    }

    #[test]
    fn a_round_one_is_lined_and_takes_no_trays() {
        let need = round_need(BedKind::Basket, Length::metres(0.4), Length::metres(0.2));
        // 0.4 m across, twice 0.2 m of side and 0.1 m of lap: a square of 1 m.
        assert_eq!((need.trays, need.sides), (0, Length::default()));
        assert!((need.cloth.as_square_metres() - 1.0).abs() < 1e-9);
        assert_eq!(round_need(BedKind::Bag, Length::metres(0.4), Length::metres(0.2)).cloth, Area::default());
    }
}
