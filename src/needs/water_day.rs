//! What one bed loses on one day: FAO-56 dual crop coefficient with one evaporation layer, and what
//! differs in a container.

use super::surroundings::{Standing, Surroundings};
use crate::agronomy::crop_coefficient::{
    Climate, Coefficients, StageDays, adjusted_to_climate, cover, exposed_and_wetted, grown, highest_coefficient,
};
use crate::agronomy::evaporation_layer::EvaporationLayer;
use crate::agronomy::reference_et::{DayWeather, Exposure, Humidity, ReferenceEt, SiteDay, Sunlight, reference_et};
use crate::agronomy::sun::light_at_bed;
use crate::garden::Start;
use crate::knowledge::GrownFor;
use crate::quantity::{Fraction, Length, TemperatureDifference, WaterDepth, WindSpeed};
use crate::weather::Day;
use chrono::Datelike;

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
    /// Everything the bed loses, over its top area.
    pub loss: WaterDepth,
    /// What the bare part of the surface loses (eq. 77: E over few).
    pub bare_surface: WaterDepth,
    /// Rain that falls in.
    pub rain: WaterDepth,
}

/// The loss of one day with the top kept moist (Kr = 1): what a rhythm of watering has to make good.
///
/// FAO-56 eq. 6 for the reference rate, with the light and wind that reach the bed; eq. 66, 70, 71, 72, 75,
/// 76 for the coefficients. Not in FAO-56: leaves beyond the rim, drying sides, the factor of a small stand.
#[must_use]
pub fn day_loss(bed: &Surroundings<'_>, day: &Day, doubtful: &Doubtful) -> DayLoss {
    let day_of_year = u16::try_from(day.date.ordinal()).unwrap_or(1);
    let site = SiteDay::new(bed.weather.latitude_deg, bed.weather.elevation_m, day_of_year);
    let weather = day_weather(day, doubtful);
    let open = reference_et(&site, &weather, Exposure::OPEN);
    let light = light_at_bed(bed.sun_hours, bed.weather.latitude_deg, day_of_year, open.solar);
    let spell = doubtful.sun_spell.clamp(-1.0, 1.0);
    let end = if spell < 0.0 { light.low() } else { light.high() };
    let direct = light.value().as_of_one() + (end - light.value()).as_of_one() * spell.abs();
    let net = bed.under_net();
    let shaded = Exposure { light: Fraction::of_one(direct) * net.as_of_one(), wind: Fraction::WHOLE };
    // A net takes wind by about its rating. In humid air less wind can raise the computed rate; a net does not.
    let still = Exposure { wind: net, ..shaded };
    let at_bed = reference_et(&site, &weather, shaded).et.min(reference_et(&site, &weather, still).et);
    let at_bed = at_bed.max(WaterDepth::default()) * doubtful.weather;

    let climate = Climate { wind_2m: open.wind_2m, humidity_min: open.humidity_min };
    let canopy = canopy(bed, day, &climate);
    let basal = canopy.basal * doubtful.leaves;
    let highest = highest_coefficient(&climate, canopy.height, basal) * doubtful.small_stand;
    let covered = cover(basal, BARE_COEFFICIENT, highest, canopy.height);
    let open_part = exposed_and_wetted(covered, Fraction::of_one(canopy.wetted));
    let properties = &bed.mix.properties;
    let layer = EvaporationLayer::new(
        properties.container_capacity.value(),
        properties.dry.value(),
        properties.evaporation_layer.value(),
        properties.readily_evaporable.value(),
    );
    let mulch = if bed.bed.mulch_counted() { UNDER_MULCH } else { 1.0 };
    let evaporation = layer.coefficient(WaterDepth::default(), highest, basal, open_part) * mulch;

    let filled = bed.filled();
    let sides = if filled.top.as_square_metres() > 0.0 { filled.side / filled.top } else { 0.0 };
    let spread = 1.0 + (bed.leaf_spread() - 1.0) * canopy.growth;
    let loss = at_bed * (basal * spread + evaporation + doubtful.sides * sides);
    DayLoss {
        reference: open,
        reference_at_bed: at_bed,
        basal,
        evaporation,
        highest,
        loss,
        bare_surface: at_bed * (evaporation / open_part.as_of_one()),
        rain: day.rain.unwrap_or_default() * (bed.rain_caught() * doubtful.rain),
    }
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

/// What stands in the bed on a day: the thirstiest crop decides.
struct Canopy {
    basal: f64,
    height: Length,
    /// 0 at sowing, 1 grown.
    growth: f64,
    wetted: f64,
}

fn canopy(bed: &Surroundings<'_>, day: &Day, climate: &Climate) -> Canopy {
    let bare = Canopy { basal: 0.0, height: FIRST_HEIGHT, growth: 0.0, wetted: 1.0 };
    bed.standing.iter().map(|standing| of_crop(standing, day, climate)).fold(bare, |most, next| Canopy {
        basal: most.basal.max(next.basal),
        height: most.height.max(next.height),
        growth: most.growth.max(next.growth),
        wetted: most.wetted.min(next.wetted),
    })
}

fn of_crop(standing: &Standing<'_>, day: &Day, climate: &Climate) -> Canopy {
    let water = &standing.crop.water;
    let values =
        Coefficients { initial: water.kcb_initial.value(), mid: water.kcb_mid.value(), end: water.kcb_end.value() };
    let stages = &standing.crop.stages;
    let stages = StageDays {
        initial: stages.initial_days.value(),
        development: stages.development_days.value(),
        mid: stages.mid_days.value(),
        late: stages.late_days.value(),
    };
    let age = standing.start.map(|start| (day.date - start.date()).num_days());
    // Leaves that are cut again and again stay at their mid value; so does a crop of unknown age.
    let cut_again = matches!(standing.crop.grown_for, GrownFor::Leaf | GrownFor::Herb);
    let full = stages.initial + stages.development;
    let days = age.map_or(full, |age| if cut_again { (age as f64).min(full) } else { age as f64 });
    let table = values.on_day(&stages, days);
    let growth = values.growth(table);
    let height = if standing.microgreen { SHOOT_HEIGHT } else { grown(FIRST_HEIGHT, water.height.value(), growth) };
    let round_saplings = matches!(standing.start, Some(Start::Planted(planted))
        if (0..SAPLING_DAYS).contains(&(day.date - planted).num_days()));
    Canopy {
        basal: adjusted_to_climate(table, climate, height),
        height,
        growth: growth.as_of_one(),
        wetted: if round_saplings { WETTED_ROUND_SAPLINGS } else { 1.0 },
    }
}
