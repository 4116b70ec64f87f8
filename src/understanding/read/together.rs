//! What words of a text tell only together.

use super::{Hit, Told};
use crate::garden::JobKind;
use crate::knowledge::Point;
use crate::script::{Language, Text};
use crate::understanding::dates::DayFound;
use chrono::NaiveDate;
use std::ops::Range;

/// Marks at which a clause ends.
const ENDS: [&str; 7] = [",", ".", "?", "!", ";", "।", ":"];

/// "Padosi ne jaali di hai": what someone else gave is no work of hers, and nothing of theirs is asked. Water that was
/// poured was poured, whoever did it.
pub(super) fn given_by_others(text: &Text, told: &[Hit<Told>]) -> Vec<Hit<Told>> {
    const GAVE: [&str; 7] = ["gave", "brought", "sent", "handed", "has", "shared", "left"];
    let gives = |at: usize| text.language == Language::En && GAVE.contains(&text.normal(at));
    let english = told.iter().filter(|hit| hit.meaning == Told::Others && gives(hit.span.end));
    let mut given: Vec<Hit<Told>> =
        english.map(|hit| Hit { span: hit.span.end..hit.span.end + 1, meaning: Told::ByOthers, exact: true }).collect();
    for who in told.iter().filter(|hit| hit.meaning == Told::Others && matches!(text.normal(hit.span.end), "ne" | "ने"))
    {
        let from = who.span.end;
        let end = (from..text.tokens.len()).find(|at| ENDS.contains(&text.normal(*at))).unwrap_or(text.tokens.len());
        let clause: Vec<&Hit<Told>> = told.iter().filter(|hit| from < hit.span.start && hit.span.end <= end).collect();
        if clause.iter().any(|hit| matches!(hit.meaning, Told::Question | Told::Thing(JobKind::Water))) {
            continue;
        }
        let done = clause.iter().filter(|hit| matches!(hit.meaning, Told::Done | Told::PutIn));
        given.extend(done.map(|hit| Hit { span: hit.span.clone(), meaning: Told::ByOthers, exact: true }));
    }
    given.extend(handed_to_her(text).map(|at| Hit { span: at..at + 1, meaning: Told::ByOthers, exact: true }));
    given
}

/// "Dost ne dawa di hai", "mausi ne beej diye": the verbs of giving whose giver is none of the household, where nothing was
/// given to a plant and the verb is none of a pair ("chhidak di").
fn handed_to_her(text: &Text) -> impl Iterator<Item = usize> + '_ {
    const GIVERS: [&str; 44] = [
        "dost",
        "friend",
        "frnd",
        "saheli",
        "padosi",
        "padosan",
        "bhabhi",
        "mausi",
        "chachi",
        "chacha",
        "mami",
        "mama",
        "bua",
        "nani",
        "dadi",
        "uncle",
        "aunty",
        "auntie",
        "rishtedar",
        "wale",
        "wali",
        "wala",
        "walon",
        "dukandar",
        "dukaandar",
        "kisi",
        "kisaan",
        "kisan",
        "दोस्त",
        "सहेली",
        "पडोसी",
        "पडोसन",
        "भाभी",
        "मौसी",
        "चाची",
        "चाचा",
        "मामा",
        "बुआ",
        "रिश्तेदार",
        "वाले",
        "वाली",
        "दुकानदार",
        "किसी",
        "किसान",
    ];
    const GAVE: [&str; 18] = [
        "di",
        "diya",
        "diye",
        "dia",
        "dii",
        "de",
        "bheji",
        "bheja",
        "bheje",
        "pakda",
        "pakdai",
        "thama",
        "दी",
        "दिया",
        "दिए",
        "दे",
        "भेजी",
        "भेजा",
    ];
    const TO_A_PLANT: [&str; 12] = ["me", "mein", "mai", "ko", "pe", "par", "में", "को", "पे", "पर", "paani", "pani"];
    const PAIRED: [&str; 26] = [
        "daal",
        "dal",
        "chhidak",
        "chidak",
        "maar",
        "mar",
        "laga",
        "kar",
        "tod",
        "kaat",
        "kat",
        "bo",
        "hata",
        "utha",
        "ukhad",
        "डाल",
        "छिडक",
        "मार",
        "लगा",
        "कर",
        "तोड",
        "काट",
        "बो",
        "हटा",
        "उखाड",
        "gira",
    ];
    let ne = |at: &usize| {
        let giver = at.checked_sub(1).is_some_and(|who| GIVERS.contains(&text.normal(who)));
        giver && matches!(text.normal(*at), "ne" | "ने") && text.language != Language::En
    };
    (0..text.tokens.len()).filter(ne).filter_map(|ne| {
        let end = (ne..text.tokens.len()).find(|at| ENDS.contains(&text.normal(*at))).unwrap_or(text.tokens.len());
        let verb = (ne + 1..end).find(|at| GAVE.contains(&text.normal(*at)))?;
        let to_a_plant = (ne + 1..verb).any(|at| TO_A_PLANT.contains(&text.normal(at)));
        (!to_a_plant && !PAIRED.contains(&text.normal(verb - 1))).then_some(verb)
    })
}

/// "When next, last time was the 14th": when it was done last is told with its day, and not asked.
pub(super) fn last_is_told(text: &Text, days: &[DayFound], today: NaiveDate, told: &mut Vec<Hit<Told>>) {
    const NEXT: [&str; 15] = [
        "next",
        "nxt",
        "again",
        "agla",
        "agli",
        "agle",
        "dobara",
        "phir",
        "fir",
        "अगला",
        "अगली",
        "अगले",
        "दोबारा",
        "फिर",
        "दुबारा",
    ];
    let next = text.tokens.iter().any(|token| NEXT.contains(&token.normal.as_str()));
    if next && days.iter().any(|day| day.last < today) {
        told.retain(|hit| hit.meaning != Told::Point(Point::LastDone));
    }
}

/// "Kya spray ho gaya", "jaali lag gayi thi kya": whether work was done is asked, in Hindi without another word that asks.
pub(super) fn asks_whether_done(text: &Text, told: &[Hit<Told>], did: Option<JobKind>) -> Option<Hit<Told>> {
    /// So many tokens stand between the verb and its "kya" at most: "diya tha kya".
    const AFTER: usize = 2;
    if text.language == Language::En || did.is_none() {
        return None;
    }
    let what = |at: usize| matches!(text.normal(at), "kya" | "क्या");
    let words: Vec<usize> =
        (0..text.tokens.len()).filter(|at| text.tokens.get(*at).is_some_and(|token| token.is_word())).collect();
    let only = told.iter().filter(|hit| hit.meaning == Told::Question).all(|hit| hit.span.clone().all(what));
    let deeds = || told.iter().filter(|hit| matches!(hit.meaning, Told::Did(_) | Told::Done));
    let begins = words.first().is_some_and(|at| what(*at)) && deeds().next().is_some();
    let ends = words
        .last()
        .is_some_and(|last| what(*last) && deeds().any(|hit| hit.span.end <= *last && *last - hit.span.end < AFTER));
    let asked = only && one_clause(text) && (begins || ends);
    asked.then_some(Hit { span: 0..0, meaning: Told::Point(Point::LastDone), exact: true })
}

/// "He tipped half a kilo of urea into it, what do we do": more than was meant was given.
pub(super) fn overdone(told: &[Hit<Told>], did: Option<JobKind>) -> Option<Hit<Told>> {
    let says = |what: Told| told.iter().any(|hit| hit.meaning == what);
    let given = did == Some(JobKind::Feed) || says(Told::Done) || says(Told::ByOthers) || says(Told::PutIn);
    let worried = says(Told::Worry) && says(Told::Point(Point::SyntheticFeed)) && given;
    worried.then_some(Hit { span: 0..0, meaning: Told::Point(Point::Accident), exact: true })
}

/// "Missed the feed for three weeks, what now": too little was given, and nothing ran off with anyone.
pub(super) fn missed_is_no_excess(text: &Text, told: &mut Vec<Hit<Told>>) {
    const MISSED: [&str; 12] =
        ["miss", "forgot", "forget", "skip", "bhool", "bhul", "chhoot", "chhut", "chhuti", "भूल", "छूट", "छुट"];
    const ASKS_ON: [&str; 4] = ["what now", "अब क्या", "ab kya", "ab kaya"];
    let missed = text.tokens.iter().any(|token| MISSED.iter().any(|start| token.normal.starts_with(start)));
    let asks_on = |hit: &Hit<Told>| {
        let pair = format!("{} {}", text.normal(hit.span.start), text.normal(hit.span.start + 1));
        ASKS_ON.contains(&pair.as_str())
    };
    told.retain(|hit| !(missed && hit.meaning == Told::Point(Point::Accident) && asks_on(hit)));
}

/// "Did the neem on my tomatoes last night": it was done, and nothing is asked.
pub(super) fn did_and_asks_not(text: &Text, told: &mut [Hit<Told>]) {
    const THEN: [&str; 12] =
        ["on", "for", "to", "at", "this", "last", "yesterday", "today", "in", "around", "just", "earlier"];
    /// The thing has so many words at most: "neem oil spray".
    const LONGEST: usize = 3;
    if text.original.contains('?') {
        return;
    }
    let things: Vec<Hit<Told>> = told.iter().filter(|hit| matches!(hit.meaning, Told::Thing(_))).cloned().collect();
    for hit in told.iter_mut().filter(|hit| hit.meaning == Told::DidAsk && text.normal(hit.span.start) == "did") {
        let start = hit.span.start + 2;
        let article = matches!(text.normal(hit.span.start + 1), "the" | "my");
        let thing = things.iter().any(|thing| thing.span.start == start) || text.normal(start).ends_with("ing");
        let then = (start + 1..=start + LONGEST).any(|at| THEN.contains(&text.normal(at)));
        let verbs = things.iter().any(|thing| thing.span.start > start + LONGEST);
        // "Did it on Friday evening".
        let pronoun = matches!(text.normal(hit.span.start + 1), "it" | "them");
        let behind = hit
            .span
            .start
            .checked_sub(1)
            .is_none_or(|at| matches!(text.normal(at), "," | "." | "and" | "-" | "i" | "we" | ";"));
        let told = pronoun && behind && (THEN.contains(&text.normal(start)) || text.tokens.len() <= start);
        if told || article && thing && then && !verbs {
            hit.meaning = Told::Done;
            hit.span.end = hit.span.start + 1;
        }
    }
}

/// "13:0:45", "0-0-50": a bought feed, told by the three numbers on its bag.
pub(super) fn by_its_numbers(text: &Text, dated: &[DayFound]) -> Option<Hit<Told>> {
    /// No salt holds more of one of the three.
    const MOST: f64 = 65.0;
    let number = |at: usize| text.tokens.get(at).and_then(|token| token.number).filter(|value| *value <= MOST);
    let free = |at: usize| dated.iter().all(|day| !day.span.contains(&at));
    let between = |at: usize| matches!(text.normal(at), ":" | "-" | "/").then(|| text.normal(at));
    let last = text.tokens.len().checked_sub(5)?;
    let start = (0..=last).find(|at| {
        let all = [*at, at + 2, at + 4].into_iter().all(|place| number(place).is_some() && free(place));
        all && between(at + 1).is_some() && between(at + 1) == between(at + 3)
    })?;
    Some(Hit { span: start..start + 5, meaning: Told::Point(Point::SyntheticFeed), exact: true })
}

/// "Sprayed soap on the chilli fri": a day is no leaf that was fried. "Khaad pila aayi" is no yellow either.
pub(super) fn without_short_days(text: &Text, days: &[DayFound], told: &[Hit<Told>]) -> Text {
    const SHORT: [&str; 3] = ["fri", "sat", "sun"];
    let gives = |hit: &Hit<Told>| {
        let first = hit.span.start;
        hit.meaning == Told::Done && hit.span.len() > 1 && matches!(text.normal(first), "pila" | "पिला")
    };
    let given = |at: usize| told.iter().any(|hit| hit.span.contains(&at) && gives(hit));
    let dated = |at: usize| days.iter().any(|day| day.span.contains(&at)) && SHORT.contains(&text.normal(at));
    let kept = (0..).zip(&text.tokens).filter(|(at, _)| !dated(*at) && !given(*at)).map(|(_, token)| token.clone());
    Text { original: text.original.clone(), tokens: kept.collect(), ..*text }
}

/// "Everyone in the family", "everybody at home": no one else's.
pub(super) fn is_of_the_house(text: &Text, others: &Range<usize>) -> bool {
    const WHOSE: [&str; 5] = ["the", "my", "our", "this", "here"];
    const HOUSE: [&str; 4] = ["family", "house", "home", "household"];
    let at = others.end;
    let whose = usize::from(WHOSE.contains(&text.normal(at + 1)));
    matches!(text.normal(at), "in" | "at") && HOUSE.contains(&text.normal(at + 1 + whose))
}

/// Any plant that lives where it is hard to: what grows there.
pub(super) fn what_lives(told: &[Hit<Told>]) -> Option<Hit<Told>> {
    let says = |what: Point| told.iter().any(|hit| hit.meaning == Told::Point(what));
    let asked = says(Point::AnyPlant) && says(Point::Lives);
    asked.then_some(Hit { span: 0..0, meaning: Told::Point(Point::WhatGrows), exact: true })
}

/// Nothing else is told beside it; a stop at the end ends nothing.
pub(super) fn one_clause(text: &Text) -> bool {
    let last = text.tokens.len().saturating_sub(1);
    !(0..last).any(|at| matches!(text.normal(at), "," | "." | "।" | ";" | "but" | "par" | "lekin"))
}

/// "Neem ke baad palak kitne din ruke", "how many days must it wait after soap": how long it is not to be picked.
pub(super) fn waits_after_spray(text: &Text, told: &[Hit<Told>], sprays: &[Range<usize>]) -> Option<Hit<Told>> {
    const AFTER: [&str; 9] = ["after", "since", "post", "between", "baad", "bad", "बाद", "beech", "बीच"];
    const WAITS: [&str; 14] = [
        "wait", "ok", "okay", "fine", "safe", "edible", "gap", "usable", "ruke", "ruku", "rukna", "rukein", "ruko",
        "ruk",
    ];
    const WAITS_HINDI: [&str; 6] = ["रुकें", "रुकूं", "रुकना", "रुके", "इंतजार", "intezar"];
    const OTHERWISE: [&str; 26] = [
        "again",
        "next",
        "repeat",
        "second",
        "phir",
        "fir",
        "dobara",
        "dubara",
        "agla",
        "agli",
        "doosra",
        "dusra",
        "फिर",
        "दोबारा",
        "दुबारा",
        "अगला",
        "दूसरा",
        "rain",
        "barish",
        "baarish",
        "बारिश",
        "work",
        "works",
        "asar",
        "असर",
        "feed",
    ];
    /// So far from the spray its "after" stands: "after a light neem spray", "neem chhidakne ke baad".
    const NEAR: usize = 4;
    let has = |list: &[&str]| text.tokens.iter().any(|token| list.contains(&token.normal.as_str()));
    let span = sprays
        .iter()
        .find(|span| (span.start.saturating_sub(NEAR)..span.end + NEAR).any(|at| AFTER.contains(&text.normal(at))))?;
    let pair = |at: usize| (text.normal(at), text.normal(at + 1));
    let long = |at: usize| {
        matches!(
            pair(at),
            ("how", "long" | "soon" | "many")
                | ("kitne" | "kitna" | "kitni", "din" | "dino" | "der")
                | ("कितने", "दिन" | "दिनों")
        ) || text.normal(at) == "gap"
    };
    let asked = (0..text.tokens.len()).any(long) && (has(&WAITS) || has(&WAITS_HINDI)) && !has(&OTHERWISE);
    let watered =
        told.iter().any(|hit| matches!(hit.meaning, Told::Thing(job) if job != JobKind::Spray && job != JobKind::Pick));
    (asked && !watered).then(|| Hit { span: span.clone(), meaning: Told::Point(Point::Wait), exact: true })
}

/// "Methi ka hisab bhi yahi": the same is asked, and no record of anyone.
pub(super) fn same_reckoning(text: &Text, told: &mut Vec<Hit<Told>>) {
    /// So near "the same" stands to the word.
    const NEAR: usize = 2;
    let same: Vec<_> = told.iter().filter(|hit| hit.meaning == Told::Same).map(|hit| hit.span.clone()).collect();
    let near = |at: usize| same.iter().any(|same| same.start <= at + NEAR && at <= same.end);
    told.retain(|hit| hit.meaning != Told::Data || text.language == Language::En || !near(hit.span.start));
}

/// "3 litre pump me neem kitna", "soap, how much in a bottle": how strong it is made.
pub(super) fn asks_how_strong(text: &Text, told: &[Hit<Told>], sprays: bool, volume: bool) -> Option<Hit<Told>> {
    const CARRIERS: [&str; 33] = [
        "pump",
        "pumps",
        "bottle",
        "tank",
        "knapsack",
        "can",
        "bucket",
        "mug",
        "litre",
        "liter",
        "litres",
        "liters",
        "ltr",
        "l",
        "gallon",
        "spraybottle",
        "sprayer",
        "balti",
        "botal",
        "bottal",
        "tanki",
        "paani",
        "pani",
        "पंप",
        "बोतल",
        "टंकी",
        "बाल्टी",
        "लीटर",
        "पानी",
        "water",
        "mashin",
        "machine",
        "मशीन",
    ];
    let says = |what: Point| told.iter().any(|hit| hit.meaning == Told::Point(what));
    let carried = volume || text.tokens.iter().any(|token| CARRIERS.contains(&token.normal.as_str()));
    let asked = says(Point::Amount) && !says(Point::Liquid) && !says(Point::Strength);
    (sprays && carried && asked).then_some(Hit { span: 0..0, meaning: Told::Point(Point::Strength), exact: true })
}

/// "Khaad kab dalu", "spray when?": of few words and of nothing named, it is asked for one's own, and of which is not said.
pub(super) fn asks_barely(text: &Text, told: &[Hit<Told>], bare: bool) -> Option<Hit<Told>> {
    const WORDS: usize = 5;
    /// What is asked of every garden alike.
    const ALIKE: [&str; 26] = [
        "best",
        "better",
        "time",
        "hour",
        "morning",
        "evening",
        "night",
        "noon",
        "samay",
        "subah",
        "shaam",
        "sham",
        "raat",
        "dopahar",
        "समय",
        "सुबह",
        "शाम",
        "रात",
        "दोपहर",
        "dhoop",
        "धूप",
        "neem",
        "soap",
        "sabun",
        "usually",
        "generally",
    ];
    let words = text.tokens.iter().filter(|token| token.is_word()).count();
    let alike = text.tokens.iter().any(|token| ALIKE.contains(&token.normal.as_str()));
    let works = |hit: &Hit<Told>| matches!(hit.meaning, Told::Thing(JobKind::Feed | JobKind::Spray | JobKind::Sow));
    let when = told.iter().any(|hit| hit.meaning == Told::Point(Point::Time))
        && text.tokens.iter().any(|token| matches!(token.normal.as_str(), "kab" | "kb" | "when" | "whn" | "कब"));
    let asked = told.iter().any(works) && when && bare && words <= WORDS && !alike;
    asked.then_some(Hit { span: 0..0, meaning: Told::Point(Point::BareAsked), exact: true })
}
