//! What may ail a plant: troubles weighed by what is seen, by crop, weather and the work done.
//!
//! A naive Bayes sum over hand-written likelihoods ("nearly always", "often", …). The numbers behind those words,
//! and what crop and weather count, are judgements (no source); the claim is an order of likeliness, not a rate.

use crate::knowledge::{Knowledge, Often, Spell, Symptom, Trouble};
use std::collections::{BTreeMap, BTreeSet};

/// What is known of the case.
#[derive(Debug, Clone, Default)]
pub struct Case {
    /// Ids of signs that are seen.
    pub seen: Vec<String>,
    /// Ids of signs that were looked for and are not there.
    pub not_seen: Vec<String>,
    /// The crops it is on; none: unknown.
    pub crops: Vec<String>,
    /// How far what was described is like each trouble, 0 to 1, by its id.
    pub like: BTreeMap<String, f64>,
    /// It is on a sprouting tray.
    pub on_tray: bool,
    /// Troubles that were named by the person.
    pub named: Vec<String>,
    /// What the weather has been like; none: unknown.
    pub weather: Option<Vec<Spell>>,
    /// Jobs done in the last two weeks, and in the last five.
    pub done_lately: BTreeSet<String>,
    pub done_in_weeks: BTreeSet<String>,
    /// Whether the bed's records are long enough to say what was left undone.
    pub has_records: bool,
}

/// One trouble with its weight among all, 0 to 1.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause<'a> {
    pub trouble: &'a Trouble,
    pub weight: f64,
}

/// A sign where nothing of the kind is expected.
const BY_CHANCE: f64 = 0.03;
/// A general sign ("leaves yellow") told where the trouble shows a finer one, or the other way round.
const FINER: f64 = 0.8;
const COARSER: f64 = 0.35;
/// A sign that speaks against a trouble leaves so much of its weight.
const AGAINST: f64 = 0.12;
/// A crop the trouble is typical of, one that it is not typical of.
const TYPICAL_CROP: f64 = 3.0;
const OTHER_CROP: f64 = 0.25;
/// Another crop than the only one that has it.
const NOT_ITS_CROP: f64 = 0.03;
const FITTING_WEATHER: f64 = 1.6;
const OTHER_WEATHER: f64 = 0.5;
const AFTER_WORK: f64 = 2.5;
const WITHOUT_WORK: f64 = 1.6;
const NAMED: f64 = 40.0;
/// Named by whoever saw it at work, as one sees a monkey.
const SEEN_AT_WORK: f64 = 2_000.0;
/// What is not met on trays.
const NOT_ON_TRAYS: f64 = 0.05;
/// What is none of the troubles here, and how well it explains any one sign.
const SOMETHING_ELSE: f64 = 1.0;
const ELSE_SHOWS: f64 = 0.12;

/// What a description counts that is wholly like a trouble, as a power of e; and how like something else it may be.
const LIKENESS: f64 = 5.0;
const ELSE_LIKE: f64 = 0.25;

const fn likelihood(often: Often) -> f64 {
    match often {
        Often::NearlyAlways => 0.92,
        Often::Often => 0.6,
        Often::Sometimes => 0.3,
        Often::Seldom => 0.1,
    }
}

/// How likely a trouble shows a sign, 0 to 1.
fn shows(trouble: &Trouble, sign: &str, known: &Knowledge) -> f64 {
    let symptom = known.signs.get(sign);
    let general = symptom.and_then(|symptom| symptom.is_a.as_deref());
    trouble
        .evidence
        .iter()
        .map(|evidence| {
            let often = likelihood(evidence.seen);
            let kind_of = known.signs.get(&evidence.sign).and_then(|other: &Symptom| other.is_a.as_deref());
            if evidence.sign == sign {
                often
            } else if kind_of == Some(sign) {
                often * FINER
            } else if general == Some(evidence.sign.as_str()) {
                often * COARSER
            } else {
                0.0
            }
        })
        .fold(BY_CHANCE, f64::max)
}

fn weight(trouble: &Trouble, case: &Case, known: &Knowledge) -> f64 {
    let mut weight = 1.0;
    for sign in &case.seen {
        weight *= shows(trouble, sign, known);
        if trouble.against.contains(sign) {
            weight *= AGAINST;
        }
    }
    for sign in &case.not_seen {
        weight *= 1.0 - shows(trouble, sign, known);
    }
    if !case.crops.is_empty() && !trouble.crops.is_empty() {
        let typical = case.crops.iter().any(|crop| trouble.crops.contains(crop));
        weight *= match (typical, trouble.crops.len()) {
            (true, _) => TYPICAL_CROP,
            (false, 1) => NOT_ITS_CROP,
            (false, _) => OTHER_CROP,
        };
    }
    if let Some(weather) = case.weather.as_ref().filter(|_| !trouble.weather.is_empty()) {
        let fits = trouble.weather.iter().any(|spell| weather.contains(spell));
        weight *= if fits { FITTING_WEATHER } else { OTHER_WEATHER };
    }
    if trouble.after.iter().any(|job| case.done_lately.contains(job)) {
        weight *= AFTER_WORK;
    }
    if case.has_records && trouble.without.iter().any(|job| !case.done_in_weeks.contains(job)) {
        weight *= WITHOUT_WORK;
    }
    if case.on_tray && !trouble.trays {
        weight *= NOT_ON_TRAYS;
    }
    if !case.like.is_empty() {
        weight *= libm::exp(LIKENESS * case.like.get(&trouble.id).copied().unwrap_or_default());
    }
    let drawn_by_another = case.named.iter().any(|named| trouble.comes_with.contains(named));
    if case.named.contains(&trouble.id) && !drawn_by_another {
        weight *= if trouble.plain_to_see { SEEN_AT_WORK } else { NAMED };
    }
    weight
}

/// Whether what was told speaks for a trouble at all: it shows one of the signs, or is named, or is nearly as like the
/// description as the likest. What only crop and weather speak for is no cause to tell.
#[must_use]
pub fn is_touched(trouble: &Trouble, case: &Case, known: &Knowledge) -> bool {
    /// So near the likest, beside signs and without any (judgement).
    const NEARLY: f64 = 0.8;
    const HALF: f64 = 0.5;
    let shown = || case.seen.iter().any(|sign| shows(trouble, sign, known) > BY_CHANCE);
    let best = case.like.values().copied().fold(0.0, f64::max);
    let share = if case.seen.is_empty() { HALF } else { NEARLY };
    let like = || case.like.get(&trouble.id).is_some_and(|like| *like >= share * best);
    let nothing = case.seen.is_empty() && case.like.is_empty();
    nothing || case.named.contains(&trouble.id) || shown() || like()
}

/// Whether a sign that is seen is the mark of a trouble: often seen there, and of few others.
#[must_use]
pub fn bears_its_mark(trouble: &Trouble, case: &Case, known: &Knowledge) -> bool {
    /// So many other troubles may often show it too (judgement).
    const FEW: usize = 2;
    let often = likelihood(Often::Often);
    let marks = |of: &Trouble, sign: &str| shows(of, sign, known) >= often;
    let few = |sign: &str| {
        let others = known.troubles.values().filter(|other| other.id != trouble.id && marks(other, sign));
        others.take(FEW + 1).count() <= FEW
    };
    case.seen.iter().any(|sign| marks(trouble, sign) && few(sign))
}

/// A lesser weight is not worth telling.
pub const WORTH_TELLING: f64 = 0.02;

/// All troubles with their weights, likeliest first. The weights and that of something else add up to 1.
#[must_use]
pub fn causes<'a>(case: &Case, known: &'a Knowledge) -> Vec<Cause<'a>> {
    let mut all: Vec<Cause<'a>> =
        known.troubles.values().map(|trouble| Cause { trouble, weight: weight(trouble, case, known) }).collect();
    let like = if case.like.is_empty() { 1.0 } else { libm::exp(LIKENESS * ELSE_LIKE) };
    let other = SOMETHING_ELSE
        * like
        * case.seen.iter().map(|_| ELSE_SHOWS).product::<f64>()
        * case.not_seen.iter().map(|_| 1.0 - ELSE_SHOWS).product::<f64>();
    let sum: f64 = all.iter().map(|cause| cause.weight).sum::<f64>() + other;
    if sum <= 0.0 {
        return Vec::new();
    }
    all.iter_mut().for_each(|cause| cause.weight /= sum);
    all.sort_by(|a, b| b.weight.total_cmp(&a.weight).then_with(|| a.trouble.id.cmp(&b.trouble.id)));
    all
}

/// The signs that part the likeliest causes best, at most `most` of them: each the mark of another cause. A sign
/// is weighed by how much asking for it is expected to lessen the doubt (entropy of the weights).
#[must_use]
pub fn telling_signs(case: &Case, causes: &[Cause<'_>], known: &Knowledge, most: usize) -> Vec<String> {
    const CANDIDATES: usize = 6;
    let leading = causes.get(..causes.len().min(CANDIDATES)).unwrap_or_default();
    let open = |sign: &String| {
        !case.seen.contains(sign)
            && !case.not_seen.contains(sign)
            // What is only the wider word for a sign already seen tells nothing.
            && !case.seen.iter().any(|seen| {
                known.signs.get(seen).and_then(|symptom| symptom.is_a.as_deref()) == Some(sign.as_str())
            })
    };
    let all: BTreeSet<&String> =
        leading.iter().flat_map(|cause| cause.trouble.evidence.iter().map(|evidence| &evidence.sign)).collect();
    let mut gains: Vec<(f64, &str, &String)> = all
        .into_iter()
        .filter(|sign| open(sign) && known.signs.contains_key(*sign))
        .map(|sign| {
            let share = |cause: &Cause<'_>| shows(cause.trouble, sign, known);
            let shown: Vec<f64> = leading.iter().map(|cause| cause.weight * share(cause)).collect();
            let hidden: Vec<f64> = leading.iter().map(|cause| cause.weight * (1.0 - share(cause))).collect();
            let before: Vec<f64> = leading.iter().map(|cause| cause.weight).collect();
            let (p, q) = (shown.iter().sum::<f64>(), hidden.iter().sum::<f64>());
            let gain = entropy(&before) - (p * entropy(&shown) + q * entropy(&hidden)) / (p + q).max(1e-9);
            let mark = leading.iter().zip(&shown).max_by(|a, b| a.1.total_cmp(b.1));
            (gain, mark.map_or("", |(cause, _)| cause.trouble.id.as_str()), sign)
        })
        .collect();
    gains.sort_by(|a, b| b.0.total_cmp(&a.0).then_with(|| a.2.cmp(b.2)));
    let mut marks = BTreeSet::new();
    gains
        .into_iter()
        .filter(|(gain, mark, _)| *gain > 0.0 && marks.insert(*mark))
        .take(most)
        .map(|(_, _, sign)| sign.clone())
        .collect()
}

/// The wide signs to begin with, where nothing was described yet: each the mark of many troubles, the next ones of
/// those that the ones before leave out.
#[must_use]
pub fn first_signs(causes: &[Cause<'_>], known: &Knowledge, most: usize) -> Vec<String> {
    let mut open: Vec<(f64, &Trouble)> = causes.iter().map(|cause| (cause.weight, cause.trouble)).collect();
    let mut chosen: Vec<String> = Vec::new();
    for _ in 0..most {
        let covers =
            |sign: &str| open.iter().map(|(weight, trouble)| weight * shows(trouble, sign, known)).sum::<f64>();
        let wide = known.signs.values().filter(|sign| sign.is_a.is_none() && !chosen.contains(&sign.id));
        let best = wide.max_by(|a, b| covers(&a.id).total_cmp(&covers(&b.id)));
        let Some(best) = best else { break };
        for (weight, trouble) in &mut open {
            *weight *= 1.0 - shows(trouble, &best.id, known);
        }
        chosen.push(best.id.clone());
    }
    chosen
}

/// Shannon's entropy of weights that need not add up to 1, in nats.
fn entropy(weights: &[f64]) -> f64 {
    let sum: f64 = weights.iter().sum();
    let shares = weights.iter().map(|weight| weight / sum.max(1e-12)).filter(|share| *share > 0.0);
    shares.map(|share| -share * libm::log(share)).sum()
}

/// What kinds of weather these days are: the means of their highs (°C) and of their humidity (0 to 1, where known),
/// and their rain (mm). The borders are judgements (no source).
#[must_use]
pub fn spells(mean_high_c: f64, humidity: Option<f64>, rain_mm: f64) -> Vec<Spell> {
    let mut all = vec![if mean_high_c >= 36.0 {
        Spell::Hot
    } else if mean_high_c >= 26.0 {
        Spell::Mild
    } else {
        Spell::Cool
    }];
    if rain_mm >= 15.0 {
        all.push(Spell::Wet);
    }
    match humidity {
        Some(humidity) if humidity >= 0.65 => all.push(Spell::Humid),
        Some(humidity) if humidity < 0.5 && rain_mm < 5.0 => all.push(Spell::Dry),
        None if rain_mm >= 15.0 => all.push(Spell::Humid),
        None if rain_mm < 2.0 => all.push(Spell::Dry),
        _ => {}
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::Files;

    fn first(case: &Case) -> String {
        let known = Knowledge::read(&Files::embedded()).0;
        causes(case, &known)[0].trouble.id.clone()
    }

    #[test]
    fn ants_beside_aphids_are_a_companion() {
        let named = vec!["ants".into(), "aphid".into()];
        assert_eq!(first(&Case { named, ..Case::default() }), "aphid");
        assert_eq!(first(&Case { named: vec!["ants".into()], ..Case::default() }), "ants");
    }

    #[test]
    fn white_fuzz_on_a_tray_is_mould_or_root_hair() {
        let seen = |sign: &str| Case { seen: vec![sign.into()], on_tray: true, ..Case::default() };
        assert_eq!(first(&seen("white-fuzz-on-tray")), "tray-mould");
        assert_eq!(first(&seen("fuzz-at-roots-only")), "root-hairs");
    }

    #[test]
    fn flowers_of_tomato_fall_by_heat_and_those_of_gourds_for_want_of_bees() {
        let seen = vec!["flowers-fall".into(), "flowers-no-fruit".into()];
        let on = |crop: &str| Case { seen: seen.clone(), crops: vec![crop.into()], ..Case::default() };
        assert_eq!(first(&on("tomato")), "blossom-drop");
        assert_eq!(first(&on("bottle-gourd")), "misshapen-fruit");
    }
}
