//! A text, who wrote it and on which day → its reading.

mod after_spray;
mod answers;
mod as_asked;
mod asked;
mod asked_back;
mod bare_box;
mod called;
mod claims;
mod classed;
mod commands;
mod contrast;
mod deeds;
mod described;
mod excepted;
mod few_words;
mod filled;
mod follows;
mod found;
mod frames;
mod given;
mod goes_on;
mod harmed;
mod homonyms;
mod leans;
mod likewise;
mod matters;
mod new_bed;
mod noted;
mod once;
mod places;
mod plainly;
mod questions;
mod seen;
mod several;
mod sized;
mod sky;
#[cfg(test)]
mod tests;
mod theirs;
mod together;
mod told_plainly;
mod topics;
mod trays;
mod usual_after;
mod vessels;
mod words;
mod worlds;

use super::asker::Asker;
use super::follow_up::{Says, adds_nothing, completed, corrected, counted_from, one_vessel, started, undone};
use super::gazetteer::{Gazetteer, Named, Told};
use super::kind::{Leaning, decide};
use super::own_beds::with_beds;
use super::parts::NOT_UP;
use super::phrasebook::Hit;
use super::quantities::{self, Quantities};
use super::reading::{Measured, Reading};
use crate::knowledge::{Index, Kind, Knowledge, Point, Slips};
use crate::script::{Language, Text};
use chrono::NaiveDate;

pub use classed::{classed, classed_beside};
use found::Found;
use plainly::ByRule;

/// What reading needs of the knowledge base, made ready once.
pub struct Reader<'a> {
    pub known: &'a Knowledge,
    pub index: &'a Index,
    pub gazetteer: &'a Gazetteer,
}

/// Less sure than this a kind is only leaned to (judgement).
const LEANS: f64 = 0.8;

/// So usual for a record, words tell of work, whatever sign they hold (judgement).
const SURELY_TOLD: f64 = 0.9;

/// So many telling words that change nothing of what was asked hold something that was not understood; it is as unsure as
/// this (judgement).
const OF_ITS_OWN: usize = 4;
const NOT_HEARD: f64 = 0.3;

/// A name alone is asked what of it (judgement).
const NAME_ALONE: f64 = 0.4;

/// So usual where it is left unsaid what they are about, words are taken for such that name nothing; and words that name
/// a plant or stuff (looked for on 1 650 labelled messages, six in a hundred of them too vague: 46 were taken for vague,
/// and 45 were. What leaves things unsaid is rare among what was learned from, so its shares are small).
const TOO_LITTLE: f64 = 0.05;
const TOO_LITTLE_OF_A_THING: f64 = 0.15;

/// As sure as this a greeting is one.
const NOTHING_ELSE: f64 = 0.95;

/// What is denied for another is told in so few tokens.
const CONTRAST: usize = 14;

/// Reads a message as one request. Never fails: what has no sense is a reading too.
pub fn read_as(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    let mut reading = read_text(asker.text(text), reader, asker, today, As::Whole);
    // An answer to a question asked back is the reading before it, and says enough.
    reading.says_too_little = asker.before.is_none() && leaves_unsaid(&reading);
    // What is meant is asked; who says so little of a garden is not turned away.
    if reading.says_too_little && reading.kind == Kind::None {
        reading.kind = reading.perhaps.unwrap_or_default();
    }
    after_spray::read_along(text, reading, reader, asker, today)
}

/// What it is about is left unsaid, by its words. A greeting, a term to explain, what the sky did and letters without sense
/// say all that they have to say.
fn leaves_unsaid(reading: &Reading) -> bool {
    let least = if names_a_thing(reading) { TOO_LITTLE_OF_A_THING } else { TOO_LITTLE };
    let greets = reading.kind == Kind::None && reading.sureness >= NOTHING_ELSE;
    let enough = [Point::Meaning, Point::Rain, Point::RainFell, Point::NoRain];
    let said = enough.iter().any(|point| reading.points.contains(point)) || !reading.sky.is_empty();
    // Who wants a person, or has a bill to settle, names no bed.
    let a_person = reading.kind == Kind::Person && reading.sureness >= LEANS;
    reading.unsaid >= least && !greets && !said && !reading.senseless && !a_person
}

/// A plant, stuff, a trouble or a sign of one.
fn names_a_thing(reading: &Reading) -> bool {
    let plants = [reading.crops.len(), reading.refused.len(), reading.other_plants.len()];
    let things = [reading.materials.len(), reading.mixes.len(), reading.troubles.len(), reading.signs.len()];
    plants.into_iter().chain(things).any(|count| count > 0)
}

/// Reads a part of a message whose language is that of the whole.
pub fn read_part(text: &str, language: Language, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    read_text(Text::read_as(text, language), reader, asker, today, As::Part)
}

/// The same of a part that stands in a list of what was done, though no verb says so.
pub fn read_noted(text: &str, language: Language, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    read_text(Text::read_as(text, language), reader, asker, today, As::Noted)
}

/// As what a text is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum As {
    Whole,
    Part,
    /// A part of a list of what was done.
    Noted,
}

fn read_text(text: Text, reader: &Reader<'_>, asker: &Asker, today: NaiveDate, read_as: As) -> Reading {
    let mut found = Found::of(&text, reader, asker, today, read_as == As::Noted);
    match found.take_exception(&text, asker) {
        Some(excepted) => excepted.from(read_found(text, found, reader, asker, today, read_as), asker),
        None => {
            let places = found.clone();
            let reading = read_found(text.clone(), found, reader, asker, today, read_as);
            places.with_all_places(&text, reading, asker)
        }
    }
}

/// As sure as this a pest that is told as seen is asked about.
const SEEN: f64 = 0.8;

fn read_found(
    text: Text,
    mut found: Found,
    reader: &Reader<'_>,
    asker: &Asker,
    today: NaiveDate,
    read_as: As,
) -> Reading {
    if let Some(reading) = found.of_ill_will(&text, reader) {
        return reading;
    }
    if let Some(reading) = found.in_another_place(&text, reader, asker) {
        return reading;
    }
    let mut contrasts =
        asker.before.is_some() && text.tokens.len() <= CONTRAST && found.without_denied(&text, reader.known);
    let meant = reader.known.meanings.of(&text.tokens, text.language, Slips::Forgiven);
    let (words, written) = found.class_form(&text);
    let usual = reader.index.leaning(&[words.as_slice(), &meant, &written].concat());
    // Half a sentence may sound like an accident: "we have four sacks lying here".
    if read_as == As::Whole
        && let Some(reading) = found.of_the_hurt(&text, reader, &usual, asker.before.is_some())
    {
        return reading;
    }
    let (habit, unsaid) = (Leaning(usual.kinds), usual.unsaid);
    if habit.is_of_a_garden(words.len()) {
        found.forget_other_worlds();
    }
    let evidence = found.evidence(&text, reader);
    let verdict = decide(reader.index, &words, &habit, evidence);
    let ByRule { kind, sureness, stands } = found.by_rule(&text, reader, verdict, asker);
    // A poem, a poison for a dog, a wrong bill: whatever was spoken of before, it does not go on from there.
    if matches!(kind, Kind::None | Kind::Person) && found.company_stands && asker.before.is_some() {
        return found.reading(&text, reader, kind, sureness);
    }
    if asker.before.as_ref().is_some_and(|before| found.fixes_a_visit(&text, before)) {
        return found.reading(&text, reader, Kind::Person, LEANS);
    }
    // A message that stands alone is what such words are usual for; in a conversation they may mean another thing.
    // What is refused, and the wait after a poison, stand whatever else.
    let refused = kind == Kind::None || kind == Kind::Spray && found.is_of_poison();
    let weighed = asker.before.is_none() && !(stands && (refused || found.company_stands));
    let outvoted = weighed.then(|| habit.against(kind, words.len(), evidence, stands)).flatten();
    // Seed that does not come up makes no record of the message.
    let ails = kind == Kind::Trouble && found.signs.iter().any(|sign| sign == NOT_UP);
    // Nor is a question one: "fed on the 2nd, shall I give double on Wednesday".
    let no_record = ails || found.asks && kind != Kind::Record && found.did.is_some();
    let outvoted = outvoted.filter(|(other, share)| !(no_record && *other == Kind::Record && *share < SURELY_TOLD));
    let (kind, sureness) = outvoted.unwrap_or((kind, sureness));
    // "Saw aphids on the okra today": a pest is seen, and no work told.
    let (kind, sureness) = if kind == Kind::Record && found.sees_a_trouble(&text) {
        (Kind::Trouble, sureness.max(SEEN))
    } else {
        (kind, sureness)
    };
    // "Net goes up tomorrow over the kale, 60 % fine?": work to come is asked about, and nothing was done.
    let to_come = !found.days.is_empty() && found.days.iter().all(|day| day.first > today);
    let planned = kind == Kind::Record && found.asks && to_come && asker.before.is_none();
    let asked = found.asked_of_the_work().filter(|_| planned);
    if asked.is_some() {
        found.did = None;
    }
    let kind = asked.unwrap_or(kind);
    // "3.5 kg of cucumbers taken off on Sunday": no word told the work, and yet a note is what it is.
    let of_record = asker.before.as_ref().is_some_and(|before| before.kind == Kind::Record);
    // "Saturday as well" after the jobs of a day were asked for notes nothing.
    let of_jobs = asker.before.as_ref().is_some_and(|before| before.kind == Kind::Due) && found.names.is_empty();
    if kind == Kind::Record && !of_record && !of_jobs && found.tells_no_work(&text, reader) {
        found.take_as_noted(Found::of(&text, reader, asker, today, true));
    }
    // Letters without sense lean to a kind by chance.
    let kind = if sureness < LEANS && found.is_senseless(&text, reader) { Kind::None } else { kind };
    let mut reading = Reading {
        sky: found.sky(&text, today),
        perhaps: verdict.perhaps,
        leans: habit.0.clone(),
        unsaid: if asker.before.is_some() || habit.is_no_matter() || stands && kind == Kind::None {
            0.0
        } else {
            unsaid
        },
        ..found.reading(&text, reader, kind, sureness)
    };
    if asker.before.is_none() && found.is_a_name_alone(&text) {
        // What is asked most of a bed or a crop is offered, whatever a bare name leans to.
        (reading.kind, reading.perhaps, reading.sureness) = (Kind::Water, Some(Kind::Harvest), NAME_ALONE);
    }
    if let Some(days) = found.days_of_a_move(&text, today) {
        reading.days = vec![days];
    }
    if let Some(before) = &asker.before {
        if let Some(chosen) =
            found.chosen(&text, &reading, before).or_else(|| found.chosen_kind(&text, &reading, before))
        {
            return chosen;
        }
        found.with_day_after(&mut reading, before);
        found.with_end_of_days(&text, &mut reading, before);
        found.with_bare_size(&mut reading, before);
        found.with_bare_depth(&text, &mut reading, before);
        found.with_bare_amount(&text, &mut reading, before);
        let others = found.other_beds(before, asker);
        reading.beds_named |= others.len() == 1;
        contrasts |= !others.is_empty();
        reading.beds.extend(others);
        reading.count = found.count_of_same(&text).or(reading.count);
        reading.why |= found.asks_working();
    }
    found.with_bare_box(&mut reading);
    if let Some(before) = &asker.before
        && let Some(reading) = corrected(
            &reading,
            before,
            contrasts
                || found.corrects(&text)
                || one_vessel(&reading, before).is_some() && reading.names_nothing()
                || found.says_otherwise(&text, reader, &reading, before),
            asker,
        )
        .or_else(|| found.names_the_new_bed(&text, &reading, before))
        .or_else(|| found.sizes_the_new_bed(&reading, before))
        .or_else(|| undone(&reading, before, found.undoes()))
        .or_else(|| started(&reading, before, found.begins_with(&text, &Told::FollowUp)))
    {
        return with_beds(reading, asker);
    }
    if let Some(before) = &asker.before
        && let Some(reading) = found.answers_about_trouble(&text, reader, &reading, before)
    {
        return with_beds(reading, asker);
    }
    if let Some(before) = &asker.before {
        // "I said bitter gourd, not bottle gourd": the same, of what is meant.
        let other = contrasts && before.kind != Kind::Record && !reading.crops.is_empty();
        let follows = found.follows(&text, reader, before, (kind, verdict));
        let follows = if stands { follows } else { found.usual_after(&text, reader, (kind, before), follows, &habit) };
        let says = if other { Says::NoKind } else { follows.says };
        reading = found.as_it_follows(&text, reader, reading, before, follows);
        // "Why so many days' gap": the working of it.
        reading.why |= says == Says::NoKind && found.asks_why_of_it(&text, reader);
        reading = completed(reading, before, says, asker);
        counted_from(&mut reading, before);
        as_asked::with_stuff_asked_about(&mut reading, before);
        if found.means_another(&text, before, asker) {
            (reading.another, reading.beds_named) = (true, false);
            reading.crops.clear();
            reading.beds.clear();
        }
        // "Could your man bring me a trowel, mine is gone" is not answered by the same once more.
        let strange = found.is_senseless(&text, reader);
        let of_its_own = reading.telling.len() >= OF_ITS_OWN || strange;
        if says == Says::NoKind && of_its_own && adds_nothing(&reading, before) {
            reading.senseless |= strange;
            reading.sureness = reading.sureness.min(NOT_HEARD);
        }
    }
    with_beds(reading, asker)
}
