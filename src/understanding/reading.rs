//! What we took a message to mean.

use crate::garden::{BedId, BedKind, JobKind, SeenKind, SiteId};
use crate::knowledge::{Aspect, Emergency, Kind, PartOfDay, Point};
use crate::quantity::Written;
use crate::script::Language;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A message's meaning, and how sure we are of it.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Reading {
    pub kind: Kind,
    /// Other kinds asked for in the same message.
    pub also: Vec<Kind>,
    /// 0 to 1: of readings with 0.9, nine in ten are to be right.
    pub sureness: f64,
    pub language: Language,
    pub devanagari_digits: bool,
    /// Crop ids, in the order named.
    pub crops: Vec<String>,
    /// The crop is meant as a shoot on a sprouting tray.
    pub microgreen: bool,
    /// Own beds meant, in the order named.
    pub beds: Vec<BedId>,
    /// The beds were named, rather than found by their crop or kind.
    pub beds_named: bool,
    /// The word for a kind of bed that was said (a box, a pot).
    pub bed_kind: Option<BedKind>,
    pub all_beds: bool,
    /// Sites named: the beds meant stand there.
    #[serde(default)]
    pub sites: Vec<SiteId>,
    pub materials: Vec<String>,
    pub mixes: Vec<String>,
    pub troubles: Vec<String>,
    /// Seed named whose shoots must not be eaten, where it is no crop of the base.
    #[serde(default)]
    pub refused: Vec<String>,
    /// Plants named that have no file here.
    #[serde(default)]
    pub other_plants: Vec<String>,
    /// Signs of trouble that were described.
    #[serde(default)]
    pub signs: Vec<String>,
    /// Signs that were asked after and are not there.
    #[serde(default)]
    pub denied: Vec<String>,
    /// How far what was described is like each trouble, 0 to 1, likest first.
    #[serde(default)]
    pub like: Vec<(String, f64)>,
    /// Signs offered in a question that was asked back.
    #[serde(default)]
    pub offered: Vec<String>,
    /// How often something was asked back about a trouble.
    #[serde(default)]
    pub asked: u8,
    /// Beds offered in a question that was asked back.
    #[serde(default)]
    pub offered_beds: Vec<BedId>,
    /// Beds on several roofs that go by the name that was said: which of them is not known.
    #[serde(default)]
    pub alike: Vec<BedId>,
    /// The next likeliest kind that can be asked for.
    #[serde(default)]
    pub perhaps: Option<Kind>,
    /// How usual its words are where too little is said to tell what is meant, 0 to 1; 0 in a conversation.
    #[serde(default)]
    pub unsaid: f64,
    /// What is meant is not said: it is to be asked.
    #[serde(default)]
    pub says_too_little: bool,
    /// A thing near the one spoken of is meant, and not named: which is to be asked.
    #[serde(default)]
    pub another: bool,
    /// Kinds offered in a question that was asked back, and the words it was asked about.
    #[serde(default)]
    pub offered_kinds: Vec<Kind>,
    #[serde(default)]
    pub words: Option<String>,
    /// The language asked for, here or before in the conversation.
    #[serde(default)]
    pub speaks: Option<Language>,
    /// The last answer is asked for once more: in another language, or in fewer words.
    #[serde(default)]
    pub once_more: bool,
    #[serde(default)]
    pub shorter: bool,
    /// None of what was offered is meant.
    #[serde(default)]
    pub none_of_these: bool,
    pub places: Vec<String>,
    /// First and last day of each span named.
    pub days: Vec<(NaiveDate, NaiveDate)>,
    pub quantities: Vec<Written>,
    /// Those of them that a bed is given: "it gets 4 litres every day".
    #[serde(default)]
    pub given: Vec<Written>,
    pub measures: Vec<Measured>,
    /// Things of several sizes, each with how many of it: "5 pots of 8 inch and 3 of 12 inch". Empty where one size was said.
    #[serde(default)]
    pub groups: Vec<Group>,
    /// Bags are named beside what was measured: of mix that is bought in them.
    #[serde(default)]
    pub in_bags: bool,
    /// How many of the thing measured.
    pub count: Option<f64>,
    /// The vessel that was counted or is asked for: "two mugs", "in mugs".
    #[serde(default)]
    pub vessels: Option<InVessels>,
    /// A time of the year named, by the month in its middle, 1 to 12.
    #[serde(default)]
    pub season: Option<u32>,
    /// Months named alone, 1 to 12.
    #[serde(default)]
    pub months: Vec<u32>,
    /// What comes after the crops is asked for.
    #[serde(default)]
    pub follows: bool,
    /// Saplings are spoken of.
    #[serde(default)]
    pub saplings: bool,
    /// Words that no phrase and no name has.
    #[serde(default)]
    pub unknown: Vec<String>,
    /// What was told of the weather.
    #[serde(default)]
    pub sky: Vec<SkyTold>,
    /// Temperatures said, °C.
    pub temperatures_c: Vec<f64>,
    pub did: Option<JobKind>,
    /// No water was given since the day named, or for the days said.
    #[serde(default)]
    pub unwatered: bool,
    /// Jobs that were named, done or not.
    #[serde(default)]
    pub jobs: Vec<JobKind>,
    /// A job that is to be done on another day.
    #[serde(default)]
    pub put_off: Option<JobKind>,
    /// A job is told not to be moved, or not to be done on a day.
    #[serde(default)]
    pub stays: Option<JobKind>,
    /// "Don't move it": of whatever was spoken of.
    #[serde(default)]
    pub not_to_move: bool,
    pub net_down: bool,
    /// A bed is told that is new.
    #[serde(default)]
    pub new_bed: bool,
    /// How many such beds, where there are several.
    #[serde(default)]
    pub beds_told: Option<u32>,
    /// What a new bed is to be called, as written.
    #[serde(default)]
    pub called: Option<String>,
    /// Kinds that a word speaks of which speaks of no other, in their order.
    #[serde(default)]
    pub speaks_of: Vec<Kind>,
    /// One more bed than there are is spoken of.
    #[serde(default)]
    pub one_more: bool,
    /// The record told before is taken back, and nothing stands instead.
    #[serde(default)]
    pub undo: bool,
    /// A day was named that no calendar has: 31 June.
    #[serde(default)]
    pub no_such_day: bool,
    /// Work is told of a week or a month, and not of which day in it.
    #[serde(default)]
    pub on_no_day: bool,
    /// Hours of sun that were told of a bed.
    #[serde(default)]
    pub sun_hours: Option<f64>,
    /// Hours of the clock from and until which a bed was told to have sun; sunrise and sunset where unsaid.
    #[serde(default)]
    pub sun_from_h: Option<f64>,
    #[serde(default)]
    pub sun_until_h: Option<f64>,
    /// Someone else's place is named, which the asker may not see.
    #[serde(default)]
    pub someone_else: bool,
    /// Someone is hurt or may be.
    #[serde(default)]
    pub emergency: Option<Emergency>,
    /// Harm is meant: to someone, to an animal, to the plants of others. Nothing of it is answered.
    #[serde(default)]
    pub ill_will: bool,
    /// What others sow is asked for oneself.
    #[serde(default)]
    pub likewise: bool,
    /// What was told before was wrong: it is taken back, and this stands instead.
    #[serde(default)]
    pub corrects: bool,
    pub saw: Option<SeenKind>,
    /// The working of the last answer is asked for.
    pub why: bool,
    /// Read with the help of what was said before.
    pub follow_up: bool,
    /// A word or a mark asks.
    #[serde(default)]
    pub asks: bool,
    /// What is asked about is only "it", of which nothing was said before.
    #[serde(default)]
    pub of_it: bool,
    /// It is pointed at: "iske liye", "for this one"; "it" may point at nothing.
    #[serde(default)]
    pub for_it: bool,
    /// Nothing in it had any sense.
    pub senseless: bool,
    /// The telling words, for a search of articles.
    #[serde(default)]
    pub search: Vec<String>,
    /// The forms of each telling word, one list a word, and those of all words: to be held against the topics of articles.
    #[serde(default)]
    pub telling: Vec<Vec<String>>,
    #[serde(default)]
    pub all_words: BTreeSet<String>,
    /// Sides of watering asked after.
    #[serde(default)]
    pub aspects: Vec<Aspect>,
    /// A number of days that was said without a first day.
    #[serde(default)]
    pub for_days: Option<f64>,
    /// The parts of its day in which work was done, in the order told.
    #[serde(default)]
    pub parts_of_day: Vec<PartOfDay>,
    /// What exactly is asked or told, in no order.
    #[serde(default)]
    pub points: BTreeSet<Point>,
    /// What kinds its words are usual for, with their shares; none where a rule alone read it.
    #[serde(skip)]
    pub leans: Vec<(Kind, f64)>,
    /// The words that told of a spray: what is said next is read along with them.
    #[serde(default)]
    pub spray_told: Option<String>,
}

/// What a person told of the weather of some days.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SkyTold {
    pub first: NaiveDate,
    pub last: NaiveDate,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tmax_c: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tmin_c: Option<f64>,
    /// What fell or is to fall on each of them; 0 for no rain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain_mm: Option<f64>,
    /// Rain was told without its millimetres.
    #[serde(default)]
    pub rain_guessed: bool,
}

/// The measures of one thing that was described.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Measured {
    pub length: Option<Written>,
    pub width: Option<Written>,
    pub depth: Option<Written>,
    pub diameter: Option<Written>,
}

/// So many things of one size.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Group {
    pub measured: Measured,
    /// The litres that one holds, where that was said in place of its measures.
    pub volume: Option<Written>,
    pub kind: Option<BedKind>,
    pub count: f64,
}

/// Water told or wanted in what it is carried in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct InVessels {
    /// As it was written.
    pub word: String,
    pub count: Option<f64>,
    /// What one holds, where that was said.
    pub holds: Option<Written>,
    /// The amount is wanted in it: "how many mugs".
    pub wanted: bool,
}

impl InVessels {
    /// What so many of them hold, in the unit that was said.
    #[must_use]
    pub fn amount(&self) -> Option<Written> {
        let (count, holds) = self.count.zip(self.holds)?;
        Some(Written { value: count * holds.value, unit: holds.unit })
    }
}

impl Reading {
    /// No crop, bed, stuff or work of its own.
    #[must_use]
    pub fn names_nothing(&self) -> bool {
        let beds = self.beds.is_empty() && !self.beds_named && self.bed_kind.is_none();
        beds && self.crops.is_empty() && self.materials.is_empty() && self.did.is_none()
    }

    /// No size was said, and no new bed is told: what is called a bed is one of those that stand.
    #[must_use]
    pub fn is_unmeasured(&self) -> bool {
        self.measures.is_empty() && self.quantities.is_empty() && !self.new_bed && !self.one_more
    }

    /// A reading that nobody wrote: of a kind, about nothing yet.
    #[must_use]
    pub fn blank(kind: Kind, language: Language) -> Self {
        Self { kind, language, sureness: 1.0, ..Self::default() }
    }
}
