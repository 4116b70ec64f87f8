//! `compute`: the published sums on a file, the result on stdout.

use super::arguments::{Arguments, Sum};
use super::compute::{self, ComputeError};
use super::front::{knowledge, read_text};
use super::refusal::Refusal;
use std::path::Path;
use std::process::ExitCode;

pub fn run(sum: &Sum, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let mut out = Vec::new();
    match sum {
        Sum::ReferenceEt { file } => named(file, compute::reference_et(read_text(file)?.as_bytes(), &mut out))?,
        Sum::Daylight { file } => named(file, compute::daylight(read_text(file)?.as_bytes(), &mut out))?,
        Sum::WaterBalance { file, parameters } => {
            let parameters = read_text(parameters)?;
            named(file, compute::water_balance(read_text(file)?.as_bytes(), parameters.as_bytes(), &mut out))?;
        }
        Sum::Emergence { file } => {
            let known = knowledge(arguments)?;
            let facts = |crop: &str| {
                let emergence = &known.crops.get(crop)?.emergence;
                Some((emergence.base.is, emergence.thermal_time.is))
            };
            named(file, compute::emergence(read_text(file)?.as_bytes(), &mut out, facts))?;
        }
    }
    let text = String::from_utf8(out).map_err(Refusal::plain)?;
    super::ask::print(text.trim_end_matches('\n'))?;
    Ok(ExitCode::SUCCESS)
}

fn named(file: &Path, done: Result<(), ComputeError>) -> Result<(), Refusal> {
    done.map_err(|fault| Refusal::plain(format!("{}: {fault}", file.display())))
}
