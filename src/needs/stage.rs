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

/// Where between its base and its upper threshold the days of a crop's table lie, where the table has no row of its
/// own for it: the mean of the seven crops that have (0.59 for radish to 0.94 for lettuce and spinach).
const TABLE_DAYS_LIE_AT: f64 = 0.77;

/// The thermal time of one day as the table counts days.
///
/// FAO-56 table 11 gives days for a region and a planting month and no temperatures; chapter 6 lets them be moved by
/// degree days (from memory). So a row's days are worth the degree days of that season on normals of the row's own
/// region, and a crop has the middle of its rows. Rows of one crop differ by up to two (lettuce of February and of
/// December), for the table mixes kinds and harvests: no sum of temperatures meets them all.
fn table_day(crop: &Crop) -> ThermalTime {
    let whole = stage_days(crop).total();
    match &crop.stages.thermal_time {
        Some(season) if whole > 0.0 => ThermalTime::degree_days(season.value().as_degree_days() / whole),
        _ => {
            let range = crop.heat.upper.value() - crop.heat.base.value();
            ThermalTime::degree_days(range.as_kelvins() * TABLE_DAYS_LIE_AT)
        }
    }
}

/// How many days of the table one day is worth: its thermal time over that of a table day; nothing below the base.
#[must_use]
pub fn pace(crop: &Crop, day: &Day) -> f64 {
    let table_day = table_day(crop);
    if table_day <= ThermalTime::default() {
        return 1.0;
    }
    let thresholds = Thresholds { base: crop.heat.base.value(), upper: Some(crop.heat.upper.value()) };
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
