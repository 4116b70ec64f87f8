//! What is asked in a few words beside something else: "and how heavy will one of them be", "has its season gone?".

use super::{Found, Hit, Named, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point};
use crate::quantity::{Unit, UnitOf};
use crate::script::Text;
use crate::understanding::parts::WILL_DO;
use crate::understanding::quantities::{Dimensions, Said};

/// A message or a part of so many tokens holds nothing else.
const SHORT: usize = 12;

/// So many words on, a season is told to be over.
const GONE: usize = 3;

/// Such words leave little else (judgement).
const SURE: f64 = 0.8;

impl Found {
    /// "2 litres ok or more": what is poured by the litre, where nothing else is said.
    pub(super) fn about_litres_alone(&self, text: &Text) -> Option<(Kind, f64)> {
        /// As sure as a reading must be to be asked back about.
        const ENOUGH: f64 = 0.7;
        const MOST: usize = 7;
        let litres = |said: &Said| said.written.unit.measures() == UnitOf::Volume;
        let all = !self.quantities.said.is_empty() && self.quantities.said.iter().all(litres);
        let other = |hit: &Hit<Told>| match hit.meaning {
            Told::Thing(job) | Told::Did(job) => job != JobKind::Water,
            Told::Point(point) => !matches!(point, Point::HowMuchWater | Point::Amount | Point::Choice),
            _ => false,
        };
        let bare = self.names.is_empty() && self.quantities.dimensions.is_empty() && self.did.is_none();
        let asked = self.asks || text.tokens.iter().any(|token| WILL_DO.contains(&token.normal.as_str()));
        let plain = all && bare && asked && !self.told.iter().any(other);
        (plain && text.tokens.len() <= MOST).then_some((Kind::Water, ENOUGH))
    }

    /// "How many litres for three 30 x 30 x 30 cm pots": of what is given by all three sides, and of no water and no
    /// plant, what fills it.
    pub(super) fn about_what_fills(&self, text: &Text) -> Option<(Kind, f64)> {
        /// Sides and litres leave little else (judgement).
        const SURE: f64 = 0.8;
        const LITRES: [&str; 8] = ["litres", "liters", "litre", "liter", "ltr", "ltrs", "लीटर", "l"];
        let litres = text.tokens.iter().any(|token| LITRES.contains(&token.normal.as_str()));
        let sides = |one: &Dimensions| one.depth.is_some() && (one.length.is_some() || one.diameter.is_some());
        let solid = self.quantities.dimensions.iter().any(sides);
        let of_job = |hit: &Hit<Told>| {
            let often = matches!(hit.meaning, Told::Aspect(_) | Told::Point(Point::HowMuchWater | Point::OnceADay));
            often || matches!(hit.meaning, Told::Thing(job) | Told::Did(job) if job != JobKind::TopUp)
        };
        let plain = !self.names_crop() && self.did.is_none() && self.days.is_empty() && !self.told.iter().any(of_job);
        (litres && solid && plain && self.asks && !self.sprays && !self.feeds).then_some((Kind::Mix, SURE))
    }

    /// "Kitne inch pe ek beej", "how many inches between": how far apart, where no depth and no vessel is spoken of;
    /// "grams for 0.5 sq m": how much seed.
    pub(super) fn about_room_or_seed(&self, text: &Text, crop_known: bool) -> Option<(Kind, f64)> {
        /// Such words leave little else (judgement).
        const SURE: f64 = 0.85;
        const HOW_MANY: [&str; 4] = ["kitne", "kitni", "कितने", "many"];
        const LENGTHS: [&str; 7] = ["inch", "inches", "इंच", "cm", "सेमी", "centimetres", "foot"];
        const GRAMS: [&str; 6] = ["grams", "gram", "gms", "gm", "ग्राम", "gramme"];
        const DEEP: [&str; 9] = ["deep", "depth", "gehra", "gehre", "gehri", "gahra", "गहरा", "गहरी", "tall"];
        let word = |at: usize| text.normal(at);
        let all = || 0..text.tokens.len();
        let vessel = self.names.iter().any(|hit| matches!(hit.meaning, Named::BedKind(_) | Named::Material(_)));
        let deep = all().any(|at| DEEP.contains(&word(at)));
        let other =
            self.did.is_some() || self.sprays || self.feeds || !self.signs.is_empty() || !self.asks_or_short(text);
        if other || vessel || deep {
            return None;
        }
        let far = all().any(|at| HOW_MANY.contains(&word(at)) && LENGTHS.contains(&word(at + 1)));
        let each = all()
            .any(|at| matches!(word(at), "pe" | "par" | "पर" | "apart" | "between" | "door" | "दूर" | "beech" | "बीच"));
        // Cut or broken so far up, or so much water and mulch, is no gap.
        let set = all().any(|at| {
            matches!(word(at), "apart" | "between" | "beej" | "bij" | "seed" | "seeds" | "plants" | "plant" | "बीज")
                || ["paudh", "podh", "laga", "bo", "पौध", "लगा"].iter().any(|start| word(at).starts_with(start))
        });
        let cut = all().any(|at| {
            matches!(word(at), "water" | "mulch" | "pani" | "paani" | "पानी")
                || ["tod", "kaat", "kat", "तोड", "तोड़", "काट"].iter().any(|start| word(at).starts_with(start))
        });
        if far && each && set && !cut {
            return Some((Kind::Space, SURE));
        }
        let area = self.quantities.said.iter().any(|said| said.written.unit.measures() == UnitOf::Area);
        let grams = all().any(|at| {
            GRAMS.contains(&word(at)) && text.tokens.get(at.wrapping_sub(1)).is_none_or(|token| token.number.is_none())
        });
        let seed = crop_known
            || self.names_crop()
            || all().any(|at| matches!(word(at), "seed" | "seeds" | "beej" | "bij" | "बीज"));
        (area && grams && seed && self.days.is_empty()).then_some((Kind::Seed, SURE))
    }

    /// "Dhaniye pe 50 percent chalegi ya 35": of a net, where shares are said of a crop and of no stuff.
    pub(super) fn about_shares_of_light(&self, text: &Text) -> Option<(Kind, f64)> {
        /// Two shares and a crop leave little else (judgement).
        const SURE: f64 = 0.85;
        let percent = |said: &Said| said.written.unit == Unit::Percent;
        let all = self.quantities.said.len() > 1 && self.quantities.said.iter().all(percent);
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)));
        let other = stuff || self.sprays || self.feeds || self.did.is_some() || !self.signs.is_empty();
        const NO_LIGHT: [&str; 7] = ["humidity", "germination", "nami", "namee", "नमी", "moisture", "ankuran"];
        let none = text.tokens.iter().any(|token| NO_LIGHT.contains(&token.normal.as_str()));
        (all && self.names_crop() && self.asks_or_short(text) && !other && !none).then_some((Kind::Shade, SURE))
    }

    /// It asks, or is so short that it can do nothing else.
    fn asks_or_short(&self, text: &Text) -> bool {
        self.asks || text.tokens.len() <= SHORT
    }

    /// Nothing but a crop or a bed is said: "tomato bag?", "methi".
    pub(super) fn is_a_name_alone(&self, text: &Text) -> bool {
        let name = |hit: &Hit<Named>| matches!(hit.meaning, Named::Crop(_) | Named::OwnBed(_));
        let named = |at: usize| self.names.iter().any(|hit| name(hit) && hit.span.contains(&at));
        let mark = |at: usize| text.tokens.get(at).is_none_or(|token| !token.is_word() && token.number.is_none());
        self.names.iter().any(name) && (0..text.tokens.len()).all(|at| named(at) || mark(at) || self.is_empty_word(at))
    }

    /// A kind that its few words tell plainly; a reading as sure as `SURE` stands.
    pub(super) fn in_few_words(&self, text: &Text, sureness: f64) -> Option<(Kind, f64)> {
        let other = self.did.is_some() || !self.signs.is_empty() || text.tokens.len() > SHORT;
        if !self.asks || other {
            return None;
        }
        let word = |at: usize| text.normal(at);
        let weight = |at: usize| match word(at) {
            "weigh" | "weighs" | "wajan" | "wazan" | "वजन" => true,
            "heavy" => at.checked_sub(1).is_some_and(|before| word(before) == "how"),
            "bhari" | "bhaari" | "भारी" => {
                at.checked_sub(1).is_some_and(|before| matches!(word(before), "kitna" | "kitne" | "कितना" | "कितने"))
            }
            _ => false,
        };
        let thing = |hit: &Named| matches!(hit, Named::Crop(_) | Named::Material(_) | Named::Trouble(_));
        let picked = self.jobs().contains(&JobKind::Pick);
        let things = self.names.iter().any(|hit| thing(&hit.meaning));
        if sureness < SURE && !things && !picked && (0..text.tokens.len()).any(weight) {
            return Some((Kind::Load, SURE));
        }
        let season = |at: usize| matches!(word(at), "season" | "mausam" | "मौसम" | "सीजन");
        let gone = |at: usize| {
            matches!(word(at), "gone" | "over" | "past" | "passed" | "ended" | "nikal" | "beet" | "निकल" | "बीत")
        };
        let sizes = !self.quantities.said.is_empty() || !self.quantities.counts.is_empty();
        let past = (0..text.tokens.len()).any(|at| season(at) && (at + 1..=at + GONE).any(gone));
        (past && !sizes).then_some((Kind::Sow, SURE))
    }
}
