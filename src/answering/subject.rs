//! Which beds a message is about: the asker's own, one that was described, or the usual one of its crop.

use super::answer::Answer;
use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use crate::garden::{Assumed, Bed, BedId, BedKind, Measure, Shape, SiteId, Start, Sun};
use crate::knowledge::{Crop, GrownFor, Mix};
use crate::needs::sun_by_walls;
use crate::needs::surroundings::{Standing, Surroundings};
use crate::quantity::{Unit, UnitOf, Volume, Written};
use crate::understanding::{Measured, Reading};
use crate::weather::Weather;
use chrono::{DateTime, FixedOffset, NaiveDate};

/// A bed an answer is about.
#[derive(Debug, Clone)]
pub struct Subject<'a> {
    pub bed: Bed,
    /// None for a bed that was described or assumed.
    pub own: Option<BedId>,
    pub standing: Vec<StandingCrop<'a>>,
    /// None where nothing is known of the weather.
    pub weather: Option<Weather<'a>>,
    pub sun_hours: f64,
    pub assumed: Vec<Assumed>,
    /// The whole bed is assumed: neither named nor described.
    pub usual: bool,
    /// A depth or another measure was not said.
    pub depth_assumed: bool,
    pub hose_l_min: Option<f64>,
    pub can: Option<crate::quantity::Volume>,
    /// The moment of asking, on the bed's own clock.
    pub now: DateTime<FixedOffset>,
}

/// A crop in it.
#[derive(Debug, Clone, Copy)]
pub struct StandingCrop<'a> {
    pub crop: &'a Crop,
    pub microgreen: bool,
    pub start: Option<Start>,
    pub plants: Option<u32>,
}

impl<'a> StandingCrop<'a> {
    /// As the sums take it.
    pub const fn plain(&self) -> Standing<'a> {
        Standing { crop: self.crop, microgreen: self.microgreen, start: self.start, plants: self.plants }
    }
}

impl<'a> Subject<'a> {
    /// The day of asking where it stands.
    pub fn today(&self) -> NaiveDate {
        self.now.date_naive()
    }

    /// The bed under its own sky; none without weather or mix.
    pub fn surroundings<'s>(&'s self, facts: &'s Facts<'a>, today: NaiveDate) -> Option<Surroundings<'s>> {
        let standing = self.standing.iter().map(StandingCrop::plain);
        Some(Surroundings {
            bed: &self.bed,
            mix: self.mix(facts)?,
            standing: standing.collect(),
            weather: self.weather.clone()?,
            sun_hours: self.sun_hours,
            today,
        })
    }

    /// Its mix.
    pub fn mix<'s>(&self, facts: &'s Facts<'a>) -> Option<&'s Mix> {
        facts.known.mixes.get(self.bed.mix_counted())
    }

    /// How it is called in a reply.
    pub fn called(&self) -> Said {
        match &self.own {
            Some(id) => Said::Bed(id.clone()),
            None => Said::Line(Box::new(described(&self.bed))),
        }
    }
}

impl Subject<'_> {
    /// The same where its depth does not matter: a described box by its length and width.
    pub fn called_by_top(&self) -> Said {
        match (&self.own, &self.bed.shape) {
            (None, Shape::Box { length, width, .. }) => {
                let kind = if self.bed.kind == BedKind::Tray { "tray" } else { "box" };
                let line = Line::new("bed-described").with("kind", Said::Key(kind));
                Said::Line(Box::new(line.with("size", Said::Size(vec![length.written(), width.written()]))))
            }
            _ => self.called(),
        }
    }
}

/// The beds of a reading, or what to ask back.
pub fn subjects<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Result<Vec<Subject<'a>>, Answer> {
    // A described bed stands at the place that was named, unless that is where the asker's own site is.
    let is_home = |site: &&SiteFacts<'_>| {
        let nearest = site.weather.normals().map(|(place, _)| place.id.as_str());
        reading.places.is_empty() || reading.places.iter().any(|named| nearest == Some(named))
    };
    let home = facts.sites.first().filter(is_home);
    if let Some((bed, depth_assumed)) = described_bed(reading) {
        let standing = crops(reading, facts).map(|crop| established(crop, reading.microgreen)).collect();
        return Ok(vec![Subject { depth_assumed, ..at(bed, standing, home, facts) }]);
    }
    if !reading.beds.is_empty() {
        let ambiguous = !reading.beds_named && reading.crops.is_empty() && !reading.all_beds;
        if ambiguous && reading.beds.len() > 1 {
            return Err(which_bed(&reading.beds));
        }
        let own = reading.beds.iter().filter_map(|id| own(id, reading, facts));
        return Ok(own.collect());
    }
    if !reading.crops.is_empty() {
        let usual = crops(reading, facts).map(|crop| {
            let microgreen = reading.microgreen && crop.microgreen.is_some();
            let bed = usual_bed(crop, reading.bed_kind, microgreen);
            Subject { usual: true, ..at(bed, vec![established(crop, microgreen)], home, facts) }
        });
        return Ok(usual.collect());
    }
    let all: Vec<BedId> = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
    match all.as_slice() {
        [] => Err(Answer::ask(Line::new("ask-what-bed"), Vec::new())),
        [only] => Ok(own(only, reading, facts).into_iter().collect()),
        _ => Err(which_bed(&all)),
    }
}

/// Asks which bed is meant, offering at most four.
pub fn which_bed(beds: &[BedId]) -> Answer {
    let choices = beds.iter().take(4).map(|bed| Line::new("choice-bed").with("bed", Said::Bed(bed.clone())));
    Answer::ask(Line::new("ask-which-bed"), choices.collect())
}

/// A few places to choose from.
pub fn place_choices(facts: &Facts<'_>) -> Vec<Line> {
    let places = facts.known.places.iter().take(4);
    places.map(|place| Line::new("choice-place").with("place", Said::Place(place.id.clone()))).collect()
}

/// The crops of a reading that the knowledge base has.
pub fn crops<'a>(reading: &Reading, facts: &'a Facts<'a>) -> impl Iterator<Item = &'a Crop> {
    reading.crops.iter().filter_map(|id| facts.known.crops.get(id))
}

/// An own bed with what stands in it.
pub fn own_bed<'a>(id: &BedId, facts: &'a Facts<'a>) -> Option<Subject<'a>> {
    let (site, bed) = facts.bed(id)?;
    Some(own_bed_at(site, bed, facts))
}

/// The same of a bed that is at hand.
pub fn own_bed_at<'a>(site: &'a SiteFacts<'a>, bed: &'a BedFacts, facts: &'a Facts<'a>) -> Subject<'a> {
    let today = site.now.date_naive();
    let standing = bed.standing(today).into_iter().filter_map(|planting| {
        Some(StandingCrop {
            crop: facts.known.crops.get(&planting.crop)?,
            microgreen: planting.microgreen,
            start: Some(planting.start),
            plants: planting.plants,
        })
    });
    let sun_hours = match bed.bed.sun_counted(&site.site) {
        Sun::Stated(hours) | Sun::Assumed(hours) => hours,
        Sun::FromWalls => sun_by_walls::sun_hours(site.site.latitude_deg, &site.site.walls, today),
    };
    let assumed = bed.bed.assumed(&site.site);
    let standing = standing.collect();
    let own = Some(bed.bed.id.clone());
    Subject { own, sun_hours, assumed, ..at(bed.bed.clone(), standing, Some(site), facts) }
}

fn established(crop: &Crop, microgreen: bool) -> StandingCrop<'_> {
    StandingCrop { crop, microgreen, start: None, plants: None }
}

/// The same with what a message says grows there.
pub fn own<'a>(id: &BedId, reading: &Reading, facts: &'a Facts<'a>) -> Option<Subject<'a>> {
    let mut subject = own_bed(id, facts)?;
    // A crop that was named but is not recorded here is taken at its word.
    for crop in crops(reading, facts) {
        if subject.standing.iter().all(|standing| standing.crop.id != crop.id) && reading.beds_named {
            subject.standing.push(established(crop, reading.microgreen && crop.microgreen.is_some()));
        }
    }
    Some(subject)
}

/// Six hours of direct sun where nothing was said (the garden file's convention).
const USUAL_SUN_HOURS: f64 = 6.0;

fn at<'a>(
    bed: Bed,
    standing: Vec<StandingCrop<'a>>,
    site: Option<&'a SiteFacts<'a>>,
    facts: &'a Facts<'a>,
) -> Subject<'a> {
    Subject {
        bed,
        own: None,
        standing,
        weather: site.map(|site| site.weather.clone()).or_else(|| facts.elsewhere.clone()),
        now: site.map_or(facts.now_elsewhere, |site| site.now),
        sun_hours: USUAL_SUN_HOURS,
        assumed: vec![Assumed::SunHours],
        usual: false,
        depth_assumed: false,
        hose_l_min: site.and_then(|site| site.site.hose_l_min),
        can: site.and_then(|site| site.site.can).map(Measure::quantity),
    }
}

/// The bed that sizes in a message describe, and whether its depth was left to us.
pub fn described_bed(reading: &Reading) -> Option<(Bed, bool)> {
    let kind = reading.bed_kind;
    let sizes = reading.quantities.iter().copied().filter(|said| !reading.given.contains(said));
    let volume = sizes.into_iter().find(|said| said.unit.measures() == UnitOf::Volume);
    if let Some(measured) = box_measures(reading) {
        return shape_of(measured, kind);
    }
    // A volume alone is a bag or a pot of that volume; beside a word for a spray or a can it is not.
    // Less than this is a mug, and no bed.
    let least = Volume::litres(1.0);
    let of_bed = |volume: &Written| volume.volume().is_some_and(|volume| volume >= least);
    let volume = volume.filter(of_bed).filter(|_| matches!(kind, Some(BedKind::Bag | BedKind::Pot)))?;
    let volume = Measure::of(volume).ok()?;
    Some((bare(kind.unwrap_or(BedKind::Bag), Shape::Bag { volume, depth: None }), false))
}

/// What is longer or wider is a roof or a terrace, and no bed: nobody reaches its middle (judgement).
fn is_of_a_bed(measured: &Measured) -> bool {
    const LONGEST_M: f64 = 4.0;
    const WIDEST_M: f64 = 2.5;
    const STRIP_M: f64 = 1.25;
    const STRIP_LONGEST_M: f64 = 12.0;
    let side = |written: Option<Written>| written.and_then(Written::length).map_or(0.0, |length| length.as_metres());
    let (length, width) = (side(measured.length), side(measured.width));
    // A strip along a wall may be longer: its middle is reached from one side.
    let long = if length.min(width) <= STRIP_M { STRIP_LONGEST_M } else { LONGEST_M };
    length.max(width) <= long && length.min(width) <= WIDEST_M && side(measured.diameter) <= WIDEST_M
}

/// The largest thing measured in a message: beside a box, a smaller one is its tray.
pub fn box_measures(reading: &Reading) -> Option<Measured> {
    let area = |measured: &&Measured| {
        let length = |written: Option<Written>| written.and_then(Written::length).map_or(0.0, |l| l.as_metres());
        let side = length(measured.diameter).max(length(measured.width));
        length(measured.length).max(side) * side
    };
    reading
        .measures
        .iter()
        .filter(|measured| measured.diameter.is_some() || measured.length.is_some() && measured.width.is_some())
        .filter(|measured| is_of_a_bed(measured))
        .max_by(|a, b| area(a).total_cmp(&area(b)))
        .copied()
}

fn shape_of(measured: Measured, kind: Option<BedKind>) -> Option<(Bed, bool)> {
    let inches = |value| Written { value, unit: Unit::Inch };
    let depth_assumed = measured.depth.is_none();
    if let Some(diameter) = measured.diameter {
        let kind = kind.filter(|kind| matches!(kind, BedKind::Basket | BedKind::Bag)).unwrap_or(BedKind::Pot);
        let usual = if kind == BedKind::Basket { inches(USUAL_BASKET_DEPTH_IN) } else { diameter };
        let depth = Measure::of(measured.depth.unwrap_or(usual)).ok()?;
        return Some((bare(kind, Shape::Round { diameter: Measure::of(diameter).ok()?, depth }), depth_assumed));
    }
    if let Some((across, high)) = across_and_high(&measured, kind) {
        let shape = Shape::Round { diameter: Measure::of(across).ok()?, depth: Measure::of(high).ok()? };
        return Some((bare(BedKind::Bag, shape), false));
    }
    let kind = kind.filter(|kind| *kind != BedKind::Bag && *kind != BedKind::Pot).unwrap_or(BedKind::Box);
    let usual = if kind == BedKind::Tray { USUAL_TRAY_DEPTH_IN } else { USUAL_BOX_DEPTH_IN };
    let depth = Measure::of(measured.depth.unwrap_or(inches(usual))).ok()?;
    let length = Measure::of(measured.length?).ok()?;
    let width = Measure::of(measured.width?).ok()?;
    Some((bare(kind, Shape::Box { length, width, depth }), depth_assumed))
}

/// "A 12 x 15 inch grow bag": bags are sold by how far they go across and how high they stand (common practice, no source).
fn across_and_high(measured: &Measured, kind: Option<BedKind>) -> Option<(Written, Written)> {
    /// Bags of longer sides are flat beds.
    const LONGEST_M: f64 = 0.65;
    let (across, high) = measured.length.zip(measured.width)?;
    let small = |side: Written| side.length().is_some_and(|side| side.as_metres() <= LONGEST_M);
    let of_bag = kind == Some(BedKind::Bag) && measured.depth.is_none() && small(across) && small(high);
    of_bag.then_some((across, high))
}

/// Usual depths, inches (common practice, no source).
const USUAL_BOX_DEPTH_IN: f64 = 12.0;
const USUAL_TRAY_DEPTH_IN: f64 = 3.0;
const USUAL_BASKET_DEPTH_IN: f64 = 7.0;

/// The depth of a bed as it was written, where it has one.
pub fn depth_written(bed: &Bed) -> Option<Written> {
    match bed.shape {
        Shape::Box { depth, .. } | Shape::Round { depth, .. } => Some(depth.written()),
        Shape::Bag { depth, .. } => depth.map(Measure::written),
    }
}

fn bare(kind: BedKind, shape: Shape) -> Bed {
    // A described bed has no place in a garden; its id is never shown.
    let site = SiteId::new("described").ok();
    let id = site.and_then(|site| BedId::at(&site, "bed").ok());
    id.map_or_else(|| unreachable!("a fixed id is well formed"), |id| Bed::bare(id, kind, shape))
}

/// The bed a crop usually stands in, where nothing was said: fruit in a 20 L bag, greens in a box 4 ft × 3 ft,
/// shoots in a tray, a tree or a shrub in a tub of some 60 L by itself (common practice, no source).
fn usual_bed(crop: &Crop, kind: Option<BedKind>, microgreen: bool) -> Bed {
    let inch = |value| Measure::of(Written { value, unit: Unit::Inch }).ok();
    let foot = |value| Measure::of(Written { value, unit: Unit::Foot }).ok();
    let litre = |value| Measure::of(Written { value, unit: Unit::Litre }).ok();
    let fruiting = matches!(crop.grown_for, GrownFor::Fruit | GrownFor::Pod);
    let alone = !microgreen && crop.stands_alone();
    let kind = kind.unwrap_or(match (microgreen, fruiting) {
        _ if alone => BedKind::Pot,
        (true, _) => BedKind::Tray,
        (false, true) => BedKind::Bag,
        (false, false) => BedKind::Box,
    });
    let shape = match kind {
        BedKind::Bag => litre(20.0).map(|volume| Shape::Bag { volume, depth: None }),
        BedKind::Pot if alone => inch(18.0).zip(inch(15.0)).map(|(diameter, depth)| Shape::Round { diameter, depth }),
        BedKind::Pot => inch(12.0).zip(inch(12.0)).map(|(diameter, depth)| Shape::Round { diameter, depth }),
        BedKind::Basket => {
            inch(14.0).zip(inch(USUAL_BASKET_DEPTH_IN)).map(|(diameter, depth)| Shape::Round { diameter, depth })
        }
        BedKind::Tray => foot(2.0)
            .zip(foot(1.5))
            .zip(inch(USUAL_TRAY_DEPTH_IN))
            .map(|((length, width), depth)| Shape::Box { length, width, depth }),
        BedKind::Box => foot(4.0)
            .zip(foot(3.0))
            .zip(inch(USUAL_BOX_DEPTH_IN))
            .map(|((length, width), depth)| Shape::Box { length, width, depth }),
    };
    let mut bed = shape.map_or_else(|| unreachable!("fixed measures are well formed"), |shape| bare(kind, shape));
    if kind == BedKind::Tray {
        bed.mix = Some("tray".to_owned());
    }
    bed
}

/// A described bed by its kind and size.
fn described(bed: &Bed) -> Line {
    let kind = match bed.kind {
        BedKind::Box => "box",
        BedKind::Basket => "basket",
        BedKind::Tray => "tray",
        BedKind::Pot => "pot",
        BedKind::Bag => "bag",
    };
    let size = match &bed.shape {
        Shape::Box { length, width, depth } => vec![length.written(), width.written(), depth.written()],
        Shape::Round { diameter, depth: _ } => vec![diameter.written()],
        Shape::Bag { volume, .. } => vec![volume.written()],
    };
    Line::new("bed-described").with("kind", Said::Key(kind)).with("size", Said::Size(size))
}
