//! How often and how much one bed wants water in the seven days from today.

use super::loss_factor::LossFactor;
use super::showers::Showers;
use super::surroundings::Surroundings;
use super::swing::runs;
use super::water_day::DayLoss;
use super::water_doubts::{AiredDay, DoubtName, Inputs, aired, doubts};
use crate::agronomy::root_zone::readily_available;
use crate::quantity::{Area, Estimate, Fraction, Temperature, Volume, WaterDepth};
use crate::weather::{Day, Origin};
use chrono::NaiveDate;

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
    /// Litres that each of its days asks for, under the doubts of the week: the weather of one day may miss by more.
    pub litres_by_day: Vec<Estimate<Volume>>,
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

impl WaterWeek {
    /// Usual days with rain, as many as are to be expected.
    #[must_use]
    pub fn wet_days(&self) -> f64 {
        let usual = self.days.iter().map(|(day, _)| day).filter(|day| day.origin == Origin::Normals);
        usual.filter_map(|day| day.rain_chance).map(Fraction::as_of_one).sum()
    }
}

/// Which of the two limits gives the sooner watering.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// The top must not look dry.
    Surface,
    /// Roots must not go short.
    Roots,
}

/// One run of the sum.
struct Run {
    litres: f64,
    bring_mm: [f64; WEEK_DAYS],
    loss_mm: f64,
    reference_mm: f64,
    surface_waterings: f64,
    root_waterings: f64,
}

/// A week of water at best values alone: what a reminder of a change asks of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeekAtBest {
    /// Its first day.
    pub from: NaiveDate,
    /// The rhythm to keep, one of [`RHYTHMS`].
    pub rhythm: f64,
    /// Litres to bring in the week.
    pub litres: Volume,
    /// The highest maximum of its days.
    pub hottest: Temperature,
}

impl Run {
    /// Waterings in the week by the nearer of the two limits.
    fn waterings(&self) -> f64 {
        self.surface_waterings.max(self.root_waterings)
    }
}

/// A bed's week from today. None where no weather is known, the bed has no size, or nothing can be said.
#[must_use]
pub fn water_week(bed: &Surroundings<'_>) -> Option<WaterWeek> {
    water_week_of(bed, &LossFactor::UNSEEN)
}

/// The same, of a bed that has shown how fast it dries.
#[must_use]
pub fn water_week_of(bed: &Surroundings<'_>, factor: &LossFactor) -> Option<WaterWeek> {
    let days = days_of(bed)?;
    let (best, doubts) = doubts(bed, &days, factor);
    let week = Week { bed, top: bed.filled().top, days: aired(bed, &days, &best) };
    let all = runs(&best, &doubts, |inputs| week.run(inputs));
    let litres = all.figure(|run| run.litres);
    let often = all.figure(Run::waterings);
    let at_best = &all.best;
    let rhythm = rhythm(often.is.value());
    let lost: Vec<(Day, DayLoss)> = week.days.iter().map(|day| (day.day.day, day.loss(&best))).collect();
    let brought = |is: &Estimate<f64>| {
        if rhythm > 0.0 {
            is.map(|value| Volume::litres(value.max(0.0)))
        } else {
            Estimate::spanning(Volume::default(), [Volume::litres(is.high().max(0.0))])
        }
    };
    let of_day = |day: usize| {
        let mm = |run: &Run| run.bring_mm.get(day).copied().unwrap_or_default();
        brought(&all.figure(|run| (WaterDepth::millimetres(mm(run)) * week.top).as_litres()).is)
    };
    let bearable = |is: &Estimate<f64>| is.map(|value| WaterDepth::millimetres(value.max(0.0)));
    Some(WaterWeek {
        litres: brought(&litres.is),
        litres_by_day: (0..WEEK_DAYS).map(of_day).collect(),
        waterings: Estimate::spanning(rhythm, [often.is.low().max(0.0), often.is.high().max(0.0)]),
        rhythm,
        loss_per_day: bearable(&all.figure(|run| run.loss_mm).is),
        reference_et: bearable(&all.figure(|run| run.reference_mm).is),
        surface_limit: best.surface_limit,
        root_limit: root_limit(bed, best.easily_available),
        decided_by: if at_best.surface_waterings >= at_best.root_waterings { Limit::Surface } else { Limit::Roots },
        rain: lost.iter().map(|(_, loss)| loss.rain).sum(),
        largest_doubt: litres.largest,
        usual_days: days.iter().filter(|day| day.origin == Origin::Normals).count(),
        days: lost,
    })
}

/// The best values of [`water_week_of`] without their ranges: the sum runs once instead of twice for each doubt.
#[must_use]
pub fn week_at_best(bed: &Surroundings<'_>, factor: &LossFactor) -> Option<WeekAtBest> {
    let days = days_of(bed)?;
    let (best, _) = doubts(bed, &days, factor);
    let run = Week { bed, top: bed.filled().top, days: aired(bed, &days, &best) }.run(&best);
    let rhythm = rhythm(run.waterings());
    let litres = if rhythm > 0.0 { run.litres.max(0.0) } else { 0.0 };
    let maxima = days.iter().map(|day| day.tmax);
    Some(WeekAtBest {
        from: bed.today,
        rhythm,
        litres: Volume::litres(litres),
        hottest: maxima.max_by(|a, b| a.as_celsius().total_cmp(&b.as_celsius()))?,
    })
}

/// The days of a week of a bed that has a size.
fn days_of(bed: &Surroundings<'_>) -> Option<Vec<Day>> {
    let days: Vec<Day> = bed.weather.from(bed.today).take(WEEK_DAYS).collect();
    (days.len() == WEEK_DAYS && bed.filled().top.as_square_metres() > 0.0).then_some(days)
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
#[must_use]
pub fn root_limit(bed: &Surroundings<'_>, easily_available: Fraction) -> WaterDepth {
    let depth = bed.filled().depth;
    let fraction = bed
        .standing
        .iter()
        .map(|standing| standing.crop.water.depletion_fraction.value().as_of_one())
        .fold(USUAL_DEPLETION_FRACTION, f64::min);
    let total = WaterDepth::millimetres(easily_available.as_of_one() * depth.as_metres() * 1000.0);
    readily_available(total, Fraction::of_one(fraction / USUAL_DEPLETION_FRACTION))
}

/// The days of a week and the measures that every run of it shares.
struct Week<'a> {
    bed: &'a Surroundings<'a>,
    top: Area,
    days: Vec<AiredDay<'a>>,
}

impl Week<'_> {
    fn run(&self, inputs: &Inputs) -> Run {
        let root_limit = root_limit(self.bed, inputs.easily_available).as_millimetres().max(0.1);
        let surface_limit = inputs.surface_limit.as_millimetres().max(0.1);
        let mut bring_mm = [0.0; WEEK_DAYS];
        let (mut loss_mm, mut bare_mm, mut reference_mm) = (0.0, 0.0, 0.0);
        for (day, bring_mm) in self.days.iter().zip(&mut bring_mm) {
            let lost = day.loss(inputs);
            let rain_mm = lost.rain.as_millimetres();
            loss_mm += lost.loss.as_millimetres();
            reference_mm += lost.reference.et.as_millimetres();
            let (loss, bare) = (lost.loss.as_millimetres(), lost.bare_surface.as_millimetres());
            if let Some(wet_share) = day.wet_share(inputs) {
                // Usual rain comes in showers with dry days between them.
                let days_without = (surface_limit / bare.max(0.01)).min(root_limit / loss.max(0.01));
                let left = Showers { wet_share, mean_mm: rain_mm }.left_to_water(days_without, loss);
                *bring_mm = loss * left;
                bare_mm += bare * left;
            } else {
                // What is short at the end of a day is watered in, and the bed starts the next day full. What rain
                // brings beyond runs through and helps no later day.
                *bring_mm = (loss - rain_mm).max(0.0);
                bare_mm += (bare - rain_mm).max(0.0);
            }
        }
        let days = self.days.len() as f64;
        let brought: f64 = bring_mm.iter().sum();
        Run {
            litres: (WaterDepth::millimetres(brought) * self.top).as_litres(),
            bring_mm,
            loss_mm: loss_mm / days,
            reference_mm: reference_mm / days * inputs.doubtful.weather,
            surface_waterings: bare_mm / surface_limit,
            root_waterings: brought / root_limit,
        }
    }
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
