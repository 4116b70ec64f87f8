//! Several works in one message: each has its own crop, bed, amount and day, and a verb or a day may be said once for
//! both. And what is only planned beside work that was done.

use super::borders::{Border, borders};
use super::{By, LEAST_WORDS};
use crate::garden::JobKind;
use crate::knowledge::{DayWord, Kind, Sign};
use crate::quantity::UnitOf;
use crate::script::Text;
use crate::understanding::dates;
use crate::understanding::reading::Reading;
use chrono::NaiveDate;

/// First and last day.
type Span = (NaiveDate, NaiveDate);

/// Work is told in it, and nothing asked.
pub(super) fn tells_of_work(part: &Reading) -> bool {
    part.kind == Kind::Record && part.did.is_some() && !part.asks
}

/// Neither asked nor told as done, seen, put off or wrong.
fn is_bare(part: &Reading) -> bool {
    let seen = part.saw.is_some() || !part.signs.is_empty();
    !part.asks && part.did.is_none() && !seen && part.put_off.is_none() && part.stays.is_none() && !part.new_bed
}

fn has(part: &Reading, what: UnitOf) -> bool {
    part.quantities.iter().any(|said| said.unit.measures() == what)
}

/// "The east box and the chilli pot this morning": more beds of the work told beside them, and nothing else.
pub(super) fn is_only_place(part: &Reading) -> bool {
    let placed = part.beds_named || part.bed_kind.is_some() || !part.crops.is_empty();
    let nothing = part.materials.is_empty() && part.jobs.is_empty() && part.speaks_of.is_empty();
    is_bare(part) && placed && nothing && part.quantities.is_empty() && part.measures.is_empty()
}

/// Whether a part without a verb may be more of this work: it has what such work is told with.
fn is_more_of(part: &Reading, job: JobKind) -> bool {
    let placed = part.beds_named || part.bed_kind.is_some() || !part.crops.is_empty();
    let amount = has(part, UnitOf::Mass) || has(part, UnitOf::Volume);
    match job {
        JobKind::Pick => has(part, UnitOf::Mass) && (!part.crops.is_empty() || !part.days.is_empty()),
        JobKind::Water | JobKind::Flush => {
            let vessels = part.vessels.as_ref().is_some_and(|vessels| vessels.count.is_some());
            (has(part, UnitOf::Volume) || vessels) && placed
        }
        JobKind::Feed => placed && (amount || !part.materials.is_empty()),
        JobKind::Spray => placed && !part.materials.is_empty(),
        JobKind::Net => placed && part.net_down,
        JobKind::Sow | JobKind::Plant => !part.crops.is_empty() && (part.beds_named || part.bed_kind.is_some()),
        _ => false,
    }
}

/// "400 g chillies and 1.2 kg tomatoes picked", "fed the pot 20 g and the bag 50 g": the verb is said once.
pub(super) fn with_one_verb(
    (first, second): (Reading, Reading),
    texts: (&str, &str),
    border: Border,
    by: &By<'_>,
) -> (Reading, Reading) {
    if border.stops {
        return (first, second);
    }
    if let Some(job) = first.did.filter(|job| is_bare(&second) && !first.asks && is_more_of(&second, *job)) {
        let second = as_work(second, job, by.noted(texts.1));
        return (first, second);
    }
    if let Some(job) = second.did.filter(|job| is_bare(&first) && !second.asks && is_more_of(&first, *job)) {
        let first = as_work(first, job, by.noted(texts.0));
        return (first, second);
    }
    (first, second)
}

/// Told as done, its days are days gone by.
fn as_work(part: Reading, job: JobKind, noted: Reading) -> Reading {
    let sureness = part.sureness.max(super::SURE_ALONE);
    Reading { did: Some(job), kind: Kind::Record, sureness, days: noted.days, ..part }
}

/// "Watered the basket and sprayed the okra yesterday": the day is said once.
pub(super) fn with_one_day(first: &mut Reading, second: &mut Reading, border: Border) {
    if border.stops || !tells_of_work(first) || !tells_of_work(second) {
        return;
    }
    if first.days.is_empty() {
        first.days.clone_from(&second.days);
    } else if second.days.is_empty() {
        second.days.clone_from(&first.days);
    }
}

/// Whether both tell of work that is kept apart: the same work of another crop, bed or day, each with words of its own.
pub(super) fn are_two(first: &Reading, second: &Reading) -> bool {
    if !tells_of_work(first) || !tells_of_work(second) || first.did != second.did {
        return false;
    }
    fn apart<T: PartialEq>(one: &[T], other: &[T]) -> bool {
        !one.is_empty() && !other.is_empty() && one.iter().all(|item| !other.contains(item))
    }
    let amounts = !first.quantities.is_empty() && !second.quantities.is_empty();
    let other_days = apart(&first.days, &second.days);
    let other_stuff = apart(&first.materials, &second.materials);
    let placed = |part: &Reading| part.beds_named || part.bed_kind.is_some();
    let sown = matches!(first.did, Some(JobKind::Sow | JobKind::Plant)) && placed(first) && placed(second);
    let moved = first.net_down != second.net_down;
    let told = amounts || other_days || other_stuff || sown || moved;
    let other_beds = first.beds_named && second.beds_named && apart(&first.beds, &second.beds);
    // "Watered the pot and misted the tray": water on another bed is another watering, whatever else is left out.
    if first.did == Some(JobKind::Water) && apart(&first.beds, &second.beds) {
        return true;
    }
    (apart(&first.crops, &second.crops) || other_beds) && told || other_days && amounts
}

/// "Fri vermi, Sun neem": a day that is no "kal" at the beginning of each part, what work is done with, and no verb.
/// `marked` is the second with the mark before it, since "Sun" alone may be the light.
pub(super) fn as_a_log(
    texts: (&str, &str),
    marked: &str,
    parts: (&Reading, &Reading),
    by: &By<'_>,
) -> Option<(Reading, Reading)> {
    let entry = |(text, part): (&str, &Reading)| {
        let text = Text::read_as(text, by.language);
        let begins = match by.reader.known.words.days.at(&text, 0) {
            Some((DayWord::Weekday(_) | DayWord::ShortWeekday(_), _)) => true,
            Some(_) => false,
            None => text.tokens.first().is_some_and(|token| token.number.is_some()),
        };
        let bare = is_bare(part) || tells_of_work(part);
        let stuff = !part.materials.is_empty() || has(part, UnitOf::Volume);
        let work = part.did.is_some() || !part.jobs.is_empty() || stuff;
        begins && bare && work && !part.asks && !is_to_come(&text, by)
    };
    let entries = entry((texts.0, parts.0)) && entry((texts.1, parts.1));
    let verbs = parts.0.did.is_some() && parts.1.did.is_some();
    if !entries || verbs {
        return None;
    }
    let (first, second) = (by.noted(texts.0), by.noted(marked));
    let told = [&first, &second].iter().all(|part| part.did.is_some() && !part.days.is_empty());
    told.then_some((first, second))
}

fn is_to_come(text: &Text, by: &By<'_>) -> bool {
    let words = &by.reader.known.words;
    // "May" of "14 may" is no word for what is to come.
    let dated = dates::read(text, words, by.today, true);
    let in_a_day = |at: usize| dated.iter().any(|day| day.span.contains(&at));
    (0..text.tokens.len()).any(|at| !in_a_day(at) && words.is_to_come(text, at))
}

/// "Flushed the bag. Will do the box on Thursday": the text before what is only planned, and the days of that.
pub(super) fn before_a_plan<'t>(text: &'t str, whole: &Reading, by: &By<'_>) -> Option<(&'t str, Vec<Span>)> {
    if whole.did.is_none() || whole.asks {
        return None;
    }
    let words = |part: &str| part.split_whitespace().count();
    borders(&Text::read_as(text, by.language)).into_iter().find_map(|border| {
        let (left, right) = (text.get(..border.left)?, text.get(border.right..)?);
        if words(left) < LEAST_WORDS || words(right) < LEAST_WORDS || by.tried_enough() {
            return None;
        }
        let plan = by.part(right);
        let text = Text::read_as(right, by.language);
        let next = (0..text.tokens.len()).any(|at| by.reader.known.words.sign(Sign::Next, &text, at).is_some());
        // "The next date, please": asked for, and no plan.
        let date = |at: usize| matches!(text.normal(at), "date" | "dates" | "tareekh" | "tarikh" | "तारीख" | "tarik");
        let next = next && !(plan.days.is_empty() && (0..text.tokens.len()).any(date));
        let later = !plan.days.is_empty() && plan.days.iter().all(|(day, _)| *day > by.today) || next;
        // "Sava do kilo" holds a number that is also "give", "5 may" a day: a plan says of what, or "will".
        let will = (0..text.tokens.len()).any(|at| matches!(text.normal(at), "will" | "ll" | "going" | "shall"));
        let placed = plan.beds_named || plan.bed_kind.is_some() || !plan.crops.is_empty();
        let about = placed || !plan.jobs.is_empty() || will;
        let planned = is_bare(&plan) && (later && border.stops || about && is_to_come(&text, by));
        let told = planned.then(|| by.part(left))?;
        (told.did.is_some() && !told.asks).then_some((left, plan.days))
    })
}

/// "Watered the east box and the chilli pot": one work on both, and nothing else is told of the second.
pub(super) fn is_one_of_two_beds(whole: &Reading, first: &Reading, second: &Reading) -> bool {
    let bare = second.kind == Kind::Record && second.did.is_none() && second.saw.is_none() && !second.new_bed;
    let nothing_else = bare && second.quantities.is_empty() && second.materials.is_empty() && !second.asks;
    nothing_else && first.did.is_some() && whole.did == first.did && whole.beds.len() > 1
}
