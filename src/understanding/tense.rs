//! Whether the clause around a day tells what is done or what is to come.

use crate::knowledge::{Sign, Words};
use crate::script::{Language, Text};
use std::ops::Range;

/// What a clause tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Tense {
    Done,
    ToCome,
}

/// How far apart the verbs of one clause of Hindi may stand (`dena bhool gaya`), in tokens.
const VERBS_APART: usize = 3;

/// The tense of the clause that holds these tokens, where it tells one.
///
/// English puts its verbs before the day, and a verb of intent (`can`, `need`) rules the rest; Hindi
/// puts them after, and the last of a chain rules.
pub(super) fn tense(text: &Text, words: &Words, day: &Range<usize>) -> Option<Tense> {
    let clause = clause(text, day);
    let before = verbs(text, words, clause.start..day.start);
    let after = verbs(text, words, day.end..clause.end);
    if text.language == Language::En {
        // "Will feed Monday and sprayed Friday": the verb on the day's side of the joint rules.
        let joint = (clause.start..day.start)
            .rev()
            .find(|at| matches!(text.normal(*at), "and" | "but" | "then" | "so" | "n" | "&"));
        // "Can the kids eat the leaves I sprayed on Saturday": who did it stands before the verb of the day.
        const WHO: [&str; 8] = ["i", "we", "he", "she", "they", "you", "maid", "mali"];
        let by_whom = before.last().filter(|(at, tense)| {
            let who = at.checked_sub(1).is_some_and(|who| WHO.contains(&text.normal(who)));
            *tense == Tense::Done && who && before.len() > 1
        });
        if by_whom.is_some() {
            return Some(Tense::Done);
        }
        let near = joint.map(|joint| before.iter().copied().filter(|(at, _)| *at > joint).collect::<Vec<_>>());
        let near = near.and_then(|near| first_intent(&near));
        return near.or_else(|| first_intent(&before)).or_else(|| first_intent(&after));
    }
    if is_for(text, day.end) {
        return Some(Tense::ToCome);
    }
    let Some(&(mut place, mut told)) = after.first() else {
        // "Keede dikhe the kal".
        let was = day.start.checked_sub(1).map_or("", |was| text.normal(was));
        let was = matches!(was, "tha" | "thi" | "the" | "था" | "थी" | "थे").then_some(Tense::Done);
        // "Shukravar ko keede dikhe": seen, at the end.
        const SEEN: [&str; 12] =
            ["dikhe", "dikha", "dikhi", "dikhey", "mile", "nikle", "दिखे", "दिखा", "दिखी", "मिले", "निकले", "दिखीं"];
        let last = clause.end.checked_sub(1).filter(|last| SEEN.contains(&text.normal(*last)));
        let seen = last.map(|_| Tense::Done);
        return was.or_else(|| before.last().map(|(_, tense)| *tense)).or(seen);
    };
    for &(next, tense) in after.iter().skip(1) {
        let joint =
            (place + 1..next).any(|at| matches!(text.normal(at), "aur" | "और" | "and" | "kab" | "कब" | "ab" | "अब"));
        if next - place > VERBS_APART || joint || (place + 1..next).any(|at| words.days.at(text, at).is_some()) {
            break;
        }
        (place, told) = (next, tense);
    }
    Some(told)
}

/// The tense of a day that something is bounded by: "till Sunday", "25 मई तक", "se pehle". Such a day is to come unless
/// the deed that it bounds is done; who has gone until a day is not back yet, and what remains is to be done. None where
/// the day bounds nothing, or nothing at all is told with a verb.
pub(super) fn bound(text: &Text, words: &Words, day: &Range<usize>) -> Option<Tense> {
    if !is_bound(text, words, day) {
        return None;
    }
    let clause = clause(text, day);
    if clause.clone().any(|at| words.sign(Sign::Pending, text, at).is_some()) {
        return Some(Tense::ToCome);
    }
    // "Spray today or leave it till Wednesday?" has no verb that tells, and asks.
    let asked = || text.tokens.iter().any(|token| token.normal == "?");
    let elsewhere = || (asked() || !verbs(text, words, 0..text.tokens.len()).is_empty()).then_some(Tense::ToCome);
    tense(text, words, day).or_else(elsewhere)
}

/// "Spray it today or on Wednesday?": of two days that are to choose from neither has been.
pub(super) fn chosen(text: &Text, words: &Words, day: &Range<usize>) -> Option<Tense> {
    let clause = clause(text, day);
    let asks = text.tokens.iter().any(|token| token.normal == "?");
    let nothing_done = !clause.clone().any(|at| words.is_done(text, at));
    // "Net off on 1 July or keep it": of what is to choose the one is to come.
    let keeps = |at: usize| {
        matches!(text.normal(at), "or" | "ya" | "या")
            && matches!(text.normal(at + 1), "keep" | "leave" | "wait" | "rehne" | "ruku" | "rukun" | "रहने" | "रुकूँ")
    };
    if asks && nothing_done && (day.end..clause.end).any(keeps) {
        return Some(Tense::ToCome);
    }
    let or = (clause.start..day.start).find(|at| matches!(text.normal(*at), "or" | "ya" | "या"))?;
    let other = (clause.start..or).any(|at| words.days.at(text, at).is_some());
    let asked = text.tokens.iter().any(|token| token.normal == "?");
    let done = clause.into_iter().any(|at| words.is_done(text, at));
    (other && asked && !done).then_some(Tense::ToCome)
}

fn is_bound(text: &Text, words: &Words, day: &Range<usize>) -> bool {
    let article = day.start.checked_sub(1).filter(|at| matches!(text.normal(*at), "the" | "this" | "next" | "coming"));
    let end = article.unwrap_or(day.start);
    let before = (1..=2).any(|length| end >= length && words.sign(Sign::Bounds, text, end - length) == Some(length));
    before || words.sign(Sign::BoundAfter, text, day.end).is_some()
}

/// "Kal ke liye", "kal subah ke liye": what is for a day has not been.
fn is_for(text: &Text, after: usize) -> bool {
    /// A part of the day may stand between.
    const PARTED: usize = 1;
    (after..=after + PARTED).any(|at| {
        matches!(text.normal(at), "ke" | "k" | "के") && matches!(text.normal(at + 1), "liye" | "lie" | "लिए" | "लिये")
    })
}

fn first_intent(verbs: &[(usize, Tense)]) -> Option<Tense> {
    let tenses = || verbs.iter().map(|(_, tense)| *tense);
    tenses().find(|tense| *tense == Tense::ToCome).or_else(|| tenses().next())
}

fn clause(text: &Text, day: &Range<usize>) -> Range<usize> {
    let ends = |at: &usize| matches!(text.normal(*at), "," | "." | "?" | "!" | ";" | "।");
    let start = (0..day.start).rev().find(ends).map_or(0, |at| at + 1);
    let end = (day.end..text.tokens.len()).find(ends).unwrap_or(text.tokens.len());
    start..end
}

/// "Todein", "तोड़ें": what should be done is no work done, though it sounds like "tode".
pub(super) fn is_bidden(text: &Text, at: usize) -> bool {
    const ENDINGS: [&str; 4] = ["ein", "ें", "एँ", "एं"];
    const OTHERS: [&str; 3] = ["mein", "में", "hein"];
    let word = text.normal(at);
    text.language != Language::En
        && !OTHERS.contains(&word)
        && ENDINGS.iter().any(|ending| word.len() > ending.len() && word.ends_with(ending))
}

/// "Agar kal barish hui", "kal barish hui to bhi": what is supposed has not been, though its verb is one of the past.
pub(super) fn is_supposed(text: &Text, at: usize) -> bool {
    const IF: [&str; 6] = ["agar", "agr", "yadi", "अगर", "यदि", "gar"];
    const THEN: [&str; 4] = ["to", "toh", "तो", "tho"];
    const EVEN: [&str; 3] = ["bhi", "bhee", "भी"];
    /// So many words of one verb may follow: "ho gayi to bhi".
    const OF_VERB: usize = 3;
    if text.language == Language::En {
        // "By Sunday once it's filled".
        let from = clause(text, &(at..at + 1)).start;
        return (from..at).any(|before| text.normal(before) == "once" && before + 3 >= at);
    }
    let from = clause(text, &(at..at + 1)).start;
    let even = |then: usize| THEN.contains(&text.normal(then)) && EVEN.contains(&text.normal(then + 1));
    (from..at).any(|before| IF.contains(&text.normal(before))) || (at + 1..=at + OF_VERB).any(even)
}

/// "Budhwar ko spray karna tha par barish hai": what was to be done has not been, unless its day went by without it.
fn is_still_to_do(text: &Text, at: usize) -> bool {
    const WAS: [&str; 6] = ["tha", "thi", "the", "था", "थी", "थे"];
    const ENDINGS: [&str; 6] = ["na", "ni", "ne", "ना", "नी", "ने"];
    const MISSED: [&str; 16] = [
        "bhool",
        "bhul",
        "bhoola",
        "reh",
        "rah",
        "nahi",
        "nhi",
        "miss",
        "chhoot",
        "kal",
        "भूल",
        "रह",
        "नहीं",
        "नही",
        "छूट",
        "कल",
    ];
    /// "Diya na tha" is no infinitive.
    const SHORTEST: usize = 4;
    let verb = at.checked_sub(1).map_or("", |before| text.normal(before));
    let infinitive = verb.chars().count() >= SHORTEST && ENDINGS.iter().any(|ending| verb.ends_with(ending));
    let missed = || text.tokens.iter().any(|token| MISSED.contains(&token.normal.as_str()));
    text.language != Language::En && WAS.contains(&text.normal(at)) && infinitive && !missed()
}

/// "Saplings, put them out on 1 july fine?": a question whose verb has no one who did it. What is asked after it, "put in
/// beans on 28 march, when pods?", stands in words of its own.
pub(super) fn is_bare_in_a_question(text: &Text, at: usize) -> bool {
    const BOTH_TENSES: [&str; 3] = ["put", "set", "cut"];
    const ENDS: [&str; 6] = [",", ".", "?", "!", ";", "-"];
    const WHO: [&str; 13] =
        ["i", "we", "he", "she", "they", "have", "has", "had", "just", "already", "was", "were", "maid"];
    const ASKS: [&str; 6] = ["when", "how", "what", "which", "why", "where"];
    let both = text.language == Language::En && BOTH_TENSES.contains(&text.normal(at));
    let end = (at..text.tokens.len()).find(|place| ENDS.contains(&text.normal(*place)));
    let asked =
        end.is_some_and(|end| text.normal(end) == "?" && !(at..end).any(|place| ASKS.contains(&text.normal(place))));
    // "Can I put it in on 5 June?": who would do it.
    const MAY: [&str; 9] = ["can", "could", "should", "shall", "may", "must", "do", "might", "would"];
    let may = (at.saturating_sub(2)..at).any(|place| MAY.contains(&text.normal(place)));
    let who = (at.saturating_sub(2)..at).any(|place| WHO.contains(&text.normal(place)));
    both && (may || asked && !who)
}

/// "दो थैलियों में डाला": two of them, where "दो" at the end bids to give.
fn is_two(text: &Text, at: usize) -> bool {
    const BEHIND: [&str; 12] = ["na", "ना", "ji", "जी", "please", "plz", "to", "तो", "aur", "और", "kya", "क्या"];
    let next = text.tokens.get(at + 1).filter(|next| next.is_word());
    text.language != Language::En
        && matches!(text.normal(at), "दो" | "do")
        && next.is_some_and(|next| !BEHIND.contains(&next.normal.as_str()))
}

fn verbs(text: &Text, words: &Words, within: Range<usize>) -> Vec<(usize, Tense)> {
    within
        .filter(|at| !is_two(text, *at))
        .filter_map(|at| {
            // "To be done", "must be watered", "a good day to put it in".
            let before = at.checked_sub(1).map_or("", |before| text.normal(before));
            let used = at.checked_sub(2).is_some_and(|used| text.normal(used) == "used");
            let english = text.language == Language::En;
            // "Any feeding needed before Sunday?"
            let any = text.tokens.iter().any(|token| matches!(token.normal.as_str(), "?" | "any" | "anything" | "is"));
            let gave = text.tokens.iter().any(|token| {
                matches!(
                    token.normal.as_str(),
                    "gave" | "given" | "fed" | "watered" | "sprayed" | "so" | "rained" | "did"
                )
            });
            // "Visit needed on 25 May", at the beginning, is wished as well.
            let wished = (1..=2).contains(&at);
            let wanted = matches!(text.normal(at), "needed" | "required")
                && (any || wished)
                && !gave
                && !matches!(before, "was" | "were" | "had");
            let not_yet = english && (wanted || matches!(before, "be" | "get") || before == "to" && !used);
            if words.is_done(text, at)
                && (not_yet
                    || is_still_to_do(text, at)
                    || is_bare_in_a_question(text, at)
                    || is_bidden(text, at)
                    || is_supposed(text, at))
            {
                Some((at, Tense::ToCome))
            } else if words.is_done(text, at) {
                Some((at, Tense::Done))
            } else {
                words.is_to_come(text, at).then_some((at, Tense::ToCome))
            }
        })
        .collect()
}
