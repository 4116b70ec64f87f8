//! Sun that a bed gets from or until an hour of the clock: "sun till two", "dhoop do baje tak".

use crate::knowledge::{Spelled, SunWords, WordList};
use crate::script::{Language, Number, Text, numbers};
use std::ops::Range;

/// Hours of the clock between which the sun reaches a bed; what was not said is sunrise or sunset.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SunClock {
    pub from_h: Option<f64>,
    pub until_h: Option<f64>,
}

/// Words may stand so many tokens apart from the word for sun.
const NEAR: usize = 8;
/// Said without morning or afternoon, an hour below this is one of the afternoon: nobody means a sun at five.
const FIRST_MORNING_H: f64 = 6.0;

/// The hours told of the sun; none where no word for sun stands near an hour with a word for until or from.
#[must_use]
pub fn read(text: &Text, words: &SunWords) -> Option<SunClock> {
    let light: Vec<usize> = (0..text.tokens.len()).filter(|at| is(text, *at, &words.light)).collect();
    let mut found = SunClock::default();
    for number in all_numbers(text, words) {
        let near = light.iter().any(|at| at.abs_diff(number.span.start) <= NEAR);
        if !near || !(0.0..=24.0).contains(&number.value) {
            continue;
        }
        let (said_h, end) = with_minutes(text, number.value, &number.span);
        let clock = is(text, end, &words.clock) || half_day(text, end, words).is_some();
        let after = end + usize::from(clock);
        let before = number.span.start.checked_sub(1);
        let said = |list| before.is_some_and(|at| is(text, at, list));
        let hour = hour(said_h, half_day(text, end, words));
        if said(&words.until) || is(text, after, &words.until_after) {
            found.until_h = Some(hour);
        } else if said(&words.from) || is(text, after, &words.from_after) {
            found.from_h = Some(hour);
        }
    }
    // An end before its beginning is one of the afternoon: from nine to one.
    if let (Some(from), Some(until)) = (found.from_h, found.until_h)
        && until <= from
        && until < 12.0
    {
        found.until_h = Some(until + 12.0);
    }
    (found != SunClock::default()).then_some(found)
}

/// The numbers of a text; before "baje" the Hindi ones count whatever the language of the rest: "do" is two there.
fn all_numbers(text: &Text, words: &SunWords) -> Vec<Number> {
    let mut all = numbers(text);
    for at in 1..text.tokens.len() {
        let before = at - 1;
        if !is(text, at, &words.clock) || all.iter().any(|number| number.span.contains(&before)) {
            continue;
        }
        let hindi = numbers(&Text::read_as(text.normal(before), Language::HiLatn));
        if let Some(number) = hindi.into_iter().next() {
            all.push(Number { span: before..at, ..number });
        }
    }
    all
}

/// An hour with its minutes, and where it ends: "2:30", "2.30"; "dhai" is two and a half of itself.
fn with_minutes(text: &Text, value: f64, span: &Range<usize>) -> (f64, usize) {
    let token = |at: usize| text.tokens.get(at);
    let minutes = token(span.end + 1).and_then(|token| token.number).filter(|minutes| (0.0..60.0).contains(minutes));
    if let (Some(":"), Some(minutes)) = (token(span.end).map(|token| token.normal.as_str()), minutes) {
        return (value + minutes / 60.0, span.end + 2);
    }
    let written = token(span.start).map(|token| token.normal.as_str()).unwrap_or_default();
    let dotted = written.split_once('.').filter(|(_, after)| after.len() == 2);
    let minutes = dotted.and_then(|(_, after)| after.parse::<f64>().ok()).filter(|minutes| *minutes < 60.0);
    (minutes.map_or(value, |minutes| value.trunc() + minutes / 60.0), span.end)
}

/// The hour of the day that is meant.
fn hour(said: f64, afternoon: Option<bool>) -> f64 {
    match afternoon {
        Some(true) if said < 12.0 => said + 12.0,
        Some(_) => said,
        None if said < FIRST_MORNING_H => said + 12.0,
        None => said,
    }
}

/// Whether "am" or "pm" stands there.
fn half_day(text: &Text, at: usize, words: &SunWords) -> Option<bool> {
    if is(text, at, &words.afternoon) {
        Some(true)
    } else if is(text, at, &words.morning) {
        Some(false)
    } else {
        None
    }
}

/// Whether what stands there is an hour: a word for "o'clock" follows.
#[must_use]
pub fn is_hour(text: &Text, at: usize, words: &SunWords) -> bool {
    is(text, at + 1, &words.clock)
}

/// Whether a word of a list stands there, in normal form.
fn is(text: &Text, at: usize, list: &Spelled) -> bool {
    text.tokens.get(at).is_some_and(|token| list.has(token))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::{Files, Knowledge};

    #[track_caller]
    fn case(known: &Knowledge, text: &str, expected: Option<(Option<f64>, Option<f64>)>) {
        let got = read(&Text::read(text), &known.talk.sun).map(|clock| (clock.from_h, clock.until_h));
        assert_eq!(got, expected, "{text}");
    }

    #[test]
    fn hours_of_the_clock() {
        let (known, _) = Knowledge::read(&Files::embedded());
        let until = |hour| Some((None, Some(hour)));
        case(&known, "new box at Meera's, 4 by 3 ft, a foot deep, sun till two", until(14.0));
        case(&known, "sun until 11", until(11.0));
        case(&known, "it has sunlight up to 2.30 pm", until(14.5));
        case(&known, "sun till 2:30", until(14.5));
        case(&known, "sun till 12", until(12.0));
        case(&known, "naya box 4 by 3 ft, dhoop do baje tak", until(14.0));
        case(&known, "नया बॉक्स, धूप दो बजे तक", until(14.0));
        case(&known, "धूप 11 बजे तक", until(11.0));
        case(&known, "sun from 9 to 1", Some((Some(9.0), Some(13.0))));
        case(&known, "dhoop 10 baje se", Some((Some(10.0), None)));
        case(&known, "sun after 1 pm", Some((Some(13.0), None)));
        case(&known, "six hours of sun", None);
        case(&known, "new box 4 by 3 ft, a foot deep", None);
        case(&known, "open till two, 4 by 3", None);
    }
}
