//! The jobs of one bed that fall due by a day.

use super::moves::{held, last_done};
use crate::garden::{Bed, BedId, BedKind, JobDone, JobKind, Move, RainExposure, Start};
use crate::knowledge::{GrownFor, Knowledge, SprayUse};
use crate::needs::feed_day::{Counted, feed_day, rhythm};
use crate::needs::harvest::{HarvestWindow, harvest_window};
use crate::needs::shade::net_need;
use crate::needs::spray::{Obstacle, SprayHours, SprayedBed, next_spray};
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
    /// What people moved to another day.
    pub moves: &'a [Move],
    pub weather: &'a Weather<'a>,
    /// The year around today, made once for a site.
    pub year: Option<&'a Year>,
    pub known: &'a Knowledge,
    /// On the clock of the site.
    pub now: DateTime<FixedOffset>,
}

/// One job that is due.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    pub date: NaiveDate,
    pub bed: BedId,
    pub job: JobKind,
    /// A crop, a material, `up` or `down`.
    pub what: Option<String>,
    /// By the rhythm alone, or by the move that holds, it was due on this earlier day.
    pub since: Option<NaiveDate>,
    /// What moved it to a later day.
    pub moved_by: BTreeSet<Obstacle>,
    /// The day by the rhythm alone, which may lie in the past; none where nothing on record gives one.
    pub rhythm: Option<NaiveDate>,
    /// The move by a person that decided its day.
    pub chosen: Option<Move>,
    /// When the job was done last.
    pub last: Option<NaiveDate>,
    /// The clock times of a spray.
    pub hours: Option<SprayHours>,
}

impl Due {
    fn new(plot: &Plot<'_>, job: JobKind, date: NaiveDate) -> Self {
        let bed = plot.bed.id.clone();
        Self {
            date,
            bed,
            job,
            what: None,
            since: None,
            moved_by: BTreeSet::new(),
            rhythm: None,
            chosen: None,
            last: None,
            hours: None,
        }
    }

    /// The same by its rhythm, on the day of the move that holds where there is one.
    fn with_records(mut self, plot: &Plot<'_>, rhythm: Option<NaiveDate>) -> Self {
        let today = plot.now.date_naive();
        let what = self.what.as_deref();
        self.rhythm = rhythm;
        self.last = last_done(plot.jobs, self.job, what);
        self.chosen = held(plot.moves, plot.jobs, self.job, what).cloned();
        let wanted = self.chosen.as_ref().map(|moved| moved.to).or(rhythm);
        self.since = wanted.filter(|day| *day < today);
        if let Some(moved) = &self.chosen
            && self.job != JobKind::Spray
        {
            self.date = moved.to.max(today);
        }
        self
    }
}

/// Everything due in a bed from today until a day, in the order of the days. Watering is not among it: it has its
/// own rhythm, several times a week.
#[must_use]
pub fn due(plot: &Plot<'_>, until: NaiveDate) -> Vec<Due> {
    let windows: Vec<_> = plot.standing.iter().map(|standing| harvest_window(standing, plot.weather)).collect();
    let picks = picks(plot, &windows, until);
    let mut all: Vec<Due> = spray(plot, &windows).into_iter().chain(feed(plot)).chain(net(plot)).chain(picks).collect();
    all.retain(|due| due.date <= until);
    all.sort_by(|a, b| (a.date, a.job.word()).cmp(&(b.date, b.job.word())));
    all
}

/// The same as if nobody had moved anything.
#[must_use]
pub fn due_by_rhythm(plot: &Plot<'_>, until: NaiveDate) -> Vec<Due> {
    due(&Plot { moves: &[], ..plot.clone() }, until)
}

fn last<'a>(plot: &Plot<'a>, job: JobKind) -> Option<&'a JobDone> {
    plot.jobs.iter().filter(|done| done.job == job).max_by_key(|done| done.on.date())
}

/// What is no sprouting tray has its weekly spray.
fn spray(plot: &Plot<'_>, windows: &[Option<HarvestWindow>]) -> Option<Due> {
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
    let firsts = windows.iter().flatten().map(|window| window.first.value());
    let pickings: Vec<NaiveDate> = firsts.filter(|first| *first >= today).collect();
    let sprayed = SprayedBed {
        last: before.map(|done| done.on.date()),
        pickings: &pickings,
        open_to_rain: plot.bed.rain_counted() != RainExposure::None,
        chosen: held(plot.moves, plot.jobs, JobKind::Spray, None).map(|moved| moved.to),
        now: plot.now,
    };
    let next = next_spray(spray, &sprayed, Some(plot.weather));
    let after_rain = next.washed_off.and_then(|rain| rain.succ_opt());
    let rhythm = before.map(|_| after_rain.map_or(next.due, |after| after.min(next.due)));
    let mut due = Due::new(plot, JobKind::Spray, next.day.value());
    due.what = Some(id.to_owned());
    due.moved_by = next.moved_by;
    due.hours = next.hours;
    Some(due.with_records(plot, rhythm))
}

/// A bed of its own mix is fed by its crops' rhythm; a tray of shoots lives on its seed.
fn feed(plot: &Plot<'_>) -> Option<Due> {
    let fed = || plot.standing.iter().filter(|standing| !standing.microgreen);
    fed().next()?;
    let today = plot.now.date_naive();
    let (every, _) = rhythm(fed().map(|standing| standing.crop));
    let before = last(plot, JobKind::Feed).map(|done| done.on.date());
    let (day, counted) = feed_day(before, plot.bed.mix_added, &every, today);
    let chosen = held(plot.moves, plot.jobs, JobKind::Feed, None).is_some();
    if counted == Counted::Nothing && !chosen {
        return None;
    }
    // Asked on the day that it is counted from, the day is that of the rhythm alone.
    let began = before.or(plot.bed.mix_added);
    let by_rhythm = began.map(|began| feed_day(before, plot.bed.mix_added, &every, began).0.value());
    Some(Due::new(plot, JobKind::Feed, day.value()).with_records(plot, by_rhythm))
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
    Some(due.with_records(plot, None))
}

/// The first pick of each planting, and the next one of what was picked; and the sowing of a tray that was cut.
fn picks(plot: &Plot<'_>, windows: &[Option<HarvestWindow>], until: NaiveDate) -> Vec<Due> {
    let today = plot.now.date_naive();
    let mut all = Vec::new();
    for (standing, window) in plot.standing.iter().zip(windows) {
        let Some(window) = window else { continue };
        let picked = plot
            .jobs
            .iter()
            .filter(|done| done.job == JobKind::Pick && done.on.date() >= start_of(standing))
            .filter(|done| done.what.as_deref().is_none_or(|what| what == standing.crop.id))
            .map(|done| done.on.date())
            .max();
        let tray = standing.microgreen && plot.bed.kind == BedKind::Tray;
        let of_crop = |job, day: NaiveDate| {
            let mut due = Due::new(plot, job, day.max(today));
            due.what = Some(standing.crop.id.clone());
            due.with_records(plot, Some(day))
        };
        if standing.microgreen
            && let Some(picked) = picked
        {
            // What was cut makes room for the next tray, until something is sown in it.
            let sown_since = plot.standing.iter().any(|other| start_of(other) > start_of(standing));
            all.extend((tray && !sown_since).then(|| of_crop(JobKind::Sow, picked)));
            continue;
        }
        let again = match standing.crop.grown_for {
            GrownFor::Leaf | GrownFor::Herb => AGAIN_LEAF,
            GrownFor::Fruit | GrownFor::Pod => AGAIN_FRUIT,
            _ => AGAIN_OTHER,
        };
        let by_record = picked.and_then(|day| day.checked_add_days(Days::new(again)));
        let first = by_record.unwrap_or_else(|| window.first.value());
        if window.last.is_some_and(|last| last.high() < today) {
            continue;
        }
        let pick = of_crop(JobKind::Pick, first);
        if tray {
            all.push(of_crop(JobKind::Sow, pick.date));
        }
        all.push(pick);
    }
    all.retain(|due| due.date <= until);
    all
}

fn start_of(standing: &Standing<'_>) -> NaiveDate {
    standing.start.map_or(NaiveDate::MIN, Start::date)
}
