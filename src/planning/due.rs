//! The jobs of one bed that fall due by a day.

use crate::garden::{Bed, BedId, BedKind, JobDone, JobKind, RainExposure, Start};
use crate::knowledge::{GrownFor, Knowledge, SprayUse};
use crate::needs::feed_day::{Counted, feed_day, rhythm};
use crate::needs::harvest::harvest_window;
use crate::needs::shade::net_need;
use crate::needs::spray::{Obstacle, SprayedBed, next_spray};
use crate::needs::surroundings::Standing;
use crate::needs::year::Year;
use crate::weather::Weather;
use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use std::collections::BTreeSet;

/// What is sprayed weekly where nothing else was noted (common practice, no source).
const USUAL_SPRAY: &str = "neem-oil";
/// Once picked, a crop is picked again after so many days: leaves cut again, fruit and pods, anything else
/// (common practice, no source).
const AGAIN_LEAF: u64 = 7;
const AGAIN_FRUIT: u64 = 2;
const AGAIN_OTHER: u64 = 5;
/// A net that is due later than this is not a job yet, days.
const NET_AHEAD: u64 = 3;

/// A bed with what is known of it.
#[derive(Debug, Clone)]
pub struct Plot<'a> {
    /// As the work on record has left it.
    pub bed: &'a Bed,
    pub standing: Vec<Standing<'a>>,
    pub jobs: &'a [JobDone],
    pub weather: &'a Weather<'a>,
    /// The year around today, made once for a site.
    pub year: Option<&'a Year>,
    pub known: &'a Knowledge,
    /// On the clock of the site.
    pub now: DateTime<FixedOffset>,
}

/// One job that is due.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Due {
    pub date: NaiveDate,
    pub bed: BedId,
    pub job: JobKind,
    /// A crop, a material, `up` or `down`.
    pub what: Option<String>,
    /// By the rhythm alone it was due on this earlier day.
    pub since: Option<NaiveDate>,
    /// What moved it to a later day.
    pub moved_by: BTreeSet<Obstacle>,
}

impl Due {
    fn new(plot: &Plot<'_>, job: JobKind, date: NaiveDate) -> Self {
        let bed = plot.bed.id.clone();
        Self { date, bed, job, what: None, since: None, moved_by: BTreeSet::new() }
    }
}

/// Everything due in a bed from today until a day, in the order of the days. Watering is not among it: it has its
/// own rhythm, several times a week.
#[must_use]
pub fn due(plot: &Plot<'_>, until: NaiveDate) -> Vec<Due> {
    let picks = picks(plot, until);
    let mut all: Vec<Due> = spray(plot).into_iter().chain(feed(plot)).chain(net(plot)).chain(picks).collect();
    all.retain(|due| due.date <= until);
    all.sort_by(|a, b| (a.date, a.job.word()).cmp(&(b.date, b.job.word())));
    all
}

fn last<'a>(plot: &Plot<'a>, job: JobKind) -> Option<&'a JobDone> {
    plot.jobs.iter().filter(|done| done.job == job).max_by_key(|done| done.on.date())
}

/// What is no sprouting tray has its weekly spray.
fn spray(plot: &Plot<'_>) -> Option<Due> {
    if !plot.standing.iter().any(|standing| !standing.microgreen) {
        return None;
    }
    let before = last(plot, JobKind::Spray);
    let product = |id: &str| {
        let material = plot.known.materials.get(id)?;
        Some((material.id.as_str(), material.spray.as_ref()?))
    };
    let of_record = before.and_then(|done| product(done.what.as_deref()?));
    let (id, spray): (&str, &SprayUse) = of_record.or_else(|| product(USUAL_SPRAY))?;
    let today = plot.now.date_naive();
    let windows = plot.standing.iter().filter_map(|standing| harvest_window(standing, plot.weather));
    let pickings: Vec<NaiveDate> = windows.map(|window| window.first.value()).filter(|first| *first >= today).collect();
    let sprayed = SprayedBed {
        last: before.map(|done| done.on.date()),
        pickings: &pickings,
        open_to_rain: plot.bed.rain_counted() != RainExposure::None,
        now: plot.now,
    };
    let next = next_spray(spray, &sprayed, Some(plot.weather));
    let mut due = Due::new(plot, JobKind::Spray, next.day.value());
    due.what = Some(id.to_owned());
    due.since = Some(next.due).filter(|day| *day < today);
    due.moved_by = next.moved_by;
    Some(due)
}

/// A bed of its own mix is fed by its crops' rhythm; a tray of shoots lives on its seed.
fn feed(plot: &Plot<'_>) -> Option<Due> {
    let fed = || plot.standing.iter().filter(|standing| !standing.microgreen);
    fed().next()?;
    let today = plot.now.date_naive();
    let (every, _) = rhythm(fed().map(|standing| standing.crop));
    let before = last(plot, JobKind::Feed).map(|done| done.on.date());
    let (day, counted) = feed_day(before, plot.bed.mix_added, &every, today);
    if counted == Counted::Nothing {
        return None;
    }
    let mut due = Due::new(plot, JobKind::Feed, day.value());
    let by_rhythm = before.and_then(|before| before.checked_add_days(Days::new(every.value().round() as u64)));
    due.since = by_rhythm.filter(|day| *day < today);
    Some(due)
}

/// A net goes up when a week calls for it, and comes down when none does.
fn net(plot: &Plot<'_>) -> Option<Due> {
    let year = plot.year?;
    let today = plot.now.date_naive();
    let soon = today.checked_add_days(Days::new(NET_AHEAD))?;
    let needs: Vec<_> = plot
        .standing
        .iter()
        .filter(|standing| !standing.microgreen)
        .filter_map(|standing| net_need(standing.crop, year))
        .collect();
    let hangs = plot.bed.net_percent.is_some_and(|percent| percent > 0.0);
    // A crop for which no cut at all is as good asks for no work.
    let wanted = needs
        .iter()
        .filter(|need| need.cut.as_ref().is_some_and(|cut| cut.low().as_percent() > 0.0))
        .filter_map(|need| need.from.map(|from| from.value()))
        .min();
    let mut due = match wanted {
        Some(from) if !hangs && from <= soon => Due::new(plot, JobKind::Net, from.max(today)),
        Some(from) if hangs && from > soon => Due::new(plot, JobKind::Net, today),
        None if hangs && !needs.is_empty() => Due::new(plot, JobKind::Net, today),
        _ => return None,
    };
    due.what = Some(if hangs { "down" } else { "up" }.to_owned());
    Some(due)
}

/// The first pick of each planting, and the next one of what was picked.
fn picks(plot: &Plot<'_>, until: NaiveDate) -> Vec<Due> {
    let today = plot.now.date_naive();
    let mut all = Vec::new();
    for standing in &plot.standing {
        let Some(window) = harvest_window(standing, plot.weather) else { continue };
        let picked = plot
            .jobs
            .iter()
            .filter(|done| done.job == JobKind::Pick && done.on.date() >= start_of(standing))
            .filter(|done| done.what.as_deref().is_none_or(|what| what == standing.crop.id))
            .map(|done| done.on.date())
            .max();
        if standing.microgreen && picked.is_some() {
            continue;
        }
        let again = match standing.crop.grown_for {
            GrownFor::Leaf | GrownFor::Herb => AGAIN_LEAF,
            GrownFor::Fruit | GrownFor::Pod => AGAIN_FRUIT,
            _ => AGAIN_OTHER,
        };
        let by_record = picked.and_then(|day| day.checked_add_days(Days::new(again)));
        let first = by_record.unwrap_or_else(|| window.first.value());
        let over = window.last.is_some_and(|last| last.high() < today);
        let day = first.max(today);
        if over || day > until {
            continue;
        }
        let mut due = Due::new(plot, JobKind::Pick, day);
        due.what = Some(standing.crop.id.clone());
        due.since = Some(first).filter(|first| *first < today);
        all.push(due);
        if standing.microgreen && plot.bed.kind == BedKind::Tray {
            // What is cut makes room for the next tray.
            let mut sow = Due::new(plot, JobKind::Sow, day);
            sow.what = Some(standing.crop.id.clone());
            all.push(sow);
        }
    }
    all
}

fn start_of(standing: &Standing<'_>) -> NaiveDate {
    standing.start.map_or(NaiveDate::MIN, Start::date)
}
