//! Why a table could not be worked out.

use crate::agronomy::water_balance::NoSeason;
use thiserror::Error;

/// A table, a parameter file or an output that cannot be used. Rows are counted from 1 below the header;
/// lines as an editor counts them.
#[derive(Debug, Error)]
pub enum ComputeError {
    #[error("header (line 1): column {column} is missing; {expected} expected")]
    NoColumn { column: &'static str, expected: String },
    #[error("header (line 1): column {column} stands there twice")]
    TwiceColumn { column: String },
    #[error("row {row} (line {line}), column {column} is empty; {expected} expected")]
    EmptyCell { row: usize, line: u64, column: &'static str, expected: String },
    #[error("row {row} (line {line}), column {column}: \"{text}\" was found; {expected}")]
    WrongCell { row: usize, line: u64, column: &'static str, text: String, expected: String },
    #[error("parameters: {0}")]
    ParametersFile(#[from] serde_json::Error),
    #[error("parameters: {name}: {expected}")]
    Parameter { name: &'static str, expected: String },
    #[error("parameters: {0}")]
    Season(#[from] NoSeason),
    #[error("the table cannot be read: {0}")]
    Table(#[from] csv::Error),
    #[error("the result cannot be written: {0}")]
    Output(#[from] std::io::Error),
}
