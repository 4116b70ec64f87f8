//! "When is it ready, how does one see it, how much to expect?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::{StandingCrop, Subject, subjects, which_bed};
use crate::garden::{BedId, JobKind, Start};
use crate::knowledge::{CountedFrom, Point, SourceRef, WhenDue};
use crate::needs::harvest::{HarvestWindow, grams_expected, harvest_window};
use crate::needs::season::{Way, outlook, usual_way};
use crate::needs::year::Year;
use crate::understanding::Reading;
use chrono::NaiveDate;

/// The article on greens that are cut again.
const ON_CUTTING_AGAIN: &str = "how-often-greens-are-cut";

/// So many plantings are told one by one.
const TOLD_ONE_BY_ONE: usize = 4;

/// The day, the sign to look for, how much.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if let Some(again) = cut_again(reading, facts) {
        return again;
    }
    let subjects = match subjects(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) if reading.crops.is_empty() => return question,
        Err(_) => return super::handed_over::not_known(),
    };
    let wanted: Vec<(&Subject<'_>, StandingCrop<'_>)> =
        subjects.iter().flat_map(|subject| meant(subject, reading).map(move |standing| (subject, standing))).collect();
    if wanted.is_empty() {
        return nothing_stands(&subjects);
    }
    let mut answer = Answer::new(Outcome::Answered);
    let several = wanted.len() > 1;
    let mut undated = Vec::new();
    for (position, (subject, standing)) in wanted.iter().enumerate() {
        let mut standing = *standing;
        if let Some(start) = told_start(reading, &standing, subject.today()) {
            standing.start = Some(start);
        }
        let told = position < TOLD_ONE_BY_ONE;
        let window = window(subject, &standing);
        match &window {
            Some(window) => ready(&mut answer, subject, &standing, window, (several, told)),
            None => undated.push((*subject, standing)),
        }
        expected(&mut answer, subject, &standing, several);
        if told {
            signs(&mut answer, &standing);
        }
    }
    // What has been picked already is not asked for as if it were sown today.
    let picked = reading.did == Some(JobKind::Pick);
    if !picked && answer.figures.iter().all(|figure| figure.name != "first_harvest") {
        without_dates(&mut answer, &undated, reading);
    }
    let has = |point: Point| reading.points.contains(&point);
    if has(Point::Ripe) {
        signs_first(&mut answer);
    } else if undated.len() == wanted.len() && !has(Point::Time) && !has(Point::Yield) && !has(Point::Amount) {
        // Of what is not known to stand here the eye tells more than the day of a sowing that may be.
        answer.lines.sort_by_key(|line| line.phrase != "harvest-signs");
    }
    answer
}

/// How one sees it was asked: that first, then the day of what stands; what would come of a sowing today is no answer to it.
fn signs_first(answer: &mut Answer) {
    const OF_THE_SUM: [&str; 3] = ["harvest-supposed", "harvest-expected", "harvest-reason"];
    let (signs, others): (Vec<Line>, Vec<Line>) =
        std::mem::take(&mut answer.lines).into_iter().partition(|line| line.phrase == "harvest-signs");
    let (sums, days): (Vec<Line>, Vec<Line>) = others.into_iter().partition(|line| OF_THE_SUM.contains(&line.phrase));
    answer.working.splice(0..0, sums);
    answer.lines = signs.into_iter().chain(days).collect();
}

/// The plantings a message is about: of the crops named, else all of the bed.
fn meant<'a>(subject: &'a Subject<'a>, reading: &Reading) -> impl Iterator<Item = StandingCrop<'a>> {
    let named = reading.crops.clone();
    subject.standing.iter().copied().filter(move |standing| named.is_empty() || named.contains(&standing.crop.id))
}

/// A bed with nothing recorded in it.
fn nothing_stands(subjects: &[Subject<'_>]) -> Answer {
    let beds: Vec<BedId> = subjects.iter().filter_map(|subject| subject.own.clone()).collect();
    match beds.as_slice() {
        [bed] => Answer::ask(Line::new("ask-what-grows").with("bed", Said::Bed(bed.clone())), Vec::new()),
        [] => Answer::ask(Line::new("ask-which-crop"), Vec::new()),
        _ => which_bed(&beds),
    }
}

/// The day of sowing or planting that the message itself tells.
fn told_start(reading: &Reading, standing: &StandingCrop<'_>, today: NaiveDate) -> Option<Start> {
    let (day, _) = reading.days.iter().copied().find(|(day, _)| *day <= today)?;
    let planted = match reading.did {
        Some(JobKind::Plant) => true,
        Some(JobKind::Sow) => false,
        // A day in the past beside a question about the harvest is its start; today alone is not.
        _ if day < today => standing.crop.harvest.counted_from == CountedFrom::Planting,
        _ => return None,
    };
    Some(if planted { Start::Planted(day) } else { Start::Sown(day) })
}

fn window(subject: &Subject<'_>, standing: &StandingCrop<'_>) -> Option<HarvestWindow> {
    harvest_window(&standing.plain(), subject.weather.as_ref()?)
}

fn ready(
    answer: &mut Answer,
    subject: &Subject<'_>,
    standing: &StandingCrop<'_>,
    window: &HarvestWindow,
    (several, told): (bool, bool),
) {
    let bed = subject.own.as_ref().filter(|_| several);
    let crop = Some(standing.crop.id.as_str()).filter(|_| several);
    answer.figures.push(Figure::date("first_harvest", window.first).of_bed(bed).of_crop(crop));
    if let Some(last) = window.last {
        answer.figures.push(Figure::date("last_harvest", last).of_bed(bed).of_crop(crop));
    }
    answer.cite(&window.sum.source);
    if !told {
        return;
    }
    let way = if standing.microgreen { "tray" } else { "bed" };
    let over = window.last.unwrap_or(window.first).high() < subject.today();
    let ripe = window.first.high() < subject.today();
    let when = if over {
        "past"
    } else if ripe {
        "now"
    } else {
        "ahead"
    };
    answer.lines.push(
        Line::new("harvest-first")
            .with("crop", Said::Crop(standing.crop.id.clone()))
            .with("bed", subject.called())
            .with("day", Said::Days(window.first))
            .with("way", Said::Key(way))
            .with("when", Said::Key(when)),
    );
    answer.lines.push(
        Line::new("harvest-reason")
            .with("tmax", Said::Temperature(window.mean_tmax))
            .with("tmin", Said::Temperature(window.mean_tmin))
            .with("days", Said::Number(window.days as f64, 0)),
    );
    if window.other_start {
        answer.lines.push(Line::new("harvest-other-start"));
    }
    working(answer, subject, standing, window);
}

fn working(answer: &mut Answer, subject: &Subject<'_>, standing: &StandingCrop<'_>, window: &HarvestWindow) {
    let (how, day) = match window.start {
        Start::Sown(day) => ("sown", day),
        Start::Planted(day) => ("planted", day),
    };
    let upper = window.thresholds.upper.unwrap_or(window.thresholds.base);
    answer.working.push(
        Line::new("working-thermal-time")
            .with("crop", Said::Crop(standing.crop.id.clone()))
            .with("how", Said::Key(how))
            .with("day", Said::Day(day))
            .with("sum", Said::Span(window.sum.is.map(|sum| sum.as_degree_days()), 0))
            .with("base", Said::Temperature(window.thresholds.base))
            .with("upper", Said::Temperature(upper))
            .with("source", Said::Source(window.sum.source.clone())),
    );
    let usual = window.usual_days as i64;
    let place = subject.weather.as_ref().and_then(|weather| weather.normals());
    if let (true, Some((place, _))) = (usual > 0, place) {
        answer.cite(&place.source);
        let line = Line::new("working-harvest-days")
            .with("days", Said::Count(usual))
            .with("place", Said::Place(place.id.clone()));
        answer.working.push(line);
    }
    answer.cite(&SourceRef::new("baskerville-emin-1969", "single sine"));
    answer.working.push(Line::new("working-claim"));
}

fn expected(answer: &mut Answer, subject: &Subject<'_>, standing: &StandingCrop<'_>, several: bool) {
    let bed = subject.own.as_ref().filter(|_| several);
    let expected = grams_expected(&standing.plain(), subject.bed.kind, &subject.bed.shape);
    let (grams, fact) = (expected.grams, expected.per_square_metre);
    let figure = Figure::number("grams_expected", grams.map(|mass| mass.as_grams()), "g");
    answer.figures.push(figure.of_bed(bed).of_crop(Some(standing.crop.id.as_str()).filter(|_| several)));
    answer.cite(&fact.source);
    answer.working.push(
        Line::new("working-yield")
            .with("grams", Said::Mass(grams))
            .with("area", Said::Area(expected.ground))
            .with("spreads", Said::Key(if expected.beyond_the_top { "yes" } else { "no" }))
            .with("source", Said::Source(fact.source)),
    );
    if !several {
        answer.lines.push(Line::new("harvest-expected").with("grams", Said::Mass(grams)));
    }
}

fn signs(answer: &mut Answer, standing: &StandingCrop<'_>) {
    let signs = match (&standing.crop.microgreen, standing.microgreen) {
        (Some(tray), true) => &tray.signs,
        _ => &standing.crop.harvest.signs,
    };
    answer.lines.push(Line::new("harvest-signs").with("signs", Said::Text(signs.clone())));
    for caution in &standing.crop.cautions {
        let due = match caution.when {
            WhenDue::Always => true,
            WhenDue::Microgreen => standing.microgreen,
            WhenDue::Harvest => !standing.microgreen,
        };
        if due {
            answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.text.clone())));
        }
    }
}

/// No start is known: what a start on the next fitting day would come to, and the day of sowing is asked for; neither
/// where only the yield of a described bed or the sign was wanted.
fn without_dates(answer: &mut Answer, undated: &[(&Subject<'_>, StandingCrop<'_>)], reading: &Reading) {
    let Some((subject, standing)) = undated.first() else { return };
    if subject.weather.is_none() && reading.days.is_empty() {
        return;
    }
    if !reading.measures.is_empty() || standing.start.is_some() {
        return;
    }
    let how = started_how(standing);
    let crop = Said::Crop(standing.crop.id.clone());
    if let Some((window, fits_today)) = supposed(subject, standing) {
        answer.figures.push(Figure::date("first_harvest", window.first));
        answer.cite(&window.sum.source);
        let line = Line::new("harvest-supposed")
            .with("when", Said::Key(if fits_today { "today" } else { "later" }))
            .with("start", Said::Day(window.start.date()))
            .with("how", Said::Key(how))
            .with("crop", crop.clone())
            .with("day", Said::Days(window.first))
            .with("days", Said::Number(window.days as f64, 0));
        answer.lines.insert(0, line);
        working(answer, subject, standing, &window);
    }
    answer.lines.push(Line::new("harvest-say-when").with("how", Said::Key(how)).with("crop", crop));
}

const fn started_how(standing: &StandingCrop<'_>) -> &'static str {
    match (standing.microgreen, standing.crop.harvest.counted_from) {
        (false, CountedFrom::Planting) => "planted",
        _ => "sown",
    }
}

/// The harvest of what would start today, or on the next day that suits the crop; whether today does.
fn supposed(subject: &Subject<'_>, standing: &StandingCrop<'_>) -> Option<(HarvestWindow, bool)> {
    let weather = subject.weather.as_ref()?;
    let today = subject.today();
    let planted = started_how(standing) == "planted";
    let way = match usual_way(standing.crop, standing.microgreen) {
        Way::Seedbed if planted => Way::Planted,
        way => way,
    };
    let outlook = outlook(standing.crop, way, &Year::around(weather, today)?);
    let day = outlook.work_on(today)?;
    let mut standing = standing.plain();
    standing.start = Some(if planted { Start::Planted(day) } else { Start::Sown(day) });
    Some((harvest_window(&standing, weather)?, day == today))
}

/// Greens that were cut, and when next: how often they can be cut. No day is reckoned from a cut.
fn cut_again(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    let article = facts.known.articles.get(ON_CUTTING_AGAIN).filter(|_| reading.did == Some(JobKind::Pick))?;
    let greens = !reading.crops.is_empty() && reading.crops.iter().all(|crop| article.crops.contains(crop));
    greens.then(|| super::care::told(article))
}
