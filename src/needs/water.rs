//! How often and how much one bed wants water in the seven days from today.

use super::surroundings::Surroundings;
use super::swing::{Doubt, Swung, swing};
use super::water_day::{DayLoss, Doubtful, day_loss, seed_on_top};
use crate::agronomy::root_zone::readily_available;
use crate::quantity::{Estimate, Fraction, Volume, WaterDepth};
use crate::weather::{Day, Origin};

/// A week is seven calendar days, today the first.
pub const WEEK_DAYS: usize = 7;

/// The rhythms a household can keep, in waterings a week.
pub const RHYTHMS: [f64; 7] = [0.0, 1.0, 7.0 / 3.0, 3.5, 7.0, 14.0, 21.0];

/// A rhythm may be this much slower than the interval.
const GIVEN: f64 = 1.1;

/// FAO-56 table 22 gives p; half of the available water is its usual value (chapter 8). The easily
/// available water of a mix, 1 to 5 kPa, is what a crop of that usual p may take; a thirstier one less.
const USUAL_DEPLETION_FRACTION: f64 = 0.5;

/// A bed's week of water.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterWeek {
    pub days: Vec<(Day, DayLoss)>,
    /// Litres to bring in the week.
    pub litres: Estimate<Volume>,
    /// Waterings a week as the sum gives them, stretched to hold the rhythm.
    pub waterings: Estimate<f64>,
    /// The rhythm to keep, one of [`RHYTHMS`].
    pub rhythm: f64,
    /// Mean loss a day, over the top area.
    pub loss_per_day: Estimate<WaterDepth>,
    /// Mean reference evapotranspiration under the open sky.
    pub reference_et: Estimate<WaterDepth>,
    /// What the surface may lose before it looks dry.
    pub surface_limit: WaterDepth,
    /// What the roots may take.
    pub root_limit: WaterDepth,
    pub decided_by: Limit,
    pub rain: WaterDepth,
    pub largest_doubt: Option<DoubtName>,
    /// Whether the days are usual days rather than a forecast.
    pub usual_days: usize,
}

/// Which of the two limits gives the sooner watering.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// The top must not look dry.
    Surface,
    /// Roots must not go short.
    Roots,
}

/// What a range comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DoubtName {
    SunSpell,
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
#[derive(Debug, Clone, Copy)]
struct Inputs {
    doubtful: Doubtful,
    surface_limit: WaterDepth,
    easily_available: Fraction,
}

/// One run of the sum.
struct Run {
    litres: f64,
    loss_mm: f64,
    surface_waterings: f64,
    root_waterings: f64,
}

/// A bed's week from today. None where no weather is known, the bed has no size, or nothing can be said.
#[must_use]
pub fn water_week(bed: &Surroundings<'_>) -> Option<WaterWeek> {
    let days: Vec<Day> = bed.weather.from(bed.today).take(WEEK_DAYS).collect();
    if days.len() < WEEK_DAYS || bed.filled().top.as_square_metres() <= 0.0 {
        return None;
    }
    let properties = &bed.mix.properties;
    let limit = if seed_on_top(bed) { &properties.surface_limit_seed } else { &properties.surface_limit };
    let best = Inputs {
        doubtful: best(bed),
        surface_limit: limit.value(),
        easily_available: properties.easily_available.value(),
    };
    let mut doubts = doubts(bed, &days, &best);
    doubts.push(doubt(
        DoubtName::SurfaceLimit,
        &best,
        |i| i.surface_limit = limit.is.high(),
        |i| {
            i.surface_limit = limit.is.low();
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

    let run = |inputs: &Inputs| run(bed, &days, inputs);
    let litres = swing(&best, &doubts, |inputs| run(inputs).litres);
    let loss = swing(&best, &doubts, |inputs| run(inputs).loss_mm);
    let often = swing(&best, &doubts, |inputs| {
        let run = run(inputs);
        run.surface_waterings.max(run.root_waterings)
    });
    let at_best = run(&best);
    let rhythm = rhythm(often.is.value());
    let lost: Vec<(Day, DayLoss)> = days.iter().map(|day| (*day, day_loss(bed, day, &best.doubtful))).collect();
    let reference = swing(&best, &doubts, |inputs| {
        let all = days.iter().map(|day| day_loss(bed, day, &inputs.doubtful).reference.et.as_millimetres());
        all.sum::<f64>() / WEEK_DAYS as f64 * inputs.doubtful.weather
    });
    let bearable = |is: &Estimate<f64>| is.map(|value| WaterDepth::millimetres(value.max(0.0)));
    Some(WaterWeek {
        litres: if rhythm > 0.0 {
            litres.is.map(|value| Volume::litres(value.max(0.0)))
        } else {
            Estimate::spanning(Volume::default(), [Volume::litres(litres.is.high().max(0.0))])
        },
        waterings: Estimate::spanning(rhythm, [often.is.low().max(0.0), often.is.high().max(0.0)]),
        rhythm,
        loss_per_day: bearable(&loss.is),
        reference_et: bearable(&reference.is),
        surface_limit: best.surface_limit,
        root_limit: root_limit(bed, best.easily_available),
        decided_by: if at_best.surface_waterings >= at_best.root_waterings { Limit::Surface } else { Limit::Roots },
        rain: lost.iter().map(|(_, loss)| loss.rain).sum(),
        largest_doubt: largest(&litres),
        usual_days: days.iter().filter(|day| day.origin == Origin::Normals).count(),
        days: lost,
    })
}

/// The longest rhythm that is not longer than the interval, a tenth given. More than the most a household
/// can keep gives that most.
#[must_use]
pub fn rhythm(waterings_a_week: f64) -> f64 {
    /// Less than this part of one watering in a week is none.
    const NOT_WORTH: f64 = 0.15;
    if waterings_a_week < NOT_WORTH {
        return 0.0;
    }
    RHYTHMS.into_iter().find(|rhythm| rhythm * GIVEN >= waterings_a_week).unwrap_or(21.0)
}

/// The water that roots may take before they go short: FAO-56 eq. 83 with the mix's easily available water
/// in place of TAW·p, scaled by the crop's p. Not moved by the day's rate as in table 22: between 1 and
/// 5 kPa a mix gives its water freely.
fn root_limit(bed: &Surroundings<'_>, easily_available: Fraction) -> WaterDepth {
    let depth = bed.filled().depth;
    let fraction = bed
        .standing
        .iter()
        .map(|standing| standing.crop.water.depletion_fraction.value().as_of_one())
        .fold(USUAL_DEPLETION_FRACTION, f64::min);
    let total = WaterDepth::millimetres(easily_available.as_of_one() * depth.as_metres() * 1000.0);
    readily_available(total, Fraction::of_one(fraction / USUAL_DEPLETION_FRACTION))
}

fn run(bed: &Surroundings<'_>, days: &[Day], inputs: &Inputs) -> Run {
    let top = bed.filled().top;
    let (mut bring_mm, mut loss_mm, mut bare_mm) = (0.0, 0.0, 0.0);
    // Rain fills what was lost so far; what it brings beyond runs through and helps no later day, except for
    // what the bed then holds for the day itself.
    let (mut short_mm, mut dry_mm) = (0.0_f64, 0.0_f64);
    for day in days {
        let lost = day_loss(bed, day, &inputs.doubtful);
        let rain_mm = lost.rain.as_millimetres();
        short_mm = (short_mm + lost.loss.as_millimetres() - rain_mm).max(0.0);
        dry_mm = (dry_mm + lost.bare_surface.as_millimetres() - rain_mm).max(0.0);
        loss_mm += lost.loss.as_millimetres();
        // What is short at the end of a day is watered in; the bed starts the next day full.
        bring_mm += short_mm;
        bare_mm += dry_mm;
        (short_mm, dry_mm) = (0.0, 0.0);
    }
    let root_limit = root_limit(bed, inputs.easily_available).as_millimetres();
    Run {
        litres: (WaterDepth::millimetres(bring_mm) * top).as_litres(),
        loss_mm: loss_mm / days.len() as f64,
        surface_waterings: bare_mm / inputs.surface_limit.as_millimetres().max(0.1),
        root_waterings: bring_mm / root_limit.max(0.1),
    }
}

fn best(bed: &Surroundings<'_>) -> Doubtful {
    Doubtful {
        sun_spell: 0.0,
        weather: 1.0,
        small_stand: SMALL_STAND.1,
        sides: bed.side_drying().1,
        leaves: 1.0,
        unknown_wind_m_s: 2.0,
        dew_below_tmin_k: 0.0,
        rain: 1.0,
    }
}

/// A small stand on a hot bare roof loses more than a field: FAO-56 chapter 10 lets the coefficient of
/// small isolated stands rise above that of a field; how far on a roof is a judgement.
const SMALL_STAND: (f64, f64, f64) = (1.0, 1.05, 1.15);
/// A forecast's reference rate is known to about this part (judgement).
const FORECAST_DOUBT: f64 = 0.07;
/// A usual day is one of many: day-to-day spread of a week's mean (judgement).
const USUAL_DAYS_DOUBT: f64 = 0.15;
/// Leaves transpire within this part of the tables' coefficient (FAO-56 table 17 is printed to 0.05).
const LEAVES_DOUBT: f64 = 0.07;

fn doubts(bed: &Surroundings<'_>, days: &[Day], best: &Inputs) -> Vec<Doubt<DoubtName, Inputs>> {
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
        // In dry places the dew point lies below the minimum (FAO-56 chapter 3: by 2 to 3 K).
        all.push(doubt(DoubtName::Humidity, best, |_| {}, |i| i.doubtful.dew_below_tmin_k = 3.0));
    }
    if days.iter().any(|day| day.rain.is_some_and(|rain| rain > WaterDepth::default())) {
        all.push(doubt(DoubtName::Rain, best, |i| i.doubtful.rain = 1.5, |i| i.doubtful.rain = 0.5));
    }
    all
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

fn largest(swung: &Swung<DoubtName>) -> Option<DoubtName> {
    swung.largest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(waterings: f64, expected: f64) {
        assert_eq!(rhythm(waterings), expected, "{waterings}");
    }

    /// The rhythm is the longest not longer than the interval, a tenth given (the answer contract's rule).
    #[test]
    fn keeps_a_rhythm_that_a_household_can() {
        case(0.0, 0.0);
        case(0.5, 1.0);
        case(1.1, 1.0);
        case(1.2, 7.0 / 3.0);
        case(3.5, 3.5);
        case(3.9, 7.0);
        case(7.7, 7.0);
        case(7.8, 14.0);
        case(15.4, 14.0);
        case(16.0, 21.0);
        case(40.0, 21.0);
    }
}
