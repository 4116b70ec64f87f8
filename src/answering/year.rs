//! "What does my year look like, which month for what?"

use super::answer::Answer;
use super::facts::{Facts, SiteFacts};
use super::line::{Line, Said};
use super::sow::Asked;
use super::subject::{StandingCrop, Subject, subjects};
use super::year_told;
use crate::garden::{BedId, BedKind};
use crate::knowledge::{Crop, GrownFor, Place, Point};
use crate::needs::season::{Way, usual_way};
use crate::needs::surroundings::Surroundings;
use crate::needs::year::Year;
use crate::planning::year::{Roof, YearAhead, year_ahead};
use crate::understanding::Reading;
use crate::weather::Weather;
use chrono::NaiveDate;

/// The year through is asked after, for no crop, no day and no month of its own.
pub fn is_asked(reading: &Reading) -> bool {
    let bare = reading.crops.is_empty() && reading.days.is_empty() && reading.months.is_empty();
    bare && !reading.follows && reading.points.contains(&Point::WholeYear)
}

/// The whole of what a year's answer tells.
pub struct Told<'a> {
    pub asked: Asked<'a>,
    pub ahead: YearAhead<'a>,
    pub trays: YearAhead<'a>,
    /// The bed that the waterings are of.
    pub typical: Option<Said>,
    pub head: Line,
}

/// Month by month: what goes in, nets, feeds, waterings, drains.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let Some(scope) = Scope::of(reading, facts) else {
        return Answer::ask(Line::new("ask-which-place"), super::subject::place_choices(facts));
    };
    let Some(year) = Year::around(scope.weather, scope.today) else {
        return Answer::hand_over(Line::new("sow-no-usual-days"));
    };
    let beds = scope.subjects(reading, facts);
    let typical = typical(&beds);
    let place = scope.weather.normals().map(|(place, _)| place);
    let roof = |crops| Roof { year: &year, today: scope.today, crops, typical: None, place };
    let grown = typical.as_ref().and_then(|bed| grown(bed, facts));
    let ahead = year_ahead(&Roof { typical: grown, ..roof(scope.crops(&beds, facts)) });
    let trays = year_ahead(&Roof { place: None, ..roof(on_trays(&beds, facts)) });
    let head = scope.head(&beds);
    let typical = typical.as_ref().map(Subject::called);
    let (day, today, weather) = (scope.today, scope.today, scope.weather);
    let asked = Asked { day, today, weather, year: year.clone(), elsewhere: scope.elsewhere };
    year_told::answer(&Told { asked, ahead, trays, typical, head }, place.map(|place: &Place| &place.source))
}

/// Which roof is meant.
struct Scope<'a> {
    weather: &'a Weather<'a>,
    today: NaiveDate,
    elsewhere: bool,
    sites: Vec<&'a SiteFacts<'a>>,
    beds: Vec<BedId>,
    /// One site was named, or the asker has no other.
    one_site: bool,
    beds_named: bool,
}

impl<'a> Scope<'a> {
    /// A place that was named, else the beds or the sites named, else all sites under the sky of the asker's first.
    fn of(reading: &Reading, facts: &'a Facts<'a>) -> Option<Self> {
        let elsewhere = facts.elsewhere.as_ref().map(|weather| Self {
            weather,
            today: facts.now_elsewhere.date_naive(),
            elsewhere: true,
            sites: Vec::new(),
            beds: Vec::new(),
            one_site: false,
            beds_named: false,
        });
        if !reading.places.is_empty() && elsewhere.is_some() {
            return elsewhere;
        }
        let beds: &[BedId] = if reading.beds_named { &reading.beds } else { &[] };
        let meant = |site: &&SiteFacts<'_>| match (beds, reading.sites.as_slice()) {
            ([], []) => true,
            ([], sites) => sites.contains(&site.site.id),
            (beds, _) => beds.iter().any(|bed| *bed.site() == site.site.id),
        };
        let mut sites: Vec<&SiteFacts<'_>> = facts.sites.iter().filter(meant).collect();
        let Some(first) = sites.first().copied() else { return elsewhere };
        let sky = |site: &SiteFacts<'_>| site.weather.normals().map(|(place, _)| place.id.clone());
        sites.retain(|site| sky(site) == sky(first));
        let all = || sites.iter().flat_map(|site| site.beds.iter().map(|bed| bed.bed.id.clone())).collect();
        let beds_named = !beds.is_empty();
        Some(Self {
            weather: &first.weather,
            today: first.now.date_naive(),
            elsewhere: false,
            beds: if beds_named { beds.to_vec() } else { all() },
            one_site: sites.len() == 1,
            beds_named,
            sites,
        })
    }

    fn subjects(&self, reading: &Reading, facts: &'a Facts<'a>) -> Vec<Subject<'a>> {
        if self.beds.is_empty() {
            return Vec::new();
        }
        let all = Reading {
            beds: self.beds.clone(),
            beds_named: true,
            all_beds: true,
            crops: Vec::new(),
            measures: Vec::new(),
            quantities: Vec::new(),
            ..reading.clone()
        };
        subjects(&all, facts).unwrap_or_default()
    }

    /// Crops of a bed that some bed here has sun and depth for, those of the asker's own beds ranked first, then
    /// the usual ones.
    fn crops(&self, beds: &[Subject<'_>], facts: &'a Facts<'a>) -> Vec<(&'a Crop, Way, usize)> {
        let no_tray: Vec<&Subject<'_>> = beds.iter().filter(|bed| bed.bed.kind != BedKind::Tray).collect();
        let fits = |crop: &&Crop| {
            let deep = |bed: &Subject<'_>| bed.bed.shape.depth().is_none_or(|depth| depth >= crop.bed.depth.is.low());
            let bright = |bed: &Subject<'_>| bed.sun_hours >= crop.bed.sun_hours.is.low();
            no_tray.is_empty() || no_tray.iter().any(|bed| deep(bed) && bright(bed))
        };
        let known = facts.known;
        let in_beds = known.crops.values().filter(|crop| crop.grown_for != GrownFor::Shoot).filter(fits);
        in_beds.map(|crop| (crop, usual_way(crop, false), self.rank(crop, facts))).collect()
    }

    fn rank(&self, crop: &Crop, facts: &Facts<'_>) -> usize {
        let usual = &facts.known.usual_crops;
        let place = usual.iter().position(|id| *id == crop.id);
        let grown = self.sites.iter().flat_map(|site| &site.beds).flat_map(|bed| &bed.plantings);
        let own = grown.into_iter().any(|planting| planting.crop == crop.id && !planting.microgreen);
        match (own, place) {
            (true, place) => place.unwrap_or(usual.len()),
            (false, Some(place)) => usual.len() + 1 + place,
            (false, None) => usize::MAX,
        }
    }

    fn head(&self, beds: &[Subject<'_>]) -> Line {
        let site = self.sites.first().map(|site| site.site.name.clone()).unwrap_or_default();
        let place = self.weather.normals().map(|(place, _)| place.id.clone()).unwrap_or_default();
        let of = match (beds, self.beds_named, self.one_site) {
            ([], _, _) => "place",
            (_, true, _) => "beds",
            (_, false, true) => "site",
            (_, false, false) => "sites",
        };
        Line::new("year-head")
            .with("of", Said::Key(of))
            .with("site", Said::Quoted(site))
            .with("place", Said::Place(place))
            .with("beds", Said::List(beds.iter().take(3).map(Subject::called).collect()))
    }
}

/// The crops that grow on trays, where someone has one, or has no beds at all.
fn on_trays<'a>(beds: &[Subject<'_>], facts: &Facts<'a>) -> Vec<(&'a Crop, Way, usize)> {
    let wanted = beds.is_empty() || beds.iter().any(|bed| bed.bed.kind == BedKind::Tray);
    let usual = &facts.known.usual_crops;
    let rank = |crop: &Crop| usual.iter().position(|id| *id == crop.id).unwrap_or(usize::MAX);
    let crops = facts.known.crops.values().filter(|crop| wanted && crop.microgreen.is_some());
    crops.map(|crop| (crop, Way::Tray, rank(crop))).collect()
}

/// The bed that stands for all: the largest box that something grows in, else the largest of the others.
fn typical<'a>(beds: &[Subject<'a>]) -> Option<Subject<'a>> {
    let grows = |bed: &&Subject<'_>| bed.standing.iter().any(|standing| !standing.microgreen);
    let top = |bed: &Subject<'_>| {
        let vessel = crate::needs::surroundings::vessel(&bed.bed.shape);
        vessel.measures().top.as_square_metres()
    };
    let best = beds.iter().filter(grows).max_by(|a, b| {
        let key = |bed: &Subject<'_>| (bed.bed.kind == BedKind::Box, top(bed));
        let (a, b) = (key(a), key(b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
    });
    best.cloned()
}

/// The bed with its crops grown, whenever they were sown: what stands in another month is not known.
fn grown<'s>(bed: &'s Subject<'_>, facts: &'s Facts<'_>) -> Option<Surroundings<'s>> {
    let mix = facts.known.mixes.get(bed.bed.mix_counted())?;
    let standing = bed.standing.iter().filter(|standing| !standing.microgreen);
    let standing = standing.map(|standing| StandingCrop { start: None, ..*standing }.plain()).collect();
    let (weather, sun_hours) = (bed.weather.clone()?, bed.sun_hours);
    Some(Surroundings { bed: &bed.bed, mix, standing, weather, sun_hours, today: bed.today() })
}
