//! A tray set with its seed, and what was spilt beside every bed.

use super::claims::Claims;
use super::deeds::Deeds;
use super::{Hit, Named, Told};
use crate::garden::JobKind;
use crate::quantity::UnitOf;
use crate::script::Language;

impl Deeds<'_> {
    /// "Kirayedar ne gamla tod diya": the word for picking is also that for breaking.
    pub(super) fn broke_a_vessel(&self) -> bool {
        let crop = self.names_any(|name| matches!(name, Named::Crop(_))) || self.measures(UnitOf::Mass);
        let picked =
            |at: usize| self.told.iter().any(|hit| hit.meaning == Told::Did(JobKind::Pick) && hit.span.start == at);
        let vessel = |hit: &Hit<Named>| matches!(hit.meaning, Named::BedKind(_)) && picked(hit.span.end);
        self.text.language != Language::En && !crop && self.names.iter().any(vessel)
    }

    /// "Spilled half a kilo of it on the floor": it went where no bed is.
    pub(super) fn is_mishap(&self) -> bool {
        const SPILT: [&str; 8] = ["spilled", "spilt", "toppled", "knocked", "dropped", "tipped", "burst", "leaked"];
        const ELSEWHERE: [&str; 14] = [
            "floor",
            "stairs",
            "staircase",
            "steps",
            "road",
            "street",
            "lift",
            "drain",
            "sofa",
            "carpet",
            "ground",
            "tiles",
            "kitchen",
            "corridor",
        ];
        let says = |list: &[&str]| (0..self.text.tokens.len()).any(|at| list.contains(&self.text.normal(at)));
        let bed = self.names_any(|name| matches!(name, Named::OwnBed(_) | Named::BedKind(_) | Named::Crop(_)));
        self.text.language == Language::En && says(&SPILT) && (says(&ELSEWHERE) || !bed)
    }

    /// "Put the beans in on 10 april": the crop stands between the verb and its "in".
    pub(super) fn put_it_in(&self, claims: &Claims<'_>) -> bool {
        const NEAR: usize = 4;
        let put = |at: &usize| self.text.normal(*at) == "put" && claims.is_made(&(*at..*at + 1));
        let crop_before =
            |end: usize| self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)) && hit.span.end == end);
        let into = |at: usize| (at + 1..=at + NEAR).any(|place| self.text.normal(place) == "in" && crop_before(place));
        let free = |at: usize| !self.names_what_grows(at);
        self.text.language == Language::En && (0..self.text.tokens.len()).filter(put).any(|at| into(at) && free(at))
    }

    /// "Topped the basket with fresh mix".
    pub(super) fn is_topped_with_mix(&self) -> bool {
        let topped = (0..self.text.tokens.len()).any(|at| self.text.normal(at) == "topped");
        topped && (self.says(&Told::Thing(JobKind::TopUp)) || self.names_any(|name| matches!(name, Named::Mix(_))))
    }

    /// "Tray dobara lagayi, methi": Hindi says of a tray that it was planted.
    pub(super) fn is_of_a_tray(&self) -> bool {
        let word = |at: usize| matches!(self.text.normal(at), "tray" | "tre" | "ट्रे");
        let saplings = self.says(&Told::Thing(JobKind::Plant));
        self.text.language != Language::En && !saplings && (0..self.text.tokens.len()).any(word)
    }

    /// "Methi ki tray aaj rakhi": a tray is set with its seed.
    pub(super) fn tray_set(&self) -> bool {
        const SET: [&str; 7] = ["rakhi", "rakha", "rakhe", "रखी", "रखा", "रखे", "set"];
        let words = || (0..self.text.tokens.len()).map(|at| self.text.normal(at));
        let tray = words().any(|word| matches!(word, "tray" | "tre" | "ट्रे")) || self.says(&Told::Microgreen);
        // Seed is soaked before it is strewn; a tray of mix may be soaked as well.
        const SOAKED: [&str; 15] = [
            "soaked",
            "bhigoye",
            "bhigoe",
            "bhigoya",
            "bhigoyi",
            "bhigoi",
            "bhigo",
            "bhigaye",
            "bhigae",
            "bhigayi",
            "भिगोए",
            "भिगोया",
            "भिगोई",
            "भिगोये",
            "भिगो",
        ];
        let claims = self.claims();
        let set = |at: usize| SET.contains(&self.text.normal(at)) && claims.is_made(&(at..at + 1));
        let plants = self.says(&Told::Thing(JobKind::Plant));
        let soaked = |at: usize| SOAKED.contains(&self.text.normal(at)) && claims.is_made(&(at..at + 1)) && !plants;
        tray && (0..self.text.tokens.len()).any(|at| set(at) || soaked(at))
    }
}
