//! Words that steer a conversation: what was done, what was seen, what a bed is called.

use super::asking::Kind;
use super::files::Files;
use super::names::Names;
use super::past::Stems;
use super::point::Point;
use super::problem::Problem;
use super::word_lists::Spelled;
use crate::script::Language;
use serde::{Deserialize, Serialize};

/// The words of `words/talk.toml`. Ids of jobs, beds and things seen are those of garden files.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Talk {
    pub jobs: Vec<JobWords>,
    pub seen: Vec<SeenWords>,
    pub beds: Vec<BedWords>,
    #[serde(default)]
    pub aspects: Vec<AspectWords>,
    pub done: Names,
    pub net_down: Names,
    pub question: Names,
    pub why: Names,
    pub follow_up: Names,
    pub all: Names,
    pub microgreen: Names,
    pub follows: Names,
    /// Asks for a day or a season.
    pub when: Names,
    pub filler: Names,
    #[serde(default)]
    pub others: Names,
    #[serde(default)]
    pub data: Names,
    #[serde(default)]
    pub not_ours: Names,
    #[serde(default)]
    pub undo: Names,
    #[serde(default)]
    pub correction: Names,
    #[serde(default)]
    pub new_bed: Names,
    #[serde(default)]
    pub pronoun: Names,
    #[serde(default)]
    pub got: Names,
    #[serde(default)]
    pub yes: Names,
    /// None of what was offered.
    #[serde(default)]
    pub none_of_these: Names,
    /// Which of what was offered.
    #[serde(default)]
    pub nth: Vec<NthWords>,
    /// The first two of what was offered.
    #[serde(default)]
    pub both: Names,
    /// Someone else gave or said something to the asker: nothing of theirs is asked for.
    #[serde(default)]
    pub others_said: Names,
    /// The same once more, in fewer words.
    #[serde(default)]
    pub shorter: Names,
    /// The same once more in another language.
    #[serde(default)]
    pub speak: Vec<SpeakWords>,
    /// The day after the one spoken of.
    #[serde(default)]
    pub day_after: Names,
    /// "Did" where it asks.
    #[serde(default)]
    pub did_ask: Names,
    /// A job is to be done on another day.
    #[serde(default)]
    pub moves: Names,
    /// A job is going to be done on a day.
    #[serde(default)]
    pub will: Names,
    #[serde(default)]
    pub not: Names,
    /// Whether a saying is true is asked.
    #[serde(default)]
    pub hearsay: Names,
    /// Something ails a plant, and it is not said what.
    #[serde(default)]
    pub ails: Names,
    /// The same is asked of something else: "too", "instead", "make it".
    #[serde(default)]
    pub same: Names,
    /// What is supposed follows: "and if", "when it".
    #[serde(default)]
    pub condition: Names,
    /// What is supposed stands before, at the end of a sentence of Hindi.
    #[serde(default)]
    pub condition_end: Names,
    /// Not the one spoken of but the one beside it.
    #[serde(default)]
    pub other_one: Names,
    /// A thing near the one spoken of, which is not named: "the one beside it".
    #[serde(default)]
    pub beside_it: Names,
    /// Something ails a plant, in words that tell nothing of what one sees.
    #[serde(default)]
    pub poorly: Names,
    /// In the thing spoken of: "in it".
    #[serde(default)]
    pub inside: Names,
    /// What an amount is wanted in: "in mugs".
    #[serde(default)]
    pub amount_in: Names,
    /// It is asked that something be written down.
    #[serde(default)]
    pub note: Names,
    /// What water is carried in.
    #[serde(default)]
    pub vessel: Names,
    /// Someone else's garden.
    #[serde(default)]
    pub others_garden: Names,
    /// Nothing is meant in earnest.
    #[serde(default)]
    pub joke: Names,
    /// What follows is only supposed.
    #[serde(default)]
    pub supposed: Names,
    /// Animals that are no gardeners.
    #[serde(default)]
    pub creature: Names,
    /// Words with the ending of what is done that are no work.
    #[serde(default)]
    pub no_deed: Names,
    /// Of a crop and a day: it was sown then.
    #[serde(default)]
    pub put_in: Names,
    /// A time of the year, by the month in its middle.
    #[serde(default)]
    pub seasons: Vec<SeasonWords>,
    /// How bad what was told is, and what helps.
    #[serde(default)]
    pub worry: Names,
    /// The working of the answer before, in a longer sentence than "why".
    #[serde(default)]
    pub working: Names,
    /// Of each turn of what was spoken of.
    #[serde(default)]
    pub each_time: Names,
    /// The mix of a bed has gone down.
    #[serde(default)]
    pub sunk: Names,
    /// A material is to be left out: "without perlite".
    #[serde(default)]
    pub without: Names,
    /// All that was offered, where nothing else is said.
    #[serde(default)]
    pub every: Names,
    /// Something is wished to be told or advised.
    pub request: Names,
    #[serde(default)]
    pub sun: SunWords,
    #[serde(default)]
    pub roof: RoofWords,
    #[serde(default)]
    pub points: Vec<PointWords>,
    /// What follows is what a bed is to be called.
    #[serde(default)]
    pub called: Names,
    /// Words that speak of one kind of question alone.
    #[serde(default)]
    pub topics: Vec<TopicWords>,
    /// Something else is asked to do in place of what was told: "would an old sheet do instead".
    pub suffices: Names,
    pub steps: StepWords,
    /// English words of articles that call for a caution.
    #[serde(default)]
    pub dangers: Vec<String>,
}

/// What people say of a roof that a weight alone does not answer. A phrase is said where its words come in this
/// order, others between them.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoofWords {
    /// What a load is asked with.
    pub weight: Names,
    /// A sign that it is old, weak or wet.
    pub damage: Names,
    /// The rooms under it.
    pub below: Names,
    /// Water that comes through it.
    pub through: Names,
    /// Something is to hang from it.
    pub hanging: Names,
    /// What may hold nothing heavy: a railing, a ceiling.
    pub over_edge: Names,
    /// Where on it heavy things are to stand.
    pub place: Names,
    /// An engineer's word.
    pub engineer: Names,
    /// Water that is kept there.
    pub stored_water: Names,
    /// What does not stand there yet: "how heavy will it be".
    pub to_come: Names,
}

/// Single words of an hour until or from which the sun reaches a bed, in any language.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SunWords {
    pub light: Spelled,
    /// Before the hour.
    pub until: Spelled,
    pub from: Spelled,
    /// After the hour.
    pub until_after: Spelled,
    pub from_after: Spelled,
    /// "O'clock".
    pub clock: Spelled,
    pub morning: Spelled,
    pub afternoon: Spelled,
}

/// Small words beside others, in any language, as they are written: what a word is to the question it stands in.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepWords {
    /// Of things counted: "how many", "kitne".
    pub many: Vec<String>,
    /// Asks for the working only where it stands alone.
    pub more: Vec<String>,
    /// What is counted and stands in no bed: times, inches.
    pub uncounted: Vec<String>,
    /// Before what is left: "forget feeding".
    pub left: Vec<String>,
    /// After what is left: "khaad chhodo".
    pub left_after: Vec<String>,
    /// Before a circumstance: "under the net".
    pub with: Vec<String>,
    /// After a circumstance, behind a word of `of`: "jaali ke neeche".
    pub with_after: Vec<String>,
    pub of: Vec<String>,
    /// Before what something goes into: "in how much water".
    pub into: Vec<String>,
    /// After it: "kitne pani me".
    pub into_after: Vec<String>,
    /// Before a day: "on Friday".
    pub before_day: Vec<String>,
    /// Before a month or season: "in winter".
    pub before_month: Vec<String>,
    /// After a month: "july me".
    pub after_month: Vec<String>,
    /// Beside another time of the year, where nothing else is said: "and once the rains start?".
    pub beside_time: Vec<String>,
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
    /// Stems of Hindi verbs that say it with a light verb: "kaat liya".
    #[serde(default)]
    pub verbs: Stems,
}

/// How people say what they saw.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SeenWords {
    pub what: String,
    pub words: Names,
}

/// How people say what it is about water that they ask.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AspectWords {
    pub aspect: Aspect,
    pub words: Names,
}

/// A side of watering that is asked after, beside how much and how often.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Aspect {
    /// Nobody will be there.
    Away,
    /// How long it lasts without.
    Without,
    /// Now, or not yet.
    Now,
    /// Each day by itself.
    EachDay,
    /// Through a drip line.
    Drip,
    /// Through the hose.
    Hose,
    /// Salt, and washing it out.
    Salt,
}

/// What people call a kind of bed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BedWords {
    pub kind: String,
    pub words: Names,
}

/// What people call a time of the year.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SeasonWords {
    /// The month in its middle, 1 to 12.
    pub month: u32,
    pub words: Names,
}

/// How people say a place among choices.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NthWords {
    /// From 1.
    pub place: usize,
    pub words: Names,
}

/// How people ask for a language.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SpeakWords {
    /// `en`, `hi`, or `hi-Latn`.
    pub language: Language,
    pub words: Names,
}

/// What people say of one kind of question alone.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TopicWords {
    pub kind: Kind,
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
