//! An amount of water as cans or bottles that a hand can fill.

use crate::answering::USUAL_CAN;
use crate::quantity::Volume;

/// What it is poured from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Vessel {
    Can,
    /// Of a litre.
    Bottle,
}

/// A litre bottle: every house has one.
pub const BOTTLE: Volume = Volume::litres(1.0);

/// Quarters of a vessel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pour {
    pub vessel: Vessel,
    pub quarters: u32,
}

impl Pour {
    /// To the nearest quarter of a can; less than two fifths of one in bottles. Never nothing.
    #[must_use]
    pub fn of(amount: Volume, can: Option<Volume>) -> Self {
        let can = can.filter(|can| *can > Volume::default()).unwrap_or(USUAL_CAN);
        let (vessel, holds) = if amount / can < 0.4 { (Vessel::Bottle, BOTTLE) } else { (Vessel::Can, can) };
        let quarters = (amount / holds * 4.0).round().clamp(1.0, 4_000.0) as u32;
        Self { vessel, quarters }
    }

    /// Each vessel with the part to which it is filled.
    #[must_use]
    pub fn vessels(&self) -> Vec<f64> {
        let mut levels = vec![1.0; (self.quarters / 4) as usize];
        if !self.quarters.is_multiple_of(4) {
            levels.push(f64::from(self.quarters % 4) / 4.0);
        }
        levels
    }

    /// How many, as a number with its fraction.
    #[must_use]
    pub fn count_text(&self) -> String {
        let part = ["", "¼", "½", "¾"][(self.quarters % 4) as usize];
        match self.quarters / 4 {
            0 => part.to_owned(),
            whole => format!("{whole}{part}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(litres: f64, can: Option<f64>, vessel: Vessel, count: &str, shown: usize) {
        let pour = Pour::of(Volume::litres(litres), can.map(Volume::litres));
        assert_eq!((pour.vessel, pour.count_text().as_str(), pour.vessels().len()), (vessel, count, shown), "{litres}");
        // What is poured is never further off than half a quarter of the vessel, or than the least that is drawn.
        let holds = if vessel == Vessel::Can { can.unwrap_or(10.0) } else { 1.0 };
        let poured: f64 = pour.vessels().iter().sum::<f64>() * holds;
        assert!((poured - litres).abs() <= holds / 8.0 + 1e-9 || litres < 0.125, "{litres}: {poured}");
    }

    #[test]
    fn cans_and_bottles() {
        case(4.7, Some(10.0), Vessel::Can, "½", 1);
        case(12.4, Some(10.0), Vessel::Can, "1¼", 2);
        case(3.6, Some(10.0), Vessel::Bottle, "3½", 4);
        case(3.6, Some(5.0), Vessel::Can, "¾", 1);
        case(0.3, None, Vessel::Bottle, "¼", 1);
        case(0.05, None, Vessel::Bottle, "¼", 1);
        case(40.0, None, Vessel::Can, "4", 4);
    }
}
