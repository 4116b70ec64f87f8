//! What an answer's weather came from and how old it is: told beside the answer where it matters, and in its working and
//! sources always.

use super::answer::{Answer, Outcome};
use super::facts::{Facts, SiteFacts};
use super::line::{Line, Said};
use crate::knowledge::{Kind, SourceRef};
use crate::understanding::Reading;
use crate::weather::{Foretold, Origin, Weather};
use chrono::{DateTime, Days, FixedOffset, NaiveDate};

/// Days gone by are counted so far back: as long as most crops stand.
const LOOKED_BACK_D: u64 = 60;

/// A week is seven calendar days, today the first.
const WEEK: usize = 7;

/// Adds it to an answer that rests on weather.
pub fn tell(answer: &mut Answer, reading: &Reading, facts: &Facts<'_>) {
    let by_weather = matches!(
        reading.kind,
        Kind::Water | Kind::Harvest | Kind::Spray | Kind::Shade | Kind::Feed | Kind::Due | Kind::Sow
    );
    if !by_weather || answer.outcome != Outcome::Answered || answer.figures.is_empty() {
        return;
    }
    for (weather, now) in skies(reading, facts) {
        if let Some(foretold) = weather.foretold() {
            of_forecast(answer, &foretold, now);
        }
        answer.working.extend(days_told(weather, now.date_naive()));
        if matches!(reading.kind, Kind::Water | Kind::Harvest) {
            answer.working.extend(days_gone(weather, now.date_naive()));
        }
    }
}

/// The skies an answer is about, with the moment there: those of its beds, of all sites for a round, else of the first.
fn skies<'f>(reading: &Reading, facts: &'f Facts<'_>) -> Vec<(&'f Weather<'f>, DateTime<FixedOffset>)> {
    let of = |site: &SiteFacts<'_>| reading.beds.iter().any(|bed| bed.site() == &site.site.id);
    let all = reading.beds.is_empty() && reading.kind == Kind::Due;
    let named: Vec<_> =
        facts.sites.iter().filter(|site| all || of(site)).map(|site| (&site.weather, site.now)).collect();
    if !named.is_empty() {
        return named;
    }
    let elsewhere = facts.elsewhere.as_ref().map(|weather| (weather, facts.now_elsewhere));
    let first = facts.sites.first().map(|site| (&site.weather, site.now));
    if reading.places.is_empty() { first.or(elsewhere) } else { elsewhere.or(first) }.into_iter().collect()
}

fn of_forecast(answer: &mut Answer, foretold: &Foretold, now: DateTime<FixedOffset>) {
    if foretold.until < now.date_naive() {
        let line = Line::new("working-forecast-ended").with("until", Said::Day(foretold.until));
        return add(&mut answer.working, line);
    }
    if let Some(days) = foretold.old(now) {
        let made = foretold.made.unwrap_or(now).date_naive();
        let line = Line::new("weather-old").with("days", Said::Count(days)).with("day", Said::Day(made));
        add(&mut answer.lines, line);
    }
    let Some((source, place)) = foretold.by.source() else { return };
    answer.cite(&SourceRef::new(source, place));
    let made = foretold.made.unwrap_or(now).date_naive();
    let line = Line::new("working-forecast-by")
        .with("service", Said::Key(foretold.by.word()))
        .with("day", Said::Day(made))
        .with("until", Said::Day(foretold.until));
    add(&mut answer.working, line);
}

/// What people at the site said of the week from today on.
fn days_told(weather: &Weather<'_>, today: NaiveDate) -> Option<Line> {
    let told = weather.from(today).take(WEEK).filter(|day| day.origin == Origin::Told).count();
    (told > 0).then(|| Line::new("working-days-told").with("days", Said::Count(told as i64)))
}

/// How the days gone by are known, where any is better known than a usual day.
fn days_gone(weather: &Weather<'_>, today: NaiveDate) -> Option<Line> {
    let from = today.checked_sub_days(Days::new(LOOKED_BACK_D))?;
    let gone: Vec<Origin> = weather.from(from).take_while(|day| day.date < today).map(|day| day.origin).collect();
    let count = |of: Origin| gone.iter().filter(|origin| **origin == of).count() as i64;
    let (observed, kept, told) = (count(Origin::Observed), count(Origin::Kept), count(Origin::Told));
    (observed + kept + told > 0).then(|| {
        Line::new("working-days-gone")
            .with("days", Said::Count(gone.len() as i64))
            .with("observed", Said::Count(observed))
            .with("kept", Said::Count(kept))
            .with("told", Said::Count(told))
    })
}

/// Several beds under one sky say it once.
fn add(lines: &mut Vec<Line>, line: Line) {
    if !lines.contains(&line) {
        lines.push(line);
    }
}
