//! Which of the three ways of writing a text uses.

use super::token::{Script, Token};
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::sync::LazyLock;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
pub enum Language {
    /// English.
    #[default]
    #[serde(rename = "en")]
    En,
    /// Hindi in Devanagari.
    #[serde(rename = "hi")]
    Hi,
    /// Hindi in Latin letters.
    #[serde(rename = "hi-Latn")]
    HiLatn,
}

impl Language {
    /// The tag of BCP 47.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::Hi => "hi",
            Self::HiLatn => "hi-Latn",
        }
    }
}

/// The language of these tokens; English when nothing tells.
///
/// A third of Devanagari words makes a text Hindi, since names and units are often left in Latin
/// letters. Among Latin words, those that only one language has count double, and those that
/// exist in both (`me`, `to`, `the`, `par`) not at all.
#[must_use]
pub fn language(tokens: &[Token]) -> Language {
    language_told(tokens).unwrap_or_default()
}

/// The same; none where nothing tells, or as much for the one as for the other.
#[must_use]
pub fn language_told(tokens: &[Token]) -> Option<Language> {
    let devanagari = tokens.iter().filter(|token| token.script == Script::Devanagari).count();
    let mut latin: Vec<&str> = Vec::new();
    for (place, token) in tokens.iter().enumerate() {
        // After a number an h is an hour; elsewhere it is short for "hai".
        let hour = token.normal == "h" && place > 0 && tokens.get(place - 1).is_some_and(|t| t.number.is_some());
        if token.script == Script::Latin && !hour {
            latin.push(&token.normal);
        }
    }
    if devanagari > 0 && devanagari * 3 >= devanagari + latin.len() {
        return Some(Language::Hi);
    }
    let (mut hindi, mut english) = (0, 0);
    for word in latin {
        let ends = || HINDI_ENDINGS.iter().any(|end| word.len() > 4 && word.ends_with(end));
        let (of_hindi, of_english) = SPEAKS.get(word).copied().unwrap_or_else(|| if ends() { (1, 0) } else { (0, 0) });
        hindi += of_hindi;
        english += of_english;
    }
    match hindi.cmp(&english) {
        Ordering::Greater => Some(Language::HiLatn),
        Ordering::Less => Some(Language::En),
        Ordering::Equal => None,
    }
}

/// How much a word speaks for Hindi and for English; where two lists have it, the first counts.
static SPEAKS: LazyLock<FxHashMap<&str, (u32, u32)>> = LazyLock::new(|| {
    let lists = [(HINDI_NAMES, (1, 0)), (ENGLISH_NAMES, (0, 1)), (ENGLISH, (0, 2)), (HINDI, (2, 0))];
    lists.into_iter().flat_map(|(list, speaks)| list.iter().map(move |word| (*word, speaks))).collect()
});

/// Words of romanised Hindi that are no English words.
#[rustfmt::skip]
const HINDI: &[&str] = &[
    "hai", "hain", "hein", "hu", "hun", "hoon", "ho", "hoga", "hogi", "honge", "hota", "hoti", "hote", "hona",
    "hua", "hui", "hue", "tha", "thi", "kya", "kyu", "kyun", "kyon", "kyunki", "kab", "kaise", "kese", "kaisa",
    "kaisi", "kitna", "kitne", "kitni", "kitta", "kahan", "kaha", "kaun", "kon", "kaunsa", "kaunse", "kaunsi",
    "konsa", "konse", "kisi", "kisko", "kis", "kuch", "kuchh", "koi", "ko", "ka", "ki", "ke", "mein", "mai",
    "mei", "se", "pe", "aur", "ya", "bhi", "nahi", "nahin", "nhi", "nai", "mat", "haan", "han", "ji", "yeh",
    "ye", "woh", "wo", "vo", "iska", "iski", "iske", "uska", "uski", "uske", "unka", "unki", "mera", "meri",
    "mere", "mujhe", "hum", "hame", "humko", "hamare", "hamara", "tum", "aap", "apna", "apni", "apne", "wala",
    "wale", "wali", "vala", "vale", "vali", "kar", "karo", "karu", "karun", "karoon", "karna", "karne", "karni",
    "kare", "karen", "karte", "karta", "karti", "kiya", "kiye", "kr", "kru", "krna", "krte", "karke", "de",
    "den", "du", "dun", "doon", "dena", "dene", "deni", "dete", "diya", "diye", "dedo", "dedu", "raha", "rahe",
    "rahi", "rha", "rhe", "rhi", "gaya", "gayi", "gaye", "gyi", "sakta", "sakte", "sakti", "skta", "skte",
    "skti", "chahiye", "chahie", "chaiye", "chahta", "aaj", "kal", "parso", "parson", "abhi", "ab", "phir",
    "fir", "jab", "tab", "agar", "liye", "liya", "lu", "lun", "lena", "laga", "lagau", "lagana", "lagani",
    "lagane", "lagaya", "lagayi", "lagai", "lagaye", "lagega", "lagegi", "dala", "dali", "dalu", "dalna",
    "daal", "boya", "boyi", "boi", "boye", "bona", "todu", "toda", "todi", "todna", "batao", "bata", "dikhao",
    "bolo", "raat", "subah", "sham", "din", "baar", "kaat", "kaata", "kaati", "kati", "kaate", "tod", "tode",
    "nikla", "nikle", "nikli", "nikala", "nikali", "nikale", "utara", "utari", "utare", "utaara", "utaari", "utaare",
    "daala", "daali", "daale", "dale", "rakha", "rakhi", "rakhe", "baandha", "bandha", "bandhi", "muthi", "mutthi", "adha", "aadha", "aadhi",
    "batayein", "bataye", "bataiye", "batana", "banaya", "banayi", "banaye", "naya", "nayi", "naye",
    "mila", "mili", "gila", "geela", "geeli", "sookha", "sukha", "sookhi", "sukhi", "li", "di", "bhari", "bhara",
];

/// English words that are no words of romanised Hindi.
#[rustfmt::skip]
const ENGLISH: &[&str] = &[
    "i", "a", "an", "and", "of", "in", "on", "at", "for", "with", "from", "by", "it", "its", "this", "that",
    "these", "those", "my", "your", "our", "their", "we", "you", "they", "what", "whats", "when", "whens",
    "where", "which", "who", "why", "how", "much", "many", "often", "long", "far", "does", "did", "is", "are",
    "was", "were", "am", "be", "been", "have", "has", "had", "will", "would", "can", "cant", "could", "should",
    "shall", "shud", "might", "must", "need", "needs", "want", "get", "got", "not", "no", "dont", "isnt",
    "or", "but", "if", "then", "than", "there", "here", "now", "just", "today", "tomorrow", "tmrw", "yesterday",
    "last", "next", "week", "weeks", "day", "days", "month", "ago", "after", "before", "until", "till", "about",
    "abt", "into", "out", "up", "down", "over", "under", "some", "any", "all", "each", "every", "more", "only",
    "too", "very", "please", "pls", "ok", "safe", "put", "sow", "sowed", "sown", "planted", "watered", "picked",
    "sprayed", "fed", "give", "take", "make", "keep", "grow", "looks", "going", "leaves", "first", "as",
];

/// Things with an English name, which may also stand in a Hindi sentence.
#[rustfmt::skip]
const ENGLISH_NAMES: &[&str] = &[
    "seed", "seeds", "tray", "trays", "pot", "pots", "box", "boxes", "bag", "bags", "plant", "plants", "water", "soil",
    "deep", "wide", "leaf", "tomato", "tomatoes", "roof", "mix", "spray", "feed", "sun", "shade", "bed", "beds",
];

/// Things with a Hindi name, which may also stand in an English sentence.
#[rustfmt::skip]
const HINDI_NAMES: &[&str] = &[
    "h", "pani", "paani", "gamla", "gamle", "gamlo", "mitti", "khad", "khaad", "beej", "patte", "patta",
    "patti", "pattiya", "paudha", "paudhe", "podha", "podhe", "fut", "chhat", "chat", "tamatar", "tamater",
    "palak", "mooli", "muli", "methi", "dhaniya", "dhania", "bhindi", "baigan", "baingan", "mirch", "mirchi",
    "lauki", "karela", "kheera", "pudina", "pudine", "tulsi", "tokri", "kyari", "jaali", "jali", "dawai",
    "dawa", "keede", "kide", "phal", "phool", "garmi", "barish", "hafta", "hafte", "mahina", "mahine", "pehle",
    "pahle", "baad", "ek", "teen",
];

/// Endings of Hindi verbs in Latin letters.
const HINDI_ENDINGS: [&str; 12] =
    ["unga", "ungi", "oonga", "oongi", "enge", "engi", "ega", "egi", "kar", "iyan", "iya", "aye"];

#[cfg(test)]
mod tests {
    use super::Language::{En, Hi, HiLatn};
    use super::*;
    use crate::script::Text;

    #[track_caller]
    fn case(text: &str, expected: Language) {
        assert_eq!(Text::read(text).language, expected, "{text}");
    }

    #[test]
    fn tells_the_three_apart() {
        case("give me the hi res one", En);
        case("hi, par for the course", En);
        case("", En);
        case("neem 5 ml", En);
        case("methi seed for 2 trays", En);
        case("mujhe to pata nahi", HiLatn);
        case("gamle me the", HiLatn);
        case("3 fut x 2 fut", HiLatn);
        case("box ke liye pe", HiLatn);
        case("neem spray आज करूँ", Hi);
        case("12 इंच", Hi);
        case("what does खाद mean in this book of yours", En);
    }
}
