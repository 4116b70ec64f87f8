//! The next feed of a bed, how much of what, and whether its nitrogen lasts.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::feed::{feeds, told_day};
use super::feed_nitrogen::nitrogen;
use super::figure::Figure;
use super::line::{Line, Said};
use super::plots::moved_by;
use super::spray_time::{held_move, named};
use super::subject::Subject;
use crate::garden::{JobDone, JobKind};
use crate::knowledge::{GrownFor, Material, MaterialKind, SourceRef};
use crate::needs::feed::{amount, grams_per_bed, halved_by_heat};
use crate::needs::feed_day::{Counted, feed_day, rhythm};
use crate::needs::surroundings::vessel;
use crate::quantity::{Estimate, Mass};
use crate::understanding::Reading;

/// So many beds are told one by one.
const TOLD_ONE_BY_ONE: usize = 4;

/// Shoots that are eaten in days want none.
pub fn tray() -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(Line::new("feed-tray"));
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

/// The day and the amount for each bed.
pub fn answer(reading: &Reading, facts: &Facts<'_>, all: &[Subject<'_>]) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let several = all.len() > 1;
    for (position, subject) in all.iter().enumerate() {
        if !subject.standing.is_empty() && subject.standing.iter().all(|standing| standing.microgreen) {
            answer.lines.push(Line::new("feed-tray"));
            continue;
        }
        one(&mut answer, reading, facts, subject, (several, position < TOLD_ONE_BY_ONE));
    }
    if answer.lines.iter().any(|line| line.phrase != "feed-tray") {
        answer.cautions.push(Line::new("caution-feed"));
    }
    answer
}

fn one(
    answer: &mut Answer,
    reading: &Reading,
    facts: &Facts<'_>,
    subject: &Subject<'_>,
    (several, told): (bool, bool),
) {
    let today = subject.today();
    let recorded = last_feed(subject, facts);
    let (every, source) = rhythm(subject.standing.iter().map(|standing| standing.crop));
    let last = told_day(reading, today).or_else(|| recorded.as_ref().map(|job| job.on.date()));
    let (by_rhythm, counted) = feed_day(last, subject.bed.mix_added, &every, today);
    let moved = held_move(subject, facts, JobKind::Feed).filter(|_| told_day(reading, today).is_none());
    let next = moved.map_or(by_rhythm, |moved| Estimate::exactly(moved.to.max(today)));
    let began = match counted {
        _ if moved.is_some() && counted != Counted::LastFeed => "moved",
        Counted::LastFeed => "last",
        Counted::FreshMix => "mix",
        Counted::UsedUpMix => "used-up",
        Counted::Nothing => "unknown",
    };
    let crop = subject.standing.first().map(|standing| standing.crop.id.as_str());
    let of = |figure: Figure| figure.of_bed(subject.own.as_ref().filter(|_| several)).of_crop(crop.filter(|_| several));
    // Nothing is known of when it was fed: its rhythm is told, a day would be a guess.
    if counted != Counted::Nothing || moved.is_some() {
        answer.figures.push(of(Figure::date("next_feed", next)));
    }
    answer.cite(&source);
    let tmax = subject.weather.as_ref().and_then(|weather| weather.on(next.value())).map(|day| day.tmax);
    let hot = tmax.is_some_and(halved_by_heat);
    let material = used(reading, facts, subject, recorded.as_ref());
    let grams = material.and_then(|material| {
        let feed = material.feed.as_ref()?;
        answer.cite(&feed.grams_per_m2.as_ref()?.source);
        grams_per_bed(feed, vessel(&subject.bed.shape).measures().top, hot)
    });
    if let Some(grams) = grams {
        answer.figures.push(of(Figure::number("grams_per_bed", grams.map(Mass::as_grams), "g")));
    }
    if told {
        answer.lines.push(
            Line::new("feed-next")
                .with("bed", named(subject))
                .with("day", Said::Days(next))
                .with("began", Said::Key(began))
                .with("every", Said::Span(every, 0))
                .with("last", last.map_or(Said::Key("none"), Said::Day)),
        );
        answer.lines.extend(moved.map(|moved| moved_by(moved, facts)));
    }
    match material {
        Some(material) => {
            strengths(answer, material, hot, several);
            if told {
                give(answer, material, grams, (hot, feeds(reading, facts).next().is_some()));
            }
        }
        None if told => answer.lines.push(Line::new("feed-no-amount")),
        None => {}
    }
    if told && !several {
        let how = Line::new("feed-how").with("hot", Said::Key(if hot { "hot" } else { "mild" }));
        answer.lines.push(match tmax {
            Some(tmax) => how.with("tmax", Said::Temperature(tmax)),
            None => how,
        });
        nitrogen(answer, subject, facts);
    }
}

/// The last feed that is noted of a bed.
fn last_feed(subject: &Subject<'_>, facts: &Facts<'_>) -> Option<JobDone> {
    let (_, bed) = facts.bed(subject.own.as_ref()?)?;
    let fed = bed.jobs.iter().filter(|job| job.job == JobKind::Feed);
    fed.max_by_key(|job| job.on.date()).cloned()
}

/// What was named, else what was last given, else what suits the crop: thin cake water for fruit, vermicompost
/// for leaves (common practice). None where it has no figures.
fn used<'a>(
    reading: &'a Reading,
    facts: &'a Facts<'_>,
    subject: &Subject<'_>,
    recorded: Option<&JobDone>,
) -> Option<&'a Material> {
    let known = |id: &str| facts.known.materials.get(id).filter(|material| material.feed.is_some());
    let named = feeds(reading, facts).next();
    if named.is_some() {
        return named.filter(|material| material.feed.is_some());
    }
    let fruiting =
        subject.standing.iter().any(|standing| matches!(standing.crop.grown_for, GrownFor::Fruit | GrownFor::Pod));
    let usual = if fruiting { "mustard-cake" } else { "vermicompost" };
    recorded.and_then(|job| known(job.what.as_deref()?)).or_else(|| known(usual)).or_else(|| known("vermicompost"))
}

/// The strength of a feed that is steeped or poured; whether there is one.
pub fn strengths(answer: &mut Answer, material: &Material, hot: bool, several: bool) -> bool {
    let Some(feed) = &material.feed else { return false };
    if several {
        return false;
    }
    let figures = [
        (&feed.grams_per_litre, "grams_per_litre", "g/L"),
        (&feed.millilitres_per_litre, "millilitres_per_litre", "ml/L"),
    ];
    let mut any = feed.grams_per_m2.is_some();
    for (fact, name, unit) in figures {
        if let Some(fact) = fact {
            answer.figures.push(Figure::number(name, amount(&fact.is, hot), unit));
            answer.cite(&fact.source);
            any = true;
        }
    }
    any
}

/// How it is given; the dry amount of a meal only where that material was asked for.
pub fn give(answer: &mut Answer, material: &Material, grams: Option<Estimate<Mass>>, (hot, asked): (bool, bool)) {
    let Some(feed) = &material.feed else { return };
    let named_as = |phrase| Line::new(phrase).with("material", Said::Material(material.id.clone()));
    if let Some(strength) = &feed.grams_per_litre {
        // A meal goes on thinned, never dry round standing plants: fresh cake burns roots.
        let steeped = material.kind == MaterialKind::Meal;
        let line = named_as(if steeped { "feed-steep" } else { "feed-dissolve" });
        answer.lines.push(line.with("grams", Said::Span(amount(&strength.is, hot), 1)));
        if let Some(grams) = grams.filter(|_| asked && steeped) {
            answer.lines.push(named_as("feed-dig-in").with("grams", Said::Mass(grams)));
        }
        if steeped {
            return;
        }
    } else if let Some(strength) = &feed.millilitres_per_litre {
        answer.lines.push(named_as("feed-pour").with("millilitres", Said::Span(amount(&strength.is, hot), 0)));
    }
    match (grams, &feed.grams_per_m2) {
        (Some(grams), _) => answer.lines.push(named_as("feed-strew").with("grams", Said::Mass(grams))),
        (None, Some(strewn)) => {
            answer.lines.push(named_as("feed-strew-area").with("grams", Said::Span(amount(&strewn.is, hot), 0)));
        }
        (None, None) => {}
    }
}
