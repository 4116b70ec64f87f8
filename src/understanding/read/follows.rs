//! What a message that follows another leaves to the one before: one decision, from top to bottom.
//!
//! What its own words speak of leads to that kind; names, sizes, days and words that steer change what is asked of and
//! keep the kind, and so does a short message that speaks of nothing else.

use super::as_asked::{tells_of_last_time, work_asked_about};
use super::goes_on::asks_how_long_to_wait;
use super::topics::is_one_of;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point, Slips};
use crate::quantity::UnitOf;
use crate::script::{Text, index_word};
use crate::understanding::follow_up::Says;
use crate::understanding::kind::Verdict;
use crate::understanding::quantities::Said;

/// A message that leans on another has at most so many words.
pub(super) const LONGEST: usize = 12;

/// So few tokens hold no matter of their own.
const SHORT: usize = 6;

/// A message nearer than this to a way of asking has a kind of its own, if nothing in it leans on another.
const HAS_A_KIND: f64 = 0.45;

/// A message that is as good as one of the ways of asking says all, however it begins.
pub(super) const HAS_A_KIND_OF_ITS_OWN: f64 = 0.75;

/// Whether a message says its kind, which one where it is not the one it was read for, and what it is about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Follows {
    pub kind: Option<Kind>,
    pub says: Says,
}

/// What is looked at in the wording of a message.
struct Wording<'a> {
    text: &'a Text,
    reader: &'a Reader<'a>,
    words: usize,
    /// A word that goes on stands first.
    ties: bool,
    /// Neither a name nor a size is said.
    bare: bool,
    /// Tokens that are no name, size, day, empty word or word that steers.
    open: Vec<usize>,
    /// Words that speak of one kind alone, where that is not the kind before.
    topics: Vec<Hit<Kind>>,
    /// A word speaks of the kind before.
    of_before: bool,
    /// Everyday words apart, something is told.
    tells: bool,
    /// How the open words lean.
    leaning: Vec<(Kind, f64)>,
}

impl Wording<'_> {
    fn share(&self, kind: Kind) -> f64 {
        self.leaning.iter().find(|(of, _)| *of == kind).map_or(0.0, |(_, share)| *share)
    }
}

impl Found {
    /// What the message leaves to the one before; its own reading is of a kind, after a verdict on its words.
    pub(super) fn follows(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        before: &Reading,
        (kind, verdict): (Kind, Verdict),
    ) -> Follows {
        let keeps = Follows { kind: None, says: Says::NoKind };
        // "It is just above my bedroom, the building is from 1975": of the roof that was asked about.
        let of_roof = before.kind == Kind::Load && before.asks && kind == Kind::None && !self.asks;
        if of_roof && tells_of_a_house(text) {
            return keeps;
        }
        // What is not ours stays so, however it begins.
        if self.of_others() && !self.replaces_stuff(before) {
            return Follows { kind: None, says: Says::All };
        }
        if asks_weight_of_it(text, before) && self.names.is_empty() {
            return keeps;
        }
        if self.waits_after_work(text, reader, before, kind) {
            return Follows { kind: Some(Kind::Spray), says: Says::NoSubject };
        }
        if let Some(goes_on) = self.goes_on(text, reader, before) {
            return goes_on;
        }
        let counted = !self.asks && self.did.is_none() && !self.days.is_empty() && work_asked_about(before).is_some();
        if counted && tells_of_last_time(text) && !self.names_crop() {
            return keeps;
        }
        let said = self.wording(text, reader, before);
        // "No wait, the east ones": of the work that was told, where nothing new can be made out.
        let of_work = before.kind == Kind::Record && before.did.is_some() && self.did.is_none() && !self.asks;
        if of_work && said.words <= SHORT && self.corrects(text) && self.signs.is_empty() {
            return keeps;
        }
        // "And how deep do the seeds go": no amount of seed.
        let depth = self.says_point(Point::SowingDepth) || self.asks_depth_of_seed(text, before);
        if said.words <= LONGEST && depth && !before.crops.is_empty() {
            let says = if self.names_crop() { self.leaves_out(&said, before, Kind::Care) } else { Says::NoSubject };
            return Follows { kind: Some(Kind::Care).filter(|care| *care != kind), says };
        }
        if let Some((kind, _)) = self.about_room_or_seed(text, true).filter(|_| !before.crops.is_empty()) {
            return Follows { kind: Some(kind), says: self.leaves_out(&said, before, kind) };
        }
        let anew = self.asks_what_is_due(&said, before, (kind, verdict));
        if !anew && (self.says_nothing_else(&said) || self.corrects_what_was_asked(&said, before, verdict)) {
            return keeps;
        }
        if said.words <= LONGEST && !self.has_own_matter(&said, before, verdict) {
            if let Some(other) = self.speaks_of(&said, (kind, verdict)) {
                let kind = Some(other).filter(|other| *other != kind);
                return Follows { kind, says: self.leaves_out(&said, before, other) };
            }
            let same = !anew && self.asks_the_same(&said, before, verdict);
            if self.did.is_none() && (same || self.speaks_of_nothing_else(&said, before, verdict)) {
                return keeps;
            }
        }
        Follows { kind: None, says: self.leaves_out(&said, before, kind) }
    }

    /// "Wednesday after four is fine", after a person was asked for.
    pub(super) fn fixes_a_visit(&self, text: &Text, before: &Reading) -> bool {
        // "Wednesday is fine" asks nothing, though "is" may.
        let asks = |hit: &Hit<Told>| match hit.meaning {
            Told::Question => !matches!(text.normal(hit.span.start), "is" | "are"),
            Told::DidAsk | Told::Thing(_) | Told::Request => true,
            _ => false,
        };
        let plain = self.names.is_empty() && self.signs.is_empty() && self.did.is_none();
        let told = !text.original.contains('?') && !self.told.iter().any(asks);
        before.kind == Kind::Person && !self.days.is_empty() && plain && told
    }

    /// "Sprayed the okra on Friday", then "when can we eat them": the wait after that spray, and no matter of ripeness.
    fn waits_after_work(&self, text: &Text, reader: &Reader<'_>, before: &Reading, kind: Kind) -> bool {
        let sprayed = before.kind == Kind::Record && before.did == Some(JobKind::Spray);
        let of_it = self.names.iter().all(|hit| match &hit.meaning {
            Named::Crop(id) => before.crops.is_empty() || before.crops.contains(id),
            Named::BedKind(_) => before.bed_kind.is_some(),
            _ => false,
        });
        // "Can I pick?" is of the wait as well.
        let waits = self.asks && (self.says_point(Point::Wait) || kind == Kind::Harvest);
        let waits = waits || asks_how_long_to_wait(text, reader);
        sprayed && of_it && waits && self.did.is_none()
    }

    /// What a message of this kind leaves to the one before.
    pub(super) fn left_out_of(&self, text: &Text, reader: &Reader<'_>, before: &Reading, kind: Kind) -> Says {
        self.leaves_out(&self.wording(text, reader, before), before, kind)
    }

    /// The reading with its kind and its time of the year as they follow from what was said.
    pub(super) fn as_it_follows(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        reading: Reading,
        before: &Reading,
        follows: Follows,
    ) -> Reading {
        /// What goes on with what was said leaves little else (judgement).
        const SURE: f64 = 0.85;
        let month = self.only_month(text, reader);
        let season = reading.season.or(month);
        let mut reading = Reading { season, ..reading };
        if self.asks_depth_of_seed(text, before) && !reading.points.contains(&Point::SowingDepth) {
            reading.points.insert(Point::SowingDepth);
        }
        if before.kind == Kind::Sow && reading.months.is_empty() {
            reading.months.extend(month);
        }
        let own = reading.kind;
        let Some(kind) = follows.kind else { return reading };
        // The next picking is of what was picked, and a wait is counted from the spray that was told.
        let waits = self.waits_after_work(text, reader, before, own);
        let did = before.did.filter(|_| before.kind == Kind::Record && kind == Kind::Harvest || waits);
        if waits {
            let asked = std::mem::take(&mut reading.days);
            reading.days.clone_from(&before.days);
            reading.days.extend(asked.into_iter().filter(|day| !before.days.contains(day)));
            reading.materials.clone_from(&before.materials);
            reading.points.extend(before.points.iter().copied());
            reading.points.insert(Point::Wait);
        }
        let asks = !matches!(kind, Kind::None | Kind::Record) || reading.asks;
        Reading { kind, did: did.or(reading.did.filter(|_| kind == Kind::Record)), sureness: SURE, asks, ..reading }
    }

    /// "How deep", "kitna gehra" after a sowing, and no box is named: of the seed.
    fn asks_depth_of_seed(&self, text: &Text, before: &Reading) -> bool {
        const DEEP: [&str; 10] = ["deep", "gehra", "gahra", "gehre", "gehrai", "andar", "गहरा", "गहरे", "गहराई", "अंदर"];
        const HOW: [&str; 9] = ["how", "hw", "kitna", "kitne", "kitni", "कितना", "कितने", "कितनी", "what"];
        let sowing = matches!(before.kind, Kind::Sow | Kind::Seed) || before.did == Some(JobKind::Sow);
        let box_named = self.names.iter().any(|hit| matches!(hit.meaning, Named::BedKind(_) | Named::OwnBed(_)));
        let deep = |at: usize| {
            DEEP.contains(&text.normal(at)) && at.checked_sub(1).is_some_and(|how| HOW.contains(&text.normal(how)))
        };
        sowing && !box_named && self.quantities.said.is_empty() && (0..text.tokens.len()).any(deep)
    }

    fn wording<'a>(&self, text: &'a Text, reader: &'a Reader<'a>, before: &Reading) -> Wording<'a> {
        let open = self.open_words(text, reader);
        let left: Vec<_> = open.iter().filter_map(|at| text.tokens.get(*at).cloned()).collect();
        let meant = reader.known.meanings.of(&left, text.language, Slips::Forgiven);
        let words: Vec<String> = left.iter().filter_map(|token| index_word(token, text.language)).collect();
        let leaning = if open.is_empty() { Vec::new() } else { reader.index.leaning(&[words, meant].concat()).kinds };
        let mut topics = self.topics(text, reader);
        topics.extend(self.counts_plants(text, reader, before));
        topics.extend(self.amount_of_mix());
        let of_before = topics.iter().any(|hit| hit.meaning == before.kind);
        topics.retain(|hit| !self.goes_with(text, reader, hit.meaning, before));
        Wording {
            text,
            reader,
            words: text.tokens.iter().filter(|token| token.is_word()).count(),
            ties: self.begins_with(text, &Told::FollowUp),
            bare: self.names.is_empty() && self.quantities.said.is_empty() && self.quantities.dimensions.is_empty(),
            topics,
            of_before,
            tells: !self.telling_words(text, reader).is_empty(),
            leaning,
            open,
        }
    }

    /// "What is due" needs no subject: nothing of what was said before is asked again.
    fn asks_what_is_due(&self, said: &Wording<'_>, before: &Reading, (kind, verdict): (Kind, Verdict)) -> bool {
        let near = if self.days.is_empty() { HAS_A_KIND } else { HAS_A_KIND_OF_ITS_OWN };
        let due = kind == Kind::Due && before.kind != Kind::Due;
        due && !said.ties && self.names.is_empty() && verdict.nearness >= near
    }

    /// Names, sizes, days and words that steer, and nothing else: "and the tomatoes?", "4 by 3 ft", "how many days?".
    fn says_nothing_else(&self, said: &Wording<'_>) -> bool {
        let steers = |hit: &Hit<Told>| {
            let asks = matches!(hit.meaning, Told::Question | Told::Point(Point::Time | Point::Strength));
            let product = matches!(hit.meaning, Told::Point(point) if point.tells_product());
            matches!(hit.meaning, Told::Why | Told::All | Told::Yes) || product || said.bare && asks
        };
        let covered = |at: usize| {
            let told = self.told.iter().any(|hit| hit.span.contains(&at) && steers(hit));
            told || self.is_of_a_day(said, at)
        };
        // "Ok thanks" says nothing and asks nothing.
        let empty = |hit: &Hit<Told>| matches!(hit.meaning, Told::Filler | Told::FollowUp);
        let idle = said.bare && self.days.is_empty() && !self.asks && self.told.iter().all(empty);
        !idle && said.open.iter().all(|at| covered(*at))
    }

    /// "No, 6 ft x 3 ft", "and if only 8 inches deep?", "and radish, asking for a friend": what was asked before, of
    /// something else.
    fn corrects_what_was_asked(&self, said: &Wording<'_>, before: &Reading, verdict: Verdict) -> bool {
        let other = !said.bare || !self.days.is_empty();
        let changes = self.corrects(said.text) && said.text.tokens.len() <= LONGEST && other && self.did.is_none();
        let sized = self.names.is_empty() && !self.quantities.dimensions.is_empty();
        let told = self.did.is_some() || before.kind == Kind::Record;
        let far = said.ties && verdict.nearness < HAS_A_KIND && !told;
        let other = said.topics.iter().any(|hit| is_computed(hit.meaning));
        changes && !self.asks && !told || far && !other && (sized || !self.names.is_empty())
    }

    /// Work, what was seen, signs of trouble, other people's things, thanks: a matter of its own.
    fn has_own_matter(&self, said: &Wording<'_>, before: &Reading, verdict: Verdict) -> bool {
        let other = |hit: &Hit<Told>| {
            matches!(
                hit.meaning,
                Told::Speak(_)
                    | Told::Others
                    | Told::NotOurs
                    | Told::Data
                    | Told::NewBed
                    | Told::Move
                    | Told::Will
                    | Told::Undo
                    | Told::Note
                    | Told::OthersGarden
                    | Told::Shorter
                    | Told::Joke
            )
        };
        // A slab with damp patches is no plant.
        let of_roof = before.kind == Kind::Load && said.of_before;
        let signs = !self.signs.is_empty() && before.kind != Kind::Trouble && verdict.kind == Kind::Trouble;
        // "Aphids on the rose": a trouble by its name, and the plant that has it.
        let plant = |hit: &Hit<Named>| matches!(hit.meaning, Named::Crop(_) | Named::OtherPlant(_));
        let ails = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        let ails = ails && self.names.iter().any(plant) && !said.ties && !self.asks;
        let signs = signs || ails && !matches!(before.kind, Kind::Trouble | Kind::Spray | Kind::Care);
        let polite = |hit: &Hit<Told>| {
            matches!(hit.meaning, Told::Filler | Told::FollowUp | Told::Pronoun | Told::Yes | Told::Point(_))
        };
        let thanks = verdict.kind == Kind::None
            && said.bare
            && self.days.is_empty()
            && !self.asks
            && self.told.iter().any(|hit| hit.meaning == Told::Filler)
            && self.told.iter().all(polite);
        // "When is it sown" asks of no work done.
        let sown = self.asks && self.days.is_empty() && matches!(self.did, Some(JobKind::Sow | JobKind::Plant));
        let work = self.did.is_some() && !sown || self.saw().is_some();
        work || signs && !of_roof || thanks || self.told.iter().any(other)
    }

    /// The one kind that its words speak of, where that is not the one before: the one it was read for, or, where it names
    /// no crop and nothing was told plainly, that of all its topics.
    fn speaks_of(&self, said: &Wording<'_>, (kind, verdict): (Kind, Verdict)) -> Option<Kind> {
        let first = said.topics.first().filter(|_| self.asks && !self.supposes(said.text))?.meaning;
        let alone = said.topics.iter().all(|hit| hit.meaning == first) && is_computed(first);
        let open = kind == verdict.kind && !self.names_crop() && !said.of_before;
        if said.topics.iter().any(|hit| hit.meaning == kind) { Some(kind) } else { (alone && open).then_some(first) }
    }

    /// The same is asked of something else, in so many words.
    fn asks_the_same(&self, said: &Wording<'_>, before: &Reading, verdict: Verdict) -> bool {
        // What is in a bottle is only told in answer to a question.
        let product = said.text.tokens.len() <= SHORT && self.points().any(Point::tells_product);
        let changes = self.changes_only(said.text, said.reader, before, verdict.nearness, &said.open);
        product || changes || self.replaces_stuff(before)
    }

    /// "Would an old sheet do instead" of a net, of what is mixed or built with.
    fn replaces_stuff(&self, before: &Reading) -> bool {
        let stuff = matches!(before.kind, Kind::Shade | Kind::Mix | Kind::Build | Kind::Care | Kind::Load);
        stuff && self.asks && self.told.iter().any(|hit| hit.meaning == Told::Suffices)
    }

    /// Nothing in it speaks of another kind, nor is it as good as a way of asking for one.
    fn speaks_of_nothing_else(&self, said: &Wording<'_>, before: &Reading, verdict: Verdict) -> bool {
        /// So short a message is part of a question, whatever it is near to.
        const SHORT: usize = 5;
        /// Its words lean so surely elsewhere, and so little to the kind before (judgement).
        const ELSEWHERE: f64 = 0.8;
        const NOT_THERE: f64 = 0.01;
        /// So much of it leans to chatter (judgement).
        const CHATTER: f64 = 0.55;
        /// So sure of the kind before, it is a question by itself (judgement).
        const SAME: f64 = 0.8;
        /// So surely it asks something of a thing that it names (judgement).
        const SURELY: f64 = 0.9;
        // What was told is not asked again, and who wants a person says when.
        let kept = match before.kind {
            Kind::None | Kind::Record => false,
            Kind::Person => !self.asks,
            _ => true,
        };
        let other = verdict.kind != before.kind;
        let long = said.words > SHORT || !self.names.is_empty();
        let near = other && said.tells && verdict.nearness >= HAS_A_KIND_OF_ITS_OWN && long;
        // "Can I spray now at noon" after a spray says its kind itself: another question of the same sort.
        let same = said.of_before || self.asks && verdict.sureness >= SAME;
        let again = !other && same && !said.ties && self.signs.is_empty();
        let of_names = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::Material(_)));
        let sure = self.asks && verdict.sureness >= SURELY && !said.of_before;
        let of_thing = sure && of_names && !said.ties && other;
        let elsewhere = said.leaning.iter().any(|(kind, share)| *kind != before.kind && *share >= ELSEWHERE);
        let leads_away = said.tells && !said.of_before && elsewhere && said.share(before.kind) < NOT_THERE;
        let chatter = verdict.kind == Kind::None && said.share(Kind::None) >= CHATTER;
        kept && said.topics.is_empty() && !(near || again || of_thing || leads_away || chatter)
    }

    /// What a message with a kind lacks: what it is about, or where that is.
    fn leaves_out(&self, said: &Wording<'_>, before: &Reading, kind: Kind) -> Says {
        /// So few words of care are about what was spoken of.
        const FEW: usize = 4;
        /// So short a question that names nothing is about what was spoken of.
        const UNNAMED: usize = 9;
        let text = said.text;
        let has = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        // A size is enough where no crop is needed, unless the same was asked of one.
        let measured = !(self.quantities.dimensions.is_empty() && self.quantities.bare.is_empty());
        let of_size = matches!(kind, Kind::Mix | Kind::Build | Kind::Load) && kind != before.kind;
        let named = |hit: &Hit<Named>| matches!(hit.meaning, Named::Crop(_) | Named::OwnBed(_));
        let subject = of_size && measured || self.names.iter().any(named);
        // The same sort of question again, with nothing it is about, is about the same.
        let all = has(Told::All);
        let same = kind == before.kind && kind != Kind::Sow && !all;
        let leans = same || has(Told::Pronoun);
        // "Removed it on Sunday": of the one bed spoken of. "Put it up just now": what was asked about is done.
        let of_that = kind == Kind::Record && leans && before.beds.len() == 1 && text.tokens.len() <= LONGEST;
        let of_that = of_that || kind == Kind::Record && self.did.is_some() && self.did == work_asked_about(before);
        let telling = (0..text.tokens.len()).filter(|at| !self.is_empty_word(*at)).count();
        // "And stake or cage?", "how do I get rid of them"; "how to wash the trays" is of the trays.
        let thing = |hit: &Hit<Named>| {
            matches!(hit.meaning, Named::BedKind(_) | Named::Material(_) | Named::Trouble(_) | Named::OtherPlant(_))
        };
        let of_a_thing = self.names.iter().any(thing) && kind != before.kind;
        let care = kind == Kind::Care && (said.ties || leans || telling <= FEW && !of_a_thing) && !all;
        let needs_subject =
            of_that || care || !matches!(kind, Kind::None | Kind::Person | Kind::Care | Kind::Due | Kind::Record);
        // Seed and room for nothing named, in a size that is, and a crop's own harvest: of what was spoken of.
        let of_what = matches!(kind, Kind::Seed | Kind::Space | Kind::Water) && measured || kind == Kind::Harvest;
        let of_what = of_what && !before.crops.is_empty();
        if needs_subject && !subject && (said.ties || leans || of_what || telling <= UNNAMED) {
            return Says::NoSubject;
        }
        let placed = measured || self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        if needs_subject && has(Told::Inside) && !placed { Says::NoPlace } else { Says::All }
    }

    /// "On" of "on Friday", "the day after".
    fn is_of_a_day(&self, said: &Wording<'_>, position: usize) -> bool {
        let after = |hit: &Hit<Told>| hit.meaning == Told::DayAfter && hit.span.contains(&position);
        let before = is_one_of(&said.reader.known.talk.steps.before_day, said.text, position);
        before && self.days.iter().any(|day| day.span.start == position + 1) || self.told.iter().any(after)
    }

    /// "How many of them in a 40 L drum" after something that has no number of its own: how many find room.
    fn counts_plants(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<Hit<Kind>> {
        let counts = matches!(before.kind, Kind::Sow | Kind::Harvest | Kind::Care | Kind::Shade | Kind::Water);
        let volume = |said: &Said| said.written.unit.measures() == UnitOf::Volume;
        let place = |hit: &Hit<Named>| matches!(hit.meaning, Named::BedKind(_) | Named::OwnBed(_));
        let placed = !self.quantities.dimensions.is_empty()
            || self.quantities.said.iter().any(volume)
            || self.names.iter().any(place);
        let steps = &reader.known.talk.steps;
        let many = (0..text.tokens.len()).find(|at| is_one_of(&steps.many, text, *at))?;
        let next = many + 1;
        let unit = reader.known.words.spans.at(text, next).is_some()
            || self.told.iter().any(|hit| {
                matches!(hit.meaning, Told::AmountIn | Told::Vessel | Told::EachTime) && hit.span.contains(&next)
            })
            || self.quantities.said.iter().any(|said| said.span.contains(&next))
            || is_one_of(&steps.uncounted, text, next);
        (counts && placed && !unit).then_some(Hit { span: many..next, meaning: Kind::Space, exact: true })
    }

    /// "Kitni mitti lagegi": how much of a mix goes in.
    fn amount_of_mix(&self) -> Option<Hit<Kind>> {
        let beside = |mix: &&Hit<Named>| {
            let amount = |hit: &Hit<Told>| {
                let said = matches!(hit.meaning, Told::Point(Point::Amount));
                said && (hit.span.end == mix.span.start || mix.span.end == hit.span.start)
            };
            matches!(mix.meaning, Named::Mix(_)) && self.told.iter().any(amount)
        };
        let mix = self.names.iter().find(beside)?;
        Some(Hit { span: mix.span.clone(), meaning: Kind::Mix, exact: true })
    }

    /// Whether a word of this kind may belong to a question of the kind before.
    fn goes_with(&self, text: &Text, reader: &Reader<'_>, kind: Kind, before: &Reading) -> bool {
        let of_days = || (0..text.tokens.len()).any(|at| reader.known.words.spans.at(text, at).is_some());
        kind == before.kind
            || match before.kind {
                // How what helps is made.
                Kind::Trouble | Kind::Spray | Kind::Feed | Kind::Mix if kind == Kind::Build => true,
                // What is told of an ailing plant.
                Kind::Trouble => !self.asks && matches!(kind, Kind::Water | Kind::Mix | Kind::Shade | Kind::Feed),
                // When one may eat after a spray is no matter of ripeness.
                Kind::Spray if kind == Kind::Harvest => self.points().any(|point| point == Point::Wait),
                // "How many days gap".
                Kind::Spray | Kind::Feed | Kind::Water => kind == Kind::Space && of_days(),
                Kind::Mix => kind == Kind::Feed,
                _ => false,
            }
    }
}

/// A word for a house, what it is built of or how old it is.
fn tells_of_a_house(text: &Text) -> bool {
    const HOUSE: [&str; 23] = [
        "building",
        "built",
        "slab",
        "roof",
        "terrace",
        "floor",
        "storey",
        "floors",
        "bedroom",
        "ceiling",
        "concrete",
        "beam",
        "pillar",
        "chhat",
        "makan",
        "makaan",
        "manzil",
        "purana",
        "purani",
        "छत",
        "मकान",
        "मंजिल",
        "पुराना",
    ];
    text.tokens.iter().any(|token| HOUSE.contains(&token.normal.as_str()))
}

/// Kinds that are asked of a crop or a size and answered with figures.
const fn is_computed(kind: Kind) -> bool {
    !matches!(kind, Kind::None | Kind::Person | Kind::Record | Kind::Care | Kind::Due | Kind::Trouble)
}

/// "How many kilos?" of what was asked about just now: of the feed, the seed or the mix, and of no load.
pub(super) fn asks_weight_of_it(text: &Text, before: &Reading) -> bool {
    const SHORT: usize = 5;
    const HOW_MUCH: [&str; 7] = ["kitne", "kitna", "kitni", "कितने", "कितना", "कितनी", "many"];
    const WEIGHTS: [&str; 12] =
        ["kilo", "kg", "gram", "grams", "gm", "kilos", "kgs", "g", "किलो", "ग्राम", "kilogram", "किग्रा"];
    let says = |words: &[&str]| text.tokens.iter().any(|token| words.contains(&token.normal.as_str()));
    let of_stuff = matches!(before.kind, Kind::Feed | Kind::Seed | Kind::Mix);
    of_stuff && text.tokens.len() <= SHORT && says(&HOW_MUCH) && says(&WEIGHTS)
}
