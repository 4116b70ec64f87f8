//! A message as it would be spelt out: short forms of the phone, a "2" that is a "to", words without their vowels.
//!
//! What follows reads the spelt-out message alone, so that kind, names, units and days are all found in it.

use super::asker::Asker;
use super::gazetteer::Named;
use super::phrasebook::Forms;
use super::read::Reader;
use crate::knowledge::ShortForms;
use crate::script::{Language, Script, Text, Token, consonants, index_word, numbers};
use std::ops::Range;

/// The message spelt out; as it stands where nothing is cut short.
pub(super) fn spelled_out(text: &str, reader: &Reader<'_>, asker: &Asker) -> String {
    // What happened to someone is read as it stands: no word of it may become another.
    if reader.gazetteer.emergency(&Text::read(text), &[]).is_some() {
        return text.to_owned();
    }
    let undoubled = without_strokes(without_thanks(text));
    let text = undoubled.as_str();
    let forms = &reader.known.short_forms;
    // Which language it is shows better once the words of both are spelt out.
    let plain = with_short_forms(text, forms, |_| None);
    let language = Text::read(&plain).language;
    let of_language = match language {
        Language::En => Some(&forms.english),
        Language::HiLatn => Some(&forms.hindi),
        Language::Hi => None,
    };
    let plain = match of_language {
        Some(list) => with_short_forms(&plain, forms, |word| list.get(word).map(String::as_str)),
        None => plain,
    };
    with_vowels(&plain, reader, asker)
}

/// "Thank you so much, one more thing, is it time for turmeric?": thanks for the last answer say nothing of the next matter.
fn without_thanks(text: &str) -> &str {
    const THANKS: [&str; 17] = [
        "shukriya ji",
        "dhanyavad ji",
        "thanks ji",
        "thank you so much",
        "thank you very much",
        "thanks a lot",
        "thank you",
        "thankyou",
        "thanks",
        "thanku",
        "thx",
        "bahut shukriya",
        "shukriya",
        "dhanyavad",
        "dhanyawad",
        "धन्यवाद",
        "शुक्रिया",
    ];
    const MORE: [&str; 7] =
        ["one more thing", "one more question", "one more", "one last thing", "ek aur baat", "ek aur", "एक और बात"];
    /// Fewer words may lean on the thanks.
    const LEAST_WORDS: usize = 4;
    let after = |text: &str, phrases: &[&str]| {
        let said = phrases.iter().find_map(|phrase| {
            let head = text.get(..phrase.len()).filter(|head| head.eq_ignore_ascii_case(phrase))?;
            text.get(head.len()..)
        })?;
        let rest = said.trim_start_matches(|c: char| !c.is_alphanumeric());
        // "Thanks for the net" goes on with the thanks.
        let parted = said.get(..said.len() - rest.len()).is_some_and(|mark| !mark.trim().is_empty());
        (parted && rest.split_whitespace().count() >= LEAST_WORDS).then_some(text.len() - rest.len())
    };
    let Some(thanks) = after(text, &THANKS) else { return text };
    let rest = text.get(thanks..).unwrap_or(text);
    // "One more bag" is a thing; "one more, …" goes on.
    let more =
        after(rest, &MORE).filter(|end| rest.get(..*end).is_some_and(|said| said.contains([',', ':', '-', '.'])));
    more.and_then(|end| rest.get(end..)).unwrap_or(rest)
}

/// "क्या-क्या", "kitna-kitna": a word said twice is the same with a stroke between.
fn without_strokes(text: &str) -> String {
    let mut plain = text.to_owned();
    for piece in text.split_whitespace() {
        let core = piece.trim_matches(|c: char| !c.is_alphanumeric() && !matches!(c, '\u{900}'..='\u{97f}'));
        if let Some((one, other)) = core.split_once('-')
            && one == other
            && one.chars().any(char::is_alphabetic)
        {
            plain = plain.replacen(core, &format!("{one} {other}"), 1);
        }
    }
    plain
}

/// Pieces between spaces and marks; "w/o" is one.
fn pieces(text: &str) -> Vec<Range<usize>> {
    let mut all: Vec<Range<usize>> = Vec::new();
    let mut start = None;
    let inside = |c: char| c.is_alphanumeric() || matches!(c, '\'' | '’' | '/' | '\u{900}'..='\u{97f}');
    for (at, c) in text.char_indices() {
        match (inside(c), start) {
            (true, None) => start = Some(at),
            (false, Some(from)) => {
                all.push(from..at);
                start = None;
            }
            _ => {}
        }
    }
    all.extend(start.map(|from| from..text.len()));
    all
}

/// Parts of a piece that a stroke joins.
fn halves(text: &str, piece: &Range<usize>) -> Vec<Range<usize>> {
    let mut all = Vec::new();
    let mut from = piece.start;
    for part in text.get(piece.clone()).unwrap_or_default().split('/') {
        all.push(from..from + part.len());
        from += part.len() + 1;
    }
    all
}

/// The text with each word of the lists in its long form. `of_language` knows those of one language.
fn with_short_forms<'f>(text: &str, forms: &'f ShortForms, of_language: impl Fn(&str) -> Option<&'f str>) -> String {
    let lower = text.to_lowercase();
    if lower.len() != text.len() {
        return text.to_owned();
    }
    let word = |span: &Range<usize>| lower.get(span.clone()).unwrap_or_default();
    let known = |span: &Range<usize>| forms.any.get(word(span)).map(String::as_str).or_else(|| of_language(word(span)));
    let mut spans: Vec<Range<usize>> = Vec::new();
    for piece in pieces(&lower) {
        if word(&piece).contains('/') && known(&piece).is_none() {
            spans.extend(halves(&lower, &piece));
        } else {
            spans.push(piece);
        }
    }
    let mut changes: Vec<(Range<usize>, &str)> = Vec::new();
    for (place, span) in spans.iter().enumerate() {
        let before = place.checked_sub(1).and_then(|place| spans.get(place)).map_or("", word);
        let after = spans.get(place + 1).map_or("", word);
        let long = match word(span) {
            "2" if is_to(before, after, forms) => Some("to"),
            "4" if forms.for_before.contains(after) => Some("for"),
            said if said.len() == 1 => known(span).filter(|_| stands_free(&lower, span, before, after)),
            _ => known(span),
        };
        changes.extend(long.map(|long| (span.clone(), long)));
    }
    changed(text, changes)
}

fn is_to(before: &str, after: &str, forms: &ShortForms) -> bool {
    let number = |word: &str| word.chars().any(|c| c.is_ascii_digit());
    forms.to_verbs.contains(after) && !number(before)
        || forms.to_things.contains(after) && forms.to_after.contains(before)
}

/// One letter is a word only among words: not in "N P K", "2 m", "day n+1".
fn stands_free(text: &str, span: &Range<usize>, before: &str, after: &str) -> bool {
    let word = |word: &str| word.is_empty() || word.chars().count() > 1 && word.chars().all(char::is_alphabetic);
    let spaced = |c: Option<char>| c.is_none_or(|c| c.is_whitespace() || matches!(c, ',' | '?' | '.' | '!'));
    let left = text.get(..span.start).and_then(|left| left.chars().next_back());
    let right = text.get(span.end..).and_then(|right| right.chars().next());
    let number = before.chars().next_back().is_some_and(|c| c.is_ascii_digit());
    let goes_on =
        word(after) || after.chars().all(|c| c.is_ascii_digit()) || matches!(after, "u" | "r" | "n" | "d" | "h");
    !number && (word(before) || matches!(before, "h" | "u" | "n")) && goes_on && spaced(left) && spaced(right)
}

fn changed(text: &str, changes: Vec<(Range<usize>, &str)>) -> String {
    let mut all = text.to_owned();
    for (span, long) in changes.into_iter().rev() {
        all.replace_range(span, long);
    }
    all
}

/// The text with its unknown words as the words that they are without their vowels.
fn with_vowels(text: &str, reader: &Reader<'_>, asker: &Asker) -> String {
    let read = Text::read(text);
    let mut open: Vec<usize> = (0..read.tokens.len()).filter(|at| is_strange(&read, *at, reader)).collect();
    if open.is_empty() {
        return text.to_owned();
    }
    open.retain(|at| numbers(&read).iter().all(|number| !number.span.contains(at)));
    let forms = Forms::of(&read);
    let own = |token: &Token| {
        let said = |name: &String| name.to_lowercase().split_whitespace().any(|word| word == token.normal);
        asker.beds.iter().any(|bed| bed.names.iter().any(said))
    };
    let bare = |at: usize| read.tokens.get(at).is_some_and(|token| is_bare(&token.normal));
    let stays = |name: &Named, at: usize| match name {
        Named::OwnBed(_) => false,
        Named::Crop(_) => true,
        _ => !bare(at),
    };
    let names: Vec<Range<usize>> = reader
        .gazetteer
        .names(&forms, asker)
        .into_iter()
        .filter(|hit| stays(&hit.meaning, hit.span.start))
        .map(|hit| hit.span)
        .collect();
    let changes = open.into_iter().filter_map(|at| {
        let token = read.tokens.get(at).filter(|token| !own(token))?;
        if names.iter().any(|span| span.contains(&at)) {
            return None;
        }
        Some((token.span.clone(), long_form(&token.normal, reader)?))
    });
    let changes: Vec<(Range<usize>, String)> = changes.collect();
    changed(text, changes.iter().map(|(span, long)| (span.clone(), long.as_str())).collect())
}

/// The word with its vowels; "waterin" is "watering".
fn long_form(word: &str, reader: &Reader<'_>) -> Option<String> {
    let spellings = &reader.index.spellings;
    let ending = word.ends_with("in").then(|| format!("{word}g")).filter(|long| spellings.is_common(long));
    ending.or_else(|| spellings.spelled_out(word).map(str::to_owned))
}

/// What lacks its vowels sounds as other words do: "mthi" as soil.
fn is_bare(word: &str) -> bool {
    let vowels = word.chars().filter(char::is_ascii_alphabetic).count() - consonants(word);
    consonants(word) > 2 * vowels
}

/// Whether a token is a Latin word that neither the ways of asking nor the lists have.
fn is_strange(text: &Text, at: usize, reader: &Reader<'_>) -> bool {
    let Some(token) = text.tokens.get(at).filter(|token| token.script == Script::Latin) else { return false };
    let words = &reader.known.words;
    let listed = words.days.at(text, at).is_some()
        || words.units.at(text, at).is_some()
        || words.spans.at(text, at).is_some()
        || words.parts_of_day.at(text, at).is_some();
    let said = || {
        !is_bare(&token.normal) && index_word(token, text.language).is_some_and(|word| reader.index.knows_well(&word))
    };
    let common = || reader.known.ordinary.is(&token.normal) || reader.index.spellings.is_common(&token.normal);
    !listed && !common() && !said()
}
