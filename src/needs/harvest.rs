//! When a crop is ready, when it ends, how much to expect.

use super::gathered::full_after;
use super::heat::temperatures;
use super::space::bed_places;
use super::surroundings::{Standing, vessel};
use crate::agronomy::thermal_time::{DayTemperatures, Thresholds};
use crate::garden::{BedKind, Shape, Start};
use crate::knowledge::{CountedFrom, Fact, GrownFor};
use crate::quantity::{Area, Estimate, Mass, Temperature, TemperatureDifference, ThermalTime};
use crate::weather::{Day, Origin, Weather};
use chrono::{Days, NaiveDate};

/// Looking further ahead than this is no forecast.
const FURTHEST_DAYS: usize = 400;
/// A usual day's mean may be this far from the day that comes (judgement: the spread of a mean over weeks).
const USUAL_DAY_DOUBT_K: f64 = 1.5;
/// So may that of a day as its source had it afterwards, on a roof and not at a station (judgement).
const OBSERVED_DOUBT_K: f64 = 0.5;
/// A forecast day's mean may be this far off (judgement).
const FORECAST_DOUBT_K: f64 = 0.7;

/// The window of a harvest.
#[derive(Debug, Clone, PartialEq)]
pub struct HarvestWindow {
    pub first: Estimate<NaiveDate>,
    /// None for a tray, which is cut at once.
    pub last: Option<Estimate<NaiveDate>>,
    /// Thermal time asked for, over which base and below which upper temperature.
    pub sum: Fact<ThermalTime>,
    pub thresholds: Thresholds,
    pub start: Start,
    /// Whether the crop's clock was meant to begin with planting but only a sowing is known, or the reverse.
    pub other_start: bool,
    /// Mean maximum and minimum until the first pick.
    pub mean_tmax: Temperature,
    pub mean_tmin: Temperature,
    /// Days until the first pick that are usual days, not forecast.
    pub usual_days: usize,
    /// From the start to the first pick.
    pub days: usize,
}

/// The window of a standing crop under the weather of its site. None where its start or the weather is
/// unknown, or it would take more than 400 days (too cold).
#[must_use]
pub fn harvest_window(standing: &Standing<'_>, weather: &Weather<'_>) -> Option<HarvestWindow> {
    let start = standing.start?;
    let crop = standing.crop;
    let (sum, base, upper, picking) = match (&crop.microgreen, standing.microgreen) {
        (Some(tray), true) => (&tray.thermal_time, &tray.base, &tray.upper, None),
        _ => (&crop.harvest.first, &crop.heat.base, &crop.heat.upper, Some(&crop.harvest.picking_days)),
    };
    let thresholds = Thresholds { base: base.value(), upper: Some(upper.value()) };
    // The latest first: the others lie before it, and no day beyond it is looked at.
    let mut days: Vec<Day> = Vec::new();
    let until_late = weather.from(start.date()).take(FURTHEST_DAYS).inspect(|day| days.push(*day));
    let late = full_after(until_late.map(|day| warmed(&day, -1.0)), thresholds, sum.is.high())?;
    let reach = |degree_days: ThermalTime, warmer: f64| {
        full_after(days.iter().map(|day| warmed(day, warmer)), thresholds, degree_days)
    };
    let value = reach(sum.value(), 0.0)?;
    let early = reach(sum.is.low(), 1.0)?;
    let date = |days: usize| start.date().checked_add_days(Days::new(days as u64)).unwrap_or(NaiveDate::MAX);
    let first = Estimate::spanning(date(value), [date(early), date(late)]);
    let last = picking.map(|picking| {
        let after = |day: NaiveDate, days: f64| day.checked_add_days(Days::new(days as u64)).unwrap_or(day);
        let ends = [after(first.low(), picking.is.low()), after(first.high(), picking.is.high())];
        Estimate::spanning(after(first.value(), picking.value()), ends)
    });
    let until: Vec<&Day> = days.iter().take(value.max(1)).collect();
    let meant = match crop.harvest.counted_from {
        CountedFrom::Sowing => matches!(start, Start::Sown(_)),
        CountedFrom::Planting => matches!(start, Start::Planted(_)),
    };
    Some(HarvestWindow {
        first,
        last,
        sum: sum.clone(),
        thresholds,
        start,
        other_start: !meant && !standing.microgreen,
        mean_tmax: super::heat::mean(until.iter().map(|day| day.tmax))?,
        mean_tmin: super::heat::mean(until.iter().map(|day| day.tmin))?,
        usual_days: until.iter().filter(|day| day.origin == Origin::Normals).count(),
        days: value,
    })
}

/// What a planting is to give, and the ground it was counted on.
#[derive(Debug, Clone, PartialEq)]
pub struct Expected {
    pub grams: Estimate<Mass>,
    /// Of one square metre of ground under the crop.
    pub per_square_metre: Fact<f64>,
    pub ground: Area,
    /// The leaves reach beyond the bed, so that more ground counts than the top.
    pub beyond_the_top: bool,
}

/// A plant whose leaves are spread over more ground than its mix gives at least so much of what the ground would: its
/// roots have less to draw on (judgement, no source).
const SMALL_ROOT_RUN: f64 = 0.4;

/// The whole harvest of a bed.
///
/// Yields are grams of a square metre of ground that leaves cover. A leaf crop stays within its bed; a climber or a
/// staked plant in a bag or pot spreads its leaves over a trellis or beyond the rim, over its spacing squared, and
/// bears by them. So for fruit and pods the larger of the two counts: the top of the bed, or the ground of the plants
/// that stand (else of as many as fit, at least one; more than fit bear no more). A small root run yields less than open
/// ground: the more of the ground lies beyond the top, the further the low end is drawn down towards
/// [`SMALL_ROOT_RUN`].
#[must_use]
pub fn grams_expected(standing: &Standing<'_>, kind: BedKind, shape: &Shape) -> Expected {
    let crop = standing.crop;
    let top = vessel(shape).measures().top;
    let fact = match (&crop.microgreen, standing.microgreen) {
        (Some(tray), true) => &tray.grams_per_m2,
        _ => &crop.harvest.grams_per_m2,
    };
    let spreads = !standing.microgreen && matches!(crop.grown_for, GrownFor::Fruit | GrownFor::Pod);
    let fits = || bed_places(crop, kind, shape).plants.value().max(1.0);
    let leaves = || {
        let plants = standing.plants.map_or_else(fits, |plants| f64::from(plants.max(1)).min(fits()));
        let gap = crop.bed.spacing.value().as_metres();
        Area::square_metres(plants * gap * gap)
    };
    let ground = if spreads { leaves().max(top) } else { top };
    let square_metres = ground.as_square_metres();
    let beyond = if square_metres > 0.0 { 1.0 - top.as_square_metres() / square_metres } else { 0.0 };
    let grams = fact.is.map(|grams| (grams * square_metres).max(0.0));
    let careful = grams.low() * (1.0 - (1.0 - SMALL_ROOT_RUN) * beyond);
    let grams = Estimate::spanning(grams.value(), [careful, grams.high()]).map(Mass::grams);
    Expected { grams, per_square_metre: fact.clone(), ground, beyond_the_top: beyond > 0.0 }
}

/// A day moved by its own doubt, warmer or colder.
fn warmed(day: &Day, warmer: f64) -> DayTemperatures {
    let doubt = match day.origin {
        Origin::Forecast | Origin::Told | Origin::Kept => FORECAST_DOUBT_K,
        Origin::Observed => OBSERVED_DOUBT_K,
        Origin::Normals => USUAL_DAY_DOUBT_K,
    };
    let shift = TemperatureDifference::kelvins(doubt * warmer);
    let day = temperatures(day);
    DayTemperatures { tmax: day.tmax + shift, tmin: day.tmin + shift }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::Measure;
    use crate::knowledge::{Files, Knowledge};
    use crate::quantity::{Unit, Written};

    fn grams(crop: &str, kind: BedKind, shape: &Shape, plants: Option<u32>) -> (f64, f64, f64) {
        let known = Knowledge::read(&Files::embedded()).0;
        let standing = Standing { crop: &known.crops[crop], microgreen: false, start: None, plants };
        let grams = grams_expected(&standing, kind, shape).grams.map(Mass::as_grams);
        (grams.low(), grams.value(), grams.high())
    }

    fn bag(litres: f64) -> Shape {
        Shape::Bag { volume: Measure::of(Written { value: litres, unit: Unit::Litre }).unwrap(), depth: None }
    }

    #[test]
    fn a_climber_in_a_bag_bears_by_its_leaves() {
        // A bottle gourd of 0.5 to 1 kg each: some fruits of one vine, not a slice of one.
        let (low, value, high) = grams("bottle-gourd", BedKind::Bag, &bag(40.0), None);
        assert!((300.0..=2_000.0).contains(&low), "{low}");
        assert!((1_500.0..=8_000.0).contains(&value), "{value}");
        assert!(value < high && high <= 15_000.0, "{high}");
    }

    #[test]
    fn a_box_full_of_plants_bears_by_its_top() {
        let foot = |value| Measure::of(Written { value, unit: Unit::Foot }).unwrap();
        let shape = Shape::Box { length: foot(4.0), width: foot(3.0), depth: foot(1.0) };
        let (low, value, high) = grams("okra", BedKind::Box, &shape, Some(6));
        let known = Knowledge::read(&Files::embedded()).0;
        let per = known.crops["okra"].harvest.grams_per_m2.is;
        let top = 4.0 * 3.0 * 0.3048 * 0.3048;
        assert!((value / (per.value() * top) - 1.0).abs() < 0.25, "{value}");
        assert!(low > 0.0 && low <= value && value <= high);
    }

    #[test]
    fn leaf_crops_stay_within_the_top() {
        let known = Knowledge::read(&Files::embedded()).0;
        let crop = &known.crops["spinach"];
        let standing = Standing { crop, microgreen: false, start: None, plants: None };
        let expected = grams_expected(&standing, BedKind::Bag, &bag(20.0));
        assert_eq!(expected.ground, vessel(&bag(20.0)).measures().top);
        assert!(!expected.beyond_the_top);
    }
}
