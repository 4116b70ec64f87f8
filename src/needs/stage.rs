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

/// How many days of the table one day is worth: its thermal time over that of a table day.
///
/// FAO-56 table 11 gives days for a region and a planting date and no temperatures; chapter 6 lets them be
/// moved by degree days (from memory). A table day is taken at the middle between the crop's base and its
/// upper threshold, where the days of the common seasons lie: a convention of this house. So a day counts
/// nothing below the base and never more than two.
#[must_use]
pub fn pace(crop: &Crop, day: &Day) -> f64 {
    let (base, upper) = (crop.heat.base.value(), crop.heat.upper.value());
    let table_day = ThermalTime::degree_days((upper - base).as_kelvins() / 2.0);
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
