//! The normal form of letters and signs.

use super::token::Script;
use unicode_normalization::UnicodeNormalization;

/// The sign that turns a Devanagari letter into a borrowed sound, as in the word for road.
const NUKTA: char = '\u{93c}';
const CANDRABINDU: char = '\u{901}';
const ANUSVARA: char = '\u{902}';

/// The script of a letter, or of a sign that belongs to one; `None` for everything else.
pub(super) fn letter_script(c: char) -> Option<Script> {
    match c {
        '\u{900}'..='\u{963}' | '\u{971}'..='\u{97f}' => Some(Script::Devanagari),
        'a'..='z' | 'A'..='Z' | '\u{c0}'..='\u{d6}' | '\u{d8}'..='\u{f6}' | '\u{f8}'..='\u{24f}' => Some(Script::Latin),
        '\u{300}'..='\u{36f}' | '\u{1e00}'..='\u{1eff}' => Some(Script::Latin),
        '\u{ff21}'..='\u{ff3a}' | '\u{ff41}'..='\u{ff5a}' => Some(Script::Latin),
        _ => None,
    }
}

/// Whether this is an invisible sign that only changes how letters are joined.
pub(super) const fn is_joiner(c: char) -> bool {
    matches!(c, '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}' | '\u{ad}')
}

/// The value of a decimal digit: ASCII, Devanagari or full width.
pub(super) fn digit(c: char) -> Option<u8> {
    let (zero, last) = match c {
        '0'..='9' => ('0', 9),
        '\u{966}'..='\u{96f}' => ('\u{966}', 9),
        '\u{ff10}'..='\u{ff19}' => ('\u{ff10}', 9),
        _ => return None,
    };
    u8::try_from(u32::from(c) - u32::from(zero)).ok().filter(|value| *value <= last)
}

pub(super) const fn is_devanagari_digit(c: char) -> bool {
    matches!(c, '\u{966}'..='\u{96f}')
}

/// The value of a fraction written as one sign.
pub(super) const fn fraction(c: char) -> Option<f64> {
    Some(match c {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '⅛' => 0.125,
        _ => return None,
    })
}

/// A word in normal form: lower case without accents; Devanagari without nukta, with one sign for a
/// nasal vowel; no joiners, no apostrophes.
pub(super) fn normal_word(word: &str, script: Script) -> String {
    let kept = word.chars().filter(|c| !is_joiner(*c) && apostrophe(*c).is_none());
    match script {
        Script::Latin if word.is_ascii() => kept.map(|c| c.to_ascii_lowercase()).collect(),
        Script::Devanagari if word.chars().all(|c| is_undivided(c) || is_joiner(c)) => {
            kept.map(|c| if c == CANDRABINDU { ANUSVARA } else { c }).collect()
        }
        Script::Latin => {
            kept.nfkd().filter(|c| !matches!(c, '\u{300}'..='\u{36f}')).flat_map(char::to_lowercase).collect()
        }
        Script::Devanagari => {
            kept.nfd().filter(|c| *c != NUKTA).map(|c| if c == CANDRABINDU { ANUSVARA } else { c }).collect()
        }
        _ => word.nfkc().flat_map(char::to_lowercase).collect(),
    }
}

/// Whether a letter or sign of Devanagari is the same in every normal form, wherever it stands.
const fn is_undivided(c: char) -> bool {
    matches!(c, '\u{900}'..='\u{97f}')
        && !matches!(c, '\u{929}' | '\u{931}' | '\u{934}' | NUKTA | '\u{951}'..='\u{954}' | '\u{958}'..='\u{95f}')
}

/// One sign in normal form: one kind of quote, of dash, of times sign.
pub(super) fn normal_sign(c: char) -> String {
    match c {
        '“' | '”' | '″' | '〃' | '„' => "\"".into(),
        '×' | '✕' | '✖' | '*' => "x".into(),
        '–' | '—' | '−' | '‐' | '‑' | '~' => "-".into(),
        '²' => "2".into(),
        '\u{b0}' | 'º' | '˚' => "°".into(),
        '।' | '॥' => ".".into(),
        '⁄' | '∕' => "/".into(),
        _ if apostrophe(c).is_some() => "'".into(),
        _ => c.nfkc().flat_map(char::to_lowercase).collect(),
    }
}

/// An apostrophe, quote or prime, in its plain form.
pub(super) const fn apostrophe(c: char) -> Option<char> {
    if matches!(c, '\'' | '‘' | '’' | '′' | '`' | '´' | 'ʼ') { Some('\'') } else { None }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(word: &str, script: Script, expected: &str) {
        assert_eq!(normal_word(word, script), expected, "{word}");
    }

    #[test]
    fn normal_form() {
        case("Don’t", Script::Latin, "dont");
        case("pālak", Script::Latin, "palak");
        case("कड\u{93c}वा", Script::Devanagari, "कडवा");
        case("क\u{95c}वा", Script::Devanagari, "कडवा");
        case("ज़मीन", Script::Devanagari, "जमीन");
        case("मिलाएँ", Script::Devanagari, "मिलाएं");
        case("क्\u{200d}या", Script::Devanagari, "क्या");
    }

    #[test]
    fn an_undivided_letter_is_its_own_normal_form() {
        let all: Vec<char> = ('\u{900}'..='\u{97f}').filter(|c| is_undivided(*c)).collect();
        assert!(all.len() > 100);
        for a in &all {
            for b in &all {
                assert!([*a, *b].into_iter().nfd().eq([*a, *b]), "{a} {b}");
            }
        }
    }

    #[test]
    fn digits_of_three_scripts() {
        assert_eq!(['7', '७', '７', 'x'].map(digit), [Some(7), Some(7), Some(7), None]);
    }
}
