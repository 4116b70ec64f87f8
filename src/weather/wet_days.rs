//! On how many days of a month it usually rains, where only the month's amount is known.

use crate::agronomy::maths::powf;
use crate::knowledge::Place;
use crate::quantity::{Fraction, WaterDepth};

/// Wet days grow with the month's rain to this power: as the gridded climatology of East Anglia derives them (New,
/// Hulme and Jones 2000, from memory).
const POWER: f64 = 0.45;
/// Wet days of a month of 1 mm. Fitted to one month: Nagpur's July of 313.7 mm has 13.9 days with rain (the Indian
/// weather service's averages, read in a newspaper), so a judgement elsewhere.
const OF_ONE_MM: f64 = 1.05;
/// No month is taken to be wetter than this.
const MOST: f64 = 0.9;

/// On how many days of each month it rains, worked out once for all the days of a year; none where its rain is not known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WetDays([Option<f64>; 12]);

impl WetDays {
    /// Of a place's months.
    pub fn of(place: &Place) -> Self {
        Self(std::array::from_fn(|month| place.months.get(month)?.rain.map(wet_days)))
    }

    /// The share of a month's days (the first is 0) on which it rains.
    pub fn share(&self, month0: u32, days_in_month: f64) -> Option<Fraction> {
        Some(share(self.0.get(month0 as usize).copied()??, days_in_month))
    }
}

fn wet_days(rain: WaterDepth) -> f64 {
    let millimetres = rain.as_millimetres().max(0.0);
    (OF_ONE_MM * powf(millimetres, POWER)).min(millimetres)
}

fn share(wet_days: f64, days_in_month: f64) -> Fraction {
    Fraction::of_one((wet_days / days_in_month.max(1.0)).min(MOST))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(rain_mm: f64, days: std::ops::RangeInclusive<f64>) {
        let got = share(wet_days(WaterDepth::millimetres(rain_mm)), 31.0).as_of_one() * 31.0;
        assert!(days.contains(&got), "{rain_mm}: {got}");
    }

    #[test]
    fn rain_days_of_a_month() {
        case(0.0, 0.0..=0.0);
        case(0.5, 0.0..=0.5);
        case(313.7, 13.7..=14.1);
        case(20.0, 3.0..=5.0);
        case(5000.0, 27.0..=28.0);
    }
}
