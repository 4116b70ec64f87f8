//! The jobs of a day as its eve, or its morning, tells them: gathered, grouped, put in lines.

use super::answer::{Answer, Outcome, called};
use super::due::{key, places};
use super::facts::{Facts, SiteFacts};
use super::line::{Line, Said};
use super::plots::{mover, plot};
use super::sow::HEAT_FOR_PEOPLE_C;
use super::spray_time::{obstacle_key, part_key};
use super::subject::own_bed_at;
use super::water::rhythm_key;
use crate::garden::{BedId, JobKind, SiteId};
use crate::needs::looks::factor;
use crate::needs::spray::PartOfDay;
use crate::needs::surroundings::Surroundings;
use crate::needs::year::Year;
use crate::planning::due::Due;
use crate::planning::reminders::{News, WaterChange, Waters, Word, jobs_from};
use crate::quantity::{Estimate, Temperature};
use chrono::{NaiveDate, NaiveTime};
use std::collections::{BTreeMap, BTreeSet};

/// More beds than this on a line are cut to one less and counted.
const BEDS_ON_A_LINE: usize = 8;
/// An open job is told with the day it was due where that is not longer ago.
const LATELY_DAYS: i64 = 30;
/// From this maximum on a hose in the sun is run cool first (as in answers about water).
const HOT: Temperature = Temperature::celsius(38.0);

/// What a site wants on the day that is told of, whoever is told.
#[derive(Debug, Clone, PartialEq)]
pub struct SitePlan {
    /// That day, on the site's own calendar.
    pub day: NaiveDate,
    pub jobs: Vec<Due>,
    /// Told on the eve alone.
    pub waters: Vec<Waters>,
}

/// Plans the day after the moment of asking for its eve, the day itself for its morning.
#[must_use]
pub fn plan(site: &SiteFacts<'_>, facts: &Facts<'_>, word: Word) -> SitePlan {
    let today = site.now.date_naive();
    let day = match word {
        Word::Eve => today.succ_opt().unwrap_or(today),
        Word::Morning => today,
    };
    let year = Year::around(&site.weather, day);
    let mut plan = SitePlan { day, jobs: Vec::new(), waters: Vec::new() };
    for bed in &site.beds {
        let plot = plot(site, bed, year.as_ref(), facts.known);
        // Hours that are over this morning are no news: if nothing was noted, the evening tells of the next.
        let over = |due: &Due| due.date == today && due.hours.is_some_and(|hours| hours.until <= site.now.time());
        plan.jobs.extend(jobs_from(&plot, day).into_iter().filter(|due| !over(due)));
        if word == Word::Eve {
            let subject = own_bed_at(site, bed, facts);
            let around = subject.surroundings(facts, today).filter(|around| !around.standing.is_empty());
            let waters = |around: Surroundings<'_>| Waters::of(&around, &factor(&around, &bed.jobs, &bed.seen));
            plan.waters.extend(around.and_then(waters));
        }
    }
    plan
}

/// One numbered line of what is told.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// Jobs of one sort, with all their beds.
    Jobs { news: News, jobs: Vec<Due> },
    /// Beds whose rhythm of watering changes in the same way.
    Water(Vec<WaterChange>),
}

impl Item {
    /// Its beds, in the order of the round.
    #[must_use]
    pub fn beds(&self) -> Vec<BedId> {
        match self {
            Self::Jobs { jobs, .. } => jobs.iter().map(|due| due.bed.clone()).collect(),
            Self::Water(changes) => changes.iter().map(|change| change.bed.clone()).collect(),
        }
    }
}

/// What is told, jobs of one sort together: first what is to be done, then what is open, moved, and watering.
#[must_use]
pub fn items(mut news: Vec<(Due, News)>, waters: Vec<WaterChange>, facts: &Facts<'_>) -> Vec<Item> {
    let places = places(facts);
    news.sort_by_key(|(due, _)| places.get(&due.bed).copied());
    let mut groups: BTreeMap<_, Vec<Due>> = BTreeMap::new();
    for (due, news) in news {
        // A product does not part the beds; what moved them does.
        let what = due.what.clone().filter(|_| due.job != JobKind::Spray);
        let by = due.chosen.as_ref().map(|moved| moved.by.clone());
        let sort = (news, due.date, due.job.word(), what, due.moved_by.clone(), by.filter(|_| news == News::Moved));
        groups.entry(sort).or_default().push(due);
    }
    let mut items: Vec<Item> = groups.into_iter().map(|((news, ..), jobs)| Item::Jobs { news, jobs }).collect();
    let mut changes: BTreeMap<_, Vec<WaterChange>> = BTreeMap::new();
    for change in waters {
        let sort = (rhythm_key(change.week.rhythm), rhythm_key(change.before));
        changes.entry(sort).or_default().push(change);
    }
    items.extend(changes.into_values().map(Item::Water));
    items
}

/// The lines of a day; each item has its number.
#[must_use]
pub fn told(items: &[Item], day: NaiveDate, word: Word, facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.called = called(facts);
    let word = Said::Key(match word {
        Word::Eve => "eve",
        Word::Morning => "morning",
    });
    answer.lines.push(Line::new("reminder-title").with("word", word.clone()).with("day", Said::Day(day)));
    for (place, item) in items.iter().enumerate() {
        let line = match item {
            Item::Jobs { news: News::Moved, jobs } => moved(jobs, word.clone(), facts),
            Item::Jobs { news, jobs } => job(jobs, *news, facts),
            Item::Water(changes) => water(changes),
        };
        answer.lines.push(line.with("number", Said::Count(place as i64 + 1)));
    }
    let sprays = |item: &Item| matches!(item, Item::Jobs { news, jobs } if *news != News::Moved && jobs.iter().any(|due| due.job == JobKind::Spray));
    if items.iter().any(sprays) {
        answer.cautions.push(Line::new("caution-spray"));
    }
    answer.cautions.extend(heat(items, day, facts));
    let mut changes = items.iter().filter_map(|item| match item {
        Item::Water(changes) => Some(changes),
        Item::Jobs { .. } => None,
    });
    if changes.any(|changes| changes.iter().any(more_in_heat)) {
        answer.lines.push(Line::new("water-check").with("hot", Said::Key("hot")));
    }
    answer
}

/// The heat of the day in which there is work on a roof, where it may hurt.
fn heat(items: &[Item], day: NaiveDate, facts: &Facts<'_>) -> Option<Line> {
    let work = items.iter().filter(|item| matches!(item, Item::Jobs { news, .. } if *news != News::Moved));
    let places: BTreeSet<SiteId> = work.flat_map(Item::beds).map(|bed| bed.site().clone()).collect();
    let at_work = facts.sites.iter().filter(|site| places.contains(&site.site.id));
    let hottest =
        at_work.filter_map(|site| site.weather.on(day)).map(|day| day.tmax.as_celsius()).fold(f64::MIN, f64::max);
    let tmax = Said::Temperature(Temperature::celsius(hottest));
    (hottest >= HEAT_FOR_PEOPLE_C).then(|| Line::new("caution-work-heat").with("tmax", tmax))
}

fn more_in_heat(change: &WaterChange) -> bool {
    change.week.rhythm > change.before && change.week.hottest >= HOT
}

fn sort(jobs: &[Due], facts: &Facts<'_>, phrase: &'static str) -> Line {
    let what = jobs.first().and_then(|due| due.what.as_deref());
    let job = jobs.first().map_or("check", |due| key(due.job.word(), what));
    let crop = what.filter(|what| facts.known.crops.contains_key(*what));
    Line::new(phrase)
        .with("job", Said::Key(job))
        .with("crop", crop.map_or(Said::Key("none"), |crop| Said::Crop(crop.to_owned())))
        .with("beds", beds(jobs.iter().map(|due| due.bed.clone())))
}

fn beds(beds: impl Iterator<Item = BedId>) -> Said {
    let mut beds: Vec<Said> = beds.map(Said::Bed).collect();
    if beds.len() > BEDS_ON_A_LINE {
        let rest = beds.split_off(BEDS_ON_A_LINE - 1).len();
        beds.push(Said::Line(Box::new(Line::new("due-beds-more").with("count", Said::Count(rest as i64)))));
    }
    Said::List(beds)
}

fn job(jobs: &[Due], news: News, facts: &Facts<'_>) -> Line {
    let line = sort(jobs, facts, "reminder-job");
    // A day long gone says nothing but that nobody notes this job here.
    let lately = |due: &Due| due.since.filter(|since| (due.date - *since).num_days() <= LATELY_DAYS);
    let since = jobs.iter().filter_map(lately).min().filter(|_| news == News::Open);
    let line = line.with("since", since.map_or(Said::Key("none"), Said::Day));
    match hours(jobs) {
        Some((part, from, until)) => line
            .with("part", Said::Key(part_key(part)))
            .with("from", Said::Clock(from))
            .with("until", Said::Clock(until)),
        None => line.with("part", Said::Key("none")),
    }
}

/// The hours in which all of these can be sprayed, where they share any.
fn hours(jobs: &[Due]) -> Option<(PartOfDay, NaiveTime, NaiveTime)> {
    let all: Vec<_> = jobs.iter().map(|due| due.hours).collect::<Option<_>>()?;
    let part = all.first()?.part;
    let from = all.iter().map(|hours| hours.from).max()?;
    let until = all.iter().map(|hours| hours.until).min()?;
    (from < until && all.iter().all(|hours| hours.part == part)).then_some((part, from, until))
}

fn moved(jobs: &[Due], word: Said, facts: &Facts<'_>) -> Line {
    let line = sort(jobs, facts, "reminder-moved").with("word", word);
    let Some(first) = jobs.first() else { return line };
    let mut by: Vec<Said> = Vec::new();
    if let Some(chosen) = &first.chosen {
        by.push(Said::Line(Box::new(Line::new("reminder-mover").with("who", mover(chosen, facts)))));
    }
    by.extend(first.moved_by.iter().map(|obstacle| {
        Said::Line(Box::new(Line::new("spray-obstacle").with("what", Said::Key(obstacle_key(*obstacle)))))
    }));
    line.with("day", Said::Day(first.date)).with("by", Said::List(by))
}

fn water(changes: &[WaterChange]) -> Line {
    let key = |rhythm: Option<f64>| Said::Key(rhythm.map_or("none", rhythm_key));
    let turn = match changes {
        [only] if only.week.rhythm > 0.0 => Said::About(Estimate::exactly(only.week.litres / only.week.rhythm)),
        _ => Said::Key("none"),
    };
    Line::new("reminder-water")
        .with("beds", beds(changes.iter().map(|change| change.bed.clone())))
        .with("rhythm", key(changes.first().map(|change| change.week.rhythm)))
        .with("before", key(changes.first().map(|change| change.before)))
        .with("turn", turn)
}
