//! Days to emergence against Harrington and Minges 1954 (Vegetable Seed Germination, University of California),
//! as copied in `tests/published/germination.csv` with its source: nine in ten of the rows that were read, for
//! the crops of the knowledge base, between base and optimum temperature, lie within the range. The crops'
//! own parameters come from other sources.
#![allow(clippy::disallowed_methods, reason = "the table is a file")]

use rooftend::agronomy::emergence::days_to_emergence;
use rooftend::knowledge::{Files, Knowledge};
use rooftend::quantity::Temperature;

/// What the table calls our crops.
const NAMES: [(&str, &str); 5] = [
    ("lettuce", "lettuce"),
    ("radish", "radish"),
    ("spinach", "spinach"),
    ("tomato", "tomato"),
    ("snap bean", "french-bean"),
];

#[test]
fn nine_in_ten_of_the_published_days_lie_within() {
    let (known, _) = Knowledge::read(&Files::embedded());
    let mut table = csv::Reader::from_path("tests/published/germination.csv").unwrap();
    let (mut inside, mut all, mut outside) = (0, 0, Vec::new());
    let headers = table.headers().unwrap().clone();
    let column = |name: &str| headers.iter().position(|header| header == name).unwrap();
    for row in table.records().map(Result::unwrap) {
        let cell = |name: &str| row.get(column(name)).unwrap();
        let Some((_, id)) = NAMES.iter().find(|(name, _)| *name == cell("crop")) else { continue };
        let read = cell("checked").starts_with("read");
        let (Ok(celsius), Ok(days)) = (cell("temperature_c").parse::<f64>(), cell("value").parse::<f64>()) else {
            continue;
        };
        if cell("kind") != "days_to_emergence" || !read {
            continue;
        }
        let emergence = &known.crops[*id].emergence;
        for fact in [&emergence.base.source, &emergence.thermal_time.source] {
            assert!(!fact.id.contains("harrington"), "{id}: its parameters must come from elsewhere");
        }
        let at = Temperature::celsius(celsius);
        if at <= emergence.base.value() || at > emergence.optimum.value() {
            continue;
        }
        all += 1;
        let range = days_to_emergence(at, emergence.base.is, emergence.thermal_time.is).unwrap();
        if range.low() <= days && days <= range.high() {
            inside += 1;
        } else {
            outside.push(format!(
                "{id} at {celsius} °C: {days} days, {:.1} to {:.1} foretold",
                range.low(),
                range.high()
            ));
        }
    }
    assert!(all >= 15, "only {all} rows");
    assert!(inside * 10 >= all * 9, "{inside} of {all}: {}", outside.join("; "));
}
