//! Words that steer a conversation: what was done, what was seen, what a bed is called.

use super::files::Files;
use super::names::Names;
use super::point::Point;
use super::problem::Problem;
use serde::Deserialize;

/// The words of `words/talk.toml`. Ids of jobs, beds and things seen are those of garden files.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Talk {
    pub jobs: Vec<JobWords>,
    pub seen: Vec<SeenWords>,
    pub beds: Vec<BedWords>,
    pub done: Names,
    pub net_down: Names,
    pub question: Names,
    pub why: Names,
    pub follow_up: Names,
    pub all: Names,
    pub microgreen: Names,
    pub filler: Names,
    #[serde(default)]
    pub points: Vec<PointWords>,
}

/// How people say that a job was done.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct JobWords {
    pub job: String,
    /// Says it alone.
    pub did: Names,
    /// Says it together with a word of `done`.
    pub thing: Names,
}

/// How people say what they saw.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SeenWords {
    pub what: String,
    pub words: Names,
}

/// What people call a kind of bed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BedWords {
    pub kind: String,
    pub words: Names,
}

/// How people say a point.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PointWords {
    pub point: Point,
    pub words: Names,
}

pub fn read(files: &Files, problems: &mut Vec<Problem>) -> Talk {
    const FILE: &str = "words/talk.toml";
    let text = files.text(FILE).unwrap_or_default();
    toml::from_str(text).unwrap_or_else(|refusal: toml::de::Error| {
        problems.push(Problem::at(FILE, text, refusal.span().unwrap_or(0..0), refusal.message().trim()));
        Talk::default()
    })
}
