//! What someone else sows is the ground of a question: "my neighbour is putting in turmeric, should I too".

use super::{Found, Named, Told};
use crate::garden::JobKind;
use crate::knowledge::Kind;
use crate::script::Text;

/// The asker would do the same.
const OURSELVES: [(&str, &str); 40] = [
    ("for", "me"),
    ("for", "us"),
    ("mere", "liye"),
    ("hamare", "liye"),
    ("मेरे", "लिए"),
    ("हमारे", "लिए"),
    ("should", "i"),
    ("should", "we"),
    ("shall", "i"),
    ("shall", "we"),
    ("can", "i"),
    ("can", "we"),
    ("could", "i"),
    ("may", "i"),
    ("must", "i"),
    ("do", "i"),
    ("me", "too"),
    ("i", "too"),
    ("we", "too"),
    ("i", "also"),
    ("we", "also"),
    ("ok", "for"),
    ("okay", "for"),
    ("fine", "for"),
    ("mine", "too"),
    ("main", "bhi"),
    ("mai", "bhi"),
    ("me", "bhi"),
    ("mein", "bhi"),
    ("hum", "bhi"),
    ("mujhe", "bhi"),
    ("hame", "bhi"),
    ("humein", "bhi"),
    ("kya", "main"),
    ("मैं", "भी"),
    ("हम", "भी"),
    ("मुझे", "भी"),
    ("हमें", "भी"),
    ("क्या", "मैं"),
    ("क्या", "हम"),
];

/// Before "people": those of the crew.
const OF_OURS: [&str; 8] = ["you", "your", "ur", "aap", "apke", "aapke", "आप", "आपके"];

/// Others at large, whom no list of neighbours has.
const AT_LARGE: [&str; 23] = [
    "everyone",
    "everybody",
    "others",
    "people",
    "friend",
    "cousin",
    "colleague",
    "brother",
    "sister",
    "uncle",
    "aunty",
    "sab",
    "log",
    "sabhi",
    "dost",
    "saheli",
    "bhai",
    "didi",
    "सब",
    "लोग",
    "सभी",
    "दोस्त",
    "सहेली",
];

impl Found {
    /// What others sow or plant, and whether to do so oneself.
    pub(super) fn asks_to_do_likewise(&self, text: &Text) -> bool {
        let pair = |at: usize| OURSELVES.contains(&(text.normal(at), text.normal(at + 1)));
        let others =
            |hit: &&super::Hit<Told>| matches!(hit.meaning, Told::Others | Told::OthersGarden | Told::OthersSaid);
        let told = self.told.iter().filter(others).map(|hit| hit.span.start);
        // "The beans you people sowed" are ours.
        let of_ours = |at: usize| at.checked_sub(1).is_some_and(|before| OF_OURS.contains(&text.normal(before)));
        let at_large = (0..text.tokens.len()).filter(|at| AT_LARGE.contains(&text.normal(*at)) && !of_ours(*at));
        let Some(first) = told.chain(at_large).min() else { return false };
        let own = (first..text.tokens.len()).any(pair);
        let data = self.told.iter().any(|hit| hit.meaning == Told::Data);
        let crop = self.names_crop() || self.names.iter().any(|hit| matches!(hit.meaning, Named::OtherPlant(_)));
        own && crop && !data && self.sows(text)
    }

    /// A word for sowing or planting, in whatever tense.
    fn sows(&self, text: &Text) -> bool {
        const PUTS: [&str; 60] = [
            "sow",
            "sows",
            "sowing",
            "sowed",
            "sown",
            "plant",
            "plants",
            "planting",
            "planted",
            "grow",
            "growing",
            "transplanting",
            "putting",
            "puts",
            "seeding",
            "started",
            "starting",
            "bo",
            "boya",
            "boyi",
            "boye",
            "boi",
            "bota",
            "boti",
            "bote",
            "bona",
            "lagaya",
            "lagayi",
            "lagaye",
            "lagai",
            "laga",
            "lagata",
            "lagati",
            "lagate",
            "lagana",
            "daala",
            "dala",
            "dali",
            "daali",
            "uga",
            "ugata",
            "ugati",
            "बो",
            "बोया",
            "बोई",
            "बोए",
            "बोना",
            "बोता",
            "बोती",
            "लगा",
            "लगाया",
            "लगाई",
            "लगाए",
            "लगाना",
            "लगाता",
            "लगाती",
            "डाला",
            "डाली",
            "उगा",
            "ropa",
        ];
        // "Has started making flowers" sows nothing.
        let begins = |at: usize| text.normal(at) == "started" && text.normal(at + 1).ends_with("ing");
        let said = (0..text.tokens.len()).any(|at| PUTS.contains(&text.normal(at)) && !begins(at));
        let put_in = text
            .tokens
            .windows(2)
            .any(|pair| matches!(pair, [put, into] if put.normal == "put" && into.normal == "in"));
        let done = matches!(self.did, Some(JobKind::Sow | JobKind::Plant));
        said || put_in || done
    }

    /// What others sow, asked for oneself: whether it is the time for it.
    pub(super) fn about_doing_likewise(&self) -> Option<(Kind, f64)> {
        /// A crop, its sowing and oneself leave little else (judgement).
        const SURE: f64 = 0.85;
        let other = self.sprays || self.feeds || self.on_plant || !self.quantities.dimensions.is_empty();
        (self.likewise && self.names_crop() && !other).then_some((Kind::Sow, SURE))
    }
}
