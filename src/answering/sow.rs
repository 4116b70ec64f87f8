//! "What can go in now; is it the time for it; what follows it?"

use super::answer::Answer;
use super::facts::{Facts, SiteFacts};
use super::hint::has_words;
use super::line::{Line, Said};
use super::subject::place_choices;
use super::{sow_crop, sow_list, year};
use crate::knowledge::Point;
use crate::needs::year::Year;
use crate::quantity::Temperature;
use crate::understanding::Reading;
use crate::weather::Weather;
use chrono::{Datelike, Days, NaiveDate};

/// The day, the weather and the year around it that a question of season is about.
pub struct Asked<'a> {
    pub day: NaiveDate,
    pub today: NaiveDate,
    pub weather: &'a Weather<'a>,
    pub year: Year,
    /// The place was named, or the asker has no site of her own.
    pub elsewhere: bool,
}

impl Asked<'_> {
    /// A day of a season, with its year where that is not the year of asking.
    pub fn season_day(&self, day: NaiveDate) -> Said {
        if day.year() == self.today.year() { Said::SeasonDay(day) } else { Said::SeasonDayOfYear(day) }
    }
}

/// Fits now, the window, the reason; for no crop, those that fit.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if year::is_asked(reading) {
        return year::answer(reading, facts);
    }
    if let Some(word) = unknown_crop(reading) {
        return Answer::hand_over(Line::new("sow-unknown-crop").with("crop", Said::Quoted(word.to_owned())));
    }
    // "Should I sow it now or wait."
    let placed = reading.bed_kind.is_some() || !reading.beds.is_empty() || !reading.measures.is_empty();
    let unsaid = reading.of_it || reading.points.contains(&Point::BareAsked) || asks_when_alone(reading, facts);
    // "Aunt has sent seeds", then "is it too late to sow them": of what is still to be said.
    if unsaid
        && (!reading.follow_up || reading.of_it)
        && reading.crops.is_empty()
        && !placed
        && reading.months.is_empty()
    {
        return Answer::ask(Line::new("sow-ask-crop"), Vec::new());
    }
    let asked = match asked(reading, facts) {
        Ok(asked) => asked,
        Err(answer) => return answer,
    };
    if reading.follows && !reading.beds.is_empty() || reading.crops.is_empty() {
        return sow_list::answer(reading, facts, &asked);
    }
    sow_crop::answer(reading, facts, &asked)
}

/// The day and the weather; an answer that asks back or hands over where one is missing.
pub fn asked<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Result<Asked<'a>, Answer> {
    let Some((weather, today, elsewhere)) = weather(reading, facts) else {
        return Err(Answer::ask(Line::new("ask-which-place"), place_choices(facts)));
    };
    let day = day_asked(reading, today);
    let Some(year) = Year::around(weather, day) else {
        return Err(Answer::hand_over(Line::new("sow-no-usual-days")));
    };
    Ok(Asked { day, today, weather, year, elsewhere })
}

/// "Kab bona hai": when, and of what is left out.
fn asks_when_alone(reading: &Reading, facts: &Facts<'_>) -> bool {
    let of_all = [Point::WhatGrows, Point::AnyPlant].iter().any(|point| reading.points.contains(point));
    let undated = reading.days.is_empty() && reading.months.is_empty() && reading.season.is_none();
    // "Beej kab daale", "kab boya jata hai ye": a few words of sowing, and no plant.
    let bare = reading.telling.len() <= 3;
    !of_all && bare && undated && has_words(reading, &facts.known.talk.when)
}

/// A crop was meant that no file has: no crop was named, a word has no meaning here, and it is not asked in
/// general.
fn unknown_crop(reading: &Reading) -> Option<&str> {
    let general = [Point::WhatGrows, Point::AnyPlant].iter().any(|point| reading.points.contains(point))
        || !reading.crops.is_empty()
        || reading.beds_named
        || reading.bed_kind.is_some()
        || reading.follows;
    // Several strange words are chatter round a general question.
    match reading.unknown.as_slice() {
        [word] if !general => Some(word),
        _ => None,
    }
}

/// A day named that is still to come, else the middle of a month named, else today.
fn day_asked(reading: &Reading, today: NaiveDate) -> NaiveDate {
    if let Some((day, _)) = reading.days.iter().find(|(day, _)| *day >= today) {
        return *day;
    }
    let Some(month) = reading.months.first().filter(|month| **month != today.month()) else { return today };
    let this_year = NaiveDate::from_ymd_opt(today.year(), *month, 15);
    let next_year = NaiveDate::from_ymd_opt(today.year() + 1, *month, 15);
    this_year.filter(|day| *day >= today).or(next_year).unwrap_or(today)
}

/// The weather of a place named, else of the bed's site, else of the asker's first, else the forecast's; the day
/// there; whether it is the asker's own.
fn weather<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Option<(&'a Weather<'a>, NaiveDate, bool)> {
    let named = facts.elsewhere.as_ref().filter(|_| !reading.places.is_empty());
    let bed = reading.beds.first().and_then(|bed| facts.bed(bed)).map(|(site, _)| site);
    let site: Option<&SiteFacts<'_>> = bed.or_else(|| facts.sites.first());
    named
        .map(|weather| (weather, facts.now_elsewhere.date_naive(), true))
        .or_else(|| site.map(|site| (&site.weather, site.now.date_naive(), false)))
        .or_else(|| facts.elsewhere.as_ref().map(|weather| (weather, facts.now_elsewhere.date_naive(), true)))
}

/// Work on a roof in such heat needs a word of its own, °C.
pub const HEAT_FOR_PEOPLE_C: f64 = 40.0;

/// Where the work is near and falls into days hot enough to hurt the person who does it.
pub fn caution_heat(answer: &mut Answer, asked: &Asked<'_>, work_on: NaiveDate) {
    const NEAR_DAYS: i64 = 14;
    if (work_on - asked.today).num_days() > NEAR_DAYS {
        return;
    }
    let from = work_on.max(asked.today);
    let until = from.checked_add_days(Days::new(7)).unwrap_or(from);
    let days = asked.weather.from(from).take_while(|day| day.date < until);
    let hottest = days.map(|day| day.tmax.as_celsius()).fold(f64::MIN, f64::max);
    if hottest >= HEAT_FOR_PEOPLE_C {
        let tmax = Said::Temperature(Temperature::celsius(hottest));
        answer.cautions.push(Line::new("caution-work-heat").with("tmax", tmax));
    }
}
