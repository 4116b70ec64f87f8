//! What one bed loses on one day: FAO-56 dual crop coefficient with one evaporation layer, and what
//! differs in a container.

use super::stage::{pace, stage_days, table_days};
use super::surroundings::{Standing, Surroundings};
use crate::agronomy::crop_coefficient::{
    Climate, Coefficients, adjusted_to_climate, cover, exposed_and_wetted, grown, highest_coefficient,
};
use crate::agronomy::evaporation_layer::EvaporationLayer;
use crate::agronomy::reference_et::{DayWeather, Exposure, Humidity, ReferenceEt, SiteDay, Sunlight, reference_et};
use crate::agronomy::sun::light_at_bed;
use crate::garden::Start;
use crate::knowledge::GrownFor;
use crate::quantity::{Fraction, Length, TemperatureDifference, WaterDepth, WindSpeed};
use crate::weather::Day;
use chrono::{Datelike, NaiveDate};

/// Kc of dry bare ground, Kc min of eq. 76 (FAO-56 chapter 7: 0.15 to 0.20).
const BARE_COEFFICIENT: f64 = 0.15;
/// Height of a crop when it comes up (FAO-56 leaves it open; the pace of growth matters, not this).
const FIRST_HEIGHT: Length = Length::metres(0.05);
/// Height of shoots on a tray when they are cut (common practice, no source).
const SHOOT_HEIGHT: Length = Length::metres(0.08);
/// An organic mulch halves what the bare surface loses (FAO-56 chapter 11, about half for a full cover).
const UNDER_MULCH: f64 = 0.5;
/// Saplings are watered round each plant for this long (common practice, no source).
const SAPLING_DAYS: i64 = 8;
/// The part of the top that is wetted round saplings (common practice: 0.3 to 0.5).
const WETTED_ROUND_SAPLINGS: f64 = 0.4;
/// Seed lies on top until about this many days after sowing (common practice, no source).
const SEED_ON_TOP_DAYS: i64 = 6;

/// Inputs in doubt, as factors on their best values or as places between their ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Doubtful {
    /// Where in the day the direct sun comes: -1 at one end of it, 0 unknown, 1 about noon.
    pub sun_spell: f64,
    /// Factor on the loss: a forecast is not the weather that comes.
    pub weather: f64,
    /// Factor on the loss that this one bed has shown.
    pub bed: f64,
    /// Factor for a small stand on a hot bare roof.
    pub small_stand: f64,
    /// Drying of the sides, as a part of the reference rate over their area.
    pub sides: f64,
    /// Factor on the basal coefficient.
    pub leaves: f64,
    /// Wind where none is known, m/s.
    pub unknown_wind_m_s: f64,
    /// By how much the dew point lies below the minimum where humidity is unknown, K.
    pub dew_below_tmin_k: f64,
    /// Factor on the rain foretold.
    pub rain: f64,
}

/// One day's loss of one bed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayLoss {
    pub reference: ReferenceEt,
    /// Reference rate with the bed's own light and wind.
    pub reference_at_bed: WaterDepth,
    pub basal: f64,
    pub evaporation: f64,
    pub highest: f64,
    /// The part of the top that is both wetted and open to the sun (few).
    pub exposed: Fraction,
    /// Everything the bed loses, over its top area.
    pub loss: WaterDepth,
    /// What of it does not come from the top: leaves and sides.
    pub below: WaterDepth,
    /// What the bare part of the surface loses (eq. 77: E over few).
    pub bare_surface: WaterDepth,
    /// Rain that falls in.
    pub rain: WaterDepth,
}

/// One bed on one day: all that no doubt moves, worked out once.
#[derive(Debug, Clone)]
pub struct BedDay<'a> {
    bed: &'a Surroundings<'a>,
    pub day: Day,
    site: SiteDay,
    plants: Vec<Plant>,
    /// Side area over top area.
    sides: f64,
    leaf_spread: f64,
    layer: EvaporationLayer,
}

/// The air of one day: what only wind, humidity and the spell of sun move.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    open: ReferenceEt,
    at_bed: WaterDepth,
    climate: Climate,
}

/// A crop on one day, before the climate is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Plant {
    /// Table value of the basal coefficient.
    basal: f64,
    height: Length,
    /// 0 at sowing, 1 grown.
    growth: f64,
    wetted: f64,
}

/// The loss of one day with the top kept moist (Kr = 1): what a rhythm of watering has to make good.
///
/// FAO-56 eq. 6 for the reference rate, with the light and wind that reach the bed; eq. 66, 70, 71, 72, 75,
/// 76 for the coefficients. Not in FAO-56: leaves beyond the rim, drying sides, the factor of a small stand.
#[must_use]
pub fn day_loss(bed: &Surroundings<'_>, day: &Day, doubtful: &Doubtful) -> DayLoss {
    let lived: Vec<Option<f64>> =
        bed.standing.iter().map(|standing| table_days(standing, &bed.weather, day.date)).collect();
    let bed_day = BedDay::new(bed, day, &lived);
    bed_day.loss(&bed_day.air(doubtful), doubtful)
}

/// A run of days of one bed; the crops grow on from day to day.
#[must_use]
pub fn bed_days<'a>(bed: &'a Surroundings<'a>, days: &[Day]) -> Vec<BedDay<'a>> {
    let Some(first) = days.first() else { return Vec::new() };
    let mut lived: Vec<Option<f64>> =
        bed.standing.iter().map(|standing| table_days(standing, &bed.weather, first.date)).collect();
    let mut all = Vec::with_capacity(days.len());
    for day in days {
        all.push(BedDay::new(bed, day, &lived));
        for (lived, standing) in lived.iter_mut().zip(&bed.standing) {
            let born = standing.start.is_none_or(|start| start.date() <= day.date);
            if let Some(lived) = lived.as_mut().filter(|_| born) {
                *lived += pace(standing.crop, day);
            }
        }
    }
    all
}

impl<'a> BedDay<'a> {
    fn new(bed: &'a Surroundings<'a>, day: &Day, lived: &[Option<f64>]) -> Self {
        let day_of_year = day_of_year(day);
        let filled = bed.filled();
        let plants = bed.standing.iter().zip(lived);
        Self {
            bed,
            day: *day,
            site: SiteDay::new(bed.weather.latitude_deg, bed.weather.elevation_m, day_of_year),
            plants: plants.map(|(standing, lived)| plant(standing, *lived, day.date)).collect(),
            sides: if filled.top.as_square_metres() > 0.0 { filled.side / filled.top } else { 0.0 },
            leaf_spread: bed.leaf_spread(),
            layer: layer(bed),
        }
    }

    /// The reference rate in the open and at the bed.
    #[must_use]
    pub fn air(&self, doubtful: &Doubtful) -> Air {
        let bed = self.bed;
        let weather = day_weather(&self.day, doubtful);
        let open = reference_et(&self.site, &weather, Exposure::OPEN);
        let light = light_at_bed(bed.sun_hours, bed.weather.latitude_deg, day_of_year(&self.day), open.solar);
        let spell = doubtful.sun_spell.clamp(-1.0, 1.0);
        let end = if spell < 0.0 { light.low() } else { light.high() };
        let direct = light.value().as_of_one() + (end - light.value()).as_of_one() * spell.abs();
        let net = bed.under_net();
        let shaded = Exposure { light: Fraction::of_one(direct) * net.as_of_one(), wind: Fraction::WHOLE };
        let mut at_bed = reference_et(&self.site, &weather, shaded).et;
        if net < Fraction::WHOLE {
            // A net takes wind by about its rating. In humid air less wind can raise the computed rate; a net
            // does not.
            let still = Exposure { wind: net, ..shaded };
            at_bed = at_bed.min(reference_et(&self.site, &weather, still).et);
        }
        Air {
            open,
            at_bed: at_bed.max(WaterDepth::default()),
            climate: Climate { wind_2m: open.wind_2m, humidity_min: open.humidity_min },
        }
    }

    /// The loss in such air.
    #[must_use]
    pub fn loss(&self, air: &Air, doubtful: &Doubtful) -> DayLoss {
        let at_bed = air.at_bed * doubtful.weather;
        let canopy = self.canopy(&air.climate);
        let basal = canopy.basal * doubtful.leaves;
        let highest = highest_coefficient(&air.climate, canopy.height, basal) * doubtful.small_stand;
        let covered = cover(basal, BARE_COEFFICIENT, highest, canopy.height);
        let exposed = exposed_and_wetted(covered, Fraction::of_one(canopy.wetted));
        let evaporation =
            self.layer.coefficient(WaterDepth::default(), highest, basal, exposed) * under_mulch(self.bed);
        let spread = 1.0 + (self.leaf_spread - 1.0) * canopy.growth;
        let below = at_bed * ((basal * spread + doubtful.sides * self.sides) * doubtful.bed);
        let top = at_bed * (evaporation * doubtful.bed);
        DayLoss {
            reference: air.open,
            reference_at_bed: at_bed,
            basal,
            evaporation,
            highest,
            exposed,
            loss: below + top,
            below,
            bare_surface: top / exposed.as_of_one(),
            rain: self.day.rain.unwrap_or_default() * (self.bed.rain_caught() * doubtful.rain),
        }
    }

    /// What the top loses once it has dried by so much (Kr of eq. 74).
    #[must_use]
    pub fn top_loss(&self, loss: &DayLoss, dried: WaterDepth, doubtful: &Doubtful) -> WaterDepth {
        let evaporation = self.layer.coefficient(dried, loss.highest, loss.basal, loss.exposed);
        loss.reference_at_bed * (evaporation * under_mulch(self.bed) * doubtful.bed)
    }

    /// What the top can lose at all (TEW of eq. 73).
    #[must_use]
    pub fn top_holds(&self) -> WaterDepth {
        self.layer.total()
    }

    /// What stands in the bed: the thirstiest crop decides.
    fn canopy(&self, climate: &Climate) -> Plant {
        let bare = Plant { basal: 0.0, height: FIRST_HEIGHT, growth: 0.0, wetted: 1.0 };
        self.plants.iter().fold(bare, |most, next| Plant {
            basal: most.basal.max(adjusted_to_climate(next.basal, climate, next.height)),
            height: most.height.max(next.height),
            growth: most.growth.max(next.growth),
            wetted: most.wetted.min(next.wetted),
        })
    }
}

/// The drying surface of the bed's mix (eq. 73, 74).
fn layer(bed: &Surroundings<'_>) -> EvaporationLayer {
    let properties = &bed.mix.properties;
    EvaporationLayer::new(
        properties.container_capacity.value(),
        properties.dry.value(),
        properties.evaporation_layer.value(),
        properties.readily_evaporable.value(),
    )
}

fn under_mulch(bed: &Surroundings<'_>) -> f64 {
    if bed.bed.mulch_counted() { UNDER_MULCH } else { 1.0 }
}

fn day_of_year(day: &Day) -> u16 {
    u16::try_from(day.date.ordinal()).unwrap_or(1)
}

/// Whether seed still lies on top, so that the surface must not dry at all.
#[must_use]
pub fn seed_on_top(bed: &Surroundings<'_>) -> bool {
    bed.standing.iter().any(|standing| match standing.start {
        Some(Start::Sown(sown)) => {
            let age = (bed.today - sown).num_days();
            standing.microgreen || (0..=SEED_ON_TOP_DAYS).contains(&age)
        }
        _ => standing.microgreen,
    })
}

/// Whether saplings were set so lately that water goes round each plant only.
#[must_use]
pub fn round_saplings(standing: &Standing<'_>, on: NaiveDate) -> bool {
    matches!(standing.start, Some(Start::Planted(planted)) if (0..SAPLING_DAYS).contains(&(on - planted).num_days()))
}

/// A day's weather as the reference sum takes it, with what is unknown at its doubtful value.
fn day_weather(day: &Day, doubtful: &Doubtful) -> DayWeather {
    let dew_point = day.tmin + TemperatureDifference::kelvins(-doubtful.dew_below_tmin_k);
    DayWeather {
        tmax: day.tmax,
        tmin: day.tmin,
        humidity: day.humidity_mean.map(Humidity::Mean).or(Some(Humidity::DewPoint(dew_point))),
        wind_2m: day.wind_2m.or(Some(WindSpeed::metres_per_second(doubtful.unknown_wind_m_s))),
        sunlight: day.solar.map(Sunlight::Measured).or(day.sunshine_h.map(|hours| Sunlight::Sunshine { hours })),
    }
}

/// A crop that has lived so many days of its table; of unknown age it is established.
fn plant(standing: &Standing<'_>, lived: Option<f64>, on: NaiveDate) -> Plant {
    let water = &standing.crop.water;
    let values =
        Coefficients { initial: water.kcb_initial.value(), mid: water.kcb_mid.value(), end: water.kcb_end.value() };
    let stages = stage_days(standing.crop);
    // Leaves that are cut again and again stay at their mid value; so does a crop of unknown age.
    let cut_again = matches!(standing.crop.grown_for, GrownFor::Leaf | GrownFor::Herb);
    let full = stages.initial + stages.development;
    let days = lived.map_or(full, |lived| if cut_again { lived.min(full) } else { lived });
    let basal = values.on_day(&stages, days);
    let growth = values.growth(basal);
    let height = if standing.microgreen { SHOOT_HEIGHT } else { grown(FIRST_HEIGHT, water.height.value(), growth) };
    Plant {
        basal,
        height,
        growth: growth.as_of_one(),
        wetted: if round_saplings(standing, on) { WETTED_ROUND_SAPLINGS } else { 1.0 },
    }
}
