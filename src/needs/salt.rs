//! Salt that watering leaves behind in a bed that never drains: when to flush, and with how much.

use super::loss_factor::LossFactor;
use super::surroundings::Surroundings;
use super::water_doubts::{aired, doubts};
use crate::agronomy::maths::{exp, ln};
use crate::knowledge::{Crop, SourceRef};
use crate::quantity::{Estimate, Fraction, Volume, WaterDepth};
use crate::weather::Day;
use chrono::{Days, NaiveDate};

/// Nothing is foretold beyond this, days.
pub const HORIZON_DAYS: u64 = 180;
/// Records older than this are not summed from, days.
const LOOKED_BACK_DAYS: u64 = 400;

/// What the salt of a bed asks for.
#[derive(Debug, Clone, PartialEq)]
pub enum Salts {
    Flush(Flush),
    /// Not within [`HORIZON_DAYS`].
    NotSoon,
    /// The water itself is about as salt as the crop stands, so that no flush helps for long.
    WaterTooSalt {
        crop: String,
        threshold_ds_m: f64,
    },
    /// The knowledge base does not say what the crops here stand.
    CropUnknown,
}

/// The day of a flush.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FlushDay {
    Between(Estimate<NaiveDate>),
    /// About this day by what is likeliest, or later: perhaps not within [`HORIZON_DAYS`].
    OrLater(NaiveDate),
}

impl FlushDay {
    /// The likeliest day.
    #[must_use]
    pub const fn likeliest(&self) -> NaiveDate {
        match self {
            Self::Between(days) => days.value(),
            Self::OrLater(day) => *day,
        }
    }
}

/// When and with how much.
#[derive(Debug, Clone, PartialEq)]
pub struct Flush {
    pub on: FlushDay,
    pub litres: Estimate<Volume>,
    /// LR, the part of all water that has to run through.
    pub leaching_fraction: Fraction,
    /// The most tender crop, with the conductivity of the saturation extract that it stands, dS/m.
    pub crop: String,
    pub threshold_ds_m: f64,
    pub threshold_source: SourceRef,
    /// Since when salt was counted; none where no flush, new mix or rain is on record.
    pub since: Option<NaiveDate>,
}

/// LR: the part of the water that has to drain so that the salt of the root zone stays at what the crop
/// stands. FAO-29 (Ayers and Westcot 1985) eq. 9, after Rhoades 1974: ECw / (5 ECe − ECw), both in dS/m.
/// Seen in public restatements, not in the paper. None where the water is too salt for any.
#[must_use]
pub fn leaching_requirement(water_ds_m: f64, crop_ds_m: f64) -> Option<Fraction> {
    let left = 5.0 * crop_ds_m - water_ds_m;
    (water_ds_m >= 0.0 && left > 0.0 && water_ds_m < left).then(|| Fraction::of_one(water_ds_m / left))
}

/// When a bed watered with such water wants a flush. None where weather is unknown or the bed has no size.
///
/// Salt is kept account of as conductivity times depth of water: what is poured brings it, what the bed loses
/// leaves it, rain beyond the loss takes it along (as from a well stirred vessel). It is due when the
/// saturation extract reaches what the crop stands; the mix is taken to be saturated at container capacity
/// and air space together. Feeds bring salt too and are not counted.
#[must_use]
pub fn salts(bed: &Surroundings<'_>, water_ds_m: f64, since: Option<NaiveDate>, factor: &LossFactor) -> Option<Salts> {
    let tender = |crop: &Crop| crop.salt.as_ref().map(|salt| salt.threshold_ds_m.value());
    let crop = bed
        .standing
        .iter()
        .map(|standing| standing.crop)
        .filter(|crop| crop.salt.is_some())
        .min_by(|a, b| tender(a).unwrap_or(f64::MAX).total_cmp(&tender(b).unwrap_or(f64::MAX)));
    let Some((crop, salt)) = crop.and_then(|crop| Some((crop, crop.salt.as_ref()?))) else {
        return Some(Salts::CropUnknown);
    };
    let threshold = &salt.threshold_ds_m;
    let filled = bed.filled();
    let depth_mm = filled.depth.as_metres() * 1000.0;
    if depth_mm <= 0.0 || filled.top.as_square_metres() <= 0.0 {
        return None;
    }
    let properties = &bed.mix.properties;
    let held = properties.container_capacity.value().as_of_one();
    let saturated = held + properties.air_space.value().as_of_one();
    let store = Store { held_mm: held * depth_mm, saturated_mm: saturated * depth_mm, water_ds_m };
    // How far the water already is to what the crop stands: what a flush can bring the bed back to.
    let clean = water_ds_m * store.held_mm / (threshold.value() * store.saturated_mm);
    let requirement = leaching_requirement(water_ds_m, threshold.value()).filter(|_| clean < MOST_CLEAN);
    let Some(leaching_fraction) = requirement else {
        let (crop, threshold_ds_m) = (crop.id.clone(), threshold.value());
        return Some(Salts::WaterTooSalt { crop, threshold_ds_m });
    };

    let start = since.map_or(bed.today, |day| day.max(days_before(bed.today, LOOKED_BACK_DAYS)));
    let horizon = bed.today.checked_add_days(Days::new(HORIZON_DAYS))?;
    let days: Vec<Day> = bed.weather.from(start).take_while(|day| day.date <= horizon).collect();
    let (inputs, _) = doubts(bed, &days, factor);
    let daily: Vec<(NaiveDate, f64, f64)> = aired(bed, &days, &inputs)
        .iter()
        .map(|day| {
            let lost = day.loss(&inputs);
            (day.day.day.date, lost.loss.as_millimetres(), lost.rain.as_millimetres())
        })
        .collect();
    let reached = |limit_ds_m: f64, more_loss: f64| store.days_until(&daily, limit_ds_m, more_loss);
    let Some((on, poured_mm)) = reached(threshold.value(), 1.0) else { return Some(Salts::NotSoon) };
    let early = reached(threshold.is.low() * (1.0 - THRESHOLD_DOUBT), 1.0 + LOSS_DOUBT).map_or(on, |(day, _)| day);
    let late = reached(threshold.is.high() * (1.0 + THRESHOLD_DOUBT), 1.0 - LOSS_DOUBT).map(|(day, _)| day);
    let early = if since.is_none() { bed.today } else { early };
    let today = |day: NaiveDate| day.max(bed.today);

    let part = leaching_fraction.as_of_one();
    let litres = |millimetres: f64| WaterDepth::millimetres(millimetres) * filled.top;
    // The part that should have drained all along; leaching in rounds (Hoffman 1980: C/C0 = 0.1 over depth of
    // water by depth of soil, from memory); and a well stirred vessel.
    let ways =
        [part / (1.0 - part) * poured_mm, LEACHING_IN_ROUNDS / clean * depth_mm, store.held_mm * ln(1.0 / clean)];
    let [least, usual, most] = ways;
    Some(Salts::Flush(Flush {
        on: match late {
            Some(late) => FlushDay::Between(Estimate::spanning(today(on), [today(early), today(late)])),
            None => FlushDay::OrLater(today(on)),
        },
        litres: Estimate::spanning(litres(usual), [litres(least), litres(most)]),
        leaching_fraction,
        crop: crop.id.clone(),
        threshold_ds_m: threshold.value(),
        threshold_source: threshold.source.clone(),
        since: since.map(|_| start),
    }))
}

/// Hoffman 1980, k for leaching in rounds or by sprinkling, any soil (from memory).
const LEACHING_IN_ROUNDS: f64 = 0.1;
/// Water that leaves less room than this for salt cannot hold the bed below the crop's limit.
const MOST_CLEAN: f64 = 0.9;
/// Doubt of the loss over weeks, and of a threshold of field soils in a light mix (judgements).
const LOSS_DOUBT: f64 = 0.2;
const THRESHOLD_DOUBT: f64 = 0.1;

fn days_before(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_sub_days(Days::new(days)).unwrap_or(day)
}

/// Where salt stays.
struct Store {
    /// Water held after draining, and with every pore full, mm.
    held_mm: f64,
    saturated_mm: f64,
    water_ds_m: f64,
}

impl Store {
    /// The day on which the saturation extract reaches a limit, with what was poured until then since it was
    /// last as clean as the water, mm. `daily`: date, loss, rain, mm.
    fn days_until(&self, daily: &[(NaiveDate, f64, f64)], limit_ds_m: f64, more_loss: f64) -> Option<(NaiveDate, f64)> {
        let clean = self.water_ds_m * self.held_mm;
        let (mut salt, mut poured) = (clean, 0.0);
        for &(date, loss_mm, rain_mm) in daily {
            let loss_mm = loss_mm * more_loss;
            let bring = (loss_mm - rain_mm).max(0.0);
            salt = (salt + self.water_ds_m * bring) * exp(-(rain_mm - loss_mm).max(0.0) / self.held_mm);
            poured = if salt <= clean { 0.0 } else { poured + bring };
            if salt >= limit_ds_m * self.saturated_mm {
                return Some((date, poured));
            }
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(water_ds_m: f64, crop_ds_m: f64, expected: Option<f64>) {
        let got = leaching_requirement(water_ds_m, crop_ds_m).map(Fraction::as_of_one);
        match (got, expected) {
            (Some(got), Some(expected)) => assert!((got - expected).abs() < 1e-9, "{got}"),
            (got, expected) => assert_eq!(got, expected),
        }
    }

    #[test]
    fn the_part_that_has_to_drain() {
        // Plain arithmetic of the formula.
        case(1.0, 2.2, Some(0.1));
        case(2.0, 2.0, Some(0.25));
        case(0.0, 2.0, Some(0.0));
        case(6.0, 1.2, None);
        case(9.0, 1.0, None);
    }

    #[test]
    fn salt_gathers_by_what_is_poured_and_rain_takes_it() {
        let store = Store { held_mm: 150.0, saturated_mm: 200.0, water_ds_m: 1.0 };
        let first: NaiveDate = "2026-05-01".parse().unwrap();
        let days = |rain: fn(usize) -> f64| -> Vec<(NaiveDate, f64, f64)> {
            first.iter_days().take(120).enumerate().map(|(count, day)| (day, 10.0, rain(count))).collect()
        };
        // 150 in the bed at first and 10 a day: 400 = 2 dS/m × 200 mm on the 25th day.
        let dry = store.days_until(&days(|_| 0.0), 2.0, 1.0).unwrap();
        assert_eq!(dry, ("2026-05-25".parse().unwrap(), 250.0));
        // One storm of a bed's whole water on the 20th day leaves 1/e of it.
        let storm = store.days_until(&days(|count| if count == 19 { 160.0 } else { 0.0 }), 2.0, 1.0).unwrap();
        assert!(storm.0 > dry.0 + Days::new(15), "{storm:?}");
        assert_eq!(store.days_until(&days(|_| 25.0), 2.0, 1.0), None);
    }
}
