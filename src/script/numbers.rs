//! Numbers of a text: digits, fractions, and number words of three ways of writing.

use super::language::Language;
use super::number_words::{Role, english, hindi};
use super::text::Text;
use super::token::{Script, Token};
use std::ops::Range;

/// A number that a text says.
#[derive(Debug, Clone, PartialEq)]
pub struct Number {
    pub value: f64,
    /// Range of token indices.
    pub span: Range<usize>,
    /// Said in words, at least in part.
    pub worded: bool,
    /// May be something else: `do` ("give"), `1/2` (a day), `half`. Trust it before a unit only.
    pub weak: bool,
}

/// All numbers of a text, in order, not overlapping.
#[must_use]
pub fn numbers(text: &Text) -> Vec<Number> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < text.tokens.len() {
        match number_at(text, at) {
            Some(number) => {
                at = number.span.end.max(at + 1);
                found.push(number);
            }
            None => at += 1,
        }
    }
    found
}

fn number_at(text: &Text, at: usize) -> Option<Number> {
    let token = text.tokens.get(at)?;
    if let Some(value) = token.number {
        return Some(in_digits(text, at, value));
    }
    if !token.is_word() {
        return None;
    }
    in_words(text, at).map(|(value, length, weak)| Number { value, span: at..at + length, worded: true, weak })
}

/// A number that begins with digits: `3`, `1 1/2`, `1/2`, `1 ½`, `2 and a half`, `2 dozen`, `5 hundred`.
fn in_digits(text: &Text, at: usize, value: f64) -> Number {
    let plain = |value, length, weak| Number { value, span: at..at + length, worded: false, weak };
    if let Some(fraction) = slashed(&text.tokens, at) {
        return plain(fraction, 3, true);
    }
    if value.fract() == 0.0 {
        if let Some(fraction) = slashed(&text.tokens, at + 1)
            && !touching(&text.tokens, at)
        {
            return plain(value + fraction, 4, false);
        }
        if text.normal(at + 1) == "-"
            && let Some(fraction) = slashed(&text.tokens, at + 2)
        {
            return plain(value + fraction, 5, false);
        }
        if let Some(part) = text.tokens.get(at + 1).and_then(|token| token.number)
            && part > 0.0
            && part < 1.0
            && text.tokens.get(at + 1).is_some_and(|token| !token.text.contains('.'))
        {
            return plain(value + part, 2, false);
        }
    }
    if let Some(length) = and_a_half(text, at + 1) {
        return Number { worded: true, ..plain(value + 0.5, 1 + length, false) };
    }
    if let Some(Role::Times(factor)) = role(text, at + 1) {
        return Number { worded: true, ..plain(value * factor, 2, false) };
    }
    plain(value, 1, false)
}

fn touching(tokens: &[Token], at: usize) -> bool {
    matches!((tokens.get(at), tokens.get(at + 1)), (Some(a), Some(b)) if a.touches(b))
}

/// `1/2`, `3/4` and their like, with nothing between the signs and no third number after them.
fn slashed(tokens: &[Token], at: usize) -> Option<f64> {
    let [above, slash, below] = tokens.get(at..at + 3)? else { return None };
    let third = tokens.get(at + 3).is_some_and(|token| token.normal == "/" && below.touches(token));
    if slash.normal != "/" || !above.touches(slash) || !slash.touches(below) || third {
        return None;
    }
    match (above.normal.as_str(), below.normal.as_str()) {
        ("1", "2") => Some(0.5),
        ("1", "3") => Some(1.0 / 3.0),
        ("2", "3") => Some(2.0 / 3.0),
        ("1", "4") => Some(0.25),
        ("3", "4") => Some(0.75),
        _ => None,
    }
}

fn and_a_half(text: &Text, at: usize) -> Option<usize> {
    match [text.normal(at), text.normal(at + 1), text.normal(at + 2)] {
        ["and", "a", "half"] | ["n", "a", "half"] => Some(3),
        ["and", "half", _] => Some(2),
        _ => None,
    }
}

/// What the word there does in a number, by the language of the text. Hindi words that are no
/// English words count in an English text too.
fn role(text: &Text, at: usize) -> Option<Role> {
    let token = text.tokens.get(at)?;
    let word = token.normal.as_str();
    match (token.script, text.language) {
        (Script::Devanagari, _) => hindi(word),
        (Script::Latin, Language::En) => english(word).or_else(|| hindi(word).filter(|role| role.only_hindi())),
        (Script::Latin, _) => hindi(word).or_else(|| english(word)),
        _ => None,
    }
}

/// A number in words: its value, how many tokens it takes, and whether it is weak.
fn in_words(text: &Text, at: usize) -> Option<(f64, usize, bool)> {
    match role(text, at)? {
        Role::Add(part) => {
            let (value, length, _) = whole(text, at + 1)?;
            Some((value + part, length + 1, false))
        }
        Role::AddOr(part, alone) => match whole(text, at + 1) {
            Some((value, 1, true)) if value >= 12.0 => Some((value * alone, 2, false)),
            Some((value, length, _)) => Some((value + part, length + 1, false)),
            None => Some((alone, 1, true)),
        },
        Role::Part(value) => Some(part(text, at, value)),
        Role::Article => match role(text, at + 1)? {
            Role::Times(value) if value < 100.0 => Some((value, 2, false)),
            Role::Times(value) => Some((value, 2, true)),
            Role::Couple => Some((2.0, if text.normal(at + 2) == "of" { 3 } else { 2 }, false)),
            Role::Part(value) => Some((value, 2, true)),
            _ => None,
        },
        Role::Couple => None,
        _ => {
            let (value, mut length, weak) = whole(text, at)?;
            if let Some(half) = and_a_half(text, at + length) {
                length += half;
                return Some((value + 0.5, length, false));
            }
            Some((value, length, weak))
        }
    }
}

/// `half`, `half a dozen`, `half a litre`, `quarter of a`.
fn part(text: &Text, at: usize, value: f64) -> (f64, usize, bool) {
    let mut length = 1;
    if text.normal(at + length) == "of" {
        length += 1;
    }
    if matches!(text.normal(at + length), "a" | "an") {
        length += 1;
    }
    match role(text, at + length) {
        Some(Role::Times(factor)) => (value * factor, length + 1, false),
        _ if length == 2 && text.normal(at + 1) == "of" => (value, 1, true),
        _ => (value, length, true),
    }
}

/// A whole number in digits or words: `twenty five`, `two hundred`, `dedh sau`.
fn whole(text: &Text, at: usize) -> Option<(f64, usize, bool)> {
    let (mut value, mut length, mut weak) = match (text.tokens.get(at)?.number, role(text, at)) {
        (Some(value), _) => (value, 1, false),
        (None, Some(Role::One(value))) => (value, 1, false),
        (None, Some(Role::Weak(value))) => (value, 1, true),
        (None, Some(Role::Mixed(value))) => (value, 1, false),
        (None, Some(Role::Times(value))) => return Some((value, 1, true)),
        (None, Some(Role::Ten(tens))) => {
            let dash = usize::from(text.normal(at + 1) == "-");
            match role(text, at + 1 + dash) {
                Some(Role::One(one)) if one < 10.0 && text.tokens.get(at + 1 + dash).is_some() => {
                    (tens + one, 2 + dash, false)
                }
                _ => (tens, 1, false),
            }
        }
        _ => return None,
    };
    while let Some(Role::Times(factor)) = role(text, at + length) {
        value *= factor;
        length += 1;
        weak = false;
        if length > 4 {
            break;
        }
    }
    Some((value, length, weak))
}

#[cfg(test)]
mod tests {
    use super::numbers;
    use crate::script::Text;

    #[track_caller]
    fn case(text: &str, expected: &[f64]) {
        let got: Vec<f64> = numbers(&Text::read(text)).into_iter().map(|number| number.value).collect();
        assert_eq!(got, expected, "{text}");
    }

    #[test]
    fn digits_and_fractions() {
        case("3 boxes and 1½ or 1 1/2 or 1 ½ or 1-1/2", &[3.0, 1.5, 1.5, 1.5, 1.5]);
        case("1/2 and 3/4", &[0.5, 0.75]);
        case("8/4", &[8.0, 4.0]);
        case("1/2/26", &[1.0, 2.0, 26.0]);
        case("2 and a half", &[2.5]);
        case("2 dozen", &[24.0]);
    }

    #[test]
    fn english_words() {
        case("one and a half feet", &[1.5]);
        case("twenty five or twenty-five or forty", &[25.0, 25.0, 40.0]);
        case("a dozen, half a dozen, a couple of, two hundred", &[12.0, 6.0, 2.0, 200.0]);
        case("half a litre of it", &[0.5]);
        case("which do you want", &[]);
        case("a lot of it", &[]);
    }

    #[test]
    fn hindi_words() {
        case("dedh foot x teen foot hai", &[1.5, 3.0]);
        case("डेढ़ फुट", &[1.5]);
        case("ढाई किलो", &[2.5]);
        case("साढ़े तीन", &[3.5]);
        case("sadhe teen fut ka", &[3.5]);
        case("sava do litre pani", &[2.25]);
        case("सवा लीटर", &[1.25]);
        case("paune chaar fut hai", &[3.75]);
        case("aadha kilo khad de", &[0.5]);
        case("छह फुट गुणा तीन फुट", &[6.0, 3.0]);
        case("बीस पौधे", &[20.0]);
        case("do gamle me das beej", &[2.0, 10.0]);
        case("dedh sau gram ki", &[150.0]);
        case("ek darjan podhe lagaye", &[12.0]);
    }
}
