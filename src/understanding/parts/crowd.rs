//! "Water for 4 okra in that pot, and is 4 even sensible": whether so many plants fit, asked beside something else of them.

use crate::knowledge::Kind;
use crate::quantity::UnitOf;
use crate::script::{Text, numbers};
use crate::understanding::reading::Reading;

/// Words that speak of too many plants.
const CROWDED: [&str; 24] = [
    "many",
    "crowded",
    "overcrowded",
    "sensible",
    "realistic",
    "reasonable",
    "cramped",
    "squeezed",
    "fit",
    "zyada",
    "jyada",
    "zyda",
    "jada",
    "ज्यादा",
    "bheed",
    "भीड",
    "samayenge",
    "समाएंगे",
    "tang",
    "तंग",
    "crowd",
    "ghane",
    "घने",
    "overdoing",
];

/// Words that ask whether it will do, beside the number itself.
pub(in crate::understanding) const WILL_DO: [&str; 18] = [
    "ok",
    "okay",
    "fine",
    "theek",
    "thik",
    "ठीक",
    "right",
    "sahi",
    "सही",
    "possible",
    "alright",
    "enough",
    "chalega",
    "चलेगा",
    "chalenge",
    "चलेंगे",
    "good",
    "wise",
];

/// The second part as a question of how many fit, where it asks that of the plants counted in the first.
pub(super) fn as_too_many(first: &Reading, second: Reading, text: &str) -> Reading {
    /// The number and such a word leave little else (judgement).
    const SURE: f64 = 0.85;
    let Some(count) = first.count.filter(|count| *count >= 2.0) else { return second };
    let summed = matches!(first.kind, Kind::Water | Kind::Load | Kind::Mix | Kind::Feed | Kind::Harvest);
    let own = !second.crops.is_empty() && second.crops != first.crops
        || !second.measures.is_empty()
        || second.quantities.iter().any(|said| said.unit.measures() != UnitOf::Length)
        || second.did.is_some();
    if !summed || first.crops.is_empty() || own {
        return second;
    }
    let read = Text::read_as(text, first.language);
    let says = |list: &[&str]| read.tokens.iter().any(|token| list.contains(&token.normal.as_str()));
    let told: Vec<f64> = numbers(&read).into_iter().map(|number| number.value).collect();
    let same = told.iter().any(|number| (number - count).abs() < f64::EPSILON);
    let asked = same && (says(&CROWDED) || says(&WILL_DO)) || told.is_empty() && says(&CROWDED) && few(&read);
    if !asked {
        return second;
    }
    Reading { kind: Kind::Space, sureness: SURE, asks: true, count: Some(count), perhaps: None, ..second }
}

/// "Is that too many": so few words name nothing else.
fn few(text: &Text) -> bool {
    const FEW: usize = 8;
    text.tokens.iter().filter(|token| token.is_word()).count() <= FEW
}
