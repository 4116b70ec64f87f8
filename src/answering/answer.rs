//! The result before it is put into words.

use super::facts::Facts;
use super::figure::Figure;
use super::line::Line;
use super::shown::ReadingShown;
use super::subject::which_bed;
use super::table::Table;
use super::{
    alerts, build, care, due, emergency, feed, general, handed_over, harvest, last_done, load, mix, no_figures, none,
    record, refused, seed, shade, sky_told, sow, space, spray, topic, trouble, wants, water, weather_said, which_kind,
};
use crate::garden::{BedId, Record};
use crate::knowledge::{Emergency, Kind, Point, SourceRef};
use crate::understanding::Reading;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// How a message ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    Answered,
    Recorded,
    AskedBack,
    HandedOver,
    Declined,
}

/// Figures, what is to be said, and what is to be filed.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    pub outcome: Outcome,
    pub reading: ReadingShown,
    /// What people call the beds in it, by `site/bed`.
    pub called: BTreeMap<String, Vec<String>>,
    pub figures: Vec<Figure>,
    /// What the person reads, the answer first.
    pub lines: Vec<Line>,
    /// What waits behind "more": told before the working, where that is asked for.
    pub rest: Vec<Line>,
    /// Each step, for `why`.
    pub working: Vec<Line>,
    pub sources: BTreeSet<SourceRef>,
    pub cautions: Vec<Line>,
    /// Ids of the articles read.
    pub articles: Vec<String>,
    /// The answers offered to a question asked back.
    pub choices: Vec<Line>,
    /// Signs of trouble offered among the choices.
    pub offered: Vec<String>,
    /// What may have been asked, offered among the choices.
    pub offered_kinds: Vec<Kind>,
    /// What the store is to keep; `recorded` is true only once it does.
    pub records: Vec<Record>,
    /// The message waits for a person of the crew.
    pub queued: bool,
    /// A danger was told: nothing else is answered beside it.
    pub stops: bool,
    /// What of it can be drawn or listed.
    pub tables: Vec<Table>,
}

impl Answer {
    /// Nothing said yet.
    #[must_use]
    pub fn new(outcome: Outcome) -> Self {
        Self {
            outcome,
            reading: ReadingShown::default(),
            called: BTreeMap::new(),
            figures: Vec::new(),
            lines: Vec::new(),
            rest: Vec::new(),
            working: Vec::new(),
            sources: BTreeSet::new(),
            cautions: Vec::new(),
            articles: Vec::new(),
            choices: Vec::new(),
            offered: Vec::new(),
            offered_kinds: Vec::new(),
            records: Vec::new(),
            queued: false,
            stops: false,
            tables: Vec::new(),
        }
    }

    /// A question back, with its choices.
    #[must_use]
    pub fn ask(question: Line, choices: Vec<Line>) -> Self {
        Self { lines: vec![question], choices, ..Self::new(Outcome::AskedBack) }
    }

    /// Left to a person of the crew.
    #[must_use]
    pub fn hand_over(line: Line) -> Self {
        Self { lines: vec![line], queued: true, ..Self::new(Outcome::HandedOver) }
    }

    /// Two answers in one: everything of both, the outcome the least finished; one that stops stands alone.
    #[must_use]
    pub fn joined(mut self, other: Self) -> Self {
        if self.stops || other.stops {
            self.reading.join(other.reading.clone());
            return if self.stops { self } else { Self { reading: self.reading, ..other } };
        }
        self.be_brief();
        let mut other = other;
        other.be_brief();
        self.outcome = least_finished(self.outcome, other.outcome);
        self.figures.extend(other.figures);
        self.lines.extend(other.lines);
        self.rest.extend(other.rest);
        self.working.extend(other.working);
        self.sources.extend(other.sources);
        for caution in other.cautions {
            if !self.cautions.contains(&caution) {
                self.cautions.push(caution);
            }
        }
        self.articles.extend(other.articles);
        self.choices.extend(other.choices);
        self.offered.extend(other.offered);
        self.offered_kinds.extend(other.offered_kinds);
        self.records.extend(other.records);
        self.queued |= other.queued;
        self.tables.extend(other.tables);
        self.reading.join(other.reading);
        self
    }

    /// Beside another answer: what is asked and one thing to do; the rest waits behind "why". Where several beds are
    /// answered each keeps its line.
    fn be_brief(&mut self) {
        /// So many lines stay.
        const KEPT: usize = 2;
        if self.outcome == Outcome::Answered && self.reading.beds.len() <= 1 && self.lines.len() > KEPT {
            let rest = self.lines.split_off(KEPT);
            self.working.splice(0..0, rest);
        }
    }

    /// Adds a source.
    pub fn cite(&mut self, source: &SourceRef) {
        self.sources.insert(source.clone());
    }
}

/// The answer contract's order: asked back, else handed over, else recorded, else answered; declined only
/// where both are.
fn least_finished(a: Outcome, b: Outcome) -> Outcome {
    let order = [Outcome::AskedBack, Outcome::HandedOver, Outcome::Recorded, Outcome::Answered, Outcome::Declined];
    order.into_iter().find(|outcome| *outcome == a || *outcome == b).unwrap_or(a)
}

/// Answers a reading from facts. Total: every reading has an answer.
#[must_use]
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let mut answer = by_kind(reading, facts);
    weather_said::tell(&mut answer, reading, facts);
    raw_shoots(&mut answer, reading);
    answer.reading = ReadingShown::of(reading);
    match reading.emergency {
        Some(Emergency::WouldEat) => answer.reading.kind = Kind::Care,
        // What else was asked beside it does not count, unless it was plainly the spray.
        Some(_) if reading.kind != Kind::Spray || reading.sureness < PLAINLY => answer.reading.kind = Kind::None,
        Some(_) | None => {}
    }
    if answer.stops && reading.emergency.is_none() && reading.kind != Kind::Person {
        // A danger of the roof was heard in it, whatever else it asked for; who is called for comes all the same.
        answer.reading.kind = Kind::Load;
    }
    if reading.emergency.is_none() && !reading.ill_will && refused::shoots(reading, facts).is_some() {
        // Whether one may grow it is what was asked.
        answer.reading.kind = Kind::Sow;
    }
    let in_place = || load::instead(reading, facts).filter(|_| reading.kind == Kind::Load);
    let told = || topic::meant(reading, facts).or_else(in_place);
    // Topics are gone through once more only where an article was told.
    let as_topic = || told().is_some_and(|article| answer.articles == [article.id.clone()]);
    let by_article = !answer.articles.is_empty() && (reading.sureness < SURE_ENOUGH || as_topic());
    if by_article && answer.outcome == Outcome::Answered && answer.reading.kind != Kind::Feed {
        answer.reading.kind = Kind::Care;
    }
    answer.called = called(facts);
    sky_told::tell(&mut answer, reading);
    answer
}

/// Who is not to eat shoots raw, wherever that was asked beside another thing.
fn raw_shoots(answer: &mut Answer, reading: &Reading) {
    let told = answer.articles.iter().any(|article| article == "eating-raw-shoots");
    let asked = reading.microgreen && reading.points.contains(&Point::Raw);
    if asked && !told && !answer.stops && answer.outcome != Outcome::Declined {
        answer.cautions.push(Line::new("caution-raw-shoots"));
    }
}

/// What people call the beds of these facts, by `site/bed`.
#[must_use]
pub fn called(facts: &Facts<'_>) -> BTreeMap<String, Vec<String>> {
    let names = facts.beds().map(|(site, bed)| {
        let mut names = bed.bed.names.clone();
        names.push(bed.bed.id.bed().replace('-', " "));
        if facts.sites.len() > 1 {
            names.iter_mut().for_each(|name| *name = format!("{name} ({})", site.site.name));
        }
        (bed.bed.id.to_string(), names)
    });
    names.collect()
}

/// A reading as sure as this is plain.
const PLAINLY: f64 = 0.8;
/// As sure as this a message is of another world than a garden.
const SURELY_NOT_OURS: f64 = 0.95;

/// A reading less sure than this is not answered: a person of the crew is asked.
const SURE_ENOUGH: f64 = 0.65;

/// From here on a list of jobs, of what can be sown or of nets is told: if something else was meant it does no harm.
const HARMLESS: f64 = 0.5;

/// From here on it is asked which of two things is meant, or what was seen, where a trouble may be meant and no sign was told.
const WORTH_ASKING: f64 = 0.35;

fn by_kind(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if let Some(emergency) = reading.emergency {
        return emergency::answer(emergency);
    }
    if reading.ill_will {
        return none::answer(reading);
    }
    if let Some(refused) = refused::shoots(reading, facts) {
        return refused;
    }
    if let Some(first) = load::first(reading, facts, reading.sureness >= SURE_ENOUGH) {
        return first;
    }
    if let Some(article) = topic::meant(reading, facts) {
        return care::told(article);
    }
    if reading.another && !matches!(reading.kind, Kind::None | Kind::Person) {
        let all: Vec<BedId> = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
        return which_bed(&all);
    }
    if reading.says_too_little {
        // Where the kind is plain its own question is the better one: "which crop is it?"
        let plain = (reading.sureness >= SURE_ENOUGH).then(|| of_kind(reading, facts));
        let asks = plain.filter(|answer| answer.outcome == Outcome::AskedBack);
        return asks.unwrap_or_else(|| which_kind::of_what(reading, facts));
    }
    if let Some(unknown) = no_figures::answer(reading, facts).filter(|_| !reading.senseless) {
        return unknown;
    }
    if reading.sureness < SURE_ENOUGH && !spray::of_harm(reading) && !feed::of_harm(reading) {
        return unsure(reading, facts);
    }
    // Two signs on a plant are no question about harm to someone, whatever words they share.
    let described = reading.kind == Kind::Trouble && reading.signs.len() > 1;
    // What is surely not ours is declined, whatever an article on harm has of its words.
    let not_ours = reading.kind == Kind::None && reading.sureness >= SURELY_NOT_OURS;
    if let Some(article) = care::of_harm(facts).filter(|_| !described && !not_ours && !spray::of_harm(reading)) {
        return care::told(article);
    }
    if alerts::is_asked(reading) && matches!(reading.kind, Kind::Due | Kind::Care) {
        return alerts::answer(facts);
    }
    last_done::answer(reading, facts, || of_kind(reading, facts)).unwrap_or_else(|| of_kind(reading, facts))
}

/// What is not sure: an article that is near, what does no harm if it was not meant, a question back; else the crew.
fn unsure(reading: &Reading, facts: &Facts<'_>) -> Answer {
    // What went on from a question and was not understood is near to an article by its first half alone.
    let goes_on = reading.follow_up && reading.kind != Kind::Care && reading.sureness < WORTH_ASKING;
    if let Some(article) = care::instead(reading, facts).filter(|_| !goes_on) {
        return care::told(article);
    }
    if reading.senseless {
        return none::not_understood();
    }
    if spray::names_poison(reading) {
        return spray::by_its_label();
    }
    match reading.kind {
        // "My plant looks bad": what is seen is asked before a person is troubled.
        Kind::Trouble if reading.sureness >= WORTH_ASKING => trouble::answer(reading, facts),
        Kind::Due if reading.sureness >= HARMLESS => of_kind(reading, facts),
        Kind::Sow | Kind::Shade if reading.sureness >= HARMLESS && reading.asks => harmless(reading, facts),
        _ if reading.sureness >= WORTH_ASKING => which_kind::ask(reading).unwrap_or_else(handed_over::not_known),
        _ => handed_over::not_known(),
    }
}

/// A season or a net: of the crop or bed that was named, else that is asked back.
fn harmless(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if reading.kind == Kind::Sow && reading.crops.is_empty() && reading.beds_named {
        return handed_over::not_known();
    }
    let placed = !reading.crops.is_empty() || !reading.beds.is_empty() || reading.kind == Kind::Sow;
    let all: Vec<BedId> = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
    if placed || all.is_empty() { of_kind(reading, facts) } else { which_bed(&all) }
}

/// "How deep a box for carrots", "how big a pot": the depth that they want, where no number of plants is asked.
fn deep_enough(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    let depth = reading.points.contains(&Point::BedDepth) && !reading.points.contains(&Point::FitsThere);
    if depth && reading.measures.is_empty() { wants::answer(reading, facts) } else { None }
}

fn of_kind(reading: &Reading, facts: &Facts<'_>) -> Answer {
    general::instead(of_one_kind(reading, facts), reading, facts)
}

fn of_one_kind(reading: &Reading, facts: &Facts<'_>) -> Answer {
    // Whose bed it is comes before all that is told or filed of it.
    let of_no_bed = matches!(reading.kind, Kind::Trouble | Kind::Care | Kind::Person | Kind::None);
    if !reading.alike.is_empty() && !of_no_bed {
        return which_bed(&reading.alike);
    }
    match reading.kind {
        Kind::Water => water::answer(reading, facts),
        Kind::Harvest => harvest::answer(reading, facts),
        Kind::Sow => sow::answer(reading, facts),
        Kind::Shade => shade::answer(reading, facts),
        Kind::Spray => spray::answer(reading, facts),
        Kind::Feed => feed::answer(reading, facts),
        Kind::Load => load::instead(reading, facts).map_or_else(|| load::answer(reading, facts), care::told),
        Kind::Space => deep_enough(reading, facts).unwrap_or_else(|| space::answer(reading, facts)),
        Kind::Seed => seed::answer(reading, facts),
        Kind::Mix => mix::answer(reading, facts),
        Kind::Build => build::answer(reading, facts),
        Kind::Trouble => trouble::answer(reading, facts),
        Kind::Care => care::answer(reading, facts),
        Kind::Record => record::answer(reading, facts),
        Kind::Due => due::answer(reading, facts),
        Kind::Person => handed_over::person(facts),
        Kind::None => none::answer(reading),
    }
}
