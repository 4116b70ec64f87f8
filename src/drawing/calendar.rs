//! The coming jobs as a calendar file (RFC 5545), for the calendar of a phone.

use super::words::Words;
use crate::answering::{DueJob, DueTable, Line, Said};
use chrono::{DateTime, Days, Duration, FixedOffset, NaiveDate, Utc};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, Property};
use std::collections::BTreeMap;

/// The evening before: this much before the midnight at which an all-day event begins.
const EVENING_BEFORE: Duration = Duration::hours(-6);

/// A calendar of the jobs of a list; `now` is stamped on each.
///
/// An event's id is made of bed, job and what is used, and of its place among equal ones, not of its day: when the file is
/// made again and a job has moved, the calendar moves it instead of showing it twice.
#[must_use]
pub fn calendar(table: &DueTable, words: &Words<'_>, now: DateTime<FixedOffset>) -> String {
    let mut file = Calendar::empty();
    file.append_property(Property::new("VERSION", "2.0"));
    file.append_property(Property::new("PRODID", "-//rooftend//jobs//EN"));
    file.append_property(Property::new("CALSCALE", "GREGORIAN"));
    file.append_property(Property::new("METHOD", "PUBLISH"));
    file.name(&words.say("draw-calendar-name"));
    let mut seen: BTreeMap<String, usize> = BTreeMap::new();
    for job in &table.jobs {
        let id = id(job);
        let before = seen.entry(id.clone()).or_default();
        *before += 1;
        let uid = if *before > 1 { format!("{id}.{before}@rooftend") } else { format!("{id}@rooftend") };
        file.push(event(job, &uid, words, now));
    }
    folded(&file.done().to_string())
}

/// `roof-12.east-box.spray.neem-oil`; ids are small letters, digits and hyphens.
fn id(job: &DueJob) -> String {
    let what = job.what.as_deref().map(|what| format!(".{what}")).unwrap_or_default();
    format!("{}.{}.{}{what}", job.site, job.bed.bed(), job.job)
}

fn event(job: &DueJob, uid: &str, words: &Words<'_>, now: DateTime<FixedOffset>) -> Event {
    let work = work(job, words);
    let bed = words.headed(&Said::Bed(job.bed.clone()));
    let title = format!("{work} · {bed}");
    let mut event = Event::new();
    event
        .uid(uid)
        .timestamp(now.with_timezone(&Utc))
        // Grows with the time of making, so that a later file wins over an earlier one.
        .sequence(u32::try_from(now.timestamp() / 60 - FIRST_MINUTE).unwrap_or_default())
        .summary(&title)
        .location(&job.site_name)
        .starts(job.date)
        .ends(day_after(job.date))
        .append_property(Property::new("TRANSP", "TRANSPARENT"));
    if let Some(since) = job.since {
        let since = words.line(&Line::new("draw-due-since").with("day", Said::Day(since)));
        event.description(&since);
    }
    // Named and stamped here: the library would draw a random name and read the clock.
    let mut alarm = Alarm::display(&title, EVENING_BEFORE);
    alarm.uid(&format!("evening.{uid}")).timestamp(now.with_timezone(&Utc));
    event.alarm(alarm);
    event.done()
}

/// Lines of at most 75 octets, broken between letters (RFC 5545, 3.1); of an alarm no stamp, which is an event's alone
/// (3.6.6).
fn folded(file: &str) -> String {
    const MOST: usize = 75;
    let mut all = String::with_capacity(file.len() + file.len() / 16);
    let mut in_alarm = false;
    for line in file.replace("\r\n ", "").split("\r\n").filter(|line| !line.is_empty()) {
        in_alarm = line == "BEGIN:VALARM" || in_alarm && line != "END:VALARM";
        if in_alarm && line.starts_with("DTSTAMP") {
            continue;
        }
        let mut octets = 0;
        for letter in line.chars() {
            if octets + letter.len_utf8() > MOST {
                all.push_str("\r\n ");
                octets = 1;
            }
            octets += letter.len_utf8();
            all.push(letter);
        }
        all.push_str("\r\n");
    }
    all
}

/// 1 January 2026, minutes after 1 January 1970: the numbers of a calendar's sequence stay small.
const FIRST_MINUTE: i64 = 29_453_760;

fn day_after(day: NaiveDate) -> NaiveDate {
    day.checked_add_days(Days::new(1)).unwrap_or(day)
}

/// The job and what it is done with, in words.
pub fn work(job: &DueJob, words: &Words<'_>) -> String {
    let what = job.what_said.clone().unwrap_or(Said::Key("none"));
    words.sentence(&Line::new("draw-job").with("job", Said::Key(job.job)).with("what", what))
}
