//! `compute water-balance`.

use super::error::ComputeError;
use super::table::{Row, Table};
use super::weather_row::{day_weather, method, percent};
use crate::agronomy::crop_coefficient::{Climate, Coefficients, StageDays};
use crate::agronomy::reference_et::{DEFAULT_WIND, Exposure, ReferenceEt, SiteDay, reference_et};
use crate::agronomy::water_balance::{BalanceDay, Season, WaterBalance};
use crate::quantity::{Fraction, Length, Quantity, WaterDepth, WindSpeed};
use chrono::{Datelike, NaiveDate};
use serde::Deserialize;
use std::io::{Read, Write};

const RESULTS: [&str; 10] = [
    "reference_et_mm",
    "kcb",
    "ke",
    "ks",
    "etc_mm",
    "eta_mm",
    "depletion_mm",
    "evaporation_layer_depletion_mm",
    "deep_percolation_mm",
    "method",
];

/// The parameter file; what it holds besides is not looked at.
#[derive(Deserialize)]
struct Parameters {
    latitude_deg: Option<f64>,
    elevation_m: Option<f64>,
    kcb: [f64; 3],
    stage_days: [f64; 4],
    height_m: [f64; 2],
    root_depth_m: [f64; 2],
    depletion_fraction: f64,
    field_capacity: f64,
    wilting_point: f64,
    initial_water: f64,
    evaporation_layer_m: f64,
    readily_evaporable_mm: f64,
    irrigation_wetted_fraction: f64,
}

/// The daily water balance of a season, rows in order of their dates without a gap.
///
/// # Errors
/// [`ComputeError`] naming row and column, or the parameter; nothing is written then.
pub fn water_balance(input: impl Read, parameters: impl Read, output: impl Write) -> Result<(), ComputeError> {
    let parameters: Parameters = serde_json::from_reader(parameters)?;
    let mut balance = WaterBalance::start(parameters.season()?)?;
    let table = Table::read(input)?;
    table.must_have("date", "a date like 2026-05-18")?;
    table.must_have("rain_mm", "mm")?;
    table.must_have("irrigation_mm", "mm")?;
    if !table.has("reference_et_mm") {
        table.must_have("tmax_c", "°C, or a column reference_et_mm,")?;
        table.must_have("tmin_c", "°C, or a column reference_et_mm,")?;
    }
    let mut yesterday: Option<NaiveDate> = None;
    table.append(
        RESULTS,
        |row| {
            let date = row.needed_date("date")?;
            if let Some(next) = yesterday.and_then(|day| day.succ_opt())
                && next != date
            {
                return Err(row.wrong("date", format!("the day after the row above, {next}, expected")));
            }
            yesterday = Some(date);
            let (day, method) = parameters.day(row, date)?;
            let end = balance.advance(&day);
            Ok([
                day.reference_et.as_millimetres().to_string(),
                end.basal.to_string(),
                end.evaporation_coefficient.to_string(),
                end.stress.as_of_one().to_string(),
                end.crop_et.as_millimetres().to_string(),
                end.actual_et.as_millimetres().to_string(),
                end.depletion.as_millimetres().to_string(),
                end.surface_depletion.as_millimetres().to_string(),
                end.percolation.as_millimetres().to_string(),
                method,
            ])
        },
        output,
    )
}

impl Parameters {
    fn season(&self) -> Result<Season, ComputeError> {
        let [kcb_initial, kcb_mid, kcb_end] = self.kcb;
        let [initial, development, mid, late] = self.stage_days;
        let [height_initial, height_max] = self.height_m;
        let [root_initial, root_max] = self.root_depth_m;
        for kcb in self.kcb {
            within("kcb", kcb, 0.0, 2.0, "")?;
        }
        for days in self.stage_days {
            within("stage_days", days, 0.0, 3650.0, "days")?;
        }
        Ok(Season {
            basal: Coefficients { initial: kcb_initial, mid: kcb_mid, end: kcb_end },
            stages: StageDays { initial, development, mid, late },
            height_initial: parameter::<Length>("height_m", height_initial)?,
            height_max: parameter("height_m", height_max)?,
            root_depth_initial: parameter("root_depth_m", root_initial)?,
            root_depth_max: parameter("root_depth_m", root_max)?,
            depletion_fraction: parameter("depletion_fraction", self.depletion_fraction)?,
            field_capacity: parameter("field_capacity", self.field_capacity)?,
            wilting_point: parameter("wilting_point", self.wilting_point)?,
            initial_water: parameter("initial_water", self.initial_water)?,
            evaporation_layer: parameter("evaporation_layer_m", self.evaporation_layer_m)?,
            readily_evaporable: parameter("readily_evaporable_mm", self.readily_evaporable_mm)?,
            irrigation_wetted: parameter("irrigation_wetted_fraction", self.irrigation_wetted_fraction)?,
        })
    }

    fn day(&self, row: Row<'_>, date: NaiveDate) -> Result<(BalanceDay, String), ComputeError> {
        // Dew on a cold humid day: a little below zero is no mistake.
        let given = row.number("reference_et_mm", -5.0, 50.0, "mm")?.map(WaterDepth::millimetres);
        let computed = if given.is_none() || row.text("rh_min_percent").is_none() {
            self.computed(row, date, given.is_some())?
        } else {
            None
        };
        let mut method = match (given, &computed) {
            (None, Some(result)) => method(result),
            _ => "reference_et_mm as given".to_owned(),
        };
        let wind: Option<WindSpeed> = row.quantity("wind_2m_m_s")?;
        if wind.is_none() && given.is_some() {
            method.push_str("; wind_2m_m_s taken as 2");
        }
        let humidity_min = match (percent(row, "rh_min_percent")?, &computed) {
            (Some(measured), _) => measured,
            (None, Some(result)) => {
                method.push_str("; rh_min_percent from ea_kpa over saturation at tmax_c");
                result.humidity_min
            }
            (None, None) => return Err(row.empty("rh_min_percent", "percent, or temperatures to estimate it from,")),
        };
        let reference_et = given.or(computed.map(|result| result.et));
        let day = BalanceDay {
            reference_et: reference_et.ok_or_else(|| row.empty("reference_et_mm", "mm"))?,
            climate: Climate { wind_2m: wind.unwrap_or(DEFAULT_WIND), humidity_min },
            rain: row.needed("rain_mm")?,
            irrigation: row.needed("irrigation_mm")?,
            irrigation_wetted: row
                .number("irrigation_wetted_fraction", 0.01, 1.0, "of the ground")?
                .map(Fraction::of_one),
        };
        Ok((day, method))
    }

    /// The reference sum of the row's own weather; `optional` where the row could do without.
    fn computed(&self, row: Row<'_>, date: NaiveDate, optional: bool) -> Result<Option<ReferenceEt>, ComputeError> {
        if optional && (row.text("tmax_c").is_none() || row.text("tmin_c").is_none()) {
            return Ok(None);
        }
        let site = match (self.latitude_deg, self.elevation_m) {
            (Some(latitude), Some(elevation)) => SiteDay::new(
                within("latitude_deg", latitude, -90.0, 90.0, "degrees")?,
                within("elevation_m", elevation, -500.0, 9000.0, "m")?,
                date.ordinal() as u16,
            ),
            (None, _) => return Err(missing("latitude_deg")),
            (_, None) => return Err(missing("elevation_m")),
        };
        Ok(Some(reference_et(&site, &day_weather(row)?, Exposure::OPEN)))
    }
}

fn parameter<Q: Quantity>(name: &'static str, value: f64) -> Result<Q, ComputeError> {
    Q::checked(value).map_err(|refusal| ComputeError::Parameter { name, expected: refusal.to_string() })
}

fn within(name: &'static str, value: f64, lowest: f64, highest: f64, unit: &str) -> Result<f64, ComputeError> {
    if (lowest..=highest).contains(&value) {
        Ok(value)
    } else {
        let expected = format!("{value} was given, {lowest} to {highest} {unit} expected");
        Err(ComputeError::Parameter { name, expected })
    }
}

fn missing(name: &'static str) -> ComputeError {
    let expected = "is missing, and needed where reference_et_mm is not given".to_owned();
    ComputeError::Parameter { name, expected }
}
