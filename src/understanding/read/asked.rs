//! Questions that a word or two tell plainly, where the weight of all words would lean to something else.

use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Point, TimeUnit};
use crate::script::Text;
use crate::understanding::kind::Verdict;

/// What such words leave open is little (judgement).
const SURE: f64 = 0.8;

impl Found {
    pub(super) fn says_point(&self, what: Point) -> bool {
        self.points().any(|point| point == what)
    }

    pub(super) fn names_crop(&self) -> bool {
        self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)))
    }

    /// What is told plainly, before any weighing.
    pub(super) fn about_one_thing(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        // "It has filled its pot" is no work.
        if self.did.is_some() {
            return self.about_dividing();
        }
        self.about_a_fall()
            .or_else(|| self.about_the_year())
            .or_else(|| self.about_a_saying_or_remedy())
            .or_else(|| self.about_a_yield())
            .or_else(|| self.about_ripeness())
            .or_else(|| self.about_climbing(text, reader))
            .or_else(|| self.about_dividing())
            .or_else(|| self.about_what_grows())
            .or_else(|| self.about_pruning())
            .or_else(|| self.about_lining())
    }

    /// "What does my year look like": what can go in, month by month. Of other work its year is no matter of sowing.
    fn about_the_year(&self) -> Option<(Kind, f64)> {
        let works = [JobKind::Water, JobKind::Feed, JobKind::Spray, JobKind::Pick, JobKind::Net];
        let other = works.into_iter().any(|job| self.jobs().contains(&job));
        let other = other || self.names_crop() || self.says_point(Point::Amount);
        let whole = self.says_point(Point::WholeYear) && !self.of_others();
        (whole && !other && !self.on_plant && self.quantities.dimensions.is_empty()).then_some((Kind::Sow, SURE))
    }

    /// What is cut off a plant that goes on, of a plant without figures too: how it is done.
    fn about_pruning(&self) -> Option<(Kind, f64)> {
        let plant = |hit: &Hit<Named>| matches!(hit.meaning, Named::Crop(_) | Named::OtherPlant(_) | Named::OwnBed(_));
        let works = [JobKind::Net, JobKind::Spray, JobKind::Feed, JobKind::Water, JobKind::Sow];
        let other = works.into_iter().any(|job| self.jobs().contains(&job)) || !self.quantities.said.is_empty();
        let asked = self.asks && self.says_point(Point::Pruning) && self.names.iter().any(plant);
        (asked && !other && !self.of_others()).then_some((Kind::Care, SURE))
    }

    /// "Jute or plastic", "may it be painted": what a bed is lined with, where no amount of it is asked.
    fn about_lining(&self) -> Option<(Kind, f64)> {
        let bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_));
        let asked = self.asks && self.says_point(Point::Lining) && self.names.iter().any(bed);
        let sized = self.says_point(Point::Amount) || !self.quantities.said.is_empty();
        let other = sized || self.names_crop() || self.sprays || self.feeds || self.on_plant;
        (asked && !other && self.quantities.dimensions.is_empty() && !self.of_others()).then_some((Kind::Care, SURE))
    }

    /// "Did I miss any spray": what was due, and no record.
    pub(super) fn about_what_was_missed(&self) -> Option<(Kind, f64)> {
        let other = !self.signs.is_empty() || !self.quantities.said.is_empty();
        (self.says_point(Point::Missed) && !other).then_some((Kind::Due, SURE))
    }

    /// A poison that went where it should not: what may be eaten is the question, whatever was done.
    pub(super) fn about_a_poison_astray(&self) -> Option<(Kind, f64)> {
        let poison = self.says_point(Point::SyntheticSpray) && self.says_point(Point::Accident);
        // What someone brought in a bottle without a name, and says how much of it.
        let said = self.told.iter().any(|hit| hit.meaning == Told::OthersSaid);
        let unnamed = self.says_point(Point::Drug) && said && (self.asks || !self.quantities.said.is_empty());
        // "A bottle with no name, how many drops": its label would say.
        let dosed = self.says_point(Point::Drug) && self.says_point(Point::Strength) && self.asks;
        /// Less than what happened to someone, who may have swallowed it (judgement).
        const DOSED: f64 = 0.78;
        let dosed = (dosed && self.did.is_none()).then_some((Kind::Spray, DOSED));
        (poison || unnamed).then_some((Kind::Spray, SURE)).or(dosed)
    }

    /// Far more of a bought feed than was meant: what to do then is the question.
    pub(super) fn about_a_feed_astray(&self) -> Option<(Kind, f64)> {
        let worried = self.asks || self.told.iter().any(|hit| hit.meaning == Told::Worry);
        let fed = self.says_point(Point::SyntheticFeed) && self.says_point(Point::Accident);
        (fed && worried && !self.sprays).then_some((Kind::Feed, SURE))
    }

    /// A pot that fell or may fall over the edge: where it stands is asked about, whatever else.
    fn about_a_fall(&self) -> Option<(Kind, f64)> {
        self.says_point(Point::FallsOver).then_some((Kind::Load, SURE))
    }

    /// "How much crop", "kitni methi niklegi": what a crop gives, in whatever it stands.
    fn about_a_yield(&self) -> Option<(Kind, f64)> {
        let counts_days = self.quantities.durations.iter().any(|duration| duration.unit == TimeUnit::Day);
        let seed = self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Sow));
        let other = counts_days || seed || self.sprays || self.on_plant;
        (self.asks && self.names_crop() && self.says_point(Point::Yield) && !other).then_some((Kind::Harvest, SURE))
    }

    /// "Hing water on the pots", "sow by the moon": what an article tells, whatever work it names. An own bed, a size or a
    /// spray of the trade makes it a question with figures.
    fn about_a_saying_or_remedy(&self) -> Option<(Kind, f64)> {
        let place = |hit: &Hit<Named>| {
            matches!(hit.meaning, Named::Crop(_) | Named::BedKind(_) | Named::OwnBed(_) | Named::Trouble(_))
        };
        let growing = self.says_point(Point::Growing) || self.on_plant || self.names.iter().any(place);
        let said = [Point::Lore, Point::Household].into_iter().any(|point| self.says_point(point));
        let practice = self.says_point(Point::Practice) && (self.did.is_none() || self.asks && self.days.is_empty());
        // What is in a bottle, and how much of it, is asked of sprays.
        let bottle = [Point::SyntheticSpray, Point::Strength, Point::NotKnown, Point::Drug];
        let other = bottle.into_iter().any(|point| self.says_point(point)) || !self.quantities.dimensions.is_empty();
        // What may be eaten after a spray, and what is sprayed against a trouble, is asked of the spray.
        let ails = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        let waits = self.says_point(Point::Wait) && (self.sprays || ails || self.did.is_some());
        let other = other || waits || practice && !said && ails && self.sprays;
        ((said || practice) && growing && !other && !self.of_others()).then_some((Kind::Care, SURE))
    }

    /// How one sees that a named crop is ready: not how it is kept, sown or fed.
    fn about_ripeness(&self) -> Option<(Kind, f64)> {
        let works = [JobKind::Net, JobKind::Spray, JobKind::Feed, JobKind::Water, JobKind::Sow, JobKind::Plant];
        let other = works.into_iter().any(|job| self.jobs().contains(&job)) || self.on_plant;
        let asked = self.asks && self.names_crop() && self.says_point(Point::Ripe);
        (asked && !other && self.quantities.dimensions.is_empty() && !self.of_others()).then_some((Kind::Harvest, SURE))
    }

    /// What a vine climbs on, be it a net, is no shade.
    fn about_climbing(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        let sized = !self.quantities.dimensions.is_empty();
        let climbs = self.asks && self.says_point(Point::Climbs) && !self.of_others();
        // "Up a trellis, what gap from plant to plant".
        let other = || self.topics(text, reader).iter().any(|hit| hit.meaning != Kind::Care);
        (climbs && !sized && !self.on_plant && !self.sprays && !other()).then_some((Kind::Care, SURE))
    }

    /// A clump that has grown too big: how it is taken apart.
    fn about_dividing(&self) -> Option<(Kind, f64)> {
        (self.names_crop() && self.says_point(Point::Divides)).then_some((Kind::Care, SURE))
    }

    /// So many hours of sun, or the rains, and what grows then.
    fn about_what_grows(&self) -> Option<(Kind, f64)> {
        let hours = self.quantities.durations.iter().any(|duration| duration.unit == TimeUnit::Hour);
        let asked = hours || self.says_point(Point::Rain) || self.says_point(Point::Lives);
        (asked && self.says_point(Point::WhatGrows) && !self.names_crop()).then_some((Kind::Sow, SURE))
    }

    /// What was read but is not sure: a feed named for a crop, a plant asked after that seemed chatter.
    pub(super) fn about_a_named_thing(
        &self,
        Verdict { kind, sureness, perhaps, .. }: Verdict,
        before: Option<&Reading>,
    ) -> Option<(Kind, f64)> {
        /// As sure as a reading must be to be answered.
        const ENOUGH: f64 = 0.7;
        /// Less sure than this a share of the mix may be food for what stands there.
        const MIXED: f64 = 0.85;
        /// Less sure than this it is no reading.
        const LEAST: f64 = 0.4;
        /// As unsure that an article must be near, or it is asked what is meant.
        const UNSURE: f64 = 0.6;
        /// As sure that it is chatter, whatever crop it names (of eight such messages none asked for advice).
        const SURELY: f64 = 0.9;
        let feeding = self.feeds || self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Feed));
        let open = (LEAST..ENOUGH).contains(&sureness);
        let bare = self.signs.is_empty() && self.did.is_none();
        let of_crop = self.names_crop() || before.is_some_and(|before| before.kind == Kind::Feed);
        let mixed = kind == Kind::Mix && perhaps == Some(Kind::Feed) && !self.names.iter().any(is_mix);
        // What stands filled already is fed, where nothing is to be filled.
        let filled = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        let fills = self.told.iter().any(|hit| matches!(hit.meaning, Told::NewBed | Told::Thing(JobKind::TopUp)));
        let open = open || mixed && sureness < MIXED && filled && !fills && self.quantities.dimensions.is_empty();
        if (kind == Kind::Feed || mixed) && open && feeding && of_crop && bare {
            return Some((Kind::Feed, ENOUGH));
        }
        // "Kill ants in the mix": what lives in it is asked about, not what it is made of.
        let ails = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        if matches!(kind, Kind::Mix | Kind::Build) && ails && bare && self.quantities.dimensions.is_empty() {
            return Some((Kind::Trouble, sureness));
        }
        // "The brinjal borer is back".
        let of_it = kind == Kind::None && sureness < SURELY && !self.crops_within.is_empty() && bare;
        if of_it && self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_))) && !self.of_others() {
            return Some((Kind::Trouble, ENOUGH));
        }
        // What is fed is not what is sprayed.
        if kind == Kind::Spray && self.feeds && !self.sprays && self.asks && bare {
            return Some((Kind::Feed, sureness));
        }
        // An order to be someone else is no call for a person.
        let not_ours = self.told.iter().any(|hit| hit.meaning == Told::NotOurs);
        if kind == Kind::Person && not_ours {
            return Some((Kind::None, SURE));
        }
        let chatter = kind == Kind::None && sureness < SURELY && self.asks && !self.of_others();
        let chatter = chatter && (self.names_crop() || self.feeds);
        perhaps.filter(|_| chatter).map(|_| (Kind::Care, UNSURE))
    }

    /// The kind of question that the first work named belongs to.
    pub(super) fn asked_of_the_work(&self) -> Option<Kind> {
        match self.jobs().first()? {
            JobKind::Water => Some(Kind::Water),
            JobKind::Spray => Some(Kind::Spray),
            JobKind::Feed => Some(Kind::Feed),
            JobKind::Net => Some(Kind::Shade),
            JobKind::Sow | JobKind::Plant => Some(Kind::Sow),
            JobKind::Pick => Some(Kind::Harvest),
            _ => None,
        }
    }

    /// When work was done last, and by whom: it is asked, not told.
    pub(super) fn about_what_was_done(&self) -> Option<(Kind, f64)> {
        /// Such words leave little else (judgement).
        const SURE: f64 = 0.85;
        let asked = self.asks && self.points().any(|point| point == Point::LastDone);
        let job = self.did.or_else(|| self.jobs().first().copied()).filter(|_| asked)?;
        let kind = match job {
            JobKind::Water => Kind::Water,
            JobKind::Spray => Kind::Spray,
            JobKind::Feed => Kind::Feed,
            JobKind::Pick => Kind::Harvest,
            _ => return None,
        };
        Some((kind, SURE))
    }

    /// What beds there are, and what grows in one.
    pub(super) fn about_own_beds(&self) -> Option<(Kind, f64)> {
        /// A phrase that leaves little else (judgement).
        const SURE: f64 = 0.85;
        let bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_) | Named::Site(_));
        let other = |hit: &Hit<Named>| matches!(hit.meaning, Named::Mix(_) | Named::Trouble(_) | Named::SomeoneElse);
        let says = |point| self.points().any(|said| said == point);
        let asked = says(Point::OwnBeds) || says(Point::Stands) && self.names.iter().any(bed);
        let of_others = self.told.iter().any(|hit| hit.meaning == Told::Others);
        let plainly =
            asked && !of_others && self.did.is_none() && self.signs.is_empty() && !self.names.iter().any(other);
        plainly.then_some((Kind::Care, SURE))
    }

    /// How deep a bed and how much sun a crop wants. How deep its seed goes is told too.
    pub(super) fn about_what_a_crop_wants(&self) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.85;
        let crop = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)));
        let laid = self.points().any(|point| point == Point::SowingDepth);
        let asked = laid || self.points().any(|point| matches!(point, Point::BedDepth | Point::SunWanted));
        let seed = !laid && self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Sow));
        let full_size = self.quantities.dimensions.iter().any(|found| found.length.is_some() && found.width.is_some());
        let told = self.did.is_some() && !laid;
        // A carrot in soil is no circling root.
        let ails = !(self.signs.is_empty() || self.asks && self.says_point(Point::BedDepth));
        (asked && crop && !seed && !full_size && !told && !ails).then_some((Kind::Care, SURE))
    }
}

fn is_mix(hit: &Hit<Named>) -> bool {
    matches!(hit.meaning, Named::Mix(_))
}
