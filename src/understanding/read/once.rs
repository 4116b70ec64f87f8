//! "I can only come up once a day": the day's water has to be given in one go.

use crate::script::Text;

/// Words that say that there is no more than that.
const ONLY: [&str; 12] = ["only", "just", "hi", "sirf", "bas", "keval", "ही", "सिर्फ", "बस", "केवल", "cant", "can't"];

/// Verbs for coming, being able to or finding the time.
const ABLE: [&str; 58] = [
    "can",
    "able",
    "get",
    "gets",
    "come",
    "comes",
    "go",
    "goes",
    "visit",
    "visits",
    "reach",
    "manage",
    "there",
    "home",
    "time",
    "supply",
    "sakta",
    "sakti",
    "sakte",
    "saku",
    "sakun",
    "pata",
    "pati",
    "pate",
    "paata",
    "paati",
    "paate",
    "paunga",
    "paungi",
    "paoongi",
    "paayenge",
    "aata",
    "aati",
    "aate",
    "aana",
    "jaata",
    "jaati",
    "jaate",
    "jata",
    "jati",
    "jate",
    "milta",
    "hota",
    "सकता",
    "सकती",
    "सकते",
    "पाता",
    "पाती",
    "पाते",
    "पाऊंगा",
    "पाऊंगी",
    "आता",
    "आती",
    "आते",
    "आना",
    "जाती",
    "जाता",
    "मिलता",
];

/// Parts of the day of which one alone is meant: "only in the mornings", "subah hi".
const PART: [&str; 15] = [
    "morning",
    "mornings",
    "evening",
    "evenings",
    "night",
    "nights",
    "subah",
    "subha",
    "sham",
    "shaam",
    "raat",
    "सुबह",
    "शाम",
    "रात",
    "dawn",
];

/// Where one asks whether once will do, or how often, nothing is told.
const ASKED: [&str; 13] =
    ["or", "twice", "enough", "often", "times", "ya", "kafi", "kaafi", "bahut", "या", "काफी", "दोबार", "dobara"];

/// Whether a message tells that its writer can water once a day and no more.
pub(super) fn is_told(text: &Text) -> bool {
    let words: Vec<&str> = (0..text.tokens.len()).map(|at| text.normal(at)).collect();
    let has = |list: &[&str]| words.iter().any(|word| list.contains(word));
    // "Kya din mein ek hi baar de sakte hain" asks leave, and "can I water once a day" too.
    let leave = words.first().is_some_and(|word| matches!(*word, "can" | "should" | "is" | "kya" | "क्या" | "shall"));
    if has(&ASKED) || leave {
        return false;
    }
    let once = words.windows(3).any(|three| {
        matches!(three, ["once", "a" | "every" | "each" | "per", "day"] | ["one", "time", "daily"])
            || matches!(three, ["ek", "hi", "baar" | "bar" | "time" | "dafa"] | ["एक", "ही", "बार" | "समय" | "दफा"])
            || matches!(three, ["ek", "baar" | "bar", "hi"] | ["एक", "बार", "ही"])
            || matches!(three, ["sirf" | "bas" | "keval", "ek", "baar" | "bar" | "time"])
            || matches!(three, ["सिर्फ" | "बस" | "केवल", "एक", "बार" | "समय"])
    }) || words.windows(2).any(|two| matches!(two, ["once", "daily"]));
    let able = has(&ABLE);
    able && (once || only_a_part(&words))
}

/// "Only in the mornings", "sirf subah", "subah hi".
fn only_a_part(words: &[&str]) -> bool {
    /// So many words may stand between: "only come in the morning".
    const NEAR: usize = 5;
    let part = |at: &usize| words.get(*at).is_some_and(|word| PART.contains(word));
    let parts: Vec<usize> = (0..words.len()).filter(part).collect();
    let [at] = parts.as_slice() else { return false };
    let only = |place: usize| words.get(place).is_some_and(|word| ONLY.contains(word));
    let before =
        (at.saturating_sub(NEAR)..*at).any(|place| only(place) && !matches!(words.get(place), Some(&("hi" | "ही"))));
    let after = (at + 1..=at + 2).any(|place| matches!(words.get(place), Some(&("hi" | "ही" | "only"))));
    before || after
}
