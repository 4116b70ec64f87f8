//! A season day by day with the dual crop coefficient (FAO-56, chapters 7 and 8).
//!
//! The paper leaves open how a season starts and in which order a day goes. Here: days count from 0; the
//! surface starts dry, De = TEW; the whole ground counts as wetted until irrigation or rain says
//! otherwise; 3 mm of rain without irrigation wet all of it again; Kr, DP and Ks use the depletions at
//! the end of the day before; height and root depth follow Kcb and never fall; roots that grow bring no
//! water with them; the table values of Kcb are used as given, without eq. 70.

use crate::agronomy::crop_coefficient::{
    Climate, Coefficients, StageDays, cover, exposed_and_wetted, grown, highest_coefficient,
};
use crate::agronomy::evaporation_layer::{EvaporationLayer, SurfaceDay};
use crate::agronomy::root_zone::{
    Arrival, RootDay, after, depletion_fraction_at, readily_available, stress, total_available,
};
use crate::quantity::{Fraction, Length, WaterDepth};
use thiserror::Error;

/// Rain that wets the whole ground: a convention of this balance, not a figure of the paper.
const WETTING_RAIN: WaterDepth = WaterDepth::millimetres(3.0);

/// What stays the same through a season.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Season {
    /// Kcb
    pub basal: Coefficients,
    pub stages: StageDays,
    pub height_initial: Length,
    pub height_max: Length,
    pub root_depth_initial: Length,
    pub root_depth_max: Length,
    /// p of FAO-56 table 22, for 5 mm a day
    pub depletion_fraction: Fraction,
    /// Water by volume
    pub field_capacity: Fraction,
    pub wilting_point: Fraction,
    /// Water by volume in the root zone on the first day
    pub initial_water: Fraction,
    /// Ze
    pub evaporation_layer: Length,
    /// REW
    pub readily_evaporable: WaterDepth,
    /// fw of an irrigation that does not say its own
    pub irrigation_wetted: Fraction,
}

/// A season that cannot be.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NoSeason {
    #[error("field_capacity must lie above wilting_point")]
    NoWater,
    #[error("{0} must be more than 0")]
    NotPositive(&'static str),
    #[error("{0} must not be below 0")]
    Negative(&'static str),
    #[error("{0} must not be less at its greatest than at its start")]
    Shrinks(&'static str),
    #[error("kcb must rise: its mid value must lie above its initial value")]
    NoRise,
}

/// One day's weather and water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BalanceDay {
    /// Below zero it counts as none: dew is not put into the store.
    pub reference_et: WaterDepth,
    pub climate: Climate,
    pub rain: WaterDepth,
    pub irrigation: WaterDepth,
    /// fw of this day's irrigation; the season's where none
    pub irrigation_wetted: Option<Fraction>,
}

/// One day's outcome.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BalanceEnd {
    /// Kcb
    pub basal: f64,
    /// Ke
    pub evaporation_coefficient: f64,
    /// Ks, from the depletion at the end of the day before
    pub stress: Fraction,
    /// ETc, without stress
    pub crop_et: WaterDepth,
    /// ETc adj, with stress
    pub actual_et: WaterDepth,
    /// Dr at the end of the day
    pub depletion: WaterDepth,
    /// De at the end of the day
    pub surface_depletion: WaterDepth,
    /// DP
    pub percolation: WaterDepth,
    /// DPe
    pub surface_percolation: WaterDepth,
    /// Loss that the root zone no longer held
    pub beyond: WaterDepth,
    /// TAW and RAW of the day
    pub total_available: WaterDepth,
    pub readily_available: WaterDepth,
}

/// A season under way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterBalance {
    season: Season,
    surface: EvaporationLayer,
    day: u32,
    height: Length,
    root_depth: Length,
    wetted: Fraction,
    surface_depletion: WaterDepth,
    depletion: WaterDepth,
}

impl WaterBalance {
    /// The morning of the first day.
    ///
    /// # Errors
    /// [`NoSeason`] where the parameters contradict themselves.
    pub fn start(season: Season) -> Result<Self, NoSeason> {
        season.check()?;
        let surface = EvaporationLayer::new(
            season.field_capacity,
            season.wilting_point,
            season.evaporation_layer,
            season.readily_evaporable,
        );
        let short = season.field_capacity.as_of_one() - season.initial_water.as_of_one();
        let held = total_available(season.field_capacity, season.wilting_point, season.root_depth_initial);
        Ok(Self {
            surface,
            day: 0,
            height: season.height_initial,
            root_depth: season.root_depth_initial,
            wetted: Fraction::WHOLE,
            surface_depletion: surface.total(),
            depletion: WaterDepth::millimetres(1000.0 * short.max(0.0) * season.root_depth_initial.as_metres())
                .min(held),
            season,
        })
    }

    /// Dr as it stands.
    #[must_use]
    pub const fn depletion(&self) -> WaterDepth {
        self.depletion
    }

    /// One day on.
    pub fn advance(&mut self, day: &BalanceDay) -> BalanceEnd {
        let season = &self.season;
        let basal = season.basal.on_day(&season.stages, f64::from(self.day));
        let growth = season.basal.growth(basal);
        self.height = self.height.max(grown(season.height_initial, season.height_max, growth));
        self.root_depth = self.root_depth.max(grown(season.root_depth_initial, season.root_depth_max, growth));
        let none = WaterDepth::default();
        let reference_et = day.reference_et.max(none);
        if day.irrigation > none {
            self.wetted = day.irrigation_wetted.unwrap_or(season.irrigation_wetted);
        } else if day.rain >= WETTING_RAIN {
            self.wetted = Fraction::WHOLE;
        }
        let highest = highest_coefficient(&day.climate, self.height, basal);
        let cover = cover(basal, season.basal.initial, highest, self.height);
        let exposed = exposed_and_wetted(cover, self.wetted);
        let ke = self.surface.coefficient(self.surface_depletion, highest, basal, exposed);
        let surface_end = self.surface.after(
            self.surface_depletion,
            &SurfaceDay {
                rain: day.rain,
                irrigation: day.irrigation,
                wetted: self.wetted,
                evaporation: reference_et * ke,
                exposed_and_wetted: exposed,
            },
        );
        let crop_et = reference_et * (ke + basal);
        let total = total_available(season.field_capacity, season.wilting_point, self.root_depth);
        let readily = readily_available(total, depletion_fraction_at(season.depletion_fraction, crop_et));
        let stress = stress(self.depletion, total, readily);
        let actual_et = reference_et * (stress.as_of_one() * basal + ke);
        let root_end = after(
            self.depletion,
            total,
            &RootDay { rain: day.rain, irrigation: day.irrigation, loss: actual_et, arrival: Arrival::WithTheLoss },
        );
        self.day += 1;
        self.surface_depletion = surface_end.depletion;
        self.depletion = root_end.depletion;
        BalanceEnd {
            basal,
            evaporation_coefficient: ke,
            stress,
            crop_et,
            actual_et,
            depletion: root_end.depletion,
            surface_depletion: surface_end.depletion,
            percolation: root_end.percolation,
            surface_percolation: surface_end.percolation,
            beyond: root_end.beyond,
            total_available: total,
            readily_available: readily,
        }
    }
}

impl Season {
    fn check(&self) -> Result<(), NoSeason> {
        if self.field_capacity <= self.wilting_point {
            return Err(NoSeason::NoWater);
        }
        if self.basal.mid <= self.basal.initial {
            return Err(NoSeason::NoRise);
        }
        let positive = [
            (self.root_depth_initial.as_metres(), "root_depth_m"),
            (self.evaporation_layer.as_metres(), "evaporation_layer_m"),
            (self.irrigation_wetted.as_of_one(), "irrigation_wetted_fraction"),
        ];
        if let Some((_, name)) = positive.into_iter().find(|&(value, _)| value <= 0.0) {
            return Err(NoSeason::NotPositive(name));
        }
        let StageDays { initial, development, mid, late } = self.stages;
        if [initial, development, mid, late].into_iter().any(|days| days < 0.0) {
            return Err(NoSeason::Negative("stage_days"));
        }
        if self.basal.initial < 0.0 || self.basal.end < 0.0 {
            return Err(NoSeason::Negative("kcb"));
        }
        if self.height_max < self.height_initial {
            return Err(NoSeason::Shrinks("height_m"));
        }
        if self.root_depth_max < self.root_depth_initial {
            return Err(NoSeason::Shrinks("root_depth_m"));
        }
        Ok(())
    }
}
