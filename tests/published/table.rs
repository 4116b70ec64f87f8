//! Reading the tables.

use std::collections::HashMap;

/// One row by column name.
pub struct Row(HashMap<String, String>);

/// All rows of one table in `tests/published`.
pub fn rows(file: &str) -> Vec<Row> {
    let path = format!("{}/tests/published/{file}", env!("CARGO_MANIFEST_DIR"));
    csv::Reader::from_path(path).unwrap().deserialize().map(|row| Row(row.unwrap())).collect()
}

impl Row {
    #[track_caller]
    pub fn text(&self, column: &str) -> &str {
        self.0.get(column).unwrap_or_else(|| panic!("no column {column}"))
    }

    #[track_caller]
    pub fn number(&self, column: &str) -> f64 {
        let text = self.text(column);
        text.parse().unwrap_or_else(|_| panic!("{column}: {text:?} is not a number"))
    }

    #[track_caller]
    pub fn day_of_year(&self, column: &str) -> u16 {
        self.text(column).parse().unwrap()
    }
}

#[track_caller]
pub fn near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: got {got}, {expected} ± {tolerance} expected");
}
