//! What a message that follows another leaves to the one before: one decision, from top to bottom.
//!
//! What its own words speak of leads to that kind; names, sizes, days and words that steer change what is asked of and
//! keep the kind, and so does a short message that speaks of nothing else.

use super::topics::is_one_of;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point, Slips};
use crate::quantity::{Unit, UnitOf};
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
        // What is not ours stays so, however it begins.
        if self.of_others() && !self.replaces_stuff(before) {
            return Follows { kind: None, says: Says::All };
        }
        if let Some(goes_on) = self.goes_on(text, reader, before) {
            return goes_on;
        }
        let said = self.wording(text, reader, before);
        let anew = self.asks_what_is_due(&said, before, (kind, verdict));
        if !anew && (self.says_nothing_else(&said) || self.corrects_what_was_asked(&said, before, verdict)) {
            return keeps;
        }
        if said.words <= LONGEST && !self.has_own_matter(&said, before, verdict) {
            if let Some(other) = self.speaks_of(&said, before, (kind, verdict)) {
                let kind = Some(other).filter(|other| *other != kind);
                return Follows { kind, says: self.leaves_out(&said, before, other) };
            }
            let same = !anew && self.asks_the_same(&said, before, (kind, verdict));
            if self.did.is_none() && (same || self.is_too_short_for_another(&said, before, verdict)) {
                return keeps;
            }
        }
        Follows { kind: None, says: self.leaves_out(&said, before, kind) }
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
        if before.kind == Kind::Sow && reading.months.is_empty() {
            reading.months.extend(month);
        }
        let Some(kind) = follows.kind else { return reading };
        // The next picking is of what was picked.
        let did = before.did.filter(|_| before.kind == Kind::Record && kind == Kind::Harvest);
        Reading { kind, did, sureness: SURE, asks: true, ..reading }
    }

    fn wording<'a>(&self, text: &'a Text, reader: &'a Reader<'a>, before: &Reading) -> Wording<'a> {
        let open = self.open_words(text, reader);
        let left: Vec<_> = open.iter().filter_map(|at| text.tokens.get(*at).cloned()).collect();
        let meant = reader.known.meanings.of(&left, text.language, Slips::Forgiven);
        let words: Vec<String> = left.iter().filter_map(|token| index_word(token, text.language)).collect();
        let leaning = if open.is_empty() { Vec::new() } else { reader.index.leaning(&[words, meant].concat()) };
        let mut topics = self.topics(text, reader);
        topics.extend(self.counts_plants(text, reader, before));
        topics.extend(self.amount_of_mix());
        topics.retain(|hit| !self.goes_with(text, reader, hit.meaning, before));
        Wording {
            text,
            reader,
            words: text.tokens.iter().filter(|token| token.is_word()).count(),
            ties: self.begins_with(text, &Told::FollowUp),
            bare: self.names.is_empty() && self.quantities.said.is_empty() && self.quantities.dimensions.is_empty(),
            topics,
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
        changes && !self.asks && !told || far && (sized || !self.names.is_empty())
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
        let of_roof = || before.kind == Kind::Load && self.speaks_of_load(said);
        let signs = !self.signs.is_empty() && before.kind != Kind::Trouble && verdict.kind == Kind::Trouble;
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
        work || signs && !of_roof() || thanks || self.told.iter().any(other)
    }

    fn speaks_of_load(&self, said: &Wording<'_>) -> bool {
        self.topics(said.text, said.reader).iter().any(|hit| hit.meaning == Kind::Load)
    }

    /// The one other kind that its words speak of: a topic; or what it was read for, where its words lean to that, and to
    /// the kind before not at all.
    fn speaks_of(&self, said: &Wording<'_>, before: &Reading, (kind, verdict): (Kind, Verdict)) -> Option<Kind> {
        /// So large a share of the leaning is plain, and so small a one is none (judgement).
        const PLAIN: f64 = 0.75;
        const NONE: f64 = 0.1;
        if !self.asks || self.supposes(said.text) {
            return None;
        }
        if let Some(first) = said.topics.first() {
            let read = said.topics.iter().find(|hit| hit.meaning == kind);
            let alone = said.topics.iter().all(|hit| hit.meaning == first.meaning) && is_computed(first.meaning);
            return read.map(|hit| hit.meaning).or_else(|| alone.then_some(first.meaning));
        }
        let leans = is_computed(kind) && kind != before.kind && kind == verdict.kind && said.tells;
        let why = self.told.iter().any(|hit| hit.meaning == Told::Why);
        (leans && !why && said.share(kind) >= PLAIN && said.share(before.kind) < NONE).then_some(kind)
    }

    /// The same is asked of something else, in so many words.
    fn asks_the_same(&self, said: &Wording<'_>, before: &Reading, (kind, verdict): (Kind, Verdict)) -> bool {
        let near = verdict.nearness;
        let of_it = self.told.iter().any(|hit| hit.meaning == Told::Pronoun) && self.did.is_none();
        let computed = !matches!(before.kind, Kind::None | Kind::Person | Kind::Care | Kind::Record | Kind::Trouble);
        // "For how many weeks does it stay up": of what was spoken of, and near to nothing else.
        (of_it && said.bare && computed && self.days.is_empty() && near < HAS_A_KIND && kind == Kind::Due)
            || self.asks_what_about(near)
            || self.changes_only(said.text, said.reader, before, near, &said.open)
            || self.replaces_stuff(before)
            // What is in a bottle is only told in answer to a question.
            || said.text.tokens.len() <= SHORT && self.points().any(Point::tells_product)
            || self.says_a_share(said, before, near)
    }

    /// "What about …" keeps the kind, whatever follows it.
    fn asks_what_about(&self, near: f64) -> bool {
        let about = |hit: &Hit<Told>| hit.meaning == Told::FollowUp && hit.span.start == 0 && hit.span.len() > 1;
        near < HAS_A_KIND_OF_ITS_OWN && self.told.iter().any(about)
    }

    /// "I only have 75 %" after a net was spoken of.
    fn says_a_share(&self, said: &Wording<'_>, before: &Reading, near: f64) -> bool {
        let percent = |said: &Said| said.written.unit == Unit::Percent;
        let share = self.names.is_empty() && self.quantities.said.iter().any(percent);
        before.kind == Kind::Shade && share && said.text.tokens.len() <= LONGEST && near < HAS_A_KIND_OF_ITS_OWN
    }

    /// "Would an old sheet do instead" of a net, of what is mixed or built with.
    fn replaces_stuff(&self, before: &Reading) -> bool {
        let stuff = matches!(before.kind, Kind::Shade | Kind::Mix | Kind::Build | Kind::Care);
        stuff && self.asks && self.told.iter().any(|hit| hit.meaning == Told::Suffices)
    }

    /// Nothing in it speaks of another kind, nor is it as good as a way of asking for one.
    fn is_too_short_for_another(&self, said: &Wording<'_>, before: &Reading, verdict: Verdict) -> bool {
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
        let topics = self.topics(said.text, said.reader);
        let same = topics.iter().any(|hit| hit.meaning == before.kind) || self.asks && verdict.sureness >= SAME;
        let again = !other && same && !said.ties && self.signs.is_empty();
        let of_names = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::Material(_)));
        let of_thing = self.asks && of_names && !said.ties && other && verdict.sureness >= SURELY && topics.is_empty();
        let elsewhere = said.leaning.iter().any(|(kind, share)| *kind != before.kind && *share >= ELSEWHERE);
        let leads_away = said.tells && topics.is_empty() && elsewhere && said.share(before.kind) < NOT_THERE;
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
        let ends = self.told.iter().any(|hit| hit.meaning == Told::FollowUp && hit.span.end == text.tokens.len());
        let leans = same || ends || has(Told::Pronoun);
        // "Removed it on Sunday": of the one bed spoken of.
        let of_that = kind == Kind::Record && leans && before.beds.len() == 1 && text.tokens.len() <= LONGEST;
        let telling = (0..text.tokens.len()).filter(|at| !self.is_empty_word(*at)).count();
        // "And stake or cage?", "how do I get rid of them".
        let care = kind == Kind::Care && (said.ties || leans || telling <= FEW) && !all;
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

/// Kinds that are asked of a crop or a size and answered with figures.
const fn is_computed(kind: Kind) -> bool {
    !matches!(kind, Kind::None | Kind::Person | Kind::Record | Kind::Care | Kind::Due | Kind::Trouble)
}
