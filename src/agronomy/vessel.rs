//! What a box, pot, basket or bag holds and shows to the air.

use crate::agronomy::maths::{cbrt, sqrt};
use crate::quantity::{Area, Length, Volume};
use std::f64::consts::{FRAC_PI_4, PI};

/// A vessel by its inside measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Vessel {
    /// Four straight sides.
    Box { length: Length, width: Length, depth: Length },
    /// Round: a cylinder, or a cut cone where the bottom is of another width.
    Round { top: Length, bottom: Option<Length>, depth: Length },
    /// Known by its volume only: taken as a round one that stands as high as it is wide, as filled
    /// growing bags about do (common practice; a low wide bag shows more to the air).
    Bag { volume: Volume },
}

/// What follows from the measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measures {
    /// Open top.
    pub top: Area,
    /// All sides together, without top and bottom.
    pub side: Area,
    /// What it stands on.
    pub bottom: Area,
    pub volume: Volume,
    pub depth: Length,
}

impl Vessel {
    /// Areas and volume by plain geometry.
    #[must_use]
    pub fn measures(&self) -> Measures {
        match *self {
            Self::Box { length, width, depth } => Measures {
                top: length * width,
                side: (length + width) * 2.0 * depth,
                bottom: length * width,
                volume: length * width * depth,
                depth,
            },
            Self::Round { top, bottom, depth } => round(top, bottom.unwrap_or(top), depth),
            Self::Bag { volume } => {
                let width = Length::metres(cbrt(volume.as_litres() / 1000.0 / FRAC_PI_4));
                Measures { volume, ..round(width, width, width) }
            }
        }
    }

    /// The same vessel filled to this much below its rim; a rim deeper than the vessel leaves nothing.
    ///
    /// A cut cone keeps its slope; a bag of known volume is named by what it is filled with and stays.
    #[must_use]
    pub fn filled_below(&self, rim: Length) -> Self {
        let left = |depth: Length| (depth - rim).max(Length::default());
        match *self {
            Self::Box { length, width, depth } => Self::Box { length, width, depth: left(depth) },
            Self::Round { top, bottom: Some(bottom), depth } if depth > Length::default() => {
                let surface = bottom + (top - bottom) * (left(depth) / depth);
                Self::Round { top: surface, bottom: Some(bottom), depth: left(depth) }
            }
            Self::Round { top, bottom, depth } => Self::Round { top, bottom, depth: left(depth) },
            Self::Bag { volume } => Self::Bag { volume },
        }
    }
}

fn round(top: Length, bottom: Length, depth: Length) -> Measures {
    let (wide, narrow, high) = (top.as_metres(), bottom.as_metres(), depth.as_metres());
    let lean = (wide - narrow) / 2.0;
    let slant = sqrt(lean * lean + high * high);
    Measures {
        top: Area::square_metres(FRAC_PI_4 * wide * wide),
        side: Area::square_metres(PI * f64::midpoint(wide, narrow) * slant),
        bottom: Area::square_metres(FRAC_PI_4 * narrow * narrow),
        volume: Volume::litres(1000.0 * PI / 12.0 * high * (wide * wide + wide * narrow + narrow * narrow)),
        depth,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(vessel: Vessel, top_m2: f64, side_m2: f64, litres: f64) {
        let got = vessel.measures();
        assert!((got.top.as_square_metres() - top_m2).abs() < 1e-9, "{got:?}");
        assert!((got.side.as_square_metres() - side_m2).abs() < 1e-9, "{got:?}");
        assert!((got.volume.as_litres() - litres).abs() < 1e-6, "{got:?}");
    }

    #[test]
    fn measures_of_each_shape() {
        let metres = Length::metres;
        case(Vessel::Box { length: metres(1.2), width: metres(0.9), depth: metres(0.3) }, 1.08, 1.26, 324.0);
        case(Vessel::Round { top: metres(0.4), bottom: None, depth: metres(0.3) }, 0.04 * PI, 0.12 * PI, 12.0 * PI);
        // Half widths 0.4 and 0.1 m over 0.4 m: a slant of 0.5 m, and 0.4/3 × (0.16 + 0.04 + 0.01) × π m³.
        let cone = Vessel::Round { top: metres(0.8), bottom: Some(metres(0.2)), depth: metres(0.4) };
        case(cone, 0.16 * PI, 0.25 * PI, 28.0 * PI);
        case(Vessel::Bag { volume: Volume::litres(250.0 * PI) }, 0.25 * PI, PI, 250.0 * PI);
    }

    #[test]
    fn a_rim_stays_free() {
        let metres = Length::metres;
        let cone = Vessel::Round { top: metres(0.8), bottom: Some(metres(0.2)), depth: metres(0.4) };
        let filled = cone.filled_below(metres(0.1)).measures();
        assert!((filled.top.as_square_metres() - FRAC_PI_4 * 0.65 * 0.65).abs() < 1e-9);
        let empty = cone.filled_below(metres(0.5)).measures();
        assert_eq!(empty.volume, Volume::default());
    }
}
