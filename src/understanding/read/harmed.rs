//! What another did to a plant, or what was found so: a trouble, and no work of ours. And dry leaves that were laid on a
//! bed, which are no sign of a trouble.

use super::claims::Claims;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Emergency, Kind, Usual};
use crate::script::{Language, Text, Token, index_word};
use crate::understanding::ill_will::{self, IllWill};
use std::ops::Range;

/// What was seen leaves little else (judgement).
const SURE: f64 = 0.8;

/// Work that takes something away: done by another it is a loss.
pub(super) const TAKES: [JobKind; 4] = [JobKind::Pick, JobKind::Pull, JobKind::Prune, JobKind::Clear];

/// "Mili", "padi thi": it was found so.
const FOUND: [&str; 20] = [
    "mili",
    "mila",
    "mile",
    "padi",
    "pada",
    "pade",
    "pari",
    "dikhi",
    "dikha",
    "dikhe",
    "मिली",
    "मिला",
    "मिले",
    "पडी",
    "पडा",
    "पडे",
    "दिखी",
    "दिखा",
    "दिखे",
    "milin",
];

/// Whoever it was, it is not known who.
const UNKNOWN: [&str; 8] = ["kisi", "kisine", "किसी", "किसीने", "someone", "somebody", "chor", "चोर"];

/// Animals that came, before it is told what they did.
const CAME: [&str; 18] = [
    "came",
    "come",
    "comes",
    "entered",
    "raided",
    "attacked",
    "visited",
    "aaye",
    "aaya",
    "aayi",
    "aya",
    "aye",
    "ghusa",
    "ghuse",
    "ghus",
    "आए",
    "आया",
    "आई",
];

/// Who did it is ourselves.
const OURSELVES: [&str; 12] = ["i", "we", "maine", "mene", "humne", "hamne", "main", "hum", "मैंने", "हमने", "मैं", "हम"];

/// What is done so is done for oneself: an animal "tod deta hai", who picks "tod leta hai".
const FOR_ONESELF: [&str; 8] = ["li", "liya", "liye", "lee", "ली", "लिया", "लिए", "लीं"];

/// Verbs of Hindi for what an animal does to a bed.
const HARMS: [&str; 24] = [
    "khod",
    "kuchal",
    "noch",
    "kutar",
    "tod",
    "kaat",
    "ukhad",
    "ukhaad",
    "gira",
    "bikher",
    "kha",
    "raund",
    "खोद",
    "कुचल",
    "नोच",
    "कुतर",
    "तोड",
    "काट",
    "उखाड",
    "गिरा",
    "बिखेर",
    "खा",
    "रौंद",
    "ujad",
];

impl Claims<'_> {
    /// Whether what is told there as taken away was taken by another, or found so.
    pub(super) fn is_harm(&self, span: &Range<usize>) -> bool {
        self.is_found(span) || self.is_by_someone_unknown(span) || self.is_after_animals(span)
    }

    /// "Kati mili", "found it cut", "were cut at the base overnight".
    fn is_found(&self, span: &Range<usize>) -> bool {
        // "Got garden soil here" is had, and was not cut.
        if self.text.language == Language::En && self.said_at(&Told::Got, span.start) {
            return false;
        }
        const FINDS: [&str; 6] = ["found", "find", "finding", "discovered", "noticed", "saw"];
        const FURTHEST: usize = 7;
        const LOW: [&str; 6] = ["base", "ground", "soil", "stem", "root", "roots"];
        const PASSIVE: [&str; 5] = ["was", "were", "been", "got", "are"];
        if self.text.language != Language::En {
            return FOUND.contains(&self.text.normal(span.end));
        }
        let mut back = self.before(span.start, FURTHEST).take_while(|at| self.text.normal(*at) != "and");
        let found = back.any(|at| FINDS.contains(&self.text.normal(at)));
        let passive = PASSIVE.contains(&self.text.normal(span.start))
            || span.start.checked_sub(1).is_some_and(|at| PASSIVE.contains(&self.text.normal(at)));
        let after = || (span.end..self.text.tokens.len()).take(FURTHEST);
        let low = after().take(4).any(|at| LOW.contains(&self.text.normal(at)));
        let overnight = after().any(|at| self.text.normal(at) == "overnight");
        found || passive && (low || overnight)
    }

    /// "Kisi ne tod di", "someone cut it".
    fn is_by_someone_unknown(&self, span: &Range<usize>) -> bool {
        const APART: usize = 9;
        let near = if self.text.language == Language::En { 2 } else { APART };
        let who = |at: usize| {
            UNKNOWN.contains(&self.text.normal(at))
                && (self.text.language == Language::En || matches!(self.text.normal(at + 1), "ne" | "ने"))
                || matches!(self.text.normal(at), "kisine" | "किसीने")
        };
        self.before(span.start, near).any(who)
    }

    /// "Bandar aaye, dalein tod di".
    fn is_after_animals(&self, span: &Range<usize>) -> bool {
        let word = |at: usize| self.text.normal(at);
        let oneself = FOR_ONESELF.contains(&word(span.end)) || FOR_ONESELF.contains(&word(span.end.saturating_sub(1)));
        let ours = (0..span.start).any(|at| OURSELVES.contains(&word(at)));
        let animal = |at: usize| self.told.iter().any(|hit| hit.meaning == Told::Creature && hit.span.contains(&at));
        let came = |at: usize| animal(at) && (at + 1..(at + 4).min(span.start)).any(|next| CAME.contains(&word(next)));
        !oneself && !ours && (0..span.start).any(came)
    }
}

/// "Kabutar ki beet", "bird beet": droppings, whose Hindi word sounds as a root does in English.
pub(super) fn is_dropping(text: &Text, told: &[super::Hit<Told>], span: &Range<usize>) -> bool {
    const BEET: [&str; 6] = ["beet", "bit", "beeth", "bith", "बीट", "बीठ"];
    const FOWL: [&str; 12] = [
        "murgi",
        "murgiyon",
        "battakh",
        "totay",
        "tote",
        "मुर्गी",
        "मुर्गियों",
        "बत्तख",
        "तोते",
        "chamgadar",
        "chipkali",
        "छिपकली",
    ];
    const LIES: [&str; 17] = [
        "padi",
        "pari",
        "giri",
        "mili",
        "dikhi",
        "saaf",
        "girti",
        "gira",
        "jaisi",
        "पडी",
        "गिरी",
        "मिली",
        "दिखी",
        "साफ",
        "गिरती",
        "गिरा",
        "droppings",
    ];
    let lies = BEET.contains(&text.normal(span.start))
        && (LIES.contains(&text.normal(span.end)) || LIES.contains(&text.normal(span.end + 1)));
    if lies && text.language != Language::En {
        return true;
    }
    // "Kali beet" lies black on a leaf; beetroot is bought by no such colour.
    const COLOURS: [&str; 8] = ["kali", "kaali", "safed", "hari", "काली", "सफेद", "सफ़ेद", "हरी"];
    let coloured = span.start.checked_sub(1).is_some_and(|at| COLOURS.contains(&text.normal(at)));
    if coloured && BEET.contains(&text.normal(span.start)) && text.language != Language::En {
        return true;
    }
    let of =
        span.start.checked_sub(1).is_some_and(|at| matches!(text.normal(at), "ki" | "ka" | "ke" | "की" | "का" | "के"));
    let Some(who) = span.start.checked_sub(1 + usize::from(of)) else { return false };
    let creature = told.iter().any(|hit| hit.meaning == Told::Creature && hit.span.contains(&who));
    BEET.contains(&text.normal(span.start)) && (creature || FOWL.contains(&text.normal(who)))
}

/// "The tray is bare", "only bare soil", "tray khali padi hai": where something was sown, nothing came.
pub(super) fn is_bare_earth(text: &Text) -> bool {
    const LIES: [&str; 10] = ["padi", "pada", "pade", "pari", "hi", "dikh", "पडी", "पडा", "ही", "दिख"];
    let bare = |at: usize| match text.normal(at) {
        "bare" | "bald" | "barren" => text.language == Language::En,
        "khali" | "khaali" | "खाली" => LIES.contains(&text.normal(at + 1)),
        _ => false,
    };
    (0..text.tokens.len()).any(bare)
}

/// Whether a text tells that another harmed a plant.
pub(super) fn is_told(claims: &Claims<'_>) -> bool {
    let text = claims.text;
    let taken = |hit: &super::Hit<Told>| {
        let takes = matches!(hit.meaning, Told::Did(job) if TAKES.contains(&job)) || hit.meaning == Told::Got;
        takes && claims.is_harm(&hit.span)
    };
    let who = |at: usize| {
        let creature = claims.told.iter().any(|hit| hit.meaning == Told::Creature && hit.span.contains(&at));
        let unknown = UNKNOWN.contains(&text.normal(at));
        (creature || unknown) && matches!(text.normal(at + 1), "ne" | "ने")
    };
    let by_one = (0..text.tokens.len())
        .any(|at| who(at) && (at + 2..text.tokens.len()).any(|next| HARMS.contains(&text.normal(next))));
    claims.told.iter().any(taken) || text.language != Language::En && by_one
}

/// The reading without work or a bed in it: beside harm nothing is noted.
fn noting_nothing(reading: Reading) -> Reading {
    Reading {
        did: None,
        saw: None,
        put_off: None,
        stays: None,
        jobs: Vec::new(),
        new_bed: false,
        senseless: false,
        ..reading
    }
}

/// They bite leaves, and seldom someone.
const INSECTS: [&str; 10] =
    ["kida", "kide", "keeda", "keede", "illi", "sundi", "caterpillar", "caterpillars", "कीड़े", "इल्ली"];

impl Found {
    /// The reading of a message whose words are usual where someone is hurt, though no rule for such words fits it.
    pub(super) fn of_the_hurt(
        &self,
        text: &Text,
        reader: &Reader<'_>,
        usual: &Usual,
        follows: bool,
    ) -> Option<Reading> {
        /// As usual as this, someone is taken to be hurt: who is told in vain what to do then loses a moment, who is not
        /// told may lose more (looked for on 240 messages that nothing was learned from: of 67 in which someone was hurt
        /// 48 had more, of 169 others, chosen for their likeness, none).
        const LIKELY: f64 = 0.2;
        /// The same of what follows another message ("sorry, I said methi and meant palak" is usual for nothing), of work
        /// that is told ("watered dadi's pots because she was sick").
        const LIKELY_AFTER: f64 = 0.7;
        /// And where a plant or its pot may be what fell.
        const LIKELY_OF_A_THING: f64 = 0.3;
        const SURELY: f64 = 0.99;
        /// Fewer words than this are known of a row of letters.
        const FEW: usize = 2;
        /// Fewer words than this lean somewhere by chance (judgement).
        const ENOUGH: usize = 4;
        let all: f64 = usual.hurt.iter().map(|(_, share)| share).sum();
        // Who is hurt by a knife is not taken for one who would not live, unless most of it says so.
        let apart = |(what, share): &(Emergency, f64)| *what != Emergency::Despair || *share > all / 2.0;
        let (what, _) = usual.hurt.iter().copied().filter(apart).max_by(|a, b| a.1.total_cmp(&b.1))?;
        let words = text.tokens.iter().filter(|token| token.is_word()).count();
        let thing =
            |hit: &Hit<Named>| matches!(hit.meaning, Named::OtherPlant(_) | Named::BedKind(_) | Named::Material(_));
        let things = self.names.iter().any(thing);
        // What a crop or an insect did is seldom done by someone.
        let of_plants = self.names_crop() || self.told.iter().any(|hit| hit.meaning == Told::Creature);
        let insect = text.tokens.iter().any(|token| INSECTS.contains(&token.normal.as_str()));
        let of_plants = of_plants || insect || self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        let least = if follows || self.did.is_some() || of_plants {
            LIKELY_AFTER
        } else if things {
            LIKELY_OF_A_THING
        } else {
            LIKELY
        };
        // "Ddh nnn jjj" leans anywhere.
        let heard = |token: &Token| {
            token.normal.chars().count() > 1
                && index_word(token, text.language).is_some_and(|word| reader.index.knows(&word))
        };
        let words_heard: std::collections::BTreeSet<&str> =
            text.tokens.iter().filter(|token| heard(token)).map(|token| token.normal.as_str()).collect();
        let senseless = words_heard.len() < FEW;
        if all < least || words < ENOUGH || senseless {
            return None;
        }
        let reading = self.reading(text, reader, Kind::None, SURELY);
        let emergency = reading.emergency.or(Some(what));
        Some(Reading { emergency, ..noting_nothing(reading) })
    }

    /// The reading of a message in which harm is meant, whatever it names and whatever was said before; of one who does
    /// not want to live.
    pub(super) fn of_ill_will(&self, text: &Text, reader: &Reader<'_>) -> Option<Reading> {
        /// Whoever writes so is to get no other answer.
        const SURELY: f64 = 0.99;
        let meant = ill_will::told(text, &reader.known.ill_will)?;
        let to_oneself = meant == IllWill::ToOneself;
        Some(Reading {
            ill_will: !to_oneself,
            emergency: to_oneself.then_some(Emergency::Despair),
            ..noting_nothing(self.reading(text, reader, Kind::None, SURELY))
        })
    }

    /// What another did to a plant, told and not asked about.
    pub(super) fn about_harm_done(&self) -> Option<(Kind, f64)> {
        (self.harmed && self.did.is_none() && !self.asks && !self.sprays && !self.feeds)
            .then_some((Kind::Trouble, SURE))
    }

    /// Dry leaves or straw that were laid on a bed.
    pub(super) fn about_a_cover_laid(&self, text: &Text) -> Option<(Kind, f64)> {
        (is_cover_laid(text) && self.did.is_none() && !self.asks && self.signs.is_empty())
            .then_some((Kind::Record, SURE))
    }
}

/// "Mulched with dry leaves", "sookhe patte bichhaye": laid over the mix by a hand, and no sign.
pub(super) fn is_cover_laid(text: &Text) -> bool {
    const LAID: [&str; 9] =
        ["mulched", "mulch", "mulching", "spread", "covered", "laid", "strewed", "scattered", "put"];
    const LAID_HINDI: [&str; 26] = [
        "bichaye",
        "bichhaye",
        "bichhaya",
        "bichaya",
        "bichha",
        "bicha",
        "bichai",
        "bichayi",
        "bichhayi",
        "bichhai",
        "dhak",
        "dhake",
        "dhaka",
        "dhaki",
        "mulch",
        "mulching",
        "बिछाए",
        "बिछाये",
        "बिछाया",
        "बिछा",
        "बिछाई",
        "ढक",
        "ढके",
        "ढका",
        "ढकी",
        "मल्च",
    ];
    const COVER: [&str; 15] = [
        "leaves",
        "straw",
        "grass",
        "husk",
        "patte",
        "patton",
        "patto",
        "patti",
        "bhusa",
        "ghaas",
        "पत्ते",
        "पत्तों",
        "पत्ती",
        "भूसा",
        "घास",
    ];
    const DRY: [&str; 12] =
        ["dry", "dried", "fallen", "sookhe", "sukhe", "sookhi", "sukhi", "सूखे", "सूखी", "सुखे", "dead", "straw"];
    let any = |list: &[&str], range: Range<usize>| range.into_iter().find(|at| list.contains(&text.normal(*at)));
    let whole = 0..text.tokens.len();
    let Some(cover) = any(&COVER, whole.clone()) else { return false };
    let dry = any(&DRY, whole.clone()).is_some() || matches!(text.normal(cover), "straw" | "husk" | "bhusa" | "भूसा");
    let laid = match text.language {
        Language::En => any(&LAID, 0..cover).is_some(),
        _ => any(&LAID_HINDI, cover..text.tokens.len()).is_some() || any(&LAID, whole).is_some(),
    };
    dry && laid
}
