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
    let mut found: Vec<Number> = Vec::new();
    let mut at = 0;
    while at < text.tokens.len() {
        match number_at(text, at) {
            Some(number) => {
                at = number.span.end.max(at + 1);
                if let Some(before) = found.last_mut() {
                    share_factor(text, before, &number);
                }
                found.push(number);
            }
            None => at += 1,
        }
    }
    found
}

/// "Two or three hundred", "चार-पाँच सौ": what multiplies the second multiplies the first.
fn share_factor(text: &Text, before: &mut Number, number: &Number) {
    let factor = |span: &Range<usize>| {
        span.clone().find_map(|at| match role(text, at) {
            Some(Role::Times(factor)) if factor >= 100.0 => Some(factor),
            _ => None,
        })
    };
    let joint = before.span.end..number.span.start;
    let joined = match joint.len() {
        0 => text.language != Language::En && before.worded && number.worded,
        1 => matches!(text.normal(joint.start), "-" | "to" | "or" | "se" | "ya" | "से" | "या"),
        _ => false,
    };
    let Some(by) = factor(&number.span).filter(|_| joined && factor(&before.span).is_none()) else { return };
    if before.value >= 1.0 && before.value < number.value / by {
        before.value *= by;
        before.weak = false;
    }
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
    match whole(text, at, 0.0) {
        Some((value, length, _)) => Number { worded: length > 1, ..plain(value, length, false) },
        None => plain(value, 1, false),
    }
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

/// `and a half`, `and three quarters`: the part, and how many tokens it takes.
fn and_part(text: &Text, at: usize) -> Option<(f64, usize)> {
    if !matches!(text.normal(at), "and" | "n" | "&") {
        return None;
    }
    match [text.normal(at + 1), text.normal(at + 2)] {
        ["a", "half"] => Some((0.5, 3)),
        ["a", "quarter"] => Some((0.25, 3)),
        ["three", "quarter" | "quarters"] => Some((0.75, 3)),
        ["half", _] => Some((0.5, 2)),
        ["quarter", _] => Some((0.25, 2)),
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
        (Script::Latin, _) => hindi(word).or_else(|| english(word)).or_else(|| short_hundred(text, at)),
        _ => None,
    }
}

/// "Do so gram": the hundred as it is typed in a hurry, where a measure of small things follows.
fn short_hundred(text: &Text, at: usize) -> Option<Role> {
    let measured = matches!(text.normal(at + 1), "g" | "gm" | "gms" | "gram" | "grams" | "graam" | "ml");
    (text.normal(at) == "so" && measured).then_some(Role::Times(100.0))
}

/// A number in words: its value, how many tokens it takes, and whether it is weak.
fn in_words(text: &Text, at: usize) -> Option<(f64, usize, bool)> {
    match role(text, at)? {
        Role::Add(part) => {
            let (value, length, _) = whole(text, at + 1, part)?;
            Some((value, length + 1, false))
        }
        Role::AddOr(part, alone) => match role(text, at + 1) {
            Some(Role::Times(factor)) => Some((alone * factor, 2, false)),
            Some(Role::Part(quarter)) if is_pav(text, at + 1) => Some((alone * quarter, 2, false)),
            _ => Some(match whole(text, at + 1, part) {
                Some((value, length, _)) => (value, length + 1, false),
                None => (alone, 1, true),
            }),
        },
        Role::Part(value) => Some(part(text, at, value)),
        Role::Article => after_article(text, at + 1).map(|(value, length, weak)| (value, length + 1, weak)),
        Role::Couple | Role::Share(_) => None,
        // "A few hundred" is no number.
        Role::Times(_) if is_vague(text, at) => None,
        _ => whole(text, at, 0.0),
    }
}

fn is_vague(text: &Text, at: usize) -> bool {
    at.checked_sub(1).is_some_and(|before| {
        matches!(text.normal(before), "few" | "several" | "many" | "some" | "kai" | "kuch" | "कई" | "कुछ")
    })
}

/// A quarter of a kilogram, which is counted too: "teen pav".
fn is_pav(text: &Text, at: usize) -> bool {
    matches!(text.normal(at), "pav" | "paav" | "पाव")
}

/// `dozen`, `hundred and fifty`, `couple of`, `half` after an article.
fn after_article(text: &Text, at: usize) -> Option<(f64, usize, bool)> {
    match role(text, at)? {
        Role::Times(_) => {
            let (value, length, weak) = whole(text, at, 0.0)?;
            // "A hundred" is a way of speaking as well; a dozen and a half is eighteen.
            let half = and_part(text, at + length).filter(|_| value < 100.0);
            let (more, longer) = half.unwrap_or_default();
            Some((value * (1.0 + more), length + longer, weak && value >= 100.0))
        }
        Role::Couple => {
            let length = if text.normal(at + 1) == "of" { 2 } else { 1 };
            match role(text, at + length) {
                Some(Role::Times(factor)) => Some((2.0 * factor, length + 1, false)),
                _ => Some((2.0, length, false)),
            }
        }
        Role::Part(value) => match role(text, at + 1) {
            Some(Role::Times(factor)) => Some((value * factor, 2, false)),
            _ => Some((value, 1, true)),
        },
        _ => None,
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
        Some(Role::Part(quarter)) if is_pav(text, at + length) => (value * quarter, length + 1, false),
        _ if length == 2 && text.normal(at + 1) == "of" => (value, 1, true),
        _ => (value, length, true),
    }
}

/// A number in digits or words: `twenty five`, `two hundred and fifty`, `dedh sau`, `do hazar teen sau`. What is added
/// comes before what multiplies: with a half added, `teen sau` is three hundred and fifty.
fn whole(text: &Text, at: usize, add: f64) -> Option<(f64, usize, bool)> {
    let bare = matches!(role(text, at), Some(Role::Times(_)));
    let (small, mut length, mut weak) = if bare && add == 0.0 { (1.0, 0, true) } else { small(text, at)? };
    let mut value = small + add;
    if let Some((more, longer)) = and_part(text, at + length).filter(|_| !bare && add == 0.0) {
        value += more;
        length += longer;
        weak = false;
    }
    let mut factor = 1.0;
    for _ in 0..2 {
        let Some(Role::Times(by)) = role(text, at + length) else { break };
        factor *= by;
        length += 1;
        weak &= bare;
    }
    value *= factor;
    if let Some((rest, longer)) = remainder(text, at + length, factor) {
        value += rest;
        length += longer;
        weak = false;
    }
    Some((value, length, weak))
}

/// What follows a hundred or thousand and is less than it: `and fifty`, `pachas`.
fn remainder(text: &Text, at: usize, factor: f64) -> Option<(f64, usize)> {
    /// Weak words below this are verbs more often (`do`: give).
    const STRONG: f64 = 7.0;
    if factor < 100.0 {
        return None;
    }
    let joined = usize::from(matches!(text.normal(at), "and" | "&"));
    let begins = match role(text, at + joined)? {
        Role::One(_) | Role::Ten(_) => true,
        Role::Weak(value) => joined == 0 && (value >= STRONG || matches!(role(text, at + 1), Some(Role::Times(_)))),
        _ => false,
    };
    let (value, length, _) = whole(text, at + joined, 0.0).filter(|_| begins)?;
    (value < factor && value.fract() == 0.0).then_some((value, joined + length))
}

/// What stands before all that multiplies: digits, `twenty five`, `dedh`, `three quarters`.
fn small(text: &Text, at: usize) -> Option<(f64, usize, bool)> {
    if let Some(value) = text.tokens.get(at)?.number {
        return Some((value, 1, false));
    }
    let (value, weak) = match role(text, at)? {
        Role::One(value) | Role::Mixed(value) => (value, false),
        Role::Weak(value) => (value, true),
        Role::Ten(tens) => {
            let dash = usize::from(text.normal(at + 1) == "-");
            return match role(text, at + 1 + dash) {
                Some(Role::One(one)) if one < 10.0 => Some((tens + one, 2 + dash, false)),
                _ => Some((tens, 1, false)),
            };
        }
        _ => return None,
    };
    let share = match role(text, at + 1) {
        Some(Role::Share(share)) if value * share < 1.0 => Some(share),
        Some(Role::Part(quarter)) if quarter < 0.5 && (is_pav(text, at + 1) || value <= 3.0) => Some(quarter),
        _ => None,
    };
    // "Three quarters of a kilo".
    let of = text.normal(at + 2) == "of" && matches!(text.normal(at + 3), "a" | "an");
    Some(share.map_or((value, 1, weak), |share| (value * share, if of { 4 } else { 2 }, false)))
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
    fn english_hundreds() {
        case("a hundred and fifty, hundred and ten, two hundred fifty", &[150.0, 110.0, 250.0]);
        case("one hundred and twenty five or a hundred", &[125.0, 100.0]);
        case("a thousand two hundred and fifty", &[1250.0]);
        case("two and a half hundred, one and a half dozen, a dozen and a half", &[250.0, 18.0, 18.0]);
        case("a couple of hundred, half a hundred", &[200.0, 50.0]);
        case("a few hundred", &[]);
        case("two or three hundred; 4-5 hundred", &[200.0, 300.0, 400.0, 500.0]);
        case("three quarters, three quarter, one third, one and a quarter", &[0.75, 0.75, 1.0 / 3.0, 1.25]);
        case("the third tray, two thirds", &[2.0 / 3.0]);
        case("twenty and two", &[20.0, 2.0]);
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

    #[test]
    fn hindi_hundreds() {
        case("do sau pachas gram ki", &[250.0]);
        case("एक सौ बीस", &[120.0]);
        case("एक हज़ार दो सौ", &[1200.0]);
        case("साढ़े तीन सौ ग्राम", &[350.0]);
        case("sadhe char sau gram hai", &[450.0]);
        case("सवा दो सौ", &[225.0]);
        case("paune do sau gram ki", &[175.0]);
        case("sava sau, paune sau, dhai sau gram hai", &[125.0, 75.0, 250.0]);
        case("paune do kilo, pauna kilo, paune kilo hai", &[1.75, 0.75, 0.75]);
        case("do so gram ki", &[200.0]);
        case("do teen sau gram ki", &[200.0, 300.0]);
        case("चार-पाँच सौ", &[400.0, 500.0]);
        case("sau do sau gram ki", &[100.0, 200.0]);
        case("teen chauthai kilo ki", &[0.75]);
        case("teen pav, aadha pav, dedh pav bhindi ki", &[0.75, 0.125, 0.375]);
        case("mujhe paanch sau do hai", &[500.0, 2.0]);
    }

    #[test]
    fn hindi_between_tens() {
        case("इक्कीस बाईस सत्तावन निन्यानवे", &[21.0, 22.0, 57.0, 99.0]);
        case("chaubis gamle me chhattis beej hai", &[24.0, 36.0]);
    }
}
