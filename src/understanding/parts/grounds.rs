//! What one part of a message tells as the ground of the question beside it.

use super::SURE_ALONE;
use super::apart::FRESH_DAYS;
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::script::Text;
use crate::understanding::parts::NOT_UP;
use crate::understanding::reading::Reading;
use chrono::NaiveDate;

/// "Fed today, when next?", "neem sprayed yesterday, may we pick?": what is asked after work without naming anything is
/// asked of that work.
pub(super) fn as_due_again(first: &Reading, second: Reading, text: &str) -> Reading {
    /// A question that is less sure of itself is asked of the work just told (judgement).
    const SURELY: f64 = 0.8;
    /// A date is asked for in so few words.
    const NEXT_DATE: usize = 6;
    // "After neem, and when is its next feed": a word of its own says what is asked.
    let own = matches!(second.kind, Kind::Water | Kind::Feed | Kind::Shade | Kind::Sow | Kind::Space | Kind::Mix);
    if own && first.did.is_none() && second.speaks_of == [second.kind] {
        return second;
    }
    let same_crops = second.crops.iter().all(|crop| first.crops.contains(crop));
    let bare = same_crops && !second.beds_named && second.measures.is_empty() && second.did.is_none();
    // "Fed today, when is neem due?" names another work; "what else is due" asks for all.
    let other = second.materials.iter().any(|material| !first.materials.contains(material));
    let next = second.points.contains(&Point::Time) && says_next(text);
    // "The next date, please", "time for another?" ask without a word that asks when.
    let few = text.split_whitespace().count() <= NEXT_DATE;
    let named = few && (says_next(text) || says_another(text)) && second.did.is_none();
    let bare = bare && !other && (second.kind != Kind::Due || second.sureness < SURELY || next || named);
    let again = second.asks && second.points.contains(&Point::Time) || named;
    let waits = |part: &Reading| part.points.contains(&Point::Wait);
    let eats = second.kind == Kind::Harvest || second.asks && (waits(&second) || waits(first));
    // "Want to spray this evening, how soon after can we pick": of that spray, done or to come.
    let planned = first.did.is_none() && first.kind == Kind::Spray;
    let kind = match first.did.or(planned.then_some(JobKind::Spray)) {
        Some(JobKind::Spray) if planned && !eats => return second,
        Some(JobKind::Spray) if bare && (again || eats) => Kind::Spray,
        Some(JobKind::Feed) if bare && again && second.kind != Kind::Water => Kind::Feed,
        // "Sowed it today, when can we eat them": when they are ready.
        Some(JobKind::Sow | JobKind::Plant) if bare && again && waits(&second) => Kind::Harvest,
        // "Watered at six, is the evening needed too": one more turn of the same.
        Some(JobKind::Water) if bare && second.asks && names_no_matter(&second) => Kind::Water,
        // How long it stays and when it comes off.
        Some(JobKind::Net) if bare && again && !matches!(second.kind, Kind::Water | Kind::Feed | Kind::Spray) => {
            Kind::Shade
        }
        Some(JobKind::Net) if bare && second.asks && second.sureness < SURELY => Kind::Shade,
        _ => return second,
    };
    let mut asked = Reading { kind, sureness: second.sureness.max(SURE_ALONE), asks: second.asks || named, ..second };
    if named && matches!(kind, Kind::Spray | Kind::Feed) {
        asked.points.insert(Point::Time);
    }
    asked
}

/// "Time for another?", "ek aur kab": one more turn of what was told, and no other plant.
fn says_another(text: &str) -> bool {
    const TURNS: [&str; 7] = ["time", "due", "turn", "dose", "round", "kab", "कब"];
    let text = Text::read(text);
    let says = |word: &str| text.tokens.iter().any(|token| token.normal == word);
    let another = says("another") || says("aur") && says("ek") || says("और") && says("एक");
    another && TURNS.into_iter().any(says)
}

/// "A net, and how much water once it is under the net": the only word of the second part that speaks of another kind
/// says what it asks.
pub(super) fn as_its_word_says(first: &Reading, second: Reading) -> Reading {
    let computed = |kind: Kind| matches!(kind, Kind::Water | Kind::Feed | Kind::Space | Kind::Mix | Kind::Load);
    match second.speaks_of.as_slice() {
        [kind] if second.asks && second.did.is_none() && second.kind == first.kind && computed(*kind) => {
            Reading { kind: *kind, sureness: SURE_ALONE.max(second.sureness), ..second }
        }
        _ => second,
    }
}

/// "4 x 2 ft box, soil needed": how much of it is asked, though no word asks.
pub(super) fn as_needed(part: Reading, text: &str) -> Reading {
    const NEEDED: [&str; 10] =
        ["needed", "required", "reqd", "chahiye", "chaiye", "lagegi", "lagega", "चाहिए", "लगेगी", "लगेगा"];
    let summed = matches!(part.kind, Kind::Mix | Kind::Build | Kind::Seed | Kind::Load) && !part.measures.is_empty();
    let read = Text::read(text);
    let last = read.tokens.iter().rfind(|token| token.is_word());
    let needed = last.is_some_and(|token| NEEDED.contains(&token.normal.as_str()));
    Reading { asks: part.asks || summed && needed && part.did.is_none(), ..part }
}

/// "Next is which day", "agli kis din": one more time of the same, and nothing else that is due.
pub(super) fn says_next(text: &str) -> bool {
    const NEXT: [&str; 12] =
        ["next", "nxt", "again", "agla", "agli", "agle", "dobara", "phir", "अगला", "अगली", "दोबारा", "फिर"];
    const ELSE: [&str; 12] =
        ["else", "other", "jobs", "job", "work", "kaam", "aur", "baaki", "काम", "और", "बाकी", "all"];
    let text = Text::read(text);
    let says = |list: &[&str]| text.tokens.iter().any(|token| list.contains(&token.normal.as_str()));
    says(&NEXT) && !says(&ELSE)
}

/// A question of which no word speaks of any matter: "is the evening needed too".
pub(super) fn names_no_matter(part: &Reading) -> bool {
    let jobs = part.jobs.iter().all(|job| *job == JobKind::Water);
    let said = part.speaks_of.iter().all(|kind| *kind == Kind::Water);
    jobs && said && part.signs.is_empty() && part.troubles.is_empty() && part.kind != Kind::Person
}

/// "To spray neem this evening, and how soon after may we pick": the wait after the spray, not the ripening.
pub(super) fn as_wait_after(first: &Reading, second: Reading, text: &str) -> Reading {
    const AFTER: [&str; 6] = ["after", "afterwards", "baad", "bad", "बाद", "since"];
    let after = || Text::read(text).tokens.iter().any(|token| AFTER.contains(&token.normal.as_str()));
    let picks = second.kind == Kind::Harvest && second.crops.is_empty() && second.measures.is_empty();
    if first.kind == Kind::Spray && picks && after() {
        return Reading { kind: Kind::Spray, ..second };
    }
    second
}

/// A sowing told as the ground of a question about its harvest is no record beside it.
pub(super) fn is_start(whole: &Reading, first: &Reading, today: NaiveDate) -> bool {
    let told = first.kind == Kind::Record && !first.asks;
    // "Sown today", "planted on Saturday": noted as well. Shoots are cut within days.
    let fresh_days = if first.microgreen { 1 } else { FRESH_DAYS };
    let fresh = |(day, _): &(NaiveDate, NaiveDate)| (0..=fresh_days).contains(&(today - *day).num_days());
    let noted = !first.days.is_empty() && first.days.iter().all(fresh);
    told && !noted && whole.kind == Kind::Harvest && matches!(first.did, Some(JobKind::Sow | JobKind::Plant))
}

/// "Sowed it too thick, how far apart …": of no day and no bed, it is what the question beside it is about.
pub(super) fn is_undated(first: &Reading) -> bool {
    let sown = matches!(first.did, Some(JobKind::Sow | JobKind::Plant));
    // "In a 20 L bag" tells what bed it is, and not which.
    let placed = first.beds_named || first.bed_kind.is_some() && first.quantities.is_empty();
    let told = first.kind == Kind::Record && !first.asks && first.days.is_empty();
    told && (sown && !placed || first.did.is_some() && first.on_no_day)
}

/// "Garlic is out, what goes into that box": what stood in none of her beds is noted in none, and is what the next one
/// follows.
pub(super) fn is_ground_of_sowing(first: &Reading, second: &Reading) -> bool {
    let pulled = matches!(first.did, Some(JobKind::Pull | JobKind::Clear)) && first.days.is_empty();
    let nowhere = first.beds.is_empty() && !first.beds_named && !first.crops.is_empty();
    let unnamed = second.crops.is_empty() || second.crops == first.crops;
    pulled && nowhere && unnamed && second.kind == Kind::Sow && second.asks && second.did.is_none()
}

/// "It all dries by noon, how much water": what was seen of no bed that is named is why the question is asked.
pub(super) fn is_ground_of_water(first: &Reading, second: &Reading) -> bool {
    let nowhere = first.beds.is_empty() && !first.beds_named && first.crops.is_empty() && first.bed_kind.is_none();
    // Of a tray that was measured and is none of hers nothing can be noted either.
    let described = first.beds.is_empty() && !first.beds_named && !first.measures.is_empty();
    // "Soil still damp, do the cucumbers want water": of plants that stand in no bed of hers.
    let unplaced = first.beds.is_empty() && !first.beds_named && second.beds.is_empty() && !second.beds_named;
    let nowhere = nowhere || described || unplaced;
    // "Do they need any today?"
    let any = second.kind == Kind::Due && !second.crops.is_empty() && second.materials.is_empty();
    first.saw.is_some() && first.did.is_none() && nowhere && (second.kind == Kind::Water || any) && second.asks
}

/// "Two mugs, and shall I pour more?": what the whole message does not tell as poured was only offered.
pub(super) fn is_offer(whole: &Reading, first: &Reading) -> bool {
    whole.asks && whole.did.is_none() && first.did == Some(JobKind::Water)
}

/// "It hangs limp, and I did water. What happened to it": the care that was given is the ground of that question.
pub(super) fn is_of_what_ails(whole: &Reading, first: &Reading) -> bool {
    let cared = matches!(first.did, Some(JobKind::Water | JobKind::Feed)) && whole.did == first.did;
    whole.kind == Kind::Trouble && whole.asks && !whole.signs.is_empty() && cared
}

/// "Touched the soil in the east box", "ungli dali": how it was tried, and nothing asked or found.
pub(super) fn is_only_felt(first: &Reading, text: &str) -> bool {
    const FELT: [&str; 23] = [
        "touched",
        "felt",
        "feeling",
        "poked",
        "checked",
        "tested",
        "finger",
        "fingers",
        "fingertip",
        "ungli",
        "unglee",
        "ungali",
        "chhua",
        "chhuya",
        "chhu",
        "chua",
        "dekha",
        "उंगली",
        "छुआ",
        "छूकर",
        "छू",
        "देखा",
        "dug",
    ];
    let nothing = !first.asks && first.did.is_none() && first.saw.is_none() && first.signs.is_empty();
    let nothing = nothing && first.put_off.is_none() && !first.new_bed && first.quantities.is_empty();
    nothing && Text::read(text).tokens.iter().any(|token| FELT.contains(&token.normal.as_str()))
}

/// "Still damp two fingers down. Skip the evening round there?": whether to water, after what was seen of its water.
pub(super) fn as_watering_skipped(first: &Reading, second: Reading, text: &str) -> Reading {
    const SKIP: [&str; 22] = [
        "skip",
        "leave",
        "wait",
        "hold",
        "needed",
        "necessary",
        "off",
        "tonight",
        "chhod",
        "chod",
        "chhodu",
        "rehne",
        "rahne",
        "ruku",
        "ruk",
        "jaroorat",
        "zarurat",
        "छोड",
        "छोडूं",
        "रहने",
        "रुक",
        "जरूरत",
    ];
    let says = || Text::read(text).tokens.iter().any(|token| SKIP.contains(&token.normal.as_str()));
    let other = second.did.is_some() || !second.crops.is_empty() || !second.signs.is_empty() || second.beds_named;
    let jobs = second.jobs.iter().all(|job| *job == JobKind::Water);
    if first.saw.is_some() && first.did.is_none() && second.asks && !other && jobs && says() {
        return Reading { kind: Kind::Water, sureness: second.sureness.max(SURE_ALONE), ..second };
    }
    second
}

/// "I'll spray myself today, tell me the dose": no day is moved, it is the ground of the question.
pub(super) fn is_plan_of(first: &Reading, second: &Reading, today: NaiveDate) -> bool {
    let of_today = first.days.iter().all(|days| *days == (today, today));
    let of_it = match first.put_off {
        Some(JobKind::Spray) => second.kind == Kind::Spray,
        Some(JobKind::Feed) => second.kind == Kind::Feed,
        _ => false,
    };
    of_today && of_it && second.put_off.is_none()
}

/// "The chillies had cake on 1 May, am I late for the next": a question of the feed that was told, whatever its words lean to.
pub(super) fn next_turn(whole: &Reading, first: &Reading, second: &Reading) -> Option<Reading> {
    let kind = match first.did? {
        JobKind::Feed => Kind::Feed,
        JobKind::Spray => Kind::Spray,
        _ => return None,
    };
    let told = first.kind == Kind::Record && !first.asks && !first.days.is_empty();
    let asked = second.asks && second.kind == kind && (second.did.is_none() || second.did == first.did);
    let other = whole.kind == kind || matches!(whole.kind, Kind::Record | Kind::Trouble);
    let points = whole.points.union(&second.points).copied().collect();
    (told && asked && !other).then(|| Reading {
        kind,
        sureness: second.sureness.max(SURE_ALONE),
        did: first.did,
        asks: true,
        points,
        ..whole.clone()
    })
}

/// Work that is told and not asked about is a record, whatever its words lean to.
pub(super) fn as_told(part: Reading) -> Reading {
    /// What the company of its words tells of another world is told so surely.
    const ELSEWHERE: f64 = 0.9;
    if part.kind == Kind::None && part.sureness >= ELSEWHERE {
        return part;
    }
    // A plant that droops although it was watered is no record of the watering.
    let ails = part.kind == Kind::Trouble && !part.signs.is_empty();
    let in_vain = || part.signs.iter().any(|sign| sign == NOT_UP);
    let given = match part.did {
        Some(JobKind::Water | JobKind::Feed | JobKind::TopUp) => true,
        Some(JobKind::Sow) => in_vain(),
        _ => false,
    };
    if part.did.is_some() && !part.asks && part.kind != Kind::Record && !(ails && given) {
        return Reading { kind: Kind::Record, sureness: part.sureness.max(SURE_ALONE), ..part };
    }
    part
}
