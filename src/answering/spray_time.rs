//! The day of the next spray, its hours, and how much liquid.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::handed_over::not_computed;
use super::line::{Line, Said};
use super::plots::moved_by;
use super::spray::product;
use super::subject::Subject;
use crate::garden::{BedKind, JobDone, JobKind, Move, RainExposure};
use crate::knowledge::{Kind, Material, Point, SourceRef, SprayUse};
use crate::needs::harvest::harvest_window;
use crate::needs::spray::{NextSpray, Obstacle, PartOfDay, SprayedBed, WASHES_OFF_MM, litres_of_spray, next_spray};
use crate::needs::surroundings::vessel;
use crate::planning::moves::held;
use crate::quantity::Area;
use crate::understanding::Reading;
use crate::weather::Weather;
use chrono::{DateTime, FixedOffset, NaiveDate, NaiveTime};

/// So many beds are told one by one.
const TOLD_ONE_BY_ONE: usize = 4;
/// What is sprayed weekly where nothing else was named or noted (common practice).
const USUAL_PRODUCT: &str = "neem-oil";

/// The next spray of each bed.
pub fn answer(reading: &Reading, facts: &Facts<'_>, all: &[Subject<'_>]) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let several = all.len() > 1;
    let mut told = 0;
    for subject in all {
        if !subject.standing.is_empty() && subject.standing.iter().all(|standing| standing.microgreen) {
            answer.lines.push(Line::new("spray-tray"));
            continue;
        }
        let recorded = last_spray(subject, facts);
        let Some((material, spray)) = used(reading, facts, recorded.as_ref()) else { continue };
        let told_on = told_day(reading, subject.today());
        let last = told_on.or_else(|| recorded.as_ref().map(|job| job.on.date()));
        // A day told in the message is another story than the records and what was moved by them.
        let moved = held_move(subject, facts, JobKind::Spray).filter(|_| told_on.is_none());
        let sprayed = SprayedBed {
            last,
            pickings: &pickings(subject),
            open_to_rain: subject.bed.rain_counted() != RainExposure::None,
            chosen: moved.map(|moved| moved.to),
            now: asked_from(reading, subject.now),
        };
        let next = next_spray(spray, &sprayed, subject.weather.as_ref());
        figures(&mut answer, subject, &next, several);
        let of_liquid = reading.points.contains(&Point::Liquid);
        if of_liquid {
            liquid(&mut answer, subject, facts, Some(several), true);
        }
        cite(&mut answer, spray, &next);
        if told < TOLD_ONE_BY_ONE {
            lines(&mut answer, subject, material, spray, &next, last);
            answer.lines.extend(moved.map(|moved| moved_by(moved, facts)));
            working(&mut answer, subject, spray, &next);
        }
        if !of_liquid {
            liquid(&mut answer, subject, facts, Some(several), false);
        }
        told += 1;
    }
    if told == 0 && answer.lines.is_empty() {
        return not_computed(Kind::Spray);
    }
    if told > 0 {
        answer.lines.push(Line::new("spray-look"));
        if all.iter().any(draws_bees) {
            answer.cautions.push(Line::new("caution-bees"));
        }
    }
    answer
}

/// The days to come on which a crop of the bed is first ready. When a crop that is picked already is picked next is
/// nobody's record: that is said in words.
fn pickings(subject: &Subject<'_>) -> Vec<NaiveDate> {
    let Some(weather) = &subject.weather else { return Vec::new() };
    let windows = subject.standing.iter().filter_map(|standing| harvest_window(&standing.plain(), weather));
    windows.map(|window| window.first.value()).filter(|first| *first >= subject.today()).collect()
}

/// The last spray that is noted of a bed.
pub fn last_spray(subject: &Subject<'_>, facts: &Facts<'_>) -> Option<JobDone> {
    let (_, bed) = facts.bed(subject.own.as_ref()?)?;
    bed.jobs.iter().filter(|job| job.job == JobKind::Spray).max_by_key(|job| job.on.date()).cloned()
}

/// The move of a job that holds for a bed.
pub fn held_move<'f>(subject: &Subject<'_>, facts: &'f Facts<'_>, job: JobKind) -> Option<&'f Move> {
    let (_, bed) = facts.bed(subject.own.as_ref()?)?;
    held(&bed.moves, &bed.jobs, job, None)
}

/// The day of the last spray as the message tells it: one gone by, or today if it says that it was done.
pub fn told_day(reading: &Reading, today: NaiveDate) -> Option<NaiveDate> {
    let done = reading.did == Some(JobKind::Spray);
    let days = || reading.days.iter().map(|(day, _)| *day);
    // "Sprayed yesterday, may I pick today?": today is the question's. "Sprayed today, may I pick on Saturday?": it is not.
    days().find(|day| *day < today).or_else(|| days().find(|day| *day == today && done))
}

/// Where a day to come is asked about, it is looked at from its first minute.
fn asked_from(reading: &Reading, now: DateTime<FixedOffset>) -> DateTime<FixedOffset> {
    let coming = reading.days.iter().map(|(day, _)| *day).find(|day| *day > now.date_naive());
    let midnight = coming.map(|day| day.and_time(NaiveTime::MIN));
    midnight.and_then(|day| day.and_local_timezone(*now.offset()).single()).unwrap_or(now)
}

/// The product named, else the one last used on the bed, else the usual one; none where it has no figures.
fn used<'a>(
    reading: &'a Reading,
    facts: &'a Facts<'_>,
    recorded: Option<&JobDone>,
) -> Option<(&'a Material, &'a SprayUse)> {
    let known = |id: &str| facts.known.materials.get(id).filter(|material| material.spray.is_some());
    let of_record = recorded.and_then(|job| known(job.what.as_deref()?));
    let material = product(reading, facts).or(of_record).or_else(|| known(USUAL_PRODUCT))?;
    Some((material, material.spray.as_ref()?))
}

fn figures(answer: &mut Answer, subject: &Subject<'_>, next: &NextSpray, several: bool) {
    let mut put = |figure: Figure| answer.figures.push(of(figure, subject, several));
    put(Figure::date("next_spray", next.day));
    if let Some(hours) = &next.hours {
        put(Figure::time("spray_from", hours.from));
        put(Figure::time("spray_until", hours.until));
    }
}

fn of(figure: Figure, subject: &Subject<'_>, several: bool) -> Figure {
    let crop = subject.standing.first().map(|standing| standing.crop.id.as_str());
    figure.of_bed(subject.own.as_ref().filter(|_| several)).of_crop(crop.filter(|_| several))
}

/// How much liquid the leaves of a bed take; told only where it was asked.
pub fn liquid(answer: &mut Answer, subject: &Subject<'_>, facts: &Facts<'_>, several: Option<bool>, told: bool) {
    let ground = leaf_ground(subject, facts);
    if ground.as_square_metres() <= 0.0 || subject.bed.kind == BedKind::Tray && subject.bed.mix_counted() == "tray" {
        return;
    }
    let litres = litres_of_spray(ground);
    answer.figures.push(of(Figure::quantity("litres_of_spray", &litres), subject, several == Some(true)));
    if told {
        let bed = named(subject);
        answer.lines.push(Line::new("spray-liquid").with("bed", bed).with("litres", Said::Volume(litres)));
    }
    answer.working.push(Line::new("working-spray-liquid").with("ground", Said::Area(ground)));
}

/// The ground that the bed's leaves stand over.
fn leaf_ground(subject: &Subject<'_>, facts: &Facts<'_>) -> Area {
    match subject.surroundings(facts, subject.today()) {
        Some(around) => around.filled().top * around.leaf_spread(),
        None => vessel(&subject.bed.shape).measures().top,
    }
}

fn lines(
    answer: &mut Answer,
    subject: &Subject<'_>,
    material: &Material,
    spray: &SprayUse,
    next: &NextSpray,
    last: Option<NaiveDate>,
) {
    let line = Line::new("spray-next")
        .with("bed", named(subject))
        .with("material", Said::Material(material.id.clone()))
        .with("day", Said::Day(next.day.value()))
        .with("limit", Said::Temperature(spray.not_above.value()));
    answer.lines.push(match &next.hours {
        Some(hours) => line
            .with("part", Said::Key(part_key(hours.part)))
            .with("from", Said::Clock(hours.from))
            .with("until", Said::Clock(hours.until)),
        None if next.moved_by.iter().all(|obstacle| *obstacle == Obstacle::Picking) => {
            line.with("part", Said::Key("day"))
        }
        None => line.with("part", Said::Key("none")),
    });
    let every = Said::Span(spray.every_days.is, 0);
    answer.lines.push(match last {
        Some(last) => Line::new("spray-last").with("last", Said::Day(last)).with("every", every),
        None => Line::new("spray-no-record").with("every", every),
    });
    if let Some(rain) = next.washed_off {
        let line = Line::new("spray-washed-off").with("day", Said::Day(rain));
        answer.lines.push(line.with("rain", Said::Number(WASHES_OFF_MM, 0)));
    }
    if next.hours.is_some() && !next.moved_by.is_empty() {
        let by = next.moved_by.iter().map(|obstacle| {
            Said::Line(Box::new(Line::new("spray-obstacle").with("what", Said::Key(obstacle_key(*obstacle)))))
        });
        answer.lines.push(Line::new("spray-moved").with("by", Said::List(by.collect())));
    }
    if next.usual_day {
        answer.lines.push(Line::new("spray-usual-day"));
    }
}

/// A bed by its name; one that was only taken for granted by its crop.
pub fn named(subject: &Subject<'_>) -> Said {
    match subject.standing.first().filter(|_| subject.usual) {
        Some(standing) => Said::Crop(standing.crop.id.clone()),
        None => subject.called(),
    }
}

pub fn part_key(part: PartOfDay) -> &'static str {
    match part {
        PartOfDay::Dawn => "dawn",
        PartOfDay::Evening => "evening",
    }
}

pub fn obstacle_key(obstacle: Obstacle) -> &'static str {
    match obstacle {
        Obstacle::Rain => "rain",
        Obstacle::Wind => "wind",
        Obstacle::Heat => "heat",
        Obstacle::Picking => "picking",
    }
}

/// A crop in the bed whose flowers draw bees.
fn draws_bees(subject: &Subject<'_>) -> bool {
    let season = |crop: &crate::knowledge::Crop| crop.season.as_ref().is_some_and(|season| season.draws_bees);
    subject.standing.iter().any(|standing| !standing.microgreen && season(standing.crop))
}

fn cite(answer: &mut Answer, spray: &SprayUse, next: &NextSpray) {
    answer.cite(&spray.every_days.source);
    if next.hours.is_some() || !next.moved_by.is_empty() {
        answer.cite(&spray.not_above.source);
        answer.cite(&spray.not_in_wind.source);
        answer.cite(&SourceRef::new("parton-logan-1981", "equations and table 1, air at 1.5 m"));
    }
}

fn working(answer: &mut Answer, subject: &Subject<'_>, spray: &SprayUse, next: &NextSpray) {
    answer.working.push(Line::new("working-bed").with("bed", subject.called()));
    answer.working.push(
        Line::new("working-spray-rhythm")
            .with("due", Said::Day(next.due))
            .with("every", Said::Span(spray.every_days.is, 0))
            .with("source", Said::Source(spray.every_days.source.clone())),
    );
    let day = subject.weather.as_ref().and_then(|weather: &Weather<'_>| weather.on(next.day.value()));
    if let (Some(hours), Some(day)) = (&next.hours, day) {
        answer.working.push(
            Line::new("working-spray-hours")
                .with("tmin", Said::Temperature(day.tmin))
                .with("tmax", Said::Temperature(day.tmax))
                .with("warmest", Said::Temperature(hours.warmest))
                .with("limit", Said::Temperature(spray.not_above.value())),
        );
    }
}
