//! Matters that people name in words of the hand: what a wet pot weighs, soil that is to be light, a root that is put in, what
//! fits in there, how many trays cover a place.

use super::{Found, Hit, Named, Reader, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::script::{Language, Text};
use crate::understanding::asker::Asker;
use crate::understanding::phrasebook::Forms;

/// Such words leave little else (judgement).
const SURE: f64 = 0.85;

impl Found {
    /// "Moved the seedlings to the shade": told, and no net is asked for.
    pub(super) fn about_things_moved(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        const MOVED: [&str; 4] = ["moved", "shifted", "dragged", "carried"];
        const SHADE: [&str; 6] = ["shade", "shaded", "shady", "indoors", "inside", "sun"];
        let place = |words: &[&str]| text.tokens.iter().position(|token| words.contains(&token.normal.as_str()));
        let moved = place(&MOVED).zip(place(&SHADE)).is_some_and(|(verb, shade)| verb < shade);
        let claimed = moved && !self.asks && !self.on_plant && self.did.is_none() && !self.says_not();
        (claimed && text.language == Language::En).then_some((Kind::Record, SURE))
    }

    /// A kind that such words tell where nothing was done.
    pub(super) fn about_a_matter(&self, text: &Text) -> Option<(Kind, f64)> {
        if self.did.is_some() || self.of_others() || self.sprays {
            return None;
        }
        let kind = self
            .makes_it_light()
            .or_else(|| self.weighs_when_wet(text))
            .or_else(|| self.covers_with_trays(text))
            .or_else(|| self.is_set_in(text))
            .or_else(|| self.fits_in_there(text))?;
        Some((kind, SURE))
    }

    fn works_on(&self, jobs: &[JobKind]) -> bool {
        jobs.iter().any(|job| self.told.iter().any(|hit| hit.meaning == Told::Thing(*job)))
    }

    fn names_stuff(&self) -> bool {
        self.feeds || self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)))
    }

    fn names_bed(&self) -> bool {
        self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_)))
    }

    /// "How do I make soil that isn't heavy": what goes in it, and no load.
    fn makes_it_light(&self) -> Option<Kind> {
        let mix = self.names.iter().any(|hit| matches!(hit.meaning, Named::Mix(_)));
        let filled = mix || self.works_on(&[JobKind::TopUp]);
        let made = self.says_point(Point::Prepares) || self.says_point(Point::OfEach);
        let other = self.names_crop() || self.works_on(&[JobKind::Sow, JobKind::Net, JobKind::Pick]);
        (filled && made && self.says_point(Point::LightWeight) && !other).then_some(Kind::Mix)
    }

    /// "How many kilos is the pot after a soaking": of the bed, and of nothing that is got from it or put in it.
    fn weighs_when_wet(&self, text: &Text) -> Option<Kind> {
        const FROM: [&str; 10] = ["from", "off", "per", "get", "gives", "give", "se", "से", "niklega", "milega"];
        let weighs = self.says_point(Point::Weighs) && self.says_point(Point::SoakedThrough);
        let bed = self.names_bed() || !self.quantities.dimensions.is_empty();
        let filled =
            self.says_point(Point::Recipe) || self.says_point(Point::OfEach) || self.says_point(Point::Prepares);
        let got = filled
            || self.says_point(Point::Gets)
            || text.tokens.iter().any(|token| FROM.contains(&token.normal.as_str()));
        let works = self.works_on(&[JobKind::Pick, JobKind::Feed, JobKind::Sow, JobKind::Net]);
        (self.asks && weighs && bed && !got && !works && !self.feeds && !self.on_plant).then_some(Kind::Load)
    }

    /// "How many trays for that strip": of what a place is laid out with, and not of seed.
    fn covers_with_trays(&self, text: &Text) -> Option<Kind> {
        const TRAYS: [&str; 3] = ["trays", "tray", "ट्रे"];
        let many = |at: usize| match text.normal(at) {
            "many" | "mny" => at.checked_sub(1).is_some_and(|how| matches!(text.normal(how), "how" | "hw")),
            "kitne" | "kitni" | "कितने" | "कितनी" => true,
            _ => false,
        };
        let tokens = || 0..text.tokens.len();
        let trays = tokens().any(|at| TRAYS.contains(&text.normal(at)));
        let sized = !self.quantities.dimensions.is_empty();
        let other = self.names_crop() || self.works_on(&[JobKind::Sow, JobKind::Water, JobKind::Pick, JobKind::TopUp]);
        let own = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        let weighs = self.says_point(Point::Weighs) || self.says_point(Point::OwnBeds);
        (trays && sized && tokens().any(many) && !other && !own && !weighs && !self.names_stuff())
            .then_some(Kind::Build)
    }

    /// "Haldi kab gaade", "plant the slips now or wait": whether a crop goes in.
    fn is_set_in(&self, text: &Text) -> Option<Kind> {
        const WHEN: [&str; 38] = [
            "when",
            "whn",
            "now",
            "today",
            "yet",
            "later",
            "wait",
            "month",
            "week",
            "season",
            "heat",
            "kab",
            "kb",
            "abhi",
            "ab",
            "aaj",
            "mahine",
            "mahina",
            "mausam",
            "ruku",
            "ruk",
            "baad",
            "time",
            "samay",
            "कब",
            "अभी",
            "अब",
            "आज",
            "महीने",
            "महीना",
            "मौसम",
            "रुकूं",
            "रुकें",
            "समय",
            "बाद",
            "garmi",
            "गर्मी",
            "june",
        ];
        const TO: [&str; 12] = ["me", "mein", "m", "ko", "pe", "par", "ke", "में", "को", "पर", "के", "का"];
        let timed = !self.days.is_empty() || text.tokens.iter().any(|token| WHEN.contains(&token.normal.as_str()));
        // "Tamatar me kya daalu" asks what is given to it.
        let given = text.language != Language::En
            && self
                .names
                .iter()
                .filter(|hit| matches!(hit.meaning, Named::Crop(_)))
                .all(|hit| TO.contains(&text.normal(hit.span.end)))
            && text.tokens.iter().any(|token| matches!(token.normal.as_str(), "kya" | "क्या"));
        let works = self.works_on(&[JobKind::Feed, JobKind::Spray, JobKind::Net, JobKind::Pick, JobKind::Prune]);
        // "Baingan me paani daalu": water is what is put there; what rooted "paani me" is put in itself.
        let poured = text.language != Language::En
            && self.told.iter().any(|hit| {
                let water = hit.meaning == Told::Thing(JobKind::Water);
                water && !matches!(text.normal(hit.span.end), "me" | "mein" | "m" | "में")
            });
        let asked = [Point::Amount, Point::HowMuchWater, Point::SowingDepth, Point::Wait, Point::Strength];
        let other = works || poured || self.names_stuff() || asked.into_iter().any(|point| self.says_point(point));
        let set = self.says_point(Point::SetsIn) && self.names_crop() && self.asks;
        let sized = !self.quantities.dimensions.is_empty();
        (set && timed && !given && !other && !sized).then_some(Kind::Sow)
    }

    /// "Will this fit in it?": of what and in what is asked back.
    fn fits_in_there(&self, text: &Text) -> Option<Kind> {
        /// So few tokens hold nothing else.
        const SHORT: usize = 9;
        let bare = self.names.is_empty() && self.quantities.said.is_empty() && self.quantities.dimensions.is_empty();
        (self.asks && self.says_point(Point::FitsThere) && bare && text.tokens.len() <= SHORT).then_some(Kind::Space)
    }

    /// Something to give or to put in is named.
    pub(super) fn names_stuff_but_mix(&self) -> bool {
        self.names.iter().any(|hit: &Hit<Named>| matches!(hit.meaning, Named::Material(_)))
    }
}

/// "A snail type line", "ghonghe jaisi lakeer": it looks like it, and is none.
pub(super) fn is_likened(text: &Text, span: &std::ops::Range<usize>) -> bool {
    const LIKE: [&str; 14] = [
        "type",
        "like",
        "shaped",
        "looking",
        "jaisa",
        "jaisi",
        "jaise",
        "jesa",
        "jesi",
        "jese",
        "जैसा",
        "जैसी",
        "जैसे",
        "trail",
    ];
    LIKE.contains(&text.normal(span.end))
}

/// "Onion peels", "pyaz ke chhilke": what is left of a crop, and no crop.
pub(super) fn is_peeled(text: &Text, hit: &Hit<Named>) -> bool {
    const PEELS: [&str; 6] = ["peel", "peels", "peelings", "husk", "husks", "rind"];
    const SKINS: [&str; 2] = ["skin", "skins"];
    const OF: [&str; 8] = ["ke", "ka", "ki", "k", "के", "का", "की", "वाले"];
    const CHHILKE: [&str; 13] = [
        "chhilke",
        "chhilka",
        "chhilko",
        "chhilkon",
        "chilke",
        "chilka",
        "chilko",
        "chilkon",
        "chhilkey",
        "छिलके",
        "छिलका",
        "छिलको",
        "छिलकों",
    ];
    let Named::Crop(crop) = &hit.meaning else { return false };
    let next = text.normal(hit.span.end);
    let bulb = matches!(crop.as_str(), "onion" | "garlic" | "spring-onion");
    // A pumpkin's rind is hard when it is ripe; what is poured, rotted or given was peeled off.
    const USED: [&str; 11] =
        ["water", "tea", "compost", "feed", "paani", "pani", "khaad", "khad", "पानी", "खाद", "कम्पोस्ट"];
    let used = text.tokens.iter().any(|token| USED.contains(&token.normal.as_str()));
    if !(bulb || used) {
        return false;
    }
    let of = usize::from(OF.contains(&next));
    PEELS.contains(&next) || bulb && SKINS.contains(&next) || CHHILKE.contains(&text.normal(hit.span.end + of))
}

/// Crops that stand within the name of a trouble, where no crop is named beside it: "the brinjal borer is back".
pub(super) fn crops_within(text: &Text, names: &[Hit<Named>], reader: &Reader<'_>, asker: &Asker) -> Vec<String> {
    let crop = |hit: &Hit<Named>| match &hit.meaning {
        Named::Crop(crop) => Some(crop.clone()),
        _ => None,
    };
    if names.iter().any(|hit| crop(hit).is_some()) {
        return Vec::new();
    }
    let troubles = names.iter().filter(|hit| matches!(hit.meaning, Named::Trouble(_)) && hit.span.len() > 1);
    let tokens = troubles.flat_map(|hit| hit.span.clone()).filter_map(|at| text.tokens.get(at));
    let words = tokens.map(|token| Text::read_as(&token.text, text.language));
    let found = words.flat_map(|word| reader.gazetteer.names(&Forms::of(&word), asker));
    let mut crops: Vec<String> = found.filter_map(|hit| crop(&hit)).collect();
    crops.dedup();
    crops
}
