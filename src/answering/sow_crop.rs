//! Is it the time for a crop: yes or no, the window, the reason, the first pick.

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::sow::{Asked, caution_heat};
use super::sow_working::{walls, working};
use super::subject::{Subject, crops, described_bed, subjects};
use crate::garden::BedKind;
use crate::knowledge::{Crop, PlantedAs, SourceRef};
use crate::needs::season::{Fits, Hindrance, NURSERY_DAYS, Outlook, Way, emergence_days, outlook, usual_way};
use crate::needs::space::bed_places;
use crate::needs::year::Year;
use crate::quantity::Estimate;
use crate::understanding::Reading;
use chrono::{Days, NaiveDate};

/// So many crops are told one by one.
const TOLD_ONE_BY_ONE: usize = 3;

/// Each crop that was named.
pub fn answer(reading: &Reading, facts: &Facts<'_>, asked: &Asked<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let wanted: Vec<&Crop> = wanted(reading, facts);
    if wanted.is_empty() {
        return super::handed_over::not_known();
    }
    let several = wanted.len() > 1;
    let mut work = None;
    let described = described_bed(reading).is_some();
    let beds = if reading.beds_named || described { subjects(reading, facts).unwrap_or_default() } else { Vec::new() };
    for (position, crop) in wanted.into_iter().enumerate() {
        let way = match usual_way(crop, reading.microgreen) {
            // Saplings with a day beside them are to be planted on it.
            Way::Seedbed if reading.saplings && !reading.days.is_empty() => Way::Planted,
            way => way,
        };
        let outlook = outlook(crop, way, &asked.year);
        work = work.into_iter().chain(outlook.work_on(asked.day)).min();
        figures(&mut answer, crop, &outlook, several);
        if position >= TOLD_ONE_BY_ONE {
            continue;
        }
        // What was sown already is waited for; whether today would do is then not the question.
        let shown = sown_before(reading, asked).is_some_and(|sown| shows(&mut answer, crop, sown, asked));
        if !shown {
            lines(&mut answer, crop, &outlook, asked);
        }
        if way == Way::Planted && asked.day > asked.today && crop.sowing.is_some() {
            backwards(&mut answer, asked.day);
        }
        if way == Way::Tray {
            succession(&mut answer, &outlook, asked, facts);
        }
        for bed in &beds {
            bed_suits(&mut answer, crop, bed);
            walls(&mut answer, bed, facts, asked.day);
            if matches!(way, Way::Seedbed | Way::Planted) {
                saplings(&mut answer, crop, bed);
            }
        }
        working(&mut answer, crop, &outlook, asked);
    }
    if asked.elsewhere
        && let Some((place, _)) = asked.weather.normals()
    {
        answer.lines.push(Line::new("sow-reckoned-for").with("place", Said::Place(place.id.clone())));
    }
    if let Some(day) = work {
        caution_heat(&mut answer, asked, day);
    }
    answer
}

/// The crops that are asked about: a bed is often called by what stands in it.
fn wanted<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Vec<&'a Crop> {
    let all: Vec<&Crop> = crops(reading, facts).collect();
    let stands = |crop: &&&Crop| {
        let beds = reading.beds.iter().filter_map(|bed| facts.bed(bed));
        beds.flat_map(|(site, bed)| bed.standing(site.now.date_naive())).any(|planting| planting.crop == crop.id)
    };
    let others: Vec<&Crop> = all.iter().filter(|crop| !stands(crop)).copied().collect();
    if reading.beds_named && !others.is_empty() { others } else { all }
}

/// The three figures of a window.
pub fn figures(answer: &mut Answer, crop: &Crop, outlook: &Outlook, several: bool) {
    let of = Some(crop.id.as_str()).filter(|_| several);
    if let Some(window) = &outlook.window {
        answer.figures.push(Figure::date("sow_from", window.from).of_crop(of));
        answer.figures.push(Figure::date("sow_until", window.until).of_crop(of));
    }
    let is = FigureValue::Structure(outlook.fits.word().into());
    answer.figures.push(Figure { name: "fits_now".to_owned(), is, bed: None, crop: None }.of_crop(of));
}

/// The name of a way as phrases know it.
pub const fn way_key(way: Way) -> &'static str {
    match way {
        Way::InBed => "bed",
        Way::Seedbed => "seedbed",
        Way::Planted => "planted",
        Way::Pieces(_) => "pieces",
        Way::Tray => "tray",
    }
}

/// What is planted in place of seed.
pub fn pieces(way: Way) -> Said {
    match way {
        Way::Pieces(piece) => piece_word(piece),
        _ => Said::Key("-"),
    }
}

/// The plural of a piece, as phrases say it.
pub fn piece_word(piece: PlantedAs) -> Said {
    Said::Line(Box::new(Line::new("planted-pieces").with("piece", Said::Key(piece.word()))))
}

fn lines(answer: &mut Answer, crop: &Crop, outlook: &Outlook, asked: &Asked<'_>) {
    let named = |line: Line| line.with("crop", Said::Crop(crop.id.clone()));
    let when = Said::Key(if asked.day == asked.today { "today" } else { "day" });
    match &outlook.window {
        Some(window) => {
            let fits = if window.whole_year { "year" } else { outlook.fits.word() };
            answer.lines.push(
                named(Line::new("sow-fits"))
                    .with("fits", Said::Key(fits))
                    .with("way", Said::Key(way_key(outlook.way)))
                    .with("pieces", pieces(outlook.way))
                    .with("when", when)
                    .with("day", Said::Day(asked.day))
                    .with("from", asked.season_day(window.from.value()))
                    .with("until", asked.season_day(window.until.value())),
            );
        }
        None => answer.lines.push(named(Line::new("sow-never"))),
    }
    if let Some(main) = &outlook.main {
        answer.lines.push(
            Line::new("sow-main")
                .with("from", asked.season_day(main.from.value()))
                .with("until", asked.season_day(main.until.value())),
        );
    }
    if outlook.marginal {
        answer.lines.push(named(Line::new("sow-marginal")));
    }
    if let Some(hindrance) = &outlook.hindrance {
        answer.lines.push(reason(hindrance, outlook, asked));
    }
    if outlook.fits == Fits::Yes {
        comes(answer, crop, outlook, asked);
    }
}

/// Why a day does not suit: at once, or by what would come before its harvest is worth it.
fn reason(hindrance: &Hindrance, outlook: &Outlook, asked: &Asked<'_>) -> Line {
    let (phrase, on) = match hindrance {
        Hindrance::Hot { on, .. } => ("sow-hot", on),
        Hindrance::Cold { on, .. } => ("sow-cold", on),
        Hindrance::LongDay { on, .. } => ("sow-long-day", on),
        Hindrance::SeedHot { on, .. } => ("sow-seed-hot", on),
        Hindrance::SeedCold { on, .. } => ("sow-seed-cold", on),
        Hindrance::Slow { on } => ("sow-slow", on),
    };
    let when = match (*on - asked.day).num_days() {
        _ if outlook.before_opening => "before",
        later if later > 13 => "later",
        _ => "now",
    };
    let what = if matches!(outlook.way, Way::Pieces(_)) { "pieces" } else { "seed" };
    let line = Line::new(phrase).with("when", Said::Key(when)).with("on", asked.season_day(*on));
    match hindrance {
        Hindrance::Hot { mean_tmax, limit, beyond, .. } => line
            .with("tmax", Said::Temperature(*mean_tmax))
            .with("limit", Said::Temperature(limit.value()))
            .with("beyond", Said::Key(beyond.word())),
        Hindrance::Cold { mean_tmin, limit, .. } => {
            line.with("tmin", Said::Temperature(*mean_tmin)).with("limit", Said::Temperature(limit.value()))
        }
        Hindrance::LongDay { limit, .. } => line.with("limit", Said::Number(limit.value(), 1)),
        Hindrance::SeedHot { mean, limit, .. } | Hindrance::SeedCold { mean, limit, .. } => line
            .with("what", Said::Key(what))
            .with("mean", Said::Temperature(*mean))
            .with("limit", Said::Temperature(limit.value())),
        Hindrance::Slow { .. } => line,
    }
}

/// When it shows, when it is picked, what ends it.
fn comes(answer: &mut Answer, crop: &Crop, outlook: &Outlook, asked: &Asked<'_>) {
    if outlook.way != Way::Planted
        && let Some(days) = emergence_days(crop, &asked.year, asked.year.today())
    {
        answer.figures.push(Figure::number("emergence_days", days, "day"));
        let what = if matches!(outlook.way, Way::Pieces(_)) { "pieces" } else { "seed" };
        let line = Line::new("sow-shows").with("what", Said::Key(what));
        answer.lines.push(line.with("days", Said::Span(whole(days), 0)));
        answer.cite(&crop.emergence.thermal_time.source);
    }
    let Some(pick) = outlook.first_pick else { return };
    let line = Line::new("sow-pick").with("day", asked.season_day(pick));
    let (end, on) = match &outlook.ended_by {
        Some(Hindrance::Hot { on, beyond, .. }) => (beyond.word(), *on),
        Some(Hindrance::LongDay { on, .. }) => ("bolts", *on),
        Some(Hindrance::Cold { on, .. }) => ("cold", *on),
        _ if outlook.way == Way::Tray => ("tray", pick),
        _ => ("none", pick),
    };
    answer.lines.push(line.with("end", Said::Key(end)).with("on", asked.season_day(on)));
}

/// Whole days, outward.
fn whole(days: Estimate<f64>) -> Estimate<f64> {
    Estimate::spanning(days.value().round(), [days.low().floor().max(1.0), days.high().ceil()])
}

/// The past day on which it was sown, where the message tells one.
fn sown_before(reading: &Reading, asked: &Asked<'_>) -> Option<NaiveDate> {
    reading.did?;
    reading.days.iter().map(|(day, _)| *day).find(|day| *day < asked.today)
}

/// When what was sown on a past day is to show.
fn shows(answer: &mut Answer, crop: &Crop, sown: NaiveDate, asked: &Asked<'_>) -> bool {
    let Some(year) = Year::around(asked.weather, sown) else { return false };
    let Some(days) = emergence_days(crop, &year, year.today()) else { return false };
    let date = |days: f64| sown.checked_add_days(Days::new(days.round().max(0.0) as u64)).unwrap_or(sown);
    let shows = days.map(date);
    answer.figures.push(Figure::date("emergence", shows));
    let past = if shows.high() < asked.today { "past" } else { "ahead" };
    let line = Line::new("sow-shows-on")
        .with("crop", Said::Crop(crop.id.clone()))
        .with("sown", Said::Day(sown))
        .with("day", Said::Days(shows))
        .with("when", Said::Key(past));
    answer.lines.push(line);
    answer.cite(&crop.emergence.thermal_time.source);
    true
}

/// Saplings for a day: when their seed goes in.
fn backwards(answer: &mut Answer, plant_on: NaiveDate) {
    let before = |days: u64| plant_on.checked_sub_days(Days::new(days)).unwrap_or(plant_on);
    let (least, usual, most) = NURSERY_DAYS;
    let seed = Estimate::spanning(before(usual), [before(most), before(least)]);
    answer.figures.push(Figure::date("seedbed_on", seed));
    answer.lines.push(
        Line::new("sow-backwards")
            .with("day", Said::Day(plant_on))
            .with("from", Said::Day(seed.low()))
            .with("until", Said::Day(seed.high())),
    );
    answer.cite(&SourceRef::new("common-practice", "25 to 35 days in a seedbed"));
}

/// Trays one after the other: with so many trays, one is sown and one is cut every so many days.
fn succession(answer: &mut Answer, outlook: &Outlook, asked: &Asked<'_>, facts: &Facts<'_>) {
    let Some(cut) = outlook.first_pick.filter(|_| outlook.fits == Fits::Yes) else { return };
    let days = (cut - asked.day).num_days().max(1);
    let own = facts.beds().filter(|(_, bed)| bed.bed.kind == BedKind::Tray).count() as i64;
    let trays = own.max(2);
    let every = days.div_euclid(trays) + i64::from(days.rem_euclid(trays) > 0);
    answer.figures.push(Figure::number("sow_every_days", Estimate::exactly(every as f64), "day"));
    answer.lines.push(
        Line::new("sow-succession")
            .with("days", Said::Count(days))
            .with("trays", Said::Count(trays))
            .with("every", Said::Count(every)),
    );
}

/// Depth and sun of a bed against what the crop asks.
fn bed_suits(answer: &mut Answer, crop: &Crop, bed: &Subject<'_>) {
    let needs = &crop.bed;
    if let Some(depth) = bed.bed.shape.depth().filter(|depth| *depth < needs.depth.is.low()) {
        answer.cite(&needs.depth.source);
        answer.lines.push(
            Line::new("sow-shallow")
                .with("crop", Said::Crop(crop.id.clone()))
                .with("bed", bed.called())
                .with("depth", Said::Length(depth))
                .with("needs", Said::Length(needs.depth.value())),
        );
    }
    if bed.sun_hours < needs.sun_hours.is.low() {
        answer.cite(&needs.sun_hours.source);
        answer.lines.push(
            Line::new("sow-dark")
                .with("crop", Said::Crop(crop.id.clone()))
                .with("bed", bed.called())
                .with("hours", Said::Number(bed.sun_hours, 1))
                .with("needs", Said::Hours(needs.sun_hours.value())),
        );
    }
}

/// So many more are raised than planted: some fail (common practice, no source).
const RAISED_FOR_EACH: f64 = 1.25;

/// How many saplings a bed takes, as they stand in it.
fn saplings(answer: &mut Answer, crop: &Crop, bed: &Subject<'_>) {
    let plants = bed_places(crop, bed.bed.kind, &bed.bed.shape).plants;
    let raised = plants.map(|plants| (plants * RAISED_FOR_EACH).ceil());
    answer.figures.push(Figure::number("saplings", raised, "1"));
    answer.lines.push(
        Line::new("sow-saplings")
            .with("bed", bed.called())
            .with("plants", Said::Span(plants, 0))
            .with("raised", Said::Span(raised, 0)),
    );
    answer.cite(&crop.bed.spacing.source);
}
