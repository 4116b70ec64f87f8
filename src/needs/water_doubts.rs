//! What is in doubt when a bed's water is summed, and how far.

use super::loss_factor::LossFactor;
use super::showers::Showers;
use super::surroundings::Surroundings;
use super::swing::Doubt;
use super::water_day::{Air, BedDay, DayCoefficients, DayLoss, Doubtful, bed_days, seed_on_top};
use crate::quantity::{Fraction, WaterDepth};
use crate::weather::{Day, Origin};

/// What a range comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DoubtName {
    SunSpell,
    /// How fast this one bed dries, once it has been looked at.
    Bed,
    Weather,
    SmallStand,
    Sides,
    Leaves,
    Wind,
    Humidity,
    Rain,
    SurfaceLimit,
    RootLimit,
}

/// Inputs of one run of the sum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inputs {
    pub doubtful: Doubtful,
    pub surface_limit: WaterDepth,
    pub easily_available: Fraction,
}

/// A day with its air and coefficients at best values, so that a run which leaves them alone needn't work them
/// out again.
#[derive(Debug, Clone)]
pub struct AiredDay<'a> {
    pub day: BedDay<'a>,
    best: Doubtful,
    air: Air,
    coefficients: DayCoefficients,
}

/// The best inputs of a bed over some days, and its doubts.
#[must_use]
pub fn doubts(bed: &Surroundings<'_>, days: &[Day], factor: &LossFactor) -> (Inputs, Vec<Doubt<DoubtName, Inputs>>) {
    let properties = &bed.mix.properties;
    let limit = if seed_on_top(bed) { &properties.surface_limit_seed } else { &properties.surface_limit };
    let best = Inputs {
        doubtful: best(bed, days, factor),
        surface_limit: limit.value(),
        easily_available: properties.easily_available.value(),
    };
    let mut doubts = of_the_sky_and_the_bed(bed, days, &best);
    let limit = &limit.is;
    doubts.push(doubt(
        DoubtName::SurfaceLimit,
        &best,
        |i| i.surface_limit = limit.high(),
        |i| {
            i.surface_limit = limit.low();
        },
    ));
    let available = &properties.easily_available.is;
    doubts.push(doubt(
        DoubtName::RootLimit,
        &best,
        |i| i.easily_available = available.high(),
        |i| {
            i.easily_available = available.low();
        },
    ));
    let left = factor.doubt_left();
    for doubt in doubts.iter_mut().filter(|doubt| doubt.name.is_of_the_bed()) {
        doubt.at_low = best.towards(&doubt.at_low, left);
        doubt.at_high = best.towards(&doubt.at_high, left);
    }
    if factor.looks > 0 {
        // The sum's own doubts about the bed stand for what looks have not yet told; the looks' range for what
        // they have. One vague look must not make an answer vaguer than none.
        let told = 1.0 - left * left;
        let end = |end: f64| factor.is.value() + (end - factor.is.value()) * told;
        let (low, high) = (end(factor.is.low()), end(factor.is.high()));
        doubts.push(doubt(DoubtName::Bed, &best, |i| i.doubtful.bed = low, |i| i.doubtful.bed = high));
    }
    (best, doubts)
}

/// Days made ready for many runs.
#[must_use]
pub fn aired<'a>(bed: &'a Surroundings<'a>, days: &[Day], best: &Inputs) -> Vec<AiredDay<'a>> {
    let days = bed_days(bed, days).into_iter();
    days.map(|day| {
        let air = day.air(&best.doubtful);
        AiredDay { air, coefficients: day.coefficients(&air, &best.doubtful), best: best.doubtful, day }
    })
    .collect()
}

impl AiredDay<'_> {
    /// Of a usual day with rain: the share of such days on which it comes.
    #[must_use]
    pub fn wet_share(&self, inputs: &Inputs) -> Option<f64> {
        let day = &self.day.day;
        let rains = day.origin == Origin::Normals && day.rain.is_some_and(|rain| rain > WaterDepth::default());
        let chance = day.rain_chance.filter(|_| rains)?.as_of_one();
        Some((chance * inputs.doubtful.rain).max(0.0))
    }

    /// The day's loss at some inputs.
    #[must_use]
    pub fn loss(&self, inputs: &Inputs) -> DayLoss {
        let (now, best) = (&inputs.doubtful, &self.best);
        let same_air = now.sun_spell == best.sun_spell
            && now.unknown_wind_m_s == best.unknown_wind_m_s
            && now.dew_below_tmin_k == best.dew_below_tmin_k;
        let air = if same_air { self.air } else { self.day.air(now) };
        let same_plants = now.leaves == best.leaves && now.small_stand == best.small_stand && air.like(&self.air);
        let coefficients = if same_plants { self.coefficients } else { self.day.coefficients(&air, now) };
        self.day.loss(&air, &coefficients, now)
    }
}

impl DoubtName {
    /// Whether the doubt is one and the same on every day of a bed, so that looks at it lessen it.
    const fn is_of_the_bed(self) -> bool {
        matches!(
            self,
            Self::SunSpell | Self::SmallStand | Self::Sides | Self::Leaves | Self::SurfaceLimit | Self::RootLimit
        )
    }
}

impl Inputs {
    /// These inputs moved a part of the way to others.
    fn towards(&self, other: &Self, part: f64) -> Self {
        let between = |from: f64, to: f64| from + (to - from) * part;
        let (from, to) = (&self.doubtful, &other.doubtful);
        Self {
            doubtful: Doubtful {
                sun_spell: between(from.sun_spell, to.sun_spell),
                weather: between(from.weather, to.weather),
                bed: between(from.bed, to.bed),
                small_stand: between(from.small_stand, to.small_stand),
                sides: between(from.sides, to.sides),
                leaves: between(from.leaves, to.leaves),
                unknown_wind_m_s: between(from.unknown_wind_m_s, to.unknown_wind_m_s),
                dew_below_tmin_k: between(from.dew_below_tmin_k, to.dew_below_tmin_k),
                rain: between(from.rain, to.rain),
            },
            surface_limit: self.surface_limit + (other.surface_limit - self.surface_limit) * part,
            easily_available: Fraction::of_one(between(
                self.easily_available.as_of_one(),
                other.easily_available.as_of_one(),
            )),
        }
    }
}

/// Best values of all that is in doubt, for a bed that has shown nothing yet.
fn best(bed: &Surroundings<'_>, days: &[Day], factor: &LossFactor) -> Doubtful {
    let dry_air = days.iter().any(|day| day.humidity_mean.is_none()) && bed.weather.arid().is_some();
    Doubtful {
        sun_spell: 0.0,
        weather: 1.0,
        bed: factor.is.value(),
        small_stand: SMALL_STAND.1,
        sides: bed.side_drying().1,
        leaves: 1.0,
        unknown_wind_m_s: 2.0,
        dew_below_tmin_k: if dry_air { DEW_BELOW_TMIN_K } else { 0.0 },
        rain: 1.0,
    }
}

/// K0 of FAO-56 eq. 6-6: by so much the dew point lies below the minimum in arid and semi-arid places.
pub const DEW_BELOW_TMIN_K: f64 = 2.0;
/// Rain of a forecast is known to this part (judgement).
const FORECAST_RAIN_DOUBT: f64 = 0.5;
/// A small stand on a hot bare roof loses more than a field: FAO-56 chapter 10 lets the coefficient of
/// small isolated stands rise above that of a field; how far on a roof is a judgement.
const SMALL_STAND: (f64, f64, f64) = (1.0, 1.05, 1.15);
/// A forecast's reference rate is known to about this part (judgement).
const FORECAST_DOUBT: f64 = 0.07;
/// A usual day is one of many: day-to-day spread of a week's mean (judgement).
const USUAL_DAYS_DOUBT: f64 = 0.15;
/// Leaves transpire within this part of the tables' coefficient (FAO-56 table 17 is printed to 0.05).
const LEAVES_DOUBT: f64 = 0.07;

fn of_the_sky_and_the_bed(bed: &Surroundings<'_>, days: &[Day], best: &Inputs) -> Vec<Doubt<DoubtName, Inputs>> {
    let usual = days.iter().any(|day| day.origin == Origin::Normals);
    let weather = if usual { USUAL_DAYS_DOUBT } else { FORECAST_DOUBT };
    let sides = bed.side_drying();
    let mut all = vec![
        doubt(DoubtName::SunSpell, best, |i| i.doubtful.sun_spell = -1.0, |i| i.doubtful.sun_spell = 1.0),
        doubt(DoubtName::Weather, best, |i| i.doubtful.weather -= weather, |i| i.doubtful.weather += weather),
        doubt(
            DoubtName::SmallStand,
            best,
            |i| i.doubtful.small_stand = SMALL_STAND.0,
            |i| {
                i.doubtful.small_stand = SMALL_STAND.2;
            },
        ),
        doubt(DoubtName::Sides, best, |i| i.doubtful.sides = sides.0, |i| i.doubtful.sides = sides.2),
        doubt(DoubtName::Leaves, best, |i| i.doubtful.leaves -= LEAVES_DOUBT, |i| i.doubtful.leaves += LEAVES_DOUBT),
    ];
    if days.iter().any(|day| day.wind_2m.is_none()) {
        all.push(doubt(
            DoubtName::Wind,
            best,
            |i| i.doubtful.unknown_wind_m_s = 1.0,
            |i| {
                i.doubtful.unknown_wind_m_s = 3.0;
            },
        ));
    }
    if days.iter().any(|day| day.humidity_mean.is_none()) {
        // It may lie there in a dry month elsewhere too, and by more in a desert (judgement: 1 to 2 K more).
        all.push(doubt(
            DoubtName::Humidity,
            best,
            |i| i.doubtful.dew_below_tmin_k = 0.0,
            |i| {
                i.doubtful.dew_below_tmin_k = if i.doubtful.dew_below_tmin_k > 0.0 { 4.0 } else { 3.0 };
            },
        ));
    }
    if days.iter().any(|day| day.rain.is_some_and(|rain| rain > WaterDepth::default())) {
        let part = rain_doubt(days);
        all.push(doubt(DoubtName::Rain, best, |i| i.doubtful.rain += part, |i| i.doubtful.rain -= part));
    }
    all
}

/// How far the rain of some days may be off: of usual days by how many of so few may be wet.
fn rain_doubt(days: &[Day]) -> f64 {
    let usual = days.iter().filter(|day| day.origin == Origin::Normals);
    let chances: Vec<f64> = usual.filter_map(|day| Some(day.rain_chance?.as_of_one())).collect();
    if chances.is_empty() {
        return FORECAST_RAIN_DOUBT;
    }
    Showers::doubt(chances.iter().sum::<f64>() / chances.len() as f64, chances.len())
}

fn doubt(
    name: DoubtName,
    best: &Inputs,
    low: impl Fn(&mut Inputs),
    high: impl Fn(&mut Inputs),
) -> Doubt<DoubtName, Inputs> {
    let (mut at_low, mut at_high) = (*best, *best);
    low(&mut at_low);
    high(&mut at_high);
    Doubt { name, at_low, at_high }
}
