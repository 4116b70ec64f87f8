//! What comes: heat, rain, wind, cold, and what to do about it; told once with the day's work, or when it is asked.

use super::alerts_told::{lines, people};
use super::answer::{Answer, Outcome};
use super::facts::{BedFacts, Facts, SiteFacts};
use super::figure::{Figure, FigureValue};
use super::line::{Line, Said};
use super::plots::plot;
use crate::garden::{BedId, SiteId};
use crate::knowledge::{Beyond, Point};
use crate::needs::year::Year;
use crate::planning::alerts::{Alert, alerts, is_foretold};
use crate::planning::due::Plot;
use crate::understanding::Reading;
use chrono::NaiveDate;
use serde_json::json;

/// Warnings are asked after, of no crop.
pub fn is_asked(reading: &Reading) -> bool {
    reading.crops.is_empty() && reading.points.contains(&Point::Warnings)
}

/// All that comes to the sites this person may see.
#[must_use]
pub fn alerts_of(facts: &Facts<'_>) -> Vec<Alert> {
    facts.sites.iter().flat_map(|site| alerts_of_site(site, facts)).collect()
}

/// All that comes to one site, whoever is told.
#[must_use]
pub fn alerts_of_site(site: &SiteFacts<'_>, facts: &Facts<'_>) -> Vec<Alert> {
    // Where nothing grows yet there is nothing to make ready.
    if site.beds.is_empty() {
        return Vec::new();
    }
    let today = site.now.date_naive();
    // The length of days and the heat of weeks matter to what runs to flower alone.
    let bolts = |bed: &BedFacts| {
        let mut crops = bed.plantings.iter().filter_map(|planting| facts.known.crops.get(&planting.crop));
        crops.any(|crop| matches!(crop.heat.beyond, Beyond::Bolts))
    };
    let year = if site.beds.iter().any(bolts) { Year::around(&site.weather, today) } else { None };
    let plots: Vec<Plot<'_>> = site.beds.iter().map(|bed| plot(site, bed, year.as_ref(), facts.known)).collect();
    alerts(&site.site.id, &site.weather, today, &plots)
}

/// One event as it is told: what is the same at several sites is told once.
#[derive(Debug, Clone)]
pub struct Event<'a> {
    pub alert: &'a Alert,
    pub sites: Vec<&'a SiteId>,
    pub beds: Vec<&'a BedId>,
    pub crops: Vec<&'a str>,
}

/// The lines and figures of alerts.
#[must_use]
pub fn told(all: &[Alert], facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let events = events(all);
    for event in &events {
        lines(&mut answer, event, facts);
    }
    people(&mut answer, &events, facts);
    let list = all.iter().map(|alert| {
        let beds: Vec<String> = alert.beds.iter().map(ToString::to_string).collect();
        json!({
            "what": alert.what.word(), "grade": alert.grade, "site": alert.site.as_str(), "beds": beds, "crops": alert.crops,
            "from": alert.from.to_string(), "until": alert.until.to_string(), "key": alert.key(),
        })
    });
    let is = FigureValue::Structure(list.collect());
    answer.figures.push(Figure { name: "alerts".to_owned(), is, bed: None, crop: None });
    answer
}

fn events(all: &[Alert]) -> Vec<Event<'_>> {
    let mut events: Vec<Event<'_>> = Vec::new();
    for alert in all {
        let same = |other: &&mut Event<'_>| {
            let other = other.alert;
            let days = (other.from, other.until) == (alert.from, alert.until);
            let crops = alert.what != crate::planning::alerts::What::Bolting || other.crops == alert.crops;
            other.what == alert.what && other.grade == alert.grade && days && other.peak == alert.peak && crops
        };
        let crops = alert.crops.iter().map(String::as_str);
        match events.iter_mut().find(same) {
            Some(event) => {
                event.sites.push(&alert.site);
                event.beds.extend(&alert.beds);
                let new: Vec<&str> = crops.filter(|crop| !event.crops.contains(crop)).collect();
                event.crops.extend(new);
            }
            None => events.push(Event {
                alert,
                sites: vec![&alert.site],
                beds: alert.beds.iter().collect(),
                crops: crops.collect(),
            }),
        }
    }
    events
}

/// "Any alert this week?"
pub fn answer(facts: &Facts<'_>) -> Answer {
    if facts.sites.is_empty() {
        return super::handed_over::not_known();
    }
    let all = alerts_of(facts);
    let mut answer = told(&all, facts);
    let blind: Vec<&SiteFacts<'_>> =
        facts.sites.iter().filter(|site| !is_foretold(&site.weather, site.now.date_naive())).collect();
    if blind.len() == facts.sites.len() {
        answer.lines.push(Line::new("alert-no-forecast"));
    } else if all.is_empty() {
        let until: Option<NaiveDate> = facts.today().checked_add_days(chrono::Days::new(4));
        answer.lines.push(Line::new("alert-none").with("day", Said::Day(until.unwrap_or(facts.today()))));
    }
    answer
}
