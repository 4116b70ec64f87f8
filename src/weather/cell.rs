//! Cells: sites that lie close together share one fetch and one forecast.

use chrono_tz::Tz;
use serde::{Deserialize, Serialize};
use std::fmt::{Display, Formatter};

/// A cell is so many hundredths of a degree wide and high: 0.05°, 5.6 km from south to north and 5.2 km from west to
/// east at 21°. No site lies farther than 4 km from the middle of its cell.
const SIDE: i32 = 5;

/// A cell by its middle, in hundredths of a degree: all that is ever told to a forecast service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct Cell {
    lat_hundredths: i32,
    lon_hundredths: i32,
}

impl Cell {
    /// The cell of a position in degrees, north and east positive.
    #[must_use]
    pub fn of(latitude_deg: f64, longitude_deg: f64) -> Self {
        let middle = |degrees: f64| (degrees * 100.0 / f64::from(SIDE)).round() as i32 * SIDE;
        Self { lat_hundredths: middle(latitude_deg), lon_hundredths: middle(longitude_deg) }
    }

    /// Latitude of its middle.
    #[must_use]
    pub fn latitude_deg(self) -> f64 {
        f64::from(self.lat_hundredths) / 100.0
    }

    /// Longitude of its middle.
    #[must_use]
    pub fn longitude_deg(self) -> f64 {
        f64::from(self.lon_hundredths) / 100.0
    }
}

impl Display for Cell {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:.2},{:.2}", self.latitude_deg(), self.longitude_deg())
    }
}

/// A cell with the clock that its days are counted by. One that a border of time zones runs through is two.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Spot {
    pub cell: Cell,
    pub zone: Tz,
}

impl Spot {
    /// The spot of a position in degrees.
    #[must_use]
    pub fn of(latitude_deg: f64, longitude_deg: f64, zone: Tz) -> Self {
        Self { cell: Cell::of(latitude_deg, longitude_deg), zone }
    }

    /// The spot that was written so.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let (cell, zone) = text.split_once('|')?;
        let (latitude, longitude) = cell.split_once(',')?;
        Some(Self::of(latitude.parse().ok()?, longitude.parse().ok()?, zone.parse().ok()?))
    }
}

impl Display for Spot {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}|{}", self.cell, self.zone)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::kilometres;
    use proptest::prelude::*;

    #[track_caller]
    fn case(latitude_deg: f64, longitude_deg: f64, expected: &str) {
        assert_eq!(Cell::of(latitude_deg, longitude_deg).to_string(), expected);
    }

    #[test]
    fn positions_in_the_middle_of_their_cells() {
        case(21.1458, 79.0882, "21.15,79.10");
        case(21.1251, 79.1249, "21.15,79.10");
        case(-33.8688, 151.2093, "-33.85,151.20");
        case(0.01, -0.01, "0.00,0.00");
    }

    proptest! {
        #[test]
        fn no_site_is_far_from_its_middle(lat in -80.0..80.0f64, lon in -179.9..179.9f64) {
            let cell = Cell::of(lat, lon);
            let off = kilometres((lat, lon), (cell.latitude_deg(), cell.longitude_deg()));
            prop_assert!(off < 4.0, "{off} km");
            let spot = Spot { cell, zone: chrono_tz::Asia::Kolkata };
            prop_assert_eq!(Spot::read(&spot.to_string()), Some(spot));
        }
    }
}
