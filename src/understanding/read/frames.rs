//! What the frame of a question tells, where no single word of it does: an amount that is got from a bed, any plant that
//! lives in a place, what goes into a bed part by part, day by day or with days between.

use super::{Found, Hit, Named, Reader, Told};
use crate::garden::JobKind;
use crate::knowledge::{Aspect, Kind, MaterialKind, Point};
use crate::quantity::{Unit, UnitOf};
use crate::script::Text;
use crate::understanding::dimensions::Dimensions;
use crate::understanding::parts::WILL_DO;

/// Such a frame leaves little else (judgement).
const SURE: f64 = 0.85;

impl Found {
    /// A kind that the frame of the question tells.
    pub(super) fn about_a_frame(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        if let Some(kind) = self.is_planted_rightly(text).or_else(|| self.chooses_an_amount(text)) {
            return Some((kind, SURE));
        }
        if self.did.is_some() || self.of_others() || self.sprays {
            return None;
        }
        let kinds: Vec<Kind> = self.topics(text, reader).iter().map(|hit| hit.meaning).collect();
        let kind = self
            .lives_there(&kinds)
            .or_else(|| self.carries_water(text))
            .or_else(|| self.goes_in_part_by_part())
            .or_else(|| self.fills_so_much(text, &kinds))
            .or_else(|| self.how_much_of_a_part(text, reader))
            .or_else(|| self.buys_for_a_box(text))
            .or_else(|| self.has_another_made(text))
            .or_else(|| self.makes_holes(text))
            .or_else(|| self.weighs_more_than(text))
            .or_else(|| if self.on_plant { None } else { self.of_a_crop(text, &kinds) })?;
        Some((kind, SURE))
    }

    /// "Cocopeat kitni lagegi" of boxes of a size, "how much compost for 15 L bags": a part of what fills them.
    fn how_much_of_a_part(&self, text: &Text, reader: &Reader<'_>) -> Option<Kind> {
        const AMOUNT: [&str; 9] = ["much", "many", "kitna", "kitni", "kitne", "कितना", "कितनी", "कितने", "litres"];
        const NEAR: usize = 2;
        let part = |hit: &&Hit<Named>| {
            let Named::Material(id) = &hit.meaning else { return false };
            let kind = reader.known.materials.get(id).map(|material| material.kind);
            matches!(kind, Some(MaterialKind::Medium | MaterialKind::Compost | MaterialKind::Mineral))
        };
        let own = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        // So many grams are food.
        let weighed =
            (0..text.tokens.len()).any(|at| matches!(text.normal(at), "gram" | "grams" | "gm" | "g" | "ग्राम"));
        let sized = !self.quantities.dimensions.is_empty() || !self.quantities.said.is_empty();
        let asked = |hit: &Hit<Named>| {
            (hit.span.start.saturating_sub(NEAR)..hit.span.end + NEAR).any(|at| AMOUNT.contains(&text.normal(at)))
        };
        let parts: Vec<&Hit<Named>> = self.names.iter().filter(part).collect();
        (sized && !own && !weighed && parts.iter().any(|hit| asked(hit))).then_some(Kind::Mix)
    }

    /// "Will a box of 3 x 3 ft cross 150 kg": what it weighs.
    fn weighs_more_than(&self, text: &Text) -> Option<Kind> {
        const PASSES: [&str; 14] = [
            "cross",
            "crosses",
            "exceed",
            "exceeds",
            "above",
            "over",
            "more",
            "zyada",
            "jyada",
            "jada",
            "upar",
            "ज़्यादा",
            "ज्यादा",
            "ऊपर",
        ];
        let kilos = self.quantities.said.iter().find(|said| said.written.unit == Unit::Kilogram)?;
        let sized = !self.quantities.dimensions.is_empty();
        let near = |at: usize| PASSES.contains(&text.normal(at));
        let passes = (kilos.span.start.saturating_sub(3)..kilos.span.end + 3).any(near);
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Crop(_)));
        (sized && passes && self.asks && !stuff).then_some(Kind::Load)
    }

    /// "Two brinjals a span apart, is that right": whether so many have room, whatever was done.
    fn is_planted_rightly(&self, text: &Text) -> Option<Kind> {
        let planted = matches!(self.did, Some(JobKind::Sow | JobKind::Plant)) && self.names_crop();
        let counted = self.count().is_some_and(|count| count >= 2.0);
        let will_do = text.tokens.iter().any(|token| WILL_DO.contains(&token.normal.as_str()));
        let other = !self.days.is_empty() || self.sprays || self.of_others();
        (planted && counted && will_do && self.asks && !other).then_some(Kind::Space)
    }

    /// "One litre or two for my plant", "एक लोटा काफ़ी है या दो": no more than a can holds is poured, not filled in.
    fn chooses_an_amount(&self, text: &Text) -> Option<Kind> {
        /// What a can or bucket holds at most, litres.
        const POURED_L: f64 = 15.0;
        const OR: [&str; 4] = ["or", "ya", "yaa", "या"];
        let said = self.quantities.said.iter().filter_map(|said| said.written.volume());
        let volumes: Vec<f64> = said.map(|volume| volume.as_millilitres() / 1_000.0).collect();
        let choice = text.tokens.iter().any(|token| OR.contains(&token.normal.as_str()));
        let poured = volumes.len() == 2 && volumes.iter().all(|litres| *litres <= POURED_L);
        let other = self.stuff_named() || self.works_named(&[JobKind::Feed, JobKind::Spray, JobKind::TopUp]);
        let bare = self.did.is_none() && !self.on_plant && self.quantities.dimensions.is_empty();
        (choice && poured && bare && !other && !self.sprays && !self.of_others()).then_some(Kind::Water)
    }

    fn works_named(&self, jobs: &[JobKind]) -> bool {
        jobs.iter().any(|job| self.told.iter().any(|hit| hit.meaning == Told::Thing(*job)))
    }

    fn stuff_named(&self) -> bool {
        self.feeds || self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)))
    }

    /// "Which vegetables put up with full sun", "anything edible that won't die up there".
    fn lives_there(&self, kinds: &[Kind]) -> Option<Kind> {
        let asked = self.says_point(Point::AnyPlant) && self.says_point(Point::Lives);
        let aspects = self.aspects();
        let left = [Aspect::Away, Aspect::Without].iter().any(|aspect| aspects.contains(aspect));
        let other = kinds.iter().any(|kind| !matches!(kind, Kind::Sow | Kind::Shade | Kind::Harvest | Kind::Load));
        let roof = self.jobs().contains(&JobKind::Net);
        (asked && !left && !other && !roof && !self.names_crop()).then_some(Kind::Sow)
    }

    /// "Is it worth lugging the cans up": whether to water.
    fn carries_water(&self, text: &Text) -> Option<Kind> {
        const CARRIES: [&str; 16] = [
            "lug",
            "lugging",
            "haul",
            "hauling",
            "carry",
            "carrying",
            "cart",
            "carting",
            "drag",
            "dragging",
            "fetch",
            "fetching",
            "upar",
            "ऊपर",
            "dhona",
            "ढोना",
        ];
        // "Can" in "can the slab carry it" is none.
        let vessel = self.vessels(text).is_some();
        let carried = (0..text.tokens.len()).any(|at| CARRIES.contains(&text.normal(at)));
        let sized = !self.quantities.dimensions.is_empty();
        (self.asks && vessel && carried && !sized && !self.stuff_named()).then_some(Kind::Water)
    }

    /// "What goes in a pot and how much of each".
    fn goes_in_part_by_part(&self) -> Option<Kind> {
        let bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_) | Named::Mix(_));
        let filled = self.names.iter().any(bed) || self.works_named(&[JobKind::TopUp]);
        let fed = self.works_named(&[JobKind::Feed]) && !self.works_named(&[JobKind::TopUp]);
        let other = fed || self.works_named(&[JobKind::Water]) || self.on_plant;
        (self.asks && self.says_point(Point::OfEach) && filled && !other).then_some(Kind::Mix)
    }

    /// "Mix needed for a planter of such a size", "mitti kitni": how much of it goes in, and not what the planter is built of.
    fn fills_so_much(&self, text: &Text, kinds: &[Kind]) -> Option<Kind> {
        const AMOUNTS: [&str; 28] = [
            "needed",
            "required",
            "need",
            "much",
            "litres",
            "liters",
            "kitni",
            "kitna",
            "kitne",
            "chahiye",
            "lagegi",
            "lagega",
            "lagta",
            "lagti",
            "padegi",
            "padega",
            "aayegi",
            "bharni",
            "कितनी",
            "कितना",
            "कितने",
            "चाहिए",
            "लगेगी",
            "लगेगा",
            "पडेगी",
            "पडेगा",
            "आएगी",
            "fill",
        ];
        /// So near the amount stands to what it is of.
        const NEAR: usize = 2;
        let mixes = self.names.iter().filter(|hit| matches!(hit.meaning, Named::Mix(_))).map(|hit| &hit.span);
        let soil = self.told.iter().filter(|hit| hit.meaning == Told::Thing(JobKind::TopUp)).map(|hit| &hit.span);
        let amount = |at: usize| AMOUNTS.contains(&text.normal(at));
        let near = |span: &std::ops::Range<usize>| {
            (span.start.saturating_sub(NEAR)..span.start).any(amount) || (span.end..span.end + NEAR).any(amount)
        };
        let sized = !self.quantities.dimensions.is_empty();
        let other = kinds.iter().any(|kind| !matches!(kind, Kind::Mix | Kind::Space | Kind::Build));
        (sized && !other && !self.on_plant && mixes.chain(soil).any(near)).then_some(Kind::Mix)
    }

    /// "Two boxes of 3 x 2 ft, 10 inch, total of all to buy": what a box is built of.
    fn buys_for_a_box(&self, text: &Text) -> Option<Kind> {
        const BUYS: [&str; 22] = [
            "buy",
            "purchase",
            "order",
            "shopping",
            "khareed",
            "kharid",
            "khareedna",
            "kharidna",
            "khareedu",
            "kharidu",
            "kharide",
            "mangana",
            "mangwana",
            "mangwau",
            "खरीद",
            "खरीदना",
            "खरीदूं",
            "खरीदें",
            "मंगाना",
            "मंगवाना",
            "मंगवाऊं",
            "buying",
        ];
        let full = |found: &Dimensions| found.length.is_some() && found.width.is_some() && found.depth.is_some();
        let sized = self.quantities.dimensions.iter().any(full);
        let buys = text.tokens.iter().any(|token| BUYS.contains(&token.normal.as_str()));
        let works = self.works_named(&[JobKind::TopUp, JobKind::Sow, JobKind::Feed, JobKind::Net]);
        (sized && buys && !self.names_crop() && !self.stuff_named() && !works).then_some(Kind::Build)
    }

    /// "How thick can I leave the amaranth": how near its plants may stand.
    pub(super) fn about_leaving_it_thick(&self, text: &Text) -> Option<(Kind, f64)> {
        const THICK: [&str; 7] = ["thick", "thickly", "close", "closely", "dense", "densely", "crowded"];
        const LEFT: [&str; 9] = ["leave", "left", "keep", "kept", "stand", "let", "grow", "stay", "remain"];
        let how = |at: usize| text.normal(at) == "how" && THICK.contains(&text.normal(at + 1));
        let left = || text.tokens.iter().any(|token| LEFT.contains(&token.normal.as_str()));
        let sized = !self.quantities.dimensions.is_empty();
        let net = self.works_named(&[JobKind::Net, JobKind::Sow]);
        let other = sized || net || self.sprays || self.feeds || self.on_plant || self.did.is_some();
        (self.names_crop() && (0..text.tokens.len()).any(how) && left() && !other).then_some((Kind::Space, SURE))
    }

    /// "One more like the one you made last year": a box that is to be built.
    fn has_another_made(&self, text: &Text) -> Option<Kind> {
        const MADE: [&str; 18] = [
            "made",
            "make",
            "built",
            "build",
            "banwaya",
            "banwana",
            "banwayi",
            "banwaye",
            "banaya",
            "banana",
            "banayi",
            "banwa",
            "बनवाया",
            "बनवाना",
            "बनवाई",
            "बनाया",
            "बनाना",
            "बनवा",
        ];
        const LIKE: [&str; 12] =
            ["like", "same", "similar", "jaisa", "jaisi", "waisa", "waisi", "vaisa", "जैसा", "जैसी", "वैसा", "वैसी"];
        const MORE: [&str; 4] = ["ek", "एक", "one", "another"];
        let has = |list: &[&str]| text.tokens.iter().any(|token| list.contains(&token.normal.as_str()));
        let bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::BedKind(_));
        let other = !self.names.iter().all(bed) || !self.jobs().is_empty();
        (has(&MADE) && has(&LIKE) && has(&MORE) && !other).then_some(Kind::Build)
    }

    /// "Thaili me chhed kitne karu", "where do I drill the holes in the tray": so that water runs out, a matter of the hand.
    fn makes_holes(&self, text: &Text) -> Option<Kind> {
        const HOLES: [&str; 9] = ["hole", "holes", "chhed", "chhedh", "ched", "chhid", "छेद", "छिद्र", "chhede"];
        const MAKES: [&str; 26] = [
            "make",
            "drill",
            "punch",
            "poke",
            "put",
            "need",
            "needs",
            "many",
            "where",
            "drainage",
            "karu",
            "karun",
            "karna",
            "karne",
            "kare",
            "karen",
            "kitne",
            "kitna",
            "kahan",
            "kaha",
            "करूं",
            "करना",
            "करने",
            "करें",
            "कितने",
            "कहां",
        ];
        let has = |list: &[&str]| text.tokens.iter().any(|token| list.contains(&token.normal.as_str()));
        let bed = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_)));
        let works = self.works_named(&[JobKind::Sow, JobKind::Net, JobKind::Plant, JobKind::Feed]);
        let other = self.on_plant || self.names_crop() || !self.quantities.dimensions.is_empty() || works;
        (bed && has(&HOLES) && has(&MAKES) && !other).then_some(Kind::Care)
    }

    /// "One row of 8 ft, how many seeds": so many of them, however the row is measured.
    fn counts_seeds(&self, text: &Text, kinds: &[Kind]) -> bool {
        const ROWS: [&str; 15] = [
            "row",
            "rows",
            "line",
            "lines",
            "katar",
            "kataar",
            "qatar",
            "pankti",
            "कतार",
            "कतारें",
            "पंक्ति",
            "लाइन",
            "लाइनें",
            "furrow",
            "drill",
        ];
        let row = (0..text.tokens.len()).any(|at| ROWS.contains(&text.normal(at)));
        let seed = kinds.contains(&Kind::Seed) && kinds.iter().all(|kind| matches!(kind, Kind::Seed | Kind::Space));
        let long = self.quantities.said.iter().any(|said| said.written.unit.measures() == UnitOf::Length);
        row && seed && long && !self.says_point(Point::Time)
    }

    /// What is asked of a crop or its bed.
    fn of_a_crop(&self, text: &Text, kinds: &[Kind]) -> Option<Kind> {
        let only = |those: &[Kind]| kinds.iter().all(|kind| those.contains(kind));
        let crop = self.names_crop();
        let sized = !self.quantities.dimensions.is_empty();
        let seed = self.works_named(&[JobKind::Sow]);
        if !self.asks || self.stuff_named() || self.says_point(Point::SyntheticFeed) {
            return None;
        }
        let amount = self.says_point(Point::Amount)
            || kinds.contains(&Kind::Load)
            || text.tokens.first().is_some_and(|token| token.normal == "what");
        if crop && amount && !seed && self.says_point(Point::Gets) && only(&[Kind::Harvest, Kind::Load, Kind::Space]) {
            return Some(Kind::Harvest);
        }
        let bed = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_)));
        let works = self.works_named(&[JobKind::Feed, JobKind::Spray, JobKind::Net, JobKind::Pick, JobKind::Sow]);
        if (crop || bed) && !works && self.says_point(Point::Alternates) && only(&[Kind::Water, Kind::Care]) {
            return Some(Kind::Water);
        }
        if crop && self.counts_seeds(text, kinds) {
            return Some(Kind::Seed);
        }
        if crop && !sized && self.eats(text) {
            return Some(Kind::Feed);
        }
        if crop && !sized && self.says_point(Point::Raises) && self.says_point(Point::Time) {
            return Some(Kind::Sow);
        }
        let put = self.says_point(Point::PutSupposed) && !self.says_point(Point::Amount);
        (crop && put && !works && !sized && only(&[Kind::Sow])).then_some(Kind::Sow)
    }

    /// "What do they eat", "what does a chilli plant eat", "kya khilau": of a plant, and of no animal.
    fn eats(&self, text: &Text) -> bool {
        const ASKS: [&str; 2] = ["do", "does"];
        const PLANTS: [&str; 6] = ["they", "it", "plant", "plants", "vine", "vines"];
        /// So many words stand between "do" and "eat" at most.
        const APART: usize = 5;
        let animal = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)))
            || self.told.iter().any(|hit| hit.meaning == Told::Creature)
            || self.says_point(Point::Tender);
        let of_plant = |at: usize| {
            let crop = |hit: &Hit<Named>| matches!(hit.meaning, Named::Crop(_)) && hit.span.contains(&at);
            PLANTS.contains(&text.normal(at)) || self.names.iter().any(crop)
        };
        let ends = |at: usize| {
            let from = at.saturating_sub(APART);
            let asked = (from..at).find(|place| ASKS.contains(&text.normal(*place)));
            text.normal(at) == "eat" && asked.is_some_and(|asked| (asked + 1..at).any(of_plant))
        };
        !animal && (self.says_point(Point::Eats) || (0..text.tokens.len()).any(ends))
    }
}
