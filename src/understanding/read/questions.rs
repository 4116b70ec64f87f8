//! Words that ask in one place and tell in another: "is", "will", "can", "do".

use super::deeds::counted;
use super::{Hit, Told};
use crate::script::{Language, Text};

/// Whether a word of the list of words that ask does ask where it stands.
pub(super) fn asks(text: &Text, hit: &Hit<Told>, told: &[Hit<Told>]) -> bool {
    if hit.span.len() > 1 {
        return true;
    }
    let at = hit.span.start;
    let english = text.language == Language::En;
    match text.normal(at) {
        // "Do" is two or "give", "is" is "this" in Hindi.
        "do" | "is" | "are" if !english => false,
        // Two and a half sounds as "shall we give".
        "dhai" | "dhaai" | "adhai" | "dhaee" | "dhayi" | "ढाई" => false,
        // It sounds as the Hindi for "shall we give".
        "day" if english => false,
        // "Will do the box on Thursday".
        "do" if at
            .checked_sub(1)
            .is_some_and(|before| matches!(text.normal(before), "will" | "ll" | "to" | "must")) =>
        {
            false
        }
        "can" if counted(text, at) => false,
        // "No need to remind me".
        "need" if at.checked_sub(1).is_some_and(|before| text.normal(before) == "no") => false,
        // "Can you note …" is a polite wish.
        "can" | "could" | "would" | "will" if wishes(text, at, told) => false,
        "is" | "are" if begins(text, at) => true,
        "is" | "are" => !tells(text, at, told) && !said_of(text, at),
        "will" => begins_asking(text, at),
        _ => true,
    }
}

/// "We have kept two plants in pots. Kindly advise the quantity of water": told work, and a wish to be told something of it.
pub(super) fn asks_of_work(told: &[Hit<Told>]) -> bool {
    let work = |hit: &Hit<Told>| matches!(hit.meaning, Told::Did(_) | Told::Done | Told::PutIn | Told::Got);
    told.iter().any(|hit| hit.meaning == Told::Request) && told.iter().any(work)
}

/// "Do mag kaafi hain ya teen", "enough or two": of an amount it is asked whether it will do, without a word that asks.
pub(super) fn asks_if_enough(text: &Text) -> bool {
    const ENOUGH: [&str; 11] =
        ["kaafi", "kafi", "kaphi", "काफी", "enough", "bahut", "बहुत", "sufficient", "paryapt", "पर्याप्त", "बस"];
    const APART: usize = 3;
    let or = |at: usize| matches!(text.normal(at), "ya" | "या" | "or");
    let enough = |at: usize| ENOUGH.contains(&text.normal(at));
    (0..text.tokens.len()).any(|at| enough(at) && (at + 1..=at + APART).any(or))
}

/// "Ab bhi utna hi paani de", "kal jitna paani dein": at the end of a sentence it is asked whether to give as much still.
pub(super) fn asks_to_give_as_much(text: &Text) -> bool {
    const GIVE: [&str; 6] = ["de", "den", "dein", "daale", "दे", "दें"];
    const AS_MUCH: [&str; 12] =
        ["utna", "utni", "itna", "itni", "jitna", "jitni", "उतना", "उतनी", "इतना", "इतनी", "जितना", "जितनी"];
    const APART: usize = 3;
    let ends = |at: usize| text.tokens.get(at).is_none_or(|token| !token.is_word() && token.number.is_none());
    let as_much = |at: usize| (at.saturating_sub(APART)..at).any(|place| AS_MUCH.contains(&text.normal(place)));
    let given = |at: usize| GIVE.contains(&text.normal(at)) && ends(at + 1) && as_much(at);
    text.language != Language::En && (0..text.tokens.len()).any(given)
}

/// "Was the east box fed", "has it been sprayed", "have they fed the tomato": a verb that stands before who did it.
pub(super) fn asks_by_its_order(text: &Text, names: &[usize]) -> bool {
    const VERBS: [&str; 5] = ["was", "were", "has", "have", "had"];
    const WHO: [&str; 24] = [
        "the",
        "my",
        "our",
        "it",
        "they",
        "he",
        "she",
        "we",
        "i",
        "you",
        "this",
        "that",
        "these",
        "those",
        "any",
        "anyone",
        "anybody",
        "someone",
        "somebody",
        "everything",
        "all",
        "there",
        "your",
        "anything",
    ];
    let stop = |at: usize| text.tokens.get(at).is_none_or(|token| !token.is_word() && token.number.is_none());
    let first = |at: usize| at.checked_sub(1).is_none_or(stop);
    let subject = |at: usize| WHO.contains(&text.normal(at)) || names.contains(&at);
    // "Had the mint cut": who had it done is left out; "have the tomatoes been fed" asks.
    let been = |at: usize| (at..text.tokens.len()).any(|place| matches!(text.normal(place), "been" | "had" | "got"));
    let person = |at: usize| {
        matches!(
            text.normal(at),
            "i" | "we" | "you" | "they" | "he" | "she" | "anyone" | "anybody" | "someone" | "somebody"
        )
    };
    let has = |at: usize| !matches!(text.normal(at), "had" | "have") || person(at + 1) || been(at + 1);
    text.language == Language::En
        && (0..text.tokens.len()).any(|at| VERBS.contains(&text.normal(at)) && first(at) && subject(at + 1) && has(at))
}

/// At the beginning of a sentence, or after a word that joins.
fn begins(text: &Text, at: usize) -> bool {
    const JOINS: [&str; 10] = ["and", "so", "but", "or", "then", "now", "ok", "how", "what", "when"];
    at.checked_sub(1).is_none_or(|before| {
        text.tokens.get(before).is_none_or(|token| !token.is_word() && token.number.is_none())
            || JOINS.contains(&text.normal(before))
    })
}

/// "The net is up", "the bag is watered": what follows tells that something was done.
fn tells(text: &Text, at: usize, told: &[Hit<Told>]) -> bool {
    const PLACED: [&str; 15] = [
        "here", "finished", "in", "on", "up", "off", "down", "over", "done", "out", "back", "now", "already", "all",
        "ready",
    ];
    let done = |place: usize| {
        told.iter().any(|hit| {
            let work = matches!(hit.meaning, Told::Did(_) | Told::Done | Told::NetDown | Told::Saw(_) | Told::PutIn);
            work && hit.span.contains(&place) && !hit.span.contains(&at)
        })
    };
    let after = at + 1;
    PLACED.contains(&text.normal(after)) || done(after)
}

/// "It is cloudy": its subject stands before.
fn said_of(text: &Text, at: usize) -> bool {
    const WHO: [&str; 7] = ["it", "this", "that", "they", "there", "he", "she"];
    const ASKS: [&str; 8] = ["how", "what", "when", "which", "why", "where", "who", "whether"];
    let subject = at.checked_sub(1).is_some_and(|before| WHO.contains(&text.normal(before)));
    subject && !(0..at).any(|before| ASKS.contains(&text.normal(before)))
}

/// It is asked that something be written down.
fn wishes(text: &Text, at: usize, told: &[Hit<Told>]) -> bool {
    const NEAR: usize = 2;
    text.normal(at + 1) == "you" && told.iter().any(|hit| hit.meaning == Told::Note && hit.span.start <= at + 1 + NEAR)
}

/// "Will it rain" asks; "we will spray" and "will do the box on Thursday" do not.
fn begins_asking(text: &Text, at: usize) -> bool {
    const DEEDS: [&str; 14] =
        ["do", "water", "spray", "feed", "pick", "sow", "plant", "put", "give", "cut", "harvest", "be", "take", "move"];
    const WHO: [&str; 4] = ["i", "we", "he", "she"];
    let said_by = at.checked_sub(1).is_some_and(|before| WHO.contains(&text.normal(before)));
    !said_by && !DEEDS.contains(&text.normal(at + 1))
}
