//! "How much water, how often, now or not, this week?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::{Subject, subjects};
use super::water_working::{cite, working};
use crate::garden::Assumed;
use crate::knowledge::Beyond;
use crate::needs::heat::{PastLimit, past_limit};
use crate::needs::water::{WaterWeek, water_week};
use crate::quantity::{Estimate, Temperature, Volume};
use crate::understanding::Reading;
use crate::weather::Day;

/// So many beds are told one by one; figures are given for all.
const TOLD_ONE_BY_ONE: usize = 4;

/// The rhythm, the litres each turn, the reason, the finger test.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let subjects = match subjects(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) => return question,
    };
    if subjects.is_empty() {
        return super::handed_over::not_known();
    }
    if subjects.iter().all(|subject| subject.weather.is_none()) {
        return Answer::ask(Line::new("ask-which-place"), places(facts));
    }
    let mut answer = Answer::new(Outcome::Answered);
    let weeks: Vec<(&Subject<'_>, WaterWeek)> = subjects
        .iter()
        .filter_map(|subject| Some((subject, water_week(&subject.surroundings(facts, facts.today())?)?)))
        .collect();
    let Some((first, first_week)) = weeks.first() else { return super::handed_over::not_known() };
    let several = weeks.len() > 1;
    limits_first(&mut answer, &weeks);
    for (subject, week) in &weeks {
        figures(&mut answer, subject, week, several);
        cite(&mut answer, subject, week, facts);
    }
    for (subject, week) in weeks.iter().take(TOLD_ONE_BY_ONE) {
        answer.lines.push(rhythm(subject, week));
        answer.working.extend(working(subject, week, facts));
    }
    if weeks.len() > TOLD_ONE_BY_ONE {
        let more = (weeks.len() - TOLD_ONE_BY_ONE) as i64;
        answer.lines.push(Line::new("water-more-beds").with("count", Said::Count(more)));
    }
    if several {
        whole(&mut answer, &weeks);
    }
    answer.lines.push(reason(first_week));
    answer.lines.extend(check(first_week));
    answer.lines.extend(assumptions(first, first_week, facts));
    answer
}

/// A crop past what it stands is told so before it is watered.
fn limits_first(answer: &mut Answer, weeks: &[(&Subject<'_>, WaterWeek)]) {
    let mut told = std::collections::BTreeSet::new();
    for (subject, week) in weeks {
        let days: Vec<Day> = week.days.iter().map(|(day, _)| *day).collect();
        for standing in subject.standing.iter().filter(|standing| told.insert(standing.crop.id.as_str())) {
            let crop = Said::Crop(standing.crop.id.clone());
            match past_limit(standing.crop, &days) {
                Some(PastLimit::Hot { mean_tmax, limit, beyond }) => {
                    answer.cite(&limit.source);
                    let line = Line::new("water-past-heat")
                        .with("crop", crop)
                        .with("tmax", Said::Temperature(mean_tmax))
                        .with("limit", Said::Temperature(limit.value()))
                        .with("beyond", Said::Key(beyond_key(beyond)));
                    answer.lines.push(line);
                }
                Some(PastLimit::Cold { mean_tmin, limit }) => {
                    answer.cite(&limit.source);
                    let line = Line::new("water-past-cold")
                        .with("crop", crop)
                        .with("tmin", Said::Temperature(mean_tmin))
                        .with("limit", Said::Temperature(limit.value()));
                    answer.lines.push(line);
                }
                None => {}
            }
        }
    }
}

fn beyond_key(beyond: Beyond) -> &'static str {
    match beyond {
        Beyond::Bolts => "bolts",
        Beyond::TurnsBitter => "turns-bitter",
        Beyond::DropsFlowers => "drops-flowers",
        Beyond::Stops => "stops",
        Beyond::Scorches => "scorches",
    }
}

/// The name of a rhythm as phrases know it.
pub fn rhythm_key(rhythm: f64) -> &'static str {
    match rhythm {
        r if r < 0.5 => "none",
        r if r < 2.0 => "weekly",
        r if r < 3.0 => "third",
        r if r < 5.0 => "second",
        r if r < 10.0 => "daily",
        r if r < 17.0 => "twice",
        _ => "thrice",
    }
}

/// Litres of one watering; none where none is due.
pub fn each_turn(week: &WaterWeek) -> Option<Estimate<Volume>> {
    (week.rhythm > 0.0).then(|| week.litres.map(|litres| litres / week.rhythm))
}

fn rhythm(subject: &Subject<'_>, week: &WaterWeek) -> Line {
    let line = Line::new("water-rhythm")
        .with("rhythm", Said::Key(rhythm_key(week.rhythm)))
        .with("bed", subject.called())
        .with("week", Said::Volume(week.litres));
    match each_turn(week) {
        Some(turn) => line.with("turn", Said::About(turn)),
        None => line,
    }
}

fn figures(answer: &mut Answer, subject: &Subject<'_>, week: &WaterWeek, several: bool) {
    let bed = subject.own.as_ref().filter(|_| several);
    let crop = subject.standing.first().map(|standing| standing.crop.id.as_str()).filter(|_| several);
    let mut put = |figure: Figure| answer.figures.push(figure.of_bed(bed).of_crop(crop));
    let turn = each_turn(week);
    if let Some(turn) = &turn {
        put(Figure::quantity("litres_per_watering", turn));
    }
    put(Figure::number("waterings_per_week", week.waterings, "1/week"));
    if week.rhythm > 0.0 {
        put(Figure::number("days_between_waterings", Estimate::exactly(7.0 / week.rhythm), "day"));
    }
    put(Figure::quantity("litres_this_week", &week.litres));
    put(Figure::number("reference_et", week.reference_et.map(|et| et.as_millimetres()), "mm/day"));
    if let Some(turn) = turn {
        if let Some(litres_a_minute) = subject.hose_l_min.filter(|rate| *rate > 0.0) {
            put(Figure::number("seconds_of_hose", turn.map(|litres| litres.as_litres() / litres_a_minute * 60.0), "s"));
        }
        if let Some(can) = subject.can.filter(|can| can.as_litres() > 0.0) {
            put(Figure::number("cans", turn.map(|litres| litres / can), "1"));
        }
    }
}

/// All beds together, by the day.
fn whole(answer: &mut Answer, weeks: &[(&Subject<'_>, WaterWeek)]) {
    let sum = |end: fn(&Estimate<Volume>) -> Volume| weeks.iter().map(|(_, week)| end(&week.litres)).sum::<Volume>();
    let value = sum(Estimate::value);
    let all = Estimate::spanning(value, [sum(Estimate::low), sum(Estimate::high)]).map(|litres| litres / 7.0);
    answer.figures.push(Figure::number("litres_per_day_site", all.map(Volume::as_litres), "L/day"));
    answer.lines.push(Line::new("water-all-beds").with("day", Said::Volume(all)));
}

fn reason(week: &WaterWeek) -> Line {
    let hottest =
        week.days.iter().map(|(day, _)| day.tmax).fold(Temperature::celsius(-90.0), |a, b| if b > a { b } else { a });
    let dry = week.days.iter().all(|(_, loss)| loss.reference.humidity_min.as_percent() < 30.0);
    let wet = week.rain.as_millimetres() >= 5.0;
    let air = if wet {
        "wet"
    } else if dry {
        "dry"
    } else {
        "plain"
    };
    Line::new("water-reason")
        .with("loss", Said::Depth(week.loss_per_day))
        .with("tmax", Said::Temperature(hottest))
        .with("air", Said::Key(air))
        .with("rain", Said::Depth(Estimate::exactly(week.rain)))
}

fn check(week: &WaterWeek) -> Option<Line> {
    (week.rhythm > 0.0).then(|| {
        let hot = week.days.iter().any(|(day, _)| day.tmax.as_celsius() >= HOSE_HEATS_C);
        Line::new("water-check").with("hot", Said::Key(if hot { "hot" } else { "mild" }))
    })
}

/// Above this a hose in the sun gives water that scalds roots first (common practice, no source).
const HOSE_HEATS_C: f64 = 38.0;

/// What was assumed, if it changes the answer.
fn assumptions(subject: &Subject<'_>, week: &WaterWeek, facts: &Facts<'_>) -> Vec<Line> {
    let mut lines = Vec::new();
    if subject.usual {
        lines.push(Line::new("assumed-bed").with("bed", subject.called()));
    } else if subject.assumed.contains(&Assumed::SunHours) {
        lines.push(Line::new("assumed-sun").with("hours", Said::Hours(subject.sun_hours)));
    }
    if week.usual_days > 0 {
        let place = subject.weather.as_ref().and_then(|weather| weather.normals());
        if let Some((place, _)) = place {
            lines.push(
                Line::new("assumed-usual-days")
                    .with("place", Said::Place(place.id.clone()))
                    .with("day", Said::Day(facts.today())),
            );
        }
    }
    lines
}

/// A few places to choose from.
fn places(facts: &Facts<'_>) -> Vec<Line> {
    let places = facts.known.places.iter().take(4);
    places.map(|place| Line::new("choice-place").with("place", Said::Place(place.id.clone()))).collect()
}
