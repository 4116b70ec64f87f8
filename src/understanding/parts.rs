//! Several requests in one message: "how much water for okra, and when is the first picking?"

mod apart;
mod borders;
mod crowd;
mod details;
mod grounds;
mod pairs;
mod works;

use super::asker::Asker;
use super::follow_up::{Says, completed};
use super::read::{Reader, read_as, read_noted, read_part};
use super::reading::Reading;
use super::sky;
use super::spelled::spelled_out;
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::script::{Language, Text};
use apart::{counts_from, cut, parted_plainly, stand_apart, tells_of_last};
use borders::{Border, borders, questions_begin};
use chrono::NaiveDate;
pub(super) use crowd::WILL_DO;
use details::{is_a_day_alone, is_detail, with_detail};
use grounds::{
    as_due_again, as_told, as_wait_after, is_ground_of_sowing, is_ground_of_water, is_of_what_ails, is_offer,
    is_plan_of, is_start, is_undated, next_turn,
};
use rustc_hash::FxHashMap;
use std::cell::{Cell, RefCell};

/// The sign of seed that does not come.
pub(super) const NOT_UP: &str = "seed-not-up";

/// A part must be surer than this to stand by itself.
const SURE_ALONE: f64 = 0.7;

/// What follows a plain statement of work may be less sure, since the work says what it is about.
const SURE_AFTER_WORK: f64 = 0.6;

/// What is so surely none of ours holds no request, whatever its parts lean to (judgement).
const SURELY_NONE: f64 = 0.95;

/// What is as surely of one kind holds no two of others.
const SURELY_ONE: f64 = 0.9;

/// A part has at least so many words.
const LEAST_WORDS: usize = 2;

/// A part that tells of work may hold two again, so often: "sown today, when does it come up, and how often to water".
const DEEPEST: u8 = 2;

/// What the parts of one message are read with.
struct By<'a> {
    reader: &'a Reader<'a>,
    /// The asker, and the same without what was said before.
    asker: &'a Asker,
    alone: Asker,
    today: NaiveDate,
    language: Language,
    /// How many words of parts have been read.
    read: Cell<usize>,
    /// What was read already: a part is looked at again where it may hold two.
    known: RefCell<FxHashMap<String, Reading>>,
}

impl By<'_> {
    /// Whether as many parts were tried as a message is worth: one of many commas is no list of requests.
    fn tried_enough(&self) -> bool {
        /// A message of fifteen words may be parted at four borders, and its parts again; a tale of many commas is not
        /// read over and over (judgement, for a reading's time).
        const MOST_WORDS: usize = 70;
        self.read.get() >= MOST_WORDS
    }

    fn part(&self, text: &str) -> Reading {
        self.read.set(self.read.get() + text.split_whitespace().count());
        if let Some(known) = self.known.borrow().get(text) {
            return known.clone();
        }
        let part = as_told(read_part(text, self.language, self.reader, &self.alone, self.today));
        self.known.borrow_mut().insert(text.to_owned(), part.clone());
        part
    }

    /// A part of a list of what was done.
    fn noted(&self, text: &str) -> Reading {
        self.read.set(self.read.get() + text.split_whitespace().count());
        as_told(read_noted(text, self.language, self.reader, &self.alone, self.today))
    }
}

/// Reads a message; where it holds several requests, the first of them and then the others, in their order.
#[must_use]
pub fn read(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> (Reading, Vec<Reading>) {
    read_spelled(&spelled_out(text, reader, asker), reader, asker, today)
}

fn read_spelled(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> (Reading, Vec<Reading>) {
    let whole = sky::told(text, read_as(text, reader, asker, today), reader, asker, today);
    // After an accident "what now" asks about it, and is no request of its own.
    let chatter = whole.kind == Kind::None && whole.sureness >= SURELY_NONE;
    if whole.follow_up
        && !whole.why
        && let Some((first, second)) = both_of_the_same(text, &whole, reader, asker, today)
    {
        return (first, vec![second]);
    }
    // How much of a product that is no one's to pour: nothing else beside it is read on its own.
    let dosed = whole.kind == Kind::Spray && whole.did.is_none() && whole.points.contains(&Point::SyntheticSpray);
    // A poison and a meal, told and not asked, are one matter.
    let poisoned = whole.kind == Kind::Spray
        && !whole.asks
        && whole.points.contains(&Point::SyntheticSpray)
        && whole.points.contains(&Point::Wait);
    if whole.why || whole.follow_up || whole.points.contains(&Point::Accident) || chatter || poisoned || dosed {
        return (whole, Vec::new());
    }
    // What others sow is the ground of the question.
    if whole.likewise && whole.kind == Kind::Sow {
        return (whole, Vec::new());
    }
    // "Three tomatoes in one pot, is that right": one question, though it tells of work.
    if whole.kind == Kind::Space && whole.asks && matches!(whole.did, Some(JobKind::Sow | JobKind::Plant)) {
        return (whole, Vec::new());
    }
    // What is not hers to see is not told in part either.
    if whole.kind == Kind::None && whole.someone_else {
        return (whole, Vec::new());
    }
    let alone = Asker { before: None, ..asker.clone() };
    let by = By {
        reader,
        asker,
        alone,
        today,
        language: asker.text(text).language,
        read: Cell::new(0),
        known: RefCell::default(),
    };
    if let Some((told, planned)) = works::before_a_plan(text, &whole, &by) {
        let (mut first, others) = read_spelled(told, reader, asker, today);
        // The days of the plan were named too; those of the work stand before them.
        if first.days.is_empty() && !planned.is_empty() {
            first.days.push((today, today));
        }
        first.days.extend(planned);
        return (first, others);
    }
    let sky = whole.sky.clone();
    let raw = whole.microgreen && whole.points.contains(&Point::Raw);
    let mut parts = parted(text, whole, &by, DEEPEST).into_iter();
    let Some(mut first) = parts.next() else { return (Reading::default(), Vec::new()) };
    if raw {
        // A tray and eating it raw may stand in two parts.
        first.microgreen = true;
        first.points.insert(Point::Raw);
    }
    let others: Vec<Reading> = parts.collect();
    if others.is_empty() {
        return (first, others);
    }
    let under = |part: Reading| Reading { sky: sky.clone(), ..part };
    (under(first), others.into_iter().map(under).collect())
}

/// Two requests, and the texts they stand in, the second with the mark before it.
struct Two<'t> {
    first: Reading,
    second: Reading,
    texts: (&'t str, &'t str),
}

/// The requests of a text, of which `whole` is the reading as one.
fn parted(text: &str, whole: Reading, by: &By<'_>, depth: u8) -> Vec<Reading> {
    let today = by.today;
    let Some(Two { first, second, texts }) = split(text, &whole, by) else { return paired(text, whole, by) };
    let both = |first: Reading, second: Reading| {
        let mut all = again(first, texts.0, by, depth);
        all.extend(again(second, texts.1, by, depth));
        all
    };
    if works::are_two(&first, &second) && !cut(&whole, &first, &second) {
        return both(first, second);
    }
    if is_plan_of(&first, &second, today) {
        return vec![second];
    }
    // "Watered the east box and the chilli pot this morning": one work on both.
    if !whole.asks && works::tells_of_work(&first) && works::is_only_place(&second) && whole.did == first.did {
        let all = first.beds.iter().chain(&second.beds).all(|bed| whole.beds.contains(bed));
        if all && whole.days.len() <= 1 {
            return vec![whole];
        }
    }
    // "Come on Wednesday and look at the tomato": what the person is called for.
    if first.kind == Kind::Person && second.kind == Kind::Trouble && second.signs.is_empty() && !second.asks {
        return vec![if whole.kind == Kind::Person { whole } else { first }];
    }
    if !whole.asks && is_detail(&first, &second) {
        let told = whole.kind == Kind::Record && whole.did.is_some();
        let come = whole.days.first().is_none_or(|(day, _)| *day <= today);
        return vec![if told && come { whole } else { with_detail(first, &second, today) }];
    }
    // Whether one may eat after a spray is never left out.
    if may_eat(&whole) && ![first.kind, second.kind].contains(&Kind::Spray) {
        return vec![whole];
    }
    // "Mix for 2 boxes 4x3 ft and one 5x2 ft box": of both together.
    if whole.groups.len() > 1 && !second.asks && second.speaks_of.is_empty() && second.did.is_none() {
        return vec![whole];
    }
    // "Two fists of dung, put in on Sunday": the verb stands in the second part alone.
    if !whole.asks && whole.did.is_some() && whole.did == second.did && first.did.is_none() && first.saw.is_none() {
        return vec![whole];
    }
    // "Khali, tomato bag, 40 g, 15 May": what was fed, and no weight that was picked.
    let fed = whole.did == Some(JobKind::Feed) && first.did.is_none() && !first.materials.is_empty();
    if !whole.asks && fed && second.did == Some(JobKind::Pick) {
        return vec![whole];
    }
    if is_ground_of_sowing(&first, &second) {
        return vec![Reading { follows: true, crops: first.crops, ..second }];
    }
    if is_undated(&first) && second.asks && second.kind != Kind::Record {
        return vec![Reading { did: first.did, ..second }];
    }
    if is_ground_of_water(&first, &second) {
        let crops = if second.crops.is_empty() { first.crops } else { second.crops };
        let saw = second.saw.or(first.saw);
        let quantities = [first.quantities, second.quantities].concat();
        return vec![Reading { kind: Kind::Water, crops, saw, quantities, ..second }];
    }
    if counts_from(&first, &second, texts.0) {
        let kind = match first.did {
            Some(JobKind::Feed) => Kind::Feed,
            Some(JobKind::Spray) => Kind::Spray,
            _ => Kind::Harvest,
        };
        return vec![Reading { kind, sureness: whole.sureness.max(SURE_ALONE), did: first.did, ..whole }];
    }
    // "Touched the soil, still damp two fingers down.": one thing that was seen.
    let seen = whole.kind == Kind::Record && whole.saw.is_some() && !whole.asks;
    if seen && [&whole, &first, &second].iter().all(|part| part.did.is_none()) {
        return vec![whole];
    }
    let apart = stand_apart(&first, &second, today, text, texts.1)
        && !cut(&whole, &first, &second)
        && !is_start(&whole, &first, today)
        && !is_of_what_ails(&whole, &first)
        && !is_offer(&whole, &first)
        && ![&first, &second].into_iter().any(tells_of_the_sky)
        && ![&first, &second].into_iter().any(tells_of_help);
    if !apart && let Some(asked) = next_turn(&whole, &first, &second) {
        return vec![asked];
    }
    if apart { both(first, second) } else { paired(text, whole, by) }
}

/// One request, or two things asked of one.
fn paired(text: &str, whole: Reading, by: &By<'_>) -> Vec<Reading> {
    match pairs::of_one(text, &whole, by) {
        Some((first, second)) => {
            let (first, second) = completed_together(first, second, by);
            vec![first, second]
        }
        None => vec![whole],
    }
}

/// A part that tells of work, parted once more where it holds more than that.
fn again(part: Reading, text: &str, by: &By<'_>, depth: u8) -> Vec<Reading> {
    // What was done long ago is the ground of its question.
    let old = |(day, _): &(NaiveDate, NaiveDate)| (by.today - *day).num_days() > 1;
    if depth == 0 || part.did.is_none() || part.asks && part.days.iter().any(old) {
        return vec![part];
    }
    let parts = parted(text, by.part(text), by, depth - 1);
    if parts.len() < 2 {
        return vec![part];
    }
    let unsaid = |reading: &Reading| reading.crops.is_empty() && !reading.beds_named && reading.measures.is_empty();
    let filled =
        parts.into_iter().map(|reading| if unsaid(&reading) { beside(reading, &part, by.asker) } else { reading });
    filled.collect()
}

/// A spray is told and whether to pick or eat is asked.
fn may_eat(whole: &Reading) -> bool {
    whole.kind == Kind::Spray && whole.did == Some(JobKind::Spray) && whole.asks
}

/// The weather is told in it and nothing else: it is the ground of the question beside it.
fn tells_of_the_sky(part: &Reading) -> bool {
    !part.sky.is_empty() && !part.asks && part.did.is_none() && part.saw.is_none() && part.put_off.is_none()
}

/// "My son is visiting and can help": no call for a person.
fn tells_of_help(part: &Reading) -> bool {
    part.kind == Kind::Person && part.points.contains(&Point::HelpAtHand)
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
    let read = asker.text(text);
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
fn split<'t>(text: &'t str, whole: &Reading, by: &By<'_>) -> Option<Two<'t>> {
    let read = Text::read_as(text, by.language);
    let mut best: Option<((bool, f64), Two<'t>)> = None;
    // Work told with its question may have no mark between them.
    let unmarked = if whole.did.is_some() && whole.asks { questions_begin(&read) } else { Vec::new() };
    for border in borders(&read).into_iter().chain(unmarked) {
        let Border { mark, left, right, joins, .. } = border;
        let texts = (text.get(..left)?, text.get(right..)?);
        let words = |part: &str| part.split_whitespace().count();
        if words(texts.0) < LEAST_WORDS || words(texts.1) < LEAST_WORDS {
            continue;
        }
        if by.tried_enough() {
            break;
        }
        let (first, second) = (by.part(texts.0), by.part(texts.1));
        let works = first.did.is_some() || second.did.is_some();
        if !works && (is_foreign(&first, whole) || is_foreign(&second, whole)) {
            continue;
        }
        // "…, 16 May": the day of what was told before it.
        let unmarked = border.mark == border.right;
        if is_a_day_alone(&second, texts.1) || unmarked && !is_work_and_question(&first, &second) {
            continue;
        }
        // "Put them in this week or wait", "on the 20th or on the 25th" is a choice.
        let choice = text.get(left..right).is_some_and(|joint| matches!(joint, "or" | "Or" | "ya" | "या"));
        if choice && is_a_day_alone(&first, texts.0) {
            continue;
        }
        if choice && (first.did.is_some() || first.kind == Kind::Record && whole.asks) && !first.asks {
            continue;
        }
        if joins && works::is_one_of_two_beds(whole, &first, &second) {
            continue;
        }
        let marked = text.get(mark..)?;
        let (first, second) = works::with_one_verb((first, second), texts, border, by);
        let (first, second) = works::as_a_log(texts, marked, (&first, &second), by).unwrap_or((first, second));
        // "Touched the soil, still damp": what was felt is told behind it.
        if grounds::is_only_felt(&first, texts.0) {
            continue;
        }
        let first = grounds::as_needed(first, texts.0);
        let second = grounds::as_its_word_says(&first, second);
        let second = as_due_again(&first, second, texts.1);
        let second = grounds::as_watering_skipped(&first, second, texts.1);
        let second = as_wait_after(&first, second, texts.1);
        let second = crowd::as_too_many(&first, second, texts.1);
        // "Last neem was on 14 May. Which day next" counts from there.
        if first.did.is_some() && second.asks && second.kind == Kind::Due && tells_of_last(texts.0) {
            continue;
        }
        if !joins && !parted_plainly(&first, &second, texts) {
            continue;
        }
        let (mut first, mut second) = (first, second);
        works::with_one_day(&mut first, &mut second, border);
        // Where works part from each other says more than where one is surer.
        let works = works::are_two(&first, &second);
        let sure = (works, first.sureness.min(second.sureness));
        if best.as_ref().is_none_or(|(before, _)| sure > *before) {
            best = Some((sure, Two { first, second, texts: (texts.0, marked) }));
        }
    }
    let ((_, sure), Two { first, second, texts }) = best?;
    let told = first.kind == Kind::Record && first.did.is_some() && first.sureness >= SURE_ALONE;
    // "The distance and the feed, both": each has a word of its own.
    let spoken = first.kind != second.kind && [&first, &second].iter().all(|part| part.speaks_of.contains(&part.kind));
    // "Two kilos of dung went in, too much?": what names nothing asks of that work, where the whole surely does.
    let of_that = whole.asks && whole.sureness >= SURELY_ONE && second.names_nothing();
    if sure < if told && !of_that || spoken { SURE_AFTER_WORK } else { SURE_ALONE } {
        return None;
    }
    // Of what the whole is surely about, one of its parts is too; but work that is told has its own.
    let works = first.did.is_some() || second.did.is_some();
    let surely = whole.sureness >= SURELY_ONE && whole.kind != Kind::None && !works;
    if surely && ![first.kind, second.kind].contains(&whole.kind) {
        return None;
    }
    let (first, second) = completed_together(first, second, by);
    Some(Two { first, second, texts })
}

/// Half of it sounds as what the whole is next to never said of, and no word of that half speaks of it: "will both
/// share 3 x 2 ft", before "how many of each".
fn is_foreign(part: &Reading, whole: &Reading) -> bool {
    /// Of 174 messages that were read as two, the 140 that hold two have more of either kind in the whole, or a word for
    /// it; work that is told is noted all the same.
    const NEXT_TO_NEVER: f64 = 0.004;
    let said = part.speaks_of.contains(&part.kind) || part.kind == whole.kind;
    let share = whole.leans.iter().find(|(kind, _)| *kind == part.kind);
    !said && share.is_some_and(|(_, share)| *share < NEXT_TO_NEVER)
}

/// Work that is told, and a question of something else after it.
fn is_work_and_question(first: &Reading, second: &Reading) -> bool {
    let placed = !first.crops.is_empty() || first.beds_named || first.bed_kind.is_some() || !first.days.is_empty();
    let told = first.kind == Kind::Record && first.did.is_some() && !first.asks && placed;
    told && second.asks && second.did.is_none() && !matches!(second.kind, Kind::Record | Kind::None | Kind::Trouble)
}

/// What one part leaves unsaid, the other says: "how much water for okra and when is it ready".
fn completed_together(first: Reading, second: Reading, by: &By<'_>) -> (Reading, Reading) {
    let mut second = beside(details::without_other_bed(second, &first), &first, by.asker);
    // Work told beside "again today?", "when next?", "when may we pick?" is what the answer counts from, not what was
    // on record before.
    let of_that = match first.did {
        Some(JobKind::Water) => second.kind == Kind::Water,
        Some(JobKind::Spray) => second.kind == Kind::Spray,
        Some(JobKind::Feed) => second.kind == Kind::Feed,
        // When what was sown on a day gone by is ready.
        Some(JobKind::Sow | JobKind::Plant) => second.kind == Kind::Harvest && second.asks && !first.days.is_empty(),
        _ => false,
    };
    if of_that && second.did.is_none() {
        second.did = first.did;
        second.days.splice(0..0, first.days.iter().copied());
        if second.days.is_empty() && first.did != Some(JobKind::Water) {
            second.days.push((by.today, by.today));
        }
        if second.materials.is_empty() {
            second.materials.clone_from(&first.materials);
        }
    }
    let mut first = first;
    if first.crops.is_empty() && first.measures.is_empty() && !first.beds_named {
        first = beside(first, &second, by.asker);
    }
    // "Still damp, leave it tonight?": whether to water hangs on what was seen there, on either side of the question.
    let seen = |told: &Reading, asked: &Reading| {
        let asks = asked.kind == Kind::Water && asked.asks && asked.saw.is_none() && asked.did.is_none();
        told.saw.filter(|_| asks && told.kind == Kind::Record && told.did.is_none())
    };
    if let Some(saw) = seen(&first, &second) {
        second.saw = Some(saw);
    } else if let Some(saw) = seen(&second, &first) {
        first.saw = Some(saw);
    }
    (first, second)
}

/// A part with what it leaves unsaid taken from the other one; its own measures stay as they are.
fn beside(part: Reading, other: &Reading, asker: &Asker) -> Reading {
    let measures = part.measures.clone();
    // "A box of 5 x 3 ft: how much mix, and how many chillies": in that box, and not where hers stand.
    let says = if details::is_in_the_same(&part, other) { Says::NoPlace } else { Says::NoSubject };
    let mut part = Reading { follow_up: false, ..completed(part, other, says, asker) };
    if !measures.is_empty() {
        part.measures = measures;
    }
    part
}
