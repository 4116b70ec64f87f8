//! What a message tells of what was seen: a plant that looks wrong, mix that is damp, a saying that is doubted.

use super::{Found, Hit, Reader, Told};
use crate::garden::{JobKind, SeenKind};
use crate::knowledge::{Kind, Part, Point};
use crate::script::{Language, Text};
use crate::understanding::gazetteer::Named;
use crate::understanding::parts::NOT_UP;
use std::ops::Range;

/// The sign of all plants that droop.
const WILTING: &str = "wilting";

fn is_wilting(reader: &Reader<'_>, id: &str) -> bool {
    let sign = reader.known.signs.get(id);
    sign.is_some_and(|sign| sign.id == WILTING || sign.is_a.as_deref() == Some(WILTING))
}

/// "My okra is not happy": something ails it, and no word says what one sees.
pub(super) fn is_told_poorly_alone(text: &Text, names: &[Hit<Named>], told: &[Hit<Told>]) -> bool {
    const BESIDE: [&str; 32] = [
        "plant",
        "plants",
        "looks",
        "look",
        "looking",
        "very",
        "so",
        "today",
        "are",
        "is",
        "do",
        "does",
        "and",
        "what",
        "lag",
        "rahi",
        "rahe",
        "raha",
        "rhi",
        "rahi",
        "dikh",
        "aaj",
        "paudha",
        "paudhe",
        "लग",
        "रही",
        "रहे",
        "रहा",
        "दिख",
        "आज",
        "पौधा",
        "पौधे",
    ];
    let poorly = told.iter().any(|hit| hit.meaning == Told::Poorly);
    let said = |at: usize| {
        let word = |hit: &&Hit<Told>| {
            matches!(
                hit.meaning,
                Told::Poorly | Told::Ails | Told::Filler | Told::FollowUp | Told::Pronoun | Told::Question
            )
        };
        let named = names.iter().any(|hit| !matches!(hit.meaning, Named::Trouble(_)) && hit.span.contains(&at));
        named || told.iter().filter(word).any(|hit| hit.span.contains(&at)) || BESIDE.contains(&text.normal(at))
    };
    let words = text.tokens.iter().enumerate().filter(|(_, token)| token.is_word());
    // "Not good for the east box?" asks of a place.
    let poorly = poorly && !text.tokens.iter().any(|token| matches!(token.normal.as_str(), "for" | "liye" | "लिए"));
    poorly && words.map(|(at, _)| at).all(said)
}

/// The sign of a plant that flowers and bears nothing; a crop's name beside a "not" sounds like it.
pub(super) const BEARS_NOTHING: &str = "flowers-no-fruit";

/// "Chilli is not doing well", "the okra has not come up": that it bears nothing was not said, though its name is that of a
/// fruit and a "not" stands beside it.
pub(super) fn is_said_to_bear_nothing(text: &Text, names: &[Hit<Named>], told: &[Hit<Told>]) -> bool {
    /// Beginnings of words for what it bears and for bearing.
    const FRUIT: [&str; 13] =
        ["fruit", "flower", "bloom", "pod", "phal", "fal", "phool", "ful", "phali", "फल", "फूल", "male", "female"];
    const BEARS: [&str; 22] = [
        "forming", "setting", "set", "sets", "bearing", "bear", "bears", "giving", "gives", "give", "yielding",
        "coming", "aa", "aaye", "aaya", "aayi", "lagte", "lagta", "ban", "आ", "आए", "बन",
    ];
    let word = |at: usize| text.normal(at);
    let starts = |at: usize, all: &[&str]| all.iter().any(|start| word(at).starts_with(start));
    let not = |at: usize| told.iter().any(|hit| hit.meaning == Told::Not && hit.span.contains(&at));
    let poorly = |at: usize| told.iter().any(|hit| hit.meaning == Told::Poorly && hit.span.contains(&at));
    let crop = |at: usize| names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)) && hit.span.contains(&at));
    let all = 0..text.tokens.len();
    let fruit = all.clone().any(|at| starts(at, &FRUIT));
    // "No tomatoes yet", "ek bhi tamatar nahi".
    let bare =
        |at: usize| !poorly(at) && (at > 0 && crop(at - 1) || crop(at + 1) || crop(at + 2) && word(at + 1) != "the");
    let none = |at: usize| matches!(word(at), "no" | "nahi" | "नहीं" | "nhi" | "single") && bare(at);
    let bears = |at: usize| BEARS.contains(&word(at)) && !matches!(word(at + 1), "up" | "out");
    let verb = |at: usize| not(at) && !poorly(at) && (at.saturating_sub(2)..=at + 2).any(bears);
    fruit || all.clone().any(none) || all.clone().any(verb)
}

impl Found {
    fn holds(&self, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what)
    }

    fn names_thing(&self, job: JobKind) -> bool {
        self.holds(&Told::Thing(job))
    }

    /// What is seen decides where the words alone are not sure of something else.
    pub(super) fn as_seen(&self, text: &Text, reader: &Reader<'_>, kind: Kind, sureness: f64) -> Option<(Kind, f64)> {
        /// A reading as sure as this stands (judgement).
        const STANDS: f64 = 0.8;
        let told = kind == Kind::Care && !self.asks;
        let trouble = || self.about_a_trouble(reader).filter(|_| sureness < STANDS || kind == Kind::Trouble || told);
        self.about_a_poison(kind).or_else(trouble).or_else(|| self.vaguely(text, kind, sureness))
    }

    /// How much of a poison is no count of seeds.
    fn about_a_poison(&self, kind: Kind) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let counted = matches!(kind, Kind::Seed | Kind::Space | Kind::Mix | Kind::Feed);
        let poison = self.points().any(|point| point == Point::SyntheticSpray);
        (counted && poison && self.did.is_none()).then_some((Kind::Spray, SURE))
    }

    /// "What has happened to it": every word that asks stands in one for what ails.
    pub(super) fn asks_only_what_ails(&self) -> bool {
        let ails: Vec<_> = self.told.iter().filter(|hit| hit.meaning == Told::Ails).map(|hit| &hit.span).collect();
        let within = |at: usize| ails.iter().any(|span| span.contains(&at));
        let asks = self.told.iter().filter(|hit| matches!(hit.meaning, Told::Question | Told::DidAsk));
        !ails.is_empty() && asks.into_iter().all(|hit| within(hit.span.start))
    }

    /// "Which insect is in it": of the plant before one's eyes.
    pub(super) fn asks_what_ails_it(&self, text: &Text) -> bool {
        /// So few tokens hold nothing else.
        const SHORT: usize = 7;
        let it = self.holds(&Told::Pronoun) || self.holds(&Told::Inside);
        let bare = self.names.is_empty() && text.tokens.len() <= SHORT;
        self.asks && bare && it && self.holds(&Told::Ails) && self.did.is_none() && !self.of_others()
    }

    /// Work told and not asked about, or a plant that droops after it: no weighing of words says more.
    pub(super) fn is_told_outright(&self, reader: &Reader<'_>, kind: Kind) -> bool {
        let droops = || self.signs.iter().any(|sign| is_wilting(reader, sign));
        self.did.is_some() && !self.asks && (kind == Kind::Record || kind == Kind::Trouble && droops())
    }

    /// A plant that looks wrong after work that is told, or in mix that was felt: no record of that alone.
    pub(super) fn about_a_trouble_after_work(&self, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        let felt = self.saw().is_some() && self.signs.iter().any(|sign| is_wilting(reader, sign));
        (self.did.is_some() || felt).then(|| self.about_a_trouble(reader)).flatten()
    }

    /// "Never water at noon: true?" asks about the rule, whatever ill it threatens.
    pub(super) fn about_a_saying(&self) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let doubted = self.holds(&Told::Hearsay) && self.asks;
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Crop(_)));
        (doubted && self.names_thing(JobKind::Water) && !stuff).then_some((Kind::Care, SURE))
    }

    /// A feed that is bought, asked about: the label decides.
    pub(super) fn about_a_made_feed(&self) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let named = self.points().any(|point| point == Point::SyntheticFeed);
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_)));
        let given = self.points().any(|point| matches!(point, Point::Amount | Point::Strength))
            && self
                .names
                .iter()
                .any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::OwnBed(_) | Named::BedKind(_)));
        (named && (stuff || given) && self.asks && self.did.is_none() && !self.on_plant).then_some((Kind::Feed, SURE))
    }

    /// Mix that was felt, and a question beside it: whether to water.
    pub(super) fn about_damp_mix(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.75;
        const FELT: [&str; 2] = ["mix-wet", "mix-dry"];
        const TURN: [&str; 34] = [
            "skip",
            "leave",
            "wait",
            "hold",
            "give",
            "pour",
            "shall",
            "should",
            "shd",
            "today's",
            "needed",
            "need",
            "again",
            "chhod",
            "chhodu",
            "chod",
            "rehne",
            "rahne",
            "ruku",
            "du",
            "dun",
            "dalu",
            "daalu",
            "छोड",
            "रहने",
            "रुकूं",
            "दूं",
            "डालूं",
            "or",
            "ya",
            "या",
            "postpone",
            "still give",
            "anyway",
        ];
        // "Still damp this morning." alone is told; whether to leave the next turn is asked.
        let turn = || text.tokens.iter().any(|token| TURN.contains(&token.normal.as_str()));
        let wet = self.saw() == Some(SeenKind::StillWet) && turn();
        let felt = wet || self.signs.iter().any(|sign| FELT.contains(&sign.as_str()));
        let other = self.on_plant || self.sprays || self.feeds || self.did.is_some_and(|job| job != JobKind::Water);
        let things = [JobKind::Sow, JobKind::Plant, JobKind::Net, JobKind::Feed, JobKind::Spray];
        let other = other || things.into_iter().any(|job| self.names_thing(job));
        let of_bed =
            self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_) | Named::Crop(_)));
        let mix = self.names.iter().any(|hit| matches!(hit.meaning, Named::Mix(_)));
        let of_bed = of_bed && (wet || !mix) && !self.names_stuff_but_mix();
        (felt && of_bed && self.asks && !other && self.quantities.said.is_empty()).then_some((Kind::Water, SURE))
    }

    /// A plant that looks wrong, told as such. What was done to it before may be the cause; a question about work, a
    /// measure or a price is about that.
    fn about_a_trouble(&self, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        /// What was seen leaves little else (judgement).
        const SURE: f64 = 0.8;
        const BEFORE: [JobKind; 4] = [JobKind::Spray, JobKind::Feed, JobKind::Plant, JobKind::Water];
        let sizes = !self.quantities.dimensions.is_empty() || !self.quantities.said.is_empty();
        let pointed = self.asks && self.points().any(|point| !point.is_of_a_frame());
        let netted = self.names_thing(JobKind::Net);
        // A cat in the bed was seen at work.
        let seen_at_work = self.names.iter().any(|hit| match &hit.meaning {
            Named::Trouble(id) => reader.known.troubles.get(id).is_some_and(|trouble| trouble.plain_to_see),
            _ => false,
        });
        let plain = seen_at_work && !self.asks && self.did.is_none() && !self.sprays && !self.feeds;
        if plain && !sizes && !netted {
            return Some((Kind::Trouble, SURE));
        }
        if !self.on_plant || sizes || pointed || netted || self.holds(&Told::Hearsay) || self.of_others() {
            return None;
        }
        let parts = || self.signs.iter().filter_map(|id| reader.known.signs.get(id)).map(|sign| sign.part);
        let after_work = self.signs.iter().any(|sign| sign.starts_with("came-after"));
        let told = match self.did {
            None => true,
            // "Pulled it out: knots on the roots."
            Some(JobKind::Pull) => parts().any(|part| part == Part::Root),
            // What was sown is a trouble where it does not come.
            Some(JobKind::Sow) => self.signs.len() > 1 || self.signs.iter().any(|sign| sign == NOT_UP),
            Some(job) => BEFORE.contains(&job) && (after_work || self.signs.len() > 1),
        };
        let works = [JobKind::Water, JobKind::Spray, JobKind::Feed, JobKind::Net, JobKind::Pick, JobKind::Sow];
        // "Nothing is up, did I do something wrong?": asked of what was sown, it is the trouble.
        let in_vain = self.did == Some(JobKind::Sow) && self.holds(&Told::Ails);
        let named = works.into_iter().filter(|job| !in_vain || *job != JobKind::Sow).any(|job| self.names_thing(job));
        let asked = self.asks && (named || self.signs.len() < 2 && !in_vain);
        // "The tray stinks, throw it?": what ails it comes before what becomes of it.
        let thrown = self.says_point(Point::ThrowsOut);
        (told && (!asked || after_work || thrown)).then_some((Kind::Trouble, SURE))
    }

    /// Something ails a plant and nothing more is said: what is seen is asked before a person is troubled.
    fn vaguely(&self, text: &Text, kind: Kind, sureness: f64) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.7;
        let open = matches!(kind, Kind::Person | Kind::None) || sureness < SURE && kind == Kind::Care;
        // "Which insect is in this" asks of what is before one's eyes, and names nothing of it.
        let of_it = kind == Kind::None && self.asks_what_ails_it(text);
        let bare = self.signs.is_empty() && self.did.is_none() && !self.sprays && !self.feeds;
        let other = |point: Point| !(point.is_of_a_frame() || of_it && point == Point::Own);
        (open && bare && self.holds(&Told::Ails) && !self.points().any(other)).then_some((Kind::Trouble, SURE))
    }
}

/// "Herb pots stay soggy", "hamesha geela rehta hai": so as a rule, and seen on no day.
pub(super) fn is_as_a_rule(text: &Text) -> bool {
    const RULE: [&str; 5] = ["stay", "always", "usually", "hamesha", "हमेशा"];
    text.tokens.iter().any(|token| RULE.contains(&token.normal.as_str()))
}

/// "Paani kaise mile": how they are to get it is asked.
pub(super) fn is_asked_how(text: &Text, span: &Range<usize>) -> bool {
    const HOW: [&str; 6] = ["kaise", "kese", "kab", "kahan", "कैसे", "कब"];
    let gets = |at: usize| matches!(text.normal(at), "mile" | "मिले");
    let how = |at: usize| HOW.contains(&text.normal(at));
    span.clone().any(|at| gets(at) && at > 0 && how(at - 1))
}

/// "Paani neeche nikal hi nahi raha", "the water did not run through": it was not seen.
pub(super) fn is_denied(text: &Text, span: &Range<usize>) -> bool {
    const AFTER: usize = 3;
    const BEFORE: usize = 4;
    let not = |at: usize| {
        let word = text.normal(at);
        let english =
            matches!(word, "not" | "no" | "never" | "without" | "isnt" | "doesnt" | "didnt") || word.ends_with("n't");
        english || matches!(word, "nahi" | "nahin" | "nhi" | "नहीं" | "नही")
    };
    let hindi = text.language != Language::En;
    if hindi {
        return (span.start..span.end + AFTER).any(not);
    }
    (span.start.saturating_sub(BEFORE)..span.start).any(not)
}
