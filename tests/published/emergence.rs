//! Days to emergence of Harrington and Minges 1954, against the linear model of emergence.

use crate::table::rows;
use rooftend::agronomy::emergence::days_to_emergence;
use rooftend::quantity::{Estimate, Temperature, ThermalTime};
use std::collections::BTreeMap;

/// Two temperatures of a crop give its base and its sum; the model must then foretell the one between
/// them, with a doubt of 30 % in the sum, nine times in ten: what a range of this house claims.
#[test]
fn foretells_the_temperature_between() {
    let mut crops: BTreeMap<String, BTreeMap<u32, f64>> = BTreeMap::new();
    for row in rows("germination.csv") {
        if row.text("kind") == "days_to_emergence" && row.text("source").starts_with("Harrington and Minges") {
            let days = crops.entry(row.text("crop").to_owned()).or_default();
            days.insert(row.number("temperature_c") as u32, row.number("value"));
        }
    }
    let (mut foretold, mut asked) = (0, 0);
    for days in crops.values() {
        for (cool, between, warm) in [(10, 15, 20), (15, 20, 25)] {
            let (Some(slow), Some(seen), Some(fast)) = (days.get(&cool), days.get(&between), days.get(&warm)) else {
                continue;
            };
            let sum = f64::from(warm - cool) / (1.0 / fast - 1.0 / slow);
            let base = Estimate::exactly(Temperature::celsius(f64::from(warm) - sum / fast));
            let sum = Estimate::between(0.7 * sum, sum, 1.3 * sum).unwrap().map(ThermalTime::degree_days);
            let range = days_to_emergence(Temperature::celsius(f64::from(between)), base, sum).unwrap();
            asked += 1;
            foretold += u32::from((range.low()..=range.high()).contains(seen));
        }
    }
    assert_eq!(asked, 25);
    assert!(foretold * 10 >= asked * 9, "{foretold} of {asked}");
}
