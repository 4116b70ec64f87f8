//! A table of rows with named columns, read whole and written back with more columns.

use super::error::ComputeError;
use crate::quantity::Quantity;
use chrono::{Datelike, NaiveDate};
use csv::StringRecord;
use std::collections::HashMap;
use std::io::{Read, Write};

/// Years for which the calendar and the sun's course are good.
const YEARS: std::ops::RangeInclusive<i32> = 1700..=2300;
const DATE: &str = "a date like 2026-05-18";

/// A table as it was written, and where its columns are.
pub struct Table {
    header: StringRecord,
    columns: HashMap<String, usize>,
    records: Vec<StringRecord>,
}

/// One row, and where it stands.
#[derive(Clone, Copy)]
pub struct Row<'t> {
    table: &'t Table,
    record: &'t StringRecord,
    number: usize,
}

impl Table {
    /// Reads a whole table: CSV, UTF-8, one header line.
    ///
    /// # Errors
    /// A column that stands there twice, rows of unequal length, text that is not UTF-8.
    pub fn read(input: impl Read) -> Result<Self, ComputeError> {
        let mut reader = csv::Reader::from_reader(input);
        let header = reader.headers()?.clone();
        let mut columns = HashMap::new();
        for (index, name) in header.iter().map(str::trim).enumerate() {
            if !name.is_empty() && columns.insert(name.to_owned(), index).is_some() {
                return Err(ComputeError::TwiceColumn { column: name.to_owned() });
            }
        }
        let records = reader.records().collect::<Result<_, _>>()?;
        Ok(Self { header, columns, records })
    }

    /// The rows in order.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.records.iter().enumerate().map(|(index, record)| Row { table: self, record, number: index + 1 })
    }

    /// Refuses a table without a column that it must have.
    pub fn must_have(&self, column: &'static str, expected: &str) -> Result<(), ComputeError> {
        if self.has(column) { Ok(()) } else { Err(ComputeError::NoColumn { column, expected: expected.to_owned() }) }
    }

    pub fn has(&self, column: &str) -> bool {
        self.columns.contains_key(column)
    }

    /// Works out every row, then writes the table with the results appended.
    pub fn append<const N: usize>(
        &self,
        names: [&str; N],
        mut result: impl FnMut(Row<'_>) -> Result<[String; N], ComputeError>,
        mut output: impl Write,
    ) -> Result<(), ComputeError> {
        let mut writer = csv::Writer::from_writer(Vec::new());
        writer.write_record(self.header.iter().chain(names))?;
        for row in self.rows() {
            let results = result(row)?;
            writer.write_record(row.record.iter().chain(results.iter().map(String::as_str)))?;
        }
        let text = writer.into_inner().map_err(csv::IntoInnerError::into_error)?;
        output.write_all(&text)?;
        Ok(output.flush()?)
    }
}

impl<'t> Row<'t> {
    /// What stands in a column; none where the column is missing or the cell is empty.
    pub fn text(self, column: &str) -> Option<&'t str> {
        let index = *self.table.columns.get(column)?;
        self.record.get(index).map(str::trim).filter(|text| !text.is_empty())
    }

    /// What stands in a column that must be filled.
    pub fn needed_text(self, column: &'static str, expected: &str) -> Result<&'t str, ComputeError> {
        self.text(column).ok_or_else(|| self.empty(column, expected))
    }

    /// A number between two bounds, in the column's unit.
    pub fn number(
        self,
        column: &'static str,
        lowest: f64,
        highest: f64,
        unit: &str,
    ) -> Result<Option<f64>, ComputeError> {
        let Some(text) = self.text(column) else { return Ok(None) };
        let expected = || format!("a number from {lowest} to {highest} {unit} expected");
        let value: f64 = text.parse().map_err(|_| self.wrong(column, expected()))?;
        if (lowest..=highest).contains(&value) { Ok(Some(value)) } else { Err(self.wrong(column, expected())) }
    }

    /// A number that must be there.
    pub fn needed_number(
        self,
        column: &'static str,
        lowest: f64,
        highest: f64,
        unit: &str,
    ) -> Result<f64, ComputeError> {
        let number = self.number(column, lowest, highest, unit)?;
        number.ok_or_else(|| self.empty(column, &format!("a number from {lowest} to {highest} {unit}")))
    }

    /// A quantity in its base unit, within its plausible bounds.
    pub fn quantity<Q: Quantity>(self, column: &'static str) -> Result<Option<Q>, ComputeError> {
        Ok(self.number(column, Q::LOWEST, Q::HIGHEST, Q::UNIT)?.map(Q::from_base))
    }

    /// A quantity that must be there.
    pub fn needed<Q: Quantity>(self, column: &'static str) -> Result<Q, ComputeError> {
        Ok(Q::from_base(self.needed_number(column, Q::LOWEST, Q::HIGHEST, Q::UNIT)?))
    }

    /// A calendar date.
    pub fn date(self, column: &'static str) -> Result<Option<NaiveDate>, ComputeError> {
        let Some(text) = self.text(column) else { return Ok(None) };
        let date = NaiveDate::parse_from_str(text, "%Y-%m-%d").ok().filter(|date| YEARS.contains(&date.year()));
        date.map(Some).ok_or_else(|| self.wrong(column, format!("{DATE} expected")))
    }

    /// A calendar date that must be there.
    pub fn needed_date(self, column: &'static str) -> Result<NaiveDate, ComputeError> {
        self.date(column)?.ok_or_else(|| self.empty(column, DATE))
    }

    /// An error about an empty cell, or about the column where it is missing.
    pub fn empty(self, column: &'static str, expected: &str) -> ComputeError {
        let expected = expected.trim_end().to_owned();
        if self.table.has(column) {
            ComputeError::EmptyCell { row: self.number, line: self.line(), column, expected }
        } else {
            ComputeError::NoColumn { column, expected }
        }
    }

    /// An error about what stands in a cell.
    pub fn wrong(self, column: &'static str, expected: String) -> ComputeError {
        let text = self.text(column).unwrap_or_default().to_owned();
        ComputeError::WrongCell { row: self.number, line: self.line(), column, text, expected }
    }

    fn line(self) -> u64 {
        self.record.position().map_or(0, csv::Position::line)
    }
}
