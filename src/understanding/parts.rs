//! Two requests in one message: "how much water for okra, and when is the first picking?"

use super::asker::Asker;
use super::follow_up::{Says, completed};
use super::read::{Reader, read_as, read_part};
use super::reading::Reading;
use super::sky;
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::script::{Text, Token};
use chrono::NaiveDate;

/// A part must be surer than this to stand by itself.
const SURE_ALONE: f64 = 0.7;

/// What follows a plain statement of work may be less sure, since the work says what it is about.
const SURE_AFTER_WORK: f64 = 0.6;

/// What is so surely none of ours holds no request, whatever its parts lean to (judgement).
const SURELY_NONE: f64 = 0.95;

/// A part has at least so many words.
const LEAST_WORDS: usize = 2;

/// Reads a message; where it holds two requests, the reading of each, in their order.
#[must_use]
pub fn read(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> (Reading, Option<Reading>) {
    let whole = sky::told(text, read_as(text, reader, asker, today), reader, asker, today);
    // After an accident "what now" asks about it, and is no request of its own.
    let chatter = whole.kind == Kind::None && whole.sureness >= SURELY_NONE;
    if whole.follow_up
        && !whole.why
        && let Some((first, second)) = both_of_the_same(text, &whole, reader, asker, today)
    {
        return (first, Some(second));
    }
    if whole.why || whole.follow_up || whole.points.contains(&Point::Accident) || chatter {
        return (whole, None);
    }
    // What is not hers to see is not told in part either.
    if whole.kind == Kind::None && whole.someone_else {
        return (whole, None);
    }
    match split(text, reader, asker, today) {
        Some((first, second)) if !whole.asks && is_detail(&first, &second) => {
            let told = whole.kind == Kind::Record && whole.did.is_some();
            let come = whole.days.first().is_none_or(|(day, _)| *day <= today);
            (if told && come { whole } else { with_detail(first, &second, today) }, None)
        }
        // Whether one may eat after a spray is never left out.
        Some((first, second)) if may_eat(&whole) && ![first.kind, second.kind].contains(&Kind::Spray) => (whole, None),
        // "Two fists of dung, put in on Sunday": the verb stands in the second part alone.
        Some((first, second))
            if !whole.asks
                && whole.did.is_some()
                && whole.did == second.did
                && first.did.is_none()
                && first.saw.is_none() =>
        {
            (whole, None)
        }
        Some((first, second)) if is_undated(&first) && second.asks && second.kind != Kind::Record => {
            (Reading { did: first.did, ..second }, None)
        }
        Some((first, second)) if is_ground_of_water(&first, &second) => (second, None),
        Some((first, second))
            if stand_apart(&first, &second, today, text)
                && !cut(&whole, &first, &second)
                && !is_start(&whole, &first)
                && !is_offer(&whole, &first)
                && ![&first, &second].into_iter().any(tells_of_the_sky) =>
        {
            let sky = || whole.sky.clone();
            (Reading { sky: sky(), ..first }, Some(Reading { sky: sky(), ..second }))
        }
        _ => (whole, None),
    }
}

/// A spray is told and whether to pick or eat is asked.
fn may_eat(whole: &Reading) -> bool {
    whole.kind == Kind::Spray && whole.did == Some(JobKind::Spray) && whole.asks
}

/// The weather is told in it and nothing else: it is the ground of the question beside it.
fn tells_of_the_sky(part: &Reading) -> bool {
    !part.sky.is_empty() && !part.asks && part.did.is_none() && part.saw.is_none() && part.put_off.is_none()
}

/// "Boards for that one, and how heavy does it get?": two sums for the bed that was measured in the message before.
fn both_of_the_same(
    text: &str,
    whole: &Reading,
    reader: &Reader<'_>,
    asker: &Asker,
    today: NaiveDate,
) -> Option<(Reading, Reading)> {
    let sum = |kind: Kind| matches!(kind, Kind::Build | Kind::Load | Kind::Mix | Kind::Space | Kind::Seed);
    let before = asker.before.as_ref().filter(|before| !before.measures.is_empty())?;
    if !sum(whole.kind) || whole.measures != before.measures {
        return None;
    }
    let read = Text::read(text);
    borders(&read).into_iter().filter(|border| border.joins).find_map(|border| {
        let parts = (text.get(..border.left)?, text.get(border.right..)?);
        let long = |part: &str| part.split_whitespace().count() > LEAST_WORDS;
        let part = |part: &str| read_part(part, read.language, reader, asker, today);
        let (first, second) = (long(parts.0) && long(parts.1)).then(|| (part(parts.0), part(parts.1)))?;
        let fits = |part: &Reading| {
            sum(part.kind) && part.sureness >= SURE_ALONE && part.follow_up && part.measures == before.measures
        };
        (fits(&first) && fits(&second) && first.kind != second.kind).then_some((first, second))
    })
}

/// The best place to part the text: where the less sure of both parts is surest.
fn split(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Option<(Reading, Reading)> {
    let read = Text::read(text);
    let alone = Asker { before: None, ..asker.clone() };
    let mut best: Option<(f64, Reading, Reading)> = None;
    for Border { left, right, joins } in borders(&read) {
        let parts = (text.get(..left)?, text.get(right..)?);
        let words = |part: &str| part.split_whitespace().count();
        if words(parts.0) < LEAST_WORDS || words(parts.1) < LEAST_WORDS {
            continue;
        }
        let first = read_part(parts.0, read.language, reader, &alone, today);
        let second = read_part(parts.1, read.language, reader, &alone, today);
        let (first, second) = (as_told(first), as_told(second));
        // "Put them in this week or wait" is a choice.
        let choice = text.get(left..right).is_some_and(|joint| matches!(joint, "or" | "Or" | "ya" | "या"));
        if choice && first.did.is_some() && !first.asks {
            continue;
        }
        let second = as_due_again(&first, second);
        if !joins && !parted_plainly(&first, &second, parts) {
            continue;
        }
        let sure = first.sureness.min(second.sureness);
        if best.as_ref().is_none_or(|(before, ..)| sure > *before) {
            best = Some((sure, first, second));
        }
    }
    let (sure, first, second) = best?;
    let told = first.kind == Kind::Record && first.did.is_some() && first.sureness >= SURE_ALONE;
    if sure < if told { SURE_AFTER_WORK } else { SURE_ALONE } {
        return None;
    }
    // What one part leaves unsaid, the other says: "how much water for okra and when is it ready".
    let mut second = beside(second, &first, asker);
    // Work told beside "again today?", "when next?", "when may we pick?" is what the answer counts from, not what was
    // on record before.
    let of_that = match first.did {
        Some(JobKind::Water) => second.kind == Kind::Water,
        Some(JobKind::Spray) => second.kind == Kind::Spray,
        Some(JobKind::Feed) => second.kind == Kind::Feed,
        _ => false,
    };
    if of_that && second.did.is_none() {
        second.did = first.did;
        second.days.splice(0..0, first.days.iter().copied());
        if second.days.is_empty() && first.did != Some(JobKind::Water) {
            second.days.push((today, today));
        }
        if second.materials.is_empty() {
            second.materials.clone_from(&first.materials);
        }
    }
    let first = if first.crops.is_empty() && first.measures.is_empty() && !first.beds_named {
        beside(first, &second, asker)
    } else {
        first
    };
    Some((first, second))
}

/// A part with what it leaves unsaid taken from the other one; its own measures stay as they are.
fn beside(part: Reading, other: &Reading, asker: &Asker) -> Reading {
    let measures = part.measures.clone();
    let mut part = Reading { follow_up: false, ..completed(part, other, Says::NoSubject, asker) };
    if !measures.is_empty() {
        part.measures = measures;
    }
    part
}

/// Work that is told and not asked about is a record, whatever its words lean to.
fn as_told(part: Reading) -> Reading {
    if part.did.is_some() && !part.asks && part.kind != Kind::Record {
        return Reading { kind: Kind::Record, sureness: part.sureness.max(SURE_ALONE), ..part };
    }
    part
}

/// "Fed today, when next?", "neem sprayed yesterday, may we pick?": what is asked after work without naming anything is
/// asked of that work.
fn as_due_again(first: &Reading, second: Reading) -> Reading {
    /// A question that is less sure of itself is asked of the work just told (judgement).
    const SURELY: f64 = 0.8;
    let same_crops = second.crops.iter().all(|crop| first.crops.contains(crop));
    let bare = same_crops && !second.beds_named && second.measures.is_empty() && second.did.is_none();
    // "Fed today, when is neem due?" names another work; "what else is due" asks for all.
    let other = second.materials.iter().any(|material| !first.materials.contains(material));
    let bare = bare && !other && (second.kind != Kind::Due || second.sureness < SURELY);
    let again = second.asks && second.points.contains(&Point::Time);
    let waits = |part: &Reading| part.points.contains(&Point::Wait);
    let eats = second.kind == Kind::Harvest || second.asks && (waits(&second) || waits(first));
    let kind = match first.did {
        Some(JobKind::Spray) if bare && (again || eats) => Kind::Spray,
        Some(JobKind::Feed) if bare && again && second.kind != Kind::Water => Kind::Feed,
        // How long it stays and when it comes off.
        Some(JobKind::Net) if bare && again && !matches!(second.kind, Kind::Water | Kind::Feed | Kind::Spray) => {
            Kind::Shade
        }
        Some(JobKind::Net) if bare && second.asks && second.sureness < SURELY => Kind::Shade,
        _ => return second,
    };
    Reading { kind, sureness: second.sureness.max(SURE_ALONE), ..second }
}

/// A sowing told as the ground of a question about its harvest is no record beside it.
fn is_start(whole: &Reading, first: &Reading) -> bool {
    whole.kind == Kind::Harvest && matches!(first.did, Some(JobKind::Sow | JobKind::Plant))
}

/// "Sowed it too thick, how far apart …": of no day and no bed, it is what the question beside it is about.
fn is_undated(first: &Reading) -> bool {
    let sown = matches!(first.did, Some(JobKind::Sow | JobKind::Plant));
    // "In a 20 L bag" tells what bed it is, and not which.
    let placed = first.beds_named || first.bed_kind.is_some() && first.quantities.is_empty();
    sown && first.kind == Kind::Record && !first.asks && first.days.is_empty() && !placed
}

/// "It all dries by noon, how much water": what was seen of no bed that is named is why the question is asked.
fn is_ground_of_water(first: &Reading, second: &Reading) -> bool {
    let nowhere = first.beds.is_empty() && !first.beds_named && first.crops.is_empty() && first.bed_kind.is_none();
    first.saw.is_some() && first.did.is_none() && nowhere && second.kind == Kind::Water && second.asks
}

/// What follows work told and neither asks nor tells of something else: "sprayed the chilli. garlic spray. yesterday".
fn is_detail(first: &Reading, second: &Reading) -> bool {
    /// A surer part about another crop is a request in few words: "spacing for okra".
    const SURELY: f64 = 0.9;
    let told = first.kind == Kind::Record && first.did.is_some() && !first.asks;
    let own = second.did.is_some() && second.did != first.did || second.saw.is_some() || second.put_off.is_some();
    let other = own || second.asks || !second.measures.is_empty() || !second.signs.is_empty() || second.new_bed;
    let of_it = match first.did {
        Some(JobKind::Spray) => second.kind == Kind::Spray,
        Some(JobKind::Feed) => second.kind == Kind::Feed,
        Some(JobKind::Water) => second.kind == Kind::Water,
        _ => false,
    };
    let nothing = matches!(second.kind, Kind::None | Kind::Person | Kind::Trouble);
    let of_another = second.crops.iter().any(|crop| !first.crops.contains(crop));
    told && !other && !nothing && (of_it || second.sureness < SURELY || !of_another && !second.beds_named)
}

/// The work with what the detail adds; a day still to come is none of the work's.
fn with_detail(first: Reading, detail: &Reading, today: NaiveDate) -> Reading {
    let mut whole = first;
    let come = detail.days.iter().any(|(day, _)| *day <= today);
    if whole.days.is_empty() && !detail.days.is_empty() && !come {
        whole.days.push((today, today));
    }
    whole.days.extend(detail.days.iter().copied());
    whole.quantities.extend(detail.quantities.iter().copied());
    if whole.materials.is_empty() {
        whole.materials.clone_from(&detail.materials);
    }
    whole
}

/// "Two mugs, and shall I pour more?": what the whole message does not tell as poured was only offered.
fn is_offer(whole: &Reading, first: &Reading) -> bool {
    whole.asks && whole.did.is_none() && first.did == Some(JobKind::Water)
}

/// The border runs through the measures of one thing: "a box of 3 x 2 ft, 10 in deep".
fn cut(whole: &Reading, first: &Reading, second: &Reading) -> bool {
    whole.measures.iter().any(|measured| !first.measures.contains(measured) && !second.measures.contains(measured))
}

/// Without a joining word the part before a comma or stop is most often the ground of the question after it. Two
/// requests they are where one tells of work or of what was seen, or where each is a question with its own mark.
fn parted_plainly(first: &Reading, second: &Reading, (left, right): (&str, &str)) -> bool {
    /// How sure two questions with their own marks must be (judgement).
    const SURELY: f64 = 0.9;
    let tells = |part: &Reading| part.kind == Kind::Record && (part.did.is_some() || part.saw.is_some());
    let questions = [left, right].iter().all(|part| part.trim_end().ends_with('?'));
    let sure = first.sureness >= SURELY && second.sureness >= SURELY;
    let ails = |part: &Reading| part.kind == Kind::Trouble && !part.signs.is_empty();
    tells(first) || tells(second) || questions && sure || ails(first) && ails(second)
}

/// Where a text may be parted: byte places before and after, and whether a joining word stands there.
struct Border {
    left: usize,
    right: usize,
    joins: bool,
}

/// Each comma, stop, dash between thoughts or joining word.
fn borders(text: &Text) -> Vec<Border> {
    const JOINING: [&str; 10] = ["and", "or", "aur", "ya", "और", "या", "also", "plus", "n", "&"];
    let joins = |at: usize| JOINING.contains(&text.normal(at));
    let marks = |at: usize| matches!(text.normal(at), "," | "." | "?" | ";" | "।" | "!");
    let border = |(at, token): (usize, &Token)| {
        // A question mark belongs to the part it ends.
        let left = if joins(at) { token.span.start } else { token.span.end };
        let is_one = marks(at) || joins(at) || is_spaced_dash(text, token);
        is_one.then(|| Border { left, right: token.span.end, joins: joins(at) || joins(at + 1) })
    };
    text.tokens.iter().enumerate().filter_map(border).collect()
}

/// "… - …" between two thoughts; "4-5" and "east-box" hold none.
fn is_spaced_dash(text: &Text, token: &Token) -> bool {
    let spaced =
        |byte: Option<usize>| byte.and_then(|at| text.original.as_bytes().get(at)).is_some_and(u8::is_ascii_whitespace);
    matches!(token.normal.as_str(), "-" | "–" | "—")
        && spaced(token.span.start.checked_sub(1))
        && spaced(Some(token.span.end))
}

/// Two requests are two only where their kinds differ, and where one is not the ground of the other:
/// "sowed radish on 25 April, when is it ready" is one question, and whether one may pick after a spray is
/// a question about the spray, as is when the next one is due.
fn stand_apart(first: &Reading, second: &Reading, today: NaiveDate, text: &str) -> bool {
    let ground = |told: &Reading, asked: &Reading, told_first: bool| {
        let started = matches!(told.did, Some(JobKind::Sow | JobKind::Plant | JobKind::Spray));
        let again = match told.did {
            Some(JobKind::Spray) => asked.kind == Kind::Spray,
            Some(JobKind::Feed) => asked.kind == Kind::Feed,
            _ => false,
        };
        // Work told of a bed by its name is noted as well, and of a crop where it was just done.
        let fresh = told.days.iter().all(|(day, _)| (today - *day).num_days() <= 1) && !tells_of_last(text);
        // The only box of hers is told as plainly by its kind; when the next is due may be asked of a spray just done.
        let only = told.bed_kind.is_some() && told.beds.len() == 1;
        let next = asked.points.contains(&Point::Time) && !asked.points.contains(&Point::Wait);
        let of_crop = !told.crops.is_empty() && fresh && (told.did != Some(JobKind::Spray) || next);
        let which = told.beds_named || only || of_crop;
        let noted = told_first && which && told.kind == Kind::Record;
        !noted && (again || started && asked.kind == Kind::Harvest)
    };
    // A trouble stands beside a call for a person, or beside what is wrong with another crop.
    let other_crop = first.crops.iter().all(|crop| !second.crops.contains(crop));
    let two_troubles = first.kind == Kind::Trouble
        && second.kind == Kind::Trouble
        && [first, second].iter().all(|part| !part.crops.is_empty() && !part.signs.is_empty())
        && other_crop;
    let calls = first.kind == Kind::Person || second.kind == Kind::Person;
    // "Fed it on Sunday. Also the leaves are cupping": told as two things.
    let also = first.kind == Kind::Record && first.did.is_some() && second.kind == Kind::Trouble && tells_of_more(text);
    let talk = |reading: &Reading| {
        let alone = reading.kind == Kind::Trouble && !calls && !two_troubles && !also;
        matches!(reading.kind, Kind::None | Kind::Care) || alone
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
        let request = !reading.measures.is_empty() && reading.sureness >= SURELY;
        reading.asks
            || reading.did.is_some()
            || reading.saw.is_some()
            || request
            || about && reading.sureness >= PLAINLY
            || matches!(reading.kind, Kind::Trouble) && !reading.signs.is_empty()
    };
    speaks(first)
        && speaks(second)
        && differ
        && !ground(first, second, true)
        && !ground(second, first, false)
        && !talk(first)
        && !talk(second)
}

/// "Also", "one more thing": what follows is a matter of its own.
fn tells_of_more(text: &str) -> bool {
    const MORE: [&str; 6] = ["also", "plus", "separately", "aur", "और", "साथ"];
    let text = Text::read(text);
    (1..text.tokens.len()).any(|at| {
        let begins = matches!(text.normal(at - 1), "." | "," | "।" | ";");
        begins && MORE.contains(&text.normal(at))
    })
}

/// "Last fed on 4 May. Next?" tells what was done before; nothing is to be noted.
fn tells_of_last(text: &str) -> bool {
    const LAST: [&str; 8] = ["last", "previous", "pichli", "pichla", "aakhri", "पिछली", "पिछला", "आख़िरी"];
    Text::read(text).tokens.iter().any(|token| LAST.contains(&token.normal.as_str()))
}
