//! `check`: what is in the knowledge base, and what is wrong with it.

use super::arguments::{Arguments, Check};
use super::ask::print;
use super::front::files;
use super::refusal::Refusal;
use crate::knowledge::{Census, Knowledge, Problem};
use crate::wording::problems_of_phrases;
use serde::Serialize;
use std::process::ExitCode;

#[derive(Serialize)]
struct Report {
    #[serde(flatten)]
    census: Census,
    problems: Vec<Problem>,
}

pub fn run(check: &Check, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let files = files(check.folder.as_deref().or(arguments.knowledge.as_deref()))?;
    let (known, mut problems) = Knowledge::read(&files);
    problems.extend(problems_of_phrases(&known));
    let wrong = !problems.is_empty();
    let report = Report { census: known.census(), problems };
    if check.json {
        print(&serde_json::to_string(&report).map_err(Refusal::plain)?)?;
    } else {
        print(&told(&report.census))?;
        let text = |problem: &Problem| files.text(&problem.file).unwrap_or_default().to_owned();
        Refusal::Knowledge(report.problems.iter().map(|problem| (problem.clone(), text(problem))).collect()).show();
    }
    Ok(if wrong { ExitCode::FAILURE } else { ExitCode::SUCCESS })
}

fn told(census: &Census) -> String {
    let names: Vec<String> = census.names.iter().map(|(language, count)| format!("{count} {language}")).collect();
    format!(
        "{} crops ({} also as microgreens), {} troubles, {} materials, {} mixes, {} articles, {} places\n\
         {} ways of asking, {} whole messages; names: {}\n\
         {} facts, {} of them read in their source",
        census.crops,
        census.microgreens,
        census.troubles,
        census.materials,
        census.mixes,
        census.articles,
        census.places,
        census.ways_of_asking,
        census.heard_messages,
        names.join(", "),
        census.facts,
        census.facts_read_in_their_source,
    )
}
