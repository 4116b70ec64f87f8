//! Each alert as lines: what comes, when, which beds, what to do.

use super::alerts::Event;
use super::answer::Answer;
use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use super::subject::own_bed_at;
use crate::garden::{BedId, Role, SiteId};
use crate::knowledge::SourceRef;
use crate::needs::looks::factor;
use crate::needs::surroundings::Surroundings;
use crate::needs::water::{WaterWeek, water_week_of};
use crate::planning::alerts::{Peak, What, heat_index_of, work_is_dangerous};
use crate::quantity::{Estimate, Temperature, Volume};
use chrono::Days;
use std::collections::BTreeSet;

/// More beds than this on a line are cut to one less and counted.
const BEDS_ON_A_LINE: usize = 4;
/// So many of a client's own beds are told with their water.
const BEDS_WITH_WATER: usize = 8;

const MONTHS: [&str; 12] = [
    "month-1", "month-2", "month-3", "month-4", "month-5", "month-6", "month-7", "month-8", "month-9", "month-10",
    "month-11", "month-12",
];

/// What comes and what to do.
pub fn lines(answer: &mut Answer, event: &Event<'_>, facts: &Facts<'_>) {
    let alert = event.alert;
    let grade = Said::Key(match alert.grade {
        1 => "one",
        2 => "two",
        _ => "three",
    });
    let head = |phrase: &'static str| Line::new(phrase).with("grade", grade.clone()).with("days", days(event));
    let beds = || beds(&event.beds);
    let crops = || Said::List(event.crops.iter().map(|crop| Said::Crop((*crop).to_owned())).collect());
    match (alert.what, alert.peak) {
        (What::HeatWave, Peak::Hot { tmax, usual }) => {
            let line = head("alert-heat").with("tmax", Said::Temperature(tmax)).with("usual", Said::Temperature(usual));
            answer.lines.push(line);
            answer.lines.extend(water_tomorrow(event, facts));
            answer.lines.push(Line::new("alert-heat-do"));
            answer.cite(&SourceRef::new("imd-heat-wave", "criterion for plains"));
        }
        (What::HeavyRain, Peak::Rain { millimetres }) => {
            answer.lines.push(head("alert-rain").with("mm", Said::Number(millimetres, 0)));
            answer.lines.push(Line::new("alert-rain-do"));
            answer.cite(&SourceRef::new("imd-rain-classes", "classes of a day's rain"));
        }
        (What::StrongWind, _) => {
            answer.lines.push(head("alert-wind"));
            answer.lines.push(Line::new("alert-wind-do"));
            answer.cautions.push(Line::new("caution-wind-edge"));
            answer.cite(&SourceRef::new("beaufort-scale", "forces 6 and 7"));
            answer.cite(&SourceRef::new("fao56", "eq. 47"));
        }
        (What::ColdNight, Peak::Cold { tmin }) => {
            let line = head("alert-cold").with("tmin", Said::Temperature(tmin));
            answer.lines.push(line.with("crops", crops()).with("beds", beds()));
            answer.lines.push(Line::new("alert-cold-do"));
            for crop in event.crops.iter().filter_map(|id| facts.known.crops.get(*id)) {
                answer.cite(&crop.heat.cold_limit.source);
            }
        }
        (What::HotWalls, _) => {
            answer.lines.push(head("alert-walls").with("beds", beds()));
            answer.cite(&SourceRef::new("container-colour-roots", "root growth by temperature of the mix"));
        }
        (What::Bolting, peak) => bolting(answer, event, peak, facts),
        (What::Rains, Peak::Month(month)) => {
            let month = MONTHS[(month as usize + 11) % 12];
            answer.lines.push(Line::new("alert-rains").with("month", Said::Line(Box::new(Line::new(month)))));
        }
        _ => {}
    }
}

fn bolting(answer: &mut Answer, event: &Event<'_>, peak: Peak, facts: &Facts<'_>) {
    let Some(crop) = event.crops.first().and_then(|id| facts.known.crops.get(*id)) else { return };
    let line = Line::new("alert-bolting").with("crop", Said::Crop(crop.id.clone())).with("beds", beds(&event.beds));
    let line = match peak {
        Peak::Week { tmax, limit } => line
            .with("by", Said::Key("heat"))
            .with("tmax", Said::Temperature(tmax))
            .with("limit", Said::Temperature(limit)),
        Peak::LongDay { limit_h } => line.with("by", Said::Key("day")).with("limit", Said::Number(limit_h, 1)),
        _ => return,
    };
    answer.lines.push(line);
    answer.cite(&crop.heat.day_limit.source);
}

/// On one day, or from one to another.
fn days(event: &Event<'_>) -> Said {
    let (from, until) = (event.alert.from, event.alert.until);
    let span = Said::Key(if from == until { "one" } else { "more" });
    let line = Line::new("alert-days").with("span", span);
    Said::Line(Box::new(line.with("from", Said::Day(from)).with("until", Said::Day(until))))
}

fn beds(all: &[&BedId]) -> Said {
    let mut beds: Vec<Said> = all.iter().map(|bed| Said::Bed((*bed).clone())).collect();
    if beds.len() > BEDS_ON_A_LINE {
        let rest = beds.split_off(BEDS_ON_A_LINE - 1).len();
        beds.push(Said::Line(Box::new(Line::new("due-beds-more").with("count", Said::Count(rest as i64)))));
    }
    Said::List(beds)
}

/// What each bed of a client wants tomorrow; of the crew's many beds all together.
fn water_tomorrow(event: &Event<'_>, facts: &Facts<'_>) -> Vec<Line> {
    let sites: BTreeSet<&SiteId> = event.sites.iter().copied().collect();
    let of_event = facts.sites.iter().filter(|site| sites.contains(&site.site.id));
    let weeks: Vec<(BedId, WaterWeek)> = of_event
        .flat_map(|site| site.beds.iter().map(move |bed| (site, bed)))
        .filter_map(|(site, bed)| Some((bed.bed.id.clone(), week_from_tomorrow(site, bed, facts)?)))
        .collect();
    if weeks.is_empty() {
        return Vec::new();
    }
    let client = facts.asker.as_ref().is_some_and(|person| person.role == Role::Client);
    if client && weeks.len() <= BEDS_WITH_WATER {
        let turns = weeks.iter().filter(|(_, week)| week.rhythm > 0.0).map(|(bed, week)| turn(bed, week));
        return vec![Line::new("alert-water").with("beds", Said::List(turns.collect()))];
    }
    let litres: f64 = weeks.iter().map(|(_, week)| week.litres.value().as_litres() / 7.0).sum();
    let day = Said::About(Estimate::exactly(Volume::litres(litres)));
    vec![Line::new("alert-water-all").with("count", Said::Count(weeks.len() as i64)).with("day", day)]
}

/// The water of a bed in the week from tomorrow, by its own looks.
fn week_from_tomorrow(site: &SiteFacts<'_>, bed: &BedFacts, facts: &Facts<'_>) -> Option<WaterWeek> {
    let subject = own_bed_at(site, bed, facts);
    let today = site.now.date_naive();
    let around = subject.surroundings(facts, today)?;
    let factor = factor(&around, &bed.jobs, &bed.seen);
    let tomorrow = today.checked_add_days(Days::new(1))?;
    water_week_of(&Surroundings { today: tomorrow, ..around }, &factor)
}

fn turn(bed: &BedId, week: &WaterWeek) -> Said {
    let rhythm = match week.rhythm {
        r if r <= 1.0 => "weekly",
        r if r < 3.0 => "third",
        r if r < 7.0 => "second",
        r if r < 14.0 => "daily",
        r if r < 21.0 => "twice",
        _ => "thrice",
    };
    let each = week.litres.map(|litres| litres / week.rhythm);
    let line = Line::new("water-away-turn").with("bed", Said::Bed(bed.clone())).with("rhythm", Said::Key(rhythm));
    Said::Line(Box::new(line.with("turn", Said::About(each))))
}

/// How hot work on the roof feels, where a heat wave comes.
pub fn people(answer: &mut Answer, events: &[Event<'_>], facts: &Facts<'_>) {
    let Some(event) = events.iter().find(|event| event.alert.what == What::HeatWave) else { return };
    let Some(site) = facts.sites.iter().find(|site| event.sites.contains(&&site.site.id)) else { return };
    let days = site.weather.from(event.alert.from).take_while(|day| day.date <= event.alert.until);
    let felt = days.filter_map(|day| heat_index_of(&day)).map(Temperature::as_celsius).fold(f64::MIN, f64::max);
    let felt = Temperature::celsius(felt.max(peak_of(event)));
    if !work_is_dangerous(felt) {
        return;
    }
    // Before all others: the text has room for two.
    answer.cautions.insert(0, Line::new("caution-heat-work").with("felt", Said::Temperature(felt)));
    answer.cite(&SourceRef::new("nws-heat-index", "regression"));
    answer.cite(&SourceRef::new("osha-heat-bands", "103 °F"));
}

fn peak_of(event: &Event<'_>) -> f64 {
    match event.alert.peak {
        Peak::Hot { tmax, .. } => tmax.as_celsius(),
        _ => f64::MIN,
    }
}
