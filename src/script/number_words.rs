//! The number words of English, Hindi and romanised Hindi.

use super::hindi_numbers::between_tens;

/// What a word does in a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Role {
    /// A whole number.
    One(f64),
    /// A whole number whose word has another meaning too (`do`: give).
    Weak(f64),
    /// A ten, which may be followed by a unit (`twenty five`).
    Ten(f64),
    /// A number with a fraction (`dedh`: one and a half).
    Mixed(f64),
    /// A part of one (`half`).
    Part(f64),
    /// Such parts of one, counted by the number before it (`three quarters`).
    Share(f64),
    /// To be added to the number that follows, before what multiplies it (`sadhe`: and a half).
    Add(f64),
    /// The same, or this number where none follows (`sava`: and a quarter; one and a quarter).
    AddOr(f64, f64),
    /// Multiplies the number before it (`dozen`, `hundred`).
    Times(f64),
    /// `couple`, after an article.
    Couple,
    /// `a`, which only begins a number (`a dozen`).
    Article,
}

impl Role {
    /// Whether the Hindi word for it is no English word, so that it counts in an English text.
    pub(super) const fn only_hindi(self) -> bool {
        matches!(self, Self::Mixed(_) | Self::Part(_) | Self::Share(_) | Self::Add(_) | Self::AddOr(..))
    }
}

pub(super) fn english(word: &str) -> Option<Role> {
    Some(match word {
        "one" => Role::One(1.0),
        "two" => Role::One(2.0),
        "three" => Role::One(3.0),
        "four" => Role::One(4.0),
        "five" => Role::One(5.0),
        "six" => Role::One(6.0),
        "seven" => Role::One(7.0),
        "eight" => Role::One(8.0),
        "nine" => Role::One(9.0),
        "ten" => Role::One(10.0),
        "eleven" => Role::One(11.0),
        "twelve" => Role::One(12.0),
        "thirteen" => Role::One(13.0),
        "fourteen" => Role::One(14.0),
        "fifteen" => Role::One(15.0),
        "sixteen" => Role::One(16.0),
        "seventeen" => Role::One(17.0),
        "eighteen" => Role::One(18.0),
        "nineteen" => Role::One(19.0),
        "twenty" => Role::Ten(20.0),
        "thirty" => Role::Ten(30.0),
        "forty" | "fourty" => Role::Ten(40.0),
        "fifty" => Role::Ten(50.0),
        "sixty" => Role::Ten(60.0),
        "seventy" => Role::Ten(70.0),
        "eighty" => Role::Ten(80.0),
        "ninety" => Role::Ten(90.0),
        "hundred" => Role::Times(100.0),
        "thousand" => Role::Times(1000.0),
        "dozen" => Role::Times(12.0),
        "half" => Role::Part(0.5),
        "quarter" => Role::Part(0.25),
        "quarters" | "fourths" => Role::Share(0.25),
        "third" | "thirds" => Role::Share(1.0 / 3.0),
        "couple" => Role::Couple,
        "a" | "an" => Role::Article,
        _ => return None,
    })
}

/// Devanagari words in normal form (no nukta) and their usual spellings in Latin letters.
pub(super) fn hindi(word: &str) -> Option<Role> {
    Some(match word {
        "एक" | "ek" => Role::One(1.0),
        "दो" | "do" => Role::Weak(2.0),
        "तीन" | "teen" => Role::One(3.0),
        "tin" => Role::Weak(3.0),
        "चार" | "char" | "chaar" => Role::One(4.0),
        "पांच" | "पाच" | "paanch" | "panch" | "pach" => Role::One(5.0),
        "छह" | "छः" | "छे" | "छै" | "chhe" | "chhah" | "chheh" | "chah" => Role::One(6.0),
        "che" => Role::Weak(6.0),
        "सात" => Role::One(7.0),
        "saat" | "sat" => Role::Weak(7.0),
        "आठ" | "aath" | "aat" => Role::One(8.0),
        "नौ" | "nau" => Role::One(9.0),
        "दस" | "das" | "dus" => Role::One(10.0),
        "ग्यारह" | "gyarah" | "gyara" => Role::One(11.0),
        "बारह" | "barah" | "baarah" => Role::One(12.0),
        "bara" => Role::Weak(12.0),
        "तेरह" | "terah" => Role::One(13.0),
        "चौदह" | "chaudah" => Role::One(14.0),
        "पंद्रह" | "पन्द्रह" | "पंदरह" | "pandrah" | "pandra" => Role::One(15.0),
        "सोलह" | "solah" => Role::One(16.0),
        "सत्रह" | "satrah" => Role::One(17.0),
        "अठारह" | "atharah" | "athara" => Role::One(18.0),
        "उन्नीस" | "unnis" => Role::One(19.0),
        "बीस" | "bees" | "bis" => Role::One(20.0),
        "पच्चीस" | "पचीस" | "pachchis" | "pachis" | "pacchis" | "pachees" | "pachchees" => {
            Role::One(25.0)
        }
        "तीस" | "tees" => Role::One(30.0),
        "tis" => Role::Weak(30.0),
        "पैंतीस" | "paintis" | "paintees" | "pentis" => Role::One(35.0),
        "चालीस" | "chalis" | "chaalis" | "chalees" => Role::One(40.0),
        "पैंतालीस" | "paintalis" | "paintaalis" | "pentalis" => Role::One(45.0),
        "पचास" | "pachas" | "pachaas" => Role::One(50.0),
        "साठ" => Role::One(60.0),
        "saath" => Role::Weak(60.0),
        "सत्तर" | "sattar" | "satar" => Role::One(70.0),
        "पचहत्तर" | "पिचहत्तर" | "pachhattar" | "pachattar" | "pachhatar" | "pichhattar" => {
            Role::One(75.0)
        }
        "अस्सी" | "assi" => Role::One(80.0),
        "नब्बे" | "nabbe" => Role::One(90.0),
        "सौ" | "sau" | "sou" => Role::Times(100.0),
        "हजार" | "hazar" | "hajar" | "hazaar" | "hajaar" => Role::Times(1000.0),
        "दर्जन" | "darjan" => Role::Times(12.0),
        "डेढ" | "डेड" | "dedh" | "derh" | "dhedh" | "ded" => Role::Mixed(1.5),
        "ढाई" | "अढाई" | "dhai" | "dhaai" | "adhai" | "dhaee" | "dhayi" => Role::Mixed(2.5),
        "आधा" | "आधी" | "आधे" | "aadha" | "adha" | "aadhi" | "adhi" | "aadhe" | "adhe" => {
            Role::Part(0.5)
        }
        "चौथाई" | "chauthai" | "chothai" => Role::Share(0.25),
        "तिहाई" | "tihai" => Role::Share(1.0 / 3.0),
        "पाव" | "paav" | "pav" => Role::Part(0.25),
        "पौन" | "पौना" | "paun" | "pauna" => Role::Part(0.75),
        "साढे" | "sadhe" | "saadhe" | "sarhe" | "saarhe" | "saade" | "sade" => Role::Add(0.5),
        "सवा" | "sava" | "sawa" | "savaa" | "sawaa" | "swa" => Role::AddOr(0.25, 1.25),
        "पौने" | "paune" | "pone" => Role::AddOr(-0.25, 0.75),
        "सैकडा" | "saikda" => Role::Times(100.0),
        // A gourd has fifty-six in its name.
        "छप्पन" | "chhappan" | "chappan" => Role::Weak(56.0),
        _ => return between_tens(word).map(Role::One),
    })
}
