//! What follows when a spray was told: "my son ate one of them", "oh, double strength by mistake", "pick today?" are read
//! along with it, as one message, so that no one is left to a reading of half the matter.

use super::{Reader, Reading, read_as};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::understanding::asker::Asker;
use chrono::NaiveDate;

/// So many characters of what was told are kept, for as long as the conversation is.
const LONGEST: usize = 300;

/// The reading of a message, or of the spray told before it and the message as one, where that is an accident, a poison,
/// an excess or a wait.
pub(super) fn read_along(
    text: &str,
    mut reading: Reading,
    reader: &Reader<'_>,
    asker: &Asker,
    today: NaiveDate,
) -> Reading {
    let told = asker.before.as_ref().and_then(|before| before.spray_told.as_ref().map(|told| (told, before)));
    if let Some((told, before)) = told
        && let Some(along) = along(told, text, (&reading, before), reader, asker, today)
    {
        return along;
    }
    let sprayed = reading.did == Some(JobKind::Spray) || reading.points.contains(&Point::SyntheticSpray);
    if sprayed && !reading.follow_up {
        reading.spray_told = Some(text.chars().take(LONGEST).collect());
    }
    reading
}

fn along(
    told: &str,
    text: &str,
    (alone, before): (&Reading, &Reading),
    reader: &Reader<'_>,
    asker: &Asker,
    today: NaiveDate,
) -> Option<Reading> {
    let other_crop = alone.crops.iter().any(|crop| !before.crops.is_empty() && !before.crops.contains(crop));
    // What is corrected, undone or asked of the spray itself was read.
    let waits = alone.kind == Kind::Spray && alone.points.contains(&Point::Wait);
    let settled = alone.why || alone.undo || alone.corrects || alone.emergency.is_some() || alone.ill_will || waits;
    if other_crop || settled {
        return None;
    }
    let both = format!("{told}. {text}");
    let along = read_as(&both, reader, &Asker { before: None, ..asker.clone() }, today);
    let new = |point: Point| along.points.contains(&point) && !before.points.contains(&point);
    let matter = [Point::Wait, Point::Accident].into_iter().any(new);
    // A picking is asked about: whether the spray on it leaves one to.
    let picks = alone.kind == Kind::Harvest && alone.asks && along.kind == Kind::Spray;
    let hurt = along.emergency.is_some() && before.emergency.is_none();
    let of_spray = along.kind == Kind::Spray && (matter || picks);
    (hurt || of_spray).then(|| Reading {
        language: alone.language,
        devanagari_digits: alone.devanagari_digits,
        beds: if along.beds.is_empty() { before.beds.clone() } else { along.beds.clone() },
        beds_named: along.beds_named || before.beds_named,
        // "Yesterday" was said then, perhaps before midnight.
        days: if before.days.is_empty() { along.days.clone() } else { before.days.clone() },
        spray_told: Some(told.to_owned()),
        follow_up: true,
        ..along
    })
}
