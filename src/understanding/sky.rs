//! A message that tells of the weather, with a question beside it or alone.

use super::asker::Asker;
use super::read::{Reader, read_part};
use super::reading::{Reading, SkyTold};
use crate::knowledge::{Aspect, Kind};
use crate::script::{Text, Token, index_word};
use chrono::{Days, NaiveDate};

/// A reading that is surer than this stands, whatever it tells of the sky.
const SURE_ENOUGH: f64 = 0.65;
/// What is told plainly leaves little else (judgement).
const SURE: f64 = 0.8;
/// More strange words than this beside it are chatter (judgement).
const STRANGE_WORDS: usize = 0;

/// What a message about the weather asks: what stands beside the telling, else how it changes the water of all beds.
pub fn told(text: &str, whole: Reading, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    // A record of which nothing was done or seen is none: rain that "happened" reads like work.
    let of_nothing = whole.kind == Kind::Record && whole.saw.is_none() && !whole.new_bed;
    // Weather that leans to watering, and nothing asked: it is told of all beds.
    let alone = whole.kind == Kind::Water && !whole.asks && !whole.beds_named;
    let names = !whole.crops.is_empty() || !whole.materials.is_empty() || !whole.signs.is_empty() || whole.beds_named;
    let speaks = whole.asks || names || !whole.jobs.is_empty() || !whole.speaks_of.is_empty();
    let open = whole.kind == Kind::None || whole.sureness < SURE_ENOUGH || of_nothing || alone || !speaks;
    if whole.sky.is_empty() || whole.did.is_some() || whole.emergency.is_some() || !open {
        return with_now(whole, today);
    }
    let sky = whole.sky.clone();
    let beside = beside(text, reader, asker, today).filter(|part| part.kind != Kind::None);
    if let Some(part) = beside.filter(|part| part.sureness >= SURE_ENOUGH) {
        return with_now(Reading { sky, ..part }, today);
    }
    if !plainly(&sky) || strange_words(text, reader) > STRANGE_WORDS || !whole.crops.is_empty() {
        return whole;
    }
    let named = !whole.beds.is_empty();
    let before = asker.before.as_ref().filter(|before| before.kind == Kind::Water && !before.beds.is_empty());
    let beds = match before {
        _ if named => whole.beds.clone(),
        Some(before) => before.beds.clone(),
        None => asker.beds.iter().map(|bed| bed.id.clone()).collect(),
    };
    let all_beds = !named && before.is_none();
    let quantities = Vec::new();
    with_now(Reading { kind: Kind::Water, sureness: SURE, beds, all_beds, quantities, ..whole }, today)
}

/// Words that no way of asking about growing has and that are not everyday ones: "match", "trophy".
fn strange_words(text: &str, reader: &Reader<'_>) -> usize {
    const LEAST_LETTERS: usize = 4;
    let text = Text::read(text);
    let strange = |token: &&Token| {
        token.is_word()
            && token.normal.chars().count() >= LEAST_LETTERS
            && !reader.known.ordinary.is(&token.normal)
            && index_word(token, text.language).is_some_and(|word| !reader.index.knows_of_care(&word))
    };
    text.tokens.iter().filter(strange).count()
}

/// A figure was said, or rain that fell: "no rain" alone is as often part of a question.
fn plainly(sky: &[SkyTold]) -> bool {
    sky.iter().any(|told| told.tmax_c.is_some() || told.tmin_c.is_some() || told.rain_mm.is_some_and(|mm| mm > 0.0))
}

/// The parts of a text, from mark to mark, that tell nothing of the sky, as one reading.
fn beside(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Option<Reading> {
    const LEAST_WORDS: usize = 2;
    let whole = Text::read(text);
    let marks = whole.tokens.iter().filter(|token| matches!(token.normal.as_str(), "," | "." | "?" | ";" | "।" | "!"));
    let mut from = 0;
    let mut rest: Vec<&str> = Vec::new();
    for end in marks.map(|mark| mark.span.end).chain([text.len()]) {
        let part = text.get(from..end)?;
        from = end;
        if part.split_whitespace().count() == 0 {
            continue;
        }
        if read_part(part, whole.language, reader, asker, today).sky.is_empty() {
            rest.push(part.trim());
        }
    }
    let rest = rest.join(" ");
    let words = rest.split_whitespace().count();
    (words >= LEAST_WORDS).then(|| read_part(&rest, whole.language, reader, asker, today))
}

/// Rain that fell now or yesterday asks of itself whether to water today.
fn with_now(mut reading: Reading, today: NaiveDate) -> Reading {
    let yesterday = today.checked_sub_days(Days::new(1)).unwrap_or(today);
    let fell = reading.sky.iter().any(|told| told.rain_mm.is_some_and(|mm| mm > 0.0) && told.last >= yesterday);
    let other = [Aspect::Now, Aspect::Away, Aspect::Without, Aspect::Salt];
    if fell && reading.kind == Kind::Water && !other.iter().any(|aspect| reading.aspects.contains(aspect)) {
        reading.aspects.push(Aspect::Now);
    }
    reading
}
