//! The sound of a word, whichever way it is spelled.
//!
//! Both scripts are turned into one string of plain sounds, and the same rules then drop what
//! spelling in Latin letters leaves open: the length of a vowel, the breath after a consonant, a
//! short or long `a` within a word, a doubled letter, the nasal end of a word.

use super::letters::{letter_script, normal_word};
use super::token::Script;
use std::sync::LazyLock;

/// A key that is the same for all usual spellings of one word, in Latin letters or Devanagari.
#[must_use]
pub fn sound_key(word: &str) -> String {
    let script = word.chars().find_map(letter_script).unwrap_or(Script::Other);
    key_of(&normal_word(word, script), script)
}

/// The same of a word in normal form, whose script is known.
pub(super) fn key_of(normal: &str, script: Script) -> String {
    let sounds = match script {
        Script::Devanagari => devanagari_sounds(normal),
        Script::Latin => latin_sounds(normal),
        _ => return normal.to_owned(),
    };
    let key = fold(sounds);
    if key.is_empty() { normal.to_owned() } else { key }
}

/// A long `o` that was written `au`: a nasal after it is a consonant of its own.
const AU: char = 'O';

fn devanagari_sounds(word: &str) -> Vec<char> {
    let mut sounds = Vec::with_capacity(word.len());
    // Whether the last consonant still waits for its vowel.
    let mut open = false;
    let chars: Vec<char> = word.chars().collect();
    for (place, &c) in chars.iter().enumerate() {
        if let Some(consonant) = consonant(c) {
            if open {
                sounds.push('a');
            }
            let joined = place > 1 && chars.get(place - 1) == Some(&'\u{94d}');
            if c == 'ञ' && joined && chars.get(place - 2) == Some(&'ज') {
                sounds.pop();
                sounds.extend(['g', 'y']);
            } else {
                sounds.push(consonant);
            }
            open = true;
            continue;
        }
        let vowel: &[char] = match c {
            'अ' | 'आ' | 'ा' => &['a'],
            'इ' | 'ई' | 'ि' | 'ी' => &['i'],
            'उ' | 'ऊ' | 'ु' | 'ू' => &['u'],
            'ए' | 'ऐ' | 'े' | 'ै' | 'ऍ' | 'ॅ' | 'ऎ' | 'ॆ' => &['e'],
            'ओ' | 'ऑ' | 'ो' | 'ॉ' | 'ऒ' | 'ॊ' => &['o'],
            'औ' | 'ौ' => &[AU],
            'ऋ' | 'ृ' => &['r', 'i'],
            _ => &[],
        };
        let independent = matches!(c, 'अ'..='औ');
        if open && (independent || c == '\u{902}') {
            sounds.push('a');
        }
        sounds.extend(vowel);
        if c == '\u{902}' && chars.get(place + 1).is_some() {
            sounds.push('n');
        }
        open = false;
    }
    // The vowel that the last consonant carries is not spoken, but where it is the only one.
    if open && sounds.len() == 1 {
        sounds.push('a');
    }
    sounds
}

const fn consonant(c: char) -> Option<char> {
    Some(match c {
        'क' | 'ख' => 'k',
        'ग' | 'घ' => 'g',
        'ङ' | 'ञ' | 'ण' | 'न' => 'n',
        'च' | 'छ' => 'c',
        'ज' | 'झ' => 'j',
        'ट' | 'ठ' | 'त' | 'थ' => 't',
        'ड' | 'ढ' | 'द' | 'ध' => 'd',
        'प' => 'p',
        'फ' => 'f',
        'ब' | 'भ' => 'b',
        'म' => 'm',
        'य' => 'y',
        'र' => 'r',
        'ल' | 'ळ' => 'l',
        'व' => 'v',
        'श' | 'ष' | 'स' => 's',
        'ह' => 'h',
        _ => return None,
    })
}

/// Latin spellings of a sound that begin with a letter of the alphabet, by that letter: most letters begin few.
static BY_LETTER: LazyLock<[Vec<(&str, &str)>; 26]> = LazyLock::new(|| {
    std::array::from_fn(|letter| {
        let begins = |spelled: &str| spelled.bytes().next().map(|first| usize::from(first - b'a')) == Some(letter);
        SPELLINGS.iter().copied().filter(|(spelled, _)| begins(spelled)).collect()
    })
});

/// Latin spellings of a sound, the longer ones first.
#[rustfmt::skip]
const SPELLINGS: &[(&str, &str)] = &[
    ("ksh", "ks"), ("chh", "c"), ("cch", "c"), ("sch", "sk"), ("jny", "gy"), ("tth", "t"), ("ddh", "d"),
    ("aai", "ai"), ("aau", "au"), ("aa", "a"), ("ee", "i"), ("oo", "u"), ("ii", "i"), ("uu", "u"), ("ei", "e"),
    ("ou", "O"), ("au", "O"), ("ai", "e"), ("ch", "c"), ("sh", "s"), ("kh", "k"), ("gh", "g"), ("jh", "j"),
    ("th", "t"), ("dh", "d"), ("ph", "f"), ("bh", "b"), ("ck", "k"), ("qu", "kv"), ("ow", "o"), ("x", "ks"),
    ("z", "j"), ("w", "v"), ("q", "k"), ("c", "k"),
];

fn latin_sounds(word: &str) -> Vec<char> {
    let mut rest: String = word.chars().filter(char::is_ascii_lowercase).collect();
    for (ending, plain) in
        [("tre", "tr"), ("er", "ar"), ("mein", "me"), ("main", "me"), ("iyan", "iya"), ("iyaan", "iya")]
    {
        if rest.len() >= ending.len() && rest.ends_with(ending) && (rest.len() > 3 || ending.len() > 3) {
            rest.truncate(rest.len() - ending.len());
            rest.push_str(plain);
            break;
        }
    }
    if ["nahin", "yahan", "kahan", "wahan", "vahan", "haan"].contains(&rest.as_str()) {
        rest.pop();
    }
    let mut sounds = Vec::with_capacity(rest.len() + 1);
    let mut rest = rest.as_str();
    while let Some(first) = rest.chars().next() {
        let place = usize::try_from(u32::from(first).wrapping_sub(u32::from('a'))).unwrap_or(usize::MAX);
        let (spelled, sound) = BY_LETTER
            .get(place)
            .into_iter()
            .flatten()
            .find(|(spelled, _)| rest.starts_with(spelled))
            .map_or((rest.get(..1).unwrap_or(rest), None), |(spelled, sound)| (*spelled, Some(*sound)));
        match sound {
            Some(sound) => sounds.extend(sound.chars()),
            None => sounds.push(first),
        }
        rest = rest.get(spelled.len()..).unwrap_or_default();
    }
    let after_consonant = sounds.len() > 1 && sounds.iter().rev().nth(1).is_some_and(|c| !is_vowel(*c));
    if after_consonant && let Some(last @ 'y') = sounds.last_mut() {
        *last = 'i';
    }
    sounds
}

const fn is_vowel(c: char) -> bool {
    matches!(c, 'a' | 'e' | 'i' | 'o' | 'u' | AU)
}

/// The rules that hold for both scripts.
fn fold(mut sounds: Vec<char>) -> String {
    sounds.dedup();
    let sounds = join_vowels(&sounds);
    let sounds = soften(&sounds);
    let last = sounds.len().saturating_sub(1);
    let mut key = String::with_capacity(sounds.len());
    for (place, &c) in sounds.iter().enumerate() {
        match c {
            'a' if place != 0 && place != last => {}
            AU => key.push('o'),
            _ => key.push(c),
        }
    }
    key
}

/// Vowels that meet: `a-i` is `e`, `a-u` is `o`, a glide between two vowels is not heard.
fn join_vowels(sounds: &[char]) -> Vec<char> {
    let mut out: Vec<char> = Vec::with_capacity(sounds.len() + 1);
    for (place, &c) in sounds.iter().enumerate() {
        let next = sounds.get(place + 1).copied();
        match (out.last().copied(), c, next) {
            (Some('i' | 'e'), 'y', Some('a' | 'e' | 'i' | 'o' | 'u' | AU)) => {}
            (Some('a' | 'o' | AU), 'y', Some('i' | 'e')) => {}
            (Some('a'), 'y', None) => {
                out.pop();
                out.push('e');
            }
            (Some('a'), 'y', Some(next)) if !is_vowel(next) => {
                out.pop();
                out.push('e');
            }
            (Some('a'), 'i', _) => {
                out.pop();
                out.push('e');
            }
            (Some('a'), 'u', _) => {
                out.pop();
                out.push(AU);
            }
            (Some('u'), 'a', _) if out.len() > 1 => {
                out.pop();
                out.extend(['v', 'a']);
            }
            _ => out.push(c),
        }
    }
    out.dedup();
    out
}

/// Sounds that change beside others, and the end of the word.
fn soften(sounds: &[char]) -> Vec<char> {
    let mut out: Vec<char> = Vec::with_capacity(sounds.len() + 1);
    for (place, &c) in sounds.iter().enumerate() {
        let next = sounds.get(place + 1).copied();
        let after = sounds.get(place + 2).copied();
        let consonant_after = after.is_some_and(|c| !is_vowel(c) && c != 'y');
        match (c, next) {
            ('m', Some('p' | 'b' | 'f')) => out.push('n'),
            ('e', Some('h')) => out.push('a'),
            ('e', Some('n' | 'm')) if consonant_after => out.push('i'),
            _ => out.push(c),
        }
    }
    out.dedup();
    if out.len() > 2 && out.ends_with(&['h']) {
        out.pop();
    }
    if out.len() > 2 && matches!(out.as_slice(), [.., 'o' | 'u' | 'e', 'n']) {
        out.pop();
    }
    out
}

#[cfg(test)]
mod tests {
    use super::sound_key;

    #[track_caller]
    fn same(words: &[&str]) {
        let keys: Vec<String> = words.iter().map(|word| sound_key(word)).collect();
        assert!(keys.windows(2).all(|pair| pair[0] == pair[1]), "{words:?} {keys:?}");
    }

    #[track_caller]
    fn apart(words: &[&str]) {
        let mut keys: Vec<String> = words.iter().map(|word| sound_key(word)).collect();
        keys.sort();
        keys.dedup();
        assert_eq!(keys.len(), words.len(), "{words:?} {keys:?}");
    }

    #[test]
    fn one_word_many_spellings() {
        same(&["tamatar", "tamater", "tamaatar", "टमाटर"]);
        same(&["dhaniya", "dhania", "dhaniyaa", "धनिया"]);
        same(&["palak", "paalak", "पालक"]);
        same(&["mooli", "muli", "moolee", "मूली"]);
        same(&["bhindi", "bhendi", "bhindee", "भिंडी", "भिण्डी"]);
        same(&["paani", "pani", "पानी"]);
        same(&["phool", "fool", "phul", "फूल"]);
        same(&["gobhi", "gobi", "गोभी"]);
        same(&["mirch", "mirchh", "मिर्च"]);
        same(&["pudina", "pudeena", "पुदीना"]);
        same(&["gamla", "gamlaa", "गमला"]);
        same(&["shanivar", "shaniwar", "shanivaar", "शनिवार"]);
        same(&["pyaz", "pyaaj", "pyaaz", "प्याज़", "प्याज"]);
        same(&["chhat", "chat", "छत"]);
        same(&["paudha", "podha", "poudha", "पौधा"]);
        same(&["paudhon", "paudho", "पौधों"]);
        same(&["mein", "me", "में"]);
        same(&["chahiye", "chahie", "चाहिए", "चाहिये"]);
        same(&["pehle", "pahle", "पहले"]);
        same(&["boyi", "boi", "बोई"]);
        same(&["katai", "kataai", "कटाई"]);
        same(&["gwar", "guar", "gawar", "ग्वार"]);
        same(&["krishi", "कृषि"]);
        same(&["kshetra", "kshetraa"]);
        same(&["acha", "achha", "accha", "अच्छा"]);
        same(&["spray", "स्प्रे"]);
        same(&["litre", "liter", "लीटर"]);
        same(&["box", "बॉक्स"]);
        same(&["subah", "subha", "suba", "सुबह"]);
        same(&["kampost", "कम्पोस्ट", "कंपोस्ट"]);
        same(&["lahsun", "lehsun", "लहसुन"]);
        same(&["karna", "करना"]);
        same(&["sakte", "skte", "सकते"]);
        same(&["nahi", "nahin", "नहीं"]);
    }

    #[test]
    fn words_that_must_not_meet() {
        apart(&["mooli", "mali", "मेला"]);
        apart(&["methi", "mitti"]);
        apart(&["tel", "til", "tal"]);
        apart(&["kela", "karela", "kheera"]);
        apart(&["lauki", "lal"]);
        apart(&["matar", "tamatar"]);
        apart(&["phal", "pal"]);
    }

    #[test]
    fn no_word_has_no_key() {
        for word in ["a", "न", "ह", "h", "12", "🌱"] {
            assert!(!sound_key(word).is_empty(), "{word}");
        }
    }
}
