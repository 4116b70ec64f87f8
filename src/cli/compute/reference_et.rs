//! `compute reference-et`.

use super::error::ComputeError;
use super::table::Table;
use super::weather_row::{day_of_year, day_weather, elevation_m, latitude_deg, method};
use crate::agronomy::reference_et::{self, Exposure, SiteDay, hargreaves};
use std::io::{Read, Write};

const RESULTS: [&str; 7] = [
    "reference_et_mm",
    "extraterrestrial_radiation_mj_m2",
    "clear_sky_radiation_mj_m2",
    "net_radiation_mj_m2",
    "daylight_h",
    "hargreaves_et_mm",
    "method",
];

/// Reference evapotranspiration of every row, under the open sky.
///
/// # Errors
/// [`ComputeError`] naming row and column; nothing is written then.
pub fn reference_et(input: impl Read, output: impl Write) -> Result<(), ComputeError> {
    let table = Table::read(input)?;
    table.must_have("latitude_deg", "degrees, north positive")?;
    table.must_have("elevation_m", "metres above the sea")?;
    table.must_have("tmax_c", "°C")?;
    table.must_have("tmin_c", "°C")?;
    if !table.has("date") {
        table.must_have("day_of_year", "1 to 366, or a column date,")?;
    }
    table.append(
        RESULTS,
        |row| {
            let site = SiteDay::new(latitude_deg(row)?, elevation_m(row)?, day_of_year(row)?);
            let weather = day_weather(row)?;
            let result = reference_et::reference_et(&site, &weather, Exposure::OPEN);
            let simple = hargreaves(result.extraterrestrial, weather.tmax, weather.tmin);
            Ok([
                result.et.as_millimetres().to_string(),
                result.extraterrestrial.as_megajoules_per_square_metre().to_string(),
                result.clear_sky.as_megajoules_per_square_metre().to_string(),
                result.net.as_megajoules_per_square_metre().to_string(),
                result.daylight_h.to_string(),
                simple.as_millimetres().to_string(),
                method(&result),
            ])
        },
        output,
    )
}
