//! The weather of one row.

use super::error::ComputeError;
use super::table::Row;
use crate::agronomy::atmosphere::{saturation_pressure, vapour_pressure_from_dew_point};
use crate::agronomy::reference_et::{DayWeather, Humidity, Procedure, ReferenceEt, Sunlight};
use crate::quantity::{Fraction, Pressure, Radiation, Temperature, WindSpeed};
use chrono::Datelike;

/// How far above saturation a measured vapour pressure may lie: instruments and rounding.
const SATURATION_SLACK: f64 = 1.05;

/// Latitude in degrees, north positive.
pub fn latitude_deg(row: Row<'_>) -> Result<f64, ComputeError> {
    row.needed_number("latitude_deg", -90.0, 90.0, "degrees")
}

/// Elevation in metres above the sea.
pub fn elevation_m(row: Row<'_>) -> Result<f64, ComputeError> {
    row.needed_number("elevation_m", -500.0, 9000.0, "m")
}

/// The day of the year, from `day_of_year` or from `date`.
pub fn day_of_year(row: Row<'_>) -> Result<u16, ComputeError> {
    const EXPECTED: &str = "a whole number from 1 to 366";
    if let Some(number) = row.number("day_of_year", 1.0, 366.0, "")? {
        if number.fract() != 0.0 {
            return Err(row.wrong("day_of_year", format!("{EXPECTED} expected")));
        }
        return Ok(number as u16);
    }
    match row.date("date")? {
        Some(date) => Ok(date.ordinal() as u16),
        None => Err(row.empty("day_of_year", &format!("{EXPECTED}, or a column date,"))),
    }
}

/// What is known of the day.
pub fn day_weather(row: Row<'_>) -> Result<DayWeather, ComputeError> {
    let tmax: Temperature = row.needed("tmax_c")?;
    let tmin: Temperature = row.needed("tmin_c")?;
    if tmin > tmax {
        return Err(row.wrong("tmin_c", format!("tmax_c ({}) or less expected", tmax.as_celsius())));
    }
    let sunshine = row.number("sunshine_h", 0.0, 24.0, "h")?;
    let measured: Option<Radiation> = row.quantity("solar_mj_m2")?;
    let wind_2m: Option<WindSpeed> = row.quantity("wind_2m_m_s")?;
    let sunlight = measured.map(Sunlight::Measured).or(sunshine.map(|hours| Sunlight::Sunshine { hours }));
    Ok(DayWeather { tmax, tmin, humidity: humidity(row, tmax)?, wind_2m, sunlight })
}

/// The highest and lowest relative humidity and so on, in percent.
pub fn percent(row: Row<'_>, column: &'static str) -> Result<Option<Fraction>, ComputeError> {
    Ok(row.number(column, 0.0, 100.0, "percent")?.map(Fraction::percent))
}

/// Which equation worked out the result, and what stood in for which column.
pub fn method(result: &ReferenceEt) -> String {
    let mut method = "fao56 eq. 6".to_owned();
    for procedure in result.procedures.iter() {
        method.push_str(match procedure {
            Procedure::SolarFromSunshine => "; solar_mj_m2 from sunshine_h by eq. 35",
            Procedure::SolarFromTemperature => "; solar_mj_m2 from tmax_c and tmin_c by eq. 50",
            Procedure::DewPointIsTmin => "; ea_kpa from tmin_c by eq. 48",
            Procedure::HumidityFromHighest => "; ea_kpa from rh_max_percent by eq. 18",
            Procedure::HumidityFromMean => "; ea_kpa from rh_mean_percent by eq. 19",
            Procedure::DefaultWind => "; wind_2m_m_s taken as 2",
            Procedure::SunlessClearness => "; cloudiness of a day without sun taken as 0.6",
        });
    }
    method
}

fn humidity(row: Row<'_>, tmax: Temperature) -> Result<Option<Humidity>, ComputeError> {
    let most = saturation_pressure(tmax) * SATURATION_SLACK;
    let too_damp = |column| {
        let expected = format!("no more than the air can hold at tmax_c ({} °C) expected", tmax.as_celsius());
        row.wrong(column, expected)
    };
    let vapour: Option<Pressure> = row.quantity("ea_kpa")?;
    if vapour.is_some_and(|vapour| vapour > most) {
        return Err(too_damp("ea_kpa"));
    }
    let dew_point: Option<Temperature> = row.quantity("tdew_c")?;
    if dew_point.is_some_and(|dew_point| vapour_pressure_from_dew_point(dew_point) > most) {
        return Err(too_damp("tdew_c"));
    }
    let (max, min) = (percent(row, "rh_max_percent")?, percent(row, "rh_min_percent")?);
    if let (Some(max), Some(min)) = (max, min)
        && min > max
    {
        return Err(row.wrong("rh_min_percent", format!("rh_max_percent ({}) or less expected", max.as_percent())));
    }
    let mean = percent(row, "rh_mean_percent")?;
    Ok(match (vapour, max, min, dew_point, mean) {
        (Some(vapour), ..) => Some(Humidity::VapourPressure(vapour)),
        (None, Some(max), Some(min), ..) => Some(Humidity::MaxMin { max, min }),
        (None, _, _, Some(dew_point), _) => Some(Humidity::DewPoint(dew_point)),
        (None, _, _, None, Some(mean)) => Some(Humidity::Mean(mean)),
        (None, Some(max), None, None, None) => Some(Humidity::Max(max)),
        (None, None, _, None, None) => None,
    })
}
