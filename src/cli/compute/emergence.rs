//! `compute emergence`.

use super::error::ComputeError;
use super::table::Table;
use crate::agronomy::emergence::days_to_emergence;
use crate::quantity::{Estimate, Temperature, ThermalTime};
use std::io::{Read, Write};

const CROP: &str = "the id of a crop whose base temperature and thermal time to emergence are known";

/// Days to emergence of every row; empty cells where the crop does not come up at that temperature.
///
/// `facts` gives a crop's base temperature and its thermal time to emergence by the crop's id.
///
/// # Errors
/// [`ComputeError`] naming row and column; nothing is written then.
pub fn emergence(
    input: impl Read,
    output: impl Write,
    facts: impl Fn(&str) -> Option<(Estimate<Temperature>, Estimate<ThermalTime>)>,
) -> Result<(), ComputeError> {
    let table = Table::read(input)?;
    table.must_have("crop", CROP)?;
    table.must_have("temperature_c", "°C")?;
    table.append(
        ["emergence_days_low", "emergence_days", "emergence_days_high"],
        |row| {
            let crop = row.needed_text("crop", CROP)?;
            let mix: Temperature = row.needed("temperature_c")?;
            let (base, sum) = facts(crop).ok_or_else(|| row.wrong("crop", format!("{CROP} expected")))?;
            Ok(match days_to_emergence(mix, base, sum) {
                Some(days) => [days.low(), days.value(), days.high()].map(|days| days.to_string()),
                None => Default::default(),
            })
        },
        output,
    )
}
