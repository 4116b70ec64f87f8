//! Whether what was parted is two requests, or one the ground of the other.

use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::script::{Language, Text};
use crate::understanding::reading::Reading;
use chrono::NaiveDate;

/// What was sown or planted in earth on a day not longer ago is noted beside the question that is asked of it (judgement).
pub(super) const FRESH_DAYS: i64 = 3;

/// The border runs through the measures of one thing: "a box of 3 x 2 ft, 10 in deep".
pub(super) fn cut(whole: &Reading, first: &Reading, second: &Reading) -> bool {
    whole.measures.iter().any(|measured| !first.measures.contains(measured) && !second.measures.contains(measured))
}

/// Without a joining word the part before a comma or stop is most often the ground of the question after it. Two
/// requests they are where one tells of work or of what was seen, or where each is a question with its own mark.
pub(super) fn parted_plainly(first: &Reading, second: &Reading, (left, right): (&str, &str)) -> bool {
    /// How sure two questions with their own marks must be (judgement).
    const SURELY: f64 = 0.9;
    /// And where each has a word that speaks of its kind alone.
    const SURE: f64 = 0.75;
    let tells = |part: &Reading| part.kind == Kind::Record && (part.did.is_some() || part.saw.is_some());
    // "Shall I plant it on the first? How much seed": the second asks in its own words, with or without a mark.
    let marked = left.trim_end().ends_with('?');
    let asked_too = marked
        && second.asks
        && own_words(second)
        && first.kind != second.kind
        && [first, second].iter().all(|part| part.sureness >= SURE);
    let questions = [left, right].iter().all(|part| part.trim_end().ends_with('?'));
    let sure = first.sureness >= SURELY && second.sureness >= SURELY;
    let signs = |part: &Reading| part.kind == Kind::Trouble && !part.signs.is_empty();
    let joined = asks_besides(right) || own_words(second) && joins_a_question(right);
    let besides = ails(first) && second.asks && joined || ails_and_amount(first, second);
    // "What net, when to pick": both ask in words of their own kind.
    let speaks = |part: &Reading| part.asks || calls(part);
    let topics = speaks(first) && (speaks(second) || is_fragment(second, right));
    let topics = topics && [first, second].iter().all(|part| part.sureness >= SURE && own_words(part));
    let topics = topics && first.kind != second.kind || first.new_bed && second.asks;
    topics
        || asked_too
        || tells(first)
        || tells(second)
        || questions && sure
        || signs(first) && signs(second)
        || besides
}

/// A word in it speaks of its kind alone.
fn own_words(part: &Reading) -> bool {
    part.speaks_of.contains(&part.kind)
}

/// "Someone please ring me": who wants a person need not ask for one.
fn calls(part: &Reading) -> bool {
    part.kind == Kind::Person && own_words(part)
}

/// "Wazan bhi", "feeding too": few words, one of which speaks of its kind.
fn is_fragment(part: &Reading, text: &str) -> bool {
    /// So few words hold nothing else.
    const FEW: usize = 3;
    /// "Both, please tell me": said of the request, and no part of it.
    const COURTESY: [&str; 25] = [
        "or",
        "no",
        "not",
        "dono",
        "both",
        "please",
        "tell",
        "me",
        "give",
        "bata",
        "batao",
        "bataiye",
        "batayen",
        "batana",
        "dijiye",
        "dijie",
        "do",
        "de",
        "दोनों",
        "बता",
        "बताओ",
        "बताइए",
        "बताएं",
        "दीजिए",
        "दें",
    ];
    let read = Text::read(text);
    let words = read.tokens.iter().filter(|token| token.is_word() && !COURTESY.contains(&token.normal.as_str()));
    own_words(part) && part.did.is_none() && part.saw.is_none() && words.count() <= FEW
}

fn ails(part: &Reading) -> bool {
    /// So sure that something ails the plant, though no sign has a name (judgement).
    const SURELY: f64 = 0.9;
    let named = !(part.signs.is_empty() && part.troubles.is_empty());
    part.kind == Kind::Trouble && (named || part.sureness >= SURELY && !part.asks)
}

/// "The leaves are yellow, how much feed": what ails it, and how much is fed, which no article tells. Thirst is asked of
/// water alone.
fn ails_and_amount(first: &Reading, second: &Reading) -> bool {
    let fed = second.kind == Kind::Feed && second.points.contains(&Point::Amount) && second.did.is_none();
    ails(first) && !first.signs.is_empty() && first.did.is_none() && second.asks && fed && second.signs.is_empty()
}

/// Two requests are two only where their kinds differ, and where one is not the ground of the other:
/// "sowed radish on 25 April, when is it ready" is one question, and whether one may pick after a spray is
/// a question about the spray, as is when the next one is due.
pub(super) fn stand_apart(first: &Reading, second: &Reading, today: NaiveDate, text: &str, right: &str) -> bool {
    let ground = |told: &Reading, asked: &Reading, told_first: bool| {
        let started = matches!(told.did, Some(JobKind::Sow | JobKind::Plant | JobKind::Spray));
        let again = match told.did {
            Some(JobKind::Spray) => asked.kind == Kind::Spray,
            Some(JobKind::Feed) => asked.kind == Kind::Feed,
            Some(JobKind::Pick | JobKind::Sow | JobKind::Plant) => asked.kind == Kind::Harvest && is_passive(text),
            _ => false,
        };
        let begun = matches!(told.did, Some(JobKind::Sow | JobKind::Plant));
        // Work told of a bed by its name is noted as well, and of a crop where it was just done.
        let fresh_days = if begun && !told.microgreen { FRESH_DAYS } else { 1 };
        let recent = told.days.iter().all(|(day, _)| (today - *day).num_days() <= fresh_days);
        let fresh = recent && !tells_of_last(text);
        // The only box of hers is told as plainly by its kind; when the next is due may be asked of a spray just done.
        let only = told.bed_kind.is_some() && told.beds.len() == 1;
        let next = asked.points.contains(&Point::Time) && !asked.points.contains(&Point::Wait);
        // A spray of a day that was told is noted where the next one is asked, or how many days to wait after it on a
        // bed of hers.
        let sprayed = told.did == Some(JobKind::Spray);
        let until_when = asked.points.contains(&Point::Time)
            && !told.days.is_empty()
            && !told.beds.is_empty()
            && !is_past_of_past(text);
        let of_crop = !told.crops.is_empty() && fresh && (!sprayed || next || until_when);
        let which = told.beds_named || only || of_crop;
        // What fed a bed that was named is noted, however old: the next is counted from it, and so are the amounts.
        let fed = told.did == Some(JobKind::Feed) && told.beds_named;
        let counted_from =
            again && next && (is_old(told, today) && !fed || begun || is_past_of_past(text) || tells_of_last(text));
        let noted = told_first && which && told.kind == Kind::Record && !counted_from;
        !noted && (again || started && asked.kind == Kind::Harvest)
    };
    // A trouble stands beside a call for a person, or beside what is wrong with another crop.
    let other_crop = first.crops.iter().all(|crop| !second.crops.contains(crop));
    let two_troubles = first.kind == Kind::Trouble
        && second.kind == Kind::Trouble
        && [first, second].iter().all(|part| !part.crops.is_empty() && !part.signs.is_empty())
        && other_crop;
    let person = first.kind == Kind::Person || second.kind == Kind::Person;
    // "Fed it on Sunday. Also the leaves are cupping": told as two things.
    // "Picked the beans, half of them had holes": what ails them is no part of that work.
    let found = matches!(first.did, Some(JobKind::Pick | JobKind::Net)) && !second.signs.is_empty();
    let told = first.kind == Kind::Record && first.did.is_some() && second.kind == Kind::Trouble;
    let also = told && (tells_of_more(text) || found);
    // "Whitefly on my brinjal. And also tell when to feed it": asked beside what ails it.
    let besides = ails(first)
        && second.asks
        && !matches!(second.kind, Kind::Trouble | Kind::Care | Kind::None | Kind::Person)
        && (tells_of_more(text) || asks_besides(text) || own_words(second) && joins_a_question(right))
        || ails_and_amount(first, second);
    let talk = |reading: &Reading| {
        let alone = reading.kind == Kind::Trouble && !person && !two_troubles && !also && !besides;
        // How a thing is staked or pruned is asked beside what is summed.
        let care = reading.kind == Kind::Care && !(reading.asks && own_words(reading));
        reading.kind == Kind::None || care || alone
    };
    // "seed for beans, one 6 foot row": what neither asks nor tells is no request.
    let differ = first.kind != second.kind || first.kind == Kind::Record && first.did != second.did || two_troubles;
    let speaks = |reading: &Reading| {
        /// "Spacing for chilli" asks without a word that asks.
        const PLAINLY: f64 = 0.8;
        /// A size told with so sure a kind is a request, not the ground of one.
        const SURELY: f64 = 0.9;
        // A size told by itself is the ground of the question beside it.
        let about = (!reading.crops.is_empty() || reading.beds_named) && reading.quantities.is_empty();
        // "Weight of a 3x2x1 ft box": nothing but a request has these words.
        let sized = !reading.measures.is_empty() || amount_asked(reading);
        let request = sized && (reading.sureness >= SURELY || own_words(reading) && reading.sureness >= PLAINLY);
        reading.asks
            || calls(reading)
            || reading.new_bed
            || reading.did.is_some()
            || reading.saw.is_some()
            || request
            || about && reading.sureness >= PLAINLY
            || matches!(reading.kind, Kind::Trouble) && !reading.signs.is_empty()
    };
    speaks(first)
        && (speaks(second) || is_fragment(second, right))
        && differ
        && !ground(first, second, true)
        && !ground(second, first, false)
        && !talk(first)
        && !talk(second)
}

/// "Grams of seed for 2 sq m", "mix for eight 25 L bags": how much of a thing is asked without a word that asks.
fn amount_asked(reading: &Reading) -> bool {
    let kind = matches!(reading.kind, Kind::Seed | Kind::Mix | Kind::Build | Kind::Load);
    kind && reading.did.is_none() && !reading.quantities.is_empty()
}

/// "…, and when do I feed it next", "और पानी कितना": a question of its own that is joined on.
fn joins_a_question(right: &str) -> bool {
    const ASKS: [&str; 14] = [
        "when",
        "how",
        "what",
        "which",
        "kab",
        "kitna",
        "kitne",
        "kitni",
        "kya",
        "कब",
        "कितना",
        "कितने",
        "कितनी",
        "क्या",
    ];
    let text = Text::read(right);
    let mark = |at: usize| text.tokens.get(at).is_some_and(|token| !token.is_word() && token.number.is_none());
    let at = usize::from(mark(0));
    let joined = matches!(text.normal(at), "and" | "aur" | "और" | "&" | "n");
    joined && (at + 1..text.tokens.len()).any(|at| ASKS.contains(&text.normal(at)))
}

/// "Also", "one more thing": what follows is a matter of its own.
fn tells_of_more(text: &str) -> bool {
    const MORE: [&str; 6] = ["also", "plus", "separately", "aur", "और", "साथ"];
    let text = Text::read(text);
    (1..text.tokens.len()).any(|at| {
        let begins = matches!(text.normal(at - 1), "." | "," | "।" | ";");
        let and = usize::from(text.normal(at) == "and");
        begins && MORE.contains(&text.normal(at + and))
    })
}

/// "Khaad kab deni hai ye bhi batao", "when is the next feed too?": asked besides, at its end.
fn asks_besides(text: &str) -> bool {
    const TELL: [&str; 9] = ["batao", "bataiye", "bata", "batana", "bataye", "बताओ", "बताइए", "बता", "बताएं"];
    let text = Text::read(text);
    let words: Vec<&str> = (0..text.tokens.len()).map(|at| text.normal(at)).collect();
    let hindi = words.windows(2).any(|pair| matches!(pair, ["bhi" | "भी", tell] if TELL.contains(tell)));
    let last = words.iter().rev().find(|word| word.chars().any(char::is_alphanumeric));
    hindi || last.is_some_and(|word| *word == "too")
}

/// Work that is more than a few days old is told for the next one to be counted from (judgement).
fn is_old(told: &Reading, today: NaiveDate) -> bool {
    const DAYS: i64 = 3;
    told.days.first().is_some_and(|(day, _)| (today - *day).num_days() > DAYS)
}

/// "Neem mara tha", "chhidka tha": the tense of what lies before the matter itself.
fn is_past_of_past(text: &str) -> bool {
    is_past_of_past_tokens(&Text::read(text))
}

fn is_past_of_past_tokens(text: &Text) -> bool {
    const WAS: [&str; 6] = ["tha", "thi", "the", "था", "थी", "थे"];
    let hindi = text.language != Language::En;
    text.tokens.iter().any(|token| WAS.contains(&token.normal.as_str()) && (hindi || token.normal != "the"))
}

/// "Was cut on the 11th", "were sown yesterday": how it stands, and nobody's report.
fn is_passive(text: &str) -> bool {
    let text = Text::read(text);
    let was = (0..text.tokens.len()).any(|at| matches!(text.normal(at), "was" | "were"));
    was || is_past_of_past_tokens(&text)
}

/// "Last fed on 4 May. Next?" tells what was done before; nothing is to be noted.
pub(super) fn tells_of_last(text: &str) -> bool {
    const LAST: [&str; 12] = [
        "last",
        "previous",
        "pichli",
        "pichla",
        "pichhli",
        "pichhla",
        "aakhri",
        "akhri",
        "पिछली",
        "पिछला",
        "आखिरी",
        "आख़िरी",
    ];
    // "Last Saturday", "pichli shaam": the day of it, and not the last of its sort.
    const DAYS: [&str; 21] = [
        "night",
        "evening",
        "morning",
        "week",
        "month",
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
        "mon",
        "tue",
        "wed",
        "thu",
        "fri",
        "sat",
        "raat",
        "shaam",
        "sham",
    ];
    let text = Text::read(text);
    (0..text.tokens.len()).any(|at| LAST.contains(&text.normal(at)) && !DAYS.contains(&text.normal(at + 1)))
}

/// "It was cut on the 11th. When next?": told as a state, it is what the question counts from.
pub(super) fn counts_from(first: &Reading, second: &Reading, text: &str) -> bool {
    // "Time for another?"
    let bare = second.speaks_of.is_empty()
        && second.jobs.is_empty()
        && second.crops.iter().all(|crop| first.crops.contains(crop));
    let of_that = match first.did {
        Some(JobKind::Sow | JobKind::Plant | JobKind::Pick) => second.kind == Kind::Harvest,
        Some(JobKind::Feed) => matches!(second.kind, Kind::Feed | Kind::Due) || bare,
        Some(JobKind::Spray) => matches!(second.kind, Kind::Spray | Kind::Due) || bare,
        _ => false,
    };
    let given = matches!(first.did, Some(JobKind::Feed | JobKind::Spray));
    let before = is_told_as_state(text) || given && tells_of_last(text);
    of_that && first.kind == Kind::Record && second.asks && !first.days.is_empty() && before
}

/// "Was sown", "were last fed", "has been cut": the passive before its day.
fn is_told_as_state(text: &str) -> bool {
    const BE: [&str; 3] = ["was", "were", "been"];
    const DONE: [&str; 11] = [
        "sown",
        "sowed",
        "planted",
        "transplanted",
        "cut",
        "picked",
        "harvested",
        "fed",
        "sprayed",
        "seeded",
        "snipped",
    ];
    const BETWEEN: [&str; 5] = ["last", "first", "just", "only", "already"];
    let text = Text::read(text);
    let done = |at: usize| DONE.contains(&text.normal(at));
    let be = |at: usize| BE.contains(&text.normal(at));
    (0..text.tokens.len()).any(|at| be(at) && (done(at + 1) || BETWEEN.contains(&text.normal(at + 1)) && done(at + 2)))
}
