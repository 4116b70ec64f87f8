//! The year ahead as lines and figures.

use super::answer::{Answer, Outcome};
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::sow_crop::{pieces, way_key};
use super::sow_working::days;
use super::table::Table;
use super::year::Told;
use super::year_table;
use crate::knowledge::SourceRef;
use crate::needs::feed::HALF_ABOVE;
use crate::needs::season::Way;
use crate::planning::year::{Choice, MonthAhead, NET_ABOVE, YearAhead};
use chrono::{Datelike, NaiveDate};
use serde_json::{Map, Value, json};
use std::collections::BTreeSet;

/// So many crops are told that begin in a month, and whose time ends in it: of every month, and of this one alone.
type ToldCrops = (usize, usize);
const FULL: ToldCrops = (6, 4);
const BRIEF: ToldCrops = (4, 2);
/// So many days on which nets and feeds change are told beside this month.
const TURNS: usize = 3;
/// So many of those that go in the whole year, and on trays.
const TOLD_ALWAYS: usize = 8;

const MONTHS: [&str; 12] = [
    "month-1", "month-2", "month-3", "month-4", "month-5", "month-6", "month-7", "month-8", "month-9", "month-10",
    "month-11", "month-12",
];

/// Everything that is told of a year.
pub fn answer(told: &Told<'_>, normals: Option<&SourceRef>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    answer.lines.push(told.head.clone());
    answer.lines.extend(told.ahead.months.first().map(|month| line(month, told, BRIEF, None, &mut BTreeSet::new())));
    answer.lines.extend(turns(told));
    answer.lines.push(Line::new("year-say-more"));
    let mut named = BTreeSet::new();
    let mut waterings = None;
    for month in &told.ahead.months {
        answer.rest.push(line(month, told, FULL, waterings, &mut named));
        waterings = month.waterings.or(waterings);
    }
    always(&mut answer, told, &mut named);
    how(&mut answer, &told.ahead, &named);
    if let Some(bed) = &told.typical {
        answer.rest.push(Line::new("year-water-of").with("bed", bed.clone()));
    }
    if told.ahead.months.iter().any(|month| month.net_up.or(month.net_down).is_some()) {
        answer.rest.push(Line::new("year-net-rule").with("above", Said::Temperature(NET_ABOVE)));
    }
    answer.rest.push(Line::new("year-usual"));
    figures(&mut answer, told, &named);
    answer.tables.extend(year_table::table(told).map(Table::Year));
    answer.working.push(Line::new("working-year"));
    days(&mut answer, &told.asked);
    answer.cite(&SourceRef::new("common-practice", "usual crops of a kitchen garden on a roof"));
    if let Some(source) = normals {
        answer.cite(source);
    }
    answer
}

/// One month. Waterings are told where they change.
fn line(
    month: &MonthAhead,
    told: &Told<'_>,
    crops: ToldCrops,
    waterings: Option<f64>,
    named: &mut BTreeSet<usize>,
) -> Line {
    let none = || Said::Key("");
    let day = |phrase: &'static str, day: Option<NaiveDate>| day.map_or_else(none, |day| turn(phrase, day, told));
    let water = month.waterings.filter(|now| waterings.is_none_or(|before| (before - now).abs() > 0.01));
    let month_name = Line::new(MONTHS[month.first.month0() as usize % 12]);
    Line::new("year-month")
        .with("month", Said::Line(Box::new(month_name)))
        .with("sow", Said::Line(Box::new(sow(month, &told.ahead, crops, named))))
        .with("net_up", day("year-net-up", month.net_up))
        .with("net_down", day("year-net-down", month.net_down))
        .with("halved", day("year-feed-halved", month.feed_halved))
        .with("full", day("year-feed-full", month.feed_full))
        .with("water", water.map_or_else(none, |waterings| Said::Line(Box::new(rhythm(waterings)))))
        .with("drains", if month.drains { Said::Line(Box::new(Line::new("year-drains"))) } else { none() })
}

/// A net going up or coming down, feeds halved or full again, on a day.
fn turn(phrase: &'static str, day: NaiveDate, told: &Told<'_>) -> Said {
    let limit = Said::Temperature(HALF_ABOVE);
    let when = Said::Key(if day <= told.asked.today { "now" } else { "later" });
    let line = Line::new(phrase).with("when", when).with("day", Said::SeasonDay(day)).with("limit", limit);
    Said::Line(Box::new(line))
}

/// The next turns of nets and feeds after this month, in their order.
fn turns(told: &Told<'_>) -> Option<Line> {
    let later = told.ahead.months.iter().skip(1);
    let mut all: Vec<(NaiveDate, &'static str)> = later
        .flat_map(|month| {
            [
                (month.net_up, "year-net-up"),
                (month.net_down, "year-net-down"),
                (month.feed_halved, "year-feed-halved"),
                (month.feed_full, "year-feed-full"),
            ]
        })
        .filter_map(|(day, phrase)| Some((day?, phrase)))
        .collect();
    all.sort_unstable();
    let said = |place: usize| all.get(place).map_or(Said::Key(""), |(day, phrase)| turn(phrase, *day, told));
    let names: [&str; TURNS] = ["first", "second", "third"];
    let line =
        names.into_iter().enumerate().fold(Line::new("year-turns"), |line, (place, name)| line.with(name, said(place)));
    (!all.is_empty()).then_some(line)
}

fn rhythm(waterings: f64) -> Line {
    let rhythm = match waterings {
        w if w < 0.5 => "none",
        w if w < 1.5 => "weekly",
        w if w < 3.0 => "third",
        w if w < 5.0 => "second",
        w if w < 10.0 => "daily",
        w if w < 17.0 => "twice",
        _ => "thrice",
    };
    Line::new("year-water").with("rhythm", Said::Key(rhythm))
}

fn sow(month: &MonthAhead, ahead: &YearAhead<'_>, (begin, end): ToldCrops, named: &mut BTreeSet<usize>) -> Line {
    let what = match (month.begins.as_slice(), month.ends.as_slice()) {
        ([], []) if month.goes_on.is_empty() => "nothing",
        ([], []) => "goes-on",
        ([], _) => "ends",
        (_, []) => "begins",
        _ => "both",
    };
    let more = Line::new("year-goes-on").with("count", Said::Count(month.goes_on.len() as i64));
    let more = Said::Line(Box::new(more));
    Line::new("year-sow")
        .with("what", Said::Key(what))
        .with("begins", list(&month.begins, begin, ahead, named))
        .with("ends", list(&month.ends, end, ahead, named))
        .with("count", Said::Count(month.goes_on.len() as i64))
        .with("more", if month.goes_on.is_empty() || what == "goes-on" { Said::Key("") } else { more })
}

/// The first so many by name; the rest counted.
fn list(all: &[usize], told: usize, ahead: &YearAhead<'_>, named: &mut BTreeSet<usize>) -> Said {
    // One more than is told is told as well: "and 1 more" saves nothing.
    let told = if all.len() == told + 1 { all.len() } else { told };
    let mut items: Vec<Said> = Vec::new();
    for place in all.iter().take(told) {
        let Some(choice) = ahead.choices.get(*place) else { continue };
        named.insert(*place);
        items.push(Said::Crop(choice.crop.id.clone()));
    }
    if all.len() > told {
        let count = Said::Count((all.len() - told) as i64);
        items.push(Said::Line(Box::new(Line::new("year-more").with("count", count))));
    }
    Said::List(items)
}

/// What goes in the whole year round, in beds and on trays.
fn always(answer: &mut Answer, told: &Told<'_>, named: &mut BTreeSet<usize>) {
    let whole = |ahead: &YearAhead<'_>| -> Vec<usize> {
        let all = ahead.choices.iter().enumerate();
        all.filter(|(_, choice)| choice.seasons.whole_year).map(|(place, _)| place).collect()
    };
    let beds = whole(&told.ahead);
    if !beds.is_empty() {
        let crops = list(&beds, TOLD_ALWAYS, &told.ahead, named);
        answer.rest.push(Line::new("year-always").with("crops", crops));
    }
    let trays = whole(&told.trays);
    if !trays.is_empty() {
        let crops = list(&trays, TOLD_ALWAYS, &told.trays, &mut BTreeSet::new());
        answer.rest.push(Line::new("year-trays").with("crops", crops));
    }
}

/// Those named that go into a seedbed first, and those that are planted as pieces.
fn how(answer: &mut Answer, ahead: &YearAhead<'_>, named: &BTreeSet<usize>) {
    let chosen = || named.iter().filter_map(|place| ahead.choices.get(*place));
    let seedbed: Vec<Said> = chosen()
        .filter(|choice| choice.seasons.way == Way::Seedbed)
        .map(|choice| Said::Crop(choice.crop.id.clone()))
        .collect();
    if !seedbed.is_empty() {
        answer.rest.push(Line::new("year-seedbed").with("crops", Said::List(seedbed)));
    }
    let of_pieces = chosen().filter(|choice| matches!(choice.seasons.way, Way::Pieces(_))).map(|choice| {
        let line = Line::new("year-pieces-of").with("crop", Said::Crop(choice.crop.id.clone()));
        Said::Line(Box::new(line.with("pieces", pieces(choice.seasons.way))))
    });
    let of_pieces: Vec<Said> = of_pieces.collect();
    if !of_pieces.is_empty() {
        answer.rest.push(Line::new("year-pieces").with("crops", Said::List(of_pieces)));
    }
}

/// The months as a list; the window of each crop that was named.
fn figures(answer: &mut Answer, told: &Told<'_>, named: &BTreeSet<usize>) {
    let ids = |places: &[usize]| -> Vec<&str> {
        places.iter().filter_map(|place| told.ahead.choices.get(*place)).map(|choice| choice.crop.id.as_str()).collect()
    };
    let months = told.ahead.months.iter().map(|month| {
        let mut object = Map::new();
        let mut put = |name: &str, value: Option<Value>| {
            if let Some(value) = value {
                object.insert(name.to_owned(), value);
            }
        };
        let date = |day: Option<NaiveDate>| day.map(|day| json!(day.to_string()));
        put("month", Some(json!(month.first.format("%Y-%m").to_string())));
        put("begins", Some(json!(ids(&month.begins))));
        put("ends", Some(json!(ids(&month.ends))));
        put("goes_on", Some(json!(ids(&month.goes_on))));
        put("net_up", date(month.net_up));
        put("net_down", date(month.net_down));
        put("feed_halved_from", date(month.feed_halved));
        put("feed_full_from", date(month.feed_full));
        put("waterings_per_week", month.waterings.map(|often| json!(often)));
        put("clear_drains", month.drains.then_some(json!(true)));
        Value::Object(object)
    });
    let months: Vec<Value> = months.collect();
    put_structure(answer, "months", json!(months));
    let always = |ahead: &YearAhead<'_>| -> Vec<String> {
        let whole = ahead.choices.iter().filter(|choice| choice.seasons.whole_year);
        whole.map(|choice| choice.crop.id.clone()).collect()
    };
    put_structure(answer, "whole_year", json!(always(&told.ahead)));
    put_structure(answer, "whole_year_on_trays", json!(always(&told.trays)));
    for choice in named.iter().filter_map(|place| told.ahead.choices.get(*place)) {
        of_crop(answer, choice);
    }
}

fn of_crop(answer: &mut Answer, choice: &Choice<'_>) {
    let of = Some(choice.crop.id.as_str());
    if let Some(window) = choice.seasons.windows.first() {
        answer.figures.push(Figure::date("sow_from", window.from).of_crop(of));
        answer.figures.push(Figure::date("sow_until", window.until).of_crop(of));
    }
    let is = FigureValue::Structure(choice.seasons.fits.word().into());
    answer.figures.push(Figure { name: "fits_now".to_owned(), is, bed: None, crop: None }.of_crop(of));
    let how = FigureValue::Structure(way_key(choice.seasons.way).into());
    answer.figures.push(Figure { name: "sow_way".to_owned(), is: how, bed: None, crop: None }.of_crop(of));
    answer.cite(&choice.crop.heat.day_limit.source);
    answer.cite(&choice.crop.harvest.first.source);
}

fn put_structure(answer: &mut Answer, name: &str, value: Value) {
    answer.figures.push(Figure { name: name.to_owned(), is: FigureValue::Structure(value), bed: None, crop: None });
}
