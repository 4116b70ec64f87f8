//! How dry a place is through the year, where its humidity is not known.

use crate::agronomy::reference_et::{SiteDay, hargreaves};
use crate::knowledge::Place;
use crate::quantity::WaterDepth;

/// From here down a place is semi-arid, arid or hyper-arid (World Atlas of Desertification, UNEP 1992).
pub const SEMI_ARID_BELOW: f64 = 0.5;
/// The middle of each month (days of the year) and its length.
const MONTHS: [(u16, f64); 12] = [
    (16, 31.0),
    (45, 28.25),
    (75, 31.0),
    (105, 30.0),
    (136, 31.0),
    (166, 30.0),
    (197, 31.0),
    (228, 31.0),
    (258, 30.0),
    (289, 31.0),
    (319, 30.0),
    (350, 31.0),
];

/// The aridity index: a year's rain over its reference evapotranspiration, here by Hargreaves (FAO-56 eq. 52), which
/// asks for temperatures alone. None where a month's rain is not known.
pub fn aridity_index(place: &Place) -> Option<f64> {
    let (mut rain, mut draws) = (0.0, 0.0);
    for (month, (middle, days)) in place.months.iter().zip(MONTHS) {
        let site = SiteDay::new(place.latitude_deg, place.elevation_m, middle);
        let daily: WaterDepth = hargreaves(site.extraterrestrial(), month.tmax, month.tmin);
        rain += month.rain?.as_millimetres();
        draws += daily.as_millimetres() * days;
    }
    (draws > 0.0).then(|| rain / draws)
}
