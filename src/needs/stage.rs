//! How far a crop has come in its season: the days of its table, at the pace of the weather.

use super::surroundings::Standing;
use crate::agronomy::crop_coefficient::StageDays;
use crate::agronomy::thermal_time::{DayTemperatures, Thresholds, thermal_time};
use crate::knowledge::Crop;
use crate::quantity::ThermalTime;
use crate::weather::{Day, Weather};
use chrono::NaiveDate;

/// The lengths of the four stages as the table has them (FAO-56 table 11), at the table's own pace.
#[must_use]
pub fn stage_days(crop: &Crop) -> StageDays {
    let stages = &crop.stages;
    StageDays {
        initial: stages.initial_days.value(),
        development: stages.development_days.value(),
        mid: stages.mid_days.value(),
        late: stages.late_days.value(),
    }
}

/// Where between a crop's base and its upper threshold the days of its table lie.
///
/// FAO-56 table 11 gives days for a region and a planting date and no temperatures; chapter 6 lets them be
/// moved by degree days (from memory). Two thirds is fitted: with it tomato, cauliflower and sweet pepper take
/// on the normals of Phoenix (desert) and Lahore (arid) what their rows for such regions print, within 15 %.
/// Lettuce, spinach and green bean come out a third short in a warm autumn and radish a fifth long in a cold
/// winter: they are watered as grown sooner, not as spent.
const TABLE_DAYS_LIE_AT: f64 = 2.0 / 3.0;

/// How many days of the table one day is worth: its thermal time over that of a table day. Nothing below the
/// base, never more than one and a half.
#[must_use]
pub fn pace(crop: &Crop, day: &Day) -> f64 {
    let (base, upper) = (crop.heat.base.value(), crop.heat.upper.value());
    let table_day = ThermalTime::degree_days((upper - base).as_kelvins() * TABLE_DAYS_LIE_AT);
    if table_day <= ThermalTime::default() {
        return 1.0;
    }
    let thresholds = Thresholds { base, upper: Some(upper) };
    thermal_time(DayTemperatures { tmax: day.tmax, tmin: day.tmin }, thresholds) / table_day
}

/// Days of the table lived from sowing or planting until the morning of a date, over the days as they are
/// known (past days are usual ones). A day of which nothing is known counts as one. None for an unknown
/// start.
#[must_use]
pub fn table_days(standing: &Standing<'_>, weather: &Weather<'_>, until: NaiveDate) -> Option<f64> {
    let start = standing.start?.date();
    let whole = stage_days(standing.crop).total();
    let mut lived = 0.0;
    for date in start.iter_days().take_while(|date| *date < until) {
        lived += weather.on(date).map_or(1.0, |day| pace(standing.crop, &day));
        // A season that is over stays over: years of a herb are not summed to their end.
        if lived > whole {
            break;
        }
    }
    Some(lived)
}
