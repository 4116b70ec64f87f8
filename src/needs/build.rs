//! What a box takes to build: trays under it, sides, lining cloth, wire.

use crate::quantity::{Area, Length};

/// A drainage tray's usual size, 2 ft × 1.5 ft (common practice, no source).
pub const USUAL_TRAY: (f64, f64) = (2.0, 1.5);
/// Cloth laps over the edge by this much on every side (common practice).
const CLOTH_LAP: Length = Length::metres(0.10);
/// Wire for one corner tie, and one tie for about this much height (common practice).
const WIRE_FOR_A_TIE: Length = Length::metres(0.40);
const HEIGHT_OF_A_TIE: Length = Length::metres(0.15);

/// The parts of one rectangular box.
#[derive(Debug, Clone, Copy, PartialEq)]
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
    let chosen = if along.0 * along.1 <= across.0 * across.1 { along } else { across };
    let reach = (depth + CLOTH_LAP) * 2.0;
    let ties = 4.0 * (depth / HEIGHT_OF_A_TIE).ceil().max(2.0);
    BuildNeed {
        trays: chosen.0 * chosen.1,
        grid: chosen,
        sides: (length + width) * 2.0,
        cloth: (length + reach) * (width + reach),
        wire: WIRE_FOR_A_TIE * ties,
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
        case(4.0, 2.0, (2.0, 1.5), 3);
        case(4.0, 3.0, (2.0, 1.0), 6);
        case(6.0, 2.0, (2.0, 1.0), 6);
        case(8.0, 2.0, (2.0, 1.0), 8);
        case(1.0, 1.0, (2.0, 1.5), 1);
    }
}
