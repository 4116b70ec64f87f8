//! The crops that people ask for first.

use super::crop::Crop;
use super::files::Files;
use super::problem::Problem;
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    crops: Vec<Spanned<String>>,
}

/// Their ids, the commonest first; an id that no crop has is a problem.
pub fn read(files: &Files, crops: &BTreeMap<String, Crop>, problems: &mut Vec<Problem>) -> Vec<String> {
    const FILE: &str = "usual-crops.toml";
    let Some(text) = files.text(FILE) else { return Vec::new() };
    let list = match toml::from_str::<List>(text) {
        Ok(list) => list.crops,
        Err(refusal) => {
            problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
            return Vec::new();
        }
    };
    let (known, unknown): (Vec<_>, Vec<_>) = list.into_iter().partition(|id| crops.contains_key(id.get_ref()));
    for id in unknown {
        problems.push(Problem::at(FILE, text, id.span(), format!("no crop has the id \"{}\"", id.get_ref())));
    }
    known.into_iter().map(Spanned::into_inner).collect()
}
