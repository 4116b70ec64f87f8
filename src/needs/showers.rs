//! What showers leave to be watered: rain of usual days comes on some days and leaves others dry.

use crate::agronomy::maths::{powf, sqrt};

/// After a wet day the next is wet more often by this than after a dry one; after a dry day it is wet this much less
/// often than at large (Geng, Penning de Vries and Supit 1986: 0.25 + 0.75 f and 0.75 f, from memory).
const LASTING: f64 = 0.25;
/// Nine times in ten (normal distribution).
const NINE_IN_TEN: f64 = 1.645;
/// Even the wettest weeks have a dry day now and then.
const MOST_WET: f64 = 0.95;

/// Rain of one usual day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Showers {
    /// The share of days on which it rains.
    pub wet_share: f64,
    /// Over all days, dry ones too; what falls into the bed, mm.
    pub mean_mm: f64,
}

impl Showers {
    /// The part of a loss that watering has to make good, where a full bed wants water after so many days without
    /// rain and loses so much a day. A wet day fills the bed; one that brings less than it lacks counts as a part.
    ///
    /// Days are wet or dry by a chain of two states. After a wet day k dry ones in a row, or after a watering k more,
    /// end in a watering; the number of them a day follows from how often each happens. With no rain it is 1 / k.
    #[must_use]
    pub fn left_to_water(&self, days_without: f64, loss_mm: f64) -> f64 {
        // Watered daily or oftener, a bed is watered on each dry day.
        let days = days_without.max(1.0);
        let fills = self.mean_mm / (loss_mm * days).max(0.01);
        let wet = self.wet_share.min(fills).clamp(0.0, MOST_WET);
        if wet <= 0.0 {
            return 1.0;
        }
        let wet_after_dry = (1.0 - LASTING) * wet;
        let dry_after_dry = 1.0 - wet_after_dry;
        let dry_after_wet = (1.0 - LASTING) * (1.0 - wet);
        let all_dry = powf(dry_after_dry, days);
        let waterings = wet * dry_after_wet * powf(dry_after_dry, days - 1.0) / (1.0 - all_dry);
        (waterings * days).clamp(0.0, 1.0)
    }

    /// How far the wet days of a run of days may be from their usual number, as a part of it.
    #[must_use]
    pub fn doubt(wet_share: f64, days: usize) -> f64 {
        let wet = wet_share.clamp(0.01, MOST_WET);
        let in_a_row = (1.0 + LASTING) / (1.0 - LASTING);
        let spread = sqrt(in_a_row * (1.0 - wet) / (wet * days.max(1) as f64));
        (NINE_IN_TEN * spread).min(1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The chain itself, day by day: how often a bed is watered that wants it after so many dry days.
    fn followed(wet: f64, days: usize) -> f64 {
        // How likely it is that the bed has gone so many dry days since it was full, and whether the last was wet.
        let mut since = vec![0.0; days];
        since[0] = 1.0;
        let mut after_rain = 1.0;
        let mut waterings = 0.0;
        let (start, end) = (2_000, 4_000);
        for day in 0..end {
            let mut next = vec![0.0; days];
            let mut rained = 0.0;
            let mut watered = 0.0;
            for (gone, likely) in since.iter().enumerate() {
                let from_rain = if gone == 0 { after_rain } else { 0.0 };
                let dry_now = from_rain * 0.75 * (1.0 - wet) + (likely - from_rain) * (1.0 - 0.75 * wet);
                rained += likely - dry_now;
                if gone + 1 == days {
                    watered += dry_now;
                } else {
                    next[gone + 1] += dry_now;
                }
            }
            next[0] += rained + watered;
            (since, after_rain) = (next, rained);
            waterings += if day >= start { watered } else { 0.0 };
        }
        waterings / f64::from(end - start)
    }

    proptest! {
        #[test]
        fn waterings_are_those_of_the_chain(wet in 0.02..0.94_f64, days in 1_usize..9) {
            let showers = Showers { wet_share: wet, mean_mm: 1e6 };
            let left = showers.left_to_water(days as f64, 1.0);
            prop_assert!((left - followed(wet, days) * days as f64).abs() < 1e-6, "{left} {}", followed(wet, days));
        }

        #[test]
        fn more_rain_never_leaves_more(wet in 0.0..1.0_f64, more in 0.0..0.5_f64, mm in 0.0..20.0_f64, days in 0.3..9.0_f64) {
            let left = |wet_share, mean_mm| Showers { wet_share, mean_mm }.left_to_water(days, 5.0);
            prop_assert!((0.0..=1.0).contains(&left(wet, mm)));
            prop_assert!(left(wet + more, mm) <= left(wet, mm) + 1e-12);
            prop_assert!(left(wet, mm + more) <= left(wet, mm) + 1e-12);
        }
    }

    #[test]
    fn without_rain_all_is_left() {
        assert_eq!(Showers { wet_share: 0.0, mean_mm: 0.0 }.left_to_water(2.0, 5.0), 1.0);
        // Rain that does not reach the bed.
        assert_eq!(Showers { wet_share: 0.5, mean_mm: 0.0 }.left_to_water(2.0, 5.0), 1.0);
    }
}
