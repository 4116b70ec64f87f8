//! Depths of water: rain, evapotranspiration, what a layer has lost.

use super::kind::quantity;
use super::size::{Area, Volume};

quantity!(
    /// A depth of water over an area, held in millimetres (1 mm on 1 m² is 1 L).
    WaterDepth, "depth of water", "mm", 0.0 ..= 4_000.0
);

impl WaterDepth {
    #[must_use]
    pub const fn millimetres(value: f64) -> Self {
        Self(value)
    }
    #[must_use]
    pub const fn as_millimetres(self) -> f64 {
        self.0
    }
}

impl std::ops::Mul<Area> for WaterDepth {
    type Output = Volume;
    fn mul(self, area: Area) -> Volume {
        Volume::litres(self.0 * area.as_square_metres())
    }
}
