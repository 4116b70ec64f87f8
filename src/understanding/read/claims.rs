//! Whether a word for work claims that it was done: not where it is denied, meant to come, supposed, done elsewhere, or the
//! circumstance of something else.

use super::harmed::TAKES;
use super::{Hit, Named, Told};
use crate::garden::JobKind;
use crate::knowledge::Words;
use crate::script::{Language, Text};
use crate::understanding::tense::{is_bare_in_a_question, is_bidden};
use std::ops::Range;

/// Marks at which a clause ends.
const ENDS: [&str; 8] = [",", ".", "?", "!", ";", "।", "-", ":"];

/// Present and past are one word: only the words around it tell.
pub(super) const BOTH_TENSES: [&str; 5] = ["put", "cut", "set", "spread", "let"];

/// Things in English whose names sound as work done does in Hindi: "rope" is no "rope" of saplings.
const ENGLISH_THINGS: [&str; 2] = ["rope", "ropes"];

/// What a claim is looked at with.
pub(super) struct Claims<'a> {
    pub text: &'a Text,
    pub words: &'a Words,
    pub told: &'a [Hit<Told>],
    pub names: &'a [Hit<Named>],
    pub days: &'a [Range<usize>],
    pub asks: bool,
}

impl Claims<'_> {
    /// A joke, or what is told of someone else's garden.
    pub(super) fn is_no_earnest(&self) -> bool {
        let own = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        self.says(&Told::Joke) || self.says(&Told::OthersGarden) && !own
    }

    /// Whether the word at this place claims that the work was done.
    pub(super) fn is_made(&self, span: &Range<usize>) -> bool {
        let at = span.start;
        if self.text.language == Language::En && ENGLISH_THINGS.contains(&self.text.normal(at)) {
            return false;
        }
        let both = BOTH_TENSES.contains(&self.text.normal(at));
        let open = !self.asks || both;
        // Asked about, what is supposed is the ground of the question: a wait counts from it.
        let told_beside = !self.asks && (self.is_supposed(at) || self.is_circumstance(at));
        let wavers = both && (self.wavers(at) || self.is_asked_at(at) || is_bare_in_a_question(self.text, at));
        let unsure = open && self.is_to_come(at) || wavers || self.is_one_of_two(span) || self.is_presumed(span);
        let lost = self.told.iter().any(|hit| {
            let takes = matches!(hit.meaning, Told::Did(job) if TAKES.contains(&job)) || hit.meaning == Told::Got;
            takes && hit.span.start <= span.start && span.end <= hit.span.end && self.is_harm(&hit.span)
        });
        let state = self.is_a_state(span) || self.is_fresh(at);
        let elsewhere = self.is_done_by_a_creature(at) || self.is_given_by_others(at) || state || lost;
        let unsaid = self.is_yet_to_be(span)
            || self.is_said_of_any(span)
            || self.is_of_what_ails(span)
            || self.is_wished(span)
            || self.is_put_as_if(span)
            || self.is_of_another_sense(span)
            || self.is_passive_to_come(at)
            || self.is_conceded(at)
            || self.only_describes(span)
            || span.clone().any(|at| is_bidden(self.text, at));
        !(self.is_denied(span) || elsewhere || told_beside || unsure || unsaid)
    }

    fn says(&self, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what)
    }

    pub(super) fn said_at(&self, what: &Told, at: usize) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what && hit.span.contains(&at))
    }

    /// The tokens of the clause before a place, the nearest first, at most so many.
    pub(super) fn before(&self, at: usize, most: usize) -> impl Iterator<Item = usize> {
        let text = self.text;
        (0..at).rev().take(most).take_while(move |place| !ENDS.contains(&text.normal(*place)))
    }

    /// English denies before its verb, "not yet watered"; Hindi right beside it, "nahi diya", "diya nahi".
    pub(super) fn is_denied(&self, span: &Range<usize>) -> bool {
        const ENGLISH: usize = 3;
        if self.text.language == Language::En {
            return self.before(span.start, ENGLISH).any(|at| self.said_at(&Told::Not, at));
        }
        // "Dali hi nahi".
        let stressed = matches!(self.text.normal(span.end), "hi" | "ही" | "bhi" | "भी" | "to" | "तो");
        let after = span.end + usize::from(stressed);
        let hindi = self.before(span.start, 1).any(|at| self.said_at(&Told::Not, at));
        hindi || self.said_at(&Told::Not, after)
    }

    fn is_to_come(&self, at: usize) -> bool {
        const NEAR: usize = 3;
        if self.text.language != Language::En {
            return false;
        }
        let dated = |place: &usize| self.days.iter().any(|day| day.contains(place));
        let vessel = |place: &usize| self.said_at(&Told::Vessel, *place);
        let infinitive = at.checked_sub(1).is_some_and(|before| self.text.normal(before) == "to");
        infinitive
            || self
                .before(at, NEAR)
                .filter(|place| !dated(place) && !vessel(place))
                .any(|place| self.words.is_to_come(self.text, place))
    }

    /// "If I had sprayed": anywhere before in its sentence.
    fn is_supposed(&self, at: usize) -> bool {
        const ASKED: [&str; 6] = ["see", "ask", "check", "know", "tell", "wonder"];
        let sentence = (0..at).rev().take_while(|place| !matches!(self.text.normal(*place), "." | "?" | "!" | "।"));
        sentence.into_iter().any(|place| {
            let indirect = place.checked_sub(1).is_some_and(|before| ASKED.contains(&self.text.normal(before)));
            self.said_at(&Told::Supposed, place) && !indirect
        })
    }

    /// An animal or the weather. In Hindi whoever did it stands before "ne", further off.
    fn is_done_by_a_creature(&self, at: usize) -> bool {
        const APART: usize = 6;
        let who = |place: usize| self.said_at(&Told::Creature, place);
        let hindi = self.text.language != Language::En
            && self
                .before(at, APART)
                .any(|place| matches!(self.text.normal(place), "ne" | "ने") && place.checked_sub(1).is_some_and(who));
        hindi || self.before(at, 2).any(who)
    }

    /// "Neighbour gave us a net", "padosi ne jaali di": work of nobody here.
    fn is_given_by_others(&self, at: usize) -> bool {
        self.said_at(&Told::OthersSaid, at) || self.said_at(&Told::ByOthers, at)
    }

    /// "Freshly planted saplings", "the newly sown tray" name a thing; "do cups get fed" is said of any; "fed up" of no bed.
    fn is_said_of_any(&self, span: &Range<usize>) -> bool {
        const LATELY: [&str; 4] = ["freshly", "newly", "recently", "just"];
        const OF: [&str; 14] =
            ["for", "the", "my", "our", "these", "those", "your", "any", "with", "of", "to", "on", "are", "is"];
        const GENERAL: [&str; 3] = ["get", "be", "being"];
        if self.text.language != Language::En {
            return false;
        }
        let before = |back: usize| span.start.checked_sub(back).map_or("", |at| self.text.normal(at));
        let thing = self.names.iter().any(|hit| hit.span.start == span.end)
            || self.told.iter().any(|hit| matches!(hit.meaning, Told::Thing(_)) && hit.span.start == span.end);
        let named = LATELY.contains(&before(1)) && OF.contains(&before(2)) && thing;
        let weary = self.text.normal(span.start) == "fed" && self.text.normal(span.end) == "up";
        named || weary || GENERAL.contains(&before(1))
    }

    /// "Kata hua drum": a participle before its thing. What is sown or planted so stands in its bed.
    fn is_a_state(&self, span: &Range<usize>) -> bool {
        const STATE: [&str; 6] = ["hua", "hui", "hue", "हुआ", "हुई", "हुए"];
        let stands = [JobKind::Sow, JobKind::Plant].into_iter().any(|job| self.said_at(&Told::Did(job), span.start));
        let deed = self.told.iter().any(|hit| matches!(hit.meaning, Told::Did(_)) && hit.span == *span);
        deed && !stands && STATE.contains(&self.text.normal(span.end))
    }

    /// "Fed up of this heat": a verb of work within a phrase of another sense.
    fn is_of_another_sense(&self, span: &Range<usize>) -> bool {
        let deed = |hit: &Hit<Told>| matches!(hit.meaning, Told::Did(_) | Told::Done) && hit.span == *span;
        let around = |hit: &Hit<Told>| {
            let wider = hit.span.start <= span.start && span.end <= hit.span.end && hit.span.len() > span.len();
            hit.meaning == Told::NoDeed && wider
        };
        self.text.language == Language::En && self.told.iter().any(deed) && self.told.iter().any(around)
    }

    /// "Do seedlings get fed", "when is it to be cut".
    fn is_passive_to_come(&self, at: usize) -> bool {
        let before = at.checked_sub(1).map_or("", |before| self.text.normal(before));
        self.text.language == Language::En && self.asks && matches!(before, "get" | "be" | "getting" | "being")
    }

    /// "Droops even though I watered at seven, shall I go to twice a day": what helped nothing is the ground of a question.
    fn is_conceded(&self, at: usize) -> bool {
        const NEAR: usize = 4;
        let even = |place: usize| {
            let before = place.checked_sub(1).map_or("", |before| self.text.normal(before));
            matches!(self.text.normal(place), "although" | "despite" | "tho" | "though") && {
                before == "even" || matches!(self.text.normal(place), "although" | "despite")
            }
        };
        self.text.language == Language::En && self.asks && self.before(at, NEAR).any(even)
    }

    /// "Picked up two kilos of tomatoes from the market", "bazaar se laye": none of it grew here.
    pub(super) fn is_bought(&self) -> bool {
        const SHOPS: [&str; 20] = [
            "market",
            "shop",
            "store",
            "vendor",
            "mandi",
            "supermarket",
            "nursery",
            "bazaar",
            "bazar",
            "dukan",
            "dukaan",
            "thele",
            "thela",
            "sabziwale",
            "sabziwala",
            "बाजार",
            "दुकान",
            "मंडी",
            "ठेले",
            "नर्सरी",
        ];
        let from = |at: usize| {
            let english =
                (1..=2).any(|back| at.checked_sub(back).is_some_and(|place| self.text.normal(place) == "from"));
            SHOPS.contains(&self.text.normal(at)) && (english || matches!(self.text.normal(at + 1), "se" | "से"))
        };
        (0..self.text.tokens.len()).any(from)
    }

    /// "Freshly planted seedlings", "the newly sown tray": how they are, and no work told.
    fn is_fresh(&self, at: usize) -> bool {
        const OF: [&str; 14] =
            ["for", "my", "the", "of", "these", "those", "to", "on", "our", "in", "with", "do", "are", "some"];
        let before = |back: usize| at.checked_sub(back).map_or("", |place| self.text.normal(place));
        let fresh = matches!(before(1), "freshly" | "newly" | "recently" | "fresh");
        let asked = self.asks && self.days.is_empty();
        self.text.language == Language::En && fresh && (asked || OF.contains(&before(2)))
    }

    /// "Kisi ne atta chhidak diya ho", "diya hoga", "diya hota": as if, perhaps, or had it been done. "Ho gaya" was done.
    fn is_presumed(&self, span: &Range<usize>) -> bool {
        const PRESUMED: [&str; 12] =
            ["ho", "hoga", "hogi", "hota", "hoti", "hote", "हो", "होगा", "होगी", "होता", "होती", "होते"];
        const DONE: [&str; 10] = ["gaya", "gayi", "gaye", "gya", "gyi", "chuka", "chuki", "गया", "गई", "चुका"];
        let hindi = self.text.language != Language::En;
        hindi && PRESUMED.contains(&self.text.normal(span.end)) && !DONE.contains(&self.text.normal(span.end + 1))
    }

    /// "Boya jaega", "boya ja sakta hai", "boya jata hai": the passive of what is to come or is done in general.
    fn is_yet_to_be(&self, span: &Range<usize>) -> bool {
        const GOES: [&str; 43] = [
            "jaega",
            "jayega",
            "jaaega",
            "jaayega",
            "jaegi",
            "jayegi",
            "jaayegi",
            "jaenge",
            "jayenge",
            "jaayenge",
            "jaye",
            "jae",
            "jaaye",
            "jaaen",
            "jayen",
            "jata",
            "jati",
            "jate",
            "jaata",
            "jaati",
            "jaate",
            "jana",
            "jaana",
            "jane",
            "jaane",
            "jaiga",
            "जाएगा",
            "जायेगा",
            "जाएगी",
            "जायेगी",
            "जाएंगे",
            "जायेंगे",
            "जाए",
            "जाये",
            "जाएं",
            "जाता",
            "जाती",
            "जाते",
            "जाना",
            "जाने",
            "जानी",
            "jani",
            "jaani",
        ];
        const MAY: [&str; 12] =
            ["sakta", "sakti", "sakte", "skta", "skte", "raha", "rahe", "rahi", "सकता", "सकती", "सकते", "रहा"];
        let next = self.text.normal(span.end);
        let may = matches!(next, "ja" | "jaa" | "जा") && MAY.contains(&self.text.normal(span.end + 1));
        self.text.language != Language::En && (GOES.contains(&next) || may)
    }

    /// "बोएँ", "काटूँ": shall one, where "बोए" was done. The ends of "दीं", "लगाईं" are of what was done.
    fn is_wished(&self, span: &Range<usize>) -> bool {
        const ENDS: [&str; 3] = ["एं", "ऊं", "ूं"];
        let last = span.end.checked_sub(1).map_or("", |at| self.text.normal(at));
        self.text.language == Language::Hi && (ENDS.iter().any(|end| last.ends_with(end)) || last.ends_with("ें"))
    }

    /// "Lagaye to chalega", "बोए तो ठीक रहेगा": if it were done.
    fn is_put_as_if(&self, span: &Range<usize>) -> bool {
        const WOULD: [&str; 26] = [
            "chalega",
            "chalegi",
            "chalenge",
            "theek",
            "thik",
            "sahi",
            "accha",
            "acha",
            "achha",
            "kaisa",
            "kaisi",
            "ugega",
            "ugegi",
            "ugenge",
            "hoga",
            "rahega",
            "der",
            "चलेगा",
            "चलेगी",
            "ठीक",
            "सही",
            "अच्छा",
            "कैसा",
            "उगेगा",
            "होगा",
            "रहेगा",
        ];
        const FURTHEST: usize = 5;
        let if_so = matches!(self.text.normal(span.end), "to" | "toh" | "तो");
        let would = |at: usize| WOULD.contains(&self.text.normal(at));
        self.text.language != Language::En && if_so && (span.end + 1..=span.end + FURTHEST).any(would)
    }

    /// "Kuch ho gaya": it ails, and nothing was done.
    fn is_of_what_ails(&self, span: &Range<usize>) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Ails && hit.span.len() > 1 && hit.span.contains(&span.start))
    }

    /// "Neat or thinned": one of two that are asked about.
    fn is_one_of_two(&self, span: &Range<usize>) -> bool {
        let or = |at: Option<usize>| at.is_some_and(|at| matches!(self.text.normal(at), "or" | "ya" | "या"));
        // "Boye ab ya ruk jaye".
        let now = matches!(self.text.normal(span.end), "ab" | "abhi" | "aaj" | "अब" | "अभी" | "आज" | "now" | "today");
        let first = or(Some(span.end)) || now && or(Some(span.end + 1));
        or(span.start.checked_sub(1)) || first || self.is_first_of_two(span)
    }

    /// "Khaad daale ki gobar": shall one give the one or the other. "Khaad daali ki patte jal gaye" was given.
    fn is_first_of_two(&self, span: &Range<usize>) -> bool {
        let verb = span.end.checked_sub(1).map_or("", |at| self.text.normal(at));
        let wished = verb.ends_with('e') || verb.ends_with('े') || verb.ends_with('ए');
        let or = matches!(self.text.normal(span.end), "ki" | "कि");
        let thing = |at: usize| {
            let stuff = |hit: &Hit<Named>| matches!(hit.meaning, Named::Material(_)) && hit.span.contains(&at);
            let work = |hit: &Hit<Told>| matches!(hit.meaning, Told::Thing(_)) && hit.span.contains(&at);
            self.names.iter().any(stuff) || self.told.iter().any(work)
        };
        self.text.language != Language::En && wished && or && thing(span.end + 1)
    }

    /// "After I gave a lot of water": not what the message is about.
    fn is_circumstance(&self, at: usize) -> bool {
        const NEAR: usize = 3;
        const JOINS: [&str; 9] = ["after", "because", "when", "whenever", "though", "tho", "although", "once", "jab"];
        self.before(at, NEAR).any(|place| JOINS.contains(&self.text.normal(place)))
    }

    /// "Do I put it back", "shall we cut it".
    fn is_asked_at(&self, at: usize) -> bool {
        let before = |back: usize| at.checked_sub(back).map_or("", |place| self.text.normal(place));
        matches!(before(1), "i" | "we" | "you" | "they")
            && matches!(before(2), "do" | "does" | "shall" | "should" | "can")
    }

    /// "Put them in this week or wait".
    fn wavers(&self, at: usize) -> bool {
        let sentence =
            (at..self.text.tokens.len()).take_while(|place| !matches!(self.text.normal(*place), "." | "?" | "!" | "।"));
        sentence.into_iter().any(|place| self.text.normal(place) == "or")
    }
}
