//! "A 4 by 2 box": sides without a unit, of a box.

use super::{Found, Measured, Named, Reading};
use crate::garden::BedKind;
use crate::quantity::{Unit, Written};

/// Boxes are spoken of in feet where no unit is said (common practice, no source); the answer names the size with it.
const USUAL: Unit = Unit::Foot;

/// Sides in feet of a box that may stand on a roof (judgement): "30 by 30" is none.
const SIDES_FT: std::ops::RangeInclusive<f64> = 1.0..=15.0;

/// The word for the box stands so near to its sides, in tokens.
const NEAR: usize = 3;

impl Found {
    /// The sides of a box that were said without a unit, in feet. A message with any unit of length says its own.
    pub(super) fn with_bare_box(&self, reading: &mut Reading) {
        let [bare] = self.quantities.bare.as_slice() else { return };
        let beside = |at: usize| at + NEAR >= bare.span.start && at <= bare.span.end + NEAR;
        let of_box = |named: &Named| *named == Named::BedKind(BedKind::Box);
        let is_box = self.names.iter().any(|hit| of_box(&hit.meaning) && beside(hit.span.start));
        let fits = bare.values.len() <= 3 && bare.values.iter().all(|value| SIDES_FT.contains(value));
        if !is_box || !fits || !reading.measures.is_empty() {
            return;
        }
        let side = |place: usize| bare.values.get(place).map(|value| Written { value: *value, unit: USUAL });
        let measured = Measured { length: side(0), width: side(1), depth: side(2), diameter: None };
        reading.quantities.extend([measured.length, measured.width, measured.depth].into_iter().flatten());
        reading.measures.push(measured);
    }
}
