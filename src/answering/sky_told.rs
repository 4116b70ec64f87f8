//! What the asker told of the weather: laid over what is known of it, and said in the answer.

use super::answer::{Answer, Outcome};
use super::facts::{Facts, SiteFacts};
use super::line::{Line, Said};
use crate::garden::SiteId;
use crate::knowledge::Kind;
use crate::quantity::Temperature;
use crate::understanding::{Reading, SkyTold};
use crate::weather::Told;

/// Spans longer than this are cut: nobody knows the weather of a season.
const MOST_DAYS: usize = 14;

impl Facts<'_> {
    /// The facts under the sky as the asker tells it. It counts for the sites that are meant; where none is named for
    /// all of hers, and for a place without a site.
    #[must_use]
    pub fn under_told_sky(mut self, reading: &Reading) -> Self {
        if reading.sky.is_empty() {
            return self;
        }
        let told = told_days(&reading.sky);
        let meant = sites_meant(reading);
        for site in self.sites.iter_mut().filter(|site| meant.is_empty() || meant.contains(&&site.site.id)) {
            site.weather = site.weather.clone().hearing(told.iter().copied());
        }
        self.elsewhere = self.elsewhere.map(|weather| weather.hearing(told.iter().copied()));
        self
    }
}

/// The sites of the beds and sites that were named.
fn sites_meant(reading: &Reading) -> Vec<&SiteId> {
    reading.sites.iter().chain(reading.beds.iter().map(|bed| bed.site())).collect()
}

/// The one site whose weather was told; none where it may be several.
#[must_use]
pub fn site_told_of<'f>(reading: &Reading, facts: &'f Facts<'_>) -> Option<&'f SiteFacts<'f>> {
    let meant = sites_meant(reading);
    let mut sites = facts.sites.iter().filter(|site| meant.is_empty() || meant.contains(&&site.site.id));
    let first = sites.next()?;
    sites.next().is_none().then_some(first)
}

/// Day by day; what no weather has is left out.
#[must_use]
pub fn told_days(sky: &[SkyTold]) -> Vec<Told> {
    let days = sky.iter().flat_map(|told| {
        let days = told.first.iter_days().take_while(|day| *day <= told.last).take(MOST_DAYS);
        days.filter_map(|day| Told::checked(day, told.tmax_c, told.tmin_c, told.rain_mm).ok())
    });
    days.collect()
}

/// Says what was taken from the asker's words.
pub fn tell(answer: &mut Answer, reading: &Reading) {
    let by_weather =
        matches!(answer.reading.kind, Kind::Water | Kind::Harvest | Kind::Spray | Kind::Shade | Kind::Feed | Kind::Due);
    if !by_weather || answer.outcome != Outcome::Answered {
        return;
    }
    let mut lines = Vec::new();
    for told in &reading.sky {
        if told_days(std::slice::from_ref(told)).is_empty() {
            continue;
        }
        let line = Line::new("sky-told").with("span", Said::Key(if told.first == told.last { "one" } else { "more" }));
        let line = line.with("from", Said::Day(told.first)).with("until", Said::Day(told.last));
        lines.push(line.with("what", Said::List(what(told))));
        if told.rain_guessed {
            let mm = Said::Number(told.rain_mm.unwrap_or_default(), 0);
            lines.push(Line::new("sky-rain-guessed").with("mm", mm));
        }
    }
    // Who only tells is told first that it was heard; who asks, the answer.
    let at = if reading.asks || !reading.all_beds { answer.lines.len() } else { 0 };
    answer.lines.splice(at..at, lines);
}

fn what(told: &SkyTold) -> Vec<Said> {
    let degrees = |celsius: f64| Said::Temperature(Temperature::celsius(celsius));
    let air = match (told.tmax_c, told.tmin_c) {
        (Some(tmax), Some(tmin)) => Some(Line::new("sky-both").with("tmax", degrees(tmax)).with("tmin", degrees(tmin))),
        (Some(tmax), None) => Some(Line::new("sky-day").with("tmax", degrees(tmax))),
        (None, Some(tmin)) => Some(Line::new("sky-night").with("tmin", degrees(tmin))),
        (None, None) => None,
    };
    let rain = told.rain_mm.map(|mm| match mm {
        mm if mm > 0.0 => Line::new("sky-rain").with("mm", Said::Number(mm, 0)),
        _ => Line::new("sky-dry"),
    });
    air.into_iter().chain(rain).map(|line| Said::Line(Box::new(line))).collect()
}
