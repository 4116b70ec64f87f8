//! Phrases that are nearly what was written.

use super::{Entry, Hit, Phrases};
use crate::script::near;

/// Shorter words are not taken for one another's slips: `mist` is not `mint`.
pub(super) const SHORTEST_SLIP: usize = 5;

/// The phrase of one word that is nearest to this one, with the slips between them; of equally near ones the first by
/// the alphabet.
pub(super) fn nearest<T: Clone>(
    phrases: &Phrases<T>,
    word: &str,
    wanted: &impl Fn(&T) -> bool,
    fits: impl Fn(&Entry<T>) -> bool,
) -> Option<(usize, T)> {
    if word.chars().count() < SHORTEST_SLIP {
        return None;
    }
    // People rarely miss the first letter; a word that begins otherwise is another word.
    let alike = phrases.singles.get(&word.chars().next()?)?;
    let mut best: Option<(usize, &T)> = None;
    for known in alike {
        let Some(slips) = near(known, word).filter(|slips| best.is_none_or(|(least, _)| *slips < least)) else {
            continue;
        };
        let mut entries = phrases.get(known).into_iter().flatten();
        let entry = entries.find(|entry| {
            let single = entry.words.len() == 1 && entry.spelling.spelled.is_empty();
            single && wanted(&entry.meaning) && fits(entry)
        });
        if let Some(entry) = entry {
            best = Some((slips, &entry.meaning));
        }
    }
    best.map(|(slips, meaning)| (slips, meaning.clone()))
}

/// A name of two words, one as it is and the other, at this position, with a slip in it: `bitter guard`.
pub(super) fn nearly_a_pair<T: Clone>(phrases: &Phrases<T>, words: &[String], position: usize) -> Option<Hit<T>> {
    let slipped = |known: &str, said: &str| {
        let alike = known.chars().next() == said.chars().next() && said.chars().count() >= SHORTEST_SLIP;
        alike && near(known, said).is_some()
    };
    let word = words.get(position)?;
    if let Some(before) = position.checked_sub(1).and_then(|before| words.get(before)) {
        let entries = phrases.get(before).into_iter().flatten();
        for entry in entries {
            if matches!(entry.words.as_slice(), [_, second] if slipped(second, word)) {
                return Some(Hit { span: position - 1..position + 1, meaning: entry.meaning.clone(), exact: false });
            }
        }
    }
    let after = words.get(position + 1)?;
    let first = phrases.firsts.get(after)?.iter().find(|first| slipped(first, word))?;
    let mut entries = phrases.get(first)?.iter();
    let best = entries.find(|entry| matches!(entry.words.as_slice(), [_, second] if second == after))?;
    Some(Hit { span: position..position + 2, meaning: best.meaning.clone(), exact: false })
}
