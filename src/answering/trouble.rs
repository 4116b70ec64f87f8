//! Something looks wrong: what it may be, what to do first, and the one question that parts the likely causes.

use super::answer::{Answer, Outcome};
use super::facts::{BedFacts, Facts};
use super::figure::{Figure, FigureValue};
use super::handed_over::not_known;
use super::line::{Line, Said};
use crate::garden::{BedKind, When};
use crate::knowledge::{GrownFor, InThree, Part, Point, Remedy, SourceRef, Spell, Symptom, Trouble, TroubleKind};
use crate::needs::diagnosis::{
    Case, Cause, WORTH_TELLING, bears_its_mark, causes, first_signs, is_touched, spells, telling_signs,
};
use crate::understanding::Reading;
use crate::weather::Weather;
use chrono::{Days, NaiveDate};
use serde_json::json;

/// A cause this likely is told without a further question (judgement); a less likely one where it is so many times
/// likelier than the next.
const LIKELY: [(f64, f64); 3] = [(0.5, 1.0), (0.3, 1.3), (LEAST, 1.8)];
/// A cause as likely as this by its description, though no sign was told (judgement).
const ALIKE: f64 = 0.3;
/// Two causes that make up so much between them are told with what to do first, the question that parts them last: where
/// the plant is known, and where it is not (judgement).
const TOGETHER: (f64, f64) = (0.4, 0.6);
/// Of a plant that is not known: a cause so likely, and so many times likelier than the next, by a sign that was told.
const HALLMARK: (f64, f64) = (0.35, 1.8);
/// The steps against the first cause are told where it is so likely, or so many times likelier than the next; else what
/// is done first whichever it is (judgement).
const STEPS: (f64, f64) = (0.3, 1.5);
/// Less than this is not told as a cause at all once questions are at an end (judgement).
const LEAST: f64 = 0.2;
/// Two causes of which the likelier is less likely than this are not told: the sign is asked for (judgement).
const FAINT: f64 = 0.12;
/// A second cause this likely is named beside the first.
const BESIDE: f64 = 0.15;
/// At most so many questions are asked back.
const QUESTIONS: u8 = 3;
/// So many signs are offered at a time, beside "none of these".
const OFFERED: usize = 3;
/// Steps, remedy and cautions together are at most so long, in characters of English.
const LONGEST: usize = 380;
/// So many causes are listed.
const LISTED: usize = 5;

/// Weighs what was described, then tells the likeliest cause or asks for the sign that parts them.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let case = case(reading, facts);
    let mut all = causes(&case, facts.known);
    all.retain(|cause| is_touched(cause.trouble, &case, facts.known));
    if reading.none_of_these {
        return Answer { figures: listed(&all), ..not_known() };
    }
    let alike = all.first().is_some_and(|cause| cause.weight >= ALIKE && !case.like.is_empty());
    let described = alike || !case.seen.is_empty() || !case.named.is_empty();
    let Some(first) = all.first().filter(|_| described || reading.asked < QUESTIONS) else { return not_known() };
    let next = all.get(1).map_or(0.0, |cause| cause.weight);
    // Of a plant that is not known only what is likelier than all else together is told at once.
    let unplaced = case.crops.is_empty() && case.named.is_empty() && !case.on_tray;
    let borders = LIKELY.iter().filter(|(least, _)| !unplaced || *least >= LIKELY[0].0);
    let clear = borders.into_iter().any(|(least, ahead)| first.weight >= *least && first.weight >= next * ahead);
    // "Limp by lunch" of no plant is no reason to pull one out: which it is comes first.
    let of_the_whole = |id: &String| facts.known.signs.get(id).is_some_and(|sign| sign.part == Part::WholePlant);
    let limp =
        first.trouble.kind == TroubleKind::Disease && !case.seen.is_empty() && case.seen.iter().all(of_the_whole);
    let limp = limp && unplaced && reading.asked == 0;
    let clear = clear && !limp;
    if described && (clear || reading.asked >= QUESTIONS) {
        return told(&all, &case, reading, facts);
    }
    let enough = if unplaced {
        let ahead = first.weight >= HALLMARK.0 && first.weight >= next * HALLMARK.1;
        ahead && bears_its_mark(first.trouble, &case, facts.known) || first.weight + next >= TOGETHER.1
    } else {
        // What only sounds like a description must be of a plant that was named.
        let shown = first.weight >= FAINT && !case.seen.is_empty() && (!reading.crops.is_empty() || case.on_tray);
        shown || first.weight + next >= TOGETHER.0
    };
    if described && enough && !limp {
        return told_so_far(&all, &case, reading, facts);
    }
    let signs = if described {
        telling_signs(&case, &all, facts.known, OFFERED)
    } else {
        first_signs(&all, facts.known, OFFERED)
    };
    if signs.is_empty() {
        return if described { told(&all, &case, reading, facts) } else { not_known() };
    }
    ask(&all, signs, described, facts)
}

/// The two likeliest causes and the first steps against the first; nothing is sprayed before they are parted.
fn told_so_far(all: &[Cause<'_>], case: &Case, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let mut answer = match all {
        [first, second, ..]
            if first.weight < LEAST || first.weight < STEPS.0 && first.weight < second.weight * STEPS.1 =>
        {
            let mut answer = in_common((first, second), all, case, facts);
            if reading.points.contains(&Point::Drug) {
                caution(&mut answer, first.trouble);
            }
            answer
        }
        [first] if first.weight < LEAST => return not_known(),
        _ => told(all, case, reading, facts),
    };
    let signs = telling_signs(case, all, facts.known, OFFERED);
    if signs.is_empty() {
        return answer;
    }
    let (sprays, lines): (Vec<Line>, Vec<Line>) =
        answer.lines.into_iter().partition(|line| line.phrase == "trouble-remedy");
    answer.working.splice(0..0, sprays);
    answer.lines = lines;
    answer.lines.push(Line::new("trouble-tell-apart"));
    answer.choices = choices(&signs, facts);
    answer.offered = signs;
    answer
}

/// Nothing parts the likeliest causes: what is done first whichever it is.
fn in_common(two: (&Cause<'_>, &Cause<'_>), all: &[Cause<'_>], case: &Case, facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let name = |cause: &Cause<'_>| Said::Text(cause.trouble.names.first_of_each());
    answer.lines.push(Line::new("trouble-may-be").with("first", name(two.0)).with("second", name(two.1)));
    let sign = case.seen.first().or_else(|| two.0.trouble.evidence.first().map(|evidence| &evidence.sign));
    let pests = [two.0, two.1].iter().all(|cause| cause.trouble.kind == TroubleKind::Pest);
    let part = match sign.and_then(|id| facts.known.signs.get(id)).map(|sign| sign.part) {
        _ if pests => "pest",
        Some(Part::Leaf) => "leaf",
        Some(Part::Fruit) => "fruit",
        Some(Part::Flower) => "flower",
        Some(Part::Seedling) => "seedling",
        _ => "plant",
    };
    answer.lines.push(Line::new("trouble-in-common").with("part", Said::Key(part)));
    answer.figures = listed(all);
    why(&mut answer, all, case, facts);
    answer
}

/// Signs to choose from, and none of them.
fn choices(signs: &[String], facts: &Facts<'_>) -> Vec<Line> {
    let shown = signs.iter().filter_map(|id| facts.known.signs.get(id));
    shown.map(choice).chain([Line::new("choice-none-of-these")]).collect()
}

/// A question back, with a few signs to choose from.
fn ask(all: &[Cause<'_>], signs: Vec<String>, described: bool, facts: &Facts<'_>) -> Answer {
    let choices = choices(&signs, facts);
    let question = match all {
        [first, second, ..] if described => Line::new("trouble-which-sign")
            .with("first", Said::Text(first.trouble.names.first_of_each()))
            .with("second", Said::Text(second.trouble.names.first_of_each())),
        _ => Line::new("trouble-what-seen"),
    };
    let figures = if described { listed(all) } else { Vec::new() };
    Answer { figures, offered: signs, ..Answer::ask(question, choices) }
}

fn choice(sign: &Symptom) -> Line {
    Line::new("choice-sign").with("sign", Said::Text(sign.label.clone()))
}

fn told(all: &[Cause<'_>], case: &Case, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let Some(first) = all.first().filter(|cause| cause.weight >= LEAST) else {
        return Answer { figures: listed(all), ..not_known() };
    };
    let mut answer = Answer::new(Outcome::Answered);
    let name = Said::Text(first.trouble.names.first_of_each());
    let second = all.get(1).filter(|cause| cause.weight >= BESIDE);
    answer.lines.push(match second {
        Some(second) => Line::new("trouble-either")
            .with("first", name)
            .with("second", Said::Text(second.trouble.names.first_of_each())),
        None => Line::new("trouble-likely").with("trouble", name),
    });
    treat(&mut answer, first.trouble, reading);
    if reading.points.contains(&Point::SyntheticFeed) {
        answer.cautions.push(Line::new("caution-overfed"));
    }
    answer.figures = listed(all);
    why(&mut answer, all, case, facts);
    answer
}

/// What to do first; on a tray that is eaten in days nothing is sprayed, so no remedy is named.
fn treat(answer: &mut Answer, trouble: &Trouble, reading: &Reading) {
    let text = |phrase, text: &InThree<String>| Line::new(phrase).with("text", Said::Text(text.clone()));
    answer.lines.push(text("trouble-steps", &trouble.first_steps));
    if let Some(when) = &trouble.pull_when {
        answer.working.push(text("trouble-pull", when));
    }
    if !reading.microgreen {
        let mut remedies = trouble.remedies.iter();
        let named = |remedy: &Remedy| {
            text("trouble-remedy", &remedy.text).with("material", Said::Material(remedy.material.clone()))
        };
        // What makes a reply too long to read on a phone is told to whoever asks why; cautions always stay.
        let mut said = trouble.first_steps.en.len();
        said += trouble.cautions.iter().map(|caution| caution.en.len()).sum::<usize>();
        let short = |remedy: &&Remedy| said + remedy.text.en.len() <= LONGEST;
        let mut remedies = remedies.by_ref().peekable();
        if let Some(remedy) = remedies.next_if(short) {
            answer.lines.push(named(remedy));
        }
        answer.working.extend(remedies.map(named));
    }
    if let Some(watch) = &trouble.watch_for {
        answer.working.push(text("trouble-watch", watch));
    }
    if let Some(call) = &trouble.call_when {
        answer.working.push(text("trouble-call", call));
    }
    caution(answer, trouble);
    for source in &trouble.sources {
        answer.cite(source);
    }
}

fn caution(answer: &mut Answer, trouble: &Trouble) {
    for caution in &trouble.cautions {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
}

/// The causes as a figure.
fn listed(all: &[Cause<'_>]) -> Vec<Figure> {
    let worth = all.iter().filter(|cause| cause.weight >= WORTH_TELLING);
    let list: Vec<_> =
        worth.take(LISTED).map(|cause| json!({"id": cause.trouble.id, "weight": cause.weight})).collect();
    vec![Figure { name: "causes".to_owned(), is: FigureValue::Structure(json!(list)), bed: None, crop: None }]
}

/// What spoke for the causes.
fn why(answer: &mut Answer, all: &[Cause<'_>], case: &Case, facts: &Facts<'_>) {
    let labels = |ids: &[String]| {
        let labels = ids.iter().filter_map(|id| facts.known.signs.get(id));
        Said::List(labels.map(|sign| Said::Text(sign.label.clone())).collect())
    };
    if !case.seen.is_empty() {
        answer.working.push(Line::new("working-signs-seen").with("signs", labels(&case.seen)));
    }
    if !case.not_seen.is_empty() {
        answer.working.push(Line::new("working-signs-not-seen").with("signs", labels(&case.not_seen)));
    }
    for cause in all.iter().filter(|cause| cause.weight >= WORTH_TELLING).take(LISTED) {
        answer.working.push(
            Line::new("working-cause")
                .with("trouble", Said::Text(cause.trouble.names.first_of_each()))
                .with("percent", Said::Percent((cause.weight * 100.0).round()))
                .with("signs", Said::Text(cause.trouble.signs.clone())),
        );
    }
    answer.working.push(Line::new("working-causes"));
    answer.cite(&SourceRef::new("common-practice", "how often each sign is seen"));
}

/// What is known of the case: the signs, the crop, the weather of these days, the work done in the bed.
fn case(reading: &Reading, facts: &Facts<'_>) -> Case {
    let beds: Vec<&BedFacts> = reading.beds.iter().filter_map(|id| facts.bed(id)).map(|(_, bed)| bed).collect();
    let today = facts.today();
    let mut crops = reading.crops.clone();
    if let ([bed], true) = (beds.as_slice(), crops.is_empty()) {
        crops = bed.standing(today).into_iter().map(|planting| planting.crop.clone()).collect();
    }
    let done_since = |days: u64| {
        let from = today.checked_sub_days(Days::new(days)).unwrap_or(today);
        beds.iter()
            .flat_map(|bed| &bed.jobs)
            .filter(|job| day(&job.on) >= from)
            .map(|job| job.job.word().to_owned())
            .collect()
    };
    let weather = reading
        .beds
        .first()
        .and_then(|id| facts.bed(id))
        .map(|(site, _)| &site.weather)
        .or_else(|| facts.sites.first().map(|site| &site.weather))
        .or(facts.elsewhere.as_ref());
    // A crop that is eaten by its leaf or root bears no fruit that could show it.
    let bears = |id: &String| {
        let grown_for = facts.known.crops.get(id).map(|crop| crop.grown_for);
        !matches!(grown_for, Some(GrownFor::Leaf | GrownFor::Root | GrownFor::Head | GrownFor::Herb | GrownFor::Bulb))
    };
    let fruitless = !crops.is_empty() && !crops.iter().any(bears);
    let of_fruit = |id: &String| facts.known.signs.get(id).is_some_and(|sign| sign.part == Part::Fruit);
    Case {
        seen: reading.signs.iter().filter(|id| !(fruitless && of_fruit(id))).cloned().collect(),
        not_seen: reading.denied.clone(),
        like: reading.like.iter().cloned().collect(),
        crops,
        on_tray: reading.microgreen || reading.bed_kind == Some(BedKind::Tray),
        named: reading.troubles.clone(),
        weather: weather.and_then(|weather| around(weather, today)),
        done_lately: done_since(14),
        done_in_weeks: done_since(35),
        has_records: beds.iter().any(|bed| bed.jobs.len() >= 3),
    }
}

const fn day(when: &When) -> NaiveDate {
    when.date()
}

/// The weather of the days around today, as far as it is known.
fn around(weather: &Weather<'_>, today: NaiveDate) -> Option<Vec<Spell>> {
    const BEFORE: u64 = 5;
    const ALL: usize = 8;
    let from = today.checked_sub_days(Days::new(BEFORE))?;
    let days: Vec<_> = from.iter_days().take(ALL).filter_map(|date| weather.on(date)).collect();
    if days.is_empty() {
        return None;
    }
    let count = days.len() as f64;
    let high = days.iter().map(|day| day.tmax.as_celsius()).sum::<f64>() / count;
    let rain = days.iter().filter_map(|day| day.rain).map(|rain| rain.as_millimetres()).sum::<f64>();
    let humid: Vec<f64> = days.iter().filter_map(|day| day.humidity_mean).map(|share| share.as_of_one()).collect();
    let humidity = (!humid.is_empty()).then(|| humid.iter().sum::<f64>() / humid.len() as f64);
    Some(spells(high, humidity, rain))
}
