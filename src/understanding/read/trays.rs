//! A tray set with its seed, and what was spilt beside every bed.

use super::deeds::Deeds;
use super::{Named, Told};
use crate::garden::JobKind;
use crate::script::Language;

impl Deeds<'_> {
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
